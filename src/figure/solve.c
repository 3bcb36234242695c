/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * From wishes to joints: the spine as an arc, limbs by directions or by two-bone inverse kinematics.
 */
#include "figure/solve.h"

#define MOST_REACH 0.9995 /* a limb is never quite straight when it reaches for a point */

static double
surface_x_slack (LapGearKind kind)
{
  return kind == LAP_GEAR_CHAIR ? 1.0 : 2.0;
}

double
lap_surface_of (const LapFigure *figure, int on)
{
  return on >= 0 ? figure->gear[on].h : 0.0;
}

double
lap_surface_under (const LapFigure *figure, LapFigPoint at)
{
  double height = 0.0;

  for (guint i = 0; i < figure->n_gear; i++)
    {
      const LapGear *gear = &figure->gear[i];
      double slack = surface_x_slack (gear->kind);

      if (gear->h > height && gear->h <= at.y + 0.6 && at.x >= gear->x[0] - slack &&
          at.x <= gear->x[1] + slack)
        height = gear->h;
    }
  return height;
}

LapFigPoint
lap_grounded (const LapFigure *figure, const LapFigurePose *pose, LapJoint joint)
{
  double z = pose->z[joint];

  return (LapFigPoint) { pose->p[joint].x - figure->depth.x * z, pose->p[joint].y - figure->depth.y * z };
}

double
lap_skin (const LapFigure *figure, const LapFigurePose *pose, LapJoint joint)
{
  static const double skins[LAP_N_JOINTS] = {
    LAP_SKIN_HIP,   LAP_SKIN_SHOULDER, LAP_SKIN_HEAD,     LAP_SKIN_HIP,      LAP_SKIN_HIP,   LAP_SKIN_KNEE,
    LAP_SKIN_KNEE,  2.8,               2.8,               LAP_SKIN_HEEL,     LAP_SKIN_HEEL,  LAP_SKIN_BALL,
    LAP_SKIN_BALL,  LAP_SKIN_BALL,     LAP_SKIN_BALL,     LAP_SKIN_SHOULDER, LAP_SKIN_SHOULDER,
      LAP_SKIN_ELBOW,
    LAP_SKIN_ELBOW, 2.2,               2.2,               LAP_SKIN_FIST,     LAP_SKIN_FIST,
  };
  gboolean front = figure->view == LAP_FIGURE_FRONT;

  if (joint >= LAP_JOINT_HAND)
    return pose->limb[LAP_PART_ARM_R + joint - LAP_JOINT_HAND].flat_hand ? LAP_SKIN_PALM : LAP_SKIN_FIST;
  if (front && (joint == LAP_JOINT_HIP || joint == LAP_JOINT_HIP + 1))
    return LAP_SKIN_HIP_FRONT;
  if (front && (joint == LAP_JOINT_SHOULDER || joint == LAP_JOINT_SHOULDER + 1))
    return LAP_SKIN_SHOULDER_FRONT;
  return skins[joint];
}

double
lap_sunk (const LapFigure *figure, const LapFigurePose *pose)
{
  double sunk = 0.0;

  if (figure->above)
    return 0.0;
  for (guint j = 0; j < LAP_N_JOINTS; j++)
    if (!(figure->view == LAP_FIGURE_FRONT && (j == LAP_JOINT_PELVIS || j == LAP_JOINT_NECK)))
      sunk = MAX (sunk, lap_skin (figure, pose, j) - lap_grounded (figure, pose, j).y);
  if (figure->view == LAP_FIGURE_SIDE)
    sunk = MAX (sunk, LAP_SKIN_CHEST - 0.1 - pose->spine[4].y);
  return sunk;
}

gboolean
lap_limb_is_planted (const LapLimb *limb)
{
  return limb->kind != LAP_LIMB_ANGLES && limb->kind != LAP_LIMB_ANKLE && limb->kind != LAP_LIMB_TO;
}

/* ---- Trunk ---- */

