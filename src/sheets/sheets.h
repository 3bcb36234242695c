/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The sheets this build can print. A sheet is one layout in place/ and one row here; the command, the window and the
 * tests go through the rows.
 *
 * Calling order: find a row, build its page list (kept by a preview, which asks the same list for the distances it
 * reads from), or print it straight to the bytes of a PDF. Same timeline and options, same bytes on one machine.
 */
#pragma once

#include "place/page.h"
#include "place/paper.h"
#include "timeline/timeline.h"

#include <gio/gio.h>

G_BEGIN_DECLS

typedef struct {
  const char *id;
  const char *title;   /* marked for translation, not yet translated */
  const char *purpose; /* likewise: where it hangs or who holds it */
  LapPages *(*build) (const LapTimeline *timeline, const LapSheetOptions *options, const LapMeasure *measure);
} LapSheet;

guint           lap_sheets_n     (void);
const LapSheet *lap_sheets_nth   (guint n);
/* NULL where no sheet has that id. */
const LapSheet *lap_sheets_find  (const char *id);

/* The page list, measured in the platform's faces. Transfer full. */
LapPages       *lap_sheet_build  (const LapSheet        *sheet,
                                  const LapTimeline     *timeline,
                                  const LapSheetOptions *options);

/* The PDF: searchable, fonts embedded, tagged, outlined. Its date is SOURCE_DATE_EPOCH or a constant. */
GBytes         *lap_sheet_print  (const LapSheet        *sheet,
                                  const LapTimeline     *timeline,
                                  const LapSheetOptions *options,
                                  GError               **error);

/* Who waits for the pages to be painted: told after each what share of them is, and asked whether he still does. */
typedef struct {
  GCancellable *cancellable;
  void        (*tell) (double share, gpointer data);
  gpointer      data;
} LapSheetWatch;

/* A page list as PDF. @watch may be NULL; NULL with G_IO_ERROR_CANCELLED where it doesn't wait any more. */
GBytes         *lap_pages_print  (const LapPages        *pages,
                                  LapInk                 ink,
                                  const LapSheetWatch   *watch,
                                  GError               **error);
/* The same in pieces of @paper that overlap, with cut marks and the name of each piece. */
GBytes         *lap_pages_tile   (const LapPages        *pages,
                                  LapInk                 ink,
                                  LapPaper               paper,
                                  const LapSheetWatch   *watch,
                                  GError               **error);

G_END_DECLS
