/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/cli.h"

#include "store/documents.h"
#include "store/read-file.h"

LapWeek *
lap_cli_week (const char *file)
{
  g_autoptr (GBytes) bytes = NULL;
  LapWeek *week = NULL;
  GError *error = NULL;

  bytes = lap_read_file (file, NULL, &error);
  if (bytes != NULL)
    week = lap_week_from_bytes (bytes, &error);
  if (week == NULL) {
    if (bytes != NULL)
      g_prefix_error (&error, "%s: ", file);
    lap_cli_fail (error);
    return NULL;
  }
  if (week->version > LAP_WEEK_VERSION)
    g_printerr ("lapwing: %s: written by a newer version (%d); what this one doesn't know is passed over\n", file,
                week->version);
  return week;
}

int
lap_cli_write_week (const char *out, LapWeek *week)
{
  g_autoptr (GBytes) bytes = lap_week_to_bytes (week);

  if (week->version > LAP_WEEK_VERSION) {
    g_printerr ("lapwing: the file is of a newer version (%d); this one can't write it\n", week->version);
    return LAP_ERROR_INVALID;
  }
  return lap_cli_write (out, bytes);
}
