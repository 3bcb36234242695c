/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * fill WEEK TRIES: a first timetable and a search of TRIES tries, with as little of the bound as there may be. For
 * fill.py, which counts the instructions of the first two.
 */
#include "arrange/fill.h"
#include "store/documents.h"
#include "store/read-file.h"

#include <stdlib.h>

/* The search is the first part of the way. */
static void
progress_cb (double share, gpointer data)
{
  if (share >= 0.7)
    g_cancellable_cancel (data);
}

int
main (int argc, char **argv)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) bytes = lap_read_file (argv[1], NULL, &error);
  g_autoptr (LapWeek) week = bytes != NULL ? lap_week_from_bytes (bytes, &error) : NULL;
  g_autoptr (LapFillProblem) problem = NULL;
  g_autoptr (GCancellable) cancellable = g_cancellable_new ();
  g_autoptr (LapFill) fill = NULL;

  if (week == NULL)
    g_error ("%s", error->message);
  problem = lap_fill_problem_new (week, NULL);
  fill = lap_fill_find (problem, strtoull (argv[2], NULL, 10), cancellable, progress_cb, cancellable, NULL);
  return 0;
}
