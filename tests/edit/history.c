/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Stories of undo as tables: what is done, and what state, labels and "modified" are afterwards.
 */
#include "edit/history.h"
#include "model/session.h"

#include <string.h>

typedef struct {
  const char *deed;   /* "edit A" sets the title to A by a step called A; "stay", a step that holds nothing */
  const char *title;  /* afterwards */
  gboolean modified;
  const char *undo, *redo; /* labels, or NULL */
} Line;

static const Line simple_story[] = {
  { "edit A", "A", TRUE, "A", NULL },
  { "edit B", "B", TRUE, "B", NULL },
  { "undo", "A", TRUE, "A", "B" },
  { "undo", "0", FALSE, NULL, "A" },
  { "undo", "0", FALSE, NULL, "A" },
  { "redo", "A", TRUE, "A", "B" },
  { "save", "A", FALSE, "A", "B" },
  { "redo", "B", TRUE, "B", NULL },
  { "redo", "B", TRUE, "B", NULL },
  { "undo", "A", FALSE, "A", "B" },
  { "undo", "0", TRUE, NULL, "A" },
  /* What was saved can't be reached again: from here on all is modified. */
  { "edit C", "C", TRUE, "C", NULL },
  { "undo", "0", TRUE, NULL, "C" },
  { "edit A", "A", TRUE, "A", NULL },
  { "save", "A", FALSE, "A", NULL },
  { "stay", "A", FALSE, "A", NULL },
};

static const Line group_story[] = {
  { "edit A", "A", TRUE, "A", NULL },
  { "edit B", "B", TRUE, "B", NULL },
  { "undo", "A", TRUE, "A", "B" },
  { "save", "A", FALSE, "A", "B" },
  /* A drag that is called off leaves even what could be redone. */
  { "begin", "A", FALSE, NULL, NULL },
  { "edit C", "C", TRUE, NULL, NULL },
  { "edit D", "D", TRUE, NULL, NULL },
  { "undo", "D", TRUE, NULL, NULL },
  { "redo", "D", TRUE, NULL, NULL },
  { "cancel", "A", FALSE, "A", "B" },
  /* One that comes back to where it was is no step. */
  { "begin", "A", FALSE, NULL, NULL },
  { "edit C", "C", TRUE, NULL, NULL },
  { "stay", "A", FALSE, NULL, NULL },
  { "end", "A", FALSE, "A", "B" },
  { "begin", "A", FALSE, NULL, NULL },
  { "end", "A", FALSE, "A", "B" },
  { "redo", "B", TRUE, "B", NULL },
  /* One step, whatever lay between. */
  { "begin", "B", TRUE, NULL, NULL },
  { "edit C", "C", TRUE, NULL, NULL },
  { "edit D", "D", TRUE, NULL, NULL },
  { "edit E", "E", TRUE, NULL, NULL },
  { "end", "E", TRUE, "E", NULL },
  { "undo", "B", TRUE, "B", "E" },
  { "undo", "A", FALSE, "A", "B" },
  { "redo", "B", TRUE, "B", "E" },
  { "redo", "E", TRUE, "E", NULL },
};

static void
count (guint *n)
{
  (*n)++;
}

static void
act (LapHistory *history, LapSession *session, const char *deed)
{
  LapEdits *edits;

  if (g_str_has_prefix (deed, "edit "))
    {
      edits = lap_edits_new (deed + strlen ("edit "));
      lap_edits_set_text (edits, session, "title", lap_edits_label (edits));
      lap_history_apply (history, edits);
    }
  else if (g_str_equal (deed, "stay"))
    lap_history_apply (history, lap_edits_new ("nothing"));
  else if (g_str_equal (deed, "undo"))
    lap_history_undo (history);
  else if (g_str_equal (deed, "redo"))
    lap_history_redo (history);
  else if (g_str_equal (deed, "save"))
    lap_history_saved (history, lap_history_revision (history));
  else if (g_str_equal (deed, "begin"))
    lap_history_begin (history);
  else if (g_str_equal (deed, "end"))
    lap_history_end (history);
  else if (g_str_equal (deed, "cancel"))
    lap_history_cancel (history);
  else
    g_assert_not_reached ();
}

