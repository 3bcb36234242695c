/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Draws every exercise on sheets that a coach can look through: 48, 96 and 400 pixels, light, dark and one
 * colour.
 *
 *   contact-sheet EXERCISES OUT [ID…]   the folder of exercise files, the folder for the PNGs; only these ids
 *   contact-sheet --check EXERCISES     lists what the checks of figure/figure-limits.h find
 *   contact-sheet --strip EXERCISES OUT ID…   eight moments of each movement
 */
#include <json-glib/json-glib.h>

#include "figure/figure.h"
#include "figure/figure-limits.h"
#include "figure/key.h"
#include "sheets/figure-paint.h"

#define SHEET_WIDTH 1500

typedef struct {
  GHashTable *exercises; /* id → JsonParser */
  GPtrArray *ids;
  LapFigureSet *set;
} Catalogue;

static JsonObject *
find_figure (const char *id, gpointer data)
{
  JsonParser *parser = g_hash_table_lookup (data, id);
  JsonObject *exercise = parser != NULL ? json_node_get_object (json_parser_get_root (parser)) : NULL;

  return exercise != NULL && json_object_has_member (exercise, "figure")
           ? json_object_get_object_member (exercise, "figure") : NULL;
}

static int
by_name (gconstpointer a, gconstpointer b)
{
  return g_strcmp0 (*(const char *const *) a, *(const char *const *) b);
}

static gboolean
read_folder (Catalogue *catalogue, const char *folder)
{
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  const char *name = NULL;

  catalogue->exercises = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, g_object_unref);
  catalogue->ids = g_ptr_array_new ();
  catalogue->set = lap_figure_set_new (find_figure, catalogue->exercises);
  while (dir != NULL && (name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *path = g_build_filename (folder, name, NULL);
      JsonParser *parser = json_parser_new ();
      char *id = g_strndup (name, strlen (name) - MIN (strlen (name), strlen (".json")));

      if (!g_str_has_suffix (name, ".json") || !json_parser_load_from_file (parser, path, NULL))
        {
          g_object_unref (parser);
          g_free (id);
          continue;
        }
      g_hash_table_insert (catalogue->exercises, id, parser);
      g_ptr_array_add (catalogue->ids, id);
    }
  g_ptr_array_sort (catalogue->ids, by_name);
  return catalogue->ids->len > 0;
}

static void
write_name (cairo_t *cr, const char *name, double x, double y, double width)
{
  cairo_text_extents_t extents;

  cairo_text_extents (cr, name, &extents);
  cairo_move_to (cr, x + (width - extents.width) / 2.0, y);
  cairo_show_text (cr, name);
}

static void
draw_cell (cairo_t *cr, const LapFigure *figure, LapFigureColours colours, double x, double y, double size,
           double phase)
{
  const LapFigurePalette *palette = lap_figure_palette (colours);
  LapFigureLook look = phase >= 0.0 ? LAP_FIGURE_TILE : size <= 64 ? LAP_FIGURE_ICON : LAP_FIGURE_POSTER;
  double at = phase >= 0.0 ? phase : lap_figure_key_phase (figure, lap_figure_poster_key (figure));
  g_autoptr (LapFigureDrawing) drawing = lap_figure_draw (figure, look, LAP_FIGURE_PLAIN, at, size, size);

  cairo_save (cr);
  cairo_translate (cr, x, y);
  lap_figure_paint (cr, drawing, palette);
  cairo_restore (cr);
}

static int
write_sheet (cairo_surface_t *surface, const char *folder, const char *name)
{
  g_autofree char *path = g_build_filename (folder, name, NULL);
  gboolean fine = cairo_surface_write_to_png (surface, path) == CAIRO_STATUS_SUCCESS;

  cairo_surface_destroy (surface);
  if (!fine)
    g_printerr ("%s: can't be written\n", path);
  return fine ? 0 : 1;
}

static cairo_t *
begin_sheet (cairo_surface_t *surface, LapFigureColours colours, double font)
{
  guint32 paper = lap_figure_palette (colours)->paper,
    ink = lap_figure_palette (colours)->role[LAP_FIGURE_ROLE_BODY];
  cairo_t *cr = cairo_create (surface);

  cairo_set_source_rgb (cr, (paper >> 16) / 255.0, (paper >> 8 & 255) / 255.0, (paper & 255) / 255.0);
  cairo_paint (cr);
  cairo_set_source_rgb (cr, (ink >> 16) / 255.0, (ink >> 8 & 255) / 255.0, (ink & 255) / 255.0);
  cairo_select_font_face (cr, "sans-serif", CAIRO_FONT_SLANT_NORMAL, CAIRO_FONT_WEIGHT_NORMAL);
  cairo_set_font_size (cr, font);
  return cr;
}

