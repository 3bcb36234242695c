/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A shelf of pictures for the catalogue at hand, which it holds. What has no figure is kept too, so that it is
 * looked for once.
 */
#include "ui/figures.h"

#include "sheets/figure-paint.h"
#include "ui/picture.h"

#include <adwaita.h>

#define PALE 0.55 /* of a figure in a later round */
#define MOST 4000 /* pictures; more than any session shows, and then the shelf is cleared */

typedef struct {
  LapCatalogue *catalogue;
  LapFigureSet *set;
  GHashTable   *pictures; /* "squat 60 40 1 1 0" -> GskRenderNode, or NULL */
} Shelf;

static JsonObject *
find_figure (const char *id, gpointer data)
{
  LapExercise *e = lap_catalogue_find (data, id);

  return e != NULL && e->figure != NULL && JSON_NODE_HOLDS_OBJECT (e->figure) ? json_node_get_object (e->figure) : NULL;
}

static void
picture_free (gpointer picture)
{
  if (picture != NULL)
    gsk_render_node_unref (picture);
}

/* The shelf of the catalogue that was asked for last: a window looks at one at a time. */
static Shelf *
shelf_of (LapCatalogue *catalogue)
{
  static Shelf shelf;

  /* A session with exercises of its own has a new catalogue after each edit, mostly of the same exercises. */
  if (shelf.catalogue != NULL && lap_catalogue_is_same (shelf.catalogue, catalogue))
    return &shelf;
  if (shelf.catalogue != NULL) {
    g_hash_table_unref (shelf.pictures);
    lap_figure_set_free (shelf.set);
    lap_catalogue_unref (shelf.catalogue);
  }
  shelf.catalogue = lap_catalogue_ref (catalogue);
  shelf.set = lap_figure_set_new (find_figure, catalogue);
  shelf.pictures = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, picture_free);
  return &shelf;
}

typedef struct {
  const LapFigureDrawing *drawing;
  gboolean                dark, pale;
} Look;

static void
paint_cb (cairo_t *cr, gpointer data)
{
  const Look *look = data;

  cairo_push_group (cr);
  lap_figure_paint (cr, look->drawing, lap_figure_palette (look->dark ? LAP_FIGURE_DARK : LAP_FIGURE_LIGHT));
  cairo_pop_group_to_source (cr);
  cairo_paint_with_alpha (cr, look->pale ? PALE : 1);
}

static GskRenderNode *
picture_new (const LapFigure *figure, int width, int height, int scale, gboolean dark, gboolean pale)
{
  g_autoptr (LapFigureDrawing) drawing =
    lap_figure_draw (figure, LAP_FIGURE_ICON, LAP_FIGURE_NO_FLOOR,
                     lap_figure_key_phase (figure, lap_figure_poster_key (figure)), width, height);

  return lap_picture_new (width, height, scale, paint_cb, &(Look) { drawing, dark, pale });
}

GskRenderNode *
lap_figure_picture (LapCatalogue *catalogue, LapExercise *exercise, int width, int height, int scale,
                    gboolean pale)
{
  Shelf *shelf = shelf_of (catalogue);
  gboolean dark = adw_style_manager_get_dark (adw_style_manager_get_default ());
  g_autofree char *key = g_strdup_printf ("%s %d %d %d %d %d", exercise->id, width, height, scale, dark, pale);
  const LapFigure *figure;
  gpointer picture;

  if (g_hash_table_lookup_extended (shelf->pictures, key, NULL, &picture))
    return picture;
  if (g_hash_table_size (shelf->pictures) >= MOST)
    g_hash_table_remove_all (shelf->pictures);
  figure = lap_figure_set_get (shelf->set, exercise->id, NULL);
  picture = figure != NULL ? picture_new (figure, width, height, scale, dark, pale) : NULL;
  g_hash_table_insert (shelf->pictures, g_steal_pointer (&key), picture);
  return picture;
}

void
lap_figure_play (cairo_t *cr, LapCatalogue *catalogue, LapExercise *exercise, double seconds, double per_rep,
                 gboolean still, int width, int height)
{
  const LapFigure *figure = lap_figure_set_get (shelf_of (catalogue)->set, exercise->id, NULL);
  gboolean dark = adw_style_manager_get_dark (adw_style_manager_get_default ());
  g_autoptr (LapFigureDrawing) drawing = NULL;

  if (figure == NULL)
    return;
  drawing = lap_figure_draw (figure, still ? LAP_FIGURE_POSTER : LAP_FIGURE_TILE, LAP_FIGURE_NO_FLOOR,
                             lap_figure_phase (figure, seconds, per_rep), width, height);
  lap_figure_paint (cr, drawing, lap_figure_palette (dark ? LAP_FIGURE_DARK : LAP_FIGURE_LIGHT));
}

double
lap_figure_rep_seconds (const LapBlock *block, const LapExercise *shown)
{
  int tempo = lap_tempo_seconds (block->tempo);

  return tempo > 0 ? tempo : shown->seconds_per_rep;
}
