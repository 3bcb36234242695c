/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The checks of figure-limits.h.
 */
#include "figure/figure-limits.h"

#include "figure/draw.h"

#define TOLERANCE LAP_FIG_CENTIMETRE
#define TOUCHES 1.0       /* within this of a surface a point bears weight */
#define BALANCE_SLACK 0.6
#define BACK_TOUCHES 1.6
#define BACK_HALF 6.2      /* the spine's line to the skin of the back */
#define HALF_SOLE 2.6
#define MOTION_SLACK 3.0  /* degrees a frame between keys may go past */
#define FRAMES 24
#define PLANAR 0.95       /* foreshortened further than this, an angle of the picture isn't the joint's */
#define FACING 20.0       /* degrees of twist from which the arms have left the plane */
#define ARROW_LENGTH 9.0
#define ARROW_AWAY 2.2
#define ARROW_LOW 2.0

typedef struct {
  const LapFigure *figure;
  GPtrArray *problems;
  const char *where;
  double slack;
} LapCheck;

static void problem (const LapCheck *check, const char *format, ...) G_GNUC_PRINTF (2, 3);

static void
problem (const LapCheck *check, const char *format, ...)
{
  va_list args;
  g_autofree char *what = NULL;

  va_start (args, format);
  what = g_strdup_vprintf (format, args);
  va_end (args);
  g_ptr_array_add (check->problems, g_strdup_printf ("%s, %s: %s", check->figure->id, check->where, what));
}

static const char *const limb_names[LAP_N_LIMBS] = { "right leg", "left leg", "right arm", "left arm" };
static const char *const joint_names[] = { "pelvis", "neck", "head", "hip", "knee", "ankle", "heel", "ball",
                                           "toe",
                                           "shoulder", "elbow", "wrist", "hand" };

static const char *
joint_name (guint joint)
{
  return joint < LAP_JOINT_HIP ? joint_names[joint] : joint_names[3 + (joint - LAP_JOINT_HIP) / 2];
}

/* ---- Contacts ---- */

static const LapLimb *
limb_of (const LapFigurePose *pose, guint i)
{
  return i < LAP_PART_ARM_R ? &pose->key.leg[i] : &pose->key.arm[i - LAP_PART_ARM_R];
}

/* How far a planted limb is drawn from where it says it is. */
static double
contact_error (const LapFigure *figure, const LapFigurePose *pose, guint i)
{
  static const LapJoint drawn[] = {
    [LAP_LIMB_FLAT] = LAP_JOINT_ANKLE, [LAP_LIMB_BALL] = LAP_JOINT_BALL,
          [LAP_LIMB_INSTEP] = LAP_JOINT_ANKLE,
    [LAP_LIMB_PALM] = LAP_JOINT_WRIST, [LAP_LIMB_FOREARM] = LAP_JOINT_ELBOW,
      [LAP_LIMB_WALL] = LAP_JOINT_WRIST,
    [LAP_LIMB_GRIP] = LAP_JOINT_HAND,
  };
  static const double over[] = {
    [LAP_LIMB_FLAT] = LAP_ANKLE_HEIGHT, [LAP_LIMB_BALL] = LAP_SKIN_BALL,
          [LAP_LIMB_INSTEP] = LAP_INSTEP_HEIGHT,
    [LAP_LIMB_PALM] = LAP_SKIN_WRIST,   [LAP_LIMB_FOREARM] = LAP_SKIN_ELBOW, [LAP_LIMB_GRIP] = 0.0,
  };
  const LapLimb *limb = limb_of (pose, i);
  LapFigPoint at = lap_grounded (figure, pose, drawn[limb->kind] + (i & 1));

  if (limb->kind == LAP_LIMB_WALL)
    return fabs (at.y - limb->at.y);
  if (limb->kind == LAP_LIMB_GRIP)
    return lap_fig_distance (at, limb->at);
  if (limb->kind == LAP_LIMB_BALL && figure->view == LAP_FIGURE_FRONT)
    return 0.0;
  return hypot (at.x - limb->at.x, at.y - lap_surface_of (figure, limb->on) - over[limb->kind]);
}

