/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A save that is killed at any system call, before it or after it, leaves the old file or the new one, whole.
 * The save runs in a child that is traced (ptrace(2)): it stops at the entry and at the exit of each system
 * call, and at the k-th stop it is killed; for every k until a save comes to its end. A loss of power can't
 * be had in a test: for that the order of the calls that bring things to the disk is held.
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

#include "store/folder.h"
#include "store/read-file.h"

#define LENGTH 300000
#define STOPS_MOST 2000

typedef struct {
  const char *name;
  gboolean exists;    /* there is an old file */
  gboolean linked;    /* saved through a symbolic link */
  gboolean hard;      /* the old file has a second name */
  gboolean refused;   /* it was changed, so it stays the old one */
} Case;

static const Case cases[] = {
  { "replace", TRUE, FALSE, FALSE, FALSE },
  { "through-link", TRUE, TRUE, FALSE, FALSE },
  { "second-name", TRUE, FALSE, TRUE, FALSE },
  { "new", FALSE, FALSE, FALSE, FALSE },
  { "changed", TRUE, FALSE, FALSE, TRUE },
};

typedef enum { NOTHING, OLD, NEW, HALF } Found;

typedef struct {
  char *path;
  char *asked;   /* what is handed to the save: the path, or a link to it */
  char *old;
  GBytes *bytes;
} Texts;

static Found
look (const Texts *texts)
{
  g_autofree char *found = NULL;
  gsize length;

  if (!g_file_get_contents (texts->path, &found, &length, NULL))
    return NOTHING;
  if (length == LENGTH && memcmp (found, texts->old, LENGTH) == 0)
    return OLD;
  if (length == g_bytes_get_size (texts->bytes)
      && memcmp (found, g_bytes_get_data (texts->bytes, NULL), length) == 0)
    return NEW;
  return HALF;
}

/* The child stops before its first step, so that all that follows is traced. */
static pid_t
start_save (const Texts *texts, const char *etag)
{
  int status;
  pid_t child = fork ();

  g_assert_cmpint (child, >=, 0);
  if (child == 0)
    {
      if (ptrace (PTRACE_TRACEME, 0, NULL, NULL) != 0)
        _exit (99);
      raise (SIGSTOP);
      _exit (lap_save_bytes (texts->asked, texts->bytes, etag, NULL, NULL) ? 0 : 1);
    }
  g_assert_cmpint (waitpid (child, &status, 0), ==, child);
  g_assert_true (WIFSTOPPED (status));
  g_assert_cmpint (ptrace (PTRACE_SETOPTIONS, child, NULL, PTRACE_O_TRACESYSGOOD | PTRACE_O_EXITKILL), ==, 0);
  return child;
}

/* Lets the child run to its @stop-th stop and kills it there. FALSE when it ended before; then its exit
 * status. */
static gboolean
kill_at (pid_t child, guint stop, int *exit_status)
{
  int status;

  for (guint i = 0; i < stop; i++)
    {
      g_assert_cmpint (ptrace (PTRACE_SYSCALL, child, NULL, NULL), ==, 0);
      g_assert_cmpint (waitpid (child, &status, 0), ==, child);
      if (WIFEXITED (status))
        {
          *exit_status = WEXITSTATUS (status);
          return FALSE;
        }
      g_assert_true (WIFSTOPPED (status) && WSTOPSIG (status) == (SIGTRAP | 0x80));
    }
  g_assert_cmpint (kill (child, SIGKILL), ==, 0);
  g_assert_cmpint (waitpid (child, &status, 0), ==, child);
  return TRUE;
}

static void
assert_as_before (const Texts *texts, const char *link, const Case *c)
{
  struct stat state;

  if (c->linked)
    g_assert_true (g_file_test (link, G_FILE_TEST_IS_SYMLINK));
  if (c->exists)
    {
      g_assert_cmpint (stat (texts->path, &state), ==, 0);
      g_assert_cmpint (state.st_mode & 07777, ==, 0640);
    }
  if (c->hard)
    assert_text (link, texts->old);
}

/* One save in a folder of its own, killed at its @stop-th stop. What it left, and whether it came to its
 * end. */
