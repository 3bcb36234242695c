/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The inks of the kit.
 */
#include "figure/ink.h"

#define WALL_TOP 104.0
#define CHAIR_BACK 25.0
#define BALL_R 6.0
#define BELL_R 4.6
#define LINE 1.1
#define CABLE 0.8

typedef struct {
  LapInks *inks;
  const LapFigure *figure;
  const LapFigurePose *pose;
  const LapGear *gear;
  int rank;
} LapKitPen;

/* Where an end of a band or strap is. */
static LapFigPoint
gear_end (const LapGearEnd *end, const LapFigurePose *pose)
{
  return end->joint == LAP_FREE_POINT ? end->at : lap_fig_plus (pose->p[end->joint], end->at);
}

/* The middle between the hands that hold it. */
static LapFigPoint
held_at (const LapGear *gear, const LapFigurePose *pose)
{
  if (gear->hands == 3)
    return lap_fig_mix (pose->p[LAP_JOINT_HAND], pose->p[LAP_JOINT_HAND + 1], 0.5);
  return pose->p[LAP_JOINT_HAND + (gear->hands == 2)];
}

/* The middle of a ball of the kit in this pose. */
static LapFigPoint
ball_middle (const LapGear *gear, const LapFigurePose *pose)
{
  LapFigPoint sum = { 0 };

  if (!isnan (pose->key.ball.x))
    return pose->key.ball;
  if (gear->n_ends == 0)
    return lap_fig_plus (held_at (gear, pose), gear->off);
  for (guint i = 0; i < gear->n_ends; i++)
    sum = lap_fig_plus (sum, gear_end (&gear->ends[i], pose));
  return (LapFigPoint) { sum.x / gear->n_ends + gear->off.x, sum.y / gear->n_ends + gear->off.y };
}

static void
line (const LapKitPen *pen, double x0, double y0, double x1, double y1)
{
  lap_inks_line (pen->inks, (LapFigPoint) { x0, y0 }, (LapFigPoint) { x1, y1 },
                 MAX (LINE, 0.7 * pen->inks->pixel));
}

static void
cable (const LapKitPen *pen, LapFigPoint a, LapFigPoint b)
{
  double r = pen->gear->r > 0.0 ? pen->gear->r : CABLE;

  lap_inks_line (pen->inks, a, b, MAX (r, 0.6 * pen->inks->pixel));
}

/* ---- What stands ---- */

static void
ink_chair (const LapKitPen *pen)
{
  const LapGear *gear = pen->gear;
  double seat = gear->h - LINE, front = gear->dir > 0 ? gear->x[1] : gear->x[0];
  double back = gear->dir > 0 ? gear->x[0] : gear->x[1], d = gear->dir;

  if (pen->figure->view == LAP_FIGURE_FRONT)
    {
      lap_inks_box (pen->inks, gear->x[0], gear->h - 3.0, gear->x[1], gear->h, LINE);
      for (double sign = -1.0; sign <= 1.0; sign += 2.0)
        {
          double x = (gear->x[0] + gear->x[1]) / 2.0 + sign * (gear->x[1] - gear->x[0] - 2.4) / 2.0;

          line (pen, x, LINE, x, seat + CHAIR_BACK);
        }
      lap_inks_box (pen->inks, gear->x[0] + 0.1, gear->h + 17.0, gear->x[1] - 0.1, gear->h + CHAIR_BACK,
                    LINE);
      return;
    }
  line (pen, front - d * LINE, seat, back, seat);
  line (pen, front - d * 2.4, seat, front - d * 1.4, LINE);
  line (pen, back + d * 1.2, seat, back, LINE);
  line (pen, back, seat, back - d * 3.0, seat + CHAIR_BACK);
}

static void
ink_bench (const LapKitPen *pen)
{
  const LapGear *gear = pen->gear;

  line (pen, gear->x[0] + LINE, gear->h - LINE, gear->x[1] - LINE, gear->h - LINE);
  line (pen, gear->x[0] + 3.4, gear->h - LINE, gear->x[0] + 2.2, LINE);
  line (pen, gear->x[1] - 3.4, gear->h - LINE, gear->x[1] - 2.2, LINE);
}

