/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/face.h"
#include "place/formula.h"
#include "place/poster.h"

#include <string.h>

static LapPages *
build (LapTimeline *timeline, LapPaper paper, gboolean landscape, LapHide hide)
{
  LapSheetOptions options = { .paper = paper, .landscape = landscape, .hide = hide };

  return lap_poster_build (timeline, &options, face_measure ());
}

static guint
count_of (const LapPages *pages, LapRead read)
{
  guint n = 0;

  for (guint p = 0; p < lap_pages_n (pages); p++) {
    GArray *marks = lap_pages_nth (pages, p)->marks;

    for (guint i = 0; i < marks->len; i++)
      n += g_array_index (marks, LapMark, i).read == read;
  }
  return n;
}

/* Every number of stations on every paper, upright and on its side. */
static void
test_counts (void)
{
  for (guint n = 1; n <= 40; n++) {
    g_autoptr (LapTimeline) timeline = face_timeline (n, "\"rounds\": 2,", ", \"load\": \"8 kg\"");

    for (guint i = 0; i < 2 * lap_papers.n; i++) {
      g_autoptr (LapPages) pages = build (timeline, i / 2, i % 2, n % 3 == 0 ? LAP_HIDE_FIGURES : 0);

      face_check_pages (pages);
      g_assert_cmpuint (count_of (pages, LAP_READ_NUMBER), ==, n);
    }
  }
}

/* On A3 names read from 3 m (14 mm is 16 minutes of arc) and options from 1.9 m; the formula is twice 20 minutes. */
static void
test_heights (void)
{
  for (guint n = 1; n <= 40; n += 3)
    for (guint landscape = 0; landscape < 2; landscape++) {
      g_autoptr (LapTimeline) timeline = face_timeline (n, "\"rounds\": 2,", "");
      g_autoptr (LapPages) pages = build (timeline, LAP_PAPER_A3, landscape, 0);

      g_assert_cmpfloat (lap_pages_cap (pages, LAP_READ_NAME), >=, lap_cap_height (3, LAP_ARC_READABLE));
      g_assert_cmpfloat (lap_pages_cap (pages, LAP_READ_OPTION), >=, 9 - 1e-9);
    }
}

static void
test_formula_height (void)
{
  g_autoptr (LapTimeline) timeline = face_timeline (10, "\"rounds\": 2,", "");
  g_autoptr (LapPages) pages = build (timeline, LAP_PAPER_A3, TRUE, 0);
  g_autoptr (LapPages) small = build (timeline, LAP_PAPER_A4, TRUE, 0);

  g_assert_cmpfloat (lap_pages_cap (pages, LAP_READ_FORMULA), >=, lap_cap_height (3, 40));
  /* A4 is A3 seen from nearer by: 210 to 297. */
  g_assert_cmpfloat_with_epsilon (lap_pages_cap (small, LAP_READ_FORMULA),
                                  lap_pages_cap (pages, LAP_READ_FORMULA) * 210 / 297, 0.01);
}

/* Names read from as far as is asked for; from nearer by a page holds more. */
static void
test_distance (void)
{
  static const double distances[] = { 1.5, 2, 3, 4 };
  g_autoptr (LapTimeline) timeline = face_timeline (10, "\"rounds\": 2,", "");
  guint before = 0;

  for (guint i = 0; i < G_N_ELEMENTS (distances); i++) {
    LapSheetOptions options = { .paper = LAP_PAPER_A3, .distance = distances[i] };
    g_autoptr (LapPages) pages = lap_poster_build (timeline, &options, face_measure ());

    face_check_pages (pages);
    g_assert_cmpfloat (lap_cap_distance (lap_pages_cap (pages, LAP_READ_NAME), LAP_ARC_READABLE), >=,
                       distances[i] - 1e-9);
    g_assert_cmpuint (lap_pages_n (pages), >=, before);
    before = lap_pages_n (pages);
  }
}

static guint
count_solid (const LapPages *pages)
{
  guint n = 0;

  for (guint p = 0; p < lap_pages_n (pages); p++) {
    GArray *marks = lap_pages_nth (pages, p)->marks;

    for (guint i = 0; i < marks->len; i++) {
      const LapMark *mark = &g_array_index (marks, LapMark, i);

      n += mark->kind == LAP_MARK_BOX && mark->fill == LAP_ROLE_HARD;
    }
  }
  return n;
}

