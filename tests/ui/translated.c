/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The window in made-up languages: half as long again, and in another order from right to left. No word that a user
 * sees stays English, no word is cut without a tip that has it whole, and the window stays as narrow as a phone.
 */
#include "ui/windows.h"

#include "edit/own.h"
#include "store/documents.h"
#include "ui/own-dialog.h"
#include "ui/part-properties.h"
#include "ui/settings.h"
#include "ui/week-window.h"

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

#define WEEK "{\"format\": \"lapwing-week\", \"version\": 1, \"id\": \"0c5b1b62-0000-4000-8000-000000000001\", " \
             "\"title\": \"Žž\", \"timezone\": \"UTC\", \"rooms\": [{\"id\": \"r\", \"name\": \"Řř\"}], " \
             "\"coaches\": [{\"id\": \"c\", \"name\": \"Tř\"}], \"classes\": [" \
             "{\"id\": \"a\", \"title\": \"Žk\", \"kind\": \"zk\", \"minutes\": 45, \"day\": \"mon\", \"start\": \"07:00\", " \
             "\"room\": \"r\", \"coach\": \"c\"}, " \
             "{\"id\": \"b\", \"title\": \"Žb\", \"kind\": \"zk\", \"minutes\": 45, \"day\": \"mon\", \"start\": \"07:15\", " \
             "\"room\": \"r\", \"coach\": \"c\"}, {\"id\": \"d\", \"title\": \"Žd\", \"kind\": \"zk\", \"minutes\": 30}]}"

static const char *const dialogs[] = { "win.properties", "win.export", "win.publish", "win.order", "win.mend", "win.adapt",
                                       "win.choose", "win.shortcuts", "app.new", "app.preferences", "win.print", NULL };
static const char *const week_dialogs[] = { "win.properties", "win.publish", "win.import", "win.fill", "win.shortcuts", NULL };
static const char *const views[] = { "plan", "rehearse", "sheets", "script", NULL };
static const char *const week_views[] = { "week", "sheets", NULL };

/* Names of things, the same in every language; and what the libraries have translations of. */
static const char *const names[] = { "Lapwing", "WebVTT", "iCalendar", "Unicode", "GStreamer", "Search" };

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
  if (!gtk_widget_get_mapped (widget) || gtk_widget_has_css_class (widget, "keys"))
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

static LapWindow *
open_week (void)
{
  g_autoptr (GBytes) bytes = g_bytes_new_static (WEEK, strlen (WEEK));
  g_autoptr (GError) error = NULL;
  g_autoptr (LapWeek) week = lap_week_from_bytes (bytes, &error);
  g_autoptr (LapDocument) document = NULL;
  LapWindow *window;

  g_assert_no_error (error);
  document = lap_document_new (week, &error);
  g_assert_no_error (error);
  window = LAP_WINDOW (lap_week_window_new (GTK_APPLICATION (g_application_get_default ()), document));
  gtk_window_present (GTK_WINDOW (window));
  windows_settle (window);
  return window;
}

/* The faults of @widget, which is told as @name. */
static gsize
faults_of (GtkWidget *widget, const char *name)
{
  g_autoptr (GString) faults = g_string_new (NULL);

  look_at (widget, faults);
  if (faults->len > 0)
    g_test_message ("%s:\n%s", name, faults->str);
  return faults->len;
}

/* Without a compositor a frame of ten pixels is round a window. */
#define NARROW 370

/* And takes it away. */
static gsize
faults_of_dialog (LapWindow *window, const char *name)
{
  g_autoptr (GtkWindow) dialog = NULL;
  gsize faults;

  windows_settle (window);
  dialog = windows_dialog (window);
  gtk_test_widget_wait_for_draw (GTK_WIDGET (dialog));
  faults = faults_of (GTK_WIDGET (dialog), name);
  blame (GTK_WIDGET (dialog), NARROW);
  g_assert_cmpint (narrowest_of (GTK_WIDGET (dialog)), <=, NARROW);
  gtk_window_close (dialog); /* as if given up: a question has an answer then */
  windows_settle (window);
  return faults;
}

static gsize
look_at_window (LapWindow *window, const char *const *its_views, const char *const *its_dialogs)
{
  gsize faults = 0;

  for (guint i = 0; its_views[i] != NULL; i++) {
    gtk_widget_activate_action (GTK_WIDGET (window), "win.view", "s", its_views[i]);
    windows_settle (window);
    faults += faults_of (GTK_WIDGET (window), its_views[i]);
    blame (GTK_WIDGET (window), 360);
    /* The content: without a compositor a frame of ten pixels is round it. */
    g_assert_cmpint (narrowest_of (adw_application_window_get_content (ADW_APPLICATION_WINDOW (window))), <=, 360);
  }
  for (guint i = 0; its_dialogs[i] != NULL; i++) {
    gtk_widget_activate_action (GTK_WIDGET (window), its_dialogs[i], NULL);
    faults += faults_of_dialog (window, its_dialogs[i]);
  }
  return faults;
}

static void
begin (const char *language)
{
  g_setenv ("LANGUAGE", language, TRUE);
  gtk_widget_set_default_direction (strcmp (language, "yy") == 0 ? GTK_TEXT_DIR_RTL : GTK_TEXT_DIR_LTR);
  g_assert_cmpstr (_("Squat"), !=, "Squat");
}

/* What no action of the window opens: the properties of a part, an exercise of one's own, and questions. */
static gsize
look_at_others (LapWindow *window)
{
  LapDocument *document = lap_window_document (window);
  LapCatalogue *catalogue = lap_document_catalogue (document);
  g_autofree char *id = NULL;
  gsize faults;

  lap_part_properties_open (GTK_WINDOW (window), document, lap_session_nth (lap_document_session (document), 2));
  faults = faults_of_dialog (window, "part");
  lap_document_apply (document, lap_verb_make_own (lap_document_session (document), lap_catalogue_find (catalogue, "squat"),
                                                   "Žk", catalogue, &id));
  lap_own_dialog_open (GTK_WINDOW (window), document, id);
  faults += faults_of_dialog (window, "own exercise");
  gtk_window_close (GTK_WINDOW (window)); /* asks, as it has been changed */
  faults += faults_of_dialog (window, "close");
  return faults;
}

static void
test_views (gconstpointer data)
{
  LapWindow *window;
  gsize faults;

  begin (data);
  window = open_window ();
  faults = look_at_window (window, views, dialogs);
  faults += look_at_others (window);
  g_assert_cmpuint (faults, ==, 0);
  windows_close (window);
}

static void
test_week (gconstpointer data)
{
  LapWindow *window;

  begin (data);
  window = open_week ();
  g_assert_cmpuint (look_at_window (window, week_views, week_dialogs), ==, 0);
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
  for (guint i = 0; views[i] != NULL; i++) {
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
  g_test_add_data_func ("/ui/translated/week-longer", "xx", test_week);
  g_test_add_data_func ("/ui/translated/week-turned", "yy", test_week);
  g_test_add_data_func ("/ui/translated/large", "en", test_large);
  g_test_add_data_func ("/ui/translated/large-and-longer", "xx", test_large);
  status = g_test_run ();
  g_assert_true (g_spawn_command_line_sync (clear, NULL, NULL, NULL, NULL));
  return status;
}
