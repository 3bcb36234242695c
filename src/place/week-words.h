/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The words on the sheet of a week: what stands under the title of a class, and which weeks the sheet is about.
 */
#pragma once

#include "model/occurrences.h"

G_BEGIN_DECLS

/* Room, coach and minutes of a class that is held, and what is different on its date; why it isn't of one that isn't. On
 * the page of @room, NULL for a page of all rooms, the room goes without saying. @brief: where there is little room.
 * Free with g_free(). */
char       *lap_week_words_about (const LapWeek       *week,
                                  const LapRoom       *room,
                                  const LapOccurrence *occurrence,
                                  gboolean             brief);

/* The dates of the week that begins on @from; with 0 from when until when the classes are each week. Free with
 * g_free(). */
char       *lap_week_words_when  (const LapWeek       *week,
                                  int                  monday);

/* "Mon": a day where there is little room. Translated. */
const char *lap_week_words_day   (int                  day);

G_END_DECLS