static gboolean
is_front (const LapFigure *figure)
{
  return figure->view == LAP_FIGURE_FRONT;
}

/* A limb direction of the file as clock degrees, and the other way: outward degrees turn round on the
 * right side. */
static double
absolute (const LapFigure *figure, guint side, double angle)
{
  return is_front (figure) && side == LAP_SIDE_RIGHT ? -angle : angle;
}

static void
solve_spine (LapFigurePose *pose)
{
  const LapKey *key = &pose->key;
  double length = LAP_LEN_TRUNK * key->fst[0];
  double p = lap_fig_radians (key->trunk - key->bend / 2.0), b = lap_fig_radians (key->bend);

  pose->pelvis = key->trunk - key->bend / 2.0;
  pose->thorax = key->trunk + key->bend / 2.0;
  pose->head = pose->thorax + key->head;
  for (guint i = 0; i < LAP_N_SPINE; i++)
    {
      double u = (double) i / (LAP_N_SPINE - 1);
      LapFigPoint d = fabs (b) < 1e-6 ? (LapFigPoint) { sin (p) * u, cos (p) * u }
                                      : (LapFigPoint) { (cos (p) - cos (p + b * u)) / b,
                                                        (sin (p + b * u) - sin (p)) / b };

      pose->spine[i] = (LapFigPoint) { pose->p[LAP_JOINT_PELVIS].x + d.x * length,
                                       pose->p[LAP_JOINT_PELVIS].y + d.y * length };
    }
  pose->p[LAP_JOINT_NECK] = pose->spine[LAP_N_SPINE - 1];
  pose->p[LAP_JOINT_HEAD] = lap_fig_step (pose->p[LAP_JOINT_NECK], pose->thorax + key->head / 2.0,
                                          LAP_LEN_NECK * key->fst[1]);
}

/* Sets a pair of joints at the ends of a line through @middle: across the picture from the front, towards
 * the viewer in three-quarter view, one over the other from the side unless the line is turned. */
static void
solve_pair (const LapFigure *figure, LapFigurePose *pose, LapJoint first, LapFigPoint middle, double along,
            double half,
            double turn)
{
  double sine = sin (lap_fig_radians (turn)), cosine = cos (lap_fig_radians (turn));

  for (guint side = 0; side < 2; side++)
    {
      double sign = side == LAP_SIDE_RIGHT ? -1.0 : 1.0;
      double across = is_front (figure) ? sign * half * cosine : sign * half * sine;

      pose->p[first + side] = lap_fig_step (middle, along + 90.0, across);
      pose->z[first + side] = figure->tq ? -sign * half * cosine : 0.0;
      if (figure->tq)
        {
          pose->p[first + side].x += figure->depth.x * pose->z[first + side];
          pose->p[first + side].y += figure->depth.y * pose->z[first + side];
        }
    }
}

static void
solve_trunk (const LapFigure *figure, LapFigurePose *pose)
{
  const LapKey *key = &pose->key;
  LapFigPoint neck = { 0 };

  solve_spine (pose);
  neck = lap_fig_step (pose->p[LAP_JOINT_NECK], pose->thorax, key->shrug);
  if (!is_front (figure))
    neck = lap_fig_step (neck, pose->thorax + 90.0, key->slide);
  solve_pair (figure, pose, LAP_JOINT_SHOULDER, neck, pose->thorax, LAP_HALF_SHOULDERS, key->twist);
  solve_pair (figure, pose, LAP_JOINT_HIP, pose->p[LAP_JOINT_PELVIS], pose->pelvis, LAP_HALF_HIPS, key->roll);
}

/* ---- Two bones ---- */

/* Directions of two bones of @l1 and @l2 from @from towards @to; @sense +1 turns the second clockwise of
 * the first. Returns how far the point was out of reach. */
