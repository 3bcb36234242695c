/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "model/kit.h"

#include <string.h>

#define MOST 10000

G_DEFINE_BOXED_TYPE (LapKit, lap_kit, lap_kit_copy, lap_kit_free)

LapKit *
lap_kit_new (void)
{
  return g_new0 (LapKit, 1);
}

LapKit *
lap_kit_copy (const LapKit *kit)
{
  LapKit *copy = g_memdup2 (kit, sizeof *kit);

  copy->extras = lap_extras_copy (kit->extras);
  return copy;
}

void
lap_kit_free (LapKit *kit)
{
  g_clear_pointer (&kit->extras, g_ptr_array_unref);
  g_free (kit);
}

static void
take_out (LapKit *kit, LapKitWord word)
{
  for (guint i = 0; i < kit->n; i++)
    if (kit->order[i] == word) {
      memmove (kit->order + i, kit->order + i + 1, kit->n - i - 1);
      kit->n--;
      break;
    }
  kit->mask &= ~LAP_BIT (word);
  kit->counts[word] = 0;
}

void
lap_kit_set (LapKit *kit, LapKitWord word, int count)
{
  if (count <= 0 && !kit->counted) {
    take_out (kit, word);
    return;
  }
  if (!(kit->mask & LAP_BIT (word)))
    kit->order[kit->n++] = word;
  kit->mask |= LAP_BIT (word);
  kit->counts[word] = count;
}

int
lap_kit_count (const LapKit *kit, LapKitWord word)
{
  if (!(lap_kit_mask (kit) & LAP_BIT (word)))
    return 0;
  if (!kit->counted)
    return G_MAXINT;
  return kit->counts[word] + (word == LAP_KIT_DUMBBELL ? 2 * kit->counts[LAP_KIT_DUMBBELLS] : 0);
}

guint32
lap_kit_mask (const LapKit *kit)
{
  return kit != NULL ? lap_kit_with_singles (kit->mask) : 0;
}

static gboolean
read_list (LapKit *kit, JsonArray *array, const LapPath *path, GError **error)
{
  for (guint i = 0; i < json_array_get_length (array); i++) {
    JsonNode *item = json_array_get_element (array, i);
    int word = -1;

    if (JSON_NODE_HOLDS_VALUE (item) && json_node_get_value_type (item) == G_TYPE_STRING)
      word = lap_words_find (&lap_kit_words, json_node_get_string (item));
    if (word < 0 || (kit->mask & LAP_BIT (word))) {
      g_autofree char *all = lap_words_all (&lap_kit_words);

      lap_path_error (error, LAP_PATH_ELEMENT (path, i), "expected a piece of kit, each once, of: %s", all);
      return FALSE;
    }
    lap_kit_set (kit, word, 1);
  }
  return TRUE;
}

static gboolean
read_counts (LapKit *kit, JsonObject *object, const LapPath *path, GError **error)
{
  JsonObjectIter iter;
  const char *name, *last = NULL;
  JsonNode *member;

  kit->counted = TRUE;
  json_object_iter_init_ordered (&iter, object);
  while (json_object_iter_next_ordered (&iter, &name, &member)) {
    int word = lap_words_find (&lap_kit_words, name);
    gint64 count;

    if (word < 0) {
      lap_extras_add (&kit->extras, "", last, name, member);
      continue;
    }
    if (!lap_read_whole (member, &count) || count < 0 || count > MOST) {
      lap_path_error (error, LAP_PATH_MEMBER (path, name), "expected a whole number from 0 to %d", MOST);
      return FALSE;
    }
    lap_kit_set (kit, word, count);
    last = lap_words_id (&lap_kit_words, word);
  }
  return TRUE;
}

static gboolean
read_kit (const LapField *f, JsonNode *node, const LapPath *path, gpointer slot, GError **error)
{
  g_autoptr (LapKit) kit = lap_kit_new ();

  if (JSON_NODE_HOLDS_ARRAY (node)) {
    if (!read_list (kit, json_node_get_array (node), path, error))
      return FALSE;
  } else if (JSON_NODE_HOLDS_OBJECT (node)) {
    if (!read_counts (kit, json_node_get_object (node), path, error))
      return FALSE;
  } else {
    lap_path_error (error, path, "expected a list of kit, or an object of kit and counts");
    return FALSE;
  }
  if (kit->n > 0 || kit->extras != NULL)
    *(LapKit **) slot = g_steal_pointer (&kit);
  return TRUE;
}

static void
write_kit (const LapField *f, gconstpointer slot, LapJsonWriter *writer)
{
  const LapKit *kit = *(LapKit * const *) slot;

  if (!kit->counted) {
    lap_json_writer_begin_array (writer);
    for (guint i = 0; i < kit->n; i++)
      lap_json_writer_string (writer, lap_words_id (&lap_kit_words, kit->order[i]));
    lap_json_writer_end_array (writer);
    return;
  }
  lap_json_writer_begin_object (writer);
  lap_extras_write (kit->extras, "", NULL, writer);
  for (guint i = 0; i < kit->n; i++) {
    const char *word = lap_words_id (&lap_kit_words, kit->order[i]);

    lap_json_writer_member (writer, word);
    lap_json_writer_int (writer, kit->counts[kit->order[i]]);
    lap_extras_write (kit->extras, "", word, writer);
  }
  lap_json_writer_end_object (writer);
}

static void
visit_kit (const LapField *f, gconstpointer slot, const char *pointer, LapExtraFunc func, gpointer data)
{
  lap_extras_visit ((*(LapKit * const *) slot)->extras, NULL, pointer, func, data);
}

const LapKind lap_kind_kit = { lap_kit_get_type, read_kit, write_kit, visit_kit };
