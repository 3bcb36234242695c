/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * lapwing sheets [--json]: the sheets that this build can print.
 */
#include "cli/cli.h"

#include "sheets/sheets.h"

#include <glib/gi18n-lib.h>

static const char *
id_of (guint n)
{
  return lap_sheets_nth (n)->id;
}

static const char *
title_of (guint n)
{
  return _(lap_sheets_nth (n)->title);
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

  if (!lap_cli_options (argc, argv, &lap_command_sheets, entries, 0, 0, &rest))
    return LAP_ERROR_USAGE;
  if (json)
    return lap_cli_print_known ("sheets", lap_sheets_n (), id_of, title_of);
  for (guint i = 0; i < lap_sheets_n (); i++)
    g_print ("%-14s %s, %s\n", lap_sheets_nth (i)->id, _(lap_sheets_nth (i)->title), _(lap_sheets_nth (i)->purpose));
  return 0;
}

const LapCommand lap_command_sheets = {
  "sheets", "[--json]", N_("Lists the sheets that this build can print."), run,
};