static double
two_bones (LapFigPoint from, LapFigPoint to, double l1, double l2, int sense, double *first, double *second)
{
  double wanted = lap_fig_distance (from, to);
  double d = CLAMP (wanted, fabs (l1 - l2) + 1e-6, MOST_REACH * (l1 + l2));
  double toward = lap_fig_bearing (from, to);
  double c = CLAMP ((l1 * l1 + d * d - l2 * l2) / (2.0 * l1 * d), -1.0, 1.0);
  double at_root = acos (c) * (180.0 / G_PI);
  double bend =
    180.0 - acos (CLAMP ((l1 * l1 + l2 * l2 - d * d) / (2.0 * l1 * l2), -1.0, 1.0)) * (180.0 / G_PI);

  *first = toward - sense * at_root;
  *second = *first + sense * bend;
  return fabs (wanted - d);
}

static int
leg_sense (const LapFigure *figure, guint side)
{
  return is_front (figure) && side == LAP_SIDE_RIGHT ? -1 : 1;
}

/* From the side an elbow only bends forward; from the front bend tells whether it points out or in. */
static int
arm_sense (const LapFigure *figure, guint side, int bend)
{
  return !is_front (figure) ? -1 : side == LAP_SIDE_RIGHT ? -bend : bend;
}

/* ---- Legs ---- */

/* The ankle over a foot whose ball is at @ball. */
static LapFigPoint
ankle_over_ball (const LapFigure *figure, LapFigPoint ball, double foot)
{
  LapFigPoint along = lap_fig_toward (foot), up = lap_fig_toward (foot - 90.0);
  LapFigPoint ankle = { ball.x - LAP_BALL_ALONG * along.x + LAP_BALL_UNDER * up.x,
                        ball.y - LAP_BALL_ALONG * along.y + LAP_BALL_UNDER * up.y };

  if (is_front (figure))
    ankle.x = ball.x;
  return ankle;
}

static LapFigPoint
ankle_target (const LapFigure *figure, const LapLimb *limb, double z)
{
  double surface = lap_surface_of (figure, limb->on);
  LapFigPoint at = limb->at;

  if (limb->kind == LAP_LIMB_FLAT)
    at.y = surface + LAP_ANKLE_HEIGHT;
  else if (limb->kind == LAP_LIMB_INSTEP)
    at.y = surface + LAP_INSTEP_HEIGHT;
  else if (limb->kind == LAP_LIMB_BALL)
    at = ankle_over_ball (figure, (LapFigPoint) { at.x, surface + LAP_SKIN_BALL }, limb->has_end ? limb->end
                          : 90.0);
  at.x += figure->depth.x * z;
  at.y += figure->depth.y * z;
  return at;
}

/* The toes lie on what they would pass through. */
static LapFigPoint
rest_toes (const LapFigure *figure, LapFigPoint ball, double foot, double ground)
{
  LapFigPoint toe = lap_fig_step (ball, foot, LAP_LEN_TOES);
  double surface = lap_surface_under (figure, (LapFigPoint) { ball.x, ball.y - ground }) + ground;
  double turn = foot - 360.0 * floor (foot / 360.0), rise = 0.0;

  if (figure->above || toe.y >= surface + LAP_SKIN_BALL || ball.y < surface + 1.4)
    return toe;
  rise = CLAMP (surface + LAP_SKIN_BALL - ball.y, -LAP_LEN_TOES, LAP_LEN_TOES);
  return (LapFigPoint) { ball.x +
                         sqrt (LAP_LEN_TOES * LAP_LEN_TOES - rise * rise) * (turn > 200.0 && turn < 340.0 ? -1
                                                                             : 1),
                         ball.y + rise };
}

