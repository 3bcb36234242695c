/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The score of a week: where classes lie, what their words have room for, the way back from a point; and of random
 * weeks that no words lie over each other or over a class, whatever the hours, the filter and the direction.
 */
#include "place/face.h"
#include "place/week-score.h"
#include "weeks.h"

#include <math.h>

#define EM   10 /* a letter of the face is 6 px */
#define LINE 15
#define CREST 9
#define BAR   8
#define CELL (CREST + BAR + 20)

#define HEAD "'format': 'lapwing-week', 'version': 1, 'id': 'w', 'title': 'Sea Loft', 'timezone': 'Europe/Lisbon', " \
             "'rooms': [{'id': 'loft', 'name': 'Loft'}, {'id': 'yard', 'name': 'Yard'}], " \
             "'coaches': [{'id': 'mira', 'name': 'Mira'}, {'id': 'teo', 'name': 'Teo'}]"
#define OPEN "'open': {'mon': ['06:30', '21:30'], 'tue': ['07:00', '20:00']}"
#define CLASS(id, title, minutes, day, start, room, coach)                                                            \
  "{'id': '" id "', 'title': '" title "', 'kind': 'k', 'minutes': " #minutes ", 'day': '" day "', 'start': '" start   \
  "', 'room': '" room "', 'coach': '" coach "'}"

static LapWeekLook
plain_look (void)
{
  return (LapWeekLook) { .day = -1, .measure = face_measure (), .em = EM, .line = LINE };
}

static LapWeekScore *
score_of (const char *text, const char *date, const LapWeekLook *look)
{
  g_autoptr (LapWeek) week = test_week (text);
  int day = date != NULL ? lap_date_monday (lap_date_parse (date)) : 0;
  g_autoptr (LapCheckup) checkup = lap_checkup_new_week (week, day, NULL);

  return lap_week_score_new (week, day, look, checkup, NULL);
}

/* One px a minute where the view is as wide as the hours. */
static LapAxis *
axis_of (const LapWeekScore *score, double zoom, gboolean mirrored)
{
  LapAxis *axis = lap_axis_new ();

  lap_week_score_set_axis (score, axis);
  lap_axis_set_view (axis, zoom * (score->last - score->first), mirrored);
  lap_axis_zoom_at (axis, zoom, 0);
  lap_axis_scroll (axis, 0);
  return axis;
}

#define THREE "{" HEAD ", " OPEN ", 'classes': [" CLASS ("a", "Early forty", 45, "mon", "06:30", "loft", "mira") ", " \
              CLASS ("b", "Lunch legs", 30, "mon", "07:15", "loft", "teo") ", "                                      \
              CLASS ("c", "Late", 60, "tue", "19:00", "yard", "teo") "]}"

static void
test_hours_and_lines (void)
{
  LapWeekLook look = plain_look ();
  g_autoptr (LapWeekScore) score = score_of (THREE, NULL, &look);

  g_assert_cmpint (score->first, ==, 6 * 60);
  g_assert_cmpint (score->last, ==, 22 * 60);
  g_assert_cmpuint (score->n_bands, ==, 7);
  g_assert_cmpuint (score->n_rows, ==, 14);
  g_assert_cmpint (score->cell, ==, CELL);
  g_assert_cmpint (score->height, ==, 7 * (2 * CELL + 12));
  g_assert_cmpint (score->bands[1].y, ==, 2 * CELL + 12);
  g_assert_cmpstr (score->rows[3].title, ==, "Yard");
  g_assert_cmpuint (lap_week_score_row (score, LAP_DAY_TUE, "yard"), ==, 3);
  g_assert_cmpuint (lap_week_score_find (score, "c"), ==, 2);
  g_assert_cmpuint (lap_week_score_find (score, "none"), ==, LAP_NO_WEEK_BOX);
}

