/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheets/paint.h"

#include "sheets/figure-paint.h"
#include "sheets/measure.h"

#include <cairo-pdf.h>
#include <math.h>
#include <qrencode.h>
#include <string.h>

struct _LapPainter {
  cairo_t     *cr;
  PangoLayout *layout;
  PangoFontDescription *fonts[LAP_N_WEIGHTS];
  LapFigureSet *figures;   /* read as they are painted */
  LapCatalogue *catalogue; /* that the set looks into */
  LapInk       ink;
  gboolean     tags;
};

/* The colours on paper; the one-ink ones are told apart by lightness and by their hatch. */
static const guint32 colours[LAP_N_ROLES] = {
  [LAP_ROLE_PAPER] = 0xffffff, [LAP_ROLE_INK] = 0x17141f, [LAP_ROLE_INK2] = 0x4b465a, [LAP_ROLE_LINE2] = 0x7c768f,
  [LAP_ROLE_LINE] = 0xc9c4d2, [LAP_ROLE_SHADE] = 0xf0eef5, [LAP_ROLE_WORK] = 0x3b2f80, [LAP_ROLE_HARD] = 0x3b2f80,
  [LAP_ROLE_ON_WORK] = 0xffffff,
  [LAP_ROLE_WORK2] = 0xcbc4ea, [LAP_ROLE_TALK] = 0x075e5e, [LAP_ROLE_EFFORT] = 0x9a3f14, [LAP_ROLE_NOTE] = 0xf2b81c,
  [LAP_ROLE_STOP] = 0xa01b31,
};

static const guint32 greys[LAP_N_ROLES] = {
  [LAP_ROLE_PAPER] = 0xffffff, [LAP_ROLE_INK] = 0x000000, [LAP_ROLE_INK2] = 0x404040, [LAP_ROLE_LINE2] = 0x767676,
  [LAP_ROLE_LINE] = 0xc4c4c4, [LAP_ROLE_SHADE] = 0xf0f0f0, [LAP_ROLE_WORK] = 0x000000, [LAP_ROLE_HARD] = 0x000000,
  [LAP_ROLE_ON_WORK] = 0xffffff,
  [LAP_ROLE_WORK2] = 0xc8c8c8, [LAP_ROLE_TALK] = 0x000000, [LAP_ROLE_EFFORT] = 0x000000, [LAP_ROLE_NOTE] = 0xdddddd,
  [LAP_ROLE_STOP] = 0x000000,
};

static void
set_role (LapPainter *painter, LapRole role)
{
  guint32 rgb = (painter->ink == LAP_INK_COLOUR ? colours : greys)[role];

  /* Saving ink, what stood white on a solid ground stands black in an outline. */
  if (painter->ink == LAP_INK_OUTLINE && role == LAP_ROLE_ON_WORK)
    rgb = greys[LAP_ROLE_INK];
  cairo_set_source_rgb (painter->cr, (rgb >> 16) / 255.0, (rgb >> 8 & 0xff) / 255.0, (rgb & 0xff) / 255.0);
}

static void
path_box (LapPainter *painter, const LapMark *mark)
{
  cairo_t *cr = painter->cr;
  double r = MIN (mark->radius, MIN (mark->width, mark->height) / 2);

  cairo_new_path (cr);
  if (r <= 0) {
    cairo_rectangle (cr, mark->x, mark->y, mark->width, mark->height);
    return;
  }
  cairo_arc (cr, mark->x + r, mark->y + r, r, G_PI, 1.5 * G_PI);
  cairo_arc (cr, mark->x + mark->width - r, mark->y + r, r, 1.5 * G_PI, 2 * G_PI);
  cairo_arc (cr, mark->x + mark->width - r, mark->y + mark->height - r, r, 0, 0.5 * G_PI);
  cairo_arc (cr, mark->x + r, mark->y + mark->height - r, r, 0.5 * G_PI, G_PI);
  cairo_close_path (cr);
}

