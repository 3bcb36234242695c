/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What workers of a window do at the same time as the window: each with a copy of one session, mending it and printing
 * it. All come to the same bytes as somebody who is alone. A build for ThreadSanitizer sees in it what is shared.
 */
#include "arrange/mend.h"
#include "sheets/sheets.h"
#include "store/documents.h"
#include "store/read-file.h"

#define WORKERS 3

static LapSession *
demo (void)
{
  g_autofree char *path = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", "too-much-at-once.lapwing", NULL);
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) bytes = lap_read_file (path, NULL, &error);
  LapSession *session = bytes != NULL ? lap_session_from_bytes (bytes, &error) : NULL;

  g_assert_no_error (error);
  return session;
}

/* The checksum of the session, mended, and of its poster. */
static gpointer
work (gpointer twin)
{
  g_autoptr (LapSession) session = twin;
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (GPtrArray) done = lap_mend (session, builtin, FALSE, NULL, NULL);
  g_autoptr (LapTimeline) timeline = lap_timeline_new (session, builtin, NULL);
  g_autoptr (GBytes) bytes = lap_session_to_bytes (session);
  const LapSheetOptions options = { .paper = LAP_PAPER_A3 };
  g_autoptr (GBytes) pdf = lap_sheet_print (lap_sheets_find ("poster"), timeline, &options, NULL);
  g_autoptr (GChecksum) sum = g_checksum_new (G_CHECKSUM_SHA256);

  g_assert_cmpuint (done->len, >, 0);
  g_checksum_update (sum, g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes));
  g_checksum_update (sum, g_bytes_get_data (pdf, NULL), g_bytes_get_size (pdf));
  return g_strdup (g_checksum_get_string (sum));
}

static void
test_at_once (void)
{
  g_autoptr (LapSession) session = demo ();
  GThread *threads[WORKERS];
  g_autofree char *here = NULL, *alone = NULL;

  for (guint i = 0; i < WORKERS; i++)
    threads[i] = g_thread_new ("worker", work, lap_object_copy (session));
  here = work (lap_object_copy (session));
  for (guint i = 0; i < WORKERS; i++) {
    g_autofree char *there = g_thread_join (threads[i]);

    g_assert_cmpstr (there, ==, here);
  }
  alone = work (lap_object_copy (session));
  g_assert_cmpstr (here, ==, alone);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/sheets/workers/at-once", test_at_once);
  return g_test_run ();
}
