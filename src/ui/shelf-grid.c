/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Tiles are bound to exercises in size_allocate() only: whatever happened, the next allocation finds what must be
 * shown, lets those that are keep their tile, and binds the rest to tiles that are free. So scrolling moves tiles and
 * makes none, and the focus stays on its exercise.
 */
#include "ui/shelf-grid.h"

#include "place/tiling.h"
#include "ui/letters.h"
#include "ui/exercise-drop.h"
#include "ui/shortcuts.h"
#include "ui/tile.h"

#include <glib/gi18n-lib.h>

struct _LapShelfGrid {
  GtkWidget      parent_instance;
  LapCatalogue  *catalogue;
  GArray        *groups;    /* LapShelfGroup */
  GPtrArray     *exercises; /* LapExercise of all groups, one after another */
  LapTiling      *tiles;     /* NULL until there is a width */
  GHashTable    *live;      /* LapExercise -> LapTile that shows it */
  GPtrArray     *all;       /* LapTile, transfer none: children */
  GPtrArray     *headings;  /* GtkLabel of each group, children */
  LapExercise   *current, *pressed; /* by the first press of a click, or NULL */
  guint          telling;   /* a source, while the second press of a double click may come */
  GtkAdjustment *across, *down; /* of a scrolled window; the first is never moved */
  gboolean       going;     /* to the current tile, at the next allocation */
  gboolean       updating;  /* the adjustment follows the grid now, not the other way */
};

enum { ACTIVATED, CURRENT, DRAGGING, N_SIGNALS };
static guint signals[N_SIGNALS];
enum { PROP_0, PROP_HADJUSTMENT, PROP_VADJUSTMENT, PROP_HSCROLL_POLICY, PROP_VSCROLL_POLICY };

G_DEFINE_FINAL_TYPE_WITH_CODE (LapShelfGrid, lap_shelf_grid, GTK_TYPE_WIDGET,
                               G_IMPLEMENT_INTERFACE (GTK_TYPE_SCROLLABLE, NULL))

#define GAP 8
#define ICON_BELOW 12 /* px from the pointer to what is dragged */

static int
offset (LapShelfGrid *self)
{
  return self->down != NULL ? (int) gtk_adjustment_get_value (self->down) : 0;
}

static LapExercise *
nth (LapShelfGrid *self, guint tile)
{
  return tile < self->exercises->len ? g_ptr_array_index (self->exercises, tile) : NULL;
}

static guint
tile_of (LapShelfGrid *self, LapExercise *exercise)
{
  guint tile;

  return exercise != NULL && g_ptr_array_find (self->exercises, exercise, &tile) ? tile : LAP_NO_TILE;
}

static void
lay_tiles (LapShelfGrid *self, int width)
{
  int line = lap_text_line (GTK_WIDGET (self));
  LapTileSizes sizes = { .width = width, .least = lap_tile_width (line), .tile_height = lap_tile_height (line),
                         .heading_height = line * 3 / 2, .gap = GAP };
  g_autofree guint *counts = g_new0 (guint, self->groups->len);

  for (guint i = 0; i < self->groups->len; i++)
    counts[i] = g_array_index (self->groups, LapShelfGroup, i).exercises->len;
  g_clear_pointer (&self->tiles, lap_tiling_free);
  self->tiles = lap_tiling_new (&sizes, counts, self->groups->len);
}

/* Where in the widget a place of the layout is, scrolled and mirrored. */
static GtkAllocation
allocation (LapShelfGrid *self, LapTileRect rect)
{
  gboolean mirrored = gtk_widget_get_direction (GTK_WIDGET (self)) == GTK_TEXT_DIR_RTL;
  int x = mirrored ? self->tiles->sizes.width - rect.x - rect.width : rect.x;

  return (GtkAllocation) { x, rect.y - offset (self), rect.width, rect.height };
}

/* A tile that is bound in size_allocate() asks all above it for a new size; only those that are being laid out
 * themselves have one by the time they are drawn. So they all are, even where it only scrolls. */
static void
lay_anew (LapShelfGrid *self)
{
  gtk_widget_queue_resize (GTK_WIDGET (self));
}

