/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/windows.h"

#include "base/error.h"
#include "ui/desk.h"
#include "ui/exercise-drop.h"
#include "ui/formula-entry.h"
#include "ui/personal.h"
#include "ui/shelf-details.h"
#include "ui/shelf-filter.h"
#include "ui/tile.h"

#include <glib/gstdio.h>

static GtkWidget *
part_of (LapWindow *window, GType type, const char *id)
{
  GtkWidget *widget = windows_find (GTK_WIDGET (lap_window_shelf (window)), type, id);

  g_assert_nonnull (widget);
  return widget;
}

static void
type (LapWindow *window, const char *text)
{
  GtkWidget *search = part_of (window, GTK_TYPE_SEARCH_ENTRY, "search");

  gtk_editable_set_text (GTK_EDITABLE (search), text);
  windows_settle (window);
}

static LapExercise *
exercise (LapWindow *window, const char *id)
{
  return lap_catalogue_find (lap_document_catalogue (lap_window_document (window)), id);
}

static LapBlock *
block_of (LapWindow *window)
{
  return lap_window_context (window)->block;
}

static void
test_all (void)
{
  LapWindow *window = windows_demo ();
  LapShelfGrid *grid = lap_shelf_grid (lap_window_shelf (window));

  g_assert_cmpuint (lap_shelf_grid_n (grid), ==, lap_catalogue_n (lap_document_catalogue (lap_window_document (window))));
  g_assert_cmpuint (lap_shelf_grid_n_live (grid), >, 4);
  windows_close (window);
}

/* Tiles are made for what is seen and one row more at most, wherever it is scrolled to. */
static void
test_live_tiles (void)
{
  LapWindow *window = windows_demo ();
  LapShelfGrid *grid = lap_shelf_grid (lap_window_shelf (window));
  GtkAdjustment *down = gtk_scrollable_get_vadjustment (GTK_SCROLLABLE (grid));
  guint most = 0;

  for (double y = 0; y < gtk_adjustment_get_upper (down); y += 173) {
    gtk_adjustment_set_value (down, y);
    windows_settle (window);
    most = MAX (most, lap_shelf_grid_n_live (grid));
  }
  g_assert_cmpuint (lap_shelf_grid_n_all (grid), <=, most + 2);
  g_assert_cmpuint (most, <, lap_shelf_grid_n (grid) / 4);
  windows_close (window);
}

static void
test_search (void)
{
  LapWindow *window = windows_demo ();
  LapShelfGrid *grid = lap_shelf_grid (lap_window_shelf (window));
  GtkWidget *stack = part_of (window, GTK_TYPE_STACK, "stack");
  guint all = lap_shelf_grid_n (grid);

  type (window, "lunge");
  g_assert_cmpuint (lap_shelf_grid_n (grid), >, 2);
  g_assert_cmpuint (lap_shelf_grid_n (grid), <, 30);
  /* What Enter would add is the shortest name that begins so. */
  type (window, "squa");
  g_assert_cmpstr (lap_shelf_grid_current (grid)->id, ==, "squat");
  type (window, "no such thing");
  g_assert_cmpstr (gtk_stack_get_visible_child_name (GTK_STACK (stack)), ==, "nothing");
  g_assert_cmpstr (gtk_label_get_text (GTK_LABEL (part_of (window, GTK_TYPE_LABEL, "nothing"))), ==,
                   "Nothing called “no such thing”.");
  g_signal_emit_by_name (part_of (window, GTK_TYPE_BUTTON, "clear"), "clicked");
  windows_settle (window);
  g_assert_cmpstr (gtk_stack_get_visible_child_name (GTK_STACK (stack)), ==, "tiles");
  g_assert_cmpuint (lap_shelf_grid_n (grid), ==, all);
  windows_close (window);
}

/* Presses the chip whose accessible name is @label. */
static GtkWidget *
chip (LapWindow *window, GType type_of_chip, guint n)
{
  GtkWidget *child = gtk_widget_get_first_child (part_of (window, LAP_TYPE_SHELF_FILTER, "filter"));

  for (; child != NULL; child = gtk_widget_get_next_sibling (child))
    if (g_type_is_a (G_OBJECT_TYPE (child), type_of_chip) && n-- == 0)
      return child;
  g_assert_not_reached ();
}

