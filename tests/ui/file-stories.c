/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What people do with files, with a mouse and a keyboard that the X server makes: save under a name, open, close what
 * isn't saved, go back to the file, take what somebody else wrote or write over it, and meet a file that can't be
 * written.
 */
#include "ui/stories.h"

#include "store/folder.h"
#include "ui/library.h"
#include "ui/notice.h"

#include <string.h>

static gboolean
is_gone (gpointer window)
{
  return *(gpointer *) window == NULL;
}

static GtkWindow *
on_question (const char *heading)
{
  GtkWindow *dialog = stories_dialog (ADW_TYPE_MESSAGE_DIALOG);

  g_assert_cmpstr (adw_message_dialog_get_heading (ADW_MESSAGE_DIALOG (dialog)), ==, heading);
  return dialog;
}

/* A plan without a file is saved by the first Save, which asks where; its name gets the ending. Saved under another
 * name it is another file, and the first stays. */
static void
test_save_as (void)
{
  char *folder = folder_new ();
  g_autofree char *named = g_build_filename (folder, "noon", NULL), *first = g_strconcat (named, ".lapwing", NULL);
  g_autofree char *second = g_build_filename (folder, "evening.lapwing", NULL), *mine = NULL, *before = NULL, *after = NULL;
  LapWindow *window = windows_demo ();
  LapDocument *document = lap_window_document (window);

  hands_on (GTK_WINDOW (window));
  hands_press ("<Control>s");
  stories_dialog (GTK_TYPE_FILE_CHOOSER_DIALOG);
  stories_type_path (named);
  stories_away (window, GTK_TYPE_FILE_CHOOSER_DIALOG);
  stories_until_state (window, LAP_DOCUMENT_CLEAN);
  g_assert_cmpstr (lap_document_path (document), ==, first);
  g_assert_true (g_file_get_contents (first, &before, NULL, NULL));

  stories_tab_to (GTK_WIDGET (windows_blocks (window)));
  hands_press ("plus");
  mine = windows_text (window);
  hands_press ("<Control><Shift>s");
  stories_dialog (GTK_TYPE_FILE_CHOOSER_DIALOG);
  stories_type_path (second);
  stories_away (window, GTK_TYPE_FILE_CHOOSER_DIALOG);
  stories_until_state (window, LAP_DOCUMENT_CLEAN);
  g_assert_cmpstr (lap_document_path (document), ==, second);
  assert_text (second, mine);
  assert_text (first, before);
  windows_close (window);
  folder_remove (folder);
}

/* Nothing is written over without a word: neither under the name that was typed nor under the one it becomes. */
static void
test_save_over (void)
{
  static const char *const typed[] = { "theirs", "theirs.lapwing" };
  char *folder = folder_new ();
  g_autofree char *theirs = g_build_filename (folder, "theirs.lapwing", NULL), *before = NULL, *mine = NULL;
  LapWindow *window = windows_demo ();

  stories_put_plan (theirs, "Theirs");
  g_assert_true (g_file_get_contents (theirs, &before, NULL, NULL));
  mine = windows_text (window);
  hands_on (GTK_WINDOW (window));
  for (guint i = 0; i < G_N_ELEMENTS (typed); i++) {
    g_autofree char *path = g_build_filename (folder, typed[i], NULL);

    hands_press ("<Control><Shift>s");
    stories_dialog (GTK_TYPE_FILE_CHOOSER_DIALOG);
    stories_type_path (path);
    stories_dialog (i == 0 ? ADW_TYPE_MESSAGE_DIALOG : GTK_TYPE_MESSAGE_DIALOG);
    hands_press ("Escape");
    if (i == 0)
      stories_away (window, ADW_TYPE_MESSAGE_DIALOG);
    else {
      stories_away (NULL, GTK_TYPE_MESSAGE_DIALOG);
      stories_dialog (GTK_TYPE_FILE_CHOOSER_DIALOG);
      hands_press ("Escape");
      stories_away (window, GTK_TYPE_FILE_CHOOSER_DIALOG);
    }
    assert_text (theirs, before);
  }
  hands_press ("<Control><Shift>s");
  stories_dialog (GTK_TYPE_FILE_CHOOSER_DIALOG);
  {
    g_autofree char *path = g_build_filename (folder, typed[0], NULL);

    stories_type_path (path);
  }
  rows_by_keys.press (GTK_WIDGET (on_question ("“theirs.lapwing” is there already")), "Replace");
  stories_away (window, ADW_TYPE_MESSAGE_DIALOG);
  stories_until_state (window, LAP_DOCUMENT_CLEAN);
  assert_text (theirs, mine);
  windows_close (window);
  folder_remove (folder);
}

