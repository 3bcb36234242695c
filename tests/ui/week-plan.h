/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A small week: two rooms, two coaches, three classes, of which one has no place yet and one names a session.
 */
#pragma once

#include "ui/document.h"

/* In its file. */
extern const char week_text[];

/* The document of it, without a file. */
LapDocument *week_document  (void);
/* Puts the session that it names, and that takes @seconds, where a week at @week looks for it. */
void         week_put_session (const char *week,
                               int         seconds);
/* The class called @id. */
LapClass    *week_class     (LapDocument *document,
                             const char  *id);
/* Whether the checkup now says @check. */
gboolean     week_says      (LapDocument *document,
                             const char  *check);
