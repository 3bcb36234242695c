/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Drafts through the end of the program that wrote them: each "program" here is a process that ends without a word,
 * as a crash or a kill ends it.
 */
#include "store/drafts.h"

#include "base/error.h"
#include "store/folder.h"

#include <glib/gstdio.h>
#include <signal.h>
#include <string.h>
#include <sys/wait.h>
#include <unistd.h>
#include <utime.h>

static void
write_text (LapDrafts *drafts, const char *id, const char *path, const char *text)
{
  g_autoptr (GBytes) bytes = g_bytes_new (text, strlen (text));
  g_autoptr (GError) error = NULL;

  g_assert_true (lap_drafts_write (drafts, id, path, path != NULL ? "12.5-7" : NULL, bytes, &error));
  g_assert_no_error (error);
}

static LapDrafts *
drafts_new (const char *folder)
{
  g_autoptr (GError) error = NULL;
  LapDrafts *drafts = lap_drafts_new (folder, &error);

  g_assert_no_error (error);
  return drafts;
}

/* Lets a program write @text as the draft @id and end at once. */
static void
crash_with (const char *folder, const char *id, const char *path, const char *text)
{
  pid_t child = fork ();
  int status;

  g_assert_cmpint (child, >=, 0);
  if (child == 0) {
    write_text (drafts_new (folder), id, path, text);
    _exit (0);
  }
  g_assert_cmpint (waitpid (child, &status, 0), ==, child);
  g_assert_cmpint (status, ==, 0);
}

static void
assert_draft (LapDraft *draft, const char *id, const char *path, const char *text)
{
  g_assert_cmpstr (draft->id, ==, id);
  g_assert_cmpstr (draft->path, ==, path);
  g_assert_cmpstr (draft->etag, ==, path != NULL ? "12.5-7" : NULL);
  g_assert_cmpmem (g_bytes_get_data (draft->bytes, NULL), g_bytes_get_size (draft->bytes), text, strlen (text));
}

static void
test_crash (void)
{
  char *folder = folder_new ();
  const char *odd = "/tmp/a line\nand \xff bytes.lapwing";

  crash_with (folder, "one", NULL, "first\nlines");
  crash_with (folder, "two", odd, "second");
  for (int i = 0; i < 2; i++) {
    /* Found again as long as nobody removed them: a crash while they are offered loses nothing. */
    LapDrafts *drafts = drafts_new (folder);
    g_autoptr (GPtrArray) left = lap_drafts_left (drafts);

    g_assert_cmpuint (left->len, ==, 2);
    assert_draft (left->pdata[0], "one", NULL, "first\nlines");
    assert_draft (left->pdata[1], "two", odd, "second");
    lap_drafts_free (drafts);
  }
  folder_remove (folder);
}

static void
test_removed (void)
{
  char *folder = folder_new ();
  LapDrafts *drafts;

  crash_with (folder, "one", NULL, "first");
  drafts = drafts_new (folder);
  g_ptr_array_unref (lap_drafts_left (drafts));
  write_text (drafts, "one", NULL, "again");
  lap_drafts_remove (drafts, "one");
  lap_drafts_remove (drafts, "never there");
  lap_drafts_free (drafts);
  g_assert_cmpuint (folder_count (folder), ==, 0);
  folder_remove (folder);
}