static void
paint_box (LapPainter *painter, const LapMark *mark)
{
  gboolean solid = mark->fill == LAP_ROLE_WORK || mark->fill == LAP_ROLE_TALK;
  gboolean outline = painter->ink == LAP_INK_OUTLINE && solid;

  path_box (painter, mark);
  if (mark->fill != LAP_ROLE_NONE) {
    set_role (painter, outline ? LAP_ROLE_PAPER : mark->fill);
    cairo_fill_preserve (painter->cr);
  }
  if (mark->line != LAP_ROLE_NONE || outline) {
    set_role (painter, mark->line != LAP_ROLE_NONE ? mark->line : mark->fill);
    cairo_set_line_width (painter->cr, mark->thick > 0 ? mark->thick : MIN (mark->width, mark->height) * 0.03);
    cairo_stroke_preserve (painter->cr);
  }
  cairo_new_path (painter->cr);
}

/* Lines at 45° with five strokes between them, cut off at the box. */
static void
paint_hatch (LapPainter *painter, const LapMark *mark)
{
  cairo_t *cr = painter->cr;
  double pitch = mark->thick * 5;

  set_role (painter, mark->line);
  cairo_set_line_width (cr, mark->thick);
  cairo_save (cr);
  cairo_rectangle (cr, mark->x, mark->y, mark->width, mark->height);
  cairo_clip (cr);
  for (double x = mark->x + pitch / 2; x < mark->x + mark->width + mark->height; x += pitch) {
    cairo_move_to (cr, x, mark->y);
    cairo_line_to (cr, x - mark->height, mark->y + mark->height);
  }
  cairo_stroke (cr);
  cairo_restore (cr);
  cairo_rectangle (cr, mark->x + mark->thick / 2, mark->y + mark->thick / 2, mark->width - mark->thick,
                   mark->height - mark->thick);
  cairo_stroke (cr);
}

static void
paint_rule (LapPainter *painter, const LapMark *mark)
{
  set_role (painter, mark->line);
  cairo_rectangle (painter->cr, mark->x, mark->y, mark->width, mark->height);
  cairo_fill (painter->cr);
}

/* A sign is strokes in a square of 140 by 100, y downwards; a row that begins with 'm' lifts the pen. */
typedef struct {
  char   pen;
  double x, y;
} Stroke;

#define SIGN_STROKES 12

static const Stroke signs[][SIGN_STROKES] = {
  [LAP_SIGN_EASIER] = { { 'm', 5, 25 }, { 'l', 65, 25 }, { 'l', 65, 75 }, { 'l', 135, 75 } },
  [LAP_SIGN_HARDER] = { { 'm', 5, 75 }, { 'l', 65, 75 }, { 'l', 65, 25 }, { 'l', 135, 25 } },
  [LAP_SIGN_SWAP] = { { 'm', 10, 30 }, { 'l', 125, 30 }, { 'm', 100, 8 }, { 'l', 125, 30 }, { 'l', 100, 52 },
                      { 'm', 130, 72 }, { 'l', 15, 72 }, { 'm', 40, 50 }, { 'l', 15, 72 }, { 'l', 40, 94 } },
  [LAP_SIGN_BREATHLESS] = { { 'm', 5, 55 }, { 'l', 35, 55 }, { 'l', 55, 12 }, { 'l', 85, 92 }, { 'l', 102, 55 },
                            { 'l', 135, 55 } },
  [LAP_SIGN_TIMES] = { { 'm', 40, 20 }, { 'l', 100, 80 }, { 'm', 100, 20 }, { 'l', 40, 80 } },
  [LAP_SIGN_ROUND] = { { 'm', 20, 50 }, { 'l', 20, 20 }, { 'l', 120, 20 }, { 'l', 120, 80 }, { 'l', 40, 80 },
                       { 'm', 62, 58 }, { 'l', 40, 80 }, { 'l', 62, 100 } },
  [LAP_SIGN_UNSEEN] = { { 'm', 8, 50 }, { 'l', 38, 24 }, { 'l', 70, 15 }, { 'l', 102, 24 }, { 'l', 132, 50 },
                        { 'l', 102, 76 }, { 'l', 70, 85 }, { 'l', 38, 76 }, { 'l', 8, 50 }, { 'm', 28, 92 },
                        { 'l', 112, 8 } },
  [LAP_SIGN_CREST] = { { 'm', 15, 90 }, { 'l', 70, 15 }, { 'l', 125, 90 } },
};

