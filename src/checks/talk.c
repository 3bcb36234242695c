/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The check of words: more to say than there is time. A warning's c says where.
 */
#include "checks/remedies.h"
#include "checks/report.h"
#include "edit/verbs-say.h"
#include "edit/verbs-time.h"

#include <glib/gi18n-lib.h>
#include <math.h>

enum { IN_TALK, BEFORE_WORK, IN_WORK };

#define EPSILON 1e-9

static const LapTalkRoom *
room_of (const LapCheckup *cx, const LapWarning *w)
{
  switch (w->c) {
    case IN_TALK: return &cx->talk->own[w->a].room;
    case BEFORE_WORK: return &cx->talk->turns[w->a].gap;
    default: return &cx->talk->turns[w->a].work;
  }
}

static gboolean
is_over (const LapTalkRoom *room)
{
  return room->need > room->seconds + EPSILON;
}

static LapWarning *
report (LapCheckup *cx, const LapCheck *check, const LapTalkRoom *room, guint which, guint index)
{
  LapWarning *w = lap_report (cx, check);

  w->start = room->span.start;
  w->end = room->span.end;
  w->a = index;
  w->c = which;
  return w;
}

/* Whether a talk that is over already lies in the gap. */
static gboolean
holds_talk (const LapCheckup *cx, LapSpan gap)
{
  for (guint i = 0; i < cx->talk->n_own; i++) {
    const LapTalkRoom *room = &cx->talk->own[i].room;

    if (room->span.start >= gap.start && room->span.end <= gap.end && is_over (room))
      return TRUE;
  }
  return FALSE;
}

static void
find_talks (LapCheckup *cx, const LapCheck *check)
{
  g_autofree guint8 *told = g_malloc0 (MAX (1, cx->timeline->n_tasks));

  for (guint i = 0; i < cx->talk->n_own; i++) {
    const LapInterval *v = &cx->timeline->intervals[cx->talk->own[i].interval];
    LapWarning *w;

    if (told[v->task] || !is_over (&cx->talk->own[i].room))
      continue;
    told[v->task] = TRUE;
    w = report (cx, check, &cx->talk->own[i].room, IN_TALK, i);
    w->part = v->part;
    w->block = v->block;
    w->round = v->round;
  }
}

/* Once a block, at the first round that is too full. */
static void
find_turn (LapCheckup *cx, const LapCheck *check, guint i, guint which, guint8 *told)
{
  const LapTalkTurn *talk = &cx->talk->turns[i];
  const LapTalkRoom *room = which == IN_WORK ? &talk->work : &talk->gap;
  const LapTurn *turn = LAP_TURN (cx, i);
  LapWarning *w;

  if ((told[turn->task] & LAP_BIT (which)) || !is_over (room) ||
      (which == BEFORE_WORK && holds_talk (cx, room->span)))
    return;
  told[turn->task] |= LAP_BIT (which);
  w = report (cx, check, room, which, i);
  w->part = turn->part;
  w->block = turn->block;
  w->round = turn->round;
}

static void
find_talk_over (LapCheckup *cx, const LapCheck *check)
{
  g_autofree guint8 *told = g_malloc0 (MAX (1, cx->timeline->n_tasks));

  find_talks (cx, check);
  for (guint i = 0; i < cx->talk->n; i++) {
    find_turn (cx, check, i, BEFORE_WORK, told);
    find_turn (cx, check, i, IN_WORK, told);
  }
}

static char *
tell_talk_over (const LapCheckup *cx, const LapWarning *w)
{
  const LapTalkRoom *room = room_of (cx, w);
  int need = (int) ceil (room->need - EPSILON);

  switch (w->c) {
    case IN_TALK:
      return g_strdup_printf (_("The talk is too full: %1$d s of words, %2$d s of room."), need, room->seconds);
    case BEFORE_WORK:
      return g_strdup_printf (_("The time before %1$s is too full: %2$d s to say and do, %3$d s of room."),
                              lap_turn_name (cx, w->a), need, room->seconds);
    default:
      return g_strdup_printf (_("%1$s is too full of words: %2$d s to say, %3$d s of work."), lap_turn_name (cx, w->a),
                              need, room->seconds);
  }
}

static char *
why_talk_over (const LapCheckup *cx, const LapWarning *w)
{
  const LapTalkRoom *room = room_of (cx, w);
  double more = room->need - room->words / room->pace;

  if (more >= 0.5)
    return g_strdup_printf (_("%1$d words, at %2$.1f a second, and %3$.0f s to change position, fetch kit and count in."),
                            room->words, room->pace, more);
  return g_strdup_printf (_("%1$d words, at %2$.1f a second."), room->words, room->pace);
}

/* Remedies */

static int
to_five (double seconds)
{
  return (int) ceil (seconds / 5 - EPSILON) * 5;
}

/* The words of @task in full, as its own: to be changed. */
static LapSay *
own_say (const LapTask *task)
{
  LapWording all = lap_task_wording (task);
  LapSay *say;

  if (task->shown == NULL)
    return NULL;
  say = task->say != NULL ? lap_say_copy (task->say) : lap_say_new ();
  if (say->cues == NULL)
    say->cues = g_strdupv ((char **) all.cues);
  return say;
}

static void
add_say (const LapCheckup *cx, const LapWarning *w, LapSay *say, char *label, GPtrArray *remedies)
{
  LapEdits *edits = lap_edits_new (label);

  lap_verb_put_words (edits, LAP_TASK (cx, w->a)->block, w->round, say);
  lap_remedy_add (remedies, label, edits);
}

static int
count_cues (char **cues, guint from)
{
  int words = 0;

  for (guint i = from; cues != NULL && cues[i] != NULL; i++)
    words += lap_count_words (cues[i]);
  return words;
}

