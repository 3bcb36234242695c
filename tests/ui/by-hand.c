/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The main part of the demo is made out of an empty session by somebody with a mouse and no keyboard, and by somebody
 * with a keyboard and no mouse, through the X server. Both save the same bytes; the id of the session is in the file
 * that both begin with, so that it is the same, too.
 */
#include "ui/rows.h"
#include "ui/windows.h"

#include "store/documents.h"
#include "store/folder.h"
#include "ui/score/parts.h"
#include "ui/score/strip.h"

#include <string.h>

typedef struct {
  char        *path;
  LapWindow   *window;
  LapDocument *demo;
  LapPart     *model; /* its main part */
} Hand;

/* Where two neighbours of the model are put in the wrong order at first. */
#define SWAPPED 3

static LapScoreContext *
context_of (Hand *hand)
{
  return lap_window_context (hand->window);
}

static LapPart *
part_of (Hand *hand)
{
  return lap_session_nth (lap_document_session (lap_window_document (hand->window)), 0);
}

static GtkWidget *
blocks_of (Hand *hand)
{
  return GTK_WIDGET (windows_blocks (hand->window));
}

static LapExercise *
exercise_of (Hand *hand, const char *id)
{
  return lap_catalogue_find (lap_document_catalogue (lap_window_document (hand->window)), id);
}

static const char *
model_exercise (Hand *hand, guint i)
{
  return lap_part_nth (hand->model, i)->exercise;
}

static void
find_model (Hand *hand)
{
  g_autofree char *path = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", "thirty-on-the-mat.lapwing", NULL);
  g_autoptr (GError) error = NULL;
  LapSession *session;

  hand->demo = lap_document_read (path, &error);
  g_assert_no_error (error);
  session = lap_document_session (hand->demo);
  for (guint i = 0; hand->model == NULL; i++)
    if (lap_session_nth (session, i)->kind == LAP_PART_MAIN)
      hand->model = lap_session_nth (session, i);
}

static void
hand_init (Hand *hand, const char *folder, const char *name)
{
  static const char empty[] =
    "{\"format\": \"lapwing-session\", \"version\": 1, \"id\": \"6f1c2a34-0000-4000-8000-000000000004\","
    " \"title\": \"Made by hand\", \"parts\": []}";
  g_autoptr (GError) error = NULL;

  hand->path = g_build_filename (folder, name, NULL);
  g_file_set_contents (hand->path, empty, -1, &error);
  g_assert_no_error (error);
  hand->window = windows_open (hand->path);
  find_model (hand);
  hands_on (GTK_WINDOW (hand->window));
}

static gboolean
is_clean (gpointer document)
{
  return lap_document_state (document) == LAP_DOCUMENT_CLEAN;
}

static GtkWidget *
field (Hand *hand, GType type, const char *id)
{
  GtkWidget *widget = windows_find (GTK_WIDGET (hand->window), type, id);

  g_assert_nonnull (widget);
  return widget;
}

/* The tile of @id, which has to be looked for from the top of the catalogue on. */
static GtkWidget *
find_tile (Hand *hand, const char *id)
{
  LapShelfGrid *grid = lap_shelf_grid (lap_window_shelf (hand->window));
  GtkWidget *scrolled = gtk_widget_get_ancestor (GTK_WIDGET (grid), GTK_TYPE_SCROLLED_WINDOW), *tile;
  GtkAdjustment *down = gtk_scrolled_window_get_vadjustment (GTK_SCROLLED_WINDOW (scrolled));

  hands_point (scrolled);
  while (gtk_adjustment_get_value (down) > 0)
    hands_wheel (-10);
  while ((tile = lap_shelf_grid_find (grid, exercise_of (hand, id))) == NULL) {
    g_assert_cmpfloat (gtk_adjustment_get_value (down) + gtk_adjustment_get_page_size (down), <,
                       gtk_adjustment_get_upper (down));
    hands_wheel (4);
  }
  rows_wheel_to (tile);
  return lap_shelf_grid_find (grid, exercise_of (hand, id));
}

static guint
box_of (Hand *hand, guint block, int round)
{
  return lap_score_find (context_of (hand)->score, 0, block, round);
}

