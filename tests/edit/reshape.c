/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "edit/reshape.h"

#include "base/error.h"
#include "edit/history.h"
#include "place/plans.h"

#include <string.h>

static void
test_parse (void)
{
  static const struct { const char *text; gboolean good; LapShape shape; } rows[] = {
    { "40/20 x 10 x 2", TRUE, { 40, 20, 10, 2 } }, { "40/20×10×2", TRUE, { 40, 20, 10, 2 } },
    { "  45 / 0 * 8  ", TRUE, { 45, 0, 8, 0 } }, { "30/10", TRUE, { 30, 10, 0, 0 } },
    { "45 X 8", TRUE, { 45, -1, 8, 0 } }, { "10800/10800 x 100 x 100", TRUE, { 10800, 10800, 100, 100 } },
    { "", FALSE }, { "x 10", FALSE }, { "0/20", FALSE }, { "40/", FALSE }, { "40/20 x", FALSE }, { "40/20 x 0", FALSE },
    { "40/20 x 10 x 2 x 3", FALSE }, { "40/20 x 101", FALSE }, { "10801/20", FALSE }, { "-5/20", FALSE },
    { "40/20 sets", FALSE }, { "99999999999999999999/1", FALSE },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++) {
    g_autoptr (GError) error = NULL;
    LapShape shape;

    if (lap_shape_parse (rows[i].text, &shape, &error) != rows[i].good)
      g_error ("“%s”: expected %d", rows[i].text, rows[i].good);
    if (rows[i].good)
      g_assert_cmpmem (&shape, sizeof shape, &rows[i].shape, sizeof shape);
    else {
      g_assert_error (error, LAP_ERROR, LAP_ERROR_INVALID);
      g_assert_null (strchr (error->message, '\n'));
      g_assert_nonnull (strstr (error->message, "40/20"));
    }
  }
}

/* Applies it and takes it back, which must leave everything as it was, and applies it again. */
static void
apply (LapSession *session, const char *text)
{
  g_autoptr (LapHistory) history = lap_history_new ();
  g_autoptr (GBytes) before = lap_object_bytes (session), after = NULL;
  LapShape shape;

  g_assert_true (lap_shape_parse (text, &shape, NULL));
  lap_history_apply (history, lap_verb_reshape_session (session, &shape));
  g_assert_true (lap_history_undo (history));
  g_assert_false (lap_history_undo (history));
  after = lap_object_bytes (session);
  g_assert_true (g_bytes_equal (before, after));
  g_assert_true (lap_history_redo (history));
}

static void
test_empty (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Empty");
  LapPart *part;

  apply (session, "40/20 x 10 x 2");
  part = lap_session_nth (session, 0);
  g_assert_cmpint (part->kind, ==, LAP_PART_MAIN);
  g_assert_cmpuint (lap_part_n (part), ==, 10);
  g_assert_cmpint (part->rounds, ==, 2);
  for (guint i = 0; i < 10; i++) {
    g_assert_null (lap_part_nth (part, i)->exercise);
    g_assert_cmpint (lap_part_nth (part, i)->work, ==, 40);
    g_assert_cmpint (lap_part_nth (part, i)->rest, ==, 20);
  }
}

static LapChanges *
change_of (int round, int work)
{
  LapChanges *changes = lap_changes_new ();
  LapChange *change = lap_changes_ensure (changes, round);

  change->work = work;
  change->present |= G_GUINT64_CONSTANT (1) << LAP_CHANGE_WORK;
  return changes;
}

/* What is fixed, and what isn't an exercise, stays; a later round keeps no length of its own. */
static void
test_full (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Full");
  LapPart *part = plan_part (session, LAP_PART_MAIN, 3);
  g_autoptr (LapChanges) changes = change_of (2, 30);

  plan_add (part, lap_block_new_exercise ("squat", 45, 15));
  plan_add (part, lap_block_new_exercise ("push-up", 30, 30));
  plan_add (part, lap_block_new_exercise ("plank", 30, 30));
  plan_add (part, lap_block_new_talk ("Well done.", 10));
  g_object_set (lap_part_nth (part, 0), "in-round", changes, NULL);
  g_object_set (lap_part_nth (part, 2), "fixed", TRUE, NULL);
  apply (session, "50 x 2");
  g_assert_cmpuint (lap_part_n (part), ==, 3);
  g_assert_cmpstr (lap_part_nth (part, 1)->exercise, ==, "plank");
  g_assert_cmpint (lap_part_nth (part, 0)->work, ==, 50);
  g_assert_cmpint (lap_part_nth (part, 0)->rest, ==, 15);
  g_assert_null (lap_part_nth (part, 0)->in_round);
  g_assert_cmpint (part->rounds, ==, 3);
  apply (session, "50/10 x 4 x 1");
  g_assert_cmpuint (lap_part_n (part), ==, 5);
  g_assert_cmpint (lap_part_nth (part, 4)->kind, ==, LAP_BLOCK_TALK);
  g_assert_null (lap_part_nth (part, 3)->exercise);
  g_assert_cmpint (lap_part_nth (part, 3)->rest, ==, 10);
  g_assert_cmpint (part->rounds, ==, 1);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/edit/reshape/parse", test_parse);
  g_test_add_func ("/edit/reshape/empty", test_empty);
  g_test_add_func ("/edit/reshape/full", test_full);
  return g_test_run ();
}
