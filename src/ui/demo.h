/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The demos that come with the program. The week of the invented studio has sessions attached: they are copied to the
 * person's own data, once, so that they can be opened and changed like any other file.
 */
#pragma once

#include "ui/document.h"

G_BEGIN_DECLS

/* New documents, without a file. */
LapDocument *lap_demo_session (GError **error);
LapDocument *lap_demo_week    (GError **error);

G_END_DECLS
