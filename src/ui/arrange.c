/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/arrange.h"

#include "ui/notify.h"

#include <glib/gi18n-lib.h>

/* Lines and deeds that are shown of a plan that has more. */
#define MOST_LINES 300
#define MOST_DEEDS 60
/* Milliseconds between two looks at how far the worker is. */
#define POLL 80

struct _LapArrange {
  AdwWindow     parent_instance;
  LapDocument  *document;
  LapCatalogue *builtin;
  LapRequest    request;
  GPtrArray    *orders;   /* what the request points to */
  LapProposal  *proposal;
  GTask        *search;   /* while an order is looked for */
  guint         poll;
  gint64        began;    /* the search */
  GtkWidget    *title, *keep, *take, *stack, *progress, *view, *heading, *whom_group, *whom, *lines, *done, *left;
};

G_DEFINE_FINAL_TYPE (LapArrange, lap_arrange, ADW_TYPE_WINDOW)

static const struct {
  const char *action, *title;
} arrangers[LAP_N_ARRANGERS] = {
  [LAP_ARRANGE_ORDER] = { "win.order", N_("Order") },
  [LAP_ARRANGE_MEND] = { "win.mend", N_("Mend") },
  [LAP_ARRANGE_ADAPT] = { "win.adapt", N_("Adapt") },
  [LAP_ARRANGE_CHOOSE] = { "win.choose", N_("Choose") },
};

/* What the worker has: costs hold nothing of the model. */
typedef struct {
  GPtrArray *costs;    /* LapCosts of each part, NULL where it stays */
  guint      part;     /* where it is; the worker's own */
  int        permille; /* atomic */
} Search;

static GtkWidget *
new_label (const char *text, const char *class)
{
  GtkWidget *label = gtk_label_new (text);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_wrap_mode (GTK_LABEL (label), PANGO_WRAP_WORD_CHAR);
  if (class != NULL)
    gtk_widget_add_css_class (label, class);
  return label;
}

static GtkWidget *
new_cell (const char *text, const char *class, const char *below)
{
  GtkWidget *cell = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);

  gtk_widget_add_css_class (cell, "plan-line");
  gtk_box_append (GTK_BOX (cell), new_label (text, class));
  if (below != NULL)
    gtk_box_append (GTK_BOX (cell), new_label (below, "plan-change"));
  return cell;
}

static void
attach_row (LapArrange *self, const LapPlanRow *row, const char *change, int column, int line)
{
  g_autofree char *text = row != NULL ? lap_plan_row_text (row) : NULL;
  GtkWidget *cell;

  if (row == NULL)
    return;
  cell = new_cell (text, row->heading ? "heading" : change != NULL ? "plan-changed" : NULL, change);
  if (change != NULL)
    gtk_widget_add_css_class (cell, "plan-line-changed");
  gtk_grid_attach (GTK_GRID (self->lines), cell, column, line, 1, 1);
}

static void
show_lines (LapArrange *self)
{
  GPtrArray *pairs = self->proposal->pairs;
  guint n = MIN (pairs->len, MOST_LINES);
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (self->lines)) != NULL)
    gtk_grid_remove (GTK_GRID (self->lines), child);
  gtk_grid_attach (GTK_GRID (self->lines), new_cell (_("As it is"), "title-4", self->proposal->before->summary),
                   0, 0, 1, 1);
  gtk_grid_attach (GTK_GRID (self->lines), new_cell (_("As it would be"), "title-4", self->proposal->after->summary),
                   1, 0, 1, 1);
  for (guint i = 0; i < n; i++) {
    const LapPlanPair *pair = g_ptr_array_index (pairs, i);

    attach_row (self, pair->before, pair->before_change, 0, i + 1);
    attach_row (self, pair->after, pair->after_change, 1, i + 1);
  }
  if (pairs->len > n) {
    g_autofree char *more = g_strdup_printf (ngettext ("%u line more", "%u lines more", pairs->len - n),
                                             pairs->len - n);

    gtk_grid_attach (GTK_GRID (self->lines), new_label (more, "dim-label"), 0, n + 1, 2, 1);
  }
}

static void
add_row (GtkWidget *list, const char *title, const char *subtitle)
{
  GtkWidget *row = adw_action_row_new ();

  adw_preferences_row_set_use_markup (ADW_PREFERENCES_ROW (row), FALSE);
  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (row), title);
  adw_action_row_set_title_lines (ADW_ACTION_ROW (row), 0);
  adw_action_row_set_subtitle_lines (ADW_ACTION_ROW (row), 0);
  if (subtitle != NULL)
    adw_action_row_set_subtitle (ADW_ACTION_ROW (row), subtitle);
  gtk_list_box_row_set_activatable (GTK_LIST_BOX_ROW (row), FALSE);
  gtk_list_box_append (GTK_LIST_BOX (list), row);
}

static void
start_list (GtkWidget *list, guint n)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (list)) != NULL)
    gtk_list_box_remove (GTK_LIST_BOX (list), child);
  gtk_widget_set_visible (gtk_widget_get_parent (list), n > 0);
}

