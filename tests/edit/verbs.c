/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Verbs as rows: a plan, what is done to it, the plan afterwards; and undone it is what it was. A plan is written as
 * "a b | c*2": blocks by letter, parts by bars, rounds behind a star.
 */
#include "edit/history.h"
#include "edit/verbs-blocks.h"
#include "edit/verbs-say.h"
#include "edit/verbs-time.h"
#include "edit/verbs.h"
#include "place/plans.h"

#include <string.h>

static LapSession *
session_of (const char *plan)
{
  LapSession *session = lap_session_new ("Rows");
  g_auto (GStrv) parts = g_strsplit (plan, "|", -1);

  for (guint p = 0; parts[p] != NULL; p++) {
    const char *star = strchr (parts[p], '*');
    LapPart *part = plan_part (session, LAP_PART_MAIN, star != NULL ? star[1] - '0' : 1);

    for (const char *c = parts[p]; *c != '\0' && *c != '*'; c++)
      if (*c != ' ')
        plan_add (part, lap_block_new_exercise ((char[]) { *c, '\0' }, 40, 20));
  }
  return session;
}

static char *
plan_of (LapSession *session)
{
  g_autoptr (GString) text = g_string_new (NULL);

  for (guint p = 0; p < lap_session_n (session); p++) {
    LapPart *part = lap_session_nth (session, p);

    g_string_append (text, p > 0 ? "|" : "");
    for (guint i = 0; i < lap_part_n (part); i++)
      g_string_append (text, lap_part_nth (part, i)->exercise);
    if (part->rounds > 1)
      g_string_append_printf (text, "*%d", part->rounds);
  }
  return g_strdup (text->str);
}

/* The blocks called by the letters of @which, in the session's order. */
static GPtrArray *
blocks_of (LapSession *session, const char *which)
{
  GPtrArray *blocks = g_ptr_array_new ();

  for (guint p = 0; p < lap_session_n (session); p++)
    for (guint i = 0; i < lap_part_n (lap_session_nth (session, p)); i++) {
      LapBlock *block = lap_part_nth (lap_session_nth (session, p), i);

      if (strstr (which, block->exercise) != NULL)
        g_ptr_array_add (blocks, block);
    }
  return blocks;
}

static void
check (LapSession *session, LapEdits *edits, const char *expected)
{
  g_autoptr (LapHistory) history = lap_history_new ();
  g_autofree char *before = plan_of (session), *after = NULL, *undone = NULL;

  lap_history_apply (history, edits);
  after = plan_of (session);
  g_assert_cmpstr (after, ==, expected);
  lap_history_undo (history);
  undone = plan_of (session);
  g_assert_cmpstr (undone, ==, before);
}

static const struct { const char *plan, *blocks; guint part, position; const char *after; } moves[] = {
  { "abcd", "a", 0, 2, "bacd" },   { "abcd", "a", 0, 4, "bcda" },      { "abcd", "d", 0, 0, "dabc" },
  { "abcd", "b", 0, 1, "abcd" },   { "abcd", "b", 0, 2, "abcd" },      { "abcd", "bc", 0, 4, "adbc" },
  { "abcd", "bc", 0, 2, "abcd" },  { "abcd", "ac", 0, 4, "bdac" },     { "abcd", "ac", 0, 0, "acbd" },
  { "ab|cd", "a", 1, 1, "b|cad" }, { "ab|cd", "bc", 1, 2, "a|dbc" },   { "ab|cd", "ad", 0, 2, "bad|c" },
  { "ab|*3", "ab", 1, 0, "|ab*3" },
};

static void
test_move (void)
{
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();

  for (guint i = 0; i < G_N_ELEMENTS (moves); i++) {
    g_autoptr (LapSession) session = session_of (moves[i].plan);
    g_autoptr (GPtrArray) blocks = blocks_of (session, moves[i].blocks);
    LapSpot spot = { lap_session_nth (session, moves[i].part), moves[i].position };

    check (session, lap_verb_move_blocks (session, blocks, &spot, catalogue), moves[i].after);
  }
}

static const struct { const char *plan, *blocks; int by; const char *after; } strides[] = {
  { "abc", "a", 1, "bac" },     { "abc", "b", -1, "bac" },    { "abc", "ab", 1, "cab" },   { "abc", "ac", -1, NULL },
  { "abc", "ac", 1, NULL },     { "ab|cd", "b", 1, "a|bcd" }, { "ab|cd", "c", -1, "abc|d" },
  { "ab||cd", "b", 1, "a|b|cd" }, { "ab", "b", 1, NULL },     { "abcd", "bd", -1, "bdac" }, { "ab|cd", "bc", 1, "a|dbc" },
};

