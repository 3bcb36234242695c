/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/pane-more.h"

#include "edit/verbs-round.h"
#include "edit/verbs.h"
#include "ui/chosen.h"
#include "ui/field-row.h"
#include "ui/field-text.h"
#include "ui/pane-rounds.h"
#include "ui/pane-words.h"
#include "ui/read-only.h"

#include <adwaita.h>
#include <glib/gi18n-lib.h>

/* Of the lists to choose from: the members, what stands before their words ("as usual", which files leave out), and what
 * a change is called. Their widgets have the names of the members. */
enum { PACE, SIDES, OPTION, N_CHOICES };
static const struct { const char *member, *usual; const LapWords *words; const char *label; } choices[N_CHOICES] = {
  [PACE] = { "pace", N_("As usual in the part"), &lap_paces, N_("Change the pace") },
  [SIDES] = { "sides", N_("As usual for it"), &lap_sides, N_("Change the sides") },
  [OPTION] = { "option", NULL, &lap_options, N_("Change the option") },
};

/* Of the lines to type in. */
enum { REPS, TEMPO, LOAD, NOTE, N_LINES };
static const struct { const char *member, *title, *label; } lines[N_LINES] = {
  [REPS] = { "reps", N_("Repetitions"), N_("Change the repetitions") },
  [TEMPO] = { "tempo", N_("Tempo, as 3-1-1"), N_("Change the tempo") },
  [LOAD] = { "load", N_("Load, as 8 kg"), N_("Change the load") },
  [NOTE] = { "note", N_("Note"), N_("Change the note") },
};

struct _LapPaneMore {
  GtkWidget        parent_instance;
  LapScoreContext *context;
  LapBlock        *shown;   /* an exercise, or NULL */
  GArray          *chosen;  /* it and the others that are selected, or NULL */
  int              round;   /* in which it is shown, at least 1 */
  gboolean         showing;
  char            *line_was[N_LINES];
  GtkWidget       *fields, *choices[N_CHOICES], *change_row, *change, *fixed, *partner, *lines[N_LINES];
  GtkWidget       *words, *rounds, *care;
};

G_DEFINE_FINAL_TYPE (LapPaneMore, lap_pane_more, GTK_TYPE_WIDGET)

static LapCatalogue *
catalogue (LapPaneMore *self)
{
  return lap_document_catalogue (self->context->document);
}

static LapExercise *
exercise (LapPaneMore *self)
{
  return self->shown->exercise != NULL ? lap_catalogue_find (catalogue (self), self->shown->exercise) : NULL;
}

static void
set_word (LapPaneMore *self, const char *member, int word, const char *label)
{
  g_auto (GValue) value = G_VALUE_INIT;

  g_value_init (&value, G_TYPE_INT);
  g_value_set_int (&value, word);
  lap_document_apply (self->context->document, lap_chosen_put (self->chosen, member, &value, label));
}

/* A word or flag in the round that is shown. */
static int
word_of (LapPaneMore *self, const char *member)
{
  g_auto (GValue) value = G_VALUE_INIT;

  lap_round_get (self->shown, self->round, member, &value);
  return g_value_get_int (&value);
}

/* Nothing where they differ, so that each can be chosen for all. */
static void
show_choice (LapPaneMore *self, guint k)
{
  guint word = word_of (self, choices[k].member) + (choices[k].usual != NULL);

  adw_combo_row_set_selected (ADW_COMBO_ROW (self->choices[k]),
                              lap_chosen_differ (self->chosen, choices[k].member) ? GTK_INVALID_LIST_POSITION : word);
}

static void
choice_cb (LapPaneMore *self, GParamSpec *pspec, GtkWidget *combo)
{
  guint k = 0, selected = adw_combo_row_get_selected (ADW_COMBO_ROW (combo));
  int word;

  while (self->choices[k] != combo)
    k++;
  word = (int) selected - (choices[k].usual != NULL);
  if (self->showing || self->shown == NULL || selected == GTK_INVALID_LIST_POSITION ||
      (word == word_of (self, choices[k].member) && !lap_chosen_differ (self->chosen, choices[k].member)))
    return;
  set_word (self, choices[k].member, word, _(choices[k].label));
  /* Where a round has nothing to say for itself it is as the block again. */
  self->showing = TRUE;
  show_choice (self, k);
  self->showing = FALSE;
}