static LapTile *
free_tile (LapShelfGrid *self)
{
  GtkWidget *tile;

  for (guint i = 0; i < self->all->len; i++)
    if (lap_tile_exercise (g_ptr_array_index (self->all, i)) == NULL)
      return g_ptr_array_index (self->all, i);
  tile = lap_tile_new ();
  gtk_widget_set_parent (tile, GTK_WIDGET (self));
  g_ptr_array_add (self->all, tile);
  return LAP_TILE (tile);
}

static void
let_go (LapTile *tile)
{
  lap_tile_show (tile, NULL, NULL);
  gtk_widget_set_child_visible (GTK_WIDGET (tile), FALSE);
}

static GtkWidget *
bind (LapShelfGrid *self, guint number)
{
  LapExercise *exercise = nth (self, number);
  LapTile *tile = g_hash_table_lookup (self->live, exercise);

  if (tile == NULL) {
    tile = free_tile (self);
    g_hash_table_insert (self->live, exercise, tile);
    lap_tile_show (tile, self->catalogue, exercise);
    lap_tile_number (tile, number + 1, self->exercises->len);
    gtk_widget_set_child_visible (GTK_WIDGET (tile), TRUE);
  }
  if (exercise == self->current)
    gtk_widget_add_css_class (GTK_WIDGET (tile), "current");
  else
    gtk_widget_remove_css_class (GTK_WIDGET (tile), "current");
  return GTK_WIDGET (tile);
}

static void
place (LapShelfGrid *self, GtkWidget *child, LapTileRect rect)
{
  GtkAllocation at = allocation (self, rect);

  gtk_widget_measure (child, GTK_ORIENTATION_HORIZONTAL, -1, NULL, NULL, NULL, NULL);
  gtk_widget_size_allocate (child, &at, -1);
}

/* Whoever reads the children one after another, such as a screen reader, reads them as they are seen. */
static void
put_after (LapShelfGrid *self, GtkWidget *child, GtkWidget **before)
{
  if (gtk_widget_get_prev_sibling (child) != *before)
    gtk_widget_insert_after (child, GTK_WIDGET (self), *before);
  *before = child;
}

/* The current tile while it has the focus, wherever it is. */
static guint
kept_tile (LapShelfGrid *self)
{
  GtkWidget *focus = gtk_widget_get_focus_child (GTK_WIDGET (self));

  return focus != NULL && focus == lap_shelf_grid_find (self, self->current) ? tile_of (self, self->current) : LAP_NO_TILE;
}

static gboolean
is_wanted (guint tile, guint first, guint end, guint kept)
{
  return (tile >= first && tile < end) || tile == kept;
}

static void
release (LapShelfGrid *self, guint first, guint end, guint kept)
{
  GHashTableIter iter;
  gpointer exercise, tile;

  g_hash_table_iter_init (&iter, self->live);
  while (g_hash_table_iter_next (&iter, &exercise, &tile))
    if (!is_wanted (tile_of (self, exercise), first, end, kept)) {
      let_go (tile);
      g_hash_table_iter_remove (&iter);
    }
}

static void
show_heading (LapShelfGrid *self, guint group, int height, GtkWidget **before)
{
  GtkWidget *heading = g_ptr_array_index (self->headings, group);
  LapTileRect rect = lap_tiling_heading (self->tiles, group);
  gboolean seen = rect.height > 0 && rect.y < offset (self) + height && rect.y + rect.height > offset (self);

  gtk_widget_set_child_visible (heading, seen);
  if (seen)
    place (self, heading, rect);
  put_after (self, heading, before);
}

static void
place_children (LapShelfGrid *self, int height)
{
  guint first, end, kept = kept_tile (self);
  GtkWidget *before = NULL;

  lap_tiling_visible (self->tiles, offset (self), offset (self) + height, &first, &end);
  release (self, first, end, kept);
  for (guint g = 0; g < self->groups->len; g++) {
    show_heading (self, g, height, &before);
    for (guint i = self->tiles->first[g]; i < self->tiles->first[g + 1]; i++)
      if (is_wanted (i, first, end, kept)) {
        GtkWidget *tile = bind (self, i);

        place (self, tile, lap_tiling_place (self->tiles, i));
        put_after (self, tile, &before);
      }
  }
}

