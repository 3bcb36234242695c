/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * arrange FILE TIMES: the bound of the first main part of a session, found TIMES times over; prints the bound and the
 * microseconds of the quickest search. The script beside it counts the instructions of measured_bound() and holds the time
 * against a general-purpose solver's.
 */
#include "arrange/order.h"
#include "store/documents.h"
#include "store/read-file.h"

#include <stdlib.h>

int measured_bound (const LapCosts *costs, guint *order);

G_GNUC_NO_INLINE int
measured_bound (const LapCosts *costs, guint *order)
{
  int bound;

  lap_order_bound (costs, order, &bound, NULL, NULL, NULL);
  return bound;
}

int
main (int argc, char **argv)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) bytes = lap_read_file (argv[1], NULL, &error);
  g_autoptr (LapSession) session = bytes != NULL ? lap_session_from_bytes (bytes, &error) : NULL;
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (LapTimeline) timeline = session != NULL ? lap_timeline_new (session, builtin, &error) : NULL;
  g_autoptr (LapCosts) costs = NULL;
  g_autofree guint *order = NULL;
  int times = atoi (argv[2]), bound = 0;
  gint64 start, least = G_MAXINT64;

  if (timeline == NULL)
    g_error ("%s", error->message);
  costs = lap_costs_new (timeline, 0);
  order = g_new (guint, costs->n + 1);
  for (int i = 0; i < times; i++) {
    start = g_get_monotonic_time ();
    bound = measured_bound (costs, order);
    least = MIN (least, g_get_monotonic_time () - start);
  }
  g_print ("%g %" G_GINT64_FORMAT "\n", bound / (double) LAP_QUARTERS, least);
  return 0;
}
