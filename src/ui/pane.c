/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A field that changes hands its value to one verb; the document tells of the change and the pane shows what holds
 * then, which is the old value where the new one was refused. `showing` keeps the pane from hearing itself.
 */
#include "ui/pane.h"

#include "edit/verbs-blocks.h"
#include "edit/verbs.h"
#include "edit/verbs-time.h"
#include "ui/balance.h"
#include "ui/chooser.h"
#include "ui/figures.h"
#include "ui/pane-more.h"
#include "ui/player.h"
#include "ui/read-only.h"
#include "ui/score/words.h"

#include <adwaita.h>
#include <glib/gi18n-lib.h>


struct _LapPane {
  GtkWidget        parent_instance;
  LapScoreContext *context;
  LapBlock        *shown;
  int              round;   /* in which it is shown */
  gboolean         showing;
  GtkWidget       *stack, *name, *where, *exercise_row, *choose, *popover, *chooser, *work_row, *work, *rest_row, *rest;
  GtkWidget       *player, *what, *seconds_row, *seconds, *talk_box, *talk, *fields, *more, *balance_box, *balance;
};

G_DEFINE_FINAL_TYPE (LapPane, lap_pane, GTK_TYPE_WIDGET)

static void
apply (LapPane *self, LapEdits *edits)
{
  lap_document_apply (self->context->document, edits);
}

/* What says the seconds of @what of the block in the round that is shown; FALSE where nothing written does. */
static gboolean
source_of (LapPane *self, LapTimeWhat what, LapTimeSource *source)
{
  return lap_time_source (self->shown, MAX (self->context->round, 1), what, source);
}

static gboolean
is_like_shown (LapPane *self, const LapBlock *block)
{
  return (block->kind == LAP_BLOCK_EXERCISE) == (self->shown->kind == LAP_BLOCK_EXERCISE);
}

/* What says the seconds of @what of @block, which is selected, in its round. FALSE where nothing does, or it is of
 * another kind than what is shown: an exercise, or a talk or pause. */
static gboolean
source_like (LapPane *self, LapBlock *block, LapTimeWhat what, LapTimeSource *source)
{
  return is_like_shown (self, block) &&
         lap_time_source (block, MAX (lap_score_round_of (self->context, block), 1), what, source);
}

/* All of its kind that are selected become @seconds long, each in its round, as one step. */
static void
set_chosen (LapPane *self, LapTimeWhat what, int seconds)
{
  g_autoptr (GPtrArray) blocks = lap_score_chosen (self->context);
  g_autoptr (GArray) sets = g_array_new (FALSE, FALSE, sizeof (LapTimeSet));

  for (guint i = 0; i < blocks->len; i++) {
    LapTimeSet set;

    if (!source_like (self, blocks->pdata[i], what, &set.source))
      continue;
    set.seconds = CLAMP (seconds, set.source.least, set.source.most);
    g_array_append_val (sets, set);
  }
  apply (self, lap_verb_set_times (sets, self->shown->kind != LAP_BLOCK_EXERCISE ? _("Change the length")
                                         : what == LAP_TIME_WORK                 ? _("Change the work")
                                                                                 : _("Change the rest"),
                                   lap_document_catalogue (self->context->document)));
}

/* An adjustment tells late of a value that was set while it told of another: by then the source says that. */
static void
set_number (LapPane *self, GtkWidget *spin, LapTimeWhat what)
{
  int is = gtk_spin_button_get_value_as_int (GTK_SPIN_BUTTON (spin));
  LapTimeSource source;

  if (self->showing || self->shown == NULL || !source_of (self, what, &source) || is == source.seconds)
    return;
  if (g_hash_table_size (self->context->chosen) > 1)
    set_chosen (self, what, is);
  else
    apply (self, lap_verb_set_time (&source, is, lap_document_catalogue (self->context->document)));
}

static void
work_cb (LapPane *self)
{
  if (self->shown != NULL && self->shown->kind == LAP_BLOCK_EXERCISE)
    set_number (self, self->work, LAP_TIME_WORK);
}

static void
rest_cb (LapPane *self)
{
  if (self->shown != NULL && self->shown->kind == LAP_BLOCK_EXERCISE)
    set_number (self, self->rest, LAP_TIME_REST);
}