static void
test_chips (void)
{
  LapWindow *window = windows_demo ();
  LapShelfGrid *grid = lap_shelf_grid (lap_window_shelf (window));
  LapShelfFilter *filter = LAP_SHELF_FILTER (part_of (window, LAP_TYPE_SHELF_FILTER, "filter"));
  guint all = lap_shelf_grid_n (grid), without_kit;
  GtkWidget *kit = chip (window, GTK_TYPE_TOGGLE_BUTTON, 0), *posture = chip (window, GTK_TYPE_MENU_BUTTON, 0), *check;

  gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (kit), TRUE);
  without_kit = lap_shelf_grid_n (grid);
  g_assert_cmpuint (without_kit, <, all);
  check = windows_find (GTK_WIDGET (gtk_menu_button_get_popover (GTK_MENU_BUTTON (posture))), GTK_TYPE_CHECK_BUTTON, NULL);
  gtk_check_button_set_active (GTK_CHECK_BUTTON (check), TRUE);
  g_assert_cmpuint (lap_shelf_grid_n (grid), <, without_kit);
  g_assert_cmpuint (lap_shelf_filter_get (filter).postures, ==, LAP_BIT (LAP_POSTURE_STANDING));
  gtk_test_accessible_assert_property (posture, GTK_ACCESSIBLE_PROPERTY_LABEL, "Posture: Standing");
  g_assert_true (lap_shelf_filter_is_on (filter));
  lap_shelf_filter_clear (filter);
  g_assert_false (lap_shelf_filter_is_on (filter));
  g_assert_cmpuint (lap_shelf_grid_n (grid), ==, all);
  windows_close (window);
}

/* Enter in the search adds what it found after the selection, timed like it, as one step; the next goes after that. */
static void
test_enter_adds (void)
{
  LapWindow *window = windows_demo ();
  g_autofree char *before = windows_text (window), *after = NULL;
  LapPart *part;
  guint n, at;

  windows_click_box (window, 9);
  part = LAP_PART (LAP_OBJECT (block_of (window))->owner);
  at = lap_list_find (part->blocks, block_of (window));
  n = lap_part_n (part);
  type (window, "burpee");
  g_signal_emit_by_name (part_of (window, GTK_TYPE_SEARCH_ENTRY, "search"), "activate");
  g_assert_cmpuint (lap_part_n (part), ==, n + 1);
  g_assert_cmpstr (lap_part_nth (part, at + 1)->exercise, ==, "burpee");
  g_assert_cmpint (lap_part_nth (part, at + 1)->work, ==, lap_part_nth (part, at)->work);
  g_assert_true (block_of (window) == lap_part_nth (part, at + 1));
  g_signal_emit_by_name (part_of (window, GTK_TYPE_SEARCH_ENTRY, "search"), "activate");
  g_assert_true (block_of (window) == lap_part_nth (part, at + 2));
  g_assert_true (windows_press (GTK_WIDGET (window), "<Control>z"));
  g_assert_true (windows_press (GTK_WIDGET (window), "<Control>z"));
  after = windows_text (window);
  g_assert_cmpstr (after, ==, before);
  windows_close (window);
}

static void
test_keys (void)
{
  LapWindow *window = windows_demo ();
  LapShelfGrid *grid = lap_shelf_grid (lap_window_shelf (window));
  LapExercise *first;
  guint n;

  g_assert_true (gtk_widget_child_focus (GTK_WIDGET (grid), GTK_DIR_TAB_FORWARD));
  windows_settle (window);
  first = lap_shelf_grid_current (grid);
  g_assert_true (windows_press (gtk_window_get_focus (GTK_WINDOW (window)), "Right"));
  g_assert_true (lap_shelf_grid_current (grid) != first);
  g_assert_true (windows_press (gtk_window_get_focus (GTK_WINDOW (window)), "Left"));
  g_assert_true (lap_shelf_grid_current (grid) == first);
  g_assert_true (windows_press (gtk_window_get_focus (GTK_WINDOW (window)), "End"));
  windows_settle (window);
  /* The last tile is in view and has the focus. */
  g_assert_true (gtk_window_get_focus (GTK_WINDOW (window)) == lap_shelf_grid_find (grid, lap_shelf_grid_current (grid)));
  g_assert_cmpfloat (gtk_adjustment_get_value (gtk_scrollable_get_vadjustment (GTK_SCROLLABLE (grid))), >, 1000);
  g_assert_true (windows_press (gtk_window_get_focus (GTK_WINDOW (window)), "Home"));
  windows_settle (window);
  g_assert_true (lap_shelf_grid_current (grid) == first);
  n = lap_session_n (lap_document_session (lap_window_document (window)));
  g_assert_true (windows_press (gtk_window_get_focus (GTK_WINDOW (window)), "Return"));
  g_assert_true (lap_document_is_modified (lap_window_document (window)));
  g_assert_cmpuint (lap_session_n (lap_document_session (lap_window_document (window))), ==, n);
  g_assert_cmpstr (block_of (window)->exercise, ==, first->id);
  windows_close (window);
}

