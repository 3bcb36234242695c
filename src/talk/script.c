/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Each turn is laid out by itself, in three passes. What belongs before the work is put down first, as late as leaves
 * people time to get ready. Then what belongs to a moment of the work, the most important first; a later one that
 * would come too near is left out. Then the cues go into what is free, with as much quiet between them as lets all of
 * them in. Blocks at their own pace share one stretch of work, so what one has put down stands in the way of the next.
 */
#include "talk/script.h"

#include "base/halve.h"

#include <glib/gi18n-lib.h>
#include <math.h>

static const LapWord kinds[] = {
  { "talk", N_("Talk") }, { "name", N_("Name") }, { "setup", N_("Set up") }, { "cue", N_("Cue") },
  { "easier", N_("Easier") }, { "harder", N_("Harder") }, { "also", N_("Also for") }, { "fault", N_("Fault") },
  { "side", N_("Side") }, { "set", N_("Set") }, { "half-way", N_("Half-way") }, { "next", N_("Next") },
  { "last-ten", N_("Last ten") },
};
const LapWords lap_line_kinds = { "a kind of line", kinds, G_N_ELEMENTS (kinds) };

#define APART 2        /* seconds from the beginning of one line to that of the next, and of quiet around cues */
#define COUNT_IN 3     /* seconds before work in which nothing is said */
#define READY 20       /* seconds before work in which the words for it begin, when they may begin earlier */
#define SPAN_HALF 30   /* seconds of work from which half-way is told */
#define SPAN_END 20    /* and the end */
#define LEFT_NEXT 15
#define LEFT_LAST 10

static const int quiets[] = { 8, 5, 3, APART }; /* seconds between cues, the longest that lets all of them in */

typedef struct {
  const LapTalk     *talk;
  const LapTimeline *timeline;
  GArray            *lines; /* LapLine */
  guint              first; /* of the lines that may be in the way of a new one */
  guint              turn;  /* that is laid out now */
  double             pace;  /* words a second */
} Build;

/* A line that has no moment of its own. */
typedef struct {
  int         kind;
  const char *text; /* as files hold it */
  const char *whom; /* translated: whom it is also for, or NULL */
} Free;

/* What is said of a text that files hold: ours are in the translations, a coach's own words stay as they are. */
static const char *
spoken (const char *text)
{
  return *text != '\0' ? g_dgettext (GETTEXT_PACKAGE, text) : text;
}

static void
add (Build *b, LapLineKind kind, int start, int words, char *text)
{
  const LapTurn *turn = &b->timeline->turns[b->turn];
  LapLine line = { .start = start, .seconds = words / b->pace, .kind = kind, .part = turn->part, .round = turn->round,
                   .block = turn->block, .text = text };

  g_array_append_val (b->lines, line);
}

/* Whether a line of @seconds at @start leaves @quiet to all others, which it must not begin near to either. */
static gboolean
fits (const Build *b, int start, double seconds, double quiet)
{
  for (guint i = b->lines->len; i-- > b->first;) {
    const LapLine *line = &g_array_index (b->lines, LapLine, i);

    if (start < line->start + line->seconds + quiet && line->start < start + seconds + quiet)
      return FALSE;
    if (ABS (start - line->start) < APART)
      return FALSE;
  }
  return TRUE;
}

/* Adds the line, or lets go of it where it is in the way. */
static void
add_if_free (Build *b, LapLineKind kind, int start, int words, char *text)
{
  if (start >= 0 && fits (b, start, words / b->pace, 0))
    add (b, kind, start, words, text);
  else
    g_free (text);
}

/* The first second that is free after what was said last. */
static int
next_free (const Build *b, int least)
{
  const LapLine *last;

  if (b->lines->len == 0)
    return least;
  last = &g_array_index (b->lines, LapLine, b->lines->len - 1);
  return MAX (least, MAX (last->start + APART, (int) ceil (last->start + last->seconds)));
}

/* Before the work */

static char *
name_text (const LapTimeline *t, const LapTurn *turn)
{
  const LapTask *task = &t->tasks[turn->task];
  const char *name = lap_task_name (task);

  switch (t->intervals[turn->interval].side) {
    case LAP_SIDE_LEFT:
      return g_strdup_printf (task->sides == LAP_SIDES_SPLIT ? _("%s, left side first") : _("%s, left side"), name);
    case LAP_SIDE_RIGHT:
      return g_strdup_printf (task->sides == LAP_SIDES_SPLIT ? _("%s, right side first") : _("%s, right side"), name);
    default:
      return g_strdup (name);
  }
}