/* px of the lane where @block is in @round, after a click on the overview where it would not be in view. */
static double
travel_to (Hand *hand, guint block, int round)
{
  LapScoreContext *context = context_of (hand);
  guint box = box_of (hand, block, round);
  LapPlaced placed = lap_score_place (context->score, context->axis, box);
  GtkWidget *overview = field (hand, LAP_TYPE_STRIP, NULL);

  if (placed.x < 0 || placed.x + placed.width > context->axis->view) {
    hands_move (overview, gtk_widget_get_width (overview) * (double) context->score->boxes[box].start /
                            context->score->timeline->length, gtk_widget_get_height (overview) / 2.0);
    hands_click (1, 1);
    placed = lap_score_place (context->score, context->axis, box);
  }
  g_assert_cmpint (placed.x, >=, 0);
  g_assert_cmpint (placed.x, <, context->axis->view);
  return placed.x + placed.body / 2.0;
}

static void
click_block (Hand *hand, guint block, int round, guint button)
{
  hands_move (blocks_of (hand), travel_to (hand, block, round), 30);
  hands_click (button, 1);
}

static void
choose_from_menu (Hand *hand, guint block, int round, const char *text)
{
  GtkWidget *menu;

  click_block (hand, block, round, 3);
  menu = windows_find (blocks_of (hand), GTK_TYPE_POPOVER_MENU, NULL);
  g_assert_nonnull (menu);
  hands_until (rows_is_mapped, menu);
  rows_click_text (menu, text);
}

/* A tile carried to x of the blocks. */
static void
carry_tile (Hand *hand, const char *id, double x)
{
  GtkWidget *tile = find_tile (hand, id);

  hands_drag (tile, gtk_widget_get_width (tile) / 2.0, gtk_widget_get_height (tile) / 2.0, blocks_of (hand), x, 30);
}

/* What the menu of the window has. */
static void
mouse_menu (Hand *hand, const char *text)
{
  GtkWidget *menu = field (hand, GTK_TYPE_MENU_BUTTON, "menu_button"), *popover;

  hands_point (menu);
  hands_click (1, 1);
  popover = GTK_WIDGET (gtk_menu_button_get_popover (GTK_MENU_BUTTON (menu)));
  hands_until (rows_is_mapped, popover);
  rows_click_text (popover, text);
}

static gboolean
offers_whole (gpointer window)
{
  return rows_find_text (window, "See the whole session") != NULL;
}

static void
see_whole (Hand *hand)
{
  mouse_menu (hand, "Zoom");
  hands_until (offers_whole, hand->window);
  rows_click_text (GTK_WIDGET (hand->window), "See the whole session");
}

static gboolean
has_three (gpointer part)
{
  return lap_part_n (part) == 3;
}

static gboolean
jumps (gpointer block)
{
  const LapChange *change = lap_changes_find (LAP_BLOCK (block)->in_round, 2);

  return change != NULL && g_strcmp0 (change->exercise, "squat-jump") == 0;
}

/* One by double clicks, one carried to where the second ends, two in the wrong order and one of them carried on. */
static void
mouse_blocks (Hand *hand)
{
  guint n = lap_part_n (hand->model);

  for (guint i = 0; i < n; i++) {
    guint which = i == SWAPPED ? i + 1 : i == SWAPPED + 1 ? i - 1 : i;

    if (i == 2) {
      double end;

      see_whole (hand);
      end = lap_axis_x (context_of (hand)->axis, context_of (hand)->score->boxes[box_of (hand, 1, 1)].end);
      carry_tile (hand, model_exercise (hand, which), end - 1);
      hands_until (has_three, part_of (hand));
      continue;
    }
    hands_point (find_tile (hand, model_exercise (hand, which)));
    hands_click (1, 2);
    g_assert_cmpuint (lap_part_n (part_of (hand)), ==, i + 1);
  }
}

static void
mouse_swap (Hand *hand)
{
  double from, to;

  see_whole (hand);
  from = travel_to (hand, SWAPPED, 1);
  to = travel_to (hand, SWAPPED + 1, 1);
  hands_drag (blocks_of (hand), from, 30, blocks_of (hand), to + 30, 30);
  g_assert_cmpstr (lap_part_nth (part_of (hand), SWAPPED)->exercise, ==, model_exercise (hand, SWAPPED));
}

