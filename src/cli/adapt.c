/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * lapwing adapt FILE --for WHOM -o OUT: a version for somebody else, on the same clock.
 */
#include "cli/cli.h"

#include "arrange/adapt.h"
#include "arrange/mend.h"

#include <glib/gi18n-lib.h>

static void
print_swaps (const LapTimeline *timeline, GPtrArray *swaps)
{
  for (guint i = 0; i < swaps->len; i++) {
    const LapSwap *swap = g_ptr_array_index (swaps, i);
    const char *part = lap_part_title (lap_session_nth (timeline->session, swap->part));

    g_print (_("%1$s, block %2$u"), part, swap->block + 1);
    if (swap->round > 0)
      g_print (_(", round %d"), swap->round);
    if (!swap->solved)
      g_print (_(": %1$s stays unsolved: %2$s.\n"), swap->was, swap->reason);
    else if (g_str_equal (swap->was, swap->now))
      g_print (_(": %1$s stays: %2$s.\n"), swap->was, swap->reason);
    else
      g_print (_(": %1$s → %2$s: %3$s.\n"), swap->was, swap->now, swap->reason);
  }
  if (swaps->len == 0)
    g_print ("%s\n", _("Nothing had to change."));
}

static int
run (int argc, char **argv)
{
  g_autofree char *out = NULL, *word = NULL;
  const GOptionEntry entries[] = {
    { "for", 0, 0, G_OPTION_ARG_STRING, &word, N_("Whom to adapt it for"), "WHOM" },
    { "output", 'o', 0, G_OPTION_ARG_FILENAME, &out, N_("Write the adapted session"), "OUT" },
    { NULL },
  };
  g_auto (GStrv) files = NULL;
  g_autoptr (LapTimeline) timeline = NULL;
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (LapCatalogue) suitable = NULL;
  g_autoptr (GPtrArray) swaps = NULL, mended = NULL;
  g_autoptr (LapEdits) edits = NULL;
  int whom, status;

  if (!lap_cli_options (argc, argv, &lap_command_adapt, entries, 1, 1, &files))
    return LAP_ERROR_USAGE;
  whom = word != NULL ? lap_words_find (&lap_fors, word) : -1;
  if (out == NULL || whom < 0)
    return lap_cli_usage (&lap_command_adapt);
  timeline = lap_cli_timeline (files[0]);
  if (timeline == NULL)
    return LAP_ERROR_INVALID;
  edits = lap_adapt (timeline, whom, &swaps);
  lap_edits_swap (edits);
  /* New neighbours may not suit each other: what can be mended without touching the clock is. */
  suitable = lap_adapt_catalogue (builtin, timeline->session, whom);
  mended = lap_mend (timeline->session, suitable, TRUE, NULL, NULL);
  status = lap_cli_write_session (out, timeline->session);
  if (status != 0 || g_str_equal (out, "-"))
    return status;
  print_swaps (timeline, swaps);
  for (guint i = 0; i < mended->len; i++)
    g_print ("→ %s\n", ((LapMended *) g_ptr_array_index (mended, i))->remedy);
  lap_cli_print_left (timeline->session);
  return 0;
}

const LapCommand lap_command_adapt = {
  "adapt",
  "FILE --for quiet|wrists|knees|lower-back|shoulders|balance|after-birth|not-lying|on-chair|standing|no-kit|new -o OUT",
  N_("Makes a version for somebody else, on the same clock."), run,
};
