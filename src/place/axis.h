/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The one time axis of all lanes: seconds on the session clock to pixels of a view, and back. It is piecewise
 * linear: a piece (a part of the session) is open and drawn at the zoom, or folded to a few pixels in which order
 * and proportion still hold.
 *
 * Always true: pieces touch, the first starts at 0 s and at 0 px of the content; x rises with time, or falls where
 * the axis is mirrored (right to left); the view never shows anything but content while there is enough of it.
 * Set the pieces, then the view, then zoom and scroll; each keeps the rest valid.
 */
#pragma once

#include "base/seconds.h"

G_BEGIN_DECLS

#define LAP_FOLDED_LEAST 14.0  /* px of a folded piece */
#define LAP_FOLDED_MOST  116.0
#define LAP_ZOOM_LEAST   0.001 /* px a second: the longest session in 44 px */
#define LAP_ZOOM_MOST    40.0

typedef struct {
  int      start, end;  /* seconds */
  gboolean folded;
  double   share;       /* of being folded, 0 or 1 but on the way from one to the other */
  double   x, width;    /* px of the content; they follow from the rest */
} LapAxisPiece;

typedef struct {
  double        zoom;     /* px a second where open */
  double        offset;   /* px of content that lie before the view */
  double        view;     /* px that are seen */
  gboolean      mirrored;
  double        width;    /* px of the whole content; it follows */
  guint         serial;   /* another one whenever the content is laid out anew: not by scrolling */
  int           length;   /* seconds; it follows */
  guint         n;
  LapAxisPiece *pieces;
} LapAxis;

LapAxis *lap_axis_new        (void);
void     lap_axis_free       (LapAxis       *axis);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapAxis, lap_axis_free)

/* @ends are the @n ascending ends of the pieces, in seconds. A piece that was folded stays so where the number of
 * pieces stays; else all are open. */
void     lap_axis_set_pieces (LapAxis       *axis,
                              const int     *ends,
                              guint          n);
/* @folded has a value for each piece. */
void     lap_axis_set_folds  (LapAxis       *axis,
                              const gboolean *folded);
void     lap_axis_set_view   (LapAxis       *axis,
                              double         view,
                              gboolean       mirrored);

/* px in the view of @second, and seconds at @x of the view. Time outside is carried on at the zoom for the first,
 * held to the session for the second. */
double   lap_axis_x          (const LapAxis *axis,
                              double         second);
double   lap_axis_second     (const LapAxis *axis,
                              double         x);

/* The seconds at which the view begins and ends. */
double   lap_axis_first      (const LapAxis *axis);
double   lap_axis_last       (const LapAxis *axis);

/* Zooms so that what is at @x of the view stays there. */
void     lap_axis_zoom_at    (LapAxis       *axis,
                              double         zoom,
                              double         x);
/* The zoom at which everything just fits the view. */
double   lap_axis_fit        (const LapAxis *axis);
void     lap_axis_scroll     (LapAxis       *axis,
                              double         offset);
/* Scrolls as little as shows @start to @end with @margin px on either side; TRUE when it moved. */
gboolean lap_axis_reveal     (LapAxis       *axis,
                              int            start,
                              int            end,
                              double         margin);

/* How an axis is laid out, to go from one way to another by small steps. */
typedef struct {
  double  zoom, offset;
  guint   n;
  double *shares;
} LapAxisLook;

LapAxisLook *lap_axis_look      (const LapAxis *axis);
void         lap_axis_look_free (LapAxisLook   *look);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapAxisLook, lap_axis_look_free)
/* Lays @axis out between two looks of the pieces that it has: @t is 0 for the first, 1 for the second. */
void         lap_axis_blend     (LapAxis           *axis,
                                 const LapAxisLook *from,
                                 const LapAxisLook *to,
                                 double             t);

/* The piece @second lies in. */
guint    lap_axis_piece_at   (const LapAxis *axis,
                              double         second);

G_END_DECLS
