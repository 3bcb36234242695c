/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/rehearse/player.h"

#include "base/error.h"
#include "ui/rehearse/speaker.h"
#include "ui/rehearse/window.h"

#include <glib/gi18n-lib.h>
#include <gst/app/gstappsrc.h>
#include <gst/audio/audio.h>
#include <gst/audio/streamvolume.h>
#include <string.h>

#define CHUNK 10000  /* microseconds */
#define AHEAD 150000 /* that are fed before they are heard */
#define FEED  20     /* milliseconds from one feeding to the next */
#define DRIFT 5000   /* microseconds off the clock before the stream is set right */
#define CLOSE 1000   /* microseconds between two looks at two clocks that count as one */

struct _LapPlayer {
  LapSounding *sounding;
  LapSpeaker  *speaker; /* or NULL */
  void       (*trouble) (const char *why, gpointer data);
  gpointer     data;
  GstElement  *pipeline, *source, *volume;
  guint        feeding, watch;
  gint64       fed;    /* microseconds of the stream */
  gint64       offset; /* of the rehearsal's time when a moment of the stream is heard, against the stream's */
};

/* Microseconds of the stream that are heard now, or −1 before it runs. */
static gint64
stream_time (LapPlayer *self)
{
  g_autoptr (GstClock) clock = gst_element_get_clock (self->pipeline);
  GstClockTime now;

  if (clock == NULL)
    return -1;
  now = gst_clock_get_time (clock);
  return (gint64) (now - gst_element_get_base_time (self->pipeline)) / 1000;
}

/* Microseconds from the moment of the stream that a sample has to the one at which it is heard. */
static gint64
latency (LapPlayer *self)
{
  g_autoptr (GstQuery) query = gst_query_new_latency ();
  GstClockTime least = 0;

  if (gst_element_query (self->pipeline, query))
    gst_query_parse_latency (query, NULL, &least, NULL);
  return GST_CLOCK_TIME_IS_VALID (least) ? (gint64) (least / 1000) : 0;
}

static gboolean
is_silent (const gint16 *samples)
{
  for (guint i = 0; i < LAP_SOUNDING_CHUNK; i++)
    if (samples[i] != 0)
      return FALSE;
  return TRUE;
}

static gboolean
feed_cb (gpointer data)
{
  LapPlayer *self = data;
  gint64 before = lap_rehearse_time (NULL), now = stream_time (self), after = lap_rehearse_time (NULL), offset;

  /* Who was kept waiting between the two clocks can't compare them. */
  if (now < 0 || after - before > CLOSE)
    return G_SOURCE_CONTINUE;
  offset = after - now + latency (self);
  /* What was missed while the window was busy isn't played late. */
  self->fed = MAX (self->fed, now / CHUNK * CHUNK);
  for (; self->fed < now + AHEAD; self->fed += CHUNK) {
    gint16 *samples = g_new (gint16, LAP_SOUNDING_CHUNK);
    GstBuffer *buffer;

    lap_sounding_fill (self->sounding, self->offset + self->fed, samples);
    if (is_silent (samples) && ABS (offset - self->offset) > DRIFT)
      self->offset = offset;
    buffer = gst_buffer_new_wrapped (samples, LAP_SOUNDING_CHUNK * sizeof *samples);
    GST_BUFFER_PTS (buffer) = self->fed * 1000;
    GST_BUFFER_DURATION (buffer) = CHUNK * 1000;
    gst_app_src_push_buffer (GST_APP_SRC (self->source), buffer);
  }
  return G_SOURCE_CONTINUE;
}

/* The output failed, or the system has none and put up with silence. */
static gboolean
told_cb (GstBus *bus, GstMessage *message, gpointer data)
{
  LapPlayer *self = data;
  gboolean failed = GST_MESSAGE_TYPE (message) == GST_MESSAGE_ERROR;

  if (!failed && GST_MESSAGE_TYPE (message) != GST_MESSAGE_WARNING)
    return G_SOURCE_CONTINUE;
  if (failed)
    g_clear_handle_id (&self->feeding, g_source_remove);
  self->watch = 0;
  if (self->trouble != NULL)
    self->trouble (failed ? _("The sound output stopped: nothing is heard any more") :
                            _("The computer has no sound output: nothing is heard"), self->data);
  return G_SOURCE_REMOVE;
}

