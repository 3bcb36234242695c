/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The expansion, against what design §4.2 says, written out. The lengths marked so are common practice, no
 * source: anybody who has run such a class knows them.
 */
#include "base/error.h"
#include "store/documents.h"
#include "timeline/timeline.h"

#include <string.h>

#define HEAD "{\"format\": \"lapwing-session\", \"version\": 1, \"id\": \"i\", \"title\": \"t\", \"parts\": ["

static LapSession *
session_of (const char *parts)
{
  g_autofree char *text = g_strconcat (HEAD, parts, "]}", NULL);
  g_autoptr(GBytes) bytes = g_bytes_new (text, strlen (text));
  g_autoptr(GError) error = NULL;
  LapSession *session = lap_session_from_bytes (bytes, &error);

  g_assert_no_error (error);
  return session;
}

static LapTimeline *
expand (const char *parts, GError **error)
{
  g_autoptr(LapSession) session = session_of (parts);
  g_autoptr(LapCatalogue) builtin = lap_catalogue_builtin ();

  return lap_timeline_new (session, builtin, error);
}

/* What holds for every timeline. */
static void
assert_whole (const LapTimeline *timeline)
{
  int clock = 0;
  guint turn = 0;

  for (guint i = 0; i < timeline->n; i++)
    {
      const LapInterval *v = &timeline->intervals[i];

      g_assert_cmpint (v->start, ==, clock);
      g_assert_cmpint (v->seconds, >=, 1);
      g_assert_true (lap_timeline_at (timeline, v->start) == v);
      g_assert_true (lap_timeline_at (timeline, v->start + v->seconds - 1) == v);
      g_assert_true ((v->task == LAP_NO_TASK) == (v->block == LAP_NO_BLOCK));
      g_assert_true ((v->side != LAP_SIDE_NONE) <= (v->kind == LAP_INTERVAL_WORK));
      clock += v->seconds;
    }
  g_assert_cmpint (timeline->length, ==, clock);
  g_assert_null (lap_timeline_at (timeline, clock));
  g_assert_null (lap_timeline_at (timeline, -1));
  clock = 0;
  for (guint p = 0; p < timeline->n_parts; p++)
    {
      g_assert_cmpint (timeline->parts[p].start, ==, clock);
      g_assert_cmpuint (timeline->parts[p].turn, ==, turn);
      clock = timeline->parts[p].end;
      turn += timeline->parts[p].n_turns;
    }
  g_assert_cmpint (timeline->length, ==, clock);
  g_assert_cmpuint (timeline->n_turns, ==, turn);
}

/* "w40 r20": a letter for the kind, the seconds, L or R for the side. */
static char *
tell (const LapTimeline *timeline)
{
  static const char kinds[] = "wrseoatp";
  static const char *const sides[] = { "", "L", "R" };
  g_autoptr(GString) out = g_string_new (NULL);

  for (guint i = 0; i < timeline->n; i++)
    g_string_append_printf (out, "%s%c%d%s", i > 0 ? " " : "", kinds[timeline->intervals[i].kind],
                            timeline->intervals[i].seconds, sides[timeline->intervals[i].side]);
  return g_string_free (g_steal_pointer (&out), FALSE);
}

typedef struct {
  const char *parts;
  const char *wanted; /* as tell() says it */
} Row;

static void
assert_rows (const Row *rows, guint n)
{
  for (guint i = 0; i < n; i++)
    {
      g_autoptr(GError) error = NULL;
      g_autoptr(LapTimeline) timeline = expand (rows[i].parts, &error);
      g_autofree char *found = NULL;

      g_assert_no_error (error);
      assert_whole (timeline);
      found = tell (timeline);
      if (!g_str_equal (found, rows[i].wanted))
        g_error ("%s\nfound    %s\nexpected %s", rows[i].parts, found, rows[i].wanted);
    }
}

#define PART(members, blocks) "{\"kind\": \"main\", " members "\"blocks\": [" blocks "]}"
#define BLOCK(work, rest, more) "{\"exercise\": \"squat\", \"work\": " #work ", \"rest\": " #rest more "}"
#define SPLIT(work, rest, more) BLOCK (work, rest, ", \"sides\": \"split\"" more)
#define TALK(seconds) "{\"talk\": \"Hello\", \"seconds\": " #seconds "}"
#define PAUSE(seconds) "{\"pause\": \"water\", \"seconds\": " #seconds "}"