static void
ink_step (const LapKitPen *pen)
{
  lap_inks_box (pen->inks, pen->gear->x[0], 0.0, pen->gear->x[1], pen->gear->h, 0.9);
}

static void
ink_wall (const LapKitPen *pen)
{
  double x = pen->gear->x[0] + (pen->gear->dir < 0 ? LINE : -LINE);

  line (pen, x, LINE, x, pen->gear->top > 0.0 ? pen->gear->top : WALL_TOP);
}

static void
ink_panel (const LapKitPen *pen)
{
  lap_inks_box (pen->inks, pen->gear->x[0], 0.0, pen->gear->x[1], pen->gear->top > 0.0 ? pen->gear->top
                : WALL_TOP, 0.3);
}

/* A stripe on the floor, running towards the viewer. */
static void
ink_tape (const LapKitPen *pen)
{
  double x = pen->gear->x[0];
  LapDisc stripe[] = { { { x - 0.9, -0.6 }, 0.5 }, { { x + 0.9, -0.6 }, 0.5 }, { { x + 2.6, -8.0 }, 0.5 },
                       { { x - 2.6, -8.0 }, 0.5 } };

  lap_inks_hull (pen->inks, stripe, G_N_ELEMENTS (stripe));
}

static void
ink_bar (const LapKitPen *pen)
{
  double x = pen->gear->x[0], y = pen->gear->x[1];

  line (pen, x, LINE, x, y);
  line (pen, x - 6.5, LINE, x + 6.5, LINE);
  lap_inks_disc (pen->inks, (LapFigPoint) { x, y }, 2.1);
}

static void
ink_roller (const LapKitPen *pen)
{
  double r = pen->gear->r > 0.0 ? pen->gear->r : 4.4;

  lap_inks_ring (pen->inks, (LapFigPoint) { pen->gear->x[0], r }, r - 1.0, 1.0);
}

/* ends: crank, handlebar. The saddle is the surface. */
static void
ink_bike (const LapKitPen *pen)
{
  const LapGear *gear = pen->gear;
  LapFigPoint crank = gear->ends[0].at, bar = gear->ends[1].at, wheel = { crank.x + 22.0, crank.y };
  LapFigPoint saddle = { (gear->x[0] + gear->x[1]) / 2.0, gear->h - 1.6 };

  lap_inks_ring (pen->inks, wheel, 11.0, LINE);
  line (pen, crank.x, crank.y, saddle.x, saddle.y);
  line (pen, crank.x, crank.y, bar.x - 5.0, bar.y - 4.0);
  line (pen, bar.x - 5.0, bar.y - 4.0, bar.x, bar.y);
  line (pen, wheel.x, wheel.y, bar.x - 5.0, bar.y - 4.0);
  line (pen, crank.x, crank.y, wheel.x, wheel.y);
  line (pen, crank.x - 3.0, crank.y, crank.x - 9.0, LINE);
  line (pen, wheel.x, wheel.y - 11.0, wheel.x, LINE);
  line (pen, crank.x - 15.0, LINE, crank.x - 3.0, LINE);
  line (pen, wheel.x - 6.0, LINE, wheel.x + 6.0, LINE);
  lap_inks_box (pen->inks, gear->x[0], gear->h - 2.6, gear->x[1], gear->h, 1.2);
  lap_inks_disc (pen->inks, crank, 3.2);
}

/* The arm of the crank and the pedal under each foot go with the legs. */
static void
ink_pedal (const LapKitPen *pen, guint side)
{
  LapFigPoint ball = pen->pose->p[LAP_JOINT_BALL + side];

  cable (pen, pen->gear->ends[0].at, (LapFigPoint) { ball.x, ball.y - 2.6 });
  line (pen, ball.x - 3.6, ball.y - 2.9, ball.x + 3.6, ball.y - 2.9);
}

