/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Widgets are bound to boxes as soon as the context changes: those that are shown on keep their widget, the rest is
 * bound to widgets that are free. So scrolling moves widgets and makes none, and the focus stays on its block as long
 * as that exists. size_allocate() places them. It binds again, for the view may have been laid out meanwhile, but has
 * nothing to do after a scroll or zoom: a child that comes, or takes the focus no more, asks all above it for a new
 * size, and what asks for that in the middle of a layout is drawn before it has one.
 */
#include "ui/score/ground.h"
#include "ui/score/blocks.h"

#include "ui/palette.h"
#include "ui/score/words.h"
#include "ui/shortcuts.h"
#include "ui/score/block.h"
#include "ui/score/captions.h"
#include "ui/score/drag.h"
#include "ui/score/drop.h"
#include "ui/score/marks.h"
#include "ui/score/menu.h"
#include "ui/score/paint.h"
#include "ui/score/part-verbs.h"
#include "ui/score/preview.h"
#include "ui/score/verbs.h"

#include <glib/gi18n-lib.h>

struct _LapBlocksLane {
  LapLane     parent_instance;
  GHashTable *live; /* box -> LapBlockWidget that shows it */
  GPtrArray  *all;  /* LapBlockWidget, transfer none: children */
  GtkWidget  *menu;    /* the last that was opened, a child, or NULL */
  guint       pressed; /* the box under a button that hasn't been released, or LAP_NO_BOX */
};

G_DEFINE_FINAL_TYPE (LapBlocksLane, lap_blocks_lane, LAP_TYPE_LANE)

/* px a box keeps when it has the focus or is selected, however small it is. */
#define LEAST_WIDTH LAP_MERGE_BELOW

static LapBlockWidget *
free_widget (LapBlocksLane *self)
{
  LapBlockWidget *widget;

  for (guint i = 0; i < self->all->len; i++) {
    widget = g_ptr_array_index (self->all, i);
    if (lap_block_widget_box (widget) == LAP_NO_BOX)
      return widget;
  }
  widget = LAP_BLOCK_WIDGET (lap_block_widget_new (lap_lane_context (LAP_LANE (self))));
  gtk_widget_set_parent (GTK_WIDGET (widget), GTK_WIDGET (self));
  g_ptr_array_add (self->all, widget);
  return widget;
}

/* The block that has the focus, or NULL: the menu is a child as well. */
static LapBlockWidget *
focused (LapBlocksLane *self)
{
  GtkWidget *focus = gtk_widget_get_focus_child (GTK_WIDGET (self));

  return focus != NULL && LAP_IS_BLOCK_WIDGET (focus) ? LAP_BLOCK_WIDGET (focus) : NULL;
}

static int
by_number (gconstpointer a, gconstpointer b)
{
  guint x = *(const guint *) a, y = *(const guint *) b;

  return (x > y) - (x < y);
}

/* The boxes that need a widget, in the order of time; those that are kept may be in it twice. */
static GArray *
wanted_boxes (LapBlocksLane *self)
{
  LapScoreContext *context = lap_lane_context (LAP_LANE (self));
  GArray *wanted = g_array_new (FALSE, FALSE, sizeof (guint));
  LapBlockWidget *focus = focused (self);
  guint kept[] = { lap_score_selected (context), LAP_NO_BOX }, first, end;

  lap_score_visible (context->score, context->axis, &first, &end);
  for (guint i = first; i < end; i++)
    if (lap_score_place (context->score, context->axis, i).width >= LAP_MERGE_BELOW)
      g_array_append_val (wanted, i);
  if (focus != NULL)
    kept[1] = lap_block_widget_box (focus);
  for (guint i = 0; i < G_N_ELEMENTS (kept); i++)
    if (kept[i] != LAP_NO_BOX)
      g_array_append_val (wanted, kept[i]);
  g_array_sort (wanted, by_number);
  return wanted;
}

static void
let_go (LapBlockWidget *widget)
{
  lap_block_widget_bind (widget, LAP_NO_BOX, NULL, FALSE);
  gtk_widget_set_child_visible (GTK_WIDGET (widget), FALSE);
}

