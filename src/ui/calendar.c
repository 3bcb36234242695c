/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/calendar.h"

#include <glib/gi18n-lib.h>

static gboolean
is_stack (GtkWidget *widget)
{
  return widget != NULL && GTK_IS_STACK (widget);
}

/* The names of the months are a stack between their two buttons; those of the year have a label between them. */
static const char *
name_of (GtkWidget *button)
{
  const char *icon = gtk_button_get_icon_name (GTK_BUTTON (button));

  if (g_strcmp0 (icon, "pan-start-symbolic") == 0)
    return is_stack (gtk_widget_get_next_sibling (button)) ? _("The month before") : _("The year before");
  return is_stack (gtk_widget_get_prev_sibling (button)) ? _("The next month") : _("The next year");
}

void
lap_calendar_name (GtkWidget *calendar)
{
  GtkWidget *header = gtk_widget_get_first_child (calendar);

  for (GtkWidget *child = gtk_widget_get_first_child (header); child != NULL; child = gtk_widget_get_next_sibling (child))
    if (GTK_IS_BUTTON (child)) {
      gtk_widget_set_tooltip_text (child, name_of (child));
      gtk_accessible_update_property (GTK_ACCESSIBLE (child), GTK_ACCESSIBLE_PROPERTY_LABEL, name_of (child), -1);
    }
}
