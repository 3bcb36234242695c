/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * lapwing timeline FILE [--json | --csv]: the session laid out to the second.
 */
#include "cli/cli.h"

#include "publish/timeline.h"

#include <glib/gi18n-lib.h>

static void
print_lines (const LapTimeline *timeline)
{
  g_autofree char *length = lap_clock_text (timeline->length);

  for (guint i = 0; i < timeline->n; i++) {
    const LapInterval *v = &timeline->intervals[i];
    const LapTask *task = lap_timeline_task (timeline, v);
    g_autofree char *clock = lap_clock_text (v->start);

    g_print ("%8s %6d s  %-10s  %s%s\n", clock, v->seconds, lap_words_id (&lap_interval_kinds, v->kind),
             task != NULL ? lap_task_name (task) : lap_part_title (timeline->parts[v->part].part),
             v->side == LAP_SIDE_LEFT ? _(", left") : v->side == LAP_SIDE_RIGHT ? _(", right") : "");
  }
  g_print ("%8s\n", length);
}

static int
run (int argc, char **argv)
{
  gboolean json = FALSE, csv = FALSE;
  const GOptionEntry entries[] = {
    { "json", 0, 0, G_OPTION_ARG_NONE, &json, N_("Print JSON"), NULL },
    { "csv", 0, 0, G_OPTION_ARG_NONE, &csv, N_("Print a table (CSV)"), NULL },
    { NULL },
  };
  g_auto (GStrv) files = NULL;
  g_autoptr (LapTimeline) timeline = NULL;
  g_autoptr (GBytes) bytes = NULL;

  if (!lap_cli_options (argc, argv, &lap_command_timeline, entries, 1, 1, &files))
    return LAP_ERROR_USAGE;
  if (json && csv) {
    g_printerr ("lapwing timeline: expected either --json or --csv\n");
    return LAP_ERROR_USAGE;
  }
  timeline = lap_cli_timeline (files[0]);
  if (timeline == NULL)
    return LAP_ERROR_INVALID;
  if (!json && !csv) {
    print_lines (timeline);
    return 0;
  }
  bytes = json ? lap_publish_timeline (timeline) : lap_publish_table (timeline);
  return lap_cli_print (bytes);
}

const LapCommand lap_command_timeline = {
  "timeline", "FILE [--json | --csv]", N_("Prints the session laid out to the second."), run,
};
