/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Checks of single blocks: options, density, repetitions, holds.
 */
#include "checks/remedies.h"
#include "checks/report.h"

#include <glib/gi18n-lib.h>

static gboolean
in_main (const LapCheckup *cx, guint turn)
{
  return LAP_TURN (cx, turn)->part_kind == LAP_PART_MAIN;
}

static const LapPart *
part_of (const LapCheckup *cx, guint turn)
{
  return cx->timeline->parts[LAP_TURN (cx, turn)->part].part;
}

/* option-missing */

static gboolean
has_text (const char *text)
{
  return text != NULL && *text != '\0';
}

static gboolean
has_easier (const LapTask *task)
{
  return task->shown->easier != NULL || (task->say != NULL && has_text (task->say->easier)) ||
         (task->shown->say != NULL && has_text (task->shown->say->easier));
}

static void
option_missing (LapCheckup *cx, const LapCheck *check, guint turn)
{
  const LapTask *task = LAP_TASK (cx, turn);

  if (in_main (cx, turn) && task->shown != NULL && !has_easier (task) &&
      (task->met >= 3.8 || task->shown->impact == LAP_IMPACT_HIGH || task->load_mask != 0))
    lap_report_turns (cx, check, turn, turn, turn);
}

static void
find_option_missing (LapCheckup *cx, const LapCheck *check)
{
  if (cx->session->level != LAP_LEVEL_TRAINED)
    lap_each_task (cx, check, option_missing);
}

static char *
tell_option_missing (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup_printf (_("%s has no easier option to offer."), lap_turn_name (cx, w->a));
}

/* option-elsewhere */

static void
option_elsewhere (LapCheckup *cx, const LapCheck *check, guint turn)
{
  const guint32 at_hand = LAP_BIT (LAP_KIT_MAT) | LAP_BIT (LAP_KIT_WALL);
  const LapTask *task = LAP_TASK (cx, turn);
  const LapExercise *easier;
  LapWarning *w;

  if (!in_main (cx, turn) || task->shown == NULL || task->shown->easier == NULL)
    return;
  easier = lap_catalogue_find (cx->timeline->catalogue, task->shown->easier);
  if (easier == NULL || (!(easier->kit_mask & ~(task->shown->kit_mask | at_hand)) &&
                         lap_change_steps (easier->posture, task->shown->posture) == 0))
    return;
  w = lap_report_turns (cx, check, turn, turn, turn);
  w->text = lap_exercise_name (easier);
  w->mask = easier->kit_mask & ~(task->shown->kit_mask | at_hand);
}

static void
find_option_elsewhere (LapCheckup *cx, const LapCheck *check)
{
  if (cx->session->level != LAP_LEVEL_TRAINED)
    lap_each_task (cx, check, option_elsewhere);
}

static char *
tell_option_elsewhere (const LapCheckup *cx, const LapWarning *w)
{
  g_autofree char *kit = lap_words_join (&lap_kit_words, w->mask);

  if (w->mask != 0)
    return g_strdup_printf (_("The easier option of %1$s, %2$s, needs other kit: %3$s."), lap_turn_name (cx, w->a),
                            w->text, kit);
  return g_strdup_printf (_("The easier option of %1$s, %2$s, is done in another position."),
                          lap_turn_name (cx, w->a), w->text);
}

/* too-dense */

static void
find_too_dense (LapCheckup *cx, const LapCheck *check)
{
  const LapTimeline *t = cx->timeline;
  double most = cx->session->level == LAP_LEVEL_NEW ? 0.5 : 0.75;

  if (cx->session->level == LAP_LEVEL_TRAINED)
    return;
  for (guint p = 0; p < t->n_parts; p++) {
    const LapStretch *s = &t->parts[p];
    int work = 0, rest = s->part->round_rest * (s->part->rounds - 1);

    if (s->part->kind != LAP_PART_MAIN || s->part->run == LAP_RUN_OWN_PACE)
      continue;
    for (guint i = s->turn; i < s->turn + s->n_turns; i++)
      if (LAP_TASK (cx, i)->pace == LAP_PACE_HARD) {
        work += LAP_TURN (cx, i)->work;
        rest += LAP_TURN (cx, i)->rest + s->part->set_rest * (s->part->sets - 1);
      }
    if (work > 0 && work > most * (work + rest)) {
      LapWarning *w = lap_report_part (cx, check, p);

      w->a = 100 * work / (work + rest);
      w->b = 100 * most;
    }
  }
}

static char *
tell_too_dense (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup_printf (_("%1$s: %2$u %% of the time is hard work; for this group up to %3$u %% is wise."),
                          lap_part_title (cx->timeline->parts[w->part].part), w->a, w->b);
}

