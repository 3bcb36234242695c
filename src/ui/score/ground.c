/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/ground.h"

#include "ui/palette.h"
#include "ui/picture.h"
#include "ui/score/paint.h"

#include <adwaita.h>

#define RADIUS 2.5
#define TAIL   0.6  /* of the height of the body */
#define MOST   512  /* pictures that are kept */
#define WIDEST 4096 /* px of a picture; what is wider is painted in place */

static void
paint_body (cairo_t *cr, const LapGround *g, int x)
{
  GdkRGBA work = lap_colour (LAP_COLOUR_WORK), fill = lap_colour (g->pale ? LAP_COLOUR_WORK2 : LAP_COLOUR_WORK);
  GdkRGBA line = lap_colour (LAP_COLOUR_LINE2), talk = lap_colour (LAP_COLOUR_TALK);

  if (g->kind == LAP_BOX_TALK) {
    lap_paint_box (cr, NULL, &talk, 1.5, RADIUS, x + 1, 0, g->body - 2, g->height);
    lap_paint_hatch (cr, LAP_HATCH_WORDS, &talk, x + 3, 2, g->body - 6, g->height - 4);
  } else if (g->kind == LAP_BOX_PAUSE)
    lap_paint_box (cr, NULL, &line, 1.5, RADIUS, x + 1, 0, g->body - 2, g->height);
  else if (g->hollow) {
    cairo_save (cr);
    cairo_set_dash (cr, (double[]) { 4, 3 }, 2, 0);
    lap_paint_box (cr, NULL, &work, 1.5, RADIUS, x + 1, 0, g->body - 2, g->height);
    cairo_restore (cr);
  } else
    lap_paint_box (cr, &fill, g->pale ? &work : NULL, 1, RADIUS, x, 0, g->body, g->height);
}

static void
paint_cb (cairo_t *cr, gpointer data)
{
  const LapGround *g = data;
  int tail = g->height * TAIL;
  GdkRGBA hatch = lap_colour (g->kind == LAP_BOX_GAP ? LAP_COLOUR_LINE2 : LAP_COLOUR_WORK);

  paint_body (cr, g, g->mirrored ? g->width - g->body : 0);
  lap_paint_hatch (cr, LAP_HATCH_REST, &hatch, g->mirrored ? 0 : g->body, (g->height - tail) / 2, g->width - g->body,
                   tail);
}

static GskRenderNode *
picture_of (const LapGround *g)
{
  static GHashTable *kept;
  AdwStyleManager *manager = adw_style_manager_get_default ();
  g_autofree char *key = g_strdup_printf ("%d %d %d %d %d %d %d %d %d %d", g->kind, g->pale, g->hollow, g->mirrored, g->width, g->body,
                                          g->height, g->scale, adw_style_manager_get_dark (manager),
                                          adw_style_manager_get_high_contrast (manager));
  GskRenderNode *picture;

  if (kept == NULL)
    kept = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, (GDestroyNotify) gsk_render_node_unref);
  picture = g_hash_table_lookup (kept, key);
  if (picture != NULL)
    return picture;
  if (g_hash_table_size (kept) >= MOST)
    g_hash_table_remove_all (kept);
  picture = lap_picture_new (g->width, g->height, g->scale, paint_cb, (gpointer) g);
  g_hash_table_insert (kept, g_steal_pointer (&key), picture);
  return picture;
}

void
lap_ground_draw (GtkSnapshot *snapshot, const LapGround *g, int top)
{
  cairo_t *cr;

  if (g->width <= 0 || g->height <= 0)
    return;
  if (g->width <= WIDEST) {
    lap_picture_draw (picture_of (g), snapshot, 0, top);
    return;
  }
  cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, top, g->width, g->height));
  cairo_translate (cr, 0, top);
  paint_cb (cr, (gpointer) g);
  cairo_destroy (cr);
}

void
lap_ground_draw_none (GtkSnapshot *snapshot, int width, int top, int height)
{
  cairo_t *cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, top, width, height));
  GdkRGBA work = lap_colour (LAP_COLOUR_WORK);

  gdk_cairo_set_source_rgba (cr, &work);
  cairo_set_line_width (cr, 2);
  cairo_set_dash (cr, (double[]) { 8, 5 }, 2, 0);
  cairo_move_to (cr, 0, top + height - 1);
  cairo_line_to (cr, width, top + height - 1);
  cairo_stroke (cr);
  cairo_destroy (cr);
}