/* ends: footplate, reel. The seat runs on the rail under the pelvis. */
static void
ink_rower (const LapKitPen *pen)
{
  const LapGear *gear = pen->gear;
  LapFigPoint plate = gear->ends[0].at, reel = gear->ends[1].at;
  double rail = gear->h - 4.6, seat = pen->pose->p[LAP_JOINT_PELVIS].x;

  line (pen, gear->x[0], rail, reel.x, rail);
  line (pen, gear->x[0] + 3.0, rail, gear->x[0] + 1.0, LINE);
  line (pen, reel.x - 2.0, rail, reel.x, LINE);
  lap_inks_box (pen->inks, seat - 6.0, rail + 1.0, seat + 6.0, gear->h, 1.2);
  line (pen, plate.x - 1.5, plate.y - 5.0, plate.x + 3.5, plate.y + 5.5);
  lap_inks_ring (pen->inks, reel, 8.5, LINE);
  lap_inks_disc (pen->inks, reel, 3.0);
}

/* ---- What is held ---- */

static double
axis_of (const LapKitPen *pen, guint side)
{
  double fore = lap_fig_bearing (pen->pose->p[LAP_JOINT_ELBOW + side], pen->pose->p[LAP_JOINT_WRIST + side]);

  if (pen->gear->axis == LAP_AXIS_ACROSS)
    return fore + 90.0;
  if (pen->gear->axis == LAP_AXIS_FORE)
    return fore;
  return pen->gear->axis == LAP_AXIS_BAR ? 90.0 : pen->gear->axis;
}

static void
ink_bar_weight (const LapKitPen *pen, LapFigPoint at, double axis)
{
  LapHull *hand = lap_inks_hull (pen->inks, &(LapDisc) { at, 1.9 * pen->inks->thick }, 1);

  /* What would be left of the hand on both sides of the handle are only splinters. */
  hand->unseen = TRUE;
  for (double sign = -1.0; sign <= 1.0; sign += 2.0)
    {
      LapFigPoint end = lap_fig_step (at, axis, sign * 5.6);

      lap_inks_line (pen->inks, at, end, 0.9);
      lap_inks_line (pen->inks, lap_fig_step (end, axis + 90.0, 2.3), lap_fig_step (end, axis - 90.0, 2.3),
                     1.4);
    }
}

/* A weight seen end-on hides the hand; a dot of the arm's colour shows where it is held. */
static void
ink_disc_weight (const LapKitPen *pen, guint side)
{
  LapFigPoint at = pen->pose->p[LAP_JOINT_HAND + side];
  LapPart part = LAP_PART_ARM_R + side;
  gboolean moving = (pen->figure->moving & (1u << part | LAP_MOVES_FOREARMS)) != 0;
  LapFigureRole role = moving ? LAP_FIGURE_ROLE_MOVING : LAP_FIGURE_ROLE_BODY;
  LapInk *dot = NULL;

  lap_inks_disc (pen->inks, at, 5.2);
  dot = lap_inks_add (pen->inks, role, pen->rank + 1);
  dot->gap = 1.1;
  lap_inks_disc (pen->inks, at, 1.9);
}

static void
ink_dumbbell (const LapKitPen *pen)
{
  const LapGear *gear = pen->gear;

  if (gear->one)
    {
      ink_bar_weight (pen, lap_fig_plus (held_at (gear, pen->pose), gear->off),
                      axis_of (pen, LAP_SIDE_RIGHT));
      return;
    }
  for (guint side = 0; side < 2; side++)
    {
      LapJoint hand = LAP_JOINT_HAND + side;

      if ((gear->hands & (1u << side)) == 0)
        continue;
      lap_inks_add (pen->inks, LAP_FIGURE_ROLE_KIT, pen->rank);
      if (gear->axis == LAP_AXIS_NONE)
        ink_disc_weight (pen, side);
      else
        ink_bar_weight (pen, pen->pose->p[hand], axis_of (pen, side));
    }
}

