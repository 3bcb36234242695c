/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "edit/own.h"

#include "base/error.h"
#include "edit/add.h"
#include "edit/history.h"

static LapEdits *
change (LapSession *session, LapExercise *own, const char *property, const char *text)
{
  const LapField *field = lap_record_field (&lap_exercise_record, property);
  g_auto (GValue) value = G_VALUE_INIT;
  g_autoptr (GError) error = NULL;
  LapEdits *edits;

  if (field == NULL)
    field = lap_record_field (&lap_say_record, property);
  if (field->words != NULL) {
    g_value_init (&value, G_TYPE_INT);
    g_value_set_int (&value, lap_words_find (field->words, text));
  } else {
    g_value_init (&value, G_TYPE_STRING);
    g_value_set_string (&value, text);
  }
  edits = lap_verb_change_own (session, own, field, &value, "Change it", &error);
  if (edits == NULL)
    g_assert_error (error, LAP_ERROR, LAP_ERROR_INVALID);
  return edits;
}

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
    lap_history_apply (history, change (session, own, "name", "Low squat"));
  }
  own = g_ptr_array_index (session->exercises, 0);
  g_assert_cmpstr (own->id, ==, id);
  g_assert_cmpstr (own->name, ==, "Low squat");
  g_assert_cmpstr (lap_history_undo_label (history), ==, "Change it");
  while (lap_history_undo (history))
    ;
  g_assert_true (session->exercises == NULL || session->exercises->len == 0);
}

static LapExercise *
own_squat (LapSession *session, LapHistory *history)
{
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autofree char *id = NULL;

  lap_history_apply (history, lap_verb_make_own (session, lap_catalogue_find (builtin, "squat"), "Deep", builtin, &id));
  return g_ptr_array_index (session->exercises, 0);
}

/* Another kind of move has another energy: explosive moves are 7.5 and 11.0 METs (2024 Compendium, 02020 and 02214). */
static void
test_change (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Own");
  g_autoptr (LapHistory) history = lap_history_new ();
  LapExercise *own = own_squat (session, history);

  g_assert_cmpfloat (own->met_steady, ==, 3.8);
  lap_history_apply (history, change (session, own, "move", "explosive"));
  own = g_ptr_array_index (session->exercises, 0);
  g_assert_cmpfloat (own->met_steady, ==, 7.5);
  g_assert_cmpfloat (own->met_hard, ==, 11.0);
  lap_history_apply (history, change (session, own, "fault", "Heels up? Wider feet."));
  own = g_ptr_array_index (session->exercises, 0);
  g_assert_cmpstr (own->say->fault, ==, "Heels up? Wider feet.");
  g_assert_cmpint (own->move, ==, lap_words_find (&lap_moves, "explosive"));
  /* What a file could not say is refused, and nothing is changed. */
  g_assert_null (change (session, own, "name", ""));
  g_assert_null (change (session, own, "easier", own->id));
  g_assert_true (own == g_ptr_array_index (session->exercises, 0));
}

static void
test_figure (void)
{
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (LapSession) session = lap_session_new ("Own");
  g_autoptr (LapHistory) history = lap_history_new ();
  LapExercise *own = own_squat (session, history);

  lap_history_apply (history, lap_verb_borrow_figure (session, own, lap_catalogue_find (builtin, "push-up")));
  own = g_ptr_array_index (session->exercises, 0);
  g_assert_cmpstr (json_object_get_string_member (json_node_get_object (own->figure), "like"), ==, "push-up");
}

/* The squat asks something of knees and ankles. */
static void
test_care (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Own");
  g_autoptr (LapHistory) history = lap_history_new ();
  LapExercise *own = own_squat (session, history);

  lap_history_apply (history, lap_verb_set_own_care (session, own, LAP_CARE_WRISTS, 2, "Wrists"));
  own = g_ptr_array_index (session->exercises, 0);
  g_assert_cmpuint (own->load_mask, ==, LAP_BIT (LAP_CARE_WRISTS));
  lap_history_apply (history, lap_verb_set_own_care (session, own, LAP_CARE_KNEES, 0, "Knees"));
  own = g_ptr_array_index (session->exercises, 0);
  g_assert_cmpuint (own->care_mask, ==, LAP_BIT (LAP_CARE_WRISTS) | LAP_BIT (LAP_CARE_ANKLES));
}

/* It goes only while no block needs it, in any round. */
static void
test_remove (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Own");
  g_autoptr (LapHistory) history = lap_history_new ();
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (GError) error = NULL;
  LapExercise *own = own_squat (session, history);
  LapBlock *added = NULL;

  lap_history_apply (history, lap_verb_add_exercise (session, NULL, own->id, builtin, &added));
  g_assert_null (lap_verb_remove_own (session, own, &error));
  g_assert_error (error, LAP_ERROR, LAP_ERROR_INVALID);
  lap_history_undo (history);
  lap_history_apply (history, lap_verb_remove_own (session, own, NULL));
  g_assert_cmpuint (session->exercises->len, ==, 0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/edit/own/make", test_make);
  g_test_add_func ("/edit/own/change", test_change);
  g_test_add_func ("/edit/own/care", test_care);
  g_test_add_func ("/edit/own/figure", test_figure);
  g_test_add_func ("/edit/own/remove", test_remove);
  return g_test_run ();
}
