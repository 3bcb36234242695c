/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Paints a page of a page list: the one painter of PDF, print dialog and preview. The context is in millimetres, the
 * page's top left corner at 0, 0.
 */
#pragma once

#include "place/page.h"
#include "place/paper.h"

#include <pango/pangocairo.h>

G_BEGIN_DECLS

typedef struct _LapPainter LapPainter;

/* @tags writes the structure of the document, for a PDF. */
LapPainter *lap_painter_new  (cairo_t       *cr,
                              LapInk         ink,
                              gboolean       tags);
void        lap_painter_free (LapPainter    *painter);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapPainter, lap_painter_free)

void        lap_painter_page (LapPainter    *painter,
                              const LapPage *page);

G_END_DECLS
