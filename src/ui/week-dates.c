/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/week-dates.h"

#include "ui/flow.h"
#include "ui/later.h"

#include <glib/gi18n-lib.h>

struct _LapWeekDates {
  GtkWidget    parent_instance;
  LapDocument *document;
  GtkWidget   *title, *what, *always, *choose;
};

G_DEFINE_FINAL_TYPE (LapWeekDates, lap_week_dates, GTK_TYPE_WIDGET)

char *
lap_day_text (int date)
{
  g_autoptr (GDateTime) day = lap_noon (date);

  /* Translators: a day, as g_date_time_format() takes it. */
  return g_date_time_format (day, _("%A, %-d %B"));
}

/* "11 to 17 January 2027" of a Monday. Translated; transfer full. */
static char *
span_text (int monday)
{
  g_autoptr (GDateTime) first = lap_noon (monday), last = lap_noon (monday + LAP_N_DAYS - 1);
  gboolean one_month = g_date_time_get_month (first) == g_date_time_get_month (last);
  /* Translators: the first day of a week, as g_date_time_format() takes it: in the month of the last day. */
  g_autofree char *from = g_date_time_format (first, one_month ? _("%-d") :
                                              /* Translators: the same, in the month before. */
                                              _("%-d %B"));
  /* Translators: the last day of a week. */
  g_autofree char *to = g_date_time_format (last, _("%-d %B %Y"));

  /* Translators: a week, from its first day to its last. */
  return g_strdup_printf (_("%1$s to %2$s"), from, to);
}

/* What is special about the week, or NULL. */
static const char *
remark (LapWeek *week, int monday)
{
  if (monday != 0 && week->from != 0 && monday + LAP_N_DAYS <= week->from)
    return _("Before the timetable begins");
  if (monday != 0 && week->until != 0 && monday > week->until)
    return _("After the timetable ends");
  return monday != 0 ? _("Changes are for this week only") : NULL;
}

static void
show (LapWeekDates *self)
{
  int monday = lap_document_date (self->document);
  g_autofree char *span = monday != 0 ? span_text (monday) : NULL;
  const char *what = remark (lap_document_week (self->document), monday);

  gtk_label_set_text (GTK_LABEL (self->title), span != NULL ? span : _("Every week"));
  gtk_label_set_text (GTK_LABEL (self->what), what != NULL ? what : "");
  gtk_widget_set_visible (self->what, what != NULL);
  gtk_widget_set_visible (self->always, monday != 0);
}

void
lap_week_dates_go (LapWeekDates *self, int date)
{
  lap_document_set_date (self->document, date);
}

void
lap_week_dates_turn (LapWeekDates *self, int weeks)
{
  int monday = lap_document_date (self->document);
  int nearest = lap_today_in_week (lap_document_week (self->document));

  lap_week_dates_go (self, monday != 0 ? monday + weeks * LAP_N_DAYS : nearest);
}

static void
turn_cb (GtkWidget *button, LapWeekDates *self)
{
  lap_week_dates_turn (self, g_strcmp0 (gtk_buildable_get_buildable_id (GTK_BUILDABLE (button)), "next") == 0 ? 1 : -1);
}

static void
always_cb (LapWeekDates *self)
{
  lap_week_dates_go (self, 0);
}

static void
lap_week_dates_dispose (GObject *object)
{
  LapWeekDates *self = LAP_WEEK_DATES (object);
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  g_clear_object (&self->document);
  G_OBJECT_CLASS (lap_week_dates_parent_class)->dispose (object);
}

static void
lap_week_dates_class_init (LapWeekDatesClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_week_dates_dispose;
  g_type_ensure (LAP_TYPE_FLOW);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/week-dates.ui");
  gtk_widget_class_bind_template_child (widget_class, LapWeekDates, title);
  gtk_widget_class_bind_template_child (widget_class, LapWeekDates, what);
  gtk_widget_class_bind_template_child (widget_class, LapWeekDates, always);
  gtk_widget_class_bind_template_child (widget_class, LapWeekDates, choose);
  gtk_widget_class_bind_template_callback (widget_class, turn_cb);
  gtk_widget_class_bind_template_callback (widget_class, always_cb);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
}

static void
lap_week_dates_init (LapWeekDates *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

static GtkWidget *
build_calendar (gpointer owner)
{
  return lap_week_calendar_new (LAP_WEEK_DATES (owner)->document);
}

void
lap_week_dates_set_document (LapWeekDates *self, LapDocument *document)
{
  self->document = g_object_ref (document);
  lap_later_popover (GTK_MENU_BUTTON (self->choose), build_calendar, self);
  g_signal_connect_object (document, "changed", G_CALLBACK (show), self, G_CONNECT_SWAPPED);
  show (self);
}
