/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The closed form against numbers worked out apart from the program, by the formulas of a first-order response, and
 * against published formulas and measurements. What is published is named where it stands.
 */
#include "effort/kinetics.h"

#include <math.h>

#include "effort/load.h"

#define assert_near(a, b, within) g_assert_cmpfloat_with_epsilon (a, b, within)

static const LapKinetics even = { 30, 30, 30 };

typedef struct {
  double peak, trough, mean;
} Cycle;

/* Effort through @cycles of work at @high and rest at @low, METs being such that a rest is still. */
static Cycle
go_round (const LapKinetics *kinetics, double work, double rest, double high, double low, double x, int cycles)
{
  Cycle cycle = { 0 };

  for (int i = 0; i < cycles; i++) {
    LapCurve up = { x, high, lap_kinetics_tau (kinetics, x, high, 7.5) }, down;
    double area = lap_curve_area (&up, work);

    cycle.peak = lap_curve_at (&up, work);
    down = (LapCurve) { cycle.peak, low, lap_kinetics_tau (kinetics, cycle.peak, low, 1.3) };
    area += lap_curve_area (&down, rest);
    x = cycle.trough = lap_curve_at (&down, rest);
    cycle.mean = area / (work + rest);
  }
  return cycle;
}

/* Periodic steady state: P = [D(1 − a) + R(1 − b)a] / (1 − ab), T = R + (P − R)b, worked out by hand. */
static void
test_steady_state (void)
{
  static const struct {
    const LapKinetics *kinetics;
    double             work, rest;
    Cycle              cycle;
    double             within;
  } rows[] = {
    { &even, 40, 20, { 0.851663, 0.437258, 0.666667 }, 1e-6 },
    { &even, 30, 30, { 0.731059, 0.268941, 0.500000 }, 1e-6 },
    { &even, 20, 10, { 0.769763, 0.551559, 0.666667 }, 1e-6 },
    { &lap_kinetics, 40, 20, { 0.866277, 0.580683, 0.738065 }, 1e-6 },
    { &lap_kinetics, 30, 30, { 0.750395, 0.411825, 0.584642 }, 1e-6 },
    { &lap_kinetics, 20, 10, { 0.8096, 0.6628, 0.7400 }, 1e-4 },
    { &lap_kinetics, 45, 15, { 0.9099, 0.6741, 0.8090 }, 1e-4 },
    { &lap_kinetics, 60, 60, { 0.866933, 0.261115, 0.575727 }, 1e-6 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++) {
    Cycle cycle = go_round (rows[i].kinetics, rows[i].work, rows[i].rest, 1, 0, 0, 60);

    assert_near (cycle.peak, rows[i].cycle.peak, rows[i].within);
    assert_near (cycle.trough, rows[i].cycle.trough, rows[i].within);
    assert_near (cycle.mean, rows[i].cycle.mean, rows[i].within);
  }
}

/* The first rounds of 40/20 from rest: each step by hand with e^(−40/30) = 0.263597, e^(−20/30) = 0.513417. */
static void
test_first_rounds (void)
{
  static const double peaks[2][4] = { { 0.7364, 0.8361, 0.8496, 0.8514 }, { 0.6811, 0.8267, 0.8578, 0.8645 } };
  static const double troughs[2][4] = { { 0.3781, 0.4293, 0.4362, 0.4371 }, { 0.4566, 0.5542, 0.5750, 0.5795 } };

  for (int i = 0; i < 4; i++) {
    Cycle a = go_round (&even, 40, 20, 1, 0, 0, i + 1), b = go_round (&lap_kinetics, 40, 20, 1, 0, 0, i + 1);

    assert_near (a.peak, peaks[0][i], 6e-5);
    assert_near (a.trough, troughs[0][i], 6e-5);
    assert_near (b.peak, peaks[1][i], 6e-5);
    assert_near (b.trough, troughs[1][i], 6e-5);
  }
}

/* 40 years, rest 65, 10 METs reached, work at 7.5 and rest at 1.3: beats a minute by hand. */
static void
test_person (void)
{
  double high = lap_demand (7.5, 10), low = lap_demand (1.3, 10), most = lap_maximum_pulse (40);
  static const struct {
    double work, rest, peak, trough, mean;
  } rows[] = {
    { 40, 20, 137.5, 114.8, 127.3 }, { 30, 30, 128.3, 101.5, 115.1 },
    { 45, 15, 140.9, 122.2, 132.9 }, { 20, 10, 133.0, 121.3, 127.5 },
  };

  assert_near (high, 0.7222, 5e-5);
  assert_near (low, 0.0333, 5e-5);
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++) {
    Cycle cycle = go_round (&lap_kinetics, rows[i].work, rows[i].rest, high, low, 0, 60);

    assert_near (lap_pulse (cycle.peak, 65, most), rows[i].peak, 0.06);
    assert_near (lap_pulse (cycle.trough, 65, most), rows[i].trough, 0.06);
    assert_near (lap_pulse (cycle.mean, 65, most), rows[i].mean, 0.06);
  }
  assert_near (lap_pulse (go_round (&lap_kinetics, 40, 20, high, low, 0, 1).peak, 65, most), 121.6, 0.06);
  assert_near (lap_pulse (go_round (&lap_kinetics, 40, 20, high, low, 0, 2).peak, 65, most), 134.1, 0.06);
}

