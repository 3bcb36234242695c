/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "edit/week-many.h"

#include <glib/gi18n-lib.h>

#define LEAST 5 /* minutes that a class keeps when it is made shorter with others */

char *
lap_classes_title (GPtrArray *classes)
{
  if (classes->len == 1)
    return g_strdup (lap_class_title (g_ptr_array_index (classes, 0)));
  return g_strdup_printf (ngettext ("%u class", "%u classes", classes->len), classes->len);
}

static LapEdits *
named (const char *format, GPtrArray *classes)
{
  g_autofree char *title = lap_classes_title (classes), *label = g_strdup_printf (format, title);

  return lap_edits_new (label);
}

LapEdits *
lap_verb_place_classes (GPtrArray *classes, const LapPlace *places)
{
  LapEdits *edits = named (classes->len > 0 && places[0].day < 0 ? _("Take %s off the week") : _("Move %s"), classes);

  for (guint i = 0; i < classes->len; i++)
    lap_edits_append (edits, lap_verb_place (g_ptr_array_index (classes, i), &places[i]));
  return edits;
}

/* Where the exception of the class is, or G_MAXUINT without one. */
static guint
exception_at (LapWeek *week, const LapClass *c, int date)
{
  LapException *e = lap_week_exception (week, c->id, date);

  return e != NULL ? lap_list_find (week->exceptions, e) : G_MAXUINT;
}

/* New exceptions come to the end, the others are replaced or go from the last to the first: positions stay what they are. */
LapEdits *
lap_verb_place_classes_on (LapWeek *week, GPtrArray *classes, const LapPlaceOn *places)
{
  LapEdits *edits = named (_("Change %s on one date"), classes);

  for (guint at = lap_list_n (week->exceptions) + 1; at-- > 0;)
    for (guint i = 0; i < classes->len; i++) {
      LapClass *c = g_ptr_array_index (classes, i);

      if (MIN (exception_at (week, c, places[i].was), lap_list_n (week->exceptions)) == at)
        lap_edits_append (edits, lap_verb_place_on (week, c, places[i].was, places[i].to, &places[i].place));
    }
  return edits;
}

LapEdits *
lap_verb_lengthen (GPtrArray *classes, int by)
{
  LapEdits *edits = named (_("Change the length of %s"), classes);

  for (guint i = 0; i < classes->len; i++) {
    LapClass *c = g_ptr_array_index (classes, i);

    if (by > 0 || c->minutes > LEAST)
      lap_edits_append (edits, lap_verb_set_minutes (c, c->start, MAX (LEAST, c->minutes + by)));
  }
  return edits;
}

LapEdits *
lap_verb_remove_classes (LapWeek *week, GPtrArray *classes)
{
  LapEdits *edits = named (_("Remove %s"), classes);

  /* From the last to the first, so that positions stay what they are. */
  for (guint i = lap_list_n (week->exceptions); i-- > 0;)
    for (guint k = 0; k < classes->len; k++)
      if (g_str_equal (LAP_EXCEPTION (lap_list_nth (week->exceptions, i))->class_id,
                       LAP_CLASS (g_ptr_array_index (classes, k))->id))
        lap_edits_splice (edits, week->exceptions, i, 1, NULL);
  for (guint i = lap_list_n (week->classes); i-- > 0;)
    if (g_ptr_array_find (classes, lap_list_nth (week->classes, i), NULL))
      lap_edits_splice (edits, week->classes, i, 1, NULL);
  return edits;
}

LapEdits *
lap_verb_add_classes (LapWeek *week, GPtrArray *classes, const char *format)
{
  LapEdits *edits = named (format, classes);

  if (classes->len > 0)
    lap_edits_splice (edits, week->classes, lap_list_n (week->classes), 0, classes);
  return edits;
}

GPtrArray *
lap_classes_copy (GPtrArray *classes)
{
  GPtrArray *copies = g_ptr_array_new_with_free_func (g_object_unref);

  for (guint i = 0; i < classes->len; i++) {
    LapClass *copy = lap_object_copy (g_ptr_array_index (classes, i));

    g_free (copy->id);
    copy->id = g_uuid_string_random ();
    g_ptr_array_add (copies, copy);
  }
  return copies;
}

gboolean
lap_place_is_free (LapWeek *week, const LapClass *c, const LapPlace *place)
{
  if (place->day < 0 || place->start < 0 || place->start + c->minutes > LAP_DAY_MINUTES)
    return FALSE;
  for (guint i = 0; i < lap_list_n (week->classes); i++) {
    const LapClass *other = lap_list_nth (week->classes, i);

    if (other == c || other->day != place->day || other->start >= place->start + c->minutes ||
        lap_class_end (other) <= place->start)
      continue;
    if ((place->room != NULL && g_strcmp0 (other->room, place->room) == 0) ||
        (place->coach != NULL && g_strcmp0 (other->coach, place->coach) == 0))
      return FALSE;
  }
  return TRUE;
}
