/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/recent.h"

#include <gtk/gtk.h>
#include <string.h>

#define MIME_START "application/vnd.lapwing."

void
lap_recent_note (const char *path, gboolean week)
{
  g_autofree char *uri = g_filename_to_uri (path, NULL, NULL);
  GtkRecentData data = {
    .mime_type = (char *) (week ? MIME_START "week+json" : MIME_START "session+json"),
    .app_name = (char *) "Lapwing",
    .app_exec = (char *) "lapwing %f",
  };

  if (uri != NULL)
    gtk_recent_manager_add_full (gtk_recent_manager_get_default (), uri, &data);
}

void
lap_recent_forget (const char *path)
{
  g_autofree char *uri = g_filename_to_uri (path, NULL, NULL);

  if (uri != NULL)
    gtk_recent_manager_remove_item (gtk_recent_manager_get_default (), uri, NULL);
}

GHashTable *
lap_recent_times (void)
{
  GHashTable *times = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  GList *items = gtk_recent_manager_get_items (gtk_recent_manager_get_default ());

  for (GList *l = items; l != NULL; l = l->next) {
    const char *mime = gtk_recent_info_get_mime_type (l->data);
    char *path = mime != NULL && g_str_has_prefix (mime, MIME_START)
                   ? g_filename_from_uri (gtk_recent_info_get_uri (l->data), NULL, NULL) : NULL;

    if (path != NULL)
      g_hash_table_insert (times, path, GSIZE_TO_POINTER (g_date_time_to_unix (gtk_recent_info_get_modified (l->data))));
  }
  g_list_free_full (items, (GDestroyNotify) gtk_recent_info_unref);
  return times;
}
