/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "figures.h"

JsonObject *
builtin_figure (const char *id, gpointer data)
{
  LapExercise *exercise = lap_catalogue_find (lap_catalogue_builtin (), id);

  return exercise != NULL && exercise->figure != NULL ? json_node_get_object (exercise->figure) : NULL;
}

JsonObject *
object_of (const char *text)
{
  g_autofree char *json = g_strdelimit (g_strdup (text), "'", '"');
  g_autoptr (GError) error = NULL;
  g_autoptr (JsonNode) node = json_from_string (json, &error);

  g_assert_no_error (error);
  return json_object_ref (json_node_get_object (node));
}

LapFigure *
figure_of (const char *text)
{
  g_autoptr (JsonObject) object = object_of (text);
  g_autoptr (GError) error = NULL;
  LapFigure *figure = lap_figure_new ("a-figure", object, builtin_figure, NULL, &error);

  g_assert_no_error (error);
  return figure;
}

char *
problems_of (const LapFigure *figure)
{
  g_autoptr (GPtrArray) problems = lap_figure_problems (figure);

  g_ptr_array_add (problems, NULL);
  return g_strjoinv ("\n", (char **) problems->pdata);
}
