/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One line above a document that is in no usual state, with what can be done: it was recovered, somebody else wrote
 * its file, or a newer program did. Hidden otherwise.
 */
#pragma once

#include "ui/document.h"

#include <adwaita.h>

G_BEGIN_DECLS

#define LAP_TYPE_NOTICE (lap_notice_get_type ())
G_DECLARE_FINAL_TYPE (LapNotice, lap_notice, LAP, NOTICE, AdwBin)

/* Once, before it is shown. */
void lap_notice_set_document (LapNotice   *notice,
                              LapDocument *document);

G_END_DECLS
