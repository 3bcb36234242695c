/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/face.h"
#include "place/wrap.h"

#include <string.h>

static const LapType type = { 7, 1.0, LAP_ROLE_INK, LAP_READ_NAME }; /* an em of 10 mm, a letter of 6 mm */

static void
assert_lines (const char *text, double width, const char *expected)
{
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_new_over (NULL, NULL);
  g_autoptr (LapPages) pages = lap_pages_new ("", "", catalogue);
  g_autoptr (LapWrap) wrap = lap_wrap_new (face_measure (), LAP_WEIGHT_PLAIN, text);
  LapPage *page = lap_pages_add (pages, 1000, 1000);
  GString *lines = g_string_new (NULL);
  LapFit fit = lap_wrap_fit (wrap, &type, width);
  double height = lap_wrap_put (wrap, &type, page, 10, 10, width, 0);

  for (guint i = 0; i < page->marks->len; i++) {
    const LapMark *mark = &g_array_index (page->marks, LapMark, i);

    g_string_append_printf (lines, "%s%s", i > 0 ? "|" : "", mark->text);
    g_assert_cmpfloat (mark->width, <=, MAX (width, 12) + 1e-6);
  }
  g_assert_cmpstr (lines->str, ==, expected);
  g_assert_cmpuint (fit.lines, ==, page->marks->len);
  g_assert_cmpfloat (fit.height, ==, height);
  g_string_free (lines, TRUE);
}

static void
test_lines (void)
{
  assert_lines ("Mountain climber", 100, "Mountain climber");
  assert_lines ("Mountain climber", 95, "Mountain|climber");
  assert_lines ("  two  \n words ", 30, "two|words");
  assert_lines ("", 30, "");
  assert_lines ("Step-up", 30, "Step-|up");
  assert_lines ("a\xc2\xa0" "b c", 18, "a\xc2\xa0" "b|c");
}

static void
test_long_words (void)
{
  assert_lines ("Kräftigung", 36, "Kräf-|tigung");
  assert_lines ("the Kräftigung", 36, "the|Kräf-|tigung");
  assert_lines ("123456789", 36, "123456|789");
  assert_lines ("abc", 1, "a-|b-|c");
}

static void
test_height (void)
{
  g_autoptr (LapWrap) wrap = lap_wrap_new (face_measure (), LAP_WEIGHT_PLAIN, "two words");
  LapType fitted;

  /* A capital of 7 mm, a line further down 10 mm, a descender of 2 mm. */
  g_assert_cmpfloat_with_epsilon (lap_wrap_fit (wrap, &type, 100).height, 9, 1e-9);
  g_assert_cmpfloat_with_epsilon (lap_wrap_fit (wrap, &type, 40).height, 19, 1e-9);
  fitted = lap_wrap_largest (wrap, type, 40, 9.5, 1);
  g_assert_cmpfloat (lap_wrap_fit (wrap, &fitted, 40).height, <=, 9.5);
  g_assert_cmpfloat (fitted.cap, >, 3);
}

/* Something else stands at the start of the first line; where the first word has no room beside it, the line is empty. */
static void
test_indent (void)
{
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_new_over (NULL, NULL);
  g_autoptr (LapPages) pages = lap_pages_new ("", "", catalogue);
  g_autoptr (LapWrap) wrap = lap_wrap_new (face_measure (), LAP_WEIGHT_PLAIN, "two words");
  LapPage *page = lap_pages_add (pages, 1000, 1000);
  LapType indented = type;
  const LapMark *marks;

  indented.indent = 20;
  g_assert_cmpuint (lap_wrap_fit (wrap, &indented, 80).lines, ==, 1);
  g_assert_cmpuint (lap_wrap_fit (wrap, &indented, 70).lines, ==, 2);
  indented.indent = 60;
  g_assert_cmpfloat (lap_wrap_fit (wrap, &indented, 60).height, ==, 19);
  lap_wrap_put (wrap, &indented, page, 10, 10, 60, 0);
  indented.indent = 20;
  lap_wrap_put (wrap, &indented, page, 10, 100, 70, 0);
  marks = (const LapMark *) page->marks->data;
  g_assert_cmpuint (page->marks->len, ==, 3);
  g_assert_cmpstr (marks[0].text, ==, "two words");
  g_assert_cmpfloat (marks[0].x, ==, 10);
  g_assert_cmpfloat (marks[0].baseline, ==, 27);
  g_assert_cmpfloat (marks[1].x, ==, 30);
  g_assert_cmpfloat (marks[2].x, ==, 10);
}

/* facts of NUREG-0700 1.3.1 and ISO 9241-3: heights of a capital at 3, 5 and 8 m. */
static void
test_distances (void)
{
  static const struct {
    double metres, arc, cap;
  } rows[] = {
    { 3, 16, 14.0 }, { 3, 20, 17.5 }, { 3, 22, 19.2 }, { 5, 16, 23.3 }, { 5, 20, 29.1 }, { 5, 22, 32.0 },
    { 8, 16, 37.2 }, { 8, 20, 46.5 }, { 8, 22, 51.2 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++) {
    g_assert_cmpfloat_with_epsilon (lap_cap_height (rows[i].metres, rows[i].arc), rows[i].cap, 0.051);
    g_assert_cmpfloat_with_epsilon (lap_cap_distance (rows[i].cap, rows[i].arc), rows[i].metres, 0.015);
  }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/place/wrap/lines", test_lines);
  g_test_add_func ("/place/wrap/long-words", test_long_words);
  g_test_add_func ("/place/wrap/indent", test_indent);
  g_test_add_func ("/place/wrap/height", test_height);
  g_test_add_func ("/place/reads-from", test_distances);
  return g_test_run ();
}
