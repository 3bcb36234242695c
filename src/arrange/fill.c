/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "arrange/fill.h"

#include "catalogue/vocabulary.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#define SQUARE_METRES 4.65 /* a person, in an exercise room: 50 square feet, IBC 2021 table 1004.5 */

/* Hours */

static int
by_start (gconstpointer a, gconstpointer b)
{
  const LapSpan *x = a, *y = b;

  return x->start - y->start;
}

/* Appends the spans of a day; those that touch or overlap become one. */
static void
add_hours (GArray *to, int day, const LapHours *hours)
{
  g_autoptr (LapHours) sorted = hours ? lap_hours_copy (hours) : NULL;
  LapFillSpan last = { day, -1, -1 };

  if (sorted == NULL)
    return;
  qsort (sorted->spans, sorted->n, sizeof (LapSpan), by_start);
  for (guint k = 0; k < sorted->n; k++) {
    LapSpan span = sorted->spans[k];

    if (span.start > last.end) {
      if (last.start >= 0)
        g_array_append_val (to, last);
      last.start = span.start;
    }
    last.end = MAX (last.end, span.end);
  }
  if (last.start >= 0)
    g_array_append_val (to, last);
}

static GArray *
open_hours (const LapWeek *week)
{
  GArray *hours = g_array_new (FALSE, FALSE, sizeof (LapFillSpan));

  for (int day = 0; day < LAP_N_DAYS; day++) {
    LapSpan span;

    if (lap_week_open (week, day, &span)) {
      LapFillSpan open = { day, span.start, span.end };

      g_array_append_val (hours, open);
    }
  }
  return hours;
}

/* NULL where the coach is always free. */
static GArray *
free_hours (const LapCoach *coach)
{
  g_autoptr (GArray) hours = g_array_new (FALSE, FALSE, sizeof (LapFillSpan));
  gboolean any = FALSE;

  for (int day = 0; day < LAP_N_DAYS; day++) {
    any = any || coach->free_hours[day] != NULL;
    add_hours (hours, day, coach->free_hours[day]);
  }
  return any ? g_steal_pointer (&hours) : NULL;
}

static GArray *
quiet_hours (const LapRoom *room)
{
  GArray *hours = g_array_new (FALSE, FALSE, sizeof (LapFillSpan));

  for (int day = 0; day < LAP_N_DAYS; day++)
    add_hours (hours, day, room->quiet_hours);
  return hours;
}

/* Classes */

/* Numbers from 1 for texts that are equal. */
static guint
number_of (GHashTable *numbers, const char *text)
{
  gpointer number;

  if (text == NULL || *text == '\0')
    return 0;
  number = g_hash_table_lookup (numbers, text);
  if (number == NULL) {
    number = GUINT_TO_POINTER (g_hash_table_size (numbers) + 1);
    g_hash_table_insert (numbers, (gpointer) text, number);
  }
  return GPOINTER_TO_UINT (number);
}

static int
place_in (LapList *list, gpointer item)
{
  return item ? (int) lap_list_find (list, item) : -1;
}

static LapFillPlace
stands (const LapWeek *week, const LapClass *c)
{
  LapFillPlace at = { -1, 0, -1, -1 };

  if (lap_class_is_placed (c)) {
    at.day = c->day;
    at.start = c->start;
  }
  at.room = place_in (week->rooms, lap_week_room (week, c->room));
  at.coach = place_in (week->coaches, lap_week_coach (week, c->coach));
  return at;
}

static void
read_rooms (const LapWeek *week, const LapClass *c, guint32 kit, LapFillClass *class)
{
  guint n = lap_list_n (week->rooms);

  class->rooms = g_new0 (guint16, n + 1);
  class->crowded = g_new0 (guint8, n + 1);
  for (guint k = 0; k < n; k++) {
    const LapRoom *room = lap_list_nth (week->rooms, k);

    if (room->places && c->places > room->places)
      class->rooms[k] |= LAP_FILL_PLACES;
    if (class->was.day < 0 && class->was.room >= 0 && class->was.room != (int) k)
      class->rooms[k] |= LAP_FILL_NAMED;
    if (room->kit && (kit & ~lap_kit_mask (room->kit)))
      class->rooms[k] |= LAP_FILL_KIT;
    class->crowded[k] = room->area > 0 && c->places > floor (room->area / SQUARE_METRES);
  }
}

static void
read_coaches (const LapWeek *week, const LapClass *c, LapFillClass *class)
{
  guint n = lap_list_n (week->coaches);

  class->coaches = g_new0 (guint16, n + 1);
  for (guint k = 0; k < n; k++) {
    if (!lap_coach_can (lap_list_nth (week->coaches, k), c->kind))
      class->coaches[k] |= LAP_FILL_SKILL;
    if (class->was.day < 0 && class->was.coach >= 0 && class->was.coach != (int) k)
      class->coaches[k] |= LAP_FILL_NAMED;
  }
}

/* Equal for equal kit. */
static guint
number_of_kit (GHashTable *numbers, guint32 kit)
{
  gpointer key = GUINT_TO_POINTER (kit), number;

  if (!g_hash_table_lookup_extended (numbers, key, NULL, &number)) {
    number = GUINT_TO_POINTER (g_hash_table_size (numbers));
    g_hash_table_insert (numbers, key, number);
  }
  return GPOINTER_TO_UINT (number);
}

