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

static int
run (int argc, char **argv)
{
  gboolean json = FALSE;
  const GOptionEntry entries[] = {
    { "json", 0, 0, G_OPTION_ARG_NONE, &json, N_("Print JSON"), NULL },
    { NULL },
  };
  g_auto (GStrv) rest = NULL;

  if (!lap_cli_options (argc, argv, &lap_command_formats, entries, 0, 0, &rest))
    return LAP_ERROR_USAGE;
  if (json)
    return lap_cli_print_known ("formats", lap_formats_n (), id_of, title_of);
  for (guint i = 0; i < lap_formats_n (); i++) {
    const LapFormat *format = lap_formats_nth (i);

    g_print ("%-14s %s, %s\n", format->id, _(format->title), _(format->purpose));
  }
  return 0;
}

const LapCommand lap_command_formats = {
  "formats", "[--json]", N_("Lists the formats that this build can publish."), run,
};
