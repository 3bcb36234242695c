/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * lapwing formats [--json]: the formats that this build can publish.
 */
#include "cli/cli.h"

#include "publish/formats.h"

#include <glib/gi18n-lib.h>

static const char *
id_of (guint n)
{
  return lap_formats_nth (n)->id;
}

static const char *
title_of (guint n)
{
  return _(lap_formats_nth (n)->title);
}

static void
tell (guint n)
{
  const LapFormat *format = lap_formats_nth (n);

  g_print ("%-14s %s, %s\n", format->id, _(format->title), _(format->purpose));
}

static int
run (int argc, char **argv)
{
  return lap_cli_list (argc, argv, &lap_command_formats, lap_formats_n (), id_of, title_of, tell);
}

const LapCommand lap_command_formats = {
  "formats", "[--json]", N_("Lists the formats that this build can publish."), run,
};
