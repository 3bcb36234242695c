/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Parts as a whole, and what a block does in one of its rounds.
 */
#include "edit/verbs-part.h"
#include "edit/verbs-round.h"

#include "edit/history.h"
#include "model/session.h"
#include "place/plans.h"
#include "timeline/timeline.h"

static LapCatalogue *builtin;

/* "warm-up main", to begin with. */
static LapSession *
session_new (void)
{
  LapSession *session = lap_session_new ("Parts");
  LapPart *warm_up = plan_part (session, LAP_PART_WARM_UP, 1), *main_part = plan_part (session, LAP_PART_MAIN, 2);

  plan_add (warm_up, lap_block_new_exercise ("march", 30, 10));
  plan_add (main_part, lap_block_new_exercise ("squat", 40, 20));
  plan_add (main_part, lap_block_new_exercise ("push-up", 40, 20));
  return session;
}

static void
assert_kinds (LapSession *session, const char *wanted)
{
  g_autoptr (GString) told = g_string_new (NULL);

  for (guint i = 0; i < lap_session_n (session); i++)
    g_string_append_printf (told, "%s%s", i > 0 ? " " : "",
                            lap_words_id (&lap_part_kinds, lap_session_nth (session, i)->kind));
  g_assert_cmpstr (told->str, ==, wanted);
}

static int
length_of (LapSession *session)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (LapTimeline) timeline = lap_timeline_new (session, builtin, &error);

  g_assert_no_error (error);
  return timeline->length;
}

static void
test_add (void)
{
  static const struct { LapPartKind kind; guint position; const char *kinds; LapBlockKind block; } rows[] = {
    { LAP_PART_OPENING, 0, "opening warm-up main", LAP_BLOCK_TALK },
    { LAP_PART_MAIN, 2, "warm-up main main", LAP_BLOCK_EXERCISE },
    { LAP_PART_COOL_DOWN, 2, "warm-up main cool-down", LAP_BLOCK_EXERCISE },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++) {
    g_autoptr (LapSession) session = session_new ();
    g_autoptr (LapHistory) history = lap_history_new ();
    int before = length_of (session);
    LapBlock *added = NULL;

    lap_history_apply (history, lap_verb_add_part (session, rows[i].position, rows[i].kind, &added));
    assert_kinds (session, rows[i].kinds);
    g_assert_true (LAP_OBJECT (added)->owner == LAP_OBJECT (lap_session_nth (session, rows[i].position)));
    g_assert_cmpint (added->kind, ==, rows[i].block);
    g_assert_cmpint (length_of (session), >, before);
    g_assert_true (lap_history_undo (history));
    assert_kinds (session, "warm-up main");
  }
}

static void
test_remove_and_move (void)
{
  g_autoptr (LapSession) session = session_new ();
  g_autoptr (LapHistory) history = lap_history_new ();
  g_autoptr (LapEdits) none = lap_verb_move_part (session, lap_session_nth (session, 0), -1);

  g_assert_cmpuint (lap_edits_n (none), ==, 0);
  lap_history_apply (history, lap_verb_move_part (session, lap_session_nth (session, 0), 1));
  assert_kinds (session, "main warm-up");
  g_assert_cmpuint (lap_part_n (lap_session_nth (session, 0)), ==, 2);
  lap_history_apply (history, lap_verb_move_part (session, lap_session_nth (session, 1), -1));
  assert_kinds (session, "warm-up main");
  lap_history_apply (history, lap_verb_remove_part (session, lap_session_nth (session, 0)));
  assert_kinds (session, "main");
  for (int i = 0; i < 3; i++)
    g_assert_true (lap_history_undo (history));
  assert_kinds (session, "warm-up main");
}

/* Going over to one's own pace keeps the session as long as it was, but for the rest that was dropped at the end
 * (design, 4.2): 2 rounds of 2 × 60 s. */
static void
test_run (void)
{
  g_autoptr (LapSession) session = session_new ();
  g_autoptr (LapHistory) history = lap_history_new ();
  LapPart *part = lap_session_nth (session, 1);
  int before = length_of (session);
  LapEdits *edits = lap_edits_new ("Run");

  lap_verb_put_run (edits, part, LAP_RUN_OWN_PACE);
  lap_history_apply (history, edits);
  g_assert_cmpint (part->run, ==, LAP_RUN_OWN_PACE);
  g_assert_cmpint (part->cap, ==, 240);
  g_assert_cmpint (length_of (session), ==, before + 20);
  g_assert_true (lap_history_undo (history));
  g_assert_cmpint (part->cap, ==, 0);
  g_assert_cmpint (length_of (session), ==, before);
}

static void
put_word (LapHistory *history, LapBlock *block, int round, const char *member, int word)
{
  LapEdits *edits = lap_edits_new ("Word");
  g_auto (GValue) value = G_VALUE_INIT;

  g_value_init (&value, G_TYPE_INT);
  g_value_set_int (&value, word);
  lap_verb_put_round (edits, block, round, member, &value);
  lap_history_apply (history, edits);
}

static int
word_in (LapBlock *block, int round, const char *member)
{
  g_auto (GValue) value = G_VALUE_INIT;

  lap_round_get (block, round, member, &value);
  return g_value_get_int (&value);
}

/* What is set in a round that differs stays there; anywhere else it is the block's. */
static void
test_round (void)
{
  g_autoptr (LapSession) session = session_new ();
  g_autoptr (LapHistory) history = lap_history_new ();
  LapBlock *block = lap_part_nth (lap_session_nth (session, 1), 0);
  g_autoptr (LapChanges) changes = lap_changes_new ();

  put_word (history, block, 2, "option", LAP_OPTION_EASIER);
  g_assert_cmpint (block->option, ==, LAP_OPTION_EASIER);
  g_assert_cmpint (word_in (block, 1, "option"), ==, LAP_OPTION_EASIER);

  lap_changes_ensure (changes, 2);
  g_object_set (block, "in-round", changes, NULL);
  put_word (history, block, 2, "option", LAP_OPTION_HARDER);
  put_word (history, block, 2, "pace", LAP_PACE_STEADY);
  g_assert_cmpint (block->option, ==, LAP_OPTION_EASIER);
  g_assert_cmpint (word_in (block, 2, "option"), ==, LAP_OPTION_HARDER);
  g_assert_cmpint (word_in (block, 2, "pace"), ==, LAP_PACE_STEADY);
  g_assert_cmpint (word_in (block, 1, "pace"), ==, -1);
  put_word (history, block, 2, "pace", -1);
  g_assert_cmpint (word_in (block, 2, "pace"), ==, -1);
  g_assert_cmpuint (lap_changes_find (block->in_round, 2)->present, ==, LAP_BIT (LAP_CHANGE_OPTION));
  g_assert_true (lap_history_undo (history));
  g_assert_cmpint (word_in (block, 2, "pace"), ==, LAP_PACE_STEADY);
}

int
main (int argc, char **argv)
{
  int failed;

  g_test_init (&argc, &argv, NULL);
  builtin = lap_catalogue_builtin ();
  g_test_add_func ("/edit/parts/add", test_add);
  g_test_add_func ("/edit/parts/remove-and-move", test_remove_and_move);
  g_test_add_func ("/edit/parts/run", test_run);
  g_test_add_func ("/edit/parts/round", test_round);
  failed = g_test_run ();
  lap_catalogue_unref (builtin);
  return failed;
}
