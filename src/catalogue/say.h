/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The words of an exercise. A block may carry its own; a member it leaves out (NULL) is the exercise's.
 * A LapSay is a value: copied, never changed in place once shared.
 */
#pragma once

#include "base/record.h"

G_BEGIN_DECLS

typedef struct {
  char      *setup;
  char     **cues; /* most important first */
  char      *fault;
  char      *easier;
  char      *harder;
  guint64    present;
  GPtrArray *extras;
} LapSay;

#define LAP_TYPE_SAY (lap_say_get_type ())
GType   lap_say_get_type (void);
LapSay *lap_say_new      (void);
LapSay *lap_say_copy     (const LapSay *say);
void    lap_say_free     (LapSay *say);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapSay, lap_say_free)

/* The rows of a LapSay, in file order; the bits of `present` follow them. */
extern const LapRecord lap_say_record;
enum { LAP_SAY_SETUP, LAP_SAY_CUES, LAP_SAY_FAULT, LAP_SAY_EASIER, LAP_SAY_HARDER, LAP_N_SAY };

/* What @say (may be NULL) has for @member, cues with @between between them; @translate what a catalogue says, not what
 * somebody wrote. NULL where it has nothing. Transfer full. */
char   *lap_say_words    (const LapSay *say,
                          guint         member,
                          const char   *between,
                          gboolean      translate);

/* A slot that holds a LapSay. */
extern const LapKind lap_kind_say;

G_END_DECLS