/* Common practice, no source. */
static void
test_common_lengths (void)
{
  static const struct { guint blocks; int work, rest; const char *members; int length; } rows[] = {
    { 10, 40, 20, "\"rounds\": 2,", 1180 },
    { 10, 40, 20, "\"rounds\": 2, \"keep-last-rest\": true,", 1200 },
    { 8, 40, 20, "\"rounds\": 3, \"round-rest\": 60,", 1540 },
    { 8, 20, 10, "", 230 },
    { 1, 20, 10, "\"rounds\": 8,", 230 },
    { 12, 40, 20, "\"run\": \"stations\", \"rounds\": 2,", 1420 },
    { 5, 40, 20, "\"run\": \"on-the-minute\", \"rounds\": 4,", 1180 },
    { 5, 40, 20, "\"run\": \"on-the-minute\", \"rounds\": 4, \"keep-last-rest\": true,", 1200 },
    { 3, 40, 20, "\"run\": \"own-pace\", \"cap\": 720,", 720 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr(GString) parts = g_string_new ("{\"kind\": \"main\", ");
      g_autoptr(GError) error = NULL;
      g_autoptr(LapTimeline) timeline = NULL;

      g_string_append_printf (parts, "%s \"blocks\": [", rows[i].members);
      for (guint k = 0; k < rows[i].blocks; k++)
        g_string_append_printf (parts, "%s{\"exercise\": \"squat\", \"work\": %d, \"rest\": %d}",
                                k > 0 ? ", " : "",
                                rows[i].work, rows[i].rest);
      g_string_append (parts, "]}");
      timeline = expand (parts->str, &error);
      g_assert_no_error (error);
      assert_whole (timeline);
      g_assert_cmpint (timeline->length, ==, rows[i].length);
    }
}

static void
test_rounds (void)
{
  static const Row rows[] = {
    { "", "" },
    { PART ("", ""), "" },
    { PART ("", BLOCK (40, 20, "")), "w40" },
    { PART ("\"keep-last-rest\": true,", BLOCK (40, 20, "")), "w40 r20" },
    { PART ("\"rounds\": 2,", BLOCK (40, 20, "") "," BLOCK (30, 0, "")), "w40 r20 w30 w40 r20 w30" },
    { PART ("\"rounds\": 3, \"round-rest\": 60,", BLOCK (40, 20, "")), "w40 r20 o60 w40 r20 o60 w40" },
    { PART ("\"rounds\": 2, \"round-rest\": 60, \"keep-last-rest\": true, \"rest-after\": 90,",
            BLOCK (40, 20, "")),
      "w40 r20 o60 w40 r20 a90" },
    { PART ("\"rest-after\": 90,", BLOCK (40, 20, "")) "," PART ("", BLOCK (30, 10, "")), "w40 a90 w30" },
    { PART ("\"rest-after\": 90,", ""), "a90" },
    /* Nothing is dropped after a talk or pause. */
    { PART ("\"rounds\": 2,", BLOCK (40, 20, "") "," TALK (30)), "w40 r20 t30 w40 r20 t30" },
    { PART ("", BLOCK (40, 20, "") "," PAUSE (30)), "w40 r20 p30" },
    { PART ("\"rounds\": 2,", TALK (10) "," BLOCK (40, 20, "")), "t10 w40 r20 t10 w40" },
    { PART ("\"rounds\": 2, \"round-rest\": 5,", TALK (10)), "t10 o5 t10" },
    /* Stations take as long as the same blocks together. */
    { PART ("\"run\": \"stations\", \"rounds\": 2, \"round-rest\": 60,",
            BLOCK (40, 20, "") "," BLOCK (40, 20, "")),
      "w40 r20 w40 r20 o60 w40 r20 w40" },
    /* No exercise chosen yet, and one that isn't known: they take their time all the same. */
    { PART ("", "{\"exercise\": null, \"work\": 40}, {\"exercise\": \"flying\", \"work\": 30}"), "w40 w30" },
  };

  assert_rows (rows, G_N_ELEMENTS (rows));
}

static void
test_sets (void)
{
  static const Row rows[] = {
    { PART ("\"sets\": 3, \"set-rest\": 10,", BLOCK (40, 20, "") "," BLOCK (30, 20, "")),
      "w40 e10 w40 e10 w40 r20 w30 e10 w30 e10 w30" },
    { PART ("\"sets\": 2,", BLOCK (40, 20, "") "," TALK (10)), "w40 w40 r20 t10" },
    { PART ("\"sets\": 2, \"set-rest\": 10, \"rounds\": 2, \"round-rest\": 60,", BLOCK (40, 20, "")),
      "w40 e10 w40 r20 o60 w40 e10 w40" },
    { PART ("\"sets\": 2, \"set-rest\": 10,", SPLIT (40, 20, ", \"switch\": 4")),
      "w18L s4 w18R e10 w18L s4 w18R" },
    { PART ("\"run\": \"stations\", \"sets\": 2, \"set-rest\": 10,", BLOCK (40, 20, "")), "w40 e10 w40" },
    /* A minute has one start. */
    { PART ("\"run\": \"on-the-minute\", \"sets\": 2, \"set-rest\": 10,",
            BLOCK (40, 20, "") "," BLOCK (40, 20, "")),
      "w40 r20 w40" },
  };

  assert_rows (rows, G_N_ELEMENTS (rows));
}

static void
test_split (void)
{
  static const Row rows[] = {
    { PART ("\"rounds\": 3,", SPLIT (40, 20, "")), "w20L w20R r20 w20R w20L r20 w20L w20R" },
    /* The first half is the longer one. */
    { PART ("\"rounds\": 2,", SPLIT (41, 0, "")), "w21L w20R w21R w20L" },
    { PART ("\"rounds\": 2,", SPLIT (41, 5, ", \"switch\": 4")), "w19L s4 w18R r5 w19R s4 w18L" },
    { PART ("", SPLIT (40, 0, ", \"switch\": 5")), "w18L s5 w17R" },
    { PART ("", SPLIT (2, 0, "")), "w1L w1R" },
    { PART ("", SPLIT (7, 0, ", \"switch\": 5")), "w1L s5 w1R" },
    { PART ("", BLOCK (40, 0, ", \"sides\": \"left\"") "," BLOCK (40, 0, ", \"sides\": \"right\"")),
      "w40L w40R" },
    { PART ("\"rounds\": 2,", BLOCK (40, 0, ", \"sides\": \"left\"")), "w40L w40L" },
    { PART ("", BLOCK (40, 0, ", \"sides\": \"alternate\"") "," BLOCK (40, 0, ", \"sides\": \"both\"")),
      "w40 w40" },
    /* A switch is for split work only. */
    { PART ("", BLOCK (40, 0, ", \"sides\": \"both\", \"switch\": 5")), "w40" },
    /* The sides of the exercise, where the block says nothing. */
    { PART ("", "{\"exercise\": \"side-plank\", \"work\": 30, \"switch\": 4}"), "w13L s4 w13R" },
    { PART ("", "{\"exercise\": \"side-plank\", \"work\": 30, \"sides\": \"right\"}"), "w30R" },
  };

  assert_rows (rows, G_N_ELEMENTS (rows));
}

static void
test_steps (void)
{
#define STEPS "\"steps\": [{\"work\": 50, \"rest\": 10}, {\"work\": 30, \"rest\": 0}," \
              "{\"work\": 10, \"rest\": 5}],"
  static const Row rows[] = {
    { PART ("\"rounds\": 3," STEPS, BLOCK (40, 20, "") "," BLOCK (40, 20, "")),
      "w50 r10 w50 r10 w30 w30 w10 r5 w10" },
    /* Cycled when there are more rounds, and cut when there are fewer. */
    { PART ("\"rounds\": 5," STEPS, BLOCK (40, 20, "")), "w50 r10 w30 w10 r5 w50 r10 w30" },
    { PART ("\"rounds\": 1," STEPS, BLOCK (40, 20, "")), "w50" },
    /* Over exercise blocks only. */
    { PART ("\"rounds\": 2," STEPS, TALK (7) "," BLOCK (40, 20, "")), "t7 w50 r10 t7 w30" },
    /* Sides turn with the rounds, not with the steps. */
    { PART ("\"rounds\": 7," STEPS, SPLIT (40, 20, "")),
      "w25L w25R r10 w15R w15L w5L w5R r5 w25R w25L r10 w15L w15R w5R w5L r5 w25L w25R" },
    /* What a block does differently in a round is over the steps. */
    { PART ("\"rounds\": 2," STEPS, BLOCK (40, 20, ", \"in-round\": {\"2\": {\"work\": 99}}") ","
            BLOCK (40, 20, "")),
      "w50 r10 w50 r10 w99 w30" },
    { PART ("\"rounds\": 2, \"keep-last-rest\": true," STEPS,
            BLOCK (40, 20, ", \"in-round\": {\"2\": {\"rest\": 9}}")),
      "w50 r10 w30 r9" },
  };

  assert_rows (rows, G_N_ELEMENTS (rows));
}

static void
test_in_round (void)
{
  static const Row rows[] = {
    { PART ("\"rounds\": 3,", BLOCK (40, 20, ", \"in-round\": {\"2\": {\"work\": 30}, \"3\": {\"rest\": "
                                             "5}}") ","
            BLOCK (10, 5, "")),
      "w40 r20 w10 r5 w30 r20 w10 r5 w40 r5 w10" },
    /* A change is for one round; those behind are as written. */
    { PART ("\"rounds\": 5,", BLOCK (40, 20, ", \"in-round\": {\"3\": {\"work\": 30, \"rest\": 0}}")),
      "w40 r20 w40 r20 w30 w40 r20 w40" },
    { PART ("\"rounds\": 2,", BLOCK (40, 20, ", \"in-round\": {\"2\": {\"sides\": \"split\"}}")),
      "w40 r20 w20R w20L" },
    { PART ("\"rounds\": 2,", BLOCK (40, 20, ", \"in-round\": {\"2\": {\"exercise\": \"side-plank\"}}")),
      "w40 r20 w20R w20L" },
  };

  assert_rows (rows, G_N_ELEMENTS (rows));
}

static void
test_own_pace (void)
{
#define OWN "\"run\": \"own-pace\", \"cap\": 600,"
  static const Row rows[] = {
    { PART (OWN, BLOCK (40, 20, "") "," BLOCK (30, 10, "")), "w600" },
    { PART (OWN "\"rounds\": 3, \"round-rest\": 60, \"sets\": 2, \"rest-after\": 30,", BLOCK (40, 20, "")),
      "w600 a30" },
    { PART (OWN, ""), "w600" },
    { PART (OWN, SPLIT (1, 0, "")), "w600" },
  };
  g_autoptr(LapTimeline) timeline = NULL;

  assert_rows (rows, G_N_ELEMENTS (rows));
  timeline = expand (rows[0].parts, NULL);
  g_assert_cmpint (timeline->intervals[0].block, ==, LAP_NO_BLOCK);
  g_assert_cmpint (timeline->intervals[0].round, ==, 1);
}

static void
test_on_the_minute (void)
{
#define MINUTE "\"run\": \"on-the-minute\", \"every\": 60,"
#define REPS(reps, more) BLOCK (40, 20, ", \"reps\": " reps more)
  static const Row rows[] = {
    { PART (MINUTE, BLOCK (40, 99, "") "," BLOCK (90, 0, "") "," BLOCK (30, 5, "")), "w40 r20 w60 w30" },
    { PART (MINUTE "\"keep-last-rest\": true,", BLOCK (40, 99, "")), "w40 r20" },
    { PART ("\"run\": \"on-the-minute\", \"every\": 90,", BLOCK (40, 0, "") "," BLOCK (40, 0, "")),
      "w40 r50 w40" },
    /* The estimate of the repetitions, of the most of them: 10 × (3 + 1 + 1) s. */
    { PART (MINUTE "\"keep-last-rest\": true,", REPS ("10", ", \"tempo\": \"3-1-1\"")), "w50 r10" },
    { PART (MINUTE "\"keep-last-rest\": true,", REPS ("[8, 10]", ", \"tempo\": \"3-1-1\"")), "w50 r10" },
    { PART (MINUTE "\"keep-last-rest\": true,", REPS ("20", ", \"tempo\": \"3-1-1\"")), "w60" },
    /* Twice when each side does them. */
    { PART (MINUTE "\"keep-last-rest\": true,", REPS ("5", ", \"tempo\": \"3-1-1\", \"sides\": \"split\"")),
      "w25L w25R r10" },
    { PART (MINUTE "\"keep-last-rest\": true, \"rounds\": 2, \"round-rest\": 30,",
            REPS ("4", ", \"tempo\": \"3-1-1\"") "," TALK (5)),
      "w20 r40 t5 o30 w20 r40 t5" },
    /* A hold has no repetitions to count: its work as written. */
    { PART (MINUTE "\"keep-last-rest\": true,", "{\"exercise\": \"plank\", \"work\": 35, \"reps\": 3}"),
      "w35 r25" },
  };

  assert_rows (rows, G_N_ELEMENTS (rows));
}

/* Repetitions at the exercise's own speed: design §4.1, rounded up. */
static void
test_estimate (void)
{
  g_autoptr(LapCatalogue) catalogue = lap_catalogue_builtin ();
  const LapExercise *squat = lap_catalogue_find (catalogue, "squat");
  static const struct { int low, high; const char *tempo; gboolean split; int seconds; } rows[] = {
    { 10, 10, "2-0-1", FALSE, 30 }, { 8, 12, "2-0-1", FALSE, 36 }, { 10, 10, "2-0-1", TRUE, 60 },
    { 1, 1, "10-5-10", FALSE, 25 },
    { 0, 0, "2-0-1", FALSE, 0 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    g_assert_cmpint (lap_reps_seconds (LAP_REPS (rows[i].low, rows[i].high), rows[i].tempo, squat,
                                       rows[i].split), ==,
                     rows[i].seconds);
  g_assert_cmpfloat (squat->seconds_per_rep, >, 0);
  for (int n = 1; n <= 50; n++)
    {
      int seconds = lap_reps_seconds (LAP_REPS (n, n), "", squat, FALSE);

      g_assert_cmpfloat (seconds, >=, n * squat->seconds_per_rep - 1e-6);
      g_assert_cmpfloat (seconds, <, n * squat->seconds_per_rep + 1);
    }
  g_assert_cmpint (lap_reps_seconds (LAP_REPS (3, 3), NULL, lap_catalogue_find (catalogue, "plank"), FALSE),
                   ==, 0);
}

/* What the intervals of one part say beside their seconds. */
static void
test_members (void)
{
  g_autoptr(GError) error = NULL;
  g_autoptr(LapTimeline) timeline =
    expand (PART ("", "") "," PART ("\"rounds\": 2, \"sets\": 2, \"set-rest\": 5, \"round-rest\": 60, "
                                    "\"rest-after\": 30,",
                                    TALK (10) "," BLOCK (40, 20, ", \"option\": \"easier\"")), &error);
  static const struct { int round, block; } wanted[] = {
    { 1, 0 }, { 1, 1 }, { 1, 1 }, { 1, 1 }, { 1, 1 }, { 1, -1 }, { 2, 0 }, { 2, 1 }, { 2, 1 }, { 2, 1 },
    { 0, -1 },
  };

  g_assert_no_error (error);
  assert_whole (timeline);
  g_assert_cmpuint (timeline->n, ==, G_N_ELEMENTS (wanted));
  for (guint i = 0; i < timeline->n; i++)
    {
      const LapInterval *v = &timeline->intervals[i];
      const LapTask *task = lap_timeline_task (timeline, v);

      g_assert_cmpint (v->part, ==, 1);
      g_assert_cmpint (v->round, ==, wanted[i].round);
      g_assert_cmpint (v->block, ==, wanted[i].block < 0 ? LAP_NO_BLOCK : wanted[i].block);
      g_assert_true ((task == NULL) == (wanted[i].block < 0));
      if (wanted[i].block == 1)
        {
          g_assert_cmpstr (task->exercise->id, ==, "squat");
          g_assert_cmpstr (task->shown->id, ==, task->exercise->easier);
        }
    }
  /* As written: the rest that is dropped counts, and so does the rest of rounds and the one after. */
  g_assert_cmpint (timeline->parts[1].work, ==, 4 * 40);
  g_assert_cmpint (timeline->parts[1].rest, ==, 2 * (5 + 20) + 60 + 30);
}

static void
test_limits (void)
{
  static const struct { const char *parts, *pointer; int length; } rows[] = {
    /* 4 × 10,800 s are twelve hours; one more is too long. */
    { PART ("\"rounds\": 4,", BLOCK (10800, 0, "")), NULL, 43200 },
    { PART ("\"rounds\": 4,", BLOCK (10800, 0, "") "," BLOCK (1, 0, "")), "/parts/0", 0 },
    { PART ("\"rounds\": 4,", BLOCK (10800, 0, "")) "," PART ("", TALK (1)), "/parts/1", 0 },
    { PART ("\"rounds\": 100, \"sets\": 100, \"set-rest\": 10800,", BLOCK (10800, 10800, "")), "/parts/0",
      0 },
    /* 100 rounds of 100 sets with a rest between make 19,900 intervals and 100 more with a rest after
     * each. */
    { PART ("\"rounds\": 100, \"sets\": 100, \"set-rest\": 1, \"keep-last-rest\": true,", BLOCK (1, 1, "")),
      NULL, 20000 },
    { PART ("\"rounds\": 100, \"sets\": 100, \"set-rest\": 1, \"round-rest\": 1,", BLOCK (1, 1, "")),
      "/parts/0", 0 },
    { PART ("\"rounds\": 100, \"sets\": 100, \"set-rest\": 1, \"keep-last-rest\": true,",
            BLOCK (1, 1, "")) ","
      PART ("", TALK (1)), "/parts/1", 0 },
    { PART ("", SPLIT (1, 0, "")), "/parts/0/blocks/0", 0 },
    { PART ("", TALK (1) "," SPLIT (6, 0, ", \"switch\": 5")), "/parts/0/blocks/1", 0 },
    { PART ("", "") "," PART ("\"rounds\": 2,", 
                              BLOCK (5, 0, ", \"in-round\": {\"2\": {\"work\": 1, \"sides\": \"split\"}}")),
      "/parts/1/blocks/0", 0 },
    { PART ("\"steps\": [{\"work\": 1, \"rest\": 5}],", SPLIT (40, 0, "")), "/parts/0/blocks/0", 0 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      g_autoptr(GError) error = NULL;
      g_autoptr(LapTimeline) timeline = expand (rows[i].parts, &error);

      if (rows[i].pointer == NULL)
        {
          g_assert_no_error (error);
          assert_whole (timeline);
          g_assert_cmpint (timeline->length, ==, rows[i].length);
          continue;
        }
      g_assert_null (timeline);
      g_assert_error (error, LAP_ERROR, LAP_ERROR_INVALID);
      g_assert_cmpstr (lap_error_pointer (error), ==, rows[i].pointer);
    }
}

/* Says of each round that it differs, in nothing: no round is copied from an earlier one then. */
static void
forbid_copies (LapSession *session)
{
  for (guint p = 0; p < lap_session_n (session); p++)
    for (guint i = 0; i < lap_part_n (lap_session_nth (session, p)); i++)
      {
        LapBlock *block = lap_part_nth (lap_session_nth (session, p), i);

        if (block->in_round == NULL)
          block->in_round = lap_changes_new ();
        for (int round = 2; round <= lap_session_nth (session, p)->rounds; round++)
          lap_changes_ensure (block->in_round, round);
      }
}

static void
assert_alike (const LapTimeline *a, const LapTimeline *b)
{
  g_assert_cmpuint (a->n, ==, b->n);
  g_assert_cmpuint (a->n_turns, ==, b->n_turns);
  for (guint i = 0; i < a->n; i++)
    {
      const LapInterval *v = &a->intervals[i], *w = &b->intervals[i];

      g_assert_true (v->start == w->start && v->seconds == w->seconds && v->part == w->part
                     && v->block == w->block
                     && v->round == w->round && v->kind == w->kind && v->side == w->side);
    }
  for (guint i = 0; i < a->n_turns; i++)
    {
      const LapTurn *t = &a->turns[i], *u = &b->turns[i];

      g_assert_true (t->start == u->start && t->end == u->end && t->work == u->work && t->rest == u->rest);
      g_assert_true (t->interval == u->interval && t->part == u->part && t->block == u->block
                     && t->round == u->round);
      g_assert_true (t->part_kind == u->part_kind && t->apart == u->apart && t->joined == u->joined);
    }
  for (guint p = 0; p < a->n_parts; p++)
    g_assert_true (a->parts[p].work == b->parts[p].work && a->parts[p].rest == b->parts[p].rest
                   && a->parts[p].end == b->parts[p].end && a->parts[p].n_turns == b->parts[p].n_turns);
}

/* A round copied from an earlier one is the round it would have been. */
static void
test_copied_rounds (void)
{
  static const char *const parts[] = {
    PART ("\"rounds\": 9, \"round-rest\": 30,", BLOCK (40, 20, "") "," SPLIT (41, 10, ", \"switch\": 4")),
    PART ("\"rounds\": 9," STEPS, BLOCK (40, 20, "") "," TALK (5) "," SPLIT (40, 10, "")),
    PART ("\"rounds\": 8, \"keep-last-rest\": true,", TALK (5) "," BLOCK (40, 20, "")),
    PART ("\"rounds\": 8,", BLOCK (40, 20, "") "," PAUSE (5)),
    PART ("\"rounds\": 8,", TALK (5)),
    PART ("\"rounds\": 12, \"sets\": 2, \"set-rest\": 3,",
          BLOCK (40, 20, ", \"in-round\": {\"3\": {\"work\": 9}, \"8\": {\"rest\": 0}}") ","
          BLOCK (30, 0, "")),
    PART ("\"rounds\": 6,", BLOCK (40, 20, ", \"sides\": \"left\"") ","
          BLOCK (40, 20, ", \"sides\": \"right\"")),
    PART ("\"rounds\": 6,", BLOCK (40, 20, "")),
    PART ("\"run\": \"on-the-minute\", \"rounds\": 6,", BLOCK (40, 20, "") "," SPLIT (30, 0, "")),
    PART ("\"rounds\": 3,", BLOCK (40, 20, "")) "," PART ("\"rounds\": 7,",
                                                          BLOCK (40, 20, "") "," BLOCK (20, 5, "")),
  };
  g_autoptr(LapCatalogue) builtin = lap_catalogue_builtin ();

  for (guint i = 0; i < G_N_ELEMENTS (parts); i++)
    {
      g_autoptr(LapSession) session = session_of (parts[i]);
      g_autoptr(LapSession) slow = session_of (parts[i]);
      g_autoptr(LapTimeline) a = lap_timeline_new (session, builtin, NULL);
      g_autoptr(LapTimeline) b = NULL;

      forbid_copies (slow);
      b = lap_timeline_new (slow, builtin, NULL);
      g_assert_cmpuint (b->n_tasks, >=, a->n_tasks);
      assert_alike (a, b);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/timeline/common-lengths", test_common_lengths);
  g_test_add_func ("/timeline/rounds", test_rounds);
  g_test_add_func ("/timeline/sets", test_sets);
  g_test_add_func ("/timeline/split", test_split);
  g_test_add_func ("/timeline/steps", test_steps);
  g_test_add_func ("/timeline/in-round", test_in_round);
  g_test_add_func ("/timeline/own-pace", test_own_pace);
  g_test_add_func ("/timeline/on-the-minute", test_on_the_minute);
  g_test_add_func ("/timeline/estimate", test_estimate);
  g_test_add_func ("/timeline/members", test_members);
  g_test_add_func ("/timeline/copied-rounds", test_copied_rounds);
  g_test_add_func ("/timeline/limits", test_limits);
  return g_test_run ();
}
