/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The window of a small week, see week-plan.h, that is in a file.
 */
#pragma once

#include "ui/week-plan.h"
#include "ui/week-window.h"

typedef struct {
  char         *folder, *path;
  LapWindow    *window;
  LapDocument  *document;
  LapWeekView  *view;
  LapWeekScene *scene;
} Room;

/* Makes the file. */
void room_make  (Room *room);
/* Opens it in a window, which has been drawn. */
void room_open  (Room *room);
void room_close (Room *room);
