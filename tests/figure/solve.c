/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The skeleton and the solver: lengths, contacts, the middle of mass, joint angles, frames in between.
 */
#include "figures.h"

#define STANDING "{'view': 'side', 'keys': [{'hip': [0, 53], 'legs': [180, 180], 'arms': [180, 180]}]}"
#define SQUAT "{'keys': [{'hip': [1.5, 52.85], 'trunk': 0, 'legs': {'flat': 0}, 'arms': [181, 172]}," \
              " {'hip': [-13.5, 29], 'trunk': 36, 'bend': 4, 'legs': {'flat': 0}, 'arms': [96, 90]}]}"

/* Drillis & Contini 1966 in Winter, fig. 4.1, fractions of stature (from memory): ankle 0.039, knee 0.285,
 * hip 0.530, shoulder 0.818, upper arm 0.186, forearm 0.146. */
static void
check_heights (void)
{
  g_autoptr (LapFigure) figure = figure_of (STANDING);
  LapFigurePose pose;

  lap_figure_pose (figure, 0.0, &pose);
  g_assert_cmpfloat_with_epsilon (pose.p[LAP_JOINT_ANKLE].y, 3.9, 0.001);
  g_assert_cmpfloat_with_epsilon (pose.p[LAP_JOINT_KNEE].y, 28.5, 0.001);
  g_assert_cmpfloat_with_epsilon (pose.p[LAP_JOINT_SHOULDER].y, 81.8, 0.001);
  g_assert_cmpfloat_with_epsilon (pose.p[LAP_JOINT_SHOULDER].y - pose.p[LAP_JOINT_ELBOW].y, 18.6, 0.001);
  g_assert_cmpfloat_with_epsilon (pose.p[LAP_JOINT_ELBOW].y - pose.p[LAP_JOINT_WRIST].y, 14.6, 0.001);
  /* The crown is one stature up. */
  g_assert_cmpfloat_with_epsilon (pose.p[LAP_JOINT_HEAD].y + LAP_SKIN_HEAD, 100.0, 1.0);
}

/* Standing at ease, the middle of mass of adults is at 55 to 57 % of the stature (Winter, and any anatomy
 * text). */
static void
check_mass (void)
{
  g_autoptr (LapFigure) figure = figure_of (STANDING);
  LapFigurePose pose;
  LapFigPoint middle;

  lap_figure_pose (figure, 0.0, &pose);
  middle = lap_pose_mass_middle (figure, &pose);
  g_assert_cmpfloat (middle.y, >, 55.0);
  g_assert_cmpfloat (middle.y, <, 58.0);
  g_assert_cmpfloat_with_epsilon (middle.x, 0.0, 1.0);
}

static void
check_bones (const LapFigurePose *pose)
{
  static const struct {
    LapJoint from, to;
    double length;
  } bones[] = {
    { LAP_JOINT_HIP, LAP_JOINT_KNEE, LAP_LEN_THIGH },
    { LAP_JOINT_KNEE, LAP_JOINT_ANKLE, LAP_LEN_SHANK },
    { LAP_JOINT_SHOULDER, LAP_JOINT_ELBOW, LAP_LEN_UPPER_ARM },
    { LAP_JOINT_ELBOW, LAP_JOINT_WRIST, LAP_LEN_FOREARM },
  };

  for (guint i = 0; i < G_N_ELEMENTS (bones); i++)
    for (guint side = 0; side < 2; side++)
      g_assert_cmpfloat_with_epsilon (lap_fig_distance (pose->p[bones[i].from + side],
                                                        pose->p[bones[i].to + side]),
                                      bones[i].length, 1e-6);
}

/* In every frame the feet stay, the knees bend forwards and no bone changes its length. */
static void
check_frames (void)
{
  g_autoptr (LapFigure) figure = figure_of (SQUAT);

  for (guint i = 0; i <= 100; i++)
    {
      LapFigurePose pose;
      double angles[3];

      lap_figure_pose (figure, i / 100.0, &pose);
      check_bones (&pose);
      g_assert_cmpfloat_with_epsilon (pose.p[LAP_JOINT_ANKLE].x, 0.0, 1e-6);
      g_assert_cmpfloat_with_epsilon (pose.p[LAP_JOINT_ANKLE].y, LAP_ANKLE_HEIGHT, 1e-6);
      lap_pose_joint_angles (&pose, LAP_PART_LEG_R, angles);
      g_assert_cmpfloat (angles[1], >=, 0.0);
    }
}

