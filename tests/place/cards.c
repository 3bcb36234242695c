/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/cards.h"
#include "place/face.h"
#include "place/loads.h"

#include <string.h>

static LapPages *
build (LapTimeline *timeline, LapPaper paper, gboolean landscape)
{
  LapSheetOptions options = { .paper = paper, .landscape = landscape };

  return lap_cards_build (timeline, &options, face_measure ());
}

/* Read under 16 minutes of arc: the number from 5 m, the name from 2 m. */
static void
test_heights (void)
{
  for (guint n = 1; n <= 40; n += 13)
    for (guint paper = 0; paper < lap_papers.n; paper++) {
      g_autoptr (LapTimeline) timeline = face_timeline (n, "\"run\": \"stations\", \"per-station\": 2,",
                                                        ", \"load\": \"8 to 12 kg\"");
      g_autoptr (LapPages) pages = build (timeline, paper, n % 2);

      face_check_pages (pages);
      g_assert_cmpfloat (lap_pages_cap (pages, LAP_READ_NUMBER), >=, lap_cap_height (5, LAP_ARC_READABLE) - 1e-9);
      g_assert_cmpfloat (lap_pages_cap (pages, LAP_READ_NAME), >=, lap_cap_height (2, LAP_ARC_READABLE));
    }
}

/* Two of A5 on A4, four on A3. */
static void
test_pages (void)
{
  static const struct {
    LapPaper paper;
    guint pages;
  } rows[] = { { LAP_PAPER_A5, 7 }, { LAP_PAPER_A4, 4 }, { LAP_PAPER_A3, 2 }, { LAP_PAPER_LETTER, 4 } };
  g_autoptr (LapTimeline) timeline = face_timeline (7, "\"run\": \"stations\",", "");

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++) {
    g_autoptr (LapPages) pages = build (timeline, rows[i].paper, FALSE);

    g_assert_cmpuint (lap_pages_n (pages), ==, rows[i].pages);
  }
}

/* As many cards on a sheet as are asked for; one of A5 and larger reads from 5 m and 2 m. */
static void
test_cards (void)
{
  static const guint counts[] = { 1, 2, 4 };
  g_autoptr (LapTimeline) timeline = face_timeline (7, "\"run\": \"stations\",", "");

  for (guint i = 0; i < G_N_ELEMENTS (counts); i++)
    for (guint landscape = 0; landscape < 2; landscape++) {
      LapSheetOptions options = { .cards = counts[i], .landscape = landscape, .date = "2027-01-31" };
      g_autoptr (LapPages) pages = lap_cards_build (timeline, &options, face_measure ());
      g_autofree char *text = face_text (pages);

      face_check_pages (pages);
      g_assert_cmpuint (lap_pages_n (pages), ==, (7 + counts[i] - 1) / counts[i]);
      g_assert_cmpfloat (lap_pages_cap (pages, LAP_READ_NUMBER), >=, lap_cap_height (5, LAP_ARC_READABLE) - 1e-9);
      if (counts[i] <= 2)
        g_assert_cmpfloat (lap_pages_cap (pages, LAP_READ_NAME), >=, lap_cap_height (2, LAP_ARC_READABLE) - 1e-9);
      g_assert_nonnull (strstr (text, "2027-01-31"));
    }
}

/* What the plan says is filled in, what it doesn't say is left to be written. */
static void
test_loads (void)
{
  static const struct {
    const char *exercise, *load, *texts[LAP_N_LOADS], *unit;
  } rows[] = {
    { "goblet-squat", "8 to 14 kg", { "8 kg", NULL, "14 kg" }, "kg" },
    { "floor-press", "6–10 kg each", { "6 kg each", NULL, "10 kg each" }, "kg" },
    { "kettlebell-deadlift", "12.5 kg", { NULL, "12.5 kg", NULL }, "kg" },
    { "goblet-squat", "", { NULL, NULL, NULL }, "kg" },
    { "goblet-squat", "light", { NULL, "light", NULL }, "kg" },
    { "band-row", "red", { NULL, "red", NULL }, "" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++) {
    g_autofree char *json = g_strdup_printf (
      "{\"format\": \"lapwing-session\", \"version\": 1, \"id\": \"s\", \"title\": \"Stairs\", \"parts\": "
      "[{\"kind\": \"main\", \"blocks\": [{\"exercise\": \"%s\", \"work\": 40, \"load\": \"%s\"}]}]}",
      rows[i].exercise, rows[i].load);
    g_autoptr (LapTimeline) timeline = face_from_json (json);
    g_autoptr (LapPages) pages = build (timeline, LAP_PAPER_A4, FALSE);
    g_auto (LapLoads) loads = { { NULL } };

    face_check_pages (pages);
    g_assert_true (lap_loads_of (&timeline->tasks[0], &loads));
    g_assert_cmpstr (loads.unit, ==, rows[i].unit);
    for (guint k = 0; k < LAP_N_LOADS; k++)
      g_assert_cmpstr (loads.texts[k], ==, rows[i].texts[k]);
  }
}

static void
test_words (void)
{
  g_autoptr (LapTimeline) timeline = face_timeline (3, "\"run\": \"stations\", \"per-station\": 2,", "");
  g_autoptr (LapPages) pages = build (timeline, LAP_PAPER_A5, TRUE);
  g_autofree char *text = face_text (pages);
  const char *first = lap_task_name (&timeline->tasks[timeline->turns[0].task]);
  g_autofree char *around = g_strdup_printf ("→\xc2\xa0""1 %s", first);

  /* The last leads back to the first. */
  g_assert_nonnull (strstr (text, around));
  g_assert_nonnull (strstr (text, "2\xc2\xa0people here"));
  g_assert_nonnull (strstr (text, "clinician"));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/place/cards/heights", test_heights);
  g_test_add_func ("/place/cards/pages", test_pages);
  g_test_add_func ("/place/cards/cards", test_cards);
  g_test_add_func ("/place/cards/loads", test_loads);
  g_test_add_func ("/place/cards/words", test_words);
  return g_test_run ();
}
