/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A brief: what a session is to be composed for. A plain value, all of it optional.
 */
#pragma once

#include "model/kit.h"
#include "model/session.h"

G_BEGIN_DECLS

typedef struct {
  char      *format;   /* "lapwing-brief" */
  int        version;
  int        minutes;  /* 3–720 */
  int        work, rest; /* seconds; 0 work and -1 rest = what suits the level */
  int        rounds;   /* 0 = what suits the time */
  int        level;    /* LapLevel */
  char     **focus;    /* regions */
  LapKit    *kit;
  double     space_width, space_length;
  gboolean   quiet;
  char     **without;  /* care words */
  char     **barred;   /* ids; the member "not" */
  int        seed;
  GPtrArray *extras;
} LapBrief;

#define LAP_BRIEF_VERSION 1

LapBrief *lap_brief_new  (void);
void      lap_brief_free (LapBrief      *brief);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapBrief, lap_brief_free)

/* NULL with LAP_ERROR_INVALID about a pointer. */
LapBrief *lap_brief_read (JsonNode      *node,
                          GError       **error);

G_END_DECLS
