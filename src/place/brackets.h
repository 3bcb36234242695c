/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The brackets over the score: one for each part and each of its rounds, and the rests between rounds and after a
 * part, which are held by what would move them even where there is none. Made once a score; where they lie follows
 * from the axis.
 *
 * Always true: they stand in the order in which keys go through them: a part, its rounds with the rests between, the
 * rest after it. A part that takes no time has none.
 */
#pragma once

#include "place/score.h"

G_BEGIN_DECLS

typedef enum { LAP_BRACKET_PART, LAP_BRACKET_ROUND, LAP_BRACKET_BETWEEN, LAP_BRACKET_AFTER } LapBracketKind;

typedef struct {
  int     start, end;  /* seconds; a rest of none starts where it ends */
  guint16 part, round; /* round: its own, or the one that ends where the rest begins; 0 of a part and after it */
  guint8  kind;        /* LapBracketKind */
  guint8  ends;        /* its end is that of its part, where rounds are added and taken */
} LapBracket;

typedef struct {
  guint       n;
  LapBracket *all;
} LapBrackets;

#define LAP_NO_BRACKET   G_MAXUINT
#define LAP_BRACKET_GRIP 8 /* px of an end, and the least of a rest */

LapBrackets *lap_brackets_new  (const LapScore    *score);
void         lap_brackets_free (LapBrackets       *brackets);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapBrackets, lap_brackets_free)

/* Parts and the rests after them are above their rounds. */
gboolean     lap_bracket_is_upper (const LapBracket *bracket);
gboolean     lap_bracket_is_rest  (const LapBracket *bracket);

/* The brackets among which are all that touch the view, with few others: from *@first to before *@end. */
void         lap_brackets_visible (const LapBrackets *brackets,
                                   const LapAxis     *axis,
                                   guint             *first,
                                   guint             *end);

/* Where a bracket lies in the view; a rest is never thinner than the grip. */
typedef struct { int x, width; } LapBracketPlace;

LapBracketPlace lap_bracket_place (const LapBracket *bracket,
                                   const LapAxis    *axis);
/* Whether its end can be drawn: not where it is folded, for there px say nothing of seconds. */
gboolean     lap_bracket_is_open  (const LapBracket *bracket,
                                   const LapAxis    *axis);
/* Whether bracket @index is large enough to be a thing of its own; a rest is where the bracket before it is. */
gboolean     lap_brackets_are_apart (const LapBrackets *brackets,
                                     const LapAxis     *axis,
                                     guint              index);
/* The bracket at @x of the upper or the lower row, rests before others, or LAP_NO_BRACKET; @at_end says whether @x is
 * on an end that can be drawn, of a rest anywhere. */
guint        lap_brackets_hit     (const LapBrackets *brackets,
                                   const LapAxis     *axis,
                                   double             x,
                                   gboolean           upper,
                                   gboolean          *at_end);
/* The next bracket in the same row, @by = 1 forward or -1 back, or LAP_NO_BRACKET. */
guint        lap_brackets_step    (const LapBrackets *brackets,
                                   guint              from,
                                   int                by);
/* The bracket of @part that is of @kind and @round, or LAP_NO_BRACKET. */
guint        lap_brackets_find    (const LapBrackets *brackets,
                                   LapBracketKind     kind,
                                   guint              part,
                                   guint              round);
/* The seconds that one more round of @part takes, the rest before it included. */
double       lap_brackets_round_seconds (const LapScore *score,
                                         guint           part);

G_END_DECLS
