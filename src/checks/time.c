/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Checks of length, warm-up, cool-down and breaks.
 */
#include "checks/ease.h"
#include "checks/remedies.h"
#include "checks/report.h"

#include <glib/gi18n-lib.h>

#define SLACK 15

/* Length */

static void
find_over (LapCheckup *cx, const LapCheck *check)
{
  int target = cx->session->target;
  LapWarning *w;

  if (target <= 0 || cx->timeline->length <= target + SLACK)
    return;
  w = lap_report (cx, check);
  w->start = target;
  w->end = cx->timeline->length;
}

static void
find_under (LapCheckup *cx, const LapCheck *check)
{
  if (cx->session->target > 0 && cx->timeline->length < 0.9 * cx->session->target)
    lap_report (cx, check);
}

static char *
tell_length (const LapCheckup *cx, const LapWarning *w)
{
  int over = cx->timeline->length - cx->session->target;
  g_autofree char *by = lap_duration_text (ABS (over));
  g_autofree char *length = lap_clock_text (cx->timeline->length);
  g_autofree char *target = lap_clock_text (cx->session->target);

  return g_strdup_printf (over > 0 ? _("The session is %1$s too long: %2$s, and it should be %3$s.")
                                   : _("The session is %1$s short of its target: %2$s of %3$s."),
                          by, length, target);
}

/* The rounds by which each main part would make the length right, as near as whole rounds can. */
static void
add_rounds (const LapCheckup *cx, GPtrArray *remedies)
{
  int missing = cx->session->target - cx->timeline->length;

  for (guint p = 0; p < cx->timeline->n_parts; p++) {
    LapPart *part = lap_session_nth (cx->session, p);
    int each = (cx->timeline->parts[p].end - cx->timeline->parts[p].start) / part->rounds;
    int rounds;

    if (part->kind != LAP_PART_MAIN || part->run == LAP_RUN_OWN_PACE || each == 0)
      continue;
    rounds = part->rounds + (missing > 0 ? MAX (1, missing / each) : (missing - SLACK) / each - 1);
    if (rounds >= 1 && rounds <= 100)
      lap_remedy_add (remedies,
                      g_strdup_printf (ngettext ("%1$d round of %2$s", "%1$d rounds of %2$s", rounds), rounds,
                                       lap_part_title (part)),
                      lap_verb_set_rounds (part, rounds));
  }
}

static void
remedy_over (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  LapEdits *edits = lap_edits_new (_("Change the target"));
  g_autofree char *length = lap_clock_text (cx->timeline->length);

  add_rounds (cx, remedies);
  lap_edits_set_int (edits, cx->session, "target", cx->timeline->length);
  lap_remedy_add (remedies, g_strdup_printf (_("Make %s the target"), length), edits);
}

static void
remedy_under (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  add_rounds (cx, remedies);
}

static void
find_main_long (LapCheckup *cx, const LapCheck *check)
{
  int seconds = 0;

  for (guint p = 0; p < cx->timeline->n_parts; p++)
    if (cx->timeline->parts[p].part->kind == LAP_PART_MAIN)
      seconds += cx->timeline->parts[p].end - cx->timeline->parts[p].start;
  if (seconds > 3600)
    lap_report_part (cx, check, cx->first_main_part)->a = seconds;
}

static char *
tell_main_long (const LapCheckup *cx, const LapWarning *w)
{
  g_autofree char *length = lap_duration_text (w->a);

  return g_strdup_printf (_("The main part lasts %s, more than an hour."), length);
}

/* Warm-up and cool-down */

/* Seconds of work and rest, as written, in the parts of @kind before the first main turn or after the last; -1 without
 * any work. */
static int
ease_seconds (const LapCheckup *cx, LapPartKind kind)
{
  const LapTimeline *t = cx->timeline;
  int seconds = 0;
  gboolean any = FALSE;

  for (guint p = 0; p < t->n_parts; p++) {
    const LapStretch *s = &t->parts[p];
    gboolean counts = kind == LAP_PART_WARM_UP ? (int) s->turn < cx->first_main
                                               : (int) (s->turn + s->n_turns) > cx->last_main + 1;

    if (s->part->kind != (int) kind || !counts)
      continue;
    seconds += s->work + s->rest;
    any |= s->n_turns > 0;
  }
  return any ? seconds : -1;
}

static int
warm_up_least (const LapCheckup *cx)
{
  return CLAMP ((int) (0.15 * cx->timeline->length), 180, 420) + (cx->tender ? 120 : 0);
}

static int
cool_down_least (const LapCheckup *cx)
{
  return CLAMP ((int) (0.10 * cx->timeline->length), 120, 300);
}

