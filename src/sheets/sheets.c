/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheets/sheets.h"

#include "place/cards.h"
#include "place/poster.h"
#include "place/running-order.h"
#include "sheets/measure.h"

#include <glib/gi18n-lib.h>

static const LapSheet sheets[] = {
  { "poster", N_("Poster"), N_("for the wall"), lap_poster_build },
  { "stations", N_("Station cards"), N_("one at each place in the room"), lap_cards_build },
  { "running-order", N_("Running order"), N_("for the coach’s hand"), lap_running_order_build },
};

guint
lap_sheets_n (void)
{
  return G_N_ELEMENTS (sheets);
}

const LapSheet *
lap_sheets_nth (guint n)
{
  return &sheets[n];
}

const LapSheet *
lap_sheets_find (const char *id)
{
  for (guint i = 0; i < G_N_ELEMENTS (sheets); i++)
    if (g_str_equal (sheets[i].id, id))
      return &sheets[i];
  return NULL;
}

static gboolean
is_mirrored (const LapTimeline *timeline, const LapSheetOptions *options, const LapMeasure *measure)
{
  if (options->direction == LAP_DIRECTION_AUTO)
    return measure->rtl (measure->data, timeline->session->title);
  return options->direction == LAP_DIRECTION_RTL;
}

LapPages *
lap_sheet_build (const LapSheet *sheet, const LapTimeline *timeline, const LapSheetOptions *options)
{
  g_autoptr (LapPangoMeasure) pango = lap_pango_measure_new ();
  const LapMeasure *measure = lap_pango_measure_table (pango);
  LapPages *pages = sheet->build (timeline, options, measure);

  if (is_mirrored (timeline, options, measure))
    for (guint i = 0; i < lap_pages_n (pages); i++)
      lap_page_mirror (lap_pages_nth (pages, i));
  return pages;
}

GBytes *
lap_sheet_print (const LapSheet *sheet, const LapTimeline *timeline, const LapSheetOptions *options, GError **error)
{
  g_autoptr (LapPages) pages = lap_sheet_build (sheet, timeline, options);

  return lap_pages_print (pages, options->ink, NULL, error);
}
