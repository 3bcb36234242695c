/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "catalogue/finder.h"

#include "base/json-scan.h"

#include <string.h>

static const char text[] =
  "{\"id\": \"%s\", \"name\": \"%s\", \"other-names\": [%s], \"for\": [\"work\"], \"pattern\": \"squat\","
  "\"move\": \"strength\", \"posture\": \"standing\", \"primary\": [%s], \"secondary\": [\"abs\"], \"sides\": \"both\","
  "\"impact\": \"none\", \"noise\": \"silent\", \"met\": {\"steady\": {\"value\": 3.8, \"code\": \"02022\"},"
  "\"hard\": {\"value\": 6.5, \"code\": \"02057\"}, \"edition\": 2024, \"confidence\": \"high\"}, \"width\": 1.0,"
  "\"length\": 1.0, \"view\": \"side\", \"seconds-per-rep\": 2.5, \"say\": {\"setup\": \"Stand.\","
  "\"cues\": [\"Sit\"]}}";

static void
add (GPtrArray *own, const char *id, const char *name, const char *others, const char *primary)
{
  g_autofree char *json = g_strdup_printf (text, id, name, others, primary);
  g_autoptr (GError) error = NULL;
  g_autoptr (JsonNode) node = lap_json_parse (json, strlen (json), &error);
  LapPath top = { NULL, NULL, 0 };
  LapExercise *e;

  g_assert_no_error (error);
  e = lap_exercise_read (node, &top, &error);
  g_assert_no_error (error);
  g_ptr_array_add (own, e);
}

static LapCatalogue *
make (void)
{
  g_autoptr (GPtrArray) own = g_ptr_array_new_with_free_func ((GDestroyNotify) lap_exercise_unref);

  add (own, "elan", "Élan latéral", "\"Frog jump\", \"Grenouille\"", "\"quads\", \"glutes\"");
  add (own, "press", "Overhead press", "", "\"front-shoulder\", \"triceps\"");
  add (own, "crawl", "Bear crawl", "\"Ours\"", "\"abs\"");
  return lap_catalogue_new_over (NULL, own);
}

static void
test_words (void)
{
  static const struct { const char *text, *found; } rows[] = {
    { NULL, "elan press crawl" }, { "", "elan press crawl" }, { "  ", "elan press crawl" },
    { "elan", "elan" }, { "ÉLAN", "elan" }, { "élàn", "elan" }, { "lateral", "elan" }, { "latéral", "elan" },
    { "frog", "elan" }, { "jump frog", "elan" }, { "gren", "elan" },
    { "rog", "" },                   /* words are begun, not cut into */
    { "tric", "press" },             /* a muscle it works hard */
    { "tric over", "press" },        /* words of a name and of a muscle together */
    { "thigh", "elan" }, { "core", "crawl" }, /* a region */
    { "abs", "crawl" },              /* what only helps doesn't count */
    { "press squat", "" }, { "squat", "" },
  };
  g_autoptr (LapCatalogue) catalogue = make ();
  g_autoptr (LapFinder) finder = lap_finder_new (catalogue);

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++) {
    g_autoptr (GString) found = g_string_new (NULL);

    lap_finder_set_text (finder, rows[i].text);
    for (guint k = 0; k < lap_catalogue_n (catalogue); k++)
      if (lap_finder_matches (finder, lap_catalogue_nth (catalogue, k)))
        g_string_append_printf (found, "%s%s", found->len > 0 ? " " : "", lap_catalogue_nth (catalogue, k)->id);
    if (!g_str_equal (found->str, rows[i].found))
      g_error ("“%s” finds “%s”, expected “%s”", rows[i].text, found->str, rows[i].found);
  }
}

/* Every exercise is found by each of its names as it is written. */
static void
test_builtin (void)
{
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();
  g_autoptr (LapFinder) finder = lap_finder_new (catalogue);

  for (guint i = 0; i < lap_catalogue_n (catalogue); i++) {
    LapExercise *e = lap_catalogue_nth (catalogue, i);

    lap_finder_set_text (finder, e->name);
    g_assert_true (lap_finder_matches (finder, e));
    for (guint k = 0; e->other_names != NULL && e->other_names[k] != NULL; k++) {
      lap_finder_set_text (finder, e->other_names[k]);
      g_assert_true (lap_finder_matches (finder, e));
    }
  }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/catalogue/finder/words", test_words);
  g_test_add_func ("/catalogue/finder/builtin", test_builtin);
  return g_test_run ();
}
