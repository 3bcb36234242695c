/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What somebody finds who typed when the program was killed: plans typed with the X server's keyboard in programs that
 * end by SIGKILL as soon as their drafts are on the disk, and what the next program offers, answered by keys and mouse.
 */
#include "ui/stories.h"

#include "store/folder.h"
#include "ui/notice.h"

#include <glib/gstdio.h>
#include <signal.h>
#include <string.h>
#include <unistd.h>

#define TYPIST "--typist"
#define TYPED  45 /* seconds of work; 40 before a key was pressed */

/* The plans that are typed at, each by a program of its own; all but the last have a file. */
enum { SAVED, GIVEN_UP, OVERTAKEN, WITHOUT_FILE, N_PLANS };

static const char *const names[N_PLANS] = { "saved.lapwing", "given-up.lapwing", "overtaken.lapwing", NULL };
static const char *const titles[N_PLANS] = { "Saved later", "Given up", "Overtaken", "Thirty on the Mat" };

static char *folder; /* of the files */

static char *
path_of (guint plan)
{
  return names[plan] != NULL ? g_build_filename (folder, names[plan], NULL) : NULL;
}

static char *
drafts_of (pid_t pid)
{
  g_autofree char *name = g_strdup_printf ("lapwing-data-%d", pid);

  return g_build_filename (g_getenv ("HOME"), name, "lapwing", "drafts", NULL);
}

static gboolean
has_draft (const char *path)
{
  g_autoptr (GDir) dir = g_dir_open (path, 0, NULL);
  const char *name;

  while (dir != NULL && (name = g_dir_read_name (dir)) != NULL) {
    g_autofree char *inner = g_build_filename (path, name, NULL);

    if (g_str_has_suffix (name, ".draft") || has_draft (inner))
      return TRUE;
  }
  return FALSE;
}

static gboolean
is_drafted (gpointer path)
{
  return has_draft (path);
}

/* What comes to the disk wakes nobody. */
static gboolean
look_again (gpointer data)
{
  return G_SOURCE_CONTINUE;
}

static int
work_of (LapWindow *window)
{
  return lap_part_nth (lap_session_nth (lap_document_session (lap_window_document (window)), 0), 0)->work;
}

/* In a program of its own, which never comes back. */
static void
type_and_die (int argc, char **argv, const char *path)
{
  g_autofree char *drafts = drafts_of (getpid ());
  LapWindow *window;

  windows_init (&argc, &argv);
  window = *path != '\0' ? windows_open (path) : windows_demo ();
  hands_on (GTK_WINDOW (window));
  stories_tab_to (GTK_WIDGET (windows_blocks (window)));
  hands_press ("Home");
  hands_press ("plus");
  g_timeout_add (20, look_again, NULL);
  hands_until (is_drafted, drafts);
  kill (getpid (), SIGKILL);
}

/* What the typist left lies where this program will look. */
static void
inherit (pid_t from)
{
  g_autofree char *theirs = drafts_of (from), *mine = g_build_filename (windows_data_folder (), "lapwing", "drafts", NULL);
  g_autoptr (GDir) dir = g_dir_open (theirs, 0, NULL);
  const char *name;

  g_assert_nonnull (dir);
  g_assert_cmpint (g_mkdir_with_parents (mine, 0700), ==, 0);
  while ((name = g_dir_read_name (dir)) != NULL) {
    g_autofree char *here = g_build_filename (theirs, name, NULL), *there = g_build_filename (mine, name, NULL);

    g_assert_cmpint (g_rename (here, there), ==, 0);
  }
}

static void
let_type (const char *program, guint plan)
{
  g_autofree char *path = path_of (plan);
  g_autoptr (GError) error = NULL;
  g_autoptr (GSubprocess) typist = NULL;
  pid_t pid;

  if (path != NULL)
    stories_put_plan (path, titles[plan]);
  typist = g_subprocess_new (G_SUBPROCESS_FLAGS_STDOUT_SILENCE, &error, program, TYPIST, path != NULL ? path : "", NULL);
  g_assert_no_error (error);
  pid = g_ascii_strtoll (g_subprocess_get_identifier (typist), NULL, 10);
  g_assert_true (g_subprocess_wait (typist, NULL, NULL));
  g_assert_true (g_subprocess_get_if_signaled (typist));
  g_assert_cmpint (g_subprocess_get_term_sig (typist), ==, SIGKILL);
  inherit (pid);
}

