/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/session-window.h"

#include "ui/arrange.h"
#include "ui/export.h"
#include "ui/finding.h"
#include "ui/heading.h"
#include "ui/meter.h"
#include "ui/rehearse/page.h"
#include "ui/properties.h"
#include "ui/score/folds.h"
#include "ui/script-view.h"

#include <glib/gi18n-lib.h>

struct _LapSessionWindow {
  LapWindow        parent_instance;
  LapScoreContext *context;
  GtkWidget       *meter, *desk, *heading, *score, *catalogue_toggle, *pane_toggle;
  LapLater        *find, *shelf, *warnings, *pane, *rehearse, *sheets, *script;
  GMenuModel      *more;
};

G_DEFINE_FINAL_TYPE (LapSessionWindow, lap_session_window, LAP_TYPE_WINDOW)

#define ZOOM_STEP 1.25

static void
zoom_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapSessionWindow *self = LAP_SESSION_WINDOW (widget);

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
catalogue_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapSessionWindow *self = LAP_SESSION_WINDOW (widget);
  LapDesk *desk = LAP_DESK (self->desk);
  gboolean shown = g_str_equal (name, "win.find-exercise") || !lap_desk_get_shown (desk, LAP_DESK_START);

  lap_desk_set_shown (desk, LAP_DESK_START, shown);
  if (shown) {
    lap_window_show_view (LAP_WINDOW (self), "plan");
    lap_shelf_find (lap_window_shelf (LAP_WINDOW (self)));
  }
}

static void
blocks_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  GtkWidget *blocks = GTK_WIDGET (lap_score_view_blocks (lap_window_score (LAP_WINDOW (widget))));
  GtkWidget *focus = gtk_window_get_focus (GTK_WINDOW (widget));

  lap_window_show_view (LAP_WINDOW (widget), "plan");
  if (focus == NULL || !gtk_widget_is_ancestor (focus, blocks))
    gtk_widget_child_focus (blocks, GTK_DIR_TAB_FORWARD);
}

static void
fields_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapSessionWindow *self = LAP_SESSION_WINDOW (widget);

  lap_desk_set_shown (LAP_DESK (self->desk), LAP_DESK_END, TRUE);
  gtk_widget_child_focus (GTK_WIDGET (lap_window_pane (LAP_WINDOW (self))), GTK_DIR_TAB_FORWARD);
}

/* The arrows go on from the block for which something was chosen. */
static void
chose_cb (GtkWidget *popover, LapBlocksLane *blocks)
{
  g_signal_handlers_disconnect_by_func (popover, chose_cb, blocks);
  lap_blocks_lane_take_focus (blocks);
}

/* For the block that is selected; where none is, one gets the focus and is. */
static void
exercise_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapWindow *self = LAP_WINDOW (widget);
  GtkWidget *popover;

  blocks_action (widget, name, parameter);
  lap_desk_set_shown (LAP_DESK (LAP_SESSION_WINDOW (self)->desk), LAP_DESK_END, TRUE);
  popover = lap_pane_choose (lap_window_pane (self));
  if (popover != NULL)
    g_signal_connect_object (popover, "closed", G_CALLBACK (chose_cb), lap_score_view_blocks (lap_window_score (self)), 0);
  else
    gtk_widget_error_bell (widget);
}

static void
formula_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  lap_heading_type_formula (LAP_HEADING (LAP_SESSION_WINDOW (widget)->heading));
}

/* A narrow window leaves out what explains the lanes. */
static void
folded_cb (LapSessionWindow *self)
{
  lap_score_view_set_narrow (LAP_SCORE_VIEW (self->score), lap_desk_is_folded (LAP_DESK (self->desk), LAP_DESK_START));
}

/* What lies over the score makes way for what is dragged onto it. */
static void
dragging_cb (LapSessionWindow *self)
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

/* The catalogue belongs to the plan, as the pane does. */
static void
view_cb (LapSessionWindow *self)
{
  gboolean plan = g_strcmp0 (lap_window_view (LAP_WINDOW (self)), "plan") == 0;

  gtk_widget_set_visible (self->catalogue_toggle, plan);
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "win.catalogue", plan);
}

static void
lap_session_window_commit (LapWindow *window)
{
  LapSessionWindow *self = LAP_SESSION_WINDOW (window);
  GtkWidget *pane = lap_later_peek (self->pane), *script = lap_later_peek (self->script);

  if (pane != NULL)
    lap_pane_commit (LAP_PANE (pane));
  if (script != NULL)
    lap_script_view_commit (LAP_SCRIPT_VIEW (script));
}

static char *
lap_session_window_subtitle (LapWindow *window)
{
  return lap_document_length_text (lap_window_document (window));
}

static GArray *
find_words (gpointer data, const char *text)
{
  LapScoreContext *context = LAP_SESSION_WINDOW (data)->context;

  return lap_find_in_score (context->score, lap_document_checkup (context->document), text);
}

