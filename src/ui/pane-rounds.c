/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/pane-rounds.h"

#include "edit/verbs-blocks.h"
#include "place/stations.h"
#include "ui/read-only.h"

#include <glib/gi18n-lib.h>

struct _LapPaneRounds {
  GtkBox           parent_instance;
  LapScoreContext *context;
  LapBlock        *shown; /* an exercise */
};

G_DEFINE_FINAL_TYPE (LapPaneRounds, lap_pane_rounds, GTK_TYPE_BOX)

static LapCatalogue *
catalogue (LapPaneRounds *self)
{
  return lap_document_catalogue (self->context->document);
}

static void
back_cb (LapPaneRounds *self, GtkWidget *button)
{
  int round = GPOINTER_TO_INT (g_object_get_data (G_OBJECT (button), "round"));

  lap_document_apply (self->context->document, lap_verb_same_again (self->shown, round, catalogue (self)));
}

/* "easier, pace hard, 10, 8 kg": how it is done otherwise. */
static void
tell_way (GPtrArray *told, const LapChange *change)
{
  if (LAP_CHANGE_HAS (change, LAP_CHANGE_OPTION))
    g_ptr_array_add (told, g_strdup_printf (_("option: %s"), lap_words_label (&lap_options, change->option)));
  if (LAP_CHANGE_HAS (change, LAP_CHANGE_PACE) && change->pace >= 0)
    g_ptr_array_add (told, g_strdup_printf (_("pace: %s"), lap_words_label (&lap_paces, change->pace)));
  if (LAP_CHANGE_HAS (change, LAP_CHANGE_SIDES) && change->sides >= 0)
    g_ptr_array_add (told, g_strdup_printf (_("sides: %s"), lap_words_label (&lap_sides, change->sides)));
  if (LAP_CHANGE_HAS (change, LAP_CHANGE_REPS) && change->reps != 0)
    g_ptr_array_add (told, lap_reps_text (change->reps));
  if (LAP_CHANGE_HAS (change, LAP_CHANGE_LOAD) && change->load != NULL)
    g_ptr_array_add (told, g_strdup (change->load));
}

/* "Squat jump, work 30 s, rest 10 s": what round @change does differently. */
static char *
change_told (LapPaneRounds *self, const LapChange *change)
{
  g_autoptr (GPtrArray) told = g_ptr_array_new_with_free_func (g_free);
  LapExercise *e = change->exercise != NULL ? lap_catalogue_find (catalogue (self), change->exercise) : NULL;

  if (LAP_CHANGE_HAS (change, LAP_CHANGE_EXERCISE))
    g_ptr_array_add (told, g_strdup (e != NULL ? lap_exercise_name (e) : change->exercise));
  if (LAP_CHANGE_HAS (change, LAP_CHANGE_WORK))
    g_ptr_array_add (told, g_strdup_printf (_("work %d s"), change->work));
  if (LAP_CHANGE_HAS (change, LAP_CHANGE_REST))
    g_ptr_array_add (told, g_strdup_printf (_("rest %d s"), change->rest));
  tell_way (told, change);
  if (LAP_CHANGE_HAS (change, LAP_CHANGE_SAY))
    g_ptr_array_add (told, g_strdup (_("other words")));
  if (LAP_CHANGE_HAS (change, LAP_CHANGE_NOTE))
    g_ptr_array_add (told, g_strdup (_("another note")));
  if (told->len == 0)
    g_ptr_array_add (told, g_strdup (_("done in another way")));
  g_ptr_array_add (told, NULL);
  return lap_join ((const char * const *) told->pdata);
}

static void
only_here_cb (LapPaneRounds *self)
{
  lap_document_apply (self->context->document, lap_verb_only_here (self->shown, self->context->round, catalogue (self)));
}

