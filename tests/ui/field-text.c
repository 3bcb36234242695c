/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What people type for dates, times and hours, and what it is taken for. Dates of the locale are those of C, month
 * before day: ISO/IEC 9899, 7.27.3.5, "%x" in the C locale is "%m/%d/%y".
 */
#include "ui/field-text.h"

#include "model/exception.h"
#include "model/part.h"
#include "model/when.h"

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

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/field-text/lines", test_lines);
  return g_test_run ();
}
