/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Lists of inks and their contours.
 */
#include "figure/ink.h"

#define MAX_CORNERS 64
#define MAX_POINTS (3 * MAX_CORNERS)
#define SMOOTH 0.12  /* pixels that a polygon may differ from a circle */
#define BIG_RADIUS 6.7
#define LEAST_AREA 1e-5

typedef struct {
  guint n;
  LapFigPoint p[MAX_POINTS];
} LapPolygon;

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

/* ---- Polygons ---- */

typedef struct {
  LapInks *inks;
  guint corners;
  LapFigPoint toward[MAX_CORNERS];
  double crop;
  GArray *points, *contours, *shapes;
  GArray *now, *next; /* of LapPolygon: the pieces of one hull while it is cut */
} LapCutter;

/* Clockwise with y upwards: in each direction the disc that reaches furthest gives a corner. */
static void
outline (const LapCutter *cutter, const LapHull *hull, double grow, LapPolygon *polygon)
{
  polygon->n = 0;
  for (guint i = 0; i < cutter->corners; i++)
    {
      LapFigPoint u = cutter->toward[i];
      double best = -G_MAXDOUBLE;
      guint which = 0;

      for (guint k = 0; k < hull->n; k++)
        {
          double reach = hull->disc[k].c.x * u.x + hull->disc[k].c.y * u.y + hull->disc[k].r;

          if (reach > best)
            best = reach, which = k;
        }
      polygon->p[polygon->n++] = (LapFigPoint) { hull->disc[which].c.x + u.x * (hull->disc[which].r + grow),
                                                 hull->disc[which].c.y + u.y * (hull->disc[which].r + grow) };
    }
}

static double
left_of (LapFigPoint a, LapFigPoint b, LapFigPoint p)
{
  return (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);
}

static double
area (const LapPolygon *polygon)
{
  double sum = 0.0;

  for (guint i = 0; i < polygon->n; i++)
    {
      LapFigPoint a = polygon->p[i], b = polygon->p[(i + 1) % polygon->n];

      sum += a.x * b.y - b.x * a.y;
    }
  return fabs (sum) / 2.0;
}

/* The part of @from on the left (@sign 1) or the right (-1) of the line a → b. */
static void
keep_half (const LapPolygon *from, LapFigPoint a, LapFigPoint b, double sign, LapPolygon *to)
{
  to->n = 0;
  for (guint i = 0; i < from->n && to->n + 2 < MAX_POINTS; i++)
    {
      LapFigPoint p = from->p[i], q = from->p[(i + 1) % from->n];
      double sp = sign * left_of (a, b, p), sq = sign * left_of (a, b, q);

      if (sp >= 0.0)
        to->p[to->n++] = p;
      if ((sp > 0.0 && sq < 0.0) || (sp < 0.0 && sq > 0.0))
        to->p[to->n++] = lap_fig_mix (p, q, sp / (sp - sq));
    }
}

static LapFigureBox
extent (const LapPolygon *polygon)
{
  LapFigureBox box = { G_MAXDOUBLE, G_MAXDOUBLE, -G_MAXDOUBLE, -G_MAXDOUBLE };

  for (guint i = 0; i < polygon->n; i++)
    {
      box.x0 = MIN (box.x0, polygon->p[i].x);
      box.y0 = MIN (box.y0, polygon->p[i].y);
      box.x1 = MAX (box.x1, polygon->p[i].x);
      box.y1 = MAX (box.y1, polygon->p[i].y);
    }
  return box;
}

static gboolean
apart (const LapFigureBox *a, const LapFigureBox *b)
{
  return a->x1 < b->x0 || b->x1 < a->x0 || a->y1 < b->y0 || b->y1 < a->y0;
}

/* An edge of @cut with all of @from outside means that the two don't meet. */
static gboolean
is_clear_of (const LapPolygon *from, const LapPolygon *cut)
{
  for (guint i = 0; i < cut->n; i++)
    {
      LapFigPoint a = cut->p[i], b = cut->p[(i + 1) % cut->n];
      gboolean outside = TRUE;

      for (guint j = 0; outside && j < from->n; j++)
        outside = left_of (a, b, from->p[j]) >= 0.0;
      if (outside && lap_fig_distance (a, b) > 1e-9)
        return TRUE;
    }
  return FALSE;
}

/* Adds to @out what is left of @from without @cut. */
static void
subtract (const LapPolygon *from, const LapPolygon *cut, GArray *out)
{
  LapFigureBox a = extent (from), b = extent (cut);
  LapPolygon rest = *from, piece = { 0 }, inside = { 0 };

  if (apart (&a, &b) || is_clear_of (from, cut))
    {
      g_array_append_val (out, *from);
      return;
    }
  for (guint i = 0; i < cut->n && rest.n >= 3; i++)
    {
      LapFigPoint p = cut->p[i], q = cut->p[(i + 1) % cut->n];

      if (lap_fig_distance (p, q) < 1e-9)
        continue;
      keep_half (&rest, p, q, 1.0, &piece);
      if (piece.n < 3 || area (&piece) < LEAST_AREA)
        continue;
      g_array_append_val (out, piece);
      keep_half (&rest, p, q, -1.0, &inside);
      rest = inside;
    }
}

