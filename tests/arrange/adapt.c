/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Versions of the two good demos for each of whom a session can be adapted: the same clock, nothing left that
 * doesn't suit but what is said to be unsolved, and a reason for every swap.
 */
#include "arrange/adapt.h"

#include "arrange/plans.h"
#include "store/documents.h"

#include <string.h>

/* What each asks for, as the design words it; nothing of the code's own table. */
typedef gboolean (*Suits) (const LapExercise *e);

static gboolean
is_soft (const LapExercise *e)
{
  return e->noise != LAP_NOISE_LOUD && e->impact != LAP_IMPACT_HIGH;
}

static gboolean
does_not_lie (const LapExercise *e)
{
  return !lap_posture_lies (e->posture);
}

static gboolean
spares_pelvic_floor (const LapExercise *e)
{
  return does_not_lie (e) && !(e->load_mask & LAP_BIT (LAP_CARE_PELVIC_FLOOR));
}

static gboolean
is_on_chair (const LapExercise *e)
{
  return e->posture == LAP_POSTURE_ON_CHAIR;
}

static gboolean
stands (const LapExercise *e)
{
  return e->posture == LAP_POSTURE_STANDING;
}

static gboolean
needs_no_kit (const LapExercise *e)
{
  return !(e->kit_mask & ~(LAP_BIT (LAP_KIT_MAT) | LAP_BIT (LAP_KIT_WALL)));
}

static gboolean
does_not_jump (const LapExercise *e)
{
  return e->impact != LAP_IMPACT_HIGH;
}

static const struct {
  const char *word;
  int care; /* LapCareWord that mustn't be loaded, or -1 */
  Suits suits;
} wanted[] = {
  { "quiet", -1, is_soft },
  { "wrists", LAP_CARE_WRISTS, NULL },
  { "knees", LAP_CARE_KNEES, NULL },
  { "lower-back", LAP_CARE_LOWER_BACK, NULL },
  { "shoulders", LAP_CARE_SHOULDERS, NULL },
  { "balance", LAP_CARE_BALANCE, NULL },
  { "after-birth", LAP_CARE_PELVIC_FLOOR, spares_pelvic_floor },
  { "not-lying", -1, does_not_lie },
  { "on-chair", -1, is_on_chair },
  { "standing", -1, stands },
  { "no-kit", -1, needs_no_kit },
  { "new", -1, does_not_jump },
};

static const char * const demos[] = { "thirty-on-the-mat", "twelve-at-twelve" };

static gboolean
suits (const LapExercise *e, guint row)
{
  return (wanted[row].suits == NULL || wanted[row].suits (e)) &&
         (wanted[row].care < 0 || !(e->load_mask & LAP_BIT (wanted[row].care)));
}

/* The swap of a block in a round, or NULL. A round with a change of its own has its own swap. */
static const LapSwap *
swap_of (GPtrArray *swaps, const LapTurn *turn, const LapBlock *before)
{
  const int round = lap_changes_find (before->in_round, turn->round) != NULL ? turn->round : 0;

  for (guint i = 0; i < swaps->len; i++) {
    const LapSwap *s = g_ptr_array_index (swaps, i);

    if (s->part == turn->part && s->block == turn->block && s->round == round)
      return s;
  }
  return NULL;
}

/* Kept as it is, with the words of its care entry for whoever leads. */
static gboolean
is_kept_by_words (const LapSwap *swap, const LapTask *task, guint row)
{
  const LapCare *care = wanted[row].care >= 0 ? lap_exercise_care (task->shown, wanted[row].care) : NULL;

  return swap->solved && g_strcmp0 (swap->was, swap->now) == 0 && care != NULL && care->say != NULL &&
         g_str_equal (swap->reason, care->say) && g_strcmp0 (task->note, care->say) == 0;
}

