/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The moment after the first frame of a widget's window has gone out: for what nobody has to wait for.
 *
 * Calling order: lap_moment_wait() when the widget has been mapped, lap_moment_forget() before it is unmapped.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

typedef struct {
  GtkWidget      *widget;
  GSourceOnceFunc run;
  gulong          frame; /* waits for the first */
  guint           idle;  /* runs */
} LapMoment;

/* Calls @run with @widget then. @moment lives in it, and is all 0 before. */
void lap_moment_wait   (LapMoment      *moment,
                        GtkWidget      *widget,
                        GSourceOnceFunc run);
void lap_moment_forget (LapMoment      *moment);

G_END_DECLS