static void
go_to_block (gpointer data, guint box)
{
  lap_score_select (LAP_SESSION_WINDOW (data)->context, box);
}

static char *
blocks_text (guint n)
{
  return g_strdup_printf (ngettext ("%u block", "%u blocks", n), n);
}

static void
context_cb (LapSessionWindow *self, guint change)
{
  const LapScore *shown = self->context->preview != NULL ? self->context->preview : self->context->score;

  if (change & LAP_SCORE_PLAN)
    lap_window_find_again (LAP_WINDOW (self));
  if (change & LAP_SCORE_PREVIEW)
    lap_heading_preview (LAP_HEADING (self->heading), shown->timeline->length);
}

static void
lap_session_window_properties (LapWindow *window)
{
  lap_properties_open (window);
}

static void
document_cb (LapSessionWindow *self, LapDocument *document)
{
  g_autofree char *length = lap_document_length_text (document);

  lap_meter_set (LAP_METER (self->meter), lap_document_timeline (document)->length,
                 lap_document_session (document)->target, length);
  lap_heading_show (LAP_HEADING (self->heading), document);
}

static void
lap_session_window_dispose (GObject *object)
{
  g_clear_object (&LAP_SESSION_WINDOW (object)->context);
  G_OBJECT_CLASS (lap_session_window_parent_class)->dispose (object);
}

static void
install_actions (GtkWidgetClass *klass)
{
  gtk_widget_class_install_action (klass, "win.export", NULL, export_action);
  gtk_widget_class_install_action (klass, "win.zoom-in", NULL, zoom_action);
  gtk_widget_class_install_action (klass, "win.zoom-out", NULL, zoom_action);
  gtk_widget_class_install_action (klass, "win.zoom-fit", NULL, zoom_action);
  gtk_widget_class_install_action (klass, "win.zoom-round", NULL, zoom_action);
  gtk_widget_class_install_action (klass, "win.zoom-selection", NULL, zoom_action);
  gtk_widget_class_install_action (klass, "win.unfold", NULL, zoom_action);
  gtk_widget_class_install_action (klass, "win.formula", NULL, formula_action);
  gtk_widget_class_install_action (klass, "win.blocks", NULL, blocks_action);
  gtk_widget_class_install_action (klass, "win.exercise", NULL, exercise_action);
  gtk_widget_class_install_action (klass, "win.fields", NULL, fields_action);
  gtk_widget_class_install_action (klass, "win.catalogue", NULL, catalogue_action);
  gtk_widget_class_install_action (klass, "win.find-exercise", NULL, catalogue_action);
  lap_arrange_install (klass);
}

static void
lap_session_window_class_init (LapSessionWindowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_session_window_dispose;
  LAP_WINDOW_CLASS (klass)->commit = lap_session_window_commit;
  LAP_WINDOW_CLASS (klass)->subtitle = lap_session_window_subtitle;
  LAP_WINDOW_CLASS (klass)->properties = lap_session_window_properties;
  g_type_ensure (LAP_TYPE_METER);
  g_type_ensure (LAP_TYPE_HEADING);
  g_type_ensure (LAP_TYPE_SCORE_VIEW);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/session-window.ui");
  gtk_widget_class_bind_template_child (widget_class, LapSessionWindow, more);
  gtk_widget_class_bind_template_child (widget_class, LapSessionWindow, meter);
  gtk_widget_class_bind_template_child (widget_class, LapSessionWindow, find);
  gtk_widget_class_bind_template_child (widget_class, LapSessionWindow, desk);
  gtk_widget_class_bind_template_child (widget_class, LapSessionWindow, shelf);
  gtk_widget_class_bind_template_child (widget_class, LapSessionWindow, heading);
  gtk_widget_class_bind_template_child (widget_class, LapSessionWindow, score);
  gtk_widget_class_bind_template_child (widget_class, LapSessionWindow, warnings);
  gtk_widget_class_bind_template_child (widget_class, LapSessionWindow, pane);
  gtk_widget_class_bind_template_child (widget_class, LapSessionWindow, sheets);
  gtk_widget_class_bind_template_child (widget_class, LapSessionWindow, script);
  gtk_widget_class_bind_template_child (widget_class, LapSessionWindow, rehearse);
  gtk_widget_class_bind_template_child (widget_class, LapSessionWindow, catalogue_toggle);
  gtk_widget_class_bind_template_child (widget_class, LapSessionWindow, pane_toggle);
  gtk_widget_class_bind_template_callback (widget_class, folded_cb);
  gtk_widget_class_bind_template_callback (widget_class, view_cb);
  install_actions (widget_class);
}

