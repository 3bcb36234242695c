/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/week-words.h"

#include "base/customs.h"

#include <glib/gi18n-lib.h>

static void
append_part (GString *text, const char *part)
{
  g_string_append_printf (text, "%s%s", text->len > 0 ? "\xc2\xa0· " : "", part);
}

/* @now, and what it is in other weeks where that differs. */
static void
append_instead (GString *text, const char *now, const char *else_, const char *format)
{
  g_autofree char *both = else_ != NULL && !g_str_equal (now, else_) ? g_strdup_printf (format, now, else_) : NULL;

  append_part (text, both != NULL ? both : now);
}

static void
append_room (const LapWeek *week, const LapRoom *page, const LapOccurrence *o, GString *text)
{
  LapRoom *room = lap_week_room (week, o->room), *usual = lap_week_room (week, o->c->room);

  if (room != NULL && (page == NULL || usual != room))
    /* Translators: the room of a class on one date, and its usual one. */
    append_instead (text, lap_room_title (room), usual != NULL ? lap_room_title (usual) : NULL, _("%1$s, not %2$s"));
}

static void
append_coach (const LapWeek *week, const LapOccurrence *o, GString *text)
{
  LapCoach *coach = lap_week_coach (week, o->coach), *usual = lap_week_coach (week, o->c->coach);
  g_autofree char *away = NULL;

  if (coach == NULL)
    return;
  if (o->date != 0 && lap_week_is_away (week, coach->id, o->date)) {
    away = g_strdup_printf (_("%s is away"), lap_coach_title (coach));
    append_part (text, away);
  } else {
    /* Translators: the coach of a class on one date, and the usual one. */
    append_instead (text, lap_coach_title (coach), usual != NULL ? lap_coach_title (usual) : NULL, _("%1$s for %2$s"));
  }
}

/* That it is on another day or at another time than in other weeks. */
static void
append_moved (const LapOccurrence *o, GString *text)
{
  g_autofree char *was = lap_date_text (MAX (o->was, 1)), *time = lap_time_of_day_text (o->c->start);
  g_autofree char *moved = NULL;

  if (o->date != o->was)
    moved = g_strdup_printf (_("moved from %s"), was);
  else if (o->start != o->c->start)
    /* Translators: the usual time of a class that is at another one on this date. */
    moved = g_strdup_printf (_("not at %s"), time);
  if (moved != NULL)
    append_part (text, moved);
}

char *
lap_week_words_about (const LapWeek *week, const LapRoom *room, const LapOccurrence *o, gboolean brief)
{
  g_autofree char *to = o->exception != NULL && o->exception->to != 0 ? lap_date_text (o->exception->to) : NULL;
  /* Translators: minutes that a class lasts, written out and where there is little room. */
  g_autofree char *minutes = g_strdup_printf (brief ? _("%d′") : _("%d\xc2\xa0min"), o->c->minutes);
  GString *text;

  if (o->state == LAP_CANCELLED)
    return g_strdup (_("Cancelled"));
  if (o->state == LAP_MOVED_AWAY)
    return to != NULL ? g_strdup_printf (_("Moved to %s"), to) : g_strdup (_("Moved"));
  text = g_string_new (NULL);
  append_room (week, room, o, text);
  append_coach (week, o, text);
  append_part (text, minutes);
  append_moved (o, text);
  return g_string_free (text, FALSE);
}

char *
lap_week_words_when (const LapWeek *week, int monday_date)
{
  g_autofree char *from = week->from != 0 ? lap_date_text (week->from) : NULL;
  g_autofree char *until = week->until != 0 ? lap_date_text (week->until) : NULL;
  g_autofree char *monday = monday_date != 0 ? lap_date_text (monday_date) : NULL;
  g_autofree char *sunday = monday_date != 0 ? lap_date_text (monday_date + LAP_DAY_SUN) : NULL;

  if (monday != NULL)
    /* Translators: the first and the last date of a week. */
    return g_strdup_printf (_("Classes from %s to %s"), monday, sunday);
  if (from != NULL && until != NULL)
    return g_strdup_printf (_("Classes every week from %s until %s"), from, until);
  return from != NULL ? g_strdup_printf (_("Classes every week from %s on"), from) : g_strdup (_("Classes every week"));
}

const char *
lap_week_words_day (int day)
{
  /* Translators: the days of a week as they are written where there is little room. */
  static const char *const days[LAP_N_DAYS] = { N_("Mon"), N_("Tue"), N_("Wed"), N_("Thu"), N_("Fri"), N_("Sat"),
                                                N_("Sun") };

  return _(days[day]);
}