/* By the platform's dialog; what is open already is raised. A window is a document: three files, three windows. */
static void
test_open (void)
{
  char *folder = folder_new ();
  g_autofree char *one = g_build_filename (folder, "one.lapwing", NULL), *two = g_build_filename (folder, "two.lapwing", NULL);
  LapWindow *demo = windows_demo (), *first, *second;

  stories_put_plan (one, "One");
  stories_put_plan (two, "Two");
  hands_on (GTK_WINDOW (demo));
  hands_press ("<Control><Shift>o");
  stories_dialog (GTK_TYPE_FILE_CHOOSER_DIALOG);
  hands_type (one);
  hands_press ("Return");
  first = stories_other (demo);
  g_assert_cmpstr (stories_title (first), ==, "One");
  hands_press ("<Control><Shift>o");
  stories_dialog (GTK_TYPE_FILE_CHOOSER_DIALOG);
  hands_type (two);
  hands_press ("Return");
  stories_away (NULL, GTK_TYPE_FILE_CHOOSER_DIALOG);
  second = LAP_WINDOW (gtk_application_get_active_window (GTK_APPLICATION (g_application_get_default ())));
  hands_on (GTK_WINDOW (second));
  g_assert_cmpstr (stories_title (second), ==, "Two");
  g_assert_cmpuint (stories_n_windows (), ==, 3);
  hands_press ("<Control><Shift>o");
  stories_dialog (GTK_TYPE_FILE_CHOOSER_DIALOG);
  hands_type (one);
  hands_press ("Return");
  stories_away (first, GTK_TYPE_FILE_CHOOSER_DIALOG);
  g_assert_cmpuint (stories_n_windows (), ==, 3);
  windows_close (second);
  windows_close (first);
  windows_close (demo);
  folder_remove (folder);
}

/* Asked about on closing: kept open by Escape, closed without saving by mouse, saved and closed by Enter. */
static void
test_close (void)
{
  char *folder = folder_new ();
  g_autofree char *path = g_build_filename (folder, "plan.lapwing", NULL), *before = NULL, *mine = NULL;
  LapWindow *window = stories_changed_plan (path);

  g_assert_true (g_file_get_contents (path, &before, NULL, NULL));
  hands_press ("<Control>w");
  on_question ("Save “Small” before closing?");
  hands_press ("Escape");
  stories_away (window, ADW_TYPE_MESSAGE_DIALOG);
  g_assert_true (lap_document_is_modified (lap_window_document (window)));
  hands_press ("<Control>w");
  g_object_add_weak_pointer (G_OBJECT (window), (gpointer *) &window);
  rows_click_text (GTK_WIDGET (stories_dialog (ADW_TYPE_MESSAGE_DIALOG)), "Discard");
  hands_until (is_gone, &window);
  assert_text (path, before);

  window = stories_changed_plan (path);
  hands_press ("<Control>w");
  g_object_add_weak_pointer (G_OBJECT (window), (gpointer *) &window);
  stories_dialog (ADW_TYPE_MESSAGE_DIALOG);
  hands_press ("<Alt>d"); /* by its letter */
  hands_until (is_gone, &window);
  assert_text (path, before);

  window = stories_changed_plan (path);
  mine = windows_text (window);
  hands_press ("<Control>w");
  stories_dialog (ADW_TYPE_MESSAGE_DIALOG);
  g_object_add_weak_pointer (G_OBJECT (window), (gpointer *) &window);
  hands_press ("Return");
  hands_until (is_gone, &window);
  assert_text (path, mine);
  folder_remove (folder);
}

