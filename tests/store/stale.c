/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a killed save leaves beside a file goes at the next one, and nothing else does.
 */
#include "store/saving.h"

#include <fcntl.h>
#include <glib/gstdio.h>
#include <signal.h>
#include <string.h>
#include <sys/prctl.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>
#include <utime.h>

#include "store/folder.h"

#define HOUR 3600

/* A save in a process of its own that has begun, and waits; gives the file it writes. Killed by the caller. */
static pid_t
begin_save (const char *path, char **beside)
{
  int pipe_ends[2];
  char name[PATH_MAX] = "";
  pid_t child;

  g_assert_cmpint (pipe (pipe_ends), ==, 0);
  child = fork ();
  if (child == 0) {
    LapSaving *saving = lap_saving_new (path, NULL);

    prctl (PR_SET_PDEATHSIG, SIGKILL); /* a test that fails leaves nobody behind */
    if (saving == NULL || write (lap_saving_fd (saving), "half", 4) != 4 ||
        write (pipe_ends[1], lap_saving_beside (saving), strlen (lap_saving_beside (saving))) < 0)
      _exit (1);
    for (;;)
      pause ();
  }
  g_assert_cmpint (read (pipe_ends[0], name, sizeof name - 1), >, 0);
  close (pipe_ends[0]);
  close (pipe_ends[1]);
  *beside = g_strdup (name);
  return child;
}

static void
kill_save (pid_t child)
{
  kill (child, SIGKILL);
  g_assert_cmpint (waitpid (child, NULL, 0), ==, child);
}

static void
age (const char *path, int seconds)
{
  struct utimbuf times = { time (NULL) - seconds, time (NULL) - seconds };

  g_assert_cmpint (utime (path, &times), ==, 0);
}

static void
save (const char *path)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (LapSaving) saving = lap_saving_new (path, &error);

  g_assert_no_error (error);
  g_assert_true (lap_saving_write (saving, "new", 3, &error));
  g_assert_true (lap_saving_finish (saving, NULL, NULL, &error));
  assert_text (path, "new");
}

/* As long as its writer lives a file stays, however old; then it goes, but not at once. */
static void
test_writer (void)
{
  char *folder = folder_new ();
  g_autofree char *path = g_build_filename (folder, "a.lapwing", NULL), *beside = NULL;
  pid_t child;

  put_text (path, "old");
  child = begin_save (path, &beside);
  age (beside, 10 * HOUR);
  save (path);
  assert_text (beside, "half");
  kill_save (child);
  age (beside, HOUR / 2);
  save (path);
  assert_text (beside, "half");
  age (beside, 2 * HOUR);
  save (path);
  g_assert_false (g_file_test (beside, G_FILE_TEST_EXISTS));
  g_assert_cmpuint (folder_count (folder), ==, 1);
  folder_remove (folder);
}

/* Old files with other names, folders with the name of files, and what a link leads to are somebody else's. */
static void
test_others (void)
{
  static const char *const names[] = { ".lapwing-", ".lapwing-abcdefg", "lapwing-abcdef", ".lapwing-abcde" };
  char *folder = folder_new ();
  g_autofree char *path = g_build_filename (folder, "a.lapwing", NULL);
  g_autofree char *link = g_build_filename (folder, ".lapwing-linked", NULL);
  g_autofree char *inside = g_build_filename (folder, ".lapwing-folder", NULL);

  for (guint i = 0; i < G_N_ELEMENTS (names); i++) {
    g_autofree char *other = g_build_filename (folder, names[i], NULL);

    put_text (other, "mine");
    age (other, 2 * HOUR);
  }
  g_assert_cmpint (g_mkdir (inside, 0755), ==, 0);
  age (inside, 2 * HOUR);
  g_assert_cmpint (symlink (names[0], link), ==, 0);
  save (path);
  g_assert_cmpuint (folder_count (folder), ==, G_N_ELEMENTS (names) + 3);
  folder_remove (folder);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/store/stale/writer", test_writer);
  g_test_add_func ("/store/stale/others", test_others);
  return g_test_run ();
}
