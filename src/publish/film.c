/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/film.h"

#include "base/error.h"
#include "publish/cuts.h"

#include <glib/gi18n-lib.h>

double
lap_film_lead (const LapPublication *what)
{
  return what->timeline->session->lead + what->offset;
}

static void
add_cut (GArray *pieces, const LapCut *cut, const LapCut *before)
{
  LapPiece piece = { cut->from, cut->to, cut->in - cut->from };

  if (pieces->len > 0 && before->keep && before->run == cut->run && before->to == cut->from)
    g_array_index (pieces, LapPiece, pieces->len - 1).to = cut->to;
  else
    g_array_append_val (pieces, piece);
}

LapFilm *
lap_film_new (const LapPublication *what, GError **error)
{
  GArray *pieces = g_array_new (FALSE, FALSE, sizeof (LapPiece));
  LapPiece all = { 0, what->timeline->length, lap_film_lead (what) };
  LapFilm *film;

  if (what->takes && lap_rows_n (what->timeline->session->takes) == 0) {
    g_array_unref (pieces);
    g_set_error (error, LAP_ERROR, LAP_ERROR_USAGE, _("the session has no takes: nothing was filmed yet"));
    return NULL;
  }
  if (what->takes) {
    g_autoptr (LapCuts) cuts = lap_cuts_new (what, error);

    if (cuts == NULL) {
      g_array_unref (pieces);
      return NULL;
    }
    for (guint i = 0; i < cuts->n; i++)
      if (cuts->cuts[i].keep)
        add_cut (pieces, &cuts->cuts[i], &cuts->cuts[i] - 1);
  } else
    g_array_append_val (pieces, all);
  film = g_new (LapFilm, 1);
  film->n = pieces->len;
  film->pieces = (LapPiece *) g_array_free (pieces, FALSE);
  return film;
}

void
lap_film_free (LapFilm *film)
{
  g_free (film->pieces);
  g_free (film);
}

gboolean
lap_piece_of (const LapPiece *piece, double start, double end, double *in, double *out)
{
  *in = MAX (MAX (start, piece->from) + piece->ahead, 0);
  *out = MIN (end, piece->to) + piece->ahead;
  return *in < *out;
}