/* Hours from 6:00 to 22:00: 960 px at 1 px a minute. */
static const struct {
  double      zoom;
  gboolean    mirrored;
  const char *id;
  int         x, width, words_x, words_width;
  LapNamed    named;
  gboolean    detailed;
} places[] = {
  /* 45 px until the next class, less a gap of 6: "Early forty" has 66 px and is cut off. */
  { 1, FALSE, "a", 30, 45, 30, 39, LAP_NAMED_CUT, FALSE },
  /* Nothing follows: "Lunch legs" (60 px), a gap of 6 and "Teo" (18 px). */
  { 1, FALSE, "b", 75, 30, 75, 84, LAP_NAMED_WHOLE, TRUE },
  { 1, FALSE, "c", 780, 60, 780, 48, LAP_NAMED_WHOLE, TRUE },
  { 2, FALSE, "a", 60, 90, 60, 66, LAP_NAMED_WHOLE, FALSE },
  { 3, FALSE, "a", 90, 135, 90, 96, LAP_NAMED_WHOLE, TRUE },
  /* 22.5 px until the next: less the gap there are 17, which "EF" (12 px) fits into. */
  { 0.5, FALSE, "a", 15, 23, 15, 12, LAP_NAMED_INITIALS, FALSE },
  { 0.25, FALSE, "a", 8, 11, 8, 0, LAP_NAMED_NOT, FALSE },
  /* Time comes from the right. */
  { 1, TRUE, "a", 885, 45, 891, 39, LAP_NAMED_CUT, FALSE },
  { 1, TRUE, "c", 120, 60, 132, 48, LAP_NAMED_WHOLE, TRUE },
};

static void
test_places (void)
{
  LapWeekLook look = plain_look ();
  g_autoptr (LapWeekScore) score = score_of (THREE, NULL, &look);

  for (guint i = 0; i < G_N_ELEMENTS (places); i++) {
    g_autoptr (LapAxis) axis = axis_of (score, places[i].zoom, places[i].mirrored);
    LapWeekPlaced placed = lap_week_score_place (score, axis, lap_week_score_find (score, places[i].id));

    g_assert_cmpint (placed.x, ==, places[i].x);
    g_assert_cmpint (placed.width, ==, places[i].width);
    g_assert_cmpint (placed.words_x, ==, places[i].words_x);
    g_assert_cmpint (placed.words_width, ==, places[i].words_width);
    g_assert_cmpint (placed.named, ==, places[i].named);
    g_assert_cmpint (placed.detailed, ==, places[i].detailed);
  }
}

/* The first line of Monday is from 6 to 43 px, its bars from 15 to 23; that of Tuesday's yard from 135 on. */
static const struct {
  double      x, y;
  gboolean    mirrored;
  guint       row;
  double      minute;
  const char *id;
  LapWeekEdge edge;
} hits[] = {
  { 50, 18, FALSE, 0, 6 * 60 + 50, "a", LAP_WEEK_EDGE_NONE },
  { 31, 18, FALSE, 0, 6 * 60 + 31, "a", LAP_WEEK_EDGE_START },
  { 28, 18, FALSE, 0, 6 * 60 + 28, "a", LAP_WEEK_EDGE_START },
  { 24, 18, FALSE, 0, 6 * 60 + 24, NULL, LAP_WEEK_EDGE_NONE },
  { 73, 18, FALSE, 0, 7 * 60 + 13, "a", LAP_WEEK_EDGE_END },
  { 76, 18, FALSE, 0, 7 * 60 + 16, "b", LAP_WEEK_EDGE_START },
  { 104, 18, FALSE, 0, 7 * 60 + 44, "b", LAP_WEEK_EDGE_END },
  /* On the words: the class, but no edge. */
  { 104, 35, FALSE, 0, 7 * 60 + 44, "b", LAP_WEEK_EDGE_NONE },
  { 158, 35, FALSE, 0, 8 * 60 + 38, "b", LAP_WEEK_EDGE_NONE },
  { 160, 35, FALSE, 0, 8 * 60 + 40, NULL, LAP_WEEK_EDGE_NONE },
  { 800, 140, FALSE, 3, 19 * 60 + 20, "c", LAP_WEEK_EDGE_NONE },
  { 800, -20, FALSE, 0, 19 * 60 + 20, NULL, LAP_WEEK_EDGE_NONE },
  { 2000, 9999, FALSE, 13, 22 * 60, NULL, LAP_WEEK_EDGE_NONE },
  { 929, 18, TRUE, 0, 6 * 60 + 31, "a", LAP_WEEK_EDGE_START },
  { 887, 18, TRUE, 0, 7 * 60 + 13, "a", LAP_WEEK_EDGE_END },
};

static void
test_hits (void)
{
  LapWeekLook look = plain_look ();
  g_autoptr (LapWeekScore) score = score_of (THREE, NULL, &look);

  for (guint i = 0; i < G_N_ELEMENTS (hits); i++) {
    g_autoptr (LapAxis) axis = axis_of (score, 1, hits[i].mirrored);
    LapWeekHit hit = lap_week_score_hit (score, axis, hits[i].x, hits[i].y, 4);

    g_assert_cmpuint (hit.row, ==, hits[i].row);
    g_assert_cmpuint (hit.band, ==, score->rows[hit.row].band);
    g_assert_cmpfloat_with_epsilon (hit.minute, hits[i].minute, 1e-6);
    g_assert_cmpstr (hit.box != LAP_NO_WEEK_BOX ? score->boxes[hit.box].c->id : NULL, ==, hits[i].id);
    g_assert_cmpint (hit.edge, ==, hits[i].edge);
  }
}

