/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every exercise of the catalogue has a figure, and every figure is possible.
 */
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

/* A hold moves once at most, and a figure that alternates is an exercise that has two sides. */
static void
check_agreement (void)
{
  g_autoptr (LapFigureSet) set = lap_figure_set_new (builtin_figure, NULL);
  LapCatalogue *catalogue = lap_catalogue_builtin ();

  for (guint i = 0; i < lap_catalogue_n (catalogue); i++)
    {
      LapExercise *exercise = lap_catalogue_nth (catalogue, i);
      const LapFigure *figure = lap_figure_set_get (set, exercise->id, NULL);
      LapFigureBox box = { 0 };

      if (figure == NULL)
        continue;
      box = lap_figure_box (figure);
      g_assert_cmpint (lap_figure_poster_key (figure), <, lap_figure_n_keys (figure));
      g_assert_cmpint (lap_figure_ghost_key (figure), !=, (int) lap_figure_poster_key (figure));
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

      if (exercise->figure != NULL)
        g_test_add_data_func (path, exercise, check_figure);
    }
  g_test_add_func ("/figure/poses/agreement", check_agreement);
  return g_test_run ();
}
