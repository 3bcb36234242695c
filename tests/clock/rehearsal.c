/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The clock of a rehearsal under a time that the tests make: it is always exactly where the plan is.
 */
#include "clock/rehearsal.h"

#include "clock/false-clock.h"

#define assert_at(clock, seconds) g_assert_cmpint (lap_rehearsal_clock ((clock)->rehearsal), ==, \
                                                   (gint64) ((seconds) * LAP_SECOND))
#define assert_state(clock, s) g_assert_cmpint (lap_rehearsal_state ((clock)->rehearsal), ==, LAP_REHEARSAL_##s)

typedef void (*ClockTest) (FalseClock *clock);

static void
run (gconstpointer data)
{
  FalseClock clock;

  false_clock_init (&clock);
  ((ClockTest) data) (&clock);
  false_clock_clear (&clock);
}

static void
test_shots (FalseClock *clock)
{
  static const LapShot expected[] = {
    { 0, 25, 65, 0 }, { 65, 85, 125, 1 }, { 125, 145, 185, 2 }, { 185, 235, 275, 3 }, { 275, 295, 335, 4 },
    { 335, 355, 395, 5 }, { 395, 425, 425, LAP_NO_TURN },
  };
  const LapShots *shots = lap_rehearsal_shots (clock->rehearsal);

  g_assert_cmpint (clock->timeline->length, ==, 425);
  g_assert_cmpuint (shots->n, ==, G_N_ELEMENTS (expected));
  for (guint i = 0; i < shots->n; i++) {
    g_assert_cmpint (shots->shots[i].start, ==, expected[i].start);
    g_assert_cmpint (shots->shots[i].work, ==, expected[i].work);
    g_assert_cmpint (shots->shots[i].end, ==, expected[i].end);
    g_assert_cmpuint (shots->shots[i].turn, ==, expected[i].turn);
    g_assert_cmpuint (lap_shots_find (shots, expected[i].start), ==, i);
    g_assert_cmpuint (lap_shots_find (shots, expected[i].end - 1), ==, i);
  }
  g_assert_cmpuint (lap_shots_find (shots, 10000), ==, 6);
}

static void
test_count_in (FalseClock *clock)
{
  assert_state (clock, READY);
  false_clock_pass (clock, 100);
  assert_at (clock, 0);
  lap_rehearsal_start (clock->rehearsal, 3);
  assert_state (clock, COUNT_IN);
  g_assert_cmpint (lap_rehearsal_count_in (clock->rehearsal), ==, 3 * LAP_SECOND);
  false_clock_pass (clock, 2.5);
  assert_state (clock, COUNT_IN);
  g_assert_cmpint (lap_rehearsal_count_in (clock->rehearsal), ==, LAP_SECOND / 2);
  assert_at (clock, 0);
  false_clock_pass (clock, 0.75);
  assert_state (clock, RUNNING);
  assert_at (clock, 0.25);
}

/* Uneven frames for an hour of looking: not a microsecond is lost. */
static void
test_exact (FalseClock *clock)
{
  gint64 began = clock->time;
  GRand *random = g_rand_new_with_seed (7);

  lap_rehearsal_start (clock->rehearsal, 0);
  while (clock->time - began < 424 * LAP_SECOND) {
    clock->time += g_rand_int_range (random, 1, 90000);
    lap_rehearsal_tick (clock->rehearsal);
    g_assert_cmpint (lap_rehearsal_clock (clock->rehearsal), ==, MIN (clock->time - began, 425 * LAP_SECOND));
  }
  clock->time = began + 425 * LAP_SECOND - 1;
  lap_rehearsal_tick (clock->rehearsal);
  assert_state (clock, RUNNING);
  clock->time++;
  g_assert_true (lap_rehearsal_tick (clock->rehearsal));
  assert_state (clock, DONE);
  assert_at (clock, 425);
  lap_rehearsal_start (clock->rehearsal, 0);
  assert_at (clock, 0);
  g_rand_free (random);
}

static void
test_hold (FalseClock *clock)
{
  lap_rehearsal_start (clock->rehearsal, 0);
  false_clock_pass (clock, 30.25);
  lap_rehearsal_hold (clock->rehearsal);
  false_clock_pass (clock, 1000);
  assert_state (clock, HELD);
  assert_at (clock, 30.25);
  lap_rehearsal_start (clock->rehearsal, 3);
  false_clock_pass (clock, 4);
  assert_at (clock, 31.25);
  g_assert_false (lap_rehearsal_was_away (clock->rehearsal));
}

