/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Frames between two key poses. Wishes are blended, never joints: the blend is solved like a key, so a
 * foot or a hand that both keys plant on one spot stays on it, and limbs keep their length.
 */
#include "figure/solve.h"

#define TRAVELS 2.0    /* a contact that moves further than this is lifted and set down, not slid */
#define LET_SINK 0.3   /* what may pass the floor before the body is lifted */
#define SWING_FLEX 30.0 /* dorsiflexion of a foot in the air, degrees */

typedef struct {
  const LapFigure *figure;
  const LapKey *a, *b;
  const LapFigurePose *from, *to;
  double e, bump; /* eased share of the way, and 4e(1 - e) */
} LapBlend;

static double
blend_nan (double a, double b, double e)
{
  if (isnan (a) || isnan (b))
    return e < 0.5 ? a : b;
  return lap_fig_blend (a, b, e);
}

static gboolean
is_contact (LapLimbKind kind)
{
  return kind == LAP_LIMB_FLAT || kind == LAP_LIMB_BALL;
}

/* Both legs of a blend as contacts of the ball, so that a heel can rise from a planted foot. */
static LapLimb
as_ball (const LapLimb *limb)
{
  LapLimb ball = *limb;

  if (limb->kind != LAP_LIMB_FLAT)
    return ball;
  ball.kind = LAP_LIMB_BALL;
  ball.at.x += LAP_BALL_ALONG;
  ball.end = 90.0;
  ball.has_end = TRUE;
  return ball;
}

static void
blend_shared (const LapBlend *blend, const LapLimb *a, const LapLimb *b, LapLimb *out)
{
  for (guint i = 0; i < 2; i++)
    out->fs[i] = lap_fig_blend (a->fs[i], b->fs[i], blend->e);
  out->at = lap_fig_mix (a->at, b->at, blend->e);
  out->z = lap_fig_blend (a->z, b->z, blend->e);
  out->end = lap_fig_blend (a->end, b->end, blend->e);
}

/* A foot that leaves the floor: its ankle goes from place to place, lifted on the way. */
static void
swing_leg (const LapBlend *blend, guint side, LapLimb *out)
{
  const LapFigure *figure = blend->figure;
  const LapSolvedLimb *from = &blend->from->limb[side], *to = &blend->to->limb[side];
  LapFigPoint start = lap_grounded (figure, blend->from, LAP_JOINT_ANKLE + side);
  LapFigPoint end = lap_grounded (figure, blend->to, LAP_JOINT_ANKLE + side);

  *out = (LapLimb) { .kind = LAP_LIMB_ANKLE, .on = LAP_ON_FLOOR, .joint = LAP_FREE_POINT, .bend = 1,
                     .has_end = TRUE,
                     .has_z = figure->tq };
  out->at = lap_fig_mix (start, end, blend->e);
  if (lap_fig_distance (start, end) > TRAVELS)
    out->at.y += figure->step * blend->bump;
  out->z = lap_fig_blend (blend->from->z[LAP_JOINT_ANKLE + side], blend->to->z[LAP_JOINT_ANKLE + side],
                          blend->e);
  out->end = lap_fig_blend (from->end, lap_fig_unwind (to->end, from->end), blend->e);
  for (guint i = 0; i < 2; i++)
    out->fs[i] = lap_fig_blend (from->fs[i], to->fs[i], blend->e);
}

static void
blend_leg (const LapBlend *blend, guint side, LapLimb *out)
{
  LapLimb a = blend->a->leg[side], b = blend->b->leg[side];

  if (a.kind == LAP_LIMB_ANGLES && b.kind == LAP_LIMB_ANGLES)
    {
      double foot_a = blend->from->limb[side].end, foot_b = blend->to->limb[side].end;

      *out = a;
      blend_shared (blend, &a, &b, out);
      out->a = lap_fig_blend (a.a, b.a, blend->e);
      out->b = lap_fig_blend (a.b, b.b, blend->e);
      out->has_end = a.has_end || b.has_end;
      out->end = lap_fig_blend (foot_a, lap_fig_unwind (foot_b, foot_a), blend->e);
      return;
    }
  if (a.kind != b.kind && is_contact (a.kind) && is_contact (b.kind))
    {
      a = as_ball (&a);
      b = as_ball (&b);
    }
  if (a.kind == b.kind && a.kind != LAP_LIMB_ANGLES && a.on == b.on &&
      (a.kind == LAP_LIMB_ANKLE || hypot (a.at.x - b.at.x, a.z - b.z) <= TRAVELS))
    {
      *out = a;
      blend_shared (blend, &a, &b, out);
      if (!a.has_end || !b.has_end)
        out->end = lap_fig_blend (blend->from->limb[side].end, blend->to->limb[side].end, blend->e);
      out->has_end = TRUE;
      return;
    }
  swing_leg (blend, side, out);
}

