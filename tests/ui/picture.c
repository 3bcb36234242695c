/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A picture shows, px for px, what was painted, and takes no more room than its ink.
 */
#include "ui/picture.h"

#define WIDTH  40
#define HEIGHT 30

/* Two bars; the second is half transparent. */
static void
bars_cb (cairo_t *cr, gpointer data)
{
  cairo_set_source_rgb (cr, 0.2, 0.4, 0.8);
  cairo_rectangle (cr, 7, 5, 20, 1);
  cairo_fill (cr);
  cairo_set_source_rgba (cr, 0.9, 0.1, 0, 0.5);
  cairo_rectangle (cr, 12, 8.5, 4, 9);
  cairo_fill (cr);
}

static void
nothing_cb (cairo_t *cr, gpointer data)
{
}

static cairo_surface_t *
surface_new (int scale)
{
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_ARGB32, WIDTH * scale, HEIGHT * scale);

  cairo_surface_set_device_scale (surface, scale, scale);
  return surface;
}

static void
test_same (gconstpointer data)
{
  int scale = GPOINTER_TO_INT (data);
  GskRenderNode *node = lap_picture_new (WIDTH, HEIGHT, scale, bars_cb, NULL);
  cairo_surface_t *shown = surface_new (scale), *painted = surface_new (scale);
  cairo_t *cr = cairo_create (shown);
  graphene_rect_t bounds;

  gsk_render_node_get_bounds (node, &bounds);
  g_assert_true (graphene_rect_equal (&bounds, &GRAPHENE_RECT_INIT (7, 5, 20, 13)));
  gsk_render_node_draw (node, cr);
  cairo_destroy (cr);
  cr = cairo_create (painted);
  bars_cb (cr, NULL);
  cairo_destroy (cr);
  cairo_surface_flush (shown);
  cairo_surface_flush (painted);
  g_assert_cmpmem (cairo_image_surface_get_data (shown), cairo_image_surface_get_stride (shown) * HEIGHT * scale,
                   cairo_image_surface_get_data (painted), cairo_image_surface_get_stride (painted) * HEIGHT * scale);
  cairo_surface_destroy (shown);
  cairo_surface_destroy (painted);
  gsk_render_node_unref (node);
}

static void
test_empty (void)
{
  GskRenderNode *node = lap_picture_new (WIDTH, HEIGHT, 1, nothing_cb, NULL);
  graphene_rect_t bounds;

  gsk_render_node_get_bounds (node, &bounds);
  g_assert_cmpfloat (bounds.size.width, ==, 0);
  g_assert_cmpfloat (bounds.size.height, ==, 0);
  gsk_render_node_unref (node);
}

int
main (int argc, char **argv)
{
  gtk_test_init (&argc, &argv, NULL);
  g_test_add_data_func ("/ui/picture/same", GINT_TO_POINTER (1), test_same);
  g_test_add_data_func ("/ui/picture/same-at-two", GINT_TO_POINTER (2), test_same);
  g_test_add_func ("/ui/picture/empty", test_empty);
  return g_test_run ();
}
