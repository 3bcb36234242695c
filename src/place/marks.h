/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where the numbered marks of warnings stand on the time axis: over the middle of what a warning is about, or at its
 * end, and whole: those at either end of the session stand inside it. Marks that would overlap are one, which stands
 * where the first of them does and knows them all; what is wider than that of one follows it in time.
 *
 * Which marks are one depends on the content and the zoom, never on where the view begins. Only the first
 * LAP_MARKS_MOST warnings have marks: as many as the list shows.
 */
#pragma once

#include "checks/checks.h"
#include "place/axis.h"

G_BEGIN_DECLS

#define LAP_MARKS_MOST 500
#define LAP_NO_WARNING G_MAXUINT

typedef struct {
  int   x;     /* px of the view, its middle */
  int   width; /* px */
  guint first; /* warning of the checkup, from 0 */
  guint n;     /* warnings that it stands for */
} LapMarkPlace;

typedef struct {
  guint warning, mark;
} LapMarkMember;

typedef struct {
  GArray *places;  /* LapMarkPlace, the most severe first */
  GArray *members; /* LapMarkMember, in the order of warnings */
} LapMarks;

/* Whether a warning has a mark here. */
typedef gboolean (*LapMarkFilter) (const LapWarning *warning, gconstpointer data);

/* Marks are @size px wide, @wide those that stand for several, and stand at the share @at of what a warning is about:
 * 0.5 its middle, 1 its end. @filter may be NULL: all. */
LapMarks *lap_marks_new  (const LapCheckup *checkup,
                          const LapAxis    *axis,
                          int               size,
                          int               wide,
                          double            at,
                          LapMarkFilter     filter,
                          gconstpointer     data);
void      lap_marks_free (LapMarks         *marks);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapMarks, lap_marks_free)

/* The mark at @x, an index into places, or LAP_NO_WARNING. */
guint     lap_marks_at   (const LapMarks   *marks,
                          double            x);

G_END_DECLS
