/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/script-block.h"

#include "edit/verbs-say.h"
#include "edit/verbs.h"
#include "ui/meter.h"
#include "ui/warning-row.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#define TALK     LAP_SAY_SETUP /* the one field of a talk */
#define N_FIELDS (LAP_SAY_HARDER + 1)
#define MOST     10000 /* characters that a file holds in one text */

enum { BEFORE, DURING, N_ROOMS };

typedef struct {
  GtkWidget *line, *view;
  char      *was; /* as it was shown */
} Field;

typedef struct {
  GtkWidget *line, *meter, *words;
} Room;

struct _LapScriptBlock {
  GtkBox           parent_instance;
  LapScoreContext *context;
  LapBlock        *block;
  int              round;  /* in which its words are said; 1 stands for all that say the same */
  guint            index;
  gboolean         showing;
  GtkWidget       *name, *clock, *rounds, *warnings;
  Field            fields[N_FIELDS];
  Room             rooms[N_ROOMS];
};

G_DEFINE_FINAL_TYPE (LapScriptBlock, lap_script_block, GTK_TYPE_BOX)

static const struct {
  const char *title;
  int         room;
} kinds[N_FIELDS] = {
  [LAP_SAY_SETUP] = { N_("Set up"), BEFORE },
  [LAP_SAY_CUES] = { N_("Cues, one a line"), DURING },
  [LAP_SAY_FAULT] = { N_("Fault"), DURING },
  [LAP_SAY_EASIER] = { N_("Easier"), DURING },
  [LAP_SAY_HARDER] = { N_("Harder"), DURING },
};

static LapCatalogue *
catalogue (LapScriptBlock *self)
{
  return lap_document_catalogue (self->context->document);
}

static gboolean
is_talk (LapScriptBlock *self)
{
  return self->block->kind == LAP_BLOCK_TALK;
}

static char *
typed (const Field *field)
{
  GtkTextBuffer *buffer = gtk_text_view_get_buffer (GTK_TEXT_VIEW (field->view));
  GtkTextIter start, end;

  gtk_text_buffer_get_bounds (buffer, &start, &end);
  return gtk_text_buffer_get_text (buffer, &start, &end, FALSE);
}

/* Seconds */

static const LapTalk *
talk_of (LapScriptBlock *self)
{
  return lap_checkup_talk (lap_document_checkup (self->context->document));
}

static const LapTalkRoom *
room_of (LapScriptBlock *self, int room)
{
  const LapTalk *talk = talk_of (self);

  if (is_talk (self))
    return room == BEFORE && self->index < talk->n_own ? &talk->own[self->index].room : NULL;
  if (self->index >= talk->n)
    return NULL;
  return room == BEFORE ? &talk->turns[self->index].gap : &talk->turns[self->index].work;
}

/* Words that @member has more than the plan knows of. */
static int
more_words (LapScriptBlock *self, guint member)
{
  const Field *field = &self->fields[member];
  g_autofree char *is = typed (field);
  const LapWording *say = is_talk (self) ? NULL : &talk_of (self)->turns[self->index].say;
  const char *once[N_FIELDS] = { NULL };

  if (g_strcmp0 (is, field->was) == 0)
    return 0;
  if (say != NULL) {
    once[LAP_SAY_SETUP] = say->setup;
    once[LAP_SAY_FAULT] = say->fault;
    once[LAP_SAY_EASIER] = say->easier;
    once[LAP_SAY_HARDER] = say->harder;
  }
  /* What other blocks of the same exercise have said isn't said again, as long as it is the same. */
  if (say != NULL && member != LAP_SAY_CUES && once[member] == NULL)
    return lap_count_words (is);
  return lap_count_words (is) - lap_count_words (field->was);
}

static int
more_in_room (LapScriptBlock *self, int room)
{
  const LapTalkRoom *before = room_of (self, BEFORE);
  gboolean no_gap = before == NULL || before->seconds == 0;
  int more = 0;

  for (guint i = 0; i < N_FIELDS; i++)
    if (self->fields[i].view != NULL && (kinds[i].room == room || (room == DURING && no_gap)))
      more += more_words (self, i);
  return more;
}