static void
solve_foot_side (const LapFigure *figure, LapFigurePose *pose, guint side, double foot)
{
  LapFigPoint along = lap_fig_toward (foot), up = lap_fig_toward (foot - 90.0),
    ankle = pose->p[LAP_JOINT_ANKLE + side];
  double ground = figure->depth.y * pose->z[LAP_JOINT_ANKLE + side];

  pose->p[LAP_JOINT_HEEL + side] =
    (LapFigPoint) { ankle.x - LAP_HEEL_ALONG * along.x - LAP_HEEL_UNDER * up.x,
                    ankle.y - LAP_HEEL_ALONG * along.y - LAP_HEEL_UNDER * up.y };
  pose->p[LAP_JOINT_BALL + side] =
    (LapFigPoint) { ankle.x + LAP_BALL_ALONG * along.x - LAP_BALL_UNDER * up.x,
                    ankle.y + LAP_BALL_ALONG * along.y - LAP_BALL_UNDER * up.y };
  pose->p[LAP_JOINT_TOE + side] = rest_toes (figure, pose->p[LAP_JOINT_BALL + side], foot, ground);
}

/* From the front a foot is a short shape under the ankle, toes turned out by turn. */
static void
solve_foot_front (const LapFigure *figure, LapFigurePose *pose, guint side, const LapLimb *limb)
{
  const LapKey *key = &pose->key;
  double shank = absolute (figure, side, pose->limb[side].b);
  double under = !isnan (key->footdir[side]) ? key->footdir[side] : lap_limb_is_planted (limb) ? 180.0
    : shank;
  double out = under + (side == LAP_SIDE_LEFT ? -90.0 : 90.0);
  LapFigPoint ankle = pose->p[LAP_JOINT_ANKLE + side];

  pose->key.footdir[side] = under;
  pose->p[LAP_JOINT_HEEL + side] = lap_fig_step (ankle, under, LAP_HEEL_UNDER);
  pose->p[LAP_JOINT_BALL + side] =
    lap_fig_step (lap_fig_step (ankle, under, LAP_BALL_UNDER + 0.75 * key->point[side]), out,
                                                 LAP_BALL_ALONG * key->turn[side]);
  pose->p[LAP_JOINT_TOE + side] =
    lap_fig_step (lap_fig_step (ankle, under, LAP_BALL_UNDER + key->point[side]), out,
                                                (LAP_BALL_ALONG + LAP_LEN_TOES) * key->turn[side]);
}

static void
solve_leg (const LapFigure *figure, LapFigurePose *pose, guint side)
{
  const LapLimb *limb = &pose->key.leg[side];
  LapSolvedLimb *solved = &pose->limb[LAP_PART_LEG_R + side];
  double thigh = LAP_LEN_THIGH * limb->fs[0], shank = LAP_LEN_SHANK * limb->fs[1];
  double first = absolute (figure, side, limb->a), second = absolute (figure, side, limb->b);
  double z = pose->z[LAP_JOINT_HIP + side], foot_z = figure->tq && limb->has_z ? limb->z : z;

  *solved = (LapSolvedLimb) { .fs = { limb->fs[0], limb->fs[1] } };
  if (limb->kind != LAP_LIMB_ANGLES)
    solved->reach_missed = two_bones (pose->p[LAP_JOINT_HIP + side], ankle_target (figure, limb, foot_z),
                                      fabs (thigh),
                                      fabs (shank), leg_sense (figure, side), &first, &second);
  pose->p[LAP_JOINT_KNEE + side] = lap_fig_step (pose->p[LAP_JOINT_HIP + side], first, thigh);
  pose->p[LAP_JOINT_ANKLE + side] = lap_fig_step (pose->p[LAP_JOINT_KNEE + side], second, shank);
  pose->z[LAP_JOINT_KNEE + side] = (z + foot_z) / 2.0;
  pose->z[LAP_JOINT_ANKLE + side] = pose->z[LAP_JOINT_HEEL + side] = pose->z[LAP_JOINT_BALL + side] =
    pose->z[LAP_JOINT_TOE + side] = foot_z;
  solved->a = absolute (figure, side, first);
  solved->b = absolute (figure, side, second);
  solved->end = limb->kind == LAP_LIMB_FLAT ? 90.0 : limb->has_end ? limb->end
                : limb->kind == LAP_LIMB_BALL ? 90.0 : solved->b - 90.0;
  if (is_front (figure))
    solve_foot_front (figure, pose, side, limb);
  else
    solve_foot_side (figure, pose, side, solved->end);
}

