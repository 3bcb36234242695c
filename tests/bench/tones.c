/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * tones: half an hour and twelve hours of tones as WAV, against writing as many bytes bare, in this run and in turn; the
 * quickest of each counts. The ratio is held for half an hour: twelve hours are more than a disk's cache takes at once.
 * The memory that is taken is held for both.
 */
#include "publish/formats.h"
#include "store/documents.h"

#include <fcntl.h>
#include <glib/gstdio.h>
#include <math.h>
#include <sys/resource.h>
#include <unistd.h>

#define TIMES     5
#define BAR       2.0
#define BAR_KB    1024
#define BARE      (96 * 1000) /* a second of sound, as the format writes it */

static LapTimeline *
plan (int rounds)
{
  g_autofree char *text = g_strdup_printf ("{\"format\": \"lapwing-session\", \"version\": 1, \"id\": \"b\", \"title\": "
    "\"b\", \"parts\": [{\"kind\": \"main\", \"rounds\": %d, \"keep-last-rest\": true, \"blocks\": [{\"exercise\": "
    "\"squat\", \"work\": 400, \"rest\": 32}]}]}", rounds);
  g_autoptr (GBytes) bytes = g_bytes_new (text, strlen (text));
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (LapSession) session = lap_session_from_bytes (bytes, NULL);

  return lap_timeline_new (session, builtin, NULL);
}

static long
peak_kb (void)
{
  struct rusage usage;

  getrusage (RUSAGE_SELF, &usage);
  return usage.ru_maxrss;
}

static gint64
write_bare (const char *path, gint64 bytes)
{
  static char block[BARE];
  gint64 start = g_get_monotonic_time ();
  int fd = open (path, O_WRONLY | O_CREAT | O_TRUNC, 0600);

  for (; bytes > 0; bytes -= sizeof block)
    if (write (fd, block, MIN (bytes, (gint64) sizeof block)) < 0)
      g_error ("%s can't be written", path);
  fsync (fd);
  close (fd);
  return g_get_monotonic_time () - start;
}

static gint64
write_tones (const char *path, LapTimeline *timeline)
{
  LapPublication what = { .timeline = timeline };
  gint64 start = g_get_monotonic_time ();

  if (!lap_publish (lap_formats_find ("tones"), &what, path, NULL, NULL))
    g_error ("%s can't be written", path);
  return g_get_monotonic_time () - start;
}

static gboolean
compare (const char *folder, int rounds, int times, double bar)
{
  g_autofree char *bare = g_build_filename (folder, "bare", NULL), *wav = g_build_filename (folder, "a.wav", NULL);
  g_autoptr (LapTimeline) timeline = plan (rounds);
  gint64 bytes = (gint64) timeline->length * BARE + 44, least = G_MAXINT64, floor = G_MAXINT64;
  long before, more;

  write_bare (bare, BARE);
  before = peak_kb ();
  for (int i = 0; i < times; i++) {
    floor = MIN (floor, write_bare (bare, bytes));
    least = MIN (least, write_tones (wav, timeline));
    g_unlink (wav);
    g_unlink (bare);
  }
  more = peak_kb () - before;
  g_print ("tones of %d s: %.0f ms, bare %.0f ms, ratio %.2f (bar %.3g); %ld kB more memory (bar %d)\n",
           timeline->length, least / 1e3, floor / 1e3, (double) least / floor, bar, more, BAR_KB);
  return least <= bar * floor && more <= BAR_KB;
}

int
main (void)
{
  g_autofree char *folder = g_dir_make_tmp ("lapwing-XXXXXX", NULL);
  gboolean good = compare (folder, 4, TIMES, BAR);

  good = compare (folder, 100, 1, HUGE_VAL) && good;
  g_rmdir (folder);
  return good ? 0 : 1;
}
