/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The rows that kept their order are anchors and stand beside each other; they are the longest run of rows that
 * ascends on both sides, so that a block which moved is told as moved and not all the others.
 */
#include "ui/sides.h"

#include "base/halve.h"
#include "edit/verbs.h"
#include "ui/warnings-text.h"

#include <glib/gi18n-lib.h>

static void
row_free (gpointer data)
{
  LapPlanRow *row = data;

  g_object_unref (row->object);
  g_bytes_unref (row->bytes);
  g_free (row->name);
  g_free (row->time);
  g_free (row);
}

static void
pair_free (gpointer data)
{
  LapPlanPair *pair = data;

  g_free (pair->before_change);
  g_free (pair->after_change);
  g_free (pair);
}

static char *
shown_name (LapBlock *block, LapCatalogue *catalogue)
{
  LapExercise *e = block->kind == LAP_BLOCK_EXERCISE && block->exercise != NULL
                 ? lap_catalogue_find (catalogue, block->exercise) : NULL;
  LapExercise *shown;
  double factor;

  if (e == NULL || block->option == LAP_OPTION_AS_SHOWN)
    return lap_block_title (block, catalogue);
  shown = lap_catalogue_shown (catalogue, e, block->option, &factor);
  if (shown != e)
    return g_strdup (lap_exercise_name (shown));
  /* Translators: an exercise and which option of it: "Squat, easier". */
  return g_strdup_printf (_("%1$s, %2$s"), lap_exercise_name (e), lap_words_label (&lap_options, block->option));
}

static void
add_part (LapPlanSide *side, LapPart *part)
{
  LapPlanRow *row = g_new0 (LapPlanRow, 1);

  row->object = g_object_ref (LAP_OBJECT (part));
  row->bytes = g_bytes_new_static ("", 0);
  row->heading = TRUE;
  row->chosen = TRUE;
  row->name = g_strdup (lap_part_title (part));
  if (part->rounds > 1)
    row->time = g_strdup_printf (ngettext ("%d round", "%d rounds", part->rounds), part->rounds);
  g_ptr_array_add (side->rows, row);
}

static void
add_block (LapPlanSide *side, LapBlock *block, guint number, LapCatalogue *catalogue)
{
  LapPlanRow *row = g_new0 (LapPlanRow, 1);

  row->object = g_object_ref (LAP_OBJECT (block));
  row->bytes = lap_object_bytes (block);
  row->number = number;
  row->chosen = block->kind != LAP_BLOCK_EXERCISE || block->exercise != NULL;
  row->name = shown_name (block, catalogue);
  row->time = block->kind == LAP_BLOCK_EXERCISE ? g_strdup_printf ("%d/%d", block->work, block->rest)
                                                : lap_duration_text (block->seconds);
  g_ptr_array_add (side->rows, row);
}

static char *
summary (LapTimeline *timeline)
{
  g_autoptr (LapCheckup) checkup = lap_checkup_new (timeline);
  g_autofree char *length = lap_clock_text (timeline->length), *counts = lap_warnings_counts (checkup);

  /* Translators: the length of a session, and what its checks say: "29:50, 3 warnings and 2 notes". */
  return g_strdup_printf (_("%1$s, %2$s"), length, *counts != '\0' ? counts : _("no warnings"));
}

LapPlanSide *
lap_plan_side_new (LapTimeline *timeline)
{
  LapPlanSide *side = g_new0 (LapPlanSide, 1);

  side->rows = g_ptr_array_new_with_free_func (row_free);
  side->summary = summary (timeline);
  for (guint p = 0; p < lap_session_n (timeline->session); p++) {
    LapPart *part = lap_session_nth (timeline->session, p);

    add_part (side, part);
    for (guint b = 0; b < lap_part_n (part); b++)
      add_block (side, lap_part_nth (part, b), b + 1, timeline->catalogue);
  }
  return side;
}

void
lap_plan_side_free (LapPlanSide *side)
{
  g_ptr_array_unref (side->rows);
  g_free (side->summary);
  g_free (side);
}

static const LapPlanRow *
nth (const LapPlanSide *side, guint n)
{
  return g_ptr_array_index (side->rows, n);
}

/* Row numbers from 1 by object, so that 0 is none. */
static GHashTable *
index_of (const LapPlanSide *side)
{
  GHashTable *index = g_hash_table_new (NULL, NULL);

  for (guint i = 0; i < side->rows->len; i++)
    g_hash_table_insert (index, nth (side, i)->object, GUINT_TO_POINTER (i + 1));
  return index;
}

/* For each row of @after the number of its anchor in @before, or 0: the longest ascending run, by the usual piles. */
static guint *
anchors_of (const LapPlanSide *after, GHashTable *before)
{
  guint n = after->rows->len, most = 0;
  guint *anchors = g_new0 (guint, n + 1);
  g_autofree guint *was = g_new0 (guint, n + 1), *top = g_new0 (guint, n + 1), *under = g_new0 (guint, n + 1);

  for (guint i = 0; i < n; i++) {
    guint low;

    was[i] = GPOINTER_TO_UINT (g_hash_table_lookup (before, nth (after, i)->object));
    if (was[i] == 0)
      continue;
    low = LAP_HALVE (most, k, was[top[k]] < was[i]);
    under[i] = low > 0 ? top[low - 1] : G_MAXUINT;
    top[low] = i;
    most = MAX (most, low + 1);
  }
  for (guint i = most > 0 ? top[most - 1] : G_MAXUINT; i != G_MAXUINT; i = under[i])
    anchors[i] = was[i];
  return anchors;
}

