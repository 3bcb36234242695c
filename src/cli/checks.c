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

/* help/check-pages.py makes the pages of the help from these lines. */
static void
tell (guint n)
{
  const LapCheck *check = lap_checks_nth (n);

  g_print ("%-18s %s: %s. %s (%s)\n", check->id, lap_words_label (&lap_severities, check->severity), _(check->title),
           _(check->reason), _(check->source));
}

static int
run (int argc, char **argv)
{
  return lap_cli_list (argc, argv, &lap_command_checks, lap_checks_n (), id_of, title_of, tell);
}

const LapCommand lap_command_checks = {
  "checks", "[--json]", N_("Lists the checks that this build knows."), run,
};