static void
release (LapBlocksLane *self, GArray *wanted)
{
  GHashTableIter iter;
  gpointer box, widget;

  g_hash_table_iter_init (&iter, self->live);
  while (g_hash_table_iter_next (&iter, &box, &widget)) {
    if (g_array_binary_search (wanted, &(guint) { GPOINTER_TO_UINT (box) }, by_number, NULL))
      continue;
    let_go (widget);
    g_hash_table_iter_remove (&iter);
  }
}

static void
bind (LapBlocksLane *self, guint box)
{
  LapScoreContext *context = lap_lane_context (LAP_LANE (self));
  LapBlockWidget *widget = g_hash_table_lookup (self->live, GUINT_TO_POINTER (box));
  LapPlaced placed = lap_score_place (context->score, context->axis, box);

  if (widget == NULL) {
    widget = free_widget (self);
    g_hash_table_insert (self->live, GUINT_TO_POINTER (box), widget);
    gtk_widget_set_child_visible (GTK_WIDGET (widget), TRUE);
  }
  lap_block_widget_bind (widget, box, &placed, FALSE);
  lap_block_widget_select (widget, lap_score_is_chosen (context, box));
}

static void
place (LapBlocksLane *self, guint box, int height)
{
  LapScoreContext *context = lap_lane_context (LAP_LANE (self));
  LapPlaced placed = lap_score_place (context->score, context->axis, box);
  GtkWidget *widget = lap_blocks_lane_find (self, box);
  int width = MAX (placed.width, LEAST_WIDTH);

  gtk_widget_measure (widget, GTK_ORIENTATION_HORIZONTAL, -1, NULL, NULL, NULL, NULL);
  gtk_widget_size_allocate (widget, &(GtkAllocation) { placed.x, 0, width, height }, -1);
}

/* Whoever reads the children one after another, such as a screen reader, reads them in the order of time. While the
 * strip scrolls that moves only what has come into view. Returns @box's widget. */
static GtkWidget *
put_in_order (LapBlocksLane *self, guint box, GtkWidget *before)
{
  GtkWidget *widget = lap_blocks_lane_find (self, box), *previous = gtk_widget_get_prev_sibling (widget);

  while (previous != NULL && (!LAP_IS_BLOCK_WIDGET (previous) ||
                              lap_block_widget_box (LAP_BLOCK_WIDGET (previous)) == LAP_NO_BOX))
    previous = gtk_widget_get_prev_sibling (previous);
  if (previous != before)
    gtk_widget_insert_after (widget, GTK_WIDGET (self), before);
  return widget;
}

/* Binds what is to be shown. */
static void
bind_all (LapBlocksLane *self)
{
  g_autoptr (GArray) wanted = wanted_boxes (self);
  GtkWidget *before = NULL;

  release (self, wanted);
  for (guint i = 0; i < wanted->len; i++)
    if (i == 0 || g_array_index (wanted, guint, i) != g_array_index (wanted, guint, i - 1)) {
      bind (self, g_array_index (wanted, guint, i));
      before = put_in_order (self, g_array_index (wanted, guint, i), before);
    }
}

static void
lap_blocks_lane_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  LapBlocksLane *self = LAP_BLOCKS_LANE (widget);
  GHashTableIter iter;
  gpointer box;

  bind_all (self);
  g_hash_table_iter_init (&iter, self->live);
  while (g_hash_table_iter_next (&iter, &box, NULL))
    place (self, GPOINTER_TO_UINT (box), height);
  if (self->menu != NULL)
    gtk_popover_present (GTK_POPOVER (self->menu));
  GTK_WIDGET_CLASS (lap_blocks_lane_parent_class)->size_allocate (widget, width, height, baseline);
}

/* After an edit a block may be another box than before; its widget goes along, and the focus with that. */
static void
follow_plan (LapBlocksLane *self)
{
  g_hash_table_remove_all (self->live);
  for (guint i = 0; i < self->all->len; i++) {
    LapBlockWidget *widget = g_ptr_array_index (self->all, i);
    guint box = lap_block_widget_locate (widget);

    if (box == LAP_NO_BOX || g_hash_table_contains (self->live, GUINT_TO_POINTER (box)))
      let_go (widget);
    else {
      lap_block_widget_bind (widget, box, NULL, TRUE);
      g_hash_table_insert (self->live, GUINT_TO_POINTER (box), widget);
    }
  }
}

