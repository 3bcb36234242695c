/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/week-fill.h"

#include "ui/notify.h"
#include "ui/plain-row.h"
#include "ui/week/words.h"
#include "ui/worker.h"

#include <glib/gi18n-lib.h>

struct _LapWeekFill {
  AdwWindow     parent_instance;
  LapDocument  *document;
  LapWorker    *worker;
  LapFill      *found;
  gint64        began;
  GtkWidget    *take, *stack, *progress, *heading, *placed, *placed_title, *left, *left_title, *missed, *missed_title;
};

G_DEFINE_FINAL_TYPE (LapWeekFill, lap_week_fill, ADW_TYPE_WINDOW)

/* Showing */

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
    text = lap_fill_tell_out (lap_worker_problem (self->worker), self->found, week, i);
    lap_plain_row_append (self->left, lap_class_title (c), text);
    return;
  }
  if (moves (c, week, to)) {
    LapPlace place = { to->day, to->start, NULL, NULL };

    place.room = to->room >= 0 ? LAP_ROOM (lap_list_nth (week->rooms, to->room))->id : NULL;
    place.coach = to->coach >= 0 ? LAP_COACH (lap_list_nth (week->coaches, to->coach))->id : NULL;
    text = lap_place_text (week, &place, c->minutes);
    lap_plain_row_append (self->placed, lap_class_title (c), text);
  }
  if (lap_fill_missed (self->found, week, i)) {
    g_autofree char *missed = lap_fill_tell_missed (self->found, week, i);

    lap_plain_row_append (self->missed, lap_class_title (c), missed);
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
found_cb (gpointer owner, gpointer answer)
{
  LapWeekFill *self = owner;

  self->found = answer;
  show_found (self);
}

static gpointer
work (gpointer problem, GCancellable *cancellable, LapWorkerTell tell, gpointer data, GError **error)
{
  return lap_fill_find (problem, 0, cancellable, tell, data, error);
}

static void
waits_cb (gpointer owner)
{
  gtk_stack_set_visible_child_name (GTK_STACK (((LapWeekFill *) owner)->stack), "searching");
}

static const LapWorkerKind worker_kind = {
  work, waits_cb, found_cb, NULL, (GDestroyNotify) lap_fill_problem_free, (GDestroyNotify) lap_fill_free,
};

static void
take_cb (LapWeekFill *self)
{
  g_autoptr (LapDocument) document = g_object_ref (self->document);
  LapEdits *edits = lap_fill_edits (self->found, lap_document_week (document));

  gtk_window_close (GTK_WINDOW (self));
  lap_document_apply (document, edits);
}

static void
lap_week_fill_dispose (GObject *object)
{
  LapWeekFill *self = LAP_WEEK_FILL (object);

  g_clear_pointer (&self->worker, lap_worker_end);
  g_clear_object (&self->document);
  G_OBJECT_CLASS (lap_week_fill_parent_class)->dispose (object);
}

static void
lap_week_fill_finalize (GObject *object)
{
  LapWeekFill *self = LAP_WEEK_FILL (object);

  g_clear_pointer (&self->found, lap_fill_free);
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
  gtk_widget_class_add_binding_action (widget_class, GDK_KEY_Escape, 0, "window.close", NULL);
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

  self->document = g_object_ref (document);
  self->began = g_get_monotonic_time ();
  self->worker = lap_worker_start (&worker_kind,
                                   lap_fill_problem_new (lap_document_week (document), lap_document_attachments (document)),
                                   GTK_PROGRESS_BAR (self->progress), self);
  g_signal_connect_object (document, "changed", G_CALLBACK (gtk_window_close), self, G_CONNECT_SWAPPED);
  gtk_window_present (GTK_WINDOW (self));
  return self;
}

const LapFill *
lap_week_fill_found (LapWeekFill *self)
{
  return self->found;
}