static double
flex_of (const LapFigurePose *pose, guint side)
{
  return lap_fig_unwind (pose->limb[side].b - 90.0 - pose->limb[side].end, 0.0);
}

/* A foot in the air doesn't bend up further than a foot can, or than the keys have it: the blended
 * direction gives way. */
static gboolean
limit_swing (const LapBlend *blend, LapFigurePose *pose)
{
  gboolean limited = FALSE;

  for (guint side = 0; side < 2 && blend->figure->view == LAP_FIGURE_SIDE; side++)
    {
      LapLimb *limb = &pose->key.leg[side];
      double most = MAX (SWING_FLEX, MAX (flex_of (blend->from, side), flex_of (blend->to, side)));
      double excess = flex_of (pose, side) - most;

      if (limb->kind != LAP_LIMB_ANKLE || !limb->has_end || excess <= 0.0)
        continue;
      limb->end += excess;
      limited = TRUE;
    }
  return limited;
}

/* Directions of two solved arms, the short way; from the side the elbow's own angle is what turns, so that
 * it can't pass through the wrong side. */
static void
turn_arm (const LapBlend *blend, guint side, LapLimb *out)
{
  const LapSolvedLimb *from = &blend->from->limb[LAP_PART_ARM_R + side],
    *to = &blend->to->limb[LAP_PART_ARM_R + side];
  double e = blend->e, a = lap_fig_unwind (to->a, from->a);

  *out = (LapLimb) { .kind = LAP_LIMB_ANGLES, .on = LAP_ON_FLOOR, .joint = LAP_FREE_POINT, .bend = 1 };
  out->a = lap_fig_blend (from->a, a, e);
  if (blend->figure->view == LAP_FIGURE_SIDE)
    out->b = out->a - lap_fig_blend (lap_fig_unwind (from->a - from->b, 70.0),
                                     lap_fig_unwind (to->a - to->b, 70.0), e);
  else
    out->b = lap_fig_blend (from->b, lap_fig_unwind (to->b, from->b), e);
  out->has_end = e < 0.5 ? from->flat_hand : to->flat_hand;
  out->end = out->b +
    lap_fig_blend (lap_fig_unwind (from->end - from->b, 0.0), lap_fig_unwind (to->end - to->b, 0.0), e);
  for (guint i = 0; i < 2; i++)
    out->fs[i] = lap_fig_blend (from->fs[i], to->fs[i], e);
}

static gboolean
same_hold (const LapLimb *a, const LapLimb *b)
{
  return a->kind == b->kind && a->on == b->on && a->joint == b->joint && a->bend == b->bend;
}

static void
blend_arm (const LapBlend *blend, guint side, LapLimb *out)
{
  const LapLimb *a = &blend->a->arm[side], *b = &blend->b->arm[side];

  if (!same_hold (a, b))
    {
      turn_arm (blend, side, out);
      return;
    }
  *out = *a;
  blend_shared (blend, a, b, out);
  out->a = lap_fig_blend (a->a, b->a, blend->e);
  out->b = lap_fig_blend (a->b, b->b, blend->e);
  if (a->has_end != b->has_end)
    {
      const LapSolvedLimb *from = &blend->from->limb[LAP_PART_ARM_R + side],
        *to = &blend->to->limb[LAP_PART_ARM_R + side];

      out->has_end = blend->e < 0.5 ? from->flat_hand : to->flat_hand;
      out->end = lap_fig_blend (from->end, lap_fig_unwind (to->end, from->end), blend->e);
    }
  if (a->kind == LAP_LIMB_PALM && fabs (a->at.x - b->at.x) > TRAVELS && blend->figure->handstep > 0.0)
    {
      /* A hand that walks is lifted: the palm's contact becomes a free wrist. */
      out->kind = LAP_LIMB_TO;
      out->joint = LAP_FREE_POINT;
      out->has_end = TRUE;
      out->end = a->has_end ? out->end : 90.0;
      out->at.y = lap_surface_of (blend->figure, a->on) + LAP_SKIN_WRIST +
        blend->figure->handstep * blend->bump;
    }
}

