/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/class-date.h"

#include "edit/week-verbs.h"
#include "model/occurrences.h"
#include "ui/date-button.h"
#include "ui/field-row.h"
#include "ui/field-text.h"
#include "ui/week-choices.h"
#include "ui/week-dates.h"

#include <adwaita.h>
#include <glib/gi18n-lib.h>

enum { LINE_DATE, LINE_START, LINE_NOTE, N_LINES };
enum { CHOICE_ROOM, CHOICE_COACH, N_CHOICES };

/* Fields for what is typed: their kind alone counts. */
static const LapField line_fields[N_LINES] = {
  [LINE_DATE] = { .kind = &lap_kind_date }, [LINE_START] = { .kind = &lap_kind_time }, [LINE_NOTE] = { .kind = &lap_kind_text },
};
static const char *const line_titles[N_LINES] = { N_("On"), N_("Start"), N_("Note for the door") };
static const char *const choice_titles[N_CHOICES] = { N_("Room"), N_("Coach") };

struct _LapClassDate {
  GtkWidget    parent_instance;
  LapDocument *document;
  LapClass    *c;       /* or NULL */
  int          was;     /* the date it would be on */
  LapPlace     now;     /* where it is on this date; ids are of the week */
  int          to;      /* its date now */
  gboolean     showing;
  GtkWidget   *group, *held, *lines[N_LINES], *choices[N_CHOICES], *always;
  char        *shown[N_LINES];
  GPtrArray   *ids[N_CHOICES];
};

G_DEFINE_FINAL_TYPE (LapClassDate, lap_class_date, GTK_TYPE_WIDGET)

static LapWeek *
week_of (LapClassDate *self)
{
  return lap_document_week (self->document);
}

static LapException *
exception_of (LapClassDate *self)
{
  return lap_week_exception (week_of (self), self->c->id, self->was);
}

/* Editing */

static void
apply_place (LapClassDate *self)
{
  lap_document_apply (self->document, lap_verb_place_on (week_of (self), self->c, self->was, self->to, &self->now));
}

static void
held_cb (LapClassDate *self)
{
  if (self->showing || self->c == NULL)
    return;
  if (gtk_switch_get_active (GTK_SWITCH (self->held)))
    lap_document_apply (self->document, lap_verb_as_always (week_of (self), self->c, self->was));
  else
    lap_document_apply (self->document, lap_verb_cancel_on (week_of (self), self->c, self->was));
}

static void
always_cb (LapClassDate *self)
{
  lap_document_apply (self->document, lap_verb_as_always (week_of (self), self->c, self->was));
}

static void
line_cb (LapClassDate *self, guint line)
{
  const char *typed = gtk_editable_get_text (GTK_EDITABLE (self->lines[line]));
  g_auto (GValue) value = G_VALUE_INIT;

  if (self->showing || self->c == NULL || g_strcmp0 (typed, self->shown[line]) == 0)
    return;
  if (!lap_field_parse (&line_fields[line], typed, &value) || (line != LINE_NOTE && *typed == '\0')) {
    lap_document_tell (self->document, lap_field_hint (&line_fields[line]));
    gtk_editable_set_text (GTK_EDITABLE (self->lines[line]), self->shown[line]);
    return;
  }
  g_free (self->shown[line]);
  self->shown[line] = g_strdup (typed);
  if (line == LINE_NOTE) {
    lap_document_apply (self->document, lap_verb_note_on (week_of (self), self->c, self->was, g_value_get_string (&value)));
    return;
  }
  if (line == LINE_DATE)
    self->to = g_value_get_int (&value);
  else
    self->now.start = g_value_get_int (&value);
  apply_place (self);
}

static void
line_left_cb (GtkWidget *row, LapClassDate *self)
{
  for (guint i = 0; i < N_LINES; i++)
    if (self->lines[i] == row)
      line_cb (self, i);
}

static void
focus_left_cb (GtkEventController *focus, LapClassDate *self)
{
  line_left_cb (gtk_event_controller_get_widget (focus), self);
}

