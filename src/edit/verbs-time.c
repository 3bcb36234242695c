/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "edit/verbs-time.h"

#include "edit/verbs.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* Design, limits of files: work, talk and pause 1–10,800 s, rests 0–10,800. */
#define MOST 10800

static LapTimeSource
source_of (gpointer object, const char *property, LapTimeWhat what, int seconds)
{
  return (LapTimeSource) { object, property, what, 0, -1, 0, seconds, what == LAP_TIME_WORK ? 1 : 0, MOST };
}

static const LapStep *
step_of (const LapPart *part, int round, int *step)
{
  guint n = lap_rows_n (part->steps);

  if (n == 0)
    return NULL;
  *step = (MAX (round, 1) - 1) % n;
  return lap_rows_nth (part->steps, LapStep, *step);
}

/* As written, before the part's way of being run makes something of it. */
static LapTimeSource
written (LapBlock *block, LapPart *part, int round, LapTimeWhat what)
{
  const LapChange *change = lap_changes_find (block->in_round, round);
  LapTimeSource source;
  const LapStep *row;
  int step = -1;

  if (change != NULL && LAP_CHANGE_HAS (change, what == LAP_TIME_WORK ? LAP_CHANGE_WORK : LAP_CHANGE_REST)) {
    source = source_of (block, "in-round", what, what == LAP_TIME_WORK ? change->work : change->rest);
    source.round = round;
  } else if ((row = step_of (part, round, &step)) != NULL && part->run != LAP_RUN_OWN_PACE) {
    source = source_of (part, "steps", what, what == LAP_TIME_WORK ? row->work : row->rest);
    source.step = step;
  } else if (what == LAP_TIME_WORK)
    source = source_of (block, "work", what, block->work);
  else
    source = source_of (block, "rest", what, block->rest);
  return source;
}

static guint
reps_of (LapBlock *block, int round)
{
  const LapChange *change = lap_changes_find (block->in_round, round);

  return change != NULL && LAP_CHANGE_HAS (change, LAP_CHANGE_REPS) ? change->reps : block->reps;
}

/* Every block starts on its minute: work within it, and the rest is what is left. */
static gboolean
on_the_minute (LapBlock *block, LapPart *part, int round, LapTimeSource *source)
{
  LapTimeSource work = written (block, part, round, LAP_TIME_WORK);

  if (reps_of (block, round) != 0)
    return FALSE;
  if (source->what == LAP_TIME_WORK) {
    source->most = part->every;
    source->seconds = MIN (source->seconds, part->every);
    return TRUE;
  }
  work.seconds = MIN (work.seconds, part->every);
  *source = source_of (part, "every", LAP_TIME_REST, part->every - work.seconds);
  source->added = work.seconds;
  source->most -= work.seconds;
  return TRUE;
}

gboolean
lap_time_source (LapBlock *block, int round, LapTimeWhat what, LapTimeSource *source)
{
  LapPart *part = LAP_PART (LAP_OBJECT (block)->owner);

  if (block->kind != LAP_BLOCK_EXERCISE) {
    *source = source_of (block, "seconds", LAP_TIME_WORK, block->seconds);
    return what == LAP_TIME_WORK;
  }
  *source = written (block, part, round, what);
  if (part->run == LAP_RUN_ON_THE_MINUTE)
    return on_the_minute (block, part, round, source);
  return part->run != LAP_RUN_OWN_PACE || (what == LAP_TIME_WORK && reps_of (block, round) == 0);
}

void
lap_time_source_round_rest (LapPart *part, LapTimeSource *source)
{
  *source = source_of (part, "round-rest", LAP_TIME_REST, part->round_rest);
}

void
lap_time_source_rest_after (LapPart *part, LapTimeSource *source)
{
  *source = source_of (part, "rest-after", LAP_TIME_REST, part->rest_after);
}

void
lap_time_source_cap (LapPart *part, LapTimeSource *source)
{
  *source = source_of (part, "cap", LAP_TIME_WORK, part->cap);
}

gboolean
lap_time_same (const LapTimeSource *a, const LapTimeSource *b)
{
  return a->object == b->object && a->what == b->what && g_str_equal (a->property, b->property) &&
         a->round == b->round && a->step == b->step;
}

static int
hold (const LapTimeSource *source, int seconds, int grid)
{
  int least = source->least, most = source->most;

  if (grid > 1 && g_str_equal (source->property, "cap"))
    most = MIN (most, 6 * LAP_HAND_MOST);
  else if (grid > 1)
    most = MIN (most, LAP_HAND_MOST);
  if (grid > 1 && source->what == LAP_TIME_WORK)
    least = MAX (least, MIN (LAP_HAND_LEAST, most));
  return CLAMP (seconds, least, MAX (least, most));
}

int
lap_time_next (const LapTimeSource *source, int by)
{
  int grid = ABS (by), now = source->seconds, next;

  next = by > 0 ? (now / grid + 1) * grid : (now + grid - 1) / grid * grid - grid;
  next = hold (source, next, grid);
  /* What lies outside the limits of hands already is never thrown the other way. */
  return by > 0 ? MAX (next, now) : MIN (next, now);
}