/* Two at once in a room lie below each other; who shares a coach is told as a clash; so is its warning. */
static void
test_clashes (void)
{
  LapWeekLook look = plain_look ();
  g_autoptr (LapWeekScore) score = score_of (
    "{" HEAD ", 'classes': [" CLASS ("a", "One", 60, "mon", "10:00", "loft", "mira") ", "
    CLASS ("b", "Two", 60, "mon", "10:30", "loft", "teo") ", " CLASS ("c", "Three", 60, "mon", "11:00", "loft", "mira")
    ", " CLASS ("d", "Four", 60, "mon", "10:15", "yard", "mira") "]}", NULL, &look);
  const LapWeekBox *boxes = score->boxes;

  g_assert_cmpuint (boxes[0].lane, ==, 0);
  g_assert_cmpuint (boxes[1].lane, ==, 1);
  g_assert_cmpuint (boxes[2].lane, ==, 0);
  g_assert_cmpuint (boxes[0].next, ==, 2);
  g_assert_cmpint (score->rows[0].height, ==, 2 * CELL);
  g_assert_cmpint (boxes[1].y, ==, boxes[0].y + CELL);
  /* One and Two, One and Four, Two and Three in the loft; Three and Four. */
  g_assert_cmpuint (score->clashes->len, ==, 4);
  for (guint i = 0; i < score->clashes->len; i++) {
    const LapWeekClash *clash = &g_array_index (score->clashes, LapWeekClash, i);

    g_assert_cmpint (clash->start, <, clash->end);
    g_assert_cmpuint (boxes[clash->a].warning, >, 0);
    g_assert_cmpuint (boxes[clash->b].warning, >, 0);
  }
  g_assert_cmpint (g_array_index (score->clashes, LapWeekClash, 0).start, ==, 10 * 60 + 30);
  g_assert_cmpint (g_array_index (score->clashes, LapWeekClash, 0).end, ==, 11 * 60);
}

static void
test_looks (void)
{
  g_autoptr (GHashTable) coaches = g_hash_table_new (g_str_hash, g_str_equal);
  LapWeekLook look = plain_look ();
  g_autoptr (LapWeekScore) by_coach = NULL, filtered = NULL, one_day = NULL, detailed = NULL, none = NULL;

  look.by_coach = TRUE;
  by_coach = score_of (THREE, NULL, &look);
  g_assert_cmpstr (by_coach->rows[1].title, ==, "Teo");
  g_assert_cmpstr (by_coach->boxes[0].detail, ==, "Loft");
  g_hash_table_add (coaches, (char *) "teo");
  look = plain_look ();
  look.coaches = coaches;
  filtered = score_of (THREE, NULL, &look);
  g_assert_cmpuint (filtered->n, ==, 2);
  g_assert_cmpuint (filtered->n_rows, ==, 14);
  g_assert_cmpint (filtered->first, ==, 6 * 60);
  look.by_coach = TRUE;
  g_clear_pointer (&filtered, lap_week_score_free);
  filtered = score_of (THREE, NULL, &look);
  g_assert_cmpuint (filtered->n_rows, ==, 7);
  look = plain_look ();
  look.day = LAP_DAY_TUE;
  look.detailed = TRUE;
  one_day = score_of (THREE, NULL, &look);
  g_assert_cmpuint (one_day->n_bands, ==, 1);
  g_assert_cmpuint (one_day->n, ==, 1);
  g_assert_cmpstr (one_day->boxes[0].detail, ==, "19:00 Teo, 60 min");
  g_assert_cmpint (one_day->cell, ==, CELL + LINE);
  look = plain_look ();
  none = score_of ("{'format': 'lapwing-week', 'version': 1, 'id': 'w', 'title': '', 'timezone': 'UTC', "
                   "'classes': [{'id': 'a', 'kind': 'k', 'minutes': 30, 'day': 'sun', 'start': '05:10'}]}", NULL, &look);
  g_assert_cmpuint (none->n_rows, ==, 7);
  g_assert_null (none->rows[6].id);
  g_assert_cmpint (none->first, ==, 5 * 60);
  g_assert_cmpuint (none->boxes[0].row, ==, 6);
}

