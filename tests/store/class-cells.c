/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Notations of days, times and lengths in cells, those that are read and those that aren't: common practice, but for
 * the days and times of ISO 8601 (18:30, 18:30:00, 1830, 24:00).
 */
#include "store/class-cells.h"
#include "catalogue/vocabulary.h"

#define MON 1
#define TUE 2
#define WED 4
#define THU 8
#define FRI 16
#define SAT 32
#define SUN 64

static void
test_days (void)
{
  static const struct { const char *text; guint days; } rows[] = {
    { "mon", MON }, { "Monday", MON }, { "MONDAYS", MON }, { " tue ", TUE }, { "Tues", TUE }, { "Tu.", TUE }, { "Weds", WED },
    { "Thurs", THU }, { "th", THU }, { "Sa", SAT }, { "su", SUN }, { "Mon, Wed, Fri", MON | WED | FRI },
    { "mon/wed", MON | WED }, { "Mon & Thu", MON | THU }, { "Mon Wed Fri", MON | WED | FRI }, { "Mon–Fri", 31 },
    { "Mon - Wed, Sat", MON | TUE | WED | SAT }, { "Sat-Mon", SAT | SUN | MON }, { "Tue-Tue", TUE }, { "Mon,", MON },
    { "Mon-", MON },
    { "", 0 }, { "t", 0 }, { "s", 0 }, { "Funday", 0 }, { "Mon, Funday", 0 }, { "1", 0 }, { "Mondayy", 0 },
    { ",", 0 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    if (lap_cell_days (rows[i].text) != rows[i].days)
      g_error ("“%s” gave %u", rows[i].text, lap_cell_days (rows[i].text));
}

static void
test_times (void)
{
  static const struct { const char *text; int minutes; } rows[] = {
    { "18:30", 1110 }, { "6:30", 390 }, { "06:30", 390 }, { "18.30", 1110 }, { "18h30", 1110 }, { "18h", 1080 },
    { "18 h", 1080 }, { "1830", 1110 }, { "630", 390 }, { "18:30:00", 1110 }, { "6:30 pm", 1110 }, { "6.30pm", 1110 },
    { "6 P.M.", 1080 }, { "12 am", 0 }, { "12:15 pm", 735 }, { "18.30 Uhr", 1110 }, { "24:00", 1440 }, { "0:00", 0 },
    { "٠٦:٣٠", 390 }, { " 18:30 ", 1110 },
    { "", -1 }, { "18", -1 }, { "half six", -1 }, { "24:01", -1 }, { "18:60", -1 }, { "18:3", -1 }, { "13 pm", -1 },
    { "0 am", -1 }, { "18:30:15", -1 }, { "12345", -1 }, { "18:30x", -1 }, { "-6:30", -1 }, { "18:30!", -1 }, { "0.77", -1 },
  };
  int start, end;

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    if (lap_cell_time (rows[i].text, LAP_DAY_MINUTES) != rows[i].minutes)
      g_error ("“%s” gave %d", rows[i].text, lap_cell_time (rows[i].text, LAP_DAY_MINUTES));
  g_assert_true (lap_cell_times ("18:30 – 19:15", &start, &end) && start == 1110 && end == 1155);
  g_assert_true (lap_cell_times ("6pm-7pm", &start, &end) && start == 1080 && end == 1140);
  g_assert_true (lap_cell_times ("18:30", &start, &end) && start == 1110 && end == -1);
  g_assert_false (lap_cell_times ("18:30-", &start, &end));
  g_assert_false (lap_cell_times ("24:00", &start, &end));
}

static void
test_lengths (void)
{
  static const struct { const char *text; int minutes; } rows[] = {
    { "45", 45 }, { "45 min", 45 }, { "45min.", 45 }, { "45'", 45 }, { "0:45", 45 }, { "1:00", 60 }, { "1:00:00", 60 },
    { "1h", 60 }, { "1 h 15", 75 }, { "1 h 15 min", 75 }, { "90 minutes", 90 }, { "0", 0 },
    { "", -1 }, { "long", -1 }, { "45 s", -1 }, { "1:", -1 }, { "1:75", -1 }, { "-45", -1 }, { "45.5", -1 }, { "1 hour", -1 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    if (lap_cell_minutes (rows[i].text) != rows[i].minutes)
      g_error ("“%s” gave %d", rows[i].text, lap_cell_minutes (rows[i].text));
}

static void
test_words (void)
{
  static const struct { const char *text; int flag; } rows[] = {
    { "yes", 1 }, { "Yes", 1 }, { "x", 1 }, { "TRUE", 1 }, { "no", 0 }, { "", 0 }, { "0", 0 }, { "maybe", -1 }, { "✓", -1 },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    g_assert_cmpint (lap_cell_flag (rows[i].text), ==, rows[i].flag);
  g_assert_cmpuint (lap_cell_words ("thighs front-core", &lap_regions), ==,
                    LAP_BIT (lap_words_find (&lap_regions, "thighs")) | LAP_BIT (lap_words_find (&lap_regions, "front-core")));
  g_assert_cmpuint (lap_cell_words ("Front core; Chest", &lap_regions), ==,
                    LAP_BIT (lap_words_find (&lap_regions, "front-core")) | LAP_BIT (lap_words_find (&lap_regions, "chest")));
  g_assert_cmpuint (lap_cell_words ("thighs, elbow", &lap_regions), ==, 0);
}

static void
test_fold (void)
{
  static const char *const rows[][2] = {
    { "Día de la Semana", "diadelasemana" }, { "in-out", "inout" }, { "TAKES PART?", "takespart" }, { "Çà", "ca" }, { "—", "" },
    { "ΏΡΑ", "ωρα" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++) {
    g_autofree char *folded = lap_cell_fold (rows[i][0]);

    g_assert_cmpstr (folded, ==, rows[i][1]);
  }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/store/class-cells/days", test_days);
  g_test_add_func ("/store/class-cells/times", test_times);
  g_test_add_func ("/store/class-cells/lengths", test_lengths);
  g_test_add_func ("/store/class-cells/words", test_words);
  g_test_add_func ("/store/class-cells/fold", test_fold);
  return g_test_run ();
}
