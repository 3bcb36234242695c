/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A window holds one document, a session or a week: its title, undo and redo, its file and drafts, what is told, and a
 * stack of views. What the views are is up to the two kinds of window, session-window.h and week-window.h.
 *
 * A kind has a template of its own with children of the types "start" and "end" for the header bar and one "views", an
 * AdwViewStack; lap_window_set_document() comes last when one is made.
 */
#pragma once

#include "ui/desk.h"
#include "ui/find-bar.h"
#include "ui/keeper.h"
#include "ui/later.h"

#include <adwaita.h>

G_BEGIN_DECLS

#define LAP_TYPE_WINDOW (lap_window_get_type ())
G_DECLARE_DERIVABLE_TYPE (LapWindow, lap_window, LAP, WINDOW, AdwApplicationWindow)

struct _LapWindowClass {
  AdwApplicationWindowClass parent_class;
  /* Applies what has been typed somewhere and isn't an edit yet. */
  void  (*commit)   (LapWindow *window);
  /* What stands below the title. Transfer full. */
  char *(*subtitle) (LapWindow *window);
  /* Opens the dialog of what the document as a whole is. */
  void  (*properties) (LapWindow *window);
};

/* What both kinds have in their templates, and the base does with it: the pane is shown and hidden, words are found,
 * sheets are printed. */
typedef struct {
  const char   *plan;        /* the name of the view that has the rest of these, but for the sheets */
  LapDesk      *desk;
  GtkWidget    *pane_toggle; /* of the pane at the end of the desk; not seen in the other views */
  LapLater     *find;        /* the find bar, hidden until it is asked for */
  LapFindTarget target;      /* what it looks through; it is given the window */
  LapLater     *sheets;      /* the view "sheets" */
} LapWindowParts;

LapDocument *lap_window_document     (LapWindow   *window);
/* Once, before the document; @parts is copied. */
void         lap_window_set_parts    (LapWindow   *window,
                                      const LapWindowParts *parts);
/* Once. */
void         lap_window_set_document (LapWindow   *window,
                                      LapDocument *document);
/* What this kind of window can do beside what all can: sections of a menu. */
void         lap_window_add_menu     (LapWindow   *window,
                                      GMenuModel  *sections);
/* The find bar looks again, where it is in use: the plan is another one. */
void         lap_window_find_again   (LapWindow   *window);
/* Applies what has been typed somewhere and isn't an edit yet: before saving or closing. */
void         lap_window_commit       (LapWindow   *window);
/* The view on show, and showing another one. */
const char  *lap_window_view         (LapWindow   *window);
void         lap_window_show_view    (LapWindow   *window,
                                      const char  *view);

/* A dialog with one line of what went wrong. */
void         lap_window_tell_error   (LapWindow   *window,
                                      const char  *what,
                                      const char  *why);
/* A toast. */
void         lap_window_tell         (LapWindow   *window,
                                      const char  *text,
                                      gboolean     undoable);

/* Keeps drafts of the document until the window closes. */
void         lap_window_set_keeper   (LapWindow   *window,
                                      LapKeeper   *keeper);
/* Closes it without a question; the draft goes, too. */
void         lap_window_close_anyway (LapWindow   *window);

G_END_DECLS
