/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How wide text is in the platform's faces, through Pango. Widths are kept: a layout asks for the same word many times.
 * One object is for one thread.
 */
#pragma once

#include "place/measure.h"

#include <pango/pangocairo.h>

G_BEGIN_DECLS

typedef struct _LapPangoMeasure LapPangoMeasure;

LapPangoMeasure  *lap_pango_measure_new  (void);
void              lap_pango_measure_free (LapPangoMeasure *measure);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapPangoMeasure, lap_pango_measure_free)

const LapMeasure *lap_pango_measure_table (LapPangoMeasure *measure);

/* The face of sheets in @weight, without a size. Transfer full. */
PangoFontDescription *lap_sheet_font     (LapWeight        weight);
/* Letters stand where their outlines say, not on pixels, and none are joined to ligatures that a search wouldn't find.
 * Transfer full. */
PangoLayout          *lap_sheet_layout   (PangoContext    *context);

G_END_DECLS