static gboolean
grip_holds (const LapFigure *figure, LapFigPoint at)
{
  for (guint i = 0; i < figure->n_gear; i++)
    {
      const LapGear *gear = &figure->gear[i];
      LapFigPoint handle[] = { { gear->x[0], gear->x[1] }, gear->ends[1].at };
      double back = gear->dir > 0 ? gear->x[0] - 1.5 : gear->x[1] + 1.5;

      if (gear->kind == LAP_GEAR_BAR && lap_fig_distance (at, handle[0]) < TOLERANCE)
        return TRUE;
      if (gear->kind == LAP_GEAR_BIKE && lap_fig_distance (at, handle[1]) < 4.0)
        return TRUE;
      if (gear->kind == LAP_GEAR_DUMBBELL && fabs (at.y - 4.3) < TOLERANCE)
        return TRUE;
      /* The back of a chair, its rail seen from the front, and the sides of its seat. */
      if (gear->kind == LAP_GEAR_CHAIR && at.y > gear->h && at.y < gear->h + 28.0 &&
          (figure->view == LAP_FIGURE_FRONT || fabs (at.x - back) < 4.0))
        return TRUE;
      if (gear->kind == LAP_GEAR_CHAIR && fabs (at.y - gear->h) < 3.0 && at.x > gear->x[0] - 3.0 &&
          at.x < gear->x[1] + 3.0)
        return TRUE;
    }
  return FALSE;
}

static void
check_contacts (const LapCheck *check, const LapFigurePose *pose)
{
  for (guint i = 0; i < LAP_N_LIMBS; i++)
    {
      const LapLimb *limb = limb_of (pose, i);
      gboolean planted = lap_limb_is_planted (limb);

      if ((planted || limb->kind == LAP_LIMB_TO) && pose->limb[i].reach_missed > TOLERANCE &&
          check->slack == 0.0)
        problem (check, "%s misses its point by %.2f", limb_names[i], pose->limb[i].reach_missed);
      if (planted && contact_error (check->figure, pose, i) > TOLERANCE)
        problem (check, "%s is %.2f off its contact", limb_names[i], contact_error (check->figure, pose, i));
      if (limb->kind == LAP_LIMB_GRIP && !grip_holds (check->figure, limb->at))
        problem (check, "%s grips nothing", limb_names[i]);
    }
}

/* ---- Floor and balance ---- */

static gboolean
counts_for_floor (const LapFigure *figure, guint joint)
{
  return figure->view != LAP_FIGURE_FRONT || (joint != LAP_JOINT_PELVIS && joint != LAP_JOINT_NECK);
}

static void
check_floor (const LapCheck *check, const LapFigurePose *pose)
{
  if (check->figure->above)
    return;
  for (guint j = 0; j < LAP_N_JOINTS; j++)
    {
      double low = lap_grounded (check->figure, pose, j).y - lap_skin (check->figure, pose, j);

      if (counts_for_floor (check->figure, j) && low < -TOLERANCE)
        problem (check, "%s is %.2f under the floor", joint_name (j), -low);
    }
  if (check->figure->view == LAP_FIGURE_SIDE && pose->spine[4].y < LAP_SKIN_CHEST - TOLERANCE)
    problem (check, "chest is %.2f under the floor", LAP_SKIN_CHEST - pose->spine[4].y);
}

/* Soft flesh gives: the seat and the shoulder of a front view are drawn thinner than they are, backs are
 * not straight. */
static double
touches_within (const LapFigure *figure, guint joint)
{
  if (figure->view == LAP_FIGURE_FRONT && (joint == LAP_JOINT_HIP || joint == LAP_JOINT_HIP + 1))
    return LAP_SKIN_HIP + 0.7 - LAP_SKIN_HIP_FRONT;
  if (figure->view == LAP_FIGURE_FRONT && (joint == LAP_JOINT_SHOULDER || joint == LAP_JOINT_SHOULDER + 1))
    return LAP_SKIN_SHOULDER + 0.9 - LAP_SKIN_SHOULDER_FRONT;
  return TOUCHES;
}

