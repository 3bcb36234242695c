/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the takes of a session say about its film: which stretch of it shows which shot, and which of several is
 * kept.
 *
 * A take has the time of day and the second of the session. The film is taken to run without a stop, its clock to
 * stand at the lead when the session begins. Between two takes the session ran on when both went on alike; else
 * it went back, or was held: after "again" to the beginning of that shot, which was then played until the next
 * take. After the last of all it goes back with a count of three.
 *
 * Of a shot the last that is marked good is kept, else the last whole one that isn't to be taken again.
 */
#pragma once

#include "clock/shots.h"
#include "publish/formats.h"

G_BEGIN_DECLS

typedef struct {
  guint          shot;
  guint          run;      /* counts how often the session went back or was held before it */
  double         from, to; /* seconds on the session clock */
  double         in, out;  /* on the film's clock */
  const LapTake *take;     /* what marked it, or NULL */
  gboolean       whole;    /* it runs from the beginning of its shot to the end */
  gboolean       keep;
} LapCut;

/* A take on the film's clock. */
typedef struct {
  const LapTake *take;
  double         film;
  guint          shot;
} LapCutMark;

typedef struct {
  LapShots   *shots;
  guint       n, n_marks;
  LapCut     *cuts;  /* in the order of the film */
  LapCutMark *marks; /* as the file has them */
} LapCuts;

/* Without takes the whole session in one go. NULL with LAP_ERROR_INVALID where a take's time of day isn't one. */
LapCuts *lap_cuts_new  (const LapPublication *what,
                        GError              **error);
void     lap_cuts_free (LapCuts              *cuts);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapCuts, lap_cuts_free)

/* Whether the session has takes, and its plan has been changed since they were shot. */
gboolean lap_cuts_are_old (const LapTimeline *timeline);

G_END_DECLS