static void
focus_box (LapBlocksLane *self, guint box)
{
  int height = gtk_widget_get_height (GTK_WIDGET (self));

  /* It must exist to take the focus; the allocation that follows keeps what has it. */
  bind (self, box);
  place (self, box, height > 0 ? height : lap_block_widget_height (lap_text_line (GTK_WIDGET (self))));
  gtk_widget_grab_focus (lap_blocks_lane_find (self, box));
}

/* Who works with the keys is never left without a place: when the block with the focus has gone, what is selected has
 * it, else what stands where that was, else the empty lane. @was is the box it had. */
static void
hold_focus (LapBlocksLane *self, guint was)
{
  LapScoreContext *context = lap_lane_context (LAP_LANE (self));
  guint box = lap_score_selected (context);

  if (box == LAP_NO_BOX && was < context->score->n && lap_box_is_block (&context->score->boxes[was]))
    box = was;
  if (box == LAP_NO_BOX)
    box = lap_score_step (context->score, LAP_NO_BOX, -1);
  gtk_widget_set_focusable (GTK_WIDGET (self), box == LAP_NO_BOX);
  if (box != LAP_NO_BOX)
    focus_box (self, box);
  else
    gtk_widget_grab_focus (GTK_WIDGET (self));
}

static void
lap_blocks_lane_update (LapLane *lane, LapScoreChange change)
{
  LapBlocksLane *self = LAP_BLOCKS_LANE (lane);
  LapBlockWidget *focus = focused (self);
  guint was = focus != NULL ? lap_block_widget_box (focus) : LAP_NO_BOX;

  if (change & LAP_SCORE_PLAN) {
    follow_plan (self);
    /* A widget that was a block and is a gap now stops taking the focus, which asks for a new size of all above it. */
    gtk_widget_queue_resize (GTK_WIDGET (lane));
    if (gtk_widget_has_focus (GTK_WIDGET (self)) ||
        (focus != NULL && lap_block_widget_box (focus) == LAP_NO_BOX))
      hold_focus (self, was);
  } else if (change & LAP_SCORE_SELECTION && (focus != NULL || gtk_widget_has_focus (GTK_WIDGET (self))))
    lap_blocks_lane_take_focus (self);
  if (gtk_widget_get_mapped (GTK_WIDGET (lane)))
    bind_all (self);
  gtk_widget_queue_allocate (GTK_WIDGET (lane));
  gtk_widget_queue_draw (GTK_WIDGET (lane));
}

static void
draw_streaks (LapBlocksLane *self, GtkSnapshot *snapshot)
{
  static const LapColour colours[LAP_N_STREAKS] = { LAP_COLOUR_WORK, LAP_COLOUR_LINE, LAP_COLOUR_TALK,
                                                    LAP_COLOUR_LINE2 };
  LapScoreContext *context = lap_lane_context (LAP_LANE (self));
  g_autoptr (GArray) streaks = lap_score_streaks (context->score, context->axis, LAP_MERGE_BELOW);
  GdkRGBA outline = lap_colour (LAP_COLOUR_WORK);
  int top, height;

  lap_block_widget_ground (lap_text_line (GTK_WIDGET (self)), gtk_widget_get_height (GTK_WIDGET (self)), &top, &height);
  for (guint i = 0; i < streaks->len; i++) {
    const LapStreak *streak = &g_array_index (streaks, LapStreak, i);
    gboolean pale = streak->kind == LAP_STREAK_WORK && streak->later;
    GdkRGBA fill = lap_colour (pale ? LAP_COLOUR_WORK2 : colours[streak->kind]);

    lap_paint_rect (snapshot, &fill, streak->x, top, streak->width, height);
    if (pale) {
      lap_paint_rect (snapshot, &outline, streak->x, top, streak->width, 1);
      lap_paint_rect (snapshot, &outline, streak->x, top + height - 1, streak->width, 1);
    }
  }
}

static void
lap_blocks_lane_draw (LapLane *lane, GtkSnapshot *snapshot, int width, int height)
{
  int top, ground;

  draw_streaks (LAP_BLOCKS_LANE (lane), snapshot);
  lap_block_widget_ground (lap_text_line (GTK_WIDGET (lane)), height, &top, &ground);
  if (lap_lane_context (lane)->score->n == 0)
    lap_ground_draw_none (snapshot, width, top, ground);
  lap_captions_draw (lane, snapshot, top + ground + 3);
}

static int
lap_blocks_lane_height (LapLane *lane, int line)
{
  return lap_block_widget_height (line);
}

