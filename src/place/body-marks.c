/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/body-marks.h"

#define M(muscle) LAP_BIT (LAP_MUSCLE_##muscle)
#define BACK 52.0 /* from the front's left edge to the back's */
#define MIDDLE 22.0

/* A piece of the body in hundredths of its height: the left one of two, or the only one where it crosses the middle. */
typedef struct {
  double  x, y, width, height;
  guint32 muscles; /* none: it is there for the shape alone */
} Piece;

static const Piece front[] = {
  { 16.2, 0.5, 11.6, 12.5, 0 },                                        /* head */
  { 19.2, 13, 5.6, 4, M (NECK) },
  { 6.5, 17, 7.5, 8, M (FRONT_SHOULDER) | M (SIDE_SHOULDER) },
  { 14, 18, 7.6, 9, M (CHEST) },
  { 17.2, 28, 9.6, 14, M (ABS) },
  { 13.4, 28, 3.2, 14, M (OBLIQUES) },
  { 13.6, 43, 7.8, 6, M (HIP_FLEXORS) },
  { 6, 26, 6, 13, M (BICEPS) },
  { 4.6, 40, 5.4, 14, M (FOREARMS) },
  { 4.2, 55, 4.4, 5, 0 },                                              /* hand */
  { 12.6, 50, 5.8, 22, M (QUADS) },
  { 19, 50, 2.6, 17, M (INNER_THIGH) },
  { 14, 74, 5.4, 20, M (SHINS) },
  { 12.6, 95, 7, 4.5, 0 },                                             /* foot */
};

static const Piece back[] = {
  { 16.2, 0.5, 11.6, 12.5, 0 },
  { 19.2, 13, 5.6, 4, M (NECK) },
  { 6.5, 17, 7.5, 8, M (REAR_SHOULDER) | M (SIDE_SHOULDER) },
  { 14.4, 18, 15.2, 9, M (UPPER_BACK) },
  { 13.4, 28, 5, 11, M (LATS) },
  { 19, 28, 6, 14, M (LOWER_BACK) },
  { 14.2, 43, 7.4, 9, M (GLUTES) },
  { 11.2, 43, 2.6, 9, M (OUTER_HIP) },
  { 6, 26, 6, 13, M (TRICEPS) },
  { 4.6, 40, 5.4, 14, M (FOREARMS) },
  { 4.2, 55, 4.4, 5, 0 },
  { 13, 53, 7.6, 20, M (HAMSTRINGS) },
  { 13.6, 75, 6, 19, M (CALVES) },
  { 13.6, 95, 6, 4.5, 0 },
};

static void
put_piece (LapPage *page, const Piece *piece, guint32 primary, guint32 secondary, double x, double y, double scale)
{
  gboolean hard = (piece->muscles & primary) != 0, helps = (piece->muscles & secondary) != 0;
  LapMark *mark = lap_page_box (page, x, y + piece->y * scale, piece->width * scale, piece->height * scale,
                                hard ? LAP_ROLE_HARD : helps ? LAP_ROLE_WORK2 : LAP_ROLE_NONE);

  mark->line = hard || helps ? LAP_ROLE_WORK : LAP_ROLE_LINE2;
  mark->thick = scale * (helps && !hard ? 1.2 : 0.6);
  mark->radius = MIN (piece->width, piece->height) * 0.45 * scale;
}

static void
put_side (LapPage *page, const Piece *pieces, guint n, guint32 primary, guint32 secondary, double x, double y,
          double scale)
{
  for (guint i = 0; i < n; i++) {
    const Piece *piece = &pieces[i];

    put_piece (page, piece, primary, secondary, x + piece->x * scale, y, scale);
    if (piece->x + piece->width <= MIDDLE)
      put_piece (page, piece, primary, secondary, x + (2 * MIDDLE - piece->x - piece->width) * scale, y, scale);
  }
}

void
lap_body_put (LapPage *page, guint32 primary, guint32 secondary, double x, double y, double height)
{
  double scale = height / 100;

  put_side (page, front, G_N_ELEMENTS (front), primary, secondary, x, y, scale);
  put_side (page, back, G_N_ELEMENTS (back), primary, secondary, x + BACK * scale, y, scale);
}
