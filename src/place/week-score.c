/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/week-score.h"

#include "base/customs.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#define CREST     0.6  /* of a line of text: what stands above a bar */
#define BAR       0.55 /* the bar */
#define PAD       0.3  /* below the words */
#define BAND_PAD  6    /* px above and below the lines of a day */
#define LEAST_BAR 4    /* px */
#define GAP       6    /* px between words and the next class, and between a name and what is behind it */
#define MARK_GAP  2    /* px behind a mark */
#define CUT       2.6  /* em that a name needs to be cut off; with less it is its initials */
#define FIRST     (7 * 60) /* the hours of a week that has none */
#define LAST      (21 * 60)

/* What is different */

static gboolean
is_chosen (GHashTable *set, const char *id)
{
  return set == NULL || (id != NULL && g_hash_table_contains (set, id));
}

static gboolean
is_shown (const LapWeekLook *look, const LapOccurrence *o)
{
  return (look->day < 0 || o->day == look->day) && is_chosen (look->rooms, o->room) &&
         is_chosen (look->coaches, o->coach) && is_chosen (look->kinds, o->c->kind);
}

static const char *
coach_title (const LapWeek *week, const char *id)
{
  LapCoach *coach = lap_week_coach (week, id);

  return coach != NULL ? lap_coach_title (coach) : NULL;
}

/* Who or where: what the lines don't say already. */
static char *
who_text (const LapWeekScore *self, const LapOccurrence *o)
{
  LapRoom *room = lap_week_room (self->week, o->room);
  const char *coach = coach_title (self->week, o->coach), *usual = coach_title (self->week, o->c->coach);

  if (self->look.by_coach)
    return g_strdup (room != NULL ? lap_room_title (room) : "");
  if (coach != NULL && o->date != 0 && lap_week_is_away (self->week, o->coach, o->date))
    return g_strdup_printf (_("%s is away"), coach);
  if (coach != NULL && usual != NULL && g_strcmp0 (o->coach, o->c->coach) != 0)
    /* Translators: one coach who takes the class of another. */
    return g_strdup_printf (_("%1$s for %2$s"), coach, usual);
  return g_strdup (coach != NULL ? coach : "");
}

static gboolean
is_moved (const LapOccurrence *o)
{
  return o->exception != NULL &&
         (o->date != o->was || o->start != o->c->start || g_strcmp0 (o->room, o->c->room) != 0);
}

static char *
detail_text (const LapWeekScore *self, const LapOccurrence *o)
{
  g_autofree char *who = NULL, *time = NULL;

  if (o->state == LAP_CANCELLED)
    return g_strdup (_("cancelled"));
  if (o->state == LAP_HOUSE_CLOSED)
    return g_strdup (_("closed"));
  if (o->state == LAP_MOVED_AWAY) {
    g_autofree char *to = o->exception != NULL ? lap_date_text (o->exception->to) : g_strdup ("");

    return g_strdup_printf (_("moved to %s"), to);
  }
  who = who_text (self, o);
  if (is_moved (o)) {
    g_autofree char *here = g_steal_pointer (&who);

    /* Translators: who has a class that is elsewhere on this date, or at another time. */
    who = *here != '\0' ? g_strdup_printf (_("%s, moved"), here) : g_strdup (_("moved"));
  }
  if (!self->look.detailed)
    return g_steal_pointer (&who);
  time = lap_time_of_day_text (o->start);
  if (*who == '\0')
    /* Translators: when a class starts, and its minutes. */
    return g_strdup_printf (_("%1$s, %2$d min"), time, o->c->minutes);
  /* Translators: when a class starts, its coach or room, and its minutes. */
  return g_strdup_printf (_("%1$s %2$s, %3$d min"), time, who, o->c->minutes);
}

/* "NKNH" of "No Kit, No Hurry", at most four letters. */
static char *
initials_text (const char *title)
{
  GString *text = g_string_new (NULL);
  gboolean inside = FALSE;

  for (const char *p = title; *p != '\0' && g_utf8_strlen (text->str, -1) < 4; p = g_utf8_next_char (p)) {
    gunichar c = g_utf8_get_char (p);

    if (!inside && g_unichar_isalnum (c))
      g_string_append_unichar (text, g_unichar_toupper (c));
    inside = g_unichar_isalnum (c) || c == '\'' || c == 0x2019;
  }
  return g_string_free (text, FALSE);
}

/* Bands and lines */

static LapWeekRow *
add_row (GArray *rows, guint band, const char *id, const char *title)
{
  g_array_append_vals (rows, &(LapWeekRow) { .band = band, .id = id, .title = title }, 1);
  return &g_array_index (rows, LapWeekRow, rows->len - 1);
}