/* What never had a file is asked for one before the window goes; given up, the window stays as it was. */
static void
test_close_new (void)
{
  char *folder = folder_new ();
  g_autofree char *path = g_build_filename (folder, "kept.lapwing", NULL), *mine = NULL;
  LapWindow *window = windows_demo ();

  hands_on (GTK_WINDOW (window));
  stories_tab_to (GTK_WIDGET (windows_blocks (window)));
  hands_press ("plus");
  mine = windows_text (window);
  hands_press ("<Control>w");
  stories_dialog (ADW_TYPE_MESSAGE_DIALOG);
  hands_press ("Return");
  stories_dialog (GTK_TYPE_FILE_CHOOSER_DIALOG);
  hands_press ("Escape");
  stories_away (window, GTK_TYPE_FILE_CHOOSER_DIALOG);
  g_assert_true (lap_document_is_modified (lap_window_document (window)));
  hands_press ("<Control>w");
  stories_dialog (ADW_TYPE_MESSAGE_DIALOG);
  hands_press ("Return");
  stories_dialog (GTK_TYPE_FILE_CHOOSER_DIALOG);
  g_object_add_weak_pointer (G_OBJECT (window), (gpointer *) &window);
  stories_type_path (path);
  hands_until (is_gone, &window);
  assert_text (path, mine);
  folder_remove (folder);
}

/* Back to what the file holds, from the menu by mouse; and that by undoing back again. */
static void
test_revert (void)
{
  char *folder = folder_new ();
  g_autofree char *path = g_build_filename (folder, "plan.lapwing", NULL), *mine = NULL, *now = NULL;
  LapWindow *window = stories_changed_plan (path);

  mine = windows_text (window);
  stories_choose (window, "Go back to the file…");
  rows_click_text (GTK_WIDGET (on_question ("Go back to what the file holds?")), "Go back");
  stories_away (window, ADW_TYPE_MESSAGE_DIALOG);
  stories_until_state (window, LAP_DOCUMENT_CLEAN);
  hands_press ("<Control>z");
  now = windows_text (window);
  g_assert_cmpstr (now, ==, mine);
  windows_close (window);
  folder_remove (folder);
}

/* Somebody else's file: taken by the button above the plan, or written over after a question. */
static void
test_theirs (void)
{
  char *folder = folder_new ();
  g_autofree char *path = g_build_filename (folder, "plan.lapwing", NULL), *mine = NULL;
  LapWindow *window = stories_changed_plan (path);
  GtkWidget *notice = windows_find (GTK_WIDGET (window), LAP_TYPE_NOTICE, NULL);

  stories_put_plan (path, "Theirs");
  stories_until_state (window, LAP_DOCUMENT_CHANGED_OUTSIDE);
  mine = windows_text (window);
  rows_click_text (notice, "Save mine…");
  rows_click_text (GTK_WIDGET (on_question ("The file was changed by somebody else")), "Replace");
  stories_away (window, ADW_TYPE_MESSAGE_DIALOG);
  stories_until_state (window, LAP_DOCUMENT_CLEAN);
  assert_text (path, mine);

  stories_put_plan (path, "Theirs");
  stories_until_state (window, LAP_DOCUMENT_CHANGED_OUTSIDE);
  rows_by_keys.press (notice, "Take theirs…");
  rows_by_keys.press (GTK_WIDGET (on_question ("Go back to what the file holds?")), "Go back");
  stories_away (window, ADW_TYPE_MESSAGE_DIALOG);
  stories_until_state (window, LAP_DOCUMENT_CLEAN);
  g_assert_cmpstr (stories_title (window), ==, "Theirs");
  windows_close (window);
  folder_remove (folder);
}

/* Neither of the two is lost: mine goes beside theirs. */
static void
test_beside_theirs (void)
{
  char *folder = folder_new ();
  g_autofree char *path = g_build_filename (folder, "plan.lapwing", NULL), *mine = NULL, *title = NULL;
  g_autofree char *beside = g_build_filename (folder, "mine.lapwing", NULL);
  LapWindow *window = stories_changed_plan (path);

  stories_put_plan (path, "Theirs");
  stories_until_state (window, LAP_DOCUMENT_CHANGED_OUTSIDE);
  mine = windows_text (window);
  hands_press ("<Control>s");
  rows_by_keys.press (GTK_WIDGET (on_question ("The file was changed by somebody else")), "Save a copy…");
  stories_dialog (GTK_TYPE_FILE_CHOOSER_DIALOG);
  stories_type_path (beside);
  stories_away (window, GTK_TYPE_FILE_CHOOSER_DIALOG);
  stories_until_state (window, LAP_DOCUMENT_CLEAN);
  assert_text (beside, mine);
  title = stories_saved_title (path);
  g_assert_cmpstr (title, ==, "Theirs");
  windows_close (window);
  folder_remove (folder);
}

