/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Distances typed into the dialogs of a window, with the keyboard, where people measure in metres and where in feet:
 * either is understood, the file has metres, the screen what is usual there. Outside: Unicode CLDR 42, supplemental
 * data, measurementData: US in the United States. The foot: 0.3048 m (ISO 80000-3). Decimals: a comma in Germany (CLDR).
 */
#include "support/locales.h"
#include "ui/rows.h"
#include "ui/windows.h"

#include "ui/properties.h"

static const struct { const char *locale, *feet, *metres; } places[] = {
  { "C.UTF-8", "1.8", "1.8" }, { "de_DE.UTF-8", "1,8", "1,8" }, { "en_US.UTF-8", "6.0", "5.9" },
};

/* As somebody does who comes with the mouse and leaves with Tab; NULL: without typing. */
static void
type_in (GtkWidget *spin, const char *text)
{
  rows_wheel_to (spin);
  hands_click_on (windows_find (spin, GTK_TYPE_TEXT, NULL));
  if (text != NULL) {
    hands_press ("<Control>a");
    hands_type (text);
  }
  hands_press ("Tab");
}

static void
test_session (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (places); i++) {
    LapWindow *window;
    LapHistory *history;
    const LapSession *session;
    GtkWidget *dialog, *spin;

    locales_go (places[i].locale);
    window = windows_demo ();
    session = lap_document_session (lap_window_document (window));
    history = lap_document_history (lap_window_document (window));
    dialog = lap_properties_open (window);
    gtk_test_widget_wait_for_draw (dialog);
    hands_on (GTK_WINDOW (dialog));
    spin = windows_find (windows_find_row (dialog, "Width"), GTK_TYPE_SPIN_BUTTON, NULL);
    type_in (spin, "6 ft");
    g_assert_cmpfloat_with_epsilon (session->space_width, 1.8288, 1e-9);
    g_assert_cmpstr (gtk_editable_get_text (GTK_EDITABLE (spin)), ==, places[i].feet);
    g_assert_cmpstr (lap_history_undo_label (history), ==, "Change: Width");
    /* Going through the field is no edit, however it was rounded. */
    type_in (spin, NULL);
    g_assert_cmpfloat_with_epsilon (session->space_width, 1.8288, 1e-9);
    type_in (spin, "1.8 m");
    g_assert_cmpfloat_with_epsilon (session->space_width, 1.8, 1e-9);
    g_assert_cmpstr (gtk_editable_get_text (GTK_EDITABLE (spin)), ==, places[i].metres);
    /* What nobody understands changes nothing. */
    type_in (spin, "a mat");
    g_assert_cmpfloat_with_epsilon (session->space_width, 1.8, 1e-9);
    g_assert_cmpstr (gtk_editable_get_text (GTK_EDITABLE (spin)), ==, places[i].metres);
    lap_document_undo (lap_window_document (window));
    g_assert_cmpfloat_with_epsilon (session->space_width, 1.8288, 1e-9);
    lap_document_undo (lap_window_document (window));
    g_assert_cmpfloat_with_epsilon (session->space_width, 2.5, 1e-9); /* the demo's */
    g_assert_null (lap_history_undo_label (history));
    gtk_window_destroy (GTK_WINDOW (dialog));
    windows_settle (window);
    windows_close (window);
  }
  locales_go ("C.UTF-8");
}

/* From how far names on a poster shall be read. */
static void
test_sheet (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (places); i++) {
    LapWindow *window;
    GtkWidget *spin;

    locales_go (places[i].locale);
    window = windows_demo ();
    hands_on (GTK_WINDOW (window));
    gtk_widget_activate_action (GTK_WIDGET (window), "win.view", "s", "sheets");
    windows_settle (window);
    spin = windows_find (GTK_WIDGET (window), GTK_TYPE_SPIN_BUTTON, "distance");
    hands_until ((gboolean (*) (gpointer)) gtk_widget_get_mapped, spin);
    gtk_editable_set_text (GTK_EDITABLE (spin), "6 ft");
    gtk_spin_button_update (GTK_SPIN_BUTTON (spin));
    g_assert_cmpfloat_with_epsilon (gtk_spin_button_get_value (GTK_SPIN_BUTTON (spin)),
                                    i == 2 ? 6 : 1.8288, 1e-9);
    g_assert_cmpstr (gtk_editable_get_text (GTK_EDITABLE (spin)), ==, places[i].feet);
    windows_settle (window);
    windows_close (window);
  }
  locales_go ("C.UTF-8");
}

int
main (int argc, char **argv)
{
  locales_begin ("de_DE.UTF-8", "en_US.UTF-8", NULL);
  windows_init (&argc, &argv);
  g_test_add_func ("/units/session", test_session);
  g_test_add_func ("/units/sheet", test_sheet);
  return g_test_run ();
}
