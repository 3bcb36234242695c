/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A tile is a node that paints an image surface: to show it again is one blit, where a texture would be copied first
 * and strokes would be made again.
 */
#include "ui/score/tiles.h"

#include <math.h>

#define TILE 384 /* px of content in a tile */
#define MOST 24  /* tiles that are kept */

struct _LapTiles {
  GHashTable *nodes;  /* number -> GskRenderNode */
  double      origin; /* px of the content where tile 0 begins, so that scrolling by whole px moves by whole px */
  guint       serial; /* of the axis it was painted for */
  int         height, scale;
  gboolean    mirrored;
  guint       n_painted;
};

LapTiles *
lap_tiles_new (void)
{
  LapTiles *self = g_new0 (LapTiles, 1);

  self->nodes = g_hash_table_new_full (NULL, NULL, NULL, (GDestroyNotify) gsk_render_node_unref);
  return self;
}

void
lap_tiles_free (LapTiles *self)
{
  g_hash_table_unref (self->nodes);
  g_free (self);
}

void
lap_tiles_clear (LapTiles *self)
{
  g_hash_table_remove_all (self->nodes);
}

guint
lap_tiles_n_painted (LapTiles *self)
{
  return self->n_painted;
}

/* A part of @axis: @width px of content from @from on. */
static LapAxis
part_of (const LapAxis *axis, double from, double width)
{
  LapAxis part = *axis;

  part.offset = from;
  part.view = width;
  return part;
}

static GskRenderNode *
node_new (LapTiles *self, const LapAxis *axis, int tile, LapTilePaint paint, gpointer lane)
{
  LapAxis part = part_of (axis, self->origin + tile * TILE - LAP_TILE_BLEED, TILE + 2 * LAP_TILE_BLEED);
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_ARGB32, TILE * self->scale,
                                                         self->height * self->scale);
  GskRenderNode *node = gsk_cairo_node_new (&GRAPHENE_RECT_INIT (0, 0, TILE, self->height));
  cairo_t *cr;

  cairo_surface_set_device_scale (surface, self->scale, self->scale);
  cr = cairo_create (surface);
  cairo_translate (cr, -LAP_TILE_BLEED, 0);
  paint (lane, cr, &part, self->height);
  cairo_destroy (cr);
  cr = gsk_cairo_node_get_draw_context (node);
  cairo_set_source_surface (cr, surface, 0, 0);
  cairo_rectangle (cr, 0, 0, TILE, self->height);
  cairo_fill (cr);
  cairo_destroy (cr);
  cairo_surface_destroy (surface);
  self->n_painted++;
  return node;
}

static GskRenderNode *
node_of (LapTiles *self, const LapAxis *axis, int tile, LapTilePaint paint, gpointer lane)
{
  GskRenderNode *node = g_hash_table_lookup (self->nodes, GINT_TO_POINTER (tile));

  if (node != NULL)
    return node;
  if (g_hash_table_size (self->nodes) >= MOST)
    lap_tiles_clear (self);
  node = node_new (self, axis, tile, paint, lane);
  g_hash_table_insert (self->nodes, GINT_TO_POINTER (tile), node);
  return node;
}

static void
draw_tiles (LapTiles *self, GtkSnapshot *snapshot, const LapAxis *axis, LapTilePaint paint, gpointer lane)
{
  int first = floor ((axis->offset - self->origin) / TILE);
  int last = floor ((axis->offset + axis->view - 1 - self->origin) / TILE);

  for (int tile = first; tile <= last; tile++) {
    double along = round (self->origin + tile * TILE - axis->offset);
    GskRenderNode *node = node_of (self, axis, tile, paint, lane);

    gtk_snapshot_save (snapshot);
    gtk_snapshot_translate (snapshot, &GRAPHENE_POINT_INIT (axis->mirrored ? axis->view - along - TILE : along, 0));
    gtk_snapshot_append_node (snapshot, node);
    gtk_snapshot_restore (snapshot);
  }
}

/* Whether what was drawn last still is how the content looks, the offset aside. */
static gboolean
is_same (LapTiles *self, const LapAxis *axis, int height, int scale)
{
  gboolean same = self->serial == axis->serial && self->height == height && self->scale == scale &&
                  self->mirrored == axis->mirrored;

  self->serial = axis->serial;
  self->height = height;
  self->scale = scale;
  self->mirrored = axis->mirrored;
  return same;
}

void
lap_tiles_draw (LapTiles *self, GtkSnapshot *snapshot, const LapAxis *axis, int height, int scale, LapTilePaint paint,
                gpointer lane)
{
  cairo_t *cr;

  if (height <= 0 || axis->view <= 0)
    return;
  if (is_same (self, axis, height, scale)) {
    if (g_hash_table_size (self->nodes) == 0)
      self->origin = axis->offset;
    draw_tiles (self, snapshot, axis, paint, lane);
    return;
  }
  lap_tiles_clear (self);
  cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, axis->view, height));
  paint (lane, cr, axis, height);
  cairo_destroy (cr);
  self->n_painted++;
}
