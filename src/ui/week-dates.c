/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/week-dates.h"

#include <glib/gi18n-lib.h>

struct _LapWeekDates {
  GtkWidget    parent_instance;
  LapDocument *document;
  gboolean     showing; /* the calendar is being set, nobody chooses */
  GtkWidget   *title, *what, *always, *choose, *popover, *calendar, *entry, *wrong;
};

G_DEFINE_FINAL_TYPE (LapWeekDates, lap_week_dates, GTK_TYPE_WIDGET)

int
lap_today (void)
{
  g_autoptr (GDateTime) now = g_date_time_new_now_local ();
  g_autofree char *text = g_date_time_format (now, "%F");

  return lap_date_parse (text);
}

static GDateTime *
date_time (int date)
{
  GDate day;

  g_date_clear (&day, 1);
  g_date_set_julian (&day, date);
  return g_date_time_new_local (g_date_get_year (&day), g_date_get_month (&day), g_date_get_day (&day), 12, 0, 0);
}

char *
lap_day_text (int date)
{
  g_autoptr (GDateTime) day = date_time (date);

  /* Translators: a day, as g_date_time_format() takes it. */
  return g_date_time_format (day, _("%A, %-d %B"));
}

char *
lap_week_span_text (int monday)
{
  g_autoptr (GDateTime) first = date_time (monday), last = date_time (monday + LAP_N_DAYS - 1);
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
    return _("before the timetable begins");
  if (monday != 0 && week->until != 0 && monday > week->until)
    return _("after the timetable ends");
  return monday != 0 ? _("changes are for this week only") : NULL;
}

static void
show (LapWeekDates *self)
{
  int monday = lap_document_date (self->document);
  g_autofree char *span = monday != 0 ? lap_week_span_text (monday) : NULL;
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

/* Today, or the day nearest to it that the timetable is for. */
static int
nearest_date (LapWeekDates *self)
{
  const LapWeek *week = lap_document_week (self->document);
  int date = lap_today ();

  if (week->until != 0)
    date = MIN (date, week->until);
  return MAX (date, week->from);
}

void
lap_week_dates_turn (LapWeekDates *self, int weeks)
{
  int monday = lap_document_date (self->document);

  lap_week_dates_go (self, monday != 0 ? monday + weeks * LAP_N_DAYS : nearest_date (self));
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
today_cb (LapWeekDates *self)
{
  gtk_popover_popdown (GTK_POPOVER (self->popover));
  lap_week_dates_go (self, lap_today ());
}

static void
day_cb (LapWeekDates *self)
{
  g_autoptr (GDateTime) day = gtk_calendar_get_date (GTK_CALENDAR (self->calendar));
  g_autofree char *text = g_date_time_format (day, "%F");

  if (self->showing)
    return;
  gtk_editable_set_text (GTK_EDITABLE (self->entry), text);
  lap_week_dates_go (self, lap_date_parse (text));
}

static void
entry_cb (LapWeekDates *self)
{
  int date = lap_date_parse (gtk_editable_get_text (GTK_EDITABLE (self->entry)));

  gtk_widget_set_visible (self->wrong, date == 0);
  if (date == 0)
    return;
  gtk_popover_popdown (GTK_POPOVER (self->popover));
  lap_week_dates_go (self, date);
}

/* The calendar opens at the week that is looked at. */
static void
opened_cb (LapWeekDates *self)
{
  int monday = lap_document_date (self->document), date = monday != 0 ? monday : nearest_date (self);
  g_autoptr (GDateTime) day = date_time (date);
  g_autofree char *text = lap_date_text (date);

  self->showing = TRUE;
  gtk_calendar_select_day (GTK_CALENDAR (self->calendar), day);
  self->showing = FALSE;
  gtk_editable_set_text (GTK_EDITABLE (self->entry), text);
  gtk_widget_set_visible (self->wrong, FALSE);
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
  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/week-dates.ui");
  gtk_widget_class_bind_template_child (widget_class, LapWeekDates, title);
  gtk_widget_class_bind_template_child (widget_class, LapWeekDates, what);
  gtk_widget_class_bind_template_child (widget_class, LapWeekDates, always);
  gtk_widget_class_bind_template_child (widget_class, LapWeekDates, choose);
  gtk_widget_class_bind_template_child (widget_class, LapWeekDates, popover);
  gtk_widget_class_bind_template_child (widget_class, LapWeekDates, calendar);
  gtk_widget_class_bind_template_child (widget_class, LapWeekDates, entry);
  gtk_widget_class_bind_template_child (widget_class, LapWeekDates, wrong);
  gtk_widget_class_bind_template_callback (widget_class, turn_cb);
  gtk_widget_class_bind_template_callback (widget_class, always_cb);
  gtk_widget_class_bind_template_callback (widget_class, today_cb);
  gtk_widget_class_bind_template_callback (widget_class, day_cb);
  gtk_widget_class_bind_template_callback (widget_class, entry_cb);
  gtk_widget_class_bind_template_callback (widget_class, opened_cb);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
}

static void
lap_week_dates_init (LapWeekDates *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

void
lap_week_dates_set_document (LapWeekDates *self, LapDocument *document)
{
  self->document = g_object_ref (document);
  g_signal_connect_object (document, "changed", G_CALLBACK (show), self, G_CONNECT_SWAPPED);
  show (self);
}
