/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/poster-foot.h"

#include "place/safety.h"

#include <glib/gi18n-lib.h>

/* In units. */
#define SAFETY_CAP  5.0
#define MORE_CAP    4.0
#define CODE_WORDS 17.0
#define CODE_SIDE  22.0 /* scanned from an arm's length: a tenth of the distance (common practice) */

struct _LapPosterFoot {
  const LapPoster *poster;
  LapWrap *safety, *more;
  double   height; /* mm */
};

static const struct {
  LapSign sign;
  const char *words;
  LapRole role;
} signs_told[] = {
  { LAP_SIGN_EASIER, N_("easier"), LAP_ROLE_TALK },
  { LAP_SIGN_HARDER, N_("harder"), LAP_ROLE_EFFORT },
  { LAP_SIGN_BREATHLESS, N_("out of breath"), LAP_ROLE_EFFORT },
  { LAP_SIGN_SWAP, N_("swap sides half way"), LAP_ROLE_WORK },
  { LAP_SIGN_ROUND, N_("in that round"), LAP_ROLE_WORK },
};

/* The address of the square code, or NULL where there is none. */
static const char *
code_address (const LapPosterFoot *foot)
{
  const char *link = foot->poster->timeline->session->link;

  return link != NULL && *link != '\0' && (foot->poster->options->hide & LAP_HIDE_CODE) == 0 ? link : NULL;
}

/* The width that words have in the foot, beside the code. */
static double
foot_width (const LapPosterFoot *foot)
{
  return foot->poster->width - 2 * foot->poster->margin -
         (code_address (foot) != NULL ? (CODE_SIDE + 8 + CODE_WORDS) * foot->poster->unit : 0);
}

typedef struct {
  LapPosterFoot *foot;
  LapPage        *page; /* NULL: only asked for its height */
  LapType         words;
  double          x, y, left, right;
} Legend;

/* A mark — a sign, or a box filled with @role — and what it means behind it. */
static void
explain (Legend *legend, const LapSign *sign, LapRole role, const char *text)
{
  double u = legend->foot->poster->unit, cap = legend->words.cap, size = cap * 1.5, mark = size * 1.4;
  g_autoptr (LapWrap) wrap = lap_wrap_new (legend->foot->poster->measure, LAP_WEIGHT_STRONG, text);
  double width = lap_wrap_fit (wrap, &legend->words, 1e6).width + mark + 1.5 * u;

  if (legend->x > legend->left && legend->x + width > legend->right) {
    legend->x = legend->left;
    legend->y += cap * 2;
  }
  if (legend->page != NULL && sign != NULL) {
    lap_page_sign (legend->page, *sign, legend->x, legend->y - (size - cap) / 2, mark, size, role);
  } else if (legend->page != NULL) {
    LapMark *box = lap_page_box (legend->page, legend->x + mark - size, legend->y, size, cap, role);

    box->line = LAP_ROLE_WORK;
    box->thick = 0.4 * u;
    box->radius = cap * 0.25;
  }
  if (legend->page != NULL)
    lap_wrap_put (wrap, &legend->words, legend->page, legend->x + mark + 1.5 * u, legend->y, width, 0);
  legend->x += width + 8 * u;
}

/* The version, and which page it is. */
static char *
end_text (const LapPoster *poster, const char *where)
{
  g_autofree char *version = lap_version_text (poster->options);

  if (version == NULL || where == NULL)
    return g_strdup (version != NULL ? version : where);
  return g_strdup_printf ("%s\xc2\xa0· %s", version, where);
}

/* What the signs of this poster mean, in as many lines as it takes, and at the end which version and page it is.
 * Returns the height. */
