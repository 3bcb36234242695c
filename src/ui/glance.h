/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A session or a week at a glance, as the index keeps it: title, length, open warnings, shape.
 *
 * A shape is a letter a column, from left to right: 'a' to 'j' by the height of the column, in capitals where it is of
 * a main part. Of a session a column is the mean effort of an equal share of its time; of a week it is a day, by its
 * classes beside those of the fullest day.
 */
#pragma once

#include "store/index.h"

G_BEGIN_DECLS

#define LAP_SHAPE_COLUMNS 36
#define LAP_SHAPE_HEIGHTS 10

/* A LapIndexLook. The warnings of a week are those of every week with the sessions as they are now; when one of them
 * changes, the week is counted again only after it has changed itself. */
void lap_glance (const char    *path,
                 GBytes        *bytes,
                 LapIndexFacts *facts);

G_END_DECLS
