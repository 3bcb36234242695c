/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "edit/own.h"

#include "edit/history.h"

static void
test_make (void)
{
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (LapSession) session = lap_session_new ("Own");
  g_autoptr (LapHistory) history = lap_history_new ();
  LapExercise *squat = lap_catalogue_find (builtin, "squat"), *own;
  g_autofree char *id = NULL, *second = NULL;

  lap_history_apply (history, lap_verb_make_own (session, squat, "Été à l’eau!", builtin, &id));
  {
    g_autoptr (LapCatalogue) catalogue = lap_session_catalogue (session, builtin);

    own = lap_catalogue_find (catalogue, id);
    g_assert_cmpstr (id, ==, "own-ete-a-l-eau");
    g_assert_cmpstr (own->name, ==, "Été à l’eau!");
    g_assert_cmpuint (own->primary_mask, ==, squat->primary_mask);
    g_assert_cmpstr (json_object_get_string_member (json_node_get_object (own->figure), "like"), ==, "squat");
    /* The same name again is another exercise. */
    lap_history_apply (history, lap_verb_make_own (session, squat, "Été à l’eau!", catalogue, &second));
    g_assert_cmpstr (second, !=, id);
    g_assert_cmpuint (session->exercises->len, ==, 2);
    lap_history_apply (history, lap_verb_rename_own (session, own, "Low squat"));
  }
  own = g_ptr_array_index (session->exercises, 0);
  g_assert_cmpstr (own->id, ==, id);
  g_assert_cmpstr (own->name, ==, "Low squat");
  g_assert_cmpstr (lap_history_undo_label (history), ==, "Call it Low squat");
  while (lap_history_undo (history))
    ;
  g_assert_true (session->exercises == NULL || session->exercises->len == 0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/edit/own/make", test_make);
  return g_test_run ();
}
