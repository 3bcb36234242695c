/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What there is to say around every turn, and the time there is to say it. Before its work: the name, and how to set
 * up the first time an exercise is met. In its work: the cues; fault, easier and harder the first time. A talk's own
 * words count against its own seconds, and against what else is to be said in them.
 *
 * Counts and seconds come from the words as files hold them, not from their translation, so that they are the same in
 * every locale. Immutable once made; texts are held by the timeline. The paces are the session's (common practice).
 */
#pragma once

#include "effort/effort.h"

G_BEGIN_DECLS

/* Words to say; NULL for none. */
typedef struct {
  const char         *name;
  const char         *setup;
  const char * const *cues; /* most important first; NULL or NULL-terminated */
  const char         *fault, *easier, *harder;
} LapWording;

/* A stretch of time with its words. */
typedef struct {
  LapSpan span;
  int     words;
  int     seconds; /* that there are */
  double  need;    /* seconds that the words take with what else must happen then; above `seconds` they don't fit */
  double  pace;    /* words a second */
} LapTalkRoom;

typedef struct {
  LapWording say;  /* what is said at this turn: setup, fault, easier and harder only the first time */
  gboolean   first;
  LapTalkRoom    gap;  /* before its work: the rests, talks and pauses next to it. Without any, everything is 0 and the
                      words fall to its work */
  LapTalkRoom    work; /* its work, sides and sets without what lies between */
  double     lead; /* seconds of the gap that aren't for words: half the change of posture, fetching kit, count-in */
} LapTalkTurn;

/* One talk with its own words. */
typedef struct {
  guint   interval;
  LapTalkRoom room;
} LapTalkOwn;

typedef struct {
  LapTimeline *timeline; /* held */
  guint        n, n_own;
  LapTalkTurn *turns;    /* one for each turn of the timeline. At their own pace the first turn of a part has the
                            words of all */
  LapTalkOwn  *own;
} LapTalk;

LapTalk   *lap_talk_new     (LapTimeline     *timeline,
                             const LapEffort *effort);
void       lap_talk_free    (LapTalk         *talk);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapTalk, lap_talk_free)

/* All words of @task: its own where it has them, member by member, else those of the shown exercise. */
LapWording lap_task_wording (const LapTask   *task);

/* Names apart. */
gboolean   lap_wording_same (const LapWording *a,
                             const LapWording *b);

/* A word is a run between white space. 0 for NULL. */
int        lap_count_words  (const char      *text);

G_END_DECLS