static void
test_step (void)
{
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();

  for (guint i = 0; i < G_N_ELEMENTS (strides); i++) {
    g_autoptr (LapSession) session = session_of (strides[i].plan);
    g_autoptr (GPtrArray) blocks = blocks_of (session, strides[i].blocks);
    LapSpot spot;

    if (lap_blocks_step (session, blocks, strides[i].by, &spot))
      check (session, lap_verb_move_blocks (session, blocks, &spot, catalogue), strides[i].after);
    else
      g_assert_null (strides[i].after);
  }
}

static void
test_remove (void)
{
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();
  g_autoptr (LapSession) session = session_of ("abc|def*2");
  g_autoptr (GPtrArray) blocks = blocks_of (session, "acdf");
  LapEdits *edits = lap_verb_remove_blocks (blocks, catalogue);

  g_assert_cmpstr (lap_edits_label (edits), ==, "Remove 4 blocks");
  check (session, edits, "b|e*2");
}

static void
test_insert (void)
{
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();
  g_autoptr (LapSession) session = session_of ("ab"), empty = lap_session_new ("Empty");
  LapSpot after_a = { lap_session_nth (session, 0), 1 }, nowhere = { NULL, 0 };
  g_autoptr (GPtrArray) blocks = blocks_of (session, "ab"), copies = lap_blocks_copy (blocks);
  g_autoptr (GPtrArray) others = lap_blocks_copy (blocks);

  check (session, lap_verb_insert_blocks (session, &after_a, copies, "%s", catalogue), "aabb");
  check (empty, lap_verb_insert_blocks (empty, &nowhere, others, "%s", catalogue), "ab");
}

