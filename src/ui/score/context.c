/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/context.h"

#include "ui/score/folds.h"

/* Until somebody zooms: as much as fits, but no less than px a second at which a minute holds a short name. */
#define READABLE_ZOOM 1.2
/* px kept beside what is scrolled to. */
#define MARGIN 24

enum { CHANGED, WARNING, N_SIGNALS };
static guint signals[N_SIGNALS];

G_DEFINE_FINAL_TYPE (LapScoreContext, lap_score_context, G_TYPE_OBJECT)

static void
tell (LapScoreContext *self, LapScoreChange change)
{
  g_signal_emit (self, signals[CHANGED], 0, change);
}

void
lap_score_glide_at (LapScoreContext *self, double t)
{
  if (self->glide_to == NULL)
    return;
  lap_axis_blend (self->axis, self->glide_from, self->glide_to, t);
  if (t >= 1) {
    g_clear_pointer (&self->glide_from, lap_axis_look_free);
    g_clear_pointer (&self->glide_to, lap_axis_look_free);
  }
  tell (self, LAP_SCORE_AXIS);
}

void
lap_score_glide (LapScoreContext *self, LapAxisLook *from)
{
  lap_score_glide_at (self, 1);
  self->glide_from = from;
  self->glide_to = lap_axis_look (self->axis);
  tell (self, LAP_SCORE_GLIDE);
}

static void
lay_boxes (LapScoreContext *self)
{
  LapTimeline *timeline = lap_document_timeline (self->document);

  g_clear_pointer (&self->score, lap_score_free);
  self->score = lap_score_new (timeline);
  lap_folds_lay (self);
}

static gboolean
find_place (LapScoreContext *self, LapBlock *block, guint *part, guint *index)
{
  LapObject *owner = block != NULL ? LAP_OBJECT (block)->owner : NULL;

  *part = owner != NULL ? lap_list_find (lap_document_session (self->document)->parts, owner) : G_MAXUINT;
  *index = *part != G_MAXUINT ? lap_list_find (LAP_PART (owner)->blocks, block) : G_MAXUINT;
  return *index != G_MAXUINT;
}

static int
by_number (gconstpointer a, gconstpointer b)
{
  guint x = *(const guint *) a, y = *(const guint *) b;

  return (x > y) - (x < y);
}

/* Finds the boxes of what is selected, and lets go what has none any more. */
static void
mark (LapScoreContext *self)
{
  GHashTableIter iter;
  gpointer block, round;

  g_array_set_size (self->marked, 0);
  g_hash_table_iter_init (&iter, self->chosen);
  while (g_hash_table_iter_next (&iter, &block, &round)) {
    guint part, index, box;
    int rounds;

    if (!find_place (self, block, &part, &index)) {
      g_hash_table_iter_remove (&iter);
      continue;
    }
    rounds = lap_session_nth (lap_document_session (self->document), part)->rounds;
    round = GINT_TO_POINTER (CLAMP (GPOINTER_TO_INT (round), 1, rounds));
    g_hash_table_iter_replace (&iter, round);
    box = lap_score_find (self->score, part, index, GPOINTER_TO_INT (round));
    if (box != LAP_NO_BOX)
      g_array_append_val (self->marked, box);
  }
  g_array_sort (self->marked, by_number);
}

/* The focus is always on one of what is selected: the last one, when its own has gone. */
static void
hold_focus (LapScoreContext *self)
{
  LapBlock *block = self->block;

  if (block == NULL || !g_hash_table_contains (self->chosen, block)) {
    block = NULL;
    if (self->marked->len > 0)
      block = lap_score_block (self, g_array_index (self->marked, guint, self->marked->len - 1));
  }
  g_set_object (&self->block, block);
  self->round = lap_score_round_of (self, block);
  if (self->anchor != NULL && !g_hash_table_contains (self->chosen, self->anchor)) {
    g_set_object (&self->anchor, block);
    self->anchor_round = self->round;
  }
}

static void
drop_preview (LapScoreContext *self)
{
  g_clear_pointer (&self->preview, lap_score_free);
  g_clear_pointer (&self->preview_checkup, lap_checkup_unref);
}