/* Two seconds between looks are still seen, more are not. */
static void
test_gap (FalseClock *clock)
{
  lap_rehearsal_start (clock->rehearsal, 0);
  false_clock_pass (clock, 30);
  clock->time += LAP_GAP;
  lap_rehearsal_tick (clock->rehearsal);
  assert_state (clock, RUNNING);
  assert_at (clock, 32);
  clock->time += LAP_GAP + 1;
  g_assert_true (lap_rehearsal_tick (clock->rehearsal));
  assert_state (clock, HELD);
  assert_at (clock, 25);
  g_assert_true (lap_rehearsal_was_away (clock->rehearsal));
  lap_rehearsal_start (clock->rehearsal, 3);
  g_assert_false (lap_rehearsal_was_away (clock->rehearsal));
}

static void
test_sleep (FalseClock *clock)
{
  lap_rehearsal_sleep (clock->rehearsal);
  assert_state (clock, READY);
  lap_rehearsal_start (clock->rehearsal, 0);
  false_clock_pass (clock, 70.5);
  lap_rehearsal_sleep (clock->rehearsal);
  assert_state (clock, HELD);
  assert_at (clock, 65);
  /* Asleep in the count: it stands where it would have begun. */
  lap_rehearsal_jump (clock->rehearsal, 145);
  lap_rehearsal_start (clock->rehearsal, 3);
  clock->time += 3600 * LAP_SECOND;
  lap_rehearsal_tick (clock->rehearsal);
  assert_state (clock, HELD);
  assert_at (clock, 145);
}

static void
test_skip_and_back (FalseClock *clock)
{
  static const int boundaries[] = { 25, 65, 85, 125, 145, 163, 167, 185 };

  lap_rehearsal_start (clock->rehearsal, 0);
  for (guint i = 0; i < G_N_ELEMENTS (boundaries); i++) {
    false_clock_pass (clock, 1);
    lap_rehearsal_skip (clock->rehearsal);
    assert_at (clock, boundaries[i]);
    assert_state (clock, RUNNING);
  }
  false_clock_pass (clock, 5);
  lap_rehearsal_back (clock->rehearsal);
  assert_at (clock, 185);
  lap_rehearsal_back (clock->rehearsal);
  assert_at (clock, 167);
  lap_rehearsal_jump (clock->rehearsal, -5);
  assert_at (clock, 0);
  lap_rehearsal_back (clock->rehearsal);
  assert_at (clock, 0);
  lap_rehearsal_jump (clock->rehearsal, 420);
  lap_rehearsal_skip (clock->rehearsal);
  assert_state (clock, DONE);
  lap_rehearsal_back (clock->rehearsal);
  assert_state (clock, HELD);
  assert_at (clock, 415);
}

/* Moving about while counting in leaves the count alone; while held it stays held. */
static void
test_move_keeps_state (FalseClock *clock)
{
  lap_rehearsal_jump (clock->rehearsal, 85);
  assert_state (clock, READY);
  lap_rehearsal_start (clock->rehearsal, 3);
  false_clock_pass (clock, 1);
  lap_rehearsal_skip (clock->rehearsal);
  assert_state (clock, COUNT_IN);
  g_assert_cmpint (lap_rehearsal_count_in (clock->rehearsal), ==, 2 * LAP_SECOND);
  false_clock_pass (clock, 3);
  assert_at (clock, 126);
  lap_rehearsal_hold (clock->rehearsal);
  lap_rehearsal_skip (clock->rehearsal);
  assert_state (clock, HELD);
  assert_at (clock, 145);
}

