/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The stories of drafts: when there is one, what it holds, and when it goes.
 */
#include "ui/keeper.h"

#include "base/error.h"
#include "store/folder.h"
#include "store/read-file.h"
#include "store/save.h"
#include "ui/plan.h"

#include <glib/gstdio.h>
#include <sys/stat.h>
#include <unistd.h>

typedef struct {
  char        *folder;
  LapDrafts   *drafts;
  LapDocument *document;
  LapKeeper   *keeper;
} Story;

static void
story_begin (Story *story)
{
  g_autoptr (GError) error = NULL;

  story->folder = folder_new ();
  story->drafts = lap_drafts_new (story->folder, &error);
  g_assert_no_error (error);
  story->document = plan_document ();
  story->keeper = lap_keeper_new (story->document, story->drafts, NULL);
}

static void
wait_for (Story *story, guint64 revision)
{
  while (lap_keeper_kept (story->keeper) != revision)
    g_main_context_iteration (NULL, TRUE);
}

static guint64
revision_of (Story *story)
{
  return lap_history_revision (lap_document_history (story->document));
}

/* Ends the program of the story and looks at what the next one finds: @title, or nothing with NULL. */
static void
story_end (Story *story, const char *title)
{
  g_autoptr (LapDrafts) next = NULL;
  g_autoptr (GPtrArray) left = NULL;
  g_autoptr (LapDocument) found = NULL;
  g_autoptr (GError) error = NULL;

  g_clear_object (&story->keeper);
  g_clear_object (&story->document);
  g_clear_pointer (&story->drafts, lap_drafts_free);
  next = lap_drafts_new (story->folder, &error);
  g_assert_no_error (error);
  left = lap_drafts_left (next);
  g_assert_cmpuint (left->len, ==, title != NULL ? 1 : 0);
  if (title != NULL) {
    LapDraft *draft = left->pdata[0];

    found = lap_document_recover (draft->bytes, draft->path, draft->etag, &error);
    g_assert_no_error (error);
    g_assert_cmpstr (lap_document_title (found), ==, title);
    g_assert_cmpint (lap_document_state (found), ==, LAP_DOCUMENT_RECOVERED);
    g_assert_true (lap_document_is_modified (found));
    lap_drafts_remove (next, draft->id);
  }
  g_clear_pointer (&next, lap_drafts_free);
  g_assert_cmpuint (folder_count (story->folder), ==, 0);
  folder_remove (story->folder);
}

static void
saved_cb (GObject *source, GAsyncResult *result, gpointer data)
{
  *(GAsyncResult **) data = g_object_ref (result);
}

static gboolean
save (Story *story, const char *path, GError **error)
{
  g_autoptr (GAsyncResult) result = NULL;

  lap_document_save (story->document, path, FALSE, saved_cb, &result);
  while (result == NULL)
    g_main_context_iteration (NULL, TRUE);
  return lap_document_save_finish (story->document, result, error);
}

static void
test_crash (void)
{
  Story story;

  story_begin (&story);
  plan_rename (story.document, "One");
  plan_rename (story.document, "Two");
  wait_for (&story, revision_of (&story));
  /* A draft is no save: what isn't saved is still told so. */
  g_assert_true (lap_document_is_modified (story.document));
  g_assert_cmpint (lap_document_state (story.document), ==, LAP_DOCUMENT_DIRTY);
  g_assert_null (lap_document_path (story.document));
  story_end (&story, "Two");
}

static void
spin (guint milliseconds)
{
  gboolean over = FALSE;
  gint64 end = g_get_monotonic_time () + milliseconds * 1000;

  while (!over) {
    g_main_context_iteration (NULL, FALSE);
    over = g_get_monotonic_time () > end;
    g_usleep (1000);
  }
}

/* Waits until a draft that is begun now would be written: drafts that were begun before are then, too. */
static void
outwait (Story *story)
{
  g_autoptr (LapDocument) later = plan_document ();
  g_autoptr (LapKeeper) keeper = lap_keeper_new (later, story->drafts, "later");

  plan_rename (later, "Later");
  while (lap_keeper_kept (keeper) == LAP_HISTORY_NEVER)
    g_main_context_iteration (NULL, TRUE);
  lap_keeper_discard (keeper);
}