static gboolean
missing (GError **error, const char *what)
{
  g_set_error (error, LAP_ERROR, LAP_ERROR_MISSING, _("Sound needs a part of GStreamer that isn’t there: %s"), what);
  return FALSE;
}

static gboolean
build (LapPlayer *self, GstElement *sink, GError **error)
{
  g_autofree char *line = g_strdup_printf (
    "appsrc name=source format=time is-live=true caps=audio/x-raw,format=" GST_AUDIO_NE (S16) ",layout=interleaved,"
    "channels=1,rate=%d ! audioconvert ! audioresample ! volume name=volume", LAP_SOUNDING_RATE);
  g_autoptr (GError) why = NULL;
  g_autoptr (GstBus) bus = NULL;

  self->pipeline = gst_parse_launch_full (line, NULL, GST_PARSE_FLAG_FATAL_ERRORS, &why);
  if (self->pipeline == NULL)
    return missing (error, why->message);
  self->source = gst_bin_get_by_name (GST_BIN (self->pipeline), "source");
  self->volume = gst_bin_get_by_name (GST_BIN (self->pipeline), "volume");
  gst_bin_add (GST_BIN (self->pipeline), sink);
  bus = gst_element_get_bus (self->pipeline);
  self->watch = gst_bus_add_watch (bus, told_cb, self);
  if (gst_element_link (self->volume, sink) &&
      gst_element_set_state (self->pipeline, GST_STATE_PLAYING) != GST_STATE_CHANGE_FAILURE)
    return TRUE;
  g_set_error (error, LAP_ERROR, LAP_ERROR_MISSING, _("The sound output doesn’t open"));
  return FALSE;
}

LapPlayer *
lap_player_new (LapSounding *sounding, GstElement *sink, GError **error)
{
  g_autoptr (LapPlayer) self = g_new0 (LapPlayer, 1);
  g_autoptr (GstElement) owned = NULL;
  g_autoptr (GError) why = NULL;

  self->sounding = sounding;
  if (!gst_init_check (NULL, NULL, &why)) {
    g_set_error (error, LAP_ERROR, LAP_ERROR_MISSING, _("Sound needs GStreamer: %s"), why->message);
    return NULL;
  }
  owned = sink != NULL ? sink : gst_element_factory_make ("autoaudiosink", NULL);
  if (owned == NULL) {
    missing (error, "autoaudiosink");
    return NULL;
  }
  gst_object_ref_sink (owned);
  if (!build (self, owned, error))
    return NULL;
  self->feeding = g_timeout_add (FEED, feed_cb, self);
  return g_steal_pointer (&self);
}

void
lap_player_free (LapPlayer *self)
{
  g_clear_handle_id (&self->feeding, g_source_remove);
  g_clear_handle_id (&self->watch, g_source_remove);
  g_clear_pointer (&self->speaker, lap_speaker_free);
  if (self->pipeline != NULL)
    gst_element_set_state (self->pipeline, GST_STATE_NULL);
  g_clear_pointer (&self->source, gst_object_unref);
  g_clear_pointer (&self->volume, gst_object_unref);
  g_clear_pointer (&self->pipeline, gst_object_unref);
  lap_sounding_free (self->sounding);
  g_free (self);
}

void
lap_player_set_volume (LapPlayer *self, double volume)
{
  gst_stream_volume_set_volume (GST_STREAM_VOLUME (self->volume), GST_STREAM_VOLUME_FORMAT_CUBIC, volume);
}

gboolean
lap_player_speak (LapPlayer *self, const LapScript *script, GError **error)
{
  g_clear_pointer (&self->speaker, lap_speaker_free);
  self->speaker = lap_speaker_new (self->sounding, script, error);
  return self->speaker != NULL;
}

void
lap_player_watch (LapPlayer *self, void (*trouble) (const char *why, gpointer data), gpointer data)
{
  self->trouble = trouble;
  self->data = data;
}