static void
seconds_cb (LapPane *self)
{
  if (self->shown != NULL && self->shown->kind != LAP_BLOCK_EXERCISE)
    set_number (self, self->seconds, LAP_TIME_WORK);
}

/* The exercise in the round that is shown. */
static const char *
exercise_of (LapPane *self)
{
  const LapChange *change = lap_changes_find (self->shown->in_round, self->context->round);

  return change != NULL && LAP_CHANGE_HAS (change, LAP_CHANGE_EXERCISE) ? change->exercise : self->shown->exercise;
}

static void
choose_cb (LapPane *self)
{
  lap_chooser_set_catalogue (LAP_CHOOSER (self->chooser), lap_document_catalogue (self->context->document));
}

static void
chosen_cb (LapPane *self, const char *id)
{
  g_autofree char *copy = g_strdup (id);

  gtk_popover_popdown (GTK_POPOVER (self->popover));
  if (self->shown != NULL && g_strcmp0 (exercise_of (self), copy) != 0)
    apply (self, lap_verb_set_exercise_in (self->shown, self->context->round, copy,
                                           lap_document_catalogue (self->context->document)));
}

static char *
typed_talk (LapPane *self)
{
  GtkTextBuffer *buffer = gtk_text_view_get_buffer (GTK_TEXT_VIEW (self->talk));
  GtkTextIter start, end;

  gtk_text_buffer_get_bounds (buffer, &start, &end);
  return gtk_text_buffer_get_text (buffer, &start, &end, FALSE);
}

static void
set_text (LapPane *self, const char *property, const char *was, const char *is, const char *label)
{
  LapEdits *edits;

  if (g_strcmp0 (was != NULL ? was : "", is) == 0)
    return;
  edits = lap_edits_new (label);
  lap_edits_set_text (edits, self->shown, property, is);
  apply (self, edits);
}

void
lap_pane_commit (LapPane *self)
{
  g_autofree char *talk = NULL;

  if (self->showing || self->shown == NULL)
    return;
  if (self->shown->kind == LAP_BLOCK_TALK) {
    talk = typed_talk (self);
    set_text (self, "talk", self->shown->talk, talk, _("Change the words"));
  } else if (self->shown->kind == LAP_BLOCK_PAUSE)
    set_text (self, "pause", self->shown->pause, gtk_editable_get_text (GTK_EDITABLE (self->what)),
              _("Change the pause"));
  else
    lap_pane_more_commit (LAP_PANE_MORE (self->more));
}

static void
show_text (GtkTextView *view, const char *text)
{
  GtkTextBuffer *buffer = gtk_text_view_get_buffer (view);

  gtk_text_buffer_set_text (buffer, text != NULL ? text : "", -1);
}

/* Whether the seconds of @what aren't the same in all that are selected. */
static gboolean
times_differ (LapPane *self, LapTimeWhat what, int seconds)
{
  g_autoptr (GPtrArray) blocks = lap_score_chosen (self->context);
  gboolean differ = FALSE;

  for (guint i = 0; i < blocks->len && !differ; i++) {
    LapTimeSource source;

    differ = source_like (self, blocks->pdata[i], what, &source) && source.seconds != seconds;
  }
  return differ;
}

/* Numbers that follow from others are read only. */
static void
show_number (LapPane *self, GtkWidget *spin, LapTimeWhat what)
{
  GtkWidget *row = gtk_widget_get_ancestor (spin, ADW_TYPE_ACTION_ROW);
  LapTimeSource source;
  gboolean known = source_of (self, what, &source);

  adw_action_row_set_subtitle (ADW_ACTION_ROW (row),
                               known && times_differ (self, what, source.seconds) ? _("Different") : "");
  lap_read_only_show (spin, self->context->document, known);
  if (!known)
    return;
  gtk_spin_button_set_range (GTK_SPIN_BUTTON (spin), source.least, source.most);
  gtk_spin_button_set_value (GTK_SPIN_BUTTON (spin), source.seconds);
}

/* "Squat", as it is in the round that is shown. */
static char *
exercise_title (LapPane *self)
{
  const char *id = exercise_of (self);
  LapExercise *e = id != NULL ? lap_catalogue_find (lap_document_catalogue (self->context->document), id) : NULL;

  if (id == NULL)
    return g_strdup (_("Not chosen yet"));
  return g_strdup (e != NULL ? lap_exercise_name (e) : id);
}

