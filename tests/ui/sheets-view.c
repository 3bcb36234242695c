/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The Sheets view: it shows what is printed, follows the plan, remembers what is asked, and leaves nothing behind.
 */
#include "ui/windows.h"

#include "edit/verbs.h"
#include "sheets/tile.h"
#include "support/pdf.h"
#include "ui/settings.h"
#include "ui/sheet-page.h"
#include "ui/sheet-print.h"
#include "ui/sheets-view.h"

#include <glib/gstdio.h>

static LapSheetsView *
open_view (LapWindow *window)
{
  GtkWidget *stack = windows_find (GTK_WIDGET (window), ADW_TYPE_VIEW_STACK, NULL);
  GtkWidget *view;

  adw_view_stack_set_visible_child_name (ADW_VIEW_STACK (stack), "sheets");
  view = windows_find (GTK_WIDGET (window), LAP_TYPE_SHEETS_VIEW, NULL);
  for (int i = 0; i < 200 && lap_sheets_view_pages (LAP_SHEETS_VIEW (view)) == NULL; i++)
    windows_settle (window);
  g_assert_nonnull (lap_sheets_view_pages (LAP_SHEETS_VIEW (view)));
  return LAP_SHEETS_VIEW (view);
}

static GtkWidget *
part_of (LapSheetsView *view, GType type, const char *id)
{
  GtkWidget *part = windows_find (GTK_WIDGET (view), type, id);

  g_assert_nonnull (part);
  return part;
}

static guint
n_thumbs (LapSheetsView *view)
{
  GtkListBox *box = GTK_LIST_BOX (part_of (view, GTK_TYPE_LIST_BOX, "thumbs"));
  guint n = 0;

  while (gtk_list_box_get_row_at_index (box, n) != NULL)
    n++;
  return n;
}

/* Every sheet shows as many small pages as it has; other letters, other pages. */
static void
test_sheets (void)
{
  LapWindow *window = windows_demo ();
  LapSheetsView *view = open_view (window);
  guint far;

  for (guint i = 0; i < lap_sheets_n (); i++) {
    adw_combo_row_set_selected (ADW_COMBO_ROW (part_of (view, ADW_TYPE_COMBO_ROW, "sheet")), i);
    windows_settle (window);
    g_assert_true (lap_sheets_view_sheet (view) == lap_sheets_nth (i));
    g_assert_cmpuint (n_thumbs (view), ==, lap_pages_n (lap_sheets_view_pages (view)));
  }
  adw_combo_row_set_selected (ADW_COMBO_ROW (part_of (view, ADW_TYPE_COMBO_ROW, "sheet")), 0);
  windows_settle (window);
  far = lap_pages_n (lap_sheets_view_pages (view));
  gtk_spin_button_set_value (GTK_SPIN_BUTTON (part_of (view, GTK_TYPE_SPIN_BUTTON, "distance")), 1.5);
  windows_settle (window);
  g_assert_cmpuint (lap_pages_n (lap_sheets_view_pages (view)), <, far);
  g_assert_cmpuint (n_thumbs (view), ==, lap_pages_n (lap_sheets_view_pages (view)));
  gtk_spin_button_set_value (GTK_SPIN_BUTTON (part_of (view, GTK_TYPE_SPIN_BUTTON, "distance")), 0);
  windows_close (window);
}

/* Pages stay until others are laid out, which nobody waits for; who goes elsewhere finds them when they come back. */
static void
test_elsewhere (void)
{
  LapWindow *window = windows_demo ();
  LapSheetsView *view = open_view (window);
  const LapPages *shown;
  LapEdits *edits = lap_edits_new ("title");

  windows_settle (window);
  shown = lap_sheets_view_pages (view);
  lap_edits_set_text (edits, lap_document_session (lap_window_document (window)), "title", "Salt and Stairs");
  g_assert_true (lap_document_apply (lap_window_document (window), edits));
  while (lap_sheets_view_is_busy (view) && lap_sheets_view_pages (view) == shown && g_main_context_iteration (NULL, FALSE))
    g_assert_nonnull (lap_sheets_view_pages (view)->title);
  lap_window_show_view (window, "plan");
  windows_settle (window);
  g_assert_false (lap_sheets_view_is_busy (view));
  lap_window_show_view (window, "sheets");
  windows_settle (window);
  g_assert_cmpstr (lap_sheets_view_pages (view)->title, ==, "Salt and Stairs");
  windows_close (window);
}