static void
reveal_current (LapShelfGrid *self, int height)
{
  guint tile = tile_of (self, self->current), group;
  LapTileRect rect;
  int top;

  self->going = FALSE;
  if (tile == LAP_NO_TILE || self->down == NULL)
    return;
  rect = lap_tiling_place (self->tiles, tile);
  group = lap_tiling_group (self->tiles, tile);
  /* The heading comes into view with the first row below it. */
  top = tile < self->tiles->first[group] + self->tiles->columns ? self->tiles->top[group] : rect.y - GAP;
  if (top < offset (self))
    gtk_adjustment_set_value (self->down, top);
  else if (rect.y + rect.height + GAP > offset (self) + height)
    gtk_adjustment_set_value (self->down, rect.y + rect.height + GAP - height);
}

static void
lap_shelf_grid_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  LapShelfGrid *self = LAP_SHELF_GRID (widget);

  if (self->tiles == NULL || self->tiles->sizes.width != width ||
      self->tiles->sizes.tile_height != lap_tile_height (lap_text_line (GTK_WIDGET (self))))
    lay_tiles (self, width);
  self->updating = TRUE;
  if (self->down != NULL)
    gtk_adjustment_configure (self->down, offset (self), 0, MAX (height, self->tiles->height), 40, height * 0.9, height);
  if (self->across != NULL)
    gtk_adjustment_configure (self->across, 0, 0, width, 0, 0, width);
  if (self->going)
    reveal_current (self, height);
  self->updating = FALSE;
  place_children (self, height);
}

static void
lap_shelf_grid_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *least, int *natural,
                        int *least_baseline, int *natural_baseline)
{
  int line = lap_text_line (widget);

  if (orientation == GTK_ORIENTATION_HORIZONTAL) {
    *least = lap_tile_width (line);
    *natural = 2 * *least + GAP;
  } else {
    *least = lap_tile_height (line);
    *natural = 4 * *least;
  }
}

static void
scrolled_cb (LapShelfGrid *self)
{
  if (!self->updating)
    lay_anew (self);
}

static void
set_adjustment (LapShelfGrid *self, GtkAdjustment **slot, GtkAdjustment *adjustment)
{
  if (*slot != NULL)
    g_signal_handlers_disconnect_by_data (*slot, self);
  g_set_object (slot, adjustment);
  if (adjustment != NULL)
    g_signal_connect_swapped (adjustment, "value-changed", G_CALLBACK (scrolled_cb), self);
  lay_anew (self);
}

static void
lap_shelf_grid_set_property (GObject *object, guint id, const GValue *value, GParamSpec *pspec)
{
  LapShelfGrid *self = LAP_SHELF_GRID (object);

  switch (id) {
  case PROP_HADJUSTMENT:
    set_adjustment (self, &self->across, g_value_get_object (value));
    break;
  case PROP_VADJUSTMENT:
    set_adjustment (self, &self->down, g_value_get_object (value));
    break;
  case PROP_HSCROLL_POLICY:
  case PROP_VSCROLL_POLICY:
    break; /* it is as wide as it gets, and scrolls down */
  default:
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
  }
}

static void
lap_shelf_grid_get_property (GObject *object, guint id, GValue *value, GParamSpec *pspec)
{
  LapShelfGrid *self = LAP_SHELF_GRID (object);

  switch (id) {
  case PROP_HADJUSTMENT:
    g_value_set_object (value, self->across);
    break;
  case PROP_VADJUSTMENT:
    g_value_set_object (value, self->down);
    break;
  case PROP_HSCROLL_POLICY:
  case PROP_VSCROLL_POLICY:
    g_value_set_enum (value, GTK_SCROLL_MINIMUM);
    break;
  default:
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
  }
}

static void
walk_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  static const struct { const char *name; LapTileStep step, mirrored; } steps[] = {
    { "shelf.left", LAP_TILING_BACK, LAP_TILING_ON }, { "shelf.right", LAP_TILING_ON, LAP_TILING_BACK },
    { "shelf.up", LAP_TILING_UP, LAP_TILING_UP }, { "shelf.down", LAP_TILING_DOWN, LAP_TILING_DOWN },
    { "shelf.first", LAP_TILING_FIRST, LAP_TILING_FIRST }, { "shelf.last", LAP_TILING_LAST, LAP_TILING_LAST },
  };
  LapShelfGrid *self = LAP_SHELF_GRID (widget);
  gboolean mirrored = gtk_widget_get_direction (widget) == GTK_TEXT_DIR_RTL;
  guint tile = tile_of (self, self->current), to = LAP_NO_TILE;

  for (guint i = 0; i < G_N_ELEMENTS (steps) && self->tiles != NULL; i++)
    if (g_str_equal (steps[i].name, name))
      to = lap_tiling_step (self->tiles, tile != LAP_NO_TILE ? tile : 0, mirrored ? steps[i].mirrored : steps[i].step);
  if (to != LAP_NO_TILE)
    lap_shelf_grid_go (self, nth (self, to), TRUE);
  else
    gtk_widget_error_bell (widget);
}

