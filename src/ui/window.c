/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/window.h"

#include "base/error.h"
#include "ui/arrange.h"
#include "ui/desk.h"
#include "ui/export.h"
#include "ui/sheets-view.h"
#include "ui/heading.h"
#include "ui/meter.h"
#include "ui/notice.h"
#include "ui/publish.h"
#include "ui/rehearse/page.h"
#include "ui/properties.h"
#include "ui/saving.h"
#include "ui/score/folds.h"
#include "ui/script-view.h"
#include "ui/shortcuts.h"
#include "ui/watch.h"

#include <glib/gi18n-lib.h>

struct _LapWindow {
  AdwApplicationWindow parent_instance;
  LapDocument     *document;
  LapKeeper       *keeper; /* of its draft, or NULL */
  LapWatch        *watch;  /* of its file */
  LapScoreContext *context;
  AdwToast        *toast; /* on show, or NULL */
  gboolean         closing; /* asked about, and decided */
  GtkWidget       *title, *undo, *redo, *meter, *notice, *toasts, *desk, *shelf, *heading, *score, *warnings, *pane;
  GtkWidget       *views, *rehearse, *sheets, *script, *catalogue_toggle, *pane_toggle;
};

G_DEFINE_FINAL_TYPE (LapWindow, lap_window, ADW_TYPE_APPLICATION_WINDOW)

#define ZOOM_STEP 1.25

static void
dismissed_cb (LapWindow *self)
{
  g_clear_object (&self->toast);
}

/* One toast at a time: what is told takes the place of what was, so that ten quick edits don't queue up. */
void
lap_window_tell (LapWindow *self, const char *text, gboolean undoable)
{
  g_autofree char *markup = g_markup_escape_text (text, -1);
  AdwToast *toast = adw_toast_new (markup);

  if (self->toast != NULL)
    adw_toast_dismiss (self->toast);
  if (undoable) {
    adw_toast_set_button_label (toast, _("Undo"));
    adw_toast_set_action_name (toast, "win.undo");
  }
  g_set_object (&self->toast, toast);
  g_signal_connect_object (toast, "dismissed", G_CALLBACK (dismissed_cb), self, G_CONNECT_SWAPPED);
  adw_toast_overlay_add_toast (ADW_TOAST_OVERLAY (self->toasts), toast);
}

void
lap_window_tell_error (LapWindow *self, const char *what, const char *why)
{
  GtkWidget *dialog = adw_message_dialog_new (GTK_WINDOW (self), what, why);

  adw_message_dialog_add_response (ADW_MESSAGE_DIALOG (dialog), "close", _("_Close"));
  gtk_window_present (GTK_WINDOW (dialog));
}

static void
show_state (LapWindow *self)
{
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "win.save", lap_document_is_editable (self->document));
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "win.revert", lap_document_path (self->document) != NULL);
}

static void
show_title (LapWindow *self)
{
  const char *title = lap_document_title (self->document);
  g_autofree char *length = lap_document_length_text (self->document), *marked = NULL, *subtitle = NULL;

  marked = lap_document_is_modified (self->document) ? g_strconcat ("• ", title, NULL) : g_strdup (title);
  subtitle = lap_document_is_editable (self->document) ? g_strdup (length)
                                                       : g_strdup_printf (_("%s, read-only"), length);
  adw_view_switcher_title_set_title (ADW_VIEW_SWITCHER_TITLE (self->title), marked);
  adw_view_switcher_title_set_subtitle (ADW_VIEW_SWITCHER_TITLE (self->title), subtitle);
  gtk_window_set_title (GTK_WINDOW (self), marked);
  lap_meter_set (LAP_METER (self->meter), lap_document_timeline (self->document)->length,
                 lap_document_session (self->document)->target, length);
}

static void
show_step (LapWindow *self, const char *action, GtkWidget *button, const char *label, const char *format,
           const char *without)
{
  g_autofree char *tip = label != NULL ? g_strdup_printf (format, label) : g_strdup (without);

  gtk_widget_action_set_enabled (GTK_WIDGET (self), action, label != NULL);
  gtk_widget_set_tooltip_text (button, tip);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, tip, -1);
}

