/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Asking for a file to open or to write: the one place that knows the platform's dialog.
 */
#pragma once

#include <gtk/gtk.h>

G_BEGIN_DECLS

/* @path (NULL: given up) is the caller's only during the call. */
typedef void (*LapFileFunc) (const char *path, gpointer data);

/* Whether the name is that of a table, in which a spreadsheet keeps classes. */
gboolean lap_files_is_table (const char *path);
/* @data must stay alive until @func was called; it is, once. */
void lap_files_open (GtkWindow  *parent,
                     LapFileFunc func,
                     gpointer    data);
/* For files of another @kind, "Tables (CSV)", with names like one of @patterns. Begins where the file @beside is, with
 * NULL where the platform likes. */
void lap_files_choose (GtkWindow         *parent,
                       const char        *title,
                       const char        *kind,
                       const char *const *patterns,
                       const char        *beside,
                       LapFileFunc        func,
                       gpointer           data);
void lap_files_folder (GtkWindow   *parent,
                       const char  *title,
                       LapFileFunc  func,
                       gpointer     data);
/* @name is what the dialog offers; a name without @suffix (".pdf") gets it. */
void lap_files_save (GtkWindow  *parent,
                     const char *title,
                     const char *name,
                     const char *suffix,
                     LapFileFunc func,
                     gpointer    data);

G_END_DECLS
