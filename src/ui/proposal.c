/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/proposal.h"

#include "arrange/choose.h"
#include "arrange/mend.h"
#include "arrange/order.h"

#include <glib/gi18n-lib.h>

/* What an arranger says while it works. */
typedef struct {
  LapTimeline  *timeline;
  LapCatalogue *builtin;
  GCancellable *cancellable;
  void        (*tell) (double share, gpointer data);
  gpointer      data;    /* of `tell` */
  guint         part;    /* that is put in order */
  char         *heading;
  GPtrArray    *done, *left;
  GHashTable   *reasons; /* block -> why, owned */
} Job;

static void
deed_free (gpointer data)
{
  LapDeed *deed = data;

  g_free (deed->what);
  g_free (deed->why);
  g_free (deed);
}

static void
add_deed (Job *job, char *what, char *why)
{
  LapDeed *deed = g_new (LapDeed, 1);

  *deed = (LapDeed) { what, why };
  g_ptr_array_add (job->done, deed);
}

/* The parts that order is for: main ones with more than one block. */
static gboolean
order_suits (const LapTimeline *t, guint part)
{
  return t->parts[part].part->kind == LAP_PART_MAIN && t->parts[part].n_turns > 1;
}

/* A part's share is one of all parts'. */
static void
progress_cb (double share, gpointer data)
{
  Job *job = data;

  if (job->tell != NULL)
    job->tell ((job->part + share) / job->timeline->n_parts, job->data);
}

static LapOrder *
find_order (Job *job)
{
  g_autoptr (LapCosts) costs = lap_costs_new (job->timeline, job->part);

  return lap_order_find (costs, job->cancellable, progress_cb, job, NULL);
}

static const char *
certainty (const LapOrder *order)
{
  if (order->proven)
    return _("No order of these blocks is better.");
  return _("It is the best that was found; a better one may exist.");
}

static LapEdits *
put_in_order (const LapRequest *request, Job *job)
{
  g_autoptr (LapEdits) all = lap_edits_new (_("Change the order"));
  g_autoptr (GPtrArray) words = g_ptr_array_new_with_free_func (g_free);
  const guint n = job->timeline->n_parts;

  for (job->part = 0; job->part < n && !g_cancellable_is_cancelled (job->cancellable); job->part++) {
    g_autoptr (LapOrder) order = order_suits (job->timeline, job->part) ? find_order (job) : NULL;
    LapPart *part = job->timeline->parts[job->part].part;
    g_autofree char *gain = NULL;

    if (order == NULL)
      continue;
    gain = lap_order_words (order, job->timeline, job->part);
    /* Translators: a part of the session, and what its new order gains. */
    g_ptr_array_add (words, g_strdup_printf (_("%1$s: %2$s."), lap_part_title (part), gain));
    add_deed (job, g_strdup (lap_part_title (part)), g_strdup (certainty (order)));
    lap_edits_append (all, lap_order_edits (order, part));
  }
  if (words->len == 0)
    g_ptr_array_add (words, g_strdup (_("No main part has blocks to put in order.")));
  g_ptr_array_add (words, NULL);
  job->heading = g_strjoinv ("\n", (char **) words->pdata);
  lap_edits_swap (all);
  return g_steal_pointer (&all);
}

static void
tell_mended (Job *job, GPtrArray *mended)
{
  for (guint i = 0; i < mended->len; i++) {
    const LapMended *m = g_ptr_array_index (mended, i);

    add_deed (job, g_strdup (m->remedy), g_strdup (m->message));
  }
}

static void
tell_open (Job *job, LapSession *session)
{
  g_autoptr (LapTimeline) timeline = lap_timeline_new (session, job->builtin, NULL);
  g_autoptr (LapCheckup) checkup = timeline != NULL ? lap_checkup_new (timeline) : NULL;

  for (guint i = 0; checkup != NULL && i < lap_checkup_n (checkup); i++) {
    const LapWarning *w = lap_checkup_nth (checkup, i);

    if (!w->fine && w->severity != LAP_SEVERITY_NOTE)
      g_ptr_array_add (job->left, lap_warning_message (checkup, w));
  }
}

