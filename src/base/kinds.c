/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The kinds of member that every record may use: whole number, number, flag, text, id, word, words, texts.
 */
#include "base/record.h"

#include <math.h>

#define MOST_CHARACTERS 10000
#define MOST_ITEMS 10000

static GType type_int (void) { return G_TYPE_INT; }
static GType type_double (void) { return G_TYPE_DOUBLE; }
static GType type_flag (void) { return G_TYPE_BOOLEAN; }
static GType type_text (void) { return G_TYPE_STRING; }
static GType type_texts (void) { return G_TYPE_STRV; }

gboolean
lap_read_number (JsonNode *node, double *number)
{
  if (!JSON_NODE_HOLDS_VALUE (node))
    return FALSE;
  if (json_node_get_value_type (node) != G_TYPE_INT64 && json_node_get_value_type (node) != G_TYPE_DOUBLE)
    return FALSE;
  *number = json_node_get_double (node);
  return TRUE;
}

gboolean
lap_read_whole (JsonNode *node, gint64 *number)
{
  double d;

  if (!lap_read_number (node, &d))
    return FALSE;
  if (json_node_get_value_type (node) == G_TYPE_INT64) {
    *number = json_node_get_int (node);
    return TRUE;
  }
  if (d != floor (d) || fabs (d) > 9007199254740992.0)
    return FALSE;
  *number = (gint64) d;
  return TRUE;
}

gboolean
lap_read_text (JsonNode *node, const LapPath *path, gsize most, char **text, GError **error)
{
  const char *string;

  if (!JSON_NODE_HOLDS_VALUE (node) || json_node_get_value_type (node) != G_TYPE_STRING) {
    lap_path_error (error, path, "expected a text");
    return FALSE;
  }
  string = json_node_get_string (node);
  if ((gsize) g_utf8_strlen (string, -1) > most) {
    lap_path_error (error, path, "expected a text of at most %" G_GSIZE_FORMAT " characters", most);
    return FALSE;
  }
  *text = g_strdup (string);
  return TRUE;
}

static gboolean
read_int (const LapField *f, JsonNode *node, const LapPath *path, gpointer slot, GError **error)
{
  gint64 number;

  if (!lap_read_whole (node, &number) || number < f->low || number > f->high) {
    lap_path_error (error, path, "expected a whole number from %.0f to %.0f", f->low, f->high);
    return FALSE;
  }
  *(int *) slot = number;
  return TRUE;
}

static void
write_int (const LapField *f, gconstpointer slot, LapJsonWriter *writer)
{
  lap_json_writer_int (writer, *(const int *) slot);
}

static gboolean
read_double (const LapField *f, JsonNode *node, const LapPath *path, gpointer slot, GError **error)
{
  double number;

  if (!lap_read_number (node, &number) || !(number >= f->low && number <= f->high)) {
    lap_path_error (error, path, "expected a number from %g to %g", f->low, f->high);
    return FALSE;
  }
  *(double *) slot = number;
  return TRUE;
}

static void
write_double (const LapField *f, gconstpointer slot, LapJsonWriter *writer)
{
  lap_json_writer_number (writer, *(const double *) slot);
}

static gboolean
read_flag (const LapField *f, JsonNode *node, const LapPath *path, gpointer slot, GError **error)
{
  if (!JSON_NODE_HOLDS_VALUE (node) || json_node_get_value_type (node) != G_TYPE_BOOLEAN) {
    lap_path_error (error, path, "expected true or false");
    return FALSE;
  }
  *(gboolean *) slot = json_node_get_boolean (node);
  return TRUE;
}

static void
write_flag (const LapField *f, gconstpointer slot, LapJsonWriter *writer)
{
  lap_json_writer_boolean (writer, *(const gboolean *) slot);
}

static gboolean
read_text (const LapField *f, JsonNode *node, const LapPath *path, gpointer slot, GError **error)
{
  if (!lap_read_text (node, path, f->high > 0 ? f->high : MOST_CHARACTERS, slot, error))
    return FALSE;
  if (f->low > 0 && **(char **) slot == '\0') {
    lap_path_error (error, path, "expected a text that isn't empty");
    return FALSE;
  }
  return TRUE;
}

static void
write_text (const LapField *f, gconstpointer slot, LapJsonWriter *writer)
{
  const char *text = *(char * const *) slot;

  lap_json_writer_string (writer, text != NULL ? text : "");
}

