/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A film with transparency, made by ffmpeg of pictures that are shown for as long as a list says.
 */
#pragma once

#include "publish/output.h"

G_BEGIN_DECLS

/* The pictures: @list is a script of ffmpeg's concat demuxer with @n of them, the last of which is shown from second
 * @last, above 0, until @length. */
typedef struct {
  const char *list;
  guint       n;
  double      last, length;
} LapReel;

/* Whether the film @suffix ("mov", "webm") could be made into @output: FALSE with LAP_ERROR_MISSING without ffmpeg,
 * LAP_ERROR_USAGE where @output is no file. */
gboolean lap_encode_can (LapOutput     *output,
                         GError       **error);
/* Makes the film of @reel; @done of all the work is done before. */
gboolean lap_encode     (LapOutput     *output,
                         const char    *suffix,
                         const LapReel *reel,
                         double         done,
                         GError       **error);

G_END_DECLS