/* What is different about a block that both sides have. */
static char *
difference (const LapPlanRow *is, const LapPlanRow *was)
{
  if (g_strcmp0 (is->name, was->name) != 0)
    return was->chosen ? g_strdup_printf (_("was %s"), was->name) : g_strdup (_("wasn’t chosen yet"));
  if (g_strcmp0 (is->time, was->time) != 0)
    return was->time != NULL ? g_strdup_printf (_("was %s"), was->time) : g_strdup (_("was one round"));
  return is->heading || g_bytes_equal (is->bytes, was->bytes) ? NULL : g_strdup (_("changed in its details"));
}

static char *
with_reason (char *change, const LapPlanRow *row, GHashTable *reasons)
{
  const char *reason = reasons != NULL ? g_hash_table_lookup (reasons, row->object) : NULL;
  g_autofree char *alone = change;

  if (reason == NULL || change == NULL)
    return g_steal_pointer (&alone);
  /* Translators: what was changed about a block, and why: "was Star jump: lands softly". */
  return g_strdup_printf (_("%1$s: %2$s"), change, reason);
}

typedef struct {
  const LapPlanSide *before, *after;
  GHashTable    *before_index, *after_index;
  GHashTable    *reasons;
  GPtrArray     *pairs;
} Pairing;

static LapPlanPair *
add_pair (Pairing *p, const LapPlanRow *before, const LapPlanRow *after)
{
  LapPlanPair *pair = g_new0 (LapPlanPair, 1);

  pair->before = before;
  pair->after = after;
  g_ptr_array_add (p->pairs, pair);
  return pair;
}

static char *
gone_words (Pairing *p, const LapPlanRow *row)
{
  guint now = GPOINTER_TO_UINT (g_hash_table_lookup (p->after_index, row->object));

  if (now == 0)
    return g_strdup (_("goes"));
  return row->heading ? g_strdup (_("moves"))
                      : g_strdup_printf (_("goes to place %u"), nth (p->after, now - 1)->number);
}

static char *
come_words (Pairing *p, const LapPlanRow *row)
{
  guint was = GPOINTER_TO_UINT (g_hash_table_lookup (p->before_index, row->object));
  g_autofree char *place = NULL, *other = NULL;

  if (was == 0)
    return with_reason (g_strdup (_("new")), row, p->reasons);
  place = row->heading ? g_strdup (_("moved"))
                       : g_strdup_printf (_("was in place %u"), nth (p->before, was - 1)->number);
  other = difference (row, nth (p->before, was - 1));
  return with_reason (other != NULL ? g_strdup_printf (_("%1$s, %2$s"), place, other) : g_steal_pointer (&place), row,
                      p->reasons);
}

/* Rows without an anchor stand beside each other as they come, a part never beside a block. */
static void
add_gap (Pairing *p, guint *i, guint i_end, guint *j, guint j_end)
{
  while (*i < i_end || *j < j_end) {
    const LapPlanRow *before = *i < i_end ? nth (p->before, *i) : NULL;
    const LapPlanRow *after = *j < j_end ? nth (p->after, *j) : NULL;
    LapPlanPair *pair;

    if (before != NULL && after != NULL && before->heading != after->heading) {
      if (before->heading)
        before = NULL;
      else
        after = NULL;
    }
    pair = add_pair (p, before, after);
    *i += before != NULL;
    *j += after != NULL;
    pair->before_change = before != NULL ? gone_words (p, before) : NULL;
    pair->after_change = after != NULL ? come_words (p, after) : NULL;
  }
}

static void
add_anchor (Pairing *p, const LapPlanRow *before, const LapPlanRow *after)
{
  LapPlanPair *pair = add_pair (p, before, after);

  pair->after_change = with_reason (difference (after, before), after, p->reasons);
}

GPtrArray *
lap_plan_pairs (const LapPlanSide *before, const LapPlanSide *after, GHashTable *reasons)
{
  g_autoptr (GHashTable) before_index = index_of (before), after_index = index_of (after);
  g_autofree guint *anchors = anchors_of (after, before_index);
  Pairing p = { before, after, before_index, after_index, reasons, g_ptr_array_new_with_free_func (pair_free) };
  guint i = 0, j = 0;

  for (guint k = 0; k < after->rows->len; k++) {
    if (anchors[k] == 0)
      continue;
    add_gap (&p, &i, anchors[k] - 1, &j, k);
    add_anchor (&p, nth (before, i++), nth (after, j++));
  }
  add_gap (&p, &i, before->rows->len, &j, after->rows->len);
  return p.pairs;
}

char *
lap_plan_row_text (const LapPlanRow *row)
{
  if (row->heading && row->time == NULL)
    return g_strdup (row->name);
  if (row->heading)
    return g_strdup_printf (_("%1$s, %2$s"), row->name, row->time);
  /* Translators: number of a block, its name, its seconds of work and rest: "3. Squat, 40/20". */
  return g_strdup_printf (_("%1$u. %2$s, %3$s"), row->number, row->name, row->time);
}
