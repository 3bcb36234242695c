/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * lapwing sheets [--json]: the sheets that this build can print.
 */
#include "cli/cli.h"

#include "sheets/sheets.h"
#include "sheets/week-sheets.h"

#include <glib/gi18n-lib.h>

/* Those of a session first, then those of a week. */
static const char *
id_of (guint n)
{
  return n < lap_sheets_n () ? lap_sheets_nth (n)->id : lap_week_sheets_nth (n - lap_sheets_n ())->id;
}

static const char *
title_of (guint n)
{
  return _(n < lap_sheets_n () ? lap_sheets_nth (n)->title : lap_week_sheets_nth (n - lap_sheets_n ())->title);
}

static const char *
purpose_of (guint n)
{
  return _(n < lap_sheets_n () ? lap_sheets_nth (n)->purpose : lap_week_sheets_nth (n - lap_sheets_n ())->purpose);
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
  guint n = lap_sheets_n () + lap_week_sheets_n ();

  if (!lap_cli_options (argc, argv, &lap_command_sheets, entries, 0, 0, &rest))
    return LAP_ERROR_USAGE;
  if (json)
    return lap_cli_print_known ("sheets", n, id_of, title_of);
  for (guint i = 0; i < n; i++)
    g_print ("%-14s %s, %s\n", id_of (i), title_of (i), purpose_of (i));
  return 0;
}

const LapCommand lap_command_sheets = {
  "sheets", "[--json]", N_("Lists the sheets that this build can print."), run,
};