/* Whether some class that is shown has no room, or no coach, and so needs a line of its own. */
static gboolean
needs_rest (const LapWeekScore *self)
{
  for (guint i = 0; i < self->occurrences->len; i++) {
    const LapOccurrence *o = lap_occurrence_nth (self->occurrences, i);

    if (is_shown (&self->look, o) && (self->look.by_coach ? o->coach : o->room) == NULL)
      return TRUE;
  }
  return FALSE;
}

static void
add_rows (LapWeekScore *self, GArray *rows, guint band, gboolean rest)
{
  GListModel *list = G_LIST_MODEL (self->look.by_coach ? self->week->coaches : self->week->rooms);
  guint before = rows->len;

  for (guint i = 0; i < g_list_model_get_n_items (list); i++) {
    g_autoptr (LapObject) item = g_list_model_get_item (list, i);

    if (self->look.by_coach && is_chosen (self->look.coaches, ((LapCoach *) item)->id))
      add_row (rows, band, ((LapCoach *) item)->id, lap_coach_title ((LapCoach *) item));
    else if (!self->look.by_coach && is_chosen (self->look.rooms, ((LapRoom *) item)->id))
      add_row (rows, band, ((LapRoom *) item)->id, lap_room_title ((LapRoom *) item));
  }
  if (rest || rows->len == before)
    add_row (rows, band, NULL, NULL);
}

static void
make_rows (LapWeekScore *self, int date)
{
  GArray *rows = g_array_new (FALSE, FALSE, sizeof (LapWeekRow));
  gboolean rest = needs_rest (self);

  for (int i = 0; i < LAP_N_DAYS; i++) {
    const int day = lap_day_nth (self->look.first, i);
    LapWeekBand *band = &self->bands[self->n_bands];

    if (self->look.day >= 0 && self->look.day != day)
      continue;
    *band = (LapWeekBand) { .day = day, .date = date != 0 ? date + i : 0, .first_row = rows->len };
    add_rows (self, rows, self->n_bands++, rest);
    band->n_rows = rows->len - band->first_row;
  }
  self->n_rows = rows->len;
  self->rows = (LapWeekRow *) g_array_free (rows, FALSE);
}

guint
lap_week_score_row (const LapWeekScore *self, int day, const char *id)
{
  for (guint i = 0; i < self->n_rows; i++)
    if ((int) self->bands[self->rows[i].band].day == day && g_strcmp0 (self->rows[i].id, id) == 0)
      return i;
  return G_MAXUINT;
}

/* Boxes */

static void
measure_box (const LapWeekScore *self, LapWeekBox *box)
{
  const LapMeasure *m = self->look.measure;

  box->title_width = m->width (m->data, LAP_WEIGHT_STRONG, lap_class_title (box->c), -1) * self->look.em;
  box->initials_width = m->width (m->data, LAP_WEIGHT_STRONG, box->initials, -1) * self->look.em;
  box->detail_width = m->width (m->data, LAP_WEIGHT_PLAIN, box->detail, -1) * self->look.em;
}

static int
by_place (gconstpointer a, gconstpointer b)
{
  const LapWeekBox *x = a, *y = b;

  if (x->row != y->row)
    return x->row < y->row ? -1 : 1;
  if (x->start != y->start)
    return x->start - y->start;
  return (x->occurrence > y->occurrence) - (x->occurrence < y->occurrence);
}

static guint
nth_of (GArray *boxes, const LapClass *c)
{
  guint nth = 0;

  for (guint i = 0; i < boxes->len; i++)
    nth += g_array_index (boxes, LapWeekBox, i).c == c;
  return nth;
}

static void
make_boxes (LapWeekScore *self, LapAttachments *attachments)
{
  GArray *boxes = g_array_new (FALSE, TRUE, sizeof (LapWeekBox));

  for (guint i = 0; i < self->occurrences->len; i++) {
    const LapOccurrence *o = lap_occurrence_nth (self->occurrences, i);
    guint row = is_shown (&self->look, o)
                  ? lap_week_score_row (self, o->day, self->look.by_coach ? o->coach : o->room) : G_MAXUINT;
    LapWeekBox box = { .occurrence = i, .c = o->c, .row = row, .start = o->start, .next = LAP_NO_WEEK_BOX };
    LapClassFacts facts;

    if (row == G_MAXUINT)
      continue;
    lap_class_facts (o->c, attachments, &facts);
    box.strain = facts.strain;
    box.nth = o->date != 0 ? nth_of (boxes, o->c) : 0;
    box.end = MIN (o->start + o->c->minutes, LAP_DAY_MINUTES);
    box.off = o->state != LAP_HELD;
    box.changed = o->state == LAP_HELD && o->exception != NULL;
    box.initials = initials_text (lap_class_title (o->c));
    box.detail = detail_text (self, o);
    measure_box (self, &box);
    g_array_append_val (boxes, box);
  }
  g_array_sort (boxes, by_place);
  self->n = boxes->len;
  self->boxes = (LapWeekBox *) g_array_free (boxes, FALSE);
}