static int
lap_blocks_lane_more (LapLane *lane, int line)
{
  return 6 * line;
}

static int
lap_blocks_lane_mark_y (LapLane *lane, const LapWarning *warning, int height)
{
  int top, ground;

  lap_block_widget_ground (lap_text_line (GTK_WIDGET (lane)), height, &top, &ground);
  return top + ground - lap_marks_size (lap_text_line (GTK_WIDGET (lane))) / 2;
}

static guint
block_at (LapBlocksLane *self, double x)
{
  LapScoreContext *context = lap_lane_context (LAP_LANE (self));
  LapHit hit = lap_score_hit (context->score, context->axis, x, 0);

  return hit.box != LAP_NO_BOX && lap_box_is_block (&context->score->boxes[hit.box]) ? hit.box : LAP_NO_BOX;
}

/* All of a block's name, which it may be too narrow to show. */
static gboolean
tooltip_cb (LapBlocksLane *self, int x, int y, gboolean by_keyboard, GtkTooltip *tooltip)
{
  guint box = by_keyboard ? LAP_NO_BOX : block_at (self, x);
  g_autofree char *words = NULL;

  if (box == LAP_NO_BOX)
    return FALSE;
  words = lap_box_label (lap_lane_context (LAP_LANE (self))->score, box);
  gtk_tooltip_set_text (tooltip, words);
  return TRUE;
}

static void
open_menu (LapBlocksLane *self, int x, int y, int width, int height)
{
  g_autoptr (GMenu) menu = lap_score_menu_new (lap_lane_context (LAP_LANE (self)));

  lap_menu_open (menu, GTK_WIDGET (self), &(GdkRectangle) { x, y, width, height }, &self->menu);
}

/* By keys it opens under the focused block. */
static void
menu_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapBlocksLane *self = LAP_BLOCKS_LANE (widget);
  LapScoreContext *context = lap_lane_context (LAP_LANE (self));
  guint box = lap_score_selected (context);
  LapPlaced placed = { 0 };

  if (box != LAP_NO_BOX)
    placed = lap_score_place (context->score, context->axis, box);
  open_menu (self, MAX (placed.x, 0), 0, MAX (placed.width, 1), gtk_widget_get_height (widget));
}

static GdkModifierType
state_of (GtkGesture *gesture)
{
  return gtk_event_controller_get_current_event_state (GTK_EVENT_CONTROLLER (gesture));
}

/* One of several that are selected may be the handle by which all are dragged: it is chosen alone, or taken out, only
 * when the button is released on it. */
static void
pressed_cb (LapBlocksLane *self, int n, double x, double y, GtkGesture *click)
{
  LapScoreContext *context = lap_lane_context (LAP_LANE (self));
  guint box = block_at (self, x);

  self->pressed = LAP_NO_BOX;
  if (gtk_gesture_single_get_current_button (GTK_GESTURE_SINGLE (click)) == GDK_BUTTON_SECONDARY) {
    if (box == LAP_NO_BOX || !lap_score_is_chosen (context, box))
      lap_blocks_lane_choose (self, box, LAP_CHOOSE_ONLY);
  } else if (lap_lane_is_on_mark (LAP_LANE (self), x, y))
    return; /* the mark's, or what is dragged from there */
  else if (box == LAP_NO_BOX)
    lap_score_select (context, LAP_NO_BOX);
  else if (state_of (click) & GDK_SHIFT_MASK)
    lap_blocks_lane_choose (self, box, LAP_CHOOSE_TO);
  else if (lap_score_is_chosen (context, box))
    self->pressed = box;
  else
    lap_blocks_lane_choose (self, box, state_of (click) & GDK_CONTROL_MASK ? LAP_CHOOSE_TOGGLE : LAP_CHOOSE_ONLY);
}

static void
released_cb (LapBlocksLane *self, int n, double x, double y, GtkGesture *click)
{
  if (gtk_gesture_single_get_current_button (GTK_GESTURE_SINGLE (click)) == GDK_BUTTON_SECONDARY)
    open_menu (self, x, y, 1, 1);
  if (self->pressed != LAP_NO_BOX && self->pressed == block_at (self, x))
    lap_blocks_lane_choose (self, self->pressed,
                            state_of (click) & GDK_CONTROL_MASK ? LAP_CHOOSE_TOGGLE : LAP_CHOOSE_ONLY);
  self->pressed = LAP_NO_BOX;
}

