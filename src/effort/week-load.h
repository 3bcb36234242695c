/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a week asks of bodies and of coaches: minutes of class by region and day, how hard each day is, and each coach's
 * minutes. Classes that aren't held don't count. A pure function of the week, a date, and its sessions.
 */
#pragma once

#include "effort/attached.h"
#include "model/week.h"

G_BEGIN_DECLS

typedef struct {
  int   minutes;
  guint classes, hard; /* hard ones that the coach takes part in */
} LapCoachLoad;

typedef struct {
  int           hard[LAP_N_REGIONS][LAP_N_DAYS]; /* minutes of hard classes that work the region */
  int           some[LAP_N_REGIONS][LAP_N_DAYS]; /* of other ones */
  int           most;                            /* the largest sum of both */
  int           strain[LAP_N_DAYS];              /* LapStrain of the hardest class; -1 without one */
  guint         n_coaches;
  LapCoachLoad *coaches;                         /* in the order of the week */
} LapWeekLoad;

/* The week that @date lies in; as it always is for 0. @attachments may be NULL. */
LapWeekLoad *lap_week_load_new  (const LapWeek  *week,
                                 int             date,
                                 LapAttachments *attachments);
void         lap_week_load_free (LapWeekLoad    *load);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapWeekLoad, lap_week_load_free)

G_END_DECLS
