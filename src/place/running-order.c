/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/running-order.h"

#include "place/balance.h"
#include "place/camera-plan.h"
#include "place/order-rows.h"
#include "place/safety.h"

#include <glib/gi18n-lib.h>

#define HOURS 1.35 /* how much wider a clock with hours is */

static LapTable *
make_table (LapOrder *o)
{
  static const struct {
    const char *heading;
    double share, wide; /* of the width, upright and on its side */
  } columns[] = {
    [LAP_ORDER_GROUND] = { "", 0.034, 0.024 }, [LAP_ORDER_FILM] = { N_("film"), 0.07, 0.05 },
    [LAP_ORDER_CLOCK] = { N_("clock"), 0.07, 0.05 }, [LAP_ORDER_FIGURE] = { "", 0.075, 0.06 },
    [LAP_ORDER_DO] = { N_("do"), 0.185, 0.17 }, [LAP_ORDER_SAY] = { N_("say in the rest before"), 0, 0 },
    [LAP_ORDER_GOES] = { N_("body goes"), 0.112, 0.095 }, [LAP_ORDER_CAMERA] = { N_("camera"), 0.076, 0.075 },
    [LAP_ORDER_CARE] = { N_("care"), 0.105, 0.1 },
  };
  LapColumn shown[LAP_N_ORDER_COLUMNS];
  LapType heading = { 2.1 * o->unit, 1.2, LAP_ROLE_INK, LAP_READ_OTHER };
  double inner = o->width - 2 * o->margin + 2, left = inner;
  gboolean hours = o->timeline->length + o->timeline->session->lead >= 3600;
  guint n = 0;

  for (guint i = 0; i < LAP_N_ORDER_COLUMNS; i++) {
    gboolean hidden = (i == LAP_ORDER_FILM && o->timeline->session->lead <= 0) ||
                      (i == LAP_ORDER_FIGURE && (o->options->hide & LAP_HIDE_FIGURES)) ||
                      (i == LAP_ORDER_CAMERA && (o->options->hide & LAP_HIDE_CAMERA));

    o->places[i] = hidden ? -1 : (int) n;
    if (hidden)
      continue;
    shown[n].heading = *columns[i].heading != '\0' ? _(columns[i].heading) : "";
    shown[n].width = inner * (o->options->landscape ? columns[i].wide : columns[i].share);
    shown[n].width *= hours && (i == LAP_ORDER_FILM || i == LAP_ORDER_CLOCK) ? HOURS : 1;
    left -= shown[n++].width;
  }
  shown[o->places[LAP_ORDER_SAY]].width = left;
  return lap_table_new (o->measure, shown, n, &heading);
}

static char *
lengths_text (const LapTimeline *timeline)
{
  g_autofree char *session = lap_clock_text (timeline->length);
  g_autofree char *film = lap_clock_text (timeline->length + (int) timeline->session->lead);

  if (timeline->session->lead <= 0)
    return g_strdup_printf (_("%s session"), session);
  return g_strdup_printf (_("%s film, %s session"), film, session);
}

static char *
about_text (const LapSession *session)
{
  g_autofree char *kit = lap_words_join (&lap_kit_words, lap_kit_mask (session->kit));
  const char *coach = session->coach != NULL ? session->coach : "";

  return g_strdup_printf ("%s%s%s", coach, *coach != '\0' && *kit != '\0' ? " · " : "", kit);
}

