/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The pieces of large sheets for the paper of a small printer, as a PDF and a print dialog paint them. A LapPieces looks
 * at a page list, which must outlive it.
 */
#pragma once

#include "sheets/paint.h"
#include "sheets/sheets.h"

G_BEGIN_DECLS

typedef struct _LapPieces LapPieces;

LapPieces *lap_pieces_new   (const LapPages *pages,
                           LapPaper        paper);
void      lap_pieces_free  (LapPieces       *tiles);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapPieces, lap_pieces_free)

guint     lap_pieces_n     (const LapPieces *tiles);
/* Of the paper of piece @n, turned as it fits best; mm. */
void      lap_pieces_size  (const LapPieces *tiles,
                           guint           n,
                           double         *width,
                           double         *height);
/* Paints piece @n through the context that @painter was made for, in millimetres. */
void      lap_pieces_paint (const LapPieces *tiles,
                           guint           n,
                           LapPainter     *painter,
                           cairo_t        *cr);

G_END_DECLS
