/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "arrange/fill-table.h"

#include <string.h>

/* What a wish that isn't kept costs, in points. */
enum {
  OTHER_DAY = 4,     /* on a day that wasn't wanted */
  OTHER_HOURS = 2,   /* outside the wanted hours, and one more for each full hour, up to MOST_HOURS */
  MOST_HOURS = 6,
  MOVED = 5,         /* not when it stands now; not in the room, not with the coach */
  OTHER_ROOM = 2,
  OTHER_COACH = 3,
  CROWDED = 1,
  HARD_NEXT_DAY = 3, /* two hard classes for the same people on neighbouring days */
  REGION_SOON = 1,   /* and two that work the same region within 48 hours */
  SHORT_NIGHT = 2,   /* a coach's rest over night */
  NO_WALK = 1,       /* a coach in another room without a minute between */
};

#define SOON (48 * 60)
#define WEEK (LAP_FILL_DAYS * LAP_FILL_DAY)
#define HALF_MASK ((G_GUINT64_CONSTANT (1) << LAP_FILL_HALF) - 1)

static LapFillRow
row_and (LapFillRow a, LapFillRow b)
{
  return (LapFillRow) { a.early & b.early, a.late & b.late };
}

static LapFillRow
row_without (LapFillRow a, LapFillRow b)
{
  return (LapFillRow) { a.early & ~b.early, a.late & ~b.late };
}

/* Each quarter moves @by quarters earlier; what would be before midnight is gone. */
static LapFillRow
row_earlier (LapFillRow row, guint by)
{
  if (by >= 2 * LAP_FILL_HALF)
    return (LapFillRow) { 0, 0 };
  if (by >= LAP_FILL_HALF)
    return (LapFillRow) { row.late >> (by - LAP_FILL_HALF), 0 };
  if (by == 0)
    return row;
  return (LapFillRow) { (row.early >> by | row.late << (LAP_FILL_HALF - by)) & HALF_MASK, row.late >> by };
}

/* The starts at which @length quarters would meet a quarter of @taken. */
static LapFillRow
row_meeting (LapFillRow taken, guint length)
{
  guint have = 1;

  while (have < length) {
    guint step = MIN (have, length - have);
    LapFillRow moved = row_earlier (taken, step);

    taken.early |= moved.early;
    taken.late |= moved.late;
    have += step;
  }
  return taken;
}

static void
row_take (LapFillRow *row, int start, int end)
{
  for (int quarter = start / 15; quarter < LAP_FILL_QUARTERS && quarter * 15 < end; quarter++)
    lap_fill_row_set (row, quarter);
}

guint
lap_fill_quarters (int minutes)
{
  return (minutes + 14) / 15;
}

guint
lap_fill_room_quarters (const LapFillProblem *problem, guint i, int room)
{
  return lap_fill_quarters (problem->classes[i].minutes + (room < 0 ? 0 : problem->rooms[room].turnaround));
}

gboolean
lap_fill_is_whole (const LapFillProblem *p, const LapFillPlace *place)
{
  return place->day >= 0 && (p->n_rooms == 0 || place->room >= 0) && (p->n_coaches == 0 || place->coach >= 0);
}

int *
lap_fill_suitable (const guint16 *rules, guint count)
{
  int *list = g_new0 (int, count + 2);

  for (guint k = 0; k < count; k++)
    if (!rules[k])
      list[++list[0]] = k;
  return list;
}

/* Whether one span of the day holds all of @start … @end. */
static gboolean
is_within (const GArray *spans, int day, int start, int end)
{
  if (spans == NULL)
    return TRUE;
  for (guint k = 0; k < spans->len; k++) {
    const LapFillSpan *span = &g_array_index (spans, LapFillSpan, k);

    if (span->day == day && span->start <= start && end <= span->end)
      return TRUE;
  }
  return FALSE;
}

static gboolean
meets (const GArray *spans, int day, int start, int end)
{
  for (guint k = 0; spans && k < spans->len; k++) {
    const LapFillSpan *span = &g_array_index (spans, LapFillSpan, k);

    if (span->day == day && span->start < end && start < span->end)
      return TRUE;
  }
  return FALSE;
}

/* Points */

