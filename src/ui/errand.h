/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Something that a window does in a worker when it was asked for: a file that is written, pages for a printer. A small
 * dialog shows how far it is and gives it up.
 *
 * Always true: what is done in a moment shows no dialog; what was given up says nothing; the program doesn't end
 * before the worker has.
 *
 * Calling order: lap_errand_run(); done() once, in the main loop, if there is an answer and still a window.
 */
#pragma once

#include "ui/window.h"
#include "ui/worker.h"

G_BEGIN_DECLS

typedef struct {
  /* In the thread, as of LapWorkerKind. */
  gpointer  (*work) (gpointer problem, GCancellable *cancellable, LapWorkerTell tell, gpointer data, GError **error);
  /* In the main loop: @answer is its own then. @began is for lap_notify_ended(). */
  void      (*done) (LapWindow *window, gpointer problem, gpointer answer, gint64 began);
  const char *failed; /* "The sheet couldn't be made", marked for translation */
  GDestroyNotify free_problem, free_answer;
} LapErrandKind;

/* Takes @problem. @title is what the dialog says, translated. */
void lap_errand_run        (LapWindow           *window,
                            const LapErrandKind *kind,
                            gpointer             problem,
                            const char          *title);
/* Says that the file @path was written: for done(). */
void lap_errand_tell_wrote (LapWindow           *window,
                            const char          *path,
                            gint64               began);

G_END_DECLS