/* In a later round that is as round 1: a way to let it differ. */
static void
add_only_here (LapPaneRounds *self)
{
  g_autofree char *text = g_strdup_printf (_("Only in round %d"), self->context->round);
  GtkWidget *button;

  if (self->shown->kind != LAP_BLOCK_EXERCISE || self->context->round < 2 ||
      lap_changes_find (self->shown->in_round, self->context->round) != NULL)
    return;
  button = gtk_button_new_with_label (text);
  gtk_widget_set_halign (button, GTK_ALIGN_START);
  gtk_widget_set_tooltip_text (button, _("From then on a change here stays in this round"));
  lap_read_only_show (button, self->context->document, TRUE);
  g_signal_connect_object (button, "clicked", G_CALLBACK (only_here_cb), self, G_CONNECT_SWAPPED);
  gtk_box_append (GTK_BOX (self), button);
}

/* Which of the buttons has the focus, or -1. */
static int
focused_round (LapPaneRounds *self)
{
  GtkWidget *focus = gtk_widget_get_focus_child (GTK_WIDGET (self));
  int n = 0;

  if (focus == NULL)
    return -1;
  while ((focus = gtk_widget_get_prev_sibling (focus)) != NULL)
    n += GTK_IS_BUTTON (focus);
  return n;
}

/* Whoever pressed button @n goes on at what stands in its place, or before it. FALSE where there is none. */
static gboolean
focus_round (LapPaneRounds *self, int n)
{
  GtkWidget *found = NULL;

  for (GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (self)); child != NULL && n >= 0;
       child = gtk_widget_get_next_sibling (child))
    if (GTK_IS_BUTTON (child)) {
      found = child;
      n--;
    }
  return found != NULL && gtk_widget_grab_focus (found);
}

/* What the round of @change does otherwise, and the way back. */
static void
add_round (LapPaneRounds *self, const LapChange *change)
{
  g_autofree char *told = change_told (self, change);
  g_autofree char *text = g_strdup_printf (_("Round %1$d: %2$s"), change->round, told);
  GtkWidget *label = gtk_label_new (text), *button = gtk_button_new_with_label (_("Same as round 1"));

  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_widget_set_halign (button, GTK_ALIGN_START);
  lap_read_only_show (button, self->context->document, TRUE);
  g_object_set_data (G_OBJECT (button), "round", GINT_TO_POINTER (change->round));
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, text, -1);
  g_signal_connect_object (button, "clicked", G_CALLBACK (back_cb), self, G_CONNECT_SWAPPED);
  gtk_box_append (GTK_BOX (self), label);
  gtk_box_append (GTK_BOX (self), button);
}

gboolean
lap_pane_rounds_show (LapPaneRounds *self, LapScoreContext *context)
{
  const LapChanges *changes = context->block->in_round;
  GtkWidget *child;
  int focus = focused_round (self);

  g_set_object (&self->context, context);
  g_set_object (&self->shown, context->block);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_box_remove (GTK_BOX (self), child);
  for (guint i = 0; changes != NULL && i < changes->items->len; i++)
    add_round (self, g_ptr_array_index (changes->items, i));
  add_only_here (self);
  gtk_widget_set_visible (GTK_WIDGET (self), gtk_widget_get_first_child (GTK_WIDGET (self)) != NULL);
  return focus < 0 || focus_round (self, focus);
}

static void
lap_pane_rounds_dispose (GObject *object)
{
  LapPaneRounds *self = LAP_PANE_ROUNDS (object);

  g_clear_object (&self->shown);
  g_clear_object (&self->context);
  G_OBJECT_CLASS (lap_pane_rounds_parent_class)->dispose (object);
}

static void
lap_pane_rounds_class_init (LapPaneRoundsClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = lap_pane_rounds_dispose;
}

static void
lap_pane_rounds_init (LapPaneRounds *self)
{
  gtk_orientable_set_orientation (GTK_ORIENTABLE (self), GTK_ORIENTATION_VERTICAL);
  gtk_box_set_spacing (GTK_BOX (self), 6);
}
