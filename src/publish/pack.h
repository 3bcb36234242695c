/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Everything for the day of filming in one folder, each file under a name that says what it is. What needs a part
 * of the system that isn't there is left out, and `missing.txt` says what and why.
 */
#pragma once

#include "publish/formats.h"

G_BEGIN_DECLS

gboolean lap_pack_write (const LapPublication *what,
                         const char           *suffix,
                         LapOutput            *output,
                         GError              **error);

G_END_DECLS
