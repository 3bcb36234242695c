/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What there is to say and how long it takes, by hand: words over the pace, half the change of posture, kit, and
 * four seconds of breath and count-in. The paces are common practice, no source.
 */
#include "talk/talk.h"

#include "timelines.h"

#define assert_near(a, b) g_assert_cmpfloat_with_epsilon (a, b, 1e-9)

/* Two exercises whose words can be counted: 3 + 8 words before, cues of 5, fault 3, easier 2, harder 1. */
#define WORDS "'name': '%s', 'for': ['work'], 'pattern': 'squat', 'move': 'own', 'primary': ['quads'], "\
  "'secondary': [], 'sides': 'both', 'impact': 'none', 'noise': 'silent', 'width': 1, 'length': 1, 'view': 'front', "\
  "'met': {'steady': {'value': 2, 'code': '0'}, 'hard': {'value': %s, 'code': '0'}}, 'seconds-per-rep': 3, "\
  "'say': {'setup': 'one two three four five six seven eight', 'cues': ['one two three', 'one two'], "\
  "'fault': 'one two three', 'easier': 'one two', 'harder': 'one'}"

#define LIVE "'film': {'sound': 'live'}, "

static LapTimeline *
timeline_of (const char *hard, const char *rest_of)
{
  g_autofree char *a = g_strdup_printf (WORDS, "The First One", hard), *b = g_strdup_printf (WORDS, "Other", hard);
  g_autofree char *members = g_strdup_printf (
    "'exercises': [{'id': 'a', 'posture': 'standing', 'kit': [], %s}, {'id': 'b', 'posture': 'supine', "
    "'kit': ['mat', 'band'], %s}], %s", a, b, rest_of);

  return test_timeline (members);
}

static LapTalk *
talk_of (const char *hard, const char *rest_of)
{
  g_autoptr (LapTimeline) timeline = timeline_of (hard, rest_of);
  g_autoptr (LapEffort) effort = lap_effort_new (timeline);

  return lap_talk_new (timeline, effort);
}

static void
test_count (void)
{
  g_assert_cmpint (lap_count_words (NULL), ==, 0);
  g_assert_cmpint (lap_count_words (""), ==, 0);
  g_assert_cmpint (lap_count_words ("  \n"), ==, 0);
  g_assert_cmpint (lap_count_words (" well-known  words\tand\nwords "), ==, 4);
  g_assert_cmpint (lap_count_words ("no\302\240break \342\200\224 dash"), ==, 4);
}

#define TWO_ROUNDS \
  "'parts': [{'kind': 'main', 'rounds': 2, 'round-rest': 30, 'blocks': [{'exercise': 'a', 'work': 40, 'rest': 20},"\
  "{'exercise': 'b', 'work': 40, 'rest': 15}]}]"

static void
test_before_work (void)
{
  g_autoptr (LapTalk) talk = talk_of ("3", LIVE TWO_ROUNDS);

  /* The first has no gap. */
  g_assert_cmpint (talk->turns[0].gap.seconds, ==, 0);
  g_assert_cmpint (talk->turns[0].gap.words, ==, 0);
  /* "Other" and its setup at 2 words a second; half of 5 s down three steps, 8 s for the band, 4 s. */
  g_assert_cmpint (talk->turns[1].gap.words, ==, 9);
  g_assert_cmpint (talk->turns[1].gap.seconds, ==, 20);
  assert_near (talk->turns[1].gap.need, 9 / 2.0 + 2.5 + 8 + 4);
  /* In round two the name is enough; 15 s and the round's 30 are one gap; up is half of 7 s, and no kit is new. */
  g_assert_cmpint (talk->turns[2].gap.words, ==, 3);
  g_assert_cmpint (talk->turns[2].gap.seconds, ==, 45);
  assert_near (talk->turns[2].gap.need, 3 / 2.0 + 3.5 + 4);
  g_assert_cmpint (talk->turns[3].gap.words, ==, 1);
}

static void
test_in_work (void)
{
  g_autoptr (LapTalk) easy = talk_of ("3", LIVE TWO_ROUNDS), hard = talk_of ("9", LIVE TWO_ROUNDS);

  /* Nobody speaks before the first: 11 words and the count-in fall to its work, at the pace of moderate work. */
  g_assert_cmpint (easy->turns[0].work.words, ==, 11 + 11);
  assert_near (easy->turns[0].work.need, 22 / 1.7 + 4);
  g_assert_cmpint (easy->turns[0].work.seconds, ==, 40);
  g_assert_cmpint (easy->turns[1].work.words, ==, 11);
  assert_near (easy->turns[1].work.need, 11 / 1.7);
  /* In round two only the cues are left. */
  g_assert_cmpint (easy->turns[3].work.words, ==, 5);
  /* Where the middle of the work is above 60 % it is the vigorous pace. */
  assert_near (hard->turns[3].work.need, 5 / 1.2);
}

