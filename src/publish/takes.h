/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What was filmed: the takes as cues of a player or as a table, and the list to cut by. All on the clock of the
 * film.
 */
#pragma once

#include "publish/formats.h"

G_BEGIN_DECLS

/* @suffix is "vtt": a cue as long as what was taken; or "csv": film,clock,at,exercise,round,mark,over. */
gboolean lap_takes_write    (const LapPublication *what,
                             const char           *suffix,
                             LapOutput            *output,
                             GError              **error);
/* in,out,keep,part,round,block,exercise,mark,over: a row for each shot each time it was played. */
gboolean lap_cut_list_write (const LapPublication *what,
                             const char           *suffix,
                             LapOutput            *output,
                             GError              **error);

G_END_DECLS
