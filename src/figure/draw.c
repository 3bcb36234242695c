/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Fits a figure into a rectangle and draws it there.
 */
#include "figure/draw.h"

#define ICON_PADDING 0.02
#define BIGGEST (1.35 / 112.0) /* scale of a pose that needs little room, as a share of the rectangle */
#define CROP_SCALE 1.7         /* a bust may be that much larger, and narrower */
#define CROP_WIDTH 0.62
#define HALF_WIDTH 42.0
#define LEAST_SCALE 1e-3
#define ICON_SHADOWS 0.9       /* pixels a unit under which shadows only blur */

static LapFigureBox
joined (LapFigureBox a, LapFigureBox b)
{
  return (LapFigureBox) { MIN (a.x0, b.x0), MIN (a.y0, b.y0), MAX (a.x1, b.x1), MAX (a.y1, b.y1) };
}

static void
ink_pose (LapInks *inks, const LapFigure *figure, const LapFigurePose *pose, int rank)
{
  lap_ink_body (inks, figure, pose, rank);
  lap_ink_kit (inks, figure, pose, TRUE, rank);
}

static void
ink_all (LapInks *inks, const LapFigure *figure, const LapFigurePose *pose)
{
  if (figure->partner)
    {
      guint first = inks->inks->len;

      ink_pose (inks, figure, pose, LAP_RANK_PARTNER);
      lap_inks_mirror (inks, first, figure->partner_about);
    }
  ink_pose (inks, figure, pose, LAP_RANK_BODY);
  lap_ink_kit (inks, figure, pose, FALSE, LAP_RANK_BODY);
}

/* The pale pose behind: one colour, nothing cut out of it. */
static void
ink_ghost (LapInks *inks, const LapFigure *figure, const LapFigurePose *pose)
{
  guint first = inks->inks->len;

  ink_pose (inks, figure, pose, 0);
  for (guint i = first; i < inks->inks->len; i++)
    {
      LapInk *ink = &g_array_index (inks->inks, LapInk, i);

      ink->role = LAP_FIGURE_ROLE_GHOST;
      ink->rank = LAP_RANK_GHOST;
      ink->can_be_cut = FALSE;
      for (guint j = ink->first; j < ink->first + ink->n; j++)
        g_array_index (inks->hulls, LapHull, j).cuts = FALSE;
    }
}

/* What a pose covers with its kit, without the floor. */
static LapFigureBox
pose_bounds (const LapFigure *figure, const LapFigurePose *pose)
{
  g_autoptr (LapInks) inks = lap_inks_new (2.0);

  ink_all (inks, figure, pose);
  return lap_inks_bounds (inks, 0);
}

/* Every frame of a movement, in four steps between two keys. */
static LapFigureBox
movement_bounds (const LapFigure *figure)
{
  LapFigurePose pose;
  LapFigureBox box = pose_bounds (figure, &figure->poses[0]);
  guint steps = figure->n_keys <= 2 ? 8 : 4;

  for (guint i = 0; i + 1 < figure->n_keys; i++)
    for (guint j = 1; j <= steps; j++)
      {
        lap_blend (figure, i, i + 1, (double) j / steps, FALSE, &pose);
        box = joined (box, pose_bounds (figure, &pose));
      }
  return box;
}

void
lap_figure_measure (LapFigure *figure)
{
  g_autoptr (LapInks) inks = lap_inks_new (2.0);

  figure->still = figure->box = movement_bounds (figure);
  if (figure->swapped != NULL)
    figure->box = joined (figure->box, movement_bounds (figure->swapped));
  lap_ink_arrows (inks, figure);
  figure->marked = inks->inks->len > 0 ? joined (figure->still, lap_inks_bounds (inks, 0)) : figure->still;
}

/* What has to fit, and where the body stands in it. */
static LapFigureBox
box_to_fit (const LapFigure *figure, const LapFigure *side, LapFigureLook look, const LapFigurePose *pose)
{
  LapFigureBox box = look == LAP_FIGURE_ICON ? pose_bounds (side, pose)
                     : look == LAP_FIGURE_TILE ? figure->box : figure->marked;
  double half = HALF_WIDTH * (isnan (figure->crop) ? 1.0 : CROP_WIDTH), middle = (box.x0 + box.x1) / 2.0;

  if (figure->above)
    box.y0 = MIN (box.y0, -20.0), box.y1 = MAX (box.y1, 20.0);
  else if (figure->tq && look != LAP_FIGURE_ICON)
    box.y0 = MIN (box.y0, figure->depth.y * figure->wide);
  else
    box.y0 = isnan (figure->crop) ? MIN (box.y0, 0.0) : figure->crop;
  if (look == LAP_FIGURE_ICON)
    return box;
  box.x0 = MIN (box.x0, middle - half);
  box.x1 = MAX (box.x1, middle + half);
  box.y1 = MAX (box.y1, figure->top);
  return box;
}

