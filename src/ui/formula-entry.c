/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/formula-entry.h"

#include "edit/reshape.h"
#include "ui/read-only.h"

#include <glib/gi18n-lib.h>

struct _LapFormulaEntry {
  GtkWidget    parent_instance;
  LapDocument *document; /* not held: it outlives the window's heading */
  LapPart     *part;     /* or NULL */
  GtkWidget   *button, *label, *popover, *entry, *hint;
};

G_DEFINE_FINAL_TYPE (LapFormulaEntry, lap_formula_entry, GTK_TYPE_WIDGET)

static const char *
explained (void)
{
  return _("Seconds of work / seconds of rest × exercises × rounds, such as 40/20 × 10 × 2");
}

static void
tell (LapFormulaEntry *self, const char *text, gboolean wrong)
{
  gtk_label_set_text (GTK_LABEL (self->hint), text);
  if (wrong)
    gtk_widget_add_css_class (self->entry, "error");
  else
    gtk_widget_remove_css_class (self->entry, "error");
  gtk_accessible_update_state (GTK_ACCESSIBLE (self->entry), GTK_ACCESSIBLE_STATE_INVALID,
                               wrong ? GTK_ACCESSIBLE_INVALID_TRUE : GTK_ACCESSIBLE_INVALID_FALSE, -1);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->entry), GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, text, -1);
}

static void
opened_cb (LapFormulaEntry *self)
{
  g_autofree char *now = self->part != NULL && lap_part_n (self->part) > 0 ? lap_shape_of (self->part)
                                                                             : g_strdup ("40/20 × 10 × 2");

  gtk_editable_set_text (GTK_EDITABLE (self->entry), now);
  tell (self, explained (), FALSE);
  gtk_widget_grab_focus (self->entry);
}

static void
changed_cb (LapFormulaEntry *self)
{
  tell (self, explained (), FALSE);
}

static void
enter_cb (LapFormulaEntry *self)
{
  g_autoptr (GError) error = NULL;
  LapShape shape;

  if (!lap_shape_parse (gtk_editable_get_text (GTK_EDITABLE (self->entry)), &shape, &error)) {
    tell (self, error->message, TRUE);
    return;
  }
  gtk_popover_popdown (GTK_POPOVER (self->popover));
  lap_document_apply (self->document, self->part != NULL ? lap_verb_reshape (self->part, &shape)
                      : lap_verb_reshape_session (lap_document_session (self->document), &shape));
}

static void
lap_formula_entry_dispose (GObject *object)
{
  LapFormulaEntry *self = LAP_FORMULA_ENTRY (object);

  g_clear_pointer (&self->popover, gtk_widget_unparent);
  g_clear_pointer (&self->button, gtk_widget_unparent);
  g_clear_object (&self->part);
  G_OBJECT_CLASS (lap_formula_entry_parent_class)->dispose (object);
}

static void
lap_formula_entry_class_init (LapFormulaEntryClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = lap_formula_entry_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (klass), GTK_TYPE_BIN_LAYOUT);
}

static GtkWidget *
wrapping_label (int chars)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_max_width_chars (GTK_LABEL (label), chars);
  return label;
}

static void
lap_formula_entry_init (LapFormulaEntry *self)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 6);

  self->entry = gtk_entry_new ();
  self->hint = wrapping_label (36);
  gtk_widget_add_css_class (self->hint, "lane-hint");
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->entry), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Formula of the part"), -1);
  g_signal_connect_swapped (self->entry, "changed", G_CALLBACK (changed_cb), self);
  g_signal_connect_swapped (self->entry, "activate", G_CALLBACK (enter_cb), self);
  gtk_box_append (GTK_BOX (box), self->entry);
  gtk_box_append (GTK_BOX (box), self->hint);
  self->popover = gtk_popover_new ();
  gtk_popover_set_child (GTK_POPOVER (self->popover), box);
  g_signal_connect_swapped (self->popover, "show", G_CALLBACK (opened_cb), self);
  self->label = wrapping_label (60);
  /* A menu button would not wrap what it says. */
  self->button = gtk_button_new ();
  gtk_button_set_child (GTK_BUTTON (self->button), self->label);
  gtk_button_set_has_frame (GTK_BUTTON (self->button), FALSE);
  gtk_widget_add_css_class (self->button, "formula");
  gtk_widget_set_tooltip_text (self->button, _("Type another formula"));
  g_signal_connect_swapped (self->button, "clicked", G_CALLBACK (gtk_popover_popup), self->popover);
  gtk_widget_set_parent (self->button, GTK_WIDGET (self));
  gtk_widget_set_parent (self->popover, GTK_WIDGET (self));
}

void
lap_formula_entry_show (LapFormulaEntry *self, LapDocument *document, LapPart *part, const char *text)
{
  const char *shown = text != NULL ? text : _("Type a formula: 40/20 × 10 × 2");
  g_autofree char *said = g_strdup_printf (_("Formula: %s"), shown);

  self->document = document;
  g_set_object (&self->part, part);
  gtk_label_set_text (GTK_LABEL (self->label), shown);
  lap_read_only_show (self->button, document, TRUE);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->button), GTK_ACCESSIBLE_PROPERTY_LABEL, said, -1);
}

void
lap_formula_entry_open (LapFormulaEntry *self)
{
  gtk_popover_popup (GTK_POPOVER (self->popover));
}
