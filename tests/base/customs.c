/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How people write the time of day, begin a week and measure a distance, in locales made for the test by localedef(1).
 * Outside: Unicode CLDR 42, supplemental data: weekData (first day Monday in Germany, Sunday in the United States and
 * Japan, Saturday in Egypt), timeData (h in the United States, H in the others), measurementData (US in the United
 * States). The foot: 0.3048 m (ISO 80000-3).
 */
#include "base/customs.h"
#include "support/locales.h"

#include <locale.h>

static void
test_week (void)
{
  static const struct { const char *name; guint first; } places[] = {
    { "C.UTF-8", 0 }, { "C", 0 }, { "de_DE.UTF-8", 0 }, { "en_US.UTF-8", 6 }, { "ja_JP.UTF-8", 6 }, { "ar_EG.UTF-8", 5 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (places); i++) {
    locales_go (places[i].name);
    g_assert_cmpuint (lap_customs ().first_day, ==, places[i].first);
  }
}

static void
assert_time (int minutes, const char *expected)
{
  g_autofree char *text = lap_time_of_day_text (minutes);

  g_assert_cmpstr (text, ==, expected);
}

static void
test_time (void)
{
  static const char *const whole[] = { "C.UTF-8", "de_DE.UTF-8", "ja_JP.UTF-8" };

  for (guint i = 0; i < G_N_ELEMENTS (whole); i++) {
    locales_go (whole[i]);
    g_assert_false (lap_customs ().twelve_hours);
    assert_time (6 * 60 + 5, "06:05");
    assert_time (24 * 60, "24:00");
  }
  locales_go ("en_US.UTF-8");
  g_assert_true (lap_customs ().twelve_hours);
  assert_time (0, "12:00\xc2\xa0" "AM");
  assert_time (6 * 60 + 5, "6:05\xc2\xa0" "AM");
  assert_time (12 * 60, "12:00\xc2\xa0" "PM");
  assert_time (18 * 60 + 30, "6:30\xc2\xa0PM");
  assert_time (24 * 60, "12:00\xc2\xa0" "AM");
}

static void
assert_half (const char *typed, int half, const char *rest)
{
  g_autofree char *text = g_strdup (typed);

  g_assert_cmpint (lap_cut_half_of_day (text), ==, half);
  g_assert_cmpstr (text, ==, rest);
}

static void
test_half (void)
{
  locales_go ("C.UTF-8");
  assert_half ("18:30", -1, "18:30");
  assert_half ("6:30 pm", 1, "6:30");
  assert_half ("6.30p.m.", 1, "6.30");
  assert_half ("7 A.M.", 0, "7");
  assert_half ("pm", -1, "pm");
  locales_go ("ja_JP.UTF-8");
  assert_half ("6:30\xc2\xa0\xe5\x8d\x88\xe5\xbe\x8c", 1, "6:30"); /* U+5348 U+5F8C, "after noon" */
  assert_half ("6:30 AM", 0, "6:30");
}

static void
assert_distance (double metres, const char *near, const char *up)
{
  g_autofree char *text = lap_distance_text (metres), *upwards = lap_distance_up_text (metres);

  g_assert_cmpstr (text, ==, near);
  g_assert_cmpstr (upwards, ==, up);
}

static void
test_distance (void)
{
  locales_go ("C.UTF-8");
  assert_distance (3.64, "3.6\xc2\xa0m", "3.7\xc2\xa0m");
  assert_distance (4, "4.0\xc2\xa0m", "4.0\xc2\xa0m");
  locales_go ("de_DE.UTF-8");
  g_assert_false (lap_customs ().feet);
  assert_distance (3.64, "3,6\xc2\xa0m", "3,7\xc2\xa0m");
  locales_go ("en_US.UTF-8");
  g_assert_cmpfloat (lap_distance_unit (), ==, 0.3048);
  assert_distance (3.048, "10.0\xc2\xa0" "ft", "10.0\xc2\xa0" "ft");
  assert_distance (4, "13.1\xc2\xa0" "ft", "13.2\xc2\xa0" "ft");
}

/* What people type, where lengths are in metres (C, Germany) and in feet (United States): the inch is 25.4 mm and the foot
 * 12 of them (ISO 80000-3). -1: not understood. */
static const struct { const char *typed; double metric, german, american; } lengths[] = {
  { "1.8 m", 1.8, 1.8, 1.8 }, { "1,8 m", 1.8, 1.8, 1.8 }, { "1.8m", 1.8, 1.8, 1.8 }, { "1.8\xc2\xa0m", 1.8, 1.8, 1.8 },
  { "180 cm", 1.8, 1.8, 1.8 }, { "2 Metres", 2, 2, 2 }, { " 6 ft ", 1.8288, 1.8288, 1.8288 },
  { "6ft.", 1.8288, 1.8288, 1.8288 }, { "6 FEET", 1.8288, 1.8288, 1.8288 }, { "6'", 1.8288, 1.8288, 1.8288 },
  { "5 ft 11 in", 1.8034, 1.8034, 1.8034 }, { "5' 11\"", 1.8034, 1.8034, 1.8034 }, { "5’11″", 1.8034, 1.8034, 1.8034 },
  { "5'11", 1.8034, 1.8034, 1.8034 }, { "71 inches", 1.8034, 1.8034, 1.8034 }, { "1 m 80 cm", 1.8, 1.8, 1.8 },
  { "6", 6, 6, 1.8288 }, { "2.5", 2.5, 2.5, 0.762 }, { "2,5", 2.5, 2.5, 0.762 }, { ".5 m", 0.5, 0.5, 0.5 },
  { "1.250 m", 1.25, 1250, 1.25 }, { "1,250 m", 1250, 1.25, 1250 }, { "0", 0, 0, 0 },
  { "", -1, -1, -1 }, { "six feet", -1, -1, -1 }, { "6 yards", -1, -1, -1 }, { "m", -1, -1, -1 }, { "-2 m", -1, -1, -1 },
  { "6 ft 2 kg", -1, -1, -1 }, { "1 m 80", -1, -1, -1 }, { "6 ft in", -1, -1, -1 },
};

static void
assert_length (const char *typed, double expected)
{
  double metres = 0;
  gboolean read = lap_distance_parse (typed, &metres);

  g_test_message ("“%s” at %s", typed, setlocale (LC_ALL, NULL));
  g_assert_true (read == (expected >= 0));
  if (read)
    g_assert_cmpfloat_with_epsilon (metres, expected, 1e-9);
}

static void
test_typed_lengths (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (lengths); i++) {
    locales_go ("C.UTF-8");
    assert_length (lengths[i].typed, lengths[i].metric);
    locales_go ("de_DE.UTF-8");
    assert_length (lengths[i].typed, lengths[i].german);
    locales_go ("en_US.UTF-8");
    assert_length (lengths[i].typed, lengths[i].american);
  }
}