static LapPartsLane *
parts_of (Hand *hand)
{
  return LAP_PARTS_LANE (windows_find (GTK_WIDGET (hand->window), LAP_TYPE_PARTS_LANE, NULL));
}

static guint
find_bracket (Hand *hand, LapBracketKind kind)
{
  const LapBrackets *brackets = lap_parts_lane_brackets (parts_of (hand));

  for (guint i = 0; i < brackets->n; i++)
    if (brackets->all[i].kind == kind)
      return i;
  g_assert_not_reached ();
}

static void
choose_from_part (Hand *hand, const char *text)
{
  GtkWidget *lane = GTK_WIDGET (parts_of (hand)), *menu;

  see_whole (hand);
  hands_point (lap_parts_lane_find (LAP_PARTS_LANE (lane), find_bracket (hand, LAP_BRACKET_PART)));
  hands_click (3, 1);
  menu = windows_find (lane, GTK_TYPE_POPOVER_MENU, NULL);
  g_assert_nonnull (menu);
  hands_until (rows_is_mapped, menu);
  rows_click_text (menu, text);
}

/* Takes the rest between the rounds, which is none yet, by its grip and draws it as long as @seconds. */
static void
mouse_draw_rest (Hand *hand, int seconds)
{
  GtkWidget *lane = GTK_WIDGET (parts_of (hand)), *grip;
  const LapAxis *axis = context_of (hand)->axis;
  graphene_rect_t bounds;
  double x, y;

  travel_to (hand, 0, 2);
  grip = lap_parts_lane_find (LAP_PARTS_LANE (lane), find_bracket (hand, LAP_BRACKET_BETWEEN));
  g_assert_true (gtk_widget_compute_bounds (grip, lane, &bounds));
  x = bounds.origin.x + bounds.size.width / 2;
  y = bounds.origin.y + bounds.size.height / 2;
  hands_drag (lane, x, y, lane, x + lap_axis_x (axis, seconds) - lap_axis_x (axis, 0), y);
}

static guint
find_block (Hand *hand, const char *id)
{
  for (guint i = 0; i < lap_part_n (hand->model); i++)
    if (g_str_equal (model_exercise (hand, i), id))
      return i;
  g_assert_not_reached ();
}

static void
mouse_change_of_sides (Hand *hand)
{
  guint plank = find_block (hand, "side-plank");
  GtkWidget *spin, *button;

  click_block (hand, plank, 1, 1);
  spin = field (hand, GTK_TYPE_SPIN_BUTTON, "change");
  if (!gtk_widget_get_mapped (spin)) {
    hands_point (field (hand, GTK_TYPE_TOGGLE_BUTTON, "pane_toggle"));
    hands_click (1, 1);
    hands_until (rows_is_mapped, spin);
  }
  rows_wheel_to (spin);
  button = gtk_widget_get_last_child (spin);
  for (int i = 0; i < lap_part_nth (hand->model, plank)->switch_seconds; i++) {
    hands_point (button);
    hands_click (1, 1);
  }
}

static void
by_mouse (Hand *hand)
{
  double x;

  mouse_blocks (hand);
  mouse_swap (hand);
  choose_from_part (hand, "One more round");
  mouse_draw_rest (hand, hand->model->round_rest);
  for (int i = 0; i < hand->model->rest_after; i += 5)
    choose_from_part (hand, "Longer rest after the part");
  choose_from_menu (hand, 0, 2, "Only in round 2");
  x = travel_to (hand, 0, 2);
  carry_tile (hand, "squat-jump", x);
  hands_until (jumps, lap_part_nth (part_of (hand), 0));
  mouse_change_of_sides (hand);
  mouse_menu (hand, "Save");
  hands_until (is_clean, lap_window_document (hand->window));
}

static void
tab_to (GtkWidget *widget)
{
  hands_press_until ("Tab", rows_has_focus, widget);
}

static void
press_times (const char *keys, guint n)
{
  for (guint i = 0; i < n; i++)
    hands_press (keys);
}

/* The selected block's exercise, by the name it has in the catalogue. */
static void
choose_by_keys (Hand *hand, const char *id)
{
  GtkWidget *row = field (hand, ADW_TYPE_ACTION_ROW, "exercise_row"), *popover = field (hand, GTK_TYPE_POPOVER, "popover");

  tab_to (row);
  hands_press ("Return");
  hands_until (rows_is_mapped, popover);
  hands_type (lap_exercise_name (exercise_of (hand, id)));
  hands_press ("Return");
  tab_to (blocks_of (hand));
}

