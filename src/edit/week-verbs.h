/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What people do to a week, as edits: each verb returns a named group (transfer full) and changes nothing. What names
 * a thing goes with it: the absences of a coach. Classes go and are copied by week-many.h.
 */
#pragma once

#include "edit/edit.h"
#include "model/week.h"

G_BEGIN_DECLS

/* Where a class is. A member at its "none" leaves the class without it. */
typedef struct {
  int         day;   /* LapDay; -1 = not placed */
  int         start; /* minutes; -1 with no day */
  const char *room;  /* id or NULL */
  const char *coach; /* id or NULL */
} LapPlace;

LapPlace  lap_class_place        (const LapClass *c);
/* Empty when it is there already. */
LapEdits *lap_verb_place         (LapClass *c, const LapPlace *place);
/* From another minute on, or for longer: all within 24:00, on dates that differ too. @start is -1 for a class without. */
LapEdits *lap_verb_set_minutes   (LapClass *c, int start, int minutes);

/* On @date only: the class is at @place, on the date @to. Takes an exception that is there along, and away where
 * nothing differs any more. */
LapEdits *lap_verb_place_on      (LapWeek *week, LapClass *c, int date, int to, const LapPlace *place);
LapEdits *lap_verb_cancel_on     (LapWeek *week, LapClass *c, int date);
/* What people are told of it on @date; NULL or "": nothing. */
LapEdits *lap_verb_note_on       (LapWeek *week, LapClass *c, int date, const char *note);
/* As every week again. */
LapEdits *lap_verb_as_always     (LapWeek *week, LapClass *c, int date);
/* Away on @dates (LapClosed, may be NULL) and on no others. */
LapEdits *lap_verb_set_aways     (LapWeek *week, const LapCoach *coach, const LapRows *dates);

/* All classes of @from once more on @to. */
LapEdits *lap_verb_copy_day      (LapWeek *week, LapDay from, LapDay to);

LapEdits *lap_verb_add_room      (LapWeek *week, const char *title);
LapEdits *lap_verb_remove_room   (LapWeek *week, LapRoom *room);
LapEdits *lap_verb_add_coach     (LapWeek *week, const char *title);
LapEdits *lap_verb_remove_coach  (LapWeek *week, LapCoach *coach);

G_END_DECLS
