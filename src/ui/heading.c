/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/heading.h"

#include "place/formula.h"
#include "ui/flow.h"
#include "ui/formula-entry.h"

#include <glib/gi18n-lib.h>

struct _LapHeading {
  GtkWidget  parent_instance;
  GtkWidget *title, *formula, *coach, *length;
  LapDocument *document; /* the window's, which outlives it */
};

G_DEFINE_FINAL_TYPE (LapHeading, lap_heading, GTK_TYPE_WIDGET)

static void
lap_heading_dispose (GObject *object)
{
  LapHeading *self = LAP_HEADING (object);

  g_clear_pointer (&self->title, gtk_widget_unparent);
  g_clear_pointer (&self->formula, gtk_widget_unparent);
  g_clear_pointer (&self->coach, gtk_widget_unparent);
  g_clear_pointer (&self->length, gtk_widget_unparent);
  G_OBJECT_CLASS (lap_heading_parent_class)->dispose (object);
}

static void
lap_heading_class_init (LapHeadingClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_heading_dispose;
  gtk_widget_class_set_layout_manager_type (widget_class, LAP_TYPE_FLOW);
  gtk_widget_class_set_css_name (widget_class, "heading");
}

static GtkWidget *
label_new (LapHeading *self, const char *style)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_max_width_chars (GTK_LABEL (label), 60);
  gtk_widget_add_css_class (label, style);
  gtk_widget_set_margin_end (label, 12);
  gtk_widget_set_parent (label, GTK_WIDGET (self));
  return label;
}

static void
lap_heading_init (LapHeading *self)
{
  self->title = label_new (self, "session-title");
  self->length = label_new (self, "length");
  self->coach = label_new (self, "dim-label");
  self->formula = g_object_new (LAP_TYPE_FORMULA_ENTRY, NULL);
  gtk_widget_set_parent (self->formula, GTK_WIDGET (self));
}

/* The main part that takes longest tells what kind of session it is. */
static int
telling_part (const LapTimeline *timeline)
{
  int best = -1;

  for (guint i = 0; i < timeline->n_parts; i++)
    if (timeline->parts[i].part->kind == LAP_PART_MAIN &&
        (best < 0 || timeline->parts[i].work > timeline->parts[best].work))
      best = i;
  return best;
}

void
lap_heading_show (LapHeading *self, LapDocument *document)
{
  const LapTimeline *timeline = lap_document_timeline (document);
  const char *coach = lap_document_session (document)->coach;
  int part = telling_part (timeline);
  gboolean any = part >= 0 && timeline->parts[part].end > timeline->parts[part].start;
  g_autofree char *formula = any ? lap_formula_text (timeline, part) : NULL;
  g_autofree char *led = coach != NULL && *coach != '\0' ? g_strdup_printf (_("led by %s"), coach) : NULL;
  g_autofree char *length = lap_document_length_text (document);

  lap_formula_entry_show (LAP_FORMULA_ENTRY (self->formula), document, part >= 0 ? timeline->parts[part].part : NULL,
                          formula);
  gtk_label_set_text (GTK_LABEL (self->title), lap_document_title (document));
  gtk_label_set_text (GTK_LABEL (self->coach), led);
  self->document = document;
  gtk_label_set_text (GTK_LABEL (self->length), length);
  gtk_widget_remove_css_class (self->length, "previewed");
  gtk_widget_set_visible (self->coach, led != NULL);
}

void
lap_heading_preview (LapHeading *self, int seconds)
{
  g_autofree char *now = lap_document_length_text (self->document), *from = NULL, *to = NULL, *both = NULL;
  int length = lap_document_timeline (self->document)->length;

  if (seconds == length) {
    gtk_label_set_text (GTK_LABEL (self->length), now);
    gtk_widget_remove_css_class (self->length, "previewed");
    return;
  }
  from = lap_clock_text (length);
  to = lap_clock_text (seconds);
  /* Translators: how long the session lasts, and would last. */
  both = g_strdup_printf (_("%1$s → %2$s"), from, to);
  gtk_label_set_text (GTK_LABEL (self->length), both);
  gtk_widget_add_css_class (self->length, "previewed");
}

void
lap_heading_type_formula (LapHeading *self)
{
  lap_formula_entry_open (LAP_FORMULA_ENTRY (self->formula));
}
