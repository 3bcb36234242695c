/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/arrange.h"

#include "ui/field-row.h"
#include "ui/notify.h"
#include "ui/plain-row.h"
#include "ui/worker.h"

#include <glib/gi18n-lib.h>

/* Lines and deeds that are shown of a plan that has more. */
#define MOST_LINES 300
#define MOST_DEEDS 60

struct _LapArrange {
  AdwWindow     parent_instance;
  LapDocument  *document;
  LapRequest    request;
  LapProposal  *proposal; /* NULL while the worker makes it */
  LapWorker    *worker;
  gint64        began;    /* the work */
  GtkWidget    *title, *keep, *take, *stack, *doing, *progress, *view, *heading, *whom_group, *whom, *lines, *done, *left;
};

G_DEFINE_FINAL_TYPE (LapArrange, lap_arrange, ADW_TYPE_WINDOW)

static const struct {
  const char *action, *title, *doing, *ended;
} arrangers[LAP_N_ARRANGERS] = {
  [LAP_ARRANGE_ORDER] = { "win.order", N_("Order"), N_("Looking through the orders…"),
                          N_("The search for an order has ended") },
  [LAP_ARRANGE_MEND] = { "win.mend", N_("Mend"), N_("Trying what mends the plan…"),
                         N_("The search for what mends the plan has ended") },
  [LAP_ARRANGE_ADAPT] = { "win.adapt", N_("Adapt"), N_("Looking for exercises that suit…"),
                          N_("The search for exercises that suit has ended") },
  [LAP_ARRANGE_CHOOSE] = { "win.choose", N_("Choose"), N_("Choosing exercises…"),
                           N_("The choice of exercises has ended") },
};

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
    lap_plain_row_append (list, more, NULL);
}

static void
show_deeds (LapArrange *self)
{
  GPtrArray *done = self->proposal->done, *left = self->proposal->left;

  start_list (self->done, done->len);
  for (guint i = 0; i < MIN (done->len, MOST_DEEDS); i++) {
    const LapDeed *deed = g_ptr_array_index (done, i);

    lap_plain_row_append (self->done, deed->what, deed->why);
  }
  end_list (self->done, done->len);
  start_list (self->left, left->len);
  for (guint i = 0; i < MIN (left->len, MOST_DEEDS); i++)
    lap_plain_row_append (self->left, g_ptr_array_index (left, i), NULL);
  end_list (self->left, left->len);
}

static void
show_proposal (LapArrange *self)
{
  gboolean takes;

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

/* What the worker has. */
typedef struct {
  LapSession   *twin;
  LapCatalogue *builtin;
  LapRequest    request;
} Problem;

static void
problem_free (gpointer data)
{
  Problem *problem = data;

  g_clear_object (&problem->twin);
  lap_catalogue_unref (problem->builtin);
  g_free (problem);
}

static gpointer
work (gpointer data, GCancellable *cancellable, LapWorkerTell tell, gpointer tell_data, GError **error)
{
  Problem *problem = data;

  return lap_proposal_new (g_steal_pointer (&problem->twin), problem->builtin, &problem->request, cancellable, tell,
                           tell_data, error);
}

static void
waits_cb (gpointer owner)
{
  gtk_stack_set_visible_child_name (GTK_STACK (((LapArrange *) owner)->stack), "wait");
}

static void
found_cb (gpointer owner, gpointer answer)
{
  LapArrange *self = owner;

  self->proposal = answer;
  g_clear_pointer (&self->worker, lap_worker_end);
  show_proposal (self);
  lap_notify_ended (gtk_window_get_transient_for (GTK_WINDOW (self)), self->began, _(arrangers[self->request.arranger].ended),
                    self->proposal->heading, NULL);
}

static const LapWorkerKind worker_kind = { work, waits_cb, found_cb, NULL, problem_free, (GDestroyNotify) lap_proposal_free };

static void
propose (LapArrange *self)
{
  Problem *problem = g_new (Problem, 1);

  g_clear_pointer (&self->worker, lap_worker_end);
  g_clear_pointer (&self->proposal, lap_proposal_free);
  gtk_widget_set_sensitive (self->take, FALSE);
  *problem = (Problem) { lap_object_copy (lap_document_session (self->document)), lap_catalogue_builtin (),
                         self->request };
  self->began = g_get_monotonic_time ();
  self->worker = lap_worker_start (&worker_kind, problem, GTK_PROGRESS_BAR (self->progress), self);
}

static void
take_cb (LapArrange *self)
{
  g_autoptr (LapArrange) held = g_object_ref (self);
  g_autoptr (LapDocument) document = g_object_ref (self->document);

  if (self->proposal == NULL)
    return;
  lap_document_apply (document, lap_proposal_edits (self->proposal, lap_document_session (document)));
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

  g_clear_pointer (&self->worker, lap_worker_end);
  g_clear_object (&self->document);
  G_OBJECT_CLASS (lap_arrange_parent_class)->dispose (object);
}

static void
lap_arrange_finalize (GObject *object)
{
  LapArrange *self = LAP_ARRANGE (object);

  g_clear_pointer (&self->proposal, lap_proposal_free);
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
  BIND (doing);
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
  gtk_widget_init_template (GTK_WIDGET (self));
  lap_field_choice_tip (self->whom);
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
  gtk_widget_set_name (GTK_WIDGET (self), arrangers[arranger].action); /* the help has a part about each */
  adw_window_title_set_title (ADW_WINDOW_TITLE (self->title), _(arrangers[arranger].title));
  self->document = g_object_ref (lap_window_document (window));
  self->request.arranger = arranger;
  g_signal_connect_object (self->document, "changed", G_CALLBACK (gtk_window_destroy), self, G_CONNECT_SWAPPED);
  if (arranger == LAP_ARRANGE_ADAPT)
    offer_whom (self);
  gtk_label_set_text (GTK_LABEL (self->doing), _(arrangers[arranger].doing));
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