/* Where a second of a block's time is written. */
static void
test_sources (void)
{
  static const struct {
    LapRun run;
    gboolean steps, change, reps;
    LapTimeWhat what;
    const char *property; /* NULL: nothing can be set */
    int seconds, most;
  } rows[] = {
    { LAP_RUN_TOGETHER, FALSE, FALSE, FALSE, LAP_TIME_WORK, "work", 40, 10800 },
    { LAP_RUN_TOGETHER, FALSE, FALSE, FALSE, LAP_TIME_REST, "rest", 20, 10800 },
    { LAP_RUN_STATIONS, TRUE, FALSE, FALSE, LAP_TIME_WORK, "steps", 31, 10800 },
    { LAP_RUN_TOGETHER, TRUE, TRUE, FALSE, LAP_TIME_WORK, "in-round", 33, 10800 },
    { LAP_RUN_TOGETHER, TRUE, TRUE, FALSE, LAP_TIME_REST, "steps", 11, 10800 },
    { LAP_RUN_OWN_PACE, FALSE, FALSE, FALSE, LAP_TIME_WORK, "work", 40, 10800 },
    { LAP_RUN_OWN_PACE, FALSE, FALSE, FALSE, LAP_TIME_REST, NULL, 0, 0 },
    { LAP_RUN_ON_THE_MINUTE, FALSE, FALSE, FALSE, LAP_TIME_WORK, "work", 40, 60 },
    { LAP_RUN_ON_THE_MINUTE, FALSE, FALSE, FALSE, LAP_TIME_REST, "every", 20, 10760 },
    { LAP_RUN_ON_THE_MINUTE, FALSE, FALSE, TRUE, LAP_TIME_WORK, NULL, 0, 0 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++) {
    g_autoptr (LapSession) session = session_of ("ab*2");
    LapPart *part = lap_session_nth (session, 0);
    LapBlock *block = lap_part_nth (part, 0);
    g_autoptr (LapRows) steps = lap_rows_new (&lap_kind_steps);
    g_autoptr (LapChanges) changes = lap_changes_new ();
    LapTimeSource source;

    for (int s = 0; s < 2; s++)
      *(LapStep *) lap_rows_add (steps) = (LapStep) { 30 + s, 10 + s, NULL };
    lap_changes_ensure (changes, 2)->work = 33;
    lap_changes_find (changes, 2)->present = 1 << LAP_CHANGE_WORK;
    g_object_set (part, "run", rows[i].run, "every", 60, "steps", rows[i].steps ? steps : NULL, NULL);
    g_object_set (block, "in-round", rows[i].change ? changes : NULL, "reps", rows[i].reps ? LAP_REPS (10, 10) : 0, NULL);
    if (!lap_time_source (block, 2, rows[i].what, &source)) {
      g_assert_null (rows[i].property);
      continue;
    }
    g_assert_cmpstr (source.property, ==, rows[i].property);
    g_assert_cmpint (source.seconds, ==, rows[i].seconds);
    g_assert_cmpint (source.most, ==, rows[i].most);
  }
}

/* Setting a source and asking again gives what was set. */
static void
test_set_time (void)
{
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();

  for (int run = 0; run < 4; run++)
    for (int what = 0; what < 2; what++) {
      g_autoptr (LapSession) session = session_of ("ab*2");
      LapPart *part = lap_session_nth (session, 0);
      LapTimeSource source, after;
      LapEdits *edits;

      g_object_set (part, "run", run, "every", 60, NULL);
      if (!lap_time_source (lap_part_nth (part, 0), 2, what, &source))
        continue;
      edits = lap_verb_set_time (&source, 27, catalogue);
      lap_edits_swap (edits);
      g_assert_true (lap_time_source (lap_part_nth (part, 0), 2, what, &after));
      g_assert_cmpint (after.seconds, ==, 27);
      lap_edits_free (edits);
    }
}

/* A ladder: the rounds of both blocks have seconds of their own, written in one row of the part; what two blocks share
 * is set once. */
static void
test_set_times (void)
{
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();
  g_autoptr (LapSession) session = session_of ("abc*3");
  LapPart *part = lap_session_nth (session, 0);
  g_autoptr (LapRows) steps = lap_rows_new (&lap_kind_steps);
  g_autoptr (GArray) sets = g_array_new (FALSE, FALSE, sizeof (LapTimeSet));
  g_autoptr (LapEdits) edits = NULL;
  static const int rounds[] = { 1, 3, 3 }, works[] = { 55, 31, 57 };

  for (int s = 0; s < 3; s++)
    *(LapStep *) lap_rows_add (steps) = (LapStep) { 30 + s, 10 + s, NULL };
  g_object_set (part, "steps", steps, NULL);
  for (guint i = 0; i < 3; i++) {
    LapTimeSet set;

    g_assert_true (lap_time_source (lap_part_nth (part, i), rounds[i], LAP_TIME_WORK, &set.source));
    set.seconds = set.source.seconds + 25;
    g_array_append_val (sets, set);
  }
  edits = lap_verb_set_times (sets, "Longer", catalogue);
  g_assert_cmpuint (lap_edits_n (edits), ==, 1);
  g_assert_cmpstr (lap_edits_label (edits), ==, "Longer");
  lap_edits_swap (edits);
  for (int s = 0; s < 3; s++) {
    g_assert_cmpint (lap_rows_nth (part->steps, LapStep, s)->work, ==, works[s]);
    g_assert_cmpint (lap_rows_nth (part->steps, LapStep, s)->rest, ==, 10 + s);
  }
}

static const struct { int seconds, least, most, by, next; } nexts[] = {
  { 40, 1, 10800, 5, 45 },  { 42, 1, 10800, 5, 45 },    { 42, 1, 10800, -5, 40 },  { 40, 1, 10800, -5, 35 },
  { 5, 1, 10800, -5, 5 },   { 3, 1, 10800, -5, 3 },     { 5, 1, 10800, -1, 4 },    { 1, 1, 10800, -1, 1 },
  { 598, 1, 10800, 5, 600 }, { 600, 1, 10800, 5, 600 }, { 900, 1, 10800, 5, 900 }, { 900, 1, 10800, -5, 600 },
  { 600, 1, 10800, 1, 601 }, { 58, 1, 60, 5, 60 },
};

static void
test_next (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (nexts); i++) {
    LapTimeSource source = { NULL, "work", LAP_TIME_WORK, 0, -1, 0, nexts[i].seconds, nexts[i].least, nexts[i].most };

    g_assert_cmpint (lap_time_next (&source, nexts[i].by), ==, nexts[i].next);
  }
}

