/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What belongs to no view: files dropped on a window, what a window remembers, the pages of the help, warnings as text,
 * and the keys that work before there is a document.
 */
#include <string.h>

#include "store/documents.h"
#include "store/folder.h"
#include "ui/desk.h"
#include "ui/find-bar.h"
#include "ui/help.h"
#include "ui/library.h"
#include "ui/preferences.h"
#include "ui/settings.h"
#include "ui/warnings-text.h"
#include "ui/windows.h"

#include "ui/week-import.h"

static GtkApplication *
application (void)
{
  return GTK_APPLICATION (g_application_get_default ());
}

static void
run (void)
{
  while (g_main_context_iteration (NULL, FALSE))
    ;
}

static GtkWindow *
of_type (GType type, guint *n)
{
  GList *all = gtk_window_list_toplevels ();
  GtkWindow *found = NULL;

  *n = 0;
  for (GList *l = all; l != NULL; l = l->next)
    if (g_type_is_a (G_OBJECT_TYPE (l->data), type)) {
      found = l->data;
      (*n)++;
    }
  g_list_free (all);
  return found;
}

static void
drop (GtkWindow *window, const char * const *paths)
{
  g_autoptr (GListModel) controllers = gtk_widget_observe_controllers (GTK_WIDGET (window));
  g_auto (GValue) value = G_VALUE_INIT;
  GSList *files = NULL;
  gboolean taken = FALSE;

  for (guint i = 0; paths[i] != NULL; i++)
    files = g_slist_append (files, g_file_new_for_path (paths[i]));
  g_value_init (&value, GDK_TYPE_FILE_LIST);
  g_value_take_boxed (&value, gdk_file_list_new_from_list (files));
  for (guint i = 0; i < g_list_model_get_n_items (controllers); i++) {
    g_autoptr (GObject) controller = g_list_model_get_item (controllers, i);

    if (GTK_IS_DROP_TARGET (controller))
      g_signal_emit_by_name (controller, "drop", &value, 1.0, 1.0, &taken);
  }
  g_assert_true (taken);
  g_slist_free_full (files, g_object_unref);
  run ();
}

/* Two sessions are opened, each once, and the two that aren't are said in one dialog. */
static void
test_drop (void)
{
  char *folder = folder_new ();
  g_autofree char *demo = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", "thirty-on-the-mat.lapwing", NULL);
  g_autofree char *other = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", "twelve-at-twelve.lapwing", NULL);
  g_autofree char *bad = g_build_filename (folder, "bad.lapwing", NULL), *gone = g_build_filename (folder, "gone", NULL);
  g_autofree char *table = g_build_filename (folder, "classes.CSV", NULL);
  const char *paths[] = { demo, bad, other, demo, gone, NULL }, *csv[] = { table, NULL };
  LapWindow *window = windows_demo ();
  GtkWindow *dialog;
  GtkWidget *import;
  LapWeek *week;
  guint n;

  put_text (bad, "{");
  put_text (table, "title,kind,minutes,day,start,room\nDawn,circuit,45,mon,07:00,Loft\nNoon,stretch,30,tue,12:15,Loft\n");
  drop (GTK_WINDOW (window), paths);
  of_type (LAP_TYPE_WINDOW, &n);
  g_assert_cmpuint (n, ==, 3);
  dialog = of_type (ADW_TYPE_MESSAGE_DIALOG, &n);
  g_assert_cmpuint (n, ==, 1);
  g_assert_cmpstr (adw_message_dialog_get_heading (ADW_MESSAGE_DIALOG (dialog)), ==, "Some files can’t be opened");
  g_assert_nonnull (strstr (adw_message_dialog_get_body (ADW_MESSAGE_DIALOG (dialog)), "bad.lapwing"));
  g_assert_nonnull (strstr (adw_message_dialog_get_body (ADW_MESSAGE_DIALOG (dialog)), "gone"));
  gtk_window_destroy (dialog);
  drop (GTK_WINDOW (window), csv); /* on a session: it becomes a week of its own, by way of the dialog */
  dialog = of_type (LAP_TYPE_WEEK_IMPORT, &n);
  g_assert_cmpuint (n, ==, 1);
  week = lap_document_week (lap_window_document (LAP_WINDOW (gtk_window_get_transient_for (dialog))));
  g_assert_cmpstr (week->title, ==, "classes");
  g_assert_cmpuint (lap_list_n (week->classes), ==, 0);
  import = windows_find (GTK_WIDGET (dialog), GTK_TYPE_BUTTON, "import");
  g_assert_true (gtk_widget_get_sensitive (import));
  g_signal_emit_by_name (import, "clicked");
  run ();
  g_assert_cmpuint (lap_list_n (week->classes), ==, 2);
  run ();
  for (GtkWindow *w = of_type (LAP_TYPE_WINDOW, &n); w != NULL; w = of_type (LAP_TYPE_WINDOW, &n))
    windows_close (LAP_WINDOW (w));
  folder_remove (folder);
}

