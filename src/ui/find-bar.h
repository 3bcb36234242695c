/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The bar over a plan that finds words in it: how many places have them, the next and the one before, each selected in
 * the plan. Hidden until it is asked for; Escape hides it. What it looks through, and how a place is shown, is up to the
 * kind of window.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

#define LAP_TYPE_FIND_BAR (lap_find_bar_get_type ())
G_DECLARE_FINAL_TYPE (LapFindBar, lap_find_bar, LAP, FIND_BAR, GtkWidget)

typedef struct {
  GArray     *(*find)  (gpointer data, const char *text); /* guint: places in their order; transfer full */
  void        (*go_to) (gpointer data, guint place);      /* selects it, and leaves the focus where it is */
  char       *(*count) (guint n);                         /* "3 blocks"; transfer full */
  const char   *name, *hint;                              /* of the entry, and in it; translated */
} LapFindTarget;

/* Once; @target is copied. */
void lap_find_bar_set_target (LapFindBar          *bar,
                              const LapFindTarget *target,
                              gpointer             data);
/* Shows it, ready to be typed in. */
void lap_find_bar_begin      (LapFindBar          *bar);
/* Shows the next place, or with -1 the one before; the bar, where nothing was looked for yet. */
void lap_find_bar_step       (LapFindBar          *bar,
                              int                  by);
/* The plan is another one: places that were found are looked for again. */
void lap_find_bar_again      (LapFindBar          *bar);

G_END_DECLS