static void
document_cb (LapWindow *self)
{
  LapHistory *history = lap_document_history (self->document);

  show_title (self);
  show_state (self);
  lap_heading_show (LAP_HEADING (self->heading), self->document);
  show_step (self, "win.undo", self->undo, lap_history_undo_label (history), _("Undo: %s"), _("Undo"));
  show_step (self, "win.redo", self->redo, lap_history_redo_label (history), _("Redo: %s"), _("Redo"));
}

static void
undo_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapWindow *self = LAP_WINDOW (widget);

  lap_window_commit (self);
  if (g_str_equal (name, "win.undo"))
    lap_document_undo (self->document);
  else
    lap_document_redo (self->document);
}

static void
zoom_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapWindow *self = LAP_WINDOW (widget);

  if (g_str_equal (name, "win.zoom-fit"))
    lap_score_fit (self->context);
  else if (g_str_equal (name, "win.unfold"))
    lap_folds_unfold (self->context);
  else if (g_str_equal (name, "win.zoom-round") || g_str_equal (name, "win.zoom-selection")) {
    if (!lap_folds_fit (self->context, g_str_equal (name, "win.zoom-round")))
      gtk_widget_error_bell (widget);
  }
  else
    lap_score_view_zoom (LAP_SCORE_VIEW (self->score), g_str_equal (name, "win.zoom-in") ? ZOOM_STEP : 1 / ZOOM_STEP);
}

static void
pane_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapDesk *desk = LAP_DESK (LAP_WINDOW (widget)->desk);

  lap_desk_set_shown (desk, LAP_DESK_END, !lap_desk_get_shown (desk, LAP_DESK_END));
}

static void
catalogue_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapWindow *self = LAP_WINDOW (widget);
  LapDesk *desk = LAP_DESK (self->desk);
  gboolean shown = g_str_equal (name, "win.find-exercise") || !lap_desk_get_shown (desk, LAP_DESK_START);

  lap_desk_set_shown (desk, LAP_DESK_START, shown);
  if (shown) {
    adw_view_stack_set_visible_child_name (ADW_VIEW_STACK (self->views), "plan");
    lap_shelf_find (LAP_SHELF (self->shelf));
  }
}

static void
formula_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  lap_heading_type_formula (LAP_HEADING (LAP_WINDOW (widget)->heading));
}

/* A narrow window leaves out what explains the lanes. */
static void
folded_cb (LapWindow *self)
{
  lap_score_view_set_narrow (LAP_SCORE_VIEW (self->score), lap_desk_is_folded (LAP_DESK (self->desk), LAP_DESK_START));
}

/* What lies over the score makes way for what is dragged onto it. */
static void
dragging_cb (LapWindow *self)
{
  if (lap_desk_is_folded (LAP_DESK (self->desk), LAP_DESK_START))
    lap_desk_set_shown (LAP_DESK (self->desk), LAP_DESK_START, FALSE);
}

static void
export_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  lap_window_commit (LAP_WINDOW (widget));
  gtk_window_present (lap_export_new (LAP_WINDOW (widget)));
}

static void
publish_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  lap_window_commit (LAP_WINDOW (widget));
  gtk_window_present (lap_publish_dialog_new (LAP_WINDOW (widget)));
}

static void
view_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  adw_view_stack_set_visible_child_name (ADW_VIEW_STACK (LAP_WINDOW (widget)->views), g_variant_get_string (parameter, NULL));
}

/* The sides belong to the plan: elsewhere their buttons would do nothing that can be seen. */
static void
view_cb (LapWindow *self)
{
  gboolean plan = g_strcmp0 (adw_view_stack_get_visible_child_name (ADW_VIEW_STACK (self->views)), "plan") == 0;

  gtk_widget_set_visible (self->catalogue_toggle, plan);
  gtk_widget_set_visible (self->pane_toggle, plan);
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "win.catalogue", plan);
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "win.pane", plan);
}

static void
print_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapWindow *self = LAP_WINDOW (widget);

  lap_window_commit (self);
  adw_view_stack_set_visible_child_name (ADW_VIEW_STACK (self->views), "sheets");
  lap_sheets_view_print (LAP_SHEETS_VIEW (self->sheets));
}

