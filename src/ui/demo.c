/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/demo.h"

#include "store/documents.h"
#include "store/week-paths.h"

#include <glib/gstdio.h>

#define FOLDER "/org/lapwing/Lapwing/demo/"
#define WEEK   "kelpline-week.lapweek"

static const char *const sessions[] = { "thirty-on-the-mat.lapwing", "twelve-at-twelve.lapwing" };

static GBytes *
resource (const char *name, GError **error)
{
  g_autofree char *path = g_strconcat (FOLDER, name, NULL);

  return g_resources_lookup_data (path, G_RESOURCE_LOOKUP_FLAGS_NONE, error);
}

/* Writes the session @name into @folder, where it isn't there yet. */
static gboolean
put (const char *folder, const char *name, GError **error)
{
  g_autofree char *path = g_build_filename (folder, name, NULL);
  g_autoptr (GBytes) bytes = NULL;

  if (g_file_test (path, G_FILE_TEST_EXISTS))
    return TRUE;
  bytes = resource (name, error);
  return bytes != NULL && g_file_set_contents (path, g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes), error);
}

LapDocument *
lap_demo_session (GError **error)
{
  g_autoptr (GBytes) bytes = resource (sessions[0], error);
  g_autoptr (LapSession) session = bytes != NULL ? lap_session_from_bytes (bytes, error) : NULL;

  return session != NULL ? lap_document_new (session, error) : NULL;
}

LapDocument *
lap_demo_week (GError **error)
{
  g_autofree char *folder = g_build_filename (g_get_user_data_dir (), "lapwing", "demo", NULL);
  g_autofree char *path = g_build_filename (folder, WEEK, NULL);
  g_autoptr (GBytes) bytes = resource (WEEK, error);
  g_autoptr (LapWeek) week = bytes != NULL ? lap_week_from_bytes (bytes, error) : NULL;

  if (week == NULL)
    return NULL;
  g_mkdir_with_parents (folder, 0700);
  for (guint i = 0; i < G_N_ELEMENTS (sessions); i++)
    if (!put (folder, sessions[i], error))
      return NULL;
  lap_week_paths_whole (week, path);
  return lap_document_new (week, error);
}
