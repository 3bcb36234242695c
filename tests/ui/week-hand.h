/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Somebody who makes the demo's week by hand, with a mouse and no keyboard or with a keyboard and no mouse: the file that
 * they begin with and the one they save, their window with its dialogs, and its rows, which get what the demo's week has.
 *
 * First week_hand_start(), at last week_hand_end() or week_hand_drop().
 */
#pragma once

#include "ui/rows.h"
#include "ui/windows.h"

#include "ui/week-window.h"

G_BEGIN_DECLS

typedef struct {
  const Rows  *rows;
  gboolean     mouse;
  char        *folder, *path;
  LapWindow   *window;
  LapWeekView *view;
  GtkWidget   *pane;
  LapDocument *demo;
  LapWeek     *model; /* of it */
} WeekHand;

/* A property and the title of its row. */
typedef struct { const char *property, *title; } WeekLine;

/* An empty week in its window, beside the sessions that the demo's classes name. */
void       week_hand_start    (WeekHand       *hand,
                               gboolean        mouse);
/* Saves it, closes the window and asserts that the file says what the demo's file says. */
void       week_hand_end      (WeekHand       *hand);
/* Closes it as it is. */
void       week_hand_drop     (WeekHand       *hand);

/* The week that is made. */
LapWeek   *week_hand_week     (WeekHand       *hand);
/* Where in its list what has @id is; G_MAXUINT for NULL. */
guint      week_hand_room_at  (LapWeek        *week,
                               const char     *id);
guint      week_hand_coach_at (LapWeek        *week,
                               const char     *id);

/* A property as a text that tells whether two are the same. Transfer full. */
char      *week_hand_written  (gpointer        object,
                               const char     *property);
/* Makes the property of @object what it is in @model, by its row in @within. */
void       week_hand_set      (WeekHand       *hand,
                               GtkWidget      *within,
                               const WeekLine *line,
                               gpointer        object,
                               gpointer        model);
void       week_hand_set_all  (WeekHand       *hand,
                               GtkWidget      *within,
                               const WeekLine *lines,
                               guint           n,
                               gpointer        object,
                               gpointer        model);

/* The window that has come up, with the hands on it. */
GtkWidget *week_hand_go_in    (WeekHand       *hand);
/* Closes @dialog (NULL: it closes by itself) and goes back to the window. */
void       week_hand_go_out   (WeekHand       *hand,
                               GtkWidget      *dialog);
/* Something of the menu of the window, or its keys. */
void       week_hand_command  (WeekHand       *hand,
                               const char     *label,
                               const char     *keys);

G_END_DECLS
