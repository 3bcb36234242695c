/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "base/path.h"

#include "base/error.h"

static void
append (GString *text, const LapPath *path)
{
  if (path == NULL || path->up == NULL)
    return;
  append (text, path->up);
  g_string_append_c (text, '/');
  if (path->name == NULL) {
    g_string_append_printf (text, "%u", path->index);
    return;
  }
  for (const char *c = path->name; *c != '\0'; c++) {
    if (*c == '~')
      g_string_append (text, "~0");
    else if (*c == '/')
      g_string_append (text, "~1");
    else
      g_string_append_c (text, *c);
  }
}

/* "/parts/0/blocks/3"; "" for the root. */
static char *
pointer_of (const LapPath *path)
{
  GString *text = g_string_new (NULL);

  append (text, path);
  return g_string_free (text, FALSE);
}

void
lap_path_error (GError **error, const LapPath *path, const char *format, ...)
{
  g_autofree char *pointer = pointer_of (path);
  g_autofree char *message = NULL;
  va_list args;

  va_start (args, format);
  message = g_strdup_vprintf (format, args);
  va_end (args);
  lap_error_at (error, pointer, "%s", message);
}
