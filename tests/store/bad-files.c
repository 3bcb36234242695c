/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What can't be read, through the program: exit 3, nothing on standard output, and one line on standard error
 * that names the file and, for what is in it, the line and the JSON Pointer.
 */
#include "base/error.h"
#include "store/documents.h"
#include "store/read-file.h"

#include <fcntl.h>
#include <gio/gio.h>
#include <glib/gstdio.h>
#include <grp.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#define SPARSE_SIZE (200 * 1024 * 1024)
#define NOBODY 65534

typedef struct {
  const char *text;  /* single quotes stand for double ones */
  const char *place; /* "line 3, /target"; "line 1" for the root */
} Row;

/* A folder that goes when the test ends. */
static char *
make_folder (void)
{
  g_autoptr(GError) error = NULL;
  char *folder = g_dir_make_tmp ("lapwing-XXXXXX", &error);

  g_assert_no_error (error);
  g_assert_cmpint (g_chmod (folder, 0755), ==, 0);
  return folder;
}

/* Runs `lapwing check @path`; returns its exit status. */
static int
run_check (const char *path, char **out, char **err)
{
  const char *const argv[] = { g_getenv ("LAP_PROGRAM"), "check", path, NULL };
  g_autoptr(GError) error = NULL;
  g_autoptr(GSubprocess) process =
    g_subprocess_newv (argv, G_SUBPROCESS_FLAGS_STDOUT_PIPE | G_SUBPROCESS_FLAGS_STDERR_PIPE, &error);

  g_assert_no_error (error);
  g_subprocess_communicate_utf8 (process, NULL, NULL, out, err, &error);
  g_assert_no_error (error);
  g_assert_true (g_subprocess_get_if_exited (process));
  return g_subprocess_get_exit_status (process);
}

static void
assert_refused (const char *path, const char *place, const char *what)
{
  g_autofree char *out = NULL, *err = NULL;
  int status = run_check (path, &out, &err);
  g_autofree char *head = g_strdup_printf ("lapwing: %s: %s%s", path, place, *place != '\0' ? ": " : "");

  if (status != 3 || *out != '\0' || !g_str_has_prefix (err, head)
      || strchr (err, '\n') != err + strlen (err) - 1
      || strlen (err) < strlen (head) + 8)
    g_error ("%.200s\nexpected it refused: %s\nexit %d\n%s%s", what, place, status, out, err);
}

static char *
quoted (const char *text)
{
  return g_strdelimit (g_strdup (text), "'", '"');
}

static void
refuse_bytes (const char *folder, const char *bytes, gssize length, const char *place)
{
  g_autofree char *path = g_build_filename (folder, "plan.lapwing", NULL);
  g_autoptr(GError) error = NULL;

  g_file_set_contents (path, bytes, length, &error);
  g_assert_no_error (error);
  assert_refused (path, place, bytes);
  g_assert_cmpint (g_remove (path), ==, 0);
}

/* Each text of @rows put into @frame, a session with a %s on the line that the places name. */
static void
refuse_rows (const char *frame, const Row *rows, guint n)
{
  g_autofree char *folder = make_folder ();

  for (guint i = 0; i < n; i++)
    {
      g_autofree char *text = g_strdup_printf (frame, rows[i].text);
      g_autofree char *json = quoted (text);

      refuse_bytes (folder, json, -1, rows[i].place);
    }
  g_rmdir (folder);
}

#define HEAD "'format': 'lapwing-session', 'version': 1, 'id': 'i', 'title': 't'"