/* Only work that is split between the sides has a time to change them. */
static gboolean
is_split (LapPaneMore *self, const LapChosen *one)
{
  LapExercise *e = one->block->exercise != NULL ? lap_catalogue_find (catalogue (self), one->block->exercise) : NULL;
  g_auto (GValue) sides = G_VALUE_INIT;

  lap_round_get (one->block, one->round, "sides", &sides);
  if (g_value_get_int (&sides) >= 0)
    return g_value_get_int (&sides) == LAP_SIDES_SPLIT;
  return e != NULL && e->sides == LAP_SIDES_SPLIT;
}

static void
change_cb (LapPaneMore *self)
{
  int seconds = gtk_spin_button_get_value_as_int (GTK_SPIN_BUTTON (self->change));
  LapEdits *edits;

  if (self->showing || self->shown == NULL || seconds == self->shown->switch_seconds)
    return;
  edits = lap_edits_new (_("Change the time to change sides"));
  for (guint i = 0; i < self->chosen->len; i++) {
    const LapChosen *one = &g_array_index (self->chosen, LapChosen, i);

    if (is_split (self, one))
      lap_edits_set_int (edits, one->block, "switch", seconds);
  }
  lap_document_apply (self->context->document, edits);
}

static void
fixed_cb (LapPaneMore *self)
{
  gboolean fixed = gtk_switch_get_active (GTK_SWITCH (self->fixed));
  g_auto (GValue) value = G_VALUE_INIT;

  if (self->showing || self->shown == NULL || fixed == self->shown->fixed)
    return;
  g_value_init (&value, G_TYPE_BOOLEAN);
  g_value_set_boolean (&value, fixed);
  lap_document_apply (self->context->document, lap_chosen_put (self->chosen, "fixed", &value,
                                                               fixed ? _("Keep in place") : _("Let it move")));
}

static void
partner_cb (LapPaneMore *self)
{
  gboolean with = gtk_switch_get_active (GTK_SWITCH (self->partner));

  if (!self->showing && self->shown != NULL && with != self->shown->with)
    set_word (self, "with", with, with ? _("Do it with a partner") : _("Do it alone"));
}

static char *
typed (GtkWidget *entry)
{
  return g_strstrip (g_strdup (gtk_editable_get_text (GTK_EDITABLE (entry))));
}

static const LapField *
line_field (const LapBlock *block, guint k)
{
  return lap_record_field (lap_object_record (block), lines[k].member);
}

/* What is wrong with @text, or NULL. */
static const char *
line_trouble (const LapBlock *block, guint k, const char *text, GValue *value)
{
  if (!lap_field_parse (line_field (block, k), text, value))
    return lap_field_hint (line_field (block, k));
  if (k == TEMPO && *text != '\0' && lap_tempo_seconds (text) == 0)
    return _("Seconds down, held and up, as 3-1-1");
  return NULL;
}

static void
commit_line (LapPaneMore *self, const GArray *chosen, guint k, const char *text)
{
  g_auto (GValue) value = G_VALUE_INIT;
  const char *trouble = line_trouble (g_array_index (chosen, LapChosen, 0).block, k, text, &value);

  if (trouble != NULL) {
    lap_document_tell (self->context->document, trouble);
    gtk_editable_set_text (GTK_EDITABLE (self->lines[k]), self->line_was[k]);
    return;
  }
  if (G_VALUE_HOLDS_STRING (&value) && *text == '\0')
    g_value_set_string (&value, NULL);
  lap_document_apply (self->context->document,
                      lap_chosen_put (chosen, lines[k].member, &value, _(lines[k].label)));
}

/* Applying one of them shows the block anew, or another one, with what was there before in the others: all are read
 * first, and go to what they were typed for. */
void
lap_pane_more_commit (LapPaneMore *self)
{
  char *texts[N_LINES] = { NULL };
  g_autoptr (GArray) chosen = NULL;
  LapEdits *words;

  if (self->showing || self->shown == NULL || !lap_document_is_editable (self->context->document))
    return;
  for (guint k = 0; k < N_LINES; k++) {
    g_autofree char *is = typed (self->lines[k]);

    if (g_strcmp0 (is, self->line_was[k]) != 0)
      texts[k] = g_steal_pointer (&is);
  }
  chosen = g_array_ref (self->chosen);
  words = lap_pane_words_edits (LAP_PANE_WORDS (self->words));
  if (words != NULL)
    lap_document_apply (self->context->document, words);
  for (guint k = 0; k < N_LINES; k++) {
    if (texts[k] != NULL)
      commit_line (self, chosen, k, texts[k]);
    g_free (texts[k]);
  }
}

