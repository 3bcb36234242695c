/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/tiles.h"

#include "ui/picture.h"

#include <math.h>

#define TILE 384 /* px of content in a tile */
#define KEPT 1   /* tiles on either side of the view, for who scrolls back a little */

struct _LapTiles {
  GHashTable *nodes;  /* number -> GskRenderNode */
  GHashTable *former; /* the same, while one of them may still be true */
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
  self->former = g_hash_table_new_full (NULL, NULL, NULL, (GDestroyNotify) gsk_render_node_unref);
  return self;
}

void
lap_tiles_free (LapTiles *self)
{
  g_hash_table_unref (self->nodes);
  g_hash_table_unref (self->former);
  g_free (self);
}

static void
drop_all (LapTiles *self)
{
  g_hash_table_remove_all (self->nodes);
  g_hash_table_remove_all (self->former);
}

void
lap_tiles_clear (LapTiles *self)
{
  GHashTable *former = self->nodes;

  if (g_hash_table_size (self->nodes) == 0)
    return;
  g_hash_table_remove_all (self->former);
  self->nodes = self->former;
  self->former = former;
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

typedef struct {
  LapTilePaint paint;
  gpointer     lane;
  LapAxis      part;
  int          height;
} Tile;

static void
paint_cb (cairo_t *cr, gpointer data)
{
  const Tile *tile = data;

  cairo_translate (cr, -LAP_TILE_BLEED, 0);
  tile->paint (tile->lane, cr, &tile->part, tile->height);
}

/* What looks as it did is the same node, so that GTK sees that nothing there has to be drawn. Takes @node. */
static GskRenderNode *
or_former (LapTiles *self, int tile, GskRenderNode *node)
{
  GskRenderNode *former = g_hash_table_lookup (self->former, GINT_TO_POINTER (tile));

  if (former == NULL || !lap_picture_is_same (former, node))
    return node;
  gsk_render_node_unref (node);
  return gsk_render_node_ref (former);
}

static GskRenderNode *
node_of (LapTiles *self, const LapAxis *axis, int tile, LapTilePaint paint, gpointer lane)
{
  GskRenderNode *node = g_hash_table_lookup (self->nodes, GINT_TO_POINTER (tile));

  if (node != NULL)
    return node;
  node = lap_picture_new (TILE, self->height, self->scale, paint_cb, &(Tile) {
    paint, lane, part_of (axis, self->origin + tile * TILE - LAP_TILE_BLEED, TILE + 2 * LAP_TILE_BLEED), self->height,
  });
  self->n_painted++;
  node = or_former (self, tile, node);
  g_hash_table_insert (self->nodes, GINT_TO_POINTER (tile), node);
  return node;
}

static void
let_far_go (LapTiles *self, int first, int last)
{
  GHashTableIter iter;
  gpointer tile;

  g_hash_table_iter_init (&iter, self->nodes);
  while (g_hash_table_iter_next (&iter, &tile, NULL))
    if (GPOINTER_TO_INT (tile) < first - KEPT || GPOINTER_TO_INT (tile) > last + KEPT)
      g_hash_table_iter_remove (&iter);
}

static void
draw_tiles (LapTiles *self, GtkSnapshot *snapshot, const LapAxis *axis, LapTilePaint paint, gpointer lane)
{
  int first = floor ((axis->offset - self->origin) / TILE);
  int last = floor ((axis->offset + axis->view - 1 - self->origin) / TILE);

  for (int tile = first; tile <= last; tile++) {
    double along = round (self->origin + tile * TILE - axis->offset);

    lap_picture_draw (node_of (self, axis, tile, paint, lane), snapshot,
                      axis->mirrored ? axis->view - along - TILE : along, 0);
  }
  let_far_go (self, first, last);
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
    if (g_hash_table_size (self->nodes) == 0 && g_hash_table_size (self->former) == 0)
      self->origin = axis->offset;
    draw_tiles (self, snapshot, axis, paint, lane);
    g_hash_table_remove_all (self->former);
    return;
  }
  drop_all (self);
  cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, axis->view, height));
  paint (lane, cr, axis, height);
  cairo_destroy (cr);
  self->n_painted++;
}