/* Where the keys start from: what has the focus, else what is selected. */
static guint
current (LapBlocksLane *self)
{
  LapBlockWidget *focus = focused (self);

  if (focus != NULL && gtk_widget_has_focus (GTK_WIDGET (focus)))
    return lap_block_widget_box (focus);
  return lap_score_selected (lap_lane_context (LAP_LANE (self)));
}

static void
walk (LapBlocksLane *self, guint from, int by, LapChoose how)
{
  LapScoreContext *context = lap_lane_context (LAP_LANE (self));
  guint box = lap_score_step (context->score, from, by);

  if (box != LAP_NO_BOX)
    lap_blocks_lane_choose (self, box, how);
  else
    gtk_widget_error_bell (GTK_WIDGET (self));
}

static void
walk_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  static const struct { const char *name; int by; gboolean outside; LapChoose how; } ways[] = {
    { "score.left", -1, FALSE, LAP_CHOOSE_ONLY },     { "score.right", 1, FALSE, LAP_CHOOSE_ONLY },
    { "score.first", 1, TRUE, LAP_CHOOSE_ONLY },      { "score.last", -1, TRUE, LAP_CHOOSE_ONLY },
    { "score.extend-left", -1, FALSE, LAP_CHOOSE_TO }, { "score.extend-right", 1, FALSE, LAP_CHOOSE_TO },
  };
  LapBlocksLane *self = LAP_BLOCKS_LANE (widget);
  guint i = 0;

  while (!g_str_equal (ways[i].name, name))
    i++;
  if (ways[i].outside)
    walk (self, LAP_NO_BOX, ways[i].by, ways[i].how);
  else
    walk (self, current (self), lap_lane_context (LAP_LANE (self))->axis->mirrored ? -ways[i].by : ways[i].by,
          ways[i].how);
}

static void
all_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  lap_score_choose_part (lap_lane_context (LAP_LANE (widget)));
}

static void
clear_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  lap_score_select (lap_lane_context (LAP_LANE (widget)), LAP_NO_BOX);
}

/* One stop of Tab for all blocks; the arrows go on from there. */
static gboolean
lap_blocks_lane_focus (GtkWidget *widget, GtkDirectionType direction)
{
  LapBlocksLane *self = LAP_BLOCKS_LANE (widget);
  LapScoreContext *context = lap_lane_context (LAP_LANE (self));
  GtkWidget *focus = gtk_widget_get_focus_child (widget);
  guint box = lap_score_selected (context), end;

  if (gtk_widget_has_focus (widget) || (focus != NULL && gtk_widget_has_focus (focus)))
    return FALSE;
  if (context->score->n == 0) { /* keys can add the first block */
    gtk_widget_set_focusable (widget, TRUE);
    return gtk_widget_grab_focus (widget);
  }
  if (box == LAP_NO_BOX) {
    lap_score_visible (context->score, context->axis, &box, &end);
    box = lap_score_step (context->score, box > 0 ? box - 1 : LAP_NO_BOX, 1);
  }
  if (box == LAP_NO_BOX)
    return FALSE;
  lap_blocks_lane_go (self, box);
  return TRUE;
}

/* What is dragged lies over the blocks. */
static void
lap_blocks_lane_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  GTK_WIDGET_CLASS (lap_blocks_lane_parent_class)->snapshot (widget, snapshot);
  lap_score_drag_draw (LAP_BLOCKS_LANE (widget), snapshot);
  lap_score_drop_draw (LAP_BLOCKS_LANE (widget), snapshot);
}

static void
lap_blocks_lane_constructed (GObject *object)
{
  G_OBJECT_CLASS (lap_blocks_lane_parent_class)->constructed (object);
  lap_score_drag_install (LAP_BLOCKS_LANE (object));
  g_signal_connect (object, "query-tooltip", G_CALLBACK (tooltip_cb), NULL);
  lap_score_drop_install (LAP_BLOCKS_LANE (object));
}

static void
lap_blocks_lane_dispose (GObject *object)
{
  LapBlocksLane *self = LAP_BLOCKS_LANE (object);

  g_hash_table_remove_all (self->live);
  g_clear_pointer (&self->menu, gtk_widget_unparent);
  while (self->all->len > 0)
    gtk_widget_unparent (g_ptr_array_steal_index (self->all, self->all->len - 1));
  G_OBJECT_CLASS (lap_blocks_lane_parent_class)->dispose (object);
}

