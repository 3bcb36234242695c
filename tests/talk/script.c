/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The script keeps its promises on the demo sessions and on sessions put together at random.
 */
#include "talk/script.h"

#include "store/documents.h"
#include "timelines.h"

static LapScript *
script_of (LapTimeline *timeline)
{
  g_autoptr (LapEffort) effort = lap_effort_new (timeline);
  g_autoptr (LapTalk) talk = lap_talk_new (timeline, effort);

  return lap_script_new (talk);
}

static gboolean
is_cue (const LapLine *line)
{
  return line->kind == LAP_LINE_CUE || line->kind == LAP_LINE_FAULT || line->kind == LAP_LINE_EASIER ||
         line->kind == LAP_LINE_HARDER || line->kind == LAP_LINE_ALSO;
}

static void
assert_promises (LapTimeline *timeline)
{
  g_autoptr (LapScript) script = script_of (timeline);
  g_autoptr (GHashTable) once = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);

  for (guint i = 0; i < script->n; i++) {
    const LapLine *line = &script->lines[i], *before = line - 1;
    const LapBlock *block = lap_part_nth (lap_session_nth (timeline->session, line->part), line->block);

    g_assert_cmpint (line->start, >=, 0);
    g_assert_cmpstr (line->text, !=, "");
    g_assert_true ((block->kind == LAP_BLOCK_TALK) == (line->kind == LAP_LINE_TALK));
    if (i > 0) {
      g_assert_cmpint (line->start, >=, before->start + 2);
      g_assert_cmpfloat (line->start, >=, before->start + before->seconds - 1e-9);
      if (is_cue (line) || (is_cue (before) && before->part == line->part && before->round == line->round &&
                            before->block == line->block))
        g_assert_cmpfloat (line->start, >=, before->start + before->seconds + 2 - 1e-9);
    }
    /* Easier, harder and the fault of an exercise are said once. */
    if (line->kind == LAP_LINE_EASIER || line->kind == LAP_LINE_HARDER || line->kind == LAP_LINE_FAULT)
      g_assert_true (g_hash_table_add (once, g_strdup_printf ("%s %s", block->exercise, line->text)));
    g_assert_true (lap_script_at (script, line->start) == line);
  }
}

static void
test_demos (void)
{
  static const char *const names[] = { "thirty-on-the-mat", "too-much-at-once", "twelve-at-twelve" };
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();

  for (guint i = 0; i < G_N_ELEMENTS (names); i++) {
    g_autofree char *file = g_strconcat (names[i], ".lapwing", NULL);
    g_autofree char *path = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", file, NULL);
    g_autoptr (LapTimeline) timeline = NULL;
    g_autoptr (LapSession) session = NULL;
    g_autoptr (GError) error = NULL;
    g_autofree char *text = NULL;
    g_autoptr (GBytes) bytes = NULL;
    gsize size;

    g_assert_true (g_file_get_contents (path, &text, &size, &error));
    bytes = g_bytes_new (text, size);
    session = lap_session_from_bytes (bytes, &error);
    g_assert_no_error (error);
    timeline = lap_timeline_new (session, catalogue, &error);
    g_assert_no_error (error);
    assert_promises (timeline);
  }
}

static void
add_block (GString *blocks, LapCatalogue *catalogue, GRand *rand)
{
  const LapExercise *e = lap_catalogue_nth (catalogue, g_rand_int_range (rand, 0, lap_catalogue_n (catalogue)));
  int roll = g_rand_int_range (rand, 0, 10);

  if (blocks->len > 0)
    g_string_append (blocks, ", ");
  if (roll == 0)
    g_string_append_printf (blocks, "{'talk': 'Now listen to me for a moment', 'seconds': %d}",
                            g_rand_int_range (rand, 2, 60));
  else if (roll == 1)
    g_string_append (blocks, "{'pause': 'water', 'seconds': 20}");
  else
    g_string_append_printf (blocks, "{'exercise': '%s', 'work': %d, 'rest': %d}", e->id,
                            g_rand_int_range (rand, 2, roll < 6 ? 90 : 8), g_rand_int_range (rand, 0, roll < 6 ? 40 : 3));
}

