/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/chooser.h"

#include "catalogue/finder.h"

#include <glib/gi18n-lib.h>

struct _LapChooser {
  GtkWidget           parent_instance;
  LapCatalogue       *catalogue;
  LapFinder          *finder; /* of the catalogue */
  GtkStringList      *ids;
  GtkFilterListModel *filtered;
  GtkCustomFilter    *filter;
  GtkWidget          *search, *stack, *list, *nothing;
};

enum { CHOSEN, N_SIGNALS };
static guint signals[N_SIGNALS];

G_DEFINE_FINAL_TYPE (LapChooser, lap_chooser, GTK_TYPE_WIDGET)

static gboolean
matches (gpointer item, gpointer data)
{
  LapChooser *self = data;
  LapExercise *exercise = lap_catalogue_find (self->catalogue, gtk_string_object_get_string (item));

  return exercise != NULL && lap_finder_matches (self->finder, exercise);
}

static void
search_cb (LapChooser *self)
{
  const char *text = gtk_editable_get_text (GTK_EDITABLE (self->search));
  g_autofree char *nothing = g_strdup_printf (_("Nothing called “%s”."), text);

  if (self->finder != NULL)
    lap_finder_set_text (self->finder, text);
  gtk_filter_changed (GTK_FILTER (self->filter), GTK_FILTER_CHANGE_DIFFERENT);
  gtk_label_set_text (GTK_LABEL (self->nothing), nothing);
  gtk_stack_set_visible_child_name (GTK_STACK (self->stack), lap_chooser_n (self) > 0 ? "list" : "nothing");
}

static void
activate_cb (LapChooser *self, guint position)
{
  g_autoptr (GtkStringObject) item = g_list_model_get_item (G_LIST_MODEL (self->filtered), position);

  if (item != NULL)
    g_signal_emit (self, signals[CHOSEN], 0, gtk_string_object_get_string (item));
}

static void
enter_cb (LapChooser *self)
{
  GListModel *found = G_LIST_MODEL (self->filtered);
  gsize least = G_MAXSIZE;
  guint nearest = 0;

  for (guint i = 0; i < g_list_model_get_n_items (found); i++) {
    g_autoptr (GtkStringObject) item = g_list_model_get_item (found, i);
    LapExercise *exercise = lap_catalogue_find (self->catalogue, gtk_string_object_get_string (item));
    gsize distance = lap_finder_distance (self->finder, exercise);

    if (distance < least) {
      least = distance;
      nearest = i;
    }
  }
  activate_cb (self, nearest);
}

static void
setup_cb (GtkSignalListItemFactory *factory, GtkListItem *item, gpointer data)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0), *name = gtk_label_new (NULL), *more = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (name), 0);
  gtk_label_set_wrap (GTK_LABEL (name), TRUE);
  gtk_label_set_wrap_mode (GTK_LABEL (name), PANGO_WRAP_WORD_CHAR);
  gtk_label_set_xalign (GTK_LABEL (more), 0);
  gtk_label_set_wrap (GTK_LABEL (more), TRUE);
  gtk_label_set_wrap_mode (GTK_LABEL (more), PANGO_WRAP_WORD_CHAR);
  gtk_widget_add_css_class (more, "caption");
  gtk_widget_add_css_class (more, "dim-label");
  gtk_box_append (GTK_BOX (box), name);
  gtk_box_append (GTK_BOX (box), more);
  gtk_list_item_set_child (item, box);
}

static void
bind_cb (GtkSignalListItemFactory *factory, GtkListItem *item, gpointer data)
{
  LapChooser *self = data;
  const char *id = gtk_string_object_get_string (gtk_list_item_get_item (item));
  LapExercise *exercise = lap_catalogue_find (self->catalogue, id);
  GtkWidget *name = gtk_widget_get_first_child (gtk_list_item_get_child (item));
  g_autofree char *muscles = lap_words_join (&lap_muscles, exercise->primary_mask);
  /* Translators: how one stands or lies for an exercise, and the muscles it works. */
  g_autofree char *more = g_strdup_printf (_("%1$s: %2$s"), lap_words_label (&lap_postures, exercise->posture), muscles);

  gtk_label_set_text (GTK_LABEL (name), lap_exercise_name (exercise));
  gtk_label_set_text (GTK_LABEL (gtk_widget_get_next_sibling (name)), more);
}

