/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Checks that ask how hard it gets. All of them rest on an estimate for the group, and say so.
 */
#include "base/halve.h"
#include "checks/ease.h"
#include "checks/remedies.h"
#include "checks/report.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#define AWAKE 0.30     /* of heart-rate reserve: the upper end of light, ACSM 2011 rounds it to 30–39 % */
#define CALM 0.60      /* above it is vigorous, ACSM 2011 */
#define TIRED 0.75
#define HARD_MET 7.0
#define DIP 60         /* seconds */
#define OVER_SPAN 180
#define BEYOND_SPAN 360
#define OVER_MARGIN 0.15
#define EPSILON 1e-9

static int
percent (double share)
{
  return (int) lround (100 * share);
}

/* The next stretch of main parts that touch, from part *@p on; *@p is then the part behind it. */
static gboolean
next_main (const LapCheckup *cx, guint *p, LapSpan *span)
{
  const LapTimeline *t = cx->timeline;

  while (*p < t->n_parts && t->parts[*p].part->kind != LAP_PART_MAIN)
    ++*p;
  if (*p == t->n_parts)
    return FALSE;
  span->start = t->parts[*p].start;
  while (*p < t->n_parts && t->parts[*p].part->kind == LAP_PART_MAIN)
    ++*p;
  span->end = t->parts[*p - 1].end;
  return TRUE;
}

/* A warning over seconds of main, at the part that it begins in. */
static LapWarning *
report_span (LapCheckup *cx, const LapCheck *check, double start, double end)
{
  const LapInterval *v = lap_timeline_at (cx->timeline, CLAMP ((int) start, 0, cx->timeline->length - 1));
  LapWarning *w = lap_report (cx, check);

  w->start = (int) start;
  w->end = (int) ceil (end);
  w->part = v->part;
  return w;
}

/* The first turn that isn't over at @second, or the last of all. */
static guint
turn_from (const LapCheckup *cx, int second)
{
  return LAP_HALVE (cx->timeline->n_turns - 1, i, LAP_TURN (cx, i)->end <= second);
}

/* Adds "Work hard in …", the other way round with @pace steady, for the block of @turn. */
static void
remedy_pace (const LapCheckup *cx, guint turn, LapPace pace, GPtrArray *remedies)
{
  const LapTask *task = LAP_TASK (cx, turn);
  LapEdits *edits = lap_edits_new (_("Change the pace"));

  if (task->pace != (int) pace)
    lap_edits_set_int (edits, task->block, "pace", pace);
  lap_remedy_add (remedies, g_strdup_printf (pace == LAP_PACE_HARD ? _("%s at a hard pace") : _("%s at a steady pace"),
                                             lap_turn_name (cx, turn)), edits);
}

/* Warm-up */

static gboolean
is_warm_up (const LapCheckup *cx, int turn)
{
  return turn < cx->first_main && LAP_TURN (cx, turn)->part_kind == LAP_PART_WARM_UP;
}

static void
find_warm_up_flat (LapCheckup *cx, const LapCheck *check)
{
  int last = cx->first_main - 1, end;
  double peak;
  LapWarning *w;

  while (last >= 0 && !is_warm_up (cx, last))
    last--;
  if (last < 0)
    return;
  end = LAP_TURN (cx, cx->first_main)->start;
  peak = lap_effort_peak (cx->effort, 0, end, NULL);
  if (peak >= AWAKE)
    return;
  w = lap_report_part (cx, check, LAP_TURN (cx, last)->part);
  w->x = peak;
  w->a = last;
}

static char *
tell_warm_up_flat (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup_printf (_("The warm-up reaches %d %% effort at most; 30 %% wakes the body up."), percent (w->x));
}

/* The later in the warm-up, the better. */
static void
remedy_warm_up_flat (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  for (int i = w->a; i >= 0; i--)
    if (is_warm_up (cx, i))
      remedy_pace (cx, i, LAP_PACE_HARD, remedies);
  lap_remedy_ease_for (cx, w->part, 0, LAP_IMPACT_LOW, remedies);
}

