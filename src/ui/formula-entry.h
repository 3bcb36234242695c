/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The formula over the score. It is a button that opens a line to type another one, "45/15 × 8 × 3", which reshapes the
 * part it is of; a formula that can't be read is answered by what was expected, and nothing changes.
 */
#pragma once

#include "ui/document.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_FORMULA_ENTRY (lap_formula_entry_get_type ())
G_DECLARE_FINAL_TYPE (LapFormulaEntry, lap_formula_entry, LAP, FORMULA_ENTRY, GtkWidget)

/* Shows @text, the formula of @part; without a text it invites to type one, which without a part makes a main one. */
void lap_formula_entry_show (LapFormulaEntry *entry,
                             LapDocument     *document,
                             LapPart         *part,
                             const char      *text);
/* Opens the line to type in. */
void lap_formula_entry_open (LapFormulaEntry *entry);

G_END_DECLS
