/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where the seconds of a block's work or rest are written, and how they are set. Usually in the block; in a round
 * that differs, in its in-round change; in a part with steps, in a row of those; on the minute, the rest is what the
 * part's `every` leaves. Whoever widens what is seen asks for its source first, so that it is what is seen that
 * becomes wider.
 */
#pragma once

#include "edit/edit.h"
#include "model/session.h"

G_BEGIN_DECLS

/* What can be reached by hand in steps of five seconds; a number that is typed has the wider limits of the file. */
#define LAP_HAND_LEAST 5
#define LAP_HAND_MOST  600

typedef enum { LAP_TIME_WORK, LAP_TIME_REST } LapTimeWhat;

typedef struct {
  LapObject  *object;      /* a block or a part */
  const char *property;    /* of it */
  LapTimeWhat what;
  int         round;       /* of an in-round change, else 0 */
  int         step;        /* of a part's steps, else -1 */
  int         added;       /* what the property holds beside it */
  int         seconds;     /* now */
  int         least, most; /* that may be set */
} LapTimeSource;

/* FALSE where nothing written says so: a talk has no rest, repetitions fill their minute. */
gboolean  lap_time_source  (LapBlock            *block,
                            int                  round,
                            LapTimeWhat          what,
                            LapTimeSource       *source);
/* The rest between the rounds of @part, and after it. */
void      lap_time_source_round_rest (LapPart   *part,
                                      LapTimeSource *source);
void      lap_time_source_rest_after (LapPart   *part,
                                      LapTimeSource *source);
/* The cap of @part, which is at one's own pace. */
void      lap_time_source_cap (LapPart          *part,
                               LapTimeSource    *source);
/* Whether setting one is setting the other. */
gboolean  lap_time_same    (const LapTimeSource *a,
                            const LapTimeSource *b);
/* The next multiple of @by seconds, upwards or, negative, downwards, within the limits of hands and the source's
 * own; those of the source alone when @by is a second. */
int       lap_time_next    (const LapTimeSource *source,
                            int                  by);
/* @seconds as the nearest multiple of @grid within the limits. */
int       lap_time_snap    (const LapTimeSource *source,
                            double               seconds,
                            int                  grid);
LapEdits *lap_verb_set_time (const LapTimeSource *source,
                             int                  seconds,
                             LapCatalogue        *catalogue);

typedef struct {
  LapTimeSource source;
  int           seconds; /* that it becomes */
} LapTimeSet;

/* All of @sets, of LapTimeSet, as one deed called @label. What several of them share is set once, as the first says. */
LapEdits *lap_verb_set_times (const GArray       *sets,
                              const char         *label,
                              LapCatalogue       *catalogue);

G_END_DECLS