/* The next window begins as the last one ended; one that is open is not pulled along. */
static void
test_remember (void)
{
  LapWindow *first = windows_demo (), *second, *third;
  LapDesk *desk = LAP_DESK (windows_find (GTK_WIDGET (first), LAP_TYPE_DESK, NULL));
  g_autoptr (GSettings) kept = lap_settings_child ("session-window");
  int width, height;

  g_assert_true (lap_desk_get_shown (desk, LAP_DESK_END));
  lap_desk_set_shown (desk, LAP_DESK_END, FALSE);
  gtk_window_set_default_size (GTK_WINDOW (first), 1333, 777);
  windows_settle (first);
  second = windows_demo ();
  desk = LAP_DESK (windows_find (GTK_WIDGET (second), LAP_TYPE_DESK, NULL));
  g_assert_false (lap_desk_get_shown (desk, LAP_DESK_END));
  lap_desk_set_shown (desk, LAP_DESK_END, TRUE);
  desk = LAP_DESK (windows_find (GTK_WIDGET (first), LAP_TYPE_DESK, NULL));
  g_assert_false (lap_desk_get_shown (desk, LAP_DESK_END));
  lap_window_show_view (first, "sheets");
  gtk_window_get_default_size (GTK_WINDOW (first), &width, &height);
  gtk_window_close (GTK_WINDOW (first));
  run ();
  third = windows_demo ();
  g_assert_cmpstr (lap_window_view (third), ==, "sheets");
  g_assert_cmpstr (lap_window_view (second), ==, "plan");
  g_assert_cmpint (g_settings_get_int (kept, "width"), ==, width);
  g_assert_cmpint (g_settings_get_int (kept, "height"), ==, height);
  gtk_window_get_default_size (GTK_WINDOW (third), &width, &height);
  g_assert_cmpint (width, ==, g_settings_get_int (kept, "width"));
  g_settings_reset (kept, "view");
  windows_close (third);
  windows_close (second);
}

/* Each page of the table is there, section and all; what has no page of its own has that of what is around it. */
static void
test_help (void)
{
  LapWindow *window = windows_demo ();

  for (guint i = 0; i < lap_help_n (); i++) {
    const LapHelpPage *page = lap_help_nth (i);
    g_auto (GStrv) parts = g_strsplit (page->page, "#", 2);
    g_autofree char *name = g_strconcat (parts[0], ".page", NULL);
    g_autofree char *path = g_build_filename (g_getenv ("LAP_SOURCE"), "help", "C", name, NULL), *text = NULL;
    g_autofree char *section = parts[1] != NULL ? g_strdup_printf ("<section id=\"%s\">", parts[1]) : NULL;

    g_assert_true (g_file_get_contents (path, &text, NULL, NULL));
    g_assert_true (section == NULL || strstr (text, section) != NULL);
  }
  g_assert_cmpstr (lap_help_page (GTK_WIDGET (lap_window_score (window))), ==, "score");
  g_assert_cmpstr (lap_help_page (GTK_WIDGET (windows_blocks (window))), ==, "score");
  g_assert_cmpstr (lap_help_page (GTK_WIDGET (lap_window_shelf (window))), ==, "catalogue");
  g_assert_cmpstr (lap_help_page (GTK_WIDGET (lap_window_warnings (window))), ==, "checks");
  g_assert_cmpstr (lap_help_page (GTK_WIDGET (window)), ==, "index");
  windows_close (window);
}

static void
text_cb (GObject *clipboard, GAsyncResult *result, gpointer data)
{
  *(char **) data = gdk_clipboard_read_text_finish (GDK_CLIPBOARD (clipboard), result, NULL);
}

