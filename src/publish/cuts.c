/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/cuts.h"

#include "base/error.h"
#include "timeline/fingerprint.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#define ALIKE    1.5 /* seconds two clocks may differ: people's times of day may be whole seconds */
#define COUNT_IN 3   /* seconds before a shot is taken again */

/* A stretch in which the session ran on: second @from of it until @to, each @ahead seconds later in the film. */
typedef struct {
  double from, to, ahead;
  guint  first, n; /* its marks */
} Run;

typedef struct {
  const LapTimeline *timeline;
  LapShots          *shots;
  GArray            *marks, *runs;
} Build;

static gboolean
is_of (const Build *b, const LapTake *take, const LapShot *shot)
{
  const LapTurn *turn = shot->turn != LAP_NO_TURN ? &b->timeline->turns[shot->turn] : NULL;
  const LapTask *task = turn != NULL ? &b->timeline->tasks[turn->task] : NULL;

  if (turn == NULL || turn->round != take->round)
    return FALSE;
  return g_strcmp0 (take->exercise, task->wanted) == 0 ||
         (task->shown != NULL && g_strcmp0 (take->exercise, task->shown->id) == 0);
}

/* The nearest shot of its exercise and round, or where the clock stood: a mark comes when a shot is over. */
static guint
shot_of (const Build *b, const LapTake *take)
{
  guint here = lap_shots_find (b->shots, (int) take->clock), best = here;
  double nearest = HUGE_VAL;

  for (guint i = 0; take->exercise != NULL && i < b->shots->n; i++) {
    const LapShot *shot = &b->shots->shots[i];
    double away = MAX (shot->start - take->clock, take->clock - shot->end);

    if (is_of (b, take, shot) && away < nearest) {
      nearest = away;
      best = i;
    }
  }
  return best;
}

static gboolean
read_marks (Build *b, double ahead, GError **error)
{
  const LapRows *takes = b->timeline->session->takes;
  g_autoptr (GTimeZone) utc = g_time_zone_new_utc ();
  g_autoptr (GDateTime) first = NULL;

  for (guint i = 0; b->shots->n > 0 && i < lap_rows_n (takes); i++) {
    const LapTake *take = lap_rows_nth (takes, LapTake, i);
    g_autoptr (GDateTime) at = g_date_time_new_from_iso8601 (take->at, utc);
    LapCutMark mark = { take, 0, shot_of (b, take) };

    if (at == NULL) {
      g_set_error (error, LAP_ERROR, LAP_ERROR_INVALID, _("/takes/%u/at: expected a time of day such as "
                                                          "2027-01-11T18:30:00Z"), i);
      return FALSE;
    }
    if (first == NULL)
      first = g_date_time_ref (at);
    mark.film = ahead + lap_rows_nth (takes, LapTake, 0)->clock +
                g_date_time_difference (at, first) / (double) G_TIME_SPAN_SECOND;
    g_array_append_val (b->marks, mark);
  }
  return TRUE;
}

static Run *
add_run (Build *b, double from, double ahead, guint first)
{
  Run run = { from, b->timeline->length, ahead, first, 0 };

  g_array_append_val (b->runs, run);
  return &g_array_index (b->runs, Run, b->runs->len - 1);
}

/* Where the session went on between two marks that don't run on alike. */
static double
resumed_at (const Build *b, const LapCutMark *before, const LapCutMark *after)
{
  const LapShot *shot = &b->shots->shots[before->shot];

  if (before->take->mark == LAP_TAKE_AGAIN)
    return MIN (shot->start, after->take->clock);
  return after->take->clock >= shot->end ? shot->end : b->shots->shots[after->shot].start;
}

/* Ends @run behind @mark; a good shot is played to its end. */
static void
end_run (const Build *b, Run *run, const LapCutMark *mark)
{
  const LapShot *shot = &b->shots->shots[mark->shot];

  run->to = mark->take->mark == LAP_TAKE_AGAIN ? mark->take->clock : MAX (mark->take->clock, shot->end);
}