static void
find_warm_up (LapCheckup *cx, const LapCheck *check, gboolean missing)
{
  int seconds = ease_seconds (cx, LAP_PART_WARM_UP);
  LapWarning *w;

  if (cx->first_main < 0 || (seconds < 0) != missing || (!missing && seconds >= warm_up_least (cx)))
    return;
  w = lap_report (cx, check);
  w->part = LAP_TURN (cx, cx->first_main)->part;
  w->start = missing ? LAP_TURN (cx, cx->first_main)->start : 0;
  w->end = LAP_TURN (cx, cx->first_main)->start;
  w->a = MAX (0, seconds);
  w->b = warm_up_least (cx);
}

static void
find_warm_up_missing (LapCheckup *cx, const LapCheck *check)
{
  find_warm_up (cx, check, TRUE);
}

static void
find_warm_up_short (LapCheckup *cx, const LapCheck *check)
{
  find_warm_up (cx, check, FALSE);
}

static char *
tell_warm_up_missing (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup_printf (_("There is no warm-up before %s."), lap_turn_name (cx, cx->first_main));
}

static char *
tell_warm_up_short (const LapCheckup *cx, const LapWarning *w)
{
  g_autofree char *has = lap_duration_text (w->a), *needs = lap_duration_text (w->b);

  return g_strdup_printf (_("The warm-up lasts %1$s; this session asks for %2$s."), has, needs);
}

static void
remedy_warm_up_missing (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  lap_remedy_ease (cx, LAP_PART_WARM_UP, w->b, remedies);
}

static void
remedy_warm_up_short (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  lap_remedy_longer (cx, LAP_PART_WARM_UP, w->b - w->a, remedies);
}

static void
find_cool_down (LapCheckup *cx, const LapCheck *check, gboolean missing)
{
  int seconds = ease_seconds (cx, LAP_PART_COOL_DOWN);
  LapWarning *w;

  if (cx->last_main < 0 || (seconds < 0) != missing || (!missing && seconds >= cool_down_least (cx)))
    return;
  w = lap_report (cx, check);
  w->part = LAP_TURN (cx, cx->last_main)->part;
  w->start = LAP_TURN (cx, cx->last_main)->end;
  w->end = cx->timeline->length;
  w->a = MAX (0, seconds);
  w->b = cool_down_least (cx);
}

static void
find_cool_down_missing (LapCheckup *cx, const LapCheck *check)
{
  find_cool_down (cx, check, TRUE);
}

static void
find_cool_down_short (LapCheckup *cx, const LapCheck *check)
{
  find_cool_down (cx, check, FALSE);
}

static char *
tell_cool_down_missing (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup_printf (_("The session stops after %s, without a cool-down."), lap_turn_name (cx, cx->last_main));
}

static char *
tell_cool_down_short (const LapCheckup *cx, const LapWarning *w)
{
  g_autofree char *has = lap_duration_text (w->a), *needs = lap_duration_text (w->b);

  return g_strdup_printf (_("The cool-down lasts %1$s; this session asks for %2$s."), has, needs);
}

static void
remedy_cool_down_missing (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  lap_remedy_ease (cx, LAP_PART_COOL_DOWN, w->b, remedies);
}

static void
remedy_cool_down_short (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  lap_remedy_longer (cx, LAP_PART_COOL_DOWN, w->b - w->a, remedies);
}

/* Between the last warm-up work and the first main work. */

static int
last_warm_up (const LapCheckup *cx)
{
  int i = cx->first_main - 1;

  while (i >= 0 && LAP_TURN (cx, i)->part_kind != LAP_PART_WARM_UP)
    i--;
  return i;
}

static void
find_gone_cold (LapCheckup *cx, const LapCheck *check)
{
  const LapTimeline *t = cx->timeline;
  int last = last_warm_up (cx), idle = 0;
  LapWarning *w;

  if (last < 0)
    return;
  for (guint i = LAP_TURN (cx, last)->interval; i < LAP_TURN (cx, cx->first_main)->interval; i++)
    if (t->intervals[i].kind == LAP_INTERVAL_TALK || t->intervals[i].kind == LAP_INTERVAL_PAUSE)
      idle += t->intervals[i].seconds;
  if (idle <= 150)
    return;
  w = lap_report (cx, check);
  w->start = LAP_TURN (cx, last)->end;
  w->end = LAP_TURN (cx, cx->first_main)->start;
  w->part = LAP_TURN (cx, cx->first_main)->part;
  w->a = idle;
}

static char *
tell_gone_cold (const LapCheckup *cx, const LapWarning *w)
{
  g_autofree char *idle = lap_duration_text (w->a);

  return g_strdup_printf (_("People stand still for %1$s between the warm-up and %2$s."), idle,
                          lap_turn_name (cx, cx->first_main));
}