static void
test_whole (void)
{
  static const Row rows[] = {
    { "", "line 1" },
    { " \n ", "line 2" },
    { "null", "line 1" },
    { "[]", "line 1" },
    { "'lapwing-session'", "line 1" },
    { "{}", "line 1" },
    { "{" HEAD "}", "line 1" },
    { "{\n" HEAD ", 'parts': {}}", "line 2, /parts" },
    { "{\n" HEAD ", 'parts': null}", "line 2, /parts" },
    { "{\n" HEAD ", 'parts': [\n5]}", "line 3, /parts/0" },
    { "{\n" HEAD ", 'parts': [\n{'kind': 'main'}]}", "line 3, /parts/0" },
    { "{\n" HEAD ", 'parts': [\n{'blocks': []}]}", "line 3, /parts/0" },
    { "{\n" HEAD ", 'parts': [\n{'kind': 'middle', 'blocks': []}]}", "line 3, /parts/0/kind" },
    { "{\n" HEAD ", 'parts': [\n{'kind': 'main', 'blocks': {}}]}", "line 3, /parts/0/blocks" },
    { "{'version': 1, 'id': 'i', 'title': 't', 'parts': []}", "line 1" },
    { "{'format': 'lapwing-session', 'id': 'i', 'title': 't', 'parts': []}", "line 1" },
    { "{'format': 'lapwing-session', 'version': 1, 'title': 't', 'parts': []}", "line 1" },
    { "{'format': 'lapwing-session', 'version': 1, 'id': 'i', 'parts': []}", "line 1" },
    { "{\n'format': 'lapwing-song', 'version': 1, 'id': 'i', 'title': 't', 'parts': []}", "line 2, /format" },
    { "{'format': 'lapwing-week', 'version': 1, 'id': 'i', 'title': 't', 'parts': []}", "line 1" },
    { "{\n'format': 'lapwing-session', 'version': 0, 'id': 'i', 'title': 't', 'parts': []}",
      "line 2, /version" },
    { "{\n'format': 'lapwing-session', 'version': 1.5, 'id': 'i', 'title': 't', 'parts': []}",
      "line 2, /version" },
    { "{\n'format': 'lapwing-session', 'version': '1', 'id': 'i', 'title': 't', 'parts': []}",
      "line 2, /version" },
    { "{\n'format': 'lapwing-session', 'version': 1, 'id': '', 'title': 't', 'parts': []}", "line 2, /id" },
    { "{\n'format': 'lapwing-session', 'version': 1, 'id': 7, 'title': 't', 'parts': []}", "line 2, /id" },
    { "{\n'format': 'lapwing-session', 'version': 1, 'id': 'i', 'title': null, 'parts': []}",
      "line 2, /title" },
    /* Cut short, comments, octal, a name used twice, two roots. */
    { "{" HEAD ", 'parts': [", "line 1, /parts/0" },
    { "{\n// a plan\n" HEAD ", 'parts': []}", "line 2" },
    { "{" HEAD ",\n'target': 010, 'parts': []}", "line 2, /target" },
    { "{" HEAD ",\n'title': 't', 'parts': []}", "line 2, /title" },
    { "{" HEAD ", 'parts': []}\n{}", "line 2" },
    { "{" HEAD ",\n'notes': 'a\\u0000b', 'parts': []}", "line 2, /notes" },
    { "{" HEAD ",\n'notes': '\xe9', 'parts': []}", "line 2, /notes" },
    { "\xef\xbb\xbf{" HEAD ", 'parts': []}", "line 1" },
  };

  refuse_rows ("%s", rows, G_N_ELEMENTS (rows));
}