static double
lay_legend (LapPosterFoot *foot, LapPage *page, double y, const char *where)
{
  const LapPoster *poster = foot->poster;
  double u = poster->unit, cap = MORE_CAP * u, end = (poster->options->date != NULL ? 80 : 22) * u;
  double width = foot_width (foot) - end; /* beside the words at the end */
  g_autofree char *text = end_text (poster, where);
  Legend legend = { foot, page, { cap, 1.2, LAP_ROLE_INK2, LAP_READ_OTHER }, poster->margin, y, poster->margin,
                    poster->margin + width };

  for (guint i = 0; i < G_N_ELEMENTS (signs_told); i++)
    if (poster->signs & LAP_BIT (signs_told[i].sign))
      explain (&legend, &signs_told[i].sign, signs_told[i].role, _(signs_told[i].words));
  if (poster->options->body) {
    explain (&legend, NULL, LAP_ROLE_HARD, _("works hard"));
    explain (&legend, NULL, LAP_ROLE_WORK2, _("helps"));
  }
  if (page != NULL && text != NULL) {
    g_autoptr (LapWrap) wrap = lap_wrap_new (poster->measure, LAP_WEIGHT_STRONG, text);
    LapType line = lap_wrap_largest (wrap, legend.words, end, cap * 1.6, 0.01);

    lap_wrap_put (wrap, &line, page, legend.right, y, end, 1);
  }
  return legend.y - y + cap * 1.5;
}

static void
foot_types (const LapPosterFoot *foot, LapType *first, LapType *more)
{
  double u = foot->poster->unit;

  *first = (LapType) { SAFETY_CAP * u, 1.15, LAP_ROLE_INK, LAP_READ_SAFETY };
  *more = (LapType) { MORE_CAP * u, 1.2, LAP_ROLE_INK, LAP_READ_OTHER };
}

static double
height_of (LapPosterFoot *foot)
{
  double inner = foot_width (foot), u = foot->poster->unit;
  LapType first, more;
  double height;

  foot_types (foot, &first, &more);
  height = 3 * u + lay_legend (foot, NULL, 0, NULL);
  height += lap_wrap_fit (foot->safety, &first, inner).height + lap_wrap_fit (foot->more, &more, inner).height + 4 * u;
  if (code_address (foot) != NULL)
    height = MAX (height, (CODE_SIDE + 5) * u);
  return height;
}

/* At its end, with a word beside it. */
static void
put_code (LapPosterFoot *foot, LapPage *page, double y)
{
  const LapPoster *poster = foot->poster;
  double u = poster->unit, side = CODE_SIDE * u, x = poster->width - poster->margin - side;
  LapType words = { MORE_CAP * u, 1.2, LAP_ROLE_INK, LAP_READ_OTHER };

  lap_page_link (page, code_address (foot));
  lap_text_put (poster->measure, LAP_WEIGHT_STRONG, _("See it move"), &words, page, x - (CODE_WORDS + 4) * u, y,
                CODE_WORDS * u, 1);
  lap_page_code (page, code_address (foot), x, y + 2 * u, side);
  lap_page_end (page);
}

void
lap_poster_foot_put (LapPosterFoot *foot, LapPage *page, const char *where)
{
  const LapPoster *poster = foot->poster;
  double u = poster->unit, inner = foot_width (foot);
  double y = poster->height - poster->margin - foot->height;
  LapType first, more;

  foot_types (foot, &first, &more);
  lap_page_rule (page, poster->margin, y, poster->width - 2 * poster->margin, 0.8 * u, LAP_ROLE_INK);
  y += 3 * u;
  if (code_address (foot) != NULL)
    put_code (foot, page, y);
  lap_page_begin (page, "P");
  y += lap_wrap_put (foot->safety, &first, page, poster->margin, y, inner, 0) + 1.5 * u;
  y += lap_wrap_put (foot->more, &more, page, poster->margin, y, inner, 0) + 2.5 * u;
  lap_page_end (page);
  lap_page_begin (page, "P");
  lay_legend (foot, page, y, where);
  lap_page_end (page);
}

LapPosterFoot *
lap_poster_foot_new (const LapPoster *poster)
{
  LapPosterFoot *foot = g_new0 (LapPosterFoot, 1);

  foot->poster = poster;
  foot->safety = lap_wrap_new (poster->measure, LAP_WEIGHT_HEAVY, lap_safety_first ());
  foot->more = lap_wrap_new (poster->measure, LAP_WEIGHT_PLAIN, lap_safety_more ());
  foot->height = height_of (foot);
  return foot;
}

void
lap_poster_foot_free (LapPosterFoot *foot)
{
  lap_wrap_free (foot->safety);
  lap_wrap_free (foot->more);
  g_free (foot);
}

double
lap_poster_foot_height (const LapPosterFoot *foot)
{
  return foot->height;
}
