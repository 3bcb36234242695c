/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/camera-plan.h"
#include "place/face.h"
#include "place/running-order.h"

#include <math.h>
#include <string.h>

static LapPages *
build (LapTimeline *timeline, LapPaper paper, gboolean landscape)
{
  LapSheetOptions options = { .paper = paper, .landscape = landscape };

  return lap_running_order_build (timeline, &options, face_measure ());
}

static void
test_counts (void)
{
  for (guint n = 1; n <= 40; n += 3) {
    g_autoptr (LapTimeline) timeline = face_timeline (n, "\"rounds\": 3, \"round-rest\": 60,", ", \"note\": \"slow\"");

    for (guint paper = 0; paper < lap_papers.n; paper++) {
      g_autoptr (LapPages) pages = build (timeline, paper, n % 2);

      face_check_pages (pages);
    }
  }
}

/* Two squats of 40/20 in two rounds with 60 s between: at 0:00 and 1:00, then 3:00 and 4:00; on film 90 s later. */
static void
test_clocks (void)
{
  static const char json[] =
    "{\"format\": \"lapwing-session\", \"version\": 1, \"id\": \"s\", \"title\": \"Stairs\", \"film\": {\"lead\": 90}, "
    "\"parts\": [{\"kind\": \"main\", \"rounds\": 2, \"round-rest\": 60, \"blocks\": [{\"exercise\": \"squat\", "
    "\"work\": 40, \"rest\": 20}, {\"exercise\": \"push-up\", \"work\": 40, \"rest\": 20}, {\"pause\": \"water\", "
    "\"seconds\": 5}]}, {\"kind\": \"closing\", \"blocks\": [{\"talk\": \"Well done.\", \"seconds\": 30}]}]}";
  g_autoptr (LapTimeline) timeline = face_from_json (json);
  g_autoptr (LapPages) pages = build (timeline, LAP_PAPER_A4, FALSE);
  g_autofree char *text = face_text (pages);

  face_check_pages (pages);
  /* Film clocks stand before those of the session; a pause of 5 s moves the second round on. */
  g_assert_nonnull (strstr (text, "1:30 4:35 0:00 3:05 1 Squat"));
  g_assert_nonnull (strstr (text, "2:30 5:35 1:00 4:05 2 Push-up"));
  g_assert_nonnull (strstr (text, "Plank"));
  g_assert_nonnull (strstr (text, "water, 5 s"));
  g_assert_nonnull (strstr (text, "Break between rounds, 60 s"));
  g_assert_nonnull (strstr (text, "Well done."));
  g_assert_nonnull (strstr (text, "clinician"));
}

/* A squat seen three-quarter is 1.0 m wide and 1.9 m high: at 26 mm its height asks for 3.05 m to its middle (the
 * table in tests/catalogue/camera.c), half of its footprint on top and rounded up. A push-up from the side, 0.9 m high
 * and 2.0 m long, for 1.81 m. */
static void
test_camera (void)
{
  static const char json[] =
    "{\"format\": \"lapwing-session\", \"version\": 1, \"id\": \"s\", \"title\": \"Stairs\", \"parts\": [{\"kind\": "
    "\"main\", \"rounds\": 2, \"blocks\": [{\"exercise\": \"push-up\", \"work\": 40, \"rest\": 20}, {\"exercise\": "
    "\"squat\", \"work\": 40, \"rest\": 20}]}]}";
  g_autoptr (LapTimeline) timeline = face_from_json (json);
  const LapExercise *push_up = timeline->tasks[timeline->turns[0].task].shown;
  const LapExercise *squat = timeline->tasks[timeline->turns[1].task].shown;
  g_autoptr (LapPages) pages = build (timeline, LAP_PAPER_A4, FALSE);
  g_autofree char *text = face_text (pages), *push = NULL, *fixed = NULL;
  double distance;

  g_assert_true (lap_camera_governs (timeline, &distance) == &timeline->turns[1]);
  g_assert_cmpfloat_with_epsilon (distance, 3.05 + squat->length / 2, 0.01);
  push = g_strdup_printf ("side %.1f\xc2\xa0m", ceil ((1.81 + push_up->width / 2) * 10) / 10);
  fixed = g_strdup_printf ("one fixed set-up: %.1f\xc2\xa0m away with 26 mm, landscape. Squat needs the most.",
                           ceil ((3.05 + squat->length / 2) * 10) / 10);
  g_assert_nonnull (strstr (text, push));
  g_assert_nonnull (strstr (text, fixed));
  g_assert_null (strstr (text, "The room gives"));
  g_object_set (timeline->session, "film-room", 2.5, NULL);
  g_free (fixed);
  fixed = lap_camera_plan_text (timeline);
  g_assert_nonnull (strstr (fixed, "The room gives 2.5\xc2\xa0m"));
}

