/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "support/locales.h"

#include <gio/gio.h>
#include <locale.h>
#include <stdlib.h>

static char *folder;

static void
make (const char *name)
{
  g_autofree char *path = g_build_filename (folder, name, NULL), *source = g_strndup (name, 5);
  g_autoptr (GError) error = NULL;
  g_autoptr (GSubprocess) run = g_subprocess_new (G_SUBPROCESS_FLAGS_STDOUT_SILENCE | G_SUBPROCESS_FLAGS_STDERR_SILENCE,
                                                  &error, "localedef", "-i", source, "-f", "UTF-8", path, NULL);

  g_assert_no_error (error);
  g_subprocess_wait_check (run, NULL, &error);
  g_assert_no_error (error);
}

static void
remove_folder (void)
{
  char *remove[] = { "rm", "-r", folder, NULL };

  g_assert_true (g_spawn_sync (NULL, remove, NULL, G_SPAWN_SEARCH_PATH, NULL, NULL, NULL, NULL, NULL, NULL));
  g_clear_pointer (&folder, g_free);
}

void
locales_begin (const char *name, ...)
{
  va_list names;

  folder = g_dir_make_tmp ("lapwing-locales-XXXXXX", NULL);
  g_assert_nonnull (folder);
  va_start (names, name);
  for (; name != NULL; name = va_arg (names, const char *))
    make (name);
  va_end (names);
  g_setenv ("LOCPATH", folder, TRUE);
  atexit (remove_folder);
}

void
locales_go (const char *name)
{
  g_assert_nonnull (setlocale (LC_ALL, name));
}
