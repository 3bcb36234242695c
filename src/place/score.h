/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The score: what of a timeline gets a box on the time axis. Boxes are in seconds and made once a timeline; where
 * they lie in pixels follows from the axis when somebody asks, so scrolling and zooming cost only what is seen.
 * Drawing, hover, click, snapping and printing ask here and nowhere else.
 *
 * Always true: boxes touch, in the order of time, from 0 to the length; a block's go in one round is one box, its
 * body the work with sets and sides, its tail the rest after it.
 */
#pragma once

#include "place/axis.h"
#include "timeline/timeline.h"

G_BEGIN_DECLS

typedef enum {
  LAP_BOX_EXERCISE, LAP_BOX_TALK, LAP_BOX_PAUSE,
  LAP_BOX_OWN_PACE, /* a block's share of a part at one's own pace; of one without blocks the whole, no block */
  LAP_BOX_GAP,      /* a rest between rounds, or after a part: no block, all tail */
} LapBoxKind;

typedef struct {
  int     start, body, end; /* seconds: the body is start to body, the tail body to end */
  int     work;             /* seconds of work, switches and set rests left out; at one's own pace: once through */
  guint32 task;             /* of the timeline, LAP_NO_TASK without a block */
  guint16 part, block, round; /* as in LapInterval */
  guint8  kind;             /* LapBoxKind */
  guint8  changed;          /* this round differs from the first by an in-round change */
} LapBox;

/* One round of a part, for its bracket. */
typedef struct {
  int     start, end;
  guint16 part, round;
} LapRoundBox;

typedef struct {
  LapTimeline *timeline;
  guint        n, n_rounds;
  LapBox      *boxes;
  LapRoundBox *rounds; /* of parts with more than one */
} LapScore;

#define LAP_NO_BOX G_MAXUINT
/* Below this many px a box is no longer a thing of its own: it is drawn with its neighbours. */
#define LAP_MERGE_BELOW 6

LapScore *lap_score_new     (LapTimeline    *timeline);
void      lap_score_free    (LapScore       *score);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapScore, lap_score_free)

/* Has a block that can be selected. */
gboolean  lap_box_is_block  (const LapBox   *box);

/* The box of a block in a round, or LAP_NO_BOX. */
guint     lap_score_find    (const LapScore *score,
                             guint           part,
                             guint           block,
                             guint           round);
/* The box at @second; the last one from the end on; LAP_NO_BOX without any. */
guint     lap_score_at      (const LapScore *score,
                             double          second);
/* The next box with a block, @by = 1 forward or -1 back from @box (LAP_NO_BOX: from outside), or LAP_NO_BOX. */
guint     lap_score_step    (const LapScore *score,
                             guint           box,
                             int             by);

/* Where a box lies in the view: whole px, so that neighbours share an edge and nothing is blurred. The body starts
 * at the side where time comes from. */
typedef struct {
  int x, width; /* left edge; body and tail together */
  int body;     /* px of the body: at the left, or at the right of a mirrored axis */
} LapPlaced;

LapPlaced lap_score_place   (const LapScore *score,
                             const LapAxis  *axis,
                             guint           box);
/* The boxes that touch the view: from *@first to before *@end. */
void      lap_score_visible (const LapScore *score,
                             const LapAxis  *axis,
                             guint          *first,
                             guint          *end);

/* The turns of the timeline that touch the view, with one more on either side for lines that run between turns. */
void      lap_score_turns   (const LapScore *score,
                             const LapAxis  *axis,
                             guint          *first,
                             guint          *end);

typedef enum { LAP_STREAK_WORK, LAP_STREAK_REST, LAP_STREAK_TALK, LAP_STREAK_PAUSE, LAP_N_STREAKS } LapStreakKind;

/* A stretch of the view drawn in one colour for all the boxes too small to be seen alone. */
typedef struct {
  int    x, width;
  guint8 kind;  /* what most of it is */
  guint8 later; /* of a round after the first */
} LapStreak;

/* The streaks of the visible boxes that are below @below px: at most one a pixel and neighbour kind. */
GArray   *lap_score_streaks (const LapScore *score,
                             const LapAxis  *axis,
                             int             below);

typedef enum { LAP_EDGE_NONE, LAP_EDGE_BODY, LAP_EDGE_TAIL } LapEdge;

typedef struct {
  double  second;
  guint   box;  /* LAP_NO_BOX beside the session */
  LapEdge edge; /* whether x is within reach of the end of the body or of the tail */
} LapHit;

/* What is at @x of the view; an edge is within reach at @reach px, a body's before a tail's. */
LapHit    lap_score_hit     (const LapScore *score,
                             const LapAxis  *axis,
                             double          x,
                             double          reach);

G_END_DECLS
