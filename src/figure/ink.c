/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Lists of inks and their contours.
 */
#include "figure/ink.h"

#include "figure/polygon.h"

LapInks *
lap_inks_new (double scale)
{
  LapInks *inks = g_new0 (LapInks, 1);

  inks->scale = scale;
  inks->pixel = 1.0 / scale;
  inks->thick = CLAMP (1.0 + 0.36 * (1.2 - scale), 1.0, 1.28);
  inks->gap = MAX (1.25, 1.05 / scale);
  inks->inks = g_array_new (FALSE, FALSE, sizeof (LapInk));
  inks->hulls = g_array_sized_new (FALSE, FALSE, sizeof (LapHull), 64);
  return inks;
}

void
lap_inks_free (LapInks *inks)
{
  g_array_unref (inks->inks);
  g_array_unref (inks->hulls);
  g_free (inks);
}

LapInk *
lap_inks_add (LapInks *inks, LapFigureRole role, int rank)
{
  LapInk ink = { .role = role, .rank = rank, .serial = inks->inks->len, .can_be_cut = TRUE,
                 .first = inks->hulls->len };

  g_array_append_val (inks->inks, ink);
  return &g_array_index (inks->inks, LapInk, inks->inks->len - 1);
}

LapHull *
lap_inks_hull (LapInks *inks, const LapDisc *discs, guint n)
{
  LapHull hull = { .n = n, .cuts = TRUE };

  memcpy (hull.disc, discs, n * sizeof *discs);
  g_array_append_val (inks->hulls, hull);
  g_array_index (inks->inks, LapInk, inks->inks->len - 1).n++;
  return &g_array_index (inks->hulls, LapHull, inks->hulls->len - 1);
}

void
lap_inks_line (LapInks *inks, LapFigPoint a, LapFigPoint b, double r)
{
  lap_inks_hull (inks, (LapDisc[]) { { a, r }, { b, r } }, 2);
}

void
lap_inks_disc (LapInks *inks, LapFigPoint c, double r)
{
  lap_inks_hull (inks, &(LapDisc) { c, r }, 1);
}

void
lap_inks_ring (LapInks *inks, LapFigPoint c, double r, double half)
{
  const guint n = 28;

  for (guint i = 0; i < n; i++)
    lap_inks_line (inks, lap_fig_step (c, i * 360.0 / n, r), lap_fig_step (c, (i + 1) * 360.0 / n, r), half);
}

void
lap_inks_box (LapInks *inks, double x0, double y0, double x1, double y1, double r)
{
  lap_inks_hull (inks, (LapDisc[]) { { { x0 + r, y0 + r }, r }, { { x1 - r, y0 + r }, r },
                                     { { x1 - r, y1 - r }, r }, { { x0 + r, y1 - r }, r } }, 4);
}

LapFigureBox
lap_inks_bounds (const LapInks *inks, guint first)
{
  LapFigureBox box = { G_MAXDOUBLE, G_MAXDOUBLE, -G_MAXDOUBLE, -G_MAXDOUBLE };

  for (guint i = first; i < inks->inks->len; i++)
    {
      const LapInk *ink = &g_array_index (inks->inks, LapInk, i);

      for (guint j = ink->first; j < ink->first + ink->n; j++)
        {
          const LapHull *hull = &g_array_index (inks->hulls, LapHull, j);

          for (guint k = 0; k < hull->n; k++)
            {
              const LapDisc *d = &hull->disc[k];

              box.x0 = MIN (box.x0, d->c.x - d->r);
              box.y0 = MIN (box.y0, d->c.y - d->r);
              box.x1 = MAX (box.x1, d->c.x + d->r);
              box.y1 = MAX (box.y1, d->c.y + d->r);
            }
        }
    }
  return box;
}

void
lap_inks_mirror (LapInks *inks, guint first, double about)
{
  static const LapFigureRole far[LAP_FIGURE_N_ROLES] = {
    [LAP_FIGURE_ROLE_BODY] = LAP_FIGURE_ROLE_FAR,
    [LAP_FIGURE_ROLE_MOVING] = LAP_FIGURE_ROLE_FAR_MOVING,
  };

  for (guint i = first; i < inks->inks->len; i++)
    {
      LapInk *ink = &g_array_index (inks->inks, LapInk, i);

      if (far[ink->role] != 0)
        ink->role = far[ink->role];
      for (guint j = ink->first; j < ink->first + ink->n; j++)
        {
          LapHull *hull = &g_array_index (inks->hulls, LapHull, j);

          for (guint k = 0; k < hull->n; k++)
            hull->disc[k].c.x = 2.0 * about - hull->disc[k].c.x;
        }
    }
}

/* ---- Contours ---- */

typedef struct {
  LapInks *inks;
  LapCompass compass;
  double crop;
  LapPolygon *cuts;   /* for each hull that cuts, its outline with the gap */
  GArray *points, *contours, *shapes;
  GArray *now, *next; /* of LapPolygon: the pieces of one hull while it is cut */
} LapCutter;

/* Every cut is used on many hulls, so it is worked out once. */
static void
prepare_cuts (LapCutter *cutter)
{
  const LapInks *inks = cutter->inks;

  cutter->cuts = g_new (LapPolygon, MAX (1, inks->hulls->len));
  for (guint i = 0; i < inks->inks->len; i++)
    {
      const LapInk *ink = &g_array_index (inks->inks, LapInk, i);

      for (guint j = ink->first; j < ink->first + ink->n; j++)
        if (g_array_index (inks->hulls, LapHull, j).cuts)
          lap_polygon_around (&cutter->cuts[j], &cutter->compass, &g_array_index (inks->hulls, LapHull, j),
                              ink->gap > 0.0 ? ink->gap : inks->gap);
    }
}