/* Sheets of @size pixels a figure, as many as are needed. */
static int
draw_sheets (Catalogue *catalogue, const char *folder, int size, LapFigureColours colours)
{
  static const char *const words[] = { "light", "dark", "print", "one-colour" };
  int foot = size >= 200 ? 26 : size >= 96 ? 16 : 4, cell = size + 12;
  guint columns = MAX (SHEET_WIDTH / cell, size >= 200 ? 6 : 1), rows = size >= 200 ? 5 : 22,
    per = columns * rows;
  int failed = 0;

  for (guint page = 0; page * per < catalogue->ids->len; page++)
    {
      guint n = MIN (per, catalogue->ids->len - page * per);
      cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_RGB24, columns * cell,
                                                             ((n + columns - 1) / columns) * (cell + foot));
      cairo_t *cr = begin_sheet (surface, colours, size >= 200 ? 17 : 9);
      g_autofree char *name = g_strdup_printf ("%03d-%s-%u.png", size, words[colours], page + 1);

      for (guint i = 0; i < n; i++)
        {
          const char *id = g_ptr_array_index (catalogue->ids, page * per + i);
          const LapFigure *figure = lap_figure_set_get (catalogue->set, id, NULL);
          double x = (i % columns) * cell + 6, y = (i / columns) * (cell + foot) + 6;

          if (figure != NULL)
            draw_cell (cr, figure, colours, x, y, size, -1.0);
          if (size >= 96)
            {
              guint32 ink = lap_figure_palette (colours)->role[LAP_FIGURE_ROLE_BODY];

              cairo_set_source_rgb (cr, (ink >> 16) / 255.0, (ink >> 8 & 255) / 255.0, (ink & 255) / 255.0);
              write_name (cr, id, x, y + size + foot - 5, size);
            }
        }
      cairo_destroy (cr);
      failed |= write_sheet (surface, folder, name);
    }
  return failed;
}

static int
draw_strips (Catalogue *catalogue, const char *folder)
{
  const int size = 180, moments = 8;
  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_RGB24, moments * size,
                                                         catalogue->ids->len * size);
  cairo_t *cr = begin_sheet (surface, LAP_FIGURE_LIGHT, 12);

  for (guint i = 0; i < catalogue->ids->len; i++)
    {
      const LapFigure *figure = lap_figure_set_get (catalogue->set, g_ptr_array_index (catalogue->ids, i),
                                                    NULL);

      for (int j = 0; figure != NULL && j < moments; j++)
        draw_cell (cr, figure, LAP_FIGURE_LIGHT, j * size, i * size, size,
                   j / (moments - (figure->cycle == LAP_FIGURE_HOLD ? 1.0 : 0.0)));
    }
  cairo_destroy (cr);
  return write_sheet (surface, folder, "strips.png");
}

/* Leaves only @ids, in their order. */
static void
choose (Catalogue *catalogue, char **ids)
{
  if (ids[0] == NULL)
    return;
  g_ptr_array_set_size (catalogue->ids, 0);
  for (guint i = 0; ids[i] != NULL; i++)
    g_ptr_array_add (catalogue->ids, ids[i]);
}

static int
list_problems (Catalogue *catalogue)
{
  guint found = 0;

  for (guint i = 0; i < catalogue->ids->len; i++)
    {
      const char *id = g_ptr_array_index (catalogue->ids, i);
      g_autoptr (GError) error = NULL;
      const LapFigure *figure = lap_figure_set_get (catalogue->set, id, &error);
      g_autoptr (GPtrArray) problems = figure != NULL ? lap_figure_problems (figure) : NULL;

      if (figure == NULL)
        g_print ("%s: %s\n", id, error != NULL ? error->message : "has no figure");
      for (guint j = 0; problems != NULL && j < problems->len; j++)
        g_print ("%s\n", (char *) g_ptr_array_index (problems, j));
      found += figure == NULL || problems->len > 0;
    }
  g_print ("%u of %u with problems\n", found, catalogue->ids->len);
  return found > 0;
}

int
main (int argc, char **argv)
{
  static const int sizes[] = { 48, 96, 400 };
  static const LapFigureColours colours[] = { LAP_FIGURE_LIGHT, LAP_FIGURE_DARK, LAP_FIGURE_ONE_COLOUR };
  gboolean check = argc > 1 && g_str_equal (argv[1], "--check"), strip = argc > 1 &&
    g_str_equal (argv[1], "--strip");
  int first = check || strip ? 2 : 1, failed = 0;
  Catalogue catalogue = { 0 };

  if (argc < first + (check ? 1 : 2) || !read_folder (&catalogue, argv[first]))
    {
      g_printerr ("usage: contact-sheet [--check | --strip] EXERCISES [OUT] [ID…]\n");
      return 2;
    }
  choose (&catalogue, argv + first + (check ? 1 : 2));
  if (check)
    failed = list_problems (&catalogue);
  else if (g_mkdir_with_parents (argv[first + 1], 0755) != 0)
    failed = 1;
  else if (strip)
    failed = draw_strips (&catalogue, argv[first + 1]);
  else
    for (guint i = 0; i < G_N_ELEMENTS (sizes); i++)
      for (guint j = 0; j < G_N_ELEMENTS (colours); j++)
        failed |= draw_sheets (&catalogue, argv[first + 1], sizes[i], colours[j]);
  lap_figure_set_free (catalogue.set);
  g_ptr_array_unref (catalogue.ids);
  g_hash_table_unref (catalogue.exercises);
  return failed;
}