static void
lap_blocks_lane_finalize (GObject *object)
{
  LapBlocksLane *self = LAP_BLOCKS_LANE (object);

  g_hash_table_unref (self->live);
  g_ptr_array_unref (self->all);
  G_OBJECT_CLASS (lap_blocks_lane_parent_class)->finalize (object);
}

static void
lap_blocks_lane_class_init (LapBlocksLaneClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);
  LapLaneClass *lane_class = LAP_LANE_CLASS (klass);

  G_OBJECT_CLASS (klass)->constructed = lap_blocks_lane_constructed;
  G_OBJECT_CLASS (klass)->dispose = lap_blocks_lane_dispose;
  G_OBJECT_CLASS (klass)->finalize = lap_blocks_lane_finalize;
  widget_class->size_allocate = lap_blocks_lane_size_allocate;
  widget_class->focus = lap_blocks_lane_focus;
  widget_class->snapshot = lap_blocks_lane_snapshot;
  lane_class->height = lap_blocks_lane_height;
  lane_class->more = lap_blocks_lane_more;
  lane_class->update = lap_blocks_lane_update;
  lane_class->draw = lap_blocks_lane_draw;
  lane_class->preview = lap_preview_blocks;
  lane_class->marks = &lap_lane_blocks;
  lane_class->lands = TRUE;
  lane_class->mark_y = lap_blocks_lane_mark_y;
  gtk_widget_class_install_action (widget_class, "score.left", NULL, walk_action);
  gtk_widget_class_install_action (widget_class, "score.right", NULL, walk_action);
  gtk_widget_class_install_action (widget_class, "score.first", NULL, walk_action);
  gtk_widget_class_install_action (widget_class, "score.last", NULL, walk_action);
  gtk_widget_class_install_action (widget_class, "score.extend-left", NULL, walk_action);
  gtk_widget_class_install_action (widget_class, "score.extend-right", NULL, walk_action);
  gtk_widget_class_install_action (widget_class, "score.all", NULL, all_action);
  gtk_widget_class_install_action (widget_class, "score.clear", NULL, clear_action);
  gtk_widget_class_install_action (widget_class, "score.menu", NULL, menu_action);
  lap_score_verbs_install (widget_class);
  lap_part_verbs_install (widget_class);
  lap_shortcuts_bind_class (widget_class, LAP_SCOPE_SCORE);
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_LIST);
}

static void
lap_blocks_lane_init (LapBlocksLane *self)
{
  GtkGesture *click = gtk_gesture_click_new ();

  self->live = g_hash_table_new (NULL, NULL);
  self->all = g_ptr_array_new ();
  self->pressed = LAP_NO_BOX;
  gtk_gesture_single_set_button (GTK_GESTURE_SINGLE (click), 0);
  g_signal_connect_swapped (click, "pressed", G_CALLBACK (pressed_cb), self);
  g_signal_connect_swapped (click, "released", G_CALLBACK (released_cb), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (click));
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Blocks"), -1);
}

guint
lap_blocks_lane_n_live (LapBlocksLane *self)
{
  return g_hash_table_size (self->live);
}

guint
lap_blocks_lane_n_all (LapBlocksLane *self)
{
  return self->all->len;
}

GtkWidget *
lap_blocks_lane_find (LapBlocksLane *self, guint box)
{
  return g_hash_table_lookup (self->live, GUINT_TO_POINTER (box));
}

void
lap_blocks_lane_choose (LapBlocksLane *self, guint box, LapChoose how)
{
  lap_score_choose (lap_lane_context (LAP_LANE (self)), box, how);
  lap_blocks_lane_take_focus (self);
}

void
lap_blocks_lane_take_focus (LapBlocksLane *self)
{
  guint box = lap_score_selected (lap_lane_context (LAP_LANE (self)));

  if (box != LAP_NO_BOX)
    focus_box (self, box);
}

void
lap_blocks_lane_go (LapBlocksLane *self, guint box)
{
  lap_blocks_lane_choose (self, box, LAP_CHOOSE_ONLY);
}

const LapLaneKind lap_lane_blocks = { "blocks", N_("Blocks"), N_("body = work,\ntail = rest"),
                                      lap_blocks_lane_get_type };
