/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What windows of sessions and of weeks are like when the program is started again: each kind as it was, whatever the
 * other was like. The settings are kept in a file for that, by programs that come one after the other.
 */
#include "store/folder.h"
#include "ui/desk.h"
#include "ui/week-window.h"
#include "ui/windows.h"

static LapDesk *
desk_of (LapWindow *window)
{
  return LAP_DESK (windows_find (GTK_WIDGET (window), LAP_TYPE_DESK, NULL));
}

/* Closes it as a person does: what it is like is kept. */
static void
leave (LapWindow *window)
{
  gtk_window_close (GTK_WINDOW (window));
  while (g_main_context_iteration (NULL, FALSE))
    ;
}

static void
assert_size (LapWindow *window, int width, int height)
{
  int w, h;

  gtk_window_get_default_size (GTK_WINDOW (window), &w, &h);
  g_assert_cmpint (w, ==, width);
  g_assert_cmpint (h, ==, height);
}

/* Wide, without the catalogue, on the sheets; the week small, without its pane. */
static void
first_start (void)
{
  LapWindow *session = windows_demo (), *week = windows_demo_week ();

  assert_size (session, 1200, 800);
  g_assert_true (lap_desk_get_shown (desk_of (session), LAP_DESK_START));
  g_assert_true (lap_desk_get_shown (desk_of (week), LAP_DESK_END));
  gtk_window_set_default_size (GTK_WINDOW (session), 1150, 750);
  gtk_window_set_default_size (GTK_WINDOW (week), 1000, 700);
  lap_desk_set_shown (desk_of (session), LAP_DESK_START, FALSE);
  lap_desk_set_shown (desk_of (week), LAP_DESK_END, FALSE);
  lap_window_show_view (session, "sheets");
  windows_settle (session);
  windows_settle (week);
  leave (session);
  leave (week);
}

static void
second_start (void)
{
  LapWindow *session = windows_demo (), *week = windows_demo_week ();

  assert_size (session, 1150, 750);
  assert_size (week, 1000, 700);
  g_assert_false (lap_desk_get_shown (desk_of (session), LAP_DESK_START));
  g_assert_true (lap_desk_get_shown (desk_of (session), LAP_DESK_END));
  g_assert_false (lap_desk_get_shown (desk_of (week), LAP_DESK_END));
  g_assert_cmpstr (lap_window_view (session), ==, "sheets");
  g_assert_cmpstr (lap_window_view (week), ==, "week");
  windows_close (session);
  windows_close (week);
}

static void
run_program (const char *path)
{
  g_test_trap_subprocess (path, 0, G_TEST_SUBPROCESS_INHERIT_STDERR);
  g_test_trap_assert_passed ();
}

static void
test_restart (void)
{
  char *folder = folder_new ();

  g_setenv ("GSETTINGS_BACKEND", "keyfile", TRUE);
  g_setenv ("XDG_CONFIG_HOME", folder, TRUE);
  run_program ("/remember/restart/subprocess/first");
  run_program ("/remember/restart/subprocess/second");
  folder_remove (folder);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/remember/restart", test_restart);
  g_test_add_func ("/remember/restart/subprocess/first", first_start);
  g_test_add_func ("/remember/restart/subprocess/second", second_start);
  return g_test_run ();
}
