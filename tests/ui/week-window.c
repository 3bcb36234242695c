/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The window of a week: opening, the pane of a class, dates, properties, and placing what has no time. Rows are found by
 * the title that people read.
 */
#include "ui/week-window.h"

#include "sheets/week-sheets.h"
#include "ui/new.h"
#include "ui/sheets-view.h"
#include "ui/publish.h"
#include "ui/publish-dialog.h"
#include "ui/week-fill.h"
#include "ui/week-room.h"
#include "ui/week/words.h"
#include "ui/week-properties.h"
#include "ui/windows.h"

#include <glib/gstdio.h>
#include <string.h>

static LapApplication *
application (void)
{
  return LAP_APPLICATION (g_application_get_default ());
}

static void
room_begin (Room *room)
{
  room_make (room);
  week_put_session (room->path, 1200);
  room_open (room);
}

static LapClassPane *
class_pane (Room *room)
{
  return lap_week_pane_class (lap_week_window_pane (LAP_WEEK_WINDOW (room->window)));
}

static void
select_class (Room *room, const char *id)
{
  lap_week_view_show (lap_week_window_view (LAP_WEEK_WINDOW (room->window)), id);
  windows_settle (room->window);
}

/* Types @text in the row called @title and presses Enter. */
static void
type (GtkWidget *widget, const char *title, const char *text)
{
  GtkWidget *row = windows_find_shown_row (widget, title);

  g_assert_nonnull (row);
  gtk_editable_set_text (GTK_EDITABLE (row), text);
  g_signal_emit_by_name (row, "entry-activated");
}

static void
choose (GtkWidget *widget, const char *title, guint n)
{
  GtkWidget *row = windows_find_shown_row (widget, title);

  g_assert_nonnull (row);
  adw_combo_row_set_selected (ADW_COMBO_ROW (row), n);
}

static void
assert_typed (GtkWidget *widget, const char *title, const char *text)
{
  GtkWidget *row = windows_find_shown_row (widget, title);

  g_assert_nonnull (row);
  g_assert_cmpstr (gtk_editable_get_text (GTK_EDITABLE (row)), ==, text);
}

static void
test_open (void)
{
  Room room;
  g_autoptr (GError) error = NULL;

  room_begin (&room);
  g_assert_true (lap_application_open_path (application (), room.path, &error) == GTK_WINDOW (room.window));
  g_assert_cmpstr (lap_window_view (room.window), ==, "week");
  room_close (&room);
}

/* Each field of a class is one step, and what it says comes back. */
static void
test_class (void)
{
  Room room;
  GtkWidget *pane;

  room_begin (&room);
  pane = GTK_WIDGET (class_pane (&room));
  select_class (&room, "noon");
  assert_typed (pane, "Title", "Noon");
  type (pane, "Title", "High noon");
  g_assert_cmpstr (week_class (room.document, "noon")->title, ==, "High noon");
  type (pane, "Start", "13.30");
  g_assert_cmpint (week_class (room.document, "noon")->start, ==, 13 * 60 + 30);
  assert_typed (pane, "Start", "13:30");
  choose (pane, "Room", 1);
  g_assert_cmpstr (week_class (room.document, "noon")->room, ==, "loft");
  type (pane, "Between", "17:00-20:00");
  g_assert_cmpint (week_class (room.document, "noon")->wish_between->spans[0].end, ==, 20 * 60);
  /* What is no time is told, and the row says what holds. */
  type (pane, "Start", "soon");
  g_assert_cmpint (week_class (room.document, "noon")->start, ==, 13 * 60 + 30);
  assert_typed (pane, "Start", "13:30");
  for (int i = 0; i < 4; i++)
    gtk_widget_activate_action (GTK_WIDGET (room.window), "win.undo", NULL);
  g_assert_false (lap_document_is_modified (room.document));
  assert_typed (pane, "Title", "Noon");
  room_close (&room);
}

static LapWarnings *
warnings_of (Room *room)
{
  return lap_week_pane_warnings (lap_week_window_pane (LAP_WEEK_WINDOW (room->window)));
}

