/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/reading.h"

struct _LapReading {
  gatomicrefcount references;
  char           *path;
  LapReader       reader;
  GMutex          mutex; /* of what follows */
  GCond           cond;
  gboolean        done;
  GBytes         *bytes;
  char           *etag;
  GError         *error;
  LapReadFunc     func; /* or NULL */
  gpointer        data;
};

static gboolean
tell_cb (gpointer data)
{
  LapReading *self = data;
  LapReadFunc func = self->func; /* it is only changed here, in the main loop */

  self->func = NULL;
  if (func != NULL)
    func (self->data);
  return G_SOURCE_REMOVE;
}

/* With the mutex. */
static void
tell_soon (LapReading *self)
{
  g_idle_add_full (G_PRIORITY_DEFAULT, tell_cb, lap_reading_ref (self), (GDestroyNotify) lap_reading_unref);
}

static gpointer
read_thread (gpointer data)
{
  g_autoptr (LapReading) self = data;
  g_autofree char *etag = NULL;
  GError *error = NULL;
  GBytes *bytes = self->reader (self->path, &etag, &error);

  g_mutex_lock (&self->mutex);
  self->bytes = bytes;
  self->etag = g_steal_pointer (&etag);
  self->error = error;
  self->done = TRUE;
  g_cond_broadcast (&self->cond);
  if (self->func != NULL)
    tell_soon (self);
  g_mutex_unlock (&self->mutex);
  return NULL;
}

LapReading *
lap_reading_new (const char *path, LapReader reader)
{
  LapReading *self = g_new0 (LapReading, 1);

  g_atomic_ref_count_init (&self->references);
  self->path = g_strdup (path);
  self->reader = reader;
  g_mutex_init (&self->mutex);
  g_cond_init (&self->cond);
  g_thread_unref (g_thread_new ("reading", read_thread, lap_reading_ref (self)));
  return self;
}

LapReading *
lap_reading_ref (LapReading *self)
{
  g_atomic_ref_count_inc (&self->references);
  return self;
}

void
lap_reading_unref (LapReading *self)
{
  if (!g_atomic_ref_count_dec (&self->references))
    return;
  g_mutex_clear (&self->mutex);
  g_cond_clear (&self->cond);
  g_clear_pointer (&self->bytes, g_bytes_unref);
  g_clear_error (&self->error);
  g_free (self->etag);
  g_free (self->path);
  g_free (self);
}

const char *
lap_reading_path (LapReading *self)
{
  return self->path;
}

gboolean
lap_reading_wait (LapReading *self, int ms)
{
  gint64 until = g_get_monotonic_time () + ms * G_TIME_SPAN_MILLISECOND;
  gboolean done;

  g_mutex_lock (&self->mutex);
  while (!self->done && g_cond_wait_until (&self->cond, &self->mutex, until))
    ;
  done = self->done;
  g_mutex_unlock (&self->mutex);
  return done;
}

void
lap_reading_tell (LapReading *self, LapReadFunc func, gpointer data)
{
  g_mutex_lock (&self->mutex);
  self->func = func;
  self->data = data;
  if (self->done)
    tell_soon (self);
  g_mutex_unlock (&self->mutex);
}

void
lap_reading_forget (LapReading *self)
{
  g_mutex_lock (&self->mutex);
  self->func = NULL;
  g_mutex_unlock (&self->mutex);
}

GBytes *
lap_reading_take (LapReading *self, char **etag, GError **error)
{
  g_return_val_if_fail (self->done, NULL);
  if (self->error != NULL)
    g_propagate_error (error, g_steal_pointer (&self->error));
  *etag = g_steal_pointer (&self->etag);
  return g_steal_pointer (&self->bytes);
}