static void
choice_cb (GtkWidget *row, GParamSpec *pspec, LapClassDate *self)
{
  guint chosen = adw_combo_row_get_selected (ADW_COMBO_ROW (row)), which = row == self->choices[CHOICE_COACH];
  const char **now = which == CHOICE_ROOM ? &self->now.room : &self->now.coach;

  if (self->showing || self->c == NULL || chosen == GTK_INVALID_LIST_POSITION ||
      g_strcmp0 (self->ids[which]->pdata[chosen], *now) == 0)
    return;
  *now = self->ids[which]->pdata[chosen];
  apply_place (self);
}

/* Showing */

static void
show_line (LapClassDate *self, guint line, const GValue *value)
{
  g_autofree char *text = lap_field_text (&line_fields[line], value);

  if (g_strcmp0 (text, self->shown[line]) == 0)
    return;
  g_free (self->shown[line]);
  self->shown[line] = g_steal_pointer (&text);
  gtk_editable_set_text (GTK_EDITABLE (self->lines[line]), self->shown[line]);
}

static void
show_lines (LapClassDate *self, const char *note)
{
  g_auto (GValue) number = G_VALUE_INIT, text = G_VALUE_INIT;

  g_value_init (&number, G_TYPE_INT);
  g_value_set_int (&number, self->to);
  show_line (self, LINE_DATE, &number);
  g_value_set_int (&number, self->now.start);
  show_line (self, LINE_START, &number);
  g_value_init (&text, G_TYPE_STRING);
  g_value_set_string (&text, note);
  show_line (self, LINE_NOTE, &text);
}

/* On one date nobody can be left out: a class without a room or coach may get one, not lose it. */
static void
show_choice (LapClassDate *self, guint which, const char *always, const char *now)
{
  g_autoptr (GPtrArray) titles = g_ptr_array_new ();
  guint chosen = GTK_INVALID_LIST_POSITION;

  g_clear_pointer (&self->ids[which], g_ptr_array_unref);
  self->ids[which] = g_ptr_array_new_with_free_func (g_free);
  if (always == NULL) {
    g_ptr_array_add (self->ids[which], NULL);
    g_ptr_array_add (titles, (gpointer) _("None"));
  }
  (which == CHOICE_ROOM ? lap_room_choices : lap_coach_choices) (self->document, self->ids[which], titles);
  for (guint i = 0; i < self->ids[which]->len; i++)
    if (g_strcmp0 (self->ids[which]->pdata[i], now) == 0)
      chosen = i;
  lap_combo_set_titles (ADW_COMBO_ROW (self->choices[which]), titles);
  adw_combo_row_set_selected (ADW_COMBO_ROW (self->choices[which]), chosen);
}

/* The occurrence of @c that the week of @date would have, or NULL. */
static const LapOccurrence *
find (GArray *all, LapClass *c)
{
  for (guint i = 0; i < all->len; i++)
    if (lap_occurrence_nth (all, i)->c == c)
      return lap_occurrence_nth (all, i);
  return NULL;
}

void
lap_class_date_show (LapClassDate *self, LapClass *c)
{
  int date = lap_document_date (self->document);
  g_autoptr (GArray) all = c != NULL && date != 0 ? lap_occurrences_new (week_of (self), date) : NULL;
  const LapOccurrence *o = all != NULL ? find (all, c) : NULL;
  g_autofree char *title = NULL;
  LapException *e;
  gboolean held;

  g_clear_object (&self->c);
  self->c = o != NULL ? g_object_ref (c) : NULL;
  gtk_widget_set_visible (GTK_WIDGET (self), o != NULL);
  if (o == NULL)
    return;
  self->was = o->was;
  self->to = o->date;
  self->now = (LapPlace) { o->day, o->start, o->room, o->coach };
  e = exception_of (self);
  if (e != NULL && e->to != 0)
    self->to = e->to;
  held = e == NULL || !e->cancelled;
  self->showing = TRUE;
  title = lap_day_text (self->was);
  adw_preferences_group_set_title (ADW_PREFERENCES_GROUP (self->group), title);
  gtk_switch_set_active (GTK_SWITCH (self->held), held);
  show_lines (self, e != NULL ? e->note : NULL);
  show_choice (self, CHOICE_ROOM, c->room, self->now.room);
  show_choice (self, CHOICE_COACH, c->coach, self->now.coach);
  for (guint i = 0; i < N_LINES; i++)
    gtk_widget_set_visible (self->lines[i], held || i == LINE_NOTE);
  for (guint i = 0; i < N_CHOICES; i++)
    gtk_widget_set_visible (self->choices[i], held);
  gtk_widget_set_visible (self->always, e != NULL);
  self->showing = FALSE;
}

