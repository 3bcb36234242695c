/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The inks of a body. The look: tapered limbs, and a gap where one part passes over another. A moving limb
 * is cut out all round, so that it reads as a piece of its own; a resting one only from some way down, so
 * that it stays joined.
 *
 * All radii are this project's own drawing, in hundredths of the stature.
 */
#include "figure/ink.h"

#define R_HIP 5.7
#define R_KNEE 4.2
#define R_ANKLE 2.8
#define R_HEEL 2.3
#define R_BALL 2.0
#define R_TOE 1.9
#define R_SHOULDER 3.7
#define R_ELBOW 2.9
#define R_WRIST 2.2
#define R_FIST 2.7
#define R_HAND 1.8
#define R_HEAD 6.7
#define THIGH_JOINED 0.42 /* share of the thigh that stays joined to the trunk */
#define ARM_JOINED 0.45
#define TURNED_AWAY 20.0  /* degrees of twist from which one arm is behind the trunk */
#define SAME_PLACE 0.5

static const double trunk_radii[LAP_N_SPINE] = { 5.8, 5.5, 5.6, 6.1, 6.5, 6.1, 4.9 };

typedef struct {
  LapInks *inks;
  const LapFigure *figure;
  const LapFigurePose *pose;
  int rank;
  double k; /* factor on all radii */
} LapPen;

/* The usual orders: drawn from the first to the last. */
static const int side_ranks[LAP_N_PARTS] = { 60, 20, 70, 22, 40, 48 };
static const int front_ranks[LAP_N_PARTS] = { 30, 31, 70, 71, 40, 48 };

#define RANK_REAR 5
#define RANK_BEHIND 44
#define RANK_FRONT 80
#define RANK_ORDERED 30
#define RANK_STEP 7

static int
away_arm (const LapFigure *figure, const LapFigurePose *pose)
{
  if (figure->view != LAP_FIGURE_FRONT || figure->above || fabs (pose->key.twist) <= TURNED_AWAY)
    return LAP_PART_NONE;
  return pose->key.twist > 0.0 ? LAP_PART_ARM_L : LAP_PART_ARM_R;
}

/* The rank of a part, or G_MAXINT when an order leaves it out. */
static int
rank_of_part (const LapPen *pen, LapPart part)
{
  const LapFigure *figure = pen->figure;
  const LapKeyFlags *flags = &pen->pose->key.flags;
  const LapPartOrder *order = flags->order.n > 0 ? &flags->order : &figure->order;
  guint bit = 1u << part;

  for (guint i = 0; i < order->n; i++)
    if (order->parts[i] == part)
      return pen->rank + RANK_ORDERED + RANK_STEP * (int) i;
  if (order->n > 0)
    return G_MAXINT;
  if ((int) part == away_arm (figure, pen->pose))
    return pen->rank + 35;
  if (((flags->rear | figure->rear) & bit) != 0)
    return pen->rank + RANK_REAR + (int) part;
  if (((flags->behind | figure->behind) & bit) != 0)
    return pen->rank + RANK_BEHIND;
  if (((flags->front | figure->front) & bit) != 0)
    return pen->rank + RANK_FRONT;
  return pen->rank + (figure->view == LAP_FIGURE_FRONT ? front_ranks : side_ranks)[part];
}

int
lap_rank_of_layer (LapLayer layer)
{
  static const int ranks[LAP_N_LAYERS] = { LAP_RANK_BACK - LAP_RANK_BODY, 10, 25, 35, 50, 65, 76, 90 };

  return ranks[layer];
}

static gboolean
is_far (const LapPen *pen, LapPart part)
{
  const LapFigure *figure = pen->figure;
  guint bit = 1u << part;

  if (figure->view == LAP_FIGURE_SIDE)
    return (part == LAP_PART_LEG_L || part == LAP_PART_ARM_L) && (figure->solid & bit) == 0;
  return ((figure->far_parts | figure->rear | pen->pose->key.flags.rear) & bit) != 0 ||
         (int) part == away_arm (figure, pen->pose);
}

