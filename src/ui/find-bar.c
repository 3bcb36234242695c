/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/find-bar.h"

#include <glib/gi18n-lib.h>

struct _LapFindBar {
  GtkWidget     parent_instance;
  LapFindTarget target;
  gpointer      data;  /* of the target */
  GArray       *found; /* guint */
  int           at;    /* -1 = none yet */
  GtkWidget    *bar, *search, *count, *before, *next;
};

G_DEFINE_FINAL_TYPE (LapFindBar, lap_find_bar, GTK_TYPE_WIDGET)

static gboolean
is_shown (LapFindBar *self)
{
  return gtk_search_bar_get_search_mode (GTK_SEARCH_BAR (self->bar));
}

static void
show_count (LapFindBar *self)
{
  gboolean typed = *gtk_editable_get_text (GTK_EDITABLE (self->search)) != '\0';
  g_autofree char *text = NULL;

  if (!typed)
    text = g_strdup ("");
  else if (self->found->len == 0)
    text = g_strdup (_("Nothing found"));
  else if (self->at < 0)
    text = self->target.count (self->found->len);
  else
    /* Translators: which of the places that were found is selected. */
    text = g_strdup_printf (_("%1$d of %2$u"), self->at + 1, self->found->len);
  gtk_label_set_text (GTK_LABEL (self->count), text);
  gtk_widget_set_sensitive (self->before, self->found->len > 0);
  gtk_widget_set_sensitive (self->next, self->found->len > 0);
}

static void
find (LapFindBar *self)
{
  g_clear_pointer (&self->found, g_array_unref);
  self->found = self->target.find (self->data, gtk_editable_get_text (GTK_EDITABLE (self->search)));
}

static void
go_to (LapFindBar *self, int at)
{
  self->at = at;
  self->target.go_to (self->data, g_array_index (self->found, guint, at));
  show_count (self);
}

/* The first that is found is selected while one types. */
static void
search_cb (LapFindBar *self)
{
  self->at = -1;
  find (self);
  if (self->found->len > 0)
    go_to (self, 0);
  else
    show_count (self);
}

static void
step (LapFindBar *self, int by)
{
  int n = self->found->len;

  if (n > 0)
    go_to (self, self->at < 0 ? (by > 0 ? 0 : n - 1) : (self->at + by + n) % n);
  else
    gtk_widget_error_bell (GTK_WIDGET (self));
}

static void
next_cb (LapFindBar *self)
{
  step (self, 1);
}

static void
before_cb (LapFindBar *self)
{
  step (self, -1);
}

/* The count holds, and nothing is selected by it. */
void
lap_find_bar_again (LapFindBar *self)
{
  if (!is_shown (self))
    return;
  find (self);
  if (self->at >= (int) self->found->len)
    self->at = -1;
  show_count (self);
}

static void
lap_find_bar_dispose (GObject *object)
{
  LapFindBar *self = LAP_FIND_BAR (object);
  GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (self));

  g_clear_pointer (&child, gtk_widget_unparent);
  g_clear_pointer (&self->found, g_array_unref);
  G_OBJECT_CLASS (lap_find_bar_parent_class)->dispose (object);
}

static void
lap_find_bar_class_init (LapFindBarClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_find_bar_dispose;
  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/find-bar.ui");
  gtk_widget_class_bind_template_child (widget_class, LapFindBar, bar);
  gtk_widget_class_bind_template_child (widget_class, LapFindBar, search);
  gtk_widget_class_bind_template_child (widget_class, LapFindBar, count);
  gtk_widget_class_bind_template_child (widget_class, LapFindBar, before);
  gtk_widget_class_bind_template_child (widget_class, LapFindBar, next);
  gtk_widget_class_bind_template_callback (widget_class, search_cb);
  gtk_widget_class_bind_template_callback (widget_class, next_cb);
  gtk_widget_class_bind_template_callback (widget_class, before_cb);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
}

static void
lap_find_bar_init (LapFindBar *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  self->found = g_array_new (FALSE, FALSE, sizeof (guint));
  self->at = -1;
  gtk_search_bar_connect_entry (GTK_SEARCH_BAR (self->bar), GTK_EDITABLE (self->search));
}

void
lap_find_bar_set_target (LapFindBar *self, const LapFindTarget *target, gpointer data)
{
  self->target = *target;
  self->data = data;
  g_object_set (self->search, "placeholder-text", target->hint, NULL);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->search), GTK_ACCESSIBLE_PROPERTY_LABEL, target->name, -1);
}

void
lap_find_bar_begin (LapFindBar *self)
{
  gtk_search_bar_set_search_mode (GTK_SEARCH_BAR (self->bar), TRUE);
  gtk_widget_grab_focus (self->search);
  gtk_editable_select_region (GTK_EDITABLE (self->search), 0, -1);
}

void
lap_find_bar_step (LapFindBar *self, int by)
{
  if (is_shown (self) && *gtk_editable_get_text (GTK_EDITABLE (self->search)) != '\0')
    step (self, by);
  else
    lap_find_bar_begin (self);
}
