/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "checks/report.h"

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
lap_report_class (LapCheckup *cx, LapWarning *w, LapClass *c)
{
  if (w->n_classes == 0)
    w->first_class = cx->classes->len;
  g_array_append_val (cx->classes, c);
  w->n_classes++;
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