static void
remedy_too_dense (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  LapPart *part = lap_session_nth (cx->session, w->part);
  LapEdits *rest = lap_edits_new (_("Rest longer")), *steady = lap_edits_new (_("Work steadily"));

  for (guint i = 0; i < lap_part_n (part); i++) {
    LapBlock *block = lap_part_nth (part, i);
    int needs = (int) (block->work * (100.0 / w->b - 1) + 0.999);

    if (block->kind != LAP_BLOCK_EXERCISE || block->pace == LAP_PACE_STEADY)
      continue;
    if (block->rest < needs)
      lap_edits_set_int (rest, block, "rest", (needs + 4) / 5 * 5);
    lap_edits_set_int (steady, block, "pace", LAP_PACE_STEADY);
  }
  lap_remedy_add (remedies, g_strdup (_("Longer rests")), rest);
  lap_remedy_add (remedies, g_strdup (_("Steady instead of hard")), steady);
}

/* reps-over and minute-full */

static void
reps_over (LapCheckup *cx, const LapCheck *check, guint turn)
{
  const LapTask *task = LAP_TASK (cx, turn);
  LapWarning *w;

  if (part_of (cx, turn)->run == LAP_RUN_ON_THE_MINUTE || part_of (cx, turn)->run == LAP_RUN_OWN_PACE ||
      task->estimate <= 0.9 * task->work)
    return;
  w = lap_report_turns (cx, check, turn, turn, turn);
  w->x = task->estimate;
  w->y = task->work;
}

static void
find_reps_over (LapCheckup *cx, const LapCheck *check)
{
  lap_each_task (cx, check, reps_over);
}

static char *
tell_reps_over (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup_printf (_("%1$d × %2$s takes about %3$.0f s; the block has %4$.0f s."),
                          LAP_REPS_HIGH (LAP_TASK (cx, w->a)->reps), lap_turn_name (cx, w->a), w->x, w->y);
}

static void
remedy_reps_over (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  const LapTask *task = LAP_TASK (cx, w->a);
  int work = ((int) (w->x / 0.9) + 5) / 5 * 5, reps = LAP_REPS_HIGH (task->reps) * (int) w->y * 9 / ((int) w->x * 10);
  LapEdits *edits = lap_edits_new (_("Fewer repetitions"));

  lap_remedy_add (remedies, g_strdup_printf (_("Work %d s"), work),
                  lap_verb_set_work (task->block, work, cx->timeline->catalogue));
  if (reps > 0)
    lap_edits_set_uint (edits, task->block, "reps", LAP_REPS (reps, reps));
  lap_remedy_add (remedies, g_strdup_printf (_("%d repetitions"), reps), edits);
}

static void
minute_full (LapCheckup *cx, const LapCheck *check, guint turn)
{
  const LapTask *task = LAP_TASK (cx, turn);
  double most = cx->session->level == LAP_LEVEL_NEW ? 0.6 : 0.75;
  int needs = task->estimate > 0 ? task->estimate : task->work, every = part_of (cx, turn)->every;
  LapWarning *w;

  if (part_of (cx, turn)->run != LAP_RUN_ON_THE_MINUTE || needs <= most * every)
    return;
  w = lap_report_turns (cx, check, turn, turn, turn);
  w->x = needs;
  w->y = every;
}

static void
find_minute_full (LapCheckup *cx, const LapCheck *check)
{
  lap_each_task (cx, check, minute_full);
}

static char *
tell_minute_full (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup_printf (_("%1$s fills %2$.0f of every %3$.0f s; too little is left to breathe before the next."),
                          lap_turn_name (cx, w->a), w->x, w->y);
}

static void
remedy_minute_full (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  LapPart *part = lap_session_nth (cx->session, w->part);
  int every = ((int) (w->x / (cx->session->level == LAP_LEVEL_NEW ? 0.6 : 0.75)) + 5) / 5 * 5;
  LapEdits *edits = lap_edits_new (_("Start less often"));

  lap_edits_set_int (edits, part, "every", every);
  lap_remedy_add (remedies, g_strdup_printf (_("Start every %d s"), every), edits);
}

/* steps-odd */

static void
find_steps_odd (LapCheckup *cx, const LapCheck *check)
{
  for (guint p = 0; p < cx->timeline->n_parts; p++) {
    const LapPart *part = cx->timeline->parts[p].part;
    guint n = lap_rows_n (part->steps);

    if (n > 1 && part->rounds % n != 0) {
      LapWarning *w = lap_report_part (cx, check, p);

      w->a = n;
      w->b = part->rounds;
    }
  }
}

static char *
tell_steps_odd (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup_printf (_("%1$s has %2$u steps and %3$u rounds."),
                          lap_part_title (cx->timeline->parts[w->part].part), w->a, w->b);
}

static void
remedy_steps_odd (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  guint rounds = (w->b + w->a - 1) / w->a * w->a;

  if (rounds <= 100)
    lap_remedy_add (remedies, g_strdup_printf (_("%u rounds"), rounds),
                    lap_verb_set_rounds (lap_session_nth (cx->session, w->part), rounds));
}

