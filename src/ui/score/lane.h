/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A lane of the score: a clipped widget under the shared axis. Each kind of lane is one file with one LapLaneKind,
 * named in the table of lanes.c; the view makes, labels and stacks them. A lane never sets its own width: it draws
 * what the context says lies in the view.
 *
 * A subclass paints what scrolls with the content in paint(), whose pictures are kept while only the offset changes
 * (see tiles.h), and what keeps to the view in draw(). It overrides update() for what it must do when the context
 * changes; the base draws it anew.
 */
#pragma once

#include "place/marks.h"
#include "ui/letters.h"
#include "ui/score/context.h"

G_BEGIN_DECLS

#define LAP_TYPE_LANE (lap_lane_get_type ())
G_DECLARE_DERIVABLE_TYPE (LapLane, lap_lane, LAP, LANE, GtkWidget)

typedef struct _LapLaneKind LapLaneKind;

struct _LapLaneClass {
  GtkWidgetClass parent_class;
  /* Height in px where a line of the lane's text takes @line. */
  int  (*height) (LapLane *lane, int line);
  /* px that it makes use of beyond that in a high window; NULL: none. */
  int  (*more)   (LapLane *lane, int line);
  void (*update) (LapLane *lane, LapScoreChange change);
  /* Either may be NULL; both are below the children. @axis shows a part of the content, not always the view's. */
  void (*paint)  (LapLane *lane, cairo_t *cr, const LapAxis *axis, int height);
  void (*draw)   (LapLane *lane, GtkSnapshot *snapshot, int width, int height);
  /* Paints what a remedy would make of it, over everything; NULL for a lane that doesn't show it. */
  void (*preview) (LapLane *lane, cairo_t *cr, const LapScore *score, const LapCheckup *checkup, int height);
  /* Paints what one of the blocks that would land does in the lane; it begins at @x of the view. NULL: nothing. */
  void (*landing) (LapLane *lane, cairo_t *cr, const LapGhost *ghost, double x, int height);
  /* It draws what would land itself, and what that would bring above it. */
  gboolean lands;
  /* The part that keys are about, its place in the session in *@index, or NULL: that of the focused block. */
  LapPart *(*part) (LapLane *lane, guint *index);
  /* The kind whose marks of warnings it shows, or NULL, and where the middle of one stands; -1 for the middle. */
  const LapLaneKind *marks;
  int  (*mark_y) (LapLane *lane, const LapWarning *warning, int height);
};

struct _LapLaneKind {
  const char *id;
  const char *title; /* marked for translation */
  const char *hint;  /* how to read it, marked for translation, or NULL */
  GType     (*type) (void);
  GtkWidget *(*label) (LapLane *lane); /* its label, where that is more than title and hint; else NULL */
};

LapScoreContext   *lap_lane_context     (LapLane         *lane);
/* A layout of @text in the lane's type, @width px wide (-1: as it comes) and cut with an ellipsis. */
PangoLayout       *lap_lane_layout      (LapLane         *lane,
                                         const char      *text,
                                         int              width);
/* It looks otherwise now, and may be as high as it wasn't. */
void               lap_lane_refresh     (LapLane         *lane);
/* How many times its content was painted. */
guint              lap_lane_n_painted   (LapLane         *lane);

/* The marks of warnings that it shows; it has to show any. Transfer full. */
LapMarks          *lap_lane_marks       (LapLane         *lane);
/* Where the middle of the mark of @warning stands. */
int                lap_lane_mark_y      (LapLane         *lane,
                                         guint            warning);
/* Whether a mark is there. */
gboolean           lap_lane_is_on_mark  (LapLane         *lane,
                                         double           x,
                                         double           y);
/* As a click on @mark of @marks does: chooses its warning, or opens the list of those that it stands for. */
void               lap_lane_open_mark   (LapLane         *lane,
                                         const LapMarks  *marks,
                                         guint            mark);

guint              lap_lanes_n          (void);
const LapLaneKind *lap_lanes_nth        (guint            n);

extern const LapLaneKind lap_lane_ruler, lap_lane_parts, lap_lane_blocks, lap_lane_muscles, lap_lane_posture,
                         lap_lane_effort, lap_lane_talk;

G_END_DECLS