static LapEdits *
mend (const LapRequest *request, Job *job)
{
  LapEdits *edits = NULL;
  g_autoptr (GPtrArray) mended = lap_mend (job->timeline->session, job->builtin, FALSE, job->cancellable, &edits);

  tell_mended (job, mended);
  tell_open (job, job->timeline->session);
  if (mended->len == 0)
    job->heading = g_strdup (job->left->len == 0 ? _("There is nothing to mend.")
                                                 : _("Nothing here can be mended by a remedy."));
  else
    job->heading = g_strdup_printf (ngettext ("%u change mends what can be mended.",
                                              "%u changes mend what can be mended.", mended->len), mended->len);
  return edits;
}

static char *
where (const LapTimeline *t, const LapSwap *swap)
{
  const char *part = lap_part_title (lap_session_nth (t->session, swap->part));

  if (swap->round > 0)
    return g_strdup_printf (_("%1$s, block %2$u, round %3$d"), part, swap->block + 1, swap->round);
  return g_strdup_printf (_("%1$s, block %2$u"), part, swap->block + 1);
}

static void
tell_swap (Job *job, const LapSwap *swap)
{
  LapPart *part = lap_session_nth (job->timeline->session, swap->part);
  g_autofree char *at = where (job->timeline, swap), *why = g_strdup_printf (_("%1$s: %2$s"), at, swap->reason);

  if (!swap->solved)
    /* Translators: an exercise that nothing was found for, where it is, and why. */
    g_ptr_array_add (job->left, g_strdup_printf (_("%1$s. %2$s"), swap->was, why));
  else if (g_strcmp0 (swap->was, swap->now) == 0)
    add_deed (job, g_strdup_printf (_("%s stays, with words"), swap->was), g_steal_pointer (&why));
  else
    add_deed (job, g_strdup_printf (_("%1$s instead of %2$s"), swap->now, swap->was), g_steal_pointer (&why));
  if (swap->solved && swap->round == 0)
    g_hash_table_insert (job->reasons, lap_part_nth (part, swap->block), g_strdup (swap->reason));
}

static LapEdits *
adapt (const LapRequest *request, Job *job)
{
  g_autoptr (GPtrArray) swaps = NULL, mended = NULL;
  LapEdits *edits = lap_adapt (job->timeline, request->whom, &swaps), *more = NULL;
  g_autoptr (LapCatalogue) suitable = NULL;
  guint done;

  for (guint i = 0; i < swaps->len; i++)
    tell_swap (job, g_ptr_array_index (swaps, i));
  done = job->done->len;
  lap_edits_swap (edits);
  /* New neighbours may not suit each other: what can be mended without touching the clock is. */
  suitable = lap_adapt_catalogue (job->builtin, job->timeline->session, request->whom);
  mended = lap_mend (job->timeline->session, suitable, TRUE, job->cancellable, &more);
  lap_edits_append (edits, more);
  tell_mended (job, mended);
  if (swaps->len == 0)
    job->heading = g_strdup (_("No exercise has to change."));
  else if (job->left->len == 0)
    job->heading = g_strdup_printf (ngettext ("%u block is adapted, on the same clock.",
                                              "%u blocks are adapted, on the same clock.", done), done);
  else
    job->heading = g_strdup_printf (ngettext ("%1$u block is adapted, on the same clock; %2$u couldn’t be.",
                                              "%1$u blocks are adapted, on the same clock; %2$u couldn’t be.", done),
                                    done, job->left->len);
  return edits;
}

