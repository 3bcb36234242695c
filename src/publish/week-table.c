/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/week-table.h"

#include "base/error.h"
#include "model/occurrences.h"
#include "publish/csv.h"

#include <glib/gi18n-lib.h>

/* In the order of LapOccurrenceState. */
static const char *const states[] = { "held", "cancelled", "closed", "moved" };

/* The day of @what, 0 where none is said. FALSE where it is no date. */
static gboolean
find_date (const LapPublication *what, int *date, GError **error)
{
  *date = what->from != NULL ? lap_date_monday (lap_date_parse (what->from)) : 0;
  if (what->from == NULL || *date != 0)
    return TRUE;
  g_set_error (error, LAP_ERROR, LAP_ERROR_USAGE, _("%s: expected a date, as 2027-01-11"), what->from);
  return FALSE;
}

static void
put_time (GString *csv, int minutes)
{
  g_autofree char *text = lap_time_text (minutes);

  lap_csv_text (csv, text, FALSE);
}

static void
put_list (GString *csv, char **ids)
{
  g_autofree char *text = ids != NULL ? g_strjoinv (" ", ids) : NULL;

  lap_csv_text (csv, text, FALSE);
}

static void
put_flag (GString *csv, gboolean flag)
{
  lap_csv_text (csv, flag ? "yes" : "no", FALSE);
}

/* What store/class-table.h needs to make the same class again. */
static void
put_details (GString *csv, const LapClass *c)
{
  g_autofree char *from = c->wish_between != NULL ? lap_time_text (c->wish_between->spans[0].start) : NULL;
  g_autofree char *until = c->wish_between != NULL ? lap_time_text (c->wish_between->spans[0].end) : NULL;
  g_autofree char *between = from != NULL ? g_strconcat (from, "-", until, NULL) : NULL;

  lap_csv_text (csv, c->strain >= 0 ? lap_words_id (&lap_strains, c->strain) : NULL, FALSE);
  lap_csv_text (csv, c->session, FALSE);
  put_list (csv, c->regions);
  lap_csv_whole (csv, c->in_out, c->in_out > 0);
  put_flag (csv, c->takes_part);
  put_flag (csv, c->fixed);
  put_list (csv, c->wish_days);
  lap_csv_text (csv, between, TRUE);
}

static void
put_class (GString *csv, const LapWeek *week, const LapClass *c, const char *room, const char *coach, const char *state)
{
  const LapRoom *its_room = lap_week_room (week, room);
  const LapCoach *its_coach = lap_week_coach (week, coach);

  lap_csv_whole (csv, c->minutes, TRUE);
  lap_csv_text (csv, c->id, FALSE);
  lap_csv_text (csv, lap_class_title (c), FALSE);
  lap_csv_text (csv, c->kind, FALSE);
  lap_csv_text (csv, c->for_whom, FALSE);
  lap_csv_text (csv, its_room != NULL ? lap_room_title (its_room) : NULL, FALSE);
  lap_csv_text (csv, its_coach != NULL ? lap_coach_title (its_coach) : NULL, FALSE);
  lap_csv_whole (csv, c->places, c->places > 0);
  lap_csv_text (csv, state, FALSE);
  put_details (csv, c);
}

gboolean
lap_week_table_write (const LapPublication *what, const char *suffix, LapOutput *output, GError **error)
{
  const LapWeek *week = LAP_WEEK (what->week);
  g_autoptr (GArray) all = NULL;
  GString *csv;
  int date;

  if (!find_date (what, &date, error))
    return FALSE;
  csv = g_string_new ("date,day,start,end,minutes,class,title,kind,for,room,coach,places,state,effort,session,regions,"
                      "in-out,takes-part,fixed,wish-days,wish-between\r\n");
  all = lap_occurrences_new (week, date);
  for (guint i = 0; i < all->len; i++) {
    const LapOccurrence *o = lap_occurrence_nth (all, i);
    g_autofree char *day = o->date != 0 ? lap_date_text (o->date) : NULL;

    lap_csv_text (csv, day, FALSE);
    lap_csv_text (csv, lap_words_id (&lap_days, o->day), FALSE);
    put_time (csv, o->start);
    put_time (csv, o->start + o->c->minutes);
    put_class (csv, week, o->c, o->room, o->coach, states[o->state]);
  }
  for (guint i = 0; i < lap_list_n (week->classes); i++) {
    const LapClass *c = lap_list_nth (week->classes, i);

    if (lap_class_is_placed (c))
      continue;
    g_string_append (csv, ",,,,");
    put_class (csv, week, c, c->room, c->coach, "unplaced");
  }
  return lap_output_write_text (output, csv, error);
}

gboolean
lap_hours_write (const LapPublication *what, const char *suffix, LapOutput *output, GError **error)
{
  const LapWeek *week = LAP_WEEK (what->week);
  g_autoptr (GArray) all = NULL;
  GString *csv;
  int date;

  if (!find_date (what, &date, error))
    return FALSE;
  csv = g_string_new ("coach,name,classes,mon,tue,wed,thu,fri,sat,sun,minutes,hours\r\n");
  all = lap_occurrences_new (week, date);
  for (guint k = 0; k < lap_list_n (week->coaches); k++) {
    const LapCoach *coach = lap_list_nth (week->coaches, k);
    int classes = 0, minutes[LAP_N_DAYS] = { 0 }, sum = 0;

    for (guint i = 0; i < all->len; i++) {
      const LapOccurrence *o = lap_occurrence_nth (all, i);

      if (o->state != LAP_HELD || g_strcmp0 (o->coach, coach->id) != 0)
        continue;
      classes++;
      minutes[o->day] += o->c->minutes;
      sum += o->c->minutes;
    }
    lap_csv_text (csv, coach->id, FALSE);
    lap_csv_text (csv, lap_coach_title (coach), FALSE);
    lap_csv_whole (csv, classes, TRUE);
    for (int day = 0; day < LAP_N_DAYS; day++)
      lap_csv_whole (csv, minutes[day], TRUE);
    lap_csv_whole (csv, sum, TRUE);
    lap_csv_number (csv, sum / 60.0, TRUE);
  }
  return lap_output_write_text (output, csv, error);
}