/* The head of the first page; returns where the table begins. */
static double
put_head (LapOrder *o, LapPage *page)
{
  const LapSession *session = o->timeline->session;
  double u = o->unit, inner = o->width - 2 * o->margin, wide = inner * 0.6, y = o->margin, right = y;
  g_autoptr (LapWrap) title = lap_wrap_new (o->measure, LAP_WEIGHT_HEAVY, session->title);
  LapType large = { 6 * u, 1.05, LAP_ROLE_INK, LAP_READ_TITLE }, line = { 2.7 * u, 1.2, LAP_ROLE_INK, LAP_READ_OTHER };
  LapType fitted = lap_wrap_largest (title, large, wide, 22 * u, 0.01);
  g_autofree char *lengths = lengths_text (o->timeline), *about = about_text (session);
  g_autofree char *camera = lap_camera_plan_text (o->timeline);
  g_autoptr (LapWrap) words = lap_wrap_new (o->measure, LAP_WEIGHT_PLAIN, about);
  LapType quiet = lap_wrap_largest (words, o->quiet, inner - wide, 14 * u, 0.01);

  lap_page_begin (page, "H1");
  y += lap_wrap_put (title, &fitted, page, o->margin, y, wide, 0) + 2 * u;
  lap_page_end (page);
  lap_page_begin (page, "P");
  y += lap_text_put (o->measure, LAP_WEIGHT_STRONG, _("Running order"), &o->part, page, o->margin, y, wide, 0);
  right += lap_text_put (o->measure, LAP_WEIGHT_STRONG, lengths, &line, page, o->margin + wide, right, inner - wide, 1);
  right += 2 * u + lap_wrap_put (words, &quiet, page, o->margin + wide, right + 2 * u, inner - wide, 1);
  y = MAX (y, right) + 2 * u;
  if ((o->options->hide & LAP_HIDE_CAMERA) == 0 && camera != NULL)
    y += lap_text_put (o->measure, LAP_WEIGHT_PLAIN, camera, &o->plain, page, o->margin, y, inner, 0) + u;
  lap_page_end (page);
  return y + u;
}

/* What the mark of a row means, then the safety words. With @page NULL nothing is put; returns the height. */
static double
lay_foot (LapOrder *o, LapPage *page, double top)
{
  double inner = o->width - 2 * o->margin, u = o->unit, wide = inner * 0.86, indent = 5 * u, y = top + 2 * u;
  g_autofree char *safety = g_strdup_printf ("%s %s", lap_safety_first (), lap_safety_more ());
  g_autoptr (LapWrap) words = lap_wrap_new (o->measure, LAP_WEIGHT_PLAIN, safety);
  g_autoptr (LapWrap) unseen = lap_wrap_new (o->measure, LAP_WEIGHT_PLAIN,
                                             _("no screen: nobody sees a screen in this position, so say it all."));
  LapType type = { 1.9 * u, 1.25, LAP_ROLE_INK2, LAP_READ_SAFETY };

  if (o->unseen) {
    if (page != NULL) {
      lap_page_sign (page, LAP_SIGN_UNSEEN, o->margin, y - 0.4 * u, 3.8 * u, 2.7 * u, LAP_ROLE_INK2);
      lap_wrap_put (unseen, &type, page, o->margin + indent, y, wide - indent, 0);
    }
    y += lap_wrap_fit (unseen, &type, wide - indent).height + u;
  }
  if (page != NULL)
    lap_wrap_put (words, &type, page, o->margin, y, wide, 0);
  return y + lap_wrap_fit (words, &type, wide).height - top;
}

static void
put_foot (LapOrder *o, LapPage *page, double y)
{
  double inner = o->width - 2 * o->margin, u = o->unit;
  LapType type = { 1.9 * u, 1.25, LAP_ROLE_INK2, LAP_READ_OTHER };

  lap_page_rule (page, o->margin, y, inner, 0.3 * u, LAP_ROLE_INK);
  lap_page_begin (page, "P");
  lay_foot (o, page, y);
  if (page->label != NULL)
    lap_text_put (o->measure, LAP_WEIGHT_STRONG, page->label, &type, page, o->margin + inner * 0.88, y + 2 * u,
                  inner * 0.12, 1);
  lap_page_end (page);
}

/* The chart of the balance stands at the bottom of the last page, or on one of its own where that is full. */
static void
put_balance (LapOrder *o, LapPage *page, double y)
{
  lap_balance_put (o->timeline, o->measure, page, o->unit, o->margin, y, o->width - 2 * o->margin);
}