/* What changes in the plan changes on the sheet, when it is looked at. */
static void
test_follows (void)
{
  LapWindow *window = windows_demo ();
  LapDocument *document = lap_window_document (window);
  LapSheetsView *view = open_view (window);
  LapEdits *edits = lap_edits_new ("title");

  lap_edits_set_text (edits, lap_document_session (document), "title", "Salt and Stairs");
  g_assert_true (lap_document_apply (document, edits));
  windows_settle (window);
  g_assert_cmpstr (lap_sheets_view_pages (view)->title, ==, "Salt and Stairs");
  lap_document_undo (document);
  windows_settle (window);
  g_assert_cmpstr (lap_sheets_view_pages (view)->title, ==, lap_document_title (document));
  windows_close (window);
}

static void
forget_choices (void)
{
  lap_settings_keep ("sheets", g_variant_new_array (G_VARIANT_TYPE ("{sa{si}}"), NULL, 0));
}

/* What is asked of one sheet is there the next time, and isn't asked of another. */
static void
test_remembers (void)
{
  LapSheetChoice before = lap_sheet_choice_load (lap_sheets_find ("stations")), choice, after;

  choice = lap_sheet_choice_load (lap_sheets_find ("poster"));
  g_assert_cmpint (choice.options.paper, ==, LAP_PAPER_A3);
  choice.options.paper = LAP_PAPER_A2;
  choice.options.distance = 2.5;
  choice.options.hide = LAP_HIDE_CODE;
  choice.options.body = TRUE;
  choice.pieces = LAP_PAPER_LETTER;
  lap_sheet_choice_keep (lap_sheets_find ("poster"), &choice);
  after = lap_sheet_choice_load (lap_sheets_find ("poster"));
  g_assert_nonnull (lap_settings ());
  g_assert_cmpint (after.options.paper, ==, LAP_PAPER_A2);
  g_assert_cmpfloat (after.options.distance, ==, 2.5);
  g_assert_cmpint (after.options.hide, ==, LAP_HIDE_CODE);
  g_assert_true (after.options.body);
  g_assert_cmpint (after.pieces, ==, LAP_PAPER_LETTER);
  after = lap_sheet_choice_load (lap_sheets_find ("stations"));
  g_assert_cmpint (after.options.paper, ==, before.options.paper);
  forget_choices ();
}

