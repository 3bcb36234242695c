/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A key pose as it is wished for (LapKey) and a pose as it is solved (LapFigurePose): plain structs that
 * live on the stack, so that a player can solve one for every frame without an allocation.
 *
 * A LapKey holds wishes (where the foot is, how the trunk leans); solve.h turns it into joints. A blend of
 * two keys is a key again, so that a frame between them is solved like any other and its contacts hold
 * exactly.
 */
#pragma once

#include "figure/skeleton.h"

G_BEGIN_DECLS

typedef enum {
  LAP_LIMB_ANGLES,  /* two directions, and that of the foot or hand */
  LAP_LIMB_FLAT,    /* sole on a surface, ankle above at.x */
  LAP_LIMB_BALL,    /* ball of the foot on a surface at at.x */
  LAP_LIMB_INSTEP,  /* back of the foot on a surface, ankle above at.x */
  LAP_LIMB_ANKLE,   /* ankle at a free point */
  LAP_LIMB_PALM,    /* palm on a surface, wrist above at.x */
  LAP_LIMB_FOREARM, /* elbow on a surface at at.x, forearm along a */
  LAP_LIMB_WALL,    /* palm on the wall at height at.y */
  LAP_LIMB_GRIP,    /* fist round a fixed point */
  LAP_LIMB_TO,      /* hand at a joint (offset at) or at a free point */
} LapLimbKind;

#define LAP_ON_FLOOR (-1)
#define LAP_FREE_POINT (-1)

typedef struct {
  LapLimbKind kind;
  gint8 on;           /* gear that is the surface, or LAP_ON_FLOOR */
  gint8 joint;        /* for LAP_LIMB_TO, or LAP_FREE_POINT */
  gint8 bend;         /* +1 or -1: the side of the elbow */
  gboolean has_end, has_z;
  double a, b, end;   /* upper, lower, foot or hand */
  double fs[2];       /* foreshortening of the two segments, -1 .. 1.2 */
  LapFigPoint at;
  double z;           /* three-quarter view: towards the viewer */
} LapLimb;

/* Parts in the order that masks and drawing orders name them. */
typedef enum {
  LAP_PART_LEG_R,
  LAP_PART_LEG_L,
  LAP_PART_ARM_R,
  LAP_PART_ARM_L,
  LAP_PART_TRUNK,
  LAP_PART_HEAD,
  LAP_N_PARTS,
  LAP_PART_NONE = LAP_N_PARTS,
} LapPart;

typedef struct {
  guint8 n;                  /* 0: the usual order */
  guint8 parts[LAP_N_PARTS];
} LapPartOrder;

/* What switches half-way between two keys instead of gliding. */
typedef struct {
  guint front, rear, behind, deep; /* masks of 1 << LapPart */
  LapPartOrder order;
  gint8 layer;                     /* of held weights, or -1 */
  gboolean air, moving;
} LapKeyFlags;

typedef struct {
  LapLimb leg[2], arm[2];
  gint8 pin;            /* joint that the chain hangs from, or -1 */
  gint8 pin_on;
  double pin_x, pin_rise;
  LapFigPoint hip;
  double trunk, bend, head;
  double twist, roll, face, shrug, slide;
  double fst[2];
  double turn[2], point[2], footdir[2]; /* footdir NAN: as the leg asks */
  double bell;          /* direction of a kettlebell from its handle, or NAN */
  double rope;          /* phase or direction of a rope, or NAN */
  LapFigPoint ball;     /* where a thrown or rolling ball is, or NAN */
  double high_arms, high_head;
  LapKeyFlags flags;
} LapKey;

/* Limbs in the order of the parts: leg right, leg left, arm right, arm left. */
#define LAP_N_LIMBS 4
#define LAP_N_SPINE 7

typedef struct {
  double a, b, end;    /* directions as the file writes them: outward degrees in a front view */
  double fs[2];
  double reach_missed; /* how far the wished point was out of reach, in units */
  gboolean flat_hand;
} LapSolvedLimb;

typedef struct {
  LapKey key;                       /* what was solved */
  LapFigPoint p[LAP_N_JOINTS];      /* as drawn */
  double z[LAP_N_JOINTS];           /* three-quarter view: how far towards the viewer; else 0 */
  LapFigPoint spine[LAP_N_SPINE];   /* pelvis to neck */
  double pelvis, thorax, head;      /* directions */
  LapSolvedLimb limb[LAP_N_LIMBS];
} LapFigurePose;

G_END_DECLS