static void
test_drag (void)
{
  LapWindow *window = windows_demo ();
  LapShelfGrid *grid = lap_shelf_grid (lap_window_shelf (window));
  g_autoptr (GListModel) controllers = gtk_widget_observe_controllers (GTK_WIDGET (grid));
  graphene_rect_t place;
  GtkWidget *tile;

  type (window, "squa");
  tile = lap_shelf_grid_find (grid, exercise (window, "squat"));
  g_assert_nonnull (tile);
  g_assert_true (gtk_widget_compute_bounds (tile, GTK_WIDGET (grid), &place));
  windows_click (GTK_WIDGET (grid), place.origin.x + 5, place.origin.y + 5);
  for (guint i = 0; i < g_list_model_get_n_items (controllers); i++) {
    g_autoptr (GObject) item = g_list_model_get_item (controllers, i);
    g_autoptr (GdkContentProvider) content = NULL;
    g_auto (GValue) value = G_VALUE_INIT;

    if (!GTK_IS_DRAG_SOURCE (item))
      continue;
    g_signal_emit_by_name (item, "prepare", place.origin.x + 5.0, place.origin.y + 5.0, &content);
    g_assert_nonnull (content);
    g_value_init (&value, LAP_TYPE_EXERCISE_DROP);
    g_assert_true (gdk_content_provider_get_value (content, &value, NULL));
    g_assert_cmpstr (((LapExerciseDrop *) g_value_get_boxed (&value))->id, ==, "squat");
  }
  windows_close (window);
}

/* Nothing moves between the two presses of a double click: what is told of the tile takes room where the pointer may be. */
static void
test_double_click (void)
{
  LapWindow *window = windows_demo ();
  LapShelfGrid *grid = lap_shelf_grid (lap_window_shelf (window));
  GtkWidget *details = part_of (window, LAP_TYPE_SHELF_DETAILS, NULL), *tile;
  graphene_rect_t before, after;
  GtkGesture *click;
  LapPart *part;
  guint n;

  windows_click_box (window, 9);
  part = LAP_PART (LAP_OBJECT (block_of (window))->owner);
  n = lap_part_n (part);
  tile = lap_shelf_grid_find (grid, exercise (window, "band-squat"));
  g_object_set (gtk_settings_get_default (), "gtk-double-click-time", G_MAXINT, NULL);
  g_assert_true (gtk_widget_compute_bounds (tile, GTK_WIDGET (window), &before));
  click = windows_controller (GTK_WIDGET (grid), GTK_TYPE_GESTURE_CLICK);
  g_assert_true (gtk_widget_compute_bounds (tile, GTK_WIDGET (grid), &after));
  g_signal_emit_by_name (click, "pressed", 1, after.origin.x + 5.0, after.origin.y + 5.0);
  windows_settle (window);
  g_assert_false (gtk_widget_get_visible (details));
  g_assert_true (lap_shelf_grid_current (grid) == exercise (window, "band-squat"));
  g_assert_true (gtk_widget_compute_bounds (tile, GTK_WIDGET (window), &after));
  g_assert_true (graphene_rect_equal (&before, &after));
  g_signal_emit_by_name (click, "pressed", 2, after.origin.x + 5.0, after.origin.y + 5.0);
  g_object_set (gtk_settings_get_default (), "gtk-double-click-time", 0, NULL);
  windows_settle (window);
  g_assert_true (gtk_widget_get_visible (details));
  g_assert_cmpuint (lap_part_n (part), ==, n + 1);
  windows_close (window);
}