static void
emit (LapCutter *cutter, const LapPolygon *polygon)
{
  LapFigureContour contour = { cutter->points->len, polygon->n };
  LapPolygon cropped = { 0 };
  const LapPolygon *done = polygon;

  if (!isnan (cutter->crop))
    {
      keep_half (polygon, (LapFigPoint) { 0.0, cutter->crop }, (LapFigPoint) { 1.0, cutter->crop }, 1.0,
                 &cropped);
      done = &cropped;
    }
  if (done->n < 3)
    return;
  contour.n = done->n;
  g_array_append_vals (cutter->points, done->p, done->n);
  g_array_append_val (cutter->contours, contour);
}

static void
cut_by (LapCutter *cutter, const LapInk *ink, const LapInk *later)
{
  double gap = later->gap > 0.0 ? later->gap : cutter->inks->gap;

  if (ink->is_leg && later->spares_legs && ink->role == later->role)
    return;
  for (guint i = later->first; i < later->first + later->n; i++)
    {
      const LapHull *hull = &g_array_index (cutter->inks->hulls, LapHull, i);
      LapPolygon cut = { 0 };
      GArray *done = cutter->now;

      if (!hull->cuts)
        continue;
      outline (cutter, hull, gap, &cut);
      g_array_set_size (cutter->next, 0);
      for (guint j = 0; j < cutter->now->len; j++)
        subtract (&g_array_index (cutter->now, LapPolygon, j), &cut, cutter->next);
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
      LapPolygon whole = { 0 };

      if (hull->unseen)
        continue;
      outline (cutter, hull, 0.0, &whole);
      g_array_set_size (cutter->now, 0);
      g_array_append_val (cutter->now, whole);
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

static guint
corners_for (double scale)
{
  static const guint steps[] = { 16, 20, 24, 32, 40, 48, MAX_CORNERS };
  double r = BIG_RADIUS * scale;
  double wanted = r <= SMOOTH ? 0.0 : G_PI / acos (1.0 - SMOOTH / r);

  for (guint i = 0; i < G_N_ELEMENTS (steps); i++)
    if (steps[i] >= wanted)
      return steps[i];
  return MAX_CORNERS;
}

/* Neighbours of one role become one shape where nothing lies between them. */
LapFigureDrawing *
lap_inks_draw (LapInks *inks, double crop)
{
  LapFigureDrawing *drawing = g_new0 (LapFigureDrawing, 1);
  LapCutter cutter = { .inks = inks, .corners = corners_for (inks->scale), .crop = crop };

  for (guint i = 0; i < cutter.corners; i++)
    cutter.toward[i] = lap_fig_toward (360.0 * (i + 0.5) / cutter.corners);
  cutter.points = g_array_new (FALSE, FALSE, sizeof (LapFigPoint));
  cutter.contours = g_array_new (FALSE, FALSE, sizeof (LapFigureContour));
  cutter.shapes = g_array_new (FALSE, FALSE, sizeof (LapFigureShape));
  cutter.now = g_array_new (FALSE, FALSE, sizeof (LapPolygon));
  cutter.next = g_array_new (FALSE, FALSE, sizeof (LapPolygon));
  g_array_sort (inks->inks, by_rank);
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

static double
way_to_segment (LapFigPoint a, LapFigPoint b, LapFigPoint p)
{
  double length = (b.x - a.x) * (b.x - a.x) + (b.y - a.y) * (b.y - a.y);
  double t = length < 1e-12 ? 0.0 : ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / length;

  return lap_fig_distance (p, lap_fig_mix (a, b, CLAMP (t, 0.0, 1.0)));
}

static double
way_to_polygon (const LapPolygon *polygon, LapFigPoint p)
{
  double way = G_MAXDOUBLE;
  gboolean inside = TRUE;

  for (guint i = 0; i < polygon->n; i++)
    {
      LapFigPoint a = polygon->p[i], b = polygon->p[(i + 1) % polygon->n];

      inside = inside && left_of (a, b, p) <= 0.0;
      way = MIN (way, way_to_segment (a, b, p));
    }
  return inside ? 0.0 : way;
}

double
lap_inks_clearance (const LapInks *inks, int rank, LapFigPoint at)
{
  LapCutter cutter = { .corners = 32 };
  double way = G_MAXDOUBLE;

  for (guint i = 0; i < cutter.corners; i++)
    cutter.toward[i] = lap_fig_toward (360.0 * i / cutter.corners);
  for (guint i = 0; i < inks->inks->len; i++)
    {
      const LapInk *ink = &g_array_index (inks->inks, LapInk, i);

      for (guint j = ink->first; ink->rank >= rank && j < ink->first + ink->n; j++)
        {
          LapPolygon polygon = { 0 };

          outline (&cutter, &g_array_index (inks->hulls, LapHull, j), 0.0, &polygon);
          way = MIN (way, way_to_polygon (&polygon, at));
        }
    }
  return way;
}