/* ---- Arms ---- */

static double
wall_face (const LapFigure *figure)
{
  for (guint i = 0; i < figure->n_gear; i++)
    if (figure->gear[i].kind == LAP_GEAR_WALL)
      return figure->gear[i].x[0] - (figure->gear[i].dir < 0 ? LAP_SKIN_WRIST : -LAP_SKIN_WRIST);
  return 0.0;
}

/* Where the end of the arm goes: the wrist, or for a fist its middle. */
static LapFigPoint
hand_target (const LapFigure *figure, const LapFigurePose *pose, guint side, double z)
{
  const LapLimb *limb = &pose->key.arm[side];
  LapFigPoint at = limb->at;

  if (limb->kind == LAP_LIMB_PALM)
    at.y = lap_surface_of (figure, limb->on) + LAP_SKIN_WRIST;
  else if (limb->kind == LAP_LIMB_WALL)
    at.x = wall_face (figure);
  else if (limb->kind == LAP_LIMB_TO && limb->joint != LAP_FREE_POINT)
    {
      at.x = pose->p[limb->joint].x + (is_front (figure) && side == LAP_SIDE_RIGHT ? -at.x : at.x);
      at.y += pose->p[limb->joint].y;
      return at;
    }
  at.x += figure->depth.x * z;
  at.y += figure->depth.y * z;
  return at;
}

static void
solve_hand (const LapFigure *figure, LapFigurePose *pose, guint side)
{
  LapSolvedLimb *solved = &pose->limb[LAP_PART_ARM_R + side];
  double short_fist = CLAMP (solved->fs[1] / 0.3, -1.0, 1.0);

  pose->p[LAP_JOINT_HAND + side] =
    lap_fig_step (pose->p[LAP_JOINT_WRIST + side], absolute (figure, side, solved->end),
                  solved->flat_hand ? LAP_LEN_HAND - LAP_SKIN_PALM : LAP_LEN_FIST * short_fist);
}

/* The elbow is planted; what the upper arm lacks or has too much is told. */
static void
solve_forearm (const LapFigure *figure, LapFigurePose *pose, guint side, double z)
{
  const LapLimb *limb = &pose->key.arm[side];
  LapSolvedLimb *solved = &pose->limb[LAP_PART_ARM_R + side];
  LapFigPoint shoulder = pose->p[LAP_JOINT_SHOULDER + side];
  LapFigPoint elbow = { limb->at.x + figure->depth.x * z,
                        lap_surface_of (figure, limb->on) + LAP_SKIN_ELBOW + figure->depth.y * z };
  double upper = LAP_LEN_UPPER_ARM * limb->fs[0], distance = lap_fig_distance (shoulder, elbow);
  double first = lap_fig_bearing (shoulder, elbow), second = absolute (figure, side, limb->a);

  solved->reach_missed = fabs (distance - upper);
  if (solved->reach_missed > LAP_FIG_CENTIMETRE)
    elbow = lap_fig_step (shoulder, first, upper);
  pose->p[LAP_JOINT_ELBOW + side] = elbow;
  pose->p[LAP_JOINT_WRIST + side] = lap_fig_step (elbow, second, LAP_LEN_FOREARM * limb->fs[1]);
  solved->a = lap_fig_unwind (absolute (figure, side, first), limb->a + 90.0);
  solved->b = limb->a;
  solved->end = limb->has_end ? limb->end : limb->a;
  solved->flat_hand = TRUE;
}