static void
assert_same_clock (const LapTimeline *before, const LapTimeline *after)
{
  g_assert_cmpint (after->length, ==, before->length);
  g_assert_cmpuint (after->n_turns, ==, before->n_turns);
  for (guint i = 0; i < after->n_turns; i++) {
    g_assert_cmpint (after->turns[i].start, ==, before->turns[i].start);
    g_assert_cmpint (after->turns[i].end, ==, before->turns[i].end);
  }
}

static void
assert_adapted (const LapTimeline *before, const LapTimeline *after, GPtrArray *swaps, guint row)
{
  assert_same_clock (before, after);
  for (guint i = 0; i < after->n_turns; i++) {
    const LapTurn *turn = &after->turns[i];
    const LapTask *task = &after->tasks[turn->task], *was = &before->tasks[before->turns[i].task];
    const LapSwap *swap = swap_of (swaps, turn, was->block);

    g_assert_nonnull (task->shown);
    if (swap == NULL) {
      g_assert_true (suits (was->shown, row));
      g_assert_true (task->exercise == was->exercise);
      continue;
    }
    g_assert_cmpstr (swap->was, ==, lap_task_name (was));
    if (swap->solved)
      g_assert_cmpstr (swap->now, ==, lap_task_name (task));
    else
      g_assert_null (swap->now);
    if (!suits (task->shown, row) && swap->solved)
      g_assert_true (is_kept_by_words (swap, task, row));
  }
  for (guint i = 0; i < swaps->len; i++) {
    const LapSwap *s = g_ptr_array_index (swaps, i);

    g_assert_nonnull (s->reason);
    g_assert_cmpstr (s->reason, !=, "");
  }
}

static GPtrArray *
adapt (LapSession *session, int whom)
{
  g_autoptr (LapTimeline) timeline = plan_lay_out (session);
  GPtrArray *swaps = NULL;
  g_autofree char *text = plan_text (session), *back = NULL;
  g_autoptr (LapEdits) edits = lap_adapt (timeline, whom, &swaps);

  lap_edits_swap (edits);
  lap_edits_swap (edits);
  back = plan_text (session);
  g_assert_cmpstr (back, ==, text);
  lap_edits_swap (edits);
  return swaps;
}

static void
test_everybody (void)
{
  g_assert_cmpuint (lap_fors.n, ==, G_N_ELEMENTS (wanted));
  for (guint d = 0; d < G_N_ELEMENTS (demos); d++)
    for (guint row = 0; row < G_N_ELEMENTS (wanted); row++) {
      g_autoptr (LapSession) original = plan_demo (demos[d]), session = plan_demo (demos[d]);
      g_autoptr (LapTimeline) before = plan_lay_out (original), after = NULL;
      g_autoptr (GPtrArray) swaps = adapt (session, lap_words_find (&lap_fors, wanted[row].word));
      guint unsolved = 0;

      after = plan_lay_out (session);
      for (guint i = 0; i < swaps->len; i++) {
        const LapSwap *s = g_ptr_array_index (swaps, i);

        unsolved += !s->solved;
        g_test_message ("%s, %s, %u.%u.%d: %s -> %s: %s", demos[d], wanted[row].word, s->part, s->block,
                        s->round, s->was, s->now, s->reason);
      }
      assert_adapted (before, after, swaps, row);
      /* The shelf is deep enough for the demos: nothing, or hardly anything, is left. */
      g_assert_cmpuint (unsolved, <=, 1);
    }
}

/* People who are new work steadily in the main part, and the session says whom it is for. */
static void
test_new_is_steady (void)
{
  g_autoptr (LapSession) session = plan_demo ("thirty-on-the-mat");
  g_autoptr (GPtrArray) swaps = adapt (session, LAP_FOR_NEW);
  g_autoptr (LapTimeline) after = plan_lay_out (session);
  guint easier = 0;

  g_assert_cmpint (session->level, ==, LAP_LEVEL_NEW);
  for (guint i = 0; i < after->n_turns; i++) {
    const LapTask *task = &after->tasks[after->turns[i].task];

    easier += task->option == LAP_OPTION_EASIER;
    if (after->turns[i].part_kind == LAP_PART_MAIN)
      g_assert_cmpint (task->pace, ==, LAP_PACE_STEADY);
  }
  g_assert_cmpuint (easier, >, 0);
}