static void
put_pages (LapOrder *o, LapPages *pages)
{
  double foot = o->height - o->margin - lay_foot (o, NULL, 0);
  double chart = o->options->hide & LAP_HIDE_BALANCE ? 0 : lap_balance_height (o->timeline, o->measure, o->unit);
  guint row = 0;
  gboolean charted = chart == 0;

  do {
    LapPage *page = lap_pages_add (pages, o->width, o->height);
    double y = o->margin;

    lap_page_begin (page, "Sect");
    if (lap_pages_n (pages) == 1) {
      lap_pages_outline (pages, 0, _("Running order"), y);
      y = put_head (o, page);
    }
    if (!charted && row < lap_table_n (o->table) &&
        lap_table_put (o->table, row, NULL, o->margin, y, foot - chart - 2 * o->unit) == lap_table_n (o->table)) {
      row = lap_table_put (o->table, row, page, o->margin, y, foot - chart - 2 * o->unit);
      put_balance (o, page, foot - chart);
      charted = TRUE;
    } else if (row < lap_table_n (o->table)) {
      row = lap_table_put (o->table, row, page, o->margin, y, foot - 2 * o->unit);
    } else {
      put_balance (o, page, y);
      charted = TRUE;
    }
    lap_page_end (page);
  } while (row < lap_table_n (o->table) || !charted);
  for (guint i = 0; i < lap_pages_n (pages); i++) {
    LapPage *page = lap_pages_nth (pages, i);

    if (lap_pages_n (pages) > 1)
      page->label = g_strdup_printf (_("%u of %u"), i + 1, lap_pages_n (pages));
    put_foot (o, page, foot);
  }
}

static LapPages *
build_at (const LapTimeline *timeline, const LapSheetOptions *options, const LapMeasure *measure, double scale)
{
  LapOrder o = { .timeline = timeline, .options = options, .measure = measure };
  LapPages *pages = lap_pages_new (timeline->session->title, timeline->session->coach, timeline->catalogue);
  double u;

  lap_paper_size (options, &o.width, &o.height);
  o.unit = u = CLAMP (MIN (o.width, o.height) / 210, 0.72, 1.4) * scale;
  o.margin = 12 * u / scale;
  o.plain = (LapType) { 2.15 * u, 1.28, LAP_ROLE_INK, LAP_READ_TABLE };
  o.quiet = (LapType) { 2.1 * u, 1.25, LAP_ROLE_INK2, LAP_READ_OTHER };
  o.stop = (LapType) { 2.15 * u, 1.25, LAP_ROLE_STOP, LAP_READ_OTHER };
  o.strong = (LapType) { 2.6 * u, 1.2, LAP_ROLE_INK, LAP_READ_NUMBER };
  o.second = (LapType) { 2.6 * u, 1.2, LAP_ROLE_INK2, LAP_READ_OTHER };
  o.name = (LapType) { 2.6 * u, 1.15, LAP_ROLE_INK, LAP_READ_NAME };
  o.part = (LapType) { 2.9 * u, 1.15, LAP_ROLE_WORK, LAP_READ_OTHER };
  o.table = make_table (&o);
  for (o.p = 0; o.p < timeline->n_parts; o.p++)
    lap_order_put_part (&o);
  put_pages (&o, pages);
  lap_table_free (o.table);
  return pages;
}

LapPages *
lap_running_order_build (const LapTimeline *timeline, const LapSheetOptions *options, const LapMeasure *measure)
{
  /* A page less to turn is worth letters a little smaller. */
  static const double scales[] = { 1, 0.94, 0.88 };
  LapPages *best = NULL;

  for (guint i = 0; i < G_N_ELEMENTS (scales) && (best == NULL || lap_pages_n (best) > 1); i++) {
    g_autoptr (LapPages) pages = build_at (timeline, options, measure, scales[i]);

    if (best != NULL && lap_pages_n (pages) >= lap_pages_n (best))
      continue;
    g_clear_pointer (&best, lap_pages_free);
    best = g_steal_pointer (&pages);
  }
  return best;
}
