/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The list of warnings as somebody goes through it: in order of rank, numbered as in the lanes, each with its reason and
 * whose it is and its page of the help; what can be done about it is a verb, done by a press and taken back by the
 * toast; what is fine here goes to a closed list, in the file, too, and warns again when it is asked to.
 */
#include "ui/rows.h"
#include "ui/windows.h"

#include "place/plans.h"
#include "store/documents.h"
#include "ui/help.h"
#include "ui/mark.h"
#include "ui/warning-row.h"

#include <string.h>

typedef struct {
  LapWindow   *window;
  LapDocument *document;
  GtkWidget   *warnings, *list, *kept;
} Room;

static void
room_begin_in (Room *room, LapWindow *window)
{
  room->window = window;
  gtk_window_set_default_size (GTK_WINDOW (room->window), 1400, 960);
  room->document = lap_window_document (room->window);
  room->warnings = GTK_WIDGET (lap_window_warnings (room->window));
  room->list = windows_find (room->warnings, GTK_TYPE_LIST_BOX, "list");
  room->kept = windows_find (room->warnings, GTK_TYPE_EXPANDER, "kept");
  g_signal_emit_by_name (windows_find (room->warnings, GTK_TYPE_BUTTON, "all"), "clicked"); /* those further down, too */
  windows_settle (room->window);
  hands_on (GTK_WINDOW (room->window));
}

static void
room_begin (Room *room)
{
  g_autofree char *path = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", "too-much-at-once.lapwing", NULL);

  room_begin_in (room, windows_open (path));
}

/* With few warnings: where there are many, rows grow when they come near, and what is below them goes on. */
static void
room_begin_short (Room *room)
{
  g_autoptr (LapSession) session = lap_session_new ("Short");

  plan_add (plan_part (session, LAP_PART_MAIN, 1), lap_block_new_exercise ("squat", 40, 20));
  room_begin_in (room, windows_show (session));
}

static void
room_end (Room *room)
{
  windows_settle (room->window);
  windows_close (room->window);
}

/* The page scrolls to what has the focus. */
static void
see (GtkWidget *widget)
{
  g_assert_true (gtk_widget_grab_focus (widget));
  windows_settle (LAP_WINDOW (gtk_widget_get_root (widget)));
}

static GtkWidget *
row_at (GtkWidget *list, guint i)
{
  return GTK_WIDGET (gtk_list_box_get_row_at_index (GTK_LIST_BOX (list), i));
}

static const char *
label_of (GtkWidget *row, const char *id)
{
  return gtk_label_get_text (GTK_LABEL (windows_find (row, GTK_TYPE_LABEL, id)));
}

/* The list is of one checkup, and the marks in the lanes have the numbers of its rows. */
static void
test_ranked (void)
{
  LapSeverity last = LAP_SEVERITY_STOP;
  guint ranks[LAP_SEVERITY_NOTE + 1] = { 0 }, i = 0;
  LapCheckup *checkup;
  Room room;

  room_begin (&room);
  checkup = lap_document_checkup (room.document);
  for (; row_at (room.list, i) != NULL; i++) {
    GtkWidget *row = row_at (room.list, i);
    const LapWarning *warning = lap_warning_row_warning (LAP_WARNING_ROW (row));
    g_autofree char *why = lap_warning_why (checkup, warning), *page = g_strconcat (LAP_HELP_CHECK, warning->check->id, NULL);

    g_assert_true (warning == lap_checkup_nth (checkup, i));
    g_assert_cmpint (warning->severity, >=, last);
    last = warning->severity;
    ranks[last]++;
    g_assert_true (g_str_has_prefix (label_of (row, "why"), "Why: "));
    g_assert_nonnull (strstr (label_of (row, "why"), why));
    g_assert_nonnull (strstr (label_of (row, "why"), lap_warning_source (warning)));
    g_assert_cmpstr (gtk_widget_get_name (row), ==, page);
  }
  g_assert_cmpuint (i, >, 5);
  g_assert_true (ranks[LAP_SEVERITY_WARNING] > 0 && ranks[LAP_SEVERITY_NOTE] > 0);
  room_end (&room);
}