static LapEdits *
choose (const LapRequest *request, Job *job)
{
  guint left = 0;
  LapEdits *edits = lap_choose (job->timeline, 0, &left);
  guint n = lap_edits_n (edits);

  lap_edits_swap (edits);
  if (n + left == 0)
    job->heading = g_strdup (_("All blocks have their exercise."));
  else
    job->heading = g_strdup_printf (ngettext ("%u exercise is chosen.", "%u exercises are chosen.", n), n);
  if (left > 0)
    g_ptr_array_add (job->left, g_strdup_printf (
      ngettext ("%u block stays without: no exercise meets all that the session asks for.",
                "%u blocks stay without: no exercise meets all that the session asks for.", left), left));
  return edits;
}

/* Each changes the session of the job and returns the edits that did, applied. */
static LapEdits *(*const arrangers[LAP_N_ARRANGERS]) (const LapRequest *, Job *) = {
  [LAP_ARRANGE_ORDER] = put_in_order,
  [LAP_ARRANGE_MEND] = mend,
  [LAP_ARRANGE_ADAPT] = adapt,
  [LAP_ARRANGE_CHOOSE] = choose,
};

static void
job_clear (Job *job)
{
  lap_timeline_unref (job->timeline);
  g_free (job->heading);
  g_ptr_array_unref (job->done);
  g_ptr_array_unref (job->left);
  g_hash_table_unref (job->reasons);
}

/* Both sides, and the twin as it was again. */
static LapProposal *
propose (Job *job, const LapRequest *request)
{
  LapProposal *proposal = g_new0 (LapProposal, 1);
  g_autoptr (LapTimeline) then = NULL;
  LapSession *twin = job->timeline->session;

  proposal->before = lap_plan_side_new (job->timeline);
  proposal->edits = arrangers[request->arranger] (request, job);
  then = lap_timeline_new (twin, job->builtin, NULL);
  proposal->possible = then != NULL && lap_edits_n (proposal->edits) > 0;
  if (then == NULL) {
    lap_edits_swap (proposal->edits);
    then = lap_timeline_new (twin, job->builtin, NULL);
    g_free (job->heading);
    job->heading = g_strdup (_("What it would become can’t be laid out."));
  }
  proposal->after = lap_plan_side_new (then);
  if (lap_edits_applied (proposal->edits))
    lap_edits_swap (proposal->edits);
  proposal->pairs = lap_plan_pairs (proposal->before, proposal->after, job->reasons);
  proposal->heading = g_steal_pointer (&job->heading);
  proposal->done = g_ptr_array_ref (job->done);
  proposal->left = g_ptr_array_ref (job->left);
  proposal->twin = g_object_ref (twin);
  return proposal;
}

LapProposal *
lap_proposal_new (LapSession *twin, LapCatalogue *builtin, const LapRequest *request, GCancellable *cancellable,
                  void (*tell) (double share, gpointer data), gpointer data, GError **error)
{
  Job job = {
    .timeline = lap_timeline_new (twin, builtin, NULL),
    .builtin = builtin, .cancellable = cancellable, .tell = tell, .data = data,
    .done = g_ptr_array_new_with_free_func (deed_free),
    .left = g_ptr_array_new_with_free_func (g_free),
    .reasons = g_hash_table_new_full (NULL, NULL, NULL, g_free),
  };
  g_autoptr (LapProposal) proposal = propose (&job, request);

  job_clear (&job);
  g_object_unref (twin);
  return g_cancellable_set_error_if_cancelled (cancellable, error) ? NULL : g_steal_pointer (&proposal);
}

void
lap_proposal_free (LapProposal *proposal)
{
  g_free (proposal->heading);
  g_ptr_array_unref (proposal->done);
  g_ptr_array_unref (proposal->left);
  g_ptr_array_unref (proposal->pairs);
  lap_plan_side_free (proposal->before);
  lap_plan_side_free (proposal->after);
  lap_edits_free (proposal->edits);
  g_object_unref (proposal->twin);
  g_free (proposal);
}

LapEdits *
lap_proposal_edits (const LapProposal *proposal, LapSession *session)
{
  return lap_edits_onto (proposal->edits, proposal->twin, session);
}