static void
paint_sign (LapPainter *painter, const LapMark *mark)
{
  cairo_t *cr = painter->cr;
  double scale = MIN (mark->width / 140, mark->height / 100);
  double left = mark->x + (mark->width - 140 * scale) / 2, top = mark->y + (mark->height - 100 * scale) / 2;

  for (guint i = 0; i < SIGN_STROKES && signs[mark->sign][i].pen != 0; i++) {
    const Stroke *stroke = &signs[mark->sign][i];

    if (stroke->pen == 'm')
      cairo_move_to (cr, left + stroke->x * scale, top + stroke->y * scale);
    else
      cairo_line_to (cr, left + stroke->x * scale, top + stroke->y * scale);
  }
  set_role (painter, mark->fill);
  cairo_set_line_width (cr, mark->thick);
  cairo_set_line_cap (cr, CAIRO_LINE_CAP_ROUND);
  cairo_set_line_join (cr, CAIRO_LINE_JOIN_ROUND);
  cairo_stroke (cr);
}

static void
paint_text (LapPainter *painter, const LapMark *mark)
{
  PangoContext *context = pango_layout_get_context (painter->layout);

  pango_font_description_set_absolute_size (painter->fonts[mark->weight], mark->em * PANGO_SCALE);
  pango_context_set_base_dir (context, mark->rtl ? PANGO_DIRECTION_RTL : PANGO_DIRECTION_LTR);
  pango_layout_context_changed (painter->layout);
  pango_layout_set_font_description (painter->layout, painter->fonts[mark->weight]);
  pango_layout_set_text (painter->layout, mark->text, -1);
  set_role (painter, mark->fill);
  cairo_move_to (painter->cr, mark->x, mark->baseline);
  pango_cairo_show_layout_line (painter->cr, pango_layout_get_line_readonly (painter->layout, 0));
}

/* Figures */

/* A figure's own unit: it decides by it how thin a line may get. */
#define PIXEL (25.4 / 96) /* mm */
/* Lower than this there is room for the pose alone. */
#define POSTER_LEAST 14.0 /* mm */
/* What the engine leaves free below a figure, as a share of its height. */
#define FIGURE_FOOT 0.06

static JsonObject *
find_figure (const char *id, gpointer data)
{
  LapExercise *exercise = lap_catalogue_find (data, id);

  return exercise != NULL && exercise->figure != NULL && JSON_NODE_HOLDS_OBJECT (exercise->figure)
           ? json_node_get_object (exercise->figure) : NULL;
}

static void
paint_drawing (LapPainter *painter, const LapFigureDrawing *drawing)
{
  if (painter->ink == LAP_INK_OUTLINE)
    lap_figure_paint_outline (painter->cr, drawing, greys[LAP_ROLE_INK], greys[LAP_ROLE_PAPER], 1);
  else
    lap_figure_paint (painter->cr, drawing,
                      lap_figure_palette (painter->ink == LAP_INK_ONE ? LAP_FIGURE_ONE_COLOUR : LAP_FIGURE_PRINT));
}

/* An exercise without a figure, or with one that can't be read, leaves its place free. */
static void
paint_figure (LapPainter *painter, const LapMark *mark)
{
  double width = mark->width / PIXEL, height = mark->height / PIXEL;
  gboolean large = MIN (mark->width, mark->height) >= POSTER_LEAST;
  const LapFigure *figure = lap_figure_set_get (painter->figures, mark->exercise->id, NULL);
  g_autoptr (LapFigureDrawing) drawing = NULL;

  if (figure == NULL)
    return;
  drawing = lap_figure_draw (figure, large ? LAP_FIGURE_POSTER : LAP_FIGURE_ICON, LAP_FIGURE_NO_FLOOR,
                             lap_figure_key_phase (figure, lap_figure_poster_key (figure)), width, height);
  cairo_save (painter->cr);
  cairo_translate (painter->cr, mark->x, mark->y + (large ? mark->height * FIGURE_FOOT : 0));
  cairo_scale (painter->cr, PIXEL, PIXEL);
  paint_drawing (painter, drawing);
  cairo_restore (painter->cr);
}

/* The modules of a row that touch are one rectangle: readers don't see seams, and the PDF stays small. */
static void
paint_code_row (LapPainter *painter, const LapMark *mark, const QRcode *code, int row)
{
  double module = mark->width / code->width;

  for (int i = 0; i < code->width; i++) {
    int from = i;

    while (i < code->width && (code->data[row * code->width + i] & 1) != 0)
      i++;
    if (i > from)
      cairo_rectangle (painter->cr, mark->x + from * module, mark->y + row * module, (i - from) * module, module);
  }
}