static void
test_session (void)
{
#define AT(pointer) "line 3, /" pointer
  static const Row rows[] = {
    { "'target': -1", AT ("target") }, { "'target': 43201", AT ("target") },
    { "'target': 1.5", AT ("target") },
    { "'target': '60'", AT ("target") }, { "'target': null", AT ("target") },
    { "'target': true", AT ("target") },
    { "'target': [60]", AT ("target") }, { "'target': 9223372036854775807", AT ("target") },
    { "'target': 9223372036854775808", AT ("target") }, { "'target': 1e308", AT ("target") },
    { "'target': 1e999", AT ("target") }, { "'coach': 5", AT ("coach") }, { "'coach': null", AT ("coach") },
    { "'focus': ['knees']", AT ("focus/0") }, { "'focus': ['thighs', 'thighs']", AT ("focus/1") },
    { "'focus': 'thighs'", AT ("focus") }, { "'focus': [5]", AT ("focus/0") },
    { "'kit': ['sofa']", AT ("kit/0") }, { "'kit': ['mat', 'mat']", AT ("kit/1") },
    { "'kit': 'mat'", AT ("kit") },
    { "'kit': {'mat': -1}", AT ("kit/mat") }, { "'kit': {'mat': 1.5}", AT ("kit/mat") },
    { "'kit': {'mat': 10001}", AT ("kit/mat") }, { "'kit': {'mat': true}", AT ("kit/mat") },
    { "'space': []", AT ("space") }, { "'space': {'width': -1}", AT ("space/width") },
    { "'space': {'length': '2'}", AT ("space/length") }, { "'space': {'length': 1e9}", AT ("space/length") },
    { "'quiet': 'yes'", AT ("quiet") }, { "'quiet': 1", AT ("quiet") },
    { "'also-for': ['ears']", AT ("also-for/0") },
    { "'group': 5", AT ("group") }, { "'group': {'level': 'good'}", AT ("group/level") },
    { "'group': {'count': 0}", AT ("group/count") }, { "'group': {'count': 2.5}", AT ("group/count") },
    { "'group': {'age': 4}", AT ("group/age") }, { "'group': {'age': -40}", AT ("group/age") },
    { "'group': {'mass': 0}", AT ("group/mass") },
    { "'group': {'rest-pulse': 300}", AT ("group/rest-pulse") },
    { "'group': {'fitness': 1}", AT ("group/fitness") }, { "'band': {'low': -0.1}", AT ("band/low") },
    { "'band': {'high': 1.1}", AT ("band/high") }, { "'band': {'low': 0.9, 'high': 0.4}", AT ("band") },
    { "'talk': {'voice': 0}", AT ("talk/voice") }, { "'talk': {'rest': 11}", AT ("talk/rest") },
    { "'change': -1", AT ("change") }, { "'change': 11", AT ("change") },
    { "'film': {'lens': 0}", AT ("film/lens") },
    { "'film': {'frame': 'square'}", AT ("film/frame") }, { "'film': {'fps': 0}", AT ("film/fps") },
    { "'film': {'sound': 'loud'}", AT ("film/sound") }, { "'film': {'lead': -1}", AT ("film/lead") },
    { "'fine': 'all'", AT ("fine") }, { "'fine': [5]", AT ("fine/0") },
    { "'exercises': {}", AT ("exercises") },
    { "'exercises': [5]", AT ("exercises/0") }, { "'exercises': [{'id': 'x'}]", AT ("exercises/0") },
    { "'takes': [{}]", AT ("takes/0") },
    { "'takes': [{'at': 'x', 'clock': -1, 'mark': 'good'}]", AT ("takes/0/clock") },
  };

  refuse_rows ("{\n" HEAD ",\n%s,\n'parts': []}", rows, G_N_ELEMENTS (rows));
#undef AT
}

static void
test_part (void)
{
#define AT(pointer) "line 4, /parts/0" pointer
  static const Row rows[] = {
    { "'rounds': 0", AT ("/rounds") }, { "'rounds': 101", AT ("/rounds") },
    { "'rounds': -1", AT ("/rounds") },
    { "'rounds': 1.5", AT ("/rounds") }, { "'rounds': 'two'", AT ("/rounds") }, { "'sets': 0", AT ("/sets") },
    { "'sets': 101", AT ("/sets") }, { "'set-rest': -1", AT ("/set-rest") },
    { "'set-rest': 10801", AT ("/set-rest") },
    { "'round-rest': -1", AT ("/round-rest") }, { "'round-rest': 10801", AT ("/round-rest") },
    { "'rest-after': -1", AT ("/rest-after") }, { "'rest-after': 10801", AT ("/rest-after") },
    { "'keep-last-rest': 1", AT ("/keep-last-rest") }, { "'rest-as': 5", AT ("/rest-as") },
    { "'rest-as': ''", AT ("/rest-as") }, { "'steps': {}", AT ("/steps") },
    { "'steps': [5]", AT ("/steps/0") },
    { "'steps': [{'work': 5}]", AT ("/steps/0") },
    { "'steps': [{'work': 0, 'rest': 5}]", AT ("/steps/0/work") },
    { "'steps': [{'work': 5, 'rest': 0}, {'work': 5, 'rest': -5}]", AT ("/steps/1/rest") },
    { "'cap': -1", AT ("/cap") }, { "'cap': 10801", AT ("/cap") }, { "'every': 0", AT ("/every") },
    { "'per-station': 0", AT ("/per-station") }, { "'aim': 'win'", AT ("/aim") },
    { "'run': 'fast'", AT ("/run") },
    { "'title': 5", AT ("/title") }, { "'fine': {}", AT ("/fine") },
  };
  static const Row needs_cap = { "'run': 'own-pace'", "line 3, /parts/0" };
  static const char frame[] = "{\n" HEAD ",\n'parts': [{'kind': 'main',\n%s,\n'blocks': []}]}";

  refuse_rows (frame, rows, G_N_ELEMENTS (rows));
  refuse_rows (frame, &needs_cap, 1);
#undef AT
}