static void
test_random (void)
{
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();
  static const char *const runs[] = { "together", "stations", "own-pace", "on-the-minute" };

  for (int i = 0; i < 400; i++) {
    g_autoptr (GRand) rand = g_rand_new_with_seed (i);
    g_autoptr (GString) blocks = g_string_new (NULL);
    g_autofree char *members = NULL;
    g_autoptr (LapTimeline) timeline = NULL;

    for (int n = g_rand_int_range (rand, 1, 8); n > 0; n--)
      add_block (blocks, catalogue, rand);
    members = g_strdup_printf ("'also-for': ['wrists', 'knees'], 'parts': [{'kind': 'main', 'run': '%s', 'rounds': %d,"
                               "'sets': %d, 'set-rest': %d, 'cap': 240, 'blocks': [%s]}]", runs[i % 4],
                               g_rand_int_range (rand, 1, 4), g_rand_int_range (rand, 1, 3),
                               g_rand_int_range (rand, 0, 20), blocks->str);
    timeline = test_timeline (members);
    assert_promises (timeline);
  }
}

/* The lines of one turn as "start kind" from its start on, in one text. */
static char *
course (const LapScript *script, int from, int until)
{
  GString *text = g_string_new (NULL);

  for (guint i = 0; i < script->n; i++)
    if (script->lines[i].start >= from && script->lines[i].start < until && !is_cue (&script->lines[i]))
      g_string_append_printf (text, "%d %s ", script->lines[i].start - from,
                              lap_words_id (&lap_line_kinds, script->lines[i].kind));
  return g_string_free (text, FALSE);
}

static void
test_moments (void)
{
  g_autoptr (LapTimeline) timeline = test_part ("main", 2,
    "{'exercise': 'squat', 'work': 40, 'rest': 20}, {'exercise': 'side-plank', 'work': 44, 'rest': 20, 'switch': 4},"
    "{'exercise': 'plank', 'work': 12, 'rest': 18}");
  g_autoptr (LapScript) script = script_of (timeline);
  g_autofree char *squat = course (script, 154, 194), *side = course (script, 214, 258);
  g_autofree char *plank = course (script, 278, 290);

  g_assert_cmpstr (squat, ==, "20 half-way 25 next 30 last-ten ");
  /* Halves of 20 s: their last ten, the change, and what is next at 15 s. */
  g_assert_cmpstr (side, ==, "10 last-ten 20 side 29 next 34 last-ten ");
  g_assert_cmpstr (plank, ==, "");
}

/* The next is said to be what comes next, a pause included; nothing after the last and nothing before itself. */
static void
test_next (void)
{
  g_autoptr (LapTimeline) timeline = test_part ("main", 1,
    "{'exercise': 'squat', 'work': 40, 'rest': 20}, {'pause': 'Water', 'seconds': 30},"
    "{'exercise': 'plank', 'work': 40, 'rest': 20}, {'exercise': 'plank', 'work': 40, 'rest': 20},"
    "{'exercise': 'push-up', 'work': 40, 'rest': 20}");
  g_autoptr (LapScript) script = script_of (timeline);
  g_autoptr (GString) next = g_string_new (NULL);

  for (guint i = 0; i < script->n; i++)
    if (script->lines[i].kind == LAP_LINE_NEXT)
      g_string_append_printf (next, "%d %s ", script->lines[i].start, script->lines[i].text);
  g_assert_cmpstr (next->str, ==, "25 Next: Water 175 Next: Push-up ");
}

static void
test_sides (void)
{
  g_autoptr (LapTimeline) timeline = test_part ("main", 2,
    "{'exercise': 'side-plank', 'work': 40, 'rest': 20}");
  g_autoptr (LapScript) script = script_of (timeline);

  g_assert_cmpstr (lap_script_at (script, 0)->text, ==, "Side plank, left side first");
  g_assert_cmpstr (lap_script_at (script, 20)->text, ==, "Now right");
  g_assert_cmpstr (lap_script_at (script, 80)->text, ==, "Now left");
  g_assert_null (lap_script_at (script, -1));
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/script/demos", test_demos);
  g_test_add_func ("/script/random", test_random);
  g_test_add_func ("/script/moments", test_moments);
  g_test_add_func ("/script/next", test_next);
  g_test_add_func ("/script/sides", test_sides);
  return g_test_run ();
}
