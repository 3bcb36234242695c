/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheets/figure-paint.h"

/* Body, far, moving and far moving as the window's and the sheets' colours have them; at least 3 : 1 on
 * the paper but for the far moving limb, which always has a nearer one beside it. */
static const LapFigurePalette palettes[LAP_FIGURE_N_COLOURS] = {
  [LAP_FIGURE_LIGHT] = {
    .paper = 0xFDFCF9,
    .role = { [LAP_FIGURE_ROLE_GROUND] = 0xEAE7E6, [LAP_FIGURE_ROLE_FLOOR] = 0xA8A2B6,
              [LAP_FIGURE_ROLE_MAT] = 0xCFDAD8,
              [LAP_FIGURE_ROLE_SHADOW] = 0xA9B4B4, [LAP_FIGURE_ROLE_GHOST] = 0xD7D4DC,
                [LAP_FIGURE_ROLE_KIT] = 0x47777A,
              [LAP_FIGURE_ROLE_FAR] = 0x918BAA, [LAP_FIGURE_ROLE_FAR_MOVING] = 0x9C8FE2,
              [LAP_FIGURE_ROLE_BODY] = 0x26223A, [LAP_FIGURE_ROLE_MOVING] = 0x6A5AD0,
              [LAP_FIGURE_ROLE_ARROW] = 0x463A8C },
  },
  [LAP_FIGURE_DARK] = {
    .paper = 0x221F2C,
    .role = { [LAP_FIGURE_ROLE_GROUND] = 0x2E2A3A, [LAP_FIGURE_ROLE_FLOOR] = 0x645E76,
              [LAP_FIGURE_ROLE_MAT] = 0x35484A,
              [LAP_FIGURE_ROLE_SHADOW] = 0x223033, [LAP_FIGURE_ROLE_GHOST] = 0x474257,
                [LAP_FIGURE_ROLE_KIT] = 0x7DB5B2,
              [LAP_FIGURE_ROLE_FAR] = 0x7A7493, [LAP_FIGURE_ROLE_FAR_MOVING] = 0x7A6EBA,
              [LAP_FIGURE_ROLE_BODY] = 0xEFECF8, [LAP_FIGURE_ROLE_MOVING] = 0xB9ABF7,
              [LAP_FIGURE_ROLE_ARROW] = 0xB9ABF7 },
  },
  [LAP_FIGURE_PRINT] = {
    .paper = 0xFFFFFF,
    .role = { [LAP_FIGURE_ROLE_GROUND] = 0xEDEBF0, [LAP_FIGURE_ROLE_FLOOR] = 0x9A94AB,
              [LAP_FIGURE_ROLE_MAT] = 0xD2DEDC,
              [LAP_FIGURE_ROLE_SHADOW] = 0xA9B7B6, [LAP_FIGURE_ROLE_GHOST] = 0xDAD7DF,
                [LAP_FIGURE_ROLE_KIT] = 0x3F6F72,
              [LAP_FIGURE_ROLE_FAR] = 0x8F89A6, [LAP_FIGURE_ROLE_FAR_MOVING] = 0x9C8FE2,
              [LAP_FIGURE_ROLE_BODY] = 0x1F1B30, [LAP_FIGURE_ROLE_MOVING] = 0x6555CC,
              [LAP_FIGURE_ROLE_ARROW] = 0x3B2F80 },
  },
  [LAP_FIGURE_ONE_COLOUR] = {
    .paper = 0xFFFFFF,
    .role = { [LAP_FIGURE_ROLE_GROUND] = 0xF0F0F0, [LAP_FIGURE_ROLE_FLOOR] = 0x8C8C8C,
              [LAP_FIGURE_ROLE_MAT] = 0xDEDEDE,
              [LAP_FIGURE_ROLE_SHADOW] = 0xB4B4B4, [LAP_FIGURE_ROLE_GHOST] = 0xE2E2E2,
                [LAP_FIGURE_ROLE_KIT] = 0x4A4A4A,
              [LAP_FIGURE_ROLE_FAR] = 0xB8B8B8, [LAP_FIGURE_ROLE_FAR_MOVING] = 0x555555,
              [LAP_FIGURE_ROLE_BODY] = 0x7A7A7A, [LAP_FIGURE_ROLE_MOVING] = 0x000000,
              [LAP_FIGURE_ROLE_ARROW] = 0x000000 },
  },
};

