/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/week-window.h"

#include "ui/application.h"
#include "ui/finding.h"
#include "ui/moment.h"
#include "ui/week-fill.h"
#include "ui/week-import.h"
#include "ui/week-properties.h"

#include <glib/gi18n-lib.h>

#define ZOOM_STEP 1.25

struct _LapWeekWindow {
  LapWindow    parent_instance;
  LapWeekView *view;
  GtkWidget   *desk, *plan, *dates, *pane_toggle;
  LapMoment    moment; /* in which sessions are read */
  LapLater    *find, *pane, *sheets;
  GMenuModel  *more;
};

G_DEFINE_FINAL_TYPE (LapWeekWindow, lap_week_window, LAP_TYPE_WINDOW)

static void
lap_week_window_commit (LapWindow *window)
{
  GtkWidget *pane = lap_later_peek (LAP_WEEK_WINDOW (window)->pane);

  if (pane != NULL)
    lap_week_pane_commit (LAP_WEEK_PANE (pane));
}

static char *
lap_week_window_subtitle (LapWindow *window)
{
  LapWeek *week = lap_document_week (lap_window_document (window));
  guint n_classes = lap_list_n (week->classes), n_rooms = lap_list_n (week->rooms), n_coaches = lap_list_n (week->coaches);
  g_autofree char *classes = g_strdup_printf (ngettext ("%u class", "%u classes", n_classes), n_classes);
  g_autofree char *rooms = g_strdup_printf (ngettext ("%u room", "%u rooms", n_rooms), n_rooms);
  g_autofree char *coaches = g_strdup_printf (ngettext ("%u coach", "%u coaches", n_coaches), n_coaches);

  /* Translators: how many classes, rooms and coaches a week has. */
  return g_strdup_printf (_("%1$s, %2$s, %3$s"), classes, rooms, coaches);
}

/* Actions */

static void
zoom_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  lap_week_view_zoom (LAP_WEEK_WINDOW (widget)->view, g_str_equal (name, "win.zoom-fit") ? 0 :
                      g_str_equal (name, "win.zoom-in") ? ZOOM_STEP : 1 / ZOOM_STEP);
}

static void
dates_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapWeekDates *dates = LAP_WEEK_DATES (LAP_WEEK_WINDOW (widget)->dates);

  if (g_str_equal (name, "win.week-always"))
    lap_week_dates_go (dates, 0);
  else if (g_str_equal (name, "win.week-today"))
    lap_week_dates_go (dates, lap_today ());
  else
    lap_week_dates_turn (dates, g_str_equal (name, "win.week-next") ? 1 : -1);
}

static void
lap_week_window_properties (LapWindow *window)
{
  lap_week_properties_open (window);
}

static void
fill_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  lap_window_commit (LAP_WINDOW (widget));
  lap_week_fill_open (LAP_WINDOW (widget));
}

static void
import_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  lap_window_commit (LAP_WINDOW (widget));
  gtk_window_present (lap_week_import_new (lap_window_document (LAP_WINDOW (widget)), GTK_WINDOW (widget)));
}

/* Nothing to place, nothing to find a place for. */
static void
document_cb (LapWeekWindow *self, LapDocument *document)
{
  LapWeek *week = lap_document_week (document);
  gboolean waiting = FALSE;

  for (guint i = 0; i < lap_list_n (week->classes); i++)
    waiting = waiting || !lap_class_is_placed (lap_list_nth (week->classes, i));
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "win.fill", waiting && lap_document_is_editable (document));
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "win.import", lap_document_is_editable (document));
  lap_window_find_again (LAP_WINDOW (self));
}

/* What the parts tell each other */

static void
selected_cb (LapWeekWindow *self)
{
  g_auto (GStrv) ids = lap_week_view_selected (self->view);
  GtkWidget *pane = lap_later_peek (self->pane);

  if (pane != NULL)
    lap_week_pane_select (LAP_WEEK_PANE (pane), (const char * const *) ids);
}

static void
open_session_cb (LapWeekWindow *self, const char *id)
{
  LapDocument *document = lap_window_document (LAP_WINDOW (self));
  LapApplication *application = LAP_APPLICATION (gtk_window_get_application (GTK_WINDOW (self)));
  LapClass *c = lap_week_class (lap_document_week (document), id);
  g_autoptr (GError) error = NULL;

  if (c == NULL || c->session == NULL || *c->session == '\0')
    gtk_widget_error_bell (GTK_WIDGET (self));
  else if (lap_application_open_path (application, c->session, &error) == NULL)
    lap_window_tell_error (LAP_WINDOW (self), _("The session can’t be opened"), error->message);
}

static GArray *
find_words (gpointer data, const char *text)
{
  LapDocument *document = lap_window_document (data);

  return lap_find_in_week (lap_document_week (document), lap_document_checkup (document), text);
}

static void
go_to_class (gpointer data, guint n)
{
  LapClass *c = lap_list_nth (lap_document_week (lap_window_document (data))->classes, n);

  lap_week_view_reveal (LAP_WEEK_WINDOW (data)->view, c->id);
}

static char *
classes_text (guint n)
{
  return g_strdup_printf (ngettext ("%u class", "%u classes", n), n);
}

/* A warning was chosen in the list. The class that has the cursor keeps it where the warning is about it, too. */
static void
chosen_cb (LapWeekWindow *self, guint n)
{
  LapCheckup *checkup = lap_document_checkup (lap_window_document (LAP_WINDOW (self)));
  const LapWarning *warning = lap_checkup_nth (checkup, n);
  LapClass *c = lap_week_scene_current (lap_week_view_scene (self->view));

  if (warning->n_classes == 0)
    return;
  if (c == NULL || !lap_warning_is_about (checkup, warning, c))
    c = lap_warning_class (checkup, warning, 0);
  lap_week_view_show (self->view, c->id);
}