static guint
count_signs (const LapPages *pages, LapSign sign)
{
  guint n = 0;

  for (guint p = 0; p < lap_pages_n (pages); p++) {
    GArray *marks = lap_pages_nth (pages, p)->marks;

    for (guint i = 0; i < marks->len; i++)
      n += g_array_index (marks, LapMark, i).kind == LAP_MARK_SIGN && g_array_index (marks, LapMark, i).sign == sign;
  }
  return n;
}

/* Face down or on the back, nobody sees a screen; the mark is explained once a page. */
static void
test_unseen (void)
{
  static const char json[] =
    "{\"format\": \"lapwing-session\", \"version\": 1, \"id\": \"s\", \"title\": \"Stairs\", \"parts\": [{\"kind\": "
    "\"main\", \"rounds\": 2, \"blocks\": [{\"exercise\": \"push-up\", \"work\": 40, \"rest\": 20}, {\"exercise\": "
    "\"squat\", \"work\": 40, \"rest\": 20}, {\"exercise\": \"glute-bridge\", \"work\": 40, \"rest\": 20}, "
    "{\"exercise\": \"prone-w-raise\", \"work\": 40, \"rest\": 20}]}]}";
  g_autoptr (LapTimeline) timeline = face_from_json (json);
  g_autoptr (LapPages) pages = build (timeline, LAP_PAPER_A4, FALSE);

  g_assert_cmpuint (lap_pages_n (pages), ==, 1);
  g_assert_cmpuint (count_signs (pages, LAP_SIGN_UNSEEN), ==, 3 + 1);
}

/* In order of time every round has its rows, with what it changes under its own name. */
static void
test_unfolded (void)
{
  static const char json[] =
    "{\"format\": \"lapwing-session\", \"version\": 1, \"id\": \"s\", \"title\": \"Stairs\", \"parts\": [{\"kind\": "
    "\"main\", \"rounds\": 2, \"round-rest\": 60, \"blocks\": [{\"exercise\": \"squat\", \"work\": 40, \"rest\": 20, "
    "\"in-round\": {\"2\": {\"exercise\": \"squat-jump\"}}}, {\"exercise\": \"push-up\", \"work\": 40, "
    "\"rest\": 20}]}]}";
  static const char *const order[] = { "Round 1 of 2", "0:00", "1 Squat", "1:00", "2 Push-up", "2:00", "Break",
                                       "Round 2 of 2", "3:00", "1 Squat jump", "4:00", "2 Push-up" };
  g_autoptr (LapTimeline) timeline = face_from_json (json);
  LapSheetOptions options = { .unfolded = TRUE };
  g_autoptr (LapPages) pages = lap_running_order_build (timeline, &options, face_measure ());
  g_autofree char *text = face_text (pages);
  const char *at = text;

  face_check_pages (pages);
  for (guint i = 0; i < G_N_ELEMENTS (order); i++) {
    at = strstr (at, order[i]);
    g_assert_nonnull (at);
  }
}

static void
test_many_rounds (void)
{
  g_autoptr (LapTimeline) timeline = face_timeline (2, "\"rounds\": 20,", "");
  g_autoptr (LapPages) pages = build (timeline, LAP_PAPER_A4, FALSE);
  g_autofree char *text = face_text (pages);

  face_check_pages (pages);
  g_assert_nonnull (strstr (text, "0:00 every 2:00 38:00"));
}

/* A talk as long as a file may have it goes on over pages. */
static void
test_long_talk (void)
{
  GString *json = g_string_new ("{\"format\": \"lapwing-session\", \"version\": 1, \"id\": \"s\", \"title\": \"Talk\", "
                                "\"parts\": [{\"kind\": \"opening\", \"blocks\": [{\"seconds\": 900, \"talk\": \"");
  g_autoptr (LapTimeline) timeline = NULL;
  g_autoptr (LapPages) pages = NULL;
  g_autofree char *text = NULL;

  for (guint i = 0; i < 1900; i++)
    g_string_append (json, "word ");
  g_string_append (json, "last\"}]}]}");
  timeline = face_from_json (json->str);
  pages = build (timeline, LAP_PAPER_A5, FALSE);
  text = face_text (pages);
  face_check_pages (pages);
  g_assert_nonnull (strstr (text, "word last"));
  g_assert_cmpuint (lap_pages_n (pages), >, 1);
  g_string_free (json, TRUE);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/place/running-order/counts", test_counts);
  g_test_add_func ("/place/running-order/clocks", test_clocks);
  g_test_add_func ("/place/running-order/camera", test_camera);
  g_test_add_func ("/place/running-order/unseen", test_unseen);
  g_test_add_func ("/place/running-order/unfolded", test_unfolded);
  g_test_add_func ("/place/running-order/many-rounds", test_many_rounds);
  g_test_add_func ("/place/running-order/long-talk", test_long_talk);
  return g_test_run ();
}
