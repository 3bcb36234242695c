/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One pass over the turns. A task is met for the first time once; only then are its words looked up among those that
 * other tasks of the same exercise have said already.
 */
#include "talk/talk.h"

#define COUNT_IN 4.0     /* seconds: a breath and "three, two, one"; common practice */
#define BREATHLESS 0.60  /* effort from which nobody talks in sentences: vigorous, ACSM 2011 */

/* What holds of a task at each of its turns: what is said is its name and cues, and after the same task as the last
 * time the lead is the same. */
typedef struct {
  gboolean   met, led;
  LapWording say;
  int        name, cues; /* words */
  guint32    before;     /* task of the turn before, LAP_NO_TASK without */
  double     lead;
} Again;

typedef struct {
  const LapTimeline *timeline;
  const LapEffort   *effort;
  const LapSession  *session;
  LapChangeRule      rule;
  LapTalk           *talk;
  GHashTable        *said;  /* "id member text" of what is said once */
  Again             *again; /* by task */
} Build;

int
lap_count_words (const char *text)
{
  gboolean inside = FALSE;
  int words = 0;

  for (const char *p = text; p != NULL && *p != '\0'; p = g_utf8_next_char (p)) {
    gboolean space = g_unichar_isspace (g_utf8_get_char (p));

    words += !space && !inside;
    inside = !space;
  }
  return words;
}

static int
count_cues (const char * const *cues)
{
  int words = 0;

  for (guint i = 0; cues != NULL && cues[i] != NULL; i++)
    words += lap_count_words (cues[i]);
  return words;
}

LapWording
lap_task_wording (const LapTask *task)
{
  const LapSay *own = task->say, *say = task->shown != NULL ? task->shown->say : NULL;
  LapWording w = { .name = task->shown != NULL ? task->shown->name : NULL };
  const LapSay none = { 0 };

  own = own != NULL ? own : &none;
  say = say != NULL ? say : &none;
#define PICK(bit, member) (own->member != NULL || ((own->present >> (bit)) & 1) ? own->member : say->member)
  w.setup = PICK (LAP_SAY_SETUP, setup);
  w.cues = (const char * const *) PICK (LAP_SAY_CUES, cues);
  w.fault = PICK (LAP_SAY_FAULT, fault);
  w.easier = PICK (LAP_SAY_EASIER, easier);
  w.harder = PICK (LAP_SAY_HARDER, harder);
#undef PICK
  return w;
}

gboolean
lap_wording_same (const LapWording *a, const LapWording *b)
{
  static const char *const none[] = { NULL };

  return g_strv_equal (a->cues != NULL ? a->cues : none, b->cues != NULL ? b->cues : none) &&
         g_strcmp0 (a->setup, b->setup) == 0 && g_strcmp0 (a->fault, b->fault) == 0 &&
         g_strcmp0 (a->easier, b->easier) == 0 && g_strcmp0 (a->harder, b->harder) == 0;
}

/* @text the first time it is met for the exercise that @task shows, else NULL. */
static const char *
once (Build *b, const LapTask *task, const char *member, const char *text)
{
  if (task->shown == NULL || text == NULL || *text == '\0')
    return NULL;
  return g_hash_table_add (b->said, g_strconcat (task->shown->id, " ", member, " ", text, NULL)) ? text : NULL;
}

/* The words of a task's first turn; all but name and cues only where no task of its exercise has said them. */
static LapWording
wording_at_first (Build *b, const LapTask *task, Again *again)
{
  LapWording w = lap_task_wording (task);

  again->met = TRUE;
  again->say = (LapWording) { .name = w.name, .cues = w.cues };
  again->name = lap_count_words (w.name);
  again->cues = count_cues (w.cues);
  w.setup = once (b, task, "setup", w.setup);
  w.fault = once (b, task, "fault", w.fault);
  w.easier = once (b, task, "easier", w.easier);
  w.harder = once (b, task, "harder", w.harder);
  return w;
}

static gboolean
is_gap (int kind)
{
  return kind == LAP_INTERVAL_REST || kind == LAP_INTERVAL_ROUND_REST || kind == LAP_INTERVAL_AFTER ||
         kind == LAP_INTERVAL_TALK || kind == LAP_INTERVAL_PAUSE;
}

/* Words a second in an interval that isn't work. */
static double
pace_in (const Build *b, int kind)
{
  if (b->session->sound == LAP_SOUND_AFTER || kind == LAP_INTERVAL_TALK)
    return b->session->voice;
  return b->session->talk_rest;
}

static double
pace_at_work (const Build *b, const LapTurn *turn)
{
  if (b->session->sound == LAP_SOUND_AFTER)
    return b->session->voice;
  return lap_effort_at (b->effort, (turn->start + turn->end) / 2.0) >= BREATHLESS ? b->session->talk_vigorous
                                                                                 : b->session->talk_moderate;
}

static double
lead_between (const Build *b, guint32 before, guint32 task)
{
  const LapTask *tasks = b->timeline->tasks;
  const LapExercise *to = tasks[task].shown, *from = before != LAP_NO_TASK ? tasks[before].shown : NULL;
  double lead = b->session->sound == LAP_SOUND_AFTER ? 0 : COUNT_IN;

  if (from != NULL && to != NULL)
    lead += lap_change_posture (&b->rule, from->posture, to->posture) / 2 +
            lap_change_kit (&b->rule, from->kit_mask, to->kit_mask);
  return lead;
}

