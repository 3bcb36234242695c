/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "edit/week-verbs.h"

#include <glib/gi18n-lib.h>

static LapEdits *
named (const char *format, const char *title)
{
  g_autofree char *label = g_strdup_printf (format, title);

  return lap_edits_new (label);
}

/* Adds the setting only where it says something new. */
static void
set_int (LapEdits *edits, gpointer object, const char *property, int value)
{
  int now;

  g_object_get (object, property, &now, NULL);
  if (now != value)
    lap_edits_set_int (edits, object, property, value);
}

static void
set_text (LapEdits *edits, gpointer object, const char *property, const char *value)
{
  g_autofree char *now = NULL;

  g_object_get (object, property, &now, NULL);
  if (g_strcmp0 (now, value) != 0)
    lap_edits_set_text (edits, object, property, value);
}

static void
take_out (LapEdits *edits, LapList *list, gconstpointer item)
{
  lap_edits_splice (edits, list, lap_list_find (list, item), 1, NULL);
}

/* @start, or the latest at which @c still ends by 24:00. */
static int
within_day (const LapClass *c, int start)
{
  return start < 0 ? -1 : MIN (start, LAP_DAY_MINUTES - c->minutes);
}

/* Every week */

LapPlace
lap_class_place (const LapClass *c)
{
  return (LapPlace) { c->day, c->start, c->room, c->coach };
}

LapEdits *
lap_verb_place (LapClass *c, const LapPlace *place)
{
  LapEdits *edits = named (place->day >= 0 ? _("Move %s") : _("Take %s off the week"), lap_class_title (c));

  set_int (edits, c, "day", place->day);
  set_int (edits, c, "start", within_day (c, place->start));
  set_text (edits, c, "room", place->room);
  set_text (edits, c, "coach", place->coach);
  return edits;
}

/* The latest start of a class that starts at @start: on some dates it may start later. */
static int
latest_start (const LapClass *c, int start)
{
  const LapWeek *week = (const LapWeek *) c->parent_instance.owner;

  for (guint i = 0; week != NULL && i < lap_list_n (week->exceptions); i++) {
    const LapException *e = lap_list_nth (week->exceptions, i);

    if (g_str_equal (e->class_id, c->id))
      start = MAX (start, e->start);
  }
  return start;
}

LapEdits *
lap_verb_set_minutes (LapClass *c, int start, int minutes)
{
  LapEdits *edits = named (_("Change the length of %s"), lap_class_title (c));

  if (start >= 0)
    start = MIN (start, LAP_DAY_MINUTES - 1);
  set_int (edits, c, "start", start);
  set_int (edits, c, "minutes", CLAMP (minutes, 1, LAP_DAY_MINUTES - MAX (0, latest_start (c, start))));
  return edits;
}

/* On one date */

static LapEdits *
except (LapWeek *week, LapClass *c, int date, const char *label, LapException *then)
{
  LapEdits *edits = named (label, lap_class_title (c));
  LapException *now = lap_week_exception (week, c->id, date);
  g_autoptr (GPtrArray) added = g_ptr_array_new_with_free_func (g_object_unref);
  guint at = now != NULL ? lap_list_find (week->exceptions, now) : lap_list_n (week->exceptions);

  if (then != NULL)
    g_ptr_array_add (added, then);
  if (now != NULL || then != NULL)
    lap_edits_splice (edits, week->exceptions, at, now != NULL, added);
  return edits;
}

/* A new exception with the note of the one before. */
static LapException *
exception_like (LapWeek *week, LapClass *c, int date)
{
  LapException *now = lap_week_exception (week, c->id, date);
  LapException *then = lap_exception_new (c->id, date);

  if (now != NULL)
    then->note = g_strdup (now->note);
  return then;
}

/* Whether an exception would say nothing. */
static gboolean
is_empty (const LapException *e)
{
  return !e->cancelled && e->to == 0 && e->start < 0 && e->room == NULL && e->coach == NULL && e->note == NULL;
}

LapEdits *
lap_verb_place_on (LapWeek *week, LapClass *c, int date, int to, const LapPlace *place)
{
  LapException *then = exception_like (week, c, date);

  then->to = to != date ? to : 0;
  then->start = place->start != c->start ? within_day (c, place->start) : -1;
  then->room = g_strcmp0 (place->room, c->room) != 0 ? g_strdup (place->room) : NULL;
  then->coach = g_strcmp0 (place->coach, c->coach) != 0 ? g_strdup (place->coach) : NULL;
  if (is_empty (then))
    g_clear_object (&then);
  return except (week, c, date, _("Change %s on one date"), then);
}

LapEdits *
lap_verb_cancel_on (LapWeek *week, LapClass *c, int date)
{
  LapException *then = exception_like (week, c, date);

  then->cancelled = TRUE;
  return except (week, c, date, _("Cancel %s on one date"), then);
}

LapEdits *
lap_verb_note_on (LapWeek *week, LapClass *c, int date, const char *note)
{
  LapException *now = lap_week_exception (week, c->id, date);
  LapException *then = now != NULL ? lap_object_copy (now) : lap_exception_new (c->id, date);

  g_free (then->note);
  then->note = note != NULL && *note != '\0' ? g_strdup (note) : NULL;
  if (is_empty (then))
    g_clear_object (&then);
  return except (week, c, date, _("Change the note of %s"), then);
}