static void
zoom_readable (LapScoreContext *self, double x)
{
  /* Who folds wants to see all of it: then what is open may be smaller. */
  double least = READABLE_ZOOM * self->text * (lap_folds_any (self) ? 0.6 : 1);

  lap_axis_zoom_at (self->axis, MAX (lap_axis_fit (self->axis), least), x);
}

/* As long as nobody zoomed the view fits what there is, however that grows. Not while something is drawn longer by
 * hand: there the pointer would lose what it holds. */
static void
fit_again (LapScoreContext *self)
{
  double was = self->axis->zoom;
  guint box;

  if (self->zoomed || lap_history_is_open (lap_document_history (self->document)))
    return;
  zoom_readable (self, self->axis->mirrored ? self->axis->view : 0);
  box = lap_score_selected (self);
  if (self->axis->zoom != was && box != LAP_NO_BOX)
    lap_axis_reveal (self->axis, self->score->boxes[box].start, self->score->boxes[box].end, MARGIN);
}

static void
document_cb (LapScoreContext *self)
{
  lap_score_glide_at (self, 1);
  drop_preview (self);
  g_clear_pointer (&self->landing, lap_landing_free); /* its boxes are others now */
  self->warning = G_MAXUINT;
  lay_boxes (self);
  mark (self);
  hold_focus (self);
  fit_again (self);
  tell (self, LAP_SCORE_PLAN | LAP_SCORE_AXIS | LAP_SCORE_SELECTION);
}

static void
lap_score_context_finalize (GObject *object)
{
  LapScoreContext *self = LAP_SCORE_CONTEXT (object);

  g_clear_pointer (&self->score, lap_score_free);
  drop_preview (self);
  lap_landing_free (self->landing);
  g_clear_pointer (&self->glide_from, lap_axis_look_free);
  g_clear_pointer (&self->glide_to, lap_axis_look_free);
  g_clear_pointer (&self->axis, lap_axis_free);
  g_clear_pointer (&self->pieces, g_array_unref);
  g_clear_pointer (&self->folded, g_hash_table_unref);
  g_clear_object (&self->block);
  g_clear_object (&self->anchor);
  g_clear_pointer (&self->chosen, g_hash_table_unref);
  g_clear_pointer (&self->marked, g_array_unref);
  g_clear_object (&self->document);
  G_OBJECT_CLASS (lap_score_context_parent_class)->finalize (object);
}

static void
lap_score_context_class_init (LapScoreContextClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = lap_score_context_finalize;
  signals[CHANGED] = g_signal_new ("changed", LAP_TYPE_SCORE_CONTEXT, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                   G_TYPE_NONE, 1, G_TYPE_UINT);
  signals[WARNING] = g_signal_new ("warning", LAP_TYPE_SCORE_CONTEXT, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                   G_TYPE_NONE, 1, G_TYPE_UINT);
}

