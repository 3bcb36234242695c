/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Export for film and web: what the dialog offers for a session and for a week, and what the worker writes.
 */
#include "ui/windows.h"

#include "ui/publish-dialog.h"
#include "ui/publish.h"

#include <glib/gstdio.h>

static gboolean
is_empty (const char *folder)
{
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);

  return g_dir_read_name (dir) == NULL;
}

static void
write_to (LapWindow *window, const char *format, const LapPublication *how, const char *path)
{
  lap_publish_to (window, lap_formats_find (format), how, path);
  windows_end_errand (NULL);
}

/* What a worker publishes is whole, and a cancelled one leaves nothing. */
static void
test_worker (void)
{
  g_autofree char *folder = g_dir_make_tmp ("lapwing-XXXXXX", NULL), *path = g_build_filename (folder, "a.vtt", NULL);
  g_autofree char *film = g_build_filename (folder, "overlay", NULL), *read = NULL;
  LapWindow *window = windows_demo ();
  GtkWindow *dialog;

  write_to (window, "chapters", NULL, path);
  g_assert_true (g_file_get_contents (path, &read, NULL, NULL));
  g_assert_true (g_str_has_prefix (read, "WEBVTT"));
  g_unlink (path);
  lap_publish_to (window, lap_formats_find ("overlay"), NULL, film);
  dialog = windows_errand ();
  while (is_empty (folder))
    g_main_context_iteration (NULL, FALSE);
  adw_message_dialog_response (ADW_MESSAGE_DIALOG (dialog), "cancel");
  while (g_rmdir (folder) != 0)
    g_main_context_iteration (NULL, FALSE);
  windows_settle (window);
  windows_close (window);
}

/* What is asked for reaches the file: the calendar has its day, captions are later. */
static void
test_how (void)
{
  g_autofree char *folder = g_dir_make_tmp ("lapwing-XXXXXX", NULL), *path = g_build_filename (folder, "a", NULL);
  g_autofree char *calendar = NULL, *captions = NULL;
  LapWindow *window = windows_demo ();

  write_to (window, "calendar", &(LapPublication) { .at = "2027-01-11T18:30", .timezone = "Europe/Lisbon" }, path);
  g_assert_true (g_file_get_contents (path, &calendar, NULL, NULL));
  g_assert_nonnull (strstr (calendar, "DTSTART;TZID=Europe/Lisbon:20270111T183000"));
  write_to (window, "captions", &(LapPublication) { .offset = 100 }, path);
  g_assert_true (g_file_get_contents (path, &captions, NULL, NULL));
  /* The demo's camera runs five seconds before. */
  g_assert_nonnull (strstr (captions, "00:01:45.000"));
  g_unlink (path);
  g_rmdir (folder);
  windows_close (window);
}

/* The row of that title is shown. */
static gboolean
is_shown (GtkWidget *widget, const char *title)
{
  gboolean shown = ADW_IS_PREFERENCES_ROW (widget) && gtk_widget_get_visible (widget) &&
                   g_str_equal (adw_preferences_row_get_title (ADW_PREFERENCES_ROW (widget)), title);

  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL && !shown;
       child = gtk_widget_get_next_sibling (child))
    shown = is_shown (child, title);
  return shown;
}

static void
choose (GtkWidget *dialog, const char *title)
{
  GtkWidget *format = windows_find (dialog, ADW_TYPE_COMBO_ROW, NULL);
  GListModel *model = adw_combo_row_get_model (ADW_COMBO_ROW (format));

  for (guint i = 0; i < g_list_model_get_n_items (model); i++) {
    g_autoptr (GtkStringObject) item = g_list_model_get_item (model, i);

    if (g_str_equal (gtk_string_object_get_string (item), title)) {
      adw_combo_row_set_selected (ADW_COMBO_ROW (format), i);
      return;
    }
  }
  g_error ("%s is not offered", title);
}

/* Rows of what means something to the format, and no other. */
static void
test_rows (void)
{
  static const struct {
    const char *format, *shown[5], *hidden[5];
  } cases[] = {
    { "Chapters (.vtt)", { "Later in the film", "On the takes that were kept" }, { "Spoken names", "Day", "With a calendar" } },
    { "Tones (.flac)", { "Later in the film", "Spoken names" }, { "On the takes that were kept", "Day" } },
    { "Calendar (.ics)", { "Day", "Begins at", "Timezone, as Europe/Lisbon" }, { "Later in the film", "With a calendar" } },
    { "Timeline (.json)", { "Format" }, { "Later in the film", "Spoken names", "Day", "With a calendar" } },
    { "Film day pack (folder)", { "Later in the film", "Spoken names", "With a calendar" }, { "Day", "Begins at" } },
  };
  static const struct { const char *typed; gboolean good; } times[] = {
    { "25:00", FALSE }, { "18:30", TRUE }, { "half six", FALSE }, { "6:30 pm", TRUE }, { "", FALSE }, { "7.05", TRUE },
  };
  LapWindow *window = windows_demo ();
  GtkWidget *dialog, *held, *timezone, *time;
  g_autoptr (GtkWindow) shown = NULL;

  gtk_widget_activate_action (GTK_WIDGET (window), "win.publish", NULL);
  shown = windows_dialog (window);
  dialog = GTK_WIDGET (shown);
  for (guint i = 0; i < G_N_ELEMENTS (cases); i++) {
    choose (dialog, cases[i].format);
    for (guint k = 0; cases[i].shown[k] != NULL; k++)
      g_assert_true (is_shown (dialog, cases[i].shown[k]));
    for (guint k = 0; cases[i].hidden[k] != NULL; k++)
      g_assert_false (is_shown (dialog, cases[i].hidden[k]));
  }
  /* The pack may have a day; a zone that nobody knows stops it. */
  held = windows_find (dialog, GTK_TYPE_SWITCH, "held");
  gtk_switch_set_active (GTK_SWITCH (held), TRUE);
  g_assert_true (is_shown (dialog, "Day"));
  g_assert_true (adw_message_dialog_get_response_enabled (ADW_MESSAGE_DIALOG (dialog), "export"));
  timezone = windows_find (dialog, ADW_TYPE_ENTRY_ROW, "timezone");
  gtk_editable_set_text (GTK_EDITABLE (timezone), "Nowhere/Town");
  g_assert_false (adw_message_dialog_get_response_enabled (ADW_MESSAGE_DIALOG (dialog), "export"));
  gtk_editable_set_text (GTK_EDITABLE (timezone), "Europe/Lisbon");
  g_assert_true (adw_message_dialog_get_response_enabled (ADW_MESSAGE_DIALOG (dialog), "export"));
  /* So does a time that nobody can read; each way to write one is understood. */
  time = windows_find (dialog, ADW_TYPE_ENTRY_ROW, "time");
  for (guint i = 0; i < G_N_ELEMENTS (times); i++) {
    gtk_editable_set_text (GTK_EDITABLE (time), times[i].typed);
    g_assert_true (adw_message_dialog_get_response_enabled (ADW_MESSAGE_DIALOG (dialog), "export") == times[i].good);
    g_assert_true (gtk_widget_has_css_class (time, "error") == !times[i].good);
  }
  gtk_window_destroy (shown);
  g_clear_object (&shown);
  windows_close (window);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/publish/worker", test_worker);
  g_test_add_func ("/ui/publish/how", test_how);
  g_test_add_func ("/ui/publish/rows", test_rows);
  return g_test_run ();
}
