/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The lock is a file beside the folder, made and locked before the folder is: so a folder whose lock is free has no
 * owner, at every moment of its life. flock(2) goes with the process, however it ends.
 */
#include "store/drafts.h"

#include <errno.h>
#include <fcntl.h>
#include <glib/gstdio.h>
#include <string.h>
#include <sys/file.h>
#include <unistd.h>

#include "store/local-file.h"
#include "store/read-file.h"
#include "store/save.h"

#define FIRST_LINE "lapwing-draft 1"
#define SUFFIX ".draft"
#define LOCK_SUFFIX ".lock"

struct _LapDrafts {
  char *top;    /* the folder of all */
  char *folder; /* of this program */
  char *lock;
  int   fd;     /* holds the lock */
};

void
lap_draft_free (LapDraft *draft)
{
  g_free (draft->id);
  g_free (draft->path);
  g_free (draft->etag);
  g_clear_pointer (&draft->bytes, g_bytes_unref);
  g_free (draft);
}

/* The lock at @path, or -1 where somebody has it. */
static int
take_lock (const char *path)
{
  int fd = open (path, O_RDWR | O_CREAT | O_CLOEXEC, 0600);

  if (fd >= 0 && flock (fd, LOCK_EX | LOCK_NB) != 0) {
    close (fd);
    fd = -1;
  }
  return fd;
}

LapDrafts *
lap_drafts_new (const char *folder, GError **error)
{
  g_autoptr (LapDrafts) self = g_new0 (LapDrafts, 1);

  self->top = g_strdup (folder);
  self->lock = g_build_filename (folder, "XXXXXX" LOCK_SUFFIX, NULL);
  self->fd = -1;
  if (g_mkdir_with_parents (folder, 0700) == 0)
    self->fd = g_mkstemp_full (self->lock, O_RDWR | O_CLOEXEC, 0600);
  self->folder = g_strndup (self->lock, strlen (self->lock) - strlen (LOCK_SUFFIX));
  if (self->fd < 0 || flock (self->fd, LOCK_EX | LOCK_NB) != 0 || g_mkdir (self->folder, 0700) != 0) {
    lap_file_fail (error, LAP_ERROR_UNWRITABLE, folder, g_strerror (errno));
    return NULL;
  }
  return g_steal_pointer (&self);
}

/* A folder with drafts in it stays, with its lock, for whoever looks next. */
static void
leave (const char *folder, const char *lock, int fd)
{
  if (g_rmdir (folder) == 0 || errno == ENOENT)
    g_unlink (lock);
  close (fd);
}

void
lap_drafts_free (LapDrafts *self)
{
  if (self->fd >= 0)
    leave (self->folder, self->lock, self->fd);
  g_free (self->top);
  g_free (self->folder);
  g_free (self->lock);
  g_free (self);
}

static char *
file_of (LapDrafts *self, const char *id)
{
  g_autofree char *name = g_strconcat (id, SUFFIX, NULL);

  return g_build_filename (self->folder, name, NULL);
}

/* Cuts the next line off @rest, or returns NULL where there is none. Transfer full. */
static char *
take_line (const char **rest, gsize *left)
{
  const char *end = memchr (*rest, '\n', *left);
  char *line;

  if (end == NULL)
    return NULL;
  line = g_strndup (*rest, end - *rest);
  *left -= end + 1 - *rest;
  *rest = end + 1;
  return line;
}

/* A draft from the bytes of its file; NULL where they are something else. */
static LapDraft *
parse (GBytes *file, const char *id)
{
  gsize left;
  const char *rest = g_bytes_get_data (file, &left);
  g_autofree char *first = take_line (&rest, &left);
  g_autofree char *uri = take_line (&rest, &left);
  g_autofree char *etag = take_line (&rest, &left);
  LapDraft *draft;

  if (etag == NULL || !g_str_equal (first, FIRST_LINE))
    return NULL;
  draft = g_new0 (LapDraft, 1);
  draft->id = g_strdup (id);
  draft->path = *uri != '\0' ? g_filename_from_uri (uri, NULL, NULL) : NULL;
  draft->etag = *etag != '\0' ? g_steal_pointer (&etag) : NULL;
  draft->bytes = g_bytes_new (rest, left);
  return draft;
}

