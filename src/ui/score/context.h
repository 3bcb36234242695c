/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What all lanes and panes of a window look at together: the document, its boxes, the one axis, and what is
 * selected. "changed" says by LapScoreChange what is new; it is emitted when everything is whole.
 *
 * A selection names blocks, each in a round, and so outlives edits; a block leaves it when it has gone. One of them
 * is the focused one, from which keys start. Read the fields; change them by the functions.
 */
#pragma once

#include "ui/score/landing.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

typedef enum {
  LAP_SCORE_PLAN = 1 << 0,      /* other boxes, other warnings */
  LAP_SCORE_AXIS = 1 << 1,      /* zoomed, scrolled, folded or resized */
  LAP_SCORE_SELECTION = 1 << 2,
  LAP_SCORE_PREVIEW = 1 << 3,   /* what a remedy or a drop would do is shown, or no more */
  LAP_SCORE_GLIDE = 1 << 4,     /* the axis may glide to what it is now: lap_score_glide_at() */
} LapScoreChange;

typedef enum {
  LAP_CHOOSE_ONLY,
  LAP_CHOOSE_TOGGLE, /* adds it, or takes it out */
  LAP_CHOOSE_TO,     /* all from where the selection began */
} LapChoose;

#define LAP_TYPE_SCORE_CONTEXT (lap_score_context_get_type ())
#define LAP_SCORE_CONTEXT(o) (G_TYPE_CHECK_INSTANCE_CAST ((o), LAP_TYPE_SCORE_CONTEXT, LapScoreContext))
#define LAP_IS_SCORE_CONTEXT(o) (G_TYPE_CHECK_INSTANCE_TYPE ((o), LAP_TYPE_SCORE_CONTEXT))

typedef struct {
  GObject        parent_instance;
  LapDocument   *document;
  LapScore      *score;
  LapAxis       *axis;
  LapBlock      *block;      /* the focused one of those selected, or NULL */
  int            round;
  GHashTable    *chosen;     /* all that are selected: LapBlock -> its round */
  GArray        *marked;     /* their boxes, guint, in the order of time; it follows */
  LapBlock      *anchor;     /* where the selection began, or NULL */
  int            anchor_round;
  guint          warning;    /* of the checkup, the last one chosen by its mark, or G_MAXUINT */
  LapScore      *preview;    /* as a remedy would make it, or NULL */
  LapCheckup    *preview_checkup;
  LapLanding    *landing;    /* of what is carried over it, or NULL */
  GArray        *pieces;     /* of the axis, LapPiece: see folds.h */
  GHashTable    *folded;     /* those that are folded, also of parts that are gone for now */
  LapAxisLook   *glide_from, *glide_to; /* or both NULL; anything else that moves the axis ends the glide first */
  gboolean       zoomed;     /* by somebody: then a new width or length leaves the zoom */
  double         text;       /* how large text is, 1 as usual */
} LapScoreContext;

typedef struct {
  GObjectClass parent_class;
} LapScoreContextClass;

GType            lap_score_context_get_type (void);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapScoreContext, g_object_unref)

LapScoreContext *lap_score_context_new      (LapDocument     *document);

/* The box of the focused block, or LAP_NO_BOX. */
guint            lap_score_selected         (LapScoreContext *context);
/* The box of @block in @round, or LAP_NO_BOX where it isn't part of the session any more. */
guint            lap_score_locate           (LapScoreContext *context,
                                             LapBlock        *block,
                                             int              round);
/* Selects @box, LAP_NO_BOX for nothing, and scrolls to it. A box without a block selects nothing. */
void             lap_score_select           (LapScoreContext *context,
                                             guint            box);
/* The same, as one of several. */
void             lap_score_choose           (LapScoreContext *context,
                                             guint            box,
                                             LapChoose        how);
/* Selects all blocks of the focused one's part, the first part's without one. */
void             lap_score_choose_part      (LapScoreContext *context);
/* Selects @blocks, of LapBlock in the session, in the @round they have; the last one is focused. */
void             lap_score_choose_blocks    (LapScoreContext *context,
                                             GPtrArray       *blocks,
                                             int              round);
gboolean         lap_score_is_chosen        (LapScoreContext *context,
                                             guint            box);
/* What is selected, LapBlock in the order of parts and blocks. Transfer container. */
GPtrArray       *lap_score_chosen           (LapScoreContext *context);
/* The round in which @block is selected, 0 where it isn't. */
int              lap_score_round_of         (LapScoreContext *context,
                                             LapBlock        *block);
/* The block of @box, or NULL where it has none. */
LapBlock        *lap_score_block            (LapScoreContext *context,
                                             guint            box);

/* The number of the first warning, not kept fine, that is about the block of @box in its round; 0 without one. */
guint            lap_score_warning          (LapScoreContext *context,
                                             guint            box);

/* Somebody chose the mark of @warning: "warning" tells whoever lists them. */
void             lap_score_choose_warning   (LapScoreContext *context,
                                             guint            warning);

/* @text is how large text is, 1 as usual. */
void             lap_score_set_view         (LapScoreContext *context,
                                             double           width,
                                             gboolean         mirrored,
                                             double           text);
void             lap_score_zoom             (LapScoreContext *context,
                                             double           zoom,
                                             double           x);
void             lap_score_fit              (LapScoreContext *context);
/* Shows what @edits would do, beside what is; NULL: no more. They are tried on the session and taken back. */
void             lap_score_preview          (LapScoreContext *context,
                                             LapEdits        *edits);
/* Shows where what is carried would land (transfer full); NULL: no more. */
void             lap_score_show_landing     (LapScoreContext *context,
                                             LapLanding      *landing);
/* Scrolls as little as shows @start to @end. */
void             lap_score_reveal           (LapScoreContext *context,
                                             int              start,
                                             int              end);
/* As much as fits and can be read, with @start to @end in view. A new width fits anew. */
void             lap_score_fit_readable     (LapScoreContext *context,
                                             int              start,
                                             int              end);
/* Zooms so that @start to @end fill the view but for @margin px on either side. */
void             lap_score_fit_span         (LapScoreContext *context,
                                             int              start,
                                             int              end,
                                             int              margin);
/* From how the axis was, @from (transfer full), to how it is now; whoever shows it takes the steps. */
void             lap_score_glide            (LapScoreContext *context,
                                             LapAxisLook     *from);
/* A step of it: 0 at its beginning, 1 at its end. Nothing when it has ended already. */
void             lap_score_glide_at         (LapScoreContext *context,
                                             double           t);
void             lap_score_scroll_by        (LapScoreContext *context,
                                             double           px);

G_END_DECLS