static void
find_warm_up_hard (LapCheckup *cx, const LapCheck *check)
{
  g_autofree guint8 *told = g_malloc0 (MAX (1, cx->timeline->n_tasks));
  int start = -1, end = 0;

  for (int i = 0; i < cx->first_main; i++)
    if (is_warm_up (cx, i)) {
      start = start < 0 ? LAP_TURN (cx, i)->start : start;
      end = LAP_TURN (cx, i)->end;
    }
  for (int i = 0; i < cx->first_main; i++) {
    const LapTask *task = LAP_TASK (cx, i);
    gboolean jumps = task->shown != NULL && task->shown->impact == LAP_IMPACT_HIGH;
    LapWarning *w;

    if (!is_warm_up (cx, i) || told[LAP_TURN (cx, i)->task] ||
        !(task->met >= HARD_MET || (jumps && 2 * LAP_TURN (cx, i)->start < start + end)))
      continue;
    told[LAP_TURN (cx, i)->task] = TRUE;
    w = lap_report_turns (cx, check, i, i, i);
    w->x = task->met;
    w->c = task->met < HARD_MET;
  }
}

static char *
tell_warm_up_hard (const LapCheckup *cx, const LapWarning *w)
{
  if (w->c)
    return g_strdup_printf (_("%s jumps before the warm-up is half done."), lap_turn_name (cx, w->a));
  return g_strdup_printf (_("%1$s takes %2$.1f METs in the warm-up, as much as hard work."), lap_turn_name (cx, w->a),
                          w->x);
}

static void
remedy_warm_up_hard (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  remedy_pace (cx, w->a, LAP_PACE_STEADY, remedies);
  lap_remedy_easier (cx, w->a, remedies);
  lap_remedy_swap (cx, w, w->a, remedies);
}

/* Cool-down */

static void
find_cool_down_abrupt (LapCheckup *cx, const LapCheck *check)
{
  for (guint i = cx->last_main + 1; i < cx->timeline->n_turns; i++) {
    const LapTask *task = LAP_TASK (cx, i);
    int start = LAP_TURN (cx, i)->start;
    LapWarning *w;

    if (LAP_TURN (cx, i)->part_kind != LAP_PART_COOL_DOWN || task->shown == NULL ||
        !(lap_posture_lies (task->shown->posture) || lap_exercise_is_hold (task->shown)) ||
        lap_effort_peak (cx->effort, MAX (0, start - 60), start, NULL) <= CALM)
      continue;
    w = lap_report_turns (cx, check, i, i, i);
    w->severity = cx->tender ? LAP_SEVERITY_WARNING : LAP_SEVERITY_NOTE;
    w->x = lap_effort_peak (cx->effort, MAX (0, start - 60), start, NULL);
    return;
  }
}

static char *
tell_cool_down_abrupt (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup_printf (_("%1$s comes less than a minute after %2$d %% effort."), lap_turn_name (cx, w->a),
                          percent (w->x));
}

/* Easy steps first, from the cool-down itself or new. */
static void
remedy_cool_down_abrupt (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  LapPart *part = lap_session_nth (cx->session, w->part);
  LapFilter filter = LAP_FILTER_ANY;

  filter.postures = LAP_BIT (LAP_POSTURE_STANDING);
  filter.uses = LAP_BIT (LAP_USE_WARM_UP);
  filter.has_kit = TRUE;
  filter.impact = LAP_IMPACT_NONE;
  filter.quiet = cx->session->quiet;
  filter.without = lap_words_mask (&lap_care_words, (const char * const *) cx->session->also_for);
  lap_remedy_swap (cx, w, w->a, remedies);
  for (guint i = 0, n = 0; i < lap_catalogue_n (cx->timeline->catalogue) && n < 3; i++) {
    LapExercise *e = lap_catalogue_nth (cx->timeline->catalogue, i);
    g_autoptr (LapBlock) block = NULL;

    if (e->pattern != LAP_PATTERN_CARDIO_STEP || !lap_filter_matches (&filter, e))
      continue;
    block = lap_block_new_exercise (e->id, 120, 10);
    lap_remedy_add (remedies, g_strdup_printf (_("Two minutes of %s first"), lap_exercise_name (e)),
                    lap_verb_add_block (part, w->block, block, cx->timeline->catalogue));
    n++;
  }
}

