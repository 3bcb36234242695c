/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A folder that is published: it takes the place of what was published there before and of nothing else, and what a
 * killed writer left of one goes at the next.
 */
#include "publish/folder.h"

#include "base/error.h"
#include "store/folder.h"

#include <glib/gstdio.h>
#include <signal.h>
#include <string.h>
#include <sys/prctl.h>
#include <sys/wait.h>
#include <unistd.h>
#include <utime.h>

#define HOUR 3600

static void
put (const char *folder, const char *name, const char *text)
{
  g_autofree char *path = g_build_filename (folder, name, NULL);

  put_text (path, text);
}

static LapFolder *
begin (const char *path, const char *name)
{
  g_autoptr (GError) error = NULL;
  LapFolder *folder = lap_folder_beside (path, &error);

  g_assert_no_error (error);
  put (lap_folder_path (folder), name, "new");
  return folder;
}

/* What was published before goes, at once with all that is in it; a picture that isn't made any more too. */
static void
test_again (void)
{
  char *home = folder_new ();
  g_autofree char *path = g_build_filename (home, "film", NULL), *list = g_build_filename (path, "list.csv", NULL);

  for (int i = 0; i < 2; i++) {
    g_autoptr (LapFolder) folder = begin (path, "list.csv");
    g_autoptr (GError) error = NULL;

    g_assert_true (lap_folder_place (folder, path, &error));
    g_assert_no_error (error);
    put (path, "0001.png", "a picture");
  }
  assert_text (list, "new");
  g_assert_cmpuint (folder_count (path), ==, 2); /* the second time's own */
  g_assert_cmpuint (folder_count (home), ==, 1);
  folder_remove (home);
}

static void
test_somebody_elses (void)
{
  char *home = folder_new ();
  g_autofree char *path = g_build_filename (home, "film", NULL), *diary = g_build_filename (path, "diary", NULL);
  LapFolder *folder = begin (path, "list.csv");
  g_autoptr (GError) error = NULL;

  g_assert_cmpint (g_mkdir (path, 0755), ==, 0);
  put (path, "diary", "mine");
  g_assert_false (lap_folder_place (folder, path, &error));
  g_assert_error (error, LAP_ERROR, LAP_ERROR_UNWRITABLE);
  lap_folder_free (folder);
  assert_text (diary, "mine");
  g_assert_cmpuint (folder_count (home), ==, 1);
  folder_remove (home);
}

/* A process that fills a folder and waits; gives the folder. */
static pid_t
begin_elsewhere (const char *path, char **hidden)
{
  int ends[2];
  char name[PATH_MAX] = "";
  pid_t child;

  g_assert_cmpint (pipe (ends), ==, 0);
  child = fork ();
  if (child == 0) {
    LapFolder *folder = begin (path, "half");

    prctl (PR_SET_PDEATHSIG, SIGKILL); /* a test that fails leaves nobody behind */
    if (write (ends[1], lap_folder_path (folder), strlen (lap_folder_path (folder))) < 0)
      _exit (1);
    for (;;)
      pause ();
  }
  g_assert_cmpint (read (ends[0], name, sizeof name - 1), >, 0);
  close (ends[0]);
  close (ends[1]);
  *hidden = g_strdup (name);
  return child;
}

/* Publishes into @path once more, and says whether @hidden is still there. */
static gboolean
stays (const char *hidden, const char *path, int age)
{
  struct utimbuf times = { time (NULL) - age, time (NULL) - age };

  g_assert_cmpint (utime (hidden, &times), ==, 0);
  lap_folder_free (begin (path, "list.csv"));
  return g_file_test (hidden, G_FILE_TEST_EXISTS);
}

static void
test_killed (void)
{
  char *home = folder_new ();
  g_autofree char *path = g_build_filename (home, "film", NULL), *hidden = NULL;
  pid_t child = begin_elsewhere (path, &hidden);

  g_assert_true (stays (hidden, path, 10 * HOUR));
  kill (child, SIGKILL);
  g_assert_cmpint (waitpid (child, NULL, 0), ==, child);
  g_assert_true (stays (hidden, path, HOUR / 2));
  g_assert_false (stays (hidden, path, 2 * HOUR));
  g_assert_cmpuint (folder_count (home), ==, 0);
  folder_remove (home);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/publish/folder/again", test_again);
  g_test_add_func ("/publish/folder/somebody-elses", test_somebody_elses);
  g_test_add_func ("/publish/folder/killed", test_killed);
  return g_test_run ();
}
