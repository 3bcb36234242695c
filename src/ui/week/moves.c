/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/week/moves.h"

#include "base/customs.h"

#define FROM (6 * 60) /* where a week without hours is looked through for a place */
#define TO   (22 * 60)

static const LapOccurrence *
occurrence_of (LapWeekScene *scene, const LapClass *c)
{
  for (guint i = 0; i < scene->score->occurrences->len; i++)
    if (lap_occurrence_nth (scene->score->occurrences, i)->c == c)
      return lap_occurrence_nth (scene->score->occurrences, i);
  return NULL;
}

LapPlace
lap_week_place_now (LapWeekScene *scene, LapClass *c)
{
  const LapOccurrence *o = lap_week_scene_date (scene) != 0 ? occurrence_of (scene, c) : NULL;

  if (o != NULL)
    return (LapPlace) { o->day, o->start, o->room, o->coach };
  return lap_class_place (c);
}

LapEdits *
lap_week_move_edits (LapWeekScene *scene, GPtrArray *classes, const LapPlace *places)
{
  int date = lap_week_scene_date (scene);
  g_autoptr (GPtrArray) dated = g_ptr_array_new (), others = g_ptr_array_new ();
  g_autofree LapPlaceOn *on = g_new (LapPlaceOn, MAX (classes->len, 1));
  g_autofree LapPlace *always = g_new (LapPlace, MAX (classes->len, 1));
  LapEdits *edits;

  for (guint i = 0; i < classes->len; i++) {
    LapClass *c = g_ptr_array_index (classes, i);
    const LapOccurrence *o = date != 0 ? occurrence_of (scene, c) : NULL;

    if (o != NULL) {
      on[dated->len] = (LapPlaceOn) { o->was, date + lap_day_place (lap_date_day (date), places[i].day), places[i] };
      g_ptr_array_add (dated, c);
    } else { /* it has no date: it waits, or no dates are looked at */
      always[others->len] = places[i];
      g_ptr_array_add (others, c);
    }
  }
  if (dated->len == 0)
    return lap_verb_place_classes (others, always);
  edits = lap_verb_place_classes_on (lap_week_scene_week (scene), dated, on);
  lap_edits_append (edits, lap_verb_place_classes (others, always));
  return edits;
}

gboolean
lap_week_shift_day (LapPlace *place, int by)
{
  int nth = place->day >= 0 ? lap_day_place (lap_customs ().first_day, place->day) + by : -1;

  if (nth < 0 || nth >= LAP_N_DAYS)
    return FALSE;
  place->day = lap_day_nth (lap_customs ().first_day, nth);
  return TRUE;
}

/* The ids of the lines as the week lists them. */
static const char *
line_id (LapWeekScene *scene, guint i)
{
  LapWeek *week = lap_week_scene_week (scene);

  if (scene->look.by_coach)
    return i < lap_list_n (week->coaches) ? LAP_COACH (lap_list_nth (week->coaches, i))->id : NULL;
  return i < lap_list_n (week->rooms) ? LAP_ROOM (lap_list_nth (week->rooms, i))->id : NULL;
}

gboolean
lap_week_shift_line (LapWeekScene *scene, LapPlace *place, int by)
{
  const char **id = scene->look.by_coach ? &place->coach : &place->room;
  gint64 i = 0;

  while (line_id (scene, i) != NULL && g_strcmp0 (line_id (scene, i), *id) != 0)
    i++;
  if (i + by < 0 || line_id (scene, i + by) == NULL)
    return FALSE;
  *id = line_id (scene, i + by);
  return TRUE;
}

gboolean
lap_week_shift_time (LapPlace *place, int minutes, int by)
{
  int step = ABS (by), start = by > 0 ? place->start / step * step + step : (place->start - 1) / step * step;

  if (place->day < 0 || (by < 0 && place->start == 0) || start + minutes > LAP_DAY_MINUTES)
    return FALSE;
  place->start = start;
  return TRUE;
}

void
lap_week_set_line (LapWeekScene *scene, LapPlace *place, guint row)
{
  if (scene->look.by_coach)
    place->coach = scene->score->rows[row].id;
  else
    place->room = scene->score->rows[row].id;
}

/* A place for a class that has none */

static gboolean
suits_wish (const LapClass *c, int day, int start)
{
  gboolean named = c->wish_days == NULL || *c->wish_days == NULL;

  for (guint i = 0; !named && c->wish_days[i] != NULL; i++)
    named = g_str_equal (c->wish_days[i], lap_words_id (&lap_days, day));
  return named && (c->wish_between == NULL || lap_hours_hold (c->wish_between, start, start + c->minutes));
}

static gboolean
suits (LapWeek *week, const LapClass *c, const LapPlace *place)
{
  LapCoach *coach = lap_week_coach (week, place->coach);

  return (coach == NULL || lap_coach_is_free (coach, place->day, place->start, place->start + c->minutes)) &&
         lap_place_is_free (week, c, place);
}

/* In the first room that is free, its own where it names one. */
static gboolean
find_room (LapWeek *week, const LapClass *c, LapPlace *place)
{
  if (c->room != NULL || lap_list_n (week->rooms) == 0)
    return suits (week, c, place);
  for (guint i = 0; i < lap_list_n (week->rooms); i++) {
    place->room = LAP_ROOM (lap_list_nth (week->rooms, i))->id;
    if (suits (week, c, place))
      return TRUE;
  }
  return FALSE;
}

static gboolean
find_on (LapWeek *week, const LapClass *c, int day, gboolean wished, LapPlace *place)
{
  LapSpan open = { FROM, TO };

  if (!lap_week_open (week, day, &open))
    return FALSE;
  if (open.start == 0 && open.end >= LAP_DAY_MINUTES)
    open = (LapSpan) { FROM, TO };
  for (int start = (open.start + LAP_SNAP_MINUTES - 1) / LAP_SNAP_MINUTES * LAP_SNAP_MINUTES;
       start + c->minutes <= open.end; start += LAP_SNAP_MINUTES) {
    *place = (LapPlace) { day, start, c->room, c->coach };
    if ((!wished || suits_wish (c, day, start)) && find_room (week, c, place))
      return TRUE;
  }
  return FALSE;
}

gboolean
lap_week_free_place (LapWeek *week, const LapClass *c, int day, LapPlace *place)
{
  for (int wished = TRUE; wished >= FALSE; wished--)
    for (int i = 0; i < LAP_N_DAYS; i++)
      if (find_on (week, c, (MAX (day, 0) + i) % LAP_N_DAYS, wished, place))
        return TRUE;
  return FALSE;
}

void
lap_week_place_copy (LapWeek *week, LapClass *copy)
{
  int day = copy->day;

  for (int i = 1; day >= 0 && i <= LAP_N_DAYS; i++) {
    LapPlace place = { (day + i) % LAP_N_DAYS, copy->start, copy->room, copy->coach };
    LapSpan open;

    if (lap_week_open (week, place.day, &open) && open.start <= copy->start && lap_class_end (copy) <= open.end &&
        suits (week, copy, &place)) {
      copy->day = place.day;
      return;
    }
  }
  copy->day = copy->start = -1;
}