static Found
save_and_kill (const Case *c, Texts *texts, guint stop, gboolean *ended)
{
  char *folder = folder_new ();
  g_autofree char *link_path = g_build_filename (folder, "other.lapwing", NULL);
  g_autofree char *etag = NULL;
  int exit_status = 0;
  Found found;

  texts->path = g_build_filename (folder, "plan.lapwing", NULL);
  texts->asked = g_strdup (c->linked ? link_path : texts->path);
  if (c->exists)
    {
      g_autoptr(GBytes) read = NULL;

      put_text (texts->path, texts->old);
      g_assert_cmpint (g_chmod (texts->path, 0640), ==, 0);
      read = lap_read_file (texts->path, &etag, NULL);
      g_assert_nonnull (read);
    }
  if (c->linked)
    g_assert_cmpint (symlink ("plan.lapwing", link_path), ==, 0);
  if (c->hard)
    g_assert_cmpint (link (texts->path, link_path), ==, 0);
  *ended = !kill_at (start_save (texts, c->refused ? "another" : etag), stop, &exit_status);
  g_assert_cmpint (exit_status, ==, *ended && c->refused ? 1 : 0);
  found = look (texts);
  assert_as_before (texts, link_path, c);
  /* Only a kill may leave the file beside. */
  if (*ended)
    g_assert_cmpuint (folder_count (folder), ==, c->linked || c->hard ? 2 : 1);
  g_clear_pointer (&texts->path, g_free);
  g_clear_pointer (&texts->asked, g_free);
  folder_remove (folder);
  return found;
}

static void
test_killed (gconstpointer data)
{
  const Case *c = data;
  Found before = c->exists ? OLD : NOTHING;
  Found after = c->refused ? OLD : NEW;
  Found last = before;
  Texts texts = { NULL };
  gboolean ended = FALSE;
  guint stop;

  texts.old = g_strnfill (LENGTH, 'o');
  texts.bytes = g_bytes_new_take (g_strnfill (LENGTH / 2, 'n'), LENGTH / 2);
  for (stop = 1; !ended && stop < STOPS_MOST; stop++)
    {
      Found found = save_and_kill (c, &texts, stop, &ended);

      if (found != before && found != after)
        g_error ("%s, killed at stop %u: neither the old file nor the new one", c->name, stop);
      /* Once the new one is there, no later kill brings the old one back. */
      if (last == after)
        g_assert_true (found == after);
      last = found;
    }
  g_assert_true (ended);
  g_assert_true (last == after);
  /* At the least: open, write, sync, rename, each with its entry and its exit. */
  g_assert_cmpuint (stop, >, 8);
  g_test_message ("%s: %u stops", c->name, stop);
  g_free (texts.old);
  g_bytes_unref (texts.bytes);
}

/* The letter of a system call that matters for the order: a sync, or a rename by any of its calls; else 0. */
static char
call_letter (pid_t child)
{
  struct __ptrace_syscall_info info = { 0 };

  g_assert_cmpint (ptrace (PTRACE_GET_SYSCALL_INFO, child, sizeof info, &info), >, 0);
  if (info.op != PTRACE_SYSCALL_INFO_ENTRY)
    return 0;
  switch (info.entry.nr)
    {
    case SYS_fsync:
      return 's';
#ifdef SYS_rename
    case SYS_rename:
#endif
#ifdef SYS_renameat
    case SYS_renameat:
#endif
    case SYS_renameat2:
      return 'r';
    default:
      return 0;
    }
}

/* The bytes are on the disk before the name points to them, and the name is before the save says that it is
 * done. */
static void
test_order (void)
{
  char *folder = folder_new ();
  g_autofree char *path = g_build_filename (folder, "plan.lapwing", NULL);
  g_autoptr(GBytes) bytes = g_bytes_new_static ("new", 3);
  g_autoptr(GString) order = g_string_new (NULL);
  Texts texts = { .path = path, .asked = path, .bytes = bytes };
  pid_t child = start_save (&texts, NULL);
  int status;

  for (;;)
    {
      char letter;

      g_assert_cmpint (ptrace (PTRACE_SYSCALL, child, NULL, NULL), ==, 0);
      g_assert_cmpint (waitpid (child, &status, 0), ==, child);
      if (!WIFSTOPPED (status))
        break;
      letter = call_letter (child);
      if (letter != 0)
        g_string_append_c (order, letter);
    }
  g_assert_true (WIFEXITED (status) && WEXITSTATUS (status) == 0);
  g_assert_cmpstr (order->str, ==, "srs");
  assert_text (path, "new");
  folder_remove (folder);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (gsize i = 0; i < G_N_ELEMENTS (cases); i++)
    {
      g_autofree char *name = g_strconcat ("/crash/", cases[i].name, NULL);

      g_test_add_data_func (name, &cases[i], test_killed);
    }
  g_test_add_func ("/crash/order", test_order);
  return g_test_run ();
}