static void
end_list (GtkWidget *list, guint n)
{
  g_autofree char *more = g_strdup_printf (ngettext ("%u more", "%u more", n - MOST_DEEDS), n - MOST_DEEDS);

  if (n > MOST_DEEDS)
    add_row (list, more, NULL);
}

static void
show_deeds (LapArrange *self)
{
  GPtrArray *done = self->proposal->done, *left = self->proposal->left;

  start_list (self->done, done->len);
  for (guint i = 0; i < MIN (done->len, MOST_DEEDS); i++) {
    const LapDeed *deed = g_ptr_array_index (done, i);

    add_row (self->done, deed->what, deed->why);
  }
  end_list (self->done, done->len);
  start_list (self->left, left->len);
  for (guint i = 0; i < MIN (left->len, MOST_DEEDS); i++)
    add_row (self->left, g_ptr_array_index (left, i), NULL);
  end_list (self->left, left->len);
}

static void
propose (LapArrange *self)
{
  gboolean takes;

  g_clear_pointer (&self->proposal, lap_proposal_free);
  self->proposal = lap_proposal_new (lap_document_session (self->document), self->builtin, &self->request);
  gtk_label_set_text (GTK_LABEL (self->heading), self->proposal->heading);
  show_lines (self);
  show_deeds (self);
  gtk_stack_set_visible_child_name (GTK_STACK (self->stack), "plan");
  takes = self->proposal->possible && lap_document_is_editable (self->document);
  gtk_widget_set_sensitive (self->take, takes);
  if (!gtk_widget_is_ancestor (gtk_window_get_focus (GTK_WINDOW (self)) != NULL
                               ? gtk_window_get_focus (GTK_WINDOW (self)) : self->take, self->whom_group))
    gtk_window_set_focus (GTK_WINDOW (self), takes ? self->take : self->keep);
}

static void
search_free (gpointer data)
{
  Search *search = data;

  g_ptr_array_unref (search->costs);
  g_free (search);
}

static void
costs_free (gpointer costs)
{
  if (costs != NULL)
    lap_costs_unref (costs);
}

static void
order_free (gpointer order)
{
  if (order != NULL)
    lap_order_free (order);
}

/* In the worker. */
static void
progress_cb (double share, gpointer data)
{
  Search *search = data;

  g_atomic_int_set (&search->permille, (int) (1000 * (search->part + share) / search->costs->len));
}

static void
search_thread (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  Search *search = data;
  g_autoptr (GPtrArray) orders = g_ptr_array_new_with_free_func (order_free);
  GError *error = NULL;

  for (search->part = 0; search->part < search->costs->len; search->part++) {
    const LapCosts *costs = g_ptr_array_index (search->costs, search->part);
    LapOrder *order = costs != NULL ? lap_order_find (costs, cancellable, progress_cb, search, &error) : NULL;

    if (error != NULL) {
      g_task_return_error (task, error);
      return;
    }
    g_ptr_array_add (orders, order);
  }
  g_task_return_pointer (task, g_steal_pointer (&orders), (GDestroyNotify) g_ptr_array_unref);
}

static void
end_search (LapArrange *self)
{
  if (self->search != NULL)
    g_cancellable_cancel (g_task_get_cancellable (self->search));
  g_clear_object (&self->search);
  g_clear_handle_id (&self->poll, g_source_remove);
}

/* The task doesn't keep the dialog: closing that ends the search, and then nobody is left to be told. */
static void
found_cb (GObject *source, GAsyncResult *result, gpointer data)
{
  GPtrArray *orders = g_task_propagate_pointer (G_TASK (result), NULL);
  g_autoptr (LapArrange) self = g_weak_ref_get (data);

  g_weak_ref_clear (data);
  g_free (data);
  if (self == NULL || orders == NULL) {
    g_clear_pointer (&orders, g_ptr_array_unref);
    return;
  }
  end_search (self);
  self->orders = orders;
  self->request.orders = orders;
  propose (self);
  lap_notify_ended (gtk_window_get_transient_for (GTK_WINDOW (self)), self->began,
                    _("The search for an order has ended"), gtk_label_get_text (GTK_LABEL (self->heading)), NULL);
}

static gboolean
poll_cb (gpointer data)
{
  LapArrange *self = data;
  Search *search = g_task_get_task_data (self->search);

  gtk_progress_bar_set_fraction (GTK_PROGRESS_BAR (self->progress), g_atomic_int_get (&search->permille) / 1000.0);
  return G_SOURCE_CONTINUE;
}