static void
ink_kettlebell (const LapKitPen *pen)
{
  guint side = pen->gear->hands == 2;
  LapFigPoint grip = held_at (pen->gear, pen->pose), bell = { 0 };
  double way = !isnan (pen->pose->key.bell) ? pen->pose->key.bell
               : pen->gear->hands == 3 && pen->figure->view == LAP_FIGURE_FRONT ? 180.0
               : lap_fig_bearing (pen->pose->p[LAP_JOINT_ELBOW + side], pen->pose->p[LAP_JOINT_WRIST + side]);

  bell = lap_fig_step (grip, way, 6.6);
  lap_inks_disc (pen->inks, bell, BELL_R);
  for (double sign = -1.0; sign <= 1.0; sign += 2.0)
    {
      LapFigPoint top = lap_fig_step (grip, way + 90.0, sign * 2.4);

      lap_inks_line (pen->inks, grip, top, 0.9);
      lap_inks_line (pen->inks, top, lap_fig_step (bell, way + 90.0, sign * 3.0), 0.9);
    }
}

static void
ink_band (const LapKitPen *pen)
{
  const LapGear *gear = pen->gear;

  for (guint i = 0; i < gear->n_ends; i++)
    {
      LapFigPoint at = gear_end (&gear->ends[i], pen->pose);

      if (gear->ends[i].joint == LAP_FREE_POINT && gear->kind == LAP_GEAR_BAND)
        lap_inks_disc (pen->inks, at, 1.9);
      if (i + 1 < gear->n_ends)
        cable (pen, at, gear_end (&gear->ends[i + 1], pen->pose));
    }
}

static void
ink_loop (const LapKitPen *pen)
{
  const LapGear *gear = pen->gear;
  const LapFigPoint *p = pen->pose->p;
  LapFigPoint ends[2];
  double r = MAX (1.5, 0.8 * pen->inks->pixel);

  if (gear->on[0] >= 0)
    {
      LapFigPoint a = p[gear->on[0]], b = p[gear->on[1]], at = lap_fig_mix (a, b, gear->along);
      double across = lap_fig_bearing (a, b) + 90.0;

      lap_inks_line (pen->inks, lap_fig_step (at, across, 4.4), lap_fig_step (at, across, -4.4), r);
      return;
    }
  for (guint side = 0; side < 2; side++)
    {
      LapJoint from = gear->along > 1.0 ? LAP_JOINT_KNEE : LAP_JOINT_HIP, to = from + 2;

      ends[side] = lap_fig_mix (p[from + side], p[to + side], gear->along > 1.0 ? gear->along - 1.0
                                : gear->along);
    }
  {
    double along = lap_fig_bearing (ends[0], ends[1]), out = gear->along > 1.0 ? 2.6 : 3.6;

    lap_inks_line (pen->inks, lap_fig_step (ends[0], along, -out), lap_fig_step (ends[1], along, out), r);
  }
}

/* Turned rope: a bow from hand to hand, over the head at phase 0 and under the feet at 180. Swung rope: a
 * drop that hangs from both hands in direction "rope". */
static void
ink_rope (const LapKitPen *pen)
{
  const LapGear *gear = pen->gear;
  const LapFigPoint *p = pen->pose->p;
  const guint n = 28;
  LapFigPoint right = p[LAP_JOINT_HAND], left = p[LAP_JOINT_HAND + 1],
    middle = lap_fig_mix (right, left, 0.5);
  LapFigPoint last = gear->swung ? middle : right;
  double phase = isnan (pen->pose->key.rope) ? 180.0 : pen->pose->key.rope;
  double lowest = (gear->top + gear->bottom) / 2.0 +
    (gear->top - gear->bottom) / 2.0 * cos (lap_fig_radians (phase));

  for (guint i = 1; i <= n; i++)
    {
      double u = G_PI * i / n, bulge = pow (sin (u), 0.6);
      LapFigPoint at = { 0 };

      if (gear->swung)
        at = lap_fig_step (lap_fig_step (middle, phase, gear->along * (1.0 - cos (2.0 * u)) / 2.0),
                           phase + 90.0,
                           4.2 * sin (2.0 * u) * (1.0 - cos (2.0 * u)) / 1.3);
      else
        at = (LapFigPoint) { middle.x + (right.x - middle.x) * cos (u) * (1.0 + 0.22 * bulge),
                             lap_fig_blend (lap_fig_mix (right, left, (double) i / n).y, lowest, bulge) };
      cable (pen, last, at);
      last = at;
    }
}