static void
widen (double *from, double *to, double left, double right)
{
  *from = MIN (*from, left);
  *to = MAX (*to, right);
}

/* A back or a chest that lies, and feet that lie on their backs. */
static gboolean
find_lying_support (const LapFigure *figure, const LapFigurePose *pose, double *from, double *to)
{
  gboolean found = FALSE;

  if (figure->view != LAP_FIGURE_SIDE)
    return FALSE;
  for (guint i = 0; i < LAP_N_SPINE; i++)
    if (fabs (pose->spine[i].y - BACK_HALF - lap_surface_under (figure, pose->spine[i])) <= BACK_TOUCHES)
      {
        widen (from, to, pose->spine[i].x, pose->spine[i].x);
        found = TRUE;
      }
  for (guint i = 0; i < 2; i++)
    {
      double foot = lap_fig_unwind (pose->limb[i].end, 270.0);
      LapFigPoint ankle = lap_grounded (figure, pose, LAP_JOINT_ANKLE + i);

      if (foot < 240.0 || foot > 300.0 ||
          ankle.y > LAP_INSTEP_HEIGHT + TOUCHES + lap_surface_under (figure, ankle))
        continue;
      widen (from, to, lap_grounded (figure, pose, LAP_JOINT_TOE + i).x, ankle.x);
      found = TRUE;
    }
  return found;
}

/* Sets @from … @to to what bears weight. */
static gboolean
find_support (const LapFigure *figure, const LapFigurePose *pose, double *from, double *to)
{
  gboolean found = FALSE;

  *from = G_MAXDOUBLE;
  *to = -G_MAXDOUBLE;
  found = find_lying_support (figure, pose, from, to);
  for (guint j = 0; j < LAP_N_JOINTS; j++)
    {
      LapFigPoint at = lap_grounded (figure, pose, j);
      double skin = lap_skin (figure, pose, j), left = 0.0, right = 0.0;
      double surface = lap_surface_under (figure, (LapFigPoint) { at.x, at.y - skin });

      if (!counts_for_floor (figure, j) || fabs (at.y - skin - surface) > touches_within (figure, j))
        continue;
      /* A heel bears up to its back edge, the toes up to their tip. */
      if (j == LAP_JOINT_HEEL || j == LAP_JOINT_HEEL + 1)
        left = LAP_HEEL_BACK - LAP_HEEL_ALONG;
      if (j == LAP_JOINT_TOE || j == LAP_JOINT_TOE + 1)
        right = LAP_TOE_TIP - LAP_BALL_ALONG - LAP_LEN_TOES;
      if (j == LAP_JOINT_PELVIS)
        left = right = 6.0;
      /* From the front a sole is as wide as a foot. */
      if (figure->view == LAP_FIGURE_FRONT && j >= LAP_JOINT_HEEL && j <= LAP_JOINT_TOE + 1)
        left = right = HALF_SOLE;
      widen (from, to, at.x - left, at.x + right);
      found = TRUE;
    }
  for (guint i = 0; i < LAP_N_LIMBS; i++)
    {
      const LapLimb *limb = limb_of (pose, i);

      if (limb->kind != LAP_LIMB_GRIP && limb->kind != LAP_LIMB_INSTEP && limb->kind != LAP_LIMB_PALM)
        continue;
      widen (from, to, limb->at.x, limb->at.x);
      found = TRUE;
    }
  return found;
}

