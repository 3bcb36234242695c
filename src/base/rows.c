/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "base/rows.h"

G_DEFINE_BOXED_TYPE (LapRows, lap_rows, lap_rows_copy, lap_rows_free)

LapRows *
lap_rows_new (const LapRowsKind *kind)
{
  LapRows *rows = g_new0 (LapRows, 1);

  rows->kind = kind;
  rows->items = g_ptr_array_new ();
  return rows;
}

gpointer
lap_rows_add (LapRows *rows)
{
  gpointer item = g_malloc0 (rows->kind->size);

  lap_record_init (rows->kind->record, item);
  g_ptr_array_add (rows->items, item);
  return item;
}

LapRows *
lap_rows_copy (const LapRows *rows)
{
  LapRows *copy = lap_rows_new (rows->kind);

  for (guint i = 0; i < rows->items->len; i++)
    lap_record_copy (rows->kind->record, g_ptr_array_index (rows->items, i), lap_rows_add (copy));
  return copy;
}

void
lap_rows_free (LapRows *rows)
{
  for (guint i = 0; i < rows->items->len; i++) {
    lap_record_clear (rows->kind->record, g_ptr_array_index (rows->items, i));
    g_free (g_ptr_array_index (rows->items, i));
  }
  g_ptr_array_unref (rows->items);
  g_free (rows);
}

guint
lap_rows_n (const LapRows *rows)
{
  return rows != NULL ? rows->items->len : 0;
}

gboolean
lap_rows_read (const LapField *field, JsonNode *node, const LapPath *path, gpointer slot, GError **error)
{
  const LapRowsKind *kind = (const LapRowsKind *) field->kind;
  g_autoptr (LapRows) rows = lap_rows_new (kind);
  JsonArray *array;

  if (!JSON_NODE_HOLDS_ARRAY (node)) {
    lap_path_error (error, path, "expected a list; each item is %s", kind->record->what);
    return FALSE;
  }
  array = json_node_get_array (node);
  if (json_array_get_length (array) > kind->most) {
    lap_path_error (error, path, "expected at most %u items", kind->most);
    return FALSE;
  }
  for (guint i = 0; i < json_array_get_length (array); i++)
    if (!lap_record_read (kind->record, lap_rows_add (rows), json_array_get_element (array, i),
                          LAP_PATH_ELEMENT (path, i), error))
      return FALSE;
  if (rows->items->len > 0)
    *(LapRows **) slot = g_steal_pointer (&rows);
  return TRUE;
}

void
lap_rows_write (const LapField *field, gconstpointer slot, LapJsonWriter *writer)
{
  const LapRows *rows = *(LapRows * const *) slot;

  lap_json_writer_begin_array (writer);
  for (guint i = 0; i < lap_rows_n (rows); i++)
    lap_record_write (rows->kind->record, g_ptr_array_index (rows->items, i), writer);
  lap_json_writer_end_array (writer);
}

void
lap_rows_visit (const LapField *field, gconstpointer slot, const char *pointer, LapExtraFunc func, gpointer data)
{
  const LapRows *rows = *(LapRows * const *) slot;

  for (guint i = 0; i < lap_rows_n (rows); i++) {
    g_autofree char *inner = g_strdup_printf ("%s/%u", pointer, i);

    lap_record_visit (rows->kind->record, g_ptr_array_index (rows->items, i), inner, func, data);
  }
}
