/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "arrange/mend.h"

#include <glib/gi18n-lib.h>

typedef struct {
  guint stops, warnings, notes;
} State;

/* A remedy that may be tried, and what it was for. */
typedef struct {
  const LapWarning *warning;
  LapRemedy *remedy; /* owned by its list of ideas */
  int change;
  guint number;      /* warnings in their order, remedies in theirs */
} Idea;

static State
state_of (const LapCheckup *checkup)
{
  return (State) { lap_checkup_count (checkup, LAP_SEVERITY_STOP), lap_checkup_count (checkup, LAP_SEVERITY_WARNING),
                   lap_checkup_count (checkup, LAP_SEVERITY_NOTE) };
}

/* The state without its notes. */
static State
graver_of (const LapCheckup *checkup)
{
  State state = state_of (checkup);

  state.notes = 0;
  return state;
}

static gboolean
is_lower (State a, State b)
{
  if (a.stops != b.stops)
    return a.stops < b.stops;
  if (a.warnings != b.warnings)
    return a.warnings < b.warnings;
  return a.notes < b.notes;
}

static int
by_change (gconstpointer a, gconstpointer b)
{
  const Idea *ia = a, *ib = b;

  if (ia->change != ib->change)
    return ia->change < ib->change ? -1 : 1;
  return ia->number < ib->number ? -1 : 1;
}

/* What the session wants isn't for the program to change. */
static gboolean
keeps_wishes (const LapEdits *edits)
{
  return !lap_edits_sets (edits, "target") && !lap_edits_sets (edits, "group-count");
}

static LapCheckup *
check_up (LapSession *session, LapCatalogue *builtin)
{
  g_autoptr (LapTimeline) timeline = lap_timeline_new (session, builtin, NULL);

  return timeline != NULL ? lap_checkup_new (timeline) : NULL;
}

/* The ideas for all warnings, the least change first. @lists keeps what they point into. */
static GArray *
gather (const LapCheckup *checkup, GPtrArray *lists)
{
  GArray *ideas = g_array_new (FALSE, FALSE, sizeof (Idea));

  for (guint i = 0; i < lap_checkup_n (checkup); i++) {
    const LapWarning *w = lap_checkup_nth (checkup, i);
    GPtrArray *list;

    if (w->fine)
      continue;
    list = lap_warning_ideas (checkup, w);
    g_ptr_array_add (lists, list);
    for (guint k = 0; k < list->len; k++) {
      LapRemedy *remedy = g_ptr_array_index (list, k);
      Idea idea = { w, remedy, lap_edits_change (remedy->edits), ideas->len };

      if (keeps_wishes (remedy->edits))
        g_array_append_val (ideas, idea);
    }
  }
  g_array_sort (ideas, by_change);
  return ideas;
}

/* Applies the first idea that lowers the state, or with @grave only its stops and warnings, and returns the new
 * checkup; NULL when none does. */
static LapCheckup *
step (const LapCheckup *checkup, LapCatalogue *builtin, gboolean keep_clock, gboolean grave, GCancellable *cancellable,
      GPtrArray *done, LapEdits **all)
{
  g_autoptr (GPtrArray) lists = g_ptr_array_new_with_free_func ((GDestroyNotify) g_ptr_array_unref);
  g_autoptr (GArray) ideas = gather (checkup, lists);
  LapTimeline *timeline = lap_checkup_timeline (checkup);
  State now = grave ? graver_of (checkup) : state_of (checkup);

  for (guint i = 0; i < ideas->len && !g_cancellable_is_cancelled (cancellable); i++) {
    const Idea *idea = &g_array_index (ideas, Idea, i);
    g_autoptr (LapCheckup) then = NULL;
    LapMended *mended;

    if (grave && idea->warning->severity == LAP_SEVERITY_NOTE)
      continue;
    lap_edits_swap (idea->remedy->edits);
    then = check_up (timeline->session, builtin);
    if (then == NULL || !is_lower (grave ? graver_of (then) : state_of (then), now) ||
        (keep_clock && lap_checkup_timeline (then)->length != timeline->length)) {
      lap_edits_swap (idea->remedy->edits);
      continue;
    }
    mended = g_new (LapMended, 1);
    mended->check = g_strdup (idea->warning->check->id);
    mended->remedy = g_strdup (idea->remedy->label);
    /* Words are made from the session: as it was. */
    lap_edits_swap (idea->remedy->edits);
    mended->message = lap_warning_message (checkup, idea->warning);
    lap_edits_swap (idea->remedy->edits);
    g_ptr_array_add (done, mended);
    lap_edits_append (*all, lap_edits_copy (idea->remedy->edits));
    return g_steal_pointer (&then);
  }
  return NULL;
}

GPtrArray *
lap_mend (LapSession *session, LapCatalogue *builtin, gboolean keep_clock, GCancellable *cancellable, LapEdits **edits)
{
  GPtrArray *done = g_ptr_array_new_with_free_func ((GDestroyNotify) lap_mended_free);
  g_autoptr (LapEdits) all = lap_edits_new_applied (_("Mend the plan"));
  g_autoptr (LapCheckup) checkup = check_up (session, builtin);

  while (checkup != NULL) {
    /* Notes wait until nothing graver can be mended: they must not use up its time. */
    LapCheckup *then = step (checkup, builtin, keep_clock, TRUE, cancellable, done, &all);

    if (then == NULL)
      then = step (checkup, builtin, keep_clock, FALSE, cancellable, done, &all);
    if (then == NULL)
      break;
    lap_checkup_unref (checkup);
    checkup = then;
  }
  if (edits != NULL)
    *edits = g_steal_pointer (&all);
  return done;
}

void
lap_mended_free (LapMended *mended)
{
  g_free (mended->check);
  g_free (mended->message);
  g_free (mended->remedy);
  g_free (mended);
}