/* A session that can be read says more of a class than the class itself. */
static void
read_class (const LapWeek *week, const LapClass *c, const LapAttached *attached, GHashTable *people, GHashTable *kits,
            LapFillClass *class)
{
  guint32 kit = attached ? attached->kit : 0;


  class->minutes = c->minutes;
  class->was = stands (week, c);
  class->fixed = c->fixed && class->was.day >= 0;
  class->hard = (attached ? attached->strain : (LapStrain) c->strain) == LAP_STRAIN_HARD;
  class->loud = attached && attached->loud;
  class->kit = number_of_kit (kits, kit);
  class->takes_part = c->takes_part;
  class->regions = attached ? attached->regions : lap_words_mask (&lap_regions, (const char * const *) c->regions);
  class->people = number_of (people, c->for_whom);
  class->days = lap_words_mask (&lap_days, (const char * const *) c->wish_days);
  if (c->wish_between) {
    class->from = c->wish_between->spans[0].start;
    class->until = c->wish_between->spans[0].end;
  }
  read_rooms (week, c, kit, class);
  read_coaches (week, c, class);
}

LapFillProblem *
lap_fill_problem_new (const LapWeek *week, LapAttachments *attachments)
{
  LapFillProblem *p = g_new0 (LapFillProblem, 1);
  g_autoptr (GHashTable) people = g_hash_table_new (g_str_hash, g_str_equal), kits = g_hash_table_new (NULL, NULL);

  p->n_rooms = lap_list_n (week->rooms);
  p->n_coaches = lap_list_n (week->coaches);
  p->n_classes = lap_list_n (week->classes);
  p->rooms = g_new0 (LapFillRoom, p->n_rooms + 1);
  p->coaches = g_new0 (LapFillCoach, p->n_coaches + 1);
  p->classes = g_new0 (LapFillClass, p->n_classes + 1);
  p->hours = open_hours (week);
  for (guint k = 0; k < p->n_rooms; k++) {
    const LapRoom *room = lap_list_nth (week->rooms, k);

    p->rooms[k] = (LapFillRoom) { room->turnaround, quiet_hours (room) };
  }
  for (guint k = 0; k < p->n_coaches; k++) {
    const LapCoach *coach = lap_list_nth (week->coaches, k);

    p->coaches[k] = (LapFillCoach) { free_hours (coach), coach->most_a_day };
  }
  for (guint i = 0; i < p->n_classes; i++) {
    const LapClass *c = lap_list_nth (week->classes, i);
    const LapAttached *attached = NULL;

    if (attachments && c->session && *c->session)
      attached = lap_attachments_find (attachments, c->session, NULL);
    read_class (week, c, attached, people, kits, &p->classes[i]);
  }
  return p;
}

void
lap_fill_problem_free (LapFillProblem *p)
{
  for (guint k = 0; k < p->n_rooms; k++)
    g_clear_pointer (&p->rooms[k].quiet, g_array_unref);
  for (guint k = 0; k < p->n_coaches; k++)
    g_clear_pointer (&p->coaches[k].hours, g_array_unref);
  for (guint i = 0; i < p->n_classes; i++) {
    g_free (p->classes[i].rooms);
    g_free (p->classes[i].crowded);
    g_free (p->classes[i].coaches);
  }
  g_clear_pointer (&p->hours, g_array_unref);
  g_free (p->rooms);
  g_free (p->coaches);
  g_free (p->classes);
  g_free (p);
}

/* Edits */

static const char *
room_id (const LapWeek *week, int room)
{
  return room < 0 ? NULL : ((LapRoom *) lap_list_nth (week->rooms, room))->id;
}

static const char *
coach_id (const LapWeek *week, int coach)
{
  return coach < 0 ? NULL : ((LapCoach *) lap_list_nth (week->coaches, coach))->id;
}

static void
set_text (LapEdits *edits, LapClass *c, const char *property, const char *was, const char *value)
{
  if (g_strcmp0 (was, value) != 0)
    lap_edits_set_text (edits, c, property, value);
}

static void
set_number (LapEdits *edits, LapClass *c, const char *property, int was, int value)
{
  if (was != value)
    lap_edits_set_int (edits, c, property, value);
}

LapEdits *
lap_fill_edits (const LapFill *fill, const LapWeek *week)
{
  LapEdits *edits = lap_edits_new (_("Fill the timetable"));

  for (guint i = 0; i < fill->n; i++) {
    LapClass *c = lap_list_nth (week->classes, i);
    const LapFillPlace *at = &fill->places[i];

    if (at->day < 0) {
      set_number (edits, c, "day", c->day, -1);
      set_number (edits, c, "start", c->start, -1);
      continue;
    }
    set_number (edits, c, "day", c->day, at->day);
    set_number (edits, c, "start", c->start, at->start);
    set_text (edits, c, "room", c->room, room_id (week, at->room));
    set_text (edits, c, "coach", c->coach, coach_id (week, at->coach));
  }
  return edits;
}

guint
lap_fill_missed (const LapFill *fill, const LapWeek *week, guint i)
{
  const LapClass *c = lap_list_nth (week->classes, i);
  const LapFillPlace *at = &fill->places[i];
  guint days = lap_words_mask (&lap_days, (const char * const *) c->wish_days), missed = 0;

  if (at->day < 0)
    return 0;
  if (days && !(days & LAP_BIT (at->day)))
    missed |= LAP_FILL_WISH_DAYS;
  if (c->wish_between && (at->start < c->wish_between->spans[0].start ||
                          at->start + c->minutes > c->wish_between->spans[0].end))
    missed |= LAP_FILL_WISH_BETWEEN;
  return missed;
}
