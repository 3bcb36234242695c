/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The menu of blocks and what menus of the score have in common: each entry names an action of the lane it opens over,
 * with its key from the table of shortcuts.
 */
#pragma once

#include "ui/score/context.h"

G_BEGIN_DECLS

typedef struct {
  const char *label; /* marked for translation */
  const char *action;
  gboolean    reads; /* it changes nothing, so that it is there for a document that is read-only, too */
} LapMenuItem;

/* For what is selected in @context. A popover without a parent. */
GtkWidget *lap_score_menu_new   (LapScoreContext   *context);

/* Adds @items, ended by one without label, as a section of their own; the first says where @document can't be
 * changed. */
void       lap_menu_add_section (GMenu             *menu,
                                 const LapMenuItem *items,
                                 LapDocument       *document);
/* A popover without a parent that shows @menu where it points to. */
GtkWidget *lap_menu_popover     (GMenu             *menu);

G_END_DECLS