/* What is copied names every open warning with its reason and its source. */
static void
test_copy (void)
{
  g_autofree char *path = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", "too-much-at-once.lapwing", NULL);
  LapWindow *window = LAP_WINDOW (lap_application_open_path (LAP_APPLICATION (application ()), path, NULL));
  LapCheckup *checkup = lap_document_checkup (lap_window_document (window));
  g_autofree char *text = NULL;

  windows_settle (window);
  gtk_widget_activate_action (GTK_WIDGET (window), "win.copy-warnings", NULL);
  gdk_clipboard_read_text_async (gtk_widget_get_clipboard (GTK_WIDGET (window)), NULL, text_cb, &text);
  while (text == NULL)
    g_main_context_iteration (NULL, TRUE);
  g_assert_cmpuint (lap_checkup_n (checkup), >, 10);
  for (guint i = 0; i < lap_checkup_n (checkup); i++) {
    const LapWarning *warning = lap_checkup_nth (checkup, i);
    g_autofree char *message = lap_warning_message (checkup, warning), *why = lap_warning_why (checkup, warning);

    g_assert_true (warning->fine || strstr (text, message) != NULL);
    g_assert_true (warning->fine || strstr (text, why) != NULL);
    g_assert_true (warning->fine || strstr (text, lap_warning_source (warning)) != NULL);
  }
  g_assert_nonnull (strstr (text, "\n1. "));
  windows_close (window);
}

/* Typing selects the first block that has the words, Enter leads on, what isn't there is said. */
static void
test_find (void)
{
  LapWindow *window = windows_demo ();
  LapScoreContext *context = lap_window_context (window);
  GtkWidget *bar, *entry, *count;
  guint box;

  lap_window_show_view (window, "sheets");
  gtk_widget_activate_action (GTK_WIDGET (window), "win.find", NULL);
  windows_settle (window);
  g_assert_cmpstr (lap_window_view (window), ==, "plan");
  bar = windows_find (GTK_WIDGET (window), LAP_TYPE_FIND_BAR, NULL);
  entry = windows_find (bar, GTK_TYPE_SEARCH_ENTRY, NULL);
  count = windows_find (bar, GTK_TYPE_LABEL, "count");
  gtk_editable_set_text (GTK_EDITABLE (entry), "SQUÁT");
  g_signal_emit_by_name (entry, "search-changed");
  box = lap_score_selected (context);
  g_assert_cmpuint (box, !=, LAP_NO_BOX);
  g_assert_cmpstr (context->score->timeline->tasks[context->score->boxes[box].task].wanted, ==, "squat-with-reach");
  g_assert_true (g_str_has_prefix (gtk_label_get_text (GTK_LABEL (count)), "1 of "));
  g_signal_emit_by_name (entry, "activate");
  g_assert_true (g_str_has_prefix (gtk_label_get_text (GTK_LABEL (count)), "2 of "));
  g_assert_cmpuint (lap_score_selected (context), >, box);
  g_signal_emit_by_name (entry, "previous-match");
  g_assert_cmpuint (lap_score_selected (context), ==, box);
  gtk_editable_set_text (GTK_EDITABLE (entry), "kelpline studio"); /* the words of a talk */
  g_signal_emit_by_name (entry, "search-changed");
  g_assert_cmpint (context->score->boxes[lap_score_selected (context)].kind, ==, LAP_BOX_TALK);
  gtk_editable_set_text (GTK_EDITABLE (entry), "xyzzy");
  g_signal_emit_by_name (entry, "search-changed");
  g_assert_cmpstr (gtk_label_get_text (GTK_LABEL (count)), ==, "Nothing found");
  windows_close (window);
}

/* The control of the row that people know as @title. */
static GtkWidget *
control (GtkWidget *widget, const char *title)
{
  GtkWidget *found = NULL;

  if (ADW_IS_PREFERENCES_ROW (widget) && g_str_equal (adw_preferences_row_get_title (ADW_PREFERENCES_ROW (widget)), title)) {
    GtkWidget *activated = ADW_IS_ACTION_ROW (widget) ? adw_action_row_get_activatable_widget (ADW_ACTION_ROW (widget)) : NULL;

    return activated != NULL ? activated : widget;
  }
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL && found == NULL;
       child = gtk_widget_get_next_sibling (child))
    found = control (child, title);
  return found;
}

static void
set_number (GtkWindow *dialog, const char *title, double value)
{
  gtk_spin_button_set_value (GTK_SPIN_BUTTON (control (GTK_WIDGET (dialog), title)), value);
}

