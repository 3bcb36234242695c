/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What somebody does to the rows of a form, with a mouse and no keyboard, or with a keyboard and no mouse: see hands.h.
 * Whoever has no keyboard pastes texts that were copied elsewhere.
 *
 * Each call finds its row by what it says, leaves the thing as it was asked for, and asserts that it got there.
 */
#pragma once

#include "ui/hands.h"

#include <adwaita.h>

G_BEGIN_DECLS

typedef struct {
  void (*line)   (GtkWidget *within, const char *title, const char *text);
  void (*number) (GtkWidget *within, const char *title, double number);
  void (*choose) (GtkWidget *within, const char *title, const char *label);
  void (*flag)   (GtkWidget *within, const char *title, gboolean on);
  /* Opens the row, and so what is in it. */
  void (*expand) (GtkWidget *within, const char *title);
  /* A button, by its label or name; a page of several, by its title. */
  void (*press)  (GtkWidget *within, const char *label);
} Rows;

extern const Rows rows_by_mouse, rows_by_keys;

/* What can be seen in @widget and says @text, or NULL: a label. */
GtkWidget *rows_find_text (GtkWidget  *widget,
                           const char *text);
void       rows_click_text (GtkWidget *within,
                            const char *text);
/* The row that can be seen in @widget and is called @title; there has to be one. */
GtkWidget *rows_find      (GtkWidget  *widget,
                           const char *title);
/* Turns the wheel until all of @widget can be seen in what it scrolls in. */
void       rows_wheel_to  (GtkWidget  *widget);
/* For hands_until(). */
gboolean   rows_is_mapped (gpointer    widget);
/* Whether it, or what is in it, has the focus. */
gboolean   rows_has_focus (gpointer    widget);

G_END_DECLS
