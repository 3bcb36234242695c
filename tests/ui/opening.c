/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/windows.h"

#include "store/read-file.h"
#include "ui/opening.h"

/* A folder that is as slow as it has to be: nothing is read while the gate is locked. */
static GMutex gate;

static GBytes *
read_slowly (const char *path, char **etag, GError **error)
{
  g_mutex_lock (&gate);
  g_mutex_unlock (&gate);
  return lap_read_file (path, etag, error);
}

static char *
demo_path (void)
{
  return g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", "thirty-on-the-mat.lapwing", NULL);
}

static void
opened_cb (LapReading *reading, gpointer bytes)
{
  g_autofree char *etag = NULL;

  *(GBytes **) bytes = lap_reading_take (reading, &etag, NULL);
  g_assert_nonnull (etag);
}

static GtkApplication *
application (void)
{
  return GTK_APPLICATION (g_application_get_default ());
}

/* A file that is there at once needs no window: who waits has it, as it is. */
static void
test_soon (void)
{
  g_autofree char *path = demo_path (), *etag = NULL, *expected = NULL;
  g_autoptr (LapReading) reading = lap_reading_new (path, lap_read_file);
  g_autoptr (GBytes) bytes = NULL;
  gsize length;

  while (!lap_reading_wait (reading, 1000))
    ;
  bytes = lap_reading_take (reading, &etag, NULL);
  g_assert_true (g_file_get_contents (path, &expected, &length, NULL));
  g_assert_cmpmem (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes), expected, length);
}

/* One that isn't there is an error, not a wait. */
static void
test_missing (void)
{
  g_autoptr (LapReading) reading = lap_reading_new ("/nowhere/at all.lapwing", lap_read_file);
  g_autoptr (GError) error = NULL;
  g_autofree char *etag = NULL;

  while (!lap_reading_wait (reading, 1000))
    ;
  g_assert_null (lap_reading_take (reading, &etag, &error));
  g_assert_nonnull (strstr (error->message, "at all.lapwing"));
}

/* While it is read a window says so; then that is gone, and who asked has the bytes. */
static void
test_slow (void)
{
  g_autofree char *path = demo_path ();
  g_autoptr (LapReading) reading = NULL;
  g_autoptr (GBytes) bytes = NULL;
  GtkWindow *window;

  g_mutex_lock (&gate);
  reading = lap_reading_new (path, read_slowly);
  g_assert_false (lap_reading_wait (reading, 1));
  window = lap_opening_new (application (), reading, opened_cb, &bytes);
  g_object_add_weak_pointer (G_OBJECT (window), (gpointer *) &window);
  gtk_window_present (window);
  while (!gtk_widget_get_mapped (GTK_WIDGET (window)))
    g_main_context_iteration (NULL, TRUE);
  g_assert_cmpstr (gtk_window_get_title (window), ==, "Opening thirty-on-the-mat.lapwing…");
  g_assert_cmpstr (lap_opening_path (LAP_OPENING (window)), ==, path);
  g_assert_null (bytes);
  g_mutex_unlock (&gate);
  while (bytes == NULL)
    g_main_context_iteration (NULL, TRUE);
  while (g_main_context_iteration (NULL, FALSE))
    ;
  g_assert_null (window);
}

/* Whoever closes it hears no more of the file, even when that is read at last. */
static void
test_closed (void)
{
  g_autofree char *path = demo_path ();
  g_autoptr (LapReading) reading = NULL;
  g_autoptr (GBytes) bytes = NULL;
  GtkWindow *window;

  g_mutex_lock (&gate);
  reading = lap_reading_new (path, read_slowly);
  window = lap_opening_new (application (), reading, opened_cb, &bytes);
  g_object_add_weak_pointer (G_OBJECT (window), (gpointer *) &window);
  gtk_window_present (window);
  gtk_widget_activate_action (GTK_WIDGET (window), "window.close", NULL);
  while (window != NULL)
    g_main_context_iteration (NULL, TRUE);
  g_mutex_unlock (&gate);
  while (!lap_reading_wait (reading, 1000))
    ;
  while (g_main_context_iteration (NULL, FALSE))
    ;
  g_assert_null (bytes);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/opening/soon", test_soon);
  g_test_add_func ("/ui/opening/missing", test_missing);
  g_test_add_func ("/ui/opening/slow", test_slow);
  g_test_add_func ("/ui/opening/closed", test_closed);
  return g_test_run ();
}