static void
test_accessible (void)
{
  LapWindow *window = windows_demo ();
  LapShelfGrid *grid = lap_shelf_grid (lap_window_shelf (window));
  GtkWidget *tile;

  type (window, "squa");
  tile = lap_shelf_grid_find (grid, exercise (window, "squat"));
  gtk_test_accessible_assert_role (GTK_WIDGET (grid), GTK_ACCESSIBLE_ROLE_LIST);
  gtk_test_accessible_assert_role (tile, GTK_ACCESSIBLE_ROLE_LIST_ITEM);
  gtk_test_accessible_assert_property (tile, GTK_ACCESSIBLE_PROPERTY_LABEL, "Squat");
  gtk_test_accessible_assert_relation (tile, GTK_ACCESSIBLE_RELATION_SET_SIZE, (int) lap_shelf_grid_n (grid));
  windows_close (window);
}

/* One's own exercise is found by its name, has a figure, can be added, and goes by undoing. */
static void
test_own (void)
{
  LapWindow *window = windows_demo ();
  LapShelf *shelf = lap_window_shelf (window);
  LapShelfGrid *grid = lap_shelf_grid (shelf);
  g_autofree char *before = windows_text (window), *after = NULL;
  guint all = lap_shelf_grid_n (grid);

  lap_shelf_grid_go (grid, exercise (window, "squat"), FALSE);
  lap_shelf_make_own (shelf, "Kelpline squat");
  g_assert_cmpuint (lap_shelf_grid_n (grid), ==, all + 1);
  g_assert_cmpstr (lap_shelf_grid_current (grid)->id, ==, "own-kelpline-squat");
  windows_settle (window);
  type (window, "kelpline");
  g_assert_cmpuint (lap_shelf_grid_n (grid), ==, 1);
  g_signal_emit_by_name (part_of (window, GTK_TYPE_SEARCH_ENTRY, "search"), "activate");
  g_assert_cmpstr (block_of (window)->exercise, ==, "own-kelpline-squat");
  windows_settle (window);
  for (int i = 0; i < 2; i++)
    lap_document_undo (lap_window_document (window));
  after = windows_text (window);
  g_assert_cmpstr (after, ==, before);
  windows_close (window);
}

static GtkWidget *
deed (LapWindow *window, const char *label)
{
  GtkWidget *details = part_of (window, LAP_TYPE_SHELF_DETAILS, NULL);

  for (GtkWidget *w = gtk_widget_get_first_child (gtk_widget_get_last_child (gtk_widget_get_first_child (details))); w != NULL;
       w = gtk_widget_get_next_sibling (w))
    if (GTK_IS_BUTTON (w) && gtk_widget_get_visible (w) &&
        g_str_equal (gtk_label_get_text (GTK_LABEL (gtk_button_get_child (GTK_BUTTON (w)))), label))
      return w;
  return NULL;
}

/* The button of the details that says @label, an easier or harder one. */
static GtkWidget *
step (LapWindow *window, const char *label)
{
  GtkWidget *box = gtk_widget_get_first_child (part_of (window, LAP_TYPE_SHELF_DETAILS, NULL));

  for (GtkWidget *w = gtk_widget_get_first_child (box); w != NULL; w = gtk_widget_get_next_sibling (w))
    if (GTK_IS_BUTTON (w) && gtk_widget_get_visible (w) &&
        g_str_equal (gtk_label_get_text (GTK_LABEL (gtk_button_get_child (GTK_BUTTON (w)))), label))
      return w;
  return NULL;
}

/* The details lead along the chain of easier and harder exercises, both ways; at its ends there is one way. */
static void
test_chain (void)
{
  LapWindow *window = windows_demo ();
  LapShelfGrid *grid = lap_shelf_grid (lap_window_shelf (window));

  lap_shelf_grid_go (grid, exercise (window, "squat"), FALSE);
  windows_settle (window);
  g_assert_nonnull (step (window, "Harder: Pause squat"));
  g_signal_emit_by_name (step (window, "Easier: Chair squat"), "clicked");
  windows_settle (window);
  g_assert_cmpstr (lap_shelf_grid_current (grid)->id, ==, "chair-squat");
  g_assert_null (exercise (window, "chair-squat")->easier);
  g_signal_emit_by_name (step (window, "Harder: Squat"), "clicked");
  windows_settle (window);
  g_assert_cmpstr (lap_shelf_grid_current (grid)->id, ==, "squat");
  windows_close (window);
}

