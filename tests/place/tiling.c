/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/tiling.h"

static const LapTileSizes sizes = { .width = 196, .least = 84, .tile_height = 90, .heading_height = 24, .gap = 8 };
static const guint counts[] = { 3, 0, 1, 4 };

static void
test_places (void)
{
  /* Two columns of 94; 24 + 90 + 8 + 90 = 212, a gap, 24 + 90, a gap, 24 + 2 rows. */
  static const LapTileRect wanted[] = {
    { 0, 24, 94, 90 }, { 102, 24, 94, 90 }, { 0, 122, 94, 90 }, { 0, 244, 94, 90 },
    { 0, 366, 94, 90 }, { 102, 366, 94, 90 }, { 0, 464, 94, 90 }, { 102, 464, 94, 90 },
  };
  g_autoptr (LapTiling) tiles = lap_tiling_new (&sizes, counts, G_N_ELEMENTS (counts));

  g_assert_cmpuint (tiles->columns, ==, 2);
  g_assert_cmpuint (tiles->n, ==, G_N_ELEMENTS (wanted));
  g_assert_cmpint (tiles->height, ==, 554);
  for (guint i = 0; i < tiles->n; i++) {
    LapTileRect is = lap_tiling_place (tiles, i);

    g_assert_cmpmem (&is, sizeof is, &wanted[i], sizeof is);
    g_assert_cmpuint (lap_tiling_at (tiles, is.x, is.y), ==, i);
    g_assert_cmpuint (lap_tiling_at (tiles, is.x + is.width - 1, is.y + is.height - 1), ==, i);
    g_assert_cmpuint (lap_tiling_at (tiles, is.x + is.width, is.y), ==, LAP_NO_TILE);
    g_assert_cmpuint (lap_tiling_at (tiles, is.x, is.y - 1), ==, LAP_NO_TILE);
  }
  g_assert_cmpint (lap_tiling_heading (tiles, 1).height, ==, 0);
  g_assert_cmpint (lap_tiling_heading (tiles, 2).y, ==, 220);
  g_assert_cmpuint (lap_tiling_at (tiles, 120, 130), ==, LAP_NO_TILE); /* beside a last tile */
}

/* However wide it is, a row is filled to both edges. */
static void
test_widths (void)
{
  for (int width = 60; width < 700; width++) {
    LapTileSizes here = sizes;
    g_autoptr (LapTiling) tiles = NULL;
    LapTileRect last;

    here.width = width;
    tiles = lap_tiling_new (&here, (guint[]) { 20 }, 1);
    last = lap_tiling_place (tiles, tiles->columns - 1);
    g_assert_cmpint (last.x + last.width, ==, width);
    g_assert_true (last.width >= MIN (width, sizes.least));
    if (width >= 2 * sizes.least + sizes.gap)
      g_assert_cmpuint (tiles->columns, >, 1);
  }
}

/* What is visible is what a look at every tile finds. */
static void
test_visible (void)
{
  g_autoptr (LapTiling) tiles = lap_tiling_new (&sizes, counts, G_N_ELEMENTS (counts));

  for (int y = -100; y < tiles->height + 50; y++)
    for (int high = 1; high < 300; high += 37) {
      guint first, end, n = 0, least = tiles->n;

      lap_tiling_visible (tiles, y, y + high, &first, &end);
      for (guint i = 0; i < tiles->n; i++) {
        LapTileRect rect = lap_tiling_place (tiles, i);

        if (rect.y < y + high && rect.y + rect.height > y) {
          least = MIN (least, i);
          n++;
        }
      }
      g_assert_cmpuint (end - first, ==, n);
      if (n > 0)
        g_assert_cmpuint (first, ==, least);
    }
}

static void
test_steps (void)
{
  static const struct { guint from; LapTileStep step; guint to; } rows[] = {
    { 0, LAP_TILING_ON, 1 }, { 2, LAP_TILING_ON, 3 }, { 7, LAP_TILING_ON, LAP_NO_TILE },
    { 0, LAP_TILING_BACK, LAP_NO_TILE }, { 3, LAP_TILING_BACK, 2 },
    { 0, LAP_TILING_DOWN, 2 }, { 1, LAP_TILING_DOWN, 2 }, { 2, LAP_TILING_DOWN, 3 }, { 3, LAP_TILING_DOWN, 4 },
    { 5, LAP_TILING_DOWN, 7 }, { 7, LAP_TILING_DOWN, LAP_NO_TILE },
    { 7, LAP_TILING_UP, 5 }, { 5, LAP_TILING_UP, 3 }, { 3, LAP_TILING_UP, 2 }, { 2, LAP_TILING_UP, 0 },
    { 1, LAP_TILING_UP, LAP_NO_TILE },
    { 5, LAP_TILING_FIRST, 0 }, { 2, LAP_TILING_LAST, 7 },
  };
  g_autoptr (LapTiling) tiles = lap_tiling_new (&sizes, counts, G_N_ELEMENTS (counts));
  g_autoptr (LapTiling) none = lap_tiling_new (&sizes, NULL, 0);

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    g_assert_cmpuint (lap_tiling_step (tiles, rows[i].from, rows[i].step), ==, rows[i].to);
  g_assert_cmpuint (lap_tiling_step (none, 0, LAP_TILING_LAST), ==, LAP_NO_TILE);
  g_assert_cmpuint (lap_tiling_at (none, 0, 0), ==, LAP_NO_TILE);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/place/tiling/places", test_places);
  g_test_add_func ("/place/tiling/widths", test_widths);
  g_test_add_func ("/place/tiling/visible", test_visible);
  g_test_add_func ("/place/tiling/steps", test_steps);
  return g_test_run ();
}
