/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A checkup first gathers what many checks ask for (bouts, sums of the main parts), then lets each check of the
 * registry report, then sorts.
 */
#include "checks/checkup.h"

#include "checks/week-plan.h"
#include "edit/verbs.h"

#include <glib/gi18n-lib.h>

G_DEFINE_BOXED_TYPE (LapCheckup, lap_checkup, lap_checkup_ref, lap_checkup_unref)

static void
gather_bouts (LapCheckup *cx)
{
  const LapTimeline *t = cx->timeline;

  cx->first_main = cx->last_main = -1;
  for (guint i = 0; i < t->n_turns; i++) {
    const LapTurn *turn = &t->turns[i];
    LapBout bout = { .first = i, .last = i, .task = turn->task, .repeats = turn->repeats };

    if (turn->part_kind != LAP_PART_MAIN)
      continue;
    if (cx->first_main < 0)
      cx->first_main = i;
    if (cx->bouts->len > 0) {
      LapBout *before = LAP_BOUT (cx, cx->bouts->len - 1);

      bout.runs_on = before->last + 1 == i && !turn->apart;
      if (bout.runs_on && turn->joined) {
        before->last = cx->last_main = i;
        before->repeats &= turn->repeats;
        continue;
      }
    }
    cx->last_main = i;
    g_array_append_val (cx->bouts, bout);
  }
}

static void
gather_firsts (LapCheckup *cx)
{
  const LapTimeline *t = cx->timeline;
  g_autofree guint8 *met = g_malloc0 (MAX (1, t->n_tasks));

  for (guint i = 0; i < t->n_turns; i++)
    if (!met[t->turns[i].task]) {
      met[t->turns[i].task] = TRUE;
      g_array_append_val (cx->firsts, i);
    }
}

static void
gather (LapCheckup *cx)
{
  const LapTimeline *t = cx->timeline;

  cx->rule = lap_session_rule (cx->session);
  cx->tender = lap_change_is_tender (&cx->rule);
  cx->first_main_part = G_MAXUINT;
  for (guint p = t->n_parts; p-- > 0;)
    if (t->parts[p].part->kind == LAP_PART_MAIN) {
      cx->main_work += t->parts[p].work;
      cx->first_main_part = p;
    }
  gather_bouts (cx);
  gather_firsts (cx);
}

static int
compare (gconstpointer a, gconstpointer b)
{
  const LapWarning *wa = a, *wb = b;

  if (wa->fine != wb->fine)
    return wa->fine ? 1 : -1;
  if (wa->severity != wb->severity)
    return (int) wa->severity - (int) wb->severity;
  if (wa->start != wb->start)
    return wa->start < wb->start ? -1 : 1;
  if (wa->when != wb->when)
    return wa->when < wb->when ? -1 : 1;
  if (wa->order != wb->order)
    return wa->order < wb->order ? -1 : 1;
  return wa->serial < wb->serial ? -1 : wa->serial > wb->serial;
}

static gboolean
holds (char **fine, const char *id)
{
  return fine != NULL && g_strv_contains ((const char * const *) fine, id);
}

static gboolean
is_fine (LapCheckup *cx, const LapWarning *w)
{
  LapPart *part = w->part >= 0 ? lap_session_nth (cx->session, w->part) : NULL;

  for (guint i = 0; i < w->n_classes; i++)
    if (holds (lap_warning_class (cx, w, i)->fine, w->check->id))
      return TRUE;
  return (cx->session != NULL && holds (cx->session->fine, w->check->id)) ||
         (part != NULL && holds (part->fine, w->check->id)) ||
         (w->block >= 0 && holds (lap_part_nth (part, w->block)->fine, w->check->id));
}

static void
mark_fine (LapCheckup *cx)
{
  for (guint i = 0; i < cx->warnings->len; i++) {
    LapWarning *w = &g_array_index (cx->warnings, LapWarning, i);

    w->fine = is_fine (cx, w);
  }
}

static LapCheckup *
checkup_alloc (gpointer root)
{
  LapCheckup *cx = g_new0 (LapCheckup, 1);

  g_atomic_ref_count_init (&cx->references);
  cx->root = g_object_ref (root);
  cx->bouts = g_array_new (FALSE, FALSE, sizeof (LapBout));
  cx->firsts = g_array_new (FALSE, FALSE, sizeof (guint));
  cx->classes = g_array_new (FALSE, FALSE, sizeof (LapClass *));
  cx->warnings = g_array_new (FALSE, FALSE, sizeof (LapWarning));
  cx->texts = g_string_chunk_new (64);
  return cx;
}

LapCheckup *
lap_checkup_new_up_to (LapTimeline *timeline, LapNeeds needs)
{
  LapCheckup *cx = checkup_alloc (timeline->session);

  cx->timeline = lap_timeline_ref (timeline);
  cx->session = timeline->session;
  gather (cx);
  if (needs >= LAP_NEEDS_EFFORT)
    cx->effort = lap_effort_new (timeline);
  if (needs >= LAP_NEEDS_TALK)
    cx->talk = lap_talk_new (timeline, cx->effort);
  for (guint i = 0; i < lap_checks_n (); i++) {
    const LapCheck *check = lap_checks_nth (i);

    cx->order = i;
    if (check->find != NULL && check->needs <= needs)
      check->find (cx, check);
  }
  mark_fine (cx);
  g_array_sort (cx->warnings, compare);
  return cx;
}

