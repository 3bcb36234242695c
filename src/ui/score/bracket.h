/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A bracket, or a rest between two, as something that takes the focus and is spoken; the lane draws it. Made for a
 * bracket or for a rest, which have other roles, and bound to one after another of its kind.
 */
#pragma once

#include "place/brackets.h"
#include "ui/score/context.h"

G_BEGIN_DECLS

#define LAP_TYPE_BRACKET_WIDGET (lap_bracket_widget_get_type ())
G_DECLARE_FINAL_TYPE (LapBracketWidget, lap_bracket_widget, LAP, BRACKET_WIDGET, GtkWidget)

GtkWidget        *lap_bracket_widget_new    (LapScoreContext  *context,
                                             gboolean          rest);
/* @bracket NULL: it shows none. */
void              lap_bracket_widget_bind   (LapBracketWidget *widget,
                                             const LapBracket *bracket);
gboolean          lap_bracket_widget_is_rest (LapBracketWidget *widget);
/* As it was bound; its part may stand elsewhere by now. NULL where it shows none. */
const LapBracket *lap_bracket_widget_bracket (LapBracketWidget *widget);
/* The part that it is about, which outlives an edit. */
LapPart          *lap_bracket_widget_part   (LapBracketWidget *widget);

/* What it is, as it is spoken: "Main, round 1 of 2, 9:40, starts at 5:00". Transfer full. */
char             *lap_bracket_words         (LapScoreContext  *context,
                                             const LapBracket *bracket);
/* What drawing its end does. Transfer full. */
char             *lap_bracket_hint          (LapScoreContext  *context,
                                             const LapBracket *bracket);

G_END_DECLS
