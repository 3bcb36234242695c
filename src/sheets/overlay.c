/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheets/overlay.h"

#include "sheets/measure.h"

#include <glib/gi18n-lib.h>

#define LONG  1920
#define SHORT 1080
#define SAFE  0.05

/* Of the panel, in pixels of a picture of 1080 lines. */
#define PANEL_WIDTH  800
#define PANEL_HEIGHT 176
#define PANEL_PAD    28
#define BAR          10
#define CLOCK_WIDTH  250

void
lap_overlay_size (const LapTimeline *timeline, int *width, int *height)
{
  gboolean upright = timeline->session->frame == LAP_FRAME_PORTRAIT;

  *width = upright ? SHORT : LONG;
  *height = upright ? LONG : SHORT;
}

/* Transfer full. */
static char *
title_of (const LapTimeline *timeline, const LapInterval *v)
{
  const LapTask *task = lap_timeline_task (timeline, v);
  const char *part = lap_part_title (timeline->parts[v->part].part);

  switch (v->kind) {
    case LAP_INTERVAL_WORK:
      if (v->side == LAP_SIDE_NONE)
        return g_strdup (task != NULL ? lap_task_name (task) : part);
      return g_strdup_printf (v->side == LAP_SIDE_LEFT ? _("%s, left") : _("%s, right"), lap_task_name (task));
    case LAP_INTERVAL_PAUSE:
      return g_strdup (lap_task_name (task));
    case LAP_INTERVAL_TALK:
      return g_strdup (part);
    case LAP_INTERVAL_SWITCH:
      return g_strdup (_("Other side"));
    default:
      return g_strdup (_("Rest"));
  }
}

LapOverlayState
lap_overlay_state (const LapTimeline *timeline, int second)
{
  const LapInterval *v = lap_timeline_at (timeline, second);
  guint next = lap_timeline_turn (timeline, second);
  g_autofree char *title = title_of (timeline, v), *after = NULL;

  if (next < timeline->n_turns)
    after = g_strdup_printf (_("Next: %s"), lap_task_name (&timeline->tasks[timeline->turns[next].task]));
  return (LapOverlayState) { v, v->start + v->seconds - second, g_intern_string (title),
                             after != NULL ? g_intern_string (after) : "" };
}

guint
lap_overlay_state_hash (gconstpointer data)
{
  const LapOverlayState *state = data;

  return g_direct_hash (state->title) * 31 + g_direct_hash (state->next) * 17 + state->left;
}

gboolean
lap_overlay_state_equal (gconstpointer first, gconstpointer second)
{
  const LapOverlayState *a = first, *b = second;

  if (a->interval == NULL || b->interval == NULL)
    return a->interval == b->interval;
  return a->left == b->left && g_strcmp0 (a->title, b->title) == 0 && g_strcmp0 (a->next, b->next) == 0 &&
         a->interval->seconds == b->interval->seconds &&
         (a->interval->kind == LAP_INTERVAL_WORK) == (b->interval->kind == LAP_INTERVAL_WORK);
}

static void
rounded (cairo_t *cr, double x, double y, double width, double height, double radius)
{
  cairo_new_sub_path (cr);
  cairo_arc (cr, x + width - radius, y + radius, radius, -G_PI / 2, 0);
  cairo_arc (cr, x + width - radius, y + height - radius, radius, 0, G_PI / 2);
  cairo_arc (cr, x + radius, y + height - radius, radius, G_PI / 2, G_PI);
  cairo_arc (cr, x + radius, y + radius, radius, G_PI, 3 * G_PI / 2);
  cairo_close_path (cr);
}

/* One line of white text, its middle at @y: smaller where it is too wide, and cut where even that is. */
static void
put_text (cairo_t *cr, LapWeight weight, double size, const char *text, double x, double y, double width)
{
  PangoContext *context = pango_cairo_create_context (cr);
  PangoLayout *layout = lap_sheet_layout (context);
  PangoFontDescription *font = lap_sheet_font (weight);
  PangoRectangle box;

  pango_layout_set_text (layout, text, -1);
  for (double em = size; em >= size * 0.6; em -= 2) {
    pango_font_description_set_absolute_size (font, em * PANGO_SCALE);
    pango_layout_set_font_description (layout, font);
    pango_layout_get_pixel_extents (layout, NULL, &box);
    if (box.width <= width)
      break;
  }
  pango_font_description_free (font);
  pango_layout_set_width (layout, (int) width * PANGO_SCALE);
  pango_layout_set_ellipsize (layout, PANGO_ELLIPSIZE_END);
  cairo_move_to (cr, x, y - box.height / 2.0);
  cairo_set_source_rgb (cr, 1, 1, 1);
  pango_cairo_show_layout (cr, layout);
  g_object_unref (layout);
  g_object_unref (context);
}

/* Work is a full line that gets shorter, rest the same in dashes: told apart without colour. */
static void
draw_bar (cairo_t *cr, const LapOverlayState *state, double x, double y, double width)
{
  static const double dashes[] = { 14, 10 };
  gboolean work = state->interval->kind == LAP_INTERVAL_WORK;

  cairo_save (cr);
  cairo_set_line_width (cr, BAR);
  cairo_set_source_rgb (cr, work ? 0.34 : 1, work ? 0.71 : 0.85, work ? 0.91 : 0.45); /* sky; pale orange */
  if (!work)
    cairo_set_dash (cr, dashes, G_N_ELEMENTS (dashes), 0);
  cairo_move_to (cr, x, y);
  cairo_rel_line_to (cr, width * state->left / state->interval->seconds, 0);
  cairo_stroke (cr);
  cairo_restore (cr);
}

static void
draw_panel (cairo_t *cr, const LapOverlayState *state)
{
  g_autofree char *clock = lap_clock_text (state->left);
  double x = CLOCK_WIDTH + PANEL_PAD, wide = PANEL_WIDTH - x - PANEL_PAD, middle = (PANEL_HEIGHT - BAR) / 2.0;
  gboolean next = *state->next != '\0';

  rounded (cr, 0, 0, PANEL_WIDTH, PANEL_HEIGHT, 24);
  cairo_set_source_rgba (cr, 0.05, 0.06, 0.08, 0.74); /* white on it is 7 : 1 and more over a white film */
  cairo_fill (cr);
  put_text (cr, LAP_WEIGHT_HEAVY, 112, clock, PANEL_PAD, middle, CLOCK_WIDTH - PANEL_PAD);
  put_text (cr, LAP_WEIGHT_STRONG, 56, state->title, x, next ? middle - 28 : middle, wide);
  if (next)
    put_text (cr, LAP_WEIGHT_PLAIN, 38, state->next, x, middle + 40, wide);
  draw_bar (cr, state, PANEL_PAD, PANEL_HEIGHT - BAR - 8, PANEL_WIDTH - 2 * PANEL_PAD);
}

void
lap_overlay_draw (cairo_t *cr, int width, int height, const LapOverlayState *state)
{
  double scale = MIN (width, height) / (double) SHORT;

  cairo_save (cr);
  cairo_set_operator (cr, CAIRO_OPERATOR_CLEAR);
  cairo_paint (cr);
  cairo_restore (cr);
  if (state->interval == NULL)
    return;
  cairo_save (cr);
  cairo_translate (cr, width * SAFE, height * SAFE);
  cairo_scale (cr, scale, scale);
  draw_panel (cr, state);
  cairo_restore (cr);
}