/* The window in which the plan was offered when this program began. */
static LapWindow *
offered (guint plan)
{
  GList *all = gtk_application_get_windows (GTK_APPLICATION (g_application_get_default ()));

  for (GList *l = all; l != NULL; l = l->next)
    if (LAP_IS_WINDOW (l->data) && g_str_equal (stories_title (l->data), titles[plan])) {
      gtk_window_present (l->data);
      windows_settle (l->data);
      hands_on (l->data);
      return l->data;
    }
  g_error ("“%s” was not offered", titles[plan]);
}

static GtkWidget *
notice_of (LapWindow *window)
{
  return windows_find (GTK_WIDGET (window), LAP_TYPE_NOTICE, NULL);
}

static void
test_save (void)
{
  LapWindow *window = offered (SAVED);
  g_autofree char *path = path_of (SAVED), *mine = windows_text (window);

  g_assert_cmpuint (stories_n_windows (), ==, N_PLANS);
  g_assert_cmpint (lap_document_state (lap_window_document (window)), ==, LAP_DOCUMENT_RECOVERED);
  g_assert_cmpint (work_of (window), ==, TYPED);
  rows_by_keys.press (notice_of (window), "Save");
  stories_until_state (window, LAP_DOCUMENT_CLEAN);
  assert_text (path, mine);
  g_assert_false (gtk_widget_get_visible (notice_of (window)));
  windows_close (window);
}

/* The file is as it was before anybody typed. */
static void
test_give_up (void)
{
  LapWindow *window = offered (GIVEN_UP);

  g_assert_cmpint (work_of (window), ==, TYPED);
  rows_by_mouse.press (notice_of (window), "Go back to the file…");
  rows_by_keys.press (GTK_WIDGET (stories_dialog (ADW_TYPE_MESSAGE_DIALOG)), "Go back");
  stories_away (window, ADW_TYPE_MESSAGE_DIALOG);
  stories_until_state (window, LAP_DOCUMENT_CLEAN);
  g_assert_cmpint (work_of (window), ==, 40);
  windows_close (window);
}

/* Somebody else wrote the file after the crash: nothing is written over without a word. */
static void
test_overtaken (void)
{
  LapWindow *window = offered (OVERTAKEN);
  g_autofree char *path = path_of (OVERTAKEN), *theirs = NULL, *mine = windows_text (window);

  g_assert_true (g_file_get_contents (path, &theirs, NULL, NULL));
  g_assert_nonnull (strstr (theirs, "Theirs"));
  hands_press ("<Control>s");
  stories_dialog (ADW_TYPE_MESSAGE_DIALOG);
  hands_press ("Escape");
  stories_away (window, ADW_TYPE_MESSAGE_DIALOG);
  assert_text (path, theirs);
  hands_press ("<Control>s");
  rows_by_keys.press (GTK_WIDGET (stories_dialog (ADW_TYPE_MESSAGE_DIALOG)), "Replace");
  stories_away (window, ADW_TYPE_MESSAGE_DIALOG);
  stories_until_state (window, LAP_DOCUMENT_CLEAN);
  assert_text (path, mine);
  windows_close (window);
}

static void
test_without_file (void)
{
  LapWindow *window = offered (WITHOUT_FILE);
  g_autofree char *path = g_build_filename (folder, "new.lapwing", NULL), *mine = windows_text (window);

  rows_by_keys.press (notice_of (window), "Save");
  stories_dialog (GTK_TYPE_FILE_CHOOSER_DIALOG);
  stories_type_path (path);
  stories_away (window, GTK_TYPE_FILE_CHOOSER_DIALOG);
  stories_until_state (window, LAP_DOCUMENT_CLEAN);
  assert_text (path, mine);
  windows_close (window);
  g_assert_false (has_draft (windows_data_folder ()));
  folder_remove (folder);
}

int
main (int argc, char **argv)
{
  if (argc > 2 && g_str_equal (argv[1], TYPIST))
    type_and_die (argc, argv, argv[2]);
  folder = folder_new ();
  for (guint i = 0; i < N_PLANS; i++)
    let_type (argv[0], i);
  {
    g_autofree char *path = path_of (OVERTAKEN);

    stories_put_plan (path, "Theirs");
  }
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/recovery-stories/save", test_save);
  g_test_add_func ("/ui/recovery-stories/give-up", test_give_up);
  g_test_add_func ("/ui/recovery-stories/overtaken", test_overtaken);
  g_test_add_func ("/ui/recovery-stories/without-file", test_without_file);
  return g_test_run ();
}
