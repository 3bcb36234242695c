/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/week-pane.h"

#include "ui/week-coaches.h"
#include "ui/week-load.h"

#include <glib/gi18n-lib.h>

struct _LapWeekPane {
  GtkWidget    parent_instance;
  LapDocument *document;
  gboolean     following; /* a selection comes from the list of warnings, which stays in sight */
  GtkWidget   *pages, *class_pane, *warnings, *load, *coaches;
};

enum { OPEN_SESSION, WARNING, PREVIEW, N_SIGNALS };
static guint signals[N_SIGNALS];

G_DEFINE_FINAL_TYPE (LapWeekPane, lap_week_pane, GTK_TYPE_WIDGET)

static void
document_cb (LapWeekPane *self)
{
  g_autoptr (LapWeekLoad) load = lap_week_load_new (lap_document_week (self->document), lap_document_date (self->document),
                                                    lap_document_attachments (self->document));

  lap_load_chart_show (LAP_LOAD_CHART (self->load), load);
  lap_week_coaches_show (LAP_WEEK_COACHES (self->coaches), load);
}

static void
open_cb (LapWeekPane *self, const char *id)
{
  g_signal_emit (self, signals[OPEN_SESSION], 0, id);
}

static void
chosen_cb (LapWeekPane *self, guint n)
{
  self->following = TRUE;
  g_signal_emit (self, signals[WARNING], 0, n);
  self->following = FALSE;
}

static void
preview_cb (LapWeekPane *self, gpointer edits)
{
  g_signal_emit (self, signals[PREVIEW], 0, edits);
}

static void
lap_week_pane_dispose (GObject *object)
{
  LapWeekPane *self = LAP_WEEK_PANE (object);
  GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (self));

  g_clear_pointer (&child, gtk_widget_unparent);
  g_clear_object (&self->document);
  G_OBJECT_CLASS (lap_week_pane_parent_class)->dispose (object);
}

static void
lap_week_pane_class_init (LapWeekPaneClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_week_pane_dispose;
  signals[OPEN_SESSION] = g_signal_new ("open-session", LAP_TYPE_WEEK_PANE, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                        G_TYPE_NONE, 1, G_TYPE_STRING);
  signals[WARNING] = g_signal_new ("warning", LAP_TYPE_WEEK_PANE, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 1,
                                   G_TYPE_UINT);
  signals[PREVIEW] = g_signal_new ("preview", LAP_TYPE_WEEK_PANE, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 1,
                                   G_TYPE_POINTER);
  g_type_ensure (LAP_TYPE_CLASS_PANE);
  g_type_ensure (LAP_TYPE_WARNINGS);
  g_type_ensure (LAP_TYPE_LOAD_CHART);
  g_type_ensure (LAP_TYPE_WEEK_COACHES);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/week-pane.ui");
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_bind_template_child (widget_class, LapWeekPane, pages);
  gtk_widget_class_bind_template_child (widget_class, LapWeekPane, class_pane);
  gtk_widget_class_bind_template_child (widget_class, LapWeekPane, warnings);
  gtk_widget_class_bind_template_child (widget_class, LapWeekPane, load);
  gtk_widget_class_bind_template_child (widget_class, LapWeekPane, coaches);
  gtk_widget_class_bind_template_callback (widget_class, open_cb);
  gtk_widget_class_bind_template_callback (widget_class, chosen_cb);
  gtk_widget_class_bind_template_callback (widget_class, preview_cb);
}

static void
lap_week_pane_init (LapWeekPane *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

void
lap_week_pane_set_document (LapWeekPane *self, LapDocument *document)
{
  self->document = g_object_ref (document);
  lap_class_pane_set_document (LAP_CLASS_PANE (self->class_pane), document);
  lap_warnings_set_document (LAP_WARNINGS (self->warnings), document);
  lap_week_coaches_set_document (LAP_WEEK_COACHES (self->coaches), document);
  g_signal_connect_object (document, "changed", G_CALLBACK (document_cb), self, G_CONNECT_SWAPPED);
  document_cb (self);
}

void
lap_week_pane_select (LapWeekPane *self, const char * const *ids)
{
  lap_class_pane_select (LAP_CLASS_PANE (self->class_pane), ids);
  if (ids != NULL && ids[0] != NULL && !self->following)
    gtk_stack_set_visible_child_name (GTK_STACK (self->pages), "class");
}

void
lap_week_pane_choose (LapWeekPane *self, guint n)
{
  gtk_stack_set_visible_child_name (GTK_STACK (self->pages), "warnings");
  lap_warnings_choose (LAP_WARNINGS (self->warnings), n);
}

void
lap_week_pane_commit (LapWeekPane *self)
{
  lap_class_pane_commit (LAP_CLASS_PANE (self->class_pane));
  lap_week_coaches_commit (LAP_WEEK_COACHES (self->coaches));
}

LapClassPane *
lap_week_pane_class (LapWeekPane *self)
{
  return LAP_CLASS_PANE (self->class_pane);
}

LapWarnings *
lap_week_pane_warnings (LapWeekPane *self)
{
  return LAP_WARNINGS (self->warnings);
}
