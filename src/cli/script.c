/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * lapwing script FILE [--json]: what to say when.
 */
#include "cli/cli.h"

#include "publish/effort.h"

#include <glib/gi18n-lib.h>

static void
print_lines (const LapScript *script)
{
  for (guint i = 0; i < script->n; i++) {
    g_autofree char *clock = lap_clock_text (script->lines[i].start);
    g_autofree char *text = g_strdelimit (g_strdup (script->lines[i].text), "\r\n", ' ');

    g_print ("%8s  %s\n", clock, text);
  }
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
  g_autoptr (LapTalk) talk = NULL;
  g_autoptr (LapScript) script = NULL;
  g_autoptr (GBytes) bytes = NULL;

  if (!lap_cli_options (argc, argv, &lap_command_script, entries, 1, 1, &files))
    return LAP_ERROR_USAGE;
  timeline = lap_cli_timeline (files[0]);
  if (timeline == NULL)
    return LAP_ERROR_INVALID;
  effort = lap_effort_new (timeline);
  talk = lap_talk_new (timeline, effort);
  script = lap_script_new (talk);
  if (!json) {
    print_lines (script);
    return 0;
  }
  bytes = lap_publish_script (script);
  return lap_cli_print (bytes);
}

const LapCommand lap_command_script = {
  "script", "FILE [--json]", N_("Prints what to say when."), run,
};
