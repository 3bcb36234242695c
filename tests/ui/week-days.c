/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Days of a week by mouse and keyboard, where a week begins on Monday and where on Sunday: classes that are carried from
 * day to day, and the calendar in which a week is chosen. Outside: Unicode CLDR 42, supplemental data, weekData: Sunday in
 * the United States, Monday in Germany. The 17th of January 2027 is a Sunday (ISO 8601 calendar).
 */
#include "support/locales.h"
#include "ui/rows.h"
#include "ui/week-room.h"
#include "ui/windows.h"

#include "ui/week-calendar.h"
#include "ui/week/scene.h"
#include "ui/week/strip.h"

static const struct {
  const char *locale;
  LapDay      first;
  const char *begins; /* the week of Sunday, 17 January 2027 */
} places[] = {
  { "de_DE.UTF-8", LAP_DAY_MON, "2027-01-11" }, { "en_US.UTF-8", LAP_DAY_SUN, "2027-01-17" },
};

static void
room_begin (Room *room)
{
  room_make (room);
  room_open (room);
  gtk_window_set_default_size (GTK_WINDOW (room->window), 1400, 960);
  windows_settle (room->window);
  hands_on (GTK_WINDOW (room->window));
}

/* On the line of @line, where the @minute of @day is. */
static graphene_point_t
point_at (Room *room, int day, const char *line, double minute)
{
  const LapWeekScore *score = room->scene->score;
  const LapWeekRow *row = &score->rows[lap_week_score_row (score, day, line)];

  return GRAPHENE_POINT_INIT (lap_week_score_x (score, room->scene->axis, minute), row->y + score->crest + score->bar / 2.0);
}

/* By its middle. */
static void
carry (Room *room, const char *id, int from_day, int to_day)
{
  LapClass *c = week_class (room->document, id);
  double middle = c->start + c->minutes / 2.0;
  graphene_point_t from = point_at (room, from_day, c->room, middle), to = point_at (room, to_day, c->room, middle);
  GtkWidget *strip = GTK_WIDGET (lap_week_view_strip (room->view));

  hands_drag (strip, from.x, from.y, strip, to.x, to.y);
}

/* From Wednesday onto Sunday, which is above or below it, and with another one on, by as many days as they are drawn
 * apart; what goes out of the week goes nowhere. */
static void
test_carry (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (places); i++) {
    gboolean above = places[i].first == LAP_DAY_SUN;
    LapClass *noon, *dawn;
    Room room;

    locales_go (places[i].locale);
    room_begin (&room);
    noon = week_class (room.document, "noon");
    dawn = week_class (room.document, "dawn");
    g_assert_true ((point_at (&room, LAP_DAY_SUN, "yard", 0).y < point_at (&room, LAP_DAY_MON, "yard", 0).y) == above);
    carry (&room, "noon", LAP_DAY_WED, LAP_DAY_SUN);
    g_assert_cmpint (noon->day, ==, LAP_DAY_SUN);
    g_assert_cmpint (noon->start, ==, 12 * 60 + 15);
    carry (&room, "noon", LAP_DAY_SUN, LAP_DAY_TUE);
    g_assert_cmpint (noon->day, ==, LAP_DAY_TUE);
    /* Both: dawn is the day before it, which there is no more where the week begins with Monday. */
    lap_week_scene_pick (room.scene, "dawn", LAP_PICK_ONLY);
    lap_week_scene_pick (room.scene, "noon", LAP_PICK_TOGGLE);
    windows_settle (room.window);
    carry (&room, "noon", LAP_DAY_TUE, LAP_DAY_MON);
    g_assert_cmpint (noon->day, ==, above ? LAP_DAY_MON : LAP_DAY_TUE);
    g_assert_cmpint (dawn->day, ==, above ? LAP_DAY_SUN : LAP_DAY_MON);
    room_close (&room);
  }
  locales_go ("C.UTF-8");
}