/* An address that is too long for a code leaves its place free; the link is still there. */
static void
paint_code (LapPainter *painter, const LapMark *mark)
{
  QRcode *code = QRcode_encodeString8bit (mark->text, 0, QR_ECLEVEL_M);

  if (code == NULL)
    return;
  for (int row = 0; row < code->width; row++)
    paint_code_row (painter, mark, code, row);
  set_role (painter, mark->fill);
  cairo_fill (painter->cr);
  QRcode_free (code);
}

/* Cairo 1.16 writes an address into the PDF as it stands: what would end a string there is percent-encoded, which
 * leads to the same place (RFC 3986). */
static char *
link_attributes (const char *address)
{
  GString *uri = g_string_new ("uri='");

  for (; *address != '\0'; address++) {
    if (strchr ("\\()'", *address) != NULL)
      g_string_append_printf (uri, "%%%02X", *address);
    else
      g_string_append_c (uri, *address);
  }
  g_string_append_c (uri, '\'');
  return g_string_free (uri, FALSE);
}

static void
open_tag (LapPainter *painter, const LapMark *mark, GPtrArray *open)
{
  g_autofree char *attributes = mark->text != NULL ? link_attributes (mark->text) : NULL;

  g_ptr_array_add (open, (gpointer) mark->tag);
  if (painter->tags)
    cairo_tag_begin (painter->cr, mark->tag, attributes != NULL ? attributes : "");
}

static void
close_tag (LapPainter *painter, GPtrArray *open)
{
  if (painter->tags)
    cairo_tag_end (painter->cr, g_ptr_array_index (open, open->len - 1));
  g_ptr_array_set_size (open, open->len - 1);
}

static void
paint_mark (LapPainter *painter, const LapMark *mark)
{
  static void (* const paint[]) (LapPainter *, const LapMark *) = {
    [LAP_MARK_TEXT] = paint_text, [LAP_MARK_BOX] = paint_box, [LAP_MARK_HATCH] = paint_hatch,
    [LAP_MARK_RULE] = paint_rule, [LAP_MARK_SIGN] = paint_sign, [LAP_MARK_FIGURE] = paint_figure,
    [LAP_MARK_CODE] = paint_code,
  };

  if (mark->kind < G_N_ELEMENTS (paint) && paint[mark->kind] != NULL)
    paint[mark->kind] (painter, mark);
}

static void
use_catalogue (LapPainter *painter, LapCatalogue *catalogue)
{
  if (painter->catalogue == catalogue)
    return;
  g_clear_pointer (&painter->figures, lap_figure_set_free);
  g_clear_pointer (&painter->catalogue, lap_catalogue_unref);
  painter->catalogue = lap_catalogue_ref (catalogue);
  painter->figures = lap_figure_set_new (find_figure, catalogue);
}

void
lap_painter_page (LapPainter *painter, const LapPage *page)
{
  g_autoptr (GPtrArray) open = g_ptr_array_new ();

  use_catalogue (painter, page->pages->catalogue);
  for (guint i = 0; i < page->marks->len; i++) {
    const LapMark *mark = &g_array_index (page->marks, LapMark, i);

    if (mark->kind == LAP_MARK_BEGIN)
      open_tag (painter, mark, open);
    else if (mark->kind == LAP_MARK_END)
      close_tag (painter, open);
    else
      paint_mark (painter, mark);
  }
}

LapPainter *
lap_painter_new (cairo_t *cr, LapInk ink, gboolean tags)
{
  LapPainter *painter = g_new0 (LapPainter, 1);
  PangoContext *context = pango_cairo_create_context (cr);

  painter->cr = cr;
  painter->ink = ink;
  painter->tags = tags;
  painter->layout = lap_sheet_layout (context);
  g_object_unref (context);
  pango_layout_set_auto_dir (painter->layout, FALSE);
  for (guint i = 0; i < LAP_N_WEIGHTS; i++)
    painter->fonts[i] = lap_sheet_font (i);
  return painter;
}

void
lap_painter_free (LapPainter *painter)
{
  g_clear_pointer (&painter->figures, lap_figure_set_free);
  g_clear_pointer (&painter->catalogue, lap_catalogue_unref);
  g_object_unref (painter->layout);
  for (guint i = 0; i < LAP_N_WEIGHTS; i++)
    pango_font_description_free (painter->fonts[i]);
  g_free (painter);
}
