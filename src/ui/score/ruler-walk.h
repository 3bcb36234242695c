/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The marks of warnings on the ruler by keyboard: one stop of Tab, arrows from mark to mark in the order of time, Enter
 * for what the mark stands for. All marks that have a place in time are there, so every warning is reached. Which one
 * the keys are at is the last warning that was chosen by a mark.
 */
#pragma once

#include "ui/score/lane.h"

G_BEGIN_DECLS

/* In class_init: the actions and keys. */
void lap_ruler_walk_install (GtkWidgetClass *klass);
/* After each change of the context: whether there is anything to stop at, and what it says. */
void lap_ruler_walk_update  (LapLane        *ruler);
/* The ring about the mark that the keys are at. */
void lap_ruler_walk_draw    (LapLane        *ruler,
                             GtkSnapshot    *snapshot);

G_END_DECLS
