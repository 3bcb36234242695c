/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/week-fill.h"

#include "ui/notify.h"
#include "ui/week/words.h"

#include <glib/gi18n-lib.h>

/* Milliseconds between two looks at how far the worker is. */
#define POLL 80

/* What the worker shares with the dialog, counted: it holds nothing of the model. */
typedef struct {
  LapFillProblem *problem;
  int             permille; /* atomic */
} Search;

struct _LapWeekFill {
  AdwWindow     parent_instance;
  LapDocument  *document;
  GCancellable *cancel;
  Search       *search;
  LapFill      *found;
  guint         poll;
  gint64        began;
  GtkWidget    *take, *stack, *progress, *heading, *placed, *placed_title, *left, *left_title, *missed, *missed_title;
};

G_DEFINE_FINAL_TYPE (LapWeekFill, lap_week_fill, ADW_TYPE_WINDOW)

static void
search_clear (gpointer data)
{
  lap_fill_problem_free (((Search *) data)->problem);
}

static void
search_release (gpointer data)
{
  g_atomic_rc_box_release_full (data, search_clear);
}

static void
progress_cb (double share, gpointer data)
{
  g_atomic_int_set (&((Search *) data)->permille, (int) (share * 1000));
}

static void
work (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  Search *search = data;
  GError *error = NULL;
  LapFill *fill = lap_fill_find (search->problem, 0, cancellable, progress_cb, search, &error);

  if (fill != NULL)
    g_task_return_pointer (task, fill, (GDestroyNotify) lap_fill_free);
  else
    g_task_return_error (task, error);
}

static gboolean
poll_cb (gpointer data)
{
  LapWeekFill *self = data;

  gtk_progress_bar_set_fraction (GTK_PROGRESS_BAR (self->progress), g_atomic_int_get (&self->search->permille) / 1000.0);
  return G_SOURCE_CONTINUE;
}

/* Showing */

static void
add_row (GtkWidget *list, const char *title, const char *subtitle)
{
  GtkWidget *row = adw_action_row_new ();

  adw_preferences_row_set_use_markup (ADW_PREFERENCES_ROW (row), FALSE);
  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (row), title);
  adw_action_row_set_title_lines (ADW_ACTION_ROW (row), 0);
  adw_action_row_set_subtitle_lines (ADW_ACTION_ROW (row), 0);
  adw_action_row_set_subtitle (ADW_ACTION_ROW (row), subtitle);
  gtk_list_box_row_set_activatable (GTK_LIST_BOX_ROW (row), FALSE);
  gtk_list_box_append (GTK_LIST_BOX (list), row);
}

static gboolean
moves (const LapClass *c, const LapWeek *week, const LapFillPlace *to)
{
  const LapRoom *room = to->room >= 0 ? lap_list_nth (week->rooms, to->room) : NULL;
  const LapCoach *coach = to->coach >= 0 ? lap_list_nth (week->coaches, to->coach) : NULL;

  return c->day != to->day || c->start != to->start || g_strcmp0 (c->room, room != NULL ? room->id : NULL) != 0 ||
         g_strcmp0 (c->coach, coach != NULL ? coach->id : NULL) != 0;
}

static void
show_class (LapWeekFill *self, guint i)
{
  LapWeek *week = lap_document_week (self->document);
  LapClass *c = lap_list_nth (week->classes, i);
  const LapFillPlace *to = &self->found->places[i];
  g_autofree char *text = NULL;

  if (to->day < 0) {
    text = lap_fill_tell_out (self->search->problem, self->found, week, i);
    add_row (self->left, lap_class_title (c), text);
    return;
  }
  if (moves (c, week, to)) {
    LapPlace place = { to->day, to->start, NULL, NULL };

    place.room = to->room >= 0 ? LAP_ROOM (lap_list_nth (week->rooms, to->room))->id : NULL;
    place.coach = to->coach >= 0 ? LAP_COACH (lap_list_nth (week->coaches, to->coach))->id : NULL;
    text = lap_place_text (week, &place, c->minutes);
    add_row (self->placed, lap_class_title (c), text);
  }
  if (lap_fill_missed (self->found, week, i)) {
    g_autofree char *missed = lap_fill_tell_missed (self->found, week, i);

    add_row (self->missed, lap_class_title (c), missed);
  }
}

static void
show_list (GtkWidget *title, GtkWidget *list)
{
  gboolean any = gtk_widget_get_first_child (list) != NULL;

  gtk_widget_set_visible (title, any);
  gtk_widget_set_visible (list, any);
}

