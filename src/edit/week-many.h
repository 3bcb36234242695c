/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Verbs on several classes of a week at once, each one group: what is selected goes as one step.
 */
#pragma once

#include "edit/week-verbs.h"

G_BEGIN_DECLS

/* Each of @classes (of LapClass in @week) is where @places, one for each, says. Empty where all are there already. */
LapEdits *lap_verb_place_classes  (GPtrArray *classes, const LapPlace *places);
/* On one date each: where a class that would be on @was is instead. */
typedef struct {
  int      was, to; /* dates */
  LapPlace place;
} LapPlaceOn;

/* Each of @classes is where @places, one for each, says, on that date alone: see lap_verb_place_on(). */
LapEdits *lap_verb_place_classes_on (LapWeek *week, GPtrArray *classes, const LapPlaceOn *places);
/* As many minutes more (@by > 0) or less for each, none below 5. */
LapEdits *lap_verb_lengthen       (GPtrArray *classes, int by);
LapEdits *lap_verb_remove_classes (LapWeek *week, GPtrArray *classes);
/* @classes, without an owner and with ids of their own, come to the end of the list. @format is a label with %s for
 * what they are called, translated: "Paste %s". */
LapEdits *lap_verb_add_classes    (LapWeek *week, GPtrArray *classes, const char *format);

/* Copies of @classes, without an owner, with ids of their own. Transfer full, of LapClass. */
GPtrArray *lap_classes_copy       (GPtrArray *classes);
/* What they are called: the title of one, "3 classes". Transfer full. */
char      *lap_classes_title      (GPtrArray *classes);
/* Whether @c could be at @place: nobody else is in its room or with its coach then, and it ends by 24:00. */
gboolean   lap_place_is_free      (LapWeek *week, const LapClass *c, const LapPlace *place);

G_END_DECLS
