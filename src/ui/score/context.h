/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What all lanes and panes of a window look at together: the document, its boxes, the one axis, and what is
 * selected. "changed" says by LapScoreChange what is new; it is emitted when everything is whole.
 *
 * A selection names a block and a round and so outlives edits; it is dropped when its block has gone. Read the
 * fields; change them by the functions.
 */
#pragma once

#include "place/score.h"
#include "ui/document.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

typedef enum {
  LAP_SCORE_PLAN = 1 << 0,      /* other boxes, other warnings */
  LAP_SCORE_AXIS = 1 << 1,      /* zoomed, scrolled, folded or resized */
  LAP_SCORE_SELECTION = 1 << 2,
} LapScoreChange;

#define LAP_TYPE_SCORE_CONTEXT (lap_score_context_get_type ())
#define LAP_SCORE_CONTEXT(o) (G_TYPE_CHECK_INSTANCE_CAST ((o), LAP_TYPE_SCORE_CONTEXT, LapScoreContext))
#define LAP_IS_SCORE_CONTEXT(o) (G_TYPE_CHECK_INSTANCE_TYPE ((o), LAP_TYPE_SCORE_CONTEXT))

typedef struct {
  GObject        parent_instance;
  LapDocument   *document;
  LapScore      *score;
  LapAxis       *axis;
  GtkAdjustment *adjustment; /* of the offset, for a scroll bar */
  LapBlock      *block;      /* selected, or NULL */
  int            round;
  gboolean       zoomed;     /* by somebody: then a new width leaves the zoom */
  gboolean       updating;   /* the adjustment follows the axis now, not the other way */
} LapScoreContext;

typedef struct {
  GObjectClass parent_class;
} LapScoreContextClass;

GType            lap_score_context_get_type (void);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapScoreContext, g_object_unref)

LapScoreContext *lap_score_context_new      (LapDocument     *document);

/* The selected box, or LAP_NO_BOX. */
guint            lap_score_selected         (LapScoreContext *context);
/* The box of @block in @round, or LAP_NO_BOX where it isn't part of the session any more. */
guint            lap_score_locate           (LapScoreContext *context,
                                             LapBlock        *block,
                                             int              round);
/* Selects @box, LAP_NO_BOX for nothing, and scrolls to it. A box without a block selects nothing. */
void             lap_score_select           (LapScoreContext *context,
                                             guint            box);
/* The block of @box, or NULL where it has none. */
LapBlock        *lap_score_block            (LapScoreContext *context,
                                             guint            box);

/* @text is how large text is, 1 as usual. */
void             lap_score_set_view         (LapScoreContext *context,
                                             double           width,
                                             gboolean         mirrored,
                                             double           text);
void             lap_score_zoom             (LapScoreContext *context,
                                             double           zoom,
                                             double           x);
void             lap_score_fit              (LapScoreContext *context);
void             lap_score_scroll_by        (LapScoreContext *context,
                                             double           px);

G_END_DECLS