/* Seconds before the work of turn @i that are no time for words. */
static double
lead_of (Build *b, guint i)
{
  const LapTurn *turn = &b->timeline->turns[i];
  guint32 before = i > 0 ? turn[-1].task : LAP_NO_TASK;
  Again *again = &b->again[turn->task];

  if (!again->led || again->before != before) {
    again->led = TRUE;
    again->before = before;
    again->lead = lead_between (b, before, turn->task);
  }
  return again->lead;
}

/* The gap before @turn with the words of talks in it already counted. */
static LapTalkRoom
gap_of (const Build *b, const LapTurn *turn)
{
  LapTalkRoom gap = { .span = { turn->start, turn->start } };

  for (guint i = turn->interval; i-- > 0 && is_gap (b->timeline->intervals[i].kind);) {
    const LapInterval *v = &b->timeline->intervals[i];

    if (gap.seconds == 0)
      gap.pace = pace_in (b, v->kind);
    gap.seconds += v->seconds;
    gap.span.start = v->start;
    if (v->kind == LAP_INTERVAL_TALK) {
      int words = lap_count_words (b->timeline->tasks[v->task].block->talk);

      gap.words += words;
      gap.need += words / b->session->voice;
    }
  }
  return gap;
}

static void
add_words (LapTalkRoom *room, int words)
{
  room->words += words;
  room->need += words / room->pace;
}

static void
add_turn (Build *b, guint i, LapTalkTurn *holder)
{
  LapTalkTurn *turn = &b->talk->turns[i];
  LapTalkRoom *before = holder->gap.seconds > 0 ? &holder->gap : &holder->work;
  const LapTask *task = &b->timeline->tasks[b->timeline->turns[i].task];
  Again *again = &b->again[b->timeline->turns[i].task];
  int once_before = 0, once_in = 0;

  if (again->met) {
    turn->say = again->say;
  } else {
    turn->say = wording_at_first (b, task, again);
    turn->first = once (b, task, "name", turn->say.name) != NULL;
    once_before = lap_count_words (turn->say.setup);
    once_in = lap_count_words (turn->say.fault) + lap_count_words (turn->say.easier) +
              lap_count_words (turn->say.harder);
  }
  add_words (before, again->name + once_before);
  add_words (&holder->work, again->cues + once_in);
}

/* Seconds of work of a turn; at their own pace the whole part's. */
static int
work_seconds (const LapTimeline *t, const LapTurn *turn)
{
  return turn->work > 0 ? turn->work : t->intervals[turn->interval].seconds;
}

static void
add_turns (Build *b)
{
  const LapTimeline *t = b->timeline;
  LapTalkTurn *holder = NULL;

  for (guint i = 0; i < t->n_turns; i++) {
    const LapTurn *turn = &t->turns[i];

    if (holder == NULL || turn->interval != turn[-1].interval) {
      holder = &b->talk->turns[i];
      holder->gap = gap_of (b, turn);
      holder->lead = lead_of (b, i);
      holder->work = (LapTalkRoom) { .span = { turn->start, turn->end }, .seconds = work_seconds (t, turn),
                                 .pace = pace_at_work (b, turn) };
      (holder->gap.seconds > 0 ? &holder->gap : &holder->work)->need += holder->lead;
    }
    add_turn (b, i, holder);
  }
}

static void
add_own (Build *b)
{
  const LapTimeline *t = b->timeline;
  g_autoptr (GArray) own = g_array_new (FALSE, FALSE, sizeof (LapTalkOwn));

  for (guint i = 0; i < t->n; i++) {
    const LapInterval *v = &t->intervals[i];
    LapTalkOwn talk = { .interval = i, .room = { .span = { v->start, v->start + v->seconds }, .seconds = v->seconds,
                                                 .pace = b->session->voice } };

    if (v->kind != LAP_INTERVAL_TALK)
      continue;
    add_words (&talk.room, lap_count_words (t->tasks[v->task].block->talk));
    g_array_append_val (own, talk);
  }
  b->talk->n_own = own->len;
  b->talk->own = (LapTalkOwn *) g_array_free (g_steal_pointer (&own), FALSE);
}

LapTalk *
lap_talk_new (LapTimeline *timeline, const LapEffort *effort)
{
  LapTalk *talk = g_new0 (LapTalk, 1);
  g_autoptr (GHashTable) said = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  g_autofree Again *again = g_new0 (Again, MAX (1, timeline->n_tasks));
  Build b = { .timeline = timeline, .effort = effort, .session = timeline->session, .talk = talk, .said = said,
              .again = again, .rule = lap_session_rule (timeline->session) };

  talk->timeline = lap_timeline_ref (timeline);
  talk->n = timeline->n_turns;
  talk->turns = g_new0 (LapTalkTurn, MAX (1, talk->n));
  add_turns (&b);
  add_own (&b);
  return talk;
}

void
lap_talk_free (LapTalk *talk)
{
  lap_timeline_unref (talk->timeline);
  g_free (talk->turns);
  g_free (talk->own);
  g_free (talk);
}
