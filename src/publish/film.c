/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/film.h"

double
lap_film_at (const LapPublication *what, double clock)
{
  return clock + what->timeline->session->lead + what->offset;
}