static GtkWidget *
remedy_of (GtkWidget *row)
{
  lap_warning_row_fill (LAP_WARNING_ROW (row));
  return gtk_widget_get_first_child (windows_find (row, GTK_TYPE_BOX, "remedies"));
}

static const char *
undo_label (Room *room)
{
  return lap_history_undo_label (lap_document_history (room->document));
}

/* The first of a warning is done by one press, the toast names the deed, and its button takes it back. That remedies
 * help is asked elsewhere, of all checks. */
static void
test_remedies (void)
{
  guint tried = 0;
  g_autofree char *before = NULL;
  Room room;

  room_begin (&room);
  before = windows_text (room.window);
  for (guint i = 0; tried < 4; i++) {
    GtkWidget *button = remedy_of (row_at (room.list, i));
    g_autofree char *now = NULL, *after = NULL;

    if (button == NULL)
      continue;
    tried++;
    g_test_message ("%s", gtk_button_get_label (GTK_BUTTON (button)));
    see (button);
    hands_click_on (button);
    now = windows_text (room.window);
    g_assert_cmpstr (now, !=, before);
    g_assert_nonnull (undo_label (&room));
    g_assert_nonnull (rows_find_text (GTK_WIDGET (room.window), undo_label (&room)));
    rows_by_mouse.press (windows_find (GTK_WIDGET (room.window), g_type_from_name ("AdwToastWidget"), NULL), "Undo");
    after = windows_text (room.window);
    g_assert_cmpstr (after, ==, before);
  }
  room_end (&room);
}

static void
choose (GtkWidget *row, const char *label)
{
  GtkWidget *menu = windows_find (row, GTK_TYPE_MENU_BUTTON, "more"), *popover;

  see (menu);
  hands_click_on (menu);
  popover = windows_find (menu, GTK_TYPE_POPOVER, NULL);
  g_assert_nonnull (popover);
  hands_until (rows_is_mapped, popover);
  rows_click_text (popover, label);
}

/* By the menu of a row; the list of what is kept is closed until it is asked for. */
static void
test_fine (void)
{
  g_autofree char *said = NULL, *written = NULL, *before = NULL, *after = NULL;
  GtkWidget *row, *kept_list;
  const char *id;
  guint n;
  Room room;

  room_begin_short (&room);
  before = windows_text (room.window);
  n = lap_checkup_n_open (lap_document_checkup (room.document));
  g_assert_false (gtk_widget_get_visible (room.kept));
  row = row_at (room.list, 0);
  said = g_strdup (label_of (row, "message"));
  id = lap_warning_row_warning (LAP_WARNING_ROW (row))->check->id;
  choose (row, "Fine here");
  windows_settle (room.window);
  g_assert_cmpuint (lap_checkup_n_open (lap_document_checkup (room.document)), ==, n - 1);
  g_assert_cmpstr (label_of (row_at (room.list, 0), "message"), !=, said);
  written = windows_text (room.window);
  g_assert_nonnull (strstr (written, "\"fine\""));
  g_assert_nonnull (strstr (written, id));
  g_assert_true (gtk_widget_get_visible (room.kept));
  g_assert_false (gtk_expander_get_expanded (GTK_EXPANDER (room.kept)));
  g_assert_cmpstr (gtk_expander_get_label (GTK_EXPANDER (room.kept)), ==, "1 kept as fine");
  g_assert_true (gtk_widget_activate (room.kept)); /* as by Enter */
  kept_list = windows_find (room.kept, GTK_TYPE_LIST_BOX, "kept_list");
  g_assert_nonnull (kept_list);
  hands_until (rows_is_mapped, kept_list);
  row = row_at (kept_list, 0);
  g_assert_cmpstr (label_of (row, "message"), ==, said);
  choose (row, "Warn again");
  windows_settle (room.window);
  g_assert_cmpuint (lap_checkup_n_open (lap_document_checkup (room.document)), ==, n);
  g_assert_cmpstr (label_of (row_at (room.list, 0), "message"), ==, said);
  g_assert_false (gtk_widget_get_visible (room.kept));
  after = windows_text (room.window);
  g_assert_cmpstr (after, ==, before);
  room_end (&room);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/warning-list/ranked", test_ranked);
  g_test_add_func ("/warning-list/remedies", test_remedies);
  g_test_add_func ("/warning-list/fine", test_fine);
  return g_test_run ();
}
