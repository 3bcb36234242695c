/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a session is, changed in its dialog: each change one step, what a file could not say refused.
 */
#include "ui/properties.h"
#include "ui/windows.h"

/* The widget of @type in the row called @title. */
static GtkWidget *
in_row (GtkWidget *widget, const char *title, GType type)
{
  GtkWidget *row = windows_find_row (widget, title);

  return row == NULL || g_type_is_a (G_OBJECT_TYPE (row), type) ? row : windows_find (row, type, NULL);
}

static void
test_changes (void)
{
  LapWindow *window = windows_demo ();
  LapDocument *document = lap_window_document (window);
  const LapSession *session = lap_document_session (document);
  LapHistory *history = lap_document_history (document);
  GtkWidget *dialog = lap_properties_open (window), *control;
  g_autofree char *before = windows_text (window), *after = NULL;

  control = in_row (dialog, "Title", ADW_TYPE_ENTRY_ROW);
  g_assert_cmpstr (gtk_editable_get_text (GTK_EDITABLE (control)), ==, session->title);
  gtk_editable_set_text (GTK_EDITABLE (control), "Twenty on the Mat");
  g_signal_emit_by_name (control, "apply");
  g_assert_cmpstr (session->title, ==, "Twenty on the Mat");
  g_assert_cmpstr (lap_history_undo_label (history), ==, "Change: Title");

  control = in_row (dialog, "Length wanted", GTK_TYPE_SPIN_BUTTON);
  g_assert_cmpfloat (gtk_spin_button_get_value (GTK_SPIN_BUTTON (control)), ==, 30);
  gtk_spin_button_set_value (GTK_SPIN_BUTTON (control), 20);
  g_assert_cmpint (session->target, ==, 1200);

  control = in_row (dialog, "Quiet", GTK_TYPE_SWITCH);
  gtk_switch_set_active (GTK_SWITCH (control), !session->quiet);
  control = in_row (dialog, "Level", ADW_TYPE_COMBO_ROW);
  adw_combo_row_set_selected (ADW_COMBO_ROW (control), LAP_LEVEL_NEW);
  g_assert_cmpint (session->level, ==, LAP_LEVEL_NEW);

  for (int i = 0; i < 4; i++)
    lap_document_undo (document);
  g_assert_cmpfloat (gtk_spin_button_get_value (GTK_SPIN_BUTTON (in_row (dialog, "Length wanted", GTK_TYPE_SPIN_BUTTON))),
                     ==, 30);
  after = windows_text (window);
  g_assert_cmpstr (after, ==, before);
  gtk_window_destroy (GTK_WINDOW (dialog));
  windows_settle (window);
  windows_close (window);
}

static void
test_sets (void)
{
  LapWindow *window = windows_demo ();
  const LapSession *session = lap_document_session (lap_window_document (window));
  GtkWidget *dialog = lap_properties_open (window);
  GtkWidget *band = in_row (dialog, lap_words_label (&lap_kit_words, LAP_KIT_BAND), GTK_TYPE_SWITCH);
  GtkWidget *chest = in_row (dialog, lap_words_label (&lap_regions, LAP_REGION_CHEST), GTK_TYPE_SWITCH);

  g_assert_false (lap_kit_mask (session->kit) & LAP_BIT (LAP_KIT_BAND));
  gtk_switch_set_active (GTK_SWITCH (band), TRUE);
  g_assert_true (lap_kit_mask (session->kit) & LAP_BIT (LAP_KIT_BAND));
  g_assert_true (lap_kit_mask (session->kit) & LAP_BIT (LAP_KIT_MAT));
  gtk_switch_set_active (GTK_SWITCH (chest), TRUE);
  g_assert_cmpstr (session->focus[0], ==, "chest");
  gtk_switch_set_active (GTK_SWITCH (chest), FALSE);
  g_assert_true (session->focus == NULL || session->focus[0] == NULL);
  gtk_window_destroy (GTK_WINDOW (dialog));
  windows_settle (window);
  windows_close (window);
}

/* A band that no file may say is refused, and the control shows what holds. */
static void
test_refused (void)
{
  LapWindow *window = windows_demo ();
  const LapSession *session = lap_document_session (lap_window_document (window));
  GtkWidget *dialog = lap_properties_open (window);
  GtkWidget *low = in_row (dialog, "At least", GTK_TYPE_SPIN_BUTTON);
  double held = session->band_low, shown = gtk_spin_button_get_value (GTK_SPIN_BUTTON (low));

  gtk_spin_button_set_value (GTK_SPIN_BUTTON (low), 99);
  g_assert_cmpfloat (session->band_low, ==, held);
  g_assert_cmpfloat (gtk_spin_button_get_value (GTK_SPIN_BUTTON (low)), ==, shown);
  gtk_window_destroy (GTK_WINDOW (dialog));
  windows_settle (window);
  windows_close (window);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/properties/changes", test_changes);
  g_test_add_func ("/properties/sets", test_sets);
  g_test_add_func ("/properties/refused", test_refused);
  return g_test_run ();
}