const LapFigurePalette *
lap_figure_palette (LapFigureColours colours)
{
  return &palettes[colours];
}

static void
set_colour (cairo_t *cr, guint32 rgb)
{
  cairo_set_source_rgb (cr, (rgb >> 16 & 0xFF) / 255.0, (rgb >> 8 & 0xFF) / 255.0, (rgb & 0xFF) / 255.0);
}

static void
add_contours (cairo_t *cr, const LapFigureDrawing *drawing, const LapFigureShape *shape)
{
  for (guint i = shape->first; i < shape->first + shape->n; i++)
    {
      const LapFigureContour *contour = &drawing->contours[i];
      const LapFigPoint *p = &drawing->points[contour->first];

      cairo_move_to (cr, p[0].x, p[0].y);
      for (guint j = 1; j < contour->n; j++)
        cairo_line_to (cr, p[j].x, p[j].y);
      cairo_close_path (cr);
    }
}

static void
enter (cairo_t *cr, const LapFigureDrawing *drawing)
{
  cairo_save (cr);
  cairo_translate (cr, drawing->x, drawing->y);
  cairo_scale (cr, drawing->scale, -drawing->scale);
  cairo_set_fill_rule (cr, CAIRO_FILL_RULE_WINDING);
}

void
lap_figure_paint (cairo_t *cr, const LapFigureDrawing *drawing, const LapFigurePalette *palette)
{
  enter (cr, drawing);
  for (guint i = 0; i < drawing->n_shapes; i++)
    {
      set_colour (cr, palette->role[drawing->shapes[i].role]);
      add_contours (cr, drawing, &drawing->shapes[i]);
      cairo_fill (cr);
    }
  cairo_restore (cr);
}

static gboolean
is_moving (LapFigureRole role)
{
  return role == LAP_FIGURE_ROLE_MOVING || role == LAP_FIGURE_ROLE_FAR_MOVING;
}

/* A fifth of @ink on @paper. */
static guint32
tint (guint32 ink, guint32 paper)
{
  guint32 mixed = 0;

  for (guint shift = 0; shift < 24; shift += 8)
    mixed |= ((ink >> shift & 0xFF) + 4 * (paper >> shift & 0xFF)) / 5 << shift;
  return mixed;
}

void
lap_figure_paint_outline (cairo_t *cr, const LapFigureDrawing *drawing, guint32 ink, guint32 paper,
                          double width)
{
  enter (cr, drawing);
  cairo_set_line_width (cr, 2.0 * width / drawing->scale);
  cairo_set_line_join (cr, CAIRO_LINE_JOIN_ROUND);
  for (guint i = 0; i < drawing->n_shapes; i++)
    {
      const LapFigureShape *shape = &drawing->shapes[i];
      gboolean solid = shape->role == LAP_FIGURE_ROLE_FLOOR || shape->role == LAP_FIGURE_ROLE_ARROW;

      if (shape->role < LAP_FIGURE_ROLE_FLOOR || shape->role == LAP_FIGURE_ROLE_SHADOW ||
          shape->role == LAP_FIGURE_ROLE_GHOST)
        continue;
      /* The line goes round every piece; filling them all at once leaves only its outer half. What moves
       * is tinted. */
      set_colour (cr, ink);
      add_contours (cr, drawing, shape);
      if (solid)
        {
          cairo_fill (cr);
          continue;
        }
      cairo_stroke_preserve (cr);
      set_colour (cr, is_moving (shape->role) ? tint (ink, paper) : paper);
      cairo_fill (cr);
    }
  cairo_restore (cr);
}
