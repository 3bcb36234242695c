/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How wide text is. The layouts ask through this table, so that they need no drawing library and a test can answer
 * with a face of its own. All sizes are for an em of 1 mm and grow in proportion: the painter draws without hinting.
 */
#pragma once

#include <glib.h>

G_BEGIN_DECLS

typedef enum { LAP_WEIGHT_PLAIN, LAP_WEIGHT_STRONG, LAP_WEIGHT_HEAVY, LAP_N_WEIGHTS } LapWeight;

typedef struct {
  double cap;     /* height of a capital */
  double ascent;  /* of the tallest small letter or digit */
  double descent; /* of the deepest letter, positive */
} LapFont;

typedef struct {
  double         (*width) (gpointer data, LapWeight weight, const char *text, gssize bytes);
  const LapFont *(*font)  (gpointer data, LapWeight weight);
  /* Whether the first strong letter of @text runs from right to left. */
  gboolean       (*rtl)   (gpointer data, const char *text);
  gpointer       data;
} LapMeasure;

G_END_DECLS
