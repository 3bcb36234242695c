/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A session from a brief: exercises chosen and put in order, with a warm-up and a cool-down for what works.
 * Deterministic: the same brief gives the same session.
 */
#pragma once

#include "catalogue/catalogue.h"
#include "model/brief.h"

G_BEGIN_DECLS

/* NULL with LAP_ERROR_CONFLICT naming the wishes that can't all be met. */
LapSession *lap_compose (const LapBrief *brief,
                         LapCatalogue   *builtin,
                         GError        **error);

G_END_DECLS
