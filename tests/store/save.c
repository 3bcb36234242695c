/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Saving keeps what is around a file (mode, links), notices who else wrote, and refuses what it can't do
 * safely with the old file untouched.
 */
#include "base/error.h"
#include "store/read-file.h"
#include "store/save.h"

#include <glib/gstdio.h>
#include <grp.h>
#include <signal.h>
#include <string.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#define NOBODY 65534
#define OLD "{\"old\": true}\n"

typedef struct {
  char *folder;
  char *path; /* a file in it that holds OLD */
} Place;

static void
place_init (Place *place)
{
  g_autoptr(GError) error = NULL;

  place->folder = g_dir_make_tmp ("lapwing-XXXXXX", &error);
  g_assert_no_error (error);
  place->path = g_build_filename (place->folder, "plan.lapwing", NULL);
  g_assert_true (g_file_set_contents (place->path, OLD, -1, NULL));
}

/* Nothing but @names (NULL-terminated) may be in the folder: no half-written file was left beside. */
static void
place_clear (Place *place, const char *const *names)
{
  g_autoptr(GDir) dir = g_dir_open (place->folder, 0, NULL);
  const char *name;

  while ((name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *path = g_build_filename (place->folder, name, NULL);

      if (!g_strv_contains (names, name))
        g_error ("%s was left in the folder", name);
      g_assert_cmpint (g_remove (path), ==, 0);
    }
  g_assert_cmpint (g_rmdir (place->folder), ==, 0);
  g_free (place->folder);
  g_free (place->path);
}

static const char *const only_plan[] = { "plan.lapwing", NULL };

static GBytes *
new_bytes (void)
{
  return g_bytes_new_static ("{\"new\": true}\n", strlen ("{\"new\": true}\n"));
}

static void
assert_holds (const char *path, GBytes *wanted)
{
  g_autofree char *text = NULL;
  gsize length;

  g_assert_true (g_file_get_contents (path, &text, &length, NULL));
  g_assert_cmpmem (text, length, g_bytes_get_data (wanted, NULL), g_bytes_get_size (wanted));
}

static void
assert_old (const char *path)
{
  g_autoptr(GBytes) old = g_bytes_new_static (OLD, strlen (OLD));

  assert_holds (path, old);
}

static void
save (const char *path, GBytes *bytes)
{
  g_autoptr(GError) error = NULL;

  g_assert_true (lap_save_bytes (path, bytes, NULL, NULL, &error));
  g_assert_no_error (error);
  assert_holds (path, bytes);
}

static void
test_bytes (void)
{
  static const gsize sizes[] = { 0, 1, 4095, 4096, 65537, 3000000 };
  Place place;

  place_init (&place);
  for (guint i = 0; i < G_N_ELEMENTS (sizes); i++)
    {
      g_autoptr(GBytes) bytes = g_bytes_new_take (g_strnfill (sizes[i], 'x'), sizes[i]);
      g_autoptr(GBytes) read = NULL;
      g_autoptr(GError) error = NULL;

      save (place.path, bytes);
      read = lap_read_file (place.path, NULL, &error);
      g_assert_no_error (error);
      g_assert_true (g_bytes_equal (read, bytes));
    }
  place_clear (&place, only_plan);
}

static void
test_new_file (void)
{
  static const char *const both[] = { "plan.lapwing", "new.lapwing", NULL };
  g_autoptr(GBytes) bytes = new_bytes ();
  g_autofree char *path = NULL;
  Place place;

  place_init (&place);
  path = g_build_filename (place.folder, "new.lapwing", NULL);
  save (path, bytes);
  assert_old (place.path);
  place_clear (&place, both);
}

/* A new file has the mode that the umask leaves, not the narrow one of a file that is being written. */
static void
test_umask (void)
{
  static const char *const both[] = { "plan.lapwing", "new.lapwing", NULL };
  g_autoptr(GBytes) bytes = new_bytes ();
  g_autofree char *path = NULL;
  mode_t mask;
  struct stat st;
  Place place;

  place_init (&place);
  path = g_build_filename (place.folder, "new.lapwing", NULL);
  mask = umask (027);
  save (path, bytes);
  umask (mask);
  g_assert_cmpint (stat (path, &st), ==, 0);
  g_assert_cmpint (st.st_mode & 07777, ==, 0640);
  place_clear (&place, both);
}

/* A name may have 255 bytes; the file beside needs no longer one. */
static void
test_long_name (void)
{
  g_autoptr(GBytes) bytes = new_bytes ();
  g_autofree char *name = g_strnfill (255, 'n');
  g_autofree char *path = NULL;
  Place place;

  place_init (&place);
  path = g_build_filename (place.folder, name, NULL);
  save (path, bytes);
  place_clear (&place, (const char *const []) { "plan.lapwing", name, NULL });
}

static void
test_mode (void)
{
  static const int modes[] = { 0600, 0640, 0644, 0664, 0755 };
  g_autoptr(GBytes) bytes = new_bytes ();
  Place place;

  place_init (&place);
  for (guint i = 0; i < G_N_ELEMENTS (modes); i++)
    {
      struct stat st;

      g_assert_cmpint (g_chmod (place.path, modes[i]), ==, 0);
      save (place.path, bytes);
      g_assert_cmpint (stat (place.path, &st), ==, 0);
      g_assert_cmpint (st.st_mode & 07777, ==, modes[i]);
    }
  place_clear (&place, only_plan);
}

/* A link, and a link to it from another folder, stay links; the file they lead to is written. */
static void
test_links (void)
{
  static const char *const all[] = { "plan.lapwing", "link", "relative", NULL };
  g_autoptr(GBytes) bytes = new_bytes ();
  g_autofree char *link = NULL, *relative = NULL, *elsewhere = NULL;
  struct stat st;
  Place place, other;

  place_init (&place);
  place_init (&other);
  link = g_build_filename (place.folder, "link", NULL);
  relative = g_build_filename (place.folder, "relative", NULL);
  elsewhere = g_build_filename (other.folder, "elsewhere", NULL);
  g_assert_cmpint (symlink (place.path, link), ==, 0);
  g_assert_cmpint (symlink ("link", relative), ==, 0);
  g_assert_cmpint (symlink (relative, elsewhere), ==, 0);
  save (elsewhere, bytes);
  assert_holds (place.path, bytes);
  g_assert_true (lstat (elsewhere, &st) == 0 && S_ISLNK (st.st_mode));
  g_assert_true (lstat (relative, &st) == 0 && S_ISLNK (st.st_mode));
  g_assert_true (lstat (link, &st) == 0 && S_ISLNK (st.st_mode));
  g_assert_true (lstat (place.path, &st) == 0 && S_ISREG (st.st_mode));
  place_clear (&place, all);
  place_clear (&other, (const char *const []) { "plan.lapwing", "elsewhere", NULL });
}

/* A file with another name becomes one of its own; the other name keeps what it had. */
static void
test_hard_link (void)
{
  static const char *const both[] = { "plan.lapwing", "other", NULL };
  g_autoptr(GBytes) bytes = new_bytes ();
  g_autofree char *other = NULL;
  Place place;

  place_init (&place);
  other = g_build_filename (place.folder, "other", NULL);
  g_assert_cmpint (link (place.path, other), ==, 0);
  save (place.path, bytes);
  assert_old (other);
  place_clear (&place, both);
}

static void
assert_refuses (const char *path, const char *etag, int code)
{
  g_autoptr(GBytes) bytes = new_bytes ();
  g_autoptr(GError) error = NULL;

  g_assert_false (lap_save_bytes (path, bytes, etag, NULL, &error));
  g_assert_error (error, LAP_ERROR, code);
  g_assert_cmpint (lap_error_exit_code (error), ==, 4);
  g_assert_null (strchr (error->message, '\n'));
}

/* Writes as somebody else does, and makes sure that the clock of the file system has ticked: an etag is a
 * time. */
static void
write_elsewhere (const char *path, const char *text)
{
  struct stat before, after;

  g_assert_cmpint (stat (path, &before), ==, 0);
  do
    {
      g_usleep (1000);
      g_assert_true (g_file_set_contents (path, text, -1, NULL));
      g_assert_cmpint (stat (path, &after), ==, 0);
    }
  while (before.st_mtim.tv_sec == after.st_mtim.tv_sec
         && before.st_mtim.tv_nsec / 1000 == after.st_mtim.tv_nsec / 1000);
}

static void
test_changed_outside (void)
{
  g_autoptr(GBytes) bytes = new_bytes ();
  g_autoptr(GBytes) read = NULL;
  g_autoptr(GError) error = NULL;
  g_autofree char *etag = NULL, *next = NULL, *last = NULL;
  Place place;

  place_init (&place);
  read = lap_read_file (place.path, &etag, &error);
  g_assert_no_error (error);
  /* Nobody wrote: it is saved, and saved again with the etag of that. */
  g_assert_true (lap_save_bytes (place.path, bytes, etag, &next, &error));
  g_assert_true (lap_save_bytes (place.path, bytes, next, &last, &error));
  g_assert_no_error (error);
  write_elsewhere (place.path, OLD);
  assert_refuses (place.path, last, LAP_ERROR_CHANGED);
  assert_old (place.path);
  /* Asked, and told to go on: without an etag nothing is compared. */
  save (place.path, bytes);
  place_clear (&place, only_plan);
}

/* A file that went meanwhile is written anew. */
static void
test_gone_outside (void)
{
  g_autoptr(GBytes) bytes = new_bytes ();
  g_autoptr(GBytes) read = NULL;
  g_autoptr(GError) error = NULL;
  g_autofree char *etag = NULL;
  Place place;

  place_init (&place);
  read = lap_read_file (place.path, &etag, &error);
  g_assert_no_error (error);
  g_assert_cmpint (g_remove (place.path), ==, 0);
  g_assert_true (lap_save_bytes (place.path, bytes, etag, NULL, &error));
  g_assert_no_error (error);
  assert_holds (place.path, bytes);
  place_clear (&place, only_plan);
}

static void
test_not_a_file (void)
{
  g_autofree char *missing = NULL, *below = NULL, *fifo = NULL, *nowhere = NULL;
  Place place;

  place_init (&place);
  missing = g_build_filename (place.folder, "missing", "plan.lapwing", NULL);
  below = g_build_filename (place.path, "below.lapwing", NULL);
  fifo = g_build_filename (place.folder, "fifo", NULL);
  nowhere = g_build_filename (place.folder, "nowhere", NULL);
  g_assert_cmpint (mkfifo (fifo, 0600), ==, 0);
  g_assert_cmpint (symlink ("not-there", nowhere), ==, 0);
  assert_refuses (missing, NULL, LAP_ERROR_UNWRITABLE);
  assert_refuses (below, NULL, LAP_ERROR_UNWRITABLE);
  assert_refuses (place.folder, NULL, LAP_ERROR_UNWRITABLE);
  assert_refuses (fifo, NULL, LAP_ERROR_UNWRITABLE);
  assert_refuses (nowhere, NULL, LAP_ERROR_UNWRITABLE);
  assert_old (place.path);
  place_clear (&place, (const char *const []) { "plan.lapwing", "fifo", "nowhere", NULL });
}

/* In a child that gives up its rights where it has them all: 0 when saving was refused as it should be. */
static int
save_as_nobody (const char *path)
{
  g_autoptr(GBytes) bytes = new_bytes ();
  g_autoptr(GError) error = NULL;

  if (geteuid () == 0 && (setgroups (0, NULL) != 0 || setgid (NOBODY) != 0 || setuid (NOBODY) != 0))
    return 2;
  if (lap_save_bytes (path, bytes, NULL, NULL, &error))
    return 3;
  return g_error_matches (error, LAP_ERROR, LAP_ERROR_UNWRITABLE) ? 0 : 4;
}

static void
assert_refuses_nobody (const char *path)
{
  pid_t child = fork ();
  int status;

  if (child == 0)
    _exit (save_as_nobody (path));
  g_assert_cmpint (waitpid (child, &status, 0), ==, child);
  g_assert_true (WIFEXITED (status));
  g_assert_cmpint (WEXITSTATUS (status), ==, 0);
}

static void
test_read_only (void)
{
  Place place;

  place_init (&place);
  /* All belongs to who will try. */
  if (geteuid () == 0)
    g_assert_true (chown (place.path, NOBODY, NOBODY) == 0 && chown (place.folder, NOBODY, NOBODY) == 0);
  /* A folder that can't be written, with a file that could be: GIO would write over it in place. */
  g_assert_cmpint (g_chmod (place.folder, 0555), ==, 0);
  g_assert_cmpint (g_chmod (place.path, 0666), ==, 0);
  assert_refuses_nobody (place.path);
  assert_old (place.path);
  /* A file that can't be, in a folder that could: what is read-only is meant to stay. */
  g_assert_cmpint (g_chmod (place.folder, 0777), ==, 0);
  g_assert_cmpint (g_chmod (place.path, 0444), ==, 0);
  assert_refuses_nobody (place.path);
  assert_old (place.path);
  place_clear (&place, only_plan);
}

/* Somebody else's file in a folder that anybody may write to. Only root can give a file away; for others
 * the folder of root's own files stands in. */
static void
test_other_owner (void)
{
  Place place;

  if (geteuid () != 0)
    {
      assert_refuses ("/etc/passwd", NULL, LAP_ERROR_UNWRITABLE);
      return;
    }
  place_init (&place);
  g_assert_cmpint (g_chmod (place.folder, 0777), ==, 0);
  g_assert_cmpint (g_chmod (place.path, 0666), ==, 0);
  assert_refuses_nobody (place.path);
  assert_old (place.path);
  g_assert_cmpint (chown (place.path, NOBODY, NOBODY), ==, 0);
  assert_refuses (place.path, NULL, LAP_ERROR_UNWRITABLE);
  assert_old (place.path);
  place_clear (&place, only_plan);
}

/* A group one isn't in can't be given to the new file: its members would lose the file, others would get
 * it. */
static void
test_other_group (void)
{
  Place place;

  if (geteuid () != 0)
    {
      assert_refuses ("/etc/group", NULL, LAP_ERROR_UNWRITABLE);
      return;
    }
  place_init (&place);
  g_assert_cmpint (g_chmod (place.folder, 0777), ==, 0);
  g_assert_cmpint (chown (place.path, NOBODY, 12345), ==, 0);
  g_assert_cmpint (g_chmod (place.path, 0660), ==, 0);
  assert_refuses_nobody (place.path);
  assert_old (place.path);
  place_clear (&place, only_plan);
}

/* A process that may not write files of more than two bytes meets a disk that is full there. */
static void
test_full_disk (void)
{
  g_autoptr(GBytes) bytes = new_bytes ();
  struct rlimit two = { 2, 2 };
  Place place;
  pid_t child;
  int status;

  place_init (&place);
  child = fork ();
  if (child == 0)
    {
      signal (SIGXFSZ, SIG_IGN);
      _exit (setrlimit (RLIMIT_FSIZE, &two) != 0 || lap_save_bytes (place.path, bytes, NULL, NULL, NULL));
    }
  g_assert_cmpint (waitpid (child, &status, 0), ==, child);
  g_assert_true (WIFEXITED (status));
  g_assert_cmpint (WEXITSTATUS (status), ==, 0);
  assert_old (place.path);
  place_clear (&place, only_plan);
}

typedef struct {
  GMainLoop *loop;
  gboolean done;
  char *etag;
  GError *error;
} Wait;

static void
on_saved (GObject *source, GAsyncResult *result, gpointer data)
{
  Wait *wait = data;

  wait->done = lap_save_bytes_finish (result, &wait->etag, &wait->error);
  g_main_loop_quit (wait->loop);
}

static void
save_in_worker (Wait *wait, const char *path, GBytes *bytes, const char *etag)
{
  lap_save_bytes_async (path, bytes, etag, on_saved, wait);
  g_main_loop_run (wait->loop);
}

static void
test_worker (void)
{
  g_autoptr(GBytes) bytes = new_bytes ();
  g_autoptr(GMainLoop) loop = g_main_loop_new (NULL, FALSE);
  Wait first = { loop }, second = { loop };
  Place place;

  place_init (&place);
  save_in_worker (&first, place.path, bytes, NULL);
  g_assert_no_error (first.error);
  g_assert_true (first.done);
  assert_holds (place.path, bytes);
  write_elsewhere (place.path, OLD);
  save_in_worker (&second, place.path, bytes, first.etag);
  g_assert_false (second.done);
  g_assert_error (second.error, LAP_ERROR, LAP_ERROR_CHANGED);
  assert_old (place.path);
  g_free (first.etag);
  g_error_free (second.error);
  place_clear (&place, only_plan);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  /* Those that fork come first, before there is a worker. */
  g_test_add_func ("/save/read-only", test_read_only);
  g_test_add_func ("/save/other-owner", test_other_owner);
  g_test_add_func ("/save/other-group", test_other_group);
  g_test_add_func ("/save/full-disk", test_full_disk);
  g_test_add_func ("/save/bytes", test_bytes);
  g_test_add_func ("/save/new-file", test_new_file);
  g_test_add_func ("/save/umask", test_umask);
  g_test_add_func ("/save/long-name", test_long_name);
  g_test_add_func ("/save/mode", test_mode);
  g_test_add_func ("/save/links", test_links);
  g_test_add_func ("/save/hard-link", test_hard_link);
  g_test_add_func ("/save/changed-outside", test_changed_outside);
  g_test_add_func ("/save/gone-outside", test_gone_outside);
  g_test_add_func ("/save/not-a-file", test_not_a_file);
  g_test_add_func ("/save/worker", test_worker);
  return g_test_run ();
}