guint
lap_fill_time_points (const LapFillClass *c, int day, int start)
{
  guint points = 0;
  int outside;

  if (c->days && !(c->days & 1u << day))
    points += OTHER_DAY;
  if (c->until) {
    outside = MAX (0, c->from - start) + MAX (0, start + c->minutes - c->until);
    if (outside > 0)
      points += MIN (OTHER_HOURS + outside / 60, MOST_HOURS);
  }
  if (c->was.day >= 0 && (c->was.day != day || c->was.start != start))
    points += MOVED;
  return points;
}

guint
lap_fill_room_points (const LapFillClass *c, int room)
{
  guint points = c->was.day >= 0 && c->was.room >= 0 && c->was.room != room ? OTHER_ROOM : 0;

  return points + (room >= 0 && c->crowded && c->crowded[room] ? CROWDED : 0);
}

guint
lap_fill_coach_points (const LapFillClass *c, int coach)
{
  return c->was.day >= 0 && c->was.coach >= 0 && c->was.coach != coach ? OTHER_COACH : 0;
}

guint
lap_fill_wishes (const LapFillProblem *problem, guint i, const LapFillPlace *place)
{
  const LapFillClass *c = &problem->classes[i];

  return lap_fill_time_points (c, place->day, place->start) + lap_fill_room_points (c, place->room) +
         lap_fill_coach_points (c, place->coach);
}

static int
rhythm_points (const LapFillTable *t, guint i)
{
  const LapFillClass *classes = t->problem->classes;
  const LapFillPlace *a = &t->at[i];
  int points = 0;

  for (guint k = t->kin_from[i]; k < t->kin_from[i + 1]; k++) {
    const LapFillPlace *b = &t->at[t->kin[k]];
    int days, minutes;

    if (b->day < 0)
      continue;
    days = ABS (a->day - b->day);
    minutes = ABS (a->day * LAP_FILL_DAY + a->start - b->day * LAP_FILL_DAY - b->start);
    if (days == 1 || days == LAP_FILL_DAYS - 1)
      points += HARD_NEXT_DAY;
    if (MIN (minutes, WEEK - minutes) < SOON && (classes[i].regions & classes[t->kin[k]].regions))
      points += REGION_SOON;
  }
  return points;
}

static int
night_points (const LapFillTable *t, int coach, int day)
{
  const LapFillClass *classes = t->problem->classes;
  int next = (day + 1) % LAP_FILL_DAYS, last = -1, first = -1;

  for (int i = t->coach_first[lap_fill_slot (coach, day)]; i >= 0; i = t->next_of_coach[i])
    last = MAX (last, t->at[i].start + classes[i].minutes);
  for (int i = t->coach_first[lap_fill_slot (coach, next)]; i >= 0; i = t->next_of_coach[i])
    first = first < 0 ? t->at[i].start : MIN (first, t->at[i].start);
  return last >= 0 && first >= 0 && LAP_FILL_DAY - last + first < LAP_FILL_REST ? SHORT_NIGHT : 0;
}

/* What a coach's day costs together with the nights before and after it. */
static int
day_points (const LapFillTable *t, int coach, int day)
{
  int points = night_points (t, coach, (day + LAP_FILL_DAYS - 1) % LAP_FILL_DAYS) + night_points (t, coach, day);

  for (int i = t->coach_first[lap_fill_slot (coach, day)]; i >= 0; i = t->next_of_coach[i])
    for (int j = t->coach_first[lap_fill_slot (coach, day)]; j >= 0; j = t->next_of_coach[j])
      if (t->at[i].room != t->at[j].room &&
          t->at[i].start + t->problem->classes[i].minutes == t->at[j].start)
        points += NO_WALK;
  return points;
}

/* Putting and lifting */

static void
unchain (int *first, int *next, guint i)
{
  int *link = first;

  while (*link != (int) i)
    link = &next[*link];
  *link = next[i];
}

static void
take_room (LapFillTable *t, guint i)
{
  int end = t->at[i].start + t->problem->classes[i].minutes + t->problem->rooms[t->at[i].room].turnaround;

  row_take (&t->room_row[lap_fill_slot (t->at[i].room, t->at[i].day)], t->at[i].start, end);
}