static void
add_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapShelfGrid *self = LAP_SHELF_GRID (widget);

  if (tile_of (self, self->current) != LAP_NO_TILE)
    g_signal_emit (self, signals[ACTIVATED], 0, self->current->id);
}

/* One stop of Tab for all tiles; the arrows go on from there. */
static gboolean
lap_shelf_grid_focus (GtkWidget *widget, GtkDirectionType direction)
{
  LapShelfGrid *self = LAP_SHELF_GRID (widget);
  guint first = 0, end;

  if (gtk_widget_get_focus_child (widget) != NULL || self->exercises->len == 0 || self->tiles == NULL)
    return FALSE;
  if (tile_of (self, self->current) != LAP_NO_TILE)
    lap_shelf_grid_go (self, self->current, TRUE);
  else {
    lap_tiling_visible (self->tiles, offset (self), offset (self) + gtk_widget_get_height (widget), &first, &end);
    lap_shelf_grid_go (self, nth (self, first), TRUE);
  }
  return TRUE;
}

static void
go (LapShelfGrid *self, LapExercise *exercise, gboolean focus)
{
  guint tile = tile_of (self, exercise);

  self->current = tile != LAP_NO_TILE ? exercise : NULL;
  self->going = TRUE;
  if (self->current != NULL && focus) {
    /* It must exist to take the focus; the allocation that follows keeps and places it. */
    if (self->tiles == NULL)
      lay_tiles (self, MAX (1, gtk_widget_get_width (GTK_WIDGET (self))));
    place (self, bind (self, tile), lap_tiling_place (self->tiles, tile));
    gtk_widget_grab_focus (lap_shelf_grid_find (self, exercise));
  }
  lay_anew (self);
}

static void
tell_current (LapShelfGrid *self)
{
  g_clear_handle_id (&self->telling, g_source_remove);
  g_signal_emit (self, signals[CURRENT], 0);
}

static void
tell_cb (gpointer self)
{
  LAP_SHELF_GRID (self)->telling = 0;
  tell_current (self);
}

/* What is told of the current one takes room below the tiles, where the pointer may be: not before the second press of a
 * double click would have come. */
static void
tell_later (LapShelfGrid *self)
{
  int time;

  g_object_get (gtk_widget_get_settings (GTK_WIDGET (self)), "gtk-double-click-time", &time, NULL);
  g_clear_handle_id (&self->telling, g_source_remove);
  if (time > 0)
    self->telling = g_timeout_add_once (time, tell_cb, self);
  else
    tell_current (self);
}

/* It may have been scrolled meanwhile: all that a click or a drag is about is what the first press was on. */
static void
pressed_cb (LapShelfGrid *self, int n, double x, double y)
{
  gboolean mirrored = gtk_widget_get_direction (GTK_WIDGET (self)) == GTK_TEXT_DIR_RTL;
  guint tile = self->tiles == NULL ? LAP_NO_TILE
             : lap_tiling_at (self->tiles, mirrored ? self->tiles->sizes.width - 1 - x : x, y + offset (self));

  if (n == 1)
    self->pressed = tile != LAP_NO_TILE ? nth (self, tile) : NULL;
  if (n == 1 && self->pressed != NULL) {
    go (self, self->pressed, TRUE);
    tell_later (self);
  } else if (n == 2 && self->pressed != NULL) {
    g_signal_emit (self, signals[ACTIVATED], 0, self->pressed->id);
    tell_current (self);
  }
}

