/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/week-calendar.h"

#include "ui/calendar.h"
#include "ui/field-text.h"

/* As people type a date: the kind alone counts. */
static const LapField date_field = { .kind = &lap_kind_date };

struct _LapWeekCalendar {
  GtkPopover   parent_instance;
  LapDocument *document;
  gboolean     showing; /* the calendar is being set, nobody chooses */
  GtkWidget   *calendar, *entry, *wrong;
};

G_DEFINE_FINAL_TYPE (LapWeekCalendar, lap_week_calendar, GTK_TYPE_POPOVER)

int
lap_today (void)
{
  g_autoptr (GDateTime) now = g_date_time_new_now_local ();
  g_autofree char *text = g_date_time_format (now, "%F");

  return lap_date_parse (text);
}

int
lap_today_in_week (LapWeek *week)
{
  int date = lap_today ();

  if (week->until != 0)
    date = MIN (date, week->until);
  return MAX (date, week->from);
}

GDateTime *
lap_noon (int date)
{
  GDate day;

  g_date_clear (&day, 1);
  g_date_set_julian (&day, date);
  return g_date_time_new_local (g_date_get_year (&day), g_date_get_month (&day), g_date_get_day (&day), 12, 0, 0);
}

static void
today_cb (LapWeekCalendar *self)
{
  gtk_popover_popdown (GTK_POPOVER (self));
  lap_document_set_date (self->document, lap_today ());
}

static void
day_cb (LapWeekCalendar *self)
{
  g_autoptr (GDateTime) day = gtk_calendar_get_date (GTK_CALENDAR (self->calendar));
  g_autofree char *text = g_date_time_format (day, "%F");

  if (self->showing)
    return;
  gtk_editable_set_text (GTK_EDITABLE (self->entry), text);
  lap_document_set_date (self->document, lap_date_parse (text));
}

static void
entry_cb (LapWeekCalendar *self)
{
  const char *typed = gtk_editable_get_text (GTK_EDITABLE (self->entry));
  g_auto (GValue) value = G_VALUE_INIT;
  int date = lap_field_parse (&date_field, typed, &value) ? g_value_get_int (&value) : 0;

  gtk_widget_set_visible (self->wrong, date == 0);
  if (date == 0)
    return;
  gtk_popover_popdown (GTK_POPOVER (self));
  lap_document_set_date (self->document, date);
}

static void
lap_week_calendar_map (GtkWidget *widget)
{
  LapWeekCalendar *self = LAP_WEEK_CALENDAR (widget);
  int monday = lap_document_date (self->document);
  int date = monday != 0 ? monday : lap_today_in_week (lap_document_week (self->document));
  g_autoptr (GDateTime) day = lap_noon (date);
  g_autofree char *text = lap_date_text (date);

  self->showing = TRUE;
  gtk_calendar_select_day (GTK_CALENDAR (self->calendar), day);
  self->showing = FALSE;
  gtk_editable_set_text (GTK_EDITABLE (self->entry), text);
  gtk_widget_set_visible (self->wrong, FALSE);
  GTK_WIDGET_CLASS (lap_week_calendar_parent_class)->map (widget);
}

static void
lap_week_calendar_dispose (GObject *object)
{
  g_clear_object (&LAP_WEEK_CALENDAR (object)->document);
  G_OBJECT_CLASS (lap_week_calendar_parent_class)->dispose (object);
}

static void
lap_week_calendar_class_init (LapWeekCalendarClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_week_calendar_dispose;
  widget_class->map = lap_week_calendar_map;
  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/week-calendar.ui");
  gtk_widget_class_bind_template_child (widget_class, LapWeekCalendar, calendar);
  gtk_widget_class_bind_template_child (widget_class, LapWeekCalendar, entry);
  gtk_widget_class_bind_template_child (widget_class, LapWeekCalendar, wrong);
  gtk_widget_class_bind_template_callback (widget_class, today_cb);
  gtk_widget_class_bind_template_callback (widget_class, day_cb);
  gtk_widget_class_bind_template_callback (widget_class, entry_cb);
}

static void
lap_week_calendar_init (LapWeekCalendar *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  lap_calendar_name (self->calendar);
}

GtkWidget *
lap_week_calendar_new (LapDocument *document)
{
  LapWeekCalendar *self = g_object_new (LAP_TYPE_WEEK_CALENDAR, NULL);

  self->document = g_object_ref (document);
  return GTK_WIDGET (self);
}