/* A repetition begins and ends in the first key and has the second in its middle. */
static void
check_phase (void)
{
  g_autoptr (LapFigure) figure = figure_of (SQUAT);
  LapFigurePose first, middle, last;

  lap_figure_pose (figure, 0.0, &first);
  lap_figure_pose (figure, lap_figure_key_phase (figure, 1), &middle);
  lap_figure_pose (figure, 1.0, &last);
  g_assert_cmpfloat_with_epsilon (first.p[LAP_JOINT_PELVIS].y, 52.85, 1e-9);
  g_assert_cmpfloat_with_epsilon (middle.p[LAP_JOINT_PELVIS].y, 29.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (last.p[LAP_JOINT_PELVIS].y, 52.85, 1e-9);
  g_assert_cmpfloat_with_epsilon (lap_figure_phase (figure, 5.0, 2.5), 0.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (lap_figure_phase (figure, 1.25, 2.5), 0.5, 1e-9);
}

/* A hold is taken up once and kept. */
static void
check_hold (void)
{
  g_autoptr (LapFigure) figure =
    figure_of ("{'cycle': 'hold', 'keys': [{'hip': [1.5, 52.85], 'legs': {'flat': 0}},"
                                            " {'hip': [0, 40], 'legs': {'flat': 0}}]}");
  LapFigurePose pose;

  lap_figure_pose (figure, lap_figure_phase (figure, 60.0, 0.0), &pose);
  g_assert_cmpfloat_with_epsilon (pose.p[LAP_JOINT_PELVIS].y, 40.0, 1e-9);
}

/* A jump rises and falls as thrown bodies do: half the time brings three quarters of the height. */
static void
check_jump (void)
{
  g_autoptr (LapFigure) figure = figure_of ("{'step': 0, 'keys': [{'hip': [0, 50], 'legs': {'flat': 0}},"
                                            " {'hip': [0, 70], 'legs': [180, 180, 150], 'air': true}]}");
  LapFigurePose pose;

  lap_figure_pose (figure, 0.25, &pose);
  g_assert_cmpfloat_with_epsilon (pose.p[LAP_JOINT_PELVIS].y, 65.0, 1e-6);
}

/* The spine is an arc of constant length, whatever its bend. */
static void
check_spine (void)
{
  for (int bend = -40; bend <= 80; bend += 20)
    {
      g_autofree char *text =
        g_strdup_printf ("{'keys': [{'hip': [0, 53], 'trunk': 20, 'bend': %d, 'legs': [180, 180]}]}",
                                               bend);
      g_autoptr (LapFigure) figure = figure_of (text);
      LapFigurePose pose;
      double r = fabs (lap_fig_radians (bend)), chord = r > 0.0 ? 2.0 * LAP_LEN_TRUNK / r * sin (r / 2.0)
        : LAP_LEN_TRUNK;

      lap_figure_pose (figure, 0.0, &pose);
      g_assert_cmpfloat_with_epsilon (lap_fig_distance (pose.p[LAP_JOINT_PELVIS], pose.p[LAP_JOINT_NECK]),
                                      chord, 1e-6);
      g_assert_cmpfloat_with_epsilon (lap_fig_bearing (pose.p[LAP_JOINT_PELVIS], pose.p[LAP_JOINT_NECK]),
                                      20.0, 1e-6);
    }
}

/* A hand that can't reach its point goes as far as it can, and says what is missing. */
static void
check_reach (void)
{
  g_autoptr (LapFigure) figure =
    figure_of ("{'keys': [{'hip': [0, 53], 'legs': [180, 180], 'arms': {'to': [90, 81.8]}}]}");
  LapFigurePose pose;

  lap_figure_pose (figure, 0.0, &pose);
  g_assert_cmpfloat_with_epsilon (pose.p[LAP_JOINT_HAND].x,
                                  LAP_LEN_UPPER_ARM + LAP_LEN_FOREARM + LAP_LEN_FIST, 0.1);
  g_assert_cmpfloat_with_epsilon (pose.limb[LAP_PART_ARM_R].reach_missed, 90.0 - 37.4, 0.1);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/figure/solve/heights", check_heights);
  g_test_add_func ("/figure/solve/mass", check_mass);
  g_test_add_func ("/figure/solve/frames", check_frames);
  g_test_add_func ("/figure/solve/phase", check_phase);
  g_test_add_func ("/figure/solve/hold", check_hold);
  g_test_add_func ("/figure/solve/jump", check_jump);
  g_test_add_func ("/figure/solve/spine", check_spine);
  g_test_add_func ("/figure/solve/reach", check_reach);
  return g_test_run ();
}
