/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A week begins with the day that people where the program runs begin it with, on the screen and on what the window
 * prints; what commands make is the same everywhere. Locales are made for the test by localedef(1). Outside: Unicode CLDR
 * 42, supplemental data, weekData: Sunday in the United States, Saturday in Egypt, Monday in Germany. The 17th of January
 * 2027 is a Sunday (ISO 8601 calendar).
 */
#include "support/locales.h"
#include "ui/week-room.h"
#include "ui/windows.h"

#include "sheets/week-sheets.h"
#include "ui/document-sheets.h"
#include "ui/field-text.h"
#include "ui/fields.h"
#include "ui/week/moves.h"
#include "ui/week/scene.h"

static void
room_begin (Room *room)
{
  room_make (room);
  room_open (room);
}

static void
assert_days (Room *room, LapDay first)
{
  const LapWeekScore *score = room->scene->score;

  g_assert_cmpuint (score->n_bands, ==, LAP_N_DAYS);
  for (guint i = 0; i < LAP_N_DAYS; i++)
    g_assert_cmpint (score->bands[i].day, ==, lap_day_nth (first, i));
}

/* The bands of the week as it always is, and of one with dates: each date on its day, and classes in their bands. */
static void
test_view (void)
{
  static const struct {
    const char *locale;
    LapDay      first;
    const char *begins; /* the week of Wednesday, 20 January 2027 */
  } places[] = {
    { "C.UTF-8", LAP_DAY_MON, "2027-01-18" }, { "de_DE.UTF-8", LAP_DAY_MON, "2027-01-18" },
    { "en_US.UTF-8", LAP_DAY_SUN, "2027-01-17" }, { "ar_EG.UTF-8", LAP_DAY_SAT, "2027-01-16" },
  };

  for (guint i = 0; i < G_N_ELEMENTS (places); i++) {
    Room room;

    locales_go (places[i].locale);
    room_begin (&room);
    assert_days (&room, places[i].first);
    lap_document_set_date (room.document, lap_date_parse ("2027-01-20"));
    windows_settle (room.window);
    g_assert_cmpint (lap_document_date (room.document), ==, lap_date_parse (places[i].begins));
    assert_days (&room, places[i].first);
    for (guint b = 0; b < LAP_N_DAYS; b++) {
      const LapWeekBand *band = &room.scene->score->bands[b];

      g_assert_cmpint (band->date, ==, lap_date_parse (places[i].begins) + b);
      g_assert_cmpint (lap_date_day (band->date), ==, band->day);
    }
    for (guint b = 0; b < room.scene->score->n; b++) {
      const LapWeekBox *box = &room.scene->score->boxes[b];
      const LapOccurrence *o = lap_occurrence_nth (room.scene->score->occurrences, box->occurrence);

      g_assert_cmpint (room.scene->score->bands[room.scene->score->rows[box->row].band].date, ==, o->date);
    }
    room_close (&room);
  }
  locales_go ("C.UTF-8");
}

/* A day back from the first is out of the week, a day on is the next one there. */
static void
test_neighbours (void)
{
  LapPlace place = { .day = LAP_DAY_SUN };

  locales_go ("en_US.UTF-8");
  g_assert_false (lap_week_shift_day (&place, -1));
  g_assert_true (lap_week_shift_day (&place, 1));
  g_assert_cmpint (place.day, ==, LAP_DAY_MON);
  g_assert_true (lap_week_shift_day (&place, 5));
  g_assert_cmpint (place.day, ==, LAP_DAY_SAT);
  g_assert_false (lap_week_shift_day (&place, 1));
  locales_go ("C.UTF-8");
  place.day = LAP_DAY_SUN;
  g_assert_false (lap_week_shift_day (&place, 1));
  g_assert_true (lap_week_shift_day (&place, -6));
  g_assert_cmpint (place.day, ==, LAP_DAY_MON);
}

/* Where the days begin in the outline of @pages. */
static const char *
first_day (LapPages *pages)
{
  for (guint i = 0; i < pages->outline->len; i++)
    for (guint day = 0; day < LAP_N_DAYS; day++)
      if (g_str_equal (g_array_index (pages->outline, LapOutline, i).title, lap_words_label (&lap_days, day)))
        return lap_words_id (&lap_days, day);
  return NULL;
}

/* The window prints what it shows. */
static void
test_sheet (void)
{
  LapSheetOptions options = { .paper = LAP_PAPER_A3, .landscape = TRUE };
  static const struct { const char *locale, *first; } places[] = { { "C.UTF-8", "mon" }, { "en_US.UTF-8", "sun" } };

  for (guint i = 0; i < G_N_ELEMENTS (places); i++)
    for (int dated = 0; dated < 2; dated++) {
      g_autoptr (LapPages) pages = NULL;
      Room room;

      locales_go (places[i].locale);
      room_begin (&room);
      lap_document_set_date (room.document, dated ? lap_date_parse ("2027-01-20") : 0);
      pages = lap_document_pages (room.document, lap_document_sheets_nth (room.document, 0), &options);
      g_assert_cmpstr (first_day (pages), ==, places[i].first);
      room_close (&room);
    }
  locales_go ("C.UTF-8");
}

static GtkWidget *
titled (GtkWidget *widget, const char *title)
{
  GtkWidget *found = NULL;

  if (ADW_IS_PREFERENCES_ROW (widget) && g_strcmp0 (adw_preferences_row_get_title (ADW_PREFERENCES_ROW (widget)), title) == 0)
    return widget;
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL && found == NULL;
       child = gtk_widget_get_next_sibling (child))
    found = titled (child, title);
  return found;
}