static void
lap_score_context_init (LapScoreContext *self)
{
  self->pieces = g_array_new (FALSE, FALSE, sizeof (LapPiece));
  self->folded = g_hash_table_new_full (g_int64_hash, g_int64_equal, g_free, NULL);
  self->text = 1;
  self->warning = G_MAXUINT;
  self->axis = lap_axis_new ();
  self->chosen = g_hash_table_new_full (NULL, NULL, g_object_unref, NULL);
  self->marked = g_array_new (FALSE, FALSE, sizeof (guint));
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

static void
put_in (LapScoreContext *self, LapBlock *block, int round)
{
  g_hash_table_insert (self->chosen, g_object_ref (block), GINT_TO_POINTER (round));
}

/* All blocks from the anchor to @box; one that comes in several rounds counts in the first of them. */
static void
put_range (LapScoreContext *self, guint box)
{
  guint anchor = lap_score_locate (self, self->anchor, self->anchor_round), from, to;

  if (anchor == LAP_NO_BOX)
    anchor = box;
  from = MIN (anchor, box);
  to = MAX (anchor, box);
  g_hash_table_remove_all (self->chosen);
  for (guint i = from; i <= to; i++) {
    LapBlock *block = lap_score_block (self, i);

    if (block != NULL && (i == to || !g_hash_table_contains (self->chosen, block)))
      put_in (self, block, self->score->boxes[i].round);
  }
}

static void
set_anchor (LapScoreContext *self, LapBlock *block, int round)
{
  g_set_object (&self->anchor, block);
  self->anchor_round = round;
}

/* What is selected is another, and the focused block comes into view. */
static void
chosen_anew (LapScoreContext *self)
{
  LapScoreChange change = LAP_SCORE_SELECTION;
  guint box;

  lap_score_glide_at (self, 1);
  mark (self);
  hold_focus (self);
  box = lap_score_selected (self);
  if (box != LAP_NO_BOX &&
      lap_axis_reveal (self->axis, self->score->boxes[box].start, self->score->boxes[box].end, MARGIN))
    change |= LAP_SCORE_AXIS;
  tell (self, change);
}

void
lap_score_choose (LapScoreContext *self, guint box, LapChoose how)
{
  LapBlock *block = box != LAP_NO_BOX ? lap_score_block (self, box) : NULL;
  int round = block != NULL ? self->score->boxes[box].round : 0;

  if (how == LAP_CHOOSE_ONLY)
    g_hash_table_remove_all (self->chosen);
  if (block != NULL) {
    if (how == LAP_CHOOSE_TO)
      put_range (self, box);
    else if (how == LAP_CHOOSE_TOGGLE && lap_score_is_chosen (self, box))
      g_hash_table_remove (self->chosen, block);
    else
      put_in (self, block, round);
    if (how != LAP_CHOOSE_TO)
      set_anchor (self, block, round);
    g_set_object (&self->block, block);
  }
  chosen_anew (self);
}

void
lap_score_select (LapScoreContext *self, guint box)
{
  lap_score_choose (self, box, LAP_CHOOSE_ONLY);
}

void
lap_score_choose_blocks (LapScoreContext *self, GPtrArray *blocks, int round)
{
  g_hash_table_remove_all (self->chosen);
  for (guint i = 0; i < blocks->len; i++)
    put_in (self, g_ptr_array_index (blocks, i), round);
  if (blocks->len > 0) {
    set_anchor (self, g_ptr_array_index (blocks, 0), round);
    g_set_object (&self->block, g_ptr_array_index (blocks, blocks->len - 1));
  }
  chosen_anew (self);
}

void
lap_score_choose_part (LapScoreContext *self)
{
  LapSession *session = lap_document_session (self->document);
  LapObject *owner = self->block != NULL ? LAP_OBJECT (self->block)->owner : NULL;
  LapPart *part = owner != NULL ? LAP_PART (owner) : lap_session_n (session) > 0 ? lap_session_nth (session, 0) : NULL;
  int round = MAX (self->round, 1);

  for (guint i = 0; part != NULL && i < lap_part_n (part); i++)
    if (!g_hash_table_contains (self->chosen, lap_part_nth (part, i)))
      put_in (self, lap_part_nth (part, i), round);
  chosen_anew (self);
}

gboolean
lap_score_is_chosen (LapScoreContext *self, guint box)
{
  LapBlock *block = self->marked->len > 0 ? lap_score_block (self, box) : NULL;

  return block != NULL && lap_score_round_of (self, block) == self->score->boxes[box].round;
}

int
lap_score_round_of (LapScoreContext *self, LapBlock *block)
{
  return block != NULL ? GPOINTER_TO_INT (g_hash_table_lookup (self->chosen, block)) : 0;
}

GPtrArray *
lap_score_chosen (LapScoreContext *self)
{
  LapSession *session = lap_document_session (self->document);
  GPtrArray *blocks = g_ptr_array_new ();

  for (guint p = 0; p < lap_session_n (session) && blocks->len < g_hash_table_size (self->chosen); p++) {
    LapPart *part = lap_session_nth (session, p);

    for (guint i = 0; i < lap_part_n (part); i++)
      if (g_hash_table_contains (self->chosen, lap_part_nth (part, i)))
        g_ptr_array_add (blocks, lap_part_nth (part, i));
  }
  return blocks;
}

guint
lap_score_warning (LapScoreContext *self, guint index)
{
  LapCheckup *checkup = lap_document_checkup (self->document);
  const LapBox *box = &self->score->boxes[index];

  for (guint i = 0; i < lap_checkup_n (checkup); i++) {
    const LapWarning *warning = lap_checkup_nth (checkup, i);

    if (warning->part == box->part && warning->block == box->block && MAX (warning->round, 1) == box->round &&
        !warning->fine)
      return i + 1;
  }
  return 0;
}

void
lap_score_set_view (LapScoreContext *self, double width, gboolean mirrored, double text)
{
  if (self->axis->view == width && self->axis->mirrored == mirrored)
    return;
  lap_score_glide_at (self, 1);
  self->text = text;
  lap_axis_set_view (self->axis, width, mirrored);
  if (!self->zoomed)
    zoom_readable (self, mirrored ? width : 0);
  tell (self, LAP_SCORE_AXIS);
}

void
lap_score_zoom (LapScoreContext *self, double zoom, double x)
{
  lap_score_glide_at (self, 1);
  self->zoomed = TRUE;
  /* Further out than everything shows only emptiness. */
  lap_axis_zoom_at (self->axis, MAX (zoom, lap_axis_fit (self->axis)), x);
  tell (self, LAP_SCORE_AXIS);
}

void
lap_score_fit (LapScoreContext *self)
{
  lap_score_glide_at (self, 1);
  lap_score_zoom (self, lap_axis_fit (self->axis), 0);
}

void
lap_score_preview (LapScoreContext *self, LapEdits *edits)
{
  LapTimeline *now = lap_document_timeline (self->document);
  g_autoptr (LapTimeline) timeline = NULL;

  if (edits == NULL && self->preview == NULL)
    return;
  drop_preview (self);
  if (edits != NULL) {
    lap_edits_swap (edits);
    timeline = lap_timeline_new (now->session, now->catalogue, NULL);
    if (timeline != NULL) {
      self->preview = lap_score_new (timeline);
      self->preview_checkup = lap_checkup_new (timeline);
    }
    lap_edits_swap (edits);
  }
  tell (self, LAP_SCORE_PREVIEW);
}

void
lap_score_show_landing (LapScoreContext *self, LapLanding *landing)
{
  if (landing == NULL && self->landing == NULL)
    return;
  lap_landing_free (self->landing);
  self->landing = landing;
  tell (self, LAP_SCORE_PREVIEW);
}

void
lap_score_reveal (LapScoreContext *self, int start, int end)
{
  lap_score_glide_at (self, 1);
  if (!lap_axis_reveal (self->axis, start, end, MARGIN))
    return;
  tell (self, LAP_SCORE_AXIS);
}

void
lap_score_fit_readable (LapScoreContext *self, int start, int end)
{
  lap_score_glide_at (self, 1);
  self->zoomed = FALSE;
  zoom_readable (self, 0);
  lap_axis_reveal (self->axis, start, end, 0);
  tell (self, LAP_SCORE_AXIS);
}

void
lap_score_fit_span (LapScoreContext *self, int start, int end, int margin)
{
  lap_score_glide_at (self, 1);
  self->zoomed = TRUE;
  lap_axis_zoom_at (self->axis, MAX (self->axis->view - 2 * margin, 1) / MAX (end - start, 1), 0);
  lap_axis_reveal (self->axis, start, end, margin);
  tell (self, LAP_SCORE_AXIS);
}

void
lap_score_scroll_by (LapScoreContext *self, double px)
{
  lap_score_glide_at (self, 1);
  lap_axis_scroll (self->axis, self->axis->offset + px);
  tell (self, LAP_SCORE_AXIS);
}

void
lap_score_choose_warning (LapScoreContext *self, guint warning)
{
  self->warning = warning;
  g_signal_emit (self, signals[WARNING], 0, warning);
}
