/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The list of sessions: what lies in the folder is listed, the latest first, found by title, coach or exercise, opened
 * from the keyboard, and said calmly when it is gone. LAP_LONG=1 lists ten thousand files instead of sixty.
 */
#include "ui/library.h"

#include <glib/gstdio.h>
#include <string.h>
#include <utime.h>

#include "store/documents.h"
#include "store/folder.h"
#include "ui/recent.h"
#include "ui/windows.h"

static LapApplication *
application (void)
{
  return LAP_APPLICATION (g_application_get_default ());
}

/* A session called @title in the file @name. */
static char *
put_session (const char *folder, const char *name, const char *title, time_t written)
{
  g_autoptr (LapSession) session = lap_session_new (title);
  g_autoptr (GBytes) bytes = NULL;
  char *path = g_build_filename (folder, name, NULL);
  struct utimbuf times = { written, written };

  bytes = lap_session_to_bytes (session);
  put_text (path, g_bytes_get_data (bytes, NULL));
  g_assert_cmpint (g_utime (path, &times), ==, 0);
  return path;
}

static void
settle (LapLibrary *library)
{
  gtk_test_widget_wait_for_draw (GTK_WIDGET (library));
  while (lap_library_is_busy (library) || g_main_context_pending (NULL))
    g_main_context_iteration (NULL, TRUE);
}

static LapLibrary *
show (const char *folder)
{
  LapLibrary *library = LAP_LIBRARY (lap_application_show_library (application ()));

  lap_library_set_folder (library, folder);
  settle (library);
  return library;
}

static guint
n_listed (LapLibrary *library)
{
  return g_list_model_get_n_items (lap_library_list (library));
}

static const char *
title_of (LapLibrary *library, guint n)
{
  g_autoptr (LapIndexEntry) entry = g_list_model_get_item (lap_library_list (library), n);

  g_assert_nonnull (entry);
  return entry->facts.title;
}

static void
search (LapLibrary *library, const char *text)
{
  GtkWidget *entry = windows_find (GTK_WIDGET (library), GTK_TYPE_SEARCH_ENTRY, NULL);

  gtk_editable_set_text (GTK_EDITABLE (entry), text);
  g_signal_emit_by_name (entry, "search-changed");
}

static const char *
page (LapLibrary *library)
{
  return gtk_stack_get_visible_child_name (GTK_STACK (windows_find (GTK_WIDGET (library), GTK_TYPE_STACK, "stack")));
}

static void
test_list (void)
{
  char *folder = folder_new ();
  g_autofree char *a = put_session (folder, "a.lapwing", "Old Élan", 1000), *b = put_session (folder, "b.lapwing", "New", 2000);
  g_autofree char *broken = g_build_filename (folder, "broken.lapwing", NULL);
  LapLibrary *library;

  put_text (broken, "{");
  library = show (folder);
  g_assert_cmpuint (n_listed (library), ==, 3);
  g_assert_cmpstr (title_of (library, 0), ==, "broken.lapwing");
  g_assert_cmpstr (title_of (library, 1), ==, "New");
  g_assert_cmpstr (title_of (library, 2), ==, "Old Élan");
  search (library, "elan");
  g_assert_cmpuint (n_listed (library), ==, 1);
  g_assert_cmpstr (title_of (library, 0), ==, "Old Élan");
  search (library, "nobody");
  g_assert_cmpstr (page (library), ==, "nothing");
  search (library, "");
  g_assert_cmpstr (page (library), ==, "list");
  gtk_window_destroy (GTK_WINDOW (library));
  folder_remove (folder);
}

static void
test_empty (void)
{
  char *folder = folder_new ();
  LapLibrary *library = show (folder);

  g_assert_cmpstr (page (library), ==, "empty");
  g_assert_cmpuint (n_listed (library), ==, 0);
  gtk_window_destroy (GTK_WINDOW (library));
  folder_remove (folder);
}

static LapWindow *
document_window (void)
{
  for (GList *l = gtk_application_get_windows (GTK_APPLICATION (application ())); l != NULL; l = l->next)
    if (LAP_IS_WINDOW (l->data))
      return l->data;
  return NULL;
}

/* Opened from the search by Enter, it is on show and the list is gone; the desktop's list has it, and so the next list
 * has it first, whenever it was written. */
static void
test_open (void)
{
  char *folder = folder_new (), *other = folder_new ();
  g_autofree char *a = put_session (folder, "a.lapwing", "Old", 1000), *b = put_session (folder, "b.lapwing", "New", 2000);
  LapLibrary *library = show (folder);
  g_autoptr (GHashTable) times = NULL;
  LapWindow *window;

  search (library, "old");
  g_signal_emit_by_name (windows_find (GTK_WIDGET (library), GTK_TYPE_SEARCH_ENTRY, NULL), "activate");
  window = document_window ();
  g_assert_nonnull (window);
  windows_settle (window);
  g_assert_cmpstr (lap_document_path (lap_window_document (window)), ==, a);
  for (GList *l = gtk_application_get_windows (GTK_APPLICATION (application ())); l != NULL; l = l->next)
    g_assert_false (LAP_IS_LIBRARY (l->data));
  times = lap_recent_times ();
  g_assert_true (g_hash_table_contains (times, a));
  g_assert_false (g_hash_table_contains (times, b));
  library = show (folder);
  g_assert_cmpstr (title_of (library, 0), ==, "Old");
  lap_library_set_folder (library, other);
  settle (library);
  g_assert_cmpuint (n_listed (library), ==, 1); /* opened lately, though elsewhere */
  lap_recent_forget (a);
  gtk_window_destroy (GTK_WINDOW (library));
  windows_close (window);
  folder_remove (folder);
  folder_remove (other);
}