static gboolean
read_id (const LapField *f, JsonNode *node, const LapPath *path, gpointer slot, GError **error)
{
  if (JSON_NODE_HOLDS_NULL (node))
    return TRUE; /* the slot is clear */
  if (!JSON_NODE_HOLDS_VALUE (node) || json_node_get_value_type (node) != G_TYPE_STRING ||
      *json_node_get_string (node) == '\0') {
    lap_path_error (error, path, "expected an id, or null");
    return FALSE;
  }
  return lap_read_text (node, path, 200, slot, error);
}

static void
write_id (const LapField *f, gconstpointer slot, LapJsonWriter *writer)
{
  const char *text = *(char * const *) slot;

  if (text != NULL)
    lap_json_writer_string (writer, text);
  else
    lap_json_writer_null (writer);
}

static int
find_word (const LapField *f, JsonNode *node, const LapPath *path, GError **error)
{
  g_autofree char *all = NULL;
  int i = -1;

  if (JSON_NODE_HOLDS_VALUE (node) && json_node_get_value_type (node) == G_TYPE_STRING)
    i = lap_words_find (f->words, json_node_get_string (node));
  if (i < 0) {
    all = lap_words_all (f->words);
    lap_path_error (error, path, "expected %s, one of: %s", f->words->what, all);
  }
  return i;
}

static gboolean
read_word (const LapField *f, JsonNode *node, const LapPath *path, gpointer slot, GError **error)
{
  int i = find_word (f, node, path, error);

  *(int *) slot = i;
  return i >= 0;
}

static void
write_word (const LapField *f, gconstpointer slot, LapJsonWriter *writer)
{
  int i = *(const int *) slot;

  if (i >= 0)
    lap_json_writer_string (writer, lap_words_id (f->words, i));
  else
    lap_json_writer_null (writer);
}

/* An array of texts; with words each must be one of them, once. */
static gboolean
read_texts (const LapField *f, JsonNode *node, const LapPath *path, gpointer slot, GError **error)
{
  g_autoptr (GPtrArray) items = g_ptr_array_new_with_free_func (g_free);
  guint most = f->high > 0 ? f->high : MOST_ITEMS;
  JsonArray *array;

  if (!JSON_NODE_HOLDS_ARRAY (node)) {
    lap_path_error (error, path, "expected a list of texts");
    return FALSE;
  }
  array = json_node_get_array (node);
  if (json_array_get_length (array) > most || json_array_get_length (array) < f->low) {
    lap_path_error (error, path, "expected %.0f to %u items", f->low, most);
    return FALSE;
  }
  for (guint i = 0; i < json_array_get_length (array); i++) {
    JsonNode *item = json_array_get_element (array, i);
    const LapPath *here = LAP_PATH_ELEMENT (path, i);
    char *text = NULL;

    if (f->words != NULL ? find_word (f, item, here, error) < 0
                         : !lap_read_text (item, here, MOST_CHARACTERS, &text, error))
      return FALSE;
    if (f->words != NULL)
      text = g_strdup (json_node_get_string (item));
    if (f->words != NULL && g_ptr_array_find_with_equal_func (items, text, g_str_equal, NULL)) {
      lap_path_error (error, here, "\"%s\" is there twice", text);
      g_free (text);
      return FALSE;
    }
    g_ptr_array_add (items, text);
  }
  if (items->len == 0)
    return TRUE;
  g_ptr_array_add (items, NULL);
  *(char ***) slot = (char **) g_ptr_array_free (g_steal_pointer (&items), FALSE);
  return TRUE;
}

static void
write_texts (const LapField *f, gconstpointer slot, LapJsonWriter *writer)
{
  char **texts = *(char ** const *) slot;

  lap_json_writer_begin_array (writer);
  for (; texts != NULL && *texts != NULL; texts++)
    lap_json_writer_string (writer, *texts);
  lap_json_writer_end_array (writer);
}

static gboolean
read_json (const LapField *f, JsonNode *node, const LapPath *path, gpointer slot, GError **error)
{
  *(JsonNode **) slot = json_node_copy (node);
  return TRUE;
}

static void
write_json (const LapField *f, gconstpointer slot, LapJsonWriter *writer)
{
  lap_json_writer_node (writer, *(JsonNode * const *) slot);
}

const LapKind lap_kind_int = { type_int, read_int, write_int };
const LapKind lap_kind_number = { type_double, read_double, write_double };
const LapKind lap_kind_flag = { type_flag, read_flag, write_flag };
const LapKind lap_kind_text = { type_text, read_text, write_text };
const LapKind lap_kind_id = { type_text, read_id, write_id };
const LapKind lap_kind_word = { type_int, read_word, write_word };
const LapKind lap_kind_words = { type_texts, read_texts, write_texts };
const LapKind lap_kind_texts = { type_texts, read_texts, write_texts };
const LapKind lap_kind_json = { json_node_get_type, read_json, write_json };
