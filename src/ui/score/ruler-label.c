/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/ruler.h"

#include "ui/settings.h"

#include <glib/gi18n-lib.h>

static void
toggled_cb (GtkToggleButton *button, GParamSpec *pspec, LapRulerLane *lane)
{
  gboolean film = gtk_toggle_button_get_active (button);
  const char *clock = film ? _("Film clock") : _("Session clock");

  gtk_label_set_text (GTK_LABEL (gtk_button_get_child (GTK_BUTTON (button))), clock);
  gtk_widget_set_tooltip_text (GTK_WIDGET (button), film ? _("0:00 is when the camera starts. Change to the session clock")
                                                         : _("0:00 is the first block. Change to the film clock"));
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, clock, -1);
  lap_ruler_lane_set_film (lane, film);
}

GtkWidget *
lap_ruler_label_new (LapLane *lane)
{
  GtkWidget *button = gtk_toggle_button_new (), *label = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_widget_add_css_class (label, "lane-title");
  gtk_button_set_child (GTK_BUTTON (button), label);
  gtk_widget_add_css_class (button, "flat");
  gtk_widget_add_css_class (button, "lane-button");
  gtk_widget_set_halign (button, GTK_ALIGN_START);
  gtk_widget_set_valign (button, GTK_ALIGN_START);
  g_signal_connect_object (button, "notify::active", G_CALLBACK (toggled_cb), lane, 0);
  toggled_cb (GTK_TOGGLE_BUTTON (button), NULL, LAP_RULER_LANE (lane));
  lap_settings_bind ("film-clock", button, "active");
  return button;
}