/* Twenty seconds all out and ten of rest were measured at 84–86 % of the maximum, and 86 % in body-weight form
 * (Emberts and others, J Sports Sci Med 2013;12:612); the measurements weren't used to fit the model. */
static void
test_plausible (void)
{
  Cycle cycle = go_round (&lap_kinetics, 20, 10, 1, 0.05, LAP_EFFORT_START, 60);
  double share = lap_pulse (cycle.mean, 65, 180) / 180;

  g_assert_cmpfloat (share, >, 0.80);
  g_assert_cmpfloat (share, <, 0.88);
  assert_near (share, 0.835, 0.01);
}

/* Tanaka 2001: 208 − 0.7·age. Karvonen's target pulses for 40 years and a resting pulse of 65. */
static void
test_pulse (void)
{
  static const double ages[][2] = { { 20, 194 }, { 30, 187 }, { 40, 180 }, { 50, 173 }, { 60, 166 } };
  static const double targets[][2] = { { 0.3, 99.5 }, { 0.4, 111 }, { 0.6, 134 }, { 0.9, 168.5 } };

  for (guint i = 0; i < G_N_ELEMENTS (ages); i++)
    assert_near (lap_maximum_pulse (ages[i][0]), ages[i][1], 1e-9);
  for (guint i = 0; i < G_N_ELEMENTS (targets); i++)
    assert_near (lap_pulse (targets[i][0], 65, 180), targets[i][1], 1e-9);
}

/* ACSM: kcal a minute = MET·3.5·kg/200, worked out by hand. The formula is from memory, not re-read. */
static void
test_energy (void)
{
  static const struct {
    double met, mass, minutes, kcal;
  } rows[] = {
    { 8.0, 70, 30, 294.0 }, { 7.5, 75, 20, 196.9 }, { 3.8, 60, 20, 79.8 }, { 11.0, 80, 10, 154.0 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    assert_near (lap_energy (rows[i].met * rows[i].minutes, rows[i].mass), rows[i].kcal, 0.05);
  assert_near (lap_energy (20 * (40 * 7.5 + 20 * 1.3) / 60, 70), 133.1, 0.05);
}

/* Foster 2001, table 5: a week of 3400 at monotony 1.26 is a strain of 4284. The same table prints 940 for 5 × 180
 * and 390 for 8 × 75, and its monotony follows from none of its vectors by days; so monotony is held by hand, with
 * the sample deviation (n − 1). */
static void
test_load (void)
{
  static const double printed[] = { 940, 50, 1120, 180, 390, 50, 670 };
  static const double true_products[] = { 900, 50, 1120, 180, 600, 50, 880 };
  static const double hand[] = { 300, 0, 300, 0, 300, 0, 0 };
  static const double equal[] = { 0.1, 0.1, 0.1 };
  double monotony = -1;

  assert_near (lap_load_strain (3400, 1.26), 4284, 1e-9);
  assert_near (lap_load (7, 40), 280, 1e-9);
  g_assert_true (lap_load_monotony (hand, 7, &monotony));
  assert_near (monotony, 0.802, 5e-4);
  assert_near (lap_load_strain (900, monotony), 721.6, 0.05);
  g_assert_true (lap_load_monotony (printed, 7, &monotony));
  assert_near (monotony, 1.122, 5e-4);
  g_assert_true (lap_load_monotony (true_products, 7, &monotony));
  assert_near (monotony, 1.210, 5e-4);
  g_assert_false (lap_load_monotony (equal, 3, &monotony));
  g_assert_false (lap_load_monotony (equal, 1, &monotony));
  g_assert_false (lap_load_monotony (NULL, 0, &monotony));
  assert_near (monotony, 1.210, 5e-4);
}

static void
test_above (void)
{
  LapCurve rising = { 0, 1, 35 }, falling = { 1, 0, 50 }, flat = { 0.5, 0.5, 50 };

  assert_near (lap_curve_passes (&rising, 1 - exp (-1)), 35, 1e-9);
  assert_near (lap_curve_above (&rising, 60, lap_curve_at (&rising, 60), 1 - exp (-1)), 25, 1e-9);
  assert_near (lap_curve_above (&falling, 60, lap_curve_at (&falling, 60), exp (-1)), 50, 1e-9);
  assert_near (lap_curve_above (&rising, 60, lap_curve_at (&rising, 60), 1), 0, 1e-12);
  assert_near (lap_curve_above (&falling, 60, lap_curve_at (&falling, 60), 0), 60, 1e-12);
  assert_near (lap_curve_above (&flat, 60, lap_curve_at (&flat, 60), 0.5), 60, 1e-12);
  assert_near (lap_curve_above (&flat, 60, lap_curve_at (&flat, 60), 0.6), 0, 1e-12);
  g_assert_true (isinf (lap_curve_passes (&rising, 1)));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/kinetics/steady-state", test_steady_state);
  g_test_add_func ("/kinetics/first-rounds", test_first_rounds);
  g_test_add_func ("/kinetics/person", test_person);
  g_test_add_func ("/kinetics/plausible", test_plausible);
  g_test_add_func ("/kinetics/pulse", test_pulse);
  g_test_add_func ("/kinetics/energy", test_energy);
  g_test_add_func ("/kinetics/above", test_above);
  g_test_add_func ("/load", test_load);
  return g_test_run ();
}