/* One's own is duplicated under a name that is asked for: all of it is there twice, with the same figure. */
static void
test_duplicate (void)
{
  LapWindow *window = windows_demo ();
  LapShelf *shelf = lap_window_shelf (window);
  LapExercise *one, *other;
  GtkWindow *dialog;

  lap_shelf_grid_go (lap_shelf_grid (shelf), exercise (window, "squat"), FALSE);
  lap_shelf_make_own (shelf, "Reef squat");
  windows_settle (window);
  g_signal_emit_by_name (deed (window, "Duplicate…"), "clicked");
  windows_settle (window);
  dialog = windows_dialog (window);
  gtk_editable_set_text (GTK_EDITABLE (windows_find (GTK_WIDGET (dialog), GTK_TYPE_ENTRY, NULL)), "Kelp squat");
  adw_message_dialog_response (ADW_MESSAGE_DIALOG (dialog), "name");
  g_object_unref (dialog);
  windows_settle (window);
  one = exercise (window, "own-reef-squat");
  other = exercise (window, "own-kelp-squat");
  g_assert_true (one != NULL && other != NULL);
  g_assert_cmpstr (other->name, ==, "Kelp squat");
  g_assert_cmpint (other->move, ==, one->move);
  g_assert_true (other->figure != NULL && one->figure != NULL);
  g_assert_cmpuint (lap_document_session (lap_window_document (window))->exercises->len, ==, 2);
  g_assert_true (lap_personal_forget (lap_personal (), "own-reef-squat", NULL));
  g_assert_true (lap_personal_forget (lap_personal (), "own-kelp-squat", NULL));
  windows_close (window);
}

/* What one session made another one offers, holds itself as soon as it uses it, and can do without. */
static void
test_personal (void)
{
  LapWindow *one = windows_demo (), *two;
  LapShelfGrid *grid;
  LapSession *session;

  lap_shelf_grid_go (lap_shelf_grid (lap_window_shelf (one)), exercise (one, "squat"), FALSE);
  lap_shelf_make_own (lap_window_shelf (one), "Tideline squat");
  windows_close (one);

  two = windows_demo ();
  grid = lap_shelf_grid (lap_window_shelf (two));
  session = lap_document_session (lap_window_document (two));
  type (two, "tideline");
  g_assert_cmpuint (lap_shelf_grid_n (grid), ==, 1);
  g_assert_null (exercise (two, "own-tideline-squat"));
  g_assert_nonnull (deed (two, "Forget"));
  g_assert_null (deed (two, "Edit…"));
  g_signal_emit_by_name (part_of (two, GTK_TYPE_SEARCH_ENTRY, "search"), "activate");
  windows_settle (two);
  g_assert_cmpstr (block_of (two)->exercise, ==, "own-tideline-squat");
  g_assert_cmpuint (session->exercises->len, ==, 1);
  g_assert_nonnull (deed (two, "Edit…"));
  lap_document_undo (lap_window_document (two));
  windows_settle (two);
  g_assert_true (session->exercises == NULL || session->exercises->len == 0);
  g_signal_emit_by_name (deed (two, "Forget"), "clicked");
  windows_settle (two);
  g_assert_cmpuint (lap_shelf_grid_n (grid), ==, 0);
  windows_close (two);
}

