/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The skeleton: names of the joints and the lengths between them.
 *
 * The unit everywhere in figure/ is one hundredth of the stature; x grows to the right, y upwards, the
 * floor is y = 0. Directions are clock degrees: 0 up, 90 right, 180 down, 270 left. A figure seen from the
 * side faces right, and its right side is the near one. Seen from the front its right side is on the
 * viewer's left; limb directions are then outward degrees (90 = away from the midline), so that one number
 * poses both sides.
 *
 * Segment lengths: Drillis & Contini 1966, as printed in Winter, Biomechanics and Motor Control of Human
 * Movement, fig. 4.1 (fractions of stature). Radii are this project's own drawing, chosen by eye.
 */
#pragma once

#include <glib.h>
#include <math.h>

G_BEGIN_DECLS

typedef struct {
  double x, y;
} LapFigPoint;

typedef enum {
  LAP_SIDE_RIGHT, /* near in a side view, the viewer's left in a front view */
  LAP_SIDE_LEFT,
} LapFigSide;

/* Paired joints stand together, so that LAP_JOINT_KNEE + side is the knee of that side. */
typedef enum {
  LAP_JOINT_PELVIS, /* middle between the hip joints */
  LAP_JOINT_NECK,   /* middle of the shoulder line */
  LAP_JOINT_HEAD,   /* centre of the head */
  LAP_JOINT_HIP,
  LAP_JOINT_KNEE = LAP_JOINT_HIP + 2,
  LAP_JOINT_ANKLE = LAP_JOINT_KNEE + 2,
  LAP_JOINT_HEEL = LAP_JOINT_ANKLE + 2,
  LAP_JOINT_BALL = LAP_JOINT_HEEL + 2,
  LAP_JOINT_TOE = LAP_JOINT_BALL + 2,
  LAP_JOINT_SHOULDER = LAP_JOINT_TOE + 2,
  LAP_JOINT_ELBOW = LAP_JOINT_SHOULDER + 2,
  LAP_JOINT_WRIST = LAP_JOINT_ELBOW + 2,
  LAP_JOINT_HAND = LAP_JOINT_WRIST + 2, /* middle of the fist, or the finger tips of a flat hand */
  LAP_N_JOINTS = LAP_JOINT_HAND + 2,
} LapJoint;

#define LAP_LEN_TRUNK 28.8     /* 0.818 - 0.530: hip to shoulder line */
#define LAP_LEN_THIGH 24.5     /* 0.530 - 0.285 */
#define LAP_LEN_SHANK 24.6     /* 0.285 - 0.039 */
#define LAP_LEN_UPPER_ARM 18.6 /* 0.186 */
#define LAP_LEN_FOREARM 14.6   /* 0.146 */
#define LAP_LEN_HAND 6.7       /* 0.108 with the fingers out; drawn shorter */
#define LAP_LEN_FIST 4.2       /* wrist to the middle of the fist */
#define LAP_LEN_NECK 12.4      /* shoulder line to the middle of the head: chin at 0.870, head 0.130 high */
#define LAP_LEN_TOES 2.3       /* ball to the middle of the toe cap */
#define LAP_HALF_SHOULDERS 11.2 /* 0.129 half biacromial, less the deltoid */
#define LAP_HALF_HIPS 5.2

/* The foot from the ankle, along the sole and towards it: 0.039 high, 0.152 long. */
#define LAP_ANKLE_HEIGHT 3.9
#define LAP_BALL_ALONG 7.4
#define LAP_BALL_UNDER 1.9
#define LAP_HEEL_ALONG 1.3
#define LAP_HEEL_UNDER 1.6
#define LAP_HEEL_BACK 3.6 /* ankle to the back edge of the heel */
#define LAP_TOE_TIP 11.6
#define LAP_INSTEP_HEIGHT 3.2

/* Joint centre to the skin that rests on a surface. */
#define LAP_SKIN_HIP 6.3
#define LAP_SKIN_CHEST 6.4
#define LAP_SKIN_SHOULDER 4.6
#define LAP_SKIN_KNEE 4.0
#define LAP_SKIN_ELBOW 2.9
#define LAP_SKIN_WRIST 2.4
#define LAP_SKIN_BALL 2.0
#define LAP_SKIN_HEEL 2.3
#define LAP_SKIN_HEAD 6.7
#define LAP_SKIN_FIST 2.7
#define LAP_SKIN_PALM 1.8
/* Seen from the front the same points are the ends of the widths, and thinner. */
#define LAP_SKIN_HIP_FRONT 4.6
#define LAP_SKIN_SHOULDER_FRONT 3.7

/* One centimetre on a person of 1.70 m. */
#define LAP_FIG_CENTIMETRE (100.0 / 170.0)

static inline double
lap_fig_radians (double degrees)
{
  return degrees * (G_PI / 180.0);
}

/* The point one unit from the origin in clock direction @degrees. */
static inline LapFigPoint
lap_fig_toward (double degrees)
{
  double a = lap_fig_radians (degrees);

  return (LapFigPoint) { sin (a), cos (a) };
}

/* @from, moved by @length in clock direction @degrees. */
static inline LapFigPoint
lap_fig_step (LapFigPoint from, double degrees, double length)
{
  LapFigPoint d = lap_fig_toward (degrees);

  return (LapFigPoint) { from.x + d.x * length, from.y + d.y * length };
}

static inline LapFigPoint
lap_fig_plus (LapFigPoint a, LapFigPoint b)
{
  return (LapFigPoint) { a.x + b.x, a.y + b.y };
}

static inline LapFigPoint
lap_fig_minus (LapFigPoint a, LapFigPoint b)
{
  return (LapFigPoint) { a.x - b.x, a.y - b.y };
}

static inline LapFigPoint
lap_fig_mix (LapFigPoint a, LapFigPoint b, double t)
{
  return (LapFigPoint) { a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t };
}

static inline double
lap_fig_distance (LapFigPoint a, LapFigPoint b)
{
  return hypot (a.x - b.x, a.y - b.y);
}

/* The clock direction from @a to @b, in (-180, 180]. */
static inline double
lap_fig_bearing (LapFigPoint a, LapFigPoint b)
{
  return atan2 (b.x - a.x, b.y - a.y) * (180.0 / G_PI);
}

/* @angle turned by whole turns to within half a turn of @near. */
static inline double
lap_fig_unwind (double angle, double near)
{
  return angle - 360.0 * floor ((angle - near + 180.0) / 360.0);
}

static inline double
lap_fig_blend (double a, double b, double t)
{
  return a + (b - a) * t;
}

G_END_DECLS