/* Whether the row of the one title is above the other's. */
static gboolean
comes_before (GtkWidget *window, const char *a, const char *b)
{
  GtkWidget *rows[2] = { NULL, NULL };
  const char *titles[] = { a, b };
  graphene_rect_t bounds[2];

  for (guint i = 0; i < 2; i++) {
    rows[i] = titled (window, titles[i]);
    g_assert_nonnull (rows[i]);
    g_assert_true (gtk_widget_compute_bounds (rows[i], window, &bounds[i]));
  }
  return bounds[0].origin.y < bounds[1].origin.y;
}

/* The rows of opening hours. */
static void
test_properties (void)
{
  static const char *const places[] = { "C.UTF-8", "en_US.UTF-8" };

  for (guint i = 0; i < G_N_ELEMENTS (places); i++) {
    GtkWindow *dialog;
    Room room;

    locales_go (places[i]);
    room_begin (&room);
    gtk_widget_activate_action (GTK_WIDGET (room.window), "win.properties", NULL);
    dialog = windows_dialog (room.window);
    gtk_test_widget_wait_for_draw (GTK_WIDGET (dialog));
    g_assert_true (comes_before (GTK_WIDGET (dialog), "Monday", "Saturday"));
    g_assert_true (comes_before (GTK_WIDGET (dialog), "Sunday", "Monday") == (i == 1));
    gtk_window_destroy (dialog);
    g_object_unref (dialog);
    room_close (&room);
  }
  locales_go ("C.UTF-8");
}

/* A floor is told and typed in square feet, of 0.3048 m (ISO 80000-3), and kept in square metres; times are as there. */
static void
test_units (void)
{
  static const LapFieldSpec spec = { "area", "Floor", "Square metres", .in_feet = "Square feet" };
  const LapField time = { .kind = &lap_kind_time };
  g_autoptr (LapDocument) document = week_document ();
  LapRoom *room = lap_list_nth (lap_document_week (document)->rooms, 0);
  g_autoptr (GPtrArray) rooms = g_ptr_array_new ();
  g_autoptr (LapFields) fields = NULL;
  GtkWidget *row, *spin;
  double area;

  g_assert_cmpstr (lap_field_hint (&time), ==, "A time, as 18:30");
  locales_go ("en_US.UTF-8");
  g_assert_cmpstr (lap_field_hint (&time), ==, "A time, as 6:30\xc2\xa0PM");
  g_ptr_array_add (rooms, room);
  g_object_set (room, "area", 120.0, NULL);
  fields = lap_fields_new (document, LAP_TYPE_ROOM);
  row = g_object_ref_sink (lap_fields_row (fields, &spec));
  lap_fields_show (fields, rooms);
  spin = windows_find (row, GTK_TYPE_SPIN_BUTTON, NULL);
  g_assert_cmpstr (adw_action_row_get_subtitle (ADW_ACTION_ROW (row)), ==, "Square feet");
  g_assert_cmpfloat_with_epsilon (gtk_spin_button_get_value (GTK_SPIN_BUTTON (spin)), 120 / (0.3048 * 0.3048), 1e-6);
  gtk_spin_button_set_value (GTK_SPIN_BUTTON (spin), 1291.7); /* as it is shown: nobody typed anything */
  g_assert_cmpfloat (room->area, ==, 120);
  gtk_spin_button_set_value (GTK_SPIN_BUTTON (spin), 1000);
  g_object_get (room, "area", &area, NULL);
  g_assert_cmpfloat_with_epsilon (area, 92.90304, 1e-6);
  /* As on a plan that has metres. */
  gtk_editable_set_text (GTK_EDITABLE (spin), "40 m²");
  gtk_spin_button_update (GTK_SPIN_BUTTON (spin));
  g_assert_cmpfloat (room->area, ==, 40);
  g_assert_cmpstr (gtk_editable_get_text (GTK_EDITABLE (spin)), ==, "430.6");
  gtk_editable_set_text (GTK_EDITABLE (spin), "large");
  gtk_spin_button_update (GTK_SPIN_BUTTON (spin));
  g_assert_cmpfloat (room->area, ==, 40);
  g_object_unref (row);
  locales_go ("C.UTF-8");
}

/* A sheet that nobody asks for another order, as commands don't. */
static void
test_command (void)
{
  g_autoptr (LapDocument) document = week_document ();
  LapSheetOptions options = { .paper = LAP_PAPER_A3, .landscape = TRUE };
  g_autoptr (LapPages) pages = NULL;

  locales_go ("en_US.UTF-8");
  pages = lap_week_sheet_pages (lap_week_sheets_find ("week"), &(LapWeekSubject) { lap_document_week (document), 0 }, &options);
  g_assert_cmpstr (first_day (pages), ==, "mon");
  locales_go ("C.UTF-8");
}

int
main (int argc, char **argv)
{
  locales_begin ("de_DE.UTF-8", "en_US.UTF-8", "ar_EG.UTF-8", NULL);
  windows_init (&argc, &argv);
  g_test_add_func ("/first-day/view", test_view);
  g_test_add_func ("/first-day/neighbours", test_neighbours);
  g_test_add_func ("/first-day/sheet", test_sheet);
  g_test_add_func ("/first-day/properties", test_properties);
  g_test_add_func ("/first-day/units", test_units);
  g_test_add_func ("/first-day/command", test_command);
  return g_test_run ();
}