static void
take_coach (LapFillTable *t, guint i)
{
  row_take (&t->coach_row[lap_fill_slot (t->at[i].coach, t->at[i].day)], t->at[i].start,
            t->at[i].start + t->problem->classes[i].minutes);
}

/* Fixed classes are in the rows of possible starts already, to the minute. */
static void
put_in_room (LapFillTable *t, guint i)
{
  int slot = lap_fill_slot (t->at[i].room, t->at[i].day);

  t->next_in_room[i] = t->room_first[slot];
  t->room_first[slot] = i;
  if (!t->problem->classes[i].fixed)
    take_room (t, i);
}

static void
lift_from_room (LapFillTable *t, guint i)
{
  int slot = lap_fill_slot (t->at[i].room, t->at[i].day);

  unchain (&t->room_first[slot], t->next_in_room, i);
  t->room_row[slot] = (LapFillRow) { 0, 0 };
  for (int j = t->room_first[slot]; j >= 0; j = t->next_in_room[j])
    if (!t->problem->classes[j].fixed)
      take_room (t, j);
}

static void
put_with_coach (LapFillTable *t, guint i)
{
  const LapFillClass *c = &t->problem->classes[i];
  int slot = lap_fill_slot (t->at[i].coach, t->at[i].day);

  t->next_of_coach[i] = t->coach_first[slot];
  t->coach_first[slot] = i;
  t->count[slot]++;
  t->hards[slot] += c->hard && c->takes_part;
  if (!c->fixed)
    take_coach (t, i);
}

static void
lift_from_coach (LapFillTable *t, guint i)
{
  const LapFillClass *c = &t->problem->classes[i];
  int slot = lap_fill_slot (t->at[i].coach, t->at[i].day);

  unchain (&t->coach_first[slot], t->next_of_coach, i);
  t->count[slot]--;
  t->hards[slot] -= c->hard && c->takes_part;
  t->coach_row[slot] = (LapFillRow) { 0, 0 };
  for (int j = t->coach_first[slot]; j >= 0; j = t->next_of_coach[j])
    if (!t->problem->classes[j].fixed)
      take_coach (t, j);
}

void
lap_fill_put (LapFillTable *t, guint i, const LapFillPlace *place)
{
  t->at[i] = *place;
  t->unplaced -= !t->problem->classes[i].fixed;
  t->points += (int) lap_fill_wishes (t->problem, i, place) + rhythm_points (t, i);
  if (place->room >= 0)
    put_in_room (t, i);
  if (place->coach >= 0) {
    t->points -= day_points (t, place->coach, place->day);
    put_with_coach (t, i);
    t->points += day_points (t, place->coach, place->day);
  }
}

void
lap_fill_lift (LapFillTable *t, guint i)
{
  LapFillPlace place = t->at[i];

  if (place.coach >= 0) {
    t->points -= day_points (t, place.coach, place.day);
    lift_from_coach (t, i);
    t->points += day_points (t, place.coach, place.day);
  }
  if (place.room >= 0)
    lift_from_room (t, i);
  t->points -= (int) lap_fill_wishes (t->problem, i, &place) + rhythm_points (t, i);
  t->unplaced += !t->problem->classes[i].fixed;
  t->at[i].day = -1;
}

/* Rules */

gboolean
lap_fill_collide (const LapFillTable *t, guint i, const LapFillPlace *place, guint j)
{
  const LapFillClass *a = &t->problem->classes[i], *b = &t->problem->classes[j];
  int gap = t->problem->rooms[place->room].turnaround + (a->kit != b->kit ? LAP_FILL_KIT_GAP : 0);

  return place->start < t->at[j].start + b->minutes + gap && t->at[j].start < place->start + a->minutes + gap;
}

guint
lap_fill_time_rules (const LapFillTable *t, guint i, int day, int start)
{
  int end = start + t->problem->classes[i].minutes;

  return end <= LAP_FILL_DAY && is_within (t->problem->hours, day, start, end) ? 0 : LAP_FILL_SHUT;
}

