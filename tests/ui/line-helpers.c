/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What helps to fill in a line: the calendar and the list of timezones. The names are those of the IANA database, as
 * the system has it.
 */
#include "ui/windows.h"

#include "ui/date-button.h"
#include "ui/zone-button.h"

typedef struct {
  GtkWidget *window, *row, *button, *popover;
  guint      entered; /* how often what stands there counted */
} Fixture;

static void
entered_cb (Fixture *f)
{
  f->entered++;
}

static void
run (void)
{
  while (g_main_context_iteration (NULL, FALSE))
    ;
}

static void
begin (Fixture *f, GtkWidget *(*helper) (AdwEntryRow *row), const char *text)
{
  f->window = gtk_window_new ();
  f->row = adw_entry_row_new ();
  f->entered = 0;
  gtk_editable_set_text (GTK_EDITABLE (f->row), text);
  f->button = helper (ADW_ENTRY_ROW (f->row));
  adw_entry_row_add_suffix (ADW_ENTRY_ROW (f->row), f->button);
  g_signal_connect_swapped (f->row, "entry-activated", G_CALLBACK (entered_cb), f);
  gtk_window_set_child (GTK_WINDOW (f->window), f->row);
  gtk_window_present (GTK_WINDOW (f->window));
  gtk_test_widget_wait_for_draw (f->window);
  f->popover = GTK_WIDGET (gtk_menu_button_get_popover (GTK_MENU_BUTTON (f->button)));
  gtk_menu_button_popup (GTK_MENU_BUTTON (f->button));
  run ();
}

static void
choose_day (Fixture *f, int year, int month, int day)
{
  g_autoptr (GDateTime) date = g_date_time_new_local (year, month, day, 12, 0, 0);

  gtk_calendar_select_day (GTK_CALENDAR (windows_find (f->popover, GTK_TYPE_CALENDAR, NULL)), date);
  gtk_popover_popdown (GTK_POPOVER (f->popover));
  run ();
}

static void
end (Fixture *f, const char *text, guint entered)
{
  g_assert_cmpstr (gtk_editable_get_text (GTK_EDITABLE (f->row)), ==, text);
  g_assert_cmpuint (f->entered, ==, entered);
  gtk_window_destroy (GTK_WINDOW (f->window));
}

static void
test_date (void)
{
  Fixture f;
  g_autoptr (GDateTime) shown = NULL;

  begin (&f, lap_date_button_new, "2027-03-28");
  shown = gtk_calendar_get_date (GTK_CALENDAR (windows_find (f.popover, GTK_TYPE_CALENDAR, NULL)));
  g_assert_cmpint (g_date_time_get_month (shown), ==, 3);
  g_assert_cmpint (g_date_time_get_day_of_month (shown), ==, 28);
  choose_day (&f, 2027, 4, 2);
  end (&f, "2027-04-02", 1);
}

/* Closed without a choice, nothing counts. */
static void
test_no_date (void)
{
  Fixture f;

  begin (&f, lap_date_button_new, "2027-03-28");
  gtk_popover_popdown (GTK_POPOVER (f.popover));
  run ();
  end (&f, "2027-03-28", 0);
}

static void
test_dates (void)
{
  Fixture f;

  begin (&f, lap_date_button_new_list, "2027-02-09");
  choose_day (&f, 2027, 2, 16);
  end (&f, "2027-02-09, 2027-02-16", 1);
  begin (&f, lap_date_button_new_list, "");
  choose_day (&f, 2027, 2, 16);
  end (&f, "2027-02-16", 1);
}

static void
look_for (Fixture *f, const char *text)
{
  GtkWidget *search = windows_find (f->popover, GTK_TYPE_SEARCH_ENTRY, NULL);

  gtk_editable_set_text (GTK_EDITABLE (search), text);
  g_signal_emit_by_name (search, "activate");
  run ();
}

static void
test_zone (void)
{
  Fixture f;

  begin (&f, lap_zone_button_new, "UTC");
  look_for (&f, "new york");
  g_assert_false (gtk_widget_get_visible (f.popover));
  end (&f, "America/New_York", 1);
  begin (&f, lap_zone_button_new, "UTC");
  look_for (&f, "lisb");
  end (&f, "Europe/Lisbon", 1);
  begin (&f, lap_zone_button_new, "UTC");
  look_for (&f, "Nowhere at all");
  end (&f, "UTC", 0);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/line-helpers/date", test_date);
  g_test_add_func ("/line-helpers/no-date", test_no_date);
  g_test_add_func ("/line-helpers/dates", test_dates);
  g_test_add_func ("/line-helpers/zone", test_zone);
  return g_test_run ();
}
