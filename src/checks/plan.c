/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Checks of the plan as a document: what is missing, unknown, twice or lopsided.
 */
#include "checks/ease.h"
#include "checks/remedies.h"
#include "checks/report.h"
#include "model/week.h"

#include <glib/gi18n-lib.h>
#include <stdlib.h>
#include <string.h>

/* repeat */

static void
find_repeat (LapCheckup *cx, const LapCheck *check)
{
  const LapTimeline *t = cx->timeline;

  for (guint i = 1; i < t->n_turns; i++) {
    const LapTask *task = LAP_TASK (cx, i);

    if (LAP_TURN (cx, i)->repeats || task->shown == NULL || LAP_TURN (cx, i)->part_kind != LAP_PART_MAIN)
      continue;
    for (guint k = i; k-- > 0;) {
      const LapTask *other = LAP_TASK (cx, k);

      if (LAP_TURN (cx, k)->part != LAP_TURN (cx, i)->part || LAP_TURN (cx, k)->round != LAP_TURN (cx, i)->round)
        break;
      if (other->shown != task->shown || (other->sides >= LAP_SIDES_LEFT && task->sides >= LAP_SIDES_LEFT))
        continue;
      if (LAP_TURN (cx, i)->round == 1 || t->parts[LAP_TURN (cx, i)->part].n_turns == 0)
        lap_report_turns (cx, check, k, i, i);
      break;
    }
  }
}

static char *
tell_repeat (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup_printf (_("%s comes twice in one round."), lap_turn_name (cx, w->b));
}

static void
remedy_repeat (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  const LapTask *task = LAP_TASK (cx, w->b);
  const char *ids[] = { task->shown->harder, task->shown->easier };

  for (guint i = 0; i < G_N_ELEMENTS (ids); i++) {
    LapExercise *e = ids[i] != NULL ? lap_catalogue_find (cx->timeline->catalogue, ids[i]) : NULL;

    if (e != NULL)
      lap_remedy_add (remedies, g_strdup_printf (_("Take %s the second time"), lap_exercise_name (e)),
                      lap_verb_set_exercise (task->block, e->id, cx->timeline->catalogue));
  }
}

/* unchosen and unknown-exercise */

static void
unchosen (LapCheckup *cx, const LapCheck *check, guint turn)
{
  if (LAP_TASK (cx, turn)->wanted == NULL)
    lap_report_turns (cx, check, turn, turn, turn);
}

static void
find_unchosen (LapCheckup *cx, const LapCheck *check)
{
  lap_each_task (cx, check, unchosen);
}

static char *
tell_unchosen (const LapCheckup *cx, const LapWarning *w)
{
  const LapTurn *turn = LAP_TURN (cx, w->a);

  return g_strdup_printf (_("%1$s, block %2$u: no exercise is chosen yet."),
                          lap_part_title (cx->timeline->parts[turn->part].part), turn->block + 1u);
}

static void
remedy_unchosen (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  lap_remedy_choose (cx, w->a, remedies);
}

static void
unknown_exercise (LapCheckup *cx, const LapCheck *check, guint turn)
{
  const LapTask *task = LAP_TASK (cx, turn);

  if (task->wanted != NULL && task->exercise == NULL)
    lap_report_turns (cx, check, turn, turn, turn);
}

static void
find_unknown_exercise (LapCheckup *cx, const LapCheck *check)
{
  lap_each_task (cx, check, unknown_exercise);
}

static char *
tell_unknown_exercise (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup_printf (_("No exercise has the id “%s”."), LAP_TASK (cx, w->a)->wanted);
}

static void
remedy_unknown_exercise (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  const LapTask *task = LAP_TASK (cx, w->a);
  const char *nearest = lap_catalogue_nearest (cx->timeline->catalogue, task->wanted);

  if (nearest != NULL)
    lap_remedy_add (remedies,
                    g_strdup_printf (_("Take %s"),
                                     lap_exercise_name (lap_catalogue_find (cx->timeline->catalogue, nearest))),
                    lap_verb_set_exercise (task->block, nearest, cx->timeline->catalogue));
}

/* empty */