static void
assert_typed_area (const char *typed, double expected)
{
  double area = 0;
  gboolean read = lap_area_parse (typed, &area);

  g_test_message ("“%s”", typed);
  g_assert_true (read == (expected >= 0));
  if (read)
    g_assert_cmpfloat_with_epsilon (area, expected, 1e-9);
}

static void
test_typed_areas (void)
{
  locales_go ("C.UTF-8");
  assert_typed_area ("37 m²", 37);
  assert_typed_area ("37m2", 37);
  assert_typed_area ("400 sq ft", 400 * 0.3048 * 0.3048);
  assert_typed_area ("400 ft²", 400 * 0.3048 * 0.3048);
  assert_typed_area ("120", 120);
  assert_typed_area ("37 m", -1);
  assert_typed_area ("big", -1);
  locales_go ("en_US.UTF-8");
  assert_typed_area ("1,200", 1200 * 0.3048 * 0.3048);
  assert_typed_area ("120 square metres", 120);
}

static void
assert_area (double square_metres, const char *expected)
{
  g_autofree char *text = lap_area_text (square_metres);

  g_assert_cmpstr (text, ==, expected);
}

static void
test_area (void)
{
  locales_go ("C.UTF-8");
  assert_area (120, "120\xc2\xa0m²");
  assert_area (6.25, "6.2\xc2\xa0m²");
  assert_area (6, "6\xc2\xa0m²");
  locales_go ("de_DE.UTF-8");
  assert_area (6.5, "6,5\xc2\xa0m²");
  locales_go ("en_US.UTF-8");
  assert_area (120, "1292\xc2\xa0" "ft²");
  assert_area (0.3048 * 0.3048 * 50, "50\xc2\xa0" "ft²");
}

int
main (int argc, char **argv)
{
  locales_begin ("de_DE.UTF-8", "en_US.UTF-8", "ja_JP.UTF-8", "ar_EG.UTF-8", NULL);
  g_unsetenv ("LC_ALL");
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/customs/week", test_week);
  g_test_add_func ("/customs/time", test_time);
  g_test_add_func ("/customs/half", test_half);
  g_test_add_func ("/customs/distance", test_distance);
  g_test_add_func ("/customs/area", test_area);
  g_test_add_func ("/customs/typed-lengths", test_typed_lengths);
  g_test_add_func ("/customs/typed-areas", test_typed_areas);
  return g_test_run ();
}
