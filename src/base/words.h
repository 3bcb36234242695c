/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A closed list of words as files spell them, each with the label people read. An index into the list is the
 * value of the enum beside it, so enum and list stand in one order; a list has at most 32 words, so that a set
 * of them is a bit mask.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

typedef struct {
  const char *id;
  const char *label; /* marked for translation, not yet translated */
} LapWord;

typedef struct {
  const char    *what; /* "a posture": what a word of the list is, for messages */
  const LapWord *words;
  guint          n;
} LapWords;

#define LAP_BIT(i) (1u << (i))

/* The index of @id, or -1. */
int         lap_words_find   (const LapWords     *words,
                              const char         *id);
const char *lap_words_id     (const LapWords     *words,
                              int                 index);
/* Translated. */
const char *lap_words_label  (const LapWords     *words,
                              int                 index);
/* The set of @ids (NULL is the empty set); unknown ones are passed over. */
guint32     lap_words_mask   (const LapWords     *words,
                              const char * const *ids);
/* "A, b and c" of the labels in @mask, translated; "" for none. */
char       *lap_words_join   (const LapWords     *words,
                              guint32             mask);
/* "squat, lunge, …" of all ids, for messages. */
char       *lap_words_all    (const LapWords     *words);

/* "a, b and c" of @items, translated. */
char       *lap_join         (const char * const *items);

/* The candidate with the fewest letters changed from @name, or NULL where none is near (more than a third). */
const char *lap_nearest      (const char         *name,
                              const char * const *candidates);

G_END_DECLS
