/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/document-sheets.h"

#include "base/customs.h"
#include "sheets/week-sheets.h"
#include "ui/week-dates.h"

#define MOST 8

guint
lap_document_sheets_n (LapDocument *document)
{
  return lap_document_week (document) != NULL ? lap_week_sheets_n () : lap_sheets_n ();
}

const LapSheet *
lap_document_sheets_nth (LapDocument *document, guint n)
{
  static LapSheet rows[MOST];

  if (lap_document_week (document) == NULL)
    return lap_sheets_nth (n);
  for (guint i = 0; i < MIN (MOST, lap_week_sheets_n ()); i++) {
    const LapWeekSheet *sheet = lap_week_sheets_nth (i);

    rows[i] = (LapSheet) { sheet->id, sheet->title, sheet->purpose, NULL };
  }
  return &rows[n];
}

/* The row of a week's @sheet, NULL of a session, and in @subject what it is about. */
static const LapWeekSheet *
week_sheet (LapDocument *document, const LapSheet *sheet, LapWeekSubject *subject)
{
  const LapWeekSheet *row = lap_document_week (document) != NULL ? lap_week_sheets_find (sheet->id) : NULL;

  *subject = (LapWeekSubject) { lap_document_week (document), lap_document_date (document),
                                lap_document_attachments (document) };
  if (row != NULL && row->dated && subject->date == 0)
    subject->date = lap_date_week (lap_today (), lap_customs ().first_day);
  return row;
}

LapPages *
lap_document_pages (LapDocument *document, const LapSheet *sheet, const LapSheetOptions *options)
{
  LapWeekSubject subject;
  const LapWeekSheet *row = week_sheet (document, sheet, &subject);
  LapSheetOptions here = *options;

  here.first_day = lap_customs ().first_day;
  return row != NULL ? lap_week_sheet_pages (row, &subject, &here)
                     : lap_sheet_build (sheet, lap_document_timeline (document), options);
}

gboolean
lap_document_larger (LapDocument *document, const LapSheet *sheet, const LapSheetOptions *options,
                     LapSheetOptions *larger)
{
  LapWeekSubject subject;
  const LapWeekSheet *row = week_sheet (document, sheet, &subject);
  LapSheetOptions here = *options;

  here.first_day = lap_customs ().first_day;
  return row != NULL && lap_week_sheet_larger (row, &subject, &here, larger);
}
