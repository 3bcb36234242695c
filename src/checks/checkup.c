/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A checkup first gathers what many checks ask for (bouts, sums of the main parts), then lets each check of the
 * registry report, then sorts. A remedy is tried on the session itself and taken back before anybody can look: it
 * is only offered when the check then says less and nothing new stops the plan.
 */
#include "checks/checkup.h"

#include "checks/week-plan.h"

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

/* Reporting */

LapWarning *
lap_report (LapCheckup *cx, const LapCheck *check)
{
  LapWarning warning = {
    .check = check, .severity = check->severity, .order = cx->order, .serial = cx->warnings->len,
    .start = -1, .end = -1, .part = -1, .block = -1, .round = -1, .when = -1,
  };

  g_array_append_val (cx->warnings, warning);
  return &g_array_index (cx->warnings, LapWarning, cx->warnings->len - 1);
}

LapWarning *
lap_report_part (LapCheckup *cx, const LapCheck *check, guint part)
{
  LapWarning *w = lap_report (cx, check);

  w->part = part;
  w->start = cx->timeline->parts[part].start;
  w->end = cx->timeline->parts[part].end;
  return w;
}

LapWarning *
lap_report_turns (LapCheckup *cx, const LapCheck *check, guint from, guint to, guint at)
{
  LapWarning *w = lap_report (cx, check);

  w->start = MIN (LAP_TURN (cx, from)->start, LAP_TURN (cx, to)->start);
  w->end = MAX (LAP_TURN (cx, to)->end, LAP_TURN (cx, from)->end);
  w->part = LAP_TURN (cx, at)->part;
  w->block = LAP_TURN (cx, at)->block;
  w->round = LAP_TURN (cx, at)->round;
  w->a = from;
  w->b = to;
  return w;
}

void
lap_each_task (LapCheckup *cx, const LapCheck *check, LapTaskFunc func)
{
  for (guint i = 0; i < cx->firsts->len; i++)
    func (cx, check, LAP_FIRST (cx, i));
}

/* The bouts of one part that goes round and round: its first and last, FALSE where the seam doesn't count. */
static gboolean
circle (const LapCheckup *cx, guint p, guint *first, guint *last)
{
  const LapPart *part = cx->timeline->parts[p].part;
  gboolean any = FALSE;

  *first = *last = 0;
  if (part->kind != LAP_PART_MAIN || (part->run != LAP_RUN_STATIONS && part->run != LAP_RUN_OWN_PACE) ||
      (part->run == LAP_RUN_STATIONS && part->rounds > 1))
    return FALSE;
  for (guint i = 0; i < cx->bouts->len; i++) {
    const LapBout *bout = LAP_BOUT (cx, i);

    if (LAP_TURN (cx, bout->first)->part != p)
      continue;
    if (!any)
      *first = i;
    else if (!bout->runs_on)
      return FALSE;
    *last = i;
    any = TRUE;
  }
  return any && lap_part_nth (part, 0)->kind == LAP_BLOCK_EXERCISE &&
         lap_part_nth (part, lap_part_n (part) - 1)->kind == LAP_BLOCK_EXERCISE;
}

static guint64
block_of (const LapCheckup *cx, guint bout)
{
  const LapTurn *turn = LAP_TURN (cx, LAP_BOUT (cx, bout)->first);

  return ((guint64) turn->part << 10) | turn->block;
}

void
lap_each_pair (LapCheckup *cx, const LapCheck *check, LapPairFunc func)
{
  g_autoptr (GHashTable) told = g_hash_table_new_full (g_int64_hash, g_int64_equal, g_free, NULL);
  guint first = 0, last = 0;

  for (guint i = 1; i < cx->bouts->len; i++) {
    const LapBout *bout = LAP_BOUT (cx, i);
    gint64 key;

    if (!bout->runs_on || bout->repeats)
      continue;
    key = block_of (cx, i - 1) << 20 | block_of (cx, i);
    if (!g_hash_table_contains (told, &key) && func (cx, check, i - 1, i))
      g_hash_table_add (told, g_memdup2 (&key, sizeof key));
  }
  for (guint p = 0; p < cx->timeline->n_parts; p++)
    if (circle (cx, p, &first, &last) && last > first + 1)
      func (cx, check, last, first);
}