static void
shortcuts_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  GtkWindow *window = lap_shortcuts_window ();

  gtk_window_set_transient_for (window, GTK_WINDOW (widget));
  gtk_window_present (window);
}

static gboolean
lap_window_close_request (GtkWindow *window)
{
  LapWindow *self = LAP_WINDOW (window);

  if (!self->closing) {
    lap_window_commit (self);
    if (lap_document_is_modified (self->document)) {
      lap_saving_ask_before_closing (self);
      return TRUE;
    }
  }
  if (self->keeper != NULL)
    lap_keeper_discard (self->keeper);
  return GTK_WINDOW_CLASS (lap_window_parent_class)->close_request (window);
}

static void
lap_window_dispose (GObject *object)
{
  LapWindow *self = LAP_WINDOW (object);

  g_clear_object (&self->toast);
  g_clear_object (&self->keeper);
  g_clear_object (&self->watch);
  g_clear_object (&self->context);
  G_OBJECT_CLASS (lap_window_parent_class)->dispose (object);
}

static void
lap_window_finalize (GObject *object)
{
  g_clear_object (&LAP_WINDOW (object)->document);
  G_OBJECT_CLASS (lap_window_parent_class)->finalize (object);
}

static void
install_actions (GtkWidgetClass *klass)
{
  gtk_widget_class_install_action (klass, "win.undo", NULL, undo_action);
  gtk_widget_class_install_action (klass, "win.redo", NULL, undo_action);
  lap_saving_install (klass);
  lap_properties_install (klass);
  gtk_widget_class_install_action (klass, "win.export", NULL, export_action);
  gtk_widget_class_install_action (klass, "win.publish", NULL, publish_action);
  gtk_widget_class_install_action (klass, "win.print", NULL, print_action);
  gtk_widget_class_install_action (klass, "win.zoom-in", NULL, zoom_action);
  gtk_widget_class_install_action (klass, "win.zoom-out", NULL, zoom_action);
  gtk_widget_class_install_action (klass, "win.zoom-fit", NULL, zoom_action);
  gtk_widget_class_install_action (klass, "win.zoom-round", NULL, zoom_action);
  gtk_widget_class_install_action (klass, "win.zoom-selection", NULL, zoom_action);
  gtk_widget_class_install_action (klass, "win.unfold", NULL, zoom_action);
  gtk_widget_class_install_action (klass, "win.pane", NULL, pane_action);
  gtk_widget_class_install_action (klass, "win.view", "s", view_action);
  gtk_widget_class_install_action (klass, "win.formula", NULL, formula_action);
  gtk_widget_class_install_action (klass, "win.catalogue", NULL, catalogue_action);
  gtk_widget_class_install_action (klass, "win.find-exercise", NULL, catalogue_action);
  gtk_widget_class_install_action (klass, "win.shortcuts", NULL, shortcuts_action);
  lap_arrange_install (klass);
}