static void
test_block (void)
{
#define AT(pointer) "line 4, /parts/0/blocks/0" pointer
#define SQUAT(more) "{'exercise': 'squat', 'work': 40, " more "}"
  static const Row rows[] = {
    { "5", AT ("") }, { "null", AT ("") }, { "{}", AT ("") }, { "{'work': 40}", AT ("") },
    { "{'exercise': 'squat'}", AT ("") },
    { "{'exercise': null}", AT ("") }, { "{'talk': 'Hello'}", AT ("") }, { "{'pause': 'water'}", AT ("") },
    { "{'talk': 'Hello', 'seconds': 5, 'exercise': 'squat', 'work': 5}", AT ("") },
    { "{'talk': 'Hello', 'pause': 'water', 'seconds': 5}", AT ("") },
    { "{'exercise': 'squat', 'work': 5, 'pause': 'water', 'seconds': 5}", AT ("") },
    { "{'exercise': 'squat', 'work': 0}", AT ("/work") },
    { "{'exercise': 'squat', 'work': 10801}", AT ("/work") },
    { "{'exercise': 'squat', 'work': -40}", AT ("/work") },
    { "{'exercise': 'squat', 'work': '40'}", AT ("/work") },
    { "{'exercise': 'squat', 'work': 40.5}", AT ("/work") },
    { "{'exercise': 'squat', 'work': 4e99}", AT ("/work") },
    { "{'exercise': 5, 'work': 40}", AT ("/exercise") }, { "{'exercise': '', 'work': 40}", AT ("/exercise") },
    { "{'talk': 5, 'seconds': 5}", AT ("/talk") }, { "{'talk': null, 'seconds': 5}", AT ("/talk") },
    { "{'talk': 'Hello', 'seconds': 0}", AT ("/seconds") },
    { "{'pause': '', 'seconds': 10801}", AT ("/seconds") },
    { "{'talk': 'Hello', 'seconds': 5, 'work': 5}", AT ("/work") },
    { SQUAT ("'seconds': 5"), AT ("/seconds") },
    { "{'talk': 'Hello', 'seconds': 5, 'in-round': {'2': {}}}", AT ("/in-round") },
    { SQUAT ("'rest': -1"), AT ("/rest") }, { SQUAT ("'rest': 10801"), AT ("/rest") },
    { SQUAT ("'reps': -1"), AT ("/reps") }, { SQUAT ("'reps': 1001"), AT ("/reps") },
    { SQUAT ("'reps': [10, 8]"), AT ("/reps") },
    { SQUAT ("'reps': [1]"), AT ("/reps") }, { SQUAT ("'reps': [1, 2, 3]"), AT ("/reps") },
    { SQUAT ("'reps': [0, 5]"), AT ("/reps") },
    { SQUAT ("'reps': 'ten'"), AT ("/reps") }, { SQUAT ("'reps': 1.5"), AT ("/reps") },
    { SQUAT ("'reps': [1, null]"), AT ("/reps") },
    { SQUAT ("'tempo': 'slow'"), AT ("/tempo") }, { SQUAT ("'tempo': '3-1'"), AT ("/tempo") },
    { SQUAT ("'tempo': '3-1-1-1'"), AT ("/tempo") }, { SQUAT ("'tempo': 3"), AT ("/tempo") },
    { SQUAT ("'pace': 'fast'"), AT ("/pace") }, { SQUAT ("'pace': null"), AT ("/pace") },
    { SQUAT ("'sides': 'up'"), AT ("/sides") },
    { SQUAT ("'switch': -1"), AT ("/switch") }, { SQUAT ("'option': 'hard'"), AT ("/option") },
    { SQUAT ("'fixed': 'yes'"), AT ("/fixed") }, { SQUAT ("'with': 'friend'"), AT ("/with") },
    { SQUAT ("'say': 'Up!'"), AT ("/say") }, { SQUAT ("'say': {'cues': 'Up!'}"), AT ("/say/cues") },
    { SQUAT ("'say': {'setup': 5}"), AT ("/say/setup") }, { SQUAT ("'note': 5"), AT ("/note") },
    { SQUAT ("'fine': 5"), AT ("/fine") },
    { SQUAT ("'in-round': []"), AT ("/in-round") }, { SQUAT ("'in-round': {'2': 5}"), AT ("/in-round/2") },
    { SQUAT ("'in-round': {'1': {}}"), AT ("/in-round/1") },
    { SQUAT ("'in-round': {'0': {}}"), AT ("/in-round/0") },
    { SQUAT ("'in-round': {'-2': {}}"), AT ("/in-round/-2") },
    { SQUAT ("'in-round': {'02': {}}"), AT ("/in-round/02") },
    { SQUAT ("'in-round': {'two': {}}"), AT ("/in-round/two") },
    { SQUAT ("'in-round': {'4': {}}"), AT ("/in-round/4") },
    { SQUAT ("'in-round': {'99999999999999999999': {}}"), AT ("/in-round/99999999999999999999") },
    { SQUAT ("'in-round': {'2': {'work': 0}}"), AT ("/in-round/2/work") },
    { SQUAT ("'in-round': {'2': {}, '3': {'sides': 'up'}}"), AT ("/in-round/3/sides") },
    /* Read, but not to be laid out. */
    { "{'exercise': 'squat', 'work': 1, 'sides': 'split'}", AT ("") },
    { "{'exercise': 'squat', 'work': 40, 'switch': 39, 'sides': 'split'}", AT ("") },
  };
  static const Row too_long = { "{'exercise': 'squat', 'work': 10800, 'rest': 10800}", "line 3, /parts/0" };
  static const char frame[] = "{\n" HEAD ",\n'parts': [{'kind': 'main', 'rounds': 3, 'blocks': [\n%s\n]}]}";

  refuse_rows (frame, rows, G_N_ELEMENTS (rows));
  refuse_rows (frame, &too_long, 1);
#undef AT
}

