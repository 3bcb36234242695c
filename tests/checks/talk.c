/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The check of words: how it says where, why, and what to leave out.
 */
#include "checks/checks.h"

#include "timelines.h"

static LapCheckup *
checkup_of (const char *members)
{
  g_autoptr (LapTimeline) timeline = test_timeline (members);

  return lap_checkup_new (timeline);
}

/* The @n-th warning of the check, or NULL. */
static const LapWarning *
nth (const LapCheckup *checkup, guint n)
{
  for (guint i = 0; i < lap_checkup_n (checkup); i++)
    if (lap_checkup_nth (checkup, i)->check == lap_checks_find ("talk-over") && n-- == 0)
      return lap_checkup_nth (checkup, i);
  return NULL;
}

static void
assert_message (const LapCheckup *checkup, guint n, const char *message)
{
  g_autofree char *text = lap_warning_message (checkup, nth (checkup, n));

  g_assert_cmpstr (text, ==, message);
}

static LapEdits *
remedy (const LapCheckup *checkup, guint n, const char *label)
{
  g_autoptr (GPtrArray) remedies = lap_warning_remedies (checkup, nth (checkup, n));

  for (guint i = 0; i < remedies->len; i++)
    if (g_str_equal (((LapRemedy *) g_ptr_array_index (remedies, i))->label, label))
      return lap_edits_copy (((LapRemedy *) g_ptr_array_index (remedies, i))->edits);
  g_error ("no remedy %s", label);
}

#define WORDS "'say': {'setup': 'one two', 'cues': ['one two three', 'one two three', 'one two three'], 'fault': '', "\
              "'easier': '', 'harder': ''}"

/* 3 s of rest hold 3 words at 2 a second, but not the 4 s of breath and count-in as well: 5.5 s. Nine words in the
 * work at 1.7 a second take 5.3 s. */
static void
test_places (void)
{
  g_autoptr (LapCheckup) checkup = checkup_of (
    "'film': {'sound': 'live'}, 'parts': [{'kind': 'main', 'rounds': 3, 'blocks': ["
    "{'exercise': 'squat', 'work': 40, 'rest': 3, 'say': {'setup': '', 'cues': []}},"
    "{'exercise': 'sumo-squat', 'work': 5, 'rest': 30, " WORDS "}]}]");
  const LapWarning *before = nth (checkup, 0), *in_work = nth (checkup, 1);
  g_autofree char *why = lap_warning_why (checkup, before);

  assert_message (checkup, 0, "The time before Sumo squat is too full: 6 s to say and do, 3 s of room.");
  assert_message (checkup, 1, "Sumo squat is too full of words: 6 s to say, 5 s of work.");
  g_assert_cmpstr (why, ==, "4 words, at 2.0 a second, and 4 s to change position, fetch kit and count in.");
  g_assert_cmpint (before->start, ==, 40);
  g_assert_cmpint (before->end, ==, 43);
  g_assert_cmpint (before->block, ==, 1);
  g_assert_cmpint (in_work->round, ==, 1);
  /* In each place once, not in every round. */
  g_assert_null (nth (checkup, 2));
}

/* Of nine words in 5 s at 1.7 a second eight have room: the last cue goes, and no more. */
static void
test_least_important (void)
{
  g_autoptr (LapTimeline) timeline = test_timeline (
    "'film': {'sound': 'live'}, 'parts': [{'kind': 'main', 'blocks': ["
    "{'exercise': 'squat', 'work': 40, 'rest': 30}, {'exercise': 'sumo-squat', 'work': 5, 'rest': 30, " WORDS "}]}]");
  g_autoptr (LapCheckup) checkup = lap_checkup_new (timeline);
  g_autoptr (LapEdits) edits = remedy (checkup, 0, "Drop the least important cue");
  LapBlock *block = lap_part_nth (lap_session_nth (timeline->session, 0), 1);

  lap_edits_swap (edits);
  g_assert_cmpuint (g_strv_length (block->say->cues), ==, 2);
  g_assert_cmpstr (block->say->setup, ==, "one two");
  lap_edits_swap (edits);
  g_assert_cmpuint (g_strv_length (block->say->cues), ==, 3);
}

/* A block that speaks with the exercise's words gets its own, fewer by a cue; the rest stays the exercise's. */
static void
test_others_words (void)
{
  g_autoptr (LapTimeline) timeline = test_timeline (
    "'parts': [{'kind': 'main', 'rounds': 2, 'blocks': [{'exercise': 'squat', 'work': 16, 'rest': 40}]}]");
  g_autoptr (LapCheckup) checkup = lap_checkup_new (timeline);
  LapBlock *block = lap_part_nth (lap_session_nth (timeline->session, 0), 0);
  g_autoptr (GPtrArray) remedies = lap_warning_remedies (checkup, nth (checkup, 0));
  LapRemedy *first = g_ptr_array_index (remedies, 0);

  lap_edits_swap (first->edits);
  g_assert_nonnull (block->say);
  g_assert_null (block->say->fault);
  lap_edits_swap (first->edits);
  g_assert_null (block->say);
}

/* Words of one round lose their least important cue there, and the block keeps its own. */
static void
test_in_round (void)
{
  g_autoptr (LapTimeline) timeline = test_timeline (
    "'film': {'sound': 'live'}, 'parts': [{'kind': 'main', 'rounds': 2, 'blocks': ["
    "{'exercise': 'squat', 'work': 40, 'rest': 30, 'say': {'setup': '', 'cues': []}},"
    "{'exercise': 'sumo-squat', 'work': 5, 'rest': 60, 'say': {'setup': '', 'cues': ['one'], 'fault': '', "
    "'easier': '', 'harder': ''}, 'in-round': {'2': {" WORDS "}}}]}]");
  g_autoptr (LapCheckup) checkup = lap_checkup_new (timeline);
  LapBlock *block = lap_part_nth (lap_session_nth (timeline->session, 0), 1);
  g_autoptr (LapEdits) cue = NULL;

  g_assert_cmpint (nth (checkup, 0)->round, ==, 2);
  cue = remedy (checkup, 0, "Drop the least important cue");
  lap_edits_swap (cue);
  g_assert_cmpuint (g_strv_length (lap_changes_find (block->in_round, 2)->say->cues), ==, 2);
  g_assert_cmpuint (g_strv_length (block->say->cues), ==, 1);
  lap_edits_swap (cue);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/checks/talk-over/places", test_places);
  g_test_add_func ("/checks/talk-over/least-important", test_least_important);
  g_test_add_func ("/checks/talk-over/others-words", test_others_words);
  g_test_add_func ("/checks/talk-over/in-round", test_in_round);
  return g_test_run ();
}