/* Puts the boxes of a row into as few lanes as show each of them whole; the number of lanes. */
static guint
make_lanes (LapWeekScore *self, LapWeekRow *row)
{
  g_autoptr (GArray) last = g_array_new (FALSE, FALSE, sizeof (guint)); /* box of each lane */

  for (guint i = row->first; i < row->first + row->n; i++) {
    LapWeekBox *box = &self->boxes[i];
    guint lane = 0;

    while (lane < last->len && self->boxes[g_array_index (last, guint, lane)].end > box->start)
      lane++;
    box->lane = lane;
    if (lane == last->len) {
      g_array_append_val (last, i);
      continue;
    }
    self->boxes[g_array_index (last, guint, lane)].next = i;
    g_array_index (last, guint, lane) = i;
  }
  return MAX (1, last->len);
}

static void
stack (LapWeekScore *self)
{
  int y = 0;
  guint at = 0;

  for (guint b = 0; b < self->n_bands; b++) {
    LapWeekBand *band = &self->bands[b];

    band->y = y;
    y += BAND_PAD;
    for (guint r = band->first_row; r < band->first_row + band->n_rows; r++) {
      LapWeekRow *row = &self->rows[r];

      row->first = at;
      while (at < self->n && self->boxes[at].row == r)
        at++;
      row->n = at - row->first;
      row->y = y;
      row->height = make_lanes (self, row) * self->cell;
      y += row->height;
      for (guint i = row->first; i < at; i++)
        self->boxes[i].y = row->y + self->boxes[i].lane * self->cell;
    }
    y += BAND_PAD;
    band->height = y - band->y;
  }
  self->height = y;
}

static gboolean
shares (const LapOccurrence *a, const LapOccurrence *b)
{
  return (a->room != NULL && g_strcmp0 (a->room, b->room) == 0) ||
         (a->coach != NULL && g_strcmp0 (a->coach, b->coach) == 0);
}

static void
find_clashes (LapWeekScore *self)
{
  for (guint i = 0; i < self->n; i++) {
    const LapWeekBox *a = &self->boxes[i];

    for (guint k = i + 1; k < self->n && self->rows[self->boxes[k].row].band == self->rows[a->row].band; k++) {
      const LapWeekBox *b = &self->boxes[k];
      LapWeekClash clash = { i, k, MAX (a->start, b->start), MIN (a->end, b->end) };

      if (clash.start < clash.end && !a->off && !b->off &&
          shares (lap_occurrence_nth (self->occurrences, a->occurrence),
                  lap_occurrence_nth (self->occurrences, b->occurrence)))
        g_array_append_val (self->clashes, clash);
    }
  }
}

static void
number_warnings (LapWeekScore *self, const LapCheckup *checkup)
{
  g_autoptr (GHashTable) numbers = g_hash_table_new (NULL, NULL);
  const LapMeasure *m = self->look.measure;

  for (guint n = lap_checkup_n (checkup); n-- > 0;) {
    const LapWarning *warning = lap_checkup_nth (checkup, n);

    for (guint i = 0; !warning->fine && i < warning->n_classes; i++)
      g_hash_table_insert (numbers, lap_warning_class (checkup, warning, i), GUINT_TO_POINTER (n + 1));
  }
  for (guint i = 0; i < self->n; i++) {
    LapWeekBox *box = &self->boxes[i];
    g_autofree char *number = NULL;

    box->warning = GPOINTER_TO_UINT (g_hash_table_lookup (numbers, box->c));
    number = g_strdup_printf ("%u", box->warning);
    if (box->warning > 9)
      box->number_width = m->width (m->data, LAP_WEIGHT_STRONG, number, -1) * self->look.em + MARK_GAP;
  }
}

