/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "edit/add.h"

#include "edit/history.h"
#include "place/plans.h"

static LapCatalogue *builtin;

/* "main: squat 40/20, push-up 40/20; cool-down: child-pose 30/10" */
static char *
told (LapSession *session)
{
  GString *text = g_string_new (NULL);

  for (guint p = 0; p < lap_session_n (session); p++) {
    LapPart *part = lap_session_nth (session, p);

    g_string_append_printf (text, "%s%s:", p > 0 ? "; " : "", lap_words_id (&lap_part_kinds, part->kind));
    for (guint b = 0; b < lap_part_n (part); b++) {
      LapBlock *block = lap_part_nth (part, b);

      if (block->kind == LAP_BLOCK_EXERCISE)
        g_string_append_printf (text, " %s %d/%d", block->exercise, block->work, block->rest);
      else
        g_string_append (text, block->kind == LAP_BLOCK_TALK ? " talk" : " pause");
    }
  }
  return g_string_free (text, FALSE);
}

static void
check (LapSession *session, LapBlock *after, const char *id, const char *wanted)
{
  g_autoptr (LapHistory) history = lap_history_new ();
  g_autofree char *before = told (session), *text = NULL, *undone = NULL;
  LapBlock *added = NULL;

  lap_history_apply (history, lap_verb_add_exercise (session, after, id, builtin, &added));
  text = told (session);
  g_assert_cmpstr (text, ==, wanted);
  g_assert_cmpstr (added->exercise, ==, id);
  g_assert_nonnull (LAP_OBJECT (added)->owner);
  g_assert_true (lap_history_undo (history));
  undone = told (session);
  g_assert_cmpstr (undone, ==, before);
  g_assert_true (lap_history_redo (history));
}

/* What is for a part goes there; a part that isn't there is made where it belongs. */
static void
test_empty (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Empty");

  check (session, NULL, "squat", "main: squat 40/20");
  check (session, NULL, "standing-calf-stretch", "main: squat 40/20; cool-down: standing-calf-stretch 30/10");
  check (session, NULL, "push-up", "main: squat 40/20 push-up 40/20; cool-down: standing-calf-stretch 30/10");
}

static void
test_beside (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Full");
  LapPart *part = plan_part (session, LAP_PART_MAIN, 2);

  plan_add (part, lap_block_new_talk ("Ready?", 20));
  plan_add (part, lap_block_new_exercise ("squat", 45, 15));
  plan_add (part, lap_block_new_exercise ("push-up", 30, 30));
  /* After a talk it is like the exercise that follows, after an exercise like that. */
  check (session, lap_part_nth (part, 0), "plank", "main: talk plank 45/15 squat 45/15 push-up 30/30");
  check (session, lap_part_nth (part, 3), "bird-dog", "main: talk plank 45/15 squat 45/15 push-up 30/30 bird-dog 30/30");
}

static void
test_pace (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Paced");
  LapPart *part = plan_part (session, LAP_PART_MAIN, 1);
  g_autoptr (LapBlock) block = NULL;

  plan_add (part, lap_block_new_exercise ("squat", 45, 15));
  g_object_set (lap_part_nth (part, 0), "pace", LAP_PACE_STEADY, NULL);
  block = lap_block_for_place (part, 1, NULL);
  g_assert_cmpint (block->pace, ==, LAP_PACE_STEADY);
  g_assert_null (block->exercise);
}

int
main (int argc, char **argv)
{
  int failed;

  g_test_init (&argc, &argv, NULL);
  builtin = lap_catalogue_builtin ();
  g_test_add_func ("/edit/add/empty", test_empty);
  g_test_add_func ("/edit/add/beside", test_beside);
  g_test_add_func ("/edit/add/pace", test_pace);
  failed = g_test_run ();
  lap_catalogue_unref (builtin);
  return failed;
}
