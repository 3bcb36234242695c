/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/shelf-details.h"

#include "ui/flow.h"
#include "ui/tile.h"

#include <glib/gi18n-lib.h>

typedef enum { COPY, EDIT, REMOVE, N_DEEDS } Deed;

struct _LapShelfDetails {
  GtkWidget  parent_instance;
  char      *easier_id, *harder_id;
  GtkWidget *box, *name, *told, *easier, *harder, *deeds[N_DEEDS];
};

static guint show_signal, deed_signals[N_DEEDS];

/* What can be done with an exercise, by whose it is; NULL for what can't. */
static const struct {
  const char *signal, *labels[3];
} deeds[N_DEEDS] = {
  [COPY] = { "copy", { N_("Make your own…"), N_("Duplicate…"), N_("Make your own…") } },
  [EDIT] = { "edit", { NULL, N_("Edit…"), NULL } },
  [REMOVE] = { "remove", { NULL, N_("Remove"), N_("Forget") } },
};

G_DEFINE_FINAL_TYPE (LapShelfDetails, lap_shelf_details, GTK_TYPE_WIDGET)

static void
easier_cb (LapShelfDetails *self)
{
  g_autofree char *id = g_strdup (self->easier_id);

  g_signal_emit (self, show_signal, 0, id);
}

static void
harder_cb (LapShelfDetails *self)
{
  g_autofree char *id = g_strdup (self->harder_id);

  g_signal_emit (self, show_signal, 0, id);
}

static void
deed_cb (LapShelfDetails *self, GtkWidget *button)
{
  for (Deed deed = 0; deed < N_DEEDS; deed++)
    if (self->deeds[deed] == button)
      g_signal_emit (self, deed_signals[deed], 0);
}

static GtkWidget *
label_new (LapShelfDetails *self, const char *style)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_widget_add_css_class (label, style);
  gtk_box_append (GTK_BOX (self->box), label);
  return label;
}

static GtkWidget *
button_new (LapShelfDetails *self, GtkWidget *box, GCallback callback)
{
  GtkWidget *button = gtk_button_new (), *label = gtk_label_new (NULL);

  gtk_label_set_ellipsize (GTK_LABEL (label), PANGO_ELLIPSIZE_END);
  gtk_button_set_child (GTK_BUTTON (button), label);
  gtk_widget_set_halign (button, GTK_ALIGN_START);
  gtk_widget_add_css_class (button, "chip");
  g_signal_connect_swapped (button, "clicked", callback, self);
  gtk_box_append (GTK_BOX (box), button);
  return button;
}

static void
lap_shelf_details_dispose (GObject *object)
{
  LapShelfDetails *self = LAP_SHELF_DETAILS (object);

  g_clear_pointer (&self->box, gtk_widget_unparent);
  g_clear_pointer (&self->easier_id, g_free);
  g_clear_pointer (&self->harder_id, g_free);
  G_OBJECT_CLASS (lap_shelf_details_parent_class)->dispose (object);
}

static void
lap_shelf_details_class_init (LapShelfDetailsClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_shelf_details_dispose;
  show_signal = g_signal_new ("show-exercise", LAP_TYPE_SHELF_DETAILS, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                G_TYPE_NONE, 1, G_TYPE_STRING);
  for (Deed deed = 0; deed < N_DEEDS; deed++)
    deed_signals[deed] = g_signal_new (deeds[deed].signal, LAP_TYPE_SHELF_DETAILS, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                       G_TYPE_NONE, 0);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
}

static void
lap_shelf_details_init (LapShelfDetails *self)
{
  GtkWidget *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0);

  self->box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 4);
  gtk_widget_set_parent (self->box, GTK_WIDGET (self));
  self->name = label_new (self, "heading");
  self->told = label_new (self, "lane-hint");
  self->easier = button_new (self, self->box, G_CALLBACK (easier_cb));
  self->harder = button_new (self, self->box, G_CALLBACK (harder_cb));
  gtk_widget_set_layout_manager (line, g_object_new (LAP_TYPE_FLOW, NULL));
  gtk_box_append (GTK_BOX (self->box), line);
  for (Deed deed = 0; deed < N_DEEDS; deed++)
    self->deeds[deed] = button_new (self, line, G_CALLBACK (deed_cb));
}

static void
set_text (GtkWidget *button, const char *text)
{
  gtk_label_set_text (GTK_LABEL (gtk_button_get_child (GTK_BUTTON (button))), text);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, text, -1);
}

/* The next one of the chain on a button, which is there where the chain goes on. */
static void
show_next (GtkWidget *button, char **slot, LapCatalogue *catalogue, const char *id, const char *format)
{
  LapExercise *next = id != NULL ? lap_catalogue_find (catalogue, id) : NULL;
  g_autofree char *text = next != NULL ? g_strdup_printf (format, lap_exercise_name (next)) : NULL;

  g_free (*slot);
  *slot = next != NULL ? g_strdup (next->id) : NULL;
  if (next != NULL)
    set_text (button, text);
  gtk_widget_set_visible (button, next != NULL);
}

void
lap_shelf_details_show (LapShelfDetails *self, LapCatalogue *catalogue, LapExercise *exercise, LapShelfOwner owner,
                        gboolean editable)
{
  g_autofree char *told = NULL;

  gtk_widget_set_visible (GTK_WIDGET (self), exercise != NULL);
  if (exercise == NULL)
    return;
  told = lap_exercise_told (exercise);
  gtk_label_set_text (GTK_LABEL (self->name), lap_exercise_name (exercise));
  gtk_label_set_text (GTK_LABEL (self->told), told);
  show_next (self->easier, &self->easier_id, catalogue, exercise->easier, _("Easier: %s"));
  show_next (self->harder, &self->harder_id, catalogue, exercise->harder, _("Harder: %s"));
  for (Deed deed = 0; deed < N_DEEDS; deed++) {
    gtk_widget_set_visible (self->deeds[deed], editable && deeds[deed].labels[owner] != NULL);
    if (deeds[deed].labels[owner] != NULL)
      set_text (self->deeds[deed], _(deeds[deed].labels[owner]));
  }
}
