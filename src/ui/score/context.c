/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/context.h"

/* Until somebody zooms: as much as fits, but no less than px a second at which a minute holds a short name. */
#define READABLE_ZOOM 1.2
/* px kept beside what is scrolled to. */
#define MARGIN 24

enum { CHANGED, N_SIGNALS };
static guint signals[N_SIGNALS];

G_DEFINE_FINAL_TYPE (LapScoreContext, lap_score_context, G_TYPE_OBJECT)

static void
tell (LapScoreContext *self, LapScoreChange change)
{
  g_signal_emit (self, signals[CHANGED], 0, change);
}

/* A scroll bar counts from the left, also where time comes from the right; this leads from one to the other. */
static double
mirrored_offset (LapScoreContext *self, double offset)
{
  const LapAxis *axis = self->axis;

  return axis->mirrored ? MAX (axis->width, axis->view) - axis->view - offset : offset;
}

static void
follow_axis (LapScoreContext *self)
{
  const LapAxis *axis = self->axis;
  double upper = MAX (axis->width, axis->view);

  self->updating = TRUE;
  gtk_adjustment_configure (self->adjustment, mirrored_offset (self, axis->offset), 0, upper, 40, axis->view * 0.9,
                            axis->view);
  self->updating = FALSE;
}

static void
adjustment_cb (LapScoreContext *self)
{
  if (self->updating)
    return;
  lap_axis_scroll (self->axis, mirrored_offset (self, gtk_adjustment_get_value (self->adjustment)));
  tell (self, LAP_SCORE_AXIS);
}

static void
lay_boxes (LapScoreContext *self)
{
  LapTimeline *timeline = lap_document_timeline (self->document);
  g_autofree int *ends = g_new0 (int, timeline->n_parts);
  guint n = 0;

  g_clear_pointer (&self->score, lap_score_free);
  self->score = lap_score_new (timeline);
  for (guint i = 0; i < timeline->n_parts; i++)
    if (timeline->parts[i].end > timeline->parts[i].start)
      ends[n++] = timeline->parts[i].end;
  lap_axis_set_pieces (self->axis, ends, n);
  follow_axis (self);
}

static gboolean
find_place (LapScoreContext *self, LapBlock *block, guint *part, guint *index)
{
  LapObject *owner = block != NULL ? LAP_OBJECT (block)->owner : NULL;

  *part = owner != NULL ? lap_list_find (lap_document_session (self->document)->parts, owner) : G_MAXUINT;
  *index = *part != G_MAXUINT ? lap_list_find (LAP_PART (owner)->blocks, block) : G_MAXUINT;
  return *index != G_MAXUINT;
}

static void
drop_lost_selection (LapScoreContext *self)
{
  guint part, index;

  if (!find_place (self, self->block, &part, &index))
    g_clear_object (&self->block);
  else
    self->round = CLAMP (self->round, 1, lap_session_nth (lap_document_session (self->document), part)->rounds);
}

static void
document_cb (LapScoreContext *self)
{
  lay_boxes (self);
  drop_lost_selection (self);
  tell (self, LAP_SCORE_PLAN | LAP_SCORE_AXIS | LAP_SCORE_SELECTION);
}

static void
lap_score_context_finalize (GObject *object)
{
  LapScoreContext *self = LAP_SCORE_CONTEXT (object);

  g_clear_pointer (&self->score, lap_score_free);
  g_clear_pointer (&self->axis, lap_axis_free);
  g_clear_object (&self->adjustment);
  g_clear_object (&self->block);
  g_clear_object (&self->document);
  G_OBJECT_CLASS (lap_score_context_parent_class)->finalize (object);
}

static void
lap_score_context_class_init (LapScoreContextClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = lap_score_context_finalize;
  signals[CHANGED] = g_signal_new ("changed", LAP_TYPE_SCORE_CONTEXT, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                   G_TYPE_NONE, 1, G_TYPE_UINT);
}

static void
lap_score_context_init (LapScoreContext *self)
{
  self->axis = lap_axis_new ();
  self->adjustment = g_object_ref_sink (gtk_adjustment_new (0, 0, 0, 0, 0, 0));
  g_signal_connect_swapped (self->adjustment, "value-changed", G_CALLBACK (adjustment_cb), self);
}

LapScoreContext *
lap_score_context_new (LapDocument *document)
{
  LapScoreContext *self = g_object_new (LAP_TYPE_SCORE_CONTEXT, NULL);

  self->document = g_object_ref (document);
  g_signal_connect_object (document, "changed", G_CALLBACK (document_cb), self, G_CONNECT_SWAPPED);
  lay_boxes (self);
  return self;
}

guint
lap_score_locate (LapScoreContext *self, LapBlock *block, int round)
{
  guint part, index;

  return find_place (self, block, &part, &index) ? lap_score_find (self->score, part, index, round) : LAP_NO_BOX;
}

guint
lap_score_selected (LapScoreContext *self)
{
  return lap_score_locate (self, self->block, self->round);
}

LapBlock *
lap_score_block (LapScoreContext *self, guint index)
{
  const LapBox *box = &self->score->boxes[index];

  if (!lap_box_is_block (box))
    return NULL;
  return lap_part_nth (lap_session_nth (lap_document_session (self->document), box->part), box->block);
}

void
lap_score_select (LapScoreContext *self, guint index)
{
  const LapBox *box = index != LAP_NO_BOX ? &self->score->boxes[index] : NULL;
  LapScoreChange change = LAP_SCORE_SELECTION;
  LapBlock *block;

  if (box != NULL && !lap_box_is_block (box))
    box = NULL;
  block = box != NULL ? lap_score_block (self, index) : NULL;
  g_set_object (&self->block, block);
  self->round = box != NULL ? box->round : 0;
  if (box != NULL && lap_axis_reveal (self->axis, box->start, box->end, MARGIN)) {
    follow_axis (self);
    change |= LAP_SCORE_AXIS;
  }
  tell (self, change);
}

void
lap_score_set_view (LapScoreContext *self, double width, gboolean mirrored, double text)
{
  if (self->axis->view == width && self->axis->mirrored == mirrored)
    return;
  lap_axis_set_view (self->axis, width, mirrored);
  if (!self->zoomed)
    lap_axis_zoom_at (self->axis, MAX (lap_axis_fit (self->axis), READABLE_ZOOM * text), mirrored ? width : 0);
  follow_axis (self);
  tell (self, LAP_SCORE_AXIS);
}

void
lap_score_zoom (LapScoreContext *self, double zoom, double x)
{
  self->zoomed = TRUE;
  /* Further out than everything shows only emptiness. */
  lap_axis_zoom_at (self->axis, MAX (zoom, lap_axis_fit (self->axis)), x);
  follow_axis (self);
  tell (self, LAP_SCORE_AXIS);
}

void
lap_score_fit (LapScoreContext *self)
{
  lap_score_zoom (self, lap_axis_fit (self->axis), 0);
}

void
lap_score_scroll_by (LapScoreContext *self, double px)
{
  lap_axis_scroll (self->axis, self->axis->offset + px);
  follow_axis (self);
  tell (self, LAP_SCORE_AXIS);
}
