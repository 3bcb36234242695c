/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/axis.h"

#include "base/halve.h"

/* A folded piece is a quarter of what it would be when open, within its limits. */
#define FOLD 0.25

static double
piece_width (const LapAxisPiece *piece, double zoom)
{
  double open = (piece->end - piece->start) * zoom;
  double folded = MIN (open, CLAMP (open * FOLD, LAP_FOLDED_LEAST, LAP_FOLDED_MOST));

  return open + (folded - open) * piece->share;
}

static double
content_width (const LapAxis *self, double zoom)
{
  double width = 0;

  for (guint i = 0; i < self->n; i++)
    width += piece_width (&self->pieces[i], zoom);
  return width;
}

static void
hold_offset (LapAxis *self)
{
  self->offset = CLAMP (self->offset, 0, MAX (0, self->width - self->view));
}

static void
lay_out (LapAxis *self)
{
  double x = 0;

  self->zoom = CLAMP (self->zoom, LAP_ZOOM_LEAST, LAP_ZOOM_MOST);
  for (guint i = 0; i < self->n; i++) {
    LapAxisPiece *piece = &self->pieces[i];

    piece->x = x;
    piece->width = piece_width (piece, self->zoom);
    x += piece->width;
  }
  self->width = x;
  self->length = self->n > 0 ? self->pieces[self->n - 1].end : 0;
  self->serial++;
  hold_offset (self);
}

LapAxis *
lap_axis_new (void)
{
  LapAxis *self = g_new0 (LapAxis, 1);

  self->zoom = 1;
  return self;
}

void
lap_axis_free (LapAxis *self)
{
  g_free (self->pieces);
  g_free (self);
}

static gboolean
has_ends (const LapAxis *self, const int *ends, guint n)
{
  for (guint i = 0; i < n && i < self->n; i++)
    if (self->pieces[i].end != ends[i])
      return FALSE;
  return n == self->n;
}

void
lap_axis_set_pieces (LapAxis *self, const int *ends, guint n)
{
  LapAxisPiece *pieces;
  int start = 0;

  if (has_ends (self, ends, n))
    return;
  pieces = g_new0 (LapAxisPiece, n);
  for (guint i = 0; i < n; i++) {
    pieces[i].start = start;
    pieces[i].end = start = ends[i];
    pieces[i].folded = n == self->n && self->pieces[i].folded;
    pieces[i].share = pieces[i].folded;
  }
  g_free (self->pieces);
  self->pieces = pieces;
  self->n = n;
  lay_out (self);
}

void
lap_axis_set_folds (LapAxis *self, const gboolean *folded)
{
  gboolean same = TRUE;

  for (guint i = 0; i < self->n; i++)
    same &= self->pieces[i].folded == folded[i] && self->pieces[i].share == folded[i];
  if (same)
    return;
  for (guint i = 0; i < self->n; i++) {
    self->pieces[i].folded = folded[i];
    self->pieces[i].share = folded[i];
  }
  lay_out (self);
}

void
lap_axis_set_view (LapAxis *self, double view, gboolean mirrored)
{
  self->view = view;
  self->mirrored = mirrored;
  hold_offset (self);
}

/* Pieces are few (parts of a session), yet a strip asks for many places: halve. */
guint
lap_axis_piece_at (const LapAxis *self, double second)
{
  return lap_last_of (LAP_HALVE (self->n, i, self->pieces[i].start <= second));
}

static double
content_x (const LapAxis *self, double second)
{
  const LapAxisPiece *piece;

  if (self->n == 0 || second < 0)
    return second * self->zoom;
  if (second >= self->length)
    return self->width + (second - self->length) * self->zoom;
  piece = &self->pieces[lap_axis_piece_at (self, second)];
  return piece->x + (second - piece->start) * piece->width / (piece->end - piece->start);
}

double
lap_axis_x (const LapAxis *self, double second)
{
  double x = content_x (self, second) - self->offset;

  return self->mirrored ? self->view - x : x;
}

double
lap_axis_second (const LapAxis *self, double x)
{
  double u = (self->mirrored ? self->view - x : x) + self->offset;
  const LapAxisPiece *piece;

  if (u <= 0 || self->n == 0)
    return 0;
  if (u >= self->width)
    return self->length;
  piece = &self->pieces[lap_last_of (LAP_HALVE (self->n, i, self->pieces[i].x <= u))];
  return piece->start + (u - piece->x) * (piece->end - piece->start) / piece->width;
}

double
lap_axis_first (const LapAxis *self)
{
  return lap_axis_second (self, self->mirrored ? self->view : 0);
}

double
lap_axis_last (const LapAxis *self)
{
  return lap_axis_second (self, self->mirrored ? 0 : self->view);
}

void
lap_axis_zoom_at (LapAxis *self, double zoom, double x)
{
  double second = lap_axis_second (self, x), u = self->mirrored ? self->view - x : x;

  if (self->zoom != CLAMP (zoom, LAP_ZOOM_LEAST, LAP_ZOOM_MOST)) {
    self->zoom = zoom;
    lay_out (self);
  }
  lap_axis_scroll (self, content_x (self, second) - u);
}

/* Folded widths are held within limits, so the width is no plain multiple of the zoom; it does rise with it. */
double
lap_axis_fit (const LapAxis *self)
{
  double low = LAP_ZOOM_LEAST, high = LAP_ZOOM_MOST;

  for (int i = 0; i < 48; i++) {
    double middle = (low + high) / 2;

    if (content_width (self, middle) <= self->view)
      low = middle;
    else
      high = middle;
  }
  return low;
}

void
lap_axis_scroll (LapAxis *self, double offset)
{
  self->offset = offset;
  hold_offset (self);
}

gboolean
lap_axis_reveal (LapAxis *self, int start, int end, double margin)
{
  double from = content_x (self, start) - margin, to = content_x (self, end) + margin, was = self->offset;

  if (to - from > self->view)
    to = from + self->view;
  if (from < self->offset)
    lap_axis_scroll (self, from);
  else if (to > self->offset + self->view)
    lap_axis_scroll (self, to - self->view);
  return self->offset != was;
}

LapAxisLook *
lap_axis_look (const LapAxis *self)
{
  LapAxisLook *look = g_new (LapAxisLook, 1);

  *look = (LapAxisLook) { self->zoom, self->offset, self->n, g_new (double, self->n) };
  for (guint i = 0; i < self->n; i++)
    look->shares[i] = self->pieces[i].share;
  return look;
}

void
lap_axis_look_free (LapAxisLook *look)
{
  g_free (look->shares);
  g_free (look);
}

void
lap_axis_blend (LapAxis *self, const LapAxisLook *from, const LapAxisLook *to, double t)
{
  g_return_if_fail (from->n == self->n && to->n == self->n);
  for (guint i = 0; i < self->n; i++)
    self->pieces[i].share = from->shares[i] + (to->shares[i] - from->shares[i]) * t;
  self->zoom = from->zoom + (to->zoom - from->zoom) * t;
  self->offset = from->offset + (to->offset - from->offset) * t;
  lay_out (self);
}
