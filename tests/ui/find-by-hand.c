/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Finding words in a session and in a week with a keyboard and nothing else, through the X server: Control and F, what
 * is looked for, F3 on and Shift and F3 back, Escape.
 */
#include "ui/hands.h"
#include "ui/windows.h"

#include "ui/find-bar.h"
#include "ui/week-window.h"
#include "ui/week/view.h"

typedef struct {
  LapWindow *window;
  GtkWidget *count;
  char      *text; /* expected of the count */
} Look;

static gboolean
says (gpointer data)
{
  Look *look = data;

  return g_str_has_prefix (gtk_label_get_text (GTK_LABEL (look->count)), look->text);
}

static Look
look_begin (LapWindow *window, const char *text)
{
  Look look = { .window = window };
  GtkWidget *bar;

  hands_on (GTK_WINDOW (window));
  hands_press ("<Control>f");
  bar = windows_find (GTK_WIDGET (window), LAP_TYPE_FIND_BAR, NULL); /* there when it is asked for */
  look.count = windows_find (bar, GTK_TYPE_LABEL, "count");
  hands_type (text);
  return look;
}

static void
expect (Look *look, const char *keys, const char *text)
{
  look->text = (char *) text;
  if (keys != NULL)
    hands_press (keys);
  hands_until (says, look);
}

static void
test_session (void)
{
  LapWindow *window = windows_demo ();
  LapScoreContext *context = lap_window_context (window);
  Look look = look_begin (window, "squat");
  guint first, second;

  expect (&look, NULL, "1 of ");
  first = lap_score_selected (context);
  expect (&look, "F3", "2 of ");
  second = lap_score_selected (context);
  g_assert_cmpuint (second, >, first);
  expect (&look, "<Shift>F3", "1 of ");
  g_assert_cmpuint (lap_score_selected (context), ==, first);
  /* From anywhere in the window, and round the end. */
  gtk_widget_grab_focus (GTK_WIDGET (lap_window_score (window)));
  hands_press ("<Shift>F3");
  g_assert_cmpuint (lap_score_selected (context), >=, second);
  windows_close (window);
}

static const char *
current (LapWindow *window)
{
  LapClass *c = lap_week_scene_current (lap_week_view_scene (lap_week_window_view (LAP_WEEK_WINDOW (window))));

  return c != NULL ? c->id : NULL;
}

/* Which classes are there is read from the file: those of the coach, by day and time. */
static void
test_week (void)
{
  g_autofree char *path = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", "kelpline-week.lapweek", NULL);
  LapWindow *window = windows_open (path);
  LapWeek *week = lap_document_week (lap_window_document (window));
  LapCoach *coach = lap_list_nth (week->coaches, 0);
  Look look;
  g_autofree char *first = NULL, *name = g_utf8_strdown (lap_coach_title (coach), -1);
  guint n = 0;

  for (guint i = 0; i < lap_list_n (week->classes); i++)
    n += g_strcmp0 (((LapClass *) lap_list_nth (week->classes, i))->coach, coach->id) == 0;
  g_assert_cmpuint (n, >, 2);
  look = look_begin (window, name);
  expect (&look, NULL, "1 of ");
  first = g_strdup (current (window));
  g_assert_nonnull (first);
  expect (&look, "F3", "2 of ");
  g_assert_cmpstr (current (window), !=, first);
  expect (&look, "<Shift>F3", "1 of ");
  g_assert_cmpstr (current (window), ==, first);
  /* The focus stayed in the entry: what is typed is looked for. */
  hands_type ("xyzzy");
  expect (&look, NULL, "Nothing found");
  windows_close (window);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/find-by-hand/session", test_session);
  g_test_add_func ("/find-by-hand/week", test_week);
  return g_test_run ();
}