/* The hours of the whole week, so that a filter doesn't move them. */
static void
find_hours (LapWeekScore *self)
{
  int first = LAP_DAY_MINUTES, last = 0;
  LapSpan open;

  for (int day = 0; day < LAP_N_DAYS; day++)
    if (self->week->open[day] != NULL && lap_week_open (self->week, day, &open)) {
      first = MIN (first, open.start);
      last = MAX (last, open.end);
    }
  if (first >= last) {
    first = FIRST;
    last = LAST;
  }
  for (guint i = 0; i < self->occurrences->len; i++) {
    const LapOccurrence *o = lap_occurrence_nth (self->occurrences, i);

    first = MIN (first, o->start);
    last = MAX (last, MIN (o->start + o->c->minutes, LAP_DAY_MINUTES));
  }
  self->first = first / 60 * 60;
  self->last = (last + 59) / 60 * 60;
}

LapWeekScore *
lap_week_score_new (LapWeek *week, int date, const LapWeekLook *look, const LapCheckup *checkup,
                    LapAttachments *attachments)
{
  LapWeekScore *self = g_new0 (LapWeekScore, 1);

  self->week = g_object_ref (week);
  self->occurrences = lap_occurrences_new (week, date);
  self->clashes = g_array_new (FALSE, FALSE, sizeof (LapWeekClash));
  self->look = *look;
  if (date != 0)
    self->look.first = lap_date_day (date);
  self->crest = lround (look->line * CREST);
  self->bar = lround (look->line * BAR);
  self->cell = self->crest + self->bar + lround (look->line * ((look->detailed ? 2 : 1) + PAD));
  find_hours (self);
  make_rows (self, date);
  make_boxes (self, attachments);
  stack (self);
  find_clashes (self);
  if (checkup != NULL)
    number_warnings (self, checkup);
  self->look.rooms = self->look.coaches = self->look.kinds = NULL;
  return self;
}

void
lap_week_score_free (LapWeekScore *self)
{
  for (guint i = 0; i < self->n; i++) {
    g_free (self->boxes[i].initials);
    g_free (self->boxes[i].detail);
  }
  g_free (self->boxes);
  g_free (self->rows);
  g_array_unref (self->clashes);
  g_array_unref (self->occurrences);
  g_object_unref (self->week);
  g_free (self);
}

/* Across */

void
lap_week_score_set_axis (const LapWeekScore *self, LapAxis *axis)
{
  int length = self->last - self->first;

  if (axis->n != 1 || axis->length != length)
    lap_axis_set_pieces (axis, &length, 1);
}

double
lap_week_score_x (const LapWeekScore *self, const LapAxis *axis, double minute)
{
  return lap_axis_x (axis, minute - self->first);
}

/* px along the axis from the start of @box to where its lane is taken again, or the hours end. */
static int
room_for_words (const LapWeekScore *self, const LapAxis *axis, const LapWeekBox *box)
{
  int from = lround (lap_week_score_x (self, axis, box->start)), to;

  if (box->next == LAP_NO_WEEK_BOX)
    to = lround (lap_week_score_x (self, axis, self->last));
  else
    to = lround (lap_week_score_x (self, axis, self->boxes[box->next].start));
  return MAX (0, ABS (to - from) - (box->next != LAP_NO_WEEK_BOX ? GAP : 0));
}

static void
place_words (const LapWeekScore *self, const LapWeekBox *box, int room, LapWeekPlaced *placed)
{
  int mark = box->warning > 0 ? ceil (self->look.line) + ceil (box->number_width) + MARK_GAP : 0;
  int name = ceil (box->title_width), detail = ceil (box->detail_width), left, needed;

  placed->mark = mark <= room ? mark : 0;
  left = room - placed->mark;
  if (name <= left)
    placed->named = LAP_NAMED_WHOLE;
  else if (CUT * self->look.em <= left) {
    placed->named = LAP_NAMED_CUT;
    name = left;
  } else {
    name = ceil (box->initials_width);
    placed->named = name <= left ? LAP_NAMED_INITIALS : LAP_NAMED_NOT;
  }
  needed = placed->mark + (placed->named != LAP_NAMED_NOT ? name : 0);
  if (self->look.detailed)
    placed->detailed = placed->named == LAP_NAMED_WHOLE || placed->named == LAP_NAMED_CUT;
  else
    placed->detailed = placed->named == LAP_NAMED_WHOLE && detail > 0 && needed + GAP + detail <= room;
  if (placed->detailed)
    needed = self->look.detailed ? MAX (needed, detail) : needed + GAP + detail;
  placed->words_width = MIN (room, needed);
}

LapWeekPlaced
lap_week_score_place (const LapWeekScore *self, const LapAxis *axis, guint index)
{
  const LapWeekBox *box = &self->boxes[index];
  int from = lround (lap_week_score_x (self, axis, box->start)), to = lround (lap_week_score_x (self, axis, box->end));
  int room = room_for_words (self, axis, box);
  LapWeekPlaced placed = { .y = box->y, .width = MAX (ABS (to - from), MIN (LEAST_BAR, room)) };

  placed.x = axis->mirrored ? from - placed.width : from;
  place_words (self, box, room, &placed);
  placed.words_x = axis->mirrored ? from - placed.words_width : from;
  return placed;
}

