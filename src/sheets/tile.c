/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A large sheet in pieces for a small printer. What is printed on a page is cut into tiles that overlap; each says
 * where it belongs, and has marks where to cut: half of each overlap is cut off, the other is for the glue.
 */
#include "sheets/tile.h"

#include "sheets/measure.h"
#include "sheets/pdf.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#define MARGIN  4.5 /* what a printer may leave white, mm; common practice */
#define OVERLAP 4.0

typedef struct {
  double x, y, width, height;
} Area;

typedef struct {
  double width, height; /* of the paper, turned as it fits best, mm */
  guint  columns, rows;
} Tiling;

/* All that is printed on @page. */
static Area
printed_area (const LapPage *page)
{
  double left = page->width, top = page->height, right = 0, bottom = 0;

  for (guint i = 0; i < page->marks->len; i++) {
    const LapMark *mark = &g_array_index (page->marks, LapMark, i);

    if (mark->kind == LAP_MARK_BEGIN || mark->kind == LAP_MARK_END)
      continue;
    left = MIN (left, mark->x);
    top = MIN (top, mark->y);
    right = MAX (right, mark->x + mark->width);
    bottom = MAX (bottom, mark->y + mark->height);
  }
  return (Area) { left, top, MAX (right - left, 0), MAX (bottom - top, 0) };
}

static guint
pieces (double length, double paper)
{
  double usable = paper - 2 * MARGIN;

  return MAX (1, (guint) ceil ((length - OVERLAP - 1e-6) / (usable - OVERLAP)));
}

static Tiling
tiling_of (Area area, LapPaper paper)
{
  Tiling best = { 0 };

  for (guint landscape = 0; landscape < 2; landscape++) {
    LapSheetOptions options = { .paper = paper, .landscape = landscape };
    Tiling tiling;

    lap_paper_size (&options, &tiling.width, &tiling.height);
    tiling.columns = pieces (area.width, tiling.width);
    tiling.rows = pieces (area.height, tiling.height);
    if (best.columns == 0 || tiling.columns * tiling.rows < best.columns * best.rows)
      best = tiling;
  }
  return best;
}

/* A mark across the margins at @at, on the two edges it meets. */
static void
cut (cairo_t *cr, const Tiling *tiling, double at, gboolean upright)
{
  double across = upright ? tiling->height : tiling->width, ends[] = { 1, across - MARGIN + 1 };

  for (guint i = 0; i < G_N_ELEMENTS (ends); i++) {
    cairo_move_to (cr, upright ? at : ends[i], upright ? ends[i] : at);
    cairo_line_to (cr, upright ? at : ends[i] + MARGIN - 2, upright ? ends[i] + MARGIN - 2 : at);
  }
}

static void
paint_cuts (cairo_t *cr, const Tiling *tiling, guint column, guint row)
{
  if (column > 0)
    cut (cr, tiling, MARGIN + OVERLAP / 2, TRUE);
  if (column + 1 < tiling->columns)
    cut (cr, tiling, tiling->width - MARGIN - OVERLAP / 2, TRUE);
  if (row > 0)
    cut (cr, tiling, MARGIN + OVERLAP / 2, FALSE);
  if (row + 1 < tiling->rows)
    cut (cr, tiling, tiling->height - MARGIN - OVERLAP / 2, FALSE);
  cairo_set_source_rgb (cr, 0, 0, 0);
  cairo_set_line_width (cr, 0.2);
  cairo_set_line_cap (cr, CAIRO_LINE_CAP_BUTT);
  cairo_stroke (cr);
}

static void
paint_name (cairo_t *cr, const Tiling *tiling, const char *name)
{
  PangoContext *context = pango_cairo_create_context (cr);
  PangoFontDescription *font = lap_sheet_font (LAP_WEIGHT_PLAIN);
  PangoLayout *layout = lap_sheet_layout (context);

  pango_font_description_set_absolute_size (font, 2.6 * PANGO_SCALE);
  pango_layout_set_font_description (layout, font);
  pango_layout_set_text (layout, name, -1);
  cairo_set_source_rgb (cr, 0.3, 0.3, 0.3);
  cairo_move_to (cr, MARGIN + OVERLAP, tiling->height - MARGIN / 2);
  pango_cairo_show_layout_line (cr, pango_layout_get_line_readonly (layout, 0));
  pango_font_description_free (font);
  g_object_unref (layout);
  g_object_unref (context);
}