static void
search (LapArrange *self)
{
  LapTimeline *timeline = lap_document_timeline (self->document);
  Search *search = g_new0 (Search, 1);
  g_autoptr (GCancellable) cancellable = g_cancellable_new ();
  GWeakRef *weak = g_new (GWeakRef, 1);

  search->costs = g_ptr_array_new_with_free_func (costs_free);
  for (guint p = 0; p < timeline->n_parts; p++)
    g_ptr_array_add (search->costs, lap_order_suits (timeline, p) ? lap_costs_new (timeline, p) : NULL);
  g_weak_ref_init (weak, self);
  self->search = g_task_new (NULL, cancellable, found_cb, weak);
  g_task_set_source_tag (self->search, search_thread);
  g_task_set_task_data (self->search, search, search_free);
  gtk_stack_set_visible_child_name (GTK_STACK (self->stack), "search");
  gtk_widget_set_sensitive (self->take, FALSE);
  self->poll = g_timeout_add (POLL, poll_cb, self);
  self->began = g_get_monotonic_time ();
  g_task_run_in_thread (self->search, search_thread);
}

static void
take_cb (LapArrange *self)
{
  g_autoptr (LapArrange) held = g_object_ref (self);
  g_autoptr (LapDocument) document = g_object_ref (self->document);

  lap_document_apply (document, lap_request_edits (&self->request, lap_document_session (document), self->builtin));
  if (self->document != NULL)
    gtk_window_destroy (GTK_WINDOW (self));
}

static void
whom_cb (LapArrange *self)
{
  guint whom = adw_combo_row_get_selected (ADW_COMBO_ROW (self->whom));

  if (self->document == NULL || whom >= LAP_N_FOR)
    return;
  self->request.whom = whom;
  propose (self);
}

static void
lap_arrange_dispose (GObject *object)
{
  LapArrange *self = LAP_ARRANGE (object);

  end_search (self);
  g_clear_object (&self->document);
  G_OBJECT_CLASS (lap_arrange_parent_class)->dispose (object);
}

static void
lap_arrange_finalize (GObject *object)
{
  LapArrange *self = LAP_ARRANGE (object);

  g_clear_pointer (&self->proposal, lap_proposal_free);
  g_clear_pointer (&self->orders, g_ptr_array_unref);
  g_clear_pointer (&self->builtin, lap_catalogue_unref);
  G_OBJECT_CLASS (lap_arrange_parent_class)->finalize (object);
}

static void
lap_arrange_class_init (LapArrangeClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_arrange_dispose;
  G_OBJECT_CLASS (klass)->finalize = lap_arrange_finalize;
  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/arrange.ui");
#define BIND(name) gtk_widget_class_bind_template_child (widget_class, LapArrange, name)
  BIND (title);
  BIND (keep);
  BIND (take);
  BIND (stack);
  BIND (progress);
  BIND (view);
  BIND (heading);
  BIND (whom_group);
  BIND (whom);
  BIND (lines);
  BIND (done);
  BIND (left);
#undef BIND
  gtk_widget_class_bind_template_callback (widget_class, take_cb);
  gtk_widget_class_add_binding_action (widget_class, GDK_KEY_Escape, 0, "window.close", NULL);
}

static void
lap_arrange_init (LapArrange *self)
{
  self->builtin = lap_catalogue_builtin ();
  gtk_widget_init_template (GTK_WIDGET (self));
}

static void
offer_whom (LapArrange *self)
{
  g_autoptr (GtkStringList) words = gtk_string_list_new (NULL);

  for (guint i = 0; i < lap_fors.n; i++)
    gtk_string_list_append (words, lap_words_label (&lap_fors, i));
  adw_combo_row_set_model (ADW_COMBO_ROW (self->whom), G_LIST_MODEL (words));
  gtk_widget_set_visible (self->whom_group, TRUE);
  g_signal_connect_object (self->whom, "notify::selected", G_CALLBACK (whom_cb), self, G_CONNECT_SWAPPED);
}

LapArrange *
lap_arrange_open (LapWindow *window, LapArranger arranger)
{
  LapArrange *self = g_object_new (LAP_TYPE_ARRANGE, "transient-for", window, "title", _(arrangers[arranger].title),
                                   NULL);

  lap_window_commit (window);
  adw_window_title_set_title (ADW_WINDOW_TITLE (self->title), _(arrangers[arranger].title));
  self->document = g_object_ref (lap_window_document (window));
  self->request.arranger = arranger;
  g_signal_connect_object (self->document, "changed", G_CALLBACK (gtk_window_destroy), self, G_CONNECT_SWAPPED);
  if (arranger == LAP_ARRANGE_ADAPT)
    offer_whom (self);
  if (arranger == LAP_ARRANGE_ORDER)
    search (self);
  else
    propose (self);
  gtk_window_present (GTK_WINDOW (self));
  return self;
}

const LapProposal *
lap_arrange_proposal (LapArrange *self)
{
  return self->proposal;
}

static void
arrange_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  for (guint i = 0; i < LAP_N_ARRANGERS; i++)
    if (g_str_equal (arrangers[i].action, name))
      lap_arrange_open (LAP_WINDOW (widget), i);
}

void
lap_arrange_install (GtkWidgetClass *klass)
{
  for (guint i = 0; i < LAP_N_ARRANGERS; i++)
    gtk_widget_class_install_action (klass, arrangers[i].action, NULL, arrange_action);
}