LapFigPoint
lap_pose_mass_middle (const LapFigure *figure, const LapFigurePose *pose)
{
  /* Share of the body's mass, and where its middle is from the first joint to the second. */
  static const struct {
    LapJoint from, to;
    gboolean paired;
    double mass, along;
  } segments[] = {
    { LAP_JOINT_PELVIS, LAP_JOINT_NECK, FALSE, 0.497, 0.50 },
    { LAP_JOINT_HEAD, LAP_JOINT_HEAD, FALSE, 0.081, 0.0 },
    { LAP_JOINT_SHOULDER, LAP_JOINT_ELBOW, TRUE, 0.028, 0.436 },
    { LAP_JOINT_ELBOW, LAP_JOINT_WRIST, TRUE, 0.016, 0.430 },
    { LAP_JOINT_HAND, LAP_JOINT_HAND, TRUE, 0.006, 0.0 },
    { LAP_JOINT_HIP, LAP_JOINT_KNEE, TRUE, 0.100, 0.433 },
    { LAP_JOINT_KNEE, LAP_JOINT_ANKLE, TRUE, 0.0465, 0.433 },
    { LAP_JOINT_HEEL, LAP_JOINT_TOE, TRUE, 0.0145, 0.50 },
  };
  LapFigPoint sum = { 0 };
  double mass = 0.0;

  for (guint i = 0; i < G_N_ELEMENTS (segments); i++)
    for (guint side = 0; side < (segments[i].paired ? 2u : 1u); side++)
      {
        LapFigPoint at = lap_fig_mix (lap_grounded (figure, pose, segments[i].from + side),
                                      lap_grounded (figure, pose, segments[i].to + side), segments[i].along);

        sum.x += at.x * segments[i].mass;
        sum.y += at.y * segments[i].mass;
        mass += segments[i].mass;
      }
  return (LapFigPoint) { sum.x / mass, sum.y / mass };
}

static void
check_balance (const LapCheck *check, const LapFigurePose *pose)
{
  double from = 0.0, to = 0.0, x = lap_pose_mass_middle (check->figure, pose).x;

  if (check->figure->above || pose->key.flags.air)
    return;
  if (!find_support (check->figure, pose, &from, &to))
    problem (check, "nothing touches a surface");
  else if (!pose->key.flags.moving && (x < from - BALANCE_SLACK || x > to + BALANCE_SLACK))
    problem (check, "out of balance: the mass is at %.1f, the support from %.1f to %.1f", x, from, to);
}

/* ---- Joints ---- */

typedef struct {
  const char *name;
  double least, most;
} LapRange;

/* In brackets the norms of the AAOS. */
static const LapRange leg_ranges[] = {
  { "hip", -30.0, 140.0 },   /* (-30 … 120) and the tilt of the pelvis */
  { "knee", -5.0, 155.0 },   /* (0 … 135); kneeling passes it passively */
  { "ankle", -85.0, 38.0 },  /* (-50 … 20) and the toes; weight bends it further */
};
static const LapRange arm_ranges[] = {
  { "shoulder", -65.0, 185.0 }, /* (-60 … 180) */
  { "elbow", -5.0, 150.0 },     /* (0 … 150) */
};
static const LapRange neck_range = { "neck", -50.0, 50.0 };  /* (-45 … 45) */
static const LapRange spine_range = { "spine", -45.0, 80.0 }; /* (-25 … 80); hip and chest are one arc here */

void
lap_pose_joint_angles (const LapFigurePose *pose, guint limb, double angles[3])
{
  const LapSolvedLimb *solved = &pose->limb[limb];

  if (limb < LAP_PART_ARM_R)
    {
      angles[0] = lap_fig_unwind (pose->pelvis + 180.0 - solved->a, 55.0);
      angles[1] = lap_fig_unwind (solved->b - solved->a, 75.0);
      angles[2] = lap_fig_unwind (solved->b - 90.0 - solved->end, -20.0);
      return;
    }
  angles[0] = lap_fig_unwind (pose->thorax + 180.0 - solved->a, 60.0);
  angles[1] = lap_fig_unwind (solved->a - solved->b, 70.0);
  angles[2] = 0.0;
}

static void
check_range (const LapCheck *check, const LapRange *range, const char *whose, double angle)
{
  if (angle < range->least - check->slack - 1e-6 || angle > range->most + check->slack + 1e-6)
    problem (check, "%s %s at %.0f°, outside %.0f … %.0f", whose, range->name, angle, range->least,
             range->most);
}