/* The mark of a warning was clicked. */
static void
warning_cb (LapWeekWindow *self, guint n)
{
  lap_desk_set_shown (LAP_DESK (self->desk), LAP_DESK_END, TRUE);
  lap_week_pane_choose (lap_week_window_pane (self), n);
}

static GtkWidget *
build_pane (gpointer owner)
{
  LapWeekWindow *self = owner;
  GtkWidget *pane = g_object_new (LAP_TYPE_WEEK_PANE, NULL);
  g_auto (GStrv) ids = lap_week_view_selected (self->view);

  lap_week_pane_set_document (LAP_WEEK_PANE (pane), lap_window_document (LAP_WINDOW (self)));
  lap_week_pane_select (LAP_WEEK_PANE (pane), (const char * const *) ids);
  g_signal_connect_object (pane, "open-session", G_CALLBACK (open_session_cb), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (pane, "warning", G_CALLBACK (chosen_cb), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (pane, "preview", G_CALLBACK (lap_week_view_preview), self->view, G_CONNECT_SWAPPED);
  return pane;
}

/* The sessions of its classes are read when the week has been seen */

static void
read_cb (gpointer window)
{
  lap_document_read_sessions (lap_window_document (window));
}

static void
lap_week_window_map (GtkWidget *widget)
{
  GTK_WIDGET_CLASS (lap_week_window_parent_class)->map (widget);
  lap_moment_wait (&LAP_WEEK_WINDOW (widget)->moment, widget, read_cb);
}

static void
lap_week_window_unmap (GtkWidget *widget)
{
  lap_moment_forget (&LAP_WEEK_WINDOW (widget)->moment);
  GTK_WIDGET_CLASS (lap_week_window_parent_class)->unmap (widget);
}

static void
install_actions (GtkWidgetClass *klass)
{
  static const struct {
    const char *name;
    GtkWidgetActionActivateFunc func;
  } actions[] = {
    { "win.zoom-in", zoom_action }, { "win.zoom-out", zoom_action }, { "win.zoom-fit", zoom_action },
    { "win.week-always", dates_action }, { "win.week-today", dates_action }, { "win.week-next", dates_action },
    { "win.week-previous", dates_action }, { "win.fill", fill_action }, { "win.import", import_action },
  };

  for (guint i = 0; i < G_N_ELEMENTS (actions); i++)
    gtk_widget_class_install_action (klass, actions[i].name, NULL, actions[i].func);
}

static void
lap_week_window_class_init (LapWeekWindowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  widget_class->map = lap_week_window_map;
  widget_class->unmap = lap_week_window_unmap;
  LAP_WINDOW_CLASS (klass)->commit = lap_week_window_commit;
  LAP_WINDOW_CLASS (klass)->subtitle = lap_week_window_subtitle;
  LAP_WINDOW_CLASS (klass)->properties = lap_week_window_properties;
  g_type_ensure (LAP_TYPE_WEEK_DATES);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/week-window.ui");
  gtk_widget_class_bind_template_child (widget_class, LapWeekWindow, more);
  gtk_widget_class_bind_template_child (widget_class, LapWeekWindow, find);
  gtk_widget_class_bind_template_child (widget_class, LapWeekWindow, desk);
  gtk_widget_class_bind_template_child (widget_class, LapWeekWindow, plan);
  gtk_widget_class_bind_template_child (widget_class, LapWeekWindow, dates);
  gtk_widget_class_bind_template_child (widget_class, LapWeekWindow, pane);
  gtk_widget_class_bind_template_child (widget_class, LapWeekWindow, pane_toggle);
  gtk_widget_class_bind_template_child (widget_class, LapWeekWindow, sheets);
  install_actions (widget_class);
}

static void
lap_week_window_init (LapWeekWindow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  lap_window_add_menu (LAP_WINDOW (self), self->more);
}

GtkWidget *
lap_week_window_new (GtkApplication *application, LapDocument *document)
{
  LapWeekWindow *self = g_object_new (LAP_TYPE_WEEK_WINDOW, "application", application, NULL);
  const LapFindTarget target = { find_words, go_to_class, classes_text, _("Find in the week"),
                                 _("Class, coach, room or warning") };
  const LapWindowParts parts = { "week", LAP_DESK (self->desk), self->pane_toggle, self->find, target, self->sheets };

  self->view = lap_week_view_new (document);
  gtk_widget_set_vexpand (GTK_WIDGET (self->view), TRUE);
  gtk_box_append (GTK_BOX (self->plan), GTK_WIDGET (self->view));
  lap_week_dates_set_document (LAP_WEEK_DATES (self->dates), document);
  lap_later_set (self->pane, build_pane, self);
  g_signal_connect_object (self->view, "selected", G_CALLBACK (selected_cb), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (self->view, "open-session", G_CALLBACK (open_session_cb), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (self->view, "warning", G_CALLBACK (warning_cb), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (document, "changed", G_CALLBACK (document_cb), self, G_CONNECT_SWAPPED);
  lap_window_set_parts (LAP_WINDOW (self), &parts);
  document_cb (self, document);
  lap_window_set_document (LAP_WINDOW (self), document);
  return GTK_WIDGET (self);
}

LapWeekView *
lap_week_window_view (LapWeekWindow *self)
{
  return self->view;
}

LapWeekPane *
lap_week_window_pane (LapWeekWindow *self)
{
  return LAP_WEEK_PANE (lap_later_get (self->pane));
}
