/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/poster-frame.h"

#include "place/formula.h"
#include "place/poster-band.h"
#include "place/poster-foot.h"

#include <glib/gi18n-lib.h>

/* In units. */
#define TITLE_CAP   20.0
#define SUB_CAP      5.5
#define LATER_TITLE 11.0
#define LATER_LINE   7.0

struct _LapPosterFrame {
  const LapPoster *poster;
  LapPosterBand   *band;
  LapPosterFoot   *foot;
  LapWrap *title, *sub, *line;
  gboolean beside;       /* the formula stands beside the title */
  double   title_width, band_x;
  LapType  title_type, sub_type;
  double   title_height; /* with what stands under it, mm */
  double   head, later;  /* heights, mm; `later` of the head of later pages */
};

static double
units (const LapPosterFrame *frame, double n)
{
  return n * frame->poster->unit;
}

/* Words under the title */

static void
add_piece (GString *line, char *piece)
{
  if (piece != NULL && *piece != '\0')
    g_string_append_printf (line, "%s%s", line->len > 0 ? "\xc2\xa0· " : "", piece);
  g_free (piece);
}

static char *
also_for_text (const LapSession *session)
{
  g_autofree char *words = NULL;

  if (session->also_for == NULL)
    return NULL;
  words = lap_words_join (&lap_also_for_words,
                          lap_words_mask (&lap_also_for_words, (const char * const *) session->also_for));
  return *words != '\0' ? g_strdup_printf (_("also for: %s"), words) : NULL;
}

/* A talk or pause among the exercises, told by the exercise it follows. */
static void
add_breaks (GString *line, const LapPoster *poster)
{
  const LapPart *part = poster->timeline->parts[poster->part].part;
  guint before = 0;

  for (guint i = 0; i < lap_part_n (part); i++) {
    const LapBlock *block = lap_part_nth (part, i);

    if (block->kind == LAP_BLOCK_EXERCISE) {
      before++;
    } else if (block->kind == LAP_BLOCK_PAUSE && before > 0) {
      g_autofree char *length = lap_duration_text (block->seconds);
      const char *what = block->pause != NULL && *block->pause != '\0' ? block->pause : _("Pause");

      /* Translators: "water 60 s after 5". */
      add_piece (line, g_strdup_printf (_("%s %s after %u"), what, length, before));
    }
  }
  if (part->run != LAP_RUN_OWN_PACE && part->rounds > 1 && part->round_rest > 0) {
    g_autofree char *length = lap_duration_text (part->round_rest);

    add_piece (line, g_strdup_printf (_("%s between rounds"), length));
  }
}

static char *
sub_text (const LapPoster *poster)
{
  const LapSession *session = poster->timeline->session;
  const LapPart *part = poster->timeline->parts[poster->part].part;
  int minutes = (poster->timeline->length + 30) / 60;
  GString *line = g_string_new (NULL);

  if (part->title != NULL && *part->title != '\0')
    add_piece (line, g_strdup (part->title));
  if (minutes > 0)
    add_piece (line, g_strdup_printf (g_dngettext (GETTEXT_PACKAGE, "%d minute", "%d minutes", minutes), minutes));
  add_piece (line, lap_words_join (&lap_kit_words, lap_kit_mask (session->kit)));
  if (part->run == LAP_RUN_STATIONS && part->per_station > 1)
    add_piece (line, g_strdup_printf (_("%d people at each station"), part->per_station));
  add_breaks (line, poster);
  add_piece (line, also_for_text (session));
  if (session->coach != NULL && *session->coach != '\0')
    add_piece (line, g_strdup_printf (_("with %s"), session->coach));
  return g_string_free (line, FALSE);
}

static LapType
sub_type (const LapPosterFrame *frame)
{
  return (LapType) { units (frame, SUB_CAP), 1.25, LAP_ROLE_INK2, LAP_READ_OTHER };
}

/* The title and the words under it, within @height. */
static void
fit_title (LapPosterFrame *frame, double height)
{
  LapType title = { units (frame, TITLE_CAP * MIN (frame->poster->least, 1)), 1.02, LAP_ROLE_INK, LAP_READ_TITLE };
  double sub;

  frame->sub_type = lap_wrap_largest (frame->sub, sub_type (frame), frame->title_width, height * 0.4, 0.01);
  sub = lap_wrap_fit (frame->sub, &frame->sub_type, frame->title_width).height;
  frame->title_type = lap_wrap_largest (frame->title, title, frame->title_width, height - sub - units (frame, 3), 0.01);
  frame->title_height = lap_wrap_fit (frame->title, &frame->title_type, frame->title_width).height +
                        units (frame, 3) + sub;
}

