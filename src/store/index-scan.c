/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * readdir(3) tells most folders from files by itself, so that only files with our names are asked about.
 */
#include "store/index-scan.h"

#include <dirent.h>
#include <string.h>

#include "store/local-file.h"

/* A folder may hold a world of other things. */
#define MOST_NAMES 200000

typedef struct {
  GPtrArray    *found;
  GHashTable   *paths; /* of them */
  guint         most, names;
  GCancellable *cancellable;
} Scan;

static void
found_free (gpointer data)
{
  LapFoundFile *file = data;

  g_free (file->path);
  g_free (file->etag);
  g_free (file);
}

static void
add (Scan *scan, const char *path)
{
  struct stat state;
  LapFoundFile *file;

  if (g_hash_table_contains (scan->paths, path) || stat (path, &state) != 0 || !S_ISREG (state.st_mode))
    return;
  file = g_new (LapFoundFile, 1);
  *file = (LapFoundFile) { g_strdup (path), lap_file_etag (&state), state.st_mtim.tv_sec };
  g_ptr_array_add (scan->found, file);
  g_hash_table_add (scan->paths, file->path);
}

static gboolean
is_folder (const char *path, const struct dirent *entry)
{
  struct stat state;

  if (entry->d_type != DT_UNKNOWN)
    return entry->d_type == DT_DIR;
  return lstat (path, &state) == 0 && S_ISDIR (state.st_mode);
}

static void
walk (Scan *scan, const char *folder, guint depth)
{
  DIR *dir = opendir (folder);
  struct dirent *entry;

  while (dir != NULL && (entry = readdir (dir)) != NULL && scan->found->len < scan->most &&
         scan->names++ < MOST_NAMES && !g_cancellable_is_cancelled (scan->cancellable)) {
    g_autofree char *path = NULL;

    if (entry->d_name[0] == '.')
      continue;
    path = g_build_filename (folder, entry->d_name, NULL);
    if (g_str_has_suffix (entry->d_name, ".lapwing") || g_str_has_suffix (entry->d_name, ".lapweek"))
      add (scan, path);
    else if (depth > 0 && is_folder (path, entry))
      walk (scan, path, depth - 1);
  }
  if (dir != NULL)
    closedir (dir);
}

static int
newest_first (gconstpointer a, gconstpointer b)
{
  const LapFoundFile *one = *(LapFoundFile * const *) a, *other = *(LapFoundFile * const *) b;

  if (one->written != other->written)
    return one->written > other->written ? -1 : 1;
  return strcmp (one->path, other->path);
}

GPtrArray *
lap_index_scan (const char *folder, const char * const *also, guint depth, guint most, GCancellable *cancellable)
{
  g_autoptr (GHashTable) paths = g_hash_table_new (g_str_hash, g_str_equal);
  Scan scan = { g_ptr_array_new_with_free_func (found_free), paths, most, 0, cancellable };

  if (folder != NULL)
    walk (&scan, folder, depth);
  for (guint i = 0; also != NULL && also[i] != NULL; i++)
    add (&scan, also[i]);
  g_ptr_array_sort (scan.found, newest_first);
  return scan.found;
}
