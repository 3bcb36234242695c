/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Text broken into lines. A LapWrap is measured once, at an em of 1 mm, and asked many times how many lines it takes
 * at a size and width: a layout may try hundreds of sizes without measuring again.
 *
 * Always true: no letter is lost; white space of any length counts as one blank. A line breaks at white space and
 * after a hyphen or slash; a word that is wider than the line is broken inside, with a hyphen where its script has one.
 * Where the first word has no room beside an indent, nothing stands in the first line.
 */
#pragma once

#include "place/page.h"

G_BEGIN_DECLS

typedef struct _LapWrap LapWrap;

LapWrap *lap_wrap_new    (const LapMeasure *measure,
                          LapWeight         weight,
                          const char       *text);
void     lap_wrap_free   (LapWrap          *wrap);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapWrap, lap_wrap_free)

/* Width of its widest word for capitals of 1 mm, mm. */
double   lap_wrap_longest (const LapWrap   *wrap);

/* How a line of text looks. */
typedef struct {
  double  cap;     /* height of a capital, mm */
  double  leading; /* from line to line, in ems */
  LapRole role;
  LapRead read;
  double  indent;  /* at the start of the first line, mm: room for something else that stands there */
} LapType;

typedef struct {
  guint  lines;
  guint  broken; /* words broken inside */
  double width;  /* of the widest line, mm */
  double last;   /* of the last line, mm */
  double height; /* from the top of the first capital to the bottom of the last line's deepest letter, mm */
} LapFit;

LapFit   lap_wrap_fit    (LapWrap          *wrap,
                          const LapType    *type,
                          double            width);

/* Places the lines with the top of the first capital at @y; @align is 0 at the start of the width, 0.5 in the middle,
 * 1 at its end. Returns the height, as lap_wrap_fit() says it. */
double   lap_wrap_put    (LapWrap          *wrap,
                          const LapType    *type,
                          LapPage          *page,
                          double            x,
                          double            y,
                          double            width,
                          double            align);

/* From one line to the next, mm. */
double   lap_wrap_pitch   (const LapWrap    *wrap,
                           const LapType    *type);

/* @type with the largest capitals, up to its own and not below @least, with which the text stays within @width and
 * @height and no word is broken; @least where none do. */
LapType  lap_wrap_largest (LapWrap         *wrap,
                           LapType          type,
                           double           width,
                           double           height,
                           double           least);

/* A text that is placed once. */
double   lap_text_put    (const LapMeasure *measure,
                          LapWeight         weight,
                          const char       *text,
                          const LapType    *type,
                          LapPage          *page,
                          double            x,
                          double            y,
                          double            width,
                          double            align);

G_END_DECLS
