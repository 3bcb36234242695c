/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Folders are watched, not files: a timetable names hundreds of classes and few folders, and a file that comes into
 * being is seen as well.
 */
#include "ui/week-sessions.h"

#include "store/session-folder.h"

struct _LapWeekSessions {
  GObject           parent_instance;
  LapSessionFolder *folder;
  LapAttachments   *attachments;
  GHashTable       *monitors; /* path of a folder -> GFileMonitor */
};

static guint changed_signal;

G_DEFINE_FINAL_TYPE (LapWeekSessions, lap_week_sessions, G_TYPE_OBJECT)

static LapSession *
load (const char *path, gpointer data, GError **error)
{
  return lap_session_folder_load (path, LAP_WEEK_SESSIONS (data)->folder, error);
}

static char *
seek (const char *path, gpointer data)
{
  LapWeekSessions *self = data;
  g_autofree char *found = lap_session_folder_seek (path, self->folder);

  return found != NULL ? lap_session_folder_file (self->folder, found) : NULL;
}

static void
monitor_free (gpointer monitor)
{
  g_file_monitor_cancel (monitor);
  g_object_unref (monitor);
}

static void
folder_cb (LapWeekSessions *self)
{
  if (lap_session_folder_refresh (self->folder))
    g_signal_emit (self, changed_signal, 0);
}

static void
watch_folder (LapWeekSessions *self, const char *path)
{
  g_autoptr (GFile) file = g_file_new_for_path (path);
  GFileMonitor *monitor = g_file_monitor_directory (file, G_FILE_MONITOR_WATCH_MOVES, NULL, NULL);

  if (monitor == NULL)
    return;
  g_signal_connect_object (monitor, "changed", G_CALLBACK (folder_cb), self, G_CONNECT_SWAPPED);
  g_hash_table_insert (self->monitors, g_strdup (path), monitor);
}

static gboolean
isnt_in (gpointer path, gpointer monitor, gpointer wanted)
{
  return !g_hash_table_contains (wanted, path);
}

void
lap_week_sessions_watch (LapWeekSessions *self, const LapWeek *week)
{
  g_autoptr (GHashTable) wanted = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  GHashTableIter iter;
  gpointer path;

  for (guint i = 0; i < lap_list_n (week->classes); i++) {
    const LapClass *c = lap_list_nth (week->classes, i);

    if (c->session != NULL && *c->session != '\0')
      g_hash_table_add (wanted, g_path_get_dirname (c->session));
  }
  g_hash_table_foreach_remove (self->monitors, isnt_in, wanted);
  g_hash_table_iter_init (&iter, wanted);
  while (g_hash_table_iter_next (&iter, &path, NULL))
    if (!g_hash_table_contains (self->monitors, path))
      watch_folder (self, path);
}

static void
lap_week_sessions_finalize (GObject *object)
{
  LapWeekSessions *self = LAP_WEEK_SESSIONS (object);

  g_hash_table_unref (self->monitors);
  lap_attachments_unref (self->attachments);
  lap_session_folder_free (self->folder);
  G_OBJECT_CLASS (lap_week_sessions_parent_class)->finalize (object);
}

static void
lap_week_sessions_class_init (LapWeekSessionsClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = lap_week_sessions_finalize;
  changed_signal = g_signal_new ("changed", LAP_TYPE_WEEK_SESSIONS, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                 G_TYPE_NONE, 0);
}

static void
lap_week_sessions_init (LapWeekSessions *self)
{
  const LapSessionSource source = { load, seek, self };

  self->folder = lap_session_folder_new (NULL);
  self->attachments = lap_attachments_new (&source);
  self->monitors = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, monitor_free);
}

LapWeekSessions *
lap_week_sessions_new (void)
{
  return g_object_new (LAP_TYPE_WEEK_SESSIONS, NULL);
}

LapAttachments *
lap_week_sessions_attachments (LapWeekSessions *self)
{
  return self->attachments;
}

void
lap_week_sessions_set_file (LapWeekSessions *self, const char *file)
{
  lap_session_folder_free (self->folder);
  self->folder = lap_session_folder_new (file);
}