/* Clicks the mark of the class @id and returns the number of the warning whose row has the focus then. */
static guint
click_mark (Room *room, const char *id)
{
  LapWeekView *view = lap_week_window_view (LAP_WEEK_WINDOW (room->window));
  LapWeekScene *scene = lap_week_view_scene (view);
  LapWeekPlaced placed = lap_week_score_place (scene->score, scene->axis, lap_week_score_find (scene->score, id));
  GtkWidget *focus;

  g_assert_cmpint (placed.mark, >, 0);
  windows_click (GTK_WIDGET (lap_week_view_strip (view)), placed.words_x + 2,
                 placed.y + scene->score->crest + scene->score->bar + 2);
  windows_settle (room->window);
  g_assert_cmpstr (lap_week_scene_current (scene)->id, ==, id);
  focus = gtk_window_get_focus (GTK_WINDOW (room->window));
  g_assert_true (gtk_window_get_focus_visible (GTK_WINDOW (room->window)));
  for (guint i = 0; i < lap_checkup_n (lap_document_checkup (room->document)); i++)
    if (lap_warnings_row (warnings_of (room), i) == focus)
      return i;
  g_assert_not_reached ();
}

static gboolean
is_in_sight (GtkWidget *row)
{
  GtkWidget *view = gtk_widget_get_ancestor (row, GTK_TYPE_SCROLLED_WINDOW);
  int page = gtk_widget_get_height (view);
  graphene_rect_t bounds;

  g_assert_true (gtk_widget_get_mapped (row));
  g_assert_true (gtk_widget_compute_bounds (row, view, &bounds));
  return bounds.size.height > 0 && bounds.origin.y >= 0 && bounds.origin.y + MIN (bounds.size.height, page) <= page;
}

/* The mark of a class leads to its warnings in the list, one after another, and the class stays the selected one. */
static void
test_mark (void)
{
  static const LapPlace place = { LAP_DAY_MON, 7 * 60 + 15, (char *) "loft", (char *) "mira" };
  g_autofree char *text = NULL;
  LapCheckup *checkup;
  int width, height;
  guint n;
  Room room;

  room_begin (&room);
  gtk_window_get_default_size (GTK_WINDOW (room.window), &width, &height);
  lap_document_apply (room.document, lap_verb_place (week_class (room.document, "noon"), &place));
  gtk_widget_activate_action (GTK_WIDGET (room.window), "win.pane", NULL);
  windows_settle (room.window);
  g_assert_false (gtk_widget_get_mapped (GTK_WIDGET (warnings_of (&room))));
  checkup = lap_document_checkup (room.document);
  g_assert_cmpuint (click_mark (&room, "noon"), ==, 0);
  g_assert_true (gtk_widget_get_mapped (GTK_WIDGET (warnings_of (&room))));
  n = click_mark (&room, "noon");
  g_assert_cmpuint (n, >, 0);
  g_assert_true (lap_warning_is_about (checkup, lap_checkup_nth (checkup, n), week_class (room.document, "noon")));
  g_assert_cmpuint (click_mark (&room, "dawn"), ==, 0);
  /* In a narrow window the list comes up over the week, and only then. */
  gtk_widget_activate_action (GTK_WIDGET (room.window), "win.pane", NULL);
  gtk_window_set_default_size (GTK_WINDOW (room.window), 370, 500);
  windows_settle (room.window);
  g_assert_false (gtk_widget_get_mapped (GTK_WIDGET (warnings_of (&room))));
  click_mark (&room, "noon");
  while (!is_in_sight (gtk_window_get_focus (GTK_WINDOW (room.window))))
    windows_settle (room.window);
  /* As it was: the next window will be as this one. */
  gtk_window_set_default_size (GTK_WINDOW (room.window), width, height);
  windows_settle (room.window);
  gtk_widget_activate_action (GTK_WIDGET (room.window), "win.pane", NULL);
  text = lap_week_warnings_text (checkup, week_class (room.document, "dawn"));
  g_assert_true (g_str_has_prefix (text, "1: Dawn and Noon are both in Loft"));
  room_close (&room);
}

/* Classes that differ say so, and take a value together. */
static void
test_several (void)
{
  static const char *const both[] = { "dawn", "noon", NULL };
  Room room;
  GtkWidget *pane;

  room_begin (&room);
  pane = GTK_WIDGET (class_pane (&room));
  lap_class_pane_select (class_pane (&room), both);
  assert_typed (pane, "Title (different)", "");
  choose (pane, "Coach", 2);
  g_assert_cmpstr (week_class (room.document, "dawn")->coach, ==, "teo");
  g_assert_cmpstr (week_class (room.document, "noon")->coach, ==, "teo");
  g_assert_cmpstr (week_class (room.document, "noon")->title, ==, "Noon");
  lap_document_undo (room.document);
  g_assert_cmpstr (week_class (room.document, "dawn")->coach, ==, "mira");
  g_assert_false (lap_document_is_modified (room.document));
  room_close (&room);
}