/* A warning of the list was chosen: its block is selected. */
static void
chosen_cb (LapSessionWindow *self, guint n)
{
  const LapWarning *warning = lap_checkup_nth (lap_document_checkup (self->context->document), n);
  const LapScore *score = self->context->score;
  guint box = LAP_NO_BOX;

  if (warning->part >= 0 && warning->block >= 0)
    box = lap_score_find (score, warning->part, warning->block, MAX (1, warning->round));
  else if (warning->start >= 0)
    box = lap_score_at (score, warning->start);
  if (box != LAP_NO_BOX)
    lap_score_select (self->context, box);
}

/* The parts that are built when they are first shown */

static GtkWidget *
build_warnings (gpointer owner)
{
  LapSessionWindow *self = owner;
  GtkWidget *warnings = g_object_new (LAP_TYPE_WARNINGS, NULL);

  lap_warnings_set_document (LAP_WARNINGS (warnings), self->context->document);
  g_signal_connect_object (warnings, "chosen", G_CALLBACK (chosen_cb), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (warnings, "preview", G_CALLBACK (lap_score_preview), self->context, G_CONNECT_SWAPPED);
  return warnings;
}

/* The mark of a warning was clicked. */
static void
warning_cb (LapSessionWindow *self, guint n)
{
  lap_warnings_choose (lap_window_warnings (LAP_WINDOW (self)), n);
}

static GtkWidget *
build_shelf (gpointer owner)
{
  LapSessionWindow *self = owner;
  GtkWidget *shelf = g_object_new (LAP_TYPE_SHELF, NULL);

  lap_shelf_set_context (LAP_SHELF (shelf), self->context);
  g_signal_connect_object (lap_shelf_grid (LAP_SHELF (shelf)), "dragging", G_CALLBACK (dragging_cb), self,
                           G_CONNECT_SWAPPED);
  return shelf;
}

static GtkWidget *
build_pane (gpointer owner)
{
  GtkWidget *pane = g_object_new (LAP_TYPE_PANE, NULL);

  lap_pane_set_context (LAP_PANE (pane), LAP_SESSION_WINDOW (owner)->context);
  return pane;
}

static GtkWidget *
build_rehearse (gpointer owner)
{
  GtkWidget *page = g_object_new (LAP_TYPE_REHEARSE_PAGE, NULL);

  lap_rehearse_page_set_context (LAP_REHEARSE_PAGE (page), LAP_SESSION_WINDOW (owner)->context);
  return page;
}

static GtkWidget *
build_script (gpointer owner)
{
  GtkWidget *view = g_object_new (LAP_TYPE_SCRIPT_VIEW, NULL);

  lap_script_view_set_context (LAP_SCRIPT_VIEW (view), LAP_SESSION_WINDOW (owner)->context);
  return view;
}

static void
set_parts (LapSessionWindow *self)
{
  const LapFindTarget target = { find_words, go_to_block, blocks_text, _("Find in the session"),
                                 _("Exercise, words, note or warning") };
  const LapWindowParts parts = { "plan", LAP_DESK (self->desk), self->pane_toggle, self->find, target, self->sheets };

  lap_window_set_parts (LAP_WINDOW (self), &parts);
  lap_later_set (self->warnings, build_warnings, self);
  lap_later_set (self->shelf, build_shelf, self);
  lap_later_set (self->pane, build_pane, self);
  lap_later_set (self->rehearse, build_rehearse, self);
  lap_later_set (self->script, build_script, self);
}

static void
lap_session_window_init (LapSessionWindow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  lap_window_add_menu (LAP_WINDOW (self), self->more);
}

GtkWidget *
lap_session_window_new (GtkApplication *application, LapDocument *document)
{
  LapSessionWindow *self = g_object_new (LAP_TYPE_SESSION_WINDOW, "application", application, NULL);

  self->context = lap_score_context_new (document);
  lap_score_view_set_context (LAP_SCORE_VIEW (self->score), self->context);
  set_parts (self);
  g_signal_connect_object (self->context, "warning", G_CALLBACK (warning_cb), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (self->context, "changed", G_CALLBACK (context_cb), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (document, "changed", G_CALLBACK (document_cb), self, G_CONNECT_SWAPPED);
  document_cb (self, document);
  lap_window_set_document (LAP_WINDOW (self), document);
  view_cb (self);
  return GTK_WIDGET (self);
}

LapScoreContext *
lap_window_context (LapWindow *self)
{
  return LAP_SESSION_WINDOW (self)->context;
}

LapScoreView *
lap_window_score (LapWindow *self)
{
  return LAP_SCORE_VIEW (LAP_SESSION_WINDOW (self)->score);
}

LapPane *
lap_window_pane (LapWindow *self)
{
  return LAP_PANE (lap_later_get (LAP_SESSION_WINDOW (self)->pane));
}

LapShelf *
lap_window_shelf (LapWindow *self)
{
  return LAP_SHELF (lap_later_get (LAP_SESSION_WINDOW (self)->shelf));
}

LapWarnings *
lap_window_warnings (LapWindow *self)
{
  return LAP_WARNINGS (lap_later_get (LAP_SESSION_WINDOW (self)->warnings));
}
