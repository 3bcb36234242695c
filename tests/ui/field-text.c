/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What people type for dates, times and hours, and what it is taken for. Dates of the locale are those of C, month
 * before day: ISO/IEC 9899, 7.27.3.5, "%x" in the C locale is "%m/%d/%y".
 */
#include "ui/field-text.h"

#include "model/exception.h"
#include "model/part.h"
#include "model/when.h"
#include "support/locales.h"

static const struct { const LapKind *kind; const char *typed, *read; /* NULL: not at all */ } lines[] = {
  { &lap_kind_date, "2027-01-11", "2027-01-11" },
  { &lap_kind_date, " 2027-01-11 ", "2027-01-11" },
  { &lap_kind_date, "01/11/2027", "2027-01-11" },
  { &lap_kind_date, "1/11/27", "2027-01-11" },
  { &lap_kind_date, "11 Jan 2027", "2027-01-11" },
  { &lap_kind_date, "January 11, 2027", "2027-01-11" },
  { &lap_kind_date, "", "" },
  { &lap_kind_date, "2027-02-30", NULL },
  { &lap_kind_date, "soon", NULL },
  { &lap_kind_date, "12", NULL },
  { &lap_kind_closed.kind, "2027-02-09", "2027-02-09" },
  { &lap_kind_closed.kind, "2027-02-16–2027-02-20", "2027-02-16–2027-02-20" },
  { &lap_kind_closed.kind, "2027-02-16-2027-02-20", "2027-02-16–2027-02-20" },
  { &lap_kind_closed.kind, "2027-02-09, 02/16/2027 - 02/20/2027", "2027-02-09, 2027-02-16–2027-02-20" },
  { &lap_kind_closed.kind, "16 Feb 2027-20 Feb 2027", "2027-02-16–2027-02-20" },
  { &lap_kind_closed.kind, "2027-02-20-2027-02-16", NULL },
  { &lap_kind_time, "18:30", "18:30" },
  { &lap_kind_time, "7.05", "07:05" },
  { &lap_kind_time, "7", "07:00" },
  { &lap_kind_time, "25:00", NULL },
  { &lap_kind_pair, "17-20:30", "17:00–20:30" },
  { &lap_kind_hours, "6-12, 16:00–20:00", "06:00–12:00, 16:00–20:00" },
  { &lap_kind_hours, "12-6", NULL },
  { &lap_kind_reps, "10", "10" },
  { &lap_kind_reps, "8 - 12", "8–12" },
  { &lap_kind_reps, "8–8", "8" },
  { &lap_kind_reps, "", "" },
  { &lap_kind_reps, "12-8", NULL },
  { &lap_kind_reps, "0", NULL },
  { &lap_kind_reps, "many", NULL },
  { &lap_kind_steps.kind, "30/30, 40 / 20,45/0", "30/30, 40/20, 45/0" },
  { &lap_kind_steps.kind, "", "" },
  { &lap_kind_steps.kind, "30", NULL },
  { &lap_kind_steps.kind, "0/20", NULL },
  { &lap_kind_steps.kind, "30/20/10", NULL },
};

static void
test_lines (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (lines); i++) {
    const LapField field = { .kind = lines[i].kind };
    g_auto (GValue) value = G_VALUE_INIT;
    gboolean read = lap_field_parse (&field, lines[i].typed, &value);
    g_autofree char *text = read ? lap_field_text (&field, &value) : NULL;

    g_test_message ("“%s”", lines[i].typed);
    g_assert_cmpstr (text, ==, lines[i].read);
  }
}

/* People type times in either way, wherever they are; what is shown is as there. Outside: Unicode CLDR 42, supplemental
 * data, timeData: h in the United States, H in Germany. */
static void
test_times (void)
{
  static const struct { const char *typed; int minutes; } times[] = {
    { "18:30", 1110 }, { "6:30 pm", 1110 }, { "6:30 PM", 1110 }, { "6.30 p.m.", 1110 }, { "6pm", 1080 }, { "18h30", 1110 },
    { "06:30", 390 }, { "6:30", 390 }, { "6:30 am", 390 }, { "12 am", 0 }, { "12:15 pm", 735 }, { "13:00 pm", -1 },
    { "0:30 am", -1 }, { "6:75 pm", -1 }, { "pm", -1 },
  };
  static const struct { const char *locale, *shown, *hours; } places[] = {
    { "C.UTF-8", "18:30", "07:00–21:30" }, { "de_DE.UTF-8", "18:30", "07:00–21:30" },
    { "en_US.UTF-8", "6:30\xc2\xa0PM", "7:00\xc2\xa0" "AM–9:30\xc2\xa0PM" },
  };
  const LapField time = { .kind = &lap_kind_time }, hours = { .kind = &lap_kind_hours };

  for (guint p = 0; p < G_N_ELEMENTS (places); p++) {
    static const char *const spans[] = { "7-21:30", "7 am - 9:30 pm", "07:00–9:30pm" };

    locales_go (places[p].locale);
    for (guint i = 0; i < G_N_ELEMENTS (times); i++) {
      g_auto (GValue) value = G_VALUE_INIT;
      gboolean read = lap_field_parse (&time, times[i].typed, &value);
      g_autofree char *text = lap_field_text (&time, &value);

      g_test_message ("“%s” at %s", times[i].typed, places[p].locale);
      g_assert_true (read == (times[i].minutes >= 0));
      g_assert_cmpint (g_value_get_int (&value), ==, times[i].minutes);
      if (times[i].minutes == 1110)
        g_assert_cmpstr (text, ==, places[p].shown);
    }
    for (guint i = 0; i < G_N_ELEMENTS (spans); i++) {
      g_auto (GValue) value = G_VALUE_INIT;
      g_autofree char *text = NULL;

      g_assert_true (lap_field_parse (&hours, spans[i], &value));
      text = lap_field_text (&hours, &value);
      g_assert_cmpstr (text, ==, places[p].hours);
    }
  }
  locales_go ("C.UTF-8");
}

int
main (int argc, char **argv)
{
  locales_begin ("de_DE.UTF-8", "en_US.UTF-8", NULL);
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/field-text/lines", test_lines);
  g_test_add_func ("/field-text/times", test_times);
  return g_test_run ();
}