static void
find_empty (LapCheckup *cx, const LapCheck *check)
{
  if (cx->timeline->n_parts == 0)
    lap_report (cx, check);
  for (guint p = 0; p < cx->timeline->n_parts; p++)
    if (lap_part_n (cx->timeline->parts[p].part) == 0)
      lap_report_part (cx, check, p);
}

static char *
tell_empty (const LapCheckup *cx, const LapWarning *w)
{
  if (w->part < 0)
    return g_strdup (_("The session has no parts yet."));
  return g_strdup_printf (_("%s has no blocks yet."), lap_part_title (cx->timeline->parts[w->part].part));
}

static void
remedy_empty (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  LapEdits *edits = lap_edits_new (_("Remove an empty part"));

  if (w->part >= 0 && cx->timeline->n_parts > 1)
    lap_edits_splice (edits, cx->session->parts, w->part, 1, NULL);
  lap_remedy_add (remedies, g_strdup (_("Remove the part")), edits);
}

/* unknown-member */

typedef struct {
  LapCheckup *cx;
  const LapCheck *check;
} Visit;

static const char *
nearest_member (const LapRecord *record, const LapExtra *extra)
{
  g_autoptr (GPtrArray) names = g_ptr_array_new ();

  if (record == NULL)
    return NULL;
  for (guint i = 0; i < record->n; i++)
    if (g_str_equal (record->fields[i].in, extra->in))
      g_ptr_array_add (names, (gpointer) record->fields[i].name);
  g_ptr_array_add (names, NULL);
  return lap_nearest (extra->name, (const char * const *) names->pdata);
}

/* In a week: the class that @pointer leads into. */
static void
report_holder (LapCheckup *cx, LapWarning *w, const char *pointer)
{
  static const char classes[] = "/classes/";

  if (cx->plan != NULL && g_str_has_prefix (pointer, classes))
    lap_report_class (cx, w, lap_list_nth (LAP_WEEK (cx->root)->classes, atoi (pointer + strlen (classes))));
}

static void
visit_extra (const LapRecord *record, const LapExtra *extra, const char *pointer, gpointer data)
{
  Visit *visit = data;
  const char *nearest = nearest_member (record, extra);
  g_autofree char *text = NULL;
  LapWarning *w = lap_report (visit->cx, visit->check);

  text = nearest != NULL
       ? g_strdup_printf (_("The file has a member that this version doesn’t know: %1$s/%2$s. Meant is perhaps “%3$s”. "
                            "It is kept."), pointer, extra->name, nearest)
       : g_strdup_printf (_("The file has a member that this version doesn’t know: %1$s/%2$s. It is kept."), pointer,
                          extra->name);
  w->text = g_string_chunk_insert (visit->cx->texts, text);
  report_holder (visit->cx, w, pointer);
}

static void
find_unknown_member (LapCheckup *cx, const LapCheck *check)
{
  Visit visit = { cx, check };

  lap_record_visit (lap_object_record (cx->root), cx->root, "", visit_extra, &visit);
}

static char *
tell_unknown_member (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup (w->text);
}

/* out-of-balance */

enum { NO_WORK, PUSH_PULL, FRONT_BACK };

static gboolean
beyond (int a, int b)
{
  return a > 3 * b || b > 3 * a;
}

static gboolean
is_push (const LapExercise *e)
{
  return e->pattern == LAP_PATTERN_PUSH_HORIZONTAL || e->pattern == LAP_PATTERN_PUSH_VERTICAL;
}

static gboolean
is_pull (const LapExercise *e)
{
  return e->pattern == LAP_PATTERN_PULL_HORIZONTAL || e->pattern == LAP_PATTERN_PULL_VERTICAL;
}

