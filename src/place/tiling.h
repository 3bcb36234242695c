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
} LapTiling;

typedef struct {
  int x, y, width, height;
} LapTileRect;

typedef enum {
  LAP_TILING_BACK, LAP_TILING_ON, LAP_TILING_UP, LAP_TILING_DOWN, LAP_TILING_FIRST, LAP_TILING_LAST,
} LapTileStep;

#define LAP_NO_TILE G_MAXUINT

/* @counts says how many tiles each of the @n_groups has. */
LapTiling   *lap_tiling_new     (const LapTileSizes *sizes,
                               const guint        *counts,
                               guint               n_groups);
void        lap_tiling_free    (LapTiling           *tiles);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapTiling, lap_tiling_free)

LapTileRect lap_tiling_place   (const LapTiling     *tiles,
                               guint               tile);
LapTileRect lap_tiling_heading (const LapTiling     *tiles,
                               guint               group);
guint       lap_tiling_group   (const LapTiling     *tiles,
                               guint               tile);
/* The tile at @x, @y, or LAP_NO_TILE. */
guint       lap_tiling_at      (const LapTiling     *tiles,
                               int                 x,
                               int                 y);
/* The tiles that touch the rows of px from @y0 to @y1: from *@first to before *@end. */
void        lap_tiling_visible (const LapTiling     *tiles,
                               int                 y0,
                               int                 y1,
                               guint              *first,
                               guint              *end);
/* Where a key leads from @tile: up and down stay in the column as well as they can, also across headings. LAP_NO_TILE
 * where nothing lies that way. */
guint       lap_tiling_step    (const LapTiling     *tiles,
                               guint               tile,
                               LapTileStep         step);

G_END_DECLS
