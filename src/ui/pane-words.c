/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/pane-words.h"

#include "edit/verbs-say.h"
#include "ui/read-only.h"
#include "ui/words-row.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#define BETWEEN " / " /* cues in one line */

struct _LapPaneWords {
  GtkBox           parent_instance;
  LapScoreContext *context;
  LapBlock        *shown; /* an exercise, or NULL */
  int              round; /* in which it is shown, at least 1 */
  char            *was[LAP_N_SAY]; /* the words as they were shown */
  GtkWidget       *group, *rows[LAP_N_SAY];
  GtkWidget       *before, *during;
};

enum { APPLY, N_SIGNALS };
static guint signals[N_SIGNALS];

G_DEFINE_FINAL_TYPE (LapPaneWords, lap_pane_words, GTK_TYPE_BOX)

static LapCatalogue *
catalogue (LapPaneWords *self)
{
  return lap_document_catalogue (self->context->document);
}

/* Cues stand in one line here, elsewhere one a line. */
static char *
one_a_line (const char *cues)
{
  g_auto (GStrv) each = g_strsplit (cues, BETWEEN, -1);

  return g_strjoinv ("\n", each);
}

/* A line break that was pasted is a space. */
static char *
typed_words (GtkWidget *row)
{
  return g_strstrip (g_strdelimit (lap_words_row_get_text (LAP_WORDS_ROW (row)), "\n", ' '));
}

LapEdits *
lap_pane_words_edits (LapPaneWords *self)
{
  char *texts[LAP_N_SAY] = { NULL };
  LapEdits *edits = NULL;
  gboolean are_new = FALSE;

  for (guint i = 0; i < LAP_N_SAY; i++) {
    g_autofree char *is = typed_words (self->rows[i]);

    if (g_strcmp0 (is, self->was[i]) != 0)
      texts[i] = i == LAP_SAY_CUES ? one_a_line (is) : g_steal_pointer (&is);
    are_new |= texts[i] != NULL;
  }
  if (are_new)
    edits = lap_verb_set_words (self->shown, self->round, (const char * const *) texts, catalogue (self));
  for (guint i = 0; i < LAP_N_SAY; i++)
    g_free (texts[i]);
  return edits;
}

/* The turn of the selected round, or NULL. */
static const LapTalkTurn *
turn_of (LapPaneWords *self)
{
  const LapTalk *talk = lap_checkup_talk (lap_document_checkup (self->context->document));
  guint selected_box = lap_score_selected (self->context);
  const LapBox *box = selected_box != LAP_NO_BOX ? &self->context->score->boxes[selected_box] : NULL;

  for (guint i = 0; box != NULL && i < talk->n; i++) {
    const LapTurn *turn = &talk->timeline->turns[i];

    if (turn->part == box->part && turn->block == box->block && turn->round == box->round)
      return &talk->turns[i];
  }
  return NULL;
}

/* @more words are typed than the plan knows of. */
static void
show_need (GtkWidget *label, const char *format, const LapTalkRoom *room, int more)
{
  double need = room->need + (room->pace > 0 ? more / room->pace : 0);
  g_autofree char *text = g_strdup_printf (format, (int) ceil (need), room->seconds);
  g_autofree char *over = need > room->seconds ? g_strdup_printf (_("%s: more than there is time for"), text) : NULL;

  gtk_label_set_text (GTK_LABEL (label), over != NULL ? over : text);
  gtk_widget_set_visible (label, room->seconds > 0);
}

static int
more_words (LapPaneWords *self, guint member)
{
  g_autofree char *is = typed_words (self->rows[member]);

  return lap_count_words (is) - lap_count_words (self->was[member]);
}

