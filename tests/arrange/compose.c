/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Sessions from briefs: what was wished holds, the checks have nothing open to say, and the same brief gives the
 * same bytes. Briefs that can't be met say so in one line.
 */
#include "arrange/compose.h"

#include "base/error.h"
#include "base/json-scan.h"
#include "arrange/plans.h"

#include <glib/gstdio.h>
#include <gio/gio.h>

#include <string.h>

#define BRIEFS 12

static LapBrief *
brief_from (const char *members)
{
  g_autofree char *text = g_strdup_printf ("{ 'format': 'lapwing-brief', 'version': 1, %s }", members);
  g_autoptr (GError) error = NULL;
  g_autoptr (JsonNode) node = NULL;
  LapBrief *brief;

  g_strdelimit (text, "'", '"');
  node = lap_json_parse (text, strlen (text), &error);
  g_assert_no_error (error);
  brief = lap_brief_read (node, &error);
  g_assert_no_error (error);
  return brief;
}

/* Briefs of a usual kind, such as can be met. */
static char *
random_members (GRand *rand)
{
  static const char *levels[] = { "new", "mixed", "trained" };
  static const char *kits[] = { "'mat'", "'mat', 'band'", "'mat', 'dumbbells'", "'mat', 'chair', 'wall'" };
  static const char *without[] = { "", "'wrists'", "'knees'", "'lower-back'" };
  static const char *barred[] = { "", "'squat', 'plank'", "'glute-bridge', 'push-up', 'march-on-the-spot'" };

  return g_strdup_printf (
    "'minutes': %d, 'level': '%s', 'kit': [%s], 'quiet': %s, 'without': [%s], 'not': [%s], 'seed': %d",
    g_rand_int_range (rand, 20, 46), levels[g_rand_int_range (rand, 0, G_N_ELEMENTS (levels))],
    kits[g_rand_int_range (rand, 0, G_N_ELEMENTS (kits))], g_rand_boolean (rand) ? "true" : "false",
    without[g_rand_int_range (rand, 0, G_N_ELEMENTS (without))],
    barred[g_rand_int_range (rand, 0, G_N_ELEMENTS (barred))], g_rand_int_range (rand, 0, 100));
}

static LapSession *
compose (const LapBrief *brief)
{
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();
  g_autoptr (GError) error = NULL;
  LapSession *session = lap_compose (brief, catalogue, &error);

  g_assert_no_error (error);
  return session;
}

static void
assert_keeps_wishes (const LapBrief *brief, LapSession *session)
{
  const guint32 kit = lap_kit_mask (brief->kit);
  const guint32 care = lap_words_mask (&lap_care_words, (const char * const *) brief->without);
  g_autoptr (LapTimeline) t = plan_lay_out (session);
  gboolean kinds[LAP_PART_CLOSING + 1] = { FALSE };

  g_assert_cmpint (t->length, <=, brief->minutes * 60 + 15);
  g_assert_cmpint (t->length, >=, brief->minutes * 60 * 9 / 10);
  for (guint i = 0; i < t->n_turns; i++) {
    const LapExercise *e = t->tasks[t->turns[i].task].shown;

    kinds[t->turns[i].part_kind] = TRUE;
    g_assert_nonnull (e);
    g_assert_cmphex (e->kit_mask & ~kit, ==, 0);
    g_assert_cmphex (e->load_mask & care, ==, 0);
    g_assert_false (brief->barred != NULL && g_strv_contains ((const char * const *) brief->barred, e->id));
    g_assert_false (brief->quiet && e->noise == LAP_NOISE_LOUD);
  }
  g_assert_true (kinds[LAP_PART_WARM_UP] && kinds[LAP_PART_MAIN] && kinds[LAP_PART_COOL_DOWN]);
}

static void
test_by_chance (void)
{
  g_autoptr (GRand) rand = g_rand_new_with_seed (20270111);

  for (guint i = 0; i < BRIEFS; i++) {
    g_autofree char *members = random_members (rand);
    g_autoptr (LapBrief) brief = brief_from (members);
    g_autoptr (LapSession) session = NULL, again = NULL;
    g_autoptr (LapCheckup) checkup = NULL;
    g_autofree char *text = NULL, *same = NULL;

    g_test_message ("%s", members);
    session = compose (brief);
    again = compose (brief);
    text = plan_text (session);
    same = plan_text (again);
    g_assert_cmpstr (text, ==, same);
    checkup = plan_check (session);
    g_assert_cmpuint (lap_checkup_n_open (checkup), ==, 0);
    assert_keeps_wishes (brief, session);
  }
}

