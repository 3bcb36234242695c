/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Papers a sheet is printed on, and what the user asks of a sheet. A LapSheetOptions is a plain value; {0} is a sound
 * one: A4 upright in colour with everything shown.
 */
#pragma once

#include "base/words.h"
#include "model/when.h"

G_BEGIN_DECLS

typedef enum {
  LAP_PAPER_A4, LAP_PAPER_A3, LAP_PAPER_A2, LAP_PAPER_A5, LAP_PAPER_LETTER, LAP_PAPER_TABLOID,
} LapPaper;

typedef enum { LAP_INK_COLOUR, LAP_INK_ONE, LAP_INK_OUTLINE } LapInk;
typedef enum { LAP_DIRECTION_AUTO, LAP_DIRECTION_LTR, LAP_DIRECTION_RTL } LapDirection;

extern const LapWords lap_papers, lap_inks;

/* What is left out, so that 0 shows everything that is on at first: bits over lap_sheet_things. The safety words are on
 * every sheet. */
typedef enum {
  LAP_HIDE_FIGURES = 1 << 0,
  LAP_HIDE_OPTIONS = 1 << 1, /* easier and harder */
  LAP_HIDE_DETAILS = 1 << 2, /* weight, kit, repetitions, sides */
  LAP_HIDE_CODE    = 1 << 3, /* the square that leads to the session's link */
  LAP_HIDE_CAMERA  = 1 << 4,
  LAP_HIDE_BALANCE = 1 << 5, /* the chart of what the main part works */
} LapHide;

extern const LapWords lap_sheet_things;

typedef struct {
  LapPaper     paper;
  gboolean     landscape;
  LapInk       ink;
  LapDirection direction; /* automatic: the way its title is read */
  LapHide      hide;
  gboolean     body;      /* poster: the regions each exercise works, on a body from the front and from the back */
  gboolean     unfolded;  /* running order: each round in rows of its own, in order of time */
  LapDay       first_day; /* week: what it begins with, where it has no dates */
  gboolean     by_room;   /* week: a page for each room */
  guint        cards;     /* on a sheet of station cards: 1, 2 or 4; 0 = as suits the paper */
  double       distance;  /* poster: metres from which each name is read; 0 = 3 m for A3 and in proportion */
  const char  *date;      /* the version that hangs on the wall: a day, as it is to be printed; NULL = none */
} LapSheetOptions;

/* Millimetres, turned as asked. ISO 216 for A; ANSI/ASME Y14.1 A and B for Letter and Tabloid. */
void lap_paper_size (const LapSheetOptions *options,
                     double                *width,
                     double                *height);

/* "Version of 2027-01-31", or NULL without a date. */
char *lap_version_text (const LapSheetOptions *options);

G_END_DECLS
