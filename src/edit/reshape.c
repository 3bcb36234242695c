/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "edit/reshape.h"

#include "base/error.h"
#include "edit/add.h"

#include <glib/gi18n-lib.h>
#include <string.h>

/* Design, limits of files: work 1–10,800 s, rests 0–10,800, rounds 1–100. No more exercises than anybody can plan. */
#define MOST_SECONDS 10800
#define MOST_TIMES   100

static const char *
skip_space (const char *at)
{
  while (g_ascii_isspace (*at))
    at++;
  return at;
}

/* A whole number of @least to @most at *@at, which goes on behind it; FALSE leaves it where it is. */
static gboolean
read_number (const char **at, int least, int most, int *number)
{
  const char *start = skip_space (*at);
  char *end;
  gint64 value;

  if (!g_ascii_isdigit (*start))
    return FALSE;
  value = g_ascii_strtoll (start, &end, 10);
  if (value < least || value > most)
    return FALSE;
  *number = value;
  *at = skip_space (end);
  return TRUE;
}

static gboolean
read_times (const char **at)
{
  static const char *const signs[] = { "x", "X", "×", "*" };

  for (guint i = 0; i < G_N_ELEMENTS (signs); i++)
    if (g_str_has_prefix (*at, signs[i])) {
      *at += strlen (signs[i]);
      return TRUE;
    }
  return FALSE;
}

gboolean
lap_shape_parse (const char *text, LapShape *shape, GError **error)
{
  const char *at = text;
  gboolean good;

  *shape = (LapShape) { .rest = -1 };
  good = read_number (&at, 1, MOST_SECONDS, &shape->work);
  if (good && *at == '/') {
    at++;
    good = read_number (&at, 0, MOST_SECONDS, &shape->rest);
  }
  if (good && read_times (&at))
    good = read_number (&at, 1, MOST_TIMES, &shape->blocks);
  if (good && shape->blocks > 0 && read_times (&at))
    good = read_number (&at, 1, MOST_TIMES, &shape->rounds);
  if (good && *at == '\0')
    return TRUE;
  g_set_error (error, LAP_ERROR, LAP_ERROR_INVALID,
               _("“%s”: expected seconds of work / seconds of rest × exercises × rounds, such as 40/20 × 10 × 2; "
                 "at most %d s, and %d times."), text, MOST_SECONDS, MOST_TIMES);
  return FALSE;
}

static guint
count_exercises (LapPart *part, LapBlock **first)
{
  guint n = 0;

  *first = NULL;
  for (guint i = 0; i < lap_part_n (part); i++)
    if (lap_part_nth (part, i)->kind == LAP_BLOCK_EXERCISE) {
      *first = n == 0 ? lap_part_nth (part, i) : *first;
      n++;
    }
  return n;
}

char *
lap_shape_of (LapPart *part)
{
  LapBlock *first;
  guint n = count_exercises (part, &first);

  return first != NULL ? g_strdup_printf ("%d/%d × %u × %d", first->work, first->rest, n, part->rounds)
                       : g_strdup ("40/20 × 10 × 2");
}

/* What a later round does differently without what the shape says for all, and without rounds that go. */
static LapChanges *
changes_left (const LapBlock *block, const LapShape *shape, int rounds)
{
  LapChanges *changes = lap_changes_within (block->in_round, rounds, 0);

  for (guint i = changes != NULL ? changes->items->len : 0; i > 0; i--) {
    LapChange *change = g_ptr_array_index (changes->items, i - 1);

    if (shape->work > 0)
      change->present &= ~(G_GUINT64_CONSTANT (1) << LAP_CHANGE_WORK);
    if (shape->rest >= 0)
      change->present &= ~(G_GUINT64_CONSTANT (1) << LAP_CHANGE_REST);
    if (change->present == 0 && change->extras == NULL)
      g_ptr_array_remove_index (changes->items, i - 1);
  }
  if (changes != NULL && changes->items->len == 0)
    g_clear_pointer (&changes, lap_changes_free);
  return changes;
}

