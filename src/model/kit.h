/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The kit of a session: a list of words (plenty of each), or an object of counts. A value: an edit sets a copy.
 */
#pragma once

#include "base/record.h"
#include "catalogue/vocabulary.h"

G_BEGIN_DECLS

typedef struct {
  guint32    mask;              /* what is there */
  gboolean   counted;
  int        counts[LAP_N_KIT]; /* when counted */
  guint8     order[LAP_N_KIT];  /* as the file lists them */
  guint      n;
  GPtrArray *extras;
} LapKit;

#define LAP_TYPE_KIT (lap_kit_get_type ())
GType   lap_kit_get_type (void);
LapKit *lap_kit_new      (void);
LapKit *lap_kit_copy     (const LapKit *kit);
void    lap_kit_free     (LapKit       *kit);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapKit, lap_kit_free)

/* Puts @word in (count when counted), or out with @count 0, in a value that isn't shared yet. */
void    lap_kit_set      (LapKit       *kit,
                          LapKitWord    word,
                          int           count);
/* How many of @word there are: G_MAXINT for plenty. @kit may be NULL: nothing. A pair of dumbbells holds two single
 * ones. */
int     lap_kit_count    (const LapKit *kit,
                          LapKitWord    word);
/* What is there, single dumbbells of pairs included. */
guint32 lap_kit_mask     (const LapKit *kit);

/* A slot that holds a LapKit. */
extern const LapKind lap_kind_kit;

G_END_DECLS
