/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One object of the model made equal to another of its type, as edits: going back to what a file holds can be undone
 * like anything else. Unknown members of @object itself stay its own; those of what its lists hold come along.
 */
#pragma once

#include "edit/edit.h"

G_BEGIN_DECLS

/* Transfer full; @label as of lap_edits_new(). Changes nothing. Empty where the two are equal already. */
LapEdits *lap_edits_become (const char    *label,
                            gpointer       object,
                            gconstpointer  other);

G_END_DECLS