/* Opening and looking is no change. */
static void
test_unchanged (void)
{
  Story story;

  story_begin (&story);
  outwait (&story);
  g_assert_cmpuint (lap_keeper_kept (story.keeper), ==, LAP_HISTORY_NEVER);
  story_end (&story, NULL);
}

/* A file that is opened, and read again when somebody else wrote it, leaves no draft. */
static void
test_loading (void)
{
  Story story;
  char *elsewhere = folder_new ();
  g_autofree char *path = g_build_filename (elsewhere, "plan.lapwing", NULL), *etag = NULL;
  g_autoptr (LapDocument) theirs = plan_document ();
  g_autoptr (GBytes) bytes = NULL, changed = NULL;
  g_autoptr (GError) error = NULL;

  story_begin (&story);
  g_assert_true (save (&story, path, &error));
  bytes = lap_read_file (path, &etag, &error);
  g_assert_no_error (error);
  g_clear_object (&story.keeper);
  g_object_unref (story.document);
  story.document = lap_document_from_file (bytes, path, etag, &error);
  g_assert_no_error (error);
  story.keeper = lap_keeper_new (story.document, story.drafts, NULL);
  outwait (&story);
  g_assert_cmpuint (lap_keeper_kept (story.keeper), ==, LAP_HISTORY_NEVER);
  plan_rename (theirs, "Theirs");
  changed = lap_document_bytes (theirs);
  g_assert_true (g_file_set_contents (path, g_bytes_get_data (changed, NULL), g_bytes_get_size (changed), NULL));
  g_assert_true (lap_document_reload (story.document, &error));
  g_assert_cmpstr (lap_document_title (story.document), ==, "Theirs");
  outwait (&story);
  g_assert_cmpuint (lap_keeper_kept (story.keeper), ==, LAP_HISTORY_NEVER);
  story_end (&story, NULL);
  folder_remove (elsewhere);
}

static void
test_undone (void)
{
  Story story;

  story_begin (&story);
  plan_rename (story.document, "One");
  wait_for (&story, revision_of (&story));
  lap_document_undo (story.document);
  wait_for (&story, LAP_HISTORY_NEVER);
  story_end (&story, NULL);
}

/* Somebody who never pauses: each change comes before the wait of the one before is over. */
static void
test_restless (void)
{
  Story story;

  story_begin (&story);
  for (int i = 0; lap_keeper_kept (story.keeper) == LAP_HISTORY_NEVER; i++) {
    g_autofree char *title = g_strdup_printf ("Change %d", i);

    g_assert_cmpint (i, <, 1000);
    plan_rename (story.document, title);
    spin (LAP_KEEPER_WAIT / 20);
  }
  plan_rename (story.document, "Last");
  wait_for (&story, revision_of (&story));
  story_end (&story, "Last");
}

static void
test_discarded (void)
{
  Story story;

  story_begin (&story);
  plan_rename (story.document, "One");
  wait_for (&story, revision_of (&story));
  lap_keeper_discard (story.keeper);
  story_end (&story, NULL);
}

/* While its draft is on the way to the disk. */
static void
test_discarded_early (void)
{
  Story story;
  gpointer keeper;

  story_begin (&story);
  plan_rename (story.document, "One");
  spin (LAP_KEEPER_WAIT);
  keeper = story.keeper;
  g_object_add_weak_pointer (keeper, &keeper);
  lap_keeper_discard (story.keeper);
  g_clear_object (&story.keeper);
  while (keeper != NULL)
    g_main_context_iteration (NULL, TRUE);
  story_end (&story, NULL);
}

static void
test_saved (void)
{
  Story story;
  char *elsewhere = folder_new ();
  g_autofree char *path = g_build_filename (elsewhere, "plan.lapwing", NULL);
  g_autoptr (GError) error = NULL;

  story_begin (&story);
  plan_rename (story.document, "One");
  wait_for (&story, revision_of (&story));
  g_assert_true (save (&story, path, &error));
  wait_for (&story, LAP_HISTORY_NEVER);
  story_end (&story, NULL);
  folder_remove (elsewhere);
}

