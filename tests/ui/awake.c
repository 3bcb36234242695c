/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * While a rehearsal runs the screen is kept awake, and no longer. A session manager stands on the bus (the interface
 * org.gnome.SessionManager, methods Inhibit and Uninhibit, of which flag 8 is "the session being marked as idle") and
 * keeps count; it has a thread of its own, since GTK waits for its answer.
 */
#include "ui/windows.h"

#include "ui/rehearse/page.h"

#define IDLE 8

static const char interface[] =
  "<node><interface name='org.gnome.SessionManager'>"
  "<method name='RegisterClient'><arg type='s' direction='in'/><arg type='s' direction='in'/>"
  "<arg type='o' direction='out'/></method>"
  "<method name='Inhibit'><arg type='s' direction='in'/><arg type='u' direction='in'/><arg type='s' direction='in'/>"
  "<arg type='u' direction='in'/><arg type='u' direction='out'/></method>"
  "<method name='Uninhibit'><arg type='u' direction='in'/></method>"
  "</interface></node>";

typedef struct {
  GMainContext    *context;
  GMainLoop       *loop;
  GDBusConnection *bus;
  int              ready, held, ever; /* atomic */
} Manager;

static Manager manager;

static void
called_cb (GDBusConnection *bus, const char *sender, const char *path, const char *of, const char *method,
           GVariant *arguments, GDBusMethodInvocation *call, gpointer data)
{
  guint flags;

  if (g_str_equal (method, "Inhibit")) {
    g_variant_get_child (arguments, 3, "u", &flags);
    if (flags & IDLE) {
      g_atomic_int_inc (&manager.held);
      g_atomic_int_inc (&manager.ever);
    }
    g_dbus_method_invocation_return_value (call, g_variant_new ("(u)", 7));
  } else if (g_str_equal (method, "Uninhibit")) {
    g_atomic_int_add (&manager.held, -1);
    g_dbus_method_invocation_return_value (call, NULL);
  } else
    g_dbus_method_invocation_return_value (call, g_variant_new ("(o)", "/org/gnome/SessionManager/Client1"));
  g_main_context_wakeup (NULL);
}

static void
owned_cb (GDBusConnection *bus, const char *name, gpointer data)
{
  g_atomic_int_set (&manager.ready, 1);
  g_main_context_wakeup (NULL);
}

static gpointer
manage (gpointer data)
{
  static const GDBusInterfaceVTable calls = { called_cb };
  g_autoptr (GDBusNodeInfo) node = g_dbus_node_info_new_for_xml (interface, NULL);
  g_autoptr (GError) error = NULL;
  guint name;

  g_main_context_push_thread_default (manager.context);
  manager.bus = g_dbus_connection_new_for_address_sync (g_getenv ("DBUS_SESSION_BUS_ADDRESS"),
                                                        G_DBUS_CONNECTION_FLAGS_AUTHENTICATION_CLIENT |
                                                        G_DBUS_CONNECTION_FLAGS_MESSAGE_BUS_CONNECTION, NULL, NULL, &error);
  g_assert_no_error (error);
  g_dbus_connection_register_object (manager.bus, "/org/gnome/SessionManager", node->interfaces[0], &calls, NULL, NULL,
                                     &error);
  g_assert_no_error (error);
  name = g_bus_own_name_on_connection (manager.bus, "org.gnome.SessionManager", G_BUS_NAME_OWNER_FLAGS_NONE, owned_cb, NULL,
                                       NULL, NULL);
  g_main_loop_run (manager.loop);
  g_bus_unown_name (name);
  g_dbus_connection_close_sync (manager.bus, NULL, NULL);
  g_clear_object (&manager.bus);
  g_main_context_pop_thread_default (manager.context);
  return NULL;
}

static void
wait_held (int held)
{
  while (g_atomic_int_get (&manager.held) != held)
    g_main_context_iteration (NULL, TRUE);
}

static void
test_awake (void)
{
  LapWindow *window = windows_demo ();
  LapRehearsePage *page;
  LapStage *stage;

  gtk_widget_activate_action (GTK_WIDGET (window), "win.view", "s", "rehearse");
  page = LAP_REHEARSE_PAGE (windows_find (GTK_WIDGET (window), LAP_TYPE_REHEARSE_PAGE, NULL));
  stage = lap_rehearse_window_stage (lap_rehearse_page_open (page, 0));
  gtk_test_widget_wait_for_draw (GTK_WIDGET (stage));
  g_assert_cmpint (g_atomic_int_get (&manager.ever), ==, 0);
  g_assert_true (windows_press (GTK_WIDGET (stage), "space"));
  wait_held (1);
  /* Held by hand: nobody is kept awake for that. */
  g_assert_true (windows_press (GTK_WIDGET (stage), "space"));
  wait_held (0);
  g_assert_true (windows_press (GTK_WIDGET (stage), "space"));
  wait_held (1);
  /* Nor after it was left. */
  g_assert_true (windows_press (GTK_WIDGET (stage), "Escape"));
  wait_held (0);
  g_assert_cmpint (g_atomic_int_get (&manager.ever), ==, 2);
  windows_settle (window);
  windows_close (window);
}

int
main (int argc, char **argv)
{
  GThread *thread;
  int result;

  manager.context = g_main_context_new ();
  manager.loop = g_main_loop_new (manager.context, FALSE);
  thread = g_thread_new ("session manager", manage, NULL);
  while (!g_atomic_int_get (&manager.ready))
    g_main_context_iteration (NULL, TRUE);
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/awake/rehearsal", test_awake);
  result = g_test_run ();
  g_main_loop_quit (manager.loop);
  g_thread_join (thread);
  g_main_loop_unref (manager.loop);
  g_main_context_unref (manager.context);
  return result;
}
