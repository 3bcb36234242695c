/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/warning-row.h"

#include "edit/verbs.h"
#include "ui/around.h"
#include "ui/mark.h"
#include "ui/flow.h"

#include <glib/gi18n-lib.h>

struct _LapWarningRow {
  GtkListBoxRow parent_instance;
  LapDocument  *document;
  LapCheckup   *checkup; /* that holds the warning */
  guint         n;
  GPtrArray    *found;   /* LapRemedy, NULL until they are made */
  GtkWidget    *mark, *message, *why, *remedies, *more;
  GMenuModel   *kept_menu;
};

static guint preview_signal;

G_DEFINE_FINAL_TYPE (LapWarningRow, lap_warning_row, GTK_TYPE_LIST_BOX_ROW)

const LapWarning *
lap_warning_row_warning (LapWarningRow *self)
{
  return lap_checkup_nth (self->checkup, self->n);
}

static void
tell_preview (LapWarningRow *self, LapEdits *edits)
{
  g_signal_emit (self, preview_signal, 0, edits);
}

static void
pointed_cb (GtkEventController *motion, double x, double y, LapWarningRow *self)
{
  LapRemedy *remedy = g_object_get_data (G_OBJECT (gtk_event_controller_get_widget (motion)), "remedy");

  tell_preview (self, remedy->edits);
}

static void
left_cb (LapWarningRow *self)
{
  tell_preview (self, NULL);
}

static void
focus_cb (GtkWidget *button, GParamSpec *pspec, LapWarningRow *self)
{
  LapRemedy *remedy = g_object_get_data (G_OBJECT (button), "remedy");

  tell_preview (self, gtk_widget_has_focus (button) ? remedy->edits : NULL);
}

/* Whoever points at a remedy or moves the focus to it sees what it would do. */
static void
add_preview (LapWarningRow *self, GtkWidget *button)
{
  GtkEventController *motion = gtk_event_controller_motion_new ();

  g_signal_connect (motion, "enter", G_CALLBACK (pointed_cb), self);
  g_signal_connect_swapped (motion, "leave", G_CALLBACK (left_cb), self);
  gtk_widget_add_controller (button, motion);
  g_signal_connect (button, "notify::has-focus", G_CALLBACK (focus_cb), self);
}

static void
remedy_cb (GtkButton *button, LapWarningRow *self)
{
  LapRemedy *remedy = g_object_get_data (G_OBJECT (button), "remedy");

  /* The edit makes new rows: this one may be gone when it returns. */
  lap_document_apply (self->document, lap_edits_copy (remedy->edits));
}

gboolean
lap_warning_row_fill (LapWarningRow *self)
{
  if (self->found != NULL)
    return FALSE;
  self->found = lap_warning_remedies (self->checkup, lap_warning_row_warning (self));
  for (guint i = 0; i < self->found->len; i++) {
    LapRemedy *remedy = g_ptr_array_index (self->found, i);
    GtkWidget *button = gtk_button_new_with_label (remedy->label);
    GtkWidget *label = gtk_button_get_child (GTK_BUTTON (button));

    /* In a narrow list the end of it, who or when, is what counts. */
    gtk_label_set_wrap (GTK_LABEL (label), TRUE);
    gtk_label_set_wrap_mode (GTK_LABEL (label), PANGO_WRAP_WORD_CHAR);
    gtk_label_set_xalign (GTK_LABEL (label), 0);
    gtk_widget_add_css_class (button, "remedy");
    g_object_set_data (G_OBJECT (button), "remedy", remedy);
    g_signal_connect (button, "clicked", G_CALLBACK (remedy_cb), self);
    add_preview (self, button);
    gtk_box_append (GTK_BOX (self->remedies), button);
  }
  gtk_widget_set_visible (self->remedies, self->found->len > 0);
  return TRUE;
}

static void
fine_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapWarningRow *self = LAP_WARNING_ROW (widget);

  lap_document_apply (self->document, lap_warning_fine (self->checkup, lap_warning_row_warning (self)));
}

static gboolean
keeps (char **fine, const char *check)
{
  return fine != NULL && g_strv_contains ((const char * const *) fine, check);
}

/* The one of the warning's classes that keeps it quiet. */
static LapObject *
keeping_class (LapWarningRow *self)
{
  const LapWarning *warning = lap_warning_row_warning (self);

  for (guint i = 0; i < warning->n_classes; i++)
    if (keeps (lap_warning_class (self->checkup, warning, i)->fine, warning->check->id))
      return LAP_OBJECT (lap_warning_class (self->checkup, warning, i));
  return NULL;
}

