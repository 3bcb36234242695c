/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The index of exercises: ids of today and of before, a session's own over the built-in ones, the chains of
 * options, the filter.
 */
#include "base/json-scan.h"
#include "catalogue/catalogue.h"

#include <string.h>

static LapExercise *
exercise (const char *id, const char *noise, const char *more)
{
  g_autofree char *text = g_strdup_printf (
    "{\"id\": \"%s\", \"name\": \"The %s\", \"for\": [\"work\"], \"pattern\": \"squat\", \"move\": \"own\", "
    "\"posture\": \"standing\","
    "\"primary\": [\"quads\"], \"sides\": \"both\", \"impact\": \"none\", \"noise\": \"%s\","
    "\"met\": {\"steady\": {\"value\": 3, \"code\": \"a\"}, \"hard\": {\"value\": 4, \"code\": \"b\"}}, "
    "\"width\": 1,"
    "\"length\": 1, \"view\": \"side\", \"seconds-per-rep\": 2, \"say\": {}%s}", id, id, noise, more);
  g_autoptr(GError) error = NULL;
  g_autoptr(JsonNode) node = lap_json_parse (text, strlen (text), &error);
  LapPath top = { NULL, NULL, 0 };
  LapExercise *made;

  g_assert_no_error (error);
  made = lap_exercise_read (node, &top, &error);
  g_assert_no_error (error);
  return made;
}

static void
test_builtin (void)
{
  g_autoptr(LapCatalogue) catalogue = lap_catalogue_builtin ();
  g_autoptr(LapCatalogue) again = lap_catalogue_builtin ();
  LapExercise *alone;

  g_assert_true (catalogue == again);
  /* Read alone, before all the others. */
  alone = lap_catalogue_find (catalogue, "squat");
  g_assert_cmpstr (alone->name, ==, "Squat");
  g_assert_cmpuint (lap_catalogue_n (catalogue), >=, 170);
  for (guint i = 0; i < lap_catalogue_n (catalogue); i++)
    {
      LapExercise *e = lap_catalogue_nth (catalogue, i);

      g_assert_true (lap_catalogue_find (catalogue, e->id) == e);
      if (i > 0)
        g_assert_cmpstr (lap_catalogue_nth (catalogue, i - 1)->name, <, e->name);
    }
  g_assert_true (lap_catalogue_find (catalogue, "squat") == alone);
  g_assert_null (lap_catalogue_find (catalogue, "no-such-exercise"));
}

/* The option is one step along the chain; where that ends, the exercise itself with another MET (common
 * practice). */
static void
test_shown (void)
{
  g_autoptr(LapCatalogue) catalogue = lap_catalogue_builtin ();
  guint steps = 0, ends = 0;

  for (guint i = 0; i < lap_catalogue_n (catalogue); i++)
    {
      LapExercise *e = lap_catalogue_nth (catalogue, i);
      const char *const next[] = { NULL, e->easier, e->harder };
      const double factors[] = { 1, 0.85, 1.15 };

      for (int option = LAP_OPTION_AS_SHOWN; option <= LAP_OPTION_HARDER; option++)
        {
          double factor;
          LapExercise *shown = lap_catalogue_shown (catalogue, e, option, &factor);

          g_assert_cmpstr (shown->id, ==, next[option] != NULL ? next[option] : e->id);
          g_assert_cmpfloat (factor, ==, next[option] != NULL ? 1 : factors[option]);
          steps += next[option] != NULL;
          ends += option != LAP_OPTION_AS_SHOWN && next[option] == NULL;
        }
    }
  g_assert_cmpuint (steps, >, 50);
  g_assert_cmpuint (ends, >, 5);
}