/* tired-balance */

static gboolean
needs_care (const LapTask *task)
{
  const guint32 weights = LAP_BIT (LAP_KIT_DUMBBELLS) | LAP_BIT (LAP_KIT_DUMBBELL) | LAP_BIT (LAP_KIT_KETTLEBELL) |
                          LAP_BIT (LAP_KIT_MEDICINE_BALL) | LAP_BIT (LAP_KIT_BAR);

  return task->shown != NULL &&
         ((task->load_mask & LAP_BIT (LAP_CARE_BALANCE)) || (task->kit & LAP_BIT (LAP_KIT_STEP)) ||
          (task->shown->pattern == LAP_PATTERN_HINGE && (task->kit & weights)));
}

static void
find_tired_balance (LapCheckup *cx, const LapCheck *check)
{
  g_autofree guint8 *told = g_malloc0 (MAX (1, cx->timeline->n_tasks));

  for (guint i = 0; i < cx->timeline->n_turns; i++) {
    const LapTurn *turn = LAP_TURN (cx, i);
    double x;
    LapWarning *w;

    if (told[turn->task] || !needs_care (LAP_TASK (cx, i)))
      continue;
    x = lap_effort_at (cx->effort, turn->start);
    if (x <= TIRED)
      continue;
    told[turn->task] = TRUE;
    w = lap_report_turns (cx, check, i, i, i);
    w->severity = cx->tender ? LAP_SEVERITY_WARNING : LAP_SEVERITY_NOTE;
    w->x = x;
  }
}

static char *
tell_tired_balance (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup_printf (_("%1$s begins at %2$d %% effort and needs a steady body."), lap_turn_name (cx, w->a),
                          percent (w->x));
}

/* Swaps, and a rest before it: effort falls to three quarters of itself in a quarter of a minute. */
static void
remedy_tired_balance (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  const LapTurn *before = w->a > 0 ? LAP_TURN (cx, w->a - 1) : NULL;

  lap_remedy_swap (cx, w, w->a, remedies);
  if (before != NULL && (int) before->part == w->part && before->rest > 0) {
    int rest = before->rest + 20;

    lap_remedy_add (remedies, g_strdup_printf (_("Rest %1$d s after %2$s"), rest, lap_turn_name (cx, w->a - 1)),
                    lap_verb_set_rest (LAP_TASK (cx, w->a - 1)->block, rest, cx->timeline->catalogue));
  }
}

/* effort-dip */

static LapSeverity
severity_of (const LapCheckup *cx, gboolean also)
{
  double low, high;

  return lap_session_band (cx->session, &low, &high) || also ? LAP_SEVERITY_WARNING : LAP_SEVERITY_NOTE;
}

/* The first and last moment in main at which effort is not below the band. FALSE when there is none. */
static gboolean
inside (const LapCheckup *cx, LapEffortRun *whole)
{
  gboolean any = FALSE;
  LapSpan span;

  for (guint p = 0; next_main (cx, &p, &span);) {
    LapEffortRun run;

    for (double at = span.start; lap_effort_next_run (cx->effort, at, span.end, cx->effort->low, FALSE, &run);
         at = run.end) {
      whole->start = any ? whole->start : run.start;
      whole->end = run.end;
      any = TRUE;
    }
  }
  return any;
}