static char *
room_words (LapScriptBlock *self, int room, int need, int seconds)
{
  const char *format = is_talk (self) ? _("%1$d of %2$d s")
                     : room == DURING ? _("%1$d of %2$d s while working")
                     : talk_of (self)->turns[self->index].lead > 0
                       ? _("%1$d of %2$d s before it, changing position and counting in included")
                       : _("%1$d of %2$d s before it");
  g_autofree char *text = g_strdup_printf (format, need, seconds), *over = NULL;

  if (need <= seconds)
    return g_steal_pointer (&text);
  over = g_strdup_printf (ngettext ("%d s over", "%d s over", need - seconds), need - seconds);
  /* Translators: "13 of 10 s while working: 3 s over". */
  return g_strdup_printf (_("%1$s: %2$s"), text, over);
}

static void
show_room (LapScriptBlock *self, int room)
{
  const LapTalkRoom *has = room_of (self, room);
  gboolean counts = has != NULL && has->seconds > 0 && has->pace > 0;
  Room *shown = &self->rooms[room];
  g_autofree char *text = NULL;
  int need;

  gtk_widget_set_visible (shown->line, counts);
  if (!counts)
    return;
  need = (int) ceil (has->need + more_in_room (self, room) / has->pace - 1e-9);
  text = room_words (self, room, MAX (need, 0), has->seconds);
  lap_meter_set (LAP_METER (shown->meter), MAX (need, 0), has->seconds, text);
  gtk_label_set_text (GTK_LABEL (shown->words), text);
  if (need > has->seconds)
    gtk_widget_add_css_class (shown->words, "script-over");
  else
    gtk_widget_remove_css_class (shown->words, "script-over");
}

static void
count_cb (LapScriptBlock *self)
{
  for (int room = 0; !self->showing && room < N_ROOMS; room++)
    show_room (self, room);
}

/* Words */

/* Cues stand one a line. */
static char *
words_of (const LapSay *say, guint member, gboolean translate)
{
  return lap_say_words (say, member, "\n", translate);
}

/* It has words of its own, or takes the exercise's away. */
static gboolean
is_own (const LapSay *say, guint member)
{
  g_autofree char *words = words_of (say, member, FALSE);

  return words != NULL || (say != NULL && (say->present >> member) & 1);
}

/* What is asked for at its turn; NULL without one. */
static const LapTask *
task_of (LapScriptBlock *self)
{
  const LapTimeline *t = lap_document_timeline (self->context->document);

  return !is_talk (self) && self->index < talk_of (self)->n ? &t->tasks[t->turns[self->index].task] : NULL;
}

static char *
shown_words (LapScriptBlock *self, guint member)
{
  const LapTask *task = task_of (self);
  const LapSay *say = task != NULL ? task->say : self->block->say;
  LapExercise *exercise = task != NULL ? task->shown : NULL;

  if (is_talk (self))
    return g_strdup (self->block->talk);
  if (exercise == NULL && self->block->exercise != NULL)
    exercise = lap_catalogue_find (catalogue (self), self->block->exercise);
  if (is_own (say, member))
    return words_of (say, member, FALSE);
  return exercise != NULL ? words_of (exercise->say, member, TRUE) : NULL;
}

static void
show_field (LapScriptBlock *self, guint member)
{
  Field *field = &self->fields[member];
  g_autofree char *text = shown_words (self, member), *is = typed (field);

  g_free (field->was);
  field->was = g_strdup (text != NULL ? text : "");
  if (!g_str_equal (is, field->was))
    gtk_text_buffer_set_text (gtk_text_view_get_buffer (GTK_TEXT_VIEW (field->view)), field->was, -1);
  gtk_text_view_set_editable (GTK_TEXT_VIEW (field->view), lap_document_is_editable (self->context->document));
}

static void
commit_field (LapScriptBlock *self, guint member)
{
  Field *field = &self->fields[member];
  g_autofree char *is = typed (field);
  const char *texts[LAP_N_SAY] = { NULL };
  LapEdits *edits;

  if (g_str_equal (is, field->was))
    return;
  if (g_utf8_strlen (is, -1) > MOST) {
    lap_document_tell (self->context->document, _("A text has at most 10,000 characters. Please shorten it."));
    return;
  }
  if (is_talk (self)) {
    edits = lap_edits_new (_("Change the words"));
    lap_edits_set_text (edits, self->block, "talk", is);
  } else {
    texts[member] = is;
    edits = lap_verb_set_words (self->block, self->round, texts, catalogue (self));
  }
  if (lap_edits_n (edits) > 0) {
    lap_document_apply (self->context->document, edits);
    return;
  }
  lap_edits_free (edits);
  show_field (self, member);
}

