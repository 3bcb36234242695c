/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What took long and ended while nobody looked is told by the desktop, and nothing else is. A server of notifications
 * stands on the bus: Desktop Notifications Specification 1.2 (freedesktop.org), org.freedesktop.Notifications with
 * Notify, CloseNotification and the signal ActionInvoked. Pressing goes the whole way, through GLib, to the window and
 * to a program that shows folders and writes down which one it was asked for.
 */
#include "ui/hands.h"
#include "ui/windows.h"

#include "ui/arrange.h"
#include "ui/export.h"
#include "ui/notify.h"
#include "ui/publish.h"
#include "ui/week-fill.h"
#include "ui/week-window.h"

#include <X11/Xlib.h>
#include <gdk/x11/gdkx.h>
#include <glib/gstdio.h>

static const char interface[] =
  "<node><interface name='org.freedesktop.Notifications'>"
  "<method name='GetCapabilities'><arg type='as' direction='out'/></method>"
  "<method name='GetServerInformation'><arg type='s' direction='out'/><arg type='s' direction='out'/>"
  "<arg type='s' direction='out'/><arg type='s' direction='out'/></method>"
  "<method name='Notify'><arg type='s' direction='in'/><arg type='u' direction='in'/><arg type='s' direction='in'/>"
  "<arg type='s' direction='in'/><arg type='s' direction='in'/><arg type='as' direction='in'/>"
  "<arg type='a{sv}' direction='in'/><arg type='i' direction='in'/><arg type='u' direction='out'/></method>"
  "<method name='CloseNotification'><arg type='u' direction='in'/></method>"
  "</interface></node>";

typedef struct {
  GDBusConnection *bus;
  gboolean         ready;
  guint            n, closed;
  char            *title, *text, **buttons; /* of the last one */
} Server;

static Server server;

static void
called_cb (GDBusConnection *bus, const char *sender, const char *path, const char *of, const char *method,
           GVariant *arguments, GDBusMethodInvocation *call, gpointer data)
{
  if (g_str_equal (method, "Notify")) {
    g_free (server.title);
    g_free (server.text);
    g_strfreev (server.buttons);
    g_variant_get (arguments, "(susss^asa{sv}i)", NULL, NULL, NULL, &server.title, &server.text, &server.buttons, NULL, NULL);
    g_dbus_method_invocation_return_value (call, g_variant_new ("(u)", ++server.n));
  } else if (g_str_equal (method, "CloseNotification")) {
    server.closed++;
    g_dbus_method_invocation_return_value (call, NULL);
  } else if (g_str_equal (method, "GetCapabilities"))
    g_dbus_method_invocation_return_value (call, g_variant_new ("(^as)", (const char *const[]) { "actions", NULL }));
  else
    g_dbus_method_invocation_return_value (call, g_variant_new ("(ssss)", "False", "Nobody", "1", "1.2"));
}

static void
owned_cb (GDBusConnection *bus, const char *name, gpointer data)
{
  server.ready = TRUE;
}

static void
serve (void)
{
  static const GDBusInterfaceVTable calls = { called_cb };
  g_autoptr (GDBusNodeInfo) node = g_dbus_node_info_new_for_xml (interface, NULL);
  g_autoptr (GError) error = NULL;

  server.bus = g_dbus_connection_new_for_address_sync (g_getenv ("DBUS_SESSION_BUS_ADDRESS"),
                                                       G_DBUS_CONNECTION_FLAGS_AUTHENTICATION_CLIENT |
                                                       G_DBUS_CONNECTION_FLAGS_MESSAGE_BUS_CONNECTION, NULL, NULL, &error);
  g_assert_no_error (error);
  g_dbus_connection_register_object (server.bus, "/org/freedesktop/Notifications", node->interfaces[0], &calls, NULL, NULL,
                                     &error);
  g_assert_no_error (error);
  g_bus_own_name_on_connection (server.bus, "org.freedesktop.Notifications", G_BUS_NAME_OWNER_FLAGS_NONE, owned_cb, NULL,
                                NULL, NULL);
  while (!server.ready)
    g_main_context_iteration (NULL, TRUE);
}

