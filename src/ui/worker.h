/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A long search in a thread of its own, while a dialog shows how far it is.
 *
 * Always true: the thread has the problem and nothing of the model or of widgets; it is told to stop when the dialog
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
  /* In the main loop: the answer is the owner's then. */
  void     (*found) (gpointer owner, gpointer answer);
  GDestroyNotify free_problem, free_answer;
} LapWorkerKind;

/* Starts, and shows in @bar how far it is. Takes @problem. */
LapWorker *lap_worker_start   (const LapWorkerKind *kind,
                               gpointer             problem,
                               GtkProgressBar      *bar,
                               gpointer             owner);
/* What it was started with; not changed any more once the answer is there. */
gpointer   lap_worker_problem (LapWorker           *worker);
/* Cancels what isn't found yet. */
void       lap_worker_end     (LapWorker           *worker);

G_END_DECLS
