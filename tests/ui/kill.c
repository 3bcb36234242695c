/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Editing that is killed at a random moment: what is found afterwards is a whole document, not older than the last
 * draft that the program knew to be on the disk. Ten programs at once, each with drafts of its own under one
 * folder; 20 kills, 500 where LAP_LONG is set.
 */
#include "store/folder.h"
#include "ui/keeper.h"
#include "ui/plan.h"

#include <signal.h>
#include <stdio.h>
#include <sys/wait.h>
#include <unistd.h>

#define PROGRAMS 10
#define EDIT_EVERY 3 /* milliseconds */

typedef struct {
  LapDocument *document;
  LapKeeper   *keeper;
  guint64      told;
  int          out, edits, number;
} Program;

static gboolean
edit_cb (gpointer data)
{
  Program *program = data;
  guint64 kept = lap_keeper_kept (program->keeper);
  g_autofree char *title = g_strdup_printf ("%d after %d", program->number, ++program->edits);

  plan_rename (program->document, title);
  /* A change is a revision: the draft of revision n has the title of n edits. */
  if (kept != LAP_HISTORY_NEVER && kept != program->told) {
    program->told = kept;
    if (write (program->out, &kept, sizeof kept) != sizeof kept)
      _exit (1);
  }
  return G_SOURCE_CONTINUE;
}

static void
run_program (const char *folder, int number, int out)
{
  Program program = { .document = plan_document (), .out = out, .number = number };
  LapDrafts *drafts = lap_drafts_new (folder, NULL);

  /* GLib's tests give all programs the same chance; drafts of different documents have different names. */
  g_random_set_seed (number);
  program.keeper = lap_keeper_new (program.document, drafts, NULL);
  g_timeout_add (EDIT_EVERY, edit_cb, &program);
  for (;;)
    g_main_context_iteration (NULL, TRUE);
}

typedef struct {
  pid_t   pid;
  int     in;
  guint64 known; /* the last draft it said it has */
} Child;

static void
start_all (const char *folder, Child *children)
{
  for (int i = 0; i < PROGRAMS; i++) {
    int ends[2];

    g_assert_cmpint (pipe (ends), ==, 0);
    children[i] = (Child) { fork (), ends[0], 0 };
    g_assert_cmpint (children[i].pid, >=, 0);
    if (children[i].pid == 0)
      run_program (folder, i, ends[1]);
    close (ends[1]);
  }
}

/* Half of them are let live until they have a draft. */
static void
kill_all (Child *children)
{
  for (int i = 0; i < PROGRAMS; i++) {
    if (i % 2 == 0)
      g_assert_cmpint (read (children[i].in, &children[i].known, sizeof (guint64)), ==, sizeof (guint64));
    g_usleep (g_test_rand_int_range (0, 1000 * LAP_KEEPER_WAIT / PROGRAMS));
    g_assert_cmpint (kill (children[i].pid, SIGKILL), ==, 0);
    g_assert_cmpint (waitpid (children[i].pid, NULL, 0), ==, children[i].pid);
    while (read (children[i].in, &children[i].known, sizeof (guint64)) == sizeof (guint64))
      ;
    close (children[i].in);
  }
}

static void
look_at (LapDraft *draft, Child *children)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (LapDocument) document = lap_document_recover (draft->bytes, draft->path, draft->etag, &error);
  int number, edits;

  g_assert_no_error (error);
  g_assert_cmpint (sscanf (lap_document_title (document), "%d after %d", &number, &edits), ==, 2);
  g_assert_cmpuint (edits, >=, children[number].known);
  children[number].known = 0; /* found */
}

static void
test_kill (void)
{
  int rounds = g_getenv ("LAP_LONG") != NULL ? 500 / PROGRAMS : 20 / PROGRAMS;
  guint found = 0;

  for (int i = 0; i < rounds; i++) {
    char *folder = folder_new ();
    Child children[PROGRAMS];
    g_autoptr (LapDrafts) drafts = NULL;
    g_autoptr (GPtrArray) left = NULL;

    start_all (folder, children);
    kill_all (children);
    drafts = lap_drafts_new (folder, NULL);
    left = lap_drafts_left (drafts);
    found += left->len;
    for (guint j = 0; j < left->len; j++)
      look_at (left->pdata[j], children);
    for (int j = 0; j < PROGRAMS; j++)
      g_assert_cmpuint (children[j].known, ==, 0);
    folder_remove (folder);
  }
  g_assert_cmpuint (found, >=, rounds * PROGRAMS / 2);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/kill/while-editing", test_kill);
  return g_test_run ();
}
