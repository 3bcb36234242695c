/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheets/week-sheets.h"

#include "place/changes-sheet.h"
#include "place/week-sheet.h"
#include "sheets/measure.h"

#include <glib/gi18n-lib.h>

static const LapWeekSheet sheets[] = {
  { "week", N_("Week"), N_("the timetable for the wall"), FALSE, LAP_WEEK_SHEET_AIM,
    lap_week_sheet_build },
  { "changes", N_("Changes"), N_("for the door: what is different in a week"), TRUE, 0, lap_changes_sheet_build },
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
lap_week_sheet_pages (const LapWeekSheet *sheet, const LapWeekSubject *subject, const LapSheetOptions *options)
{
  g_autoptr (LapPangoMeasure) pango = lap_pango_measure_new ();
  const LapMeasure *measure = lap_pango_measure_table (pango);
  LapPages *pages = sheet->build (subject, options, measure);
  gboolean mirrored = options->direction == LAP_DIRECTION_RTL;

  if (options->direction == LAP_DIRECTION_AUTO)
    mirrored = measure->rtl (measure->data, subject->week->title);
  for (guint i = 0; mirrored && i < lap_pages_n (pages); i++)
    lap_page_mirror (lap_pages_nth (pages, i));
  return pages;
}

static double
area (const LapSheetOptions *options)
{
  double width, height;

  lap_paper_size (options, &width, &height);
  return width * height;
}

static gboolean
reads_from (const LapWeekSheet *sheet, const LapWeekSubject *subject, const LapSheetOptions *options, double metres)
{
  g_autoptr (LapPages) pages = lap_week_sheet_pages (sheet, subject, options);

  return lap_pages_cap (pages, LAP_READ_NAME) >= lap_cap_height (metres, LAP_ARC_READABLE);
}

gboolean
lap_week_sheet_larger (const LapWeekSheet *sheet, const LapWeekSubject *subject, const LapSheetOptions *options,
                       LapSheetOptions *larger)
{
  static const LapPaper papers[] = { LAP_PAPER_A4, LAP_PAPER_A3, LAP_PAPER_A2 };

  if (sheet->aim == 0 || reads_from (sheet, subject, options, sheet->aim))
    return FALSE;
  *larger = *options;
  larger->by_room = TRUE;
  if (!options->by_room && reads_from (sheet, subject, larger, sheet->aim))
    return TRUE;
  for (guint i = 0; i < G_N_ELEMENTS (papers); i++) {
    larger->paper = papers[i];
    for (int by_room = 0; by_room < 2 && area (larger) > 1.01 * area (options); by_room++) {
      larger->by_room = by_room || options->by_room;
      if (reads_from (sheet, subject, larger, sheet->aim))
        return TRUE;
    }
  }
  return FALSE;
}

char *
lap_week_sheet_words (const LapSheetOptions *options)
{
  const char *paper = lap_words_label (&lap_papers, options->paper);

  /* Translators: a paper: "A3, a page for each room". */
  return options->by_room ? g_strdup_printf (_("%s, a page for each room"), paper) : g_strdup (paper);
}
