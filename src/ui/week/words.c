/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/week/words.h"

#include "base/customs.h"

#include <glib/gi18n-lib.h>

static void
add (GString *text, const char *more)
{
  if (more != NULL && *more != '\0')
    g_string_append_printf (text, "%s%s", text->len > 0 ? ", " : "", more);
}

static void
add_people (GString *text, const LapWeek *week, const char *room_id, const char *coach_id, int places)
{
  LapRoom *room = lap_week_room (week, room_id);
  LapCoach *coach = lap_week_coach (week, coach_id);
  g_autofree char *people = g_strdup_printf (ngettext ("%d place", "%d places", places), places);

  add (text, room != NULL ? lap_room_title (room) : _("no room"));
  add (text, coach != NULL ? lap_coach_title (coach) : _("no coach"));
  if (places > 0)
    add (text, people);
}

char *
lap_week_box_spoken (const LapWeekScore *score, guint index)
{
  const LapWeekBox *box = &score->boxes[index];
  const LapOccurrence *o = lap_occurrence_nth (score->occurrences, box->occurrence);
  g_autofree char *start = lap_time_of_day_text (box->start), *end = lap_time_of_day_text (box->end), *when = NULL;
  g_autofree char *warning = g_strdup_printf (_("warning %u"), box->warning);
  GString *text = g_string_new (lap_class_title (box->c));

  /* Translators: a day of the week, and when a class starts and ends. */
  when = g_strdup_printf (_("%1$s %2$s to %3$s"), lap_words_label (&lap_days, o->day), start, end);
  add (text, when);
  add_people (text, score->week, o->room, o->coach, box->c->places);
  if (box->strain >= 0)
    add (text, lap_words_label (&lap_strains, box->strain));
  if (box->off)
    add (text, box->detail);
  else if (box->changed)
    add (text, _("only on this date"));
  if (box->warning > 0)
    add (text, warning);
  return g_string_free (text, FALSE);
}

char *
lap_class_spoken (const LapWeek *week, const LapClass *c)
{
  g_autofree char *minutes = g_strdup_printf (ngettext ("%d minute", "%d minutes", c->minutes), c->minutes);
  GString *text = g_string_new (lap_class_title (c));

  add (text, minutes);
  add_people (text, week, c->room, c->coach, c->places);
  add (text, _("no day yet"));
  return g_string_free (text, FALSE);
}

char *
lap_short_day_text (LapDay day)
{
  static const char *const days[] = { N_("Mon"), N_("Tue"), N_("Wed"), N_("Thu"), N_("Fri"), N_("Sat"), N_("Sun") };

  return g_strdup (_(days[day]));
}

char *
lap_short_date_text (int date)
{
  g_autoptr (GDateTime) time = NULL;
  GDate day;

  g_date_clear (&day, 1);
  g_date_set_julian (&day, date);
  time = g_date_time_new_utc (g_date_get_year (&day), g_date_get_month (&day), g_date_get_day (&day), 0, 0, 0);
  /* Translators: a day and a month as short as can be, for strftime(): "23 Nov". */
  return g_date_time_format (time, _("%-d %b"));
}

char *
lap_place_text (const LapWeek *week, const LapPlace *place, int minutes)
{
  LapRoom *room = lap_week_room (week, place->room);
  LapCoach *coach = lap_week_coach (week, place->coach);
  g_autofree char *day = NULL, *start = NULL, *end = NULL;
  GString *text = g_string_new (NULL);

  if (place->day < 0) {
    g_string_append (text, _("off the week"));
    return g_string_free (text, FALSE);
  }
  day = lap_short_day_text (place->day);
  start = lap_time_of_day_text (place->start);
  end = lap_time_of_day_text (MIN (place->start + minutes, LAP_DAY_MINUTES));
  g_string_append_printf (text, "%s %s–%s", day, start, end);
  add (text, room != NULL ? lap_room_title (room) : NULL);
  add (text, coach != NULL ? lap_coach_title (coach) : NULL);
  return g_string_free (text, FALSE);
}

char *
lap_week_warnings_text (const LapCheckup *checkup, const LapClass *c)
{
  g_autoptr (GPtrArray) lines = g_ptr_array_new_with_free_func (g_free);

  for (guint n = 0; n < lap_checkup_n (checkup); n++) {
    const LapWarning *warning = lap_checkup_nth (checkup, n);
    g_autofree char *message = NULL;

    if (warning->fine || !lap_warning_is_about (checkup, warning, c))
      continue;
    message = lap_warning_message (checkup, warning);
    /* Translators: the number of a warning, and what it says. */
    g_ptr_array_add (lines, g_strdup_printf (_("%1$u: %2$s"), n + 1, message));
  }
  g_ptr_array_add (lines, NULL);
  return g_strjoinv ("\n", (char **) lines->pdata);
}
