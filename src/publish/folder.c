/* SPDX-License-Identifier: GPL-3.0-or-later */
#define _GNU_SOURCE /* renameat2 */
#include "publish/folder.h"

#include "base/error.h"
#include "store/stale.h"

#include <errno.h>
#include <fcntl.h>
#include <glib/gi18n-lib.h>
#include <glib/gstdio.h>
#include <stdio.h>
#include <string.h>
#include <unistd.h>

struct _LapFolder {
  char *path; /* NULL when it is in its place */
  int   fd;   /* holds it */
};

static gboolean
fail (GError **error, const char *path, const char *why)
{
  g_set_error (error, LAP_ERROR, LAP_ERROR_UNWRITABLE, "%s: %s", path, why);
  return FALSE;
}

LapFolder *
lap_folder_beside (const char *path, GError **error)
{
  g_autofree char *parent = g_path_get_dirname (path);
  g_autofree char *hidden = g_build_filename (parent, LAP_STALE_FOLDER, NULL);
  LapFolder *folder;

  lap_stale_clear (parent);
  if (g_mkdtemp_full (hidden, 0777) == NULL) {
    fail (error, path, g_strerror (errno));
    return NULL;
  }
  folder = g_new0 (LapFolder, 1);
  folder->path = g_steal_pointer (&hidden);
  folder->fd = open (folder->path, O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (folder->fd >= 0)
    lap_stale_hold (folder->fd);
  return folder;
}

const char *
lap_folder_path (const LapFolder *folder)
{
  return folder->path;
}

void
lap_folder_free (LapFolder *folder)
{
  if (folder->path != NULL)
    lap_stale_remove (folder->path);
  if (folder->fd >= 0)
    close (folder->fd);
  g_free (folder->path);
  g_free (folder);
}

static gboolean
is_picture (const char *name)
{
  gsize digits = strspn (name, "0123456789");

  return digits > 0 && g_str_equal (name + digits, ".png");
}

/* Whether all that is in @old was published there, seen from what is in @folder now. */
static gboolean
is_ours (const char *old, const char *folder)
{
  g_autoptr (GDir) dir = g_dir_open (old, 0, NULL);
  const char *name;

  while (dir != NULL && (name = g_dir_read_name (dir)) != NULL) {
    g_autofree char *was = g_build_filename (old, name, NULL), *is = g_build_filename (folder, name, NULL);

    if (g_file_test (was, G_FILE_TEST_IS_DIR) && (!g_file_test (is, G_FILE_TEST_IS_DIR) || !is_ours (was, is)))
      return FALSE;
    if (!g_file_test (is, G_FILE_TEST_EXISTS) && !is_picture (name))
      return FALSE;
  }
  return dir != NULL;
}

/* Where two names can't be exchanged the old one goes aside first. */
static gboolean
exchange_slowly (LapFolder *folder, const char *path, GError **error)
{
  g_autoptr (LapFolder) aside = lap_folder_beside (path, error);
  int problem;

  if (aside == NULL)
    return FALSE;
  if (g_rename (path, aside->path) == 0 && g_rename (folder->path, path) == 0) {
    g_clear_pointer (&folder->path, g_free);
    return TRUE;
  }
  problem = errno;
  if (!g_file_test (path, G_FILE_TEST_EXISTS))
    g_rename (aside->path, path);
  return fail (error, path, g_strerror (problem));
}

gboolean
lap_folder_place (LapFolder *folder, const char *path, GError **error)
{
  if (g_rename (folder->path, path) == 0) {
    g_clear_pointer (&folder->path, g_free);
    return TRUE;
  }
  if (errno != ENOTEMPTY && errno != EEXIST)
    return fail (error, path, g_strerror (errno));
  if (!is_ours (path, folder->path))
    return fail (error, path, _("is a folder with other files in it; expected a new name"));
  /* What was there has the hidden name then, and goes with it. */
  if (renameat2 (AT_FDCWD, folder->path, AT_FDCWD, path, RENAME_EXCHANGE) == 0)
    return TRUE;
  return exchange_slowly (folder, path, error);
}
