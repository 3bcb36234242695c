/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "figure/polygon.h"

#define SMOOTH 0.12  /* pixels that a polygon may differ from a circle */
#define BIG_RADIUS 6.7
#define LEAST_AREA 1e-5
#define SAME_CORNER 1e-9

void
lap_compass_init (LapCompass *compass, double scale)
{
  static const guint steps[] = { 16, 20, 24, 32, 40, 48, LAP_MAX_CORNERS };
  double r = BIG_RADIUS * scale;
  double wanted = r <= SMOOTH ? 0.0 : G_PI / acos (1.0 - SMOOTH / r);
  guint i = 0;

  while (i + 1 < G_N_ELEMENTS (steps) && steps[i] < wanted)
    i++;
  compass->n = steps[i];
  for (i = 0; i < compass->n; i++)
    compass->toward[i] = lap_fig_toward (360.0 * (i + 0.5) / compass->n);
}

static void
find_box (LapPolygon *polygon)
{
  LapFigureBox box = { G_MAXDOUBLE, G_MAXDOUBLE, -G_MAXDOUBLE, -G_MAXDOUBLE };

  for (guint i = 0; i < polygon->n; i++)
    {
      box.x0 = MIN (box.x0, polygon->p[i].x);
      box.y0 = MIN (box.y0, polygon->p[i].y);
      box.x1 = MAX (box.x1, polygon->p[i].x);
      box.y1 = MAX (box.y1, polygon->p[i].y);
    }
  polygon->box = box;
}

/* In each direction the disc that reaches furthest gives a corner. */
void
lap_polygon_around (LapPolygon *polygon, const LapCompass *compass, const LapHull *hull, double grow)
{
  polygon->n = compass->n;
  for (guint i = 0; i < compass->n; i++)
    {
      LapFigPoint u = compass->toward[i];
      const LapDisc *best = &hull->disc[0];
      double most = -G_MAXDOUBLE;

      for (guint k = 0; k < hull->n; k++)
        {
          double reach = hull->disc[k].c.x * u.x + hull->disc[k].c.y * u.y + hull->disc[k].r;

          if (reach > most)
            most = reach, best = &hull->disc[k];
        }
      polygon->p[i] = (LapFigPoint) { best->c.x + u.x * (best->r + grow),
                                      best->c.y + u.y * (best->r + grow) };
    }
  find_box (polygon);
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
      LapFigPoint a = polygon->p[i], b = polygon->p[i + 1 < polygon->n ? i + 1 : 0];

      sum += a.x * b.y - b.x * a.y;
    }
  return fabs (sum) / 2.0;
}

void
lap_polygon_half (const LapPolygon *from, LapFigPoint a, LapFigPoint b, double sign, LapPolygon *to)
{
  double at = from->n > 0 ? sign * left_of (a, b, from->p[0]) : 0.0;

  to->n = 0;
  for (guint i = 0; i < from->n && to->n + 2 < LAP_MAX_POINTS; i++)
    {
      LapFigPoint p = from->p[i], q = from->p[i + 1 < from->n ? i + 1 : 0];
      double next = sign * left_of (a, b, q);

      if (at >= 0.0)
        to->p[to->n++] = p;
      if ((at > 0.0 && next < 0.0) || (at < 0.0 && next > 0.0))
        to->p[to->n++] = lap_fig_mix (p, q, at / (at - next));
      at = next;
    }
}

static void
copy (const LapPolygon *from, LapPolygon *to)
{
  to->n = from->n;
  to->box = from->box;
  memcpy (to->p, from->p, from->n * sizeof *from->p);
}

LapPolygon *
lap_polygon_slot (GArray *out)
{
  g_array_set_size (out, out->len + 1);
  return &g_array_index (out, LapPolygon, out->len - 1);
}

static gboolean
boxes_apart (const LapFigureBox *a, const LapFigureBox *b)
{
  return a->x1 < b->x0 || b->x1 < a->x0 || a->y1 < b->y0 || b->y1 < a->y0;
}

/* An edge of @cut with all of @from outside means that the two don't meet. */
static gboolean
is_clear_of (const LapPolygon *from, const LapPolygon *cut)
{
  if (boxes_apart (&from->box, &cut->box))
    return TRUE;
  for (guint i = 0; i < cut->n; i++)
    {
      LapFigPoint a = cut->p[i], b = cut->p[i + 1 < cut->n ? i + 1 : 0];
      gboolean outside = lap_fig_distance (a, b) > SAME_CORNER;

      for (guint j = 0; outside && j < from->n; j++)
        outside = left_of (a, b, from->p[j]) >= 0.0;
      if (outside)
        return TRUE;
    }
  return FALSE;
}

void
lap_polygon_subtract (const LapPolygon *from, const LapPolygon *cut, GArray *out)
{
  LapPolygon one, other, *rest = &one, *inside = &other;

  if (is_clear_of (from, cut))
    {
      copy (from, lap_polygon_slot (out));
      return;
    }
  copy (from, rest);
  for (guint i = 0; i < cut->n && rest->n >= 3; i++)
    {
      LapFigPoint a = cut->p[i], b = cut->p[i + 1 < cut->n ? i + 1 : 0];
      LapPolygon *piece = lap_polygon_slot (out), *was = rest;

      piece->n = 0;
      if (lap_fig_distance (a, b) > SAME_CORNER)
        lap_polygon_half (rest, a, b, 1.0, piece);
      if (piece->n < 3 || area (piece) < LEAST_AREA)
        {
          g_array_set_size (out, out->len - 1);
          continue;
        }
      find_box (piece);
      lap_polygon_half (rest, a, b, -1.0, inside);
      rest = inside;
      inside = was;
    }
}

static double
way_to_segment (LapFigPoint a, LapFigPoint b, LapFigPoint p)
{
  double length = (b.x - a.x) * (b.x - a.x) + (b.y - a.y) * (b.y - a.y);
  double t = length < 1e-12 ? 0.0 : ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / length;

  return lap_fig_distance (p, lap_fig_mix (a, b, CLAMP (t, 0.0, 1.0)));
}

double
lap_polygon_way (const LapPolygon *polygon, LapFigPoint at)
{
  double way = G_MAXDOUBLE;
  gboolean inside = TRUE;

  for (guint i = 0; i < polygon->n; i++)
    {
      LapFigPoint a = polygon->p[i], b = polygon->p[i + 1 < polygon->n ? i + 1 : 0];

      inside = inside && left_of (a, b, at) <= 0.0;
      way = MIN (way, way_to_segment (a, b, at));
    }
  return inside ? 0.0 : way;
}