/* What is typed and not entered yet is saved, too. */
static void
test_commit (void)
{
  Room room;

  room_begin (&room);
  select_class (&room, "noon");
  gtk_editable_set_text (GTK_EDITABLE (windows_find_shown_row (GTK_WIDGET (class_pane (&room)), "Title")), "Typed");
  lap_window_commit (room.window);
  g_assert_cmpstr (week_class (room.document, "noon")->title, ==, "Typed");
  lap_document_undo (room.document);
  room_close (&room);
}

static void
test_session (void)
{
  Room room;
  LapWindow *other;
  g_autofree char *gone = NULL;
  LapApplication *app = application ();

  room_begin (&room);
  select_class (&room, "dawn");
  g_assert_nonnull (windows_find_shown_row (GTK_WIDGET (class_pane (&room)), "squats.lapwing"));
  g_signal_emit_by_name (lap_week_window_view (LAP_WEEK_WINDOW (room.window)), "open-session", "dawn");
  other = LAP_WINDOW (gtk_application_get_active_window (GTK_APPLICATION (app)));
  for (GList *l = gtk_application_get_windows (GTK_APPLICATION (app)); l != NULL; l = l->next)
    if (LAP_IS_SESSION_WINDOW (l->data))
      other = l->data;
  g_assert_true (LAP_IS_SESSION_WINDOW (other));
  g_assert_cmpstr (lap_document_title (lap_window_document (other)), ==, "Squats");
  windows_settle (other);
  windows_close (other);
  gone = g_build_filename (room.folder, "gone.lapwing", NULL);
  lap_class_pane_set_session (class_pane (&room), gone);
  g_assert_true (week_says (room.document, "session-missing"));
  lap_class_pane_set_session (class_pane (&room), NULL);
  g_assert_false (week_says (room.document, "session-missing"));
  g_assert_nonnull (windows_find_shown_row (GTK_WIDGET (class_pane (&room)), "No session"));
  lap_document_undo (room.document);
  lap_document_undo (room.document);
  room_close (&room);
}

/* On one date: cancelled, moved, given to somebody else, with a note; every week it stays as it is. */
static void
test_date (void)
{
  const int monday = lap_date_parse ("2027-01-11");
  Room room;
  GtkWidget *pane, *held;
  LapException *e;

  room_begin (&room);
  pane = GTK_WIDGET (class_pane (&room));
  select_class (&room, "noon");
  g_assert_null (windows_find_shown_row (pane, "Held"));
  lap_document_set_date (room.document, monday);
  held = windows_find_shown_row (pane, "Held");
  g_assert_nonnull (held);
  type (pane, "On", "2027-01-14");
  e = lap_week_exception (lap_document_week (room.document), "noon", monday + 2);
  g_assert_cmpint (e->to, ==, monday + 3);
  type (pane, "Note for the door", "Bring water");
  e = lap_week_exception (lap_document_week (room.document), "noon", monday + 2);
  g_assert_cmpstr (e->note, ==, "Bring water");
  g_assert_cmpint (e->to, ==, monday + 3);
  choose (pane, "Coach", 0);
  e = lap_week_exception (lap_document_week (room.document), "noon", monday + 2);
  g_assert_cmpstr (e->coach, ==, "mira");
  g_assert_cmpstr (week_class (room.document, "noon")->coach, ==, "teo");
  adw_action_row_activate (ADW_ACTION_ROW (held));
  e = lap_week_exception (lap_document_week (room.document), "noon", monday + 2);
  g_assert_true (e->cancelled);
  g_assert_null (windows_find_shown_row (pane, "On"));
  gtk_widget_activate_action (GTK_WIDGET (room.window), "win.week-next", NULL);
  g_assert_cmpint (lap_document_date (room.document), ==, monday + 7);
  g_assert_true (gtk_switch_get_active (GTK_SWITCH (windows_find (held, GTK_TYPE_SWITCH, NULL))));
  gtk_widget_activate_action (GTK_WIDGET (room.window), "win.week-always", NULL);
  g_assert_null (windows_find_shown_row (pane, "Held"));
  for (int i = 0; i < 4; i++)
    lap_document_undo (room.document);
  g_assert_false (lap_document_is_modified (room.document));
  room_close (&room);
}

