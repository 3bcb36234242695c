/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheets/week-sheets.h"

#include "place/changes-sheet.h"
#include "place/week-sheet.h"
#include "sheets/measure.h"

#include <glib/gi18n-lib.h>

static const LapWeekSheet sheets[] = {
  { "week", N_("Week"), N_("the timetable for the wall"), FALSE, lap_week_sheet_build },
  { "changes", N_("Changes"), N_("for the door: what is different in a week"), TRUE, lap_changes_sheet_build },
};

guint
lap_week_sheets_n (void)
{
  return G_N_ELEMENTS (sheets);
}

const LapWeekSheet *
lap_week_sheets_nth (guint n)
{
  return &sheets[n];
}

const LapWeekSheet *
lap_week_sheets_find (const char *id)
{
  for (guint i = 0; i < G_N_ELEMENTS (sheets); i++)
    if (g_str_equal (sheets[i].id, id))
      return &sheets[i];
  return NULL;
}

LapPages *
lap_week_sheet_pages (const LapWeekSheet *sheet, const LapWeek *week, int date, const LapSheetOptions *options)
{
  g_autoptr (LapPangoMeasure) pango = lap_pango_measure_new ();
  const LapMeasure *measure = lap_pango_measure_table (pango);
  LapPages *pages = sheet->build (week, date, options, measure);
  gboolean mirrored = options->direction == LAP_DIRECTION_RTL;

  if (options->direction == LAP_DIRECTION_AUTO)
    mirrored = measure->rtl (measure->data, week->title);
  for (guint i = 0; mirrored && i < lap_pages_n (pages); i++)
    lap_page_mirror (lap_pages_nth (pages, i));
  return pages;
}