void
lap_each_triple (LapCheckup *cx, const LapCheck *check, LapTripleFunc func)
{
  g_autoptr (GHashTable) told = g_hash_table_new_full (g_int64_hash, g_int64_equal, g_free, NULL);
  guint first = 0, last = 0;

  for (guint i = 2; i < cx->bouts->len; i++) {
    const LapBout *bout = LAP_BOUT (cx, i);
    gint64 key;

    if (!bout->runs_on || !LAP_BOUT (cx, i - 1)->runs_on || bout->repeats)
      continue;
    key = block_of (cx, i - 2) << 40 | block_of (cx, i - 1) << 20 | block_of (cx, i);
    if (!g_hash_table_contains (told, &key) && func (cx, check, i - 2, i - 1, i))
      g_hash_table_add (told, g_memdup2 (&key, sizeof key));
  }
  for (guint p = 0; p < cx->timeline->n_parts; p++)
    if (circle (cx, p, &first, &last) && last > first + 1) {
      func (cx, check, last - 1, last, first);
      func (cx, check, last, first, first + 1);
    }
}

const char *
lap_turn_name (const LapCheckup *cx, guint turn)
{
  return lap_task_name (LAP_TASK (cx, turn));
}

void
lap_report_class (LapCheckup *cx, LapWarning *w, LapClass *c)
{
  if (w->n_classes == 0)
    w->first_class = cx->classes->len;
  g_array_append_val (cx->classes, c);
  w->n_classes++;
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

/* Remedies */

void
lap_remedy_free (LapRemedy *remedy)
{
  g_free (remedy->label);
  lap_edits_free (remedy->edits);
  g_free (remedy);
}

void
lap_remedy_add (GPtrArray *remedies, char *label, LapEdits *edits)
{
  LapRemedy *remedy;

  if (lap_edits_n (edits) == 0) {
    g_free (label);
    lap_edits_free (edits);
    return;
  }
  remedy = g_new0 (LapRemedy, 1);
  remedy->label = label;
  remedy->edits = edits;
  g_ptr_array_add (remedies, remedy);
}

/* Whether @swap is among @remedies already: A with B is B with A, and the name of the edit is the same for both. */
static gboolean
has_swap (const GPtrArray *remedies, const LapEdits *swap)
{
  for (guint i = 0; i < remedies->len; i++) {
    const LapRemedy *remedy = g_ptr_array_index (remedies, i);

    if (g_str_equal (lap_edits_label (remedy->edits), lap_edits_label (swap)))
      return TRUE;
  }
  return FALSE;
}

void
lap_remedy_swap (const LapCheckup *cx, const LapWarning *warning, guint turn, GPtrArray *remedies)
{
  const LapTurn *t = LAP_TURN (cx, turn);
  LapPart *part = lap_session_nth (cx->session, t->part);
  guint n = lap_part_n (part);

  if (lap_part_nth (part, t->block)->fixed)
    return;
  for (guint step = 1; step < n; step++)
    for (int side = 1; side >= -1; side -= 2) {
      int other = (int) t->block + side * (int) step;
      g_autofree char *title = NULL;
      LapEdits *edits;

      if (other < 0 || other >= (int) n || lap_part_nth (part, other)->fixed ||
          lap_part_nth (part, other)->kind != LAP_BLOCK_EXERCISE)
        continue;
      edits = lap_verb_swap (part, t->block, other, cx->timeline->catalogue);
      if (has_swap (remedies, edits)) {
        lap_edits_free (edits);
        continue;
      }
      title = lap_block_title (lap_part_nth (part, other), cx->timeline->catalogue);
      lap_remedy_add (remedies, g_strdup_printf (_("Swap %1$s with %2$s"), lap_turn_name (cx, turn), title), edits);
    }
}

void
lap_remedy_easier (const LapCheckup *cx, guint turn, GPtrArray *remedies)
{
  const LapTask *task = LAP_TASK (cx, turn);
  LapExercise *easier = task->shown != NULL && task->shown->easier != NULL
                      ? lap_catalogue_find (cx->timeline->catalogue, task->shown->easier) : NULL;

  if (easier == NULL || task->option == LAP_OPTION_EASIER)
    return;
  lap_remedy_add (remedies, g_strdup_printf (_("Show %s instead"), lap_exercise_name (easier)),
                  task->option == LAP_OPTION_HARDER
                  ? lap_verb_set_option (task->block, LAP_OPTION_AS_SHOWN, cx->timeline->catalogue)
                  : lap_verb_set_option (task->block, LAP_OPTION_EASIER, cx->timeline->catalogue));
}

static guint
count_of (const LapCheckup *cx, const LapCheck *check)
{
  guint count = 0;

  for (guint i = 0; i < cx->warnings->len; i++) {
    const LapWarning *w = lap_checkup_nth (cx, i);

    if (w->check == check && !w->fine)
      count += w->severity == LAP_SEVERITY_NOTE ? 1 : 2;
  }
  return count;
}

/* Open stops and warnings, the length aside: a remedy may cost time, and then says so as the next warning. */
static guint
burden (const LapCheckup *cx)
{
  guint count = 0;

  for (guint i = 0; i < cx->warnings->len; i++) {
    const LapWarning *w = lap_checkup_nth (cx, i);

    count += !w->fine && w->severity != LAP_SEVERITY_NOTE && !g_str_equal (w->check->id, "length-over");
  }
  return count;
}

/* Whether the check says less in @then, and nothing new stops the plan. */
static gboolean
says_less (const LapCheckup *then, const LapCheckup *cx, const LapCheck *check)
{
  return count_of (then, check) < count_of (cx, check) &&
         lap_checkup_count (then, LAP_SEVERITY_STOP) <= lap_checkup_count (cx, LAP_SEVERITY_STOP);
}

/* A checkup of the timeline alone turns most ideas down at a fraction of the cost. */
static gboolean
is_worth_a_checkup (const LapCheckup *cx, const LapCheck *check, LapTimeline *timeline)
{
  g_autoptr (LapCheckup) then = NULL;

  if (timeline == NULL)
    return FALSE;
  if (check->needs != LAP_NEEDS_TIMELINE)
    return TRUE;
  then = lap_checkup_new_up_to (timeline, LAP_NEEDS_TIMELINE);
  return says_less (then, cx, check);
}

/* Whether with @edits the check says less, nothing new stops the plan and nothing else gets worse on the whole. */
static gboolean
helps (const LapCheckup *cx, const LapCheck *check, LapEdits *edits)
{
  g_autoptr (LapTimeline) timeline = NULL;
  g_autoptr (LapCheckup) then = NULL;
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();

  lap_edits_swap (edits);
  if (cx->plan != NULL)
    then = lap_checkup_new_week (cx->plan->week, cx->plan->date, cx->plan->attachments);
  else
    timeline = lap_timeline_new (cx->session, builtin, NULL);
  if (then == NULL && is_worth_a_checkup (cx, check, timeline))
    then = lap_checkup_new (timeline);
  lap_edits_swap (edits);
  return then != NULL && says_less (then, cx, check) && burden (then) <= burden (cx);
}

#define MOST_REMEDIES 3
#define MOST_TRIES    24

GPtrArray *
lap_warning_ideas (const LapCheckup *cx, const LapWarning *warning)
{
  GPtrArray *ideas = g_ptr_array_new_with_free_func ((GDestroyNotify) lap_remedy_free);

  if (warning->check->remedies != NULL)
    warning->check->remedies (cx, warning, ideas);
  return ideas;
}

GPtrArray *
lap_warning_remedies (const LapCheckup *cx, const LapWarning *warning)
{
  GPtrArray *remedies = lap_warning_ideas (cx, warning);
  guint kept = 0, tries = 0;

  while (kept < remedies->len) {
    const LapRemedy *remedy = g_ptr_array_index (remedies, kept);
    const LapRemedy *last = g_ptr_array_index (remedies, remedies->len - 1);
    guint most = last->resort && remedy != last ? MOST_REMEDIES - 1 : MOST_REMEDIES;

    if (kept < most && tries++ < MOST_TRIES && helps (cx, warning->check, remedy->edits))
      kept++;
    else
      g_ptr_array_remove_index (remedies, kept);
  }
  return remedies;
}
