/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/takes.h"

#include "publish/csv.h"
#include "publish/cuts.h"
#include "publish/webvtt.h"

#include <glib/gi18n-lib.h>

static const LapTurn *
turn_of (const LapTimeline *timeline, const LapCuts *cuts, const LapCut *cut)
{
  guint32 turn = cuts->shots->shots[cut->shot].turn;

  return turn != LAP_NO_TURN ? &timeline->turns[turn] : NULL;
}

static const char *
mark_of (const LapTake *take)
{
  return take != NULL ? lap_words_id (&lap_take_marks, take->mark) : NULL;
}

/* "Round 2: Squat, good", or the part where nothing is worked. */
static char *
title_of (const LapTimeline *timeline, const LapCuts *cuts, const LapCut *cut)
{
  const LapTurn *turn = turn_of (timeline, cuts, cut);
  const char *name = turn != NULL ? lap_task_name (&timeline->tasks[turn->task]) : _("The end");
  g_autofree char *what = turn != NULL && timeline->parts[turn->part].part->rounds > 1
                              ? g_strdup_printf (_("Round %1$d: %2$s"), turn->round, name) : g_strdup (name);

  return g_strdup_printf ("%s, %s", what, lap_words_label (&lap_take_marks, cut->take->mark));
}

static GString *
takes_vtt (const LapTimeline *timeline, const LapCuts *cuts)
{
  GString *vtt = lap_webvtt_new (NULL);
  guint n = 0;

  for (guint i = 0; i < cuts->n; i++) {
    const LapCut *cut = &cuts->cuts[i];
    g_autofree char *title = cut->take != NULL && cut->out > 0 ? title_of (timeline, cuts, cut) : NULL;

    if (title != NULL)
      lap_webvtt_add (vtt, ++n, cut->in, cut->out, title);
  }
  return vtt;
}

static GString *
takes_csv (const LapTimeline *timeline, const LapCuts *cuts)
{
  GString *csv = g_string_new ("film,clock,at,exercise,round,mark,over\r\n");

  for (guint i = 0; i < cuts->n_marks; i++) {
    const LapTake *take = cuts->marks[i].take;

    lap_csv_number (csv, cuts->marks[i].film, FALSE);
    lap_csv_number (csv, take->clock, FALSE);
    lap_csv_text (csv, take->at, FALSE);
    lap_csv_text (csv, take->exercise, FALSE);
    lap_csv_whole (csv, take->round, TRUE);
    lap_csv_text (csv, mark_of (take), FALSE);
    lap_csv_number (csv, take->over, TRUE);
  }
  return csv;
}

gboolean
lap_takes_write (const LapPublication *what, const char *suffix, LapOutput *output, GError **error)
{
  g_autoptr (LapCuts) cuts = lap_cuts_new (what, error);

  if (cuts == NULL)
    return FALSE;
  return lap_output_write_text (output, g_str_equal (suffix, "vtt") ? takes_vtt (what->timeline, cuts)
                                                                    : takes_csv (what->timeline, cuts), error);
}

gboolean
lap_cut_list_write (const LapPublication *what, const char *suffix, LapOutput *output, GError **error)
{
  const LapTimeline *timeline = what->timeline;
  g_autoptr (LapCuts) cuts = lap_cuts_new (what, error);
  GString *csv;

  if (cuts == NULL)
    return FALSE;
  csv = g_string_new ("in,out,keep,part,round,block,exercise,mark,over\r\n");
  for (guint i = 0; i < cuts->n; i++) {
    const LapCut *cut = &cuts->cuts[i];
    const LapTurn *turn = turn_of (timeline, cuts, cut);

    lap_csv_number (csv, cut->in, FALSE);
    lap_csv_number (csv, cut->out, FALSE);
    lap_csv_text (csv, cut->keep ? "yes" : "no", FALSE);
    lap_csv_whole (csv, turn != NULL ? turn->part : 0, turn != NULL);
    lap_csv_whole (csv, turn != NULL ? turn->round : 0, turn != NULL);
    lap_csv_whole (csv, turn != NULL ? turn->block : 0, turn != NULL);
    lap_csv_text (csv, turn != NULL ? timeline->tasks[turn->task].wanted : NULL, FALSE);
    lap_csv_text (csv, mark_of (cut->take), FALSE);
    lap_csv_number (csv, cut->take != NULL ? cut->take->over : 0, TRUE);
  }
  return lap_output_write_text (output, csv, error);
}
