/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a new order does, as edits and in words. The words count what the checks count, before and after.
 */
#include "arrange/order.h"

#include "checks/checks.h"

#include <glib/gi18n-lib.h>

LapEdits *
lap_order_edits (const LapOrder *order, LapPart *part)
{
  LapEdits *edits = lap_edits_new (_("Change the order"));
  g_autoptr (GPtrArray) blocks = g_ptr_array_new ();
  gboolean same = TRUE;

  for (guint k = 0; k < order->n; k++) {
    g_ptr_array_add (blocks, lap_part_nth (part, order->order[k]));
    same &= order->order[k] == k;
  }
  if (!same)
    lap_edits_splice (edits, part->blocks, 0, order->n, blocks);
  return edits;
}

static const struct {
  const char *check;
  const char *fewer, *fewer_many, *more, *more_many;
} counted[] = {
  { "same-muscle", N_("one pair of equal muscles gone"), N_("%d pairs of equal muscles gone"),
    N_("one more pair of equal muscles"), N_("%d more pairs of equal muscles") },
  { "joint-run", N_("one run on a joint gone"), N_("%d runs on a joint gone"), N_("one more run on a joint"),
    N_("%d more runs on a joint") },
  { "impact-run", N_("one run of hard landings gone"), N_("%d runs of hard landings gone"),
    N_("one more run of hard landings"), N_("%d more runs of hard landings") },
  { "change-short", N_("one change that was too short gone"), N_("%d changes that were too short gone"),
    N_("one more change that is too short"), N_("%d more changes that are too short") },
};

static int
count (const LapCheckup *checkup, const char *id, guint part)
{
  int n = 0;

  for (guint i = 0; i < lap_checkup_n (checkup); i++) {
    const LapWarning *w = lap_checkup_nth (checkup, i);

    n += g_str_equal (w->check->id, id) && w->part == (int) part && w->severity != LAP_SEVERITY_NOTE;
  }
  return n;
}

/* What neighbours have in common, all rounds together. */
typedef struct {
  int steps;    /* of height from one to the next */
  int overlaps; /* primary muscles of one that help in the other */
  int joints;   /* loaded by both */
  int places;   /* quarters that jumps and balance cost where they stand */
} Sums;

static Sums
sum_up (const LapTimeline *t, guint part)
{
  g_autoptr (LapCosts) costs = lap_costs_new (t, part);
  Sums sums = { 0 };

  for (guint i = t->parts[part].turn + 1; i < t->parts[part].turn + t->parts[part].n_turns; i++) {
    const LapTask *a = &t->tasks[t->turns[i - 1].task], *b = &t->tasks[t->turns[i].task];

    if (a->shown == NULL || b->shown == NULL)
      continue;
    sums.steps += ABS (lap_change_steps (a->shown->posture, b->shown->posture));
    sums.overlaps += __builtin_popcount (a->primary & b->secondary) + __builtin_popcount (b->primary & a->secondary);
    sums.joints += __builtin_popcount (a->load_mask & b->load_mask);
  }
  for (guint i = 0; i < costs->n; i++)
    sums.places += costs->places[i * costs->n + i];
  return sums;
}

static void
add (GPtrArray *words, const char *one, const char *many, int n)
{
  g_ptr_array_add (words, n == 1 ? g_strdup (_(one)) : g_strdup_printf (_(many), n));
}

static void
add_change (GPtrArray *words, int d, const char *fewer, const char *fewer_many, const char *more, const char *more_many)
{
  if (d < 0)
    add (words, fewer, fewer_many, -d);
  else if (d > 0)
    add (words, more, more_many, d);
}

static char *
compare (const LapTimeline *before, const LapTimeline *after, guint part)
{
  g_autoptr (LapCheckup) was = lap_checkup_new_up_to ((LapTimeline *) before, LAP_NEEDS_TIMELINE);
  g_autoptr (LapCheckup) is = lap_checkup_new_up_to ((LapTimeline *) after, LAP_NEEDS_TIMELINE);
  g_autoptr (GPtrArray) words = g_ptr_array_new_with_free_func (g_free);
  Sums a = sum_up (before, part), b = sum_up (after, part);

  for (guint i = 0; i < G_N_ELEMENTS (counted); i++) {
    int d = count (is, counted[i].check, part) - count (was, counted[i].check, part);

    add_change (words, d, counted[i].fewer, counted[i].fewer_many, counted[i].more, counted[i].more_many);
  }
  add_change (words, b.overlaps - a.overlaps, N_("one muscle less that works on from neighbour to neighbour"),
              N_("%d muscles fewer that work on from neighbour to neighbour"),
              N_("one muscle more that works on from neighbour to neighbour"),
              N_("%d muscles more that work on from neighbour to neighbour"));
  add_change (words, b.joints - a.joints, N_("one joint less loaded twice running"),
              N_("%d joints fewer loaded twice running"), N_("one joint more loaded twice running"),
              N_("%d joints more loaded twice running"));
  if (b.places < a.places)
    g_ptr_array_add (words, g_strdup (_("jumps and balance stand where people are warm and fresh")));
  add_change (words, b.steps - a.steps, N_("one step up or down less"), N_("%d steps up or down fewer"),
              N_("one step up or down more"), N_("%d steps up or down more"));
  if (words->len == 0)
    g_ptr_array_add (words, g_strdup (_("neighbours suit each other a little better")));
  g_ptr_array_add (words, NULL);
  return lap_join ((const char * const *) words->pdata);
}

char *
lap_order_words (const LapOrder *order, const LapTimeline *timeline, guint part)
{
  g_autoptr (LapEdits) edits = lap_order_edits (order, timeline->parts[part].part);
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (LapTimeline) then = NULL;

  if (lap_edits_n (edits) == 0)
    return g_strdup (order->proven ? _("no order is better") : _("nothing better found"));
  lap_edits_swap (edits);
  then = lap_timeline_new (timeline->session, builtin, NULL);
  lap_edits_swap (edits);
  return then != NULL ? compare (timeline, then, part) : g_strdup ("");
}
