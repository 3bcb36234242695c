/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What rows for fields of a record have in common, whatever is edited through them: how they look, numbers of either
 * kind, and switches, which stand for a flag, for a word of a list or for a piece of kit.
 */
#pragma once

#include "base/record.h"

#include <adwaita.h>

G_BEGIN_DECLS

/* A row called @title, with @control at its end; @hint may be NULL. */
GtkWidget      *lap_field_row        (const char     *title,
                                      const char     *hint,
                                      GtkWidget      *control);
/* Calls @typed, swapped, when what stands in a line counts: Enter was pressed in it, or it is left. */
void            lap_field_when_typed (GtkWidget   *row,
                                      GCallback    typed,
                                      gpointer     data);
/* What people call the words, for a row of choices; "None" before them where @none. Transfer full. */
GtkStringList  *lap_field_labels     (const LapWords *words,
                                      gboolean        none);
/* A combo row that has no room for all of what is chosen says it in a tip. */
void            lap_field_choice_tip (GtkWidget      *row);
/* The words of which each has a switch, of a list or kit; NULL where the field is neither. */
const LapWords *lap_field_switches   (const LapField *field);
/* Which of them are in @value. */
guint32         lap_field_mask       (const LapField *field,
                                      const GValue   *value);
/* Whether the switch @bit of @field is on; a flag has one. */
gboolean        lap_field_is_on      (const LapField *field,
                                      const GValue   *value,
                                      guint           bit);
/* Turns it on in @value, or off with 0 @pieces, which matter for kit only. */
void            lap_field_turn       (const LapField *field,
                                      GValue         *value,
                                      guint           bit,
                                      guint           pieces);
/* A number of either kind. */
double          lap_field_number     (const GValue   *value);
void            lap_field_set_number (GValue         *value,
                                      double          number);

G_END_DECLS