guint
lap_fill_room_rules (const LapFillTable *t, guint i, int day, int start, int room)
{
  const LapFillClass *c = &t->problem->classes[i];
  LapFillPlace place = { day, start, room, -1 };
  guint rules;

  if (room < 0)
    return 0;
  rules = c->rooms[room];
  if (c->loud && meets (t->problem->rooms[room].quiet, day, start, start + c->minutes))
    rules |= LAP_FILL_QUIET;
  for (int j = t->room_first[lap_fill_slot (room, day)]; j >= 0; j = t->next_in_room[j]) {
    if (!lap_fill_collide (t, i, &place, j))
      continue;
    if (start < t->at[j].start + t->problem->classes[j].minutes && t->at[j].start < start + c->minutes)
      rules |= LAP_FILL_ROOM;
    else
      rules |= LAP_FILL_TURN;
  }
  return rules;
}

guint
lap_fill_coach_rules (const LapFillTable *t, guint i, int day, int start, int coach)
{
  const LapFillClass *c = &t->problem->classes[i];
  int slot = lap_fill_slot (coach, day);
  guint rules;

  if (coach < 0)
    return 0;
  rules = c->coaches[coach];
  if (!is_within (t->problem->coaches[coach].hours, day, start, start + c->minutes))
    rules |= LAP_FILL_FREE;
  if (t->problem->coaches[coach].most && t->count[slot] >= t->problem->coaches[coach].most)
    rules |= LAP_FILL_MOST;
  if (c->hard && c->takes_part && t->hards[slot] >= LAP_FILL_HARD)
    rules |= LAP_FILL_HARDS;
  for (int j = t->coach_first[slot]; j >= 0; j = t->next_of_coach[j])
    if (start < t->at[j].start + t->problem->classes[j].minutes && t->at[j].start < start + c->minutes)
      rules |= LAP_FILL_COACH;
  return rules;
}

/* Rows */

LapFillRow
lap_fill_starts (const LapFillTable *t, guint i, int day, int room, int coach, gboolean among_others)
{
  const LapFillProblem *p = t->problem;
  guint shape = t->shape[i];
  LapFillRow row = t->open_rows[shape * LAP_FILL_DAYS + day];

  if (room >= 0) {
    row = row_and (row, t->room_rows[lap_fill_slot (shape * p->n_rooms + room, day)]);
    if (among_others)
      row = row_without (row, row_meeting (t->room_row[lap_fill_slot (room, day)],
                                           lap_fill_room_quarters (p, i, room)));
  }
  if (coach >= 0) {
    row = row_and (row, t->coach_rows[lap_fill_slot (shape * p->n_coaches + coach, day)]);
    if (among_others)
      row = row_without (row, row_meeting (t->coach_row[lap_fill_slot (coach, day)],
                                           lap_fill_quarters (p->classes[i].minutes)));
  }
  return row;
}

/* The starts in the hours of a day, in a room or with a coach, for classes like @i. What is known of the rooms and
 * coaches of @i itself is left out, since other classes share the row. */
static void
find_starts (LapFillTable *t, guint i)
{
  const LapFillProblem *p = t->problem;
  guint shape = t->shape[i], apart = ~(guint) (LAP_FILL_NAMED | LAP_FILL_SKILL | LAP_FILL_KIT | LAP_FILL_PLACES |
                                               LAP_FILL_MOST | LAP_FILL_HARDS);

  for (int day = 0; day < LAP_FILL_DAYS; day++)
    for (int q = 0; q < LAP_FILL_QUARTERS; q++) {
      if (lap_fill_time_rules (t, i, day, q * 15))
        continue;
      lap_fill_row_set (&t->open_rows[shape * LAP_FILL_DAYS + day], q);
      for (guint room = 0; room < p->n_rooms; room++)
        if (!(lap_fill_room_rules (t, i, day, q * 15, room) & apart))
          lap_fill_row_set (&t->room_rows[lap_fill_slot (shape * p->n_rooms + room, day)], q);
      for (guint coach = 0; coach < p->n_coaches; coach++)
        if (!(lap_fill_coach_rules (t, i, day, q * 15, coach) & apart))
          lap_fill_row_set (&t->coach_rows[lap_fill_slot (shape * p->n_coaches + coach, day)], q);
    }
}