void
lap_script_block_commit (LapScriptBlock *self)
{
  for (guint i = 0; !self->showing && i < N_FIELDS; i++)
    if (self->fields[i].view != NULL)
      commit_field (self, i);
}

/* Whoever goes to a block here finds it selected in the plan, and the rehearsal begins with it. */
static void
enter_cb (LapScriptBlock *self)
{
  guint box = lap_score_locate (self->context, self->block, self->round);

  if (box != LAP_NO_BOX && (self->context->block != self->block || self->context->round != self->round))
    lap_score_select (self->context, box);
}

/* Rounds */

static void
other_cb (GtkWidget *widget, const char *name, GVariant *round)
{
  LapScriptBlock *self = LAP_SCRIPT_BLOCK (widget);

  lap_script_block_commit (self);
  lap_document_apply (self->context->document,
                      lap_verb_own_words (self->block, g_variant_get_int32 (round), catalogue (self)));
}

static void
same_cb (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapScriptBlock *self = LAP_SCRIPT_BLOCK (widget);

  lap_document_apply (self->context->document, lap_verb_same_words (self->block, self->round, catalogue (self)));
}

/* Rounds that say what round 1 says, and could say something else. */
static GMenu *
rounds_menu (LapScriptBlock *self)
{
  LapPart *part = LAP_PART (LAP_OBJECT (self->block)->owner);
  GMenu *menu = g_menu_new ();

  for (int round = 2; round <= part->rounds; round++) {
    g_autofree char *label = g_strdup_printf (_("Round %d"), round), *action = NULL;

    if (lap_has_own_words (self->block, round))
      continue;
    action = g_strdup_printf ("script.other-words(%d)", round);
    g_menu_append (menu, label, action);
  }
  return menu;
}

static void
show_rounds (LapScriptBlock *self)
{
  gboolean editable = lap_document_is_editable (self->context->document), mine = FALSE;
  LapPart *part = LAP_PART (LAP_OBJECT (self->block)->owner);
  g_autoptr (GMenu) menu = NULL;

  if (self->rounds == NULL)
    return;
  gtk_widget_set_sensitive (self->rounds, editable);
  if (self->round > 1) {
    gtk_widget_set_visible (self->rounds, lap_has_own_words (self->block, self->round));
    return;
  }
  mine = part != NULL && part->run != LAP_RUN_OWN_PACE && part->rounds > 1;
  menu = mine ? rounds_menu (self) : NULL;
  gtk_widget_set_visible (self->rounds, mine && g_menu_model_get_n_items (G_MENU_MODEL (menu)) > 0);
  gtk_menu_button_set_menu_model (GTK_MENU_BUTTON (self->rounds), G_MENU_MODEL (menu));
}

/* Warnings */

gboolean
lap_script_block_is_apart (const LapTask *first, const LapTask *task, int round)
{
  LapWording was = lap_task_wording (first), is = lap_task_wording (task);

  return lap_has_own_words (task->block, round) || !lap_wording_same (&was, &is);
}

/* A row of its own has what its round is warned of; the row of the block all others. */
static gboolean
is_said_in (LapScriptBlock *self, int round)
{
  const LapTimeline *t = lap_document_timeline (self->context->document);
  const LapTask *mine = task_of (self);

  if (mine == NULL || self->round == round)
    return TRUE;
  for (guint i = 0; i < t->n_turns && self->round == 1; i++)
    if (t->turns[i].round == round && t->tasks[t->turns[i].task].block == self->block)
      return !lap_script_block_is_apart (mine, &t->tasks[t->turns[i].task], round);
  return FALSE;
}

static void
show_warnings (LapScriptBlock *self)
{
  LapCheckup *checkup = lap_document_checkup (self->context->document);
  LapSession *session = lap_document_session (self->context->document);
  GtkWidget *row;
  guint n = 0;

  while ((row = gtk_widget_get_first_child (self->warnings)) != NULL)
    gtk_list_box_remove (GTK_LIST_BOX (self->warnings), row);
  for (guint i = 0; i < lap_checkup_n (checkup); i++) {
    const LapWarning *w = lap_checkup_nth (checkup, i);

    if (w->fine || !g_str_equal (w->check->id, "talk-over") || w->part < 0 || w->block < 0 ||
        lap_part_nth (lap_session_nth (session, w->part), w->block) != self->block || !is_said_in (self, w->round))
      continue;
    gtk_list_box_append (GTK_LIST_BOX (self->warnings), lap_warning_row_new (self->context->document, i));
    n++;
  }
  gtk_widget_set_visible (self->warnings, n > 0);
}

