/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Blocks on a clipboard: a small session of one part that holds them, as the bytes of its file. So they are text that
 * anybody can read, keep and send, and what is pasted may be a whole session as well.
 */
#pragma once

#include "model/session.h"

G_BEGIN_DECLS

#define LAP_CLIP_MIME "application/vnd.lapwing.session+json"

/* @blocks of @session, with those of its own exercises that they name. */
GBytes    *lap_clip_write (LapSession  *session,
                           GPtrArray   *blocks,
                           const char  *title);
/* The blocks of all parts in @bytes, without an owner, and *@exercises the session's own ones (of LapExercise, NULL
 * without). Both transfer full. NULL with one line of @error where the bytes aren't a session, or have no block. */
GPtrArray *lap_clip_read  (GBytes      *bytes,
                           GPtrArray  **exercises,
                           GError     **error);

G_END_DECLS
