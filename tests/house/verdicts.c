/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * verdicts FILE…: reads each session as the commands do and prints a line for it: "ok", or what is wrong with it.
 * For tests that try so many documents that starting the program for each would take minutes.
 */
#include "store/documents.h"
#include "store/read-file.h"
#include "timeline/timeline.h"

static char *
verdict (const char *file, LapCatalogue *builtin)
{
  g_autoptr (LapSession) session = NULL;
  g_autoptr (LapTimeline) timeline = NULL;
  g_autoptr (GBytes) bytes = NULL;
  g_autoptr (GError) error = NULL;

  bytes = lap_read_file (file, NULL, &error);
  if (bytes != NULL)
    session = lap_session_from_bytes (bytes, &error);
  if (session != NULL)
    timeline = lap_timeline_new (session, builtin, &error);
  return g_strdup (timeline != NULL ? "ok" : error->message);
}

int
main (int argc, char **argv)
{
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();

  for (int i = 1; i < argc; i++) {
    g_autofree char *said = verdict (argv[i], builtin);

    g_print ("%s\n", said);
  }
  return 0;
}
