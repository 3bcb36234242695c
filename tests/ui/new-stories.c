/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What people begin with, by keys and by mouse: nothing, a formula, a pasted list, a demo, a week.
 */
#include "ui/stories.h"

#include "ui/new.h"

#include <string.h>

static LapPart *
first_part (LapWindow *window)
{
  return lap_session_nth (lap_document_session (lap_window_document (window)), 0);
}

/* What is pasted comes when whoever has it was asked. */
static gboolean
names_hook (gpointer told)
{
  return strstr (gtk_label_get_text (told), "“Sky hook”") != NULL;
}

static GtkWindow *
begin (LapWindow *window)
{
  hands_on (GTK_WINDOW (window));
  hands_press ("<Control>n");
  return stories_dialog (LAP_TYPE_NEW);
}

/* The window that was made beside @demo, after the dialog has gone. */
static LapWindow *
made (LapWindow *demo)
{
  stories_away (NULL, LAP_TYPE_NEW);
  return stories_other (demo);
}

static void
end (LapWindow *window, LapWindow *demo)
{
  windows_close (window);
  windows_close (demo);
}

/* A title and Enter are all it takes. */
static void
test_blank (void)
{
  LapWindow *demo = windows_demo (), *window;

  begin (demo);
  hands_type ("Empty floor");
  hands_press ("Return");
  window = made (demo);
  g_assert_cmpstr (stories_title (window), ==, "Empty floor");
  g_assert_cmpint (lap_document_timeline (lap_window_document (window))->length, ==, 0);
  end (window, demo);
}

/* Nothing is made by Escape. */
static void
test_escape (void)
{
  LapWindow *demo = windows_demo ();

  begin (demo);
  hands_type ("Never");
  hands_press ("Escape");
  stories_away (demo, LAP_TYPE_NEW);
  g_assert_cmpuint (stories_n_windows (), ==, 1);
  windows_close (demo);
}

/* From a list, by keys alone; the line that isn't known is named before anything is made. */
static void
test_list (void)
{
  LapWindow *demo = windows_demo (), *window;
  GtkWindow *dialog = begin (demo);
  GtkWidget *told;

  stories_type_into (dialog, ADW_TYPE_ENTRY_ROW, "name", "Typed");
  stories_type_into (dialog, GTK_TYPE_TEXT_VIEW, "list", "Squat");
  hands_press ("Return");
  hands_type ("Burpeez");
  hands_press ("Return");
  hands_type ("Plank");
  told = windows_find (GTK_WIDGET (dialog), GTK_TYPE_LABEL, "told");
  g_assert_nonnull (strstr (gtk_label_get_text (GTK_LABEL (told)), "Line 2, “Burpeez”"));
  stories_tab_to (windows_find (GTK_WIDGET (dialog), GTK_TYPE_BUTTON, "make"));
  hands_press ("Return");
  window = made (demo);
  g_assert_cmpstr (stories_title (window), ==, "Typed");
  g_assert_cmpuint (lap_part_n (first_part (window)), ==, 3);
  end (window, demo);
}

/* Pasted by keys from what was copied elsewhere, with seconds behind some; made by the letter of the button. */
static void
test_pasted (void)
{
  LapWindow *demo = windows_demo (), *window;
  GtkWindow *dialog = begin (demo);
  LapPart *part;

  gdk_clipboard_set_text (gtk_widget_get_clipboard (GTK_WIDGET (demo)), "Squat 50/10\n\n  plank\nSky hook 20/40\n");
  stories_type_into (dialog, ADW_TYPE_ENTRY_ROW, "name", "Pasted");
  stories_tab_to (windows_find (GTK_WIDGET (dialog), GTK_TYPE_TEXT_VIEW, "list"));
  hands_press ("<Control>v");
  hands_until (names_hook, windows_find (GTK_WIDGET (dialog), GTK_TYPE_LABEL, "told"));
  hands_press ("<Alt>n");
  window = made (demo);
  part = first_part (window);
  g_assert_cmpuint (lap_part_n (part), ==, 3);
  g_assert_cmpstr (lap_part_nth (part, 0)->exercise, ==, "squat");
  g_assert_cmpint (lap_part_nth (part, 0)->work, ==, 50);
  g_assert_cmpint (lap_part_nth (part, 0)->rest, ==, 10);
  g_assert_cmpstr (lap_part_nth (part, 1)->exercise, ==, "plank");
  g_assert_null (lap_part_nth (part, 2)->exercise);
  g_assert_cmpint (lap_part_nth (part, 2)->work, ==, 20);
  end (window, demo);
}

/* By a formula, the button by mouse; nothing can be made while the formula means nothing. */
static void
test_formula (void)
{
  LapWindow *demo = windows_demo (), *window;
  GtkWindow *dialog = begin (demo);
  GtkWidget *make = windows_find (GTK_WIDGET (dialog), GTK_TYPE_BUTTON, "make");
  LapPart *part;

  stories_type_into (dialog, ADW_TYPE_ENTRY_ROW, "formula", "45/15 x");
  g_assert_false (gtk_widget_is_sensitive (make));
  hands_press ("Return");
  g_assert_cmpuint (stories_n_windows (), ==, 1);
  hands_type (" 6 x 3");
  g_assert_true (gtk_widget_is_sensitive (make));
  hands_click_on (make);
  window = made (demo);
  part = first_part (window);
  g_assert_cmpuint (lap_part_n (part), ==, 6);
  g_assert_cmpint (part->rounds, ==, 3);
  g_assert_cmpint (lap_part_nth (part, 0)->work, ==, 45);
  end (window, demo);
}

/* The demos and an empty week, each by its row: by keys and by mouse. */
static void
test_rows (void)
{
  static const struct { const char *row, *title; gboolean week; } rows[] = {
    { "The demo of a session", "Thirty on the Mat", FALSE },
    { "The demo of a week", "Kelpline Studio", TRUE },
    { "A week of classes", "Our week", TRUE },
  };
  LapWindow *demo = windows_demo ();

  for (guint i = 0; i < 2 * G_N_ELEMENTS (rows); i++) {
    GtkWidget *row = rows_find (GTK_WIDGET (begin (demo)), rows[i / 2].row);
    LapWindow *window;

    if (i % 2 == 0) {
      stories_tab_to (row);
      hands_press ("Return");
    } else {
      rows_wheel_to (row);
      hands_click_on (row);
    }
    window = made (demo);
    g_assert_cmpstr (stories_title (window), ==, rows[i / 2].title);
    g_assert_true ((lap_document_week (lap_window_document (window)) != NULL) == rows[i / 2].week);
    windows_close (window);
  }
  windows_close (demo);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/new-stories/blank", test_blank);
  g_test_add_func ("/ui/new-stories/escape", test_escape);
  g_test_add_func ("/ui/new-stories/list", test_list);
  g_test_add_func ("/ui/new-stories/pasted", test_pasted);
  g_test_add_func ("/ui/new-stories/formula", test_formula);
  g_test_add_func ("/ui/new-stories/rows", test_rows);
  return g_test_run ();
}
