/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/folds.h"

#include "ui/score/words.h"

#include <glib/gi18n-lib.h>

/* With more rounds than this parts alone are pieces: nobody folds round by round, and each frame looks at all. */
#define MOST_PIECES 400
/* px beside what is zoomed to. */
#define MARGIN 12

static gboolean
shows_rounds (const LapScore *score)
{
  return score->n_rounds + score->timeline->n_parts <= MOST_PIECES;
}

static gint64
key_of (LapScoreContext *self, const LapPiece *piece)
{
  return (gint64) (gsize) self->score->timeline->parts[piece->part].part * 128 + piece->round;
}

static gboolean
is_kept_folded (LapScoreContext *self, const LapPiece *piece)
{
  gint64 key = key_of (self, piece);

  return g_hash_table_contains (self->folded, &key);
}

static void
add_piece (LapScoreContext *self, GArray *ends, guint part, int round, int end)
{
  LapPiece piece = { part, round };

  if (ends->len > 0 && g_array_index (ends, int, ends->len - 1) >= end)
    return;
  g_array_append_val (self->pieces, piece);
  g_array_append_val (ends, end);
}

/* A round goes up to the start of the next, with the rest between them. */
static guint
add_rounds (LapScoreContext *self, GArray *ends, guint part, guint round)
{
  const LapScore *score = self->score;

  for (; round < score->n_rounds && score->rounds[round].part == part; round++) {
    gboolean last = round + 1 == score->n_rounds || score->rounds[round + 1].part != part;

    add_piece (self, ends, part, score->rounds[round].round,
               last ? score->timeline->parts[part].end : score->rounds[round + 1].start);
  }
  return round;
}

static void
apply_folds (LapScoreContext *self)
{
  g_autofree gboolean *folded = g_new0 (gboolean, self->pieces->len + 1);

  for (guint i = 0; i < self->pieces->len; i++)
    folded[i] = is_kept_folded (self, lap_folds_nth (self, i));
  lap_axis_set_folds (self->axis, folded);
}

void
lap_folds_lay (LapScoreContext *self)
{
  const LapScore *score = self->score;
  g_autoptr (GArray) ends = g_array_new (FALSE, FALSE, sizeof (int));
  guint round = 0;

  g_array_set_size (self->pieces, 0);
  for (guint p = 0; p < score->timeline->n_parts; p++)
    if (shows_rounds (score) && round < score->n_rounds && score->rounds[round].part == p)
      round = add_rounds (self, ends, p, round);
    else
      add_piece (self, ends, p, 0, score->timeline->parts[p].end);
  lap_axis_set_pieces (self->axis, (const int *) ends->data, ends->len);
  apply_folds (self);
}

const LapPiece *
lap_folds_nth (LapScoreContext *self, guint piece)
{
  return piece < self->pieces->len ? &g_array_index (self->pieces, LapPiece, piece) : NULL;
}

static gboolean
is_meant (const LapPiece *piece, guint part, int round)
{
  return piece->part == part && (round == 0 || piece->round == 0 || piece->round == round);
}

static void
fold (LapScoreContext *self, guint i, gboolean folded)
{
  gint64 key = key_of (self, lap_folds_nth (self, i));

  if (folded)
    g_hash_table_add (self->folded, g_memdup2 (&key, sizeof key));
  else
    g_hash_table_remove (self->folded, &key);
}

gboolean
lap_folds_any (LapScoreContext *self)
{
  for (guint i = 0; i < self->axis->n; i++)
    if (self->axis->pieces[i].folded)
      return TRUE;
  return FALSE;
}

/* Whether just what is meant is open. */
static gboolean
is_alone (LapScoreContext *self, guint part, int round)
{
  for (guint i = 0; i < self->pieces->len; i++)
    if (self->axis->pieces[i].folded == is_meant (lap_folds_nth (self, i), part, round))
      return FALSE;
  return TRUE;
}

static void
open_only (LapScoreContext *self, guint part, int round)
{
  gboolean alone = is_alone (self, part, round);

  for (guint i = 0; i < self->pieces->len; i++)
    fold (self, i, !alone && !is_meant (lap_folds_nth (self, i), part, round));
}