static void
show_found (LapWeekFill *self)
{
  g_autofree char *sum = lap_fill_tell_sum (self->found), *sentence = g_strconcat (sum, ".", NULL);

  gtk_label_set_text (GTK_LABEL (self->heading), sentence);
  for (guint i = 0; i < self->found->n; i++)
    show_class (self, i);
  show_list (self->placed_title, self->placed);
  show_list (self->left_title, self->left);
  show_list (self->missed_title, self->missed);
  gtk_widget_set_visible (self->take, gtk_widget_get_first_child (self->placed) != NULL);
  gtk_stack_set_visible_child_name (GTK_STACK (self->stack), "found");
  gtk_widget_grab_focus (self->take);
  lap_notify_ended (gtk_window_get_transient_for (GTK_WINDOW (self)), self->began,
                    _("The search for places has ended"), sentence, NULL);
}

static void
found_cb (GObject *source, GAsyncResult *result, gpointer data)
{
  LapWeekFill *self = LAP_WEEK_FILL (source);
  g_autoptr (GError) error = NULL;

  g_clear_handle_id (&self->poll, g_source_remove);
  self->found = g_task_propagate_pointer (G_TASK (result), &error);
  /* Cancelled only when the dialog closes. */
  if (self->found != NULL && self->document != NULL)
    show_found (self);
}

static void
take_cb (LapWeekFill *self)
{
  g_autoptr (LapDocument) document = g_object_ref (self->document);
  LapEdits *edits = lap_fill_edits (self->found, lap_document_week (document));

  gtk_window_close (GTK_WINDOW (self));
  lap_document_apply (document, edits);
}

static gboolean
escape_cb (GtkWidget *widget, GVariant *args, gpointer data)
{
  gtk_window_close (GTK_WINDOW (widget));
  return TRUE;
}

static void
lap_week_fill_dispose (GObject *object)
{
  LapWeekFill *self = LAP_WEEK_FILL (object);

  g_clear_handle_id (&self->poll, g_source_remove);
  if (self->cancel != NULL)
    g_cancellable_cancel (self->cancel);
  g_clear_object (&self->cancel);
  g_clear_object (&self->document);
  G_OBJECT_CLASS (lap_week_fill_parent_class)->dispose (object);
}

static void
lap_week_fill_finalize (GObject *object)
{
  LapWeekFill *self = LAP_WEEK_FILL (object);

  g_clear_pointer (&self->found, lap_fill_free);
  g_clear_pointer (&self->search, search_release);
  G_OBJECT_CLASS (lap_week_fill_parent_class)->finalize (object);
}

static void
lap_week_fill_class_init (LapWeekFillClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_week_fill_dispose;
  G_OBJECT_CLASS (klass)->finalize = lap_week_fill_finalize;
  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/week-fill.ui");
  gtk_widget_class_bind_template_child (widget_class, LapWeekFill, take);
  gtk_widget_class_bind_template_child (widget_class, LapWeekFill, stack);
  gtk_widget_class_bind_template_child (widget_class, LapWeekFill, progress);
  gtk_widget_class_bind_template_child (widget_class, LapWeekFill, heading);
  gtk_widget_class_bind_template_child (widget_class, LapWeekFill, placed);
  gtk_widget_class_bind_template_child (widget_class, LapWeekFill, placed_title);
  gtk_widget_class_bind_template_child (widget_class, LapWeekFill, left);
  gtk_widget_class_bind_template_child (widget_class, LapWeekFill, left_title);
  gtk_widget_class_bind_template_child (widget_class, LapWeekFill, missed);
  gtk_widget_class_bind_template_child (widget_class, LapWeekFill, missed_title);
  gtk_widget_class_bind_template_callback (widget_class, take_cb);
  gtk_widget_class_add_binding (widget_class, GDK_KEY_Escape, 0, escape_cb, NULL);
}

static void
lap_week_fill_init (LapWeekFill *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
}

LapWeekFill *
lap_week_fill_open (LapWindow *window)
{
  LapWeekFill *self = g_object_new (LAP_TYPE_WEEK_FILL, "transient-for", window, NULL);
  LapDocument *document = lap_window_document (window);
  g_autoptr (GTask) task = NULL;

  self->document = g_object_ref (document);
  self->began = g_get_monotonic_time ();
  self->cancel = g_cancellable_new ();
  self->search = g_atomic_rc_box_new0 (Search);
  self->search->problem = lap_fill_problem_new (lap_document_week (document), lap_document_attachments (document));
  task = g_task_new (self, self->cancel, found_cb, NULL);
  g_task_set_task_data (task, g_atomic_rc_box_acquire (self->search), search_release);
  g_task_run_in_thread (task, work);
  self->poll = g_timeout_add (POLL, poll_cb, self);
  g_signal_connect_object (document, "changed", G_CALLBACK (gtk_window_close), self, G_CONNECT_SWAPPED);
  gtk_window_present (GTK_WINDOW (self));
  return self;
}

const LapFill *
lap_week_fill_found (LapWeekFill *self)
{
  return self->found;
}