/* Several are selected, and the pane changes them all at once. */
static const char *
several_format (LapPane *self)
{
  guint more = g_hash_table_size (self->context->chosen) - 1;

  if (self->shown->kind != LAP_BLOCK_EXERCISE)
    return ngettext ("And %u more. The length you set goes to all talks and pauses.",
                     "And %u more. The length you set goes to all talks and pauses.", more);
  return ngettext ("And %u more. What you change here changes in all, except the exercise and its words.",
                   "And %u more. What you change here changes in all, except the exercise and its words.", more);
}

static void
show_heading (LapPane *self, guint box)
{
  const LapScore *score = self->context->score;
  g_autofree char *name = lap_box_name (score, box), *where = lap_box_where (score, box);
  g_autofree char *start = lap_clock_text (score->boxes[box].start), *text = NULL;

  /* Translators: "Block 5 of 10, round 1, starts at 8:00". */
  text = g_strdup_printf (_("%1$s, starts at %2$s"), where, start);
  text[0] = g_ascii_toupper (text[0]);
  if (g_hash_table_size (self->context->chosen) > 1) {
    g_free (text);
    text = g_strdup_printf (several_format (self), g_hash_table_size (self->context->chosen) - 1);
  }
  gtk_label_set_text (GTK_LABEL (self->name), name);
  gtk_label_set_text (GTK_LABEL (self->where), text);
  gtk_widget_set_visible (self->where, TRUE);
}

/* A block without a box has its place in a part that is gone through at one's own pace. */
static void
show_bare_heading (LapPane *self)
{
  g_autofree char *title = lap_block_title (self->shown, lap_document_catalogue (self->context->document));

  gtk_label_set_text (GTK_LABEL (self->name), title);
  gtk_widget_set_visible (self->where, FALSE);
}

/* The figure of what is shown in the selected round. */
static void
show_figure (LapPane *self, guint index)
{
  const LapScore *score = self->context->score;
  const LapBox *box = index != LAP_NO_BOX ? &score->boxes[index] : NULL;
  const LapTask *task = box != NULL && box->task != LAP_NO_TASK ? &score->timeline->tasks[box->task] : NULL;
  LapExercise *exercise = task != NULL ? task->shown : NULL;

  gtk_widget_set_visible (self->player, exercise != NULL && exercise->figure != NULL);
  lap_player_show (LAP_PLAYER (self->player), score->timeline->catalogue, exercise,
                   exercise != NULL ? lap_figure_rep_seconds (task->block, exercise) : 0);
}

/* What isn't chosen yet, or isn't known, asks for it. */
static void
show_choose (LapPane *self)
{
  const char *id = exercise_of (self);
  gboolean known = id != NULL && lap_catalogue_find (lap_document_catalogue (self->context->document), id) != NULL;

  gtk_menu_button_set_label (GTK_MENU_BUTTON (self->choose), known ? _("Change") : _("Choose…"));
  if (known)
    gtk_widget_remove_css_class (self->choose, "suggested-action");
  else
    gtk_widget_add_css_class (self->choose, "suggested-action");
}

static void
show_fields (LapPane *self, LapBlock *block)
{
  gboolean exercise = block->kind == LAP_BLOCK_EXERCISE;
  g_autofree char *title = exercise ? exercise_title (self) : NULL;

  gtk_widget_set_visible (self->exercise_row, exercise);
  gtk_widget_set_visible (self->work_row, exercise);
  gtk_widget_set_visible (self->rest_row, exercise);
  gtk_widget_set_visible (self->seconds_row, !exercise);
  gtk_widget_set_visible (self->what, block->kind == LAP_BLOCK_PAUSE);
  gtk_widget_set_visible (self->talk_box, block->kind == LAP_BLOCK_TALK);
  if (exercise) {
    adw_action_row_set_subtitle (ADW_ACTION_ROW (self->exercise_row), title);
    show_choose (self);
    show_number (self, self->work, LAP_TIME_WORK);
    show_number (self, self->rest, LAP_TIME_REST);
  } else
    show_number (self, self->seconds, LAP_TIME_WORK);
  gtk_editable_set_text (GTK_EDITABLE (self->what), block->pause != NULL ? block->pause : "");
  show_text (GTK_TEXT_VIEW (self->talk), block->talk);
}

