/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Every shortcut, once: one table gives windows and widgets their bindings and the list of them its rows.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

typedef enum {
  LAP_SCOPE_WINDOW, /* anywhere in a window */
  LAP_SCOPE_OVERVIEW, /* while the strip below the lanes has the focus */
  LAP_SCOPE_MARKS,  /* while the marks of warnings on the clock have it */
  LAP_SCOPE_SCORE,  /* while the blocks have the focus */
  LAP_SCOPE_PART,   /* while the blocks or the brackets have it: about a part */
  LAP_SCOPE_BRACKET, /* while the brackets of parts and rounds have it */
  LAP_SCOPE_REHEARSE, /* in the window of a rehearsal */
  LAP_SCOPE_SHELF,  /* while the exercises of the catalogue have it */
  LAP_SCOPE_WEEK,   /* while the classes of a week have it */
} LapScope;

typedef struct {
  LapScope    scope;
  const char *group;  /* marked for translation */
  const char *title;  /* marked for translation */
  const char *action; /* "win.undo" */
  const char *keys;   /* accelerators, a space between */
} LapShortcut;

guint              lap_shortcuts_n          (void);
const LapShortcut *lap_shortcuts_nth        (guint           n);

/* The first key of @action, "<Control>c", or NULL. Transfer full. */
char              *lap_shortcuts_key        (const char     *action);
/* Gives @application the accelerators of windows. */
void               lap_shortcuts_bind       (GtkApplication *application);
/* In class_init: binds the keys of @scope to the actions of the class. */
void               lap_shortcuts_bind_class (GtkWidgetClass *klass,
                                             LapScope        scope);

G_END_DECLS