int
lap_time_snap (const LapTimeSource *source, double seconds, int grid)
{
  return hold (source, (int) lround (seconds / grid) * grid, grid);
}

static void
set_change (LapEdits *edits, const LapTimeSource *source, int seconds)
{
  g_autoptr (LapChanges) changes = lap_changes_copy (LAP_BLOCK (source->object)->in_round);
  LapChange *change = lap_changes_ensure (changes, source->round);

  if (source->what == LAP_TIME_WORK)
    change->work = seconds;
  else
    change->rest = seconds;
  lap_edits_set_boxed (edits, source->object, "in-round", LAP_TYPE_CHANGES, changes);
}

static void
put_step (LapRows *rows, const LapTimeSource *source, int seconds)
{
  LapStep *step = lap_rows_nth (rows, LapStep, source->step);

  if (source->what == LAP_TIME_WORK)
    step->work = seconds;
  else
    step->rest = seconds;
}

static void
set_step (LapEdits *edits, const LapTimeSource *source, int seconds)
{
  g_autoptr (LapRows) rows = lap_rows_copy (LAP_PART (source->object)->steps);

  put_step (rows, source, seconds);
  lap_edits_set_boxed (edits, source->object, "steps", LAP_TYPE_ROWS, rows);
}

static const char *
part_label (const LapTimeSource *source)
{
  static const struct { const char *property, *label; } labels[] = {
    { "round-rest", N_("Change the rest between rounds") },
    { "rest-after", N_("Change the rest after the part") },
    { "every", N_("Change the time from start to start") },
    { "cap", N_("Change the length of the part") },
  };

  for (guint i = 0; i < G_N_ELEMENTS (labels); i++)
    if (g_str_equal (labels[i].property, source->property))
      return _(labels[i].label);
  return source->what == LAP_TIME_WORK ? _("Change the work of all blocks") : _("Change the rest of all blocks");
}

static char *
label_of (const LapTimeSource *source, LapCatalogue *catalogue)
{
  g_autofree char *title = NULL;

  if (!LAP_IS_BLOCK (source->object))
    return g_strdup (part_label (source));
  title = lap_block_title (LAP_BLOCK (source->object), catalogue);
  if (g_str_equal (source->property, "seconds"))
    return g_strdup_printf (_("Change the length of %s"), title);
  if (source->round > 0)
    return g_strdup_printf (source->what == LAP_TIME_WORK ? _("Change the work of %1$s in round %2$d")
                                                          : _("Change the rest of %1$s in round %2$d"),
                            title, source->round);
  return g_strdup_printf (source->what == LAP_TIME_WORK ? _("Change the work of %s") : _("Change the rest of %s"), title);
}

LapEdits *
lap_verb_set_time (const LapTimeSource *source, int seconds, LapCatalogue *catalogue)
{
  g_autofree char *label = label_of (source, catalogue);
  LapEdits *edits = lap_edits_new (label);

  if (seconds == source->seconds)
    return edits;
  if (source->round > 0)
    set_change (edits, source, seconds);
  else if (source->step >= 0)
    set_step (edits, source, seconds);
  else
    lap_edits_set_int (edits, source->object, source->property, seconds + source->added);
  return edits;
}

static const LapTimeSet *
nth_set (const GArray *sets, guint i)
{
  return &g_array_index (sets, LapTimeSet, i);
}

static gboolean
is_step_of (const LapTimeSet *set, gpointer part)
{
  return set->source.step >= 0 && set->source.object == part;
}

/* All steps of the part of @sets[@from], in one row of edits: each of its own would take the one before back. */
static void
set_steps (LapEdits *edits, const GArray *sets, guint from)
{
  LapObject *part = nth_set (sets, from)->source.object;
  g_autoptr (LapRows) rows = lap_rows_copy (LAP_PART (part)->steps);
  gboolean changed = FALSE;

  for (guint i = from; i < sets->len; i++)
    if (is_step_of (nth_set (sets, i), part)) {
      put_step (rows, &nth_set (sets, i)->source, nth_set (sets, i)->seconds);
      changed |= nth_set (sets, i)->seconds != nth_set (sets, i)->source.seconds;
    }
  if (changed)
    lap_edits_set_boxed (edits, part, "steps", LAP_TYPE_ROWS, rows);
}

/* Whether one of @sets before @at sets the same, or has set all steps of the same part. */
static gboolean
is_done (const GArray *sets, guint at)
{
  const LapTimeSet *set = nth_set (sets, at);

  for (guint i = 0; i < at; i++)
    if (lap_time_same (&nth_set (sets, i)->source, &set->source) ||
        (set->source.step >= 0 && is_step_of (nth_set (sets, i), set->source.object)))
      return TRUE;
  return FALSE;
}

LapEdits *
lap_verb_set_times (const GArray *sets, const char *label, LapCatalogue *catalogue)
{
  LapEdits *edits = lap_edits_new (label);

  for (guint i = 0; i < sets->len; i++) {
    if (is_done (sets, i))
      continue;
    if (nth_set (sets, i)->source.step >= 0)
      set_steps (edits, sets, i);
    else
      lap_edits_append (edits, lap_verb_set_time (&nth_set (sets, i)->source, nth_set (sets, i)->seconds, catalogue));
  }
  return edits;
}
