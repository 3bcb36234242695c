/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/notice.h"

#include "ui/flow.h"

#include <glib/gi18n-lib.h>

struct _LapNotice {
  AdwBin       parent_instance;
  LapDocument *document;
  GtkWidget   *revealer, *text, *first, *second;
};

G_DEFINE_FINAL_TYPE (LapNotice, lap_notice, ADW_TYPE_BIN)

typedef struct {
  const char *label, *action;
} Deed;

typedef struct {
  LapDocumentState state;
  const char *text; /* NULL: why it can't be changed */
  Deed deeds[2]; /* one without an action isn't there; "win.revert" needs a file */
} Line;

static const Line lines[] = {
  { LAP_DOCUMENT_RECOVERED, N_("Lapwing ended before this was saved. Here it is as you left it."),
    { { N_("_Save"), "win.save" }, { N_("_Go back to the file…"), "win.revert" } } },
  { LAP_DOCUMENT_CHANGED_OUTSIDE, N_("Somebody else has changed the file since you opened it."),
    { { N_("Take _theirs…"), "win.revert" }, { N_("Save _mine…"), "win.save" } } },
  { LAP_DOCUMENT_READ_ONLY, NULL, { } },
};

static void
show_deed (LapNotice *self, GtkWidget *button, const Deed *deed)
{
  gboolean there = deed->action != NULL &&
                   (!g_str_equal (deed->action, "win.revert") || lap_document_path (self->document) != NULL);

  gtk_widget_set_visible (button, there);
  if (!there)
    return;
  gtk_button_set_label (GTK_BUTTON (button), _(deed->label));
  gtk_label_set_wrap (GTK_LABEL (gtk_button_get_child (GTK_BUTTON (button))), TRUE);
  gtk_actionable_set_action_name (GTK_ACTIONABLE (button), deed->action);
}

static void
show (LapNotice *self)
{
  const Line *line = NULL;

  for (guint i = 0; i < G_N_ELEMENTS (lines); i++)
    if (lines[i].state == lap_document_state (self->document))
      line = &lines[i];
  gtk_revealer_set_reveal_child (GTK_REVEALER (self->revealer), line != NULL);
  gtk_widget_set_visible (GTK_WIDGET (self), line != NULL);
  if (line == NULL)
    return;
  gtk_label_set_text (GTK_LABEL (self->text), line->text != NULL ? _(line->text) : lap_document_why_not (self->document));
  show_deed (self, self->first, &line->deeds[0]);
  show_deed (self, self->second, &line->deeds[1]);
}

static void
lap_notice_finalize (GObject *object)
{
  g_clear_object (&LAP_NOTICE (object)->document);
  G_OBJECT_CLASS (lap_notice_parent_class)->finalize (object);
}

static void
lap_notice_class_init (LapNoticeClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->finalize = lap_notice_finalize;
  g_type_ensure (LAP_TYPE_FLOW);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/notice.ui");
  gtk_widget_class_bind_template_child (widget_class, LapNotice, revealer);
  gtk_widget_class_bind_template_child (widget_class, LapNotice, text);
  gtk_widget_class_bind_template_child (widget_class, LapNotice, first);
  gtk_widget_class_bind_template_child (widget_class, LapNotice, second);
}

static void
lap_notice_init (LapNotice *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

void
lap_notice_set_document (LapNotice *self, LapDocument *document)
{
  self->document = g_object_ref (document);
  g_signal_connect_object (document, "notify::state", G_CALLBACK (show), self, G_CONNECT_SWAPPED);
  show (self);
}