static gboolean
is_active (gpointer window)
{
  return gtk_window_is_active (window);
}

static gboolean
is_left (gpointer window)
{
  return !gtk_window_is_active (window);
}

/* The keyboard goes to no window, as when somebody works with another program. */
static void
look_away (GtkWindow *window)
{
  Display *display = gdk_x11_display_get_xdisplay (gtk_widget_get_display (GTK_WIDGET (window)));

  XSetInputFocus (display, None, RevertToNone, CurrentTime);
  XFlush (display);
  hands_until (is_left, window);
}

static gboolean
is_told (gpointer n)
{
  return server.n == GPOINTER_TO_UINT (n);
}

static void
answered_cb (GObject *bus, GAsyncResult *result, gpointer answered)
{
  g_autoptr (GVariant) answer = g_dbus_connection_call_finish (G_DBUS_CONNECTION (bus), result, NULL);

  *(gboolean *) answered = TRUE;
}

static gboolean
is_answered (gpointer answered)
{
  return *(gboolean *) answered;
}

/* Until the server has had all that the program sent, and the program what it answered: answers come in the order of the
 * questions. */
static void
wait_answered (void)
{
  gboolean answered = FALSE;

  g_dbus_connection_call (g_application_get_dbus_connection (g_application_get_default ()), "org.freedesktop.Notifications",
                          "/org/freedesktop/Notifications", "org.freedesktop.Notifications", "GetCapabilities", NULL, NULL,
                          G_DBUS_CALL_FLAGS_NONE, -1, NULL, answered_cb, &answered);
  hands_until (is_answered, &answered);
}

/* Until the server has been told @n times and the program knows the number that it gave to the last one. */
static void
wait_told (guint n)
{
  hands_until (is_told, GUINT_TO_POINTER (n));
  wait_answered ();
}

static gboolean
is_withdrawn (gpointer n)
{
  return server.closed == GPOINTER_TO_UINT (n);
}

/* Presses button @key of the notification; "default" is the notification itself. */
static void
press (const char *key)
{
  g_dbus_connection_emit_signal (server.bus, NULL, "/org/freedesktop/Notifications", "org.freedesktop.Notifications",
                                 "ActionInvoked", g_variant_new ("(us)", server.n, key), NULL);
}

/* A program for folders, and the choice of it, where GIO looks first; it writes down what it is asked for. */
static char *
install_folders (void)
{
  g_autofree char *folder = g_build_filename (g_get_user_data_dir (), "applications", NULL);
  g_autofree char *program = g_build_filename (folder, "false-folders.desktop", NULL);
  g_autofree char *choice = g_build_filename (folder, "mimeapps.list", NULL);
  g_autofree char *script = g_build_filename (g_get_user_data_dir (), "folders", NULL);
  char *asked = g_build_filename (g_get_user_data_dir (), "asked", NULL);
  g_autofree char *run = g_strdup_printf ("#!/bin/sh\nprintf '%%s' \"$1\" > '%s.new'\nmv '%s.new' '%s'\n", asked, asked,
                                          asked);
  g_autofree char *text = g_strdup_printf ("[Desktop Entry]\nType=Application\nName=Folders\nExec=%s %%u\n"
                                           "MimeType=inode/directory;\n", script);

  g_assert_cmpint (g_mkdir_with_parents (folder, 0700), ==, 0);
  g_assert_true (g_file_set_contents (script, run, -1, NULL));
  g_assert_cmpint (g_chmod (script, 0700), ==, 0);
  g_assert_true (g_file_set_contents (program, text, -1, NULL));
  g_assert_true (g_file_set_contents (choice, "[Default Applications]\ninode/directory=false-folders.desktop\n", -1, NULL));
  return asked;
}