static GdkContentProvider *
prepare_cb (LapShelfGrid *self, double x, double y, GtkDragSource *source)
{
  GtkWidget *tile = lap_shelf_grid_find (self, self->pressed);
  g_autoptr (LapExerciseDrop) drop = NULL;
  g_autoptr (GdkPaintable) picture = NULL;

  if (tile == NULL)
    return NULL;
  drop = lap_exercise_drop_new (lap_tile_exercise (LAP_TILE (tile))->id);
  picture = gtk_widget_paintable_new (tile);
  /* Below the pointer, where time comes from: what the score says of the place stands above it and beside it. */
  gtk_drag_source_set_icon (source, picture, gtk_widget_get_direction (tile) == GTK_TEXT_DIR_RTL
                                               ? -ICON_BELOW : gtk_widget_get_width (tile) + ICON_BELOW, -ICON_BELOW);
  return gdk_content_provider_new_typed (LAP_TYPE_EXERCISE_DROP, drop);
}

static void
drag_begin_cb (LapShelfGrid *self)
{
  g_signal_emit (self, signals[DRAGGING], 0);
}

static void
clear_headings (LapShelfGrid *self)
{
  while (self->headings->len > 0)
    gtk_widget_unparent (g_ptr_array_steal_index (self->headings, self->headings->len - 1));
}

static void
lap_shelf_grid_dispose (GObject *object)
{
  LapShelfGrid *self = LAP_SHELF_GRID (object);

  g_clear_handle_id (&self->telling, g_source_remove);
  g_hash_table_remove_all (self->live);
  while (self->all->len > 0)
    gtk_widget_unparent (g_ptr_array_steal_index (self->all, self->all->len - 1));
  clear_headings (self);
  set_adjustment (self, &self->across, NULL);
  set_adjustment (self, &self->down, NULL);
  self->current = NULL;
  G_OBJECT_CLASS (lap_shelf_grid_parent_class)->dispose (object);
}

static void
lap_shelf_grid_finalize (GObject *object)
{
  LapShelfGrid *self = LAP_SHELF_GRID (object);

  g_clear_pointer (&self->tiles, lap_tiling_free);
  g_hash_table_unref (self->live);
  g_ptr_array_unref (self->all);
  g_ptr_array_unref (self->headings);
  g_ptr_array_unref (self->exercises);
  g_array_unref (self->groups);
  g_clear_pointer (&self->catalogue, lap_catalogue_unref);
  G_OBJECT_CLASS (lap_shelf_grid_parent_class)->finalize (object);
}

static void
lap_shelf_grid_class_init (LapShelfGridClass *klass)
{
  static const char *const walks[] = { "shelf.left", "shelf.right", "shelf.up", "shelf.down", "shelf.first",
                                       "shelf.last" };
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);
  GObjectClass *object_class = G_OBJECT_CLASS (klass);

  object_class->dispose = lap_shelf_grid_dispose;
  object_class->finalize = lap_shelf_grid_finalize;
  object_class->set_property = lap_shelf_grid_set_property;
  object_class->get_property = lap_shelf_grid_get_property;
  widget_class->measure = lap_shelf_grid_measure;
  widget_class->size_allocate = lap_shelf_grid_size_allocate;
  widget_class->focus = lap_shelf_grid_focus;
  g_object_class_override_property (object_class, PROP_HADJUSTMENT, "hadjustment");
  g_object_class_override_property (object_class, PROP_VADJUSTMENT, "vadjustment");
  g_object_class_override_property (object_class, PROP_HSCROLL_POLICY, "hscroll-policy");
  g_object_class_override_property (object_class, PROP_VSCROLL_POLICY, "vscroll-policy");
  signals[ACTIVATED] = g_signal_new ("activated", LAP_TYPE_SHELF_GRID, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                     G_TYPE_NONE, 1, G_TYPE_STRING);
  signals[CURRENT] = g_signal_new ("current", LAP_TYPE_SHELF_GRID, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                   G_TYPE_NONE, 0);
  signals[DRAGGING] = g_signal_new ("dragging", LAP_TYPE_SHELF_GRID, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                    G_TYPE_NONE, 0);
  for (guint i = 0; i < G_N_ELEMENTS (walks); i++)
    gtk_widget_class_install_action (widget_class, walks[i], NULL, walk_action);
  gtk_widget_class_install_action (widget_class, "shelf.add", NULL, add_action);
  lap_shortcuts_bind_class (widget_class, LAP_SCOPE_SHELF);
  gtk_widget_class_set_css_name (widget_class, "shelfgrid");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_LIST);
}