gboolean
lap_script_block_fill (LapScriptBlock *self)
{
  for (GtkWidget *row = gtk_widget_get_first_child (self->warnings); row != NULL; row = gtk_widget_get_next_sibling (row))
    if (lap_warning_row_fill (LAP_WARNING_ROW (row)))
      return TRUE;
  return FALSE;
}

static void
show_name (LapScriptBlock *self)
{
  const LapTask *task = task_of (self);
  g_autofree char *title = self->round > 1 && task != NULL ? g_strdup (lap_task_name (task))
                                                           : lap_block_title (self->block, catalogue (self));
  /* Translators: an exercise, and the one round in which these words are said of it. */
  g_autofree char *only = self->round > 1 ? g_strdup_printf (_("%1$s, only in round %2$d"), title, self->round) : NULL;

  gtk_label_set_text (GTK_LABEL (self->name), only != NULL ? only : title);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, only != NULL ? only : title, -1);
}

void
lap_script_block_show (LapScriptBlock *self, guint index)
{
  const LapTimeline *t = lap_document_timeline (self->context->document);
  g_autofree char *clock = NULL;

  self->showing = TRUE;
  self->index = index;
  if (index != G_MAXUINT)
    clock = lap_clock_text (is_talk (self) ? t->intervals[talk_of (self)->own[index].interval].start
                                           : t->turns[index].start);
  show_name (self);
  gtk_label_set_text (GTK_LABEL (self->clock), clock != NULL ? clock : "");
  for (guint i = 0; i < N_FIELDS; i++)
    if (self->fields[i].view != NULL)
      show_field (self, i);
  show_rounds (self);
  show_warnings (self);
  self->showing = FALSE;
  count_cb (self);
}

/* Making */

static void
add_field (LapScriptBlock *self, guint member, const char *title)
{
  Field *field = &self->fields[member];
  GtkWidget *label = gtk_label_new (title);
  GtkEventController *focus = gtk_event_controller_focus_new ();

  field->line = gtk_box_new (GTK_ORIENTATION_VERTICAL, 2);
  field->view = gtk_text_view_new ();
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_widget_add_css_class (label, "lane-hint");
  gtk_text_view_set_wrap_mode (GTK_TEXT_VIEW (field->view), GTK_WRAP_WORD_CHAR);
  gtk_text_view_set_accepts_tab (GTK_TEXT_VIEW (field->view), FALSE);
  gtk_widget_add_css_class (field->view, "script-words");
  gtk_accessible_update_property (GTK_ACCESSIBLE (field->view), GTK_ACCESSIBLE_PROPERTY_LABEL, title, -1);
  g_signal_connect_object (gtk_text_view_get_buffer (GTK_TEXT_VIEW (field->view)), "changed", G_CALLBACK (count_cb), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (focus, "leave", G_CALLBACK (lap_script_block_commit), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (focus, "enter", G_CALLBACK (enter_cb), self, G_CONNECT_SWAPPED);
  gtk_widget_add_controller (field->view, focus);
  gtk_box_append (GTK_BOX (field->line), label);
  gtk_box_append (GTK_BOX (field->line), field->view);
  gtk_box_append (GTK_BOX (self), field->line);
}

static void
add_room (LapScriptBlock *self, int room)
{
  Room *made = &self->rooms[room];

  made->line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 10);
  made->meter = g_object_new (LAP_TYPE_METER, "valign", GTK_ALIGN_CENTER, NULL);
  made->words = gtk_label_new (NULL);
  gtk_label_set_wrap (GTK_LABEL (made->words), TRUE);
  gtk_label_set_xalign (GTK_LABEL (made->words), 0);
  gtk_widget_add_css_class (made->words, "script-room");
  gtk_box_append (GTK_BOX (made->line), made->meter);
  gtk_box_append (GTK_BOX (made->line), made->words);
  gtk_box_append (GTK_BOX (self), made->line);
}

static void
add_heading (LapScriptBlock *self)
{
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 12);

  self->name = gtk_label_new (NULL);
  self->clock = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (self->name), 0);
  gtk_label_set_wrap (GTK_LABEL (self->name), TRUE);
  gtk_widget_set_hexpand (self->name, TRUE);
  gtk_widget_add_css_class (self->name, "heading");
  gtk_widget_add_css_class (self->clock, "script-clock");
  gtk_box_append (GTK_BOX (line), self->name);
  gtk_box_append (GTK_BOX (line), self->clock);
  gtk_box_append (GTK_BOX (self), line);
}