/* The mark of a warning stands before the name, a number from ten on behind it. */
static void
test_marks (void)
{
  LapWeekLook look = plain_look ();
  g_autoptr (LapWeekScore) score = score_of (
    "{" HEAD ", 'classes': [" CLASS ("a", "One", 60, "mon", "10:00", "loft", "mira") ", "
    CLASS ("b", "Two", 60, "mon", "10:30", "yard", "mira") "]}", NULL, &look);
  g_autoptr (LapAxis) axis = axis_of (score, 1, FALSE), mirrored = axis_of (score, 1, TRUE);
  LapWeekPlaced placed = lap_week_score_place (score, axis, 0), other = lap_week_score_place (score, mirrored, 0);
  double right = other.words_x + other.words_width;

  /* Where the mark is, and beside it: on the bar, on the name, below the line. */
  g_assert_true (lap_week_score_hit (score, axis, placed.words_x + 2, placed.y + CREST + BAR + 2, 0).mark);
  g_assert_false (lap_week_score_hit (score, axis, placed.words_x + 2, placed.y + CREST + 2, 0).mark);
  g_assert_false (lap_week_score_hit (score, axis, placed.words_x + LINE + 4, placed.y + CREST + BAR + 2, 0).mark);
  g_assert_true (lap_week_score_hit (score, mirrored, right - 2, other.y + CREST + BAR + 2, 0).mark);
  g_assert_false (lap_week_score_hit (score, mirrored, right - LINE - 4, other.y + CREST + BAR + 2, 0).mark);
  g_assert_cmpint (placed.mark, ==, LINE + 2);
  g_assert_cmpint (placed.words_width, ==, LINE + 2 + 18 + 6 + 24); /* "One", "Mira" */
  score->boxes[0].number_width = 14;
  placed = lap_week_score_place (score, axis, 0);
  g_assert_cmpint (placed.mark, ==, LINE + 2 + 14);
}

/* 18 January 2027 is a Monday. */
static void
test_dates (void)
{
  LapWeekLook look = plain_look ();
  g_autoptr (LapWeekScore) score = score_of (
    "{" HEAD ", 'classes': [" CLASS ("a", "One", 60, "mon", "10:00", "loft", "mira") ", "
    CLASS ("b", "Two", 60, "tue", "10:30", "loft", "teo") ", " CLASS ("c", "Three", 60, "wed", "11:00", "loft", "mira")
    ", " CLASS ("d", "Four", 60, "fri", "11:00", "loft", "mira") "],"
    "'except': [{'class': 'a', 'date': '2027-01-18', 'cancelled': true}, {'class': 'b', 'date': '2027-01-19', "
    "'coach': 'mira'}, {'class': 'd', 'date': '2027-01-22', 'to': '2027-02-03'}, {'class': 'c', 'date': '2027-01-20', 'start': "
    "'09:00'}]}", "2027-01-20", &look);

  g_assert_cmpint (score->bands[2].date, ==, lap_date_parse ("2027-01-20"));
  g_assert_true (score->boxes[0].off);
  g_assert_cmpstr (score->boxes[0].detail, ==, "cancelled");
  g_assert_true (score->boxes[1].changed);
  g_assert_cmpstr (score->boxes[1].detail, ==, "Mira for Teo");
  g_assert_true (score->boxes[2].changed && !score->boxes[2].off);
  g_assert_cmpstr (score->boxes[2].detail, ==, "Mira, moved");
  g_assert_cmpstr (score->boxes[3].detail, ==, "moved to 2027-02-03");
}

static void
test_up_and_down (void)
{
  LapWeekLook look = plain_look ();
  g_autoptr (LapWeekScore) score = score_of (THREE, NULL, &look);

  g_assert_cmpuint (lap_week_score_above (score, 0, 1), ==, 2);
  g_assert_cmpuint (lap_week_score_above (score, 2, -1), ==, 1);
  g_assert_cmpuint (lap_week_score_above (score, 0, -1), ==, LAP_NO_WEEK_BOX);
}

/* Random weeks */