/* What is set is what a new session begins with, and no other; set back, all is as it was. */
static void
test_settings (void)
{
  GtkWindow *dialog = lap_preferences_open (NULL);
  GtkWidget *coach = control (GTK_WIDGET (dialog), "Coach"), *level = control (GTK_WIDGET (dialog), "Level");
  g_autoptr (LapSession) session = lap_session_new ("New"), plain = lap_session_new ("Plain");
  g_autoptr (GBytes) untouched = NULL, filled = NULL;

  gtk_editable_set_text (GTK_EDITABLE (coach), "Ines Varrow");
  g_signal_emit_by_name (coach, "apply");
  adw_combo_row_set_selected (ADW_COMBO_ROW (level), LAP_LEVEL_NEW);
  set_number (dialog, "People", 14);
  gtk_switch_set_active (GTK_SWITCH (control (GTK_WIDGET (dialog), lap_words_label (&lap_kit_words, LAP_KIT_MAT))), TRUE);
  set_number (dialog, "Width", 8);
  set_number (dialog, "Length", 10.5);
  set_number (dialog, "At least", 45);
  set_number (dialog, "At most", 30); /* below the other end: refused */
  set_number (dialog, "In talks", 2.0);
  set_number (dialog, "In vigorous work", 0.9);
  set_number (dialog, "Changing position and kit", 1.5);
  lap_preferences_fill (session);
  g_assert_cmpstr (session->coach, ==, "Ines Varrow");
  g_assert_cmpint (session->level, ==, LAP_LEVEL_NEW);
  g_assert_cmpint (session->count, ==, 14);
  g_assert_cmpint (lap_kit_count (session->kit, LAP_KIT_MAT), ==, G_MAXINT);
  g_assert_cmpfloat (session->space_width, ==, 8);
  g_assert_cmpfloat (session->space_length, ==, 10.5);
  g_assert_cmpfloat_with_epsilon (session->band_low, 0.45, 1e-9);
  g_assert_cmpfloat (session->band_high, ==, -1);
  g_assert_cmpfloat (gtk_spin_button_get_value (GTK_SPIN_BUTTON (control (GTK_WIDGET (dialog), "At most"))), ==, 89);
  g_assert_cmpfloat (session->voice, ==, 2.0);
  g_assert_cmpfloat_with_epsilon (session->talk_vigorous, 0.9, 1e-9);
  g_assert_cmpfloat (session->change, ==, 1.5);
  /* Whatever a session can't have was set by somebody else, and isn't taken. */
  g_settings_set_int (lap_settings (), "new-group-count", -3);
  g_object_set (session, "group-count", 5, NULL);
  lap_preferences_fill (session);
  g_assert_cmpint (session->count, ==, 5);
  lap_preferences_reset ();
  g_assert_cmpuint (adw_combo_row_get_selected (ADW_COMBO_ROW (level)), ==, LAP_LEVEL_MIXED);
  untouched = lap_session_to_bytes (plain);
  lap_preferences_fill (plain);
  filled = lap_session_to_bytes (plain);
  g_assert_true (g_bytes_equal (untouched, filled));
  gtk_window_destroy (dialog);
  run ();
}

/* New and Open work when no document is there. */
static void
test_bare (void)
{
  guint n;
  GtkWindow *library, *dialog;

  g_application_activate (G_APPLICATION (application ()));
  library = of_type (LAP_TYPE_LIBRARY, &n);
  g_assert_cmpuint (n, ==, 1);
  g_action_group_activate_action (G_ACTION_GROUP (application ()), "open", NULL);
  of_type (LAP_TYPE_LIBRARY, &n);
  g_assert_cmpuint (n, ==, 1);
  g_action_group_activate_action (G_ACTION_GROUP (application ()), "new", NULL);
  run ();
  dialog = of_type (g_type_from_name ("LapNew"), &n);
  g_assert_cmpuint (n, ==, 1);
  gtk_window_destroy (dialog);
  gtk_window_destroy (library);
  run ();
  g_action_group_activate_action (G_ACTION_GROUP (application ()), "new", NULL);
  dialog = of_type (g_type_from_name ("LapNew"), &n);
  g_assert_cmpuint (n, ==, 1);
  g_signal_emit_by_name (windows_find (GTK_WIDGET (dialog), GTK_TYPE_BUTTON, "make"), "clicked");
  run ();
  of_type (LAP_TYPE_WINDOW, &n);
  g_assert_cmpuint (n, ==, 1);
  windows_settle (LAP_WINDOW (of_type (LAP_TYPE_WINDOW, &n)));
  windows_close (LAP_WINDOW (of_type (LAP_TYPE_WINDOW, &n)));
}

int
main (int argc, char **argv)
{
  g_setenv ("XDG_CACHE_HOME", windows_data_folder (), TRUE);
  windows_init (&argc, &argv);
  g_test_add_func ("/program/drop", test_drop);
  g_test_add_func ("/program/remember", test_remember);
  g_test_add_func ("/program/help", test_help);
  g_test_add_func ("/program/copy", test_copy);
  g_test_add_func ("/program/find", test_find);
  g_test_add_func ("/program/settings", test_settings);
  g_test_add_func ("/program/bare", test_bare);
  return g_test_run ();
}