/* The floor takes its room from the padding first. */
static double
scale_to_fit (const LapFigure *figure, LapFigureLook look, LapFigureBox box, double width, double height,
              gboolean floored)
{
  double padding = look == LAP_FIGURE_ICON ? ICON_PADDING : LAP_FIGURE_PADDING;
  double spared = look == LAP_FIGURE_ICON ? padding : 2.0 * padding, tall = box.y1 - box.y0;
  double biggest = BIGGEST * MIN (width, height) * (isnan (figure->crop) ? 1.0 : CROP_SCALE);
  double scale = MIN (width * (1.0 - 2.0 * padding) / (box.x1 - box.x0), height * (1.0 - spared) / tall);

  scale = MAX (MIN (scale, biggest), LEAST_SCALE);
  if (floored)
    scale = MIN (scale, (height * (1.0 - padding) - scale * lap_ground_depth (figure, 1.0 / scale)) / tall);
  return MAX (scale, LEAST_SCALE);
}

/* On whole pixels, so that the floor is a sharp line. Figures stand at the foot of the rectangle, without
 * a floor of their own right on its lower edge or its padding; those seen from above lie in its middle, small ones
 * without a floor on its lower edge as well: they stand in a row with others on one line. */
static void
place (const LapFigure *figure, LapFigureLook look, LapFigureDrawing *drawing, double width, double height,
       gboolean floored)
{
  const LapFigureBox *box = &drawing->box;
  double s = drawing->scale, foot = look == LAP_FIGURE_ICON ? height : height * (1.0 - LAP_FIGURE_PADDING);

  if (floored)
    foot = MIN (foot, height - s * lap_ground_depth (figure, 1.0 / s));

  drawing->x = width / 2.0 - s * (box->x0 + box->x1) / 2.0;
  if (figure->above && (floored || look != LAP_FIGURE_ICON))
    drawing->y = height / 2.0 + s * (box->y0 + box->y1) / 2.0;
  else
    drawing->y = floor (foot + s * (floored || figure->above || figure->tq || !isnan (figure->crop) ? box->y0 : 0.0) + 1e-6);
}

LapFigureDrawing *
lap_figure_draw (const LapFigure *figure, LapFigureLook look, LapFigureDrawFlags flags, double phase,
                 double width,
                 double height)
{
  const LapFigure *side = look == LAP_FIGURE_POSTER ? figure : lap_figure_side (figure, phase);
  LapFigurePose pose;
  LapFigureBox box;
  LapFigureDrawing *drawing = NULL;
  g_autoptr (LapInks) inks = NULL;
  gboolean floored = (flags & LAP_FIGURE_NO_FLOOR) == 0 && isnan (figure->crop) &&
                     !(figure->tq && look == LAP_FIGURE_ICON);

  if (look == LAP_FIGURE_POSTER)
    pose = figure->poses[figure->poster];
  else
    lap_figure_pose (figure, phase, &pose);
  box = box_to_fit (figure, side, look, &pose);
  inks = lap_inks_new (scale_to_fit (figure, look, box, width, height, floored));
  ink_all (inks, side, &pose);
  if (floored)
    {
      double middle = (box.x0 + box.x1) / 2.0, half = width * inks->pixel / 2.0;

      lap_ink_ground (inks, figure, look == LAP_FIGURE_ICON ? lap_inks_bounds (inks, 0)
                                    : look == LAP_FIGURE_TILE ? figure->box : figure->still, middle - half,
                                      middle + half);
    }
  if (figure->above && inks->scale >= ICON_SHADOWS)
    lap_ink_shadow (inks, figure, &pose);
  if (look == LAP_FIGURE_POSTER && figure->ghost >= 0)
    ink_ghost (inks, figure, &figure->poses[figure->ghost]);
  if (look == LAP_FIGURE_POSTER)
    lap_ink_arrows (inks, figure);
  drawing = lap_inks_draw (inks, figure->crop);
  drawing->box = box;
  place (figure, look, drawing, width, height, floored);
  return drawing;
}
