/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the window remembers, and the first values of new files: one GSettings for the whole program. A program that
 * runs without its installed schema works, and remembers nothing: settings are then NULL, which everybody here takes.
 */
#pragma once

#include <gio/gio.h>

G_BEGIN_DECLS

/* Transfer none, or NULL. */
GSettings *lap_settings      (void);
/* The part of them that is called @name. Transfer full, or NULL. */
GSettings *lap_settings_child (const char *name);
/* @property of @object follows @key and sets it. Nothing without settings. */
void       lap_settings_bind (const char *key,
                              gpointer    object,
                              const char *property);
/* @key, or @without where there are no settings. Transfer full. */
GVariant  *lap_settings_value (const char *key,
                               GVariant   *without);
/* Remembers @value (floating), where there are settings. */
void       lap_settings_keep (const char *key,
                              GVariant   *value);

G_END_DECLS
