/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The inks of what explains a figure: arrows, the mark of a hold, the floor and the mat.
 */
#include "figure/ink.h"
#include "figure/solve.h"

#define HEAD_ANGLE 34.0
#define FLOOR_HALF 40.0
#define MAT_HALF 20.0

/* Points along the way of a joint over the first part of the movement. */
static guint
joint_path (const LapFigure *figure, const LapArrow *arrow, LapFigPoint *points, guint room)
{
  LapFigurePose pose;
  guint n = MIN (room, 17);

  for (guint i = 0; i < n; i++)
    {
      double at = lap_fig_blend (arrow->v[2], arrow->v[3], (double) i / (n - 1));

      lap_blend (figure, 0, MIN (1, figure->n_keys - 1), at, FALSE, &pose);
      points[i] = lap_fig_plus (pose.p[arrow->joint], (LapFigPoint) { arrow->v[0], arrow->v[1] });
    }
  return n;
}

guint
lap_arrow_path (const LapFigure *figure, const LapArrow *arrow, LapFigPoint *points, guint room)
{
  const double *v = arrow->v;
  guint n = MIN (room, 21);

  if (arrow->kind == LAP_ARROW_OF)
    return joint_path (figure, arrow, points, room);
  if (arrow->kind == LAP_ARROW_LINE)
    {
      points[0] = (LapFigPoint) { v[0], v[1] };
      points[1] = (LapFigPoint) { v[2], v[3] };
      return 2;
    }
  for (guint i = 0; i < n; i++)
    {
      LapFigPoint d = lap_fig_toward (lap_fig_blend (v[4], v[5], (double) i / (n - 1)));

      points[i] = (LapFigPoint) { v[0] + d.x * v[2], v[1] + d.y * v[3] };
    }
  return n;
}

/* An open head at @tip, for a line that comes from @from. */
static void
ink_head (LapInks *inks, LapFigPoint from, LapFigPoint tip, double r)
{
  double back = lap_fig_bearing (tip, from);

  for (double sign = -1.0; sign <= 1.0; sign += 2.0)
    lap_inks_line (inks, tip, lap_fig_step (tip, back + sign * HEAD_ANGLE, 6.4 * r), r);
}

void
lap_ink_arrows (LapInks *inks, const LapFigure *figure)
{
  double r = MAX (0.75, 0.7 * inks->pixel);

  for (guint i = 0; i < figure->n_arrows; i++)
    {
      LapFigPoint path[32];
      guint n = lap_arrow_path (figure, &figure->arrows[i], path, G_N_ELEMENTS (path));

      lap_inks_add (inks, LAP_FIGURE_ROLE_ARROW, LAP_RANK_ARROW)->can_be_cut = FALSE;
      for (guint j = 0; j + 1 < n; j++)
        lap_inks_line (inks, path[j], path[j + 1], r);
      ink_head (inks, path[n > 3 ? n - 3 : 0], path[n - 1], r);
      if (figure->arrows[i].both)
        ink_head (inks, path[n > 3 ? 2 : 1], path[0], r);
    }
  if (isnan (figure->pause.x))
    return;
  lap_inks_add (inks, LAP_FIGURE_ROLE_ARROW, LAP_RANK_ARROW)->can_be_cut = FALSE;
  for (double sign = -1.0; sign <= 1.0; sign += 2.0)
    lap_inks_box (inks, figure->pause.x + sign * 2.4 - 1.2, figure->pause.y - 4.5,
                  figure->pause.x + sign * 2.4 + 1.2,
                  figure->pause.y + 4.5, 0.8);
}

static gboolean
has_mat (const LapFigure *figure)
{
  for (guint i = 0; i < figure->n_gear; i++)
    if (figure->gear[i].kind == LAP_GEAR_MAT)
      return TRUE;
  return FALSE;
}

static void
ink_patch (LapInks *inks, const LapFigure *figure, LapFigureBox box)
{
  double z = figure->wide, k = figure->depth.x;
  LapDisc corners[] = { { { box.x0 + k * z, figure->depth.y * z }, 0.4 },
                        { { box.x1 + k * z, figure->depth.y * z }, 0.4 },
                        { { box.x1 - k * z, -figure->depth.y * z }, 0.4 },
                          { { box.x0 - k * z, -figure->depth.y * z }, 0.4 } };

  lap_inks_add (inks, has_mat (figure) ? LAP_FIGURE_ROLE_MAT : LAP_FIGURE_ROLE_GROUND,
                LAP_RANK_GROUND)->can_be_cut = FALSE;
  lap_inks_hull (inks, corners, G_N_ELEMENTS (corners));
}

static double
mat_depth (const LapFigure *figure, double pixel)
{
  return has_mat (figure) && !figure->tq ? MAX (2.2, 2.0 * pixel) : 0.0;
}

double
lap_ground_depth (const LapFigure *figure, double pixel)
{
  return figure->tq || figure->above ? 0.0 : mat_depth (figure, pixel) + MAX (0.8, pixel);
}

/* A mat lies on the floor line; seen from above it is a rectangle, in three-quarter view a slanted one. */
void
lap_ink_ground (LapInks *inks, const LapFigure *figure, LapFigureBox box, double from, double to)
{
  double middle = (box.x0 + box.x1) / 2.0, mat = mat_depth (figure, inks->pixel),
    line = MAX (0.8, inks->pixel);

  if (figure->tq)
    {
      ink_patch (inks, figure, box);
      return;
    }
  if (mat > 0.0)
    lap_inks_add (inks, LAP_FIGURE_ROLE_MAT, LAP_RANK_GROUND)->can_be_cut = FALSE;
  if (mat > 0.0 && figure->above)
    lap_inks_box (inks, MAX (from, box.x0 - 4.0), -MAT_HALF, MIN (to, box.x1 + 4.0), MAT_HALF, 1.6);
  else if (mat > 0.0)
    lap_inks_box (inks, MAX (from, box.x0 - 3.0), -mat, MIN (to, box.x1 + 3.0), 0.0, MIN (0.9, mat / 2.0));
  if (figure->above)
    return;
  lap_inks_add (inks, LAP_FIGURE_ROLE_FLOOR, LAP_RANK_GROUND + 1)->can_be_cut = FALSE;
  lap_inks_box (inks, MAX (from, MIN (middle - FLOOR_HALF, box.x0 - 3.5)), -mat - line,
                MIN (to, MAX (middle + FLOOR_HALF, box.x1 + 3.5)), -mat, line / 2.0);
}
