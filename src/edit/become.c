/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "edit/become.h"

#include "model/list.h"

static void
exchange_list (LapEdits *edits, LapList *list, LapList *other)
{
  g_autoptr (GPtrArray) copies = g_ptr_array_new_with_free_func (g_object_unref);

  for (guint i = 0; i < lap_list_n (other); i++)
    g_ptr_array_add (copies, lap_object_copy (lap_list_nth (other, i)));
  lap_edits_splice (edits, list, 0, lap_list_n (list), copies);
}

static void
exchange (LapEdits *edits, gpointer object, const LapField *field, gconstpointer other)
{
  g_auto (GValue) wanted = G_VALUE_INIT;
  g_autofree char *property = lap_field_property (field);

  lap_field_get (field, other, &wanted);
  lap_edits_set (edits, object, property, &wanted);
}

LapEdits *
lap_edits_become (const char *label, gpointer object, gconstpointer other)
{
  const LapRecord *record = lap_object_record (object);
  LapEdits *edits = lap_edits_new (label);
  g_autoptr (GBytes) before = lap_object_bytes (object), after = lap_object_bytes (other);

  if (g_bytes_equal (before, after))
    return edits;
  for (guint i = 0; i < record->n; i++) {
    const LapField *field = &record->fields[i];
    LapList *list = lap_object_list (object, field);

    if (list != NULL)
      exchange_list (edits, list, lap_object_list (other, field));
    else if (!(field->flags & LAP_FIELD_FIXED))
      exchange (edits, object, field, other);
  }
  return edits;
}