/* All but the last by a formula, then each its exercise; the last one is looked for in the catalogue. */
static void
key_blocks (Hand *hand)
{
  guint n = lap_part_n (hand->model);
  g_autofree char *formula = g_strdup_printf ("40/20 x %u x 2", n - 1);

  hands_press ("<Control>t");
  hands_type (formula);
  hands_press ("Return");
  tab_to (blocks_of (hand));
  hands_press ("Home");
  for (guint i = 0; i + 1 < n; i++) {
    choose_by_keys (hand, model_exercise (hand, i == SWAPPED ? i + 1 : i == SWAPPED + 1 ? i - 1 : i));
    if (i + 2 < n)
      hands_press ("Right");
  }
  hands_press ("<Control>k");
  hands_type (lap_exercise_name (exercise_of (hand, model_exercise (hand, n - 1))));
  hands_press ("Return");
  g_assert_cmpuint (lap_part_n (part_of (hand)), ==, n);
  tab_to (blocks_of (hand));
}

static void
key_change_of_sides (Hand *hand)
{
  guint plank = find_block (hand, "side-plank");
  g_autofree char *seconds = g_strdup_printf ("%d", lap_part_nth (hand->model, plank)->switch_seconds);

  hands_press ("Home");
  press_times ("Right", plank);
  tab_to (field (hand, GTK_TYPE_SPIN_BUTTON, "change"));
  hands_press ("<Control>a");
  hands_type (seconds);
  hands_press ("Return");
}

static void
by_keys (Hand *hand)
{
  key_blocks (hand);
  hands_press ("Home");
  press_times ("Right", SWAPPED);
  hands_press ("<Alt>Right");
  hands_press ("Home");
  hands_press ("Page_Down");
  hands_press ("<Control>l");
  choose_by_keys (hand, "squat-jump");
  for (int i = 0; i < hand->model->round_rest; i += 5)
    hands_press ("<Alt>Up");
  for (int i = 0; i < hand->model->rest_after; i += 5)
    hands_press ("<Control><Shift>Up");
  key_change_of_sides (hand);
  hands_press ("<Control>s");
  hands_until (is_clean, lap_window_document (hand->window));
}

/* What is done in @part, second by second. What differs in a round may say so in more words than the demo's file. */
static char *
told (LapDocument *document, LapPart *part)
{
  const LapTimeline *timeline = lap_document_timeline (document);
  g_autoptr (GString) text = g_string_new (NULL);

  for (guint i = 0; i < timeline->n; i++) {
    const LapInterval *interval = &timeline->intervals[i];
    const LapTask *task = lap_timeline_task (timeline, interval);

    if (timeline->parts[interval->part].part == part)
      g_string_append_printf (text, "%d, %d s: %s %d\n", interval->kind, interval->seconds,
                              task != NULL ? task->wanted : "", interval->side);
  }
  return g_strdup (text->str);
}

/* Returns what was saved. */
static char *
finish (Hand *hand)
{
  g_autofree char *made = told (lap_window_document (hand->window), part_of (hand));
  g_autofree char *model = told (hand->demo, hand->model);
  g_autoptr (GError) error = NULL;
  char *text = NULL;

  g_assert_cmpstr (made, ==, model);
  windows_close (hand->window);
  g_file_get_contents (hand->path, &text, NULL, &error);
  g_assert_no_error (error);
  g_clear_object (&hand->demo);
  g_clear_pointer (&hand->path, g_free);
  hand->model = NULL;
  return text;
}

static void
test_by_hand (void)
{
  char *folder = folder_new ();
  g_autofree char *mouse = NULL, *keys = NULL;
  Hand hand = { 0 };

  hand_init (&hand, folder, "mouse.lapwing");
  by_mouse (&hand);
  mouse = finish (&hand);
  hand_init (&hand, folder, "keyboard.lapwing");
  by_keys (&hand);
  keys = finish (&hand);
  g_assert_cmpstr (mouse, ==, keys);
  folder_remove (folder);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/by-hand/demo", test_by_hand);
  return g_test_run ();
}
