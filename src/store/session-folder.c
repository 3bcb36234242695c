/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "store/session-folder.h"

#include "store/documents.h"
#include "store/local-file.h"
#include "store/read-file.h"

#include <glib/gstdio.h>
#include <string.h>

struct _LapSessionFolder {
  char       *folder; /* NULL for a week without a file */
  GHashTable *known;  /* path -> Entry */
};

typedef struct {
  LapSession *session; /* NULL where it can't be read */
  GError     *error;
  char       *etag;    /* NULL where there is no file */
} Entry;

static void
entry_free (gpointer data)
{
  Entry *entry = data;

  g_clear_object (&entry->session);
  g_clear_error (&entry->error);
  g_free (entry->etag);
  g_free (entry);
}

LapSessionFolder *
lap_session_folder_new (const char *week)
{
  LapSessionFolder *self = g_new0 (LapSessionFolder, 1);
  g_autofree char *whole = week != NULL ? g_canonicalize_filename (week, NULL) : NULL;

  self->folder = whole != NULL ? g_path_get_dirname (whole) : NULL;
  self->known = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, entry_free);
  return self;
}

void
lap_session_folder_free (LapSessionFolder *self)
{
  g_hash_table_unref (self->known);
  g_free (self->folder);
  g_free (self);
}

char *
lap_session_folder_file (LapSessionFolder *self, const char *path)
{
  return self->folder != NULL ? g_canonicalize_filename (path, self->folder) : g_strdup (path);
}

/* How many folders of @folder lead to @file too. */
static guint
shared (char **folder, char **file)
{
  guint n = 0;

  while (folder[n] != NULL && file[n] != NULL && file[n + 1] != NULL && g_str_equal (folder[n], file[n]))
    n++;
  return n;
}

char *
lap_session_folder_path (LapSessionFolder *self, const char *file)
{
  g_autofree char *whole = g_canonicalize_filename (file, NULL);
  g_auto (GStrv) names = g_strsplit (whole, G_DIR_SEPARATOR_S, -1);
  g_auto (GStrv) folders = NULL;
  g_autoptr (GString) path = g_string_new (NULL);
  guint common;

  if (self->folder == NULL)
    return g_steal_pointer (&whole);
  folders = g_strsplit (self->folder, G_DIR_SEPARATOR_S, -1);
  common = shared (folders, names);
  for (guint i = common; folders[i] != NULL; i++)
    g_string_append (path, "../");
  for (guint i = common; names[i] != NULL; i++)
    g_string_append_printf (path, "%s%s", names[i], names[i + 1] != NULL ? "/" : "");
  return g_string_free (g_steal_pointer (&path), FALSE);
}

static char *
etag_of (const char *file)
{
  struct stat state;

  return stat (file, &state) == 0 ? lap_file_etag (&state) : NULL;
}

static Entry *
read_entry (LapSessionFolder *self, const char *path)
{
  g_autofree char *file = lap_session_folder_file (self, path);
  g_autoptr (GBytes) bytes = NULL;
  Entry *entry = g_new0 (Entry, 1);

  bytes = lap_read_file (file, &entry->etag, &entry->error);
  if (bytes != NULL)
    entry->session = lap_session_from_bytes (bytes, &entry->error);
  if (bytes != NULL && entry->session == NULL)
    g_prefix_error (&entry->error, "%s: ", path);
  if (entry->etag == NULL)
    entry->etag = etag_of (file);
  return entry;
}

LapSession *
lap_session_folder_load (const char *path, gpointer folder, GError **error)
{
  LapSessionFolder *self = folder;
  Entry *entry = g_hash_table_lookup (self->known, path);

  if (entry == NULL) {
    entry = read_entry (self, path);
    g_hash_table_insert (self->known, g_strdup (path), entry);
  }
  if (entry->session == NULL && error != NULL)
    *error = g_error_copy (entry->error);
  return entry->session;
}

/* The path below the week's folder of a file called @name in @inner, or NULL. */
static char *
name_in (LapSessionFolder *self, const char *inner, const char *name)
{
  g_autofree char *file = g_build_filename (self->folder, inner, name, NULL);

  if (!g_file_test (file, G_FILE_TEST_IS_REGULAR))
    return NULL;
  return *inner != '\0' ? g_build_filename (inner, name, NULL) : g_strdup (name);
}

static int
compare_names (gconstpointer a, gconstpointer b)
{
  return strcmp (*(const char * const *) a, *(const char * const *) b);
}

char *
lap_session_folder_seek (const char *path, gpointer folder)
{
  LapSessionFolder *self = folder;
  g_autofree char *name = g_path_get_basename (path);
  g_autoptr (GPtrArray) inner = g_ptr_array_new_with_free_func (g_free);
  g_autoptr (GDir) dir = self->folder != NULL ? g_dir_open (self->folder, 0, NULL) : NULL;
  const char *entry;

  if (dir == NULL)
    return NULL;
  g_ptr_array_add (inner, g_strdup (""));
  while ((entry = g_dir_read_name (dir)) != NULL)
    if (*entry != '.')
      g_ptr_array_add (inner, g_strdup (entry));
  /* Folders come in no order; the answer is the same every time. */
  g_ptr_array_sort (inner, compare_names);
  for (guint i = 0; i < inner->len; i++) {
    char *found = name_in (self, g_ptr_array_index (inner, i), name);

    if (found != NULL && !g_str_equal (found, path))
      return found;
    g_free (found);
  }
  return NULL;
}

gboolean
lap_session_folder_refresh (LapSessionFolder *self)
{
  GHashTableIter iter;
  gpointer path, value;
  gboolean changed = FALSE;

  g_hash_table_iter_init (&iter, self->known);
  while (g_hash_table_iter_next (&iter, &path, &value)) {
    g_autofree char *file = lap_session_folder_file (self, path);
    g_autofree char *etag = etag_of (file);

    if (g_strcmp0 (etag, ((Entry *) value)->etag) == 0)
      continue;
    g_hash_table_iter_remove (&iter);
    changed = TRUE;
  }
  return changed;
}
