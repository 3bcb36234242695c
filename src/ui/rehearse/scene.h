/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is on the screen of a rehearsal: the plan as it was when the rehearsal began, its clock, and what this
 * moment is about. Panels read it and draw; only the stage moves it on.
 */
#pragma once

#include "checks/checks.h"
#include "clock/moment.h"
#include "clock/takes.h"

G_BEGIN_DECLS

typedef enum {
  LAP_LAYOUT_WORK, /* the figure and the seconds are large */
  LAP_LAYOUT_REST, /* people get ready, the coach speaks: the words are large */
  LAP_LAYOUT_READ, /* a talk is read from a roll */
} LapLayout;

typedef struct {
  LapTimeline      *timeline;
  LapCheckup       *checkup;
  LapScript        *script;
  LapRehearsal     *rehearsal;
  LapTakes         *takes;
  LapMoment         moment;
  LapRehearsalState state;
  gint64            clock, count_in; /* microseconds */
  double            unit;            /* px: a hundredth of what sizes are measured by */
  gboolean          still;           /* nothing moves but numbers */
  gboolean          calm;            /* the edge doesn't flash */
  gboolean          film;            /* the film clock is the large one */
  gboolean          pulses;          /* the edge tells of the last three seconds too: nothing is heard */
} LapScene;

/* Of @timeline and its @checkup, under the time of @source. */
LapScene   *lap_scene_new     (LapTimeline    *timeline,
                               LapCheckup     *checkup,
                               LapTimeSource   source,
                               gpointer        data);
void        lap_scene_free    (LapScene       *scene);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapScene, lap_scene_free)

/* Looks at the time. */
void        lap_scene_tick    (LapScene       *scene);

/* The task of a turn; NULL for NULL. */
const LapTask *lap_scene_task (const LapScene *scene,
                               const LapTurn  *turn);
/* People work at this moment. */
gboolean    lap_scene_works   (const LapScene *scene);
/* What the screen is for at this moment. */
LapLayout   lap_scene_layout  (const LapScene *scene);
/* "5 of 10": which block of its round @turn is, and of how many. */
guint       lap_scene_block   (const LapScene *scene,
                               const LapTurn  *turn,
                               guint          *n);
/* 0 … 1: how bright the edge is. At most one flash a second, fading; steady for a second when nothing is to
 * move, or nothing to flash. */
double      lap_scene_edge    (const LapScene *scene);
/* The moment of the mark by which picture and sound are put together: a flash at 0:00. */
gboolean    lap_scene_sync    (const LapScene *scene);
/* "Squat, left side": what @turn is called, translated; transfer full. */
char       *lap_scene_name    (const LapScene *scene,
                               const LapTurn  *turn);

G_END_DECLS
