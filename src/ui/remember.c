/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/remember.h"

#include "ui/settings.h"

static const struct {
  LapDeskSide side;
  const char *key, *property;
} panes[] = {
  { LAP_DESK_START, "pane-start", "show-start" },
  { LAP_DESK_END, "pane-end", "show-end" },
};

/* Of the kind of window that shows @document; NULL where nothing is kept. */
static GSettings *
settings_of (LapDocument *document)
{
  return lap_settings_child (lap_document_week (document) != NULL ? "week-window" : "session-window");
}

void
lap_remember_restore (LapWindow *window)
{
  g_autoptr (GSettings) settings = settings_of (lap_window_document (window));
  g_autofree char *view = settings != NULL ? g_settings_get_string (settings, "view") : NULL;

  if (settings == NULL)
    return;
  gtk_window_set_default_size (GTK_WINDOW (window), g_settings_get_int (settings, "width"),
                               g_settings_get_int (settings, "height"));
  if (g_settings_get_boolean (settings, "maximized"))
    gtk_window_maximize (GTK_WINDOW (window));
  if (*view != '\0')
    gtk_widget_activate_action (GTK_WIDGET (window), "win.view", "s", view); /* nothing where it has no such view */
}

void
lap_remember_keep (LapWindow *window)
{
  g_autoptr (GSettings) settings = settings_of (lap_window_document (window));
  int width, height;

  if (settings == NULL)
    return;
  gtk_window_get_default_size (GTK_WINDOW (window), &width, &height);
  g_settings_set_int (settings, "width", MAX (width, 360));
  g_settings_set_int (settings, "height", MAX (height, 360));
  g_settings_set_boolean (settings, "maximized", gtk_window_is_maximized (GTK_WINDOW (window)));
  g_settings_set_string (settings, "view", lap_window_view (window));
}

static void
shown_cb (LapDesk *desk, GParamSpec *pspec, gpointer settings)
{
  for (guint i = 0; i < G_N_ELEMENTS (panes); i++)
    if (!lap_desk_is_folded (desk, panes[i].side))
      g_settings_set_boolean (settings, panes[i].key, lap_desk_get_shown (desk, panes[i].side));
}

void
lap_remember_panes (LapDesk *desk, LapDocument *document)
{
  g_autoptr (GSettings) settings = settings_of (document);

  if (settings == NULL)
    return;
  for (guint i = 0; i < G_N_ELEMENTS (panes); i++)
    lap_desk_set_shown (desk, panes[i].side, g_settings_get_boolean (settings, panes[i].key));
  for (guint i = 0; i < G_N_ELEMENTS (panes); i++) {
    g_autofree char *signal = g_strconcat ("notify::", panes[i].property, NULL);

    g_signal_connect_object (desk, signal, G_CALLBACK (shown_cb), settings, 0);
  }
  g_object_set_data_full (G_OBJECT (desk), "settings", g_steal_pointer (&settings), g_object_unref);
}