/* Off at first; what works hard is solid, and the legend says so. */
static void
test_body (void)
{
  static const char json[] =
    "{\"format\": \"lapwing-session\", \"version\": 1, \"id\": \"s\", \"title\": \"Stairs\", \"parts\": "
    "[{\"kind\": \"main\", \"blocks\": [{\"exercise\": \"squat\", \"work\": 40}]}]}";
  g_autoptr (LapTimeline) timeline = face_from_json (json);
  LapSheetOptions options = { .body = TRUE, .date = "2027-01-31" };
  g_autoptr (LapPages) without = build (timeline, LAP_PAPER_A4, FALSE, 0);
  g_autoptr (LapPages) pages = lap_poster_build (timeline, &options, face_measure ());
  g_autofree char *text = face_text (pages), *plain = face_text (without);

  face_check_pages (pages);
  /* A squat works both thighs, seen from the front, and the seat, from the back; and the legend has one more. */
  g_assert_cmpuint (timeline->tasks[0].primary, ==, LAP_BIT (LAP_MUSCLE_QUADS) | LAP_BIT (LAP_MUSCLE_GLUTES));
  g_assert_cmpuint (count_solid (pages), ==, 2 + 2 + 1);
  g_assert_cmpuint (count_solid (without), ==, 0);
  g_assert_nonnull (strstr (text, "works hard"));
  g_assert_null (strstr (plain, "works hard"));
  g_assert_nonnull (strstr (text, "Version of 2027-01-31"));
}

/* Two rounds of own exercises with names of German length. */
static void
test_long_names (void)
{
  static const char *const name = "Einbeiniges Rückenstreckerkräftigungsübungswiederholen";
  GString *json = g_string_new ("{\"format\": \"lapwing-session\", \"version\": 1, \"id\": \"s\", \"title\": "
                                "\"Kreislaufanregungsübungsstunde für Fortgeschrittene\", \"exercises\": [");

  for (guint i = 0; i < 12; i++)
    g_string_append_printf (json, "%s{\"id\": \"own-%u\", \"name\": \"%s %u\", \"for\": [\"work\"], \"pattern\": "
                            "\"hinge\", \"move\": \"strength\", \"posture\": \"standing\", \"primary\": [\"glutes\"], "
                            "\"sides\": \"both\", \"impact\": \"none\", \"noise\": \"silent\", \"met\": {\"steady\": "
                            "{\"value\": 3.8, \"code\": \"02022\"}, \"hard\": {\"value\": 6.5, \"code\": \"02057\"}, "
                            "\"edition\": 2024, \"confidence\": \"low\"}, \"width\": 1, \"length\": 1, \"view\": "
                            "\"side\", \"seconds-per-rep\": 3, \"say\": {\"setup\": \"Stand.\", \"cues\": [\"Bend.\"]}}",
                            i > 0 ? ", " : "", i, name, i);
  g_string_append (json, "], \"parts\": [{\"kind\": \"main\", \"blocks\": [");
  for (guint i = 0; i < 12; i++)
    g_string_append_printf (json, "%s{\"exercise\": \"own-%u\", \"work\": 40, \"rest\": 20}", i > 0 ? ", " : "", i);
  g_string_append (json, "]}]}");
  for (guint landscape = 0; landscape < 2; landscape++) {
    g_autoptr (LapTimeline) timeline = face_from_json (json->str);
    g_autoptr (LapPages) pages = build (timeline, LAP_PAPER_A3, landscape, 0);
    g_autofree char *text = face_text (pages);
    g_auto (GStrv) pieces = g_strsplit (text, "- ", -1);
    g_autofree char *joined = g_strjoinv ("", pieces);

    face_check_pages (pages);
    for (guint i = 0; i < 12; i++) {
      g_autofree char *whole = g_strdup_printf ("%s %u", name, i);

      g_assert_nonnull (strstr (joined, whole));
    }
  }
  g_string_free (json, TRUE);
}

static void
assert_formula (const char *part, const char *block, guint n, const char *expected)
{
  g_autoptr (LapTimeline) timeline = face_timeline (n, part, block);
  g_autofree char *text = lap_formula_text (timeline, 0);

  g_assert_cmpstr (text, ==, expected);
}