LapCheckup *
lap_checkup_new (LapTimeline *timeline)
{
  return lap_checkup_new_up_to (timeline, LAP_NEEDS_TALK);
}

LapCheckup *
lap_checkup_new_week (LapWeek *week, int date, LapAttachments *attachments)
{
  LapCheckup *cx = checkup_alloc (week);

  cx->plan = lap_week_plan_new (week, date, attachments);
  for (guint i = 0; i < lap_checks_n (); i++) {
    const LapCheck *check = lap_checks_nth (i);

    cx->order = i;
    if (check->find_week != NULL)
      check->find_week (cx, check);
  }
  mark_fine (cx);
  g_array_sort (cx->warnings, compare);
  return cx;
}

LapCheckup *
lap_checkup_ref (LapCheckup *cx)
{
  g_atomic_ref_count_inc (&cx->references);
  return cx;
}

void
lap_checkup_unref (LapCheckup *cx)
{
  if (!g_atomic_ref_count_dec (&cx->references))
    return;
  g_array_unref (cx->bouts);
  g_array_unref (cx->firsts);
  g_array_unref (cx->classes);
  g_array_unref (cx->warnings);
  g_string_chunk_free (cx->texts);
  g_clear_pointer (&cx->effort, lap_effort_free);
  g_clear_pointer (&cx->talk, lap_talk_free);
  g_clear_pointer (&cx->timeline, lap_timeline_unref);
  g_clear_pointer (&cx->plan, lap_week_plan_free);
  g_object_unref (cx->root);
  g_free (cx);
}

LapTimeline *
lap_checkup_timeline (const LapCheckup *cx)
{
  return cx->timeline;
}

LapWeek *
lap_checkup_week (const LapCheckup *cx)
{
  return cx->plan != NULL ? cx->plan->week : NULL;
}

const LapEffort *
lap_checkup_effort (const LapCheckup *cx)
{
  return cx->effort;
}

const LapTalk *
lap_checkup_talk (const LapCheckup *cx)
{
  return cx->talk;
}

guint
lap_checkup_n (const LapCheckup *cx)
{
  return cx->warnings->len;
}

const LapWarning *
lap_checkup_nth (const LapCheckup *cx, guint n)
{
  return &g_array_index (cx->warnings, LapWarning, n);
}

guint
lap_checkup_count (const LapCheckup *cx, LapSeverity severity)
{
  guint count = 0;

  for (guint i = 0; i < cx->warnings->len; i++)
    count += !lap_checkup_nth (cx, i)->fine && lap_checkup_nth (cx, i)->severity == severity;
  return count;
}

guint
lap_checkup_n_open (const LapCheckup *cx)
{
  return lap_checkup_count (cx, LAP_SEVERITY_STOP) + lap_checkup_count (cx, LAP_SEVERITY_WARNING);
}

const char *
lap_turn_name (const LapCheckup *cx, guint turn)
{
  return lap_task_name (LAP_TASK (cx, turn));
}

LapClass *
lap_warning_class (const LapCheckup *cx, const LapWarning *w, guint i)
{
  return g_array_index (cx->classes, LapClass *, w->first_class + i);
}

gboolean
lap_warning_is_about (const LapCheckup *cx, const LapWarning *w, const LapClass *c)
{
  for (guint i = 0; i < w->n_classes; i++)
    if (lap_warning_class (cx, w, i) == c)
      return TRUE;
  return FALSE;
}

/* Telling */

char *
lap_warning_message (const LapCheckup *cx, const LapWarning *warning)
{
  return warning->check->tell (cx, warning);
}

char *
lap_warning_clock (const LapWarning *warning)
{
  g_autofree char *start = NULL, *end = NULL;

  if (warning->start < 0)
    return g_strdup ("");
  start = lap_clock_text (warning->start);
  if (warning->end <= warning->start)
    return g_steal_pointer (&start);
  end = lap_clock_text (warning->end);
  return g_strdup_printf ("%s–%s", start, end);
}

char *
lap_warning_why (const LapCheckup *cx, const LapWarning *warning)
{
  if (warning->check->why != NULL)
    return warning->check->why (cx, warning);
  return g_strdup (_(warning->check->reason));
}

const char *
lap_warning_source (const LapWarning *warning)
{
  return _(warning->check->source);
}

LapEdits *
lap_warning_fine (const LapCheckup *cx, const LapWarning *warning)
{
  LapObject *holder = cx->root;

  if (cx->plan != NULL && warning->n_classes == 0)
    return lap_edits_new (NULL);
  if (warning->n_classes > 0)
    holder = LAP_OBJECT (lap_warning_class (cx, warning, 0));
  if (warning->part >= 0)
    holder = LAP_OBJECT (lap_session_nth (cx->session, warning->part));
  if (warning->block >= 0)
    holder = LAP_OBJECT (lap_part_nth (LAP_PART (holder), warning->block));
  return lap_verb_fine (holder, warning->check->id, TRUE);
}