/* The title above the formula, or beside it where that is lower and both have room. */
static void
fit_head (LapPosterFrame *frame)
{
  const LapPoster *poster = frame->poster;
  double inner = poster->width - 2 * poster->margin, u = poster->unit, width = inner;

  frame->title_width = inner - lap_poster_band_fit (frame->band, inner * 0.75) - 10 * u;
  fit_title (frame, lap_poster_band_height (frame->band));
  frame->beside = lap_poster_band_is_large (frame->band) && frame->title_type.cap >= 10 * u;
  if (frame->beside) {
    width = inner - frame->title_width - 10 * u;
    frame->head = lap_poster_band_height (frame->band);
  } else {
    lap_poster_band_fit (frame->band, inner);
    frame->title_width = inner;
    fit_title (frame, 40 * u);
    frame->head = frame->title_height + 4 * u + lap_poster_band_height (frame->band);
  }
  lap_poster_band_spread (frame->band, width);
  frame->band_x = poster->margin + (inner - width);
}

/* The head of a page that hangs beside the first. */
static void
put_later_head (LapPosterFrame *frame, LapPage *page)
{
  const LapPoster *poster = frame->poster;
  double u = poster->unit, inner = poster->width - 2 * poster->margin, y = poster->margin;
  LapType title = { LATER_TITLE * u, 1.02, LAP_ROLE_INK, LAP_READ_OTHER };
  LapType line = { LATER_LINE * u, 1.1, LAP_ROLE_WORK, LAP_READ_OTHER };

  title = lap_wrap_largest (frame->title, title, inner, LATER_TITLE * 1.4 * u, 0.01);
  line = lap_wrap_largest (frame->line, line, inner, LATER_LINE * 1.4 * u, 0.01);
  lap_page_begin (page, "P");
  lap_wrap_put (frame->title, &title, page, poster->margin, y, inner, 0);
  lap_wrap_put (frame->line, &line, page, poster->margin, y + (LATER_TITLE * 1.4 + 2.5) * u, inner, 0);
  lap_page_end (page);
}

static void
put_head (LapPosterFrame *frame, LapPage *page)
{
  const LapPoster *poster = frame->poster;
  double u = poster->unit, y = poster->margin;

  lap_page_begin (page, "H1");
  y += lap_wrap_put (frame->title, &frame->title_type, page, poster->margin, y, frame->title_width, 0) + 3 * u;
  lap_page_end (page);
  lap_page_begin (page, "P");
  y += lap_wrap_put (frame->sub, &frame->sub_type, page, poster->margin, y, frame->title_width, 0) + 4 * u;
  lap_page_end (page);
  if (frame->beside)
    y = poster->margin;
  lap_page_begin (page, "P");
  lap_poster_band_put (frame->band, page, frame->band_x, y);
  lap_page_end (page);
}

LapPosterFrame *
lap_poster_frame_new (const LapPoster *poster)
{
  LapPosterFrame *frame = g_new0 (LapPosterFrame, 1);
  g_autofree char *sub = sub_text (poster), *line = lap_formula_text (poster->timeline, poster->part);
  const char *title = poster->timeline->session->title;

  frame->poster = poster;
  frame->title = lap_wrap_new (poster->measure, LAP_WEIGHT_HEAVY, title);
  frame->sub = lap_wrap_new (poster->measure, LAP_WEIGHT_STRONG, sub);
  frame->line = lap_wrap_new (poster->measure, LAP_WEIGHT_STRONG, line);
  frame->band = lap_poster_band_new (poster);
  frame->foot = lap_poster_foot_new (poster);
  fit_head (frame);
  frame->later = units (frame, LATER_TITLE * 1.4 + 2.5 + LATER_LINE * 1.4);
  return frame;
}

void
lap_poster_frame_free (LapPosterFrame *frame)
{
  lap_wrap_free (frame->title);
  lap_wrap_free (frame->sub);
  lap_wrap_free (frame->line);
  lap_poster_band_free (frame->band);
  lap_poster_foot_free (frame->foot);
  g_free (frame);
}

double
lap_poster_frame_top (const LapPosterFrame *frame, gboolean first)
{
  return frame->poster->margin + (first ? frame->head : frame->later) + units (frame, 5.5);
}

double
lap_poster_frame_bottom (const LapPosterFrame *frame)
{
  return frame->poster->height - frame->poster->margin - lap_poster_foot_height (frame->foot) -
         units (frame, 3.5);
}

void
lap_poster_frame_head (LapPosterFrame *frame, LapPage *page, gboolean first)
{
  if (first)
    put_head (frame, page);
  else
    put_later_head (frame, page);
}

void
lap_poster_frame_foot (LapPosterFrame *frame, LapPage *page, const char *where)
{
  lap_poster_foot_put (frame->foot, page, where);
}