static void
show_balance (LapPane *self)
{
  LapBalanceChart *chart = LAP_BALANCE_CHART (self->balance);

  lap_balance_chart_show (chart, lap_document_timeline (self->context->document));
  gtk_widget_set_visible (self->balance_box, *lap_balance_chart_words (chart) != '\0');
}

static void
show_block (LapPane *self)
{
  guint box = lap_score_selected (self->context);

  self->showing = TRUE;
  g_set_object (&self->shown, self->context->block);
  self->round = self->context->round;
  gtk_stack_set_visible_child_name (GTK_STACK (self->stack), self->shown != NULL ? "block" : "nothing");
  if (self->shown != NULL) {
    if (box != LAP_NO_BOX)
      show_heading (self, box);
    else
      show_bare_heading (self);
    show_figure (self, box);
    show_fields (self, self->shown);
    lap_pane_more_show (LAP_PANE_MORE (self->more), self->context);
    lap_read_only_show (self->fields, self->context->document, TRUE);
    lap_read_only_show (self->talk_box, self->context->document, TRUE);
  } else
    show_balance (self);
  self->showing = FALSE;
}

static void
context_cb (LapPane *self, guint change)
{
  /* What is half typed in one block isn't lost by going to another, or to another round. */
  if (change & LAP_SCORE_SELECTION && !(change & LAP_SCORE_PLAN) &&
      (self->shown != self->context->block || self->round != self->context->round))
    lap_pane_commit (self);
  if (change & (LAP_SCORE_PLAN | LAP_SCORE_SELECTION))
    show_block (self);
}

static void
lap_pane_dispose (GObject *object)
{
  LapPane *self = LAP_PANE (object);
  GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (self));

  self->showing = TRUE; /* leaving the focus must not edit any more */
  g_clear_pointer (&child, gtk_widget_unparent);
  g_clear_object (&self->shown);
  g_clear_object (&self->context);
  G_OBJECT_CLASS (lap_pane_parent_class)->dispose (object);
}

static void
lap_pane_class_init (LapPaneClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_pane_dispose;
  g_type_ensure (LAP_TYPE_BALANCE_CHART);
  g_type_ensure (LAP_TYPE_CHOOSER);
  g_type_ensure (LAP_TYPE_PANE_MORE);
  g_type_ensure (LAP_TYPE_PLAYER);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/pane.ui");
#define BIND(name) gtk_widget_class_bind_template_child (widget_class, LapPane, name)
  BIND (stack);
  BIND (name);
  BIND (where);
  BIND (player);
  BIND (fields);
  BIND (exercise_row);
  BIND (choose);
  BIND (popover);
  BIND (chooser);
  BIND (work_row);
  BIND (work);
  BIND (rest_row);
  BIND (rest);
  BIND (what);
  BIND (seconds_row);
  BIND (seconds);
  BIND (more);
  BIND (talk_box);
  BIND (talk);
  BIND (balance_box);
  BIND (balance);
#undef BIND
  gtk_widget_class_bind_template_callback (widget_class, choose_cb);
  gtk_widget_class_bind_template_callback (widget_class, chosen_cb);
  gtk_widget_class_bind_template_callback (widget_class, work_cb);
  gtk_widget_class_bind_template_callback (widget_class, rest_cb);
  gtk_widget_class_bind_template_callback (widget_class, seconds_cb);
  gtk_widget_class_bind_template_callback (widget_class, lap_pane_commit);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (widget_class, "pane");
}

static void
lap_pane_init (LapPane *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

void
lap_pane_set_context (LapPane *self, LapScoreContext *context)
{
  g_return_if_fail (self->context == NULL);
  self->context = g_object_ref (context);
  g_signal_connect_object (context, "changed", G_CALLBACK (context_cb), self, G_CONNECT_SWAPPED);
  show_block (self);
}

GtkWidget *
lap_pane_choose (LapPane *self)
{
  if (!gtk_widget_get_mapped (self->choose) || !gtk_widget_is_sensitive (self->choose))
    return NULL;
  gtk_menu_button_popup (GTK_MENU_BUTTON (self->choose));
  return self->popover;
}