static void
ink_ball (const LapKitPen *pen)
{
  lap_inks_disc (pen->inks, ball_middle (pen->gear, pen->pose), pen->gear->r > 0.0 ? pen->gear->r
                 : BALL_R);
}

/* ---- All of it ---- */

static const struct {
  void (*ink) (const LapKitPen *pen);
  gboolean held;
} drawers[LAP_N_GEAR] = {
  [LAP_GEAR_CHAIR] = { ink_chair, FALSE },       [LAP_GEAR_BENCH] = { ink_bench, FALSE },
  [LAP_GEAR_STEP] = { ink_step, FALSE },         [LAP_GEAR_WALL] = { ink_wall, FALSE },
  [LAP_GEAR_PANEL] = { ink_panel, FALSE },       [LAP_GEAR_TAPE] = { ink_tape, FALSE },
  [LAP_GEAR_BAR] = { ink_bar, FALSE },           [LAP_GEAR_ROLLER] = { ink_roller, FALSE },
  [LAP_GEAR_BIKE] = { ink_bike, FALSE },         [LAP_GEAR_ROWER] = { ink_rower, FALSE },
  [LAP_GEAR_DUMBBELL] = { ink_dumbbell, TRUE },  [LAP_GEAR_KETTLEBELL] = { ink_kettlebell, TRUE },
  [LAP_GEAR_BAND] = { ink_band, TRUE },          [LAP_GEAR_STRAP] = { ink_band, TRUE },
  [LAP_GEAR_LOOP] = { ink_loop, TRUE },          [LAP_GEAR_ROPE] = { ink_rope, TRUE },
  [LAP_GEAR_BALL] = { ink_ball, TRUE },
};

void
lap_ink_kit (LapInks *inks, const LapFigure *figure, const LapFigurePose *pose, gboolean held, int rank)
{
  for (guint i = 0; i < figure->n_gear; i++)
    {
      const LapGear *gear = &figure->gear[i];
      gboolean weight = gear->kind == LAP_GEAR_DUMBBELL || gear->kind == LAP_GEAR_KETTLEBELL;
      LapLayer layer = weight && pose->key.flags.layer >= 0 ? (LapLayer) pose->key.flags.layer : gear->layer;
      LapKitPen pen = { inks, figure, pose, gear, rank + lap_rank_of_layer (layer) };

      if (held && gear->kind == LAP_GEAR_BIKE)
        for (guint side = 0; side < 2; side++)
          {
            pen.rank = rank + lap_rank_of_layer (side == LAP_SIDE_RIGHT ? LAP_LAYER_NEAR0 : LAP_LAYER_REAR);
            lap_inks_add (inks, LAP_FIGURE_ROLE_KIT, pen.rank);
            ink_pedal (&pen, side);
          }
      if (held && gear->kind == LAP_GEAR_ROWER)
        {
          lap_inks_add (inks, LAP_FIGURE_ROLE_KIT, pen.rank);
          cable (&pen, pose->p[LAP_JOINT_HAND], gear->ends[1].at);
        }
      if (drawers[gear->kind].ink == NULL || drawers[gear->kind].held != held)
        continue;
      lap_inks_add (inks, gear->kind == LAP_GEAR_PANEL ? LAP_FIGURE_ROLE_GROUND : LAP_FIGURE_ROLE_KIT,
                    pen.rank)
        ->can_be_cut = layer != LAP_LAYER_BACK;
      drawers[gear->kind].ink (&pen);
    }
}