/* The talk or pause in that gap, moved to the very beginning. */
static void
remedy_gone_cold (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  const LapTimeline *t = cx->timeline;
  LapPart *first = lap_session_nth (cx->session, 0);

  for (guint i = LAP_TURN (cx, last_warm_up (cx))->interval; i < LAP_TURN (cx, cx->first_main)->interval; i++) {
    const LapInterval *v = &t->intervals[i];

    if (v->kind == LAP_INTERVAL_TALK && first->rounds == 1)
      lap_remedy_add (remedies, g_strdup (_("Say it before the warm-up")),
                      lap_verb_move (lap_session_nth (cx->session, v->part), v->block, first, 0, t->catalogue));
  }
}

static const struct {
  const char *name;
  guint32 regions;
} body[] = {
  { N_("the upper body"), LAP_BIT (LAP_REGION_CHEST) | LAP_BIT (LAP_REGION_UPPER_BACK) |
                          LAP_BIT (LAP_REGION_SHOULDERS) | LAP_BIT (LAP_REGION_ARMS) },
  { N_("the trunk"), LAP_BIT (LAP_REGION_FRONT_CORE) | LAP_BIT (LAP_REGION_SIDE_CORE) |
                     LAP_BIT (LAP_REGION_LOWER_BACK) },
  { N_("the legs"), LAP_BIT (LAP_REGION_THIGHS) | LAP_BIT (LAP_REGION_GLUTES) | LAP_BIT (LAP_REGION_CALVES) },
};

static void
find_warm_up_misses (LapCheckup *cx, const LapCheck *check)
{
  guint32 warm = 0, loaded = 0;
  int last = cx->first_main >= 0 ? last_warm_up (cx) : -1;

  if (last < 0)
    return;
  for (guint i = 0; i < cx->timeline->n_turns; i++) {
    const LapTask *task = LAP_TASK (cx, i);

    if ((int) i < cx->first_main && LAP_TURN (cx, i)->part_kind == LAP_PART_WARM_UP)
      warm |= lap_muscle_regions (task->primary | task->secondary);
    else if (LAP_TURN (cx, i)->part_kind == LAP_PART_MAIN && !LAP_TURN (cx, i)->repeats)
      loaded |= lap_muscle_regions (task->primary);
  }
  for (guint i = 0; i < G_N_ELEMENTS (body); i++)
    if ((loaded & body[i].regions) && !(warm & body[i].regions)) {
      LapWarning *w = lap_report_part (cx, check, LAP_TURN (cx, last)->part);

      w->a = i;
    }
}

static char *
tell_warm_up_misses (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup_printf (_("The warm-up leaves out %s, which the main part loads."), _(body[w->a].name));
}

static void
remedy_warm_up_misses (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  lap_remedy_ease_for (cx, w->part, body[w->a].regions, LAP_IMPACT_NONE, remedies);
}

static void
find_no_build_up (LapCheckup *cx, const LapCheck *check)
{
  int last = cx->first_main >= 0 ? last_warm_up (cx) : -1;
  int high = -1;

  if (last < 0)
    return;
  for (int i = 0; i <= cx->last_main; i++) {
    const LapExercise *e = LAP_TASK (cx, i)->shown;

    if (e == NULL)
      continue;
    if (LAP_TURN (cx, i)->part_kind == LAP_PART_WARM_UP && i < cx->first_main && e->impact != LAP_IMPACT_NONE)
      return;
    if (LAP_TURN (cx, i)->part_kind == LAP_PART_MAIN && e->impact == LAP_IMPACT_HIGH && high < 0)
      high = i;
  }
  if (high >= 0)
    lap_report_part (cx, check, LAP_TURN (cx, last)->part)->a = high;
}

static char *
tell_no_build_up (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup_printf (_("The main part jumps (%s), and nothing in the warm-up leads up to it."),
                          lap_turn_name (cx, w->a));
}

static void
remedy_no_build_up (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  lap_remedy_ease_for (cx, w->part, 0, LAP_IMPACT_LOW, remedies);
}

/* Water */

static void
find_water_far (LapCheckup *cx, const LapCheck *check)
{
  const LapTimeline *t = cx->timeline;
  int from = -1;

  for (guint i = 0; i <= t->n; i++) {
    const LapInterval *v = i < t->n ? &t->intervals[i] : NULL;
    gboolean in_main = v != NULL && t->parts[v->part].part->kind == LAP_PART_MAIN;
    gboolean drink = v != NULL && (v->kind == LAP_INTERVAL_PAUSE ||
                                   (v->kind == LAP_INTERVAL_ROUND_REST && v->seconds >= 30));
    int now = v != NULL ? v->start : t->length;

    if (in_main && !drink && from < 0)
      from = now;
    if ((in_main && !drink) || from < 0)
      continue;
    if (now - from > 15 * 60) {
      LapWarning *w = lap_report (cx, check);

      w->start = from;
      w->end = now;
      w->part = t->intervals[i - 1].part;
    }
    from = -1;
  }
}

