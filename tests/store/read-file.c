/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Whatever a path leads to, reading it ends at once, with the bytes or with one line.
 */
#include "store/read-file.h"

#include <fcntl.h>
#include <glib/gstdio.h>
#include <string.h>
#include <sys/socket.h>
#include <sys/stat.h>
#include <sys/un.h>
#include <unistd.h>

#include "base/error.h"
#include "store/folder.h"

static void
make_folder (const char *path)
{
  g_assert_cmpint (g_mkdir (path, 0755), ==, 0);
}

static void
make_pipe (const char *path)
{
  g_assert_cmpint (mkfifo (path, 0644), ==, 0);
}

static void
make_socket (const char *path)
{
  struct sockaddr_un address = { .sun_family = AF_UNIX };
  int fd = socket (AF_UNIX, SOCK_STREAM, 0);

  g_strlcpy (address.sun_path, path, sizeof address.sun_path);
  g_assert_cmpint (bind (fd, (struct sockaddr *) &address, sizeof address), ==, 0);
  close (fd);
}

static void
make_sized (const char *path, goffset size)
{
  int fd = g_open (path, O_WRONLY | O_CREAT, 0644);

  g_assert_cmpint (ftruncate (fd, size), ==, 0);
  close (fd);
}

static void
make_200_mb (const char *path)
{
  make_sized (path, 200 * 1000 * 1000);
}

static void
make_one_too_large (const char *path)
{
  make_sized (path, LAP_FILE_MOST + 1);
}

static void
link_to (const char *target, const char *path)
{
  g_assert_cmpint (symlink (target, path), ==, 0);
}

static void
make_zeros (const char *path)
{
  link_to ("/dev/zero", path);
}

static void
make_null (const char *path)
{
  link_to ("/dev/null", path);
}

static void
make_broken_link (const char *path)
{
  link_to ("nowhere", path);
}

static void
make_link_loop (const char *path)
{
  link_to ("plan.lapwing", path);
}

static void
make_nothing (const char *path)
{
}

static void
make_empty (const char *path)
{
  put_text (path, "");
}

static const struct {
  const char *name;
  void (*make) (const char *path);
  const char *said; /* NULL where the words are the C library's */
} bad[] = {
  { "folder", make_folder, "is a folder; expected a file" },
  { "pipe", make_pipe, "is a pipe or a device; expected a file" },
  { "socket", make_socket, NULL },
  { "200-mb", make_200_mb, "is larger than 16 MiB; expected a smaller file" },
  { "one-byte-too-large", make_one_too_large, "is larger than 16 MiB; expected a smaller file" },
  { "zeros", make_zeros, "is a pipe or a device; expected a file" },
  { "null", make_null, "is a pipe or a device; expected a file" },
  { "broken-link", make_broken_link, NULL },
  { "link-loop", make_link_loop, NULL },
  { "missing", make_nothing, NULL },
};

static void
assert_one_line (const char *message)
{
  g_assert_true (g_utf8_validate (message, -1, NULL));
  for (const char *at = message; *at != '\0'; at = g_utf8_next_char (at))
    g_assert_true (g_unichar_isprint (g_utf8_get_char (at)));
}

static void
test_bad (gconstpointer data)
{
  gsize row = GPOINTER_TO_SIZE (data);
  char *folder = folder_new ();
  g_autofree char *path = g_build_filename (folder, "plan.lapwing", NULL);
  g_autofree char *head = g_strconcat (path, ": ", NULL);
  g_autoptr(GError) error = NULL;
  char *etag = NULL;

  bad[row].make (path);
  g_assert_null (lap_read_file (path, &etag, &error));
  g_assert_error (error, LAP_ERROR, LAP_ERROR_INVALID);
  g_assert_null (etag);
  assert_one_line (error->message);
  g_assert_true (g_str_has_prefix (error->message, head));
  if (bad[row].said != NULL)
    g_assert_cmpstr (error->message + strlen (head), ==, bad[row].said);
  folder_remove (folder);
}

static void
test_good (void)
{
  char *folder = folder_new ();
  g_autofree char *path = g_build_filename (folder, "plan.lapwing", NULL);
  g_autofree char *other = g_build_filename (folder, "link.lapwing", NULL);
  g_autoptr(GError) error = NULL;
  g_autoptr(GBytes) bytes = NULL;
  g_autofree char *etag = NULL;

  put_text (path, "text");
  link_to ("plan.lapwing", other);
  bytes = lap_read_file (other, &etag, &error);
  g_assert_no_error (error);
  g_assert_cmpmem (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes), "text", 4);
  g_assert_nonnull (etag);
  folder_remove (folder);
}

/* The limit itself may be read; so may an empty file. */
static void
test_limits (void)
{
  char *folder = folder_new ();
  g_autofree char *path = g_build_filename (folder, "plan.lapwing", NULL);
  g_autofree char *empty = g_build_filename (folder, "empty.lapwing", NULL);
  g_autoptr(GBytes) bytes = NULL, nothing = NULL;

  make_sized (path, LAP_FILE_MOST);
  bytes = lap_read_file (path, NULL, NULL);
  g_assert_cmpuint (g_bytes_get_size (bytes), ==, LAP_FILE_MOST);
  make_empty (empty);
  nothing = lap_read_file (empty, NULL, NULL);
  g_assert_cmpuint (g_bytes_get_size (nothing), ==, 0);
  folder_remove (folder);
}

/* Files of /proc say they hold 0 bytes and are read to their end all the same. */
static void
test_size_untold (void)
{
  g_autoptr(GBytes) bytes = lap_read_file ("/proc/self/status", NULL, NULL);

  g_assert_cmpuint (g_bytes_get_size (bytes), >, 0);
}

static void
test_name_on_one_line (void)
{
  g_autoptr(GError) error = NULL;

  g_assert_null (lap_read_file ("no\n\033[2Jsuch\xff.lapwing", NULL, &error));
  g_assert_error (error, LAP_ERROR, LAP_ERROR_INVALID);
  assert_one_line (error->message);
}

static int
ask_read (const char *path)
{
  g_autoptr(GBytes) bytes = NULL;
  g_autoptr(GError) error = NULL;

  bytes = lap_read_file (path, NULL, &error);
  return lap_error_exit_code (error);
}

static void
test_permission (void)
{
  char *folder = folder_new ();
  g_autofree char *path = g_build_filename (folder, "plan.lapwing", NULL);

  put_text (path, "text");
  g_assert_cmpint (ask_without_rights (ask_read, path), ==, 0);
  g_assert_cmpint (g_chmod (path, 0), ==, 0);
  g_assert_cmpint (ask_without_rights (ask_read, path), ==, LAP_ERROR_INVALID);
  folder_remove (folder);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  for (gsize i = 0; i < G_N_ELEMENTS (bad); i++)
    {
      g_autofree char *name = g_strconcat ("/read-file/bad/", bad[i].name, NULL);

      g_test_add_data_func (name, GSIZE_TO_POINTER (i), test_bad);
    }
  g_test_add_func ("/read-file/good", test_good);
  g_test_add_func ("/read-file/limits", test_limits);
  g_test_add_func ("/read-file/size-untold", test_size_untold);
  g_test_add_func ("/read-file/name-on-one-line", test_name_on_one_line);
  g_test_add_func ("/read-file/permission", test_permission);
  return g_test_run ();
}
