/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/opening.h"

#include <glib/gi18n-lib.h>

#define WIDTH   400 /* px */
#define SPINNER 32
#define GAP     18

struct _LapOpening {
  AdwApplicationWindow parent_instance;
  LapReading          *reading;
  LapOpenedFunc        opened;
  gpointer             data;
};

G_DEFINE_FINAL_TYPE (LapOpening, lap_opening, ADW_TYPE_APPLICATION_WINDOW)

/* The program doesn't end between this window and the next. */
static void
read_cb (gpointer opening)
{
  LapOpening *self = opening;
  g_autoptr (GApplication) application = g_object_ref (G_APPLICATION (gtk_window_get_application (opening)));
  g_autoptr (LapReading) reading = lap_reading_ref (self->reading);
  LapOpenedFunc opened = self->opened;
  gpointer data = self->data;

  g_application_hold (application);
  gtk_window_destroy (GTK_WINDOW (self));
  opened (reading, data);
  g_application_release (application);
}

static void
lap_opening_dispose (GObject *object)
{
  LapOpening *self = LAP_OPENING (object);

  if (self->reading != NULL)
    lap_reading_forget (self->reading);
  g_clear_pointer (&self->reading, lap_reading_unref);
  G_OBJECT_CLASS (lap_opening_parent_class)->dispose (object);
}

static void
lap_opening_class_init (LapOpeningClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = lap_opening_dispose;
  gtk_widget_class_add_binding_action (GTK_WIDGET_CLASS (klass), GDK_KEY_Escape, 0, "window.close", NULL);
}

static void
lap_opening_init (LapOpening *self)
{
}

static GtkWidget *
content_new (const char *words)
{
  GtkWidget *content = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0), *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, GAP);
  GtkWidget *header = adw_header_bar_new (), *spinner = gtk_spinner_new (), *label = gtk_label_new (words);
  GtkWidget *cancel = gtk_button_new_with_mnemonic (_("_Cancel"));

  adw_header_bar_set_title_widget (ADW_HEADER_BAR (header), adw_window_title_new ("", ""));
  gtk_widget_add_css_class (header, "flat");
  gtk_widget_set_size_request (spinner, SPINNER, SPINNER);
  gtk_spinner_start (GTK_SPINNER (spinner));
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_wrap_mode (GTK_LABEL (label), PANGO_WRAP_WORD_CHAR);
  gtk_label_set_justify (GTK_LABEL (label), GTK_JUSTIFY_CENTER);
  gtk_widget_add_css_class (label, "title-4");
  gtk_actionable_set_action_name (GTK_ACTIONABLE (cancel), "window.close");
  gtk_widget_set_halign (cancel, GTK_ALIGN_CENTER);
  gtk_widget_add_css_class (cancel, "pill");
  gtk_box_append (GTK_BOX (box), spinner);
  gtk_box_append (GTK_BOX (box), label);
  gtk_box_append (GTK_BOX (box), cancel);
  gtk_widget_set_margin_start (box, GAP);
  gtk_widget_set_margin_end (box, GAP);
  gtk_widget_set_margin_bottom (box, 2 * GAP);
  gtk_box_append (GTK_BOX (content), header);
  gtk_box_append (GTK_BOX (content), box);
  return content;
}

GtkWindow *
lap_opening_new (GtkApplication *application, LapReading *reading, LapOpenedFunc opened, gpointer data)
{
  g_autofree char *name = g_path_get_basename (lap_reading_path (reading));
  /* Translators: the name of a file. */
  g_autofree char *words = g_strdup_printf (_("Opening %s…"), name);
  LapOpening *self = g_object_new (LAP_TYPE_OPENING, "application", application, "title", words, "default-width", WIDTH,
                                   NULL);

  self->reading = lap_reading_ref (reading);
  self->opened = opened;
  self->data = data;
  adw_application_window_set_content (ADW_APPLICATION_WINDOW (self), content_new (words));
  lap_reading_tell (reading, read_cb, self);
  return GTK_WINDOW (self);
}

const char *
lap_opening_path (LapOpening *self)
{
  return lap_reading_path (self->reading);
}
