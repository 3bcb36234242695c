/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "store/folder.h"

#include <glib/gstdio.h>
#include <grp.h>
#include <sys/wait.h>
#include <unistd.h>

/* The user "nobody" of Debian and most others. Any number without an account would do. */
#define NOBODY 65534

char *
folder_new (void)
{
  g_autoptr(GError) error = NULL;
  char *folder = g_dir_make_tmp ("lapwing-store-XXXXXX", &error);

  g_assert_no_error (error);
  g_assert_cmpint (g_chmod (folder, 0755), ==, 0);
  return folder;
}

void
folder_remove (char *folder)
{
  g_autoptr(GDir) dir = g_dir_open (folder, 0, NULL);
  const char *name;

  g_chmod (folder, 0755);
  while ((name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *path = g_build_filename (folder, name, NULL);

      if (g_file_test (path, G_FILE_TEST_IS_DIR) && !g_file_test (path, G_FILE_TEST_IS_SYMLINK))
        folder_remove (g_steal_pointer (&path));
      else
        g_assert_cmpint (g_unlink (path), ==, 0);
    }
  g_assert_cmpint (g_rmdir (folder), ==, 0);
  g_free (folder);
}

guint
folder_count (const char *folder)
{
  g_autoptr(GDir) dir = g_dir_open (folder, 0, NULL);
  guint count = 0;

  while (g_dir_read_name (dir) != NULL)
    count++;
  return count;
}

void
put_text (const char *path, const char *text)
{
  g_autoptr(GError) error = NULL;

  g_file_set_contents_full (path, text, -1, G_FILE_SET_CONTENTS_NONE, 0644, &error);
  g_assert_no_error (error);
}

void
assert_text (const char *path, const char *text)
{
  g_autofree char *found = NULL;
  g_autoptr(GError) error = NULL;

  g_file_get_contents (path, &found, NULL, &error);
  g_assert_no_error (error);
  g_assert_cmpstr (found, ==, text);
}

int
ask_without_rights (int (*ask) (const char *path), const char *path)
{
  int status;
  pid_t child = fork ();

  g_assert_cmpint (child, >=, 0);
  if (child == 0)
    {
      if (geteuid () == 0 && (setgroups (0, NULL) != 0 || setgid (NOBODY) != 0 || setuid (NOBODY) != 0))
        _exit (127);
      _exit (ask (path));
    }
  g_assert_cmpint (waitpid (child, &status, 0), ==, child);
  g_assert_true (WIFEXITED (status));
  g_assert_cmpint (WEXITSTATUS (status), <=, 100);
  return WEXITSTATUS (status);
}
