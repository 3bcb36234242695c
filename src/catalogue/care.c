/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The member `care`: an object of care words, each an object with load, say, instead.
 */
#include "catalogue/care.h"

static const LapField fields[] = {
  { "", "load", &lap_kind_int, G_STRUCT_OFFSET (LapCare, load), LAP_FIELD_REQUIRED, 0, 2 },
  { "", "say", &lap_kind_text, G_STRUCT_OFFSET (LapCare, say) },
  { "", "instead", &lap_kind_text, G_STRUCT_OFFSET (LapCare, instead) },
};

static const LapRecord record = {
  "a care entry", fields, G_N_ELEMENTS (fields), .extras = G_STRUCT_OFFSET (LapCare, extras),
};

static void
care_clear (gpointer care)
{
  lap_record_clear (&record, care);
}

static LapCares *
cares_new (void)
{
  LapCares *cares = g_new0 (LapCares, 1);

  cares->items = g_array_new (FALSE, TRUE, sizeof (LapCare));
  g_array_set_clear_func (cares->items, care_clear);
  return cares;
}

static void
cares_free (LapCares *cares)
{
  g_array_unref (cares->items);
  g_clear_pointer (&cares->extras, g_ptr_array_unref);
  g_free (cares);
}

static LapCares *
cares_copy (const LapCares *cares)
{
  LapCares *copy = cares_new ();

  g_array_set_size (copy->items, cares->items->len);
  for (guint i = 0; i < cares->items->len; i++) {
    LapCare *to = &g_array_index (copy->items, LapCare, i);

    to->word = g_array_index (cares->items, LapCare, i).word;
    lap_record_copy (&record, &g_array_index (cares->items, LapCare, i), to);
  }
  copy->extras = lap_extras_copy (cares->extras);
  return copy;
}

typedef LapCares LapCaresBox;
G_DEFINE_BOXED_TYPE (LapCaresBox, lap_cares, cares_copy, cares_free)
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapCares, cares_free)

static gboolean
read_cares (const LapField *f, JsonNode *node, const LapPath *path, gpointer slot, GError **error)
{
  g_autoptr (LapCares) cares = cares_new ();
  JsonObjectIter iter;
  const char *name, *last = NULL;
  JsonNode *member;

  if (!JSON_NODE_HOLDS_OBJECT (node)) {
    lap_path_error (error, path, "expected an object of care words");
    return FALSE;
  }
  json_object_iter_init_ordered (&iter, json_node_get_object (node));
  while (json_object_iter_next_ordered (&iter, &name, &member)) {
    int word = lap_words_find (&lap_care_words, name);
    LapCare *care;

    if (word < 0) {
      lap_extras_add (&cares->extras, "", last, name, member);
      continue;
    }
    g_array_set_size (cares->items, cares->items->len + 1);
    care = &g_array_index (cares->items, LapCare, cares->items->len - 1);
    care->word = word;
    last = lap_words_id (&lap_care_words, word);
    if (!lap_record_read (&record, care, member, LAP_PATH_MEMBER (path, name), error))
      return FALSE;
  }
  *(LapCares **) slot = g_steal_pointer (&cares);
  return TRUE;
}

static void
write_cares (const LapField *f, gconstpointer slot, LapJsonWriter *writer)
{
  const LapCares *cares = *(LapCares * const *) slot;

  lap_json_writer_begin_object (writer);
  lap_extras_write (cares->extras, "", NULL, writer);
  for (guint i = 0; i < cares->items->len; i++) {
    const LapCare *care = &g_array_index (cares->items, LapCare, i);
    const char *word = lap_words_id (&lap_care_words, care->word);

    lap_json_writer_member (writer, word);
    lap_record_write (&record, care, writer);
    lap_extras_write (cares->extras, "", word, writer);
  }
  lap_json_writer_end_object (writer);
}

static void
visit_cares (const LapField *f, gconstpointer slot, const char *pointer, LapExtraFunc func, gpointer data)
{
  const LapCares *cares = *(LapCares * const *) slot;

  lap_extras_visit (cares->extras, NULL, pointer, func, data);
  for (guint i = 0; i < cares->items->len; i++) {
    const LapCare *care = &g_array_index (cares->items, LapCare, i);
    g_autofree char *inner = g_strdup_printf ("%s/%s", pointer, lap_words_id (&lap_care_words, care->word));

    lap_record_visit (&record, care, inner, func, data);
  }
}

const LapKind lap_kind_cares = { lap_cares_get_type, read_cares, write_cares, visit_cares };