/* The dialog changes one thing at a time, refuses what a file could not say, and what it leaves is kept for others. */
static void
test_edit (void)
{
  LapWindow *window = windows_demo ();
  LapShelf *shelf = lap_window_shelf (window);
  LapDocument *document = lap_window_document (window);
  g_autoptr (GtkWindow) dialog = NULL;
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin (), under = NULL;
  GtkWidget *name;

  lap_shelf_grid_go (lap_shelf_grid (shelf), exercise (window, "squat"), FALSE);
  lap_shelf_make_own (shelf, "Ebb squat");
  windows_settle (window);
  g_signal_emit_by_name (deed (window, "Edit…"), "clicked");
  windows_settle (window);
  dialog = windows_dialog (window);
  name = windows_find (GTK_WIDGET (dialog), ADW_TYPE_ENTRY_ROW, NULL);
  gtk_editable_set_text (GTK_EDITABLE (name), "Flood squat");
  g_signal_emit_by_name (name, "apply");
  g_assert_cmpstr (exercise (window, "own-ebb-squat")->name, ==, "Flood squat");
  gtk_editable_set_text (GTK_EDITABLE (name), "");
  g_signal_emit_by_name (name, "apply");
  g_assert_cmpstr (exercise (window, "own-ebb-squat")->name, ==, "Flood squat");
  g_assert_cmpstr (gtk_editable_get_text (GTK_EDITABLE (name)), ==, "Flood squat");
  gtk_window_close (dialog);
  g_clear_object (&dialog);
  under = lap_personal_under (lap_personal (), builtin);
  g_assert_cmpstr (lap_catalogue_find (under, "own-ebb-squat")->name, ==, "Flood squat");
  lap_document_undo (document);
  g_assert_cmpstr (exercise (window, "own-ebb-squat")->name, ==, "Ebb squat");
  g_assert_true (lap_personal_forget (lap_personal (), "own-ebb-squat", NULL));
  windows_close (window);
}

/* A file of one's own exercises that can't be read is left alone, and keeping one says so. */
static void
test_personal_file (void)
{
  g_autofree char *path = g_build_filename (windows_data_folder (), "lapwing", "exercises.lapwing", NULL), *now = NULL;
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (GError) error = NULL;

  g_assert_true (g_file_set_contents (path, "{ no", -1, NULL));
  g_assert_false (lap_personal_keep (lap_personal (), lap_catalogue_find (builtin, "squat"), &error));
  g_assert_error (error, LAP_ERROR, LAP_ERROR_INVALID);
  g_assert_true (g_file_get_contents (path, &now, NULL, NULL));
  g_assert_cmpstr (now, ==, "{ no");
  g_assert_cmpint (g_unlink (path), ==, 0);
}

static void
test_shown (void)
{
  LapWindow *window = windows_demo ();
  GtkWidget *shelf = GTK_WIDGET (lap_window_shelf (window)), *search = part_of (window, GTK_TYPE_SEARCH_ENTRY, "search");

  g_assert_true (gtk_widget_get_mapped (shelf));
  gtk_widget_activate_action (GTK_WIDGET (window), "win.catalogue", NULL);
  windows_settle (window);
  g_assert_false (gtk_widget_get_mapped (shelf));
  gtk_widget_activate_action (GTK_WIDGET (window), "win.find-exercise", NULL);
  windows_settle (window);
  g_assert_true (gtk_widget_get_mapped (shelf));
  g_assert_true (gtk_widget_is_ancestor (gtk_window_get_focus (GTK_WINDOW (window)), search));
  windows_close (window);
}

/* A formula that can't be read changes nothing and says what was expected; one that can is one step. */
static void
test_formula (void)
{
  LapWindow *window = windows_demo ();
  GtkWidget *formula = windows_find (GTK_WIDGET (window), LAP_TYPE_FORMULA_ENTRY, NULL), *button, *entry;
  LapDocument *document = lap_window_document (window);
  g_autofree char *before = windows_text (window), *after = NULL;

  button = windows_find (formula, GTK_TYPE_BUTTON, NULL);
  gtk_widget_activate_action (GTK_WIDGET (window), "win.formula", NULL);
  windows_settle (window);
  entry = windows_find (formula, GTK_TYPE_ENTRY, NULL);
  g_assert_cmpstr (gtk_editable_get_text (GTK_EDITABLE (entry)), ==, "40/20 × 10 × 2");
  gtk_editable_set_text (GTK_EDITABLE (entry), "forty");
  g_signal_emit_by_name (entry, "activate");
  g_assert_true (gtk_widget_has_css_class (entry, "error"));
  g_assert_false (lap_document_is_modified (document));
  gtk_editable_set_text (GTK_EDITABLE (entry), "45/15 x 8 x 3");
  g_signal_emit_by_name (entry, "activate");
  g_assert_cmpstr (lap_history_undo_label (lap_document_history (document)), ==, "Reshape the part");
  gtk_test_accessible_assert_property (button, GTK_ACCESSIBLE_PROPERTY_LABEL,
                                       "Formula: 45 s work, 15 s rest × 8 exercises × 3 rounds");
  lap_document_undo (document);
  after = windows_text (window);
  g_assert_cmpstr (after, ==, before);
  windows_settle (window);
  windows_close (window);
}