static void
shape_block (LapEdits *edits, LapBlock *block, const LapShape *shape, int rounds)
{
  if (shape->work > 0 && block->work != shape->work)
    lap_edits_set_int (edits, block, "work", shape->work);
  if (shape->rest >= 0 && block->rest != shape->rest)
    lap_edits_set_int (edits, block, "rest", shape->rest);
  if (block->in_round != NULL) {
    g_autoptr (LapChanges) left = changes_left (block, shape, rounds);

    lap_edits_set_boxed (edits, block, "in-round", LAP_TYPE_CHANGES, left);
  }
}

/* Steps say work and rest of a round for all: they go where the shape says both, else take what it says. */
static void
shape_steps (LapEdits *edits, LapPart *part, const LapShape *shape)
{
  g_autoptr (LapRows) steps = NULL;

  if (part->steps == NULL)
    return;
  if (shape->rest < 0) {
    steps = lap_rows_copy (part->steps);
    for (guint i = 0; i < lap_rows_n (steps); i++)
      lap_rows_nth (steps, LapStep, i)->work = shape->work;
  }
  lap_edits_set_boxed (edits, part, "steps", LAP_TYPE_ROWS, steps);
}

/* From the end; the block of each removal is out of the list when the next one is counted. */
static void
remove_blocks (LapEdits *edits, LapPart *part, guint too_many)
{
  for (guint i = lap_part_n (part); i > 0 && too_many > 0; i--) {
    LapBlock *block = lap_part_nth (part, i - 1);

    if (block->kind == LAP_BLOCK_EXERCISE && !block->fixed) {
      lap_edits_splice (edits, part->blocks, i - 1, 1, NULL);
      too_many--;
    }
  }
}

/* Behind the last exercise, so that a talk at the end stays there. */
static void
add_blocks (LapEdits *edits, LapPart *part, const LapShape *shape, guint missing)
{
  g_autoptr (GPtrArray) added = g_ptr_array_new_with_free_func (g_object_unref);
  guint at = lap_part_n (part);

  while (at > 0 && lap_part_nth (part, at - 1)->kind != LAP_BLOCK_EXERCISE)
    at--;
  at = at > 0 ? at : lap_part_n (part);
  for (guint i = 0; i < missing; i++) {
    LapBlock *block = lap_block_for_place (part, at, NULL);

    block->work = shape->work > 0 ? shape->work : block->work;
    block->rest = shape->rest >= 0 ? shape->rest : block->rest;
    g_ptr_array_add (added, block);
  }
  if (missing > 0)
    lap_edits_splice (edits, part->blocks, at, 0, added);
}

LapEdits *
lap_verb_reshape (LapPart *part, const LapShape *shape)
{
  LapEdits *edits = lap_edits_new (_("Reshape the part"));
  int rounds = shape->rounds > 0 ? shape->rounds : part->rounds;
  LapBlock *first;
  guint n = count_exercises (part, &first), wanted = shape->blocks > 0 ? (guint) shape->blocks : n;

  for (guint i = 0; i < lap_part_n (part); i++)
    if (lap_part_nth (part, i)->kind == LAP_BLOCK_EXERCISE)
      shape_block (edits, lap_part_nth (part, i), shape, rounds);
  shape_steps (edits, part, shape);
  if (rounds != part->rounds)
    lap_edits_set_int (edits, part, "rounds", rounds);
  if (wanted < n)
    remove_blocks (edits, part, n - wanted);
  else
    add_blocks (edits, part, shape, wanted - n);
  return edits;
}

LapEdits *
lap_verb_reshape_session (LapSession *session, const LapShape *shape)
{
  g_autoptr (LapPart) part = NULL;
  LapEdits *edits, *inside;
  guint at = 0;

  for (guint i = 0; i < lap_session_n (session); i++) {
    if (lap_session_nth (session, i)->kind == LAP_PART_MAIN)
      return lap_verb_reshape (lap_session_nth (session, i), shape);
    if (lap_session_nth (session, i)->kind < LAP_PART_MAIN)
      at = i + 1;
  }
  part = lap_part_new (LAP_PART_MAIN);
  inside = lap_verb_reshape (part, shape);
  edits = lap_edits_new (lap_edits_label (inside));
  lap_edits_insert (edits, session->parts, at, part);
  lap_edits_append (edits, inside);
  return edits;
}
