/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is noted while a rehearsal is filmed: marks of takes that are good or to be taken again, and by how
 * much the talk before a block ran over. Two things tell of that: a hold that began while there was talk, for
 * as long as it lasts; and the key for "all is said", by how late it came after the work began, or how early
 * before.
 *
 * lap_takes_look() after each tick and deed of the rehearsal; it sees holds begin and end. A shot that is
 * taken again is measured anew.
 */
#pragma once

#include "clock/rehearsal.h"

G_BEGIN_DECLS

typedef struct {
  char    *at;    /* when, RFC 3339 */
  double   clock; /* second of the session */
  guint    shot;
  gboolean good;  /* else to be taken again */
  double   over;  /* seconds the talk before ran over; below 0 to spare */
} LapTakeMark;

typedef struct _LapTakes LapTakes;

LapTakes          *lap_takes_new  (LapRehearsal *rehearsal);
void               lap_takes_free (LapTakes     *takes);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapTakes, lap_takes_free)

void               lap_takes_look (LapTakes     *takes);
/* All is said that was to be said before the block at hand. */
void               lap_takes_said (LapTakes     *takes);
/* Marks @shot where the clock stands. */
void               lap_takes_mark (LapTakes     *takes,
                                   guint         shot,
                                   gboolean      good,
                                   const char   *at);
/* What was measured before @shot is no longer true. */
void               lap_takes_again (LapTakes    *takes,
                                    guint        shot);

guint              lap_takes_n    (LapTakes     *takes);
const LapTakeMark *lap_takes_nth  (LapTakes     *takes,
                                   guint         n);
/* Seconds over before @shot; 0 where nothing was measured. */
double             lap_takes_over (LapTakes     *takes,
                                   guint         shot);

G_END_DECLS