/* Swaps that anyone can check against the files of the exercises. */
static const struct {
  const char *demo, *whom;
  guint part, block;
  int round;
  const char *was, *now; /* ids */
} by_hand[] = {
  /* Its care entry for the knees has no words to keep it by, and names the calf raise instead. */
  { "thirty-on-the-mat", "knees", 2, 0, 2, "squat-jump", "squat-to-calf-raise" },
  /* The calf raise is the one step easier along its chain that lands softly. */
  { "thirty-on-the-mat", "quiet", 2, 0, 2, "squat-jump", "squat-to-calf-raise" },
  /* The push-up's care entry for the wrists names the wall; the floor of the climber goes to the back. */
  { "thirty-on-the-mat", "wrists", 2, 4, 0, "push-up", "wall-push-up" },
  { "thirty-on-the-mat", "wrists", 2, 5, 0, "mountain-climber", "dead-bug" },
  /* A goblet squat without its weight is a squat: one step easier, the same muscles. */
  { "twelve-at-twelve", "no-kit", 2, 0, 0, "goblet-squat", "squat" },
};

static void
test_by_hand (void)
{
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();

  for (guint i = 0; i < G_N_ELEMENTS (by_hand); i++) {
    g_autoptr (LapSession) session = plan_demo (by_hand[i].demo);
    g_autoptr (GPtrArray) swaps = adapt (session, lap_words_find (&lap_fors, by_hand[i].whom));
    const LapSwap *found = NULL;

    for (guint k = 0; k < swaps->len; k++) {
      const LapSwap *s = g_ptr_array_index (swaps, k);

      if (s->part == by_hand[i].part && s->block == by_hand[i].block && s->round == by_hand[i].round)
        found = s;
    }
    g_assert_nonnull (found);
    g_assert_cmpstr (found->was, ==, lap_exercise_name (lap_catalogue_find (catalogue, by_hand[i].was)));
    g_assert_cmpstr (found->now, ==, lap_exercise_name (lap_catalogue_find (catalogue, by_hand[i].now)));
  }
}

/* A round that says "hard" is steady, too, and two rounds of one block that differ both keep what was put into them. */
static void
test_rounds (void)
{
  static const char json[] =
    "{\"format\": \"lapwing-session\", \"version\": 1, \"id\": \"r\", \"title\": \"Rounds\", \"kit\": [\"mat\"], \"parts\": "
    "[{\"kind\": \"main\", \"rounds\": 3, \"blocks\": [{\"exercise\": \"squat\", \"work\": 40, \"rest\": 20, \"in-round\": "
    "{\"2\": {\"exercise\": \"squat-jump\", \"pace\": \"hard\"}, \"3\": {\"exercise\": \"star-jump\", \"pace\": \"hard\"}}}]}]}";
  g_autoptr (GBytes) bytes = g_bytes_new_static (json, strlen (json));
  g_autoptr (GError) error = NULL;
  g_autoptr (LapSession) session = lap_session_from_bytes (bytes, &error);
  g_autoptr (GPtrArray) swaps = NULL;
  LapBlock *block;

  g_assert_no_error (error);
  swaps = adapt (session, LAP_FOR_NEW);
  block = lap_part_nth (lap_session_nth (session, 0), 0);
  for (int round = 2; round <= 3; round++) {
    const LapChange *change = lap_changes_find (block->in_round, round);
    g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();

    g_assert_cmpint (change->pace, ==, LAP_PACE_STEADY);
    g_assert_true (does_not_jump (lap_catalogue_find (catalogue, change->exercise)));
  }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/adapt/everybody", test_everybody);
  g_test_add_func ("/adapt/new-is-steady", test_new_is_steady);
  g_test_add_func ("/adapt/by-hand", test_by_hand);
  g_test_add_func ("/adapt/rounds", test_rounds);
  return g_test_run ();
}