static LapFigureRole
role_of (const LapPen *pen, LapPart part, gboolean moving)
{
  if (is_far (pen, part))
    return moving ? LAP_FIGURE_ROLE_FAR_MOVING : LAP_FIGURE_ROLE_FAR;
  return moving ? LAP_FIGURE_ROLE_MOVING : LAP_FIGURE_ROLE_BODY;
}

static gboolean
moves (const LapPen *pen, guint mask)
{
  return (pen->figure->moving & mask) != 0;
}

static LapHull *
pair (const LapPen *pen, LapFigPoint a, double ra, LapFigPoint b, double rb)
{
  return lap_inks_hull (pen->inks, (LapDisc[]) { { a, ra * pen->k }, { b, rb * pen->k } }, 2);
}

/* A tapered limb segment that only knocks a gap out from @joined of its length on. */
static void
joined_pair (const LapPen *pen, LapFigPoint a, double ra, LapFigPoint b, double rb, double joined)
{
  LapHull *hull = pair (pen, a, ra, b, rb);

  if (joined <= 0.0)
    return;
  hull->cuts = FALSE;
  pair (pen, lap_fig_mix (a, b, joined), ra + (rb - ra) * joined, b, rb);
}

static void
ink_foot (const LapPen *pen, guint side)
{
  const LapFigPoint *p = pen->pose->p;
  double k = pen->k;
  LapDisc shoe[] = { { p[LAP_JOINT_HEEL + side], R_HEEL * k }, { p[LAP_JOINT_ANKLE + side], R_ANKLE * k },
                     { p[LAP_JOINT_BALL + side], R_BALL * k } };

  lap_inks_hull (pen->inks, shoe, 3);
  pair (pen, p[LAP_JOINT_BALL + side], R_BALL, p[LAP_JOINT_TOE + side], R_TOE);
}

static void
ink_shank (const LapPen *pen, guint side)
{
  const LapFigPoint *p = pen->pose->p;

  pair (pen, p[LAP_JOINT_KNEE + side], R_KNEE, p[LAP_JOINT_ANKLE + side], R_ANKLE);
  ink_foot (pen, side);
}

static void
ink_leg (const LapPen *pen, guint side, int rank)
{
  const LapFigPoint *p = pen->pose->p;
  LapPart part = LAP_PART_LEG_R + side;
  gboolean all = moves (pen, 1u << part), shank = !all && moves (pen, LAP_MOVES_SHANKS);
  gboolean deep = (pen->pose->key.flags.deep & (1u << part)) != 0;
  gboolean apart = all || moves (pen, 1u << LAP_PART_TRUNK);

  if (deep)
    {
      lap_inks_add (pen->inks, all ? LAP_FIGURE_ROLE_FAR_MOVING : LAP_FIGURE_ROLE_FAR, pen->rank + RANK_REAR);
      ink_shank (pen, side);
    }
  lap_inks_add (pen->inks, role_of (pen, part, all), rank)->is_leg = TRUE;
  joined_pair (pen, p[LAP_JOINT_HIP + side], R_HIP, p[LAP_JOINT_KNEE + side], R_KNEE, apart ? 0.0
               : THIGH_JOINED);
  if (deep)
    return;
  if (shank)
    lap_inks_add (pen->inks, role_of (pen, part, TRUE), rank);
  ink_shank (pen, side);
}

static void
ink_forearm (const LapPen *pen, guint side)
{
  const LapFigPoint *p = pen->pose->p;
  gboolean flat = pen->pose->limb[LAP_PART_ARM_R + side].flat_hand;

  pair (pen, p[LAP_JOINT_ELBOW + side], R_ELBOW, p[LAP_JOINT_WRIST + side], R_WRIST);
  pair (pen, p[LAP_JOINT_WRIST + side], R_WRIST, p[LAP_JOINT_HAND + side], flat ? R_HAND : R_FIST);
}

