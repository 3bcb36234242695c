/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A row in which words are typed that take more than a line: a title, and under it the words, wrapped, in one paragraph.
 * Enter, or leaving the row, applies them: "apply". "changed" is emitted for whatever is typed or set.
 */
#pragma once

#include <adwaita.h>

G_BEGIN_DECLS

#define LAP_TYPE_WORDS_ROW (lap_words_row_get_type ())
G_DECLARE_FINAL_TYPE (LapWordsRow, lap_words_row, LAP, WORDS_ROW, AdwPreferencesRow)

/* Transfer full. */
char *lap_words_row_get_text (LapWordsRow *row);
void  lap_words_row_set_text (LapWordsRow *row,
                              const char  *text);

G_END_DECLS