/* What keeps the warning quiet: its block, its part or the session; one of its classes. */
static LapObject *
keeper (LapWarningRow *self)
{
  const LapWarning *warning = lap_warning_row_warning (self);
  LapSession *session = lap_document_session (self->document);
  LapPart *part = warning->part >= 0 ? lap_session_nth (session, warning->part) : NULL;
  LapBlock *block = part != NULL && warning->block >= 0 ? lap_part_nth (part, warning->block) : NULL;

  if (session == NULL)
    return keeping_class (self);
  if (block != NULL && keeps (block->fine, warning->check->id))
    return LAP_OBJECT (block);
  if (part != NULL && keeps (part->fine, warning->check->id))
    return LAP_OBJECT (part);
  return keeps (session->fine, warning->check->id) ? LAP_OBJECT (session) : NULL;
}

static void
speak_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapWarningRow *self = LAP_WARNING_ROW (widget);
  LapObject *holder = keeper (self);

  if (holder != NULL)
    lap_document_apply (self->document, lap_verb_fine (holder, lap_warning_row_warning (self)->check->id, FALSE));
}

static void
lap_warning_row_dispose (GObject *object)
{
  LapWarningRow *self = LAP_WARNING_ROW (object);

  g_clear_pointer (&self->found, g_ptr_array_unref);
  g_clear_pointer (&self->checkup, lap_checkup_unref);
  g_clear_object (&self->document);
  G_OBJECT_CLASS (lap_warning_row_parent_class)->dispose (object);
}

static void
lap_warning_row_class_init (LapWarningRowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_warning_row_dispose;
  preview_signal = g_signal_new ("preview", LAP_TYPE_WARNING_ROW, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE,
                                 1, G_TYPE_POINTER);
  g_type_ensure (LAP_TYPE_AROUND);
  g_type_ensure (LAP_TYPE_MARK);
  g_type_ensure (LAP_TYPE_FLOW);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/warning-row.ui");
  gtk_widget_class_bind_template_child (widget_class, LapWarningRow, mark);
  gtk_widget_class_bind_template_child (widget_class, LapWarningRow, message);
  gtk_widget_class_bind_template_child (widget_class, LapWarningRow, why);
  gtk_widget_class_bind_template_child (widget_class, LapWarningRow, remedies);
  gtk_widget_class_bind_template_child (widget_class, LapWarningRow, more);
  gtk_widget_class_bind_template_child_full (widget_class, "kept-menu", FALSE,
                                             G_STRUCT_OFFSET (LapWarningRow, kept_menu));
  gtk_widget_class_install_action (widget_class, "warning.fine", NULL, fine_action);
  gtk_widget_class_install_action (widget_class, "warning.speak", NULL, speak_action);
}

static void
lap_warning_row_init (LapWarningRow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

/* A span of time stays in one line. */
static char *
unbroken (const char *clock)
{
  g_auto (GStrv) times = g_strsplit (clock, "–", -1);

  return g_strjoinv ("\u2060–\u2060", times);
}

GtkWidget *
lap_warning_row_new (LapDocument *document, guint n)
{
  LapWarningRow *self = g_object_new (LAP_TYPE_WARNING_ROW, NULL);
  LapCheckup *checkup = lap_document_checkup (document);
  const LapWarning *warning = lap_checkup_nth (checkup, n);
  g_autofree char *message = lap_warning_message (checkup, warning), *clock = lap_warning_clock (warning);
  g_autofree char *span = unbroken (clock);
  g_autofree char *why = lap_warning_why (checkup, warning), *reason = NULL, *what = NULL;

  self->document = g_object_ref (document);
  self->checkup = lap_checkup_ref (checkup);
  self->n = n;
  lap_mark_set (LAP_MARK (self->mark), warning->severity, n + 1);
  what = *clock != '\0' ? g_strdup_printf ("%s  %s", message, span) : g_strdup (message);
  /* Translators: the reason of a warning, and who says so. */
  reason = g_strdup_printf (_("Why: %1$s (%2$s)"), why, lap_warning_source (warning));
  gtk_label_set_text (GTK_LABEL (self->message), what);
  gtk_label_set_text (GTK_LABEL (self->why), reason);
  if (warning->fine)
    gtk_menu_button_set_menu_model (GTK_MENU_BUTTON (self->more), self->kept_menu);
  /* A week as a whole keeps nothing quiet. */
  gtk_widget_set_visible (self->more, lap_document_is_editable (document) &&
                                      (lap_document_session (document) != NULL || warning->n_classes > 0));
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, what, -1);
  return GTK_WIDGET (self);
}
