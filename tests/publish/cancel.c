/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A film that nobody wants any more while another program makes it: that program ends, and nothing of the film is
 * left. In the place of ffmpeg stands a program that writes half a film, tells by a pipe (fifo(7)) who it is, says no
 * more, and never ends by itself; so the cancel always falls while it runs.
 */
#include "publish/formats.h"

#include "timelines.h"

#include <errno.h>
#include <glib/gstdio.h>
#include <signal.h>
#include <stdlib.h>
#include <sys/stat.h>

static const char ffmpeg[] = "#!/bin/sh\n"
                             "for last; do :; done\n"
                             "echo half a film > \"$last\"\n"
                             "echo $$ > \"$LAP_TEST_PIPE\"\n"
                             "exec tail -f /dev/null\n";

typedef struct {
  LapTimeline  *timeline;
  GCancellable *cancellable;
  const char   *path;
  GError       *error;
} Job;

static gpointer
publish (gpointer data)
{
  Job *job = data;
  const LapPublication what = { .timeline = job->timeline };
  const LapProgress watch = { .cancellable = job->cancellable };

  g_assert_false (lap_publish (lap_formats_find ("overlay"), &what, job->path, &watch, &job->error));
  return NULL;
}

static guint
count (const char *folder)
{
  g_autoptr (GDir) dir = g_dir_open (folder, 0, NULL);
  guint n = 0;

  while (g_dir_read_name (dir) != NULL)
    n++;
  return n;
}

/* @old is what stands there before, or NULL. */
static void
cancelled (const char *folder, const char *name, const char *old)
{
  g_autofree char *path = g_build_filename (folder, name, NULL), *pipe = g_build_filename (folder, "..", "pipe", NULL);
  g_autoptr (GCancellable) cancellable = g_cancellable_new ();
  g_autoptr (LapTimeline) timeline = test_part ("main", 1, "{'exercise': 'squat', 'work': 5, 'rest': 0}");
  Job job = { timeline, cancellable, path };
  g_autofree char *pid = NULL, *left = NULL;
  guint before;
  GThread *worker;

  if (old != NULL)
    g_assert_true (g_file_set_contents (path, old, -1, NULL));
  before = count (folder);
  worker = g_thread_new ("publish", publish, &job);
  /* Comes back when the program has said all it says. */
  g_assert_true (g_file_get_contents (pipe, &pid, NULL, NULL));
  g_assert_cmpuint (count (folder), >, before);
  g_cancellable_cancel (cancellable);
  g_thread_join (worker);
  g_assert_error (job.error, G_IO_ERROR, G_IO_ERROR_CANCELLED);
  g_clear_error (&job.error);
  g_assert_cmpint (kill (atoi (pid), 0), ==, -1);
  g_assert_cmpint (errno, ==, ESRCH);
  g_assert_cmpuint (count (folder), ==, before);
  if (old == NULL)
    return;
  g_assert_true (g_file_get_contents (path, &left, NULL, NULL));
  g_assert_cmpstr (left, ==, old);
}

static void
test_film (void)
{
  g_autofree char *top = g_dir_make_tmp ("lapwing-cancel-XXXXXX", NULL);
  g_autofree char *folder = g_build_filename (top, "out", NULL), *pipe = g_build_filename (top, "pipe", NULL);
  g_autofree char *old = g_build_filename (folder, "old.mov", NULL);
  g_autofree char *program = g_build_filename (top, "ffmpeg", NULL);
  g_autofree char *path = g_strdup_printf ("%s:%s", top, g_getenv ("PATH"));

  g_assert_cmpint (g_mkdir (folder, 0755), ==, 0);
  g_assert_cmpint (mkfifo (pipe, 0600), ==, 0);
  g_assert_true (g_file_set_contents_full (program, ffmpeg, -1, G_FILE_SET_CONTENTS_NONE, 0755, NULL));
  g_setenv ("LAP_TEST_PIPE", pipe, TRUE);
  g_setenv ("PATH", path, TRUE);
  cancelled (folder, "new.mov", NULL);
  cancelled (folder, "new.webm", NULL);
  cancelled (folder, "old.mov", "the film of last week");
  g_unlink (old);
  g_unlink (pipe);
  g_unlink (program);
  g_rmdir (folder);
  g_assert_cmpint (g_rmdir (top), ==, 0);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/publish/cancel/film", test_film);
  return g_test_run ();
}
