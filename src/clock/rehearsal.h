/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The clock of a rehearsal. It is told the time by whoever made it and knows neither screen nor sound: where
 * it stands follows from one anchor, a moment of the time source and the second of the plan that belongs to
 * it. Nothing is added up, so that it is never off the plan, however seldom it is asked and however long it
 * runs.
 *
 *   rehearsal = lap_rehearsal_new (timeline, source, data);
 *   lap_rehearsal_start (rehearsal, 3);
 *   every frame: lap_rehearsal_tick (rehearsal); then ask
 *
 * Times are microseconds: of the source (monotonic), and of the session clock. A shot is what one goes back
 * to, see shots.h. When more than 2 s pass between two ticks, or the computer is about to sleep, nobody saw
 * what went by: the rehearsal is held at the last boundary before.
 */
#pragma once

#include "clock/shots.h"

G_BEGIN_DECLS

typedef enum {
  LAP_REHEARSAL_READY,    /* not begun */
  LAP_REHEARSAL_COUNT_IN, /* stands on its second, and goes when the count is over */
  LAP_REHEARSAL_RUNNING,
  LAP_REHEARSAL_HELD,
  LAP_REHEARSAL_DONE,
} LapRehearsalState;

typedef gint64 (*LapTimeSource) (gpointer data);

#define LAP_SECOND  G_GINT64_CONSTANT (1000000)
#define LAP_GAP     (2 * LAP_SECOND) /* between two ticks; longer, and nobody was looking */
#define LAP_MOST_IN 30               /* seconds of a count-in */

typedef struct _LapRehearsal LapRehearsal;

LapRehearsal      *lap_rehearsal_new        (LapTimeline   *timeline,
                                             LapTimeSource  source,
                                             gpointer       data);
void               lap_rehearsal_free       (LapRehearsal  *rehearsal);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapRehearsal, lap_rehearsal_free)

/* How many seconds of the plan go by in one: 1, more for looking it through. */
void               lap_rehearsal_set_speed  (LapRehearsal  *rehearsal,
                                             int            speed);

/* Looks at the time. TRUE when that changed the state. */
gboolean           lap_rehearsal_tick       (LapRehearsal  *rehearsal);

/* Goes on from where it stands, after @count_in seconds; from the beginning when it is done. */
void               lap_rehearsal_start      (LapRehearsal  *rehearsal,
                                             int            count_in);
void               lap_rehearsal_hold       (LapRehearsal  *rehearsal);
/* Holds at the last boundary: the computer is about to sleep. */
void               lap_rehearsal_sleep      (LapRehearsal  *rehearsal);
/* To the next boundary. */
void               lap_rehearsal_skip       (LapRehearsal  *rehearsal);
/* To the last boundary, or to the one before it within 2 s of it. */
void               lap_rehearsal_back       (LapRehearsal  *rehearsal);
/* To @second, running on if it ran. Before its beginning or behind its end: to there. */
void               lap_rehearsal_jump       (LapRehearsal  *rehearsal,
                                             int            second);
/* To the start of the shot that lap_rehearsal_retakes() names, and goes after @count_in seconds. */
void               lap_rehearsal_retake     (LapRehearsal  *rehearsal,
                                             int            count_in);
/* The shot at hand, or the one before where this one hasn't begun to move. */
guint              lap_rehearsal_retakes    (LapRehearsal  *rehearsal);
/* The shot at hand again and again, its rest before included, until told otherwise. */
void               lap_rehearsal_set_repeat (LapRehearsal  *rehearsal,
                                             gboolean       repeat);
gboolean           lap_rehearsal_repeat     (LapRehearsal  *rehearsal);

/* As it stood at the last tick or deed. */
LapRehearsalState  lap_rehearsal_state      (LapRehearsal  *rehearsal);
/* Held because nobody was looking. */
gboolean           lap_rehearsal_was_away   (LapRehearsal  *rehearsal);
gint64             lap_rehearsal_clock      (LapRehearsal  *rehearsal);
/* Of the source, at the last look. */
gint64             lap_rehearsal_now        (LapRehearsal  *rehearsal);
/* Microseconds until it goes, 0 when it isn't counting in. */
gint64             lap_rehearsal_count_in   (LapRehearsal  *rehearsal);
const LapShots    *lap_rehearsal_shots      (LapRehearsal  *rehearsal);
guint              lap_rehearsal_shot       (LapRehearsal  *rehearsal);

/* For who prepares sound ahead: the second of the plan that @time will belong to if nothing is done until
 * then, below where it will begin while counting in. FALSE when it won't be going. */
gboolean           lap_rehearsal_ahead      (LapRehearsal  *rehearsal,
                                             gint64         time,
                                             gint64        *clock);

G_END_DECLS