/* The folder of the file has gone, as when a stick is pulled out: that is said, and elsewhere it is saved. */
static void
test_unwritable (void)
{
  char *stick = folder_new (), *folder = folder_new ();
  g_autofree char *path = g_build_filename (stick, "plan.lapwing", NULL), *mine = NULL;
  g_autofree char *other = g_build_filename (folder, "other.lapwing", NULL);
  LapWindow *window = stories_changed_plan (path);

  mine = windows_text (window);
  folder_remove (stick);
  hands_press ("<Control>s");
  on_question ("It couldn’t be saved");
  hands_press ("Return");
  stories_away (window, ADW_TYPE_MESSAGE_DIALOG);
  g_assert_true (lap_document_is_modified (lap_window_document (window)));
  hands_press ("<Control><Shift>s");
  stories_dialog (GTK_TYPE_FILE_CHOOSER_DIALOG);
  stories_type_path (other);
  stories_away (window, GTK_TYPE_FILE_CHOOSER_DIALOG);
  stories_until_state (window, LAP_DOCUMENT_CLEAN);
  assert_text (other, mine);
  windows_close (window);
  folder_remove (folder);
}

/* What a newer program wrote can be looked at; keys change nothing, and saving is refused. */
static void
test_newer (void)
{
  char *folder = folder_new ();
  g_autofree char *path = g_build_filename (folder, "newer.lapwing", NULL), *text = NULL, *before = NULL, *after = NULL;
  g_auto (GStrv) pieces = NULL;
  LapWindow *window;

  stories_put_plan (path, "Newer");
  g_assert_true (g_file_get_contents (path, &text, NULL, NULL));
  pieces = g_strsplit (text, "\"version\": 1", 2);
  g_assert_cmpuint (g_strv_length (pieces), ==, 2);
  g_free (text);
  text = g_strjoinv ("\"version\": 2", pieces);
  g_assert_true (g_file_set_contents (path, text, -1, NULL));
  window = windows_open (path);
  g_assert_cmpint (lap_document_state (lap_window_document (window)), ==, LAP_DOCUMENT_READ_ONLY);
  before = windows_text (window);
  hands_on (GTK_WINDOW (window));
  stories_tab_to (GTK_WIDGET (windows_blocks (window)));
  hands_press ("Home");
  hands_press ("plus");
  hands_press ("Delete");
  hands_press ("<Control>s");
  after = windows_text (window);
  g_assert_cmpstr (after, ==, before);
  assert_text (path, text);
  g_assert_nonnull (strstr (gtk_label_get_text (GTK_LABEL (windows_find (windows_find (GTK_WIDGET (window), LAP_TYPE_NOTICE, NULL),
                                                                         GTK_TYPE_LABEL, "text"))), "A newer version"));
  windows_close (window);
  folder_remove (folder);
}

/* A copy from the menu, by mouse: a window of its own, not saved yet. */
static void
test_duplicate (void)
{
  LapWindow *demo = windows_demo (), *copy;

  hands_on (GTK_WINDOW (demo));
  stories_choose (demo, "Duplicate");
  copy = stories_other (demo);
  g_assert_cmpstr (stories_title (copy), ==, "Thirty on the Mat, copy");
  g_assert_true (lap_document_is_modified (lap_window_document (copy)));
  g_assert_null (lap_document_path (lap_window_document (copy)));
  windows_close (copy);
  windows_close (demo);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/file-stories/save-as", test_save_as);
  g_test_add_func ("/ui/file-stories/save-over", test_save_over);
  g_test_add_func ("/ui/file-stories/open", test_open);
  g_test_add_func ("/ui/file-stories/close", test_close);
  g_test_add_func ("/ui/file-stories/close-new", test_close_new);
  g_test_add_func ("/ui/file-stories/revert", test_revert);
  g_test_add_func ("/ui/file-stories/theirs", test_theirs);
  g_test_add_func ("/ui/file-stories/beside-theirs", test_beside_theirs);
  g_test_add_func ("/ui/file-stories/unwritable", test_unwritable);
  g_test_add_func ("/ui/file-stories/newer", test_newer);
  g_test_add_func ("/ui/file-stories/duplicate", test_duplicate);
  return g_test_run ();
}
