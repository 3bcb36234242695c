/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The checks see what they should: poses broken on purpose, each with the words that must come up.
 */
#include "figures.h"

static const struct {
  const char *name, *figure, *words;
} broken[] = {
  { "out-of-balance", "{'like': 'squat', 'keys': [{}, {'hip': [-24, 29]}]}", "out of balance" },
  { "hand-out-of-reach", "{'like': 'push-up', 'arrow': null, 'keys': [{'arms': {'palm': 40}}]}",
    "off its contact" },
  { "foot-out-of-reach", "{'like': 'squat', 'keys': [{'hip': [1.5, 56]}]}", "right leg is" },
  { "knee-backwards", "{'like': 'donkey-kick', 'keys': [{'legR': [180, 150, 60]}, {}]}", "knee at" },
  { "elbow-backwards",
    "{'like': 'lateral-raise', 'view': 'side', 'keys': [{'hip': [1.5, 52.85], 'legR': {'flat': 0},"
                       " 'legL': {'flat': 0}, 'arms': [150, 190]}]}", "elbow at" },
  { "elbow-too-far", "{'like': 'squat', 'keys': [{'arms': [180, 20]}]}", "elbow at" },
  { "shoulder-too-far", "{'like': 'squat', 'keys': [{'arms': [255, 255]}]}", "shoulder at" },
  { "hip-too-far", "{'like': 'single-leg-deadlift', 'keys': [{}, {'legL': [230, 230, 150], 'trunk': 0}]}",
    "hip at" },
  { "neck-too-far", "{'like': 'squat', 'keys': [{'head': 70}]}", "neck at" },
  { "spine-too-far", "{'like': 'cat-cow', 'keys': [{'bend': -70}, {}]}", "spine at" },
  { "ankle-too-far", "{'like': 'split-squat', 'keys': [{}, {'legL': {'ball': -46, 'foot': 128}}]}",
    "ankle at" },
  { "under-the-floor", "{'like': 'glute-bridge', 'keys': [{'hip': [0, 4]}, {}]}", "under the floor" },
  { "floating", "{'like': 'plank', 'keys': [{'pin': null, 'hip': [0, 40], 'legs': [261, 261, 168],"
                " 'arms': [180, 90]}]}", "nothing touches" },
  { "hands-slip", "{'like': 'squat-thrust', 'anchor': null, 'pike': 0, 'keys': [{}, {}]}",
    "off its contact" },
  { "grips-nothing", "{'like': 'inverted-row', 'gear': [], 'keys': [{}, {}]}", "grips nothing" },
  { "knee-in-trunk", "{'like': 'knees-to-chest', 'keys': [{}, {'legs': [-93, 84, 0], 'arms': [94, 91, 90]}]}",
    "trunk" },
  { "arrow-too-short", "{'like': 'squat', 'arrow': {'line': [40, 60, 40, 66]}}", "only 6.0 long" },
  { "arrow-in-figure", "{'like': 'squat', 'arrow': {'line': [-13, 20, -13, 40]}}", "from the figure" },
  { "kit-under-floor", "{'like': 'dumbbell-romanian-deadlift', 'keys': [{}, {'hip': [-16, 30], 'trunk': 90,"
                       " 'arms': [180, 180]}]}", "under the floor" },
  { "leg-off-the-step", "{'like': 'step-up', 'keys': [{'legR': {'flat': 40, 'on': 'step'}}]}",
    "right leg is" },
};

static void
check_broken (gconstpointer data)
{
  guint i = GPOINTER_TO_UINT (data);
  g_autoptr (LapFigure) figure = figure_of (broken[i].figure);
  g_autofree char *problems = problems_of (figure);

  if (strstr (problems, broken[i].words) == NULL)
    g_error ("expected “%s” among: %s", broken[i].words, problems);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (broken); i++)
    {
      g_autofree char *path = g_strconcat ("/figure/mutations/", broken[i].name, NULL);

      g_test_add_data_func (path, GUINT_TO_POINTER (i), check_broken);
    }
  return g_test_run ();
}
