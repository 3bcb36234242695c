/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A user's own exercises from all sessions: a session without parts in the user's data folder, written whole whenever
 * one is kept, by one program at a time, and read again when another program has. Commands and other people's machines
 * never need it: a session that uses one of these holds it itself, see lap_verb_take_own().
 *
 * "changed" says that others are in it.
 */
#pragma once

#include "catalogue/catalogue.h"

#include <gio/gio.h>

G_BEGIN_DECLS

#define LAP_TYPE_PERSONAL (lap_personal_get_type ())
G_DECLARE_FINAL_TYPE (LapPersonal, lap_personal, LAP, PERSONAL, GObject)

/* The one of this program. Transfer none. */
LapPersonal  *lap_personal        (void);
/* Whether it has @exercise itself. */
gboolean      lap_personal_has    (LapPersonal  *personal,
                                   LapExercise  *exercise);
/* @catalogue, and after it what only this has. Transfer full. */
LapCatalogue *lap_personal_under  (LapPersonal  *personal,
                                   LapCatalogue *catalogue);
/* Keeps @exercise in place of one with its id, or besides. FALSE with one line of @error where the file can't be read
 * or written: then nothing is changed. */
gboolean      lap_personal_keep   (LapPersonal  *personal,
                                   LapExercise  *exercise,
                                   GError      **error);
gboolean      lap_personal_forget (LapPersonal  *personal,
                                   const char   *id,
                                   GError      **error);

G_END_DECLS