/* A coach who is ill is typed in, and the week asks for somebody else, with a remedy. */
static void
test_away (void)
{
  const int monday = lap_date_parse ("2027-01-11");
  Room room;
  GtkWidget *coach;

  room_begin (&room);
  lap_document_set_date (room.document, monday);
  coach = windows_find_shown_row (GTK_WIDGET (room.window), "Mira");
  g_assert_nonnull (coach);
  type (coach, "Away on", "2027-01-11 - 2027-01-12");
  g_assert_true (week_says (room.document, "coach-away"));
  g_assert_cmpstr (adw_expander_row_get_subtitle (ADW_EXPANDER_ROW (coach)), ==,
                   "1 class, 0:45 h, 1 hard; away 2027-01-11–2027-01-12");
  lap_document_undo (room.document);
  g_assert_false (week_says (room.document, "coach-away"));
  room_close (&room);
}

static void
test_properties (void)
{
  Room room;
  LapWeek *week;
  GtkWidget *dialog;

  room_begin (&room);
  week = lap_document_week (room.document);
  dialog = lap_week_properties_open (room.window);
  type (dialog, "Title", "Pier");
  g_assert_cmpstr (week->title, ==, "Pier");
  type (dialog, "Monday", "6:30–21:30");
  g_assert_cmpint (week->open[LAP_DAY_MON]->spans[0].start, ==, 6 * 60 + 30);
  type (dialog, "Dates", "2027-02-09, 2027-02-16–2027-02-20");
  g_assert_true (lap_week_is_closed (week, lap_date_parse ("2027-02-18")));
  assert_typed (dialog, "Dates", "2027-02-09, 2027-02-16–2027-02-20");
  type (dialog, "Timezone", "Europe/Nowhere");
  g_assert_cmpstr (week->timezone, ==, "Europe/Lisbon");
  assert_typed (dialog, "Timezone", "Europe/Lisbon");
  adw_expander_row_set_expanded (ADW_EXPANDER_ROW (windows_find_shown_row (dialog, "Teo")), TRUE);
  type (windows_find_shown_row (dialog, "Teo"), "Trained for", "strength, circuit");
  g_assert_cmpstr (lap_week_coach (week, "teo")->can[1], ==, "circuit");
  type (windows_find_shown_row (dialog, "Teo"), "Free on Monday", "06:00–12:00, 16:00–20:00");
  g_assert_cmpint (lap_week_coach (week, "teo")->free_hours[LAP_DAY_MON]->n, ==, 2);
  for (int i = 0; i < 5; i++)
    lap_document_undo (room.document);
  g_assert_false (lap_document_is_modified (room.document));
  gtk_window_destroy (GTK_WINDOW (dialog));
  room_close (&room);
}

/* What was found is taken as one step. */
static void
test_fill (void)
{
  Room room;
  LapWeekFill *fill;

  room_begin (&room);
  fill = lap_week_fill_open (room.window);
  while (lap_week_fill_found (fill) == NULL)
    g_main_context_iteration (NULL, TRUE);
  windows_settle (room.window);
  g_assert_nonnull (windows_find_shown_row (GTK_WIDGET (fill), "Late"));
  g_signal_emit_by_name (windows_find (GTK_WIDGET (fill), GTK_TYPE_BUTTON, "take"), "clicked");
  g_assert_true (lap_class_is_placed (week_class (room.document, "late")));
  g_assert_false (week_says (room.document, "unplaced"));
  lap_document_undo (room.document);
  g_assert_false (lap_document_is_modified (room.document));
  room_close (&room);
}

/* A dialog that closes while the worker searches takes nothing and leaves nothing. */
static void
test_fill_cancel (void)
{
  Room room;
  gpointer fill;

  room_begin (&room);
  fill = lap_week_fill_open (room.window);
  g_object_add_weak_pointer (fill, &fill);
  gtk_window_close (GTK_WINDOW (fill));
  while (fill != NULL)
    g_main_context_iteration (NULL, TRUE);
  g_assert_false (lap_document_is_modified (room.document));
  room_close (&room);
}

