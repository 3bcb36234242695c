/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/file-drop.h"

#include "ui/files.h"
#include "ui/week-import.h"
#include "ui/window.h"

#include <glib/gi18n-lib.h>

typedef struct {
  GtkWindow *window;
  GSList    *files; /* GFile */
} Drop;

static void
drop_free (Drop *drop)
{
  g_object_unref (drop->window);
  g_slist_free_full (drop->files, g_object_unref);
  g_free (drop);
}

/* A table of classes goes into the week it is dropped on; FALSE where there is none, and it becomes one. */
static gboolean
take_table (GtkWindow *window, const char *path)
{
  LapDocument *document = LAP_IS_WINDOW (window) ? lap_window_document (LAP_WINDOW (window)) : NULL;
  GtkWindow *import;

  if (document == NULL || lap_document_week (document) == NULL)
    return FALSE;
  import = lap_week_import_new (document, window);
  gtk_window_present (import);
  lap_week_import_open (LAP_WEEK_IMPORT (import), path);
  return TRUE;
}

/* When the drop is through: a window that comes up in the middle of one would keep whoever drags waiting. */
static gboolean
take_cb (gpointer data)
{
  Drop *drop = data;
  g_autoptr (GPtrArray) others = g_ptr_array_new ();

  for (GSList *l = drop->files; l != NULL; l = l->next) {
    g_autofree char *path = g_file_get_path (l->data);

    if (path == NULL || !lap_files_is_table (path) || !take_table (drop->window, path))
      g_ptr_array_add (others, l->data);
  }
  if (others->len > 0)
    g_application_open (g_application_get_default (), (GFile **) others->pdata, others->len, "");
  drop_free (drop);
  return G_SOURCE_REMOVE;
}

static gpointer
copy_file (gconstpointer file, gpointer data)
{
  return g_object_ref ((gpointer) file);
}

static gboolean
drop_cb (GtkDropTarget *target, const GValue *value, double x, double y, GtkWindow *window)
{
  g_autoptr (GSList) files = gdk_file_list_get_files (g_value_get_boxed (value));
  Drop *drop = g_new (Drop, 1);

  *drop = (Drop) { g_object_ref (window), g_slist_copy_deep (files, copy_file, NULL) };
  g_idle_add (take_cb, drop);
  return TRUE;
}

void
lap_file_drop_install (GtkWindow *window)
{
  GtkDropTarget *target = gtk_drop_target_new (GDK_TYPE_FILE_LIST, GDK_ACTION_COPY);

  g_signal_connect (target, "drop", G_CALLBACK (drop_cb), window);
  gtk_widget_add_controller (GTK_WIDGET (window), GTK_EVENT_CONTROLLER (target));
}
