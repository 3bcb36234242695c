/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * lapwing checks [--json]: the checks that this build knows.
 */
#include "cli/cli.h"

#include "checks/checks.h"

#include <glib/gi18n-lib.h>

static const char *
id_of (guint n)
{
  return lap_checks_nth (n)->id;
}

static const char *
title_of (guint n)
{
  return _(lap_checks_nth (n)->title);
}

static int
run (int argc, char **argv)
{
  gboolean json = FALSE;
  const GOptionEntry entries[] = {
    { "json", 0, 0, G_OPTION_ARG_NONE, &json, N_("Print JSON"), NULL },
    { NULL },
  };
  g_auto (GStrv) rest = NULL;

  if (!lap_cli_options (argc, argv, &lap_command_checks, entries, 0, 0, &rest))
    return LAP_ERROR_USAGE;
  if (json)
    return lap_cli_print_known ("checks", lap_checks_n (), id_of, title_of);
  for (guint i = 0; i < lap_checks_n (); i++) {
    const LapCheck *check = lap_checks_nth (i);

    /* One line a check; help/check-pages.py makes the pages of the help from them. */
    g_print ("%-18s %s: %s. %s (%s)\n", check->id, lap_words_label (&lap_severities, check->severity),
             _(check->title), _(check->reason), _(check->source));
  }
  return 0;
}

const LapCommand lap_command_checks = {
  "checks", "[--json]", N_("Lists the checks that this build knows."), run,
};
