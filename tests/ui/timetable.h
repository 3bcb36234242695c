/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * For tests of the timetable of a week: the view alone in a window, on a week of two rooms, two coaches and four
 * classes, one of which waits for a day.
 */
#pragma once

#include "ui/windows.h"

#include "ui/week/view.h"

G_BEGIN_DECLS

/* Texts with ' for ", to be put together: the head, then classes with commas between, then "]}". */
#define TIMETABLE_HEAD \
  "{'format': 'lapwing-week', 'version': 1, 'id': 'w', 'title': 'Kelpline Studio', 'timezone': 'Europe/Lisbon', " \
  "'open': {'mon': ['06:30', '21:30'], 'tue': ['06:30', '21:30'], 'wed': ['06:30', '21:30'], " \
  "'thu': ['06:30', '21:30']}, 'rooms': [{'id': 'loft', 'name': 'Loft'}, {'id': 'yard', 'name': 'Yard'}], " \
  "'coaches': [{'id': 'mira', 'name': 'Mira'}, {'id': 'teo', 'name': 'Teo'}], 'classes': ["
#define TIMETABLE_EARLY \
  "{'id': 'early', 'title': 'Early forty', 'kind': 'circuit', 'minutes': 45, 'places': 20, 'effort': 'hard', " \
  "'day': 'mon', 'start': '07:00', 'room': 'loft', 'coach': 'mira'}"
#define TIMETABLE_NOON \
  "{'id': 'noon', 'title': 'Lunch legs', 'kind': 'strength', 'minutes': 30, 'day': 'tue', 'start': '12:00', " \
  "'room': 'yard', 'coach': 'teo'}"
#define TIMETABLE_LATE \
  "{'id': 'late', 'title': 'Long stretch', 'kind': 'stretch', 'minutes': 60, 'day': 'tue', 'start': '18:00', " \
  "'room': 'loft', 'coach': 'mira'}"
#define TIMETABLE_WAITS "{'id': 'waits', 'title': 'Quick ten', 'kind': 'circuit', 'minutes': 30, 'coach': 'teo'}"
#define TIMETABLE_ALL \
  TIMETABLE_HEAD TIMETABLE_EARLY ", " TIMETABLE_NOON ", " TIMETABLE_LATE ", " TIMETABLE_WAITS "]}"

typedef struct {
  GtkWidget    *window;
  LapWeekView  *view;
  LapWeekScene *scene;
  LapDocument  *document;
} Timetable;

/* The document of a week's text. */
LapDocument     *timetable_read      (const char      *text);
/* @document (transfer full) in a window that has been drawn. */
Timetable        timetable_show      (LapDocument     *document,
                                      int              width,
                                      int              height);
void             timetable_settle    (Timetable       *timetable);
/* Closes it and asserts that nothing of the view outlives its window. */
void             timetable_close     (Timetable       *timetable);

LapClass        *timetable_class     (Timetable       *timetable,
                                      const char      *id);
void             timetable_assert_at (Timetable       *timetable,
                                      const char      *id,
                                      int              day,
                                      int              start,
                                      int              minutes,
                                      const char      *room);
GtkWidget       *timetable_strip     (Timetable       *timetable);
/* Where a minute of a line is, at the height of bars. */
graphene_point_t timetable_point     (Timetable       *timetable,
                                      int              day,
                                      const char      *line,
                                      int              minute);
/* Held at the end of the drag: the caller lets go. */
GtkGesture      *timetable_drag      (Timetable       *timetable,
                                      graphene_point_t from,
                                      graphene_point_t to);
void             timetable_let_go    (GtkGesture      *gesture);
/* A drag from a minute of a line to another, let go there. */
void             timetable_carry     (Timetable       *timetable,
                                      int              day,
                                      const char      *line,
                                      int              minute,
                                      int              to_day,
                                      const char      *to_line,
                                      int              to_minute);
/* Keys where the class with the cursor is: on the lines, or in the tray. */
void             timetable_press     (Timetable       *timetable,
                                      const char      *keys);

G_END_DECLS
