/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/date-button.h"

#include "ui/calendar.h"

#include <glib/gi18n-lib.h>

typedef struct {
  AdwEntryRow *row; /* has the button */
  GtkWidget   *calendar;
  char        *before; /* what stood in the line when the calendar opened */
  gboolean     list, showing, chosen;
} DateButton;

static void
date_button_free (gpointer data)
{
  g_free (((DateButton *) data)->before);
  g_free (data);
}

/* The calendar begins with the day that is written, else today. */
static void
opened_cb (DateButton *self)
{
  g_autofree char *noon = NULL;
  g_autoptr (GDateTime) day = NULL, today = g_date_time_new_now_local ();

  g_free (self->before);
  self->before = g_strdup (gtk_editable_get_text (GTK_EDITABLE (self->row)));
  self->chosen = FALSE;
  noon = g_strconcat (self->before, "T12:00:00Z", NULL);
  day = self->list ? NULL : g_date_time_new_from_iso8601 (noon, NULL);
  self->showing = TRUE;
  gtk_calendar_select_day (GTK_CALENDAR (self->calendar), day != NULL ? day : today);
  self->showing = FALSE;
}

static void
day_cb (DateButton *self)
{
  g_autoptr (GDateTime) day = gtk_calendar_get_date (GTK_CALENDAR (self->calendar));
  g_autofree char *date = g_date_time_format (day, "%F"), *both = NULL;

  if (self->showing)
    return;
  self->chosen = TRUE;
  both = self->list && *self->before != '\0' ? g_strconcat (self->before, ", ", date, NULL) : g_strdup (date);
  gtk_editable_set_text (GTK_EDITABLE (self->row), both);
}

static void
closed_cb (DateButton *self)
{
  if (self->chosen)
    g_signal_emit_by_name (self->row, "entry-activated");
}

static GtkWidget *
button_new (AdwEntryRow *row, gboolean list)
{
  GtkWidget *button = gtk_menu_button_new (), *popover = gtk_popover_new ();
  const char *tip = list ? _("Add a day from the calendar") : _("Choose from the calendar");
  DateButton *self = g_new0 (DateButton, 1);

  self->row = row;
  self->list = list;
  self->calendar = gtk_calendar_new ();
  lap_calendar_name (self->calendar);
  gtk_popover_set_child (GTK_POPOVER (popover), self->calendar);
  gtk_menu_button_set_popover (GTK_MENU_BUTTON (button), popover);
  gtk_menu_button_set_icon_name (GTK_MENU_BUTTON (button), "x-office-calendar-symbolic");
  gtk_widget_set_valign (button, GTK_ALIGN_CENTER);
  gtk_widget_add_css_class (button, "flat");
  gtk_widget_set_tooltip_text (button, tip);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, tip, -1);
  g_object_set_data_full (G_OBJECT (button), "date-button", self, date_button_free);
  g_signal_connect_swapped (popover, "show", G_CALLBACK (opened_cb), self);
  g_signal_connect_swapped (popover, "closed", G_CALLBACK (closed_cb), self);
  g_signal_connect_swapped (self->calendar, "day-selected", G_CALLBACK (day_cb), self);
  return button;
}

GtkWidget *
lap_date_button_new (AdwEntryRow *row)
{
  return button_new (row, FALSE);
}

GtkWidget *
lap_date_button_new_list (AdwEntryRow *row)
{
  return button_new (row, TRUE);
}