static void
find_out_of_balance (LapCheckup *cx, const LapCheck *check)
{
  const guint32 pulls = LAP_BIT (LAP_KIT_BAND) | LAP_BIT (LAP_KIT_BAR) | LAP_BIT (LAP_KIT_DUMBBELLS) |
                        LAP_BIT (LAP_KIT_DUMBBELL) | LAP_BIT (LAP_KIT_KETTLEBELL);
  int push = 0, pull = 0, front = 0, back = 0;
  guint32 worked = 0, all = (1u << LAP_N_REGIONS) - 1;
  g_autofree int *seconds = g_new0 (int, MAX (1, cx->timeline->n_tasks)); /* of work, by task */
  LapWarning *w;

  if (cx->session->focus != NULL || cx->first_main < 0)
    return;
  for (guint i = 0; i < cx->timeline->n_turns; i++)
    seconds[LAP_TURN (cx, i)->task] += LAP_TURN (cx, i)->work;
  for (guint i = 0; i < cx->firsts->len; i++) {
    const LapTurn *turn = LAP_TURN (cx, LAP_FIRST (cx, i));
    const LapTask *task = LAP_TASK (cx, LAP_FIRST (cx, i));
    int work = seconds[turn->task];

    if (turn->part_kind != LAP_PART_MAIN || task->shown == NULL)
      continue;
    worked |= lap_muscle_regions (task->primary | task->secondary);
    push += is_push (task->shown) ? work : 0;
    pull += is_pull (task->shown) ? work : 0;
    front += task->primary & lap_region_muscles (LAP_REGION_THIGHS) ? work : 0;
    back += task->primary & lap_region_muscles (LAP_REGION_GLUTES) ? work : 0;
  }
  if (worked != all) {
    w = lap_report_part (cx, check, cx->first_main_part);
    w->mask = all & ~worked;
    w->c = NO_WORK;
  }
  if ((lap_kit_mask (cx->session->kit) & pulls) && beyond (push, pull)) {
    w = lap_report_part (cx, check, cx->first_main_part);
    w->a = push;
    w->b = pull;
    w->c = PUSH_PULL;
  }
  if (beyond (front, back)) {
    w = lap_report_part (cx, check, cx->first_main_part);
    w->a = front;
    w->b = back;
    w->c = FRONT_BACK;
  }
}

static char *
tell_out_of_balance (const LapCheckup *cx, const LapWarning *w)
{
  g_autofree char *regions = lap_words_join (&lap_regions, w->mask);

  switch (w->c) {
  case NO_WORK: return g_strdup_printf (_("The main part leaves out: %s."), regions);
  case PUSH_PULL: return g_strdup_printf (_("The arms push for %1$u s and pull for %2$u s."), w->a, w->b);
  default: return g_strdup_printf (_("The front of the legs works %1$u s, the back %2$u s."), w->a, w->b);
  }
}

const LapCheck lap_checks_plan[] = {
  { "out-of-balance", LAP_SEVERITY_NOTE, LAP_NEEDS_TIMELINE, N_("Lopsided"),
    N_("Over a whole-body session each region gets some work, and neither push and pull nor front and back differ "
       "by more than three to one."), N_("common practice"),
    find_out_of_balance, tell_out_of_balance, NULL, NULL },
  { "repeat", LAP_SEVERITY_NOTE, LAP_NEEDS_TIMELINE, N_("Twice in a round"),
    N_("It may be meant; most people take it for a slip."), N_("common practice"),
    find_repeat, tell_repeat, NULL, remedy_repeat },
  { "unchosen", LAP_SEVERITY_WARNING, LAP_NEEDS_TIMELINE, N_("Not chosen yet"),
    N_("An empty place can’t be filmed or printed."), N_("counted from the plan"),
    find_unchosen, tell_unchosen, NULL, remedy_unchosen },
  { "unknown-exercise", LAP_SEVERITY_STOP, LAP_NEEDS_TIMELINE, N_("An unknown exercise"),
    N_("Neither the catalogue nor the session’s own exercises have it."), N_("counted from the plan"),
    find_unknown_exercise, tell_unknown_exercise, NULL, remedy_unknown_exercise },
  { "empty", LAP_SEVERITY_STOP, LAP_NEEDS_TIMELINE, N_("Nothing in it"),
    N_("There is nothing to run."), N_("counted from the plan"),
    find_empty, tell_empty, NULL, remedy_empty },
  { "unknown-member", LAP_SEVERITY_NOTE, LAP_NEEDS_TIMELINE, N_("Something unknown in the file"),
    N_("A slip of the pen, or a file from a newer version; nothing is lost by saving."), N_("counted from the plan"),
    find_unknown_member, tell_unknown_member, NULL, NULL, find_unknown_member },
  { NULL },
};
