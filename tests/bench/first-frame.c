/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Preloaded into a program of GTK, ends it when the first window that it presents has been painted, and prints the
 * milliseconds of processor time that took since the process began, of all its threads.
 */
#include <gtk/gtk.h>

#include <dlfcn.h>
#include <stdio.h>
#include <time.h>
#include <unistd.h>

static void
after_cb (void)
{
  struct timespec t;

  clock_gettime (CLOCK_PROCESS_CPUTIME_ID, &t);
  printf ("%.3f\n", t.tv_sec * 1e3 + t.tv_nsec / 1e6);
  fflush (stdout);
  _exit (0);
}

void
gtk_window_present (GtkWindow *window)
{
  void (*present) (GtkWindow *) = dlsym (RTLD_NEXT, "gtk_window_present");

  present (window);
  g_signal_connect (gtk_widget_get_frame_clock (GTK_WIDGET (window)), "after-paint", G_CALLBACK (after_cb), NULL);
}
