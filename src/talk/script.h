/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The script: what to say when. Around each turn the name and how to set up; in its work the cues one at a time, half
 * way, what is next when 15 s are left, the last ten, the other side where sides change; easier, harder, the third
 * option of who the session is also for, and the fault once, not again in later rounds.
 *
 * Always true: lines stand in the order of their time, no two begin within 2 s, none begins while another is said
 * (a talk with too many words is taken to end with its seconds), and cues keep 2 s of quiet on both sides. What doesn't fit is left
 * out, the least important first. Times and lengths are the same in every locale; texts are translated.
 */
#pragma once

#include "talk/talk.h"

G_BEGIN_DECLS

typedef enum {
  LAP_LINE_TALK, LAP_LINE_NAME, LAP_LINE_SETUP, LAP_LINE_CUE, LAP_LINE_EASIER, LAP_LINE_HARDER, LAP_LINE_ALSO,
  LAP_LINE_FAULT, LAP_LINE_SIDE, LAP_LINE_SET, LAP_LINE_HALF_WAY, LAP_LINE_NEXT, LAP_LINE_LAST_TEN,
} LapLineKind;

extern const LapWords lap_line_kinds;

typedef struct {
  int     start;    /* second on the session clock */
  double  seconds;  /* that saying it takes */
  int     kind;     /* LapLineKind */
  guint16 part, round;
  guint16 block;    /* a line always belongs to one */
  char   *text;     /* translated */
} LapLine;

typedef struct {
  guint    n;
  LapLine *lines;
} LapScript;

LapScript     *lap_script_new  (const LapTalk   *talk);
void           lap_script_free (LapScript       *script);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapScript, lap_script_free)

/* The last line that has begun at @second, or NULL before the first. */
const LapLine *lap_script_at   (const LapScript *script,
                                double           second);

G_END_DECLS
