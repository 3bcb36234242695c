/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "edit/history.h"

typedef struct {
  LapEdits *edits;
  guint64   before; /* revision that undoing it returns to */
  guint64   after;
} Step;

struct _LapHistory {
  GObject    parent_instance;
  GPtrArray *done;   /* Step */
  GPtrArray *undone; /* Step, the next to redo last */
  gboolean   is_open;
  LapEdits  *held;   /* applied in the open group, or NULL */
  guint64    revision, saved, last;
};

enum { CHANGED, N_SIGNALS };
static guint signals[N_SIGNALS];

G_DEFINE_FINAL_TYPE (LapHistory, lap_history, G_TYPE_OBJECT)

static void
step_free (gpointer data)
{
  Step *step = data;

  lap_edits_free (step->edits);
  g_free (step);
}

static void
lap_history_finalize (GObject *object)
{
  LapHistory *self = LAP_HISTORY (object);

  g_ptr_array_unref (self->done);
  g_ptr_array_unref (self->undone);
  g_clear_pointer (&self->held, lap_edits_free);
  G_OBJECT_CLASS (lap_history_parent_class)->finalize (object);
}

static void
lap_history_class_init (LapHistoryClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = lap_history_finalize;
  signals[CHANGED] = g_signal_new ("changed", LAP_TYPE_HISTORY, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                   G_TYPE_NONE, 0);
}

static void
lap_history_init (LapHistory *self)
{
  self->done = g_ptr_array_new_with_free_func (step_free);
  self->undone = g_ptr_array_new_with_free_func (step_free);
}

LapHistory *
lap_history_new (void)
{
  return g_object_new (LAP_TYPE_HISTORY, NULL);
}

static void
tell (LapHistory *self)
{
  g_signal_emit (self, signals[CHANGED], 0);
}

static void
push (LapHistory *self, LapEdits *edits)
{
  Step *step = g_new (Step, 1);

  step->edits = edits;
  step->before = self->revision;
  step->after = ++self->last;
  self->revision = step->after;
  g_ptr_array_set_size (self->undone, 0);
  g_ptr_array_add (self->done, step);
}

static void
take_back_held (LapHistory *self)
{
  if (self->held == NULL)
    return;
  lap_edits_swap (self->held);
  g_clear_pointer (&self->held, lap_edits_free);
}

void
lap_history_apply (LapHistory *self, LapEdits *edits)
{
  if (self->is_open)
    take_back_held (self);
  if (lap_edits_n (edits) == 0) {
    lap_edits_free (edits);
    if (self->is_open)
      tell (self);
    return;
  }
  lap_edits_swap (edits);
  if (self->is_open)
    self->held = edits;
  else
    push (self, edits);
  tell (self);
}

void
lap_history_begin (LapHistory *self)
{
  g_return_if_fail (!self->is_open);
  self->is_open = TRUE;
}

void
lap_history_end (LapHistory *self)
{
  g_return_if_fail (self->is_open);
  self->is_open = FALSE;
  if (self->held != NULL)
    push (self, g_steal_pointer (&self->held));
  tell (self);
}

void
lap_history_cancel (LapHistory *self)
{
  g_return_if_fail (self->is_open);
  take_back_held (self);
  self->is_open = FALSE;
  tell (self);
}

gboolean
lap_history_is_open (LapHistory *self)
{
  return self->is_open;
}

static gboolean
move_step (LapHistory *self, GPtrArray *from, GPtrArray *to, gboolean back)
{
  Step *step;

  if (self->is_open || from->len == 0)
    return FALSE;
  step = g_ptr_array_steal_index (from, from->len - 1);
  lap_edits_swap (step->edits);
  self->revision = back ? step->before : step->after;
  g_ptr_array_add (to, step);
  tell (self);
  return TRUE;
}

gboolean
lap_history_undo (LapHistory *self)
{
  return move_step (self, self->done, self->undone, TRUE);
}

gboolean
lap_history_redo (LapHistory *self)
{
  return move_step (self, self->undone, self->done, FALSE);
}

static const char *
last_label (LapHistory *self, GPtrArray *steps)
{
  if (self->is_open || steps->len == 0)
    return NULL;
  return lap_edits_label (((Step *) g_ptr_array_index (steps, steps->len - 1))->edits);
}

const char *
lap_history_undo_label (LapHistory *self)
{
  return last_label (self, self->done);
}

const char *
lap_history_redo_label (LapHistory *self)
{
  return last_label (self, self->undone);
}

guint64
lap_history_revision (LapHistory *self)
{
  return self->revision;
}

void
lap_history_saved (LapHistory *self, guint64 revision)
{
  self->saved = revision;
  tell (self);
}

gboolean
lap_history_modified (LapHistory *self)
{
  return self->revision != self->saved || self->held != NULL;
}
