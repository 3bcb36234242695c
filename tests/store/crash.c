/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A child that saves is killed at its first, second, … system call, before and behind each, until it gets through. The
 * file is wholly the old one or wholly the new one every time. What a loss of power would do can't be tried; in its
 * place the order of calls is looked at: the data is synced before the rename, the folder after it.
 */
#include "store/save.h"

#include <glib/gstdio.h>
#include <signal.h>
#include <string.h>
#include <sys/ptrace.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <sys/wait.h>
#include <unistd.h>

/* More than a page, and not the same at any place. */
#define LENGTH 20000

typedef struct {
  char *folder, *path, *link;
  GBytes *old, *new;
} Place;

static GBytes *
filled (char c)
{
  return g_bytes_new_take (g_strnfill (LENGTH, c), LENGTH);
}

static void
place_init (Place *place)
{
  g_autoptr(GError) error = NULL;

  place->folder = g_dir_make_tmp ("lapwing-XXXXXX", &error);
  g_assert_no_error (error);
  place->path = g_build_filename (place->folder, "plan.lapwing", NULL);
  place->link = g_build_filename (place->folder, "link", NULL);
  place->old = filled ('o');
  place->new = filled ('n');
  g_assert_true (g_file_set_contents (place->path, g_bytes_get_data (place->old, NULL), LENGTH, NULL));
  g_assert_cmpint (g_chmod (place->path, 0640), ==, 0);
  g_assert_cmpint (symlink ("plan.lapwing", place->link), ==, 0);
}

/* A killed child may leave what it was writing, under another name. */
static void
place_clear (Place *place)
{
  g_autoptr(GDir) dir = g_dir_open (place->folder, 0, NULL);
  const char *name;

  while ((name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *path = g_build_filename (place->folder, name, NULL);

      g_assert_cmpint (g_remove (path), ==, 0);
    }
  g_assert_cmpint (g_rmdir (place->folder), ==, 0);
  g_free (place->folder);
  g_free (place->path);
  g_free (place->link);
  g_bytes_unref (place->old);
  g_bytes_unref (place->new);
}

/* The child: stops, so that it can be watched from here on, and saves. */
static void
save_and_exit (const Place *place)
{
  if (ptrace (PTRACE_TRACEME, 0, NULL, NULL) != 0 || raise (SIGSTOP) != 0)
    _exit (2);
  _exit (lap_save_bytes (place->link, place->new, NULL, NULL, NULL) ? 0 : 1);
}

/* The number of the system call that begins at a stop, or -1 at one where a call ends. */
static long
call_at_stop (pid_t child)
{
  struct __ptrace_syscall_info info = { 0 };

  g_assert_cmpint (ptrace (PTRACE_GET_SYSCALL_INFO, child, sizeof info, &info), >, 0);
  return info.op == PTRACE_SYSCALL_INFO_ENTRY ? (long) info.entry.nr : -1;
}

/* Lets a child save up to stop @last, then kills it; -1 lets it get through. TRUE when it got through. The system
 * calls are added to @calls, unless that is NULL. */
static gboolean
run_child (const Place *place, int last, GArray *calls)
{
  pid_t child = fork ();
  int status;

  if (child == 0)
    save_and_exit (place);
  g_assert_cmpint (waitpid (child, &status, 0), ==, child);
  g_assert_true (WIFSTOPPED (status) && WSTOPSIG (status) == SIGSTOP);
  g_assert_cmpint (ptrace (PTRACE_SETOPTIONS, child, NULL, PTRACE_O_TRACESYSGOOD | PTRACE_O_EXITKILL), ==, 0);
  for (int stop = 0; last < 0 || stop <= last; stop++)
    {
      long call;

      g_assert_cmpint (ptrace (PTRACE_SYSCALL, child, NULL, NULL), ==, 0);
      g_assert_cmpint (waitpid (child, &status, 0), ==, child);
      if (WIFEXITED (status))
        {
          g_assert_cmpint (WEXITSTATUS (status), ==, 0);
          return TRUE;
        }
      g_assert_true (WIFSTOPPED (status));
      g_assert_cmpint (WSTOPSIG (status), ==, SIGTRAP | 0x80);
      call = call_at_stop (child);
      if (calls != NULL && call >= 0)
        g_array_append_val (calls, call);
    }
  g_assert_cmpint (kill (child, SIGKILL), ==, 0);
  g_assert_cmpint (waitpid (child, &status, 0), ==, child);
  g_assert_true (WIFSIGNALED (status));
  return FALSE;
}

/* TRUE for the new one, FALSE for the old one; anything else fails. */
static gboolean
holds_new (const Place *place)
{
  g_autofree char *text = NULL;
  gboolean is_new;
  struct stat st;
  gsize length;

  g_assert_true (g_file_get_contents (place->path, &text, &length, NULL));
  is_new = *text == 'n';
  g_assert_cmpmem (text, length, g_bytes_get_data (is_new ? place->new : place->old, NULL), LENGTH);
  g_assert_true (lstat (place->path, &st) == 0 && S_ISREG (st.st_mode));
  g_assert_cmpint (st.st_mode & 07777, ==, 0640);
  g_assert_true (lstat (place->link, &st) == 0 && S_ISLNK (st.st_mode));
  return is_new;
}

/* GIO looks around on its first file; that is no part of saving. */
static void
warm_up (void)
{
  Place place;

  place_init (&place);
  g_assert_true (lap_save_bytes (place.link, place.new, NULL, NULL, NULL));
  g_assert_true (holds_new (&place));
  place_clear (&place);
}

static void
test_killed (void)
{
  gboolean through = FALSE;
  int stops_old = 0, stops_new = 0;

  warm_up ();
  for (int last = 0; !through; last++)
    {
      gboolean is_new;
      Place place;

      place_init (&place);
      through = run_child (&place, last, NULL);
      is_new = holds_new (&place);
      g_assert_true (is_new || !through);
      /* Once it is the new one there is no way back. */
      g_assert_true (is_new || stops_new == 0);
      if (is_new)
        stops_new++;
      else
        stops_old++;
      place_clear (&place);
    }
  g_test_message ("%d stops with the old file, %d with the new one", stops_old, stops_new);
  g_assert_cmpint (stops_old, >, 10);
  g_assert_cmpint (stops_new, >, 3);
}

static gboolean
is_rename (long call)
{
#ifdef SYS_rename
  if (call == SYS_rename)
    return TRUE;
#endif
  return call == SYS_renameat || call == SYS_renameat2;
}

static void
test_synced (void)
{
  g_autoptr(GArray) calls = g_array_new (FALSE, FALSE, sizeof (long));
  int before = 0, after = 0, renames = 0;
  Place place;

  warm_up ();
  place_init (&place);
  g_assert_true (run_child (&place, -1, calls));
  g_assert_true (holds_new (&place));
  for (guint i = 0; i < calls->len; i++)
    {
      long call = g_array_index (calls, long, i);

      if (is_rename (call))
        renames++;
      else if (call == SYS_fsync || call == SYS_fdatasync)
        *(renames == 0 ? &before : &after) += 1;
    }
  g_assert_cmpint (renames, ==, 1);
  g_assert_cmpint (before, ==, 1);
  g_assert_cmpint (after, ==, 1);
  place_clear (&place);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/crash/killed", test_killed);
  g_test_add_func ("/crash/synced", test_synced);
  return g_test_run ();
}