/* hold-long and lone-hard */

static void
hold_long (LapCheckup *cx, const LapCheck *check, guint turn)
{
  const LapTask *task = LAP_TASK (cx, turn);
  const LapInterval *v = &cx->timeline->intervals[LAP_TURN (cx, turn)->interval];

  if (in_main (cx, turn) && task->shown != NULL && lap_exercise_is_hold (task->shown) &&
      task->shown->move != LAP_MOVE_STRETCH && task->shown->move != LAP_MOVE_MOBILISE && v->seconds > 45 &&
      LAP_TURN (cx, turn)->work > 0)
    lap_report_turns (cx, check, turn, turn, turn)->x = v->seconds;
}

static void
find_hold_long (LapCheckup *cx, const LapCheck *check)
{
  if (cx->session->level == LAP_LEVEL_NEW)
    lap_each_task (cx, check, hold_long);
}

static char *
tell_hold_long (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup_printf (_("%1$s is held still for %2$.0f s."), lap_turn_name (cx, w->a), w->x);
}

static void
remedy_hold_long (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  const LapTask *task = LAP_TASK (cx, w->a);
  int work = task->sides == LAP_SIDES_SPLIT ? 60 : 30;

  lap_remedy_add (remedies, g_strdup_printf (_("Work %d s"), work),
                  lap_verb_set_work (task->block, work, cx->timeline->catalogue));
}

static void
find_lone_hard (LapCheckup *cx, const LapCheck *check)
{
  const LapTask *task = cx->first_main >= 0 ? LAP_TASK (cx, cx->first_main) : NULL;

  if (task != NULL && task->shown != NULL && (task->shown->impact == LAP_IMPACT_HIGH || task->met >= 9))
    lap_report_turns (cx, check, cx->first_main, cx->first_main, cx->first_main);
}

static char *
tell_lone_hard (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup_printf (_("The main part opens with %s, one of the hardest things there is."),
                          lap_turn_name (cx, w->a));
}

static void
remedy_lone_hard (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  lap_remedy_swap (cx, w, w->a, remedies);
  lap_remedy_easier (cx, w->a, remedies);
}

const LapCheck lap_checks_work[] = {
  { "option-missing", LAP_SEVERITY_WARNING, LAP_NEEDS_TIMELINE, N_("No easier option"),
    N_("In a mixed group somebody needs it at once; made up on the spot it is rarely a good one."),
    N_("common practice"), find_option_missing, tell_option_missing, NULL, NULL },
  { "option-elsewhere", LAP_SEVERITY_NOTE, LAP_NEEDS_TIMELINE, N_("The easier option is somewhere else"),
    N_("Whoever takes it has to fetch something or get up first; say so in the rest before."), N_("common practice"),
    find_option_elsewhere, tell_option_elsewhere, NULL, NULL },
  { "too-dense", LAP_SEVERITY_WARNING, LAP_NEEDS_TIMELINE, N_("Little rest for much hard work"),
    N_("New people do well with as much rest as work, mixed groups with a third of the work at the least."),
    N_("common practice; work to rest ratios of strength and conditioning textbooks are gentler still"),
    find_too_dense, tell_too_dense, NULL, remedy_too_dense },
  { "reps-over", LAP_SEVERITY_NOTE, LAP_NEEDS_TIMELINE, N_("More repetitions than time"),
    N_("An estimate from the usual speed of one repetition; people differ."), N_("common practice"),
    find_reps_over, tell_reps_over, NULL, remedy_reps_over },
  { "minute-full", LAP_SEVERITY_WARNING, LAP_NEEDS_TIMELINE, N_("The minute is full"),
    N_("On the minute, a quarter of it is for breathing; more for people who are new."), N_("common practice"),
    find_minute_full, tell_minute_full, NULL, remedy_minute_full },
  { "steps-odd", LAP_SEVERITY_NOTE, LAP_NEEDS_TIMELINE, N_("Steps and rounds don’t match"),
    N_("The last round would stop in the middle of the ladder."), N_("common practice"),
    find_steps_odd, tell_steps_odd, NULL, remedy_steps_odd },
  { "hold-long", LAP_SEVERITY_WARNING, LAP_NEEDS_TIMELINE, N_("A long still hold"),
    N_("Beyond three quarters of a minute new people hold their breath, and blood pressure rises."),
    N_("common practice"), find_hold_long, tell_hold_long, NULL, remedy_hold_long },
  { "lone-hard", LAP_SEVERITY_NOTE, LAP_NEEDS_TIMELINE, N_("A very hard start"),
    N_("The hardest block sits best a third of the way in, when people are warm and not yet tired."),
    N_("common practice"), find_lone_hard, tell_lone_hard, NULL, remedy_lone_hard },
  { NULL },
};
