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
  g_autofree char *end = g_strdup_printf ("audio/x-raw,format=S16LE,rate=48000,channels=1 ! filesink sync=true "
                                          "location=%s", path);
  g_autoptr (GError) error = NULL;
  LapPlayer *player;
  guint pulse;
  gsize n = 0, first = 0, last = 0;

  gst_init (NULL, NULL);
  player = lap_player_new (lap_sounding_new (rehearsal, timeline, FALSE), gst_parse_bin_from_description (end, TRUE, NULL), &error);
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

/* What arrives at the output, seen by its thread. */
typedef struct {
  GMutex lock;
  gint64 start; /* of the tone that was seen last, microseconds of the stream; −1 without */
  gint64 next;  /* where the stream goes on when nothing was left out */
  guint  silent; /* samples before, nothing left out */
} Seen;

static GstPadProbeReturn
seen_cb (GstPad *pad, GstPadProbeInfo *info, gpointer data)
{
  GstBuffer *buffer = GST_PAD_PROBE_INFO_BUFFER (info);
  gint64 at = GST_BUFFER_PTS (buffer) / 1000;
  Seen *seen = data;
  GstMapInfo map;

  g_mutex_lock (&seen->lock);
  if (ABS (at - seen->next) > 1)
    seen->silent = 0;
  gst_buffer_map (buffer, &map, GST_MAP_READ);
  for (guint i = 0; i < map.size / sizeof (gint16); i++) {
    if (((gint16 *) map.data)[i] == 0)
      seen->silent++;
    else {
      if (seen->silent > LAP_SOUNDING_RATE / 10)
        seen->start = at + i * LAP_SECOND / LAP_SOUNDING_RATE;
      seen->silent = 0;
    }
  }
  gst_buffer_unmap (buffer, &map);
  seen->next = at + (gint64) (map.size / sizeof (gint16)) * LAP_SECOND / LAP_SOUNDING_RATE;
  g_mutex_unlock (&seen->lock);
  return GST_PAD_PROBE_OK;
}

/* How far from a whole second of the count the tone at @start of the stream is heard. */
static gint64
off_by (GstElement *sink, gint64 start, gint64 begun)
{
  g_autoptr (GstClock) clock = gst_element_get_clock (sink);
  g_autoptr (GstQuery) query = gst_query_new_latency ();
  GstClockTime latency, base = gst_element_get_base_time (sink);
  gint64 before, now, after, heard, off;

  do {
    before = lap_rehearse_time (NULL);
    now = gst_clock_get_time (clock) / 1000;
    after = lap_rehearse_time (NULL);
  } while (after - before > 500);
  g_assert_true (gst_element_query (GST_ELEMENT_PARENT (sink), query));
  gst_query_parse_latency (query, NULL, &latency, NULL);
  heard = base / 1000 + start + latency / 1000 + (after - now);
  off = (heard - begun) % LAP_SECOND;
  return off > LAP_SECOND / 2 ? off - LAP_SECOND : off;
}

/* An output that takes a fifth of a second to be heard: each tone is heard within 30 ms of its moment all the same. */
static void
test_moment (void)
{
  g_autoptr (LapTimeline) timeline = test_part ("main", 1, "{'exercise': 'squat', 'work': 5, 'rest': 5}");
  g_autoptr (LapRehearsal) rehearsal = lap_rehearsal_new (timeline, lap_rehearse_time, NULL);
  g_autoptr (GError) error = NULL;
  Seen seen = { .start = -1 };
  g_autoptr (GstElement) sink = NULL;
  g_autoptr (GstPad) pad = NULL;
  LapPlayer *player;
  guint pulse = g_timeout_add (20, tick_cb, rehearsal);
  gint64 begun, start = -1;

  gst_init (NULL, NULL);
  sink = gst_object_ref_sink (gst_element_factory_make_full ("fakesink", "sync", TRUE, "processing-deadline",
                                                             (guint64) 200 * GST_MSECOND, NULL));
  pad = gst_element_get_static_pad (sink, "sink");
  gst_pad_add_probe (pad, GST_PAD_PROBE_TYPE_BUFFER, seen_cb, &seen, NULL);
  player = lap_player_new (lap_sounding_new (rehearsal, timeline, FALSE), sink, &error);
  g_assert_no_error (error);
  lap_rehearsal_start (rehearsal, 5);
  begun = lap_rehearsal_now (rehearsal);
  while (start < 0) {
    /* A machine that is busy with something else must not look as if it had slept. */
    if (lap_rehearsal_state (rehearsal) != LAP_REHEARSAL_COUNT_IN) {
      lap_rehearsal_jump (rehearsal, 0);
      lap_rehearsal_start (rehearsal, 5);
      begun = lap_rehearsal_now (rehearsal);
    }
    g_main_context_iteration (NULL, TRUE);
    g_mutex_lock (&seen.lock);
    start = seen.start;
    g_mutex_unlock (&seen.lock);
  }
  g_test_message ("heard %" G_GINT64_FORMAT " µs off its moment", off_by (sink, start, begun));
  g_assert_cmpint (ABS (off_by (sink, start, begun)), <, 30000);
  g_source_remove (pulse);
  lap_player_free (player);
}

/* Without a single part of GStreamer there is one line about it. */
static void
test_missing (void)
{
  g_autoptr (LapTimeline) timeline = test_part ("main", 1, "{'exercise': 'squat', 'work': 5}");
  g_autoptr (LapRehearsal) rehearsal = lap_rehearsal_new (timeline, lap_rehearse_time, NULL);
  g_autoptr (GError) error = NULL;

  if (!g_test_subprocess ()) {
    g_test_trap_subprocess (NULL, 0, G_TEST_SUBPROCESS_INHERIT_STDERR);
    g_test_trap_assert_passed ();
    return;
  }
  g_setenv ("GST_PLUGIN_SYSTEM_PATH_1_0", "/nowhere", TRUE);
  g_setenv ("GST_REGISTRY_1_0", "/nowhere/registry", TRUE);
  g_assert_null (lap_player_new (lap_sounding_new (rehearsal, timeline, FALSE), NULL, &error));
  g_assert_error (error, LAP_ERROR, LAP_ERROR_MISSING);
  g_assert_nonnull (strstr (error->message, "autoaudiosink"));
  g_assert_null (strchr (error->message, '\n'));
}

static void
trouble_cb (const char *why, gpointer data)
{
  *(char **) data = g_strdup (why);
}

/* An output that fails while it plays is told once. */
static void
test_trouble (void)
{
  g_autoptr (LapTimeline) timeline = test_part ("main", 1, "{'exercise': 'squat', 'work': 5}");
  g_autoptr (LapRehearsal) rehearsal = lap_rehearsal_new (timeline, lap_rehearse_time, NULL);
  g_autoptr (GError) error = NULL;
  g_autofree char *why = NULL;
  LapPlayer *player;

  gst_init (NULL, NULL);
  player = lap_player_new (lap_sounding_new (rehearsal, timeline, FALSE),
                           gst_parse_bin_from_description ("identity error-after=3 ! fakesink", TRUE, NULL), &error);
  g_assert_no_error (error);
  lap_player_watch (player, trouble_cb, &why);
  while (why == NULL)
    g_main_context_iteration (NULL, TRUE);
  g_assert_nonnull (strstr (why, "stopped"));
  lap_player_free (player);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/ui/player/missing", test_missing);
  g_test_add_func ("/ui/player/file", test_file);
  g_test_add_func ("/ui/player/moment", test_moment);
  g_test_add_func ("/ui/player/trouble", test_trouble);
  return g_test_run ();
}