/* The draft goes only when the file has what it held; and the old file is whole. */
static void
test_not_saved (void)
{
  Story story;
  char *elsewhere = folder_new ();
  g_autofree char *path = g_build_filename (elsewhere, "plan.lapwing", NULL);
  g_autofree char *pipe = g_build_filename (elsewhere, "pipe", NULL);
  g_autoptr (GError) error = NULL;

  story_begin (&story);
  put_text (path, "old");
  g_assert_true (g_chmod (path, 0444) == 0);
  plan_rename (story.document, "One");
  wait_for (&story, revision_of (&story));
  if (geteuid () != 0) {
    g_assert_false (save (&story, path, &error));
    g_assert_error (error, LAP_ERROR, LAP_ERROR_UNWRITABLE);
    assert_text (path, "old");
  }
  /* A pipe of our own: no test touches what the machine has. */
  g_assert_cmpint (mkfifo (pipe, 0600), ==, 0);
  g_assert_false (save (&story, pipe, NULL));
  spin (LAP_KEEPER_WAIT);
  g_assert_cmpuint (lap_keeper_kept (story.keeper), ==, revision_of (&story));
  story_end (&story, "One");
  folder_remove (elsewhere);
}

/* What a crash left knows which file it was a draft of, and that somebody else wrote it meanwhile. */
static void
test_changed_meanwhile (void)
{
  Story story;
  char *elsewhere = folder_new ();
  g_autofree char *path = g_build_filename (elsewhere, "plan.lapwing", NULL);
  g_autoptr (GBytes) bytes = NULL;
  g_autoptr (GError) error = NULL;

  story_begin (&story);
  g_assert_true (save (&story, path, &error));
  bytes = lap_document_bytes (story.document);
  g_clear_object (&story.keeper);
  {
    g_autofree char *etag = g_strdup (lap_document_etag (story.document));

    g_object_unref (story.document);
    story.document = lap_document_recover (bytes, path, etag, &error);
  }
  g_assert_no_error (error);
  story.keeper = lap_keeper_new (story.document, story.drafts, "back");
  g_assert_cmpstr (lap_document_path (story.document), ==, path);
  g_assert_cmpint (g_unlink (path), ==, 0);
  put_text (path, "somebody else's");
  g_assert_false (save (&story, NULL, &error));
  g_assert_error (error, LAP_ERROR, LAP_ERROR_CHANGED);
  assert_text (path, "somebody else's");
  lap_keeper_discard (story.keeper);
  story_end (&story, NULL);
  folder_remove (elsewhere);
}

static void
told_cb (LapDocument *document, const char *text, gboolean undoable, char **told)
{
  if (g_str_has_prefix (text, "No draft")) {
    g_assert_null (*told);
    *told = g_strdup (text);
  }
}

/* A full or vanished disk is told once, and doesn't stop the work. */
static void
test_no_room (void)
{
  Story story;
  g_autofree char *told = NULL;

  story_begin (&story);
  g_signal_connect (story.document, "told", G_CALLBACK (told_cb), &told);
  folder_remove (g_strdup (story.folder));
  for (int i = 0; i < 2; i++) {
    plan_rename (story.document, i == 0 ? "One" : "Two");
    spin (LAP_KEEPER_WAIT + 200);
  }
  g_assert_nonnull (told);
  g_assert_cmpint (g_mkdir (story.folder, 0700), ==, 0);
  story_end (&story, NULL);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/keeper/crash", test_crash);
  g_test_add_func ("/keeper/unchanged", test_unchanged);
  g_test_add_func ("/keeper/loading", test_loading);
  g_test_add_func ("/keeper/undone", test_undone);
  g_test_add_func ("/keeper/restless", test_restless);
  g_test_add_func ("/keeper/discarded", test_discarded);
  g_test_add_func ("/keeper/discarded-early", test_discarded_early);
  g_test_add_func ("/keeper/saved", test_saved);
  g_test_add_func ("/keeper/not-saved", test_not_saved);
  g_test_add_func ("/keeper/changed-meanwhile", test_changed_meanwhile);
  g_test_add_func ("/keeper/no-room", test_no_room);
  return g_test_run ();
}