static void
check_joints (const LapCheck *check, const LapFigurePose *pose)
{
  if (check->figure->view != LAP_FIGURE_SIDE)
    return;
  check_range (check, &neck_range, "the", lap_fig_unwind (pose->head - pose->thorax, 0.0));
  check_range (check, &spine_range, "the", pose->key.bend);
  for (guint i = 0; i < LAP_N_LIMBS; i++)
    {
      const LapSolvedLimb *solved = &pose->limb[i];
      gboolean leg = i < LAP_PART_ARM_R;
      double angles[3];

      if (solved->fs[0] < PLANAR || (!leg && fabs (pose->key.twist) > FACING))
        continue;
      lap_pose_joint_angles (pose, i, angles);
      check_range (check, leg ? &leg_ranges[0] : &arm_ranges[0], limb_names[i], angles[0]);
      if (solved->fs[1] < PLANAR)
        continue;
      check_range (check, leg ? &leg_ranges[1] : &arm_ranges[1], limb_names[i], angles[1]);
      if (leg)
        check_range (check, &leg_ranges[2], limb_names[i], angles[2]);
    }
}

/* From the side the legs are as wide apart as the trunk is, so neither a knee nor a foot may stand in it. */
static void
check_trunk (const LapCheck *check, const LapFigurePose *pose)
{
  static const double depth[LAP_N_SPINE] = { 0.0, 0.0, 4.0, 4.4, 4.8, 4.4, 3.6 };
  static const LapJoint joints[] = { LAP_JOINT_KNEE, LAP_JOINT_ANKLE, LAP_JOINT_TOE };

  if (check->figure->view != LAP_FIGURE_SIDE || check->figure->tq || check->figure->above)
    return;
  for (guint side = 0; side < 2; side++)
    for (guint i = 0; i < G_N_ELEMENTS (joints); i++)
      for (guint j = 2; j < LAP_N_SPINE; j++)
        if (lap_fig_distance (pose->p[joints[i] + side], pose->spine[j]) < depth[j])
          {
            problem (check, "%s %s is in the trunk", side == LAP_SIDE_RIGHT ? "right" : "left",
                     joint_name (joints[i]));
            break;
          }
}

static void
check_pose (const LapCheck *check, const LapFigurePose *pose)
{
  check_contacts (check, pose);
  check_floor (check, pose);
  check_joints (check, pose);
  check_trunk (check, pose);
}

/* ---- Movement ---- */

/* What two keys both plant on one spot stays there in between. */
static void
check_slips (const LapCheck *check, const LapFigurePose *pose, guint a, guint b)
{
  static const LapJoint ends[] = { LAP_JOINT_ANKLE, LAP_JOINT_WRIST };
  const LapFigure *figure = check->figure;

  for (guint i = 0; i < LAP_N_LIMBS; i++)
    {
      const LapLimb *from = limb_of (&figure->poses[a], i), *to = limb_of (&figure->poses[b], i);
      LapJoint end = ends[i >= LAP_PART_ARM_R] + (i & 1);
      LapFigPoint was = figure->poses[a].p[end], is = pose->p[end], will = figure->poses[b].p[end];

      if (from->kind != to->kind || !lap_limb_is_planted (from) || from->kind == LAP_LIMB_BALL ||
          from->kind == LAP_LIMB_FOREARM || lap_fig_distance (was, will) > TOLERANCE)
        continue;
      if (lap_fig_distance (was, is) > TOLERANCE)
        problem (check, "%s slips by %.2f", limb_names[i], lap_fig_distance (was, is));
    }
}

static void
check_ball_slips (const LapCheck *check, const LapFigurePose *pose, guint a, guint b)
{
  const LapFigure *figure = check->figure;

  for (guint side = 0; side < 2 && figure->view == LAP_FIGURE_SIDE; side++)
    {
      LapFigPoint was = figure->poses[a].p[LAP_JOINT_BALL + side], is = pose->p[LAP_JOINT_BALL + side];
      gboolean low = was.y < LAP_SKIN_BALL + TOLERANCE && !figure->tq && !figure->above;

      if (low && lap_fig_distance (was, figure->poses[b].p[LAP_JOINT_BALL + side]) <= TOLERANCE / 2.0 &&
          lap_fig_distance (was, is) > TOLERANCE + 0.1)
        problem (check, "the %s ball of the foot slips by %.2f", side == LAP_SIDE_RIGHT ? "right" : "left",
                 lap_fig_distance (was, is));
    }
}