/* Drops cues from the least important on until what is left fits; at least the first stays. */
static void
remedy_cues (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  const LapTask *task = LAP_TASK (cx, w->a);
  const LapTalkRoom *room = room_of (cx, w);
  g_autoptr (LapSay) say = own_say (task);
  guint n = say != NULL && say->cues != NULL ? g_strv_length (say->cues) : 0, keep = n;

  while (keep > 1 && (keep == n || room->need - count_cues (say->cues, keep) / room->pace > room->seconds + EPSILON))
    keep--;
  if (keep == n || room->need - count_cues (say->cues, keep) / room->pace > room->seconds + EPSILON)
    return;
  for (guint i = keep; i < n; i++)
    g_clear_pointer (&say->cues[i], g_free);
  say->present |= LAP_BIT (LAP_SAY_CUES);
  add_say (cx, w, say, g_strdup_printf (n - keep == 1 ? _("Drop the least important cue")
                                                    : _("Drop the %u least important cues"), n - keep), remedies);
}

/* Leaves out how to set up: the figure shows it. */
static void
remedy_setup (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  const LapTask *task = LAP_TASK (cx, w->a);
  g_autoptr (LapSay) say = cx->talk->turns[w->a].say.setup != NULL ? own_say (task) : NULL;

  if (say == NULL)
    return;
  g_free (say->setup);
  say->setup = g_strdup ("");
  say->present |= LAP_BIT (LAP_SAY_SETUP);
  add_say (cx, w, say, g_strdup_printf (_("Leave out how to set up %s"), lap_turn_name (cx, w->a)), remedies);
}

/* @what of turn @i becomes @seconds longer in its round, where that is written for the block alone. */
static void
add_time (const LapCheckup *cx, guint i, LapTimeWhat what, int more, GPtrArray *remedies)
{
  const LapTurn *turn = LAP_TURN (cx, i);
  LapBlock *block = LAP_TASK (cx, i)->block;
  LapTimeSource source;
  int seconds;

  if (!lap_time_source (block, turn->round, what, &source) || source.object != (gpointer) block)
    return;
  seconds = source.seconds + more;
  if (seconds > source.most)
    return;
  lap_remedy_add (remedies, what == LAP_TIME_WORK ? g_strdup_printf (_("Work %d s"), seconds)
                                                  : g_strdup_printf (_("Rest %1$d s after %2$s"), seconds,
                                                                     lap_turn_name (cx, i)),
                  lap_verb_set_time (&source, seconds, cx->timeline->catalogue));
}

/* A longer rest before it: of the block before, or after the part before. */
static void
remedy_rest (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  const LapTurn *turn = LAP_TURN (cx, w->a), *before = w->a > 0 ? turn - 1 : NULL;
  const LapTalkTurn *talk = &cx->talk->turns[w->a];
  int words = lap_count_words (talk->say.name) + lap_count_words (talk->say.setup);
  int more = w->c == BEFORE_WORK ? to_five (talk->gap.need - talk->gap.seconds)
                                 : to_five (talk->lead + words / cx->session->talk_rest);
  LapPart *part;
  LapEdits *edits;

  if (before == NULL || turn->apart)
    return;
  if (before->part == turn->part) {
    add_time (cx, w->a - 1, LAP_TIME_REST, more, remedies);
    return;
  }
  part = lap_session_nth (cx->session, before->part);
  edits = lap_edits_new (_("Leave time after the part"));
  lap_edits_set_int (edits, part, "rest-after", part->rest_after + more);
  lap_remedy_add (remedies, g_strdup_printf (_("Leave %1$d s after %2$s"), part->rest_after + more,
                                             lap_part_title (part)), edits);
}

/* What a talk has to last for its words and for what else is to be said and done before the work after it. */
static double
talk_need (const LapCheckup *cx, const LapTalkRoom *room)
{
  double need = room->need;

  for (guint i = 0; i < cx->talk->n; i++) {
    const LapTalkRoom *gap = &cx->talk->turns[i].gap;

    if (room->span.start >= gap->span.start && room->span.end <= gap->span.end)
      need = MAX (need, room->seconds + gap->need - gap->seconds);
  }
  return need;
}

static void
remedy_talk (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  const LapTalkRoom *room = room_of (cx, w);
  LapBlock *block = lap_part_nth (lap_session_nth (cx->session, w->part), w->block);
  int seconds = to_five (talk_need (cx, room));

  lap_remedy_add (remedies, g_strdup_printf (_("Talk for %d s"), seconds),
                  lap_verb_set_seconds (block, seconds, cx->timeline->catalogue));
}

static void
remedy_work (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  int work = to_five (room_of (cx, w)->need / cx->timeline->parts[w->part].part->sets);

  add_time (cx, w->a, LAP_TIME_WORK, work - LAP_TASK (cx, w->a)->work, remedies);
}

static void
remedy_talk_over (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  if (w->c == IN_TALK) {
    remedy_talk (cx, w, remedies);
    return;
  }
  if (w->c == IN_WORK)
    remedy_cues (cx, w, remedies);
  if (w->c == BEFORE_WORK || cx->talk->turns[w->a].gap.seconds == 0) {
    remedy_rest (cx, w, remedies);
    remedy_setup (cx, w, remedies);
  }
  if (w->c == IN_WORK)
    remedy_work (cx, w, remedies);
}

const LapCheck lap_checks_talk[] = {
  { "talk-over", LAP_SEVERITY_WARNING, LAP_NEEDS_TALK, N_("More words than time"),
    N_("Words that don’t fit are said too fast, or over the start of the next block."),
    N_("common practice; speakers read 2.5 words a second, and far fewer when out of breath"),
    find_talk_over, tell_talk_over, why_talk_over, remedy_talk_over },
  { NULL },
};