/* In a narrow window the panes are out of the way until they are asked for, one at a time, and Escape sends them away. */
static void
test_folds (void)
{
  static const char ui[] =
    "<interface><object class='GtkWindow' id='window'><property name='default-width'>420</property>"
    "<property name='default-height'>300</property><child><object class='LapDesk' id='desk'>"
    "<child type='start'><object class='GtkButton' id='start'><property name='width-request'>200</property></object></child>"
    "<child type='content'><object class='GtkButton' id='content'/></child>"
    "<child type='end'><object class='GtkButton' id='end'><property name='width-request'>250</property></object></child>"
    "</object></child></object></interface>";
  g_autoptr (GtkBuilder) builder = NULL;
  GtkWidget *window, *start, *content, *end;
  LapDesk *desk;

  g_type_ensure (LAP_TYPE_DESK);
  builder = gtk_builder_new_from_string (ui, -1);
  window = GTK_WIDGET (gtk_builder_get_object (builder, "window"));
  desk = LAP_DESK (gtk_builder_get_object (builder, "desk"));
  start = GTK_WIDGET (gtk_builder_get_object (builder, "start"));
  content = GTK_WIDGET (gtk_builder_get_object (builder, "content"));
  end = GTK_WIDGET (gtk_builder_get_object (builder, "end"));
  gtk_window_present (GTK_WINDOW (window));
  gtk_test_widget_wait_for_draw (window);
  g_assert_true (lap_desk_is_folded (desk, LAP_DESK_START) && lap_desk_is_folded (desk, LAP_DESK_END));
  g_assert_false (gtk_widget_get_mapped (start) || gtk_widget_get_mapped (end));
  g_assert_cmpint (gtk_widget_get_width (content), >, gtk_widget_get_width (GTK_WIDGET (desk)) - 50); /* its padding */
  lap_desk_set_shown (desk, LAP_DESK_START, TRUE);
  gtk_test_widget_wait_for_draw (window);
  g_assert_true (gtk_widget_get_mapped (start));
  g_assert_cmpint (gtk_widget_get_width (start), <, gtk_widget_get_width (GTK_WIDGET (desk)));
  lap_desk_set_shown (desk, LAP_DESK_END, TRUE);
  gtk_test_widget_wait_for_draw (window);
  g_assert_true (gtk_widget_get_mapped (end));
  g_assert_false (gtk_widget_get_mapped (start));
  g_assert_true (windows_press (end, "Escape"));
  gtk_test_widget_wait_for_draw (window);
  g_assert_false (gtk_widget_get_mapped (end));
  gtk_window_destroy (GTK_WINDOW (window));
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/shelf/all", test_all);
  g_test_add_func ("/ui/shelf/live-tiles", test_live_tiles);
  g_test_add_func ("/ui/shelf/search", test_search);
  g_test_add_func ("/ui/shelf/chips", test_chips);
  g_test_add_func ("/ui/shelf/enter-adds", test_enter_adds);
  g_test_add_func ("/ui/shelf/keys", test_keys);
  g_test_add_func ("/ui/shelf/drag", test_drag);
  g_test_add_func ("/ui/shelf/double-click", test_double_click);
  g_test_add_func ("/ui/shelf/accessible", test_accessible);
  g_test_add_func ("/ui/shelf/own", test_own);
  g_test_add_func ("/ui/shelf/chain", test_chain);
  g_test_add_func ("/ui/shelf/duplicate", test_duplicate);
  g_test_add_func ("/ui/shelf/personal", test_personal);
  g_test_add_func ("/ui/shelf/edit", test_edit);
  g_test_add_func ("/ui/shelf/personal-file", test_personal_file);
  g_test_add_func ("/ui/shelf/shown", test_shown);
  g_test_add_func ("/ui/shelf/formula", test_formula);
  g_test_add_func ("/ui/shelf/folds", test_folds);
  return g_test_run ();
}
