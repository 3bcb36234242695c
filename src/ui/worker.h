/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Work that may take long in a thread of its own, while a dialog shows how far it is. What is done at once shows
 * nothing: only after a moment the dialog is told that there is something to wait for.
 *
 * Always true: the thread has the problem, which nobody else touches, and nothing of widgets; it is told to stop when the dialog
 * doesn't want the answer any more, and then nobody is told of it.
 *
 * Calling order: start; the answer comes once, in the main loop; end, at the latest when the dialog goes.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

typedef struct _LapWorker LapWorker;

typedef void (*LapWorkerTell) (double share, gpointer data);

typedef struct {
  /* In the thread. Says how far it is by tell (share, data); returns NULL with @error when it is cancelled. */
  gpointer (*work)  (gpointer problem, GCancellable *cancellable, LapWorkerTell tell, gpointer data, GError **error);
  /* In the main loop, once, when it takes a while: what the bar stands in is to be seen now. May be NULL. */
  void     (*waits) (gpointer owner);
  /* In the main loop: the answer is the owner's then. */
  void     (*found) (gpointer owner, gpointer answer);
  /* In the main loop, where there is no answer. NULL where only cancelling can prevent one. */
  void     (*failed) (gpointer owner, const GError *error);
  GDestroyNotify free_problem, free_answer;
} LapWorkerKind;

/* Copies @kind, starts, and shows in @bar how far it is, or while that isn't told only that it goes on. Takes @problem. */
LapWorker *lap_worker_start   (const LapWorkerKind *kind,
                               gpointer             problem,
                               GtkProgressBar      *bar,
                               gpointer             owner);
/* What it was started with; not changed any more once the answer is there. */
gpointer   lap_worker_problem (LapWorker           *worker);
/* What isn't found yet isn't wanted any more: the owner hears failed() when the thread has stopped. */
void       lap_worker_cancel  (LapWorker           *worker);
/* Cancels what isn't found yet, and the owner hears nothing. */
void       lap_worker_end     (LapWorker           *worker);

G_END_DECLS
