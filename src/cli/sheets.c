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

static void
tell (guint n)
{
  g_print ("%-14s %s, %s\n", id_of (n), title_of (n), purpose_of (n));
}

static int
run (int argc, char **argv)
{
  return lap_cli_list (argc, argv, &lap_command_sheets, lap_sheets_n () + lap_week_sheets_n (), id_of, title_of, tell);
}

const LapCommand lap_command_sheets = {
  "sheets", "[--json]", N_("Lists the sheets that this build can print."), run,
};