static void
toggle (LapScoreContext *self, guint part, int round)
{
  gboolean open = FALSE, others = FALSE;

  for (guint i = 0; i < self->pieces->len; i++)
    if (is_meant (lap_folds_nth (self, i), part, round))
      open |= !self->axis->pieces[i].folded;
    else
      others |= !self->axis->pieces[i].folded;
  for (guint i = 0; i < self->pieces->len; i++)
    if (is_meant (lap_folds_nth (self, i), part, round))
      fold (self, i, open && others);
}

void
lap_folds_open (LapScoreContext *self, guint part, int round, gboolean keep)
{
  int start = G_MAXINT, end = 0;
  LapAxisLook *from;

  lap_score_glide_at (self, 1);
  from = lap_axis_look (self->axis);
  if (keep)
    toggle (self, part, round);
  else
    open_only (self, part, round);
  apply_folds (self);
  for (guint i = 0; i < self->pieces->len; i++)
    if (is_meant (lap_folds_nth (self, i), part, round)) {
      start = MIN (start, self->axis->pieces[i].start);
      end = MAX (end, self->axis->pieces[i].end);
    }
  lap_score_fit_readable (self, start, MAX (start, end));
  lap_score_glide (self, from);
}

void
lap_folds_unfold (LapScoreContext *self)
{
  LapAxisLook *from;

  lap_score_glide_at (self, 1);
  from = lap_axis_look (self->axis);
  g_hash_table_remove_all (self->folded);
  apply_folds (self);
  lap_score_fit_readable (self, 0, 0);
  lap_score_glide (self, from);
}

/* From where to where the selection goes, or the rounds it is in. */
static gboolean
span_of (LapScoreContext *self, gboolean round, int *start, int *end)
{
  *start = G_MAXINT;
  *end = 0;
  for (guint i = 0; i < self->marked->len; i++) {
    const LapBox *box = &self->score->boxes[g_array_index (self->marked, guint, i)];
    const LapAxisPiece *piece = &self->axis->pieces[lap_axis_piece_at (self->axis, box->start)];

    *start = MIN (*start, round ? piece->start : box->start);
    *end = MAX (*end, round ? piece->end : box->end);
  }
  return *end > *start;
}

gboolean
lap_folds_fit (LapScoreContext *self, gboolean round)
{
  int start, end;

  if (!span_of (self, round, &start, &end))
    return FALSE;
  for (guint i = 0; i < self->pieces->len; i++)
    if (self->axis->pieces[i].start < end && self->axis->pieces[i].end > start)
      fold (self, i, FALSE);
  apply_folds (self);
  lap_score_fit_span (self, start, end, MARGIN);
  return TRUE;
}

static char *
round_words (LapScoreContext *self, const LapPiece *piece)
{
  const LapScore *score = self->score;
  g_autoptr (GPtrArray) names = g_ptr_array_new_with_free_func (g_free);
  g_autofree char *all = NULL;

  for (guint b = 0; b < lap_part_n (score->timeline->parts[piece->part].part); b++) {
    guint box = lap_score_find (score, piece->part, b, piece->round);

    if (box != LAP_NO_BOX && score->boxes[box].changed)
      g_ptr_array_add (names, lap_box_name (score, box));
  }
  if (names->len == 0)
    return g_strdup (_("Same as round 1"));
  g_ptr_array_add (names, NULL);
  all = lap_join ((const char * const *) names->pdata);
  /* Translators: the blocks of a round that differ from round 1. */
  return g_strdup_printf (_("Changed: %s"), all);
}

char *
lap_folds_words (LapScoreContext *self, guint index)
{
  const LapPiece *piece = lap_folds_nth (self, index);
  const LapAxisPiece *span = &self->axis->pieces[index];
  guint n = lap_part_n (self->score->timeline->parts[piece->part].part);
  g_autofree char *clock = lap_clock_text (span->end - span->start);

  if (piece->round > 1)
    return round_words (self, piece);
  return g_strdup_printf (ngettext ("%1$u block, %2$s", "%1$u blocks, %2$s", n), n, clock);
}