static void
tell_story (const Line *lines, guint n)
{
  g_autoptr(LapSession) session = lap_session_new ("0");
  g_autoptr(LapHistory) history = lap_history_new ();
  gboolean open = FALSE;
  guint heard = 0;

  g_signal_connect_swapped (history, "changed", G_CALLBACK (count), &heard);
  g_assert_false (lap_history_modified (history));
  for (guint i = 0; i < n; i++)
    {
      g_autofree char *was = g_strdup (session->title);
      gboolean was_modified = lap_history_modified (history);
      guint before = heard;

      act (history, session, lines[i].deed);
      if (g_str_equal (lines[i].deed, "begin"))
        open = TRUE;
      if (g_str_equal (lines[i].deed, "end") || g_str_equal (lines[i].deed, "cancel"))
        open = FALSE;
      g_test_message ("line %u: %s", i, lines[i].deed);
      g_assert_cmpstr (session->title, ==, lines[i].title);
      g_assert_cmpint (lap_history_modified (history), ==, lines[i].modified);
      g_assert_cmpstr (lap_history_undo_label (history), ==, lines[i].undo);
      g_assert_cmpstr (lap_history_redo_label (history), ==, lines[i].redo);
      g_assert_cmpint (lap_history_is_open (history), ==, open);
      /* Whoever shows the title or a dot for "modified" hears of it, once. */
      g_assert_cmpuint (heard - before, <=, 1);
      if (!g_str_equal (was, session->title) || was_modified != lap_history_modified (history))
        g_assert_cmpuint (heard - before, ==, 1);
    }
}

static void
test_simple (void)
{
  tell_story (simple_story, G_N_ELEMENTS (simple_story));
}

static void
test_group (void)
{
  tell_story (group_story, G_N_ELEMENTS (group_story));
}

/* A file written by a worker: what was done meanwhile isn't saved. */
static void
test_saved_late (void)
{
  g_autoptr(LapSession) session = lap_session_new ("0");
  g_autoptr(LapHistory) history = lap_history_new ();
  guint64 written;

  act (history, session, "edit A");
  written = lap_history_revision (history);
  act (history, session, "edit B");
  lap_history_saved (history, written);
  g_assert_true (lap_history_modified (history));
  act (history, session, "undo");
  g_assert_false (lap_history_modified (history));
}

/* A group swapped twice is as if nothing had been, and positions mean what they meant when it was made. */
static void
test_group_of_edits (void)
{
  g_autoptr(LapPart) part = lap_part_new (LAP_PART_MAIN);
  g_autoptr(LapEdits) edits = lap_edits_new ("All");
  LapEdits *more = lap_edits_new ("More");
  g_autoptr(GBytes) before = lap_object_bytes (part);
  g_autoptr(GBytes) between = NULL;
  g_autoptr(GBytes) after = NULL;
  g_autoptr(GBytes) again = NULL;

  for (guint i = 0; i < 4; i++)
    {
      g_autofree char *note = g_strdup_printf ("%u", i);
      g_autoptr(LapBlock) block = lap_block_new_exercise (note, 40, 20);

      lap_edits_insert (edits, part->blocks, i / 2, block);
      lap_edits_set_int (more, block, "work", 10 * (i + 1));
      lap_edits_set_int (more, block, "work", 20 * (i + 1));
    }
  lap_edits_splice (more, part->blocks, 1, 2, NULL);
  lap_edits_append (edits, more);
  g_assert_cmpuint (lap_edits_n (edits), ==, 4 + 8 + 1);
  g_assert_false (lap_edits_applied (edits));
  lap_edits_swap (edits);
  g_assert_true (lap_edits_applied (edits));
  between = lap_object_bytes (part);
  g_assert_cmpuint (lap_part_n (part), ==, 2);
  /* 0; 1 0; 1 2 0; 1 3 2 0: the two in the middle went. */
  g_assert_cmpstr (lap_part_nth (part, 0)->exercise, ==, "1");
  g_assert_cmpint (lap_part_nth (part, 0)->work, ==, 40);
  g_assert_cmpstr (lap_part_nth (part, 1)->exercise, ==, "0");
  lap_edits_swap (edits);
  after = lap_object_bytes (part);
  g_assert_true (g_bytes_equal (before, after));
  lap_edits_swap (edits);
  again = lap_object_bytes (part);
  g_assert_true (g_bytes_equal (between, again));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/history/simple", test_simple);
  g_test_add_func ("/history/group", test_group);
  g_test_add_func ("/history/saved-late", test_saved_late);
  g_test_add_func ("/history/group-of-edits", test_group_of_edits);
  return g_test_run ();
}
