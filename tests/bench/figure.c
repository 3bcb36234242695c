/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the benchmark runs under callgrind: every exercise of the catalogue is posed, outlined and painted once at
 * SIZE pixels, into a picture (SURFACE raster) or a PDF (vector). The script beside it counts the instructions of
 * the measured functions.
 */
#include "catalogue/catalogue.h"
#include "sheets/figure-paint.h"

#include <cairo-pdf.h>
#include <stdlib.h>

void measured_poses (GPtrArray *figures);
void measured_outlines (GPtrArray *figures, GPtrArray *drawings, double size);
void measured_paint (cairo_t *cr, GPtrArray *drawings);

static JsonObject *
find_figure (const char *id, gpointer data)
{
  LapExercise *exercise = lap_catalogue_find (data, id);

  return exercise != NULL && exercise->figure != NULL ? json_node_get_object (exercise->figure) : NULL;
}

G_GNUC_NO_INLINE void
measured_poses (GPtrArray *figures)
{
  for (guint i = 0; i < figures->len; i++)
    {
      LapFigurePose pose;

      lap_figure_pose (g_ptr_array_index (figures, i), 0.2, &pose);
    }
}

G_GNUC_NO_INLINE void
measured_outlines (GPtrArray *figures, GPtrArray *drawings, double size)
{
  LapFigureLook look = size <= 64.0 ? LAP_FIGURE_ICON : size <= 128.0 ? LAP_FIGURE_TILE : LAP_FIGURE_POSTER;

  for (guint i = 0; i < figures->len; i++)
    g_ptr_array_add (drawings, lap_figure_draw (g_ptr_array_index (figures, i), look, LAP_FIGURE_PLAIN, 0.2, size,
                                                size));
}

G_GNUC_NO_INLINE void
measured_paint (cairo_t *cr, GPtrArray *drawings)
{
  for (guint i = 0; i < drawings->len; i++)
    lap_figure_paint (cr, g_ptr_array_index (drawings, i), lap_figure_palette (LAP_FIGURE_LIGHT));
  cairo_show_page (cr);
  cairo_surface_finish (cairo_get_target (cr));
}

static cairo_status_t
swallow (void *closure, const unsigned char *data, unsigned int length)
{
  *(guint *) closure += length;
  return CAIRO_STATUS_SUCCESS;
}

int
main (int argc, char **argv)
{
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();
  g_autoptr (LapFigureSet) set = lap_figure_set_new (find_figure, catalogue);
  g_autoptr (GPtrArray) figures = g_ptr_array_new ();
  g_autoptr (GPtrArray) drawings = g_ptr_array_new_with_free_func ((GDestroyNotify) lap_figure_drawing_free);
  double size = atof (argv[1]);
  guint written = 0;
  cairo_surface_t *surface = g_str_equal (argv[2], "vector")
                               ? cairo_pdf_surface_create_for_stream (swallow, &written, size, size)
                               : cairo_image_surface_create (CAIRO_FORMAT_ARGB32, size, size);
  cairo_t *cr = cairo_create (surface);

  for (guint i = 0; i < lap_catalogue_n (catalogue); i++)
    g_ptr_array_add (figures, (gpointer) lap_figure_set_get (set, lap_catalogue_nth (catalogue, i)->id, NULL));
  measured_poses (figures);
  measured_outlines (figures, drawings, size);
  measured_paint (cr, drawings);
  cairo_destroy (cr);
  cairo_surface_destroy (surface);
  g_print ("%u\n", figures->len);
  return 0;
}
