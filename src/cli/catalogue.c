/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * lapwing catalogue: lists and filters the built-in exercises.
 */
#include "catalogue/finder.h"
#include "cli/cli.h"

#include <glib/gi18n-lib.h>

static gboolean
wanted (const LapFilter *filter, const LapFinder *finder, const LapExercise *e)
{
  return lap_filter_matches (filter, e) && lap_finder_matches (finder, e);
}

static int
print_json (LapCatalogue *catalogue, const LapFilter *filter, const LapFinder *finder)
{
  g_autoptr (LapJsonWriter) out = lap_json_writer_new ();
  g_autoptr (GBytes) bytes = NULL;

  lap_json_writer_begin_object (out);
  lap_json_writer_member (out, "exercises");
  lap_json_writer_begin_array (out);
  for (guint i = 0; i < lap_catalogue_n (catalogue); i++)
    if (wanted (filter, finder, lap_catalogue_nth (catalogue, i)))
      lap_exercise_write (lap_catalogue_nth (catalogue, i), out);
  lap_json_writer_end_array (out);
  lap_json_writer_end_object (out);
  bytes = lap_json_writer_finish (out);
  return lap_cli_print (bytes);
}

static void
print_lines (LapCatalogue *catalogue, const LapFilter *filter, const LapFinder *finder)
{
  guint n = 0;

  for (guint i = 0; i < lap_catalogue_n (catalogue); i++) {
    const LapExercise *e = lap_catalogue_nth (catalogue, i);
    g_autofree char *muscles = NULL, *kit = NULL;

    if (!wanted (filter, finder, e))
      continue;
    muscles = lap_words_join (&lap_muscles, e->primary_mask);
    kit = lap_words_join (&lap_kit_words, e->kit_mask);
    g_print ("%-32s %s. %s. %s.%s%s\n", e->id, lap_exercise_name (e), lap_words_label (&lap_postures, e->posture),
             muscles, *kit != '\0' ? " " : "", kit);
    n++;
  }
  g_print (ngettext ("%u exercise\n", "%u exercises\n", n), n);
}

static int
run (int argc, char **argv)
{
  gboolean json = FALSE;
  g_autofree char *region = NULL, *posture = NULL, *kit = NULL, *impact = NULL, *without = NULL;
  const GOptionEntry entries[] = {
    { "json", 0, 0, G_OPTION_ARG_NONE, &json, N_("Print JSON"), NULL },
    { "region", 0, 0, G_OPTION_ARG_STRING, &region, N_("Works this region hard"), "R" },
    { "posture", 0, 0, G_OPTION_ARG_STRING, &posture, N_("Is done in this posture"), "P" },
    { "kit", 0, 0, G_OPTION_ARG_STRING, &kit, N_("Needs nothing but this kit"), "K,…" },
    { "impact", 0, 0, G_OPTION_ARG_STRING, &impact, N_("Has at most this impact"), "I" },
    { "without", 0, 0, G_OPTION_ARG_STRING, &without, N_("Doesn’t load these joints or states"), "CARE,…" },
    { NULL },
  };
  g_autoptr (LapCatalogue) catalogue = NULL;
  g_autoptr (LapFinder) finder = NULL;
  g_auto (GStrv) text = NULL;
  g_autofree char *words = NULL;
  LapFilter filter = LAP_FILTER_ANY;
  guint32 impacts = 0;

  if (!lap_cli_options (argc, argv, &lap_command_catalogue, entries, 0, G_MAXUINT, &text) ||
      (region != NULL && !lap_cli_words (&lap_command_catalogue, &lap_regions, "--region", region, &filter.regions)) ||
      (posture != NULL && !lap_cli_words (&lap_command_catalogue, &lap_postures, "--posture", posture, &filter.postures)) ||
      (kit != NULL && !lap_cli_words (&lap_command_catalogue, &lap_kit_words, "--kit", kit, &filter.kit)) ||
      (impact != NULL && !lap_cli_words (&lap_command_catalogue, &lap_impacts, "--impact", impact, &impacts)) ||
      (without != NULL && !lap_cli_words (&lap_command_catalogue, &lap_care_words, "--without", without, &filter.without)))
    return LAP_ERROR_USAGE;
  filter.has_kit = kit != NULL;
  filter.kit = lap_kit_with_singles (filter.kit);
  if (impacts != 0)
    filter.impact = g_bit_nth_msf (impacts, -1);
  words = g_strjoinv (" ", text);
  catalogue = lap_catalogue_builtin ();
  finder = lap_finder_new (catalogue);
  lap_finder_set_text (finder, words);
  if (json)
    return print_json (catalogue, &filter, finder);
  print_lines (catalogue, &filter, finder);
  return 0;
}

const LapCommand lap_command_catalogue = {
  "catalogue", "[--json] [--region R] [--posture P] [--kit K,…] [--impact I] [--without CARE,…] [TEXT]",
  N_("Lists the exercises, or those that match."), run,
};
