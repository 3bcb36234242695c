/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/face.h"
#include "place/running-order.h"

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
  g_test_add_func ("/place/running-order/many-rounds", test_many_rounds);
  g_test_add_func ("/place/running-order/long-talk", test_long_talk);
  return g_test_run ();
}
