/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The player through GStreamer into a file: what arrives is the stream, and a part that is missing is told.
 */
#include "ui/rehearse/player.h"

#include "base/error.h"
#include "ui/rehearse/window.h"

#include "timelines.h"

#include <glib/gstdio.h>

static gboolean
tick_cb (gpointer rehearsal)
{
  lap_rehearsal_tick (rehearsal);
  return G_SOURCE_CONTINUE;
}

static void
test_file (void)
{
  g_autoptr (LapTimeline) timeline = test_part ("main", 1, "{'exercise': 'squat', 'work': 5, 'rest': 5}, "
                                                           "{'exercise': 'squat', 'work': 5, 'rest': 0}");
  g_autoptr (LapRehearsal) rehearsal = lap_rehearsal_new (timeline, lap_rehearse_time, NULL);
  g_autofree char *path = g_build_filename (g_get_tmp_dir (), "lapwing-player.raw", NULL), *data = NULL;
  g_autofree char *sink = g_strdup_printf ("audio/x-raw,format=S16LE,rate=48000,channels=1 ! filesink sync=true "
                                           "location=%s", path);
  g_autoptr (GError) error = NULL;
  LapPlayer *player;
  guint pulse;
  gsize n = 0, first = 0, last = 0;

  player = lap_player_new (lap_sounding_new (rehearsal, timeline, FALSE), sink, &error);
  g_assert_no_error (error);
  lap_player_set_volume (player, 1);
  lap_rehearsal_start (rehearsal, 2);
  pulse = g_timeout_add (20, tick_cb, rehearsal);
  while (lap_rehearsal_clock (rehearsal) < LAP_SECOND) {
    if (lap_rehearsal_state (rehearsal) == LAP_REHEARSAL_HELD)
      lap_rehearsal_start (rehearsal, 2);
    g_main_context_iteration (NULL, TRUE);
  }
  g_source_remove (pulse);
  lap_player_free (player);
  g_assert_true (g_file_get_contents (path, &data, &n, &error));
  g_unlink (path);
  n /= sizeof (gint16);
  /* From the first sample that sounds, of the count, to the last, of the long tone into work. */
  for (gsize i = 0; i < n; i++) {
    if (((gint16 *) data)[i] == 0)
      continue;
    first = first == 0 ? i : first;
    last = i;
  }
  g_assert_cmpuint (first, >, 0);
  g_test_message ("%.4f s from the first tone of the count to the end of the one into work", (last - first) / 48000.0);
  g_assert_cmpuint (last - first, >, 48000);
}

static void
test_missing (void)
{
  g_autoptr (LapTimeline) timeline = test_part ("main", 1, "{'exercise': 'squat', 'work': 5}");
  g_autoptr (LapRehearsal) rehearsal = lap_rehearsal_new (timeline, lap_rehearse_time, NULL);
  g_autoptr (GError) error = NULL;

  g_assert_null (lap_player_new (lap_sounding_new (rehearsal, timeline, FALSE), "nosuchsink", &error));
  g_assert_error (error, LAP_ERROR, LAP_ERROR_MISSING);
  g_assert_nonnull (strstr (error->message, "nosuchsink"));
  g_assert_null (strchr (error->message, '\n'));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/ui/player/file", test_file);
  g_test_add_func ("/ui/player/missing", test_missing);
  return g_test_run ();
}