static void
lap_shelf_grid_init (LapShelfGrid *self)
{
  GtkGesture *click = gtk_gesture_click_new ();
  GtkDragSource *drag = gtk_drag_source_new ();

  self->groups = lap_shelf_groups_new ();
  self->exercises = g_ptr_array_new ();
  self->live = g_hash_table_new (NULL, NULL);
  self->all = g_ptr_array_new ();
  self->headings = g_ptr_array_new ();
  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_HIDDEN);
  g_signal_connect_swapped (click, "pressed", G_CALLBACK (pressed_cb), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (click));
  g_signal_connect_swapped (drag, "prepare", G_CALLBACK (prepare_cb), self);
  g_signal_connect_swapped (drag, "drag-begin", G_CALLBACK (drag_begin_cb), self);
  gtk_drag_source_set_actions (drag, GDK_ACTION_COPY);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (drag));
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Exercises"), -1);
}

static void
group_clear (gpointer data)
{
  LapShelfGroup *group = data;

  g_free (group->title);
  g_ptr_array_unref (group->exercises);
}

GArray *
lap_shelf_groups_new (void)
{
  GArray *groups = g_array_new (FALSE, FALSE, sizeof (LapShelfGroup));

  g_array_set_clear_func (groups, group_clear);
  return groups;
}

static void
make_headings (LapShelfGrid *self)
{
  clear_headings (self);
  for (guint i = 0; i < self->groups->len; i++) {
    const LapShelfGroup *group = &g_array_index (self->groups, LapShelfGroup, i);
    /* Translators: a heading of the catalogue and how many exercises stand below it: "Thighs 36". */
    g_autofree char *text = g_markup_printf_escaped (_("<b>%1$s</b> %2$u"), group->title, group->exercises->len);
    GtkWidget *label = gtk_label_new (NULL);

    gtk_label_set_markup (GTK_LABEL (label), text);
    gtk_label_set_xalign (GTK_LABEL (label), 0);
    gtk_label_set_ellipsize (GTK_LABEL (label), PANGO_ELLIPSIZE_END);
    gtk_widget_set_tooltip_text (label, gtk_label_get_text (GTK_LABEL (label)));
    gtk_widget_add_css_class (label, "shelf-heading");
    gtk_widget_set_parent (label, GTK_WIDGET (self));
    g_ptr_array_add (self->headings, label);
  }
}

void
lap_shelf_grid_show (LapShelfGrid *self, LapCatalogue *catalogue, GArray *groups)
{
  GHashTableIter iter;
  gpointer tile;

  g_hash_table_iter_init (&iter, self->live);
  while (g_hash_table_iter_next (&iter, NULL, &tile))
    let_go (tile);
  g_hash_table_remove_all (self->live);
  g_array_unref (self->groups);
  self->groups = g_array_ref (groups);
  g_clear_pointer (&self->catalogue, lap_catalogue_unref);
  self->catalogue = lap_catalogue_ref (catalogue);
  self->pressed = NULL;
  g_ptr_array_set_size (self->exercises, 0);
  for (guint i = 0; i < groups->len; i++) {
    GPtrArray *exercises = g_array_index (groups, LapShelfGroup, i).exercises;

    for (guint k = 0; k < exercises->len; k++)
      g_ptr_array_add (self->exercises, g_ptr_array_index (exercises, k));
  }
  if (tile_of (self, self->current) == LAP_NO_TILE)
    self->current = NULL;
  make_headings (self);
  g_clear_pointer (&self->tiles, lap_tiling_free);
  gtk_widget_queue_resize (GTK_WIDGET (self));
}

guint
lap_shelf_grid_n (LapShelfGrid *self)
{
  return self->exercises->len;
}

LapExercise *
lap_shelf_grid_current (LapShelfGrid *self)
{
  return self->current;
}

void
lap_shelf_grid_go (LapShelfGrid *self, LapExercise *exercise, gboolean focus)
{
  go (self, exercise, focus);
  tell_current (self);
}

GtkWidget *
lap_shelf_grid_find (LapShelfGrid *self, LapExercise *exercise)
{
  return exercise != NULL ? g_hash_table_lookup (self->live, exercise) : NULL;
}

guint
lap_shelf_grid_n_live (LapShelfGrid *self)
{
  return g_hash_table_size (self->live);
}

guint
lap_shelf_grid_n_all (LapShelfGrid *self)
{
  return self->all->len;
}
