/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/help.h"

#include "ui/later.h"
#include "ui/shortcuts.h"
#include "ui/tell.h"

#include <adwaita.h>
#include <glib/gi18n-lib.h>

static const LapHelpPage pages[] = {
  { "LapHeading", "plan" },
  { "LapFormulaEntry", "catalogue#formula" },
  { LAP_HELP_LANES, "lanes#choose" },
  { "LapStrip", "lanes#overview" },
  { "LapScoreView", "score" },
  { "LapWarnings", "checks" },
  { "LapPane", "plan" },
  { "LapShelf", "catalogue" },
  { "week-desk", "timetable" }, /* before the type it is of */
  { "LapDesk", "plan" },
  { "LapRehearseSound", "rehearse#sound" },
  { "LapRehearsePage", "rehearse" },
  { "LapRehearseWindow", "rehearse" },
  { "LapSheetsView", "sheets" },
  { "LapScriptView", "script" },
  { "LapExport", "sheets" },
  { "LapPublishDialog", "publish" },
  { "win.order", "arrange#order" },
  { "win.mend", "arrange#mend" },
  { "win.adapt", "arrange#adapt" },
  { "win.choose", "arrange#choose" },
  { "LapArrange", "arrange" },
  { "LapNew", "files#new" },
  { "LapLibrary", "files#list" },
  { "LapOpening", "files" },
  { "LapWeekView", "timetable" },
  { "LapWeekDates", "week#dates" },
  { "LapWeekPane", "week" },
  { "LapWeekImport", "timetable#spreadsheet" },
  { "LapWeekFill", "timetable#fill" },
  { "LapWeekProperties", "week#begin" },
  { "LapFindBar", "plan#find" },
  { "LapChooser", "catalogue" },
  { LAP_HELP_PROPERTIES, "files#properties" },
  { LAP_HELP_SETTINGS, "files#settings" },
  { LAP_HELP_OWN, "catalogue#own" },
  { LAP_HELP_FILE, "files" },
  { LAP_HELP_KEYS, "plan#keys" },
  { LAP_HELP_EXPORTING, "publish" },
  { LAP_HELP_PART, "score#parts" },
};

#define NOWHERE "index"

guint
lap_help_n (void)
{
  return G_N_ELEMENTS (pages);
}

const LapHelpPage *
lap_help_nth (guint n)
{
  return &pages[n];
}

const char *
lap_help_page (GtkWidget *widget)
{
  for (; widget != NULL; widget = gtk_widget_get_parent (widget)) {
    const char *name = gtk_widget_get_name (widget);

    if (g_str_has_prefix (name, LAP_HELP_CHECK))
      return name; /* the page of a check is called as it */
    for (guint i = 0; i < G_N_ELEMENTS (pages); i++)
      if (g_str_equal (G_OBJECT_TYPE_NAME (widget), pages[i].type) || g_str_equal (name, pages[i].type))
        return pages[i].page;
  }
  return NOWHERE;
}

static void
shown_cb (GObject *source, GAsyncResult *result, gpointer data)
{
  g_autoptr (GtkWindow) window = data;
  g_autoptr (GError) error = NULL;

  if (!gtk_show_uri_full_finish (window, result, &error) && window != NULL)
    lap_tell_error (window, _("The help can’t be shown"),
                    _("No program that shows help is installed. Yelp is one."));
}

/* Where nothing has the focus, as in a view that was only looked at, the view on show counts. */
static GtkWidget *
looked_at (GtkWidget *widget)
{
  if (ADW_IS_VIEW_STACK (widget)) {
    GtkWidget *view = adw_view_stack_get_visible_child (ADW_VIEW_STACK (widget));

    return LAP_IS_LATER (view) ? lap_later_get (LAP_LATER (view)) : view;
  }
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL; child = gtk_widget_get_next_sibling (child)) {
    GtkWidget *found = looked_at (child);

    if (found != NULL)
      return found;
  }
  return NULL;
}

static const char *
page_of_window (GtkWindow *window)
{
  GtkWidget *focus = gtk_window_get_focus (window);
  const char *page = lap_help_page (focus != NULL ? focus : GTK_WIDGET (window));

  return g_str_equal (page, NOWHERE) ? lap_help_page (looked_at (GTK_WIDGET (window))) : page;
}

void
lap_help_show (GtkWindow *window)
{
  const char *page = NOWHERE;
  g_autofree char *uri = NULL;

  for (GtkWindow *w = window; w != NULL && g_str_equal (page, NOWHERE); w = gtk_window_get_transient_for (w))
    page = page_of_window (w);
  uri = g_strconcat ("help:lapwing/", page, NULL);
  gtk_show_uri_full (window, uri, GDK_CURRENT_TIME, NULL, shown_cb, window != NULL ? g_object_ref (window) : NULL);
}

static gboolean
key_cb (GtkWidget *widget, GVariant *args, gpointer data)
{
  lap_help_show (GTK_WINDOW (gtk_widget_get_root (widget)));
  return TRUE;
}

static GtkShortcut *
shortcut_new (void)
{
  g_autofree char *key = lap_shortcuts_key ("app.help");

  return gtk_shortcut_new (gtk_shortcut_trigger_parse_string (key), gtk_callback_action_new (key_cb, NULL, NULL));
}

static void
windows_cb (GListModel *windows, guint position, guint removed, guint added, gpointer data)
{
  for (guint i = position; i < position + added; i++) {
    g_autoptr (GtkWidget) window = g_list_model_get_item (windows, i);
    GtkEventController *controller;

    if (GTK_IS_APPLICATION_WINDOW (window))
      continue;
    controller = gtk_shortcut_controller_new ();
    gtk_shortcut_controller_add_shortcut (GTK_SHORTCUT_CONTROLLER (controller), shortcut_new ());
    gtk_widget_add_controller (window, controller);
  }
}

void
lap_help_serve_dialogs (void)
{
  g_autoptr (GTypeClass) popover = g_type_class_ref (GTK_TYPE_POPOVER);
  g_autoptr (GtkShortcut) shortcut = shortcut_new ();

  /* A key in a popover goes no further than to it. Kinds of popover take this over when they are first used. */
  gtk_widget_class_add_shortcut (GTK_WIDGET_CLASS (popover), shortcut);
  g_signal_connect (gtk_window_get_toplevels (), "items-changed", G_CALLBACK (windows_cb), NULL);
}