LapEdits *
lap_verb_as_always (LapWeek *week, LapClass *c, int date)
{
  return except (week, c, date, _("Hold %s as every week"), NULL);
}

LapEdits *
lap_verb_set_aways (LapWeek *week, const LapCoach *coach, const LapRows *dates)
{
  LapEdits *edits = named (_("Change when %s is away"), lap_coach_title (coach));

  for (guint i = lap_list_n (week->aways); i-- > 0;)
    if (g_str_equal (LAP_AWAY (lap_list_nth (week->aways, i))->coach, coach->id))
      lap_edits_splice (edits, week->aways, i, 1, NULL);
  for (guint i = lap_rows_n (dates); i-- > 0;) {
    const LapClosed *span = lap_rows_nth (dates, LapClosed, i);
    g_autoptr (LapAway) away = lap_away_new (coach->id, span->from, span->until);

    lap_edits_insert (edits, week->aways, 0, away);
  }
  return edits;
}

/* A day of classes */

static LapClass *
another (LapClass *c)
{
  LapClass *copy = lap_object_copy (c);

  g_free (copy->id);
  copy->id = g_uuid_string_random ();
  return copy;
}

LapEdits *
lap_verb_copy_day (LapWeek *week, LapDay from, LapDay to)
{
  LapEdits *edits = named (_("Copy %s"), lap_words_label (&lap_days, from));
  g_autoptr (GPtrArray) added = g_ptr_array_new_with_free_func (g_object_unref);

  for (guint i = 0; from != to && i < lap_list_n (week->classes); i++) {
    LapClass *c = lap_list_nth (week->classes, i);

    if (c->day != (int) from)
      continue;
    g_ptr_array_add (added, another (c));
    LAP_CLASS (g_ptr_array_index (added, added->len - 1))->day = to;
  }
  if (added->len > 0)
    lap_edits_splice (edits, week->classes, lap_list_n (week->classes), 0, added);
  return edits;
}

/* Rooms and coaches */

/* "room-3": the first number that no thing of @list has. */
static char *
free_id (LapList *list, const char *stem)
{
  g_autoptr (GHashTable) taken = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);

  for (guint i = 0; i < lap_list_n (list); i++) {
    char *id;

    g_object_get (lap_list_nth (list, i), "id", &id, NULL);
    g_hash_table_add (taken, id);
  }
  for (guint n = 1;; n++) {
    char *id = g_strdup_printf ("%s-%u", stem, n);

    if (!g_hash_table_contains (taken, id))
      return id;
    g_free (id);
  }
}

/* Classes, exceptions: whatever names @id as its @property does without. An exception that says nothing else goes. */
static void
forget (LapEdits *edits, LapWeek *week, const char *property, const char *id)
{
  for (guint i = 0; i < lap_list_n (week->classes); i++) {
    g_autofree char *now = NULL;

    g_object_get (lap_list_nth (week->classes, i), property, &now, NULL);
    if (g_strcmp0 (now, id) == 0)
      lap_edits_set_text (edits, lap_list_nth (week->classes, i), property, NULL);
  }
  for (guint i = lap_list_n (week->exceptions); i-- > 0;) {
    LapException *e = lap_list_nth (week->exceptions, i);
    g_autofree char *now = NULL;
    gboolean says_more = e->to != 0 || e->start >= 0 || e->note != NULL || (e->room != NULL && e->coach != NULL);

    g_object_get (e, property, &now, NULL);
    if (g_strcmp0 (now, id) != 0)
      continue;
    if (says_more)
      lap_edits_set_text (edits, e, property, NULL);
    else
      lap_edits_splice (edits, week->exceptions, i, 1, NULL);
  }
}

LapEdits *
lap_verb_add_room (LapWeek *week, const char *title)
{
  LapEdits *edits = named (_("Add %s"), title);
  g_autofree char *id = free_id (week->rooms, "room");
  g_autoptr (LapRoom) room = lap_room_new (id, title);

  lap_edits_insert (edits, week->rooms, lap_list_n (week->rooms), room);
  return edits;
}

LapEdits *
lap_verb_remove_room (LapWeek *week, LapRoom *room)
{
  LapEdits *edits = named (_("Remove %s"), lap_room_title (room));

  forget (edits, week, "room", room->id);
  take_out (edits, week->rooms, room);
  return edits;
}

LapEdits *
lap_verb_add_coach (LapWeek *week, const char *title)
{
  LapEdits *edits = named (_("Add %s"), title);
  g_autofree char *id = free_id (week->coaches, "coach");
  g_autoptr (LapCoach) coach = lap_coach_new (id, title);

  lap_edits_insert (edits, week->coaches, lap_list_n (week->coaches), coach);
  return edits;
}

LapEdits *
lap_verb_remove_coach (LapWeek *week, LapCoach *coach)
{
  LapEdits *edits = named (_("Remove %s"), lap_coach_title (coach));

  forget (edits, week, "coach", coach->id);
  for (guint i = lap_list_n (week->aways); i-- > 0;)
    if (g_str_equal (LAP_AWAY (lap_list_nth (week->aways, i))->coach, coach->id))
      lap_edits_splice (edits, week->aways, i, 1, NULL);
  take_out (edits, week->coaches, coach);
  return edits;
}