/* Another seed is another session. */
static void
test_seed_changes (void)
{
  g_autoptr (LapBrief) one = brief_from ("'kit': ['mat'], 'seed': 1");
  g_autoptr (LapBrief) two = brief_from ("'kit': ['mat'], 'seed': 2");
  g_autoptr (LapSession) first = compose (one), second = compose (two);
  g_autofree char *first_text = plan_text (first), *second_text = plan_text (second);

  g_assert_cmpstr (first_text, !=, second_text);
}

static const char * const impossible[] = {
  "'minutes': 5, 'level': 'new'",
  "'minutes': 30, 'kit': ['mat'], 'space': {'width': 0.5, 'length': 0.5}",
};

static void
test_impossible (void)
{
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();

  for (guint i = 0; i < G_N_ELEMENTS (impossible); i++) {
    g_autoptr (LapBrief) brief = brief_from (impossible[i]);
    g_autoptr (GError) error = NULL;

    g_assert_null (lap_compose (brief, catalogue, &error));
    g_assert_error (error, LAP_ERROR, LAP_ERROR_CONFLICT);
    g_assert_null (strchr (error->message, '\n'));
    g_assert_cmpuint (strlen (error->message), >, 20);
  }
}

/* Runs `lapwing compose` on a brief that reads @text, and asserts its exit status. What it wrote comes back, or
 * NULL where there is no file. */
static char *
run_program (const char *text, int status)
{
  g_autoptr (GError) error = NULL;
  g_autofree char *folder = g_dir_make_tmp ("lapwing-XXXXXX", &error);
  g_autofree char *in = g_build_filename (folder, "brief.json", NULL);
  g_autofree char *out = g_build_filename (folder, "out.lapwing", NULL);
  g_autoptr (GSubprocess) program = NULL;
  g_autofree char *said = NULL;
  char *written = NULL;

  g_file_set_contents (in, text, -1, &error);
  g_assert_no_error (error);
  program = g_subprocess_new (G_SUBPROCESS_FLAGS_STDERR_PIPE | G_SUBPROCESS_FLAGS_STDOUT_SILENCE, &error,
                              g_getenv ("LAP_PROGRAM"), "compose", in, "-o", out, NULL);
  g_assert_no_error (error);
  g_subprocess_communicate_utf8 (program, NULL, NULL, NULL, &said, &error);
  g_assert_no_error (error);
  g_assert_cmpint (g_subprocess_get_exit_status (program), ==, status);
  /* One line says why. */
  if (status != 0)
    g_assert_true (strchr (said, '\n') == said + strlen (said) - 1);
  g_file_get_contents (out, &written, NULL, NULL);
  g_unlink (in);
  g_unlink (out);
  g_rmdir (folder);
  return written;
}

static void
test_program (void)
{
  g_autofree char *met = run_program (
    "{\"format\": \"lapwing-brief\", \"version\": 1, \"kit\": [\"mat\"]}", 0);
  g_autoptr (LapBrief) brief = brief_from ("'kit': ['mat']");
  g_autoptr (LapSession) session = compose (brief);
  g_autofree char *text = plan_text (session);

  g_assert_cmpstr (met, ==, text);
}

static void
test_program_refuses (void)
{
  static const char * const bad[] = {
    "{\"format\": \"lapwing-brief\", \"version\": 1, \"minutes\": \"thirty\"}",
    "{\"format\": \"lapwing-brief\", \"version\": 1, \"without\": [\"elbow\"]}",
    "{\"format\": \"lapwing-session\", \"version\": 1}",
    "{\"format\": \"lapwing-brief\"",
  };

  for (guint i = 0; i < G_N_ELEMENTS (impossible); i++) {
    g_autofree char *text = g_strdup_printf ("{'format': 'lapwing-brief', 'version': 1, %s}", impossible[i]);

    g_strdelimit (text, "'", '"');
    g_assert_null (run_program (text, LAP_ERROR_CONFLICT));
  }
  for (guint i = 0; i < G_N_ELEMENTS (bad); i++)
    g_assert_null (run_program (bad[i], LAP_ERROR_INVALID));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/compose/by-chance", test_by_chance);
  g_test_add_func ("/compose/seed", test_seed_changes);
  g_test_add_func ("/compose/impossible", test_impossible);
  g_test_add_func ("/compose/program", test_program);
  g_test_add_func ("/compose/program/refuses", test_program_refuses);
  return g_test_run ();
}
