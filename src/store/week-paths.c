/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "store/week-paths.h"

#include "store/documents.h"
#include "store/session-folder.h"

typedef char *(*Rename) (LapSessionFolder *folder, const char *path);

static void
rename_all (LapWeek *week, const char *file, Rename rename)
{
  g_autoptr (LapSessionFolder) folder = lap_session_folder_new (file);

  for (guint i = 0; i < lap_list_n (week->classes); i++) {
    LapClass *c = lap_list_nth (week->classes, i);
    g_autofree char *path = c->session != NULL && *c->session != '\0' ? rename (folder, c->session) : NULL;

    if (path != NULL)
      g_object_set (c, "session", path, NULL);
  }
}

void
lap_week_paths_whole (LapWeek *week, const char *file)
{
  rename_all (week, file, lap_session_folder_file);
}

GBytes *
lap_week_paths_bytes (LapWeek *week, const char *file)
{
  g_autoptr (LapWeek) copy = file != NULL ? lap_object_copy (week) : g_object_ref (week);

  if (file != NULL)
    rename_all (copy, file, lap_session_folder_path);
  return lap_week_to_bytes (copy);
}
