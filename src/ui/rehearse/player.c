/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/rehearse/player.h"

#include "base/error.h"
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

struct _LapPlayer {
  LapSounding *sounding;
  GstElement  *pipeline, *source, *volume;
  guint        feeding;
  gint64       fed;    /* microseconds of the stream */
  gint64       offset; /* of the rehearsal's time against the stream's */
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
  gint64 now = stream_time (self), offset = lap_rehearse_time (NULL) - now;

  if (now < 0)
    return G_SOURCE_CONTINUE;
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

static gboolean
build (LapPlayer *self, const char *sink, GError **error)
{
  g_autofree char *line = g_strdup_printf (
    "appsrc name=source format=time is-live=true caps=audio/x-raw,format=" GST_AUDIO_NE (S16) ",layout=interleaved,"
    "channels=1,rate=%d ! audioconvert ! audioresample ! volume name=volume ! %s", LAP_SOUNDING_RATE,
    sink != NULL ? sink : "autoaudiosink");
  g_autoptr (GError) why = NULL;

  self->pipeline = gst_parse_launch_full (line, NULL, GST_PARSE_FLAG_FATAL_ERRORS, &why);
  if (self->pipeline == NULL) {
    g_set_error (error, LAP_ERROR, LAP_ERROR_MISSING, _("Sound needs a part of GStreamer that isn't there: %s"),
                 why->message);
    return FALSE;
  }
  self->source = gst_bin_get_by_name (GST_BIN (self->pipeline), "source");
  self->volume = gst_bin_get_by_name (GST_BIN (self->pipeline), "volume");
  if (gst_element_set_state (self->pipeline, GST_STATE_PLAYING) == GST_STATE_CHANGE_FAILURE) {
    g_set_error (error, LAP_ERROR, LAP_ERROR_MISSING, _("The sound output doesn't open"));
    return FALSE;
  }
  return TRUE;
}

LapPlayer *
lap_player_new (LapSounding *sounding, const char *sink, GError **error)
{
  LapPlayer *self = g_new0 (LapPlayer, 1);
  g_autoptr (GError) why = NULL;

  self->sounding = sounding;
  if (!gst_init_check (NULL, NULL, &why)) {
    g_set_error (error, LAP_ERROR, LAP_ERROR_MISSING, _("Sound needs GStreamer: %s"), why->message);
    lap_player_free (self);
    return NULL;
  }
  if (!build (self, sink, error)) {
    lap_player_free (self);
    return NULL;
  }
  self->feeding = g_timeout_add (FEED, feed_cb, self);
  return self;
}

void
lap_player_free (LapPlayer *self)
{
  g_clear_handle_id (&self->feeding, g_source_remove);
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
