/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the benchmark runs under callgrind: core BLOCKS ROUNDS lays a session of that size out and checks it. The
 * script beside it counts the instructions of measured_timeline() and measured_checks(), which run once the linker and
 * the allocator have settled.
 */
#include "checks/checks.h"

#include <stdlib.h>

/* Exercises that alternate, so that the plan is an ordinary one and not a heap of warnings. */
static const char *const circle[] = { "squat", "push-up", "step-jack", "dead-bug", "reverse-lunge", "prone-w-raise" };

static LapSession *
make (guint blocks, int rounds)
{
  LapSession *session = lap_session_new ("Benchmark");
  g_autoptr (LapPart) part = lap_part_new (LAP_PART_MAIN);
  g_autoptr (GPtrArray) parts = g_ptr_array_new (), items = g_ptr_array_new_with_free_func (g_object_unref);

  for (guint i = 0; i < blocks; i++)
    g_ptr_array_add (items, lap_block_new_exercise (circle[i % G_N_ELEMENTS (circle)], 1, 1));
  part->rounds = rounds;
  lap_list_splice (part->blocks, 0, 0, items);
  g_ptr_array_add (parts, part);
  lap_list_splice (session->parts, 0, 0, parts);
  return session;
}

LapTimeline *measured_timeline (LapSession *session, LapCatalogue *builtin);
LapCheckup *measured_checks (LapTimeline *timeline);

static LapTimeline *
lay_out (LapSession *session, LapCatalogue *builtin)
{
  g_autoptr (GError) error = NULL;
  LapTimeline *timeline = lap_timeline_new (session, builtin, &error);

  if (timeline == NULL)
    g_error ("%s", error->message);
  return timeline;
}

G_GNUC_NO_INLINE LapTimeline *
measured_timeline (LapSession *session, LapCatalogue *builtin)
{
  return lay_out (session, builtin);
}

G_GNUC_NO_INLINE LapCheckup *
measured_checks (LapTimeline *timeline)
{
  return lap_checkup_new_up_to (timeline, LAP_NEEDS_TIMELINE);
}

int
main (int argc, char **argv)
{
  g_autoptr (LapSession) session = make (atoi (argv[1]), atoi (argv[2]));
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (LapTimeline) first = lay_out (session, builtin);
  g_autoptr (LapTimeline) timeline = measured_timeline (session, builtin);
  g_autoptr (LapCheckup) warm = lap_checkup_new_up_to (first, LAP_NEEDS_TIMELINE);
  g_autoptr (LapCheckup) checkup = measured_checks (timeline);

  g_print ("%u %u\n", timeline->n, lap_checkup_n (checkup));
  return 0;
}