static void
test_only_here (void)
{
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();
  g_autoptr (LapHistory) history = lap_history_new ();
  g_autoptr (LapSession) session = session_of ("ab*2");
  LapBlock *block = lap_part_nth (lap_session_nth (session, 0), 0);
  g_autoptr (GBytes) before = lap_object_bytes (block), after = NULL;
  LapTimeSource source;

  lap_history_apply (history, lap_verb_only_here (block, 2, catalogue));
  /* What is done to the round stays there … */
  lap_history_apply (history, lap_verb_set_exercise_in (block, 2, "x", catalogue));
  g_assert_true (lap_time_source (block, 2, LAP_TIME_WORK, &source));
  lap_history_apply (history, lap_verb_set_time (&source, 55, catalogue));
  g_assert_cmpstr (block->exercise, ==, "a");
  g_assert_cmpint (block->work, ==, 40);
  g_assert_cmpstr (lap_changes_find (block->in_round, 2)->exercise, ==, "x");
  /* … and what is done to the block passes it by. */
  lap_history_apply (history, lap_verb_set_exercise_in (block, 1, "y", catalogue));
  g_assert_cmpstr (block->exercise, ==, "y");
  g_assert_cmpstr (lap_changes_find (block->in_round, 2)->exercise, ==, "x");
  lap_history_apply (history, lap_verb_set_exercise_in (block, 1, "a", catalogue));
  lap_history_apply (history, lap_verb_same_again (block, 2, catalogue));
  after = lap_object_bytes (block);
  g_assert_true (g_bytes_equal (before, after));
}

/* Words that differ in a round stay there, the block's pass it by, and the way back leaves nothing behind. */
static void
test_words_in_round (void)
{
  static const char *const cues[LAP_N_SAY] = { [LAP_SAY_CUES] = "one\ntwo" }, *const setup[LAP_N_SAY] = { "stand" };
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();
  g_autoptr (LapHistory) history = lap_history_new ();
  g_autoptr (LapSession) session = session_of ("ab*2");
  LapBlock *block = lap_part_nth (lap_session_nth (session, 0), 0);
  g_autoptr (GBytes) before = lap_object_bytes (block), after = NULL;
  g_autoptr (LapEdits) none = NULL;
  const LapChange *change;

  /* Without a difference in the round the words are the block's. */
  lap_history_apply (history, lap_verb_set_words (block, 2, setup, catalogue));
  g_assert_cmpstr (block->say->setup, ==, "stand");
  g_assert_null (block->in_round);
  lap_history_apply (history, lap_verb_own_words (block, 2, catalogue));
  none = lap_verb_own_words (block, 1, catalogue);
  g_assert_cmpuint (lap_edits_n (none), ==, 0);
  lap_history_apply (history, lap_verb_set_words (block, 2, cues, catalogue));
  change = lap_changes_find (block->in_round, 2);
  g_assert_true (lap_has_own_words (block, 2));
  g_assert_cmpuint (change->present, ==, 1 << LAP_CHANGE_SAY);
  g_assert_cmpstr (change->say->setup, ==, "stand");
  g_assert_cmpstr (change->say->cues[1], ==, "two");
  g_assert_null (block->say->cues);
  lap_history_apply (history, lap_verb_same_words (block, 2, catalogue));
  g_assert_null (block->in_round);
  for (int i = 0; i < 4; i++)
    lap_history_undo (history);
  after = lap_object_bytes (block);
  g_assert_true (g_bytes_equal (before, after));
}

/* What else differs in the round is left. */
static void
test_same_words_leave (void)
{
  static const char *const setup[LAP_N_SAY] = { "stand" };
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();
  g_autoptr (LapHistory) history = lap_history_new ();
  g_autoptr (LapSession) session = session_of ("ab*2");
  LapBlock *block = lap_part_nth (lap_session_nth (session, 0), 0);

  lap_history_apply (history, lap_verb_only_here (block, 2, catalogue));
  lap_history_apply (history, lap_verb_set_words (block, 2, setup, catalogue));
  g_assert_null (block->say);
  g_assert_true (lap_has_own_words (block, 2));
  lap_history_apply (history, lap_verb_same_words (block, 2, catalogue));
  g_assert_false (lap_has_own_words (block, 2));
  g_assert_cmpint (lap_changes_find (block->in_round, 2)->work, ==, block->work);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/edit/verbs/move", test_move);
  g_test_add_func ("/edit/verbs/step", test_step);
  g_test_add_func ("/edit/verbs/remove", test_remove);
  g_test_add_func ("/edit/verbs/insert", test_insert);
  g_test_add_func ("/edit/verbs/sources", test_sources);
  g_test_add_func ("/edit/verbs/set-time", test_set_time);
  g_test_add_func ("/edit/verbs/set-times", test_set_times);
  g_test_add_func ("/edit/verbs/next", test_next);
  g_test_add_func ("/edit/verbs/only-here", test_only_here);
  g_test_add_func ("/edit/verbs/words-in-round", test_words_in_round);
  g_test_add_func ("/edit/verbs/same-words-leave", test_same_words_leave);
  return g_test_run ();
}
