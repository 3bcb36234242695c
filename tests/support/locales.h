/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Locales for tests, made by localedef(1): no machine has them all.
 *
 * Order of calls: locales_begin() before anything looks for a locale, as GTK does for its own reasons: what the C library
 * didn't find once it never looks for again. Then locales_go() any time. When the program ends they are removed.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

/* Makes each that is named, as "de_DE.UTF-8"; NULL ends them. */
void locales_begin (const char *name,
                    ...) G_GNUC_NULL_TERMINATED;
/* Everything is as in @name, one of them or "C.UTF-8". */
void locales_go    (const char *name);

G_END_DECLS