/* Once for each block that it begins with, at its first round. */
static void
report_dip (LapCheckup *cx, const LapCheck *check, const LapEffortRun *run, guint8 *told)
{
  guint32 task = LAP_TURN (cx, turn_from (cx, (int) run->start))->task;
  LapWarning *w;

  if (run->end - run->start < DIP || told[task])
    return;
  told[task] = TRUE;
  w = report_span (cx, check, run->start, run->end);
  w->severity = severity_of (cx, FALSE);
  w->x = run->end - run->start;
  w->y = cx->effort->low;
}

static void
find_effort_dip (LapCheckup *cx, const LapCheck *check)
{
  g_autofree guint8 *told = g_malloc0 (MAX (1, cx->timeline->n_tasks));
  LapEffortRun whole, run;
  LapSpan span;

  if (!inside (cx, &whole))
    return;
  for (guint p = 0; next_main (cx, &p, &span);)
    for (double at = MAX (span.start, whole.start), end = MIN (span.end, whole.end);
         at < end && lap_effort_next_run (cx->effort, at, end, cx->effort->low, TRUE, &run); at = run.end)
      report_dip (cx, check, &run, told);
}

static char *
tell_effort_dip (const LapCheckup *cx, const LapWarning *w)
{
  g_autofree char *length = lap_duration_text ((int) w->x);

  return g_strdup_printf (_("Effort stays below %1$d %% for %2$s; an estimate, people differ."), percent (w->y), length);
}

/* Shorter breaks first, then harder work in that stretch. */
static void
remedy_effort_dip (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  const LapTimeline *t = cx->timeline;

  for (guint i = 0; i < t->n && t->intervals[i].start < w->end; i++) {
    const LapInterval *v = &t->intervals[i];

    if (v->start + v->seconds <= w->start - 1 || v->kind != LAP_INTERVAL_PAUSE)
      continue;
    for (int seconds = 60; seconds >= 30; seconds -= 15)
      if (seconds < v->seconds)
        lap_remedy_add (remedies, g_strdup_printf (_("Pause %d s"), seconds),
                        lap_verb_set_seconds (t->tasks[v->task].block, seconds, t->catalogue));
  }
  for (guint i = turn_from (cx, w->start); i < t->n_turns && LAP_TURN (cx, i)->start < w->end; i++) {
    const LapTask *task = LAP_TASK (cx, i);

    remedy_pace (cx, i, LAP_PACE_HARD, remedies);
    if (task->shown != NULL && task->shown->harder != NULL && task->option == LAP_OPTION_AS_SHOWN)
      lap_remedy_add (remedies, g_strdup_printf (_("The harder option of %s"), lap_turn_name (cx, i)),
                      lap_verb_set_option (task->block, LAP_OPTION_HARDER, t->catalogue));
    lap_remedy_swap (cx, w, i, remedies);
  }
}

/* effort-over */

/* Looks at one window. Above 0 when it is over, else below; the number without its sign is how many seconds on the
 * next window that need be looked at begins, since nothing can change faster. */
typedef int (*OverFunc) (const LapCheckup *cx, int start, int end, double *value);

/* Reports the windows of @length within @span that are over, those that touch as one. */
static void
find_windows (LapCheckup *cx, const LapCheck *check, LapSpan span, int length, OverFunc over, guint which)
{
  int from = -1, until = -1;
  double most = 0;

  for (int start = span.start, step; start + length <= span.end || from >= 0; start += ABS (step)) {
    double value = 0;

    step = start + length <= span.end ? over (cx, start, start + length, &value) : -1;
    if (step > 0) {
      from = from < 0 ? start : from;
      until = MIN (start + step - 1 + length, span.end);
      most = MAX (most, value);
    }
    if (from >= 0 && (start + length > span.end || start > until)) {
      LapWarning *w = report_span (cx, check, from, until);

      w->severity = severity_of (cx, cx->tender);
      w->c = which;
      w->x = most;
      from = -1;
      most = 0;
    }
  }
}