static LapWeek *
random_week (GRand *rand)
{
  LapWeek *week = lap_week_new ("Random", "UTC");
  int rooms = g_rand_int_range (rand, 0, 9), classes = g_rand_int_range (rand, 0, 201);
  g_autoptr (GPtrArray) added = g_ptr_array_new ();

  for (int i = 0; i < rooms; i++) {
    g_autofree char *id = g_strdup_printf ("r%d", i);

    g_ptr_array_add (added, lap_room_new (id, NULL));
  }
  lap_list_splice (week->rooms, 0, 0, added);
  g_ptr_array_set_size (added, 0);
  for (int i = 0; i < classes; i++) {
    LapClass *c = lap_class_new ("kind", g_rand_int_range (rand, 1, 120));

    c->title = g_strnfill (g_rand_int_range (rand, 0, 30), "aB -"[i % 4]);
    c->day = g_rand_int_range (rand, 0, 7);
    c->start = g_rand_boolean (rand) ? g_rand_int_range (rand, 0, LAP_DAY_MINUTES - c->minutes)
                                     : 15 * g_rand_int_range (rand, 24, 84);
    if (rooms > 0 && g_rand_int_range (rand, 0, 10) > 0)
      c->room = g_strdup_printf ("r%d", g_rand_int_range (rand, 0, rooms));
    g_ptr_array_add (added, c);
  }
  lap_list_splice (week->classes, 0, 0, added);
  return week;
}

typedef struct {
  int left, right, top, bottom;
} Area;

static gboolean
overlap (const Area *a, const Area *b)
{
  return a->left < b->right && b->left < a->right && a->top < b->bottom && b->top < a->bottom;
}

static void
check_boxes (const LapWeekScore *score, const LapAxis *axis)
{
  g_autoptr (GArray) areas = g_array_new (FALSE, FALSE, sizeof (Area));

  for (guint i = 0; i < score->n; i++) {
    const LapWeekBox *box = &score->boxes[i];
    const LapWeekRow *row = &score->rows[box->row];
    LapWeekPlaced p = lap_week_score_place (score, axis, i);
    Area bar = { p.x, p.x + p.width, p.y + score->crest, p.y + score->crest + score->bar };
    Area words = { p.words_x, p.words_x + p.words_width, bar.bottom, p.y + score->cell };
    LapWeekHit hit = lap_week_score_hit (score, axis, p.x + p.width / 2.0, bar.top + 1, 0);

    g_assert_cmpint (p.y, >=, row->y);
    g_assert_cmpint (p.y + score->cell, <=, row->y + row->height);
    g_assert_cmpint (row->y + row->height, <=, score->bands[row->band].y + score->bands[row->band].height);
    g_assert_cmpint (p.width, >, 0);
    if (p.width > 1) /* of a minute in less than a pixel the middle isn't inside */
      g_assert_cmpuint (hit.box, ==, i);
    for (guint k = 0; k < areas->len; k++)
      g_assert_false (overlap (&bar, &g_array_index (areas, Area, k)) || overlap (&words, &g_array_index (areas, Area, k)));
    g_array_append_val (areas, bar);
    g_array_append_val (areas, words);
  }
}

static void
test_random (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (48);

  for (int i = 0; i < 60; i++) {
    g_autoptr (LapWeek) week = random_week (rand);
    g_autoptr (LapCheckup) checkup = lap_checkup_new_week (week, 0, NULL);
    LapWeekLook look = plain_look ();
    g_autoptr (LapWeekScore) score = NULL;
    g_autoptr (LapAxis) axis = NULL;

    look.detailed = g_rand_boolean (rand);
    look.day = g_rand_int_range (rand, -1, 7);
    score = lap_week_score_new (week, 0, &look, checkup, NULL);
    axis = axis_of (score, g_rand_double_range (rand, 0.3, 6), g_rand_boolean (rand));
    check_boxes (score, axis);
  }
}

static void
test_steps (void)
{
  static const struct { double zoom; int step; } rows[] = {
    { 0.2, 240 }, { 0.4, 120 }, { 0.67, 60 }, { 1.1, 60 }, { 1.4, 30 }, { 4, 15 },
  };
  g_autoptr (LapAxis) axis = lap_axis_new ();

  lap_axis_set_pieces (axis, (int[]) { 960 }, 1);
  lap_axis_set_view (axis, 100, FALSE);
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++) {
    lap_axis_zoom_at (axis, rows[i].zoom, 0);
    g_assert_cmpint (lap_week_score_step (axis, 40), ==, rows[i].step);
  }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/week-score/hours-and-lines", test_hours_and_lines);
  g_test_add_func ("/week-score/places", test_places);
  g_test_add_func ("/week-score/hits", test_hits);
  g_test_add_func ("/week-score/clashes", test_clashes);
  g_test_add_func ("/week-score/looks", test_looks);
  g_test_add_func ("/week-score/marks", test_marks);
  g_test_add_func ("/week-score/dates", test_dates);
  g_test_add_func ("/week-score/up-and-down", test_up_and_down);
  g_test_add_func ("/week-score/random", test_random);
  g_test_add_func ("/week-score/steps", test_steps);
  return g_test_run ();
}
