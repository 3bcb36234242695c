/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/tiling.h"

static guint
count_of (const LapTiling *tiles, guint group)
{
  return tiles->first[group + 1] - tiles->first[group];
}

static int
rows_height (const LapTiling *tiles, guint n)
{
  int rows = (n + tiles->columns - 1) / tiles->columns;

  return rows > 0 ? rows * tiles->sizes.tile_height + (rows - 1) * tiles->sizes.gap : 0;
}

LapTiling *
lap_tiling_new (const LapTileSizes *sizes, const guint *counts, guint n_groups)
{
  LapTiling *tiles = g_new0 (LapTiling, 1);
  int y = 0;

  tiles->sizes = *sizes;
  tiles->columns = MAX (1, (sizes->width + sizes->gap) / MAX (1, sizes->least + sizes->gap));
  tiles->n_groups = n_groups;
  tiles->first = g_new0 (guint, n_groups + 1);
  tiles->top = g_new0 (int, n_groups + 1);
  for (guint g = 0; g < n_groups; g++) {
    tiles->first[g] = tiles->n;
    tiles->n += counts[g];
    tiles->first[g + 1] = tiles->n;
    y += counts[g] > 0 && y > 0 ? sizes->gap : 0;
    tiles->top[g] = y;
    y += counts[g] > 0 ? sizes->heading_height + rows_height (tiles, counts[g]) : 0;
  }
  tiles->top[n_groups] = tiles->height = y;
  return tiles;
}

void
lap_tiling_free (LapTiling *tiles)
{
  g_free (tiles->first);
  g_free (tiles->top);
  g_free (tiles);
}

guint
lap_tiling_group (const LapTiling *tiles, guint tile)
{
  guint group = 0;

  while (group + 1 < tiles->n_groups && tile >= tiles->first[group + 1])
    group++;
  return group;
}

LapTileRect
lap_tiling_place (const LapTiling *tiles, guint tile)
{
  const LapTileSizes *sizes = &tiles->sizes;
  guint group = lap_tiling_group (tiles, tile), n = tile - tiles->first[group];
  int room = sizes->width + sizes->gap, column = n % tiles->columns, row = n / tiles->columns;
  int x = room * column / (int) tiles->columns, next = room * (column + 1) / (int) tiles->columns;

  return (LapTileRect) { x, tiles->top[group] + sizes->heading_height + row * (sizes->tile_height + sizes->gap),
                         next - x - sizes->gap, sizes->tile_height };
}

LapTileRect
lap_tiling_heading (const LapTiling *tiles, guint group)
{
  int height = count_of (tiles, group) > 0 ? tiles->sizes.heading_height : 0;

  return (LapTileRect) { 0, tiles->top[group], tiles->sizes.width, height };
}

/* The group whose heading or rows hold @y; the last one that begins above it. */
static guint
group_at (const LapTiling *tiles, int y)
{
  guint group = 0;

  for (guint g = 0; g < tiles->n_groups; g++)
    if (count_of (tiles, g) > 0 && tiles->top[g] <= y)
      group = g;
  return group;
}

/* The first tile of the row at or below @y in the group there; the first of the next group below its last row. */
static guint
row_below (const LapTiling *tiles, int y)
{
  guint group = group_at (tiles, y);
  int pitch = tiles->sizes.tile_height + tiles->sizes.gap;
  int row = (y - tiles->top[group] - tiles->sizes.heading_height + tiles->sizes.gap) / pitch;

  return MIN (tiles->first[group] + MAX (0, row) * tiles->columns, tiles->first[group + 1]);
}

guint
lap_tiling_at (const LapTiling *tiles, int x, int y)
{
  guint end;

  if (tiles->n == 0 || y < 0 || y >= tiles->height)
    return LAP_NO_TILE;
  end = MIN (row_below (tiles, y) + tiles->columns, tiles->n);
  for (guint i = row_below (tiles, y); i < end; i++) {
    LapTileRect rect = lap_tiling_place (tiles, i);

    if (x >= rect.x && x < rect.x + rect.width && y >= rect.y && y < rect.y + rect.height)
      return i;
  }
  return LAP_NO_TILE;
}

void
lap_tiling_visible (const LapTiling *tiles, int y0, int y1, guint *first, guint *end)
{
  *first = *end = 0;
  if (tiles->n == 0 || y1 <= 0 || y0 >= tiles->height)
    return;
  *first = *end = row_below (tiles, MAX (0, y0));
  while (*end < tiles->n && lap_tiling_place (tiles, *end).y < y1)
    (*end)++;
}

static guint
neighbour_group (const LapTiling *tiles, guint group, int by)
{
  for (int g = (int) group + by; g >= 0 && g < (int) tiles->n_groups; g += by)
    if (count_of (tiles, g) > 0)
      return g;
  return G_MAXUINT;
}

static guint
step_down (const LapTiling *tiles, guint tile)
{
  guint group = lap_tiling_group (tiles, tile), n = tile - tiles->first[group], count = count_of (tiles, group);
  guint column = n % tiles->columns, last_row = (count - 1) / tiles->columns;

  if (n / tiles->columns < last_row)
    return tiles->first[group] + MIN (n + tiles->columns, count - 1);
  group = neighbour_group (tiles, group, 1);
  return group == G_MAXUINT ? LAP_NO_TILE : tiles->first[group] + MIN (column, count_of (tiles, group) - 1);
}

static guint
step_up (const LapTiling *tiles, guint tile)
{
  guint group = lap_tiling_group (tiles, tile), n = tile - tiles->first[group];
  guint column = n % tiles->columns, count, row;

  if (n >= tiles->columns)
    return tile - tiles->columns;
  group = neighbour_group (tiles, group, -1);
  if (group == G_MAXUINT)
    return LAP_NO_TILE;
  count = count_of (tiles, group);
  row = (count - 1) / tiles->columns;
  return tiles->first[group] + MIN (row * tiles->columns + column, count - 1);
}

guint
lap_tiling_step (const LapTiling *tiles, guint tile, LapTileStep step)
{
  if (tiles->n == 0)
    return LAP_NO_TILE;
  switch (step) {
  case LAP_TILING_BACK:
    return tile > 0 ? tile - 1 : LAP_NO_TILE;
  case LAP_TILING_ON:
    return tile + 1 < tiles->n ? tile + 1 : LAP_NO_TILE;
  case LAP_TILING_UP:
    return step_up (tiles, tile);
  case LAP_TILING_DOWN:
    return step_down (tiles, tile);
  case LAP_TILING_FIRST:
    return 0;
  case LAP_TILING_LAST:
    return tiles->n - 1;
  }
  return LAP_NO_TILE;
}