/* A mean over three minutes moves by 1/180 a second at the most. While it is over, every tenth second is near enough
 * to its top. */
static int
is_over (const LapCheckup *cx, int start, int end, double *value)
{
  double most = cx->effort->high - OVER_MARGIN;
  int step;

  *value = lap_effort_mean (cx->effort, start, end);
  step = MAX (1, (int) (fabs (most - *value) * OVER_SPAN));
  return *value > most + EPSILON ? MIN (step, 10) : -step;
}

/* Whether more than a third of the work asks for more than there is. A second adds to one end and takes from the
 * other, so three times the beyond less all work moves by 3 at the most. */
static int
is_beyond (const LapCheckup *cx, int start, int end, double *value)
{
  const LapTimeline *t = cx->timeline;
  int work = 0, beyond = 0;

  for (guint i = lap_timeline_at (t, start) - t->intervals; i < t->n && t->intervals[i].start < end; i++) {
    const LapInterval *v = &t->intervals[i];
    int seconds = MIN (end, v->start + v->seconds) - MAX (start, v->start);

    if (v->kind != LAP_INTERVAL_WORK)
      continue;
    work += seconds;
    if (cx->effort->segments[i].demand > 1 + EPSILON)
      beyond += seconds;
  }
  *value = work > 0 ? (double) beyond / work : 0;
  return 3 * beyond > work ? MAX (1, (3 * beyond - work) / 3) : -MAX (1, (work - 3 * beyond) / 3);
}

/* Whether anything asks for more than there is: mostly nothing does, and then no window need be looked at. */
static gboolean
any_beyond (const LapEffort *effort)
{
  for (guint i = 0; i < effort->n; i++)
    if (effort->segments[i].demand > 1 + EPSILON)
      return TRUE;
  return FALSE;
}

static void
find_effort_over (LapCheckup *cx, const LapCheck *check)
{
  gboolean beyond = any_beyond (cx->effort);
  LapSpan span;

  for (guint p = 0; next_main (cx, &p, &span);) {
    find_windows (cx, check, span, OVER_SPAN, is_over, 0);
    if (beyond)
      find_windows (cx, check, span, BEYOND_SPAN, is_beyond, 1);
  }
}

static char *
tell_effort_over (const LapCheckup *cx, const LapWarning *w)
{
  if (w->c)
    return g_strdup_printf (_("%d %% of the work in six minutes asks for more than this group can reach; an estimate, "
                              "people differ."), percent (w->x));
  return g_strdup_printf (_("Over three minutes effort is %1$d %% on the average; up to %2$d %% can be kept up. An "
                            "estimate, people differ."), percent (w->x), percent (cx->effort->high - OVER_MARGIN));
}

/* Steady work or longer rests for the blocks of that stretch. */
static void
remedy_effort_over (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  LapEdits *rest = lap_edits_new (_("Rest longer")), *steady = lap_edits_new (_("Work steadily"));
  guint first = turn_from (cx, w->start), hardest = first;

  for (guint i = first; i < cx->timeline->n_turns && LAP_TURN (cx, i)->start < w->end; i++) {
    LapBlock *block = LAP_TASK (cx, i)->block;

    if (LAP_TASK (cx, i)->met > LAP_TASK (cx, hardest)->met)
      hardest = i;
    if (i > first && LAP_TURN (cx, i)->round != LAP_TURN (cx, first)->round)
      continue;
    lap_edits_set_int (rest, block, "rest", block->rest + 15);
    lap_edits_set_int (steady, block, "pace", LAP_PACE_STEADY);
  }
  lap_remedy_easier (cx, hardest, remedies);
  lap_remedy_swap (cx, w, hardest, remedies);
  lap_remedy_add (remedies, g_strdup (_("15 s more rest after each")), rest);
  lap_remedy_add (remedies, g_strdup (_("Steady instead of hard")), steady);
}

/* effort-early */