/* Where the words before a turn begin: after the talks in the gap, and not long before they are needed. */
static int
lead_in (const LapTalkTurn *turn, double seconds)
{
  int ready = MAX (READY, (int) ceil (seconds + turn->lead));

  return MAX (turn->gap.span.start + (turn->lead > 0 ? 1 : 0), turn->gap.span.end - ready);
}

/* A line that comes too late for the turn isn't said any more. */
static void
add_in_time (Build *b, LapLineKind kind, int least, int words, char *text)
{
  int start = next_free (b, least);

  if (start < b->timeline->turns[b->turn].end)
    add (b, kind, start, words, text);
  else
    g_free (text);
}

static void
add_before (Build *b, const LapTalkTurn *holder)
{
  const LapTurn *turn = &b->timeline->turns[b->turn];
  const LapTalkTurn *talk = &b->talk->turns[b->turn];
  int name = lap_count_words (talk->say.name), setup = lap_count_words (talk->say.setup);
  gboolean gap = holder->gap.seconds > 0;

  if (talk->say.name == NULL)
    return;
  b->pace = gap ? holder->gap.pace : holder->work.pace;
  add_in_time (b, LAP_LINE_NAME, gap ? lead_in (holder, (name + setup) / b->pace) : turn->start, name,
               name_text (b->timeline, turn));
  if (setup > 0)
    add_in_time (b, LAP_LINE_SETUP, 0, setup, g_strdup (spoken (talk->say.setup)));
}

/* In the work, at its moment */

/* What comes after turn @i, or NULL where it is the same again or nothing. *@words as files hold it. */
static char *
next_text (const LapTimeline *t, guint i, int *words)
{
  const LapTurn *turn = &t->turns[i], *next = turn + 1;
  const LapTask *task;

  if (i + 1 >= t->n_turns || next->interval == turn->interval)
    return NULL;
  for (guint k = turn->interval; k < next->interval; k++)
    if (t->intervals[k].kind == LAP_INTERVAL_PAUSE) {
      *words = 1 + lap_count_words (t->tasks[t->intervals[k].task].block->pause);
      return g_strdup_printf (_("Next: %s"), lap_task_name (&t->tasks[t->intervals[k].task]));
    }
  task = &t->tasks[next->task];
  if (task->shown == t->tasks[turn->task].shown)
    return NULL;
  *words = 1 + (task->shown != NULL ? lap_count_words (task->shown->name) : 0);
  return task->shown != NULL ? g_strdup_printf (_("Next: %s"), lap_task_name (task)) : NULL;
}

static void
add_ending (Build *b, const LapInterval *v, gboolean last)
{
  int end = v->start + v->seconds, words = 0;
  char *next;

  if (v->seconds < SPAN_END)
    return;
  add_if_free (b, LAP_LINE_LAST_TEN, end - LEFT_LAST, 2, g_strdup (_("Last ten")));
  next = last ? next_text (b->timeline, b->turn, &words) : NULL;
  if (next != NULL)
    add_if_free (b, LAP_LINE_NEXT, end - LEFT_NEXT, words, next);
}

/* What is told where @v begins or lasts: its side, which set it is, its middle. */
static void
add_course (Build *b, const LapInterval *v, const LapInterval *before, int *set)
{
  const LapTask *task = lap_timeline_task (b->timeline, v);
  gboolean split = task != NULL && task->sides == LAP_SIDES_SPLIT;
  const LapPart *part = b->timeline->parts[v->part].part;

  if (before != NULL && split && before->kind != LAP_INTERVAL_SET_REST && before->side != v->side) {
    int start = before->kind == LAP_INTERVAL_SWITCH ? before->start : v->start;

    add_if_free (b, LAP_LINE_SIDE, start, 2,
                 g_strdup (v->side == LAP_SIDE_LEFT ? _("Now left") : _("Now right")));
  }
  if (before != NULL && before->kind == LAP_INTERVAL_SET_REST)
    add_if_free (b, LAP_LINE_SET, before->start + 1, 4,
                 g_strdup_printf (_("Set %1$d of %2$d"), ++*set, part->sets));
  if (!split && v->seconds >= SPAN_HALF)
    add_if_free (b, LAP_LINE_HALF_WAY, v->start + v->seconds / 2, 1, g_strdup (_("Half-way")));
}