static void
show_sides (LapPaneMore *self)
{
  gtk_widget_set_visible (self->change_row, is_split (self, &g_array_index (self->chosen, LapChosen, 0)));
  gtk_spin_button_set_value (GTK_SPIN_BUTTON (self->change), self->shown->switch_seconds);
}

/* Below the row of @control: that @member isn't the same in all that are selected. */
static void
say_different (LapPaneMore *self, GtkWidget *control, const char *member)
{
  GtkWidget *row = gtk_widget_get_ancestor (control, ADW_TYPE_ACTION_ROW);

  adw_action_row_set_subtitle (ADW_ACTION_ROW (row), lap_chosen_differ (self->chosen, member) ? _("Different") : "");
}

static void
show_care (LapPaneMore *self, const LapExercise *e)
{
  g_autoptr (GString) text = g_string_new (NULL);

  for (LapCareWord word = 0; e != NULL && word < LAP_N_CARE; word++) {
    const LapCare *care = lap_exercise_care (e, word);

    if (care == NULL || care->load == 0 || care->say == NULL)
      continue;
    /* Translators: whom to spare, and how: "knees: go only as low as feels easy". */
    g_string_append_printf (text, _("Kind to %1$s: %2$s"), lap_words_label (&lap_care_words, word),
                            g_dgettext (GETTEXT_PACKAGE, care->say));
    g_string_append_c (text, '\n');
  }
  if (text->len > 0)
    g_string_truncate (text, text->len - 1);
  gtk_label_set_text (GTK_LABEL (self->care), text->str);
  gtk_widget_set_visible (self->care, text->len > 0);
}

/* "Note", "Note in round 2", "Note (different)". */
static char *
title_in (LapPaneMore *self, const char *title, const char *member)
{
  if (lap_chosen_differ (self->chosen, member))
    /* Translators: the name of a field that several selected things have different values of. */
    return g_strdup_printf (_("%s (different)"), title);
  if (!lap_round_is_own (self->shown, self->round) || lap_record_field (&lap_change_record, member) == NULL)
    return g_strdup (title);
  /* Translators: the name of a field, and the round that its value holds in. */
  return g_strdup_printf (_("%1$s in round %2$d"), title, self->round);
}

static void
show_line (LapPaneMore *self, guint k)
{
  g_autofree char *title = title_in (self, _(lines[k].title), lines[k].member);
  g_auto (GValue) value = G_VALUE_INIT;

  lap_round_get (self->shown, self->round, lines[k].member, &value);
  g_free (self->line_was[k]);
  self->line_was[k] = lap_chosen_differ (self->chosen, lines[k].member) ? g_strdup ("")
                                                                        : lap_field_text (line_field (self->shown, k), &value);
  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (self->lines[k]), title);
  gtk_widget_set_tooltip_text (self->lines[k], title);
  gtk_editable_set_text (GTK_EDITABLE (self->lines[k]), self->line_was[k]);
}

/* How it is done. In a round that differs most of it is that round's, which is said. */
static void
show_how (LapPaneMore *self)
{
  gboolean own = lap_round_is_own (self->shown, self->round);
  g_autofree char *here = own ? g_strdup_printf (_("Only in round %d"), self->round) : NULL;

  for (guint k = 0; k < N_CHOICES; k++) {
    show_choice (self, k);
    if (own)
      adw_action_row_set_subtitle (ADW_ACTION_ROW (self->choices[k]), here);
    else
      say_different (self, self->choices[k], choices[k].member);
  }
  for (guint k = 0; k < N_LINES; k++)
    show_line (self, k);
  show_sides (self);
  gtk_switch_set_active (GTK_SWITCH (self->fixed), self->shown->fixed);
  gtk_switch_set_active (GTK_SWITCH (self->partner), self->shown->with != 0);
  say_different (self, self->fixed, "fixed");
  say_different (self, self->partner, "with");
}