/* Both sheets are built, of the week that is looked at. */
static void
test_sheets (void)
{
  Room room;
  LapSheetsView *sheets;
  GtkWidget *combo;

  room_begin (&room);
  gtk_widget_activate_action (GTK_WIDGET (room.window), "win.view", "s", "2");
  g_assert_cmpstr (lap_window_view (room.window), ==, "sheets");
  sheets = LAP_SHEETS_VIEW (windows_find (GTK_WIDGET (room.window), LAP_TYPE_SHEETS_VIEW, NULL));
  combo = windows_find (GTK_WIDGET (sheets), ADW_TYPE_COMBO_ROW, "sheet");
  for (guint i = 0; i < lap_week_sheets_n (); i++) {
    adw_combo_row_set_selected (ADW_COMBO_ROW (combo), i);
    windows_settle (room.window);
    g_assert_cmpstr (lap_sheets_view_sheet (sheets)->id, ==, lap_week_sheets_nth (i)->id);
    g_assert_cmpuint (lap_pages_n (lap_sheets_view_pages (sheets)), ==, 1);
  }
  room_close (&room);
}

static LapWindow *
active_week (void)
{
  for (GList *l = gtk_application_get_windows (GTK_APPLICATION (application ())); l != NULL; l = l->next)
    if (LAP_IS_WEEK_WINDOW (l->data))
      return l->data;
  return NULL;
}

static void
activate_row (GtkWindow *dialog, const char *title)
{
  GtkWidget *row;

  gtk_window_present (dialog);
  row = windows_find_shown_row (GTK_WIDGET (dialog), title);
  g_assert_nonnull (row);
  adw_action_row_activate (ADW_ACTION_ROW (row));
}

static void
test_new (void)
{
  LapWindow *window;

  activate_row (lap_new_dialog (application (), NULL), "A week of classes");
  window = active_week ();
  g_assert_cmpstr (lap_document_title (lap_window_document (window)), ==, "Our week");
  g_assert_cmpuint (lap_list_n (lap_document_week (lap_window_document (window))->rooms), ==, 1);
  windows_settle (window);
  windows_close (window);
  activate_row (lap_new_dialog (application (), NULL), "The demo of a week");
  window = active_week ();
  g_assert_cmpuint (lap_list_n (lap_document_week (lap_window_document (window))->classes), ==, 48);
  g_assert_false (week_says (lap_window_document (window), "session-missing"));
  windows_settle (window);
  windows_close (window);
}

/* A week is exported from its window: the hours of each coach, a line each. */
static void
test_export (void)
{
  Room room;
  g_autoptr (GtkWindow) dialog = NULL;
  g_autofree char *path = NULL, *hours = NULL;

  room_begin (&room);
  path = g_build_filename (room.folder, "hours.csv", NULL);
  gtk_widget_activate_action (GTK_WIDGET (room.window), "win.publish", NULL);
  dialog = windows_dialog (room.window);
  g_assert_true (LAP_IS_PUBLISH_DIALOG (dialog));
  gtk_window_destroy (dialog);
  g_clear_object (&dialog);
  lap_publish_to (room.window, lap_formats_find ("hours"), NULL, path);
  while (!g_file_get_contents (path, &hours, NULL, NULL))
    g_main_context_iteration (NULL, FALSE);
  g_assert_nonnull (strstr (hours, "Teo"));
  g_unlink (path);
  room_close (&room);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/week-window/open", test_open);
  g_test_add_func ("/week-window/class", test_class);
  g_test_add_func ("/week-window/mark", test_mark);
  g_test_add_func ("/week-window/several", test_several);
  g_test_add_func ("/week-window/commit", test_commit);
  g_test_add_func ("/week-window/session", test_session);
  g_test_add_func ("/week-window/date", test_date);
  g_test_add_func ("/week-window/away", test_away);
  g_test_add_func ("/week-window/properties", test_properties);
  g_test_add_func ("/week-window/fill", test_fill);
  g_test_add_func ("/week-window/fill-cancel", test_fill_cancel);
  g_test_add_func ("/week-window/sheets", test_sheets);
  g_test_add_func ("/week-window/new", test_new);
  g_test_add_func ("/ui/week-window/export", test_export);
  return g_test_run ();
}
