/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "store/stale.h"

#include <fcntl.h>
#include <string.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <time.h>
#include <unistd.h>

#define PREFIX ".lapwing-"
#define RANDOM 6    /* characters after it */
#define OLD    3600 /* seconds */

void
lap_stale_hold (int fd)
{
  /* Where a file system knows no locks nothing of it is ever cleared either. */
  flock (fd, LOCK_EX | LOCK_NB);
}

static gboolean
is_left (int fd, time_t now)
{
  struct stat state;

  return fstat (fd, &state) == 0 && S_ISREG (state.st_mode) && state.st_uid == geteuid () &&
         now - state.st_mtime > OLD && flock (fd, LOCK_EX | LOCK_NB) == 0;
}

void
lap_stale_clear (const char *folder)
{
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  time_t now = time (NULL);
  const char *name;

  while (dir != NULL && (name = g_dir_read_name (dir)) != NULL) {
    g_autofree char *path = NULL;
    int fd;

    if (!g_str_has_prefix (name, PREFIX) || strlen (name) != strlen (PREFIX) + RANDOM)
      continue;
    path = g_build_filename (folder, name, NULL);
    fd = open (path, O_RDONLY | O_NOFOLLOW | O_NONBLOCK | O_CLOEXEC);
    if (fd < 0)
      continue;
    if (is_left (fd, now))
      unlink (path);
    close (fd);
  }
}