static char *
tell_water_far (const LapCheckup *cx, const LapWarning *w)
{
  g_autofree char *length = lap_duration_text (w->end - w->start);

  return g_strdup_printf (_("For %s of the main part there is no time to drink."), length);
}

static void
remedy_water_far (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  LapPart *part = lap_session_nth (cx->session, w->part);
  LapEdits *edits = lap_edits_new (_("Change the rest between rounds"));

  if (part->rounds > 1)
    lap_edits_set_int (edits, part, "round-rest", 60);
  lap_remedy_add (remedies, g_strdup (_("Rest 60 s between rounds")), edits);
}

const LapCheck lap_checks_time[] = {
  { "length-over", LAP_SEVERITY_WARNING, LAP_NEEDS_TIMELINE, N_("Longer than it should be"),
    N_("A plan that overruns is cut at the end, and the end is the cool-down."), N_("common practice"),
    find_over, tell_length, NULL, remedy_over },
  { "main-long", LAP_SEVERITY_NOTE, LAP_NEEDS_TIMELINE, N_("A long main part"),
    N_("Twenty to sixty minutes of conditioning is the usual range."),
    N_("ACSM Guidelines for Exercise Testing and Prescription, parts of a session"),
    find_main_long, tell_main_long, NULL, NULL },
  { "length-under", LAP_SEVERITY_NOTE, LAP_NEEDS_TIMELINE, N_("Shorter than it should be"),
    N_("People who came for the whole time notice a tenth of it missing."), N_("common practice"),
    find_under, tell_length, NULL, remedy_under },
  { "warm-up-missing", LAP_SEVERITY_WARNING, LAP_NEEDS_TIMELINE, N_("No warm-up"),
    N_("Five to ten minutes of light movement ready heart, joints and muscles for harder work."),
    N_("ACSM Guidelines for Exercise Testing and Prescription, parts of a session"),
    find_warm_up_missing, tell_warm_up_missing, NULL, remedy_warm_up_missing },
  { "warm-up-short", LAP_SEVERITY_WARNING, LAP_NEEDS_TIMELINE, N_("A short warm-up"),
    N_("About a seventh of the session, three minutes at least, seven at most; two more for people who are new or "
       "60 and over."),
    N_("common practice; ACSM Guidelines for Exercise Testing and Prescription: 5–10 min"),
    find_warm_up_short, tell_warm_up_short, NULL, remedy_warm_up_short },
  { "gone-cold", LAP_SEVERITY_WARNING, LAP_NEEDS_TIMELINE, N_("Cold again before the main part"),
    N_("After two and a half minutes of standing still much of the warm-up is lost."), N_("common practice"),
    find_gone_cold, tell_gone_cold, NULL, remedy_gone_cold },
  { "warm-up-misses", LAP_SEVERITY_NOTE, LAP_NEEDS_TIMELINE, N_("The warm-up leaves something out"),
    N_("What will be loaded is moved lightly first."), N_("common practice"),
    find_warm_up_misses, tell_warm_up_misses, NULL, remedy_warm_up_misses },
  { "no-build-up", LAP_SEVERITY_NOTE, LAP_NEEDS_TIMELINE, N_("Nothing leads up to the jumps"),
    N_("Small springs first let calves, feet and knees get used to landing."), N_("common practice"),
    find_no_build_up, tell_no_build_up, NULL, remedy_no_build_up },
  { "cool-down-missing", LAP_SEVERITY_WARNING, LAP_NEEDS_TIMELINE, N_("No cool-down"),
    N_("Stopping at once lets blood pool in the legs; some people feel faint."),
    N_("ACSM Guidelines for Exercise Testing and Prescription, parts of a session"),
    find_cool_down_missing, tell_cool_down_missing, NULL, remedy_cool_down_missing },
  { "cool-down-short", LAP_SEVERITY_WARNING, LAP_NEEDS_TIMELINE, N_("A short cool-down"),
    N_("About a tenth of the session, two minutes at least, five at most."),
    N_("common practice; ACSM Guidelines for Exercise Testing and Prescription: 5–10 min"),
    find_cool_down_short, tell_cool_down_short, NULL, remedy_cool_down_short },
  { "water-far", LAP_SEVERITY_NOTE, LAP_NEEDS_TIMELINE, N_("A long way to the water"),
    N_("A short break to drink every ten to fifteen minutes is usual."), N_("common practice"),
    find_water_far, tell_water_far, NULL, remedy_water_far },
  { NULL },
};
