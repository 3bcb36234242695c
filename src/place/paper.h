/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Papers a sheet is printed on, and what the user asks of a sheet. A LapSheetOptions is a plain value; {0} is a sound
 * one: A4 upright in colour with everything shown.
 */
#pragma once

#include "base/words.h"

G_BEGIN_DECLS

typedef enum {
  LAP_PAPER_A4, LAP_PAPER_A3, LAP_PAPER_A2, LAP_PAPER_A5, LAP_PAPER_LETTER, LAP_PAPER_TABLOID,
} LapPaper;

typedef enum { LAP_INK_COLOUR, LAP_INK_ONE, LAP_INK_OUTLINE } LapInk;
typedef enum { LAP_DIRECTION_AUTO, LAP_DIRECTION_LTR, LAP_DIRECTION_RTL } LapDirection;

extern const LapWords lap_papers, lap_inks;

/* What is left out, so that 0 shows everything that is on at first. */
typedef enum {
  LAP_HIDE_FIGURES = 1 << 0,
  LAP_HIDE_OPTIONS = 1 << 1, /* easier and harder */
  LAP_HIDE_DETAILS = 1 << 2, /* weight, kit, repetitions, sides */
  LAP_HIDE_SAFETY  = 1 << 3,
  LAP_HIDE_CODE    = 1 << 4, /* the square that leads to the session's link */
} LapHide;

typedef struct {
  LapPaper     paper;
  gboolean     landscape;
  LapInk       ink;
  LapDirection direction; /* automatic: the way its title is read */
  LapHide      hide;
} LapSheetOptions;

/* Millimetres, turned as asked. ISO 216 for A; ANSI/ASME Y14.1 A and B for Letter and Tabloid. */
void lap_paper_size (const LapSheetOptions *options,
                     double                *width,
                     double                *height);

G_END_DECLS