/* A3 doesn't go into the printer that most people have; A4 and Letter do. */
static void
test_large (void)
{
  static const struct {
    LapPaper paper;
    gboolean large;
  } rows[] = {
    { LAP_PAPER_A2, TRUE }, { LAP_PAPER_A3, TRUE }, { LAP_PAPER_TABLOID, TRUE }, { LAP_PAPER_A4, FALSE },
    { LAP_PAPER_LETTER, FALSE }, { LAP_PAPER_A5, FALSE },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    for (guint landscape = 0; landscape < 2; landscape++) {
      LapSheetChoice choice = { .options = { .paper = rows[i].paper, .landscape = landscape } };

      g_assert_cmpint (lap_sheet_is_large (&choice), ==, rows[i].large);
    }
}

static GtkWindow *
dialog_of (LapWindow *window)
{
  g_autoptr (GListModel) windows = g_object_ref (gtk_window_get_toplevels ());

  for (guint i = 0; i < g_list_model_get_n_items (windows); i++) {
    g_autoptr (GtkWindow) one = g_list_model_get_item (windows, i);

    if (ADW_IS_MESSAGE_DIALOG (one) && gtk_window_get_transient_for (one) == GTK_WINDOW (window))
      return one;
  }
  return NULL;
}

/* To print a poster on A3 asks first whether the printer takes that; giving up prints nothing. */
static void
test_print (void)
{
  LapWindow *window = windows_demo ();
  LapSheetsView *view;

  gtk_widget_activate_action (GTK_WIDGET (window), "win.print", NULL);
  view = open_view (window);
  g_assert_true (gtk_widget_get_mapped (GTK_WIDGET (view)));
  g_assert_nonnull (dialog_of (window));
  gtk_window_close (dialog_of (window));
  for (int i = 0; i < 500 && dialog_of (window) != NULL; i++) {
    g_main_context_iteration (NULL, FALSE);
    g_usleep (1000);
  }
  g_assert_null (dialog_of (window));
  windows_close (window);
}

/* The poster, when it has been printed. */
static void
print_to (LapWindow *window, const LapSheetChoice *choice, const char *path)
{
  lap_sheet_print_dialog (window, lap_sheets_find ("poster"), choice, path);
  windows_end_errand (NULL);
}

/* The print dialog's own pages: the sheet on its paper, or in pieces on the printer's. A3 is 842 by 1191 points, A4 595
 * by 842 (ISO 216). */
static void
test_printed (void)
{
  g_autofree char *folder = g_dir_make_tmp ("lapwing-XXXXXX", NULL), *path = g_build_filename (folder, "a.pdf", NULL);
  LapWindow *window = windows_demo ();
  LapSheetChoice choice = { .options = { .paper = LAP_PAPER_A3, .distance = 2 }, .pieces = -1 };
  g_autofree char *one = NULL, *pieces = NULL;

  print_to (window, &choice, path);
  one = pdf_pages (path);
  g_assert_cmpstr (one, ==, "1 842 x 1191");
  choice.pieces = LAP_PAPER_A4;
  print_to (window, &choice, path);
  pieces = pdf_pages (path);
  /* What is printed of it is 273 by 396 mm: two pieces of A4 on its side. */
  g_assert_cmpstr (pieces, ==, "2 842 x 595");
  g_unlink (path);
  g_rmdir (folder);
  windows_close (window);
}

static LapWindow *
open_week (void)
{
  g_autofree char *path = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", "kelpline-week.lapweek", NULL);

  return windows_open (path);
}

static void
activate (LapSheetsView *view, const char *title)
{
  GtkWidget *row = windows_find_shown_row (GTK_WIDGET (view), title);

  g_assert_nonnull (row);
  adw_action_row_activate (ADW_ACTION_ROW (row));
  windows_settle (LAP_WINDOW (gtk_widget_get_root (GTK_WIDGET (view))));
}

/* A week has a page for each room where that is asked for, the next time, too; a session isn't asked. */
static void
test_by_room (void)
{
  LapWindow *window = open_week (), *session;
  LapSheetsView *view = open_view (window);
  guint rooms = lap_list_n (lap_document_week (lap_window_document (window))->rooms);

  g_assert_cmpuint (lap_pages_n (lap_sheets_view_pages (view)), ==, 1);
  activate (view, "A page for each room");
  g_assert_cmpuint (lap_pages_n (lap_sheets_view_pages (view)), ==, rooms);
  g_assert_cmpuint (n_thumbs (view), ==, rooms);
  windows_close (window);
  window = open_week ();
  view = open_view (window);
  g_assert_cmpuint (lap_pages_n (lap_sheets_view_pages (view)), ==, rooms);
  activate (view, "A page for each room");
  g_assert_cmpuint (lap_pages_n (lap_sheets_view_pages (view)), ==, 1);
  windows_close (window);
  session = windows_demo ();
  g_assert_null (windows_find_shown_row (GTK_WIDGET (open_view (session)), "A page for each room"));
  windows_close (session);
  forget_choices ();
}

/* What doesn't read from 2 m says what would, and one press gives it. */
static void
test_larger (void)
{
  LapWindow *window = open_week ();
  LapSheetsView *view = open_view (window);
  GtkWidget *row = windows_find_shown_row (GTK_WIDGET (view), "To read from 2.0\xc2\xa0m");
  double enough = lap_cap_height (2, LAP_ARC_READABLE);

  g_assert_false (lap_sheets_view_choice (view)->options.by_room);
  g_assert_cmpfloat (lap_pages_cap (lap_sheets_view_pages (view), LAP_READ_NAME), <, enough);
  g_assert_nonnull (row);
  g_assert_cmpstr (adw_action_row_get_subtitle (ADW_ACTION_ROW (row)), ==, "A3, a page for each room");
  g_signal_emit_by_name (windows_find (row, GTK_TYPE_BUTTON, NULL), "clicked");
  windows_settle (window);
  g_assert_cmpint (lap_sheets_view_choice (view)->options.paper, ==, LAP_PAPER_A3);
  g_assert_true (lap_sheets_view_choice (view)->options.by_room);
  g_assert_cmpfloat (lap_pages_cap (lap_sheets_view_pages (view), LAP_READ_NAME), >=, enough);
  g_assert_null (windows_find_shown_row (GTK_WIDGET (view), "To read from 2.0\xc2\xa0m"));
  windows_close (window);
  forget_choices ();
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/sheets-view/sheets", test_sheets);
  g_test_add_func ("/ui/sheets-view/elsewhere", test_elsewhere);
  g_test_add_func ("/ui/sheets-view/follows", test_follows);
  g_test_add_func ("/ui/sheets-view/remembers", test_remembers);
  g_test_add_func ("/ui/sheets-view/by-room", test_by_room);
  g_test_add_func ("/ui/sheets-view/larger", test_larger);
  g_test_add_func ("/ui/sheets-view/print", test_print);
  g_test_add_func ("/ui/sheets-view/printed", test_printed);
  g_test_add_func ("/ui/sheets-view/large", test_large);
  return g_test_run ();
}
