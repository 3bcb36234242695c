/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The two edits that everything is made of: a splice of a list and the setting of a property. Each is its own
 * inverse: swapping it once applies it and turns it into what takes it back. LapEdits is a named group of them,
 * what a user sees as one deed.
 *
 * Whoever makes edits (a verb, a remedy, an arranger) changes nothing; a history applies them. Only a preview or
 * a search over a private copy swaps a group itself, and swaps it back.
 */
#pragma once

#include "model/list.h"

G_BEGIN_DECLS

typedef struct _LapEdits LapEdits;

#define LAP_TYPE_EDITS (lap_edits_get_type ())
GType       lap_edits_get_type (void);

/* @label is what it does, translated, as it stands behind "Undo": "Move Squat". */
LapEdits   *lap_edits_new      (const char     *label);
/* An empty group that counts as applied, to gather applied ones in: see lap_edits_append(). */
LapEdits   *lap_edits_new_applied (const char  *label);
void        lap_edits_free     (LapEdits       *edits);
LapEdits   *lap_edits_copy     (const LapEdits *edits);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapEdits, lap_edits_free)

const char *lap_edits_label    (const LapEdits *edits);
guint       lap_edits_n        (const LapEdits *edits);

/* Adds: @property of @object becomes @value. A second setting of the same replaces nothing: it comes after. */
void        lap_edits_set        (LapEdits *edits, gpointer object, const char *property, const GValue *value);
void        lap_edits_set_int    (LapEdits *edits, gpointer object, const char *property, int value);
void        lap_edits_set_uint   (LapEdits *edits, gpointer object, const char *property, guint value);
void        lap_edits_set_double (LapEdits *edits, gpointer object, const char *property, double value);
void        lap_edits_set_flag   (LapEdits *edits, gpointer object, const char *property, gboolean value);
void        lap_edits_set_text   (LapEdits *edits, gpointer object, const char *property, const char *value);
/* @value is copied and may be NULL. */
void        lap_edits_set_boxed  (LapEdits *edits, gpointer object, const char *property, GType type,
                                  gconstpointer value);

/* Adds: at @position of @list @n_removed items go and @added (of LapObject, may be NULL) come. Positions count as
 * they are once the edits before it have been applied. */
void        lap_edits_splice     (LapEdits *edits, LapList *list, guint position, guint n_removed,
                                  GPtrArray *added);
/* Adds a splice that puts one object in; @item is kept by reference. */
void        lap_edits_insert     (LapEdits *edits, LapList *list, guint position, gpointer item);

/* Appends the edits of @more, which is used up. */
void        lap_edits_append     (LapEdits *edits, LapEdits *more);

/* What @edits, not applied, do to @from and to all that its lists hold, for the same places of @to, which is equal to
 * @from. Transfer full. */
LapEdits   *lap_edits_onto       (const LapEdits *edits, gpointer from, gpointer to);

/* How much a group that isn't applied changes: seconds, 60 for an exercise that is exchanged or goes, 10 for a block
 * that moves, 1 for anything else. */
int         lap_edits_change     (const LapEdits *edits);
/* Whether it sets @property of some object. */
gboolean    lap_edits_sets       (const LapEdits *edits, const char *property);

/* Applies the group when it isn't, takes it back when it is. */
void        lap_edits_swap       (LapEdits *edits);
gboolean    lap_edits_applied    (const LapEdits *edits);

G_END_DECLS
