/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/cards.h"
#include "place/face.h"

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

static void
test_words (void)
{
  g_autoptr (LapTimeline) timeline = face_timeline (3, "\"run\": \"stations\", \"per-station\": 2,", "");
  g_autoptr (LapPages) pages = build (timeline, LAP_PAPER_A5, TRUE);
  g_autofree char *text = face_text (pages);
  const char *first = lap_task_name (&timeline->tasks[timeline->turns[0].task]);
  g_autofree char *around = g_strdup_printf ("→ 1 %s", first);

  /* The last leads back to the first. */
  g_assert_nonnull (strstr (text, around));
  g_assert_nonnull (strstr (text, "2 people here"));
  g_assert_nonnull (strstr (text, "clinician"));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/place/cards/heights", test_heights);
  g_test_add_func ("/place/cards/pages", test_pages);
  g_test_add_func ("/place/cards/words", test_words);
  return g_test_run ();
}