/* What is at its limit is read; what is one beyond is not. */
static void
test_long (void)
{
  g_autofree char *folder = make_folder ();
  g_autofree char *letters = g_strnfill (9999, 'a');
  g_autofree char *brackets = g_strnfill (100000, '[');
  g_autoptr(GString) deep = g_string_new ("line 1, ");

  for (int more = 0; more < 2; more++)
    {
      g_autofree char *text = g_strdup_printf ("{" HEAD ",\n'notes': 'é%s%s', 'parts': []}", letters,
                                               more ? "b" : "");
      g_autofree char *json = quoted (text);
      g_autoptr(GBytes) bytes = g_bytes_new (json, strlen (json));
      g_autoptr(LapSession) session = lap_session_from_bytes (bytes, NULL);

      g_assert_true ((session != NULL) == (more == 0));
      if (more)
        refuse_bytes (folder, json, -1, "line 2, /notes");
    }
  for (int i = 0; i < 64; i++)
    g_string_append (deep, "/0");
  refuse_bytes (folder, brackets, -1, deep->str);
  refuse_bytes (folder, "{}\0", 3, "line 1");
  g_rmdir (folder);
}

/* Names that are chosen to disturb a terminal or to fill it: the answer is still one short line. */
static void
test_names (void)
{
  g_autofree char *folder = make_folder ();
  g_autofree char *path = g_build_filename (folder, "plan.lapwing", NULL);
  g_autofree char *letters = g_strnfill (5000, 'r');
  const char *const names[] = { "a\\nb", "\\u001b[2J", "\\u0085", letters };

  for (guint i = 0; i < G_N_ELEMENTS (names); i++)
    {
      g_autofree char *text = g_strdup_printf ("{" HEAD ", 'parts': [{'kind': 'main', 'rounds': 2, 'blocks': ["
                                               "{'exercise': 'squat', 'work': 40, 'in-round': {'%s': {}}}"
                                               "]}]}", names[i]);
      g_autofree char *json = quoted (text);
      g_autofree char *out = NULL, *err = NULL;

      g_assert_true (g_file_set_contents (path, json, -1, NULL));
      g_assert_cmpint (run_check (path, &out, &err), ==, 3);
      g_assert_cmpuint (strlen (err), <, 500);
      for (const char *at = err; *at != '\0'; at = g_utf8_next_char (at))
        g_assert_true (g_unichar_isprint (g_utf8_get_char (at)) || at == err + strlen (err) - 1);
    }
  g_remove (path);
  g_rmdir (folder);
}

