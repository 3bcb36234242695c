/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/picture.h"

GskRenderNode *
lap_picture_new (int width, int height, int scale, LapPicturePaint paint, gpointer data)
{
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_ARGB32, width * scale, height * scale);
  GskRenderNode *node = gsk_cairo_node_new (&GRAPHENE_RECT_INIT (0, 0, width, height));
  cairo_t *cr;

  cairo_surface_set_device_scale (surface, scale, scale);
  cr = cairo_create (surface);
  paint (cr, data);
  cairo_destroy (cr);
  cr = gsk_cairo_node_get_draw_context (node);
  cairo_set_source_surface (cr, surface, 0, 0);
  cairo_rectangle (cr, 0, 0, width, height);
  cairo_fill (cr);
  cairo_destroy (cr);
  cairo_surface_destroy (surface);
  return node;
}

void
lap_picture_draw (GskRenderNode *picture, GtkSnapshot *snapshot, double x, double y)
{
  gtk_snapshot_save (snapshot);
  gtk_snapshot_translate (snapshot, &GRAPHENE_POINT_INIT (x, y));
  gtk_snapshot_append_node (snapshot, picture);
  gtk_snapshot_restore (snapshot);
}
