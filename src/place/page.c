/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/page.h"

#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

static void
page_free (gpointer data)
{
  LapPage *page = data;

  g_array_unref (page->marks);
  g_free (page->label);
  g_free (page);
}

static void
outline_clear (gpointer data)
{
  g_free (((LapOutline *) data)->title);
}

LapPages *
lap_pages_new (const char *title, const char *author, LapCatalogue *catalogue)
{
  LapPages *pages = g_new0 (LapPages, 1);

  pages->title = g_strdup (title);
  pages->author = g_strdup (author);
  pages->pages = g_ptr_array_new_with_free_func (page_free);
  pages->outline = g_array_new (FALSE, TRUE, sizeof (LapOutline));
  g_array_set_clear_func (pages->outline, outline_clear);
  pages->strings = g_string_chunk_new (4096);
  pages->catalogue = lap_catalogue_ref (catalogue);
  return pages;
}

void
lap_pages_free (LapPages *pages)
{
  g_free (pages->title);
  g_free (pages->author);
  g_ptr_array_unref (pages->pages);
  g_array_unref (pages->outline);
  g_string_chunk_free (pages->strings);
  lap_catalogue_unref (pages->catalogue);
  g_free (pages);
}

LapPage *
lap_pages_add (LapPages *pages, double width, double height)
{
  LapPage *page = g_new0 (LapPage, 1);

  page->width = width;
  page->height = height;
  page->marks = g_array_new (FALSE, TRUE, sizeof (LapMark));
  page->pages = pages;
  g_ptr_array_add (pages->pages, page);
  return page;
}

guint
lap_pages_n (const LapPages *pages)
{
  return pages->pages->len;
}

LapPage *
lap_pages_nth (const LapPages *pages, guint n)
{
  return g_ptr_array_index (pages->pages, n);
}

void
lap_pages_outline (LapPages *pages, guint level, const char *title, double y)
{
  LapOutline entry = { g_strdup (title), pages->pages->len - 1, level, y };

  g_array_append_val (pages->outline, entry);
}

static LapMark *
add (LapPage *page, const LapMark *mark)
{
  g_array_append_val (page->marks, *mark);
  return &g_array_index (page->marks, LapMark, page->marks->len - 1);
}

LapMark *
lap_page_text (LapPage *page, const LapMark *style, const char *text, gssize bytes)
{
  LapMark *mark = add (page, style);

  mark->kind = LAP_MARK_TEXT;
  mark->text = g_string_chunk_insert_len (page->pages->strings, text, bytes);
  return mark;
}

LapMark *
lap_page_box (LapPage *page, double x, double y, double width, double height, LapRole fill)
{
  return add (page, &(LapMark) { .kind = LAP_MARK_BOX, .x = x, .y = y, .width = width, .height = height,
                                 .fill = fill });
}

LapMark *
lap_page_hatch (LapPage *page, double x, double y, double width, double height)
{
  return add (page, &(LapMark) { .kind = LAP_MARK_HATCH, .x = x, .y = y, .width = width, .height = height,
                                 .line = LAP_ROLE_WORK });
}

LapMark *
lap_page_rule (LapPage *page, double x, double y, double width, double height, LapRole role)
{
  return add (page, &(LapMark) { .kind = LAP_MARK_RULE, .x = x, .y = y, .width = width, .height = height,
                                 .line = role, .thick = MIN (width, height) });
}

LapMark *
lap_page_sign (LapPage *page, LapSign sign, double x, double y, double width, double height, LapRole role)
{
  return add (page, &(LapMark) { .kind = LAP_MARK_SIGN, .sign = sign, .x = x, .y = y, .width = width,
                                 .height = height, .fill = role, .thick = height * 0.16 });
}

LapMark *
lap_page_figure (LapPage *page, LapExercise *exercise, double x, double y, double width, double height)
{
  return add (page, &(LapMark) { .kind = LAP_MARK_FIGURE, .exercise = exercise, .x = x, .y = y, .width = width,
                                 .height = height });
}

LapMark *
lap_page_code (LapPage *page, const char *address, double x, double y, double side)
{
  return add (page, &(LapMark) { .kind = LAP_MARK_CODE, .x = x, .y = y, .width = side, .height = side,
                                 .fill = LAP_ROLE_INK,
                                 .text = g_string_chunk_insert (page->pages->strings, address) });
}

void
lap_page_begin (LapPage *page, const char *tag)
{
  add (page, &(LapMark) { .kind = LAP_MARK_BEGIN, .tag = tag });
}

void
lap_page_link (LapPage *page, const char *address)
{
  add (page, &(LapMark) { .kind = LAP_MARK_BEGIN, .tag = "Link",
                          .text = g_string_chunk_insert (page->pages->strings, address) });
}

void
lap_page_end (LapPage *page)
{
  add (page, &(LapMark) { .kind = LAP_MARK_END });
}

void
lap_page_mirror (LapPage *page)
{
  for (guint i = 0; i < page->marks->len; i++) {
    LapMark *mark = &g_array_index (page->marks, LapMark, i);

    mark->x = page->width - mark->x - mark->width;
  }
}

const char *
lap_read_label (LapRead read)
{
  static const char *const labels[LAP_N_READS] = {
    [LAP_READ_TITLE] = N_("Title"), [LAP_READ_FORMULA] = N_("Work and rest"), [LAP_READ_NUMBER] = N_("Numbers"),
    [LAP_READ_NAME] = N_("Names"), [LAP_READ_OPTION] = N_("Options"), [LAP_READ_SAFETY] = N_("Safety words"),
    [LAP_READ_TABLE] = N_("Words to say"), [LAP_READ_DETAIL] = N_("Room and coach"),
  };

  return labels[read] != NULL ? _(labels[read]) : NULL;
}

static double
half_tangent (double arc)
{
  return tan (arc / 60 * G_PI / 180 / 2);
}

double
lap_cap_height (double distance, double arc)
{
  return 2 * distance * 1000 * half_tangent (arc);
}

double
lap_cap_distance (double cap, double arc)
{
  return cap / (2 * half_tangent (arc)) / 1000;
}

double
lap_pages_cap (const LapPages *pages, LapRead read)
{
  double least = 0;

  for (guint p = 0; p < lap_pages_n (pages); p++) {
    GArray *marks = lap_pages_nth (pages, p)->marks;

    for (guint i = 0; i < marks->len; i++) {
      const LapMark *mark = &g_array_index (marks, LapMark, i);

      if (mark->kind == LAP_MARK_TEXT && mark->read == read && (least == 0 || mark->cap < least))
        least = mark->cap;
    }
  }
  return least;
}
