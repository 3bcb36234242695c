/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every exercise of the catalogue has a figure, and every figure is possible.
 */
#include "figure/key.h"
#include "figures.h"

static void
check_figure (gconstpointer data)
{
  const LapExercise *exercise = data;
  g_autoptr (LapFigureSet) set = lap_figure_set_new (builtin_figure, NULL);
  g_autoptr (GError) error = NULL;
  const LapFigure *figure = lap_figure_set_get (set, exercise->id, &error);
  g_autofree char *problems = NULL;

  g_assert_no_error (error);
  g_assert_nonnull (figure);
  problems = problems_of (figure);
  g_assert_cmpstr (problems, ==, "");
}

/* What the words ask for is what is drawn: word of the exercise, kind of the figure. A wall without a word
 * for it is where a band or a strap is fixed. */
static const struct {
  const char *word;
  LapGearKind kind;
} kit[] = {
  { "mat", LAP_GEAR_MAT },           { "dumbbells", LAP_GEAR_DUMBBELL },    { "dumbbell", LAP_GEAR_DUMBBELL },
  { "band", LAP_GEAR_BAND },         { "kettlebell", LAP_GEAR_KETTLEBELL }, { "loop-band", LAP_GEAR_LOOP },
  { "chair", LAP_GEAR_CHAIR },       { "bench", LAP_GEAR_BENCH },           { "step", LAP_GEAR_STEP },
  { "wall", LAP_GEAR_WALL },         { "wall", LAP_GEAR_PANEL },            { "rope", LAP_GEAR_ROPE },
  { "bar", LAP_GEAR_BAR },           { "strap", LAP_GEAR_STRAP },           { "roller", LAP_GEAR_ROLLER },
  { "medicine-ball", LAP_GEAR_BALL }, { "ball", LAP_GEAR_BALL },            { "bike", LAP_GEAR_BIKE },
  { "rower", LAP_GEAR_ROWER },       { "anchor", LAP_GEAR_WALL },           { "band", LAP_GEAR_WALL },
};

static gboolean
draws (const LapFigure *figure, const char *word)
{
  if (g_str_equal (word, "partner"))
    return figure->partner;
  for (guint i = 0; i < figure->n_gear; i++)
    for (guint j = 0; j < G_N_ELEMENTS (kit); j++)
      if (kit[j].kind == figure->gear[i].kind && g_str_equal (kit[j].word, word))
        return TRUE;
  return FALSE;
}

static gboolean
asks_for (const LapExercise *exercise, LapGearKind kind)
{
  for (guint i = 0; i < G_N_ELEMENTS (kit); i++)
    if (kit[i].kind == kind && exercise->kit != NULL &&
        g_strv_contains ((const char *const *) exercise->kit, kit[i].word))
      return TRUE;
  return kind == LAP_GEAR_TAPE;
}

static void
check_kit (const LapExercise *exercise, const LapFigure *figure)
{
  for (guint i = 0; exercise->kit != NULL && exercise->kit[i] != NULL; i++)
    if (!draws (figure, exercise->kit[i]))
      g_error ("%s: %s is not drawn", exercise->id, exercise->kit[i]);
  for (guint i = 0; i < figure->n_gear; i++)
    if (!asks_for (exercise, figure->gear[i].kind))
      g_error ("%s: %s is drawn, not asked for", exercise->id, lap_gear_word (figure->gear[i].kind));
}

static void
check_agreement (void)
{
  g_autoptr (LapFigureSet) set = lap_figure_set_new (builtin_figure, NULL);
  LapCatalogue *catalogue = lap_catalogue_builtin ();

  for (guint i = 0; i < lap_catalogue_n (catalogue); i++)
    {
      LapExercise *exercise = lap_catalogue_nth (catalogue, i);
      const LapFigure *figure = lap_figure_set_get (set, exercise->id, NULL);
      LapFigureBox box = figure->box;

      check_kit (exercise, figure);
      /* What has no repetitions is taken up once, or never moves. */
      if (exercise->seconds_per_rep == 0.0)
        g_assert_true (figure->cycle == LAP_FIGURE_HOLD || figure->n_keys == 1);
      else
        g_assert_cmpint (figure->cycle, !=, LAP_FIGURE_HOLD);
      g_assert_cmpint (figure->poster, <, figure->n_keys);
      g_assert_cmpint (figure->ghost, !=, figure->poster);
      /* Nothing is as tall as two people, or as long as three. */
      g_assert_cmpfloat (box.y1 - box.y0, <, 200.0);
      g_assert_cmpfloat (box.x1 - box.x0, <, 300.0);
    }
}

int
main (int argc, char **argv)
{
  LapCatalogue *catalogue = NULL;

  g_test_init (&argc, &argv, NULL);
  catalogue = lap_catalogue_builtin ();
  for (guint i = 0; i < lap_catalogue_n (catalogue); i++)
    {
      LapExercise *exercise = lap_catalogue_nth (catalogue, i);
      g_autofree char *path = g_strconcat ("/figure/poses/", exercise->id, NULL);

      g_test_add_data_func (path, exercise, check_figure);
    }
  g_test_add_func ("/figure/poses/agreement", check_agreement);
  return g_test_run ();
}
