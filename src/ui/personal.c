/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/personal.h"

#include "store/documents.h"
#include "store/read-file.h"
#include "store/save.h"

#include <fcntl.h>
#include <glib/gi18n-lib.h>
#include <glib/gstdio.h>
#include <sys/file.h>
#include <unistd.h>

struct _LapPersonal {
  GObject       parent_instance;
  char         *path;
  LapSession   *session; /* as it was last read or written */
  GFileMonitor *monitor; /* of the file: another program may write it; or NULL */
};

enum { CHANGED, N_SIGNALS };
static guint signals[N_SIGNALS];

G_DEFINE_FINAL_TYPE (LapPersonal, lap_personal, G_TYPE_OBJECT)

/* What the file holds now: another program may have written it. NULL with @error where that can't be read. */
static LapSession *
read_file (LapPersonal *self, GError **error)
{
  g_autoptr (GBytes) bytes = NULL;

  if (!g_file_test (self->path, G_FILE_TEST_EXISTS))
    return lap_session_new (_("My exercises"));
  bytes = lap_read_file (self->path, NULL, error);
  return bytes != NULL ? lap_session_from_bytes (bytes, error) : NULL;
}

static void
file_cb (LapPersonal *self)
{
  g_autoptr (LapSession) session = read_file (self, NULL);
  g_autoptr (GBytes) now = session != NULL ? lap_session_to_bytes (session) : NULL;
  g_autoptr (GBytes) known = lap_session_to_bytes (self->session);

  if (now == NULL || g_bytes_equal (now, known))
    return;
  g_set_object (&self->session, session);
  g_signal_emit (self, signals[CHANGED], 0);
}

/* Until it is closed no other program of ours reads the file to write it. Where there are no locks, as in some network
 * folders, all goes on without. */
static int
lock (LapPersonal *self)
{
  g_autofree char *folder = g_path_get_dirname (self->path), *path = g_strconcat (self->path, ".lock", NULL);
  int fd;

  g_mkdir_with_parents (folder, 0700);
  fd = g_open (path, O_RDWR | O_CREAT | O_CLOEXEC, 0600);
  if (fd >= 0)
    flock (fd, LOCK_EX);
  return fd;
}

static gboolean
write_file (LapPersonal *self, LapSession *session, GError **error)
{
  g_autoptr (GBytes) bytes = lap_session_to_bytes (session);

  if (!lap_save_bytes (self->path, bytes, NULL, NULL, error))
    return FALSE;
  g_set_object (&self->session, session);
  g_signal_emit (self, signals[CHANGED], 0);
  return TRUE;
}

/* The exercises of @session without the one called @id. A new value: values are shared. */
static GPtrArray *
without (LapSession *session, const char *id)
{
  GPtrArray *left = g_ptr_array_new_with_free_func ((GDestroyNotify) lap_exercise_unref);

  for (guint i = 0; session->exercises != NULL && i < session->exercises->len; i++) {
    LapExercise *e = g_ptr_array_index (session->exercises, i);

    if (!g_str_equal (e->id, id))
      g_ptr_array_add (left, lap_exercise_ref (e));
  }
  return left;
}

/* @exercise, or NULL, in place of the one called @id in what the file holds. */
static gboolean
put (LapPersonal *self, const char *id, LapExercise *exercise, GError **error)
{
  g_autoptr (LapSession) session = read_file (self, error);
  g_autoptr (GPtrArray) exercises = NULL;

  if (session == NULL)
    return FALSE;
  exercises = without (session, id);
  if (exercise != NULL)
    g_ptr_array_add (exercises, lap_exercise_ref (exercise));
  g_object_set (session, "exercises", exercises, NULL);
  return write_file (self, session, error);
}

static gboolean
replace (LapPersonal *self, const char *id, LapExercise *exercise, GError **error)
{
  int fd = lock (self);
  gboolean done = put (self, id, exercise, error);

  if (fd >= 0)
    close (fd);
  return done;
}

gboolean
lap_personal_keep (LapPersonal *self, LapExercise *exercise, GError **error)
{
  return replace (self, exercise->id, exercise, error);
}

gboolean
lap_personal_forget (LapPersonal *self, const char *id, GError **error)
{
  return replace (self, id, NULL, error);
}

gboolean
lap_personal_has (LapPersonal *self, LapExercise *exercise)
{
  return self->session->exercises != NULL && g_ptr_array_find (self->session->exercises, exercise, NULL);
}

LapCatalogue *
lap_personal_under (LapPersonal *self, LapCatalogue *catalogue)
{
  g_autoptr (GPtrArray) all = g_ptr_array_new ();

  if (self->session->exercises == NULL || self->session->exercises->len == 0)
    return lap_catalogue_ref (catalogue);
  for (guint i = 0; i < lap_catalogue_n (catalogue); i++)
    g_ptr_array_add (all, lap_catalogue_nth (catalogue, i));
  for (guint i = 0; i < self->session->exercises->len; i++)
    g_ptr_array_add (all, g_ptr_array_index (self->session->exercises, i));
  return lap_catalogue_new_over (NULL, all);
}

static void
lap_personal_finalize (GObject *object)
{
  LapPersonal *self = LAP_PERSONAL (object);

  if (self->monitor != NULL)
    g_file_monitor_cancel (self->monitor);
  g_clear_object (&self->monitor);
  g_free (self->path);
  g_object_unref (self->session);
  G_OBJECT_CLASS (lap_personal_parent_class)->finalize (object);
}

static void
lap_personal_class_init (LapPersonalClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = lap_personal_finalize;
  signals[CHANGED] = g_signal_new ("changed", LAP_TYPE_PERSONAL, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

/* A file that can't be read is left as it is: there is nothing to choose from then, and keeping something says why. */
static void
lap_personal_init (LapPersonal *self)
{
  g_autoptr (GFile) file = NULL;

  self->path = g_build_filename (g_get_user_data_dir (), "lapwing", "exercises.lapwing", NULL);
  self->session = read_file (self, NULL);
  if (self->session == NULL)
    self->session = lap_session_new (_("My exercises"));
  file = g_file_new_for_path (self->path);
  self->monitor = g_file_monitor_file (file, G_FILE_MONITOR_WATCH_MOVES, NULL, NULL);
  if (self->monitor != NULL)
    g_signal_connect_object (self->monitor, "changed", G_CALLBACK (file_cb), self, G_CONNECT_SWAPPED);
}

LapPersonal *
lap_personal (void)
{
  static LapPersonal *one;

  if (one == NULL)
    one = g_object_new (LAP_TYPE_PERSONAL, NULL);
  return one;
}
