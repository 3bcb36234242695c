/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A folder of its own for a test, and somebody without rights over it.
 */
#pragma once

#include <glib.h>

/* A new empty folder that everyone may enter. Transfer full. */
char *folder_new (void);

/* Takes it away with all that is in it. */
void  folder_remove (char *folder);

/* How many entries it has. */
guint folder_count (const char *folder);

void  put_text (const char *path, const char *text);
void  assert_text (const char *path, const char *text);

/* Calls @ask in a process of its own as a user whom the rights of files bind: nobody where the test runs as
 * root, else the one it runs as. What @ask returns, 0 to 100, is the exit status of that process. */
int   ask_without_rights (int (*ask) (const char *path), const char *path);
