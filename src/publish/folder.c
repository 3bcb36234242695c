/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/folder.h"

#include "base/error.h"

#include <errno.h>
#include <glib/gi18n-lib.h>
#include <glib/gstdio.h>
#include <string.h>

static gboolean
fail (GError **error, const char *path, const char *why)
{
  g_set_error (error, LAP_ERROR, LAP_ERROR_UNWRITABLE, "%s: %s", path, why);
  return FALSE;
}

char *
lap_folder_beside (const char *path, GError **error)
{
  g_autofree char *parent = g_path_get_dirname (path);
  g_autofree char *folder = g_build_filename (parent, ".lapwing-XXXXXX", NULL);

  if (g_mkdtemp_full (folder, 0777) != NULL)
    return g_steal_pointer (&folder);
  fail (error, path, g_strerror (errno));
  return NULL;
}

void
lap_folder_remove (const char *folder)
{
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  const char *name;

  while (dir != NULL && (name = g_dir_read_name (dir)) != NULL) {
    g_autofree char *path = g_build_filename (folder, name, NULL);

    if (g_file_test (path, G_FILE_TEST_IS_DIR) && !g_file_test (path, G_FILE_TEST_IS_SYMLINK))
      lap_folder_remove (path);
    else
      g_unlink (path);
  }
  g_rmdir (folder);
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

gboolean
lap_folder_place (const char *folder, const char *path, GError **error)
{
  g_autofree char *aside = NULL;

  if (g_rename (folder, path) == 0)
    return TRUE;
  if (errno != ENOTEMPTY && errno != EEXIST)
    return fail (error, path, g_strerror (errno));
  if (!is_ours (path, folder))
    return fail (error, path, _("is a folder with other files in it; expected a new name"));
  aside = lap_folder_beside (path, error);
  if (aside == NULL)
    return FALSE;
  if (g_rename (path, aside) != 0 || g_rename (folder, path) != 0) {
    int problem = errno;

    if (!g_file_test (path, G_FILE_TEST_EXISTS))
      g_rename (aside, path);
    return fail (error, path, g_strerror (problem));
  }
  lap_folder_remove (aside);
  return TRUE;
}
