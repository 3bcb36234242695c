/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * lapwing effort FILE [--json]: the estimated effort of a session.
 */
#include "cli/cli.h"

#include "publish/effort.h"

#include <glib/gi18n-lib.h>
#include <math.h>

static int
percent (double share)
{
  return (int) lround (share * 100);
}

static int
beats (const LapEffort *effort, double share)
{
  return (int) lround (lap_pulse (share, effort->rest_pulse, effort->maximum));
}

static int
main_seconds (const LapTimeline *timeline)
{
  int seconds = 0;

  for (guint p = 0; p < timeline->n_parts; p++)
    if (timeline->parts[p].part->kind == LAP_PART_MAIN)
      seconds += timeline->parts[p].end - timeline->parts[p].start;
  return seconds;
}

static void
print_parts (const LapEffort *effort)
{
  const LapTimeline *t = effort->timeline;

  for (guint p = 0; p < t->n_parts; p++) {
    const LapStretch *s = &t->parts[p];
    double mean = lap_effort_mean (effort, s->start, s->end), peak = lap_effort_peak (effort, s->start, s->end, NULL);
    g_autofree char *start = lap_clock_text (s->start), *end = lap_clock_text (s->end);

    if (s->end > s->start)
      g_print (_("  %1$7s–%2$-7s  mean %3$3d %% (%4$3d), peak %5$3d %% (%6$3d)  %7$s\n"), start, end, percent (mean),
               beats (effort, mean), percent (peak), beats (effort, peak), lap_part_title (s->part));
  }
}

static void
print_text (const LapEffort *effort)
{
  const LapSession *session = effort->timeline->session;
  g_autofree char *in_band = lap_clock_text ((int) lround (effort->in_band));
  g_autofree char *main_part = lap_clock_text (main_seconds (effort->timeline));

  g_print (_("An estimate for somebody who can reach %1$g METs, %2$d years old, resting pulse %3$.0f, maximum %4$.0f.\n"),
           effort->fitness, session->age, effort->rest_pulse, effort->maximum);
  g_print (_("Mean %1$d %% of heart-rate reserve (%2$d beats a minute), peak %3$d %% (%4$d).\n"), percent (effort->mean),
           beats (effort, effort->mean), percent (effort->peak), beats (effort, effort->peak));
  print_parts (effort);
  g_print (_("Within %1$d–%2$d %% for %3$s of %4$s of the main parts.\n"), percent (effort->low), percent (effort->high),
           in_band, main_part);
  g_print (_("Energy: %1$d to %2$d kcal for %3$g kg; %4$.0f MET-minutes.\n"), effort->kcal_low, effort->kcal_high,
           session->mass, effort->met_minutes);
  if (lap_effort_starts (effort->timeline) > 1)
    g_print ("%s\n", _("Shown is whoever starts at the first station; the others meet the same in another order."));
  g_print ("%s\n", _("People differ by 12 beats either way in their maximum alone; heat, thirst and tiredness aren't in "
                     "it, and medicine for the heart makes it void."));
}

static int
run (int argc, char **argv)
{
  gboolean json = FALSE;
  const GOptionEntry entries[] = {
    { "json", 0, 0, G_OPTION_ARG_NONE, &json, N_("Print JSON"), NULL },
    { NULL },
  };
  g_auto (GStrv) files = NULL;
  g_autoptr (LapTimeline) timeline = NULL;
  g_autoptr (LapEffort) effort = NULL;
  g_autoptr (GBytes) bytes = NULL;

  if (!lap_cli_options (argc, argv, &lap_command_effort, entries, 1, 1, &files))
    return LAP_ERROR_USAGE;
  timeline = lap_cli_timeline (files[0]);
  if (timeline == NULL)
    return LAP_ERROR_INVALID;
  effort = lap_effort_new (timeline);
  if (!json) {
    print_text (effort);
    return 0;
  }
  bytes = lap_publish_effort (effort);
  return lap_cli_print (bytes);
}

const LapCommand lap_command_effort = {
  "effort", "FILE [--json]", N_("Estimates the effort of a session and the energy it takes."), run,
};