static void
solve_arm (const LapFigure *figure, LapFigurePose *pose, guint side)
{
  const LapLimb *limb = &pose->key.arm[side];
  LapSolvedLimb *solved = &pose->limb[LAP_PART_ARM_R + side];
  double upper = LAP_LEN_UPPER_ARM * limb->fs[0], fore = LAP_LEN_FOREARM * limb->fs[1];
  double z = pose->z[LAP_JOINT_SHOULDER + side], hand_z = figure->tq && limb->has_z ? limb->z : z;
  double first = absolute (figure, side, limb->a), second = absolute (figure, side, limb->b);
  gboolean fist = limb->kind == LAP_LIMB_GRIP || (limb->kind == LAP_LIMB_TO && !limb->has_end);

  *solved = (LapSolvedLimb) { .fs = { limb->fs[0], limb->fs[1] } };
  pose->z[LAP_JOINT_ELBOW + side] = (z + hand_z) / 2.0;
  pose->z[LAP_JOINT_WRIST + side] = pose->z[LAP_JOINT_HAND + side] = hand_z;
  if (limb->kind == LAP_LIMB_FOREARM)
    {
      pose->z[LAP_JOINT_ELBOW + side] = hand_z;
      solve_forearm (figure, pose, side, hand_z);
      solve_hand (figure, pose, side);
      return;
    }
  if (limb->kind != LAP_LIMB_ANGLES)
    solved->reach_missed = two_bones (pose->p[LAP_JOINT_SHOULDER + side],
                                      hand_target (figure, pose, side, hand_z),
                                      fabs (upper),
                                      fabs (fore) +
                                        (fist ? LAP_LEN_FIST * MIN (fabs (limb->fs[1]) / 0.3, 1.0) : 0.0),
                                      arm_sense (figure, side, limb->bend), &first, &second);
  pose->p[LAP_JOINT_ELBOW + side] = lap_fig_step (pose->p[LAP_JOINT_SHOULDER + side], first, upper);
  pose->p[LAP_JOINT_WRIST + side] = lap_fig_step (pose->p[LAP_JOINT_ELBOW + side], second, fore);
  solved->a = absolute (figure, side, first);
  solved->b = absolute (figure, side, second);
  solved->flat_hand = limb->has_end || limb->kind == LAP_LIMB_PALM || limb->kind == LAP_LIMB_WALL;
  solved->end = limb->has_end ? limb->end : limb->kind == LAP_LIMB_PALM ? 90.0
                : limb->kind == LAP_LIMB_WALL ? 0.0 : solved->b;
  solve_hand (figure, pose, side);
}

/* ---- All of it ---- */

/* One arm may hold the other, which is then solved first. */
static gboolean
holds_other_arm (const LapLimb *limb)
{
  return limb->kind == LAP_LIMB_TO && limb->joint >= LAP_JOINT_ELBOW;
}

static void
solve_from_root (const LapFigure *figure, LapFigurePose *pose)
{
  guint first = holds_other_arm (&pose->key.arm[LAP_SIDE_RIGHT]) ? LAP_SIDE_LEFT : LAP_SIDE_RIGHT;

  solve_trunk (figure, pose);
  solve_leg (figure, pose, LAP_SIDE_RIGHT);
  solve_leg (figure, pose, LAP_SIDE_LEFT);
  solve_arm (figure, pose, first);
  solve_arm (figure, pose, 1 - first);
}

/* Hangs the chain of a pinned key from its planted joint, by solving it once about the origin. */
static LapFigPoint
hang_from_pin (const LapFigure *figure, const LapKey *key)
{
  LapFigurePose trial = { .key = *key };
  LapFigPoint at = { 0 };

  solve_trunk (figure, &trial);
  solve_leg (figure, &trial, LAP_SIDE_RIGHT);
  solve_leg (figure, &trial, LAP_SIDE_LEFT);
  at = lap_grounded (figure, &trial, key->pin);
  return (LapFigPoint) { key->pin_x - at.x,
                         lap_surface_of (figure, key->pin_on) + lap_skin (figure, &trial, key->pin) +
                                              key->pin_rise - at.y };
}

void
lap_solve (const LapFigure *figure, const LapKey *key, LapFigurePose *pose)
{
  memset (pose, 0, sizeof *pose);
  pose->key = *key;
  pose->p[LAP_JOINT_PELVIS] = key->pin >= 0 ? hang_from_pin (figure, key) : key->hip;
  solve_from_root (figure, pose);
}
