/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "store/stale.h"

#include <fcntl.h>
#include <glib/gstdio.h>
#include <string.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <time.h>
#include <unistd.h>

#define RANDOM 6    /* characters at the end of a name */
#define OLD    3600 /* seconds */

typedef struct {
  const char *name;
  mode_t      type;
} Kind;

static const Kind kinds[] = { { LAP_STALE_FILE, S_IFREG }, { LAP_STALE_FOLDER, S_IFDIR } };

void
lap_stale_hold (int fd)
{
  /* Where a file system knows no locks nothing of it is ever cleared either. */
  flock (fd, LOCK_EX | LOCK_NB);
}

void
lap_stale_remove (const char *folder)
{
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  const char *name;

  while (dir != NULL && (name = g_dir_read_name (dir)) != NULL) {
    g_autofree char *path = g_build_filename (folder, name, NULL);

    if (g_file_test (path, G_FILE_TEST_IS_DIR) && !g_file_test (path, G_FILE_TEST_IS_SYMLINK))
      lap_stale_remove (path);
    else
      g_unlink (path);
  }
  g_rmdir (folder);
}

/* NULL where nothing of ours is called @name. */
static const Kind *
kind_of (const char *name)
{
  for (guint i = 0; i < G_N_ELEMENTS (kinds); i++)
    if (strlen (name) == strlen (kinds[i].name) && strncmp (name, kinds[i].name, strlen (name) - RANDOM) == 0)
      return &kinds[i];
  return NULL;
}

static gboolean
is_left (int fd, const Kind *kind, time_t now)
{
  struct stat state;

  return fstat (fd, &state) == 0 && (state.st_mode & S_IFMT) == kind->type && state.st_uid == geteuid () &&
         now - state.st_mtime > OLD && flock (fd, LOCK_EX | LOCK_NB) == 0;
}

static void
clear_one (const char *path, const Kind *kind, time_t now)
{
  int fd = open (path, O_RDONLY | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC);

  if (fd < 0)
    return;
  if (is_left (fd, kind, now)) {
    if (kind->type == S_IFDIR)
      lap_stale_remove (path);
    else
      unlink (path);
  }
  close (fd);
}

void
lap_stale_clear (const char *folder)
{
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  time_t now = time (NULL);
  const char *name;

  while (dir != NULL && (name = g_dir_read_name (dir)) != NULL) {
    g_autofree char *path = g_build_filename (folder, name, NULL);

    if (kind_of (name) != NULL)
      clear_one (path, kind_of (name), now);
  }
}
