/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a window of a document is like from one time to the next: size, whether it fills the screen, its panes, its view.
 * A new window begins as the one of its kind that was closed last ended, sessions and weeks each for themselves; windows
 * that are open don't follow each other.
 */
#pragma once

#include "ui/desk.h"
#include "ui/window.h"

G_BEGIN_DECLS

/* Before it is shown, when it has its views. */
void lap_remember_restore (LapWindow   *window);
/* When it closes. */
void lap_remember_keep    (LapWindow   *window);
/* @desk, which shows @document, begins with the panes that were shown last, and whoever shows or hides one from then on
 * is remembered. A pane that is folded because the window is narrow is nobody's wish. */
void lap_remember_panes   (LapDesk     *desk,
                           LapDocument *document);

G_END_DECLS
