/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The window in made-up languages: half as long again, and in another order from right to left. No word that a user
 * sees stays English, no word is cut without a tip that has it whole, and the window stays as narrow as a phone.
 */
#include "ui/windows.h"

#include "store/documents.h"
#include "ui/settings.h"

#include <glib/gi18n-lib.h>
#include <glib/gstdio.h>
#include <locale.h>

/* What a user wrote has no English vowel, so whatever has one was not translated. */
#define SESSION "{\"format\": \"lapwing-session\", \"version\": 1, \"id\": \"2f0f6f4e-58c1-4c3c-9d0a-6d5a3f2b7c11\", " \
                "\"title\": \"Žž\", \"coach\": \"Tř\", \"target\": 600, \"kit\": [\"mat\"], \"parts\": [" \
                "{\"kind\": \"opening\", \"blocks\": [{\"talk\": \"Žž žž žž\", \"seconds\": 10}]}, " \
                "{\"kind\": \"warm-up\", \"blocks\": [{\"exercise\": \"march-on-the-spot\", \"work\": 60}]}, " \
                "{\"kind\": \"main\", \"rounds\": 2, \"blocks\": [{\"exercise\": \"squat\", \"work\": 40, \"rest\": 20}, " \
                "{\"exercise\": \"push-up\", \"work\": 40, \"rest\": 5}, {\"exercise\": null, \"work\": 40, \"rest\": 20}]}, " \
                "{\"kind\": \"cool-down\", \"blocks\": [{\"exercise\": \"figure-four-stretch\", \"work\": 60, " \
                "\"sides\": \"split\"}]}]}"

static const char *const dialogs[] = { "win.properties", "win.export", "win.publish", "win.order", "win.mend",
                                       "win.adapt", "win.shortcuts", "app.new" };
static const char *const views[] = { "plan", "rehearse", "sheets", "script" };

/* Names of things, the same in every language; and the title of GTK's own window of shortcuts. */
static const char *const names[] = { "Lapwing", "WebVTT", "iCalendar", "Unicode", "GStreamer", "Shortcuts" };

static gboolean
english (const char *text)
{
  static GRegex *word;
  g_autoptr (GMatchInfo) found = NULL;

  if (word == NULL)
    word = g_regex_new ("[A-Za-z]*[aeiouAEIOU][A-Za-z]*", 0, 0, NULL);
  for (g_regex_match (word, text, 0, &found); g_match_info_matches (found); g_match_info_next (found, NULL)) {
    g_autofree char *one = g_match_info_fetch (found, 0);
    gboolean known = FALSE;

    for (guint i = 0; i < G_N_ELEMENTS (names); i++)
      known |= strcmp (one, names[i]) == 0;
    if (!known && strlen (one) > 2)
      return TRUE;
  }
  return FALSE;
}

static gboolean
has_tip (GtkWidget *widget)
{
  for (; widget != NULL; widget = gtk_widget_get_parent (widget))
    if (gtk_widget_get_has_tooltip (widget))
      return TRUE;
  return FALSE;
}

static void
look_at (GtkWidget *widget, GString *faults)
{
  const char *tip = gtk_widget_get_tooltip_text (widget);

  /* GTK names the keys. */
  if (!gtk_widget_get_mapped (widget) || GTK_IS_SHORTCUT_LABEL (widget))
    return;
  if (tip != NULL && english (tip))
    g_string_append_printf (faults, "the tip “%s” is not translated\n", tip);
  if (GTK_IS_LABEL (widget)) {
    const char *text = gtk_label_get_text (GTK_LABEL (widget));

    if (english (text))
      g_string_append_printf (faults, "“%s” is not translated\n", text);
    if (pango_layout_is_ellipsized (gtk_label_get_layout (GTK_LABEL (widget))) && !has_tip (widget))
      g_string_append_printf (faults, "“%s” is cut and has no tip\n", text);
  }
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL;
       child = gtk_widget_get_next_sibling (child))
    look_at (child, faults);
}

static int
narrowest_of (GtkWidget *widget)
{
  int narrowest;

  gtk_widget_measure (widget, GTK_ORIENTATION_HORIZONTAL, -1, &narrowest, NULL, NULL, NULL);
  return narrowest;
}

/* Says which widgets make it as wide as that. */
static void
blame (GtkWidget *widget, int narrowest)
{
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL;
       child = gtk_widget_get_next_sibling (child)) {
    int own = narrowest_of (child);

    if (own > narrowest) {
      g_test_message ("%s is %d at its narrowest", G_OBJECT_TYPE_NAME (child), own);
      blame (child, narrowest);
    }
  }
}

static LapWindow *
open_window (void)
{
  g_autoptr (GBytes) bytes = g_bytes_new_static (SESSION, strlen (SESSION));
  g_autoptr (GError) error = NULL;
  g_autoptr (LapSession) session = lap_session_from_bytes (bytes, &error);

  g_assert_no_error (error);
  return windows_show (session);
}