static void
test_retake (FalseClock *clock)
{
  lap_rehearsal_start (clock->rehearsal, 0);
  false_clock_pass (clock, 100);
  g_assert_cmpuint (lap_rehearsal_retakes (clock->rehearsal), ==, 1);
  lap_rehearsal_retake (clock->rehearsal, 3);
  assert_state (clock, COUNT_IN);
  assert_at (clock, 65);
  false_clock_pass (clock, 3 + 25);
  assert_at (clock, 90);
  /* In the rest it is the talk there that is taken again; once more before it moves, and it is the block
   * before. */
  false_clock_pass (clock, 40);
  lap_rehearsal_retake (clock->rehearsal, 3);
  assert_at (clock, 125);
  false_clock_pass (clock, 1);
  lap_rehearsal_retake (clock->rehearsal, 3);
  assert_at (clock, 65);
  g_assert_cmpint (lap_rehearsal_count_in (clock->rehearsal), ==, 3 * LAP_SECOND);
}

static void
test_repeat (FalseClock *clock)
{
  gint64 ahead;

  lap_rehearsal_start (clock->rehearsal, 0);
  false_clock_pass (clock, 100);
  lap_rehearsal_set_repeat (clock->rehearsal, TRUE);
  g_assert_true (lap_rehearsal_ahead (clock->rehearsal, clock->time + 30 * LAP_SECOND, &ahead));
  g_assert_cmpint (ahead, ==, 70 * LAP_SECOND);
  false_clock_pass (clock, 25 + 60 + 60 + 1);
  assert_at (clock, 66);
  lap_rehearsal_set_repeat (clock->rehearsal, FALSE);
  assert_at (clock, 66);
  false_clock_pass (clock, 60);
  assert_at (clock, 126);
  lap_rehearsal_set_repeat (clock->rehearsal, TRUE);
  lap_rehearsal_jump (clock->rehearsal, 300);
  g_assert_false (lap_rehearsal_repeat (clock->rehearsal));
}

static void
test_ahead (FalseClock *clock)
{
  gint64 ahead;

  g_assert_false (lap_rehearsal_ahead (clock->rehearsal, clock->time, &ahead));
  lap_rehearsal_jump (clock->rehearsal, 65);
  lap_rehearsal_start (clock->rehearsal, 3);
  g_assert_true (lap_rehearsal_ahead (clock->rehearsal, clock->time + LAP_SECOND, &ahead));
  g_assert_cmpint (ahead, ==, 63 * LAP_SECOND);
  g_assert_true (lap_rehearsal_ahead (clock->rehearsal, clock->time + 4 * LAP_SECOND, &ahead));
  g_assert_cmpint (ahead, ==, 66 * LAP_SECOND);
  g_assert_false (lap_rehearsal_ahead (clock->rehearsal, clock->time + 1000 * LAP_SECOND, &ahead));
}

static void
test_speed (FalseClock *clock)
{
  lap_rehearsal_set_speed (clock->rehearsal, 20);
  lap_rehearsal_start (clock->rehearsal, 0);
  false_clock_pass (clock, 5);
  assert_at (clock, 100);
  lap_rehearsal_set_speed (clock->rehearsal, 1);
  false_clock_pass (clock, 5);
  assert_at (clock, 105);
}

static void
test_time_goes_back (FalseClock *clock)
{
  lap_rehearsal_start (clock->rehearsal, 0);
  false_clock_pass (clock, 10);
  clock->time -= 5 * LAP_SECOND;
  lap_rehearsal_tick (clock->rehearsal);
  assert_at (clock, 10);
}

/* What the clock should be, as simply as it can be said: it is added up, whole microsecond by whole
 * microsecond. */
typedef struct {
  gint64   clock, count_in;
  gboolean going;
} Model;

static void
model_pass (Model *model, gint64 length, gint64 time)
{
  gint64 counted = MIN (model->count_in, time);

  if (!model->going)
    return;
  model->count_in -= counted;
  model->clock = MIN (model->clock + time - counted, length);
  model->going = model->clock < length;
}

static gint64
boundary (const FalseClock *clock, gint64 at, gboolean after)
{
  gint64 found = 0;

  for (guint i = 0; i < clock->timeline->n; i++) {
    const LapInterval *interval = &clock->timeline->intervals[i];

    if (interval->start * LAP_SECOND <= at && at < clock->timeline->length * LAP_SECOND)
      found = (interval->start + (after ? interval->seconds : 0)) * LAP_SECOND;
  }
  return at >= clock->timeline->length * LAP_SECOND ? at : found;
}

