/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A small document without a window or a file, and a change of it.
 */
#pragma once

#include "ui/document.h"

LapDocument *plan_document (void);
void         plan_rename   (LapDocument *document,
                            const char  *title);
