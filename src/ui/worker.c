/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/worker.h"

/* Milliseconds between two looks at how far the thread is. */
#define POLL 80
/* Looks after which it takes a while: 0.3 s. */
#define PATIENCE 4

/* Counted: the thread and the dialog have it, and either may go first. */
struct _LapWorker {
  LapWorkerKind        kind;
  gpointer             problem;
  int                  permille; /* atomic; -1 = not known */

  /* The dialog's, not touched in the thread. */
  gpointer             owner; /* NULL = it doesn't want the answer */
  GtkProgressBar      *bar;
  GCancellable        *cancellable;
  guint                poll, looks;
};

static void
clear (gpointer data)
{
  LapWorker *worker = data;

  worker->kind.free_problem (worker->problem);
  g_object_unref (worker->cancellable);
}

static void
release (gpointer data)
{
  g_atomic_rc_box_release_full (data, clear);
}

static void
tell_cb (double share, gpointer data)
{
  g_atomic_int_set (&((LapWorker *) data)->permille, (int) (share * 1000));
}

static void
thread (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  LapWorker *worker = data;
  GError *error = NULL;
  gpointer answer = worker->kind.work (worker->problem, cancellable, tell_cb, worker, &error);

  if (answer != NULL)
    g_task_return_pointer (task, answer, worker->kind.free_answer);
  else
    g_task_return_error (task, error);
}

static gboolean
poll_cb (gpointer data)
{
  LapWorker *worker = data;

  int permille = g_atomic_int_get (&worker->permille);

  if (permille >= 0)
    gtk_progress_bar_set_fraction (worker->bar, permille / 1000.0);
  else
    gtk_progress_bar_pulse (worker->bar);
  if (++worker->looks == PATIENCE && worker->kind.waits != NULL)
    worker->kind.waits (worker->owner);
  return G_SOURCE_CONTINUE;
}

static void
found_cb (GObject *source, GAsyncResult *result, gpointer data)
{
  LapWorker *worker = g_task_get_task_data (G_TASK (result));
  g_autoptr (GError) error = NULL;
  gpointer answer = g_task_propagate_pointer (G_TASK (result), &error);

  g_clear_handle_id (&worker->poll, g_source_remove);
  if (answer != NULL && worker->owner != NULL)
    worker->kind.found (worker->owner, answer);
  else if (answer != NULL && worker->kind.free_answer != NULL)
    worker->kind.free_answer (answer);
  else if (worker->owner != NULL && worker->kind.failed != NULL)
    worker->kind.failed (worker->owner, error);
}

LapWorker *
lap_worker_start (const LapWorkerKind *kind, gpointer problem, GtkProgressBar *bar, gpointer owner)
{
  LapWorker *worker = g_atomic_rc_box_new0 (LapWorker);
  g_autoptr (GTask) task = NULL;

  worker->kind = *kind;
  worker->problem = problem;
  worker->owner = owner;
  worker->bar = bar;
  worker->permille = -1;
  worker->cancellable = g_cancellable_new ();
  worker->poll = g_timeout_add (POLL, poll_cb, worker);
  task = g_task_new (NULL, worker->cancellable, found_cb, NULL);
  g_task_set_source_tag (task, lap_worker_start);
  g_task_set_task_data (task, g_atomic_rc_box_acquire (worker), release);
  g_task_run_in_thread (task, thread);
  return worker;
}

gpointer
lap_worker_problem (LapWorker *worker)
{
  return worker->problem;
}

void
lap_worker_cancel (LapWorker *worker)
{
  g_cancellable_cancel (worker->cancellable);
}

void
lap_worker_end (LapWorker *worker)
{
  worker->owner = NULL;
  g_clear_handle_id (&worker->poll, g_source_remove);
  g_cancellable_cancel (worker->cancellable);
  release (worker);
}
