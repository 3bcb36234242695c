/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is kept is cut to what has any ink: to show the rest would cost as much.
 */
#include "ui/picture.h"

#include <string.h>

/* Of a node's drawing: the surface that it paints. */
static const cairo_user_data_key_t painted;

/* Whole px, 0 × 0 without any ink. */
static cairo_rectangle_int_t
ink_of (cairo_surface_t *surface, int width, int height, int scale)
{
  const guchar *data = cairo_image_surface_get_data (surface);
  int stride = cairo_image_surface_get_stride (surface), left = width, right = 0, top = height, bottom = 0;

  for (int y = 0; y < height * scale; y++) {
    const guint32 *row = (const guint32 *) (data + (gsize) y * stride);

    for (int x = 0; x < width * scale; x++)
      if (row[x] != 0) {
        left = MIN (left, x / scale);
        right = MAX (right, x / scale + 1);
        top = MIN (top, y / scale);
        bottom = MAX (bottom, y / scale + 1);
      }
  }
  return (cairo_rectangle_int_t) { left, top, MAX (right - left, 0), MAX (bottom - top, 0) };
}

static cairo_surface_t *
surface_new (int width, int height, int scale)
{
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_ARGB32, width * scale, height * scale);

  cairo_surface_set_device_scale (surface, scale, scale);
  return surface;
}

/* All of @place, from @surface with its corner at @x, @y. Takes @cr. */
static void
fill (cairo_t *cr, const cairo_rectangle_int_t *place, cairo_surface_t *surface, int x, int y)
{
  cairo_set_source_surface (cr, surface, x, y);
  cairo_rectangle (cr, place->x, place->y, place->width, place->height);
  cairo_fill (cr);
  cairo_destroy (cr);
}

/* Lets @node paint what of @surface has ink. */
static void
keep (GskRenderNode *node, cairo_surface_t *surface, const cairo_rectangle_int_t *ink, int scale)
{
  cairo_surface_t *cut = surface_new (ink->width, ink->height, scale);

  fill (cairo_create (cut), &(cairo_rectangle_int_t) { 0, 0, ink->width, ink->height }, surface, -ink->x, -ink->y);
  fill (gsk_cairo_node_get_draw_context (node), ink, cut, ink->x, ink->y);
  cairo_surface_set_user_data (gsk_cairo_node_get_surface (node), &painted, cut,
                               (cairo_destroy_func_t) cairo_surface_destroy);
}

GskRenderNode *
lap_picture_new (int width, int height, int scale, LapPicturePaint paint, gpointer data)
{
  cairo_surface_t *surface = surface_new (width, height, scale);
  cairo_t *cr = cairo_create (surface);
  cairo_rectangle_int_t ink;
  GskRenderNode *node;

  paint (cr, data);
  cairo_destroy (cr);
  cairo_surface_flush (surface);
  ink = ink_of (surface, width, height, scale);
  node = gsk_cairo_node_new (&GRAPHENE_RECT_INIT (ink.x, ink.y, ink.width, ink.height));
  if (ink.width > 0)
    keep (node, surface, &ink, scale);
  cairo_surface_destroy (surface);
  return node;
}

/* Without ink there is no surface. */
static gboolean
has_same_ink (GskRenderNode *picture, GskRenderNode *other)
{
  cairo_surface_t *node = gsk_cairo_node_get_surface (picture), *other_node = gsk_cairo_node_get_surface (other), *a, *b;

  if (node == NULL || other_node == NULL)
    return node == other_node;
  a = cairo_surface_get_user_data (node, &painted);
  b = cairo_surface_get_user_data (other_node, &painted);
  return cairo_image_surface_get_height (a) == cairo_image_surface_get_height (b) &&
         cairo_image_surface_get_stride (a) == cairo_image_surface_get_stride (b) &&
         memcmp (cairo_image_surface_get_data (a), cairo_image_surface_get_data (b),
                 (gsize) cairo_image_surface_get_stride (a) * cairo_image_surface_get_height (a)) == 0;
}

gboolean
lap_picture_is_same (GskRenderNode *picture, GskRenderNode *other)
{
  graphene_rect_t place, other_place;

  gsk_render_node_get_bounds (picture, &place);
  gsk_render_node_get_bounds (other, &other_place);
  return graphene_rect_equal (&place, &other_place) && has_same_ink (picture, other);
}

void
lap_picture_draw (GskRenderNode *picture, GtkSnapshot *snapshot, double x, double y)
{
  gtk_snapshot_save (snapshot);
  gtk_snapshot_translate (snapshot, &GRAPHENE_POINT_INIT (x, y));
  gtk_snapshot_append_node (snapshot, picture);
  gtk_snapshot_restore (snapshot);
}