int
lap_week_score_step (const LapAxis *axis, double label)
{
  static const int steps[] = { 15, 30, 60, 120, 180, 240, 360 };

  for (guint i = 0; i < G_N_ELEMENTS (steps); i++)
    if (steps[i] * axis->zoom >= label)
      return steps[i];
  return steps[G_N_ELEMENTS (steps) - 1];
}

/* Back */

/* The nearest of bands or rows at @y: its first member is compared by offset. */
static guint
row_at (const LapWeekScore *self, double y)
{
  guint row = 0;

  while (row + 1 < self->n_rows && y >= self->rows[row + 1].y)
    row++;
  /* Just above the first row of a band it is that band's. */
  if (row + 1 < self->n_rows && y >= self->rows[row].y + self->rows[row].height + BAND_PAD)
    row++;
  return row;
}

static LapWeekEdge
edge_at (const LapWeekScore *self, const LapAxis *axis, const LapWeekPlaced *placed, double x, double y, double reach)
{
  double start = axis->mirrored ? placed->x + placed->width : placed->x;
  double end = axis->mirrored ? placed->x : placed->x + placed->width;

  if (y > placed->y + self->crest + self->bar + 2)
    return LAP_WEEK_EDGE_NONE;
  reach = MIN (reach, placed->width / 3.0);
  if (fabs (x - end) <= reach)
    return LAP_WEEK_EDGE_END;
  return fabs (x - start) <= reach ? LAP_WEEK_EDGE_START : LAP_WEEK_EDGE_NONE;
}

static gboolean
touches (const LapWeekScore *self, const LapWeekPlaced *placed, double x, double y)
{
  int left = MIN (placed->x, placed->words_x);
  int right = MAX (placed->x + placed->width, placed->words_x + placed->words_width);

  return y >= placed->y && y < placed->y + self->cell && x >= left && x < right;
}

static gboolean
is_on_mark (const LapWeekScore *self, const LapAxis *axis, const LapWeekPlaced *placed, double x, double y)
{
  double along = axis->mirrored ? placed->words_x + placed->words_width - x : x - placed->words_x;
  double down = y - placed->y - self->crest - self->bar;

  return along >= 0 && along < placed->mark && down >= 0 && down < self->look.line;
}

LapWeekHit
lap_week_score_hit (const LapWeekScore *self, const LapAxis *axis, double x, double y, double reach)
{
  LapWeekHit hit = { .row = row_at (self, y), .box = LAP_NO_WEEK_BOX };
  const LapWeekRow *row = &self->rows[hit.row];

  hit.band = row->band;
  hit.minute = self->first + lap_axis_second (axis, x);
  for (guint i = row->first; i < row->first + row->n; i++) {
    LapWeekPlaced placed = lap_week_score_place (self, axis, i);
    LapWeekEdge edge = LAP_WEEK_EDGE_NONE;

    if (y >= placed.y && y < placed.y + self->cell)
      edge = edge_at (self, axis, &placed, x, y, reach);
    if (edge == LAP_WEEK_EDGE_NONE && !touches (self, &placed, x, y))
      continue;
    hit.box = i;
    hit.edge = edge;
    hit.mark = is_on_mark (self, axis, &placed, x, y);
    /* At a seam the class under the pointer counts more than the end of the one before it. */
    if (touches (self, &placed, x, y))
      break;
  }
  return hit;
}

guint
lap_week_score_find (const LapWeekScore *self, const char *id)
{
  for (guint i = 0; id != NULL && i < self->n; i++)
    if (g_str_equal (self->boxes[i].c->id, id))
      return i;
  return LAP_NO_WEEK_BOX;
}

guint
lap_week_score_above (const LapWeekScore *self, guint index, int by)
{
  const LapWeekBox *box = &self->boxes[index];

  for (gint64 r = (gint64) box->row + by; r >= 0 && r < self->n_rows; r += by) {
    const LapWeekRow *row = &self->rows[r];
    guint best = LAP_NO_WEEK_BOX;

    for (guint i = row->first; i < row->first + row->n; i++)
      if (best == LAP_NO_WEEK_BOX || ABS (self->boxes[i].start - box->start) < ABS (self->boxes[best].start - box->start))
        best = i;
    if (best != LAP_NO_WEEK_BOX)
      return best;
  }
  return LAP_NO_WEEK_BOX;
}
