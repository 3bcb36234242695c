/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/balance.h"

#include "effort/balance.h"

#include <glib/gi18n-lib.h>

#define COLUMNS 2
#define ROWS    ((LAP_N_REGIONS + COLUMNS - 1) / COLUMNS)
#define ROW     4.2  /* mm from row to row, at scale 1 */
#define HEAD    6.5  /* mm of the heading */
#define LABEL   34.0 /* mm for the name of a region */
#define NUMBER  22.0 /* mm for its seconds */
#define BAR     2.2  /* mm of a bar */

static LapType
type_of (double unit, double cap, LapRole role)
{
  return (LapType) { cap * unit, 1.2, role, LAP_READ_OTHER };
}

double
lap_balance_height (const LapTimeline *timeline, const LapMeasure *measure, double unit)
{
  LapBalance balance;

  lap_balance_of (timeline, LAP_BIT (LAP_PART_MAIN), &balance);
  return balance.work > 0 ? (HEAD + (ROWS + 1) * ROW + 2) * unit : 0;
}

static void
put_text (const LapMeasure *measure, LapPage *page, LapWeight weight, const char *text, const LapType *type, double x,
          double y, double width, double align)
{
  g_autoptr (LapWrap) wrap = lap_wrap_new (measure, weight, text);
  LapType fitted = *type;

  while (lap_wrap_fit (wrap, &fitted, width).lines > 1 && fitted.cap > type->cap / 2)
    fitted.cap *= 0.95;
  lap_wrap_put (wrap, &fitted, page, x, y, width, align);
}

static void
put_region (const LapMeasure *measure, LapPage *page, const LapBalance *b, guint region, int most, double unit, double x,
            double y, double width)
{
  LapType plain = type_of (unit, 1.9, LAP_ROLE_INK), quiet = type_of (unit, 1.7, LAP_ROLE_INK2);
  double room = width - (LABEL + NUMBER) * unit, scale = room / MAX (1, most);
  double hard = b->primary[region] * scale, helps = b->secondary[region] * scale;
  double left = x + LABEL * unit, top = y - 0.2 * unit;
  g_autofree char *seconds = b->secondary[region] > 0
                           ? g_strdup_printf (_("%1$d + %2$d s"), b->primary[region], b->secondary[region])
                           : g_strdup_printf (_("%d s"), b->primary[region]);

  lap_page_begin (page, "P");
  put_text (measure, page, LAP_WEIGHT_PLAIN, lap_words_label (&lap_regions, region), &plain, x, y,
            (LABEL - 2) * unit, 0);
  put_text (measure, page, LAP_WEIGHT_PLAIN, seconds, &quiet, left + room + 2 * unit, y, (NUMBER - 4) * unit, 0);
  lap_page_end (page);
  if (hard > 0)
    lap_page_box (page, left, top, hard, BAR * unit, LAP_ROLE_HARD);
  if (helps > 0) {
    LapMark *box = lap_page_box (page, left + hard, top, helps, BAR * unit, LAP_ROLE_PAPER);

    box->line = LAP_ROLE_WORK;
    box->thick = 0.25 * unit;
  }
}

static char *
ratios_text (const LapBalance *b)
{
  return g_strdup_printf (_("Push %1$d s, pull %2$d s. Front of the legs %3$d s, back %4$d s. Solid works hard, outlined "
                            "helps."), b->push, b->pull, b->front, b->back);
}

void
lap_balance_put (const LapTimeline *timeline, const LapMeasure *measure, LapPage *page, double unit, double x, double y,
                 double width)
{
  LapType head = type_of (unit, 2.9, LAP_ROLE_WORK), quiet = type_of (unit, 1.9, LAP_ROLE_INK2);
  double column = width / COLUMNS;
  g_autofree char *ratios = NULL;
  LapBalance b;
  int most = 0;

  lap_balance_of (timeline, LAP_BIT (LAP_PART_MAIN), &b);
  for (guint r = 0; r < LAP_N_REGIONS; r++)
    most = MAX (most, b.primary[r] + b.secondary[r]);
  ratios = ratios_text (&b);
  lap_page_begin (page, "Sect");
  lap_page_begin (page, "H2");
  put_text (measure, page, LAP_WEIGHT_HEAVY, _("What the main part works"), &head, x, y, width, 0);
  lap_page_end (page);
  for (guint r = 0; r < LAP_N_REGIONS; r++)
    put_region (measure, page, &b, r, most, unit, x + r / ROWS * column, y + (HEAD + r % ROWS * ROW) * unit,
                column - 4 * unit);
  lap_page_begin (page, "P");
  put_text (measure, page, LAP_WEIGHT_PLAIN, ratios, &quiet, x, y + (HEAD + ROWS * ROW) * unit, width, 0);
  lap_page_end (page);
  lap_page_end (page);
}