static void
emit (LapCutter *cutter, const LapPolygon *polygon)
{
  LapFigureContour contour = { cutter->points->len, 0 };
  LapPolygon cropped;

  if (!isnan (cutter->crop))
    {
      lap_polygon_half (polygon, (LapFigPoint) { 0.0, cutter->crop }, (LapFigPoint) { 1.0, cutter->crop },
                        1.0,
                        &cropped);
      polygon = &cropped;
    }
  if (polygon->n < 3)
    return;
  contour.n = polygon->n;
  g_array_append_vals (cutter->points, polygon->p, polygon->n);
  g_array_append_val (cutter->contours, contour);
}

static void
cut_by (LapCutter *cutter, const LapInk *ink, const LapInk *later)
{
  if (ink->is_leg && later->spares_legs && ink->role == later->role)
    return;
  for (guint i = later->first; i < later->first + later->n; i++)
    {
      GArray *done = cutter->now;

      if (!g_array_index (cutter->inks->hulls, LapHull, i).cuts)
        continue;
      g_array_set_size (cutter->next, 0);
      for (guint j = 0; j < cutter->now->len; j++)
        lap_polygon_subtract (&g_array_index (cutter->now, LapPolygon, j), &cutter->cuts[i], cutter->next);
      cutter->now = cutter->next;
      cutter->next = done;
    }
}

/* The contours of ink @at, added to the current shape. */
static void
draw_ink (LapCutter *cutter, guint at)
{
  const LapInk *ink = &g_array_index (cutter->inks->inks, LapInk, at);

  for (guint i = ink->first; i < ink->first + ink->n; i++)
    {
      const LapHull *hull = &g_array_index (cutter->inks->hulls, LapHull, i);

      if (hull->unseen)
        continue;
      g_array_set_size (cutter->now, 0);
      lap_polygon_around (lap_polygon_slot (cutter->now), &cutter->compass, hull, 0.0);
      for (guint j = at + 1; ink->can_be_cut && j < cutter->inks->inks->len; j++)
        cut_by (cutter, ink, &g_array_index (cutter->inks->inks, LapInk, j));
      for (guint j = 0; j < cutter->now->len; j++)
        emit (cutter, &g_array_index (cutter->now, LapPolygon, j));
    }
}

static int
by_rank (gconstpointer a, gconstpointer b)
{
  const LapInk *one = a, *other = b;

  return one->rank != other->rank ? one->rank - other->rank : one->serial - other->serial;
}

/* Neighbours of one role become one shape where nothing lies between them. */
LapFigureDrawing *
lap_inks_draw (LapInks *inks, double crop)
{
  LapFigureDrawing *drawing = g_new0 (LapFigureDrawing, 1);
  LapCutter cutter = { .inks = inks, .crop = crop };

  lap_compass_init (&cutter.compass, inks->scale);
  cutter.points = g_array_new (FALSE, FALSE, sizeof (LapFigPoint));
  cutter.contours = g_array_new (FALSE, FALSE, sizeof (LapFigureContour));
  cutter.shapes = g_array_new (FALSE, FALSE, sizeof (LapFigureShape));
  cutter.now = g_array_new (FALSE, FALSE, sizeof (LapPolygon));
  cutter.next = g_array_new (FALSE, FALSE, sizeof (LapPolygon));
  g_array_sort (inks->inks, by_rank);
  prepare_cuts (&cutter);
  for (guint i = 0; i < inks->inks->len; i++)
    {
      LapFigureShape shape = { g_array_index (inks->inks, LapInk, i).role, cutter.contours->len, 0 };
      LapFigureShape *last = cutter.shapes->len == 0 ? NULL
                             : &g_array_index (cutter.shapes, LapFigureShape, cutter.shapes->len - 1);

      draw_ink (&cutter, i);
      shape.n = cutter.contours->len - shape.first;
      if (last != NULL && last->role == shape.role)
        last->n += shape.n;
      else if (shape.n > 0)
        g_array_append_val (cutter.shapes, shape);
    }
  drawing->scale = inks->scale;
  drawing->n_points = cutter.points->len;
  drawing->n_contours = cutter.contours->len;
  drawing->n_shapes = cutter.shapes->len;
  drawing->points = (LapFigPoint *) g_array_free (cutter.points, FALSE);
  drawing->contours = (LapFigureContour *) g_array_free (cutter.contours, FALSE);
  drawing->shapes = (LapFigureShape *) g_array_free (cutter.shapes, FALSE);
  g_array_unref (cutter.now);
  g_array_unref (cutter.next);
  g_free (cutter.cuts);
  return drawing;
}

void
lap_figure_drawing_free (LapFigureDrawing *drawing)
{
  if (drawing == NULL)
    return;
  g_free (drawing->points);
  g_free (drawing->contours);
  g_free (drawing->shapes);
  g_free (drawing);
}

/* ---- Clearance ---- */

double
lap_inks_clearance (const LapInks *inks, int rank, LapFigPoint at)
{
  LapCompass compass;
  double way = G_MAXDOUBLE;

  lap_compass_init (&compass, inks->scale);
  for (guint i = 0; i < inks->inks->len; i++)
    {
      const LapInk *ink = &g_array_index (inks->inks, LapInk, i);

      for (guint j = ink->first; ink->rank >= rank && j < ink->first + ink->n; j++)
        {
          LapPolygon polygon;

          lap_polygon_around (&polygon, &compass, &g_array_index (inks->hulls, LapHull, j), 0.0);
          way = MIN (way, lap_polygon_way (&polygon, at));
        }
    }
  return way;
}
