/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The registry: the tables of the theme files one after another.
 */
#include "checks/checkup.h"

#include <glib/gi18n-lib.h>

static const LapWord severities[] = { { "stop", N_("Stop") }, { "warning", N_("Warning") }, { "note", N_("Note") } };
const LapWords lap_severities = { "a severity", severities, G_N_ELEMENTS (severities) };

static const LapCheck *const tables[] = {
  lap_checks_time, lap_checks_run, lap_checks_change, lap_checks_work, lap_checks_effort,
  lap_checks_talk, lap_checks_room, lap_checks_plan, lap_checks_film,
  lap_checks_week_clash, lap_checks_week_room, lap_checks_week_body,
};

const LapCheck *
lap_checks_nth (guint n)
{
  for (guint t = 0; t < G_N_ELEMENTS (tables); t++)
    for (const LapCheck *check = tables[t]; check->id != NULL; check++)
      if (n-- == 0)
        return check;
  return NULL;
}

guint
lap_checks_n (void)
{
  guint n = 0;

  for (guint t = 0; t < G_N_ELEMENTS (tables); t++)
    for (const LapCheck *check = tables[t]; check->id != NULL; check++)
      n++;
  return n;
}

const LapCheck *
lap_checks_find (const char *id)
{
  for (guint i = 0; i < lap_checks_n (); i++)
    if (g_str_equal (lap_checks_nth (i)->id, id))
      return lap_checks_nth (i);
  return NULL;
}