static guint
find_shapes (LapFillTable *t)
{
  const LapFillClass *c = t->problem->classes;
  g_autoptr (GHashTable) seen = g_hash_table_new (NULL, NULL);

  for (guint i = 0; i < t->problem->n_classes; i++) {
    gpointer key = GUINT_TO_POINTER ((c[i].kit * (LAP_FILL_DAY + 1) + c[i].minutes) * 2 + (c[i].loud ? 1 : 0)), shape;

    if (!g_hash_table_lookup_extended (seen, key, NULL, &shape)) {
      shape = GUINT_TO_POINTER (g_hash_table_size (seen));
      g_hash_table_insert (seen, key, shape);
    }
    t->shape[i] = GPOINTER_TO_UINT (shape);
  }
  return g_hash_table_size (seen);
}

/* Making */

static void
find_kin (LapFillTable *t)
{
  const LapFillClass *c = t->problem->classes;
  guint n = t->problem->n_classes;
  g_autoptr (GArray) kin = g_array_new (FALSE, FALSE, sizeof (guint));

  for (guint i = 0; i < n; i++) {
    t->kin_from[i] = kin->len;
    for (guint j = 0; j < n && c[i].hard && c[i].people; j++)
      if (j != i && c[j].hard && c[j].people == c[i].people)
        g_array_append_val (kin, j);
  }
  t->kin_from[n] = kin->len;
  t->kin = (guint *) g_array_free (g_steal_pointer (&kin), FALSE);
}

static int *
new_ends (guint count)
{
  int *ends = g_new (int, count + 1);

  for (guint k = 0; k < count; k++)
    ends[k] = -1;
  return ends;
}

LapFillTable *
lap_fill_table_new (const LapFillProblem *p)
{
  LapFillTable *t = g_new0 (LapFillTable, 1);
  guint n = p->n_classes, rooms = p->n_rooms * LAP_FILL_DAYS, coaches = p->n_coaches * LAP_FILL_DAYS;
  g_autofree gboolean *known = NULL;

  t->problem = p;
  t->at = g_new (LapFillPlace, n + 1);
  t->next_in_room = new_ends (n);
  t->next_of_coach = new_ends (n);
  t->room_first = new_ends (rooms);
  t->coach_first = new_ends (coaches);
  t->room_row = g_new0 (LapFillRow, rooms + 1);
  t->coach_row = g_new0 (LapFillRow, coaches + 1);
  t->count = g_new0 (guint, coaches + 1);
  t->hards = g_new0 (guint, coaches + 1);
  t->kin_from = g_new0 (guint, n + 1);
  t->shape = g_new0 (guint, n + 1);
  t->n_shapes = find_shapes (t);
  t->open_rows = g_new0 (LapFillRow, t->n_shapes * LAP_FILL_DAYS + 1);
  t->room_rows = g_new0 (LapFillRow, t->n_shapes * rooms + 1);
  t->coach_rows = g_new0 (LapFillRow, t->n_shapes * coaches + 1);
  find_kin (t);
  for (guint i = 0; i < n; i++) {
    t->at[i] = (LapFillPlace) { -1, 0, -1, -1 };
    t->unplaced += !p->classes[i].fixed;
  }
  for (guint i = 0; i < n; i++)
    if (p->classes[i].fixed && p->classes[i].was.day >= 0)
      lap_fill_put (t, i, &p->classes[i].was);
  /* With the fixed classes in place, the first of each shape finds the starts of all of them. */
  known = g_new0 (gboolean, t->n_shapes + 1);
  for (guint i = 0; i < n; i++)
    if (!p->classes[i].fixed && !known[t->shape[i]]) {
      known[t->shape[i]] = TRUE;
      find_starts (t, i);
    }
  return t;
}

void
lap_fill_table_free (LapFillTable *t)
{
  g_free (t->at);
  g_free (t->next_in_room);
  g_free (t->next_of_coach);
  g_free (t->room_first);
  g_free (t->coach_first);
  g_free (t->room_row);
  g_free (t->coach_row);
  g_free (t->count);
  g_free (t->hards);
  g_free (t->kin_from);
  g_free (t->kin);
  g_free (t->shape);
  g_free (t->open_rows);
  g_free (t->room_rows);
  g_free (t->coach_rows);
  g_free (t);
}