/* In a week with dates: onto the date that the day has there. */
static void
test_carry_dated (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (places); i++) {
    int sunday = lap_date_parse ("2027-01-17"), first = lap_date_parse (places[i].begins), was;
    LapException *e;
    Room room;

    locales_go (places[i].locale);
    room_begin (&room);
    lap_document_set_date (room.document, sunday);
    windows_settle (room.window);
    g_assert_cmpint (lap_document_date (room.document), ==, first);
    was = first + lap_day_place (places[i].first, LAP_DAY_WED);
    carry (&room, "noon", LAP_DAY_WED, LAP_DAY_SUN);
    e = lap_week_exception (lap_document_week (room.document), "noon", was);
    g_assert_nonnull (e);
    g_assert_cmpint (e->to, ==, sunday);
    g_assert_cmpint (week_class (room.document, "noon")->day, ==, LAP_DAY_WED);
    room_close (&room);
  }
  locales_go ("C.UTF-8");
}

static GtkWidget *
calendar_of (Room *room)
{
  GtkWidget *calendar = windows_find (GTK_WIDGET (room->window), LAP_TYPE_WEEK_CALENDAR, NULL);

  g_assert_nonnull (calendar);
  return calendar;
}

static gboolean
is_gone (gpointer popover)
{
  return !gtk_widget_get_mapped (popover);
}

static GtkWidget *
open_calendar (Room *room)
{
  GtkWidget *popover;

  hands_click_on (windows_find (GTK_WIDGET (room->window), GTK_TYPE_MENU_BUTTON, "choose"));
  popover = calendar_of (room);
  hands_until (rows_is_mapped, popover);
  return popover;
}

static void
type_date (GtkWidget *popover, const char *text)
{
  hands_click_on (windows_find (popover, GTK_TYPE_TEXT, NULL));
  hands_press ("<Control>a");
  hands_type (text);
  hands_press ("Return");
}

/* Typed as in files or as people write it there, chosen by its day, or the one of today. */
static void
test_calendar (void)
{
  static const char *const same[] = { "17.01.2027", "01/17/2027" }; /* "%x" of both, glibc */

  for (guint i = 0; i < G_N_ELEMENTS (places); i++) {
    int first = lap_date_parse (places[i].begins);
    GtkWidget *popover, *wrong;
    Room room;

    locales_go (places[i].locale);
    room_begin (&room);
    popover = open_calendar (&room);
    wrong = windows_find (popover, GTK_TYPE_LABEL, "wrong");
    type_date (popover, "next week");
    g_assert_true (gtk_widget_get_mapped (wrong));
    g_assert_cmpint (lap_document_date (room.document), ==, 0);
    type_date (popover, "2027-01-17");
    hands_until (is_gone, popover);
    g_assert_cmpint (lap_document_date (room.document), ==, first);
    lap_document_set_date (room.document, 0);
    popover = open_calendar (&room);
    g_assert_false (gtk_widget_get_mapped (wrong));
    type_date (popover, same[i]);
    hands_until (is_gone, popover);
    g_assert_cmpint (lap_document_date (room.document), ==, first);
    /* It opens at the week that is looked at; a day of it goes to that day's week. */
    popover = open_calendar (&room);
    g_assert_cmpstr (gtk_editable_get_text (GTK_EDITABLE (windows_find (popover, GTK_TYPE_ENTRY, "entry"))), ==,
                     places[i].begins);
    rows_click_text (popover, "26");
    g_assert_cmpint (lap_document_date (room.document), ==, lap_date_week (lap_date_parse ("2027-01-26"), places[i].first));
    hands_press ("Escape");
    hands_until (is_gone, popover);
    popover = open_calendar (&room);
    rows_by_mouse.press (popover, "This week");
    hands_until (is_gone, popover);
    g_assert_cmpint (lap_document_date (room.document), ==, lap_date_week (lap_today (), places[i].first));
    room_close (&room);
  }
  locales_go ("C.UTF-8");
}

int
main (int argc, char **argv)
{
  locales_begin ("de_DE.UTF-8", "en_US.UTF-8", NULL);
  windows_init (&argc, &argv);
  g_test_add_func ("/week-days/carry", test_carry);
  g_test_add_func ("/week-days/carry-dated", test_carry_dated);
  g_test_add_func ("/week-days/calendar", test_calendar);
  return g_test_run ();
}