/* What another program still has open is not taken from it. */
static void
test_living (void)
{
  char *folder = folder_new ();
  g_autoptr (LapDrafts) mine = drafts_new (folder), other = NULL;
  g_autoptr (GPtrArray) left = NULL;
  int ready[2];
  char byte;
  pid_t child;

  g_assert_cmpint (pipe (ready), ==, 0);
  child = fork ();
  g_assert_cmpint (child, >=, 0);
  if (child == 0) {
    other = drafts_new (folder);
    write_text (other, "one", NULL, "first");
    g_assert_cmpint (write (ready[1], "r", 1), ==, 1);
    for (;;)
      pause ();
  }
  g_assert_cmpint (read (ready[0], &byte, 1), ==, 1);
  left = lap_drafts_left (mine);
  g_assert_cmpuint (left->len, ==, 0);
  g_clear_pointer (&left, g_ptr_array_unref);
  kill (child, SIGKILL);
  g_assert_cmpint (waitpid (child, NULL, 0), ==, child);
  left = lap_drafts_left (mine);
  g_assert_cmpuint (left->len, ==, 1);
  lap_drafts_remove (mine, "one");
  close (ready[0]);
  close (ready[1]);
  g_clear_pointer (&mine, lap_drafts_free);
  folder_remove (folder);
}

/* Copies one folder of drafts to another, as a backup that was put back would, and makes it @older by so much. */
static void
double_up (const char *folder, const char *text, int older)
{
  g_autofree char *second = g_build_filename (folder, "second", NULL);
  g_autofree char *file = g_build_filename (second, "one.draft", NULL);
  g_autofree char *whole = g_strconcat ("lapwing-draft 1\n\n\n", text, NULL);
  struct utimbuf times = { time (NULL) - older, time (NULL) - older };

  g_assert_cmpint (g_mkdir (second, 0700), ==, 0);
  put_text (file, whole);
  g_assert_cmpint (utime (file, &times), ==, 0);
}

static void
test_twice (gconstpointer data)
{
  int older = GPOINTER_TO_INT (data);
  char *folder = folder_new ();
  g_autoptr (LapDrafts) drafts = NULL;
  g_autoptr (GPtrArray) left = NULL;

  crash_with (folder, "one", NULL, "mine");
  double_up (folder, "other", older);
  drafts = drafts_new (folder);
  left = lap_drafts_left (drafts);
  g_assert_cmpuint (left->len, ==, 1);
  assert_draft (left->pdata[0], "one", NULL, older > 0 ? "mine" : "other");
  folder_remove (folder);
}

static void
test_not_a_draft (void)
{
  char *folder = folder_new ();
  g_autofree char *inside = g_build_filename (folder, "second", NULL);
  g_autofree char *file = g_build_filename (inside, "x.draft", NULL);
  g_autoptr (LapDrafts) drafts = drafts_new (folder);
  g_autoptr (GPtrArray) left = NULL;

  g_assert_cmpint (g_mkdir (inside, 0700), ==, 0);
  put_text (file, "lapwing-draft 1\nno more");
  left = lap_drafts_left (drafts);
  g_assert_cmpuint (left->len, ==, 0);
  assert_text (file, "lapwing-draft 1\nno more");
  folder_remove (folder);
}

static int
open_there (const char *path)
{
  g_autoptr (GError) error = NULL;
  g_autofree char *below = g_build_filename (path, "drafts", NULL);

  if (lap_drafts_new (below, &error) != NULL)
    return 1;
  return g_error_matches (error, LAP_ERROR, LAP_ERROR_UNWRITABLE) && strchr (error->message, '\n') == NULL ? 0 : 2;
}

static void
test_unwritable (void)
{
  char *folder = folder_new ();

  g_assert_cmpint (g_chmod (folder, 0555), ==, 0);
  g_assert_cmpint (ask_without_rights (open_there, folder), ==, 0);
  folder_remove (folder);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/drafts/crash", test_crash);
  g_test_add_func ("/drafts/removed", test_removed);
  g_test_add_func ("/drafts/living", test_living);
  g_test_add_data_func ("/drafts/twice-older", GINT_TO_POINTER (100), test_twice);
  g_test_add_data_func ("/drafts/twice-newer", GINT_TO_POINTER (-100), test_twice);
  g_test_add_func ("/drafts/not-a-draft", test_not_a_draft);
  g_test_add_func ("/drafts/unwritable", test_unwritable);
  return g_test_run ();
}
