/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The first page of the poster as a picture: PNG of 150 dots an inch, or SVG.
 */
#pragma once

#include "publish/formats.h"

G_BEGIN_DECLS

/* @suffix is "png" or "svg". */
gboolean lap_page_write (const LapPublication *what,
                         const char           *suffix,
                         LapOutput            *output,
                         GError              **error);

G_END_DECLS