static void
test_over (void)
{
  g_autoptr(LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr(GPtrArray) own = g_ptr_array_new_with_free_func ((GDestroyNotify) lap_exercise_unref);
  g_autoptr(LapCatalogue) catalogue = NULL;
  double factor;
  guint squats = 0;

  g_ptr_array_add (own, exercise ("squat", "silent", ", \"harder\": \"own-deep\""));
  g_ptr_array_add (own, exercise ("own-deep", "silent", ", \"formerly\": [\"own-low\", \"lunge\", "
                                                        "\"push-up\"], \"easier\": \"gone\""));
  catalogue = lap_catalogue_new_over (builtin, own);
  g_assert_cmpuint (lap_catalogue_n (catalogue), ==, lap_catalogue_n (builtin) + 1);
  /* An own id hides a built-in one, which is listed once then. */
  g_assert_cmpstr (lap_catalogue_find (catalogue, "squat")->name, ==, "The squat");
  for (guint i = 0; i < lap_catalogue_n (catalogue); i++)
    squats += g_str_equal (lap_catalogue_nth (catalogue, i)->id, "squat");
  g_assert_cmpuint (squats, ==, 1);
  g_assert_cmpstr (lap_catalogue_nth (catalogue, 0)->id, ==, "squat");
  g_assert_cmpstr (lap_catalogue_find (builtin, "squat")->name, !=, "The squat");
  /* A former id finds it, unless it is somebody's id today. */
  g_assert_cmpstr (lap_catalogue_find (catalogue, "own-low")->id, ==, "own-deep");
  g_assert_cmpstr (lap_catalogue_find (catalogue, "push-up")->id, ==, "push-up");
  /* The chain of an own exercise; one that leads nowhere ends. */
  g_assert_cmpstr (lap_catalogue_shown (catalogue, lap_catalogue_find (catalogue, "squat"),
                                        LAP_OPTION_HARDER, &factor)->id,
                   ==, "own-deep");
  g_assert_cmpstr (lap_catalogue_shown (catalogue, lap_catalogue_find (catalogue, "own-deep"),
                                        LAP_OPTION_EASIER, &factor)->id,
                   ==, "own-deep");
  g_assert_cmpfloat (factor, ==, 0.85);
}

static const char *const filter_members =
  ", \"other-names\": [\"Frog jump\"], \"kit\": [\"mat\", \"band\"],"
  "\"care\": {\"knees\": {\"load\": 2}, \"hips\": {\"load\": 1}}";

static void
test_filter (void)
{
  g_autoptr(LapExercise) e = exercise ("bänd-squat", "loud", filter_members);
  const LapFilter any = LAP_FILTER_ANY;
  const struct { LapFilter filter; gboolean matches; } rows[] = {
    { any, TRUE },
    { { .impact = -1, .regions = LAP_BIT (LAP_REGION_THIGHS) | LAP_BIT (LAP_REGION_ARMS) }, TRUE },
    { { .impact = -1, .regions = LAP_BIT (LAP_REGION_ARMS) }, FALSE },
    { { .impact = -1, .postures = LAP_BIT (LAP_POSTURE_STANDING) }, TRUE },
    { { .impact = -1, .postures = LAP_BIT (LAP_POSTURE_PRONE) | LAP_BIT (LAP_POSTURE_SUPINE) }, FALSE },
    { { .impact = -1, .uses = LAP_BIT (LAP_USE_WORK) }, TRUE },
    { { .impact = -1, .uses = LAP_BIT (LAP_USE_WARM_UP) }, FALSE },
    /* Kit: what is there must be enough; more does no harm. Nothing at all is a wish too. */
    { { .impact = -1, .has_kit = TRUE,
        .kit = LAP_BIT (LAP_KIT_MAT) | LAP_BIT (LAP_KIT_BAND) | LAP_BIT (LAP_KIT_BAR) }, TRUE },
    { { .impact = -1, .has_kit = TRUE, .kit = LAP_BIT (LAP_KIT_MAT) }, FALSE },
    { { .impact = -1, .has_kit = TRUE }, FALSE },
    { { .impact = LAP_IMPACT_NONE }, TRUE },
    { { .impact = LAP_IMPACT_HIGH }, TRUE },
    { { .impact = -1, .quiet = TRUE }, FALSE },
    /* Load 2 is meant, not load 1. */
    { { .impact = -1, .without = LAP_BIT (LAP_CARE_KNEES) }, FALSE },
    { { .impact = -1, .without = LAP_BIT (LAP_CARE_HIPS) | LAP_BIT (LAP_CARE_NECK) }, TRUE },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    if (lap_filter_matches (&rows[i].filter, e) != rows[i].matches)
      g_error ("filter %u: expected %d", i, rows[i].matches);
}

static void
test_impact (void)
{
  static const char *const impacts[] = { "none", "low", "high" };

  for (int i = LAP_IMPACT_NONE; i <= LAP_IMPACT_HIGH; i++)
    for (int most = LAP_IMPACT_NONE; most <= LAP_IMPACT_HIGH; most++)
      {
        g_autoptr(LapCatalogue) catalogue = lap_catalogue_builtin ();
        LapFilter filter = { .impact = most };
        guint found = 0;

        for (guint k = 0; k < lap_catalogue_n (catalogue); k++)
          if (lap_catalogue_nth (catalogue, k)->impact == i)
            found += lap_filter_matches (&filter, lap_catalogue_nth (catalogue, k));
        g_assert_cmpint (found > 0, ==, i <= most);
        g_assert_cmpstr (lap_words_id (&lap_impacts, i), ==, impacts[i]);
      }
}

static void
test_nearest (void)
{
  g_autoptr(LapCatalogue) catalogue = lap_catalogue_builtin ();

  g_assert_cmpstr (lap_catalogue_nearest (catalogue, "sqat"), ==, "squat");
  g_assert_cmpstr (lap_catalogue_nearest (catalogue, "pushup"), ==, "push-up");
  g_assert_null (lap_catalogue_nearest (catalogue, "xyzxyzxyz"));
}

/* Design §4.3: the muscles make ten regions, each muscle in one. */
static void
test_regions (void)
{
  static const struct { const char *region, *muscles; } rows[] = {
    { "thighs", "quads inner-thigh outer-hip" }, { "glutes", "glutes hamstrings" },
    { "calves", "calves shins" },
    { "front-core", "abs hip-flexors" }, { "side-core", "obliques" }, { "lower-back", "lower-back" },
    { "chest", "chest" },
    { "upper-back", "upper-back lats" }, { "shoulders", "front-shoulder side-shoulder rear-shoulder neck" },
    { "arms", "biceps triceps forearms" },
  };
  guint32 all = 0;

  g_assert_cmpuint (lap_regions.n, ==, G_N_ELEMENTS (rows));
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_auto(GStrv) muscles = g_strsplit (rows[i].muscles, " ", -1);
      guint32 mask = lap_words_mask (&lap_muscles, (const char *const *) muscles);
      int region = lap_words_find (&lap_regions, rows[i].region);

      g_assert_cmpint (region, >=, 0);
      g_assert_cmpuint (lap_region_muscles (region), ==, mask);
      g_assert_cmpuint (lap_muscle_regions (mask), ==, LAP_BIT (region));
      g_assert_cmpuint (all & mask, ==, 0);
      all |= mask;
    }
  g_assert_cmpuint (all, ==, (1u << LAP_N_MUSCLES) - 1);
  g_assert_cmpuint (LAP_N_MUSCLES, ==, 21);
}

/* The one reader and the one writer of an exercise: nothing of a file is lost, nothing is added. */
static void
test_files (void)
{
  g_autofree char *folder = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "exercises", NULL);
  g_autoptr(GDir) dir = g_dir_open (folder, 0, NULL);
  g_autoptr(LapCatalogue) catalogue = lap_catalogue_builtin ();
  const char *name;
  guint files = 0;

  while ((name = g_dir_read_name (dir)) != NULL)
    {
      g_autofree char *path = g_build_filename (folder, name, NULL), *text = NULL;
      g_autofree char *id = g_strndup (name, strcspn (name, "."));
      g_autoptr(LapJsonWriter) writer = lap_json_writer_new ();
      g_autoptr(GBytes) bytes = NULL;
      g_autoptr(JsonNode) wanted = NULL;
      g_autoptr(JsonNode) found = NULL;

      g_assert_true (g_file_get_contents (path, &text, NULL, NULL));
      g_assert_nonnull (lap_catalogue_find (catalogue, id));
      lap_exercise_write (lap_catalogue_find (catalogue, id), writer);
      bytes = lap_json_writer_finish (writer);
      wanted = lap_json_parse (text, strlen (text), NULL);
      found = lap_json_parse (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes), NULL);
      if (!json_node_equal (wanted, found))
        g_error ("%s is written as %s", name, (const char *) g_bytes_get_data (bytes, NULL));
      files++;
    }
  g_assert_cmpuint (files, ==, lap_catalogue_n (catalogue));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/catalogue/builtin", test_builtin);
  g_test_add_func ("/catalogue/files", test_files);
  g_test_add_func ("/catalogue/shown", test_shown);
  g_test_add_func ("/catalogue/over", test_over);
  g_test_add_func ("/catalogue/filter", test_filter);
  g_test_add_func ("/catalogue/impact", test_impact);
  g_test_add_func ("/catalogue/nearest", test_nearest);
  g_test_add_func ("/catalogue/regions", test_regions);
  return g_test_run ();
}
