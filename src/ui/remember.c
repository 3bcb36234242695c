/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/remember.h"

#include "ui/settings.h"

static const struct {
  LapDeskSide side;
  const char *key, *property;
} panes[] = {
  { LAP_DESK_START, "pane-catalogue", "show-start" },
  { LAP_DESK_END, "pane-block", "show-end" },
};

void
lap_remember_restore (LapWindow *window)
{
  GSettings *settings = lap_settings ();
  g_autofree char *view = settings != NULL ? g_settings_get_string (settings, "view") : NULL;

  if (settings == NULL)
    return;
  gtk_window_set_default_size (GTK_WINDOW (window), g_settings_get_int (settings, "window-width"),
                               g_settings_get_int (settings, "window-height"));
  if (g_settings_get_boolean (settings, "maximized"))
    gtk_window_maximize (GTK_WINDOW (window));
  if (*view != '\0')
    gtk_widget_activate_action (GTK_WIDGET (window), "win.view", "s", view); /* nothing where it has no such view */
}

void
lap_remember_keep (LapWindow *window)
{
  GSettings *settings = lap_settings ();
  int width, height;

  if (settings == NULL)
    return;
  gtk_window_get_default_size (GTK_WINDOW (window), &width, &height);
  g_settings_set_int (settings, "window-width", MAX (width, 360));
  g_settings_set_int (settings, "window-height", MAX (height, 360));
  g_settings_set_boolean (settings, "maximized", gtk_window_is_maximized (GTK_WINDOW (window)));
  g_settings_set_string (settings, "view", lap_window_view (window));
}

static void
shown_cb (LapDesk *desk)
{
  for (guint i = 0; i < G_N_ELEMENTS (panes); i++)
    if (!lap_desk_is_folded (desk, panes[i].side))
      g_settings_set_boolean (lap_settings (), panes[i].key, lap_desk_get_shown (desk, panes[i].side));
}

void
lap_remember_panes (LapDesk *desk)
{
  if (lap_settings () == NULL)
    return;
  for (guint i = 0; i < G_N_ELEMENTS (panes); i++)
    lap_desk_set_shown (desk, panes[i].side, g_settings_get_boolean (lap_settings (), panes[i].key));
  for (guint i = 0; i < G_N_ELEMENTS (panes); i++) {
    g_autofree char *signal = g_strconcat ("notify::", panes[i].property, NULL);

    g_signal_connect (desk, signal, G_CALLBACK (shown_cb), NULL);
  }
}
