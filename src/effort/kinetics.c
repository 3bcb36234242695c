/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "effort/kinetics.h"

#include <math.h>

const LapKinetics lap_kinetics = { .rising = 35, .still = 50, .active = 80 };

#define STILL_BELOW 2.0 /* METs */

double
lap_kinetics_tau (const LapKinetics *kinetics, double from, double target, double met)
{
  if (target > from)
    return kinetics->rising;
  return met < STILL_BELOW ? kinetics->still : kinetics->active;
}

double
lap_curve_go (const LapCurve *curve, double seconds, double *area)
{
  double away = curve->from - curve->target, change = away * expm1 (-seconds / curve->tau);

  *area += curve->target * seconds - change * curve->tau;
  return curve->from + change;
}

double
lap_curve_at (const LapCurve *curve, double seconds)
{
  double area = 0;

  return lap_curve_go (curve, seconds, &area);
}

double
lap_curve_area (const LapCurve *curve, double seconds)
{
  double area = 0;

  lap_curve_go (curve, seconds, &area);
  return area;
}

double
lap_curve_passes (const LapCurve *curve, double level)
{
  if (level == curve->target)
    return INFINITY;
  return curve->tau * log ((curve->from - curve->target) / (level - curve->target));
}

double
lap_curve_above (const LapCurve *curve, double seconds, double to, double level)
{
  gboolean at_start = curve->from >= level, at_end = to >= level;
  double passes;

  if (at_start == at_end)
    return at_start ? seconds : 0;
  passes = CLAMP (lap_curve_passes (curve, level), 0, seconds);
  return at_start ? passes : seconds - passes;
}

double
lap_maximum_pulse (double age)
{
  return 208 - 0.7 * age;
}

double
lap_pulse (double x, double rest_pulse, double maximum)
{
  return rest_pulse + x * (maximum - rest_pulse);
}

double
lap_energy (double met_minutes, double mass)
{
  return met_minutes * 3.5 * mass / 200;
}

double
lap_demand (double met, double fitness)
{
  return (met - 1) / (fitness - 1);
}
