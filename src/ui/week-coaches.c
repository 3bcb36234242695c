/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/week-coaches.h"

#include "edit/week-verbs.h"
#include "ui/date-button.h"
#include "ui/field-row.h"
#include "ui/field-text.h"

#include <adwaita.h>
#include <glib/gi18n-lib.h>

/* Days away are typed as closed dates are. */
static const LapField away_field = { .kind = &lap_kind_closed.kind };

struct _LapWeekCoaches {
  GtkWidget    parent_instance;
  LapDocument *document;
  GtkWidget   *list;
  GPtrArray   *rows; /* Row, in the order of the coaches */
};

typedef struct {
  LapWeekCoaches *owner;
  char           *id;
  char           *shown; /* when away, as it was shown */
  GtkWidget      *row, *away;
} Row;

G_DEFINE_FINAL_TYPE (LapWeekCoaches, lap_week_coaches, GTK_TYPE_WIDGET)

static void
row_free (gpointer data)
{
  Row *row = data;

  g_free (row->id);
  g_free (row->shown);
  g_free (row);
}

static char *
away_text (LapWeek *week, const char *id)
{
  g_autoptr (LapRows) dates = lap_rows_new (&lap_kind_closed);
  g_auto (GValue) value = G_VALUE_INIT;

  for (guint i = 0; i < lap_list_n (week->aways); i++) {
    const LapAway *away = lap_list_nth (week->aways, i);
    LapClosed *span;

    if (!g_str_equal (away->coach, id))
      continue;
    span = lap_rows_add (dates);
    span->from = away->from;
    span->until = away->until;
  }
  g_value_init (&value, LAP_TYPE_ROWS);
  g_value_set_boxed (&value, dates);
  return lap_field_text (&away_field, &value);
}

static void
away_cb (Row *row)
{
  LapDocument *document = row->owner->document;
  LapWeek *week = lap_document_week (document);
  LapCoach *coach = lap_week_coach (week, row->id);
  const char *typed = gtk_editable_get_text (GTK_EDITABLE (row->away));
  g_auto (GValue) value = G_VALUE_INIT;

  if (coach == NULL || g_strcmp0 (typed, row->shown) == 0 || !lap_document_is_editable (document))
    return;
  if (!lap_field_parse (&away_field, typed, &value)) {
    lap_document_tell (document, lap_field_hint (&away_field));
    gtk_editable_set_text (GTK_EDITABLE (row->away), row->shown);
    return;
  }
  g_free (row->shown);
  row->shown = g_strdup (typed);
  lap_document_apply (document, lap_verb_set_aways (week, coach, g_value_get_boxed (&value)));
}

static void
add_row (LapWeekCoaches *self, const LapCoach *coach)
{
  Row *row = g_new0 (Row, 1);

  row->owner = self;
  row->id = g_strdup (coach->id);
  row->row = adw_expander_row_new ();
  row->away = adw_entry_row_new ();
  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (row->away), _("Away on"));
  gtk_widget_set_tooltip_text (row->away, lap_field_hint (&away_field));
  lap_field_when_typed (row->away, G_CALLBACK (away_cb), row);
  adw_entry_row_add_suffix (ADW_ENTRY_ROW (row->away), lap_date_button_new_list (ADW_ENTRY_ROW (row->away)));
  adw_expander_row_add_row (ADW_EXPANDER_ROW (row->row), row->away);
  gtk_list_box_append (GTK_LIST_BOX (self->list), row->row);
  g_ptr_array_add (self->rows, row);
}

/* Rows for other coaches than there are now are made anew. */
static void
renew_rows (LapWeekCoaches *self, LapWeek *week)
{
  guint n = lap_list_n (week->coaches);
  gboolean same = self->rows->len == n;
  GtkWidget *child;

  for (guint i = 0; same && i < n; i++)
    same = g_str_equal (((Row *) self->rows->pdata[i])->id, LAP_COACH (lap_list_nth (week->coaches, i))->id);
  if (same)
    return;
  while ((child = gtk_widget_get_first_child (self->list)) != NULL)
    gtk_list_box_remove (GTK_LIST_BOX (self->list), child);
  g_ptr_array_set_size (self->rows, 0);
  for (guint i = 0; i < n; i++)
    add_row (self, lap_list_nth (week->coaches, i));
}

static char *
load_text (const LapCoachLoad *load)
{
  g_autofree char *hours = g_strdup_printf ("%d:%02d", load->minutes / 60, load->minutes % 60);
  g_autofree char *classes = g_strdup_printf (ngettext ("%u class", "%u classes", load->classes), load->classes);

  if (load->hard == 0)
    /* Translators: classes of a coach in a week, and hours and minutes of them. */
    return g_strdup_printf (_("%1$s, %2$s h"), classes, hours);
  /* Translators: the same, and how many of the classes are hard. */
  return g_strdup_printf (_("%1$s, %2$s h, %3$u hard"), classes, hours, load->hard);
}

void
lap_week_coaches_show (LapWeekCoaches *self, const LapWeekLoad *load)
{
  LapWeek *week = lap_document_week (self->document);

  renew_rows (self, week);
  for (guint i = 0; i < self->rows->len; i++) {
    Row *row = self->rows->pdata[i];
    g_autofree char *text = load_text (&load->coaches[i]), *away = away_text (week, row->id), *both = NULL;

    /* Translators: what a coach has to do in a week, and when away. */
    both = *away != '\0' ? g_strdup_printf (_("%1$s; away %2$s"), text, away) : g_strdup (text);
    adw_preferences_row_set_title (ADW_PREFERENCES_ROW (row->row), lap_coach_title (lap_list_nth (week->coaches, i)));
    adw_expander_row_set_subtitle (ADW_EXPANDER_ROW (row->row), both);
    gtk_widget_set_sensitive (row->away, lap_document_is_editable (self->document));
    if (g_strcmp0 (away, row->shown) == 0)
      continue;
    g_free (row->shown);
    row->shown = g_steal_pointer (&away);
    gtk_editable_set_text (GTK_EDITABLE (row->away), row->shown);
  }
  gtk_widget_set_visible (GTK_WIDGET (self), self->rows->len > 0);
}

static void
lap_week_coaches_dispose (GObject *object)
{
  LapWeekCoaches *self = LAP_WEEK_COACHES (object);

  g_clear_pointer (&self->list, gtk_widget_unparent);
  g_clear_pointer (&self->rows, g_ptr_array_unref);
  g_clear_object (&self->document);
  G_OBJECT_CLASS (lap_week_coaches_parent_class)->dispose (object);
}

static void
lap_week_coaches_class_init (LapWeekCoachesClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = lap_week_coaches_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (klass), GTK_TYPE_BIN_LAYOUT);
}

static void
lap_week_coaches_init (LapWeekCoaches *self)
{
  self->rows = g_ptr_array_new_with_free_func (row_free);
  self->list = gtk_list_box_new ();
  gtk_list_box_set_selection_mode (GTK_LIST_BOX (self->list), GTK_SELECTION_NONE);
  gtk_widget_add_css_class (self->list, "boxed-list");
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->list), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Coaches"), -1);
  gtk_widget_set_parent (self->list, GTK_WIDGET (self));
}

void
lap_week_coaches_set_document (LapWeekCoaches *self, LapDocument *document)
{
  self->document = g_object_ref (document);
}

void
lap_week_coaches_commit (LapWeekCoaches *self)
{
  for (guint i = 0; i < self->rows->len; i++)
    away_cb (self->rows->pdata[i]);
}
