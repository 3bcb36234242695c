/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * week N: checks a week of N classes in 8 rooms, once; the script beside it counts the instructions of
 * measured_week(), which is what every edit of a week costs.
 */
#include "checks/checks.h"

#include <stdlib.h>

LapCheckup *measured_week (LapWeek *week);

G_GNUC_NO_INLINE LapCheckup *
measured_week (LapWeek *week)
{
  return lap_checkup_new_week (week, 0, NULL);
}

static void
fill (LapList *list, guint n, gpointer (*make) (guint))
{
  g_autoptr (GPtrArray) items = g_ptr_array_new_with_free_func (g_object_unref);

  for (guint i = 0; i < n; i++)
    g_ptr_array_add (items, make (i));
  lap_list_splice (list, 0, 0, items);
}

static gpointer
make_room (guint i)
{
  g_autofree char *id = g_strdup_printf ("r%u", i);

  return lap_room_new (id, NULL);
}

static gpointer
make_coach (guint i)
{
  g_autofree char *id = g_strdup_printf ("c%u", i);

  return lap_coach_new (id, NULL);
}

/* An ordinary week: hour after hour from six on, every room in turn, days in turn. */
static gpointer
make_class (guint i)
{
  LapClass *c = lap_class_new ("circuit", 50);

  c->day = i % LAP_N_DAYS;
  c->start = 6 * 60 + (i / LAP_N_DAYS / 8) % 15 * 60;
  c->room = g_strdup_printf ("r%u", i / LAP_N_DAYS % 8);
  c->coach = g_strdup_printf ("c%u", i / LAP_N_DAYS % 20);
  c->strain = i % 3;
  c->for_whom = g_strdup ("all");
  return c;
}

int
main (int argc, char **argv)
{
  g_autoptr (LapWeek) week = lap_week_new ("Benchmark", "Europe/Lisbon");
  g_autoptr (LapCheckup) first = NULL;
  g_autoptr (LapCheckup) checkup = NULL;

  fill (week->rooms, 8, make_room);
  fill (week->coaches, 20, make_coach);
  fill (week->classes, atoi (argv[1]), make_class);
  first = lap_checkup_new_week (week, 0, NULL);
  checkup = measured_week (week);
  g_print ("%u\n", lap_checkup_n (checkup));
  return 0;
}
