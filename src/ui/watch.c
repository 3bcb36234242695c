/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/watch.h"

struct _LapWatch {
  GObject       parent_instance;
  LapDocument  *document; /* weak */
  GFileMonitor *monitor;  /* of the file named by path */
  char         *path;     /* NULL while the document has none */
};

G_DEFINE_FINAL_TYPE (LapWatch, lap_watch, G_TYPE_OBJECT)

static void
file_cb (LapWatch *self, GFile *file, GFile *other, GFileMonitorEvent event)
{
  /* Of the many events of one write only the last says that it is whole. */
  if (self->document != NULL && (event == G_FILE_MONITOR_EVENT_CHANGES_DONE_HINT ||
                                 event == G_FILE_MONITOR_EVENT_RENAMED || event == G_FILE_MONITOR_EVENT_MOVED_IN ||
                                 event == G_FILE_MONITOR_EVENT_CREATED))
    lap_document_look_outside (self->document);
}

static void
let_go (LapWatch *self)
{
  if (self->monitor != NULL)
    g_file_monitor_cancel (self->monitor);
  g_clear_object (&self->monitor);
  g_clear_pointer (&self->path, g_free);
}

/* A document gets a file when it is first saved, and another by saving elsewhere; each save changes the state. */
static void
state_cb (LapWatch *self)
{
  const char *path = lap_document_path (self->document);
  g_autoptr (GFile) file = NULL;

  if (g_strcmp0 (path, self->path) == 0)
    return;
  let_go (self);
  if (path == NULL)
    return;
  self->path = g_strdup (path);
  file = g_file_new_for_path (path);
  self->monitor = g_file_monitor_file (file, G_FILE_MONITOR_WATCH_MOVES, NULL, NULL);
  if (self->monitor != NULL)
    g_signal_connect_object (self->monitor, "changed", G_CALLBACK (file_cb), self, G_CONNECT_SWAPPED);
}

static void
lap_watch_finalize (GObject *object)
{
  LapWatch *self = LAP_WATCH (object);

  let_go (self);
  g_clear_weak_pointer (&self->document);
  G_OBJECT_CLASS (lap_watch_parent_class)->finalize (object);
}

static void
lap_watch_class_init (LapWatchClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = lap_watch_finalize;
}

static void
lap_watch_init (LapWatch *self)
{
}

LapWatch *
lap_watch_new (LapDocument *document)
{
  LapWatch *self = g_object_new (LAP_TYPE_WATCH, NULL);

  g_set_weak_pointer (&self->document, document);
  g_signal_connect_object (document, "notify::state", G_CALLBACK (state_cb), self, G_CONNECT_SWAPPED);
  state_cb (self);
  return self;
}
