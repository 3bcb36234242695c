/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/rehearse/keep.h"

#include "timeline/fingerprint.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#define LEAST 1 /* seconds over that are worth telling */
#define STEP  5 /* seconds that plans are made of */

static void
fill_take (LapTake *take, const LapScene *scene, const LapTakeMark *mark)
{
  const LapShot *shot = &lap_rehearsal_shots (scene->rehearsal)->shots[mark->shot];
  const LapTurn *turn = shot->turn != LAP_NO_TURN ? &scene->timeline->turns[shot->turn] : NULL;
  const LapTask *task = lap_scene_task (scene, turn);

  take->at = g_strdup (mark->at);
  take->clock = round (mark->clock * 10) / 10;
  take->exercise = task != NULL ? g_strdup (task->wanted) : NULL;
  take->round = turn != NULL ? turn->round : 1;
  take->mark = mark->good;
  take->over = round (mark->over * 10) / 10;
}

gboolean
lap_rehearse_keep_take (LapDocument *document, const LapScene *scene, guint n)
{
  LapSession *session = lap_document_session (document);
  g_autofree char *of = lap_timeline_fingerprint (scene->timeline);
  gboolean same = g_strcmp0 (session->takes_of, of) == 0;
  g_autoptr (LapRows) takes = same && session->takes != NULL ? lap_rows_copy (session->takes)
                                                             : lap_rows_new (&lap_kind_takes);
  LapEdits *edits = lap_edits_new (_("Mark a take"));

  fill_take (lap_rows_add (takes), scene, lap_takes_nth (scene->takes, n));
  lap_edits_set_boxed (edits, session, "takes", LAP_TYPE_ROWS, takes);
  if (!same)
    lap_edits_set_text (edits, session, "takes-of", of);
  return lap_document_apply (document, edits);
}

static void
overrun_free (gpointer data)
{
  LapOverrun *overrun = data;

  g_free (overrun->text);
  g_free (overrun->remedy);
  g_clear_object (&overrun->holder);
  g_free (overrun);
}

/* The longest stretch of the gap is what is made longer. */
static const LapInterval *
longest (const LapTimeline *timeline, LapSpan gap)
{
  const LapInterval *best = NULL;

  for (const LapInterval *i = lap_timeline_at (timeline, gap.start); i != NULL && i->start < gap.end;
       i = lap_timeline_at (timeline, i->start + i->seconds))
    if (best == NULL || i->seconds > best->seconds)
      best = i;
  return best;
}

static void
find_remedy (LapOverrun *overrun, const LapTimeline *timeline, const LapInterval *interval, int more)
{
  LapPart *part = timeline->parts[interval->part].part;
  const LapTask *task = lap_timeline_task (timeline, interval);
  const char *label;

  switch (interval->kind) {
    case LAP_INTERVAL_TALK:
    case LAP_INTERVAL_PAUSE:
      overrun->holder = g_object_ref (LAP_OBJECT (task->block));
      overrun->property = "seconds";
      label = interval->kind == LAP_INTERVAL_TALK ? _("Talk %d s") : _("Pause %d s");
      break;
    case LAP_INTERVAL_REST:
      /* Elsewhere a rest follows from the round or from the minute. */
      if (part->steps != NULL || part->run == LAP_RUN_ON_THE_MINUTE)
        return;
      overrun->holder = g_object_ref (LAP_OBJECT (task->block));
      overrun->property = "rest";
      label = _("Rest %d s");
      break;
    default:
      overrun->holder = g_object_ref (LAP_OBJECT (part));
      overrun->property = interval->kind == LAP_INTERVAL_ROUND_REST ? "round-rest" : "rest-after";
      label = _("Rest %d s");
      break;
  }
  overrun->seconds = (interval->seconds + more + STEP - 1) / STEP * STEP;
  overrun->remedy = g_strdup_printf (label, overrun->seconds);
}

static LapOverrun *
overrun_new (const LapScene *scene, guint shot, double over)
{
  const LapShot *s = &lap_rehearsal_shots (scene->rehearsal)->shots[shot];
  const LapTurn *turn = &scene->timeline->turns[s->turn];
  LapOverrun *overrun = g_new0 (LapOverrun, 1);
  g_autofree char *name = lap_scene_name (scene, turn);
  guint n, place = lap_scene_block (scene, turn, &n);
  const LapInterval *interval = longest (scene->timeline, (LapSpan) { s->start, s->work });

  overrun->text = g_strdup_printf (_("The talk before block %u, %s, overran by %d s."), place, name, (int) round (over));
  if (interval != NULL)
    find_remedy (overrun, scene->timeline, interval, (int) ceil (over));
  return overrun;
}

GPtrArray *
lap_rehearse_overruns (const LapScene *scene)
{
  GPtrArray *overruns = g_ptr_array_new_with_free_func (overrun_free);
  const LapShots *shots = lap_rehearsal_shots (scene->rehearsal);

  for (guint i = 0; i < shots->n; i++)
    if (shots->shots[i].turn != LAP_NO_TURN && lap_takes_over (scene->takes, i) >= LEAST)
      g_ptr_array_add (overruns, overrun_new (scene, i, lap_takes_over (scene->takes, i)));
  return overruns;
}

LapEdits *
lap_rehearse_mend (const LapOverrun *overrun)
{
  LapEdits *edits = lap_edits_new (overrun->remedy);

  lap_edits_set_int (edits, overrun->holder, overrun->property, overrun->seconds);
  return edits;
}