/* The way to words of a round, or back. Letters may be large and the window narrow: it takes two lines then. */
static void
add_rounds (LapScriptBlock *self)
{
  GtkWidget *label = gtk_label_new (self->round > 1 ? _("Same words as round 1") : _("Other words in…"));

  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  if (self->round > 1) {
    self->rounds = gtk_button_new ();
    gtk_button_set_child (GTK_BUTTON (self->rounds), label);
    gtk_actionable_set_action_name (GTK_ACTIONABLE (self->rounds), "script.same-words");
  } else {
    self->rounds = gtk_menu_button_new ();
    gtk_menu_button_set_child (GTK_MENU_BUTTON (self->rounds), label);
    gtk_menu_button_set_always_show_arrow (GTK_MENU_BUTTON (self->rounds), TRUE);
  }
  gtk_accessible_update_relation (GTK_ACCESSIBLE (self->rounds), GTK_ACCESSIBLE_RELATION_LABELLED_BY, label, NULL, -1);
  gtk_widget_set_halign (self->rounds, GTK_ALIGN_START);
  gtk_box_append (GTK_BOX (self), self->rounds);
}

static void
lap_script_block_dispose (GObject *object)
{
  LapScriptBlock *self = LAP_SCRIPT_BLOCK (object);

  self->showing = TRUE; /* leaving the focus must not edit any more */
  for (guint i = 0; i < N_FIELDS; i++)
    g_clear_pointer (&self->fields[i].was, g_free);
  g_clear_object (&self->block);
  g_clear_object (&self->context);
  G_OBJECT_CLASS (lap_script_block_parent_class)->dispose (object);
}

static void
lap_script_block_class_init (LapScriptBlockClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = lap_script_block_dispose;
  gtk_widget_class_install_action (GTK_WIDGET_CLASS (klass), "script.other-words", "i", other_cb);
  gtk_widget_class_install_action (GTK_WIDGET_CLASS (klass), "script.same-words", NULL, same_cb);
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass), GTK_ACCESSIBLE_ROLE_GROUP);
}

static void
lap_script_block_init (LapScriptBlock *self)
{
  self->showing = TRUE;
  self->index = G_MAXUINT;
  gtk_orientable_set_orientation (GTK_ORIENTABLE (self), GTK_ORIENTATION_VERTICAL);
  gtk_box_set_spacing (GTK_BOX (self), 6);
  gtk_widget_add_css_class (GTK_WIDGET (self), "card");
  gtk_widget_add_css_class (GTK_WIDGET (self), "script-block");
}

GtkWidget *
lap_script_block_new (LapScoreContext *context, LapBlock *block, int round)
{
  LapScriptBlock *self = g_object_new (LAP_TYPE_SCRIPT_BLOCK, NULL);

  self->context = g_object_ref (context);
  self->block = g_object_ref (block);
  self->round = round;
  add_heading (self);
  if (is_talk (self))
    add_field (self, TALK, _("Words"));
  for (int room = 0; room < N_ROOMS; room++) {
    for (guint i = 0; !is_talk (self) && i < N_FIELDS; i++)
      if (kinds[i].room == room)
        add_field (self, i, _(kinds[i].title));
    add_room (self, room);
  }
  if (!is_talk (self))
    add_rounds (self);
  self->warnings = gtk_list_box_new ();
  gtk_list_box_set_selection_mode (GTK_LIST_BOX (self->warnings), GTK_SELECTION_NONE);
  gtk_widget_add_css_class (self->warnings, "script-warnings");
  gtk_box_append (GTK_BOX (self), self->warnings);
  return GTK_WIDGET (self);
}

LapBlock *
lap_script_block_block (LapScriptBlock *self)
{
  return self->block;
}

int
lap_script_block_round (LapScriptBlock *self)
{
  return self->round;
}