/* Spoken afterwards, as is usual: one pace, no count-in. */
static void
test_sound_after (void)
{
  g_autoptr (LapTalk) talk = talk_of ("9", TWO_ROUNDS);

  assert_near (talk->turns[1].gap.need, 9 / 2.5 + 2.5 + 8);
  assert_near (talk->turns[3].work.need, 5 / 2.5);
}

/* Words of a talk use its seconds up; what follows it is said in what is left. */
static void
test_talk (void)
{
  g_autoptr (LapTalk) talk = talk_of ("3", LIVE
    "'parts': [{'kind': 'opening', 'blocks': [{'talk': 'one two three four five', 'seconds': 20}]},"
    "{'kind': 'main', 'blocks': [{'exercise': 'a', 'work': 40, 'rest': 0}, {'talk': 'one', 'seconds': 5}]}]");

  g_assert_cmpuint (talk->n_own, ==, 2);
  assert_near (talk->own[0].room.need, 2.0);
  g_assert_cmpint (talk->own[0].room.seconds, ==, 20);
  g_assert_cmpint (talk->turns[0].gap.words, ==, 5 + 11);
  assert_near (talk->turns[0].gap.need, 16 / 2.5 + 4);
}

/* Own words win member by member; an empty one means that there is nothing to say. */
static void
test_own_words (void)
{
  g_autoptr (LapTalk) talk = talk_of ("3",
    "'parts': [{'kind': 'main', 'rounds': 2, 'blocks': [{'exercise': 'a', 'work': 40, 'rest': 20, 'say': "
    "{'setup': 'one two', 'cues': [], 'harder': ''}, 'in-round': {'2': {'say': {'setup': 'one'}}}}]}]");

  g_assert_cmpstr (talk->turns[0].say.setup, ==, "one two");
  g_assert_cmpint (talk->turns[0].work.words, ==, 3 + 2 + 3 + 2);
  g_assert_null (talk->turns[0].say.harder);
  /* A setup that is new in round two is said; easier and fault were said. */
  g_assert_cmpint (talk->turns[1].gap.words, ==, 3 + 1);
  g_assert_null (talk->turns[1].say.easier);
}

/* Setting up is for an exercise, whichever block shows it. */
static void
test_once (void)
{
  g_autoptr (LapTalk) talk = talk_of ("3",
    "'parts': [{'kind': 'warm-up', 'blocks': [{'exercise': 'a', 'work': 40, 'rest': 20}]},"
    "{'kind': 'main', 'blocks': [{'exercise': 'b', 'work': 40, 'rest': 20}, {'exercise': 'a', 'work': 40, "
    "'rest': 20}, {'exercise': null, 'work': 20, 'rest': 10}]}]");

  g_assert_nonnull (talk->turns[0].say.setup);
  g_assert_nonnull (talk->turns[1].say.setup);
  g_assert_null (talk->turns[2].say.setup);
  g_assert_cmpint (talk->turns[2].gap.words, ==, 3);
  g_assert_cmpint (talk->turns[3].gap.words, ==, 0);
}

/* At their own pace all is said before and in the one stretch of work. */
static void
test_own_pace (void)
{
  g_autoptr (LapTalk) talk = talk_of ("3",
    "'parts': [{'kind': 'opening', 'blocks': [{'pause': 'water', 'seconds': 30}]}, {'kind': 'main', "
    "'run': 'own-pace', 'cap': 300, 'blocks': [{'exercise': 'a', 'work': 40, 'rest': 0},"
    "{'exercise': 'b', 'work': 40, 'rest': 0}]}]");

  g_assert_cmpint (talk->turns[0].gap.words, ==, 11 + 9);
  g_assert_cmpint (talk->turns[0].gap.seconds, ==, 30);
  g_assert_cmpint (talk->turns[0].work.words, ==, 22);
  g_assert_cmpint (talk->turns[0].work.seconds, ==, 300);
  g_assert_cmpint (talk->turns[1].work.words, ==, 0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/talk/count", test_count);
  g_test_add_func ("/talk/before-work", test_before_work);
  g_test_add_func ("/talk/in-work", test_in_work);
  g_test_add_func ("/talk/sound-after", test_sound_after);
  g_test_add_func ("/talk/talk", test_talk);
  g_test_add_func ("/talk/own-words", test_own_words);
  g_test_add_func ("/talk/once", test_once);
  g_test_add_func ("/talk/own-pace", test_own_pace);
  return g_test_run ();
}