static gboolean
look_again (gpointer data)
{
  return G_SOURCE_CONTINUE;
}

/* What other programs read of @path in the desktop's list: Desktop Bookmark Specification (freedesktop.org), in the file
 * recently-used.xbel of the user's data folder. It is written when there is time. */
static void
wait_listed (const char *path, const char *mime)
{
  g_autofree char *list = g_build_filename (g_get_user_data_dir (), "recently-used.xbel", NULL);
  g_autofree char *uri = g_filename_to_uri (path, NULL, NULL);
  guint looks = g_timeout_add (20, look_again, NULL);

  for (gboolean listed = FALSE; !listed; g_main_context_iteration (NULL, TRUE)) {
    g_autoptr (GBookmarkFile) bookmarks = g_bookmark_file_new ();
    g_autofree char *type = NULL;

    if (!g_bookmark_file_load_from_file (bookmarks, list, NULL) || !g_bookmark_file_has_item (bookmarks, uri))
      continue;
    g_assert_true (g_bookmark_file_has_application (bookmarks, uri, "Lapwing", NULL));
    type = g_bookmark_file_get_mime_type (bookmarks, uri, NULL);
    g_assert_cmpstr (type, ==, mime);
    listed = TRUE;
  }
  g_source_remove (looks);
}

/* A session and a week that were opened stand in the desktop's own list, for the file chooser and other programs. */
static void
test_desktop (void)
{
  char *folder = folder_new ();
  g_autofree char *a = put_session (folder, "a.lapwing", "Opened", 1000), *week = g_build_filename (folder, "b.lapweek", NULL);
  LapWindow *window = windows_open (a);

  wait_listed (a, "application/vnd.lapwing.session+json");
  windows_close (window);
  put_text (week, "{\"format\": \"lapwing-week\", \"version\": 1, \"id\": \"w\", \"title\": \"W\", \"timezone\": \"UTC\"}");
  window = windows_open (week);
  wait_listed (week, "application/vnd.lapwing.week+json");
  windows_close (window);
  lap_recent_forget (a);
  lap_recent_forget (week);
  folder_remove (folder);
}

/* A file that went while the list was on show is said to be gone, and goes from the list. */
static void
test_gone (void)
{
  char *folder = folder_new ();
  g_autofree char *a = put_session (folder, "a.lapwing", "Going", 1000), *b = put_session (folder, "b.lapwing", "New", 2000);
  LapLibrary *library = show (folder);
  GtkWindow *dialog;

  g_assert_cmpint (g_unlink (a), ==, 0);
  search (library, "going");
  g_signal_emit_by_name (windows_find (GTK_WIDGET (library), GTK_TYPE_SEARCH_ENTRY, NULL), "activate");
  g_assert_null (document_window ());
  dialog = gtk_application_get_active_window (GTK_APPLICATION (application ()));
  for (GList *l = gtk_window_list_toplevels (); l != NULL; l = g_list_delete_link (l, l))
    if (ADW_IS_MESSAGE_DIALOG (l->data))
      dialog = l->data;
  g_assert_cmpstr (adw_message_dialog_get_heading (ADW_MESSAGE_DIALOG (dialog)), ==, "That file isn’t there any more");
  settle (library);
  search (library, "");
  g_assert_cmpuint (n_listed (library), ==, 1);
  gtk_window_destroy (dialog);
  gtk_window_destroy (GTK_WINDOW (library));
  folder_remove (folder);
}

/* All of them are listed; the next list has them before anything is read, and finds one while it is typed. */
static void
test_many (void)
{
  const guint n = g_getenv ("LAP_LONG") != NULL ? 10000 : 60;
  char *folder = folder_new ();
  LapLibrary *library;

  for (guint i = 0; i < n; i++) {
    g_autofree char *name = g_strdup_printf ("%05u.lapwing", i), *title = g_strdup_printf ("Session %05u", i);

    g_free (put_session (folder, name, title, 1000 + i));
  }
  library = show (folder);
  g_assert_cmpuint (n_listed (library), ==, n);
  gtk_window_destroy (GTK_WINDOW (library));
  library = LAP_LIBRARY (lap_application_show_library (application ()));
  g_assert_cmpuint (n_listed (library), ==, n); /* the folder was remembered, nothing is read yet */
  search (library, "00042");
  g_assert_cmpuint (n_listed (library), ==, 1);
  settle (library);
  gtk_window_destroy (GTK_WINDOW (library));
  folder_remove (folder);
}

int
main (int argc, char **argv)
{
  g_setenv ("XDG_CACHE_HOME", windows_data_folder (), TRUE);
  windows_init (&argc, &argv);
  g_test_add_func ("/library/list", test_list);
  g_test_add_func ("/library/empty", test_empty);
  g_test_add_func ("/library/open", test_open);
  g_test_add_func ("/library/desktop", test_desktop);
  g_test_add_func ("/library/gone", test_gone);
  g_test_add_func ("/library/many", test_many);
  return g_test_run ();
}