static void
step (FalseClock *clock, Model *model, GRand *random)
{
  gint64 length = clock->timeline->length * LAP_SECOND, at;
  int seconds = g_rand_int_range (random, 0, 4);

  switch (g_rand_int_range (random, 0, 12)) {
    case 0:
      if (!model->going) {
        model->count_in = seconds * LAP_SECOND;
        model->clock = model->clock < length ? model->clock : 0;
        model->going = TRUE;
      }
      lap_rehearsal_start (clock->rehearsal, seconds);
      break;
    case 1:
      model->going = FALSE;
      lap_rehearsal_hold (clock->rehearsal);
      break;
    case 2:
      model->clock = boundary (clock, model->clock, TRUE);
      model->going = model->going && model->clock < length;
      lap_rehearsal_skip (clock->rehearsal);
      break;
    case 3:
      seconds = g_rand_int_range (random, 0, 425);
      model->clock = seconds * LAP_SECOND;
      lap_rehearsal_jump (clock->rehearsal, seconds);
      break;
    case 4:
      at = LAP_GAP + g_rand_int_range (random, 1, 1000000);
      clock->time += at;
      lap_rehearsal_tick (clock->rehearsal);
      if (model->going)
        model->clock = boundary (clock, model->clock, FALSE);
      model->going = FALSE;
      break;
    default:
      at = g_rand_int_range (random, 1, LAP_GAP);
      clock->time += at;
      lap_rehearsal_tick (clock->rehearsal);
      model_pass (model, length, at);
      break;
  }
}

static void
test_random (FalseClock *clock)
{
  GRand *random = g_rand_new_with_seed (20270111);
  Model model = { 0 };

  for (int i = 0; i < 200000; i++) {
    LapRehearsalState state;

    step (clock, &model, random);
    state = lap_rehearsal_state (clock->rehearsal);
    g_assert_cmpint (lap_rehearsal_clock (clock->rehearsal), ==, model.clock);
    g_assert_cmpint (state == LAP_REHEARSAL_RUNNING || state == LAP_REHEARSAL_COUNT_IN, ==, model.going);
    if (model.going)
      g_assert_cmpint (lap_rehearsal_count_in (clock->rehearsal), ==, model.count_in);
  }
  g_rand_free (random);
}

/* A session with nothing in it is done as soon as it begins. */
static void
test_empty (void)
{
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (LapSession) session = lap_session_new ("Empty");
  g_autoptr (LapTimeline) timeline = lap_timeline_new (session, builtin, NULL);
  FalseClock whole;
  LapRehearsal *rehearsal;

  false_clock_init (&whole);
  lap_rehearsal_free (whole.rehearsal);
  rehearsal = whole.rehearsal = lap_rehearsal_new (timeline, false_clock_time, &whole);
  lap_rehearsal_skip (rehearsal);
  lap_rehearsal_back (rehearsal);
  lap_rehearsal_retake (rehearsal, 3);
  lap_rehearsal_set_repeat (rehearsal, TRUE);
  lap_rehearsal_start (rehearsal, 0);
  lap_rehearsal_tick (rehearsal);
  g_assert_cmpint (lap_rehearsal_state (rehearsal), ==, LAP_REHEARSAL_DONE);
  false_clock_clear (&whole);
}

int
main (int argc, char **argv)
{
  static const struct {
    const char *path;
    ClockTest   test;
  } tests[] = {
    { "/rehearsal/shots", test_shots }, { "/rehearsal/count-in", test_count_in },
    { "/rehearsal/exact", test_exact },
    { "/rehearsal/hold", test_hold }, { "/rehearsal/gap", test_gap }, { "/rehearsal/sleep", test_sleep },
    { "/rehearsal/skip-and-back", test_skip_and_back }, { "/rehearsal/move-keeps-state", test_move_keeps_state },
    { "/rehearsal/retake", test_retake }, { "/rehearsal/repeat", test_repeat }, { "/rehearsal/ahead", test_ahead },
    { "/rehearsal/speed", test_speed }, { "/rehearsal/time-goes-back", test_time_goes_back },
    { "/rehearsal/random", test_random },
  };

  g_test_init (&argc, &argv, NULL);
  for (guint i = 0; i < G_N_ELEMENTS (tests); i++)
    g_test_add_data_func (tests[i].path, tests[i].test, run);
  g_test_add_func ("/rehearsal/empty", test_empty);
  return g_test_run ();
}