struct _LapPieces {
  const LapPages *pages;
  GArray         *tiles; /* Tile */
};

typedef struct {
  guint  page, column, row;
  Tiling tiling;
  Area   area;
} Tile;

LapPieces *
lap_pieces_new (const LapPages *pages, LapPaper paper)
{
  LapPieces *tiles = g_new0 (LapPieces, 1);

  tiles->pages = pages;
  tiles->tiles = g_array_new (FALSE, FALSE, sizeof (Tile));
  for (guint p = 0; p < lap_pages_n (pages); p++) {
    Tile tile = { .page = p, .area = printed_area (lap_pages_nth (pages, p)) };

    tile.tiling = tiling_of (tile.area, paper);
    for (guint i = 0; i < tile.tiling.columns * tile.tiling.rows; i++) {
      tile.column = i % tile.tiling.columns;
      tile.row = i / tile.tiling.columns;
      g_array_append_val (tiles->tiles, tile);
    }
  }
  return tiles;
}

void
lap_pieces_free (LapPieces *tiles)
{
  g_array_unref (tiles->tiles);
  g_free (tiles);
}

guint
lap_pieces_n (const LapPieces *tiles)
{
  return tiles->tiles->len;
}

void
lap_pieces_size (const LapPieces *tiles, guint n, double *width, double *height)
{
  const Tile *tile = &g_array_index (tiles->tiles, Tile, n);

  *width = tile->tiling.width;
  *height = tile->tiling.height;
}

void
lap_pieces_paint (const LapPieces *tiles, guint n, LapPainter *painter, cairo_t *cr)
{
  const Tile *tile = &g_array_index (tiles->tiles, Tile, n);
  double width = tile->tiling.width - 2 * MARGIN, height = tile->tiling.height - 2 * MARGIN;
  /* Translators: where a piece of a large sheet belongs: "Title, page 1: row 2 of 2, column 1 of 3". */
  g_autofree char *name = g_strdup_printf (_("%s, page %u: row %u of %u, column %u of %u"), tiles->pages->title,
                                           tile->page + 1, tile->row + 1, tile->tiling.rows, tile->column + 1,
                                           tile->tiling.columns);

  cairo_save (cr);
  cairo_rectangle (cr, MARGIN, MARGIN, width, height);
  cairo_clip (cr);
  cairo_translate (cr, MARGIN - tile->area.x - tile->column * (width - OVERLAP),
                   MARGIN - tile->area.y - tile->row * (height - OVERLAP));
  lap_painter_page (painter, lap_pages_nth (tiles->pages, tile->page));
  cairo_restore (cr);
  paint_cuts (cr, &tile->tiling, tile->column, tile->row);
  paint_name (cr, &tile->tiling, name);
}

GBytes *
lap_pages_tile (const LapPages *pages, LapInk ink, LapPaper paper, const LapSheetWatch *watch, GError **error)
{
  g_autoptr (LapPieces) tiles = lap_pieces_new (pages, paper);
  g_autoptr (LapPainter) painter = NULL;
  LapPdf pdf;

  lap_pdf_begin (&pdf, pages);
  painter = lap_painter_new (pdf.cr, ink, FALSE);
  for (guint i = 0; i < lap_pieces_n (tiles) && lap_pdf_goes_on (watch, i, lap_pieces_n (tiles)); i++) {
    double width, height;

    lap_pieces_size (tiles, i, &width, &height);
    lap_pdf_size (&pdf, width, height);
    lap_pieces_paint (tiles, i, painter, pdf.cr);
    cairo_show_page (pdf.cr);
  }
  return lap_pdf_finish (&pdf, watch, error);
}