static void
add_moments (Build *b)
{
  const LapTimeline *t = b->timeline;
  const LapTurn *turn = &t->turns[b->turn];
  const LapInterval *before = NULL;
  int set = 1;

  for (guint i = turn->interval; i < t->n && t->intervals[i].start < turn->end; i++)
    if (t->intervals[i].kind == LAP_INTERVAL_WORK)
      add_ending (b, &t->intervals[i], t->intervals[i].start + t->intervals[i].seconds == turn->end);
  for (guint i = turn->interval; i < t->n && t->intervals[i].start < turn->end; i++) {
    if (t->intervals[i].kind == LAP_INTERVAL_WORK)
      add_course (b, &t->intervals[i], before, &set);
    before = &t->intervals[i];
  }
}

/* In the work, where there is time */

static void
gather (GArray *list, LapLineKind kind, const char *text)
{
  Free line = { kind, text, NULL };

  if (text != NULL && *text != '\0')
    g_array_append_val (list, line);
}

/* How to do @exercise with a joint or state spared that the session is also for. */
static void
gather_also (GArray *list, const LapTimeline *t, const LapExercise *exercise)
{
  guint32 spared = lap_words_mask (&lap_care_words, (const char * const *) t->session->also_for);

  for (guint i = 0; i < LAP_N_CARE; i++) {
    const LapCare *care = spared & LAP_BIT (i) ? lap_exercise_care (exercise, i) : NULL;
    const LapExercise *instead;
    Free line = { LAP_LINE_ALSO, care != NULL ? care->say : NULL, lap_words_label (&lap_care_words, i) };

    if (care == NULL)
      continue;
    instead = care->instead != NULL ? lap_catalogue_find (t->catalogue, care->instead) : NULL;
    if (line.text == NULL && instead != NULL)
      line.text = instead->name;
    if (line.text != NULL)
      g_array_append_val (list, line);
  }
}

/* The first cue, then the options, so that people can choose early, then the rest by importance. */
static GArray *
free_lines (const Build *b)
{
  const LapTalkTurn *turn = &b->talk->turns[b->turn];
  const LapWording *say = &turn->say;
  GArray *list = g_array_new (FALSE, FALSE, sizeof (Free));
  guint n = say->cues != NULL ? g_strv_length ((char **) say->cues) : 0;

  gather (list, LAP_LINE_CUE, n > 0 ? say->cues[0] : NULL);
  gather (list, LAP_LINE_EASIER, say->easier);
  gather (list, LAP_LINE_HARDER, say->harder);
  if (turn->first)
    gather_also (list, b->timeline, b->timeline->tasks[b->timeline->turns[b->turn].task].shown);
  gather (list, LAP_LINE_FAULT, say->fault);
  for (guint i = 1; i < n; i++)
    gather (list, LAP_LINE_CUE, say->cues[i]);
  return list;
}

static char *
free_text (const Free *line)
{
  switch (line->kind) {
    case LAP_LINE_EASIER:
      return g_strdup_printf (_("Easier: %s"), spoken (line->text));
    case LAP_LINE_HARDER:
      return g_strdup_printf (_("Harder: %s"), spoken (line->text));
    case LAP_LINE_ALSO:
      return g_strdup_printf (_("For %1$s: %2$s"), line->whom, spoken (line->text));
    default:
      return g_strdup (spoken (line->text));
  }
}

/* Puts the lines down from second @from on with @quiet between them. Returns how many found a place. */
static guint
lay_free (Build *b, GArray *list, int from, int end, int quiet)
{
  guint placed = 0;

  for (guint i = 0; i < list->len; i++) {
    const Free *line = &g_array_index (list, Free, i);
    int words = lap_count_words (line->text) + (line->whom != NULL), start = from;
    double seconds = words / b->pace;

    while (start + seconds + 1 <= end && !fits (b, start, seconds, quiet))
      start++;
    if (start + seconds + 1 > end)
      continue;
    add (b, line->kind, start, words, free_text (line));
    from = start;
    placed++;
  }
  return placed;
}