static gboolean
is_there (gpointer path)
{
  return g_file_test (path, G_FILE_TEST_EXISTS);
}

/* A file that comes up wakes nobody. */
static gboolean
look_again (gpointer data)
{
  return G_SOURCE_CONTINUE;
}

static void
wait_for_file (const char *path)
{
  guint looks = g_timeout_add (20, look_again, NULL);

  hands_until (is_there, (gpointer) path);
  g_source_remove (looks);
}

/* Short, or before somebody's eyes: the window says it, and nobody else. */
static void
test_quiet (void)
{
  LapWindow *window = windows_demo ();
  guint before = server.n;

  hands_on (GTK_WINDOW (window));
  hands_until (is_active, window);
  lap_notify_ended (GTK_WINDOW (window), g_get_monotonic_time () - 60 * G_USEC_PER_SEC, "Before your eyes", "", NULL);
  look_away (GTK_WINDOW (window));
  lap_notify_ended (GTK_WINDOW (window), g_get_monotonic_time (), "In no time", "", NULL);
  lap_notify_ended (GTK_WINDOW (window), g_get_monotonic_time () - 60 * G_USEC_PER_SEC, "Long", "A minute", NULL);
  /* The bus keeps the order: what was told before would have come before. */
  wait_told (before + 1);
  g_assert_cmpstr (server.title, ==, "Long");
  g_assert_cmpstr (server.text, ==, "A minute");
  hands_on (GTK_WINDOW (window));
  hands_until (is_withdrawn, GUINT_TO_POINTER (1));
  look_away (GTK_WINDOW (window));
  lap_notify_ended (GTK_WINDOW (window), g_get_monotonic_time () - 60 * G_USEC_PER_SEC, "Long again", "A minute", NULL);
  wait_told (before + 2);
  press ("default");
  hands_until (is_active, window);
  windows_settle (window);
  windows_close (window);
}

/* An export from the menu's function to the folder that is shown. */
static void
test_export (void)
{
  g_autofree char *asked = install_folders (), *got = NULL;
  g_autofree char *folder = g_dir_make_tmp ("lapwing-XXXXXX", NULL), *path = g_build_filename (folder, "a.vtt", NULL);
  g_autoptr (GFile) file = g_file_new_for_path (folder), shown = NULL;
  LapWindow *window = windows_demo ();
  guint before = server.n;

  hands_on (GTK_WINDOW (window));
  hands_until (is_active, window);
  lap_notify_set_patience (0);
  look_away (GTK_WINDOW (window));
  lap_publish_to (window, lap_formats_find ("chapters"), NULL, path);
  wait_told (before + 1);
  g_assert_cmpstr (server.title, ==, "Exported as a.vtt");
  g_assert_cmpuint (g_strv_length (server.buttons), ==, 4); /* a key and a label each */
  g_assert_cmpstr (server.buttons[0], ==, "default");
  g_assert_cmpstr (server.buttons[3], ==, "Show the folder");
  press (server.buttons[2]);
  wait_for_file (asked);
  g_assert_true (g_file_get_contents (asked, &got, NULL, NULL));
  shown = g_file_new_for_commandline_arg (got);
  g_assert_true (g_file_equal (shown, file));
  lap_notify_set_patience (5 * G_USEC_PER_SEC);
  g_unlink (path);
  g_rmdir (folder);
  windows_settle (window);
  windows_close (window);
}

