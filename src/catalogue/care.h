/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The kind of an exercise's member `care`; only exercise.c uses it.
 */
#pragma once

#include "catalogue/exercise.h"

G_BEGIN_DECLS

/* A slot that holds a LapCares. */
extern const LapKind lap_kind_cares;

GType lap_cares_get_type (void);

G_END_DECLS