static void
ink_arm (const LapPen *pen, guint side, int rank)
{
  const LapFigPoint *p = pen->pose->p;
  LapPart part = LAP_PART_ARM_R + side;
  gboolean all = moves (pen, 1u << part), fore = !all && moves (pen, LAP_MOVES_FOREARMS);
  gboolean apart = all || moves (pen, 1u << LAP_PART_TRUNK);

  lap_inks_add (pen->inks, role_of (pen, part, all), rank);
  joined_pair (pen, p[LAP_JOINT_SHOULDER + side], R_SHOULDER, p[LAP_JOINT_ELBOW + side], R_ELBOW,
               apart ? 0.0 : ARM_JOINED);
  if (fore)
    lap_inks_add (pen->inks, role_of (pen, part, TRUE), rank);
  ink_forearm (pen, side);
}

/* From the side: a row of discs along the spine; in three-quarter view a row of pairs that spread towards
 * the shoulders. */
static void
ink_trunk_side (const LapPen *pen)
{
  const LapFigure *figure = pen->figure;
  const LapFigurePose *pose = pen->pose;
  LapDisc row[LAP_N_SPINE][2];

  for (guint i = 0; i < LAP_N_SPINE; i++)
    {
      double u = (double) i / (LAP_N_SPINE - 1), z = figure->tq ? 2.0 + 6.0 * u * u : 0.0;

      for (guint side = 0; side < 2; side++)
        {
          double sign = side == LAP_SIDE_RIGHT ? 1.0 : -1.0;

          row[i][side].c = lap_fig_plus (pose->spine[i], (LapFigPoint) { sign * z * figure->depth.x,
                                                                         sign * z * figure->depth.y });
          row[i][side].r = trunk_radii[i] * pen->k;
        }
    }
  for (guint i = 0; i + 1 < LAP_N_SPINE; i++)
    lap_inks_hull (pen->inks, (LapDisc[]) { row[i][0], row[i][1], row[i + 1][0], row[i + 1][1] }, 4);
  for (guint side = 0; side < 2; side++)
    {
      LapFigPoint shoulder = pose->p[LAP_JOINT_SHOULDER + side], hip = pose->p[LAP_JOINT_HIP + side];

      if (lap_fig_distance (shoulder, pose->spine[LAP_N_SPINE - 1]) > SAME_PLACE)
        lap_inks_hull (pen->inks, (LapDisc[]) { row[4][side], row[6][side], { shoulder, 4.2 * pen->k } }, 3);
      if (lap_fig_distance (hip, pose->spine[0]) > SAME_PLACE)
        lap_inks_hull (pen->inks, (LapDisc[]) { row[0][side], row[1][side], { hip, 5.0 * pen->k } }, 3);
    }
}

static void
ink_trunk_front (const LapPen *pen)
{
  const LapFigurePose *pose = pen->pose;
  double k = pen->k, waist = 3.6, hips = 4.2 * cos (lap_fig_radians (pose->key.roll));
  LapFigPoint middle = lap_fig_mix (pose->spine[2], pose->spine[3], 0.5);
  LapFigPoint low = lap_fig_step (pose->p[LAP_JOINT_PELVIS], pose->pelvis + 180.0, 1.4);
  LapFigPoint left = lap_fig_step (middle, pose->key.trunk + 90.0, waist);
  LapFigPoint right = lap_fig_step (middle, pose->key.trunk - 90.0, waist);
  LapDisc chest[] = { { pose->p[LAP_JOINT_SHOULDER], R_SHOULDER * k },
                      { pose->p[LAP_JOINT_SHOULDER + 1], R_SHOULDER * k },
                      { pose->p[LAP_JOINT_NECK], 4.6 * k }, { left, 4.6 * k }, { right, 4.6 * k } };
  LapDisc belly[] = { { left, 4.6 * k }, { right, 4.6 * k },
                      { lap_fig_step (low, pose->pelvis + 90.0, hips), 4.6 * k },
                      { lap_fig_step (low, pose->pelvis - 90.0, hips), 4.6 * k } };

  lap_inks_hull (pen->inks, chest, G_N_ELEMENTS (chest));
  lap_inks_hull (pen->inks, belly, G_N_ELEMENTS (belly));
}