static void
find_effort_early (LapCheckup *cx, const LapCheck *check)
{
  double peak = -1, when = 0, total = 0;
  LapSpan span;
  LapWarning *w;

  if (cx->first_main < 0)
    return;
  for (guint p = 0; p < cx->timeline->n_parts; p++)
    if (cx->timeline->parts[p].part->kind == LAP_PART_MAIN &&
        cx->timeline->parts[p].part->run == LAP_RUN_STATIONS)
      return;
  for (guint p = 0; next_main (cx, &p, &span);) {
    double at, x = lap_effort_peak (cx->effort, span.start, span.end, &at);

    if (x >= peak - 1e-6) {
      peak = MAX (x, peak);
      when = total + at - span.start;
    }
    total += span.end - span.start;
  }
  if (when >= total / 4)
    return;
  w = report_span (cx, check, cx->timeline->parts[cx->first_main_part].start + when,
                   cx->timeline->parts[cx->first_main_part].start + when);
  w->x = peak;
  w->a = turn_from (cx, w->start - 1);
}

static char *
tell_effort_early (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup_printf (_("The main part is hardest at %1$s, in its first quarter (%2$d %%, an estimate)."),
                          lap_turn_name (cx, w->a), percent (w->x));
}

static void
remedy_effort_early (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  lap_remedy_swap (cx, w, w->a, remedies);
  lap_remedy_easier (cx, w->a, remedies);
}

#define CLASSES N_("classes of effort: ACSM position stand 2011; estimate of this program")

const LapCheck lap_checks_effort[] = {
  { "warm-up-flat", LAP_SEVERITY_WARNING, LAP_NEEDS_EFFORT, N_("A warm-up that stays cold"),
    N_("Pulse and breath rise step by step to about a third of what people can do before the hard work begins."),
    CLASSES, find_warm_up_flat, tell_warm_up_flat, NULL, remedy_warm_up_flat },
  { "warm-up-hard", LAP_SEVERITY_WARNING, LAP_NEEDS_EFFORT, N_("A warm-up that is hard already"),
    N_("Cold muscles and an unready heart meet jumps and hard work badly; they come later."), N_("common practice"),
    find_warm_up_hard, tell_warm_up_hard, NULL, remedy_warm_up_hard },
  { "cool-down-abrupt", LAP_SEVERITY_NOTE, LAP_NEEDS_EFFORT, N_("Down at once after hard work"),
    N_("A minute on the feet lets the pulse fall; lying down or holding still at once makes some people dizzy."),
    N_("common practice"), find_cool_down_abrupt, tell_cool_down_abrupt, NULL, remedy_cool_down_abrupt },
  { "tired-balance", LAP_SEVERITY_NOTE, LAP_NEEDS_EFFORT, N_("Balance when out of breath"),
    N_("On one leg, on a step or bent over with a weight, a tired body sways; it comes earlier or after a rest."),
    N_("common practice"), find_tired_balance, tell_tired_balance, NULL, remedy_tired_balance },
  { "effort-dip", LAP_SEVERITY_NOTE, LAP_NEEDS_EFFORT, N_("Effort drops in the middle"),
    N_("A minute and more below the band that is wanted lets people cool down and lose the thread."), CLASSES,
    find_effort_dip, tell_effort_dip, NULL, remedy_effort_dip },
  { "effort-over", LAP_SEVERITY_NOTE, LAP_NEEDS_EFFORT, N_("Too hard for too long"),
    N_("Near the top of the band people last a minute or two; then form goes, or they stop."), CLASSES,
    find_effort_over, tell_effort_over, NULL, remedy_effort_over },
  { "effort-early", LAP_SEVERITY_NOTE, LAP_NEEDS_EFFORT, N_("The hardest comes first"),
    N_("Effort that climbs to its top in the second half keeps people with you to the end."), N_("common practice"),
    find_effort_early, tell_effort_early, NULL, remedy_effort_early },
  { NULL },
};