/* The search takes Escape for itself. */
static void
stop_cb (LapChooser *self)
{
  GtkWidget *popover = gtk_widget_get_ancestor (GTK_WIDGET (self), GTK_TYPE_POPOVER);

  if (popover != NULL)
    gtk_popover_popdown (GTK_POPOVER (popover));
}

/* Down leads from the search into what it found. */
static gboolean
down_cb (GtkWidget *widget, GVariant *args, gpointer data)
{
  return gtk_widget_child_focus (LAP_CHOOSER (widget)->list, GTK_DIR_TAB_FORWARD);
}

static void
lap_chooser_dispose (GObject *object)
{
  LapChooser *self = LAP_CHOOSER (object);
  GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (self));

  /* The filter asks this object as long as the list lives. */
  if (self->filter != NULL)
    gtk_custom_filter_set_filter_func (self->filter, NULL, NULL, NULL);
  g_clear_pointer (&child, gtk_widget_unparent);
  g_clear_object (&self->filter);
  g_clear_object (&self->filtered);
  g_clear_object (&self->ids);
  g_clear_pointer (&self->finder, lap_finder_free);
  g_clear_pointer (&self->catalogue, lap_catalogue_unref);
  G_OBJECT_CLASS (lap_chooser_parent_class)->dispose (object);
}

static void
lap_chooser_class_init (LapChooserClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_chooser_dispose;
  signals[CHOSEN] = g_signal_new ("chosen", LAP_TYPE_CHOOSER, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 1,
                                  G_TYPE_STRING);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/chooser.ui");
  gtk_widget_class_bind_template_child (widget_class, LapChooser, search);
  gtk_widget_class_bind_template_child (widget_class, LapChooser, stack);
  gtk_widget_class_bind_template_child (widget_class, LapChooser, list);
  gtk_widget_class_bind_template_child (widget_class, LapChooser, nothing);
  gtk_widget_class_bind_template_callback (widget_class, search_cb);
  gtk_widget_class_bind_template_callback (widget_class, enter_cb);
  gtk_widget_class_bind_template_callback (widget_class, activate_cb);
  gtk_widget_class_bind_template_callback (widget_class, stop_cb);
  gtk_widget_class_add_binding (widget_class, GDK_KEY_Down, 0, down_cb, NULL);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
}

static void
lap_chooser_init (LapChooser *self)
{
  g_autoptr (GtkListItemFactory) factory = gtk_signal_list_item_factory_new ();
  g_autoptr (GtkSelectionModel) selection = NULL;

  gtk_widget_init_template (GTK_WIDGET (self));
  self->ids = gtk_string_list_new (NULL);
  self->filter = gtk_custom_filter_new (matches, self, NULL);
  self->filtered = gtk_filter_list_model_new (G_LIST_MODEL (g_object_ref (self->ids)),
                                              GTK_FILTER (g_object_ref (self->filter)));
  g_signal_connect (factory, "setup", G_CALLBACK (setup_cb), self);
  g_signal_connect (factory, "bind", G_CALLBACK (bind_cb), self);
  selection = GTK_SELECTION_MODEL (gtk_no_selection_new (G_LIST_MODEL (g_object_ref (self->filtered))));
  gtk_list_view_set_factory (GTK_LIST_VIEW (self->list), factory);
  gtk_list_view_set_model (GTK_LIST_VIEW (self->list), selection);
}

void
lap_chooser_set_catalogue (LapChooser *self, LapCatalogue *catalogue)
{
  g_autoptr (GPtrArray) ids = g_ptr_array_new ();

  for (guint i = 0; catalogue != NULL && i < lap_catalogue_n (catalogue); i++)
    g_ptr_array_add (ids, lap_catalogue_nth (catalogue, i)->id);
  g_ptr_array_add (ids, NULL);
  gtk_string_list_splice (self->ids, 0, g_list_model_get_n_items (G_LIST_MODEL (self->ids)), NULL);
  g_clear_pointer (&self->finder, lap_finder_free);
  g_clear_pointer (&self->catalogue, lap_catalogue_unref);
  self->catalogue = catalogue != NULL ? lap_catalogue_ref (catalogue) : NULL;
  self->finder = catalogue != NULL ? lap_finder_new (catalogue) : NULL;
  gtk_editable_set_text (GTK_EDITABLE (self->search), "");
  gtk_string_list_splice (self->ids, 0, 0, (const char * const *) ids->pdata);
  search_cb (self);
}

guint
lap_chooser_n (LapChooser *self)
{
  return g_list_model_get_n_items (G_LIST_MODEL (self->filtered));
}