/* A sheet as PDF: the same. */
static void
test_pdf (void)
{
  g_autofree char *folder = g_dir_make_tmp ("lapwing-XXXXXX", NULL), *path = g_build_filename (folder, "wall.pdf", NULL);
  LapSheetOptions options = { .paper = LAP_PAPER_A4 };
  LapWindow *window = windows_demo ();
  guint before = server.n;

  hands_on (GTK_WINDOW (window));
  hands_until (is_active, window);
  lap_notify_set_patience (0);
  look_away (GTK_WINDOW (window));
  lap_export_to (window, lap_sheets_find ("poster"), &options, -1, path);
  wait_told (before + 1);
  g_assert_cmpstr (server.title, ==, "Exported as wall.pdf");
  g_assert_cmpstr (server.text, ==, lap_document_title (lap_window_document (window)));
  g_assert_cmpstr (server.buttons[3], ==, "Show the folder");
  g_assert_true (g_file_test (path, G_FILE_TEST_EXISTS));
  press ("default");
  hands_until (is_active, window);
  lap_notify_set_patience (5 * G_USEC_PER_SEC);
  g_unlink (path);
  g_rmdir (folder);
  windows_settle (window);
  windows_close (window);
}

typedef struct {
  gpointer  (*open)    (LapWindow *window); /* the dialog that searches */
  gboolean  (*is_done) (gpointer dialog);
  const char *title;
} Search;

static gpointer
open_order (LapWindow *window)
{
  return lap_arrange_open (window, LAP_ARRANGE_ORDER);
}

static gboolean
has_order (gpointer dialog)
{
  return lap_arrange_proposal (dialog) != NULL;
}

static gpointer
open_fill (LapWindow *window)
{
  return lap_week_fill_open (window);
}

static gboolean
has_places (gpointer dialog)
{
  return lap_week_fill_found (dialog) != NULL;
}

/* The search is told with what its dialog says of it, when it has ended and nobody looked. One that ends while it still
 * has the keyboard tells nobody: then it is done once more. */
static void
search_away (LapWindow *window, const Search *search)
{
  guint before = server.n;

  hands_on (GTK_WINDOW (window));
  lap_notify_set_patience (0);
  for (guint tries = 0; tries < 50 && server.n == before; tries++) {
    GtkWindow *dialog = search->open (window);

    look_away (dialog);
    hands_until (search->is_done, dialog);
    wait_answered ();
    if (server.n > before)
      g_assert_cmpstr (server.text, ==,
                       gtk_label_get_text (GTK_LABEL (windows_find (GTK_WIDGET (dialog), GTK_TYPE_LABEL, "heading"))));
    gtk_window_destroy (dialog);
    windows_settle (window);
  }
  g_assert_cmpuint (server.n, ==, before + 1);
  g_assert_cmpstr (server.title, ==, search->title);
  g_assert_cmpuint (g_strv_length (server.buttons), ==, 2); /* no folder to show */
  press ("default");
  hands_until (is_active, window);
  lap_notify_set_patience (5 * G_USEC_PER_SEC);
}

static void
test_order (void)
{
  static const Search order = { open_order, has_order, "The search for an order has ended" };
  LapWindow *window = windows_demo ();

  search_away (window, &order);
  windows_close (window);
}

static void
test_fill (void)
{
  static const Search fill = { open_fill, has_places, "The search for places has ended" };
  g_autofree char *path = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", "kelpline-week.lapweek", NULL);
  LapWindow *window = windows_open (path);
  LapWeekView *view = lap_week_window_view (LAP_WEEK_WINDOW (window));

  lap_week_view_show (view, LAP_CLASS (lap_list_nth (lap_document_week (lap_window_document (window))->classes, 0))->id);
  gtk_widget_activate_action (GTK_WIDGET (view), "week.unplace", NULL);
  search_away (window, &fill);
  windows_close (window);
}

int
main (int argc, char **argv)
{
  int result;

  windows_init (&argc, &argv);
  serve ();
  g_test_add_func ("/notify/quiet", test_quiet);
  g_test_add_func ("/notify/export", test_export);
  g_test_add_func ("/notify/pdf", test_pdf);
  g_test_add_func ("/notify/order", test_order);
  g_test_add_func ("/notify/fill", test_fill);
  result = g_test_run ();
  g_dbus_connection_close_sync (server.bus, NULL, NULL);
  g_clear_object (&server.bus);
  return result;
}