static void
take_back (Build *b, guint n)
{
  while (n-- > 0) {
    g_free (g_array_index (b->lines, LapLine, b->lines->len - 1).text);
    g_array_set_size (b->lines, b->lines->len - 1);
  }
}

static void
add_free (Build *b, const LapTalkTurn *holder)
{
  g_autoptr (GArray) list = free_lines (b);
  const LapTurn *turn = &b->timeline->turns[b->turn];

  b->pace = holder->work.pace;
  for (guint i = 0; i < G_N_ELEMENTS (quiets); i++) {
    guint placed = lay_free (b, list, turn->start + 1, turn->end, quiets[i]);

    if (placed == list->len || quiets[i] == APART)
      return;
    take_back (b, placed);
  }
}

static int
compare (gconstpointer a, gconstpointer b, gpointer data)
{
  const LapLine *one = a, *other = b;

  return one->start < other->start ? -1 : one->start > other->start;
}

/* Talks are the coach's own words, in full, where they stand; one that has too many is taken to end with its
 * seconds. */
static void
add_own (Build *b, guint *own, int until)
{
  const LapTalk *talk = b->talk;

  for (; *own < talk->n_own && talk->own[*own].room.span.start < until; (*own)++) {
    const LapTalkRoom *room = &talk->own[*own].room;
    const LapInterval *v = &b->timeline->intervals[talk->own[*own].interval];
    const char *text = b->timeline->tasks[v->task].block->talk;
    int start = next_free (b, v->start), left = MAX (1, room->span.end - start);
    LapLine line = { .start = start, .seconds = MIN (room->need, left), .kind = LAP_LINE_TALK, .part = v->part,
                     .round = v->round, .block = v->block };

    if (room->words == 0)
      continue;
    line.text = g_strdup (text);
    g_array_append_val (b->lines, line);
  }
}

/* Of the lines so far the first that lasts into what belongs to @holder: where words ran over, it may be several. */
static guint
first_in_the_way (const Build *b, const LapTalkTurn *holder)
{
  guint i = MAX (1, b->lines->len) - 1;

  while (i > 0 && g_array_index (b->lines, LapLine, i - 1).start + g_array_index (b->lines, LapLine, i - 1).seconds >
                    holder->gap.span.start - APART)
    i--;
  return i;
}

/* The turns @from until @until, which are one but at their own pace. */
static void
add_turn (Build *b, guint from, guint until, guint *own)
{
  const LapTalkTurn *holder = &b->talk->turns[from];

  b->first = first_in_the_way (b, holder);
  add_own (b, own, b->timeline->turns[from].start);
  for (b->turn = from; b->turn < until; b->turn++)
    add_before (b, holder);
  b->turn = until - 1;
  b->pace = holder->work.pace;
  add_moments (b);
  for (b->turn = from; b->turn < until; b->turn++)
    add_free (b, holder);
  g_qsort_with_data (&g_array_index (b->lines, LapLine, b->first), b->lines->len - b->first, sizeof (LapLine),
                     compare, NULL);
}

static void
add_turns (Build *b)
{
  const LapTimeline *t = b->timeline;
  guint own = 0, until;

  for (guint i = 0; i < t->n_turns; i = until) {
    for (until = i + 1; until < t->n_turns && t->turns[until].interval == t->turns[i].interval;)
      until++;
    add_turn (b, i, until, &own);
  }
  add_own (b, &own, t->length);
}

LapScript *
lap_script_new (const LapTalk *talk)
{
  LapScript *script = g_new (LapScript, 1);
  Build b = { .talk = talk, .timeline = talk->timeline, .lines = g_array_new (FALSE, FALSE, sizeof (LapLine)) };

  add_turns (&b);
  script->n = b.lines->len;
  script->lines = (LapLine *) g_array_free (b.lines, FALSE);
  return script;
}

void
lap_script_free (LapScript *script)
{
  for (guint i = 0; i < script->n; i++)
    g_free (script->lines[i].text);
  g_free (script->lines);
  g_free (script);
}

const LapLine *
lap_script_at (const LapScript *script, double second)
{
  guint begun = LAP_HALVE (script->n, i, script->lines[i].start <= second);

  return begun > 0 ? &script->lines[begun - 1] : NULL;
}
