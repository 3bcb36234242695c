/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The benchmark of the list of sessions: ten thousand files, copies of the demo with titles of their own. The first
 * time all are read, laid out and checked; the next time the index is loaded and the folder looked over. Held: the
 * second takes at most a tenth of the processor time of the first, and finding a word in all of them less than a frame.
 */
#include "bench/measure.h"
#include "store/documents.h"
#include "ui/glance.h"

#include <glib/gstdio.h>

#define FILES 10000
#define FRAME (1000.0 / 60) /* ms */

static void
write_files (const char *folder, const char *demo)
{
  g_autofree char *text = NULL;
  g_autoptr (GBytes) bytes = NULL;
  g_autoptr (LapSession) session = NULL;
  g_autoptr (GError) error = NULL;
  gsize size;

  if (!g_file_get_contents (demo, &text, &size, &error))
    g_error ("%s", error->message);
  bytes = g_bytes_new_static (text, size);
  session = lap_session_from_bytes (bytes, &error);
  for (guint i = 0; i < FILES; i++) {
    g_autofree char *name = g_strdup_printf ("%05u.lapwing", i), *path = g_build_filename (folder, name, NULL);
    g_autofree char *title = g_strdup_printf ("Session number %u", i);
    g_autoptr (GBytes) one = NULL;

    g_object_set (session, "title", title, NULL);
    one = lap_session_to_bytes (session);
    if (!g_file_set_contents_full (path, g_bytes_get_data (one, NULL), g_bytes_get_size (one),
                                   G_FILE_SET_CONTENTS_NONE, 0644, &error))
      g_error ("%s", error->message);
  }
}

static void
remove_files (const char *folder)
{
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);

  for (const char *name = g_dir_read_name (dir); name != NULL; name = g_dir_read_name (dir)) {
    g_autofree char *path = g_build_filename (folder, name, NULL);

    g_unlink (path);
  }
  g_rmdir (folder);
}

int
main (int argc, char **argv)
{
  g_autofree char *folder = g_dir_make_tmp ("lapwing-bench-XXXXXX", NULL);
  g_autofree char *cache = g_build_filename (folder, "index", NULL);
  g_autoptr (LapIndex) none = NULL, first = NULL, kept = NULL, second = NULL;
  g_auto (GStrv) wanted = lap_index_fold ("session squat");
  double start, full, load, again, search;
  guint hits = 0;
  gboolean good;

  g_assert_cmpint (argc, ==, 2);
  write_files (folder, argv[1]);
  none = lap_index_load (folder, cache);
  start = measure_cpu ();
  first = lap_index_refresh (none, NULL, lap_glance, G_MAXUINT, NULL);
  full = measure_cpu () - start;
  lap_index_keep (first, cache, NULL);
  start = measure_cpu ();
  kept = lap_index_load (folder, cache);
  load = measure_cpu () - start;
  second = lap_index_refresh (kept, NULL, lap_glance, G_MAXUINT, NULL);
  again = measure_cpu () - start;
  start = measure_cpu ();
  for (guint i = 0; i < lap_index_n (second); i++)
    hits += lap_index_entry_matches (lap_index_nth (second, i), (const char * const *) wanted);
  search = measure_cpu () - start;
  good = lap_index_n (first) == FILES && lap_index_n (kept) == FILES && lap_index_n_looked (second) == 0 &&
         again <= 0.1 * full && search < FRAME;
  g_print ("%u files, processor time: all read %.0f ms; index loaded %.1f ms, loaded and refreshed %.1f ms, %.4f of it; "
           "searched %.2f ms, %u found\n%s\n", lap_index_n (first), full, load, again, again / full, search, hits,
           good ? "as held" : "TOO MUCH");
  remove_files (folder);
  return good ? 0 : 1;
}
