/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a session is, changed in its dialog: each change one step, what a file could not say refused.
 */
#include "ui/properties.h"

#include "model/when.h"
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

static void
type (GtkWidget *row, const char *text)
{
  gtk_editable_set_text (GTK_EDITABLE (row), text);
  g_signal_emit_by_name (row, "apply");
}

/* The day people were screened on is typed or chosen, told in the file as others are, and taken away again. */
static void
test_screened (void)
{
  LapWindow *window = windows_demo ();
  LapDocument *document = lap_window_document (window);
  const LapSession *session = lap_document_session (document);
  GtkWidget *dialog = lap_properties_open (window), *row = in_row (dialog, "Screened on", ADW_TYPE_ENTRY_ROW);
  GtkWidget *button = windows_find (row, GTK_TYPE_MENU_BUTTON, NULL), *popover;
  g_autoptr (GDateTime) day = g_date_time_new_local (2027, 1, 8, 12, 0, 0);
  g_autofree char *text = NULL;

  g_assert_cmpstr (gtk_editable_get_text (GTK_EDITABLE (row)), ==, "");
  type (row, "2027-01-05");
  g_assert_cmpint (session->screened, ==, lap_date_parse ("2027-01-05"));
  g_assert_cmpstr (lap_history_undo_label (lap_document_history (document)), ==, "Change: Screened on");
  text = windows_text (window);
  g_assert_nonnull (strstr (text, "\"screened\": \"2027-01-05\""));

  type (row, "last spring");
  g_assert_cmpint (session->screened, ==, lap_date_parse ("2027-01-05"));
  g_assert_cmpstr (gtk_editable_get_text (GTK_EDITABLE (row)), ==, "2027-01-05");

  popover = GTK_WIDGET (gtk_menu_button_get_popover (GTK_MENU_BUTTON (button)));
  gtk_popover_popup (GTK_POPOVER (popover));
  gtk_calendar_select_day (GTK_CALENDAR (windows_find (popover, GTK_TYPE_CALENDAR, NULL)), day);
  gtk_popover_popdown (GTK_POPOVER (popover));
  windows_settle (window);
  g_assert_cmpint (session->screened, ==, lap_date_parse ("2027-01-08"));

  type (row, "");
  g_assert_cmpint (session->screened, ==, 0);
  for (int i = 0; i < 3; i++)
    lap_document_undo (document);
  g_assert_cmpint (session->screened, ==, 0);
  g_assert_false (lap_document_is_modified (document));
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
  g_test_add_func ("/properties/screened", test_screened);
  return g_test_run ();
}
