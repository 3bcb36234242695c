/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/face.h"

#include "store/documents.h"

#include <math.h>
#include <string.h>

#define SLACK 0.05 /* mm: rounding */

static double
width (gpointer data, LapWeight weight, const char *text, gssize bytes)
{
  return 0.6 * g_utf8_strlen (text, bytes);
}

static const LapFont *
font (gpointer data, LapWeight weight)
{
  static const LapFont face = { 0.7, 0.75, 0.2 };

  return &face;
}

static gboolean
rtl (gpointer data, const char *text)
{
  return FALSE;
}

const LapMeasure *
face_measure (void)
{
  static const LapMeasure measure = { width, font, rtl, NULL };

  return &measure;
}

LapTimeline *
face_from_json (const char *json)
{
  g_autoptr (GBytes) bytes = g_bytes_new (json, strlen (json));
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (GError) error = NULL;
  g_autoptr (LapSession) session = lap_session_from_bytes (bytes, &error);
  LapTimeline *timeline;

  g_assert_no_error (error);
  timeline = lap_timeline_new (session, builtin, &error);
  g_assert_no_error (error);
  return timeline;
}

LapTimeline *
face_timeline (guint n, const char *part, const char *block)
{
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  GString *json = g_string_new ("{\"format\": \"lapwing-session\", \"version\": 1, \"id\": \"s\", \"title\": "
                                "\"Salt and Stairs\", \"coach\": \"Ines Varrow\", \"kit\": [\"mat\"], \"parts\": "
                                "[{\"kind\": \"main\", ");
  LapTimeline *timeline;

  g_string_append_printf (json, "%s \"blocks\": [", part);
  for (guint i = 0; i < n; i++)
    g_string_append_printf (json, "%s{\"exercise\": \"%s\", \"work\": 40, \"rest\": 20%s}", i > 0 ? ", " : "",
                            lap_catalogue_nth (builtin, i)->id, block);
  g_string_append (json, "]}]}");
  timeline = face_from_json (json->str);
  g_string_free (json, TRUE);
  return timeline;
}

static gboolean
overlap (const LapMark *a, const LapMark *b)
{
  return a->x + a->width > b->x + SLACK && b->x + b->width > a->x + SLACK && a->y + a->height > b->y + SLACK &&
         b->y + b->height > a->y + SLACK;
}

static gboolean
is_taken (const LapMark *mark)
{
  return mark->kind == LAP_MARK_TEXT || mark->kind == LAP_MARK_FIGURE || mark->kind == LAP_MARK_SIGN;
}

static void
check_page (const LapPage *page)
{
  int depth = 0;

  for (guint i = 0; i < page->marks->len; i++) {
    const LapMark *mark = &g_array_index (page->marks, LapMark, i);

    depth += mark->kind == LAP_MARK_BEGIN ? 1 : mark->kind == LAP_MARK_END ? -1 : 0;
    g_assert_cmpint (depth, >=, 0);
    if (mark->x < -SLACK || mark->y < -SLACK || mark->x + mark->width > page->width + SLACK ||
        mark->y + mark->height > page->height + SLACK)
      g_error ("a mark of kind %d (%s) reaches out of the page: %.1f, %.1f, %.1f × %.1f", mark->kind,
               mark->text != NULL ? mark->text : "", mark->x, mark->y, mark->width, mark->height);
    for (guint k = 0; is_taken (mark) && k < i; k++) {
      const LapMark *other = &g_array_index (page->marks, LapMark, k);

      if (is_taken (other) && overlap (mark, other))
        g_error ("\"%s\" lies over \"%s\" (kinds %d and %d, at %.1f, %.1f)", mark->text != NULL ? mark->text : "",
                 other->text != NULL ? other->text : "", mark->kind, other->kind, mark->x, mark->y);
    }
  }
  g_assert_cmpint (depth, ==, 0);
}

void
face_check_pages (const LapPages *pages)
{
  for (guint i = 0; i < lap_pages_n (pages); i++)
    check_page (lap_pages_nth (pages, i));
}

char *
face_text (const LapPages *pages)
{
  GString *text = g_string_new (NULL);

  for (guint p = 0; p < lap_pages_n (pages); p++) {
    GArray *marks = lap_pages_nth (pages, p)->marks;

    for (guint i = 0; i < marks->len; i++) {
      const LapMark *mark = &g_array_index (marks, LapMark, i);

      if (mark->kind == LAP_MARK_TEXT)
        g_string_append_printf (text, "%s%s", text->len > 0 ? " " : "", mark->text);
    }
  }
  return g_string_free (text, FALSE);
}