static void
check_movement (LapCheck *check)
{
  for (guint a = 0; a + 1 < check->figure->n_keys; a++)
    for (guint i = 1; i < FRAMES; i++)
      {
        g_autofree char *where = g_strdup_printf ("between keys %u and %u at %u/%u", a, a + 1, i, FRAMES);
        LapFigurePose pose;

        lap_blend (check->figure, a, a + 1, (double) i / FRAMES, FALSE, &pose);
        check->where = where;
        check->slack = MOTION_SLACK;
        check_pose (check, &pose);
        check_slips (check, &pose, a, a + 1);
        check_ball_slips (check, &pose, a, a + 1);
        if (check->problems->len > 40)
          return;
      }
}

/* ---- Kit and arrows ---- */

static void
check_kit (LapCheck *check)
{
  guint steps = 16;

  for (guint i = 0; i <= steps && !check->figure->above && !check->figure->tq; i++)
    {
      g_autoptr (LapInks) inks = lap_inks_new (2.0);
      LapFigurePose pose;
      guint n = check->figure->n_keys, a = n > 1 ? MIN (i * (n - 1) / steps, n - 2) : 0;

      lap_blend (check->figure, a, MIN (a + 1, n - 1), n > 1 ? (double) i * (n - 1) / steps - a : 0.0, FALSE,
                 &pose);
      lap_ink_kit (inks, check->figure, &pose, TRUE, 0);
      check->where = "kit";
      if (inks->inks->len > 0 && lap_inks_bounds (inks, 0).y0 < -0.6)
        {
          problem (check, "%.2f under the floor", -lap_inks_bounds (inks, 0).y0);
          return;
        }
    }
}

static void
check_arrows (LapCheck *check)
{
  g_autoptr (LapInks) inks = lap_inks_new (2.0);
  const LapFigure *figure = check->figure;

  lap_ink_body (inks, figure, &figure->poses[figure->poster], LAP_RANK_BODY);
  lap_ink_kit (inks, figure, &figure->poses[figure->poster], TRUE, LAP_RANK_BODY);
  check->where = "arrow";
  for (guint i = 0; i < figure->n_arrows; i++)
    {
      LapFigPoint path[32];
      guint n = lap_arrow_path (figure, &figure->arrows[i], path, G_N_ELEMENTS (path));
      double length = 0.0, away = G_MAXDOUBLE, low = G_MAXDOUBLE;

      for (guint j = 0; j < n; j++)
        {
          length += j > 0 ? lap_fig_distance (path[j - 1], path[j]) : 0.0;
          away = MIN (away, lap_inks_clearance (inks, 0, path[j]));
          low = MIN (low, path[j].y);
        }
      if (length < ARROW_LENGTH)
        problem (check, "only %.1f long", length);
      if (away < ARROW_AWAY)
        problem (check, "only %.1f from the figure", away);
      if (low < ARROW_LOW && !figure->above && !figure->tq)
        problem (check, "down at %.1f", low);
    }
}

static void
check_side (const LapFigure *figure, GPtrArray *problems, const char *side)
{
  LapCheck check = { figure, problems, side, 0.0 };

  for (guint i = 0; i < figure->n_keys; i++)
    {
      g_autofree char *where = g_strdup_printf ("key %u%s", i, side);

      check.where = where;
      check_pose (&check, &figure->poses[i]);
      check_balance (&check, &figure->poses[i]);
    }
  check_movement (&check);
}

GPtrArray *
lap_figure_problems (const LapFigure *figure)
{
  GPtrArray *problems = g_ptr_array_new_with_free_func (g_free);
  LapCheck check = { figure, problems, "", 0.0 };

  check_side (figure, problems, "");
  check_kit (&check);
  check_arrows (&check);
  if (figure->swapped != NULL)
    check_side (figure->swapped, problems, " of the other side");
  return problems;
}