static gsize
look_at_dialogs (LapWindow *window)
{
  gsize all_faults = 0;

  for (guint i = 0; i < G_N_ELEMENTS (dialogs); i++) {
    g_autoptr (GString) faults = g_string_new (NULL);
    g_autoptr (GtkWindow) dialog = NULL;

    gtk_widget_activate_action (GTK_WIDGET (window), dialogs[i], NULL);
    windows_settle (window);
    dialog = windows_dialog (window);
    gtk_test_widget_wait_for_draw (GTK_WIDGET (dialog));
    look_at (GTK_WIDGET (dialog), faults);
    if (faults->len > 0)
      g_test_message ("%s:\n%s", dialogs[i], faults->str);
    all_faults += faults->len;
    gtk_window_destroy (dialog);
  }
  return all_faults;
}

static void
test_views (gconstpointer data)
{
  LapWindow *window;
  gsize all_faults = 0;

  g_setenv ("LANGUAGE", data, TRUE);
  gtk_widget_set_default_direction (strcmp (data, "yy") == 0 ? GTK_TEXT_DIR_RTL : GTK_TEXT_DIR_LTR);
  g_assert_cmpstr (_("Squat"), !=, "Squat");
  window = open_window ();
  for (guint i = 0; i < G_N_ELEMENTS (views); i++) {
    g_autoptr (GString) faults = g_string_new (NULL);

    gtk_widget_activate_action (GTK_WIDGET (window), "win.view", "s", views[i]);
    windows_settle (window);
    look_at (GTK_WIDGET (window), faults);
    if (faults->len > 0)
      g_test_message ("%s:\n%s", views[i], faults->str);
    all_faults += faults->len;
    blame (GTK_WIDGET (window), 360);
    /* The content: without a compositor a frame of ten pixels is round it. */
    g_assert_cmpint (narrowest_of (adw_application_window_get_content (ADW_APPLICATION_WINDOW (window))), <=, 360);
  }
  all_faults += look_at_dialogs (window);
  g_assert_cmpuint (all_faults, ==, 0);
  windows_close (window);
}

/* Letters twice as large on a narrow screen: each view gets narrow enough, also where words are longer and a window has
 * all three buttons. */
static void
test_large (gconstpointer data)
{
  GtkSettings *settings = gtk_settings_get_default ();
  g_autoptr (GSettings) settled = lap_settings_child ("session-window");
  LapWindow *window;
  int widest = 0;

  g_setenv ("LANGUAGE", data, TRUE);
  gtk_widget_set_default_direction (GTK_TEXT_DIR_LTR);
  g_object_set (settings, "gtk-font-name", "Cantarell 22", "gtk-decoration-layout", "menu:minimize,maximize,close", NULL);
  g_settings_set_int (settled, "width", 360);
  window = open_window ();
  for (guint i = 0; i < G_N_ELEMENTS (views); i++) {
    GtkWidget *content = adw_application_window_get_content (ADW_APPLICATION_WINDOW (window));

    gtk_widget_activate_action (GTK_WIDGET (window), "win.view", "s", views[i]);
    windows_settle (window);
    blame (GTK_WIDGET (window), 360);
    g_test_message ("%s is %d wide at its narrowest", views[i], narrowest_of (content));
    widest = MAX (widest, narrowest_of (content));
  }
  g_assert_cmpint (widest, <=, 360);
  windows_close (window);
  g_object_set (settings, "gtk-font-name", "Cantarell 11", "gtk-decoration-layout", ":close", NULL);
  g_settings_reset (settled, "width");
}

int
main (int argc, char **argv)
{
  g_autofree char *script = g_build_filename (g_getenv ("LAP_SOURCE"), "tests", "support", "pseudo.py", NULL);
  g_autofree char *folder = g_dir_make_tmp ("lapwing-XXXXXX", NULL);
  g_autofree char *command = g_strdup_printf ("/usr/bin/python3 %s %s %s", script, g_getenv ("LAP_SOURCE"), folder);
  g_autofree char *clear = g_strdup_printf ("rm -r %s", folder);
  int status = 0;

  /* Languages are looked up in every locale but C, and GLib asks once, at the first word, whether there are any. */
  setlocale (LC_ALL, "C.UTF-8");
  g_setenv ("LANGUAGE", "xx", TRUE);
  g_assert_true (g_spawn_command_line_sync (command, NULL, NULL, &status, NULL));
  g_assert_cmpint (status, ==, 0);
  bindtextdomain (GETTEXT_PACKAGE, folder);
  bind_textdomain_codeset (GETTEXT_PACKAGE, "UTF-8");
  textdomain (GETTEXT_PACKAGE);
  windows_init (&argc, &argv);
  /* The letters of the desktop, which the widths are meant for. */
  g_object_set (gtk_settings_get_default (), "gtk-font-name", "Cantarell 11", NULL);
  /* As on a small screen, where a window has one button. */
  g_object_set (gtk_settings_get_default (), "gtk-decoration-layout", ":close", NULL);
  g_test_add_data_func ("/ui/translated/longer", "xx", test_views);
  g_test_add_data_func ("/ui/translated/turned", "yy", test_views);
  g_test_add_data_func ("/ui/translated/large", "en", test_large);
  g_test_add_data_func ("/ui/translated/large-and-longer", "xx", test_large);
  status = g_test_run ();
  g_assert_true (g_spawn_command_line_sync (clear, NULL, NULL, NULL, NULL));
  return status;
}