static void
lap_window_class_init (LapWindowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_window_dispose;
  G_OBJECT_CLASS (klass)->finalize = lap_window_finalize;
  GTK_WINDOW_CLASS (klass)->close_request = lap_window_close_request;
  g_type_ensure (LAP_TYPE_METER);
  g_type_ensure (LAP_TYPE_NOTICE);
  g_type_ensure (LAP_TYPE_HEADING);
  g_type_ensure (LAP_TYPE_SCORE_VIEW);
  g_type_ensure (LAP_TYPE_WARNINGS);
  g_type_ensure (LAP_TYPE_PANE);
  g_type_ensure (LAP_TYPE_SHEETS_VIEW);
  g_type_ensure (LAP_TYPE_SCRIPT_VIEW);
  g_type_ensure (LAP_TYPE_REHEARSE_PAGE);
  g_type_ensure (LAP_TYPE_DESK);
  g_type_ensure (LAP_TYPE_SHELF);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/window.ui");
  gtk_widget_class_bind_template_child (widget_class, LapWindow, title);
  gtk_widget_class_bind_template_child (widget_class, LapWindow, undo);
  gtk_widget_class_bind_template_child (widget_class, LapWindow, redo);
  gtk_widget_class_bind_template_child (widget_class, LapWindow, meter);
  gtk_widget_class_bind_template_child (widget_class, LapWindow, notice);
  gtk_widget_class_bind_template_child (widget_class, LapWindow, toasts);
  gtk_widget_class_bind_template_child (widget_class, LapWindow, desk);
  gtk_widget_class_bind_template_child (widget_class, LapWindow, shelf);
  gtk_widget_class_bind_template_child (widget_class, LapWindow, heading);
  gtk_widget_class_bind_template_child (widget_class, LapWindow, score);
  gtk_widget_class_bind_template_child (widget_class, LapWindow, warnings);
  gtk_widget_class_bind_template_child (widget_class, LapWindow, pane);
  gtk_widget_class_bind_template_child (widget_class, LapWindow, sheets);
  gtk_widget_class_bind_template_child (widget_class, LapWindow, script);
  gtk_widget_class_bind_template_child (widget_class, LapWindow, views);
  gtk_widget_class_bind_template_child (widget_class, LapWindow, rehearse);
  gtk_widget_class_bind_template_child (widget_class, LapWindow, catalogue_toggle);
  gtk_widget_class_bind_template_child (widget_class, LapWindow, pane_toggle);
  gtk_widget_class_bind_template_callback (widget_class, folded_cb);
  gtk_widget_class_bind_template_callback (widget_class, view_cb);
  install_actions (widget_class);
}

static void
lap_window_init (LapWindow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

GtkWidget *
lap_window_new (GtkApplication *application, LapDocument *document)
{
  LapWindow *self = g_object_new (LAP_TYPE_WINDOW, "application", application, NULL);

  self->document = g_object_ref (document);
  self->watch = lap_watch_new (document);
  self->context = lap_score_context_new (document);
  lap_notice_set_document (LAP_NOTICE (self->notice), document);
  lap_score_view_set_context (LAP_SCORE_VIEW (self->score), self->context);
  lap_warnings_set_context (LAP_WARNINGS (self->warnings), self->context);
  lap_pane_set_context (LAP_PANE (self->pane), self->context);
  lap_sheets_view_set_document (LAP_SHEETS_VIEW (self->sheets), document);
  lap_rehearse_page_set_context (LAP_REHEARSE_PAGE (self->rehearse), self->context);
  lap_script_view_set_context (LAP_SCRIPT_VIEW (self->script), self->context);
  lap_shelf_set_context (LAP_SHELF (self->shelf), self->context);
  g_signal_connect_object (lap_shelf_grid (LAP_SHELF (self->shelf)), "dragging", G_CALLBACK (dragging_cb), self,
                           G_CONNECT_SWAPPED);
  g_signal_connect_object (document, "changed", G_CALLBACK (document_cb), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (document, "notify::state", G_CALLBACK (show_title), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (document, "notify::state", G_CALLBACK (show_state), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (document, "told", G_CALLBACK (lap_window_tell), self, G_CONNECT_SWAPPED);
  document_cb (self);
  return GTK_WIDGET (self);
}

void
lap_window_close_anyway (LapWindow *self)
{
  self->closing = TRUE;
  gtk_window_close (GTK_WINDOW (self));
}

void
lap_window_set_keeper (LapWindow *self, LapKeeper *keeper)
{
  g_set_object (&self->keeper, keeper);
}

LapDocument *
lap_window_document (LapWindow *self)
{
  return self->document;
}

LapScoreContext *
lap_window_context (LapWindow *self)
{
  return self->context;
}

LapScoreView *
lap_window_score (LapWindow *self)
{
  return LAP_SCORE_VIEW (self->score);
}

void
lap_window_commit (LapWindow *self)
{
  lap_pane_commit (LAP_PANE (self->pane));
  lap_script_view_commit (LAP_SCRIPT_VIEW (self->script));
}

LapPane *
lap_window_pane (LapWindow *self)
{
  return LAP_PANE (self->pane);
}

LapShelf *
lap_window_shelf (LapWindow *self)
{
  return LAP_SHELF (self->shelf);
}

LapWarnings *
lap_window_warnings (LapWindow *self)
{
  return LAP_WARNINGS (self->warnings);
}
