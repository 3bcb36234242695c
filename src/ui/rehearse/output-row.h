/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A row that chooses one of the computer's sound outputs and remembers it by the name that people see. Rows of one
 * setting follow each other. An output that isn't plugged in stays chosen; what is heard meanwhile, the row's user
 * decides and says.
 *
 * lap_output_row_set() first; it may be called again. Emits "chosen" when somebody chose.
 */
#pragma once

#include "ui/rehearse/outputs.h"

#include <adwaita.h>

G_BEGIN_DECLS

#define LAP_TYPE_OUTPUT_ROW (lap_output_row_get_type ())
G_DECLARE_FINAL_TYPE (LapOutputRow, lap_output_row, LAP, OUTPUT_ROW, AdwComboRow)

/* Which setting it is, a static string; and what the line says that stands for none being chosen. */
void        lap_output_row_set    (LapOutputRow *row,
                                   const char   *key,
                                   const char   *none);
/* The name of what is chosen, "" for none. Transfer none. */
const char *lap_output_row_chosen (LapOutputRow *row);
/* Where that is heard: floating, or NULL where none is chosen or it isn't there. */
GstElement *lap_output_row_sink   (LapOutputRow *row);

G_END_DECLS