void
lap_pane_more_show (LapPaneMore *self, LapScoreContext *context)
{
  LapBlock *block = context->block != NULL && context->block->kind == LAP_BLOCK_EXERCISE ? context->block : NULL;

  self->showing = TRUE;
  g_set_object (&self->context, context);
  g_set_object (&self->shown, block);
  g_clear_pointer (&self->chosen, g_array_unref);
  self->round = MAX (context->round, 1);
  gtk_widget_set_visible (GTK_WIDGET (self), block != NULL);
  if (block != NULL) {
    self->chosen = lap_chosen_exercises (context);
    show_how (self);
    lap_pane_words_show (LAP_PANE_WORDS (self->words), context);
    if (!lap_pane_rounds_show (LAP_PANE_ROUNDS (self->rounds), context))
      gtk_widget_child_focus (GTK_WIDGET (self), GTK_DIR_TAB_FORWARD);
    show_care (self, exercise (self));
    lap_read_only_show (self->fields, context->document, TRUE);
  }
  self->showing = FALSE;
}

static void
lap_pane_more_dispose (GObject *object)
{
  LapPaneMore *self = LAP_PANE_MORE (object);
  GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (self));

  self->showing = TRUE;
  g_clear_object (&self->shown);
  g_clear_pointer (&self->chosen, g_array_unref);
  g_clear_pointer (&child, gtk_widget_unparent);
  g_clear_object (&self->context);
  for (guint k = 0; k < N_LINES; k++)
    g_clear_pointer (&self->line_was[k], g_free);
  G_OBJECT_CLASS (lap_pane_more_parent_class)->dispose (object);
}

static void
lap_pane_more_class_init (LapPaneMoreClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_pane_more_dispose;
  g_type_ensure (LAP_TYPE_PANE_ROUNDS);
  g_type_ensure (LAP_TYPE_PANE_WORDS);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/pane-more.ui");
#define BIND(name) gtk_widget_class_bind_template_child (widget_class, LapPaneMore, name)
  BIND (fields);
  BIND (change_row);
  BIND (change);
  BIND (fixed);
  BIND (partner);
  BIND (words);
  for (guint k = 0; k < N_CHOICES; k++)
    gtk_widget_class_bind_template_child_full (widget_class, choices[k].member, FALSE,
                                               G_STRUCT_OFFSET (LapPaneMore, choices) + k * sizeof (GtkWidget *));
  for (guint k = 0; k < N_LINES; k++)
    gtk_widget_class_bind_template_child_full (widget_class, lines[k].member, FALSE,
                                               G_STRUCT_OFFSET (LapPaneMore, lines) + k * sizeof (GtkWidget *));
  BIND (rounds);
  BIND (care);
#undef BIND
  gtk_widget_class_bind_template_callback (widget_class, choice_cb);
  gtk_widget_class_bind_template_callback (widget_class, change_cb);
  gtk_widget_class_bind_template_callback (widget_class, fixed_cb);
  gtk_widget_class_bind_template_callback (widget_class, partner_cb);
  gtk_widget_class_bind_template_callback (widget_class, lap_pane_more_commit);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
}

static void
fill (GtkWidget *combo, const char *first, const LapWords *words)
{
  g_autoptr (GtkStringList) list = gtk_string_list_new (NULL);

  if (first != NULL)
    gtk_string_list_append (list, first);
  for (guint i = 0; i < words->n; i++)
    gtk_string_list_append (list, lap_words_label (words, i));
  adw_combo_row_set_model (ADW_COMBO_ROW (combo), G_LIST_MODEL (list));
  lap_field_choice_tip (combo);
}

static void
lap_pane_more_init (LapPaneMore *self)
{
  self->showing = TRUE;
  gtk_widget_init_template (GTK_WIDGET (self));
  for (guint k = 0; k < N_CHOICES; k++)
    fill (self->choices[k], choices[k].usual != NULL ? _(choices[k].usual) : NULL, choices[k].words);
  /* Before a block is shown, too: a screen reader meets no field without a name. */
  for (guint k = 0; k < N_LINES; k++)
    adw_preferences_row_set_title (ADW_PREFERENCES_ROW (self->lines[k]), _(lines[k].title));
  self->showing = FALSE;
}
