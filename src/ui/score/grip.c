/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/grip.h"

#include "ui/palette.h"
#include "ui/score/paint.h"

#define SCROLL_AT    40 /* px from the edge of the view where it begins to scroll */
#define SCROLL_BY    12 /* px at a time */
#define SCROLL_EVERY 16 /* ms */
#define GRID         5  /* seconds */

void
lap_grip_init (LapGrip *self, LapLane *lane, const LapGripFuncs *funcs, gpointer data)
{
  *self = (LapGrip) { .lane = lane, .funcs = funcs, .data = data };
}

static const LapAxis *
axis_of (const LapGrip *self)
{
  return lap_lane_context (self->lane)->axis;
}

void
lap_grip_let_go (LapGrip *self)
{
  self->held = FALSE;
  g_clear_handle_id (&self->tick, g_source_remove);
  if (self->root != NULL) {
    gtk_widget_remove_controller (self->root, self->keys);
    g_object_remove_weak_pointer (G_OBJECT (self->root), (gpointer *) &self->root);
  }
  self->root = NULL;
  self->keys = NULL;
}

static GdkModifierType
modifier_of (guint key)
{
  switch (key) {
  case GDK_KEY_Control_L:
  case GDK_KEY_Control_R:
    return GDK_CONTROL_MASK;
  case GDK_KEY_Alt_L:
  case GDK_KEY_Alt_R:
    return GDK_ALT_MASK;
  default:
    return 0;
  }
}

static gboolean
pressed_cb (LapGrip *self, guint key)
{
  if (key == GDK_KEY_Escape && self->funcs->escaped != NULL) {
    lap_grip_let_go (self);
    self->funcs->escaped (self->data);
  } else if (modifier_of (key) != 0)
    lap_grip_move (self, self->x, self->state | modifier_of (key));
  return TRUE;
}

static void
released_cb (LapGrip *self, guint key)
{
  if (modifier_of (key) != 0)
    lap_grip_move (self, self->x, self->state & ~modifier_of (key));
}

static void
watch (LapGrip *self)
{
  self->root = GTK_WIDGET (gtk_widget_get_root (GTK_WIDGET (self->lane)));
  if (self->root == NULL)
    return;
  g_object_add_weak_pointer (G_OBJECT (self->root), (gpointer *) &self->root);
  self->keys = gtk_event_controller_key_new ();
  gtk_event_controller_set_propagation_phase (self->keys, GTK_PHASE_CAPTURE);
  g_signal_connect_swapped (self->keys, "key-pressed", G_CALLBACK (pressed_cb), self);
  g_signal_connect_swapped (self->keys, "key-released", G_CALLBACK (released_cb), self);
  gtk_widget_add_controller (self->root, self->keys);
}

/* -1 or 1 where the pointer was carried near the edge from which time comes or to which it goes, else 0. */
static int
edge (const LapGrip *self)
{
  const LapAxis *axis = axis_of (self);
  double at = MIN (SCROLL_AT, axis->view / 4);
  int sign = axis->mirrored ? -1 : 1;

  if (self->x < at && self->x < self->began)
    return -sign;
  return self->x > axis->view - at && self->x > self->began ? sign : 0;
}

/* Between frames, as when somebody scrolls: blocks that come into view need a new layout. What is held goes on with the
 * view, and what is stretched beyond the end of what there is, for by that it becomes longer. */
static gboolean
scroll_cb (gpointer data)
{
  LapGrip *self = data;
  const LapAxis *axis = axis_of (self);
  double was = axis->offset;
  int by = edge (self) * SCROLL_BY;

  self->tick = 0;
  if (by == 0)
    return G_SOURCE_REMOVE;
  lap_score_scroll_by (lap_lane_context (self->lane), by);
  if (axis->offset != was) {
    self->scrolled += axis->offset - was;
    self->ahead = 0;
  } else if (self->stretches && ABS (self->ahead) < axis->view) {
    self->scrolled += by;
    self->ahead += by;
  } else
    return G_SOURCE_REMOVE;
  /* Once more when this is done, however long it takes: what draws must have its turn. */
  self->tick = g_timeout_add (SCROLL_EVERY, scroll_cb, self);
  self->funcs->moved (self->data);
  return G_SOURCE_REMOVE;
}

void
lap_grip_take (LapGrip *self, double began, gboolean stretches)
{
  lap_grip_let_go (self);
  self->held = TRUE;
  self->stretches = stretches;
  self->began = self->x = began;
  self->scrolled = self->ahead = 0;
  self->state = 0;
  watch (self);
}

void
lap_grip_move (LapGrip *self, double x, GdkModifierType state)
{
  self->x = x;
  self->state = state;
  if (self->tick == 0 && edge (self) != 0)
    self->tick = g_timeout_add (SCROLL_EVERY, scroll_cb, self);
  self->funcs->moved (self->data);
}

double
lap_grip_seconds (const LapGrip *self)
{
  const LapAxis *axis = axis_of (self);
  double px = axis->mirrored ? self->began - self->x : self->x - self->began;

  return (px + self->scrolled) / axis->zoom;
}

int
lap_grip_grid (const LapGrip *self)
{
  return self->state & GDK_ALT_MASK ? 1 : GRID;
}

void
lap_grip_draw_tag (const LapGrip *self, GtkSnapshot *snapshot, const char *text)
{
  g_autoptr (PangoLayout) layout = lap_lane_layout (self->lane, text, -1);
  GdkRGBA ink = lap_colour (LAP_COLOUR_INK), paper = lap_colour (LAP_COLOUR_PAPER);
  int width, height, left;

  pango_layout_set_width (layout, -1);
  pango_layout_get_pixel_size (layout, &width, &height);
  if (width + 16 > axis_of (self)->view) {
    pango_layout_set_wrap (layout, PANGO_WRAP_WORD_CHAR);
    pango_layout_set_width (layout, MAX (1, axis_of (self)->view - 16) * PANGO_SCALE);
    pango_layout_get_pixel_size (layout, &width, &height);
  }
  left = CLAMP (self->x - width / 2.0, 8, MAX (8, axis_of (self)->view - width - 8));
  lap_paint_rect (snapshot, &ink, left - 6, 2, width + 12, height + 6);
  lap_paint_text (snapshot, layout, &paper, left, 5);
}
