/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * lapwing compose BRIEF -o OUT: a session from a brief.
 */
#include "cli/cli.h"

#include "arrange/compose.h"
#include "base/json-scan.h"
#include "store/documents.h"
#include "store/read-file.h"

#include <glib/gi18n-lib.h>

static LapBrief *
read_brief (const char *file, GError **error)
{
  g_autoptr (GBytes) bytes = lap_read_file (file, NULL, error);
  g_autoptr (JsonNode) root = NULL;
  LapBrief *brief = NULL;

  if (bytes == NULL)
    return NULL;
  root = lap_json_parse (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes), error);
  if (root != NULL)
    brief = lap_brief_read (root, error);
  if (brief == NULL) {
    lap_error_add_line (*error, bytes);
    g_prefix_error (error, "%s: ", file);
  }
  return brief;
}

static int
run (int argc, char **argv)
{
  g_autofree char *out = NULL;
  const GOptionEntry entries[] = {
    { "output", 'o', 0, G_OPTION_ARG_FILENAME, &out, N_("Write the session"), "OUT" },
    { NULL },
  };
  g_auto (GStrv) files = NULL;
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (LapBrief) brief = NULL;
  g_autoptr (LapSession) session = NULL;
  GError *error = NULL;

  if (!lap_cli_options (argc, argv, &lap_command_compose, entries, 1, 1, &files))
    return LAP_ERROR_USAGE;
  if (out == NULL)
    return lap_cli_usage (&lap_command_compose);
  brief = read_brief (files[0], &error);
  if (brief != NULL)
    session = lap_compose (brief, builtin, &error);
  if (session == NULL)
    return lap_cli_fail (error);
  return lap_cli_write_session (out, session);
}

const LapCommand lap_command_compose = {
  "compose", "BRIEF -o OUT", N_("Composes a session from a brief, warm-up and cool-down included."), run,
};
