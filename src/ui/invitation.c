/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/invitation.h"

#include "arrange/compose.h"
#include "ui/flow.h"

#include <glib/gi18n-lib.h>

#define USUAL_MINUTES 30

struct _LapInvitation {
  GtkWidget    parent_instance;
  LapDocument *document;
  GTask       *task; /* that composes, or NULL */
  GtkWidget   *box, *words, *ways, *busy, *spinner;
};

G_DEFINE_FINAL_TYPE (LapInvitation, lap_invitation, GTK_TYPE_WIDGET)

static const struct { const char *label, *action; } ways[] = {
  { N_("_Type a formula"), "win.formula" },
  { N_("_Find an exercise"), "win.find-exercise" },
  { N_("_Compose a session"), "invitation.compose" },
};

/* Without a target, half an hour. */
static LapBrief *
brief_of (const LapSession *session)
{
  LapBrief *brief = lap_brief_new ();

  brief->minutes = session->target > 0 ? CLAMP (session->target / 60, 3, 720) : USUAL_MINUTES;
  brief->level = session->level;
  brief->focus = g_strdupv (session->focus);
  brief->kit = session->kit != NULL ? lap_kit_copy (session->kit) : NULL;
  brief->space_width = session->space_width;
  brief->space_length = session->space_length;
  brief->quiet = session->quiet;
  return brief;
}

static void
work (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  GError *error = NULL;
  LapSession *session = lap_compose (data, builtin, &error);

  if (session != NULL)
    g_task_return_pointer (task, session, g_object_unref);
  else
    g_task_return_error (task, error);
}

static void
show_busy (LapInvitation *self)
{
  gboolean busy = self->task != NULL;

  gtk_widget_set_visible (self->ways, !busy && lap_document_is_editable (self->document));
  gtk_widget_set_visible (self->busy, busy);
  gtk_spinner_set_spinning (GTK_SPINNER (self->spinner), busy);
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "invitation.compose",
                                 !busy && lap_document_is_editable (self->document));
}

static void
stop (LapInvitation *self)
{
  if (self->task != NULL)
    g_cancellable_cancel (g_task_get_cancellable (self->task));
  g_clear_object (&self->task);
}

static void
take (LapInvitation *self, LapSession *composed)
{
  LapSession *session = lap_document_session (self->document);
  g_autoptr (GPtrArray) parts = g_ptr_array_new_with_free_func (g_object_unref);
  LapEdits *edits = lap_edits_new (_("Compose a session"));

  for (guint i = 0; i < lap_session_n (composed); i++)
    g_ptr_array_add (parts, g_object_ref (lap_session_nth (composed, i)));
  lap_list_splice (composed->parts, 0, parts->len, NULL);
  lap_edits_splice (edits, session->parts, 0, lap_session_n (session), parts);
  lap_document_apply (self->document, edits);
}

/* The task doesn't keep the widget: when that has gone, or nobody waits any more, the result is let go. */
static void
composed_cb (GObject *source, GAsyncResult *result, gpointer data)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (LapSession) composed = g_task_propagate_pointer (G_TASK (result), &error);
  g_autoptr (LapInvitation) self = g_weak_ref_get (data);

  g_weak_ref_clear (data);
  g_free (data);
  if (self == NULL || self->task != G_TASK (result))
    return;
  g_clear_object (&self->task);
  show_busy (self);
  if (composed == NULL)
    lap_document_tell (self->document, error->message);
  else if (lap_document_timeline (self->document)->length == 0)
    take (self, composed);
}

static void
compose_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapInvitation *self = LAP_INVITATION (widget);
  g_autoptr (GCancellable) cancellable = g_cancellable_new ();
  GWeakRef *weak = g_new (GWeakRef, 1);

  g_weak_ref_init (weak, self);
  self->task = g_task_new (NULL, cancellable, composed_cb, weak);
  g_task_set_source_tag (self->task, work);
  g_task_set_task_data (self->task, brief_of (lap_document_session (self->document)), (GDestroyNotify) lap_brief_free);
  show_busy (self);
  g_task_run_in_thread (self->task, work);
}

static void
stop_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapInvitation *self = LAP_INVITATION (widget);

  stop (self);
  show_busy (self);
}

static void
lap_invitation_dispose (GObject *object)
{
  LapInvitation *self = LAP_INVITATION (object);

  stop (self);
  g_clear_pointer (&self->box, gtk_widget_unparent);
  g_clear_object (&self->document);
  G_OBJECT_CLASS (lap_invitation_parent_class)->dispose (object);
}

static void
lap_invitation_class_init (LapInvitationClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_invitation_dispose;
  gtk_widget_class_install_action (widget_class, "invitation.compose", NULL, compose_action);
  gtk_widget_class_install_action (widget_class, "invitation.stop", NULL, stop_action);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (widget_class, "invitation");
}

static GtkWidget *
label_new (const char *text)
{
  GtkWidget *label = gtk_label_new (text);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  return label;
}

static GtkWidget *
button_new (const char *text, const char *action)
{
  GtkWidget *button = gtk_button_new_with_mnemonic (text);

  gtk_label_set_wrap (GTK_LABEL (gtk_button_get_child (GTK_BUTTON (button))), TRUE);
  gtk_actionable_set_action_name (GTK_ACTIONABLE (button), action);
  gtk_widget_set_margin_end (button, 8);
  gtk_widget_set_margin_bottom (button, 8);
  return button;
}

static GtkWidget *
busy_new (LapInvitation *self)
{
  GtkWidget *busy = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8);

  self->spinner = gtk_spinner_new ();
  gtk_box_append (GTK_BOX (busy), self->spinner);
  gtk_box_append (GTK_BOX (busy), label_new (_("Composing. A long session takes some seconds.")));
  gtk_box_append (GTK_BOX (busy), button_new (_("_Stop"), "invitation.stop"));
  return busy;
}

static void
lap_invitation_init (LapInvitation *self)
{
  self->box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 10);
  self->words = label_new (NULL);
  self->ways = g_object_new (GTK_TYPE_BOX, NULL);
  gtk_widget_set_layout_manager (self->ways, g_object_new (LAP_TYPE_FLOW, NULL));
  for (guint i = 0; i < G_N_ELEMENTS (ways); i++)
    gtk_widget_set_parent (button_new (_(ways[i].label), ways[i].action), self->ways);
  self->busy = busy_new (self);
  gtk_box_append (GTK_BOX (self->box), self->words);
  gtk_box_append (GTK_BOX (self->box), self->ways);
  gtk_box_append (GTK_BOX (self->box), self->busy);
  gtk_widget_set_parent (self->box, GTK_WIDGET (self));
}

GtkWidget *
lap_invitation_new (void)
{
  return g_object_new (LAP_TYPE_INVITATION, NULL);
}

static void
show_state (LapInvitation *self)
{
  gtk_label_set_text (GTK_LABEL (self->words), lap_document_is_editable (self->document)
    ? _("Nothing is planned yet. Drag an exercise onto the line, or begin in one of these ways.")
    : _("Nothing is planned in this session."));
  show_busy (self);
}

void
lap_invitation_set_document (LapInvitation *self, LapDocument *document)
{
  self->document = g_object_ref (document);
  g_signal_connect_object (document, "notify::state", G_CALLBACK (show_state), self, G_CONNECT_SWAPPED);
  show_state (self);
}

gboolean
lap_invitation_is_composing (LapInvitation *self)
{
  return self->task != NULL;
}
