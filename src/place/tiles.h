/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where tiles go that stand in groups under headings, in as many columns as there is room for: the catalogue. All tiles
 * are of one size, so a place follows from a number at once and nothing is kept for each; y grows downwards from the
 * top of the whole, x is that of a layout from left to right.
 *
 * Always true: tiles are numbered from 0 through all groups; a group begins in a new row below its heading; an empty
 * group takes no room.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

typedef struct {
  int width;                  /* of it all */
  int least;                  /* px a tile needs in width; more when there is more room */
  int tile_height, heading_height;
  int gap;                    /* between tiles, and above a heading that isn't the first */
} LapTileSizes;

typedef struct {
  LapTileSizes sizes;
  guint        columns, n, n_groups;
  int          height;        /* of it all */
  guint       *first;         /* n_groups + 1: the first tile of each group */
  int         *top;           /* n_groups + 1: of each heading */
} LapTiles;

typedef struct {
  int x, y, width, height;
} LapTileRect;

typedef enum {
  LAP_TILES_BACK, LAP_TILES_ON, LAP_TILES_UP, LAP_TILES_DOWN, LAP_TILES_FIRST, LAP_TILES_LAST,
} LapTileStep;

#define LAP_NO_TILE G_MAXUINT

/* @counts says how many tiles each of the @n_groups has. */
LapTiles   *lap_tiles_new     (const LapTileSizes *sizes,
                               const guint        *counts,
                               guint               n_groups);
void        lap_tiles_free    (LapTiles           *tiles);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapTiles, lap_tiles_free)

LapTileRect lap_tiles_place   (const LapTiles     *tiles,
                               guint               tile);
LapTileRect lap_tiles_heading (const LapTiles     *tiles,
                               guint               group);
guint       lap_tiles_group   (const LapTiles     *tiles,
                               guint               tile);
/* The tile at @x, @y, or LAP_NO_TILE. */
guint       lap_tiles_at      (const LapTiles     *tiles,
                               int                 x,
                               int                 y);
/* The tiles that touch the rows of px from @y0 to @y1: from *@first to before *@end. */
void        lap_tiles_visible (const LapTiles     *tiles,
                               int                 y0,
                               int                 y1,
                               guint              *first,
                               guint              *end);
/* Where a key leads from @tile: up and down stay in the column as well as they can, also across headings. LAP_NO_TILE
 * where nothing lies that way. */
guint       lap_tiles_step    (const LapTiles     *tiles,
                               guint               tile,
                               LapTileStep         step);

G_END_DECLS
