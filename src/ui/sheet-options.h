/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is asked of each sheet in the window, remembered from one time to the next. A LapSheetChoice is a plain value.
 */
#pragma once

#include "sheets/sheets.h"

G_BEGIN_DECLS

typedef struct {
  LapSheetOptions options; /* its date is NULL: see `dated` */
  gboolean        dated;   /* the day it is printed stands on it */
  int             pieces;  /* paper of the pieces it is printed in, LapPaper; -1 = in one */
} LapSheetChoice;

/* The remembered choice for @sheet, else what suits it: a poster on A3, a week on A3 on its side, the others on A4. */
LapSheetChoice lap_sheet_choice_load  (const LapSheet       *sheet);
void           lap_sheet_choice_keep  (const LapSheet       *sheet,
                                       const LapSheetChoice *choice);

/* The options with today's date in @date where it is wanted: as long as @date lives. */
LapSheetOptions lap_sheet_choice_options (const LapSheetChoice *choice,
                                          char                **date);

G_END_DECLS