static void
blend_numbers (const LapBlend *blend, LapKey *out)
{
  const LapKey *a = blend->a, *b = blend->b;
  double e = blend->e;
  struct {
    double from, to, *value;
  } all[] = {
    { a->trunk, b->trunk, &out->trunk },          { a->bend, b->bend, &out->bend },
    { a->head, b->head, &out->head },             { a->twist, b->twist, &out->twist },
    { a->roll, b->roll, &out->roll },             { a->face, b->face, &out->face },
    { a->shrug, b->shrug, &out->shrug },          { a->slide, b->slide, &out->slide },
    { a->fst[0], b->fst[0], &out->fst[0] },       { a->fst[1], b->fst[1], &out->fst[1] },
    { a->turn[0], b->turn[0], &out->turn[0] },    { a->turn[1], b->turn[1], &out->turn[1] },
    { a->point[0], b->point[0], &out->point[0] }, { a->point[1], b->point[1], &out->point[1] },
    { a->bell, b->bell, &out->bell },             { a->rope, b->rope, &out->rope },
    { a->ball.x, b->ball.x, &out->ball.x },       { a->ball.y, b->ball.y, &out->ball.y },
    { a->high_arms, b->high_arms, &out->high_arms }, { a->high_head, b->high_head, &out->high_head },
  };

  for (guint i = 0; i < G_N_ELEMENTS (all); i++)
    *all[i].value = blend_nan (all[i].from, all[i].to, e);
  for (guint i = 0; i < 2; i++)
    {
      double from = blend->from->key.footdir[i], to = blend->to->key.footdir[i];

      out->footdir[i] = isnan (from) ? NAN : lap_fig_blend (from, lap_fig_unwind (to, from), e);
    }
  out->trunk += blend->figure->pike * blend->bump;
}

static gboolean
hands_stay (const LapBlend *blend)
{
  for (guint side = 0; side < 2; side++)
    if (same_hold (&blend->a->arm[side], &blend->b->arm[side]) && lap_limb_is_planted (&blend->a->arm[side]))
      return TRUE;
  return FALSE;
}

/* Where the pelvis is: hung from a shared pin, under shoulders that stay over planted hands, on the path
 * of a jump, or half-way along. */
static void
blend_root (const LapBlend *blend, double t, LapKey *out)
{
  const LapFigure *figure = blend->figure;
  LapFigPoint from = blend->from->p[LAP_JOINT_PELVIS], to = blend->to->p[LAP_JOINT_PELVIS];
  gboolean jump = blend->a->flags.air || blend->b->flags.air;

  out->pin = -1;
  if (blend->a->pin >= 0 && blend->a->pin == blend->b->pin && blend->a->pin_on == blend->b->pin_on)
    {
      out->pin = blend->a->pin;
      out->pin_on = blend->a->pin_on;
      out->pin_x = lap_fig_blend (blend->a->pin_x, blend->b->pin_x, blend->e);
    }
  else if (figure->anchor_neck && hands_stay (blend))
    {
      LapFigurePose trial = { 0 };

      out->hip = (LapFigPoint) { 0.0, 0.0 };
      lap_solve (figure, out, &trial);
      out->hip =
        lap_fig_minus (lap_fig_mix (blend->from->p[LAP_JOINT_NECK], blend->to->p[LAP_JOINT_NECK], blend->e),
                                trial.p[LAP_JOINT_NECK]);
    }
  else if (jump)
    {
      double rise = blend->b->flags.air ? 1.0 - (1.0 - t) * (1.0 - t) : t * t;

      out->hip = (LapFigPoint) { lap_fig_blend (from.x, to.x, t), lap_fig_blend (from.y, to.y, rise) };
    }
  else
    out->hip = lap_fig_mix (from, to, blend->e);
  if (out->pin < 0)
    out->hip = lap_fig_plus (out->hip,
                             (LapFigPoint) { figure->arc.x * blend->bump, figure->arc.y * blend->bump });
}

void
lap_blend (const LapFigure *figure, guint a, guint b, double t, gboolean even, LapFigurePose *pose)
{
  double e = even ? t : t * t * (3.0 - 2.0 * t), sunk = 0.0;
  LapBlend blend = { figure, &figure->keys[a], &figure->keys[b], &figure->poses[a], &figure->poses[b], e,
                     4.0 * e * (1.0 - e) };
  LapKey key = { 0 };
  gboolean again = FALSE;

  if (t <= 0.0 || t >= 1.0)
    {
      *pose = t <= 0.0 ? figure->poses[a] : figure->poses[b];
      return;
    }
  for (guint side = 0; side < 2; side++)
    {
      blend_leg (&blend, side, &key.leg[side]);
      blend_arm (&blend, side, &key.arm[side]);
    }
  blend_numbers (&blend, &key);
  blend_root (&blend, t, &key);
  key.flags = t < 0.5 ? blend.a->flags : blend.b->flags;
  key.flags.air = blend.a->flags.air || blend.b->flags.air;
  key.flags.moving = blend.a->flags.moving || blend.b->flags.moving;
  lap_solve (figure, &key, pose);
  again = limit_swing (&blend, pose);
  sunk = lap_sunk (figure, pose) - LET_SINK;
  if (sunk <= 0.0 && !again)
    return;
  key = pose->key;
  key.hip.y += MAX (sunk, 0.0);
  key.pin_rise += MAX (sunk, 0.0);
  lap_solve (figure, &key, pose);
}
