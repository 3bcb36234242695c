/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The rooms and coaches of a week as what may be chosen: ids, and what people call them.
 */
#pragma once

#include "ui/document.h"

#include <adwaita.h>

G_BEGIN_DECLS

/* Appends to both arrays. LapChoices of fields.h. */
void lap_room_choices  (LapDocument *document,
                        GPtrArray   *ids,
                        GPtrArray   *titles);
void lap_coach_choices (LapDocument *document,
                        GPtrArray   *ids,
                        GPtrArray   *titles);
/* Makes @titles what @row offers, unless it does already: a new list would choose anew. */
void lap_combo_set_titles (AdwComboRow *row,
                           GPtrArray   *titles);

G_END_DECLS