static void
count_cb (LapPaneWords *self)
{
  const LapTalkTurn *turn = self->shown != NULL ? turn_of (self) : NULL;
  int before, during;

  gtk_widget_set_visible (self->before, FALSE);
  gtk_widget_set_visible (self->during, FALSE);
  if (turn == NULL)
    return;
  before = turn->first ? more_words (self, LAP_SAY_SETUP) : 0;
  during = more_words (self, LAP_SAY_CUES);
  for (guint i = LAP_SAY_FAULT; turn->first && i <= LAP_SAY_HARDER; i++)
    during += more_words (self, i);
  /* Translators: seconds that words need, and seconds there are. */
  show_need (self->before, _("In the rest before: %1$d of %2$d s"), &turn->gap, before);
  show_need (self->during, _("While working: %1$d of %2$d s"), &turn->work,
             turn->gap.seconds > 0 ? during : during + before);
}

/* What is asked for in the round that is shown; NULL where the block has no box. */
static const LapTask *
task_of (LapPaneWords *self)
{
  guint box = lap_score_selected (self->context);
  guint32 task = box != LAP_NO_BOX ? self->context->score->boxes[box].task : LAP_NO_TASK;

  return task != LAP_NO_TASK ? &self->context->score->timeline->tasks[task] : NULL;
}

/* In a round that differs the words are that round's, and the heading says so. */
static void
show_words (LapPaneWords *self)
{
  const LapTask *task = task_of (self);
  const LapSay *say = task != NULL ? task->say : self->shown->say;
  const char *id = self->shown->exercise;
  LapExercise *e = task != NULL && task->shown != NULL ? task->shown
                   : id != NULL ? lap_catalogue_find (catalogue (self), id) : NULL;
  gboolean here = lap_changes_find (self->shown->in_round, self->round) != NULL;
  g_autofree char *title = here ? g_strdup_printf (_("Words to say in round %d"), self->round)
                                : g_strdup (_("Words to say"));

  adw_preferences_group_set_title (ADW_PREFERENCES_GROUP (self->group), title);
  for (guint i = 0; i < LAP_N_SAY; i++) {
    g_free (self->was[i]);
    self->was[i] = lap_say_words (say, i, BETWEEN, FALSE);
    if (self->was[i] == NULL && e != NULL && (say == NULL || !((say->present >> i) & 1)))
      self->was[i] = lap_say_words (e->say, i, BETWEEN, TRUE);
    if (self->was[i] == NULL)
      self->was[i] = g_strdup ("");
    lap_words_row_set_text (LAP_WORDS_ROW (self->rows[i]), self->was[i]);
  }
}

void
lap_pane_words_show (LapPaneWords *self, LapScoreContext *context)
{
  g_set_object (&self->context, context);
  g_set_object (&self->shown, context->block);
  self->round = MAX (context->round, 1);
  show_words (self);
  count_cb (self);
  lap_read_only_show (self->group, context->document, TRUE);
}

static void
apply_cb (LapPaneWords *self)
{
  g_signal_emit (self, signals[APPLY], 0);
}

static void
lap_pane_words_dispose (GObject *object)
{
  LapPaneWords *self = LAP_PANE_WORDS (object);

  g_clear_object (&self->shown);
  g_clear_object (&self->context);
  for (guint i = 0; i < LAP_N_SAY; i++)
    g_clear_pointer (&self->was[i], g_free);
  G_OBJECT_CLASS (lap_pane_words_parent_class)->dispose (object);
}

static void
lap_pane_words_class_init (LapPaneWordsClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_pane_words_dispose;
  signals[APPLY] = g_signal_new ("apply", LAP_TYPE_PANE_WORDS, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
  g_type_ensure (LAP_TYPE_WORDS_ROW);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/pane-words.ui");
  gtk_widget_class_bind_template_child (widget_class, LapPaneWords, group);
  for (guint i = 0; i < LAP_N_SAY; i++)
    gtk_widget_class_bind_template_child_full (widget_class, lap_say_record.fields[i].name, FALSE,
                                               G_STRUCT_OFFSET (LapPaneWords, rows) + i * sizeof (GtkWidget *));
  gtk_widget_class_bind_template_child (widget_class, LapPaneWords, before);
  gtk_widget_class_bind_template_child (widget_class, LapPaneWords, during);
  gtk_widget_class_bind_template_callback (widget_class, apply_cb);
  gtk_widget_class_bind_template_callback (widget_class, count_cb);
}

static void
lap_pane_words_init (LapPaneWords *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}