static void
test_formula (void)
{
  assert_formula ("\"rounds\": 2,", "", 10, "40 s work, 20 s rest × 10 exercises × 2 rounds");
  assert_formula ("\"run\": \"stations\",", "", 3, "40 s work, 20 s rest × 3 stations");
  assert_formula ("", "", 1, "40 s work, 20 s rest × 1 exercise");
  assert_formula ("\"sets\": 3, \"set-rest\": 10,", "", 2, "40 s work, 20 s rest × 3 sets × 2 exercises");
  assert_formula ("\"rounds\": 2, \"steps\": [{\"work\": 45, \"rest\": 15}, {\"work\": 30, \"rest\": 30}],", "", 4,
                  "30–45 s work, 15–30 s rest × 4 exercises × 2 rounds");
  assert_formula ("", ", \"reps\": 12", 4, "12 reps in 40 s, 20 s rest × 4 exercises");
  assert_formula ("", ", \"reps\": [8, 12]", 4, "8–12 reps in 40 s, 20 s rest × 4 exercises");
  assert_formula ("\"run\": \"own-pace\", \"cap\": 720,", ", \"reps\": 10", 4,
                  "as many rounds as you can in 12 min × 4 exercises");
  assert_formula ("\"run\": \"on-the-minute\", \"rounds\": 5,", "", 3,
                  "40 s work each minute × 3 exercises × 5 rounds");
  assert_formula ("\"run\": \"on-the-minute\", \"every\": 90, \"rounds\": 5,", ", \"reps\": 8", 1,
                  "8 reps every 90 s × 1 exercise × 5 rounds");
}

/* Each way to run a part, and all texts of 10,000 letters, stay on the page. */
static void
test_odd_sessions (void)
{
  static const char *const parts[] = {
    "\"run\": \"own-pace\", \"cap\": 720,", "\"run\": \"on-the-minute\", \"every\": 90, \"rounds\": 5,",
    "\"rounds\": 100, \"sets\": 2, \"round-rest\": 75,",
    "\"rounds\": 20, \"sets\": 8, \"steps\": [{\"work\": 5, \"rest\": 0}, {\"work\": 127, \"rest\": 128}],",
    "\"rounds\": 2, \"steps\": [{\"work\": 615, \"rest\": 15}, {\"work\": 1845, \"rest\": 130}],",
  };
  g_autofree char *words = g_strnfill (9000, 'w');
  g_autofree char *block = NULL;

  for (int i = 6; i < 9000; i += 7)
    words[i] = ' ';
  block = g_strdup_printf (", \"load\": \"%s\"", words);
  for (guint i = 0; i < G_N_ELEMENTS (parts); i++)
    for (guint k = 0; k < 4; k++) {
      g_autoptr (LapTimeline) timeline = face_timeline (3, parts[i], k < 2 ? "" : block);
      g_autoptr (LapPages) pages = build (timeline, k < 2 ? LAP_PAPER_A3 : LAP_PAPER_A4, k % 2, 0);

      face_check_pages (pages);
    }
}

static void
test_words (void)
{
  g_autoptr (LapTimeline) timeline = face_timeline (3, "\"run\": \"stations\", \"per-station\": 2, \"rounds\": 2,",
                                                    ", \"in-round\": {\"2\": {\"exercise\": \"squat-jump\"}}");
  g_autoptr (LapPages) pages = build (timeline, LAP_PAPER_A3, TRUE, 0);
  g_autofree char *text = face_text (pages);

  g_assert_nonnull (strstr (text, "2 people at each"));
  g_assert_nonnull (strstr (text, "2: Squat jump"));
  g_assert_nonnull (strstr (text, "Warm up first."));
  g_assert_nonnull (strstr (text, "clinician"));
  g_assert_null (strstr (text, "exercises"));
}

static void
test_mirror (void)
{
  g_autoptr (LapTimeline) timeline = face_timeline (10, "", "");
  g_autoptr (LapPages) pages = build (timeline, LAP_PAPER_A3, FALSE, 0);
  LapPage *page = lap_pages_nth (pages, 0);
  LapMark before = g_array_index (page->marks, LapMark, 2);

  lap_page_mirror (page);
  face_check_pages (pages);
  g_assert_cmpfloat_with_epsilon (g_array_index (page->marks, LapMark, 2).x, page->width - before.x - before.width,
                                  1e-9);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/place/poster/counts", test_counts);
  g_test_add_func ("/place/poster/heights", test_heights);
  g_test_add_func ("/place/poster/distance", test_distance);
  g_test_add_func ("/place/poster/body", test_body);
  g_test_add_func ("/place/poster/formula-height", test_formula_height);
  g_test_add_func ("/place/poster/long-names", test_long_names);
  g_test_add_func ("/place/poster/formula", test_formula);
  g_test_add_func ("/place/poster/odd-sessions", test_odd_sessions);
  g_test_add_func ("/place/poster/words", test_words);
  g_test_add_func ("/place/poster/mirror", test_mirror);
  return g_test_run ();
}
