/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How effort follows demand, in closed form. Effort x is the share of heart-rate reserve in use. Under a constant
 * demand it moves towards its target d as d + (x − d)·e^(−t/τ); it never reaches it, so one τ holds for the whole
 * stretch and nothing is stepped. All functions are pure; times are seconds.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/* Time constants, seconds. */
typedef struct {
  double rising;
  double still;  /* falling while standing or sitting still: MET below 2 */
  double active; /* falling while moving on: MET of 2 and more */
} LapKinetics;

/* 35 s rising (heart rate on, moderate to heavy: 33 ± 10 and 44 ± 15 s, AJP Regul 2012;303:R791), 50 s falling still
 * and 80 s falling active (50.6 ± 14.9 and 90.6 ± 30.4 s, J Sports Sci Med 2011;10:369). */
extern const LapKinetics lap_kinetics;

/* Effort of somebody who stands and waits: where a session starts. */
#define LAP_EFFORT_START 0.03

/* A stretch of constant demand. */
typedef struct {
  double from;   /* effort at its start */
  double target;
  double tau;    /* of lap_kinetics_tau() */
} LapCurve;

double lap_kinetics_tau   (const LapKinetics *kinetics,
                           double             from,
                           double             target,
                           double             met);

/* Effort @seconds into the stretch. */
double lap_curve_at       (const LapCurve    *curve,
                           double             seconds);
/* Integral of effort over the first @seconds: divided by them it is the mean. */
double lap_curve_area     (const LapCurve    *curve,
                           double             seconds);
/* Both at once; returns effort and adds to *@area. */
double lap_curve_go       (const LapCurve    *curve,
                           double             seconds,
                           double            *area);
/* When effort passes @level, which must lie between its start and its target; infinite at the target itself. */
double lap_curve_passes   (const LapCurve    *curve,
                           double             level);
/* Seconds of the first @seconds, after which effort is @to, with effort at @level or above. */
double lap_curve_above    (const LapCurve    *curve,
                           double             seconds,
                           double             to,
                           double             level);

/* Most beats a minute at @age years: 208 − 0.7·age (Tanaka 2001). ± 12 beats for one person. */
double lap_maximum_pulse  (double             age);
/* Beats a minute at effort @x. */
double lap_pulse          (double             x,
                           double             rest_pulse,
                           double             maximum);
/* kcal of @met_minutes for @mass kg: MET·3.5·kg/200 a minute (5 kcal a litre of oxygen). */
double lap_energy         (double             met_minutes,
                           double             mass);
/* Share of the reserve that @met asks of somebody who can reach @fitness METs; above 1 it is out of reach. */
double lap_demand         (double             met,
                           double             fitness);

G_END_DECLS