static void
test_not_a_file (void)
{
  g_autofree char *folder = make_folder ();
  g_autofree char *fifo = g_build_filename (folder, "fifo", NULL);
  g_autofree char *large = g_build_filename (folder, "large.lapwing", NULL);
  g_autofree char *missing = g_build_filename (folder, "missing.lapwing", NULL);
  g_autofree char *below = g_build_filename (large, "below", NULL);
  g_autofree char *link = g_build_filename (folder, "link", NULL);
  int fd;

  g_assert_cmpint (mkfifo (fifo, 0644), ==, 0);
  fd = g_creat (large, 0644);
  g_assert_cmpint (ftruncate (fd, SPARSE_SIZE), ==, 0);
  g_close (fd, NULL);
  g_assert_cmpint (symlink (link, link), ==, 0);

  assert_refused (folder, "", "a folder");
  /* Nobody writes into it: who waits for that waits for ever. */
  assert_refused (fifo, "", "a pipe");
  assert_refused (large, "", "200 MB");
  assert_refused (missing, "", "no such file");
  assert_refused (below, "", "a file as a folder");
  assert_refused (link, "", "a link to itself");
  assert_refused ("/dev/zero", "", "a device");

  g_remove (fifo);
  g_remove (large);
  g_remove (link);
  g_rmdir (folder);
}

/* In a child that gives up its rights where it has them all: 0 when the file was refused as it should be. */
static int
read_as_nobody (const char *path)
{
  g_autoptr(GError) error = NULL;

  if (geteuid () == 0 && (setgroups (0, NULL) != 0 || setgid (NOBODY) != 0 || setuid (NOBODY) != 0))
    return 2;
  if (lap_read_file (path, NULL, &error) != NULL)
    return 3;
  return lap_error_exit_code (error) == 3 && g_str_has_prefix (error->message, path) ? 0 : 4;
}

static void
test_no_permission (void)
{
  g_autofree char *folder = make_folder ();
  g_autofree char *path = g_build_filename (folder, "secret.lapwing", NULL);
  int status;
  pid_t child;

  g_assert_true (g_file_set_contents (path, "{}", -1, NULL));
  g_assert_cmpint (g_chmod (path, 0), ==, 0);
  child = fork ();
  if (child == 0)
    _exit (read_as_nobody (path));
  g_assert_cmpint (waitpid (child, &status, 0), ==, child);
  g_assert_true (WIFEXITED (status));
  g_assert_cmpint (WEXITSTATUS (status), ==, 0);
  g_remove (path);
  g_rmdir (folder);
}

/* A newer file is read as far as it reads as one of ours, with a warning in one line. */
static void
test_newer (void)
{
  g_autofree char *folder = make_folder ();
  g_autofree char *path = g_build_filename (folder, "newer.lapwing", NULL);
  g_autofree char *good = quoted ("{'format': 'lapwing-session', 'version': 2, 'id': 'i', 'title': 't', "
                                  "'colour': 1, 'parts': []}");
  g_autofree char *bad = quoted ("{'format': 'lapwing-session', 'version': 2, 'id': 'i', 'title': ['t'], "
                                 "'parts': []}");
  g_autofree char *out = NULL, *err = NULL;

  g_assert_true (g_file_set_contents (path, good, -1, NULL));
  g_assert_cmpint (run_check (path, &out, &err), ==, 1);
  g_assert_nonnull (strstr (err, path));
  g_assert_nonnull (strstr (err, "newer version (2)"));
  g_assert_true (strchr (err, '\n') == err + strlen (err) - 1);
  g_assert_cmpstr (out, !=, "");

  g_assert_true (g_file_set_contents (path, bad, -1, NULL));
  assert_refused (path, "line 1, /title", "a newer file that doesn't read as ours");
  g_remove (path);
  g_rmdir (folder);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/bad-files/no-permission", test_no_permission);
  g_test_add_func ("/bad-files/whole", test_whole);
  g_test_add_func ("/bad-files/session", test_session);
  g_test_add_func ("/bad-files/part", test_part);
  g_test_add_func ("/bad-files/block", test_block);
  g_test_add_func ("/bad-files/long", test_long);
  g_test_add_func ("/bad-files/names", test_names);
  g_test_add_func ("/bad-files/not-a-file", test_not_a_file);
  g_test_add_func ("/bad-files/newer", test_newer);
  return g_test_run ();
}