/* A draft found, and when it was written, to sort. */
typedef struct {
  LapDraft *draft;
  gint64    written;
} Found;

/* Where the same document has two drafts, by a power cut between two programs, the later one counts. */
static void
take_over (LapDrafts *self, const char *from, const char *name, GArray *found)
{
  g_autofree char *path = g_build_filename (from, name, NULL);
  g_autofree char *id = g_strndup (name, strlen (name) - strlen (SUFFIX));
  g_autofree char *own = file_of (self, id);
  g_autoptr (GBytes) bytes = lap_read_file (path, NULL, NULL);
  LapDraft *draft = bytes != NULL ? parse (bytes, id) : NULL;
  GStatBuf mine, other;

  if (draft == NULL)
    return;
  if (g_stat (path, &other) != 0 || (g_stat (own, &mine) == 0 && mine.st_mtime >= other.st_mtime) ||
      g_rename (path, own) != 0) {
    lap_draft_free (draft);
    return;
  }
  for (guint i = 0; i < found->len; i++)
    if (g_str_equal (g_array_index (found, Found, i).draft->id, id)) {
      lap_draft_free (g_array_index (found, Found, i).draft);
      g_array_remove_index (found, i);
      break;
    }
  g_array_append_val (found, ((Found) { draft, other.st_mtime }));
}

static void
take_over_folder (LapDrafts *self, const char *folder, GArray *found)
{
  g_autofree char *lock = g_strconcat (folder, LOCK_SUFFIX, NULL);
  g_autoptr (GDir) dir = NULL;
  int fd = take_lock (lock);

  if (fd < 0)
    return;
  dir = g_dir_open (folder, 0, NULL);
  for (const char *name = dir != NULL ? g_dir_read_name (dir) : NULL; name != NULL; name = g_dir_read_name (dir))
    if (g_str_has_suffix (name, SUFFIX))
      take_over (self, folder, name, found);
  leave (folder, lock, fd);
}

static int
compare (gconstpointer a, gconstpointer b)
{
  const Found *one = a, *other = b;

  if (one->written != other->written)
    return one->written < other->written ? -1 : 1;
  return strcmp (one->draft->id, other->draft->id);
}

GPtrArray *
lap_drafts_left (LapDrafts *self)
{
  GPtrArray *drafts = g_ptr_array_new_with_free_func ((GDestroyNotify) lap_draft_free);
  g_autoptr (GArray) found = g_array_new (FALSE, FALSE, sizeof (Found));
  g_autoptr (GDir) dir = g_dir_open (self->top, 0, NULL);

  for (const char *name = dir != NULL ? g_dir_read_name (dir) : NULL; name != NULL; name = g_dir_read_name (dir)) {
    g_autofree char *folder = g_build_filename (self->top, name, NULL);

    if (!g_str_equal (folder, self->folder) && g_file_test (folder, G_FILE_TEST_IS_DIR))
      take_over_folder (self, folder, found);
  }
  g_array_sort (found, compare);
  for (guint i = 0; i < found->len; i++)
    g_ptr_array_add (drafts, g_array_index (found, Found, i).draft);
  return drafts;
}

gboolean
lap_drafts_write (LapDrafts *self, const char *id, const char *path, const char *etag, GBytes *bytes, GError **error)
{
  g_autofree char *file = file_of (self, id);
  g_autofree char *uri = path != NULL ? g_filename_to_uri (path, NULL, error) : g_strdup ("");
  g_autoptr (GByteArray) all = g_byte_array_new ();
  g_autoptr (GBytes) whole = NULL;
  g_autofree char *head = NULL;

  if (uri == NULL)
    return FALSE;
  head = g_strdup_printf (FIRST_LINE "\n%s\n%s\n", uri, etag != NULL ? etag : "");
  g_byte_array_append (all, (const guint8 *) head, strlen (head));
  g_byte_array_append (all, g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes));
  whole = g_byte_array_free_to_bytes (g_steal_pointer (&all));
  return lap_save_bytes (file, whole, NULL, NULL, error);
}

void
lap_drafts_remove (LapDrafts *self, const char *id)
{
  g_autofree char *file = file_of (self, id);

  g_unlink (file);
}
