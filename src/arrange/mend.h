/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Mends a plan by the remedies of its own checks. The state of a plan is its stops, warnings and notes that aren't
 * kept fine, in that order; each step takes, of all remedies that lower it, the one with the least change, until none
 * does. The state falls with every step, so it ends, and it never makes a new stop.
 */
#pragma once

#include "checks/checks.h"

#include <gio/gio.h>

G_BEGIN_DECLS

typedef struct {
  char *check;   /* the id of the warning it was for */
  char *message; /* what the warning said */
  char *remedy;  /* what was done */
} LapMended;

/* Mends @session itself; it must have been laid out once. @keep_clock leaves out what changes the length. Returns what
 * was done (of LapMended, transfer full), in order; @edits (may be NULL) gets the one group that did it all. Once
 * @cancellable (may be NULL) is cancelled it mends no further. */
GPtrArray *lap_mend        (LapSession   *session,
                            LapCatalogue *builtin,
                            gboolean      keep_clock,
                            GCancellable *cancellable,
                            LapEdits    **edits);
void       lap_mended_free (LapMended    *mended);

G_END_DECLS