/* Making */

static void
lap_class_date_dispose (GObject *object)
{
  LapClassDate *self = LAP_CLASS_DATE (object);

  g_clear_object (&self->c);
  g_clear_pointer (&self->group, gtk_widget_unparent);
  g_clear_object (&self->document);
  for (guint i = 0; i < N_CHOICES; i++)
    g_clear_pointer (&self->ids[i], g_ptr_array_unref);
  for (guint i = 0; i < N_LINES; i++)
    g_clear_pointer (&self->shown[i], g_free);
  G_OBJECT_CLASS (lap_class_date_parent_class)->dispose (object);
}

static void
lap_class_date_class_init (LapClassDateClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = lap_class_date_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (klass), GTK_TYPE_BIN_LAYOUT);
}

static void
add_held (LapClassDate *self)
{
  self->held = gtk_switch_new ();
  g_signal_connect_swapped (self->held, "notify::active", G_CALLBACK (held_cb), self);
  adw_preferences_group_add (ADW_PREFERENCES_GROUP (self->group), lap_field_row (_("Held"), NULL, self->held));
}

static GtkWidget *
add_line (LapClassDate *self, guint line)
{
  GtkWidget *row = adw_entry_row_new ();
  GtkEventController *focus = gtk_event_controller_focus_new ();

  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (row), _(line_titles[line]));
  gtk_widget_set_tooltip_text (row, lap_field_hint (&line_fields[line]));
  g_signal_connect (row, "entry-activated", G_CALLBACK (line_left_cb), self);
  g_signal_connect (focus, "leave", G_CALLBACK (focus_left_cb), self);
  gtk_widget_add_controller (row, focus);
  adw_preferences_group_add (ADW_PREFERENCES_GROUP (self->group), row);
  return row;
}

static GtkWidget *
add_choice (LapClassDate *self, guint choice)
{
  GtkWidget *row = adw_combo_row_new ();

  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (row), _(choice_titles[choice]));
  g_signal_connect (row, "notify::selected", G_CALLBACK (choice_cb), self);
  adw_preferences_group_add (ADW_PREFERENCES_GROUP (self->group), row);
  return row;
}

static void
lap_class_date_init (LapClassDate *self)
{
  self->group = adw_preferences_group_new ();
  gtk_widget_set_parent (self->group, GTK_WIDGET (self));
  add_held (self);
  self->lines[LINE_DATE] = add_line (self, LINE_DATE);
  adw_entry_row_add_suffix (ADW_ENTRY_ROW (self->lines[LINE_DATE]),
                            lap_date_button_new (ADW_ENTRY_ROW (self->lines[LINE_DATE])));
  self->lines[LINE_START] = add_line (self, LINE_START);
  for (guint i = 0; i < N_CHOICES; i++)
    self->choices[i] = add_choice (self, i);
  self->lines[LINE_NOTE] = add_line (self, LINE_NOTE);
  self->always = gtk_button_new_with_label (_("As every week"));
  gtk_widget_add_css_class (self->always, "flat");
  gtk_widget_set_valign (self->always, GTK_ALIGN_CENTER);
  g_signal_connect_swapped (self->always, "clicked", G_CALLBACK (always_cb), self);
  adw_preferences_group_set_header_suffix (ADW_PREFERENCES_GROUP (self->group), self->always);
}

void
lap_class_date_set_document (LapClassDate *self, LapDocument *document)
{
  self->document = g_object_ref (document);
}

void
lap_class_date_commit (LapClassDate *self)
{
  for (guint i = 0; i < N_LINES; i++)
    line_cb (self, i);
}