static void
lay_runs (Build *b, double ahead)
{
  Run *run = add_run (b, 0, ahead, 0);

  for (guint i = 0; i < b->marks->len; i++) {
    const LapCutMark *mark = &g_array_index (b->marks, LapCutMark, i), *before = mark - 1;
    double now = mark->film - mark->take->clock;

    if (i > 0 && fabs (now - run->ahead) > ALIKE) {
      end_run (b, run, before);
      run = add_run (b, resumed_at (b, before, mark), now, i);
    }
    run->n++;
  }
  if (b->marks->len > 0) {
    const LapCutMark *last = &g_array_index (b->marks, LapCutMark, b->marks->len - 1);

    if (last->take->mark == LAP_TAKE_AGAIN) {
      double start = b->shots->shots[last->shot].start;

      end_run (b, run, last);
      add_run (b, start, last->film + COUNT_IN - start, b->marks->len);
    }
  }
}

/* The last mark of @shot in @run. */
static const LapTake *
take_of (const Build *b, const Run *run, guint shot)
{
  for (guint i = run->first + run->n; i-- > run->first;)
    if (g_array_index (b->marks, LapCutMark, i).shot == shot)
      return g_array_index (b->marks, LapCutMark, i).take;
  return NULL;
}

static void
cut_run (const Build *b, guint n, GArray *cuts)
{
  const Run *run = &g_array_index (b->runs, Run, n);

  for (guint i = 0; i < b->shots->n; i++) {
    const LapShot *shot = &b->shots->shots[i];
    LapCut cut = { .shot = i, .run = n, .from = MAX (shot->start, run->from), .to = MIN (shot->end, run->to) };

    if (cut.from >= cut.to)
      continue;
    cut.in = cut.from + run->ahead;
    cut.out = cut.to + run->ahead;
    cut.take = take_of (b, run, i);
    cut.whole = cut.from == shot->start && cut.to == shot->end;
    g_array_append_val (cuts, cut);
  }
}

static int
worth (const LapCut *cut)
{
  if (cut->take != NULL)
    return cut->take->mark == LAP_TAKE_GOOD ? 2 : 0;
  return cut->whole ? 1 : 0;
}

/* Of the cuts of each shot the last that is worth most, if any is worth anything. */
static void
choose (LapCuts *self)
{
  g_autofree LapCut **best = g_new0 (LapCut *, self->shots->n);

  for (guint i = 0; i < self->n; i++) {
    LapCut *cut = &self->cuts[i];
    LapCut *other = best[cut->shot];

    if (worth (cut) > 0 && (other == NULL || worth (cut) >= worth (other)))
      best[cut->shot] = cut;
  }
  for (guint i = 0; i < self->shots->n; i++)
    if (best[i] != NULL)
      best[i]->keep = TRUE;
}

LapCuts *
lap_cuts_new (const LapPublication *what, GError **error)
{
  double ahead = what->timeline->session->lead + what->offset;
  g_autoptr (LapShots) shots = lap_shots_new (what->timeline);
  GArray *marks = g_array_new (FALSE, FALSE, sizeof (LapCutMark));
  g_autoptr (GArray) runs = g_array_new (FALSE, FALSE, sizeof (Run));
  GArray *cuts;
  LapCuts *self;
  Build b = { what->timeline, shots, marks, runs };

  if (!read_marks (&b, ahead, error)) {
    g_array_unref (marks);
    return NULL;
  }
  lay_runs (&b, ahead);
  cuts = g_array_new (FALSE, FALSE, sizeof (LapCut));
  for (guint i = 0; i < runs->len; i++)
    cut_run (&b, i, cuts);
  self = g_new (LapCuts, 1);
  *self = (LapCuts) { .shots = g_steal_pointer (&shots), .n = cuts->len, .n_marks = marks->len };
  self->cuts = (LapCut *) g_array_free (cuts, FALSE);
  self->marks = (LapCutMark *) g_array_free (marks, FALSE);
  choose (self);
  return self;
}

void
lap_cuts_free (LapCuts *self)
{
  lap_shots_free (self->shots);
  g_free (self->cuts);
  g_free (self->marks);
  g_free (self);
}

gboolean
lap_cuts_are_old (const LapTimeline *timeline)
{
  g_autofree char *now = lap_timeline_fingerprint (timeline);

  return lap_rows_n (timeline->session->takes) > 0 && g_strcmp0 (now, timeline->session->takes_of) != 0;
}
