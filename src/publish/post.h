/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a session is, in plain text, to post beside it: its title, how long and with what, what is done, the
 * chapters, and the words of safety. Nothing about effort or energy, which are estimates for a group.
 */
#pragma once

#include "publish/formats.h"

G_BEGIN_DECLS

gboolean lap_post_write (const LapPublication *what,
                         const char           *suffix,
                         LapOutput            *output,
                         GError              **error);

G_END_DECLS