static void
ink_trunk (const LapPen *pen, int rank)
{
  LapInk *ink = lap_inks_add (pen->inks, role_of (pen, LAP_PART_TRUNK, moves (pen, 1u << LAP_PART_TRUNK)),
                              rank);

  ink->spares_legs = TRUE;
  if (pen->figure->view == LAP_FIGURE_FRONT)
    ink_trunk_front (pen);
  else
    ink_trunk_side (pen);
}

/* A face turned aside shows a nose past the outline of the head. */
static void
ink_head (const LapPen *pen, int rank)
{
  LapFigPoint head = pen->pose->p[LAP_JOINT_HEAD];
  double turn = sin (lap_fig_radians (pen->pose->key.face));

  lap_inks_add (pen->inks, role_of (pen, LAP_PART_HEAD, moves (pen, 1u << LAP_PART_HEAD)), rank);
  lap_inks_disc (pen->inks, head, R_HEAD * pen->k);
  if (fabs (turn) > 0.05)
    pair (pen, (LapFigPoint) { head.x + 4.0 * turn, head.y + 0.4 }, 3.0,
          (LapFigPoint) { head.x + 7.9 * turn, head.y - 0.9 }, 1.2);
}

/* A far limb right behind the near one can't be seen. */
static gboolean
is_hidden (const LapPen *pen, LapPart part)
{
  const LapFigPoint *p = pen->pose->p;
  gboolean leg = part == LAP_PART_LEG_L;
  LapJoint first = leg ? LAP_JOINT_HIP : LAP_JOINT_SHOULDER, last = leg ? LAP_JOINT_TOE : LAP_JOINT_HAND;

  if (pen->figure->view != LAP_FIGURE_SIDE || (part != LAP_PART_LEG_L && part != LAP_PART_ARM_L))
    return FALSE;
  for (guint joint = first; joint <= last; joint += 2)
    if (lap_fig_distance (p[joint], p[joint + 1]) > SAME_PLACE)
      return FALSE;
  return TRUE;
}

void
lap_ink_body (LapInks *inks, const LapFigure *figure, const LapFigurePose *pose, int rank)
{
  LapPen pen = { inks, figure, pose, rank, inks->thick };

  for (guint part = 0; part < LAP_N_PARTS; part++)
    {
      int at = rank_of_part (&pen, part);

      if (at == G_MAXINT || is_hidden (&pen, part))
        continue;
      if (part == LAP_PART_TRUNK)
        ink_trunk (&pen, at);
      else if (part == LAP_PART_HEAD)
        ink_head (&pen, at);
      else if (part <= LAP_PART_LEG_L)
        ink_leg (&pen, part - LAP_PART_LEG_R, at);
      else
        ink_arm (&pen, part - LAP_PART_ARM_R, at);
    }
}

/* Seen from above, parts that are held off the floor throw a shadow on it. */
void
lap_ink_shadow (LapInks *inks, const LapFigure *figure, const LapFigurePose *pose)
{
  LapFigurePose moved = *pose;
  LapPen pen = { inks, figure, &moved, 0, inks->thick };
  double arms = pose->key.high_arms, head = pose->key.high_head;

  for (guint j = LAP_JOINT_SHOULDER; j < LAP_N_JOINTS; j++)
    moved.p[j] = lap_fig_plus (pose->p[j], (LapFigPoint) { 0.35 * arms, -0.75 * arms });
  moved.p[LAP_JOINT_HEAD] = lap_fig_plus (pose->p[LAP_JOINT_HEAD],
                                          (LapFigPoint) { 0.35 * head, -0.75 * head });
  if (arms == 0.0 && head == 0.0)
    return;
  lap_inks_add (inks, LAP_FIGURE_ROLE_SHADOW, LAP_RANK_BACK + 5)->can_be_cut = FALSE;
  for (guint side = 0; side < 2; side++)
    {
      pair (&pen, moved.p[LAP_JOINT_SHOULDER + side], R_SHOULDER, moved.p[LAP_JOINT_ELBOW + side], R_ELBOW);
      ink_forearm (&pen, side);
    }
  lap_inks_disc (inks, moved.p[LAP_JOINT_HEAD], R_HEAD * pen.k);
}
