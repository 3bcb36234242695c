/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Choosing fills what isn't chosen yet, within the wishes of the session, and touches nothing else.
 */
#include "arrange/choose.h"

#include "arrange/plans.h"
#include "timelines.h"

#define NULLS "{'exercise': null, 'work': 40, 'rest': 20}, {'exercise': null, 'work': 40, 'rest': 20}, " \
              "{'exercise': null, 'work': 40, 'rest': 20}, {'exercise': null, 'work': 40, 'rest': 20}"

/* What was chosen for block @block of part @part of the session, or NULL. */
static const LapExercise *
chosen (const LapTimeline *timeline, guint part, guint block)
{
  const char *id = lap_part_nth (lap_session_nth (timeline->session, part), block)->exercise;

  return id != NULL ? lap_catalogue_find (timeline->catalogue, id) : NULL;
}

static void
choose (const LapTimeline *timeline, guint32 seed, guint left)
{
  guint n = G_MAXUINT;
  g_autoptr (LapEdits) edits = lap_choose (timeline, seed, &n);

  g_assert_cmpuint (n, ==, left);
  lap_edits_swap (edits);
}

static void
test_within_wishes (void)
{
  const guint32 kit = LAP_BIT (LAP_KIT_MAT) | LAP_BIT (LAP_KIT_BAND);
  const guint32 care = LAP_BIT (LAP_CARE_WRISTS) | LAP_BIT (LAP_CARE_KNEES);

  for (guint32 seed = 0; seed < 20; seed++) {
    g_autoptr (LapTimeline) t = test_timeline (
      "'kit': ['mat', 'band'], 'quiet': true, 'also-for': ['wrists', 'knees'], 'group': {'level': 'new'},"
      "'space': {'width': 2.2, 'length': 1.8},"
      "'parts': [{'kind': 'warm-up', 'blocks': [" NULLS "]}, {'kind': 'main', 'blocks': [" NULLS "]},"
      "          {'kind': 'cool-down', 'blocks': [" NULLS "]}]");
    static const LapUseWord uses[] = { LAP_USE_WARM_UP, LAP_USE_WORK, LAP_USE_COOL_DOWN };

    choose (t, seed, 0);
    for (guint p = 0; p < 3; p++)
      for (guint b = 0; b < 4; b++) {
        const LapExercise *e = chosen (t, p, b);

        g_assert_nonnull (e);
        g_assert_cmphex (e->use_mask & LAP_BIT (uses[p]), !=, 0);
        g_assert_cmphex (e->kit_mask & ~kit, ==, 0);
        g_assert_cmphex (e->load_mask & care, ==, 0);
        g_assert_cmpint (e->noise, !=, LAP_NOISE_LOUD);
        /* Nobody who is new is made to jump. */
        g_assert_cmpint (e->impact, !=, LAP_IMPACT_HIGH);
        g_assert_true ((e->width <= 2.2 && e->length <= 1.8) || (e->width <= 1.8 && e->length <= 2.2));
        for (guint other = 0; other < b; other++)
          g_assert_true (chosen (t, p, other) != e);
      }
  }
}

/* What is there stays, also where it goes against the wishes, and so do talks, pauses, times and notes. */
static void
test_leaves_others (void)
{
  g_autoptr (LapTimeline) t = test_timeline (
    "'quiet': true, 'also-for': ['wrists'], 'parts': [{'kind': 'main', 'rounds': 2, 'blocks': ["
    "{'exercise': 'squat-jump', 'work': 40, 'rest': 20, 'in-round': {'2': {'exercise': 'push-up'}}},"
    "{'exercise': null, 'work': 35, 'rest': 25, 'note': 'as you like'}, {'talk': 'Half way.', 'seconds': 10},"
    "{'exercise': 'push-up', 'work': 40, 'rest': 20, 'fixed': true}, {'pause': 'water', 'seconds': 30}]}]");
  g_autofree char *before = plan_text (t->session), *wanted = NULL, *after = NULL;
  g_autofree char *member = NULL;
  g_auto (GStrv) around = g_strsplit (before, "\"exercise\": null", 2);

  choose (t, 0, 0);
  member = g_strdup_printf ("\"exercise\": \"%s\"",
                            lap_part_nth (lap_session_nth (t->session, 0), 1)->exercise);
  wanted = g_strjoinv (member, around);
  after = plan_text (t->session);
  g_assert_cmpstr (after, ==, wanted);
  choose (t, 1, 0);
  g_free (after);
  after = plan_text (t->session);
  g_assert_cmpstr (after, ==, wanted);
}

/* Where nothing fits, the blocks stay as they are and are counted. */
static void
test_counts_left (void)
{
  g_autoptr (LapTimeline) t = test_timeline (
    "'space': {'width': 0.3, 'length': 0.3}, 'parts': [{'kind': 'warm-up', 'blocks': [" NULLS "]},"
    "{'kind': 'main', 'blocks': [{'exercise': 'squat', 'work': 40}, {'exercise': null, 'work': 40}]}]");
  g_autofree char *before = plan_text (t->session), *after = NULL;

  choose (t, 0, 5);
  after = plan_text (t->session);
  g_assert_cmpstr (after, ==, before);
}

/* Neighbours that are chosen don't tire the same muscles: the check has nothing to say. */
static void
test_neighbours (void)
{
  for (guint32 seed = 0; seed < 10; seed++) {
    g_autoptr (LapTimeline) t = test_timeline (
      "'kit': ['mat'],"
      "'parts': [{'kind': 'main', 'blocks': [{'exercise': 'squat', 'work': 40, 'rest': 20}, " NULLS
      ", {'exercise': 'push-up', 'work': 40, 'rest': 20}]}]");
    g_autoptr (LapCheckup) checkup = NULL;

    choose (t, seed, 0);
    checkup = plan_check (t->session);
    for (guint i = 0; i < lap_checkup_n (checkup); i++)
      g_assert_cmpstr (lap_checkup_nth (checkup, i)->check->id, !=, "same-muscle");
  }
}

static char *
text_with_seed (guint32 seed)
{
  g_autoptr (LapTimeline) t = test_timeline (
    "'kit': ['mat'], 'parts': [{'kind': 'main', 'blocks': [" NULLS "]}]");

  choose (t, seed, 0);
  return plan_text (t->session);
}

static void
test_seed (void)
{
  g_autofree char *five = text_with_seed (5), *again = text_with_seed (5), *six = text_with_seed (6);

  g_assert_cmpstr (five, ==, again);
  g_assert_cmpstr (five, !=, six);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/choose/within-wishes", test_within_wishes);
  g_test_add_func ("/choose/leaves-others", test_leaves_others);
  g_test_add_func ("/choose/counts-left", test_counts_left);
  g_test_add_func ("/choose/neighbours", test_neighbours);
  g_test_add_func ("/choose/seed", test_seed);
  return g_test_run ();
}
