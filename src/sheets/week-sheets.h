/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The sheets of a week that this build can print: what sheets.h is for a session. A date chooses the week that it lies
 * in, with what is different then; 0 is the week as it always is.
 *
 * Calling order: find a row, build its page list, print that with lap_pages_print() or lap_pages_tile().
 */
#pragma once

#include "place/page.h"
#include "place/paper.h"
#include "place/week-subject.h"

G_BEGIN_DECLS

typedef struct {
  const char *id;
  const char *title;   /* marked for translation, not yet translated */
  const char *purpose; /* likewise: where it hangs */
  gboolean    dated;   /* it makes no sense without a date */
  double      aim;     /* metres that its names are to be read from; 0 = from where they happen to be */
  LapPages *(*build) (const LapWeekSubject *subject, const LapSheetOptions *options, const LapMeasure *measure);
} LapWeekSheet;

guint               lap_week_sheets_n    (void);
const LapWeekSheet *lap_week_sheets_nth  (guint                  n);
/* NULL where no sheet of a week has that id. */
const LapWeekSheet *lap_week_sheets_find (const char            *id);

/* The page list, measured in the platform's faces. Transfer full. */
LapPages           *lap_week_sheet_pages (const LapWeekSheet    *sheet,
                                          const LapWeekSubject  *subject,
                                          const LapSheetOptions *options);

/* What to ask for instead of @options so that the names of @sheet read from where they are to: the smallest paper that
 * does it, a page for each room or not. FALSE where they read from there as it is, or on no paper. */
gboolean            lap_week_sheet_larger (const LapWeekSheet    *sheet,
                                          const LapWeekSubject  *subject,
                                          const LapSheetOptions *options,
                                          LapSheetOptions       *larger);

/* "A3, a page for each room". Free with g_free(). */
char               *lap_week_sheet_words (const LapSheetOptions *options);

G_END_DECLS
