/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Whether an array fits one line is known only at its end. So an array is held back, its scalars in a list,
 * and written when it ends or when a container begins inside it, which settles that it takes a line for each
 * item.
 */
#include "base/json-writer.h"

#include <math.h>
#include <string.h>

#include "base/json-number.h"

#define INDENT 2
#define COLUMNS 100

typedef struct {
  gboolean is_object;
  guint count;           /* of the members or items written so far */
  GPtrArray *held;       /* the texts of an array that is held back; NULL for all others */
} Frame;

struct _LapJsonWriter {
  GString *out;
  gsize line_start;
  GArray *frames;
  gboolean named;        /* a member waits for its value */
};

static void
clear_frame (gpointer data)
{
  Frame *frame = data;

  g_clear_pointer (&frame->held, g_ptr_array_unref);
}

static Frame *
top (LapJsonWriter *writer)
{
  return writer->frames->len > 0 ? &g_array_index (writer->frames, Frame, writer->frames->len - 1) : NULL;
}

static void
new_line (LapJsonWriter *writer, guint depth)
{
  g_string_append_c (writer->out, '\n');
  writer->line_start = writer->out->len;
  for (guint i = 0; i < depth * INDENT; i++)
    g_string_append_c (writer->out, ' ');
}

/* The next member or item of the innermost container gets a line of its own. */
static void
begin_line (LapJsonWriter *writer)
{
  if (top (writer)->count++ > 0)
    g_string_append_c (writer->out, ',');
  new_line (writer, writer->frames->len);
}

/* Writes an array that was held back with one item a line, and leaves it open. */
static void
spill (LapJsonWriter *writer)
{
  g_autoptr(GPtrArray) held = g_steal_pointer (&top (writer)->held);

  g_string_append_c (writer->out, '[');
  for (guint i = 0; i < held->len; i++)
    {
      begin_line (writer);
      g_string_append (writer->out, g_ptr_array_index (held, i));
    }
}

static gboolean
may_begin_value (LapJsonWriter *writer)
{
  if (top (writer) == NULL)
    return writer->out->len == 0;
  return top (writer)->is_object == writer->named;
}

/* Where a value is about to be written as it comes. */
static void
begin_value (LapJsonWriter *writer)
{
  Frame *frame = top (writer);

  if (frame != NULL && frame->held != NULL)
    spill (writer);
  if (frame != NULL && !frame->is_object)
    begin_line (writer);
  writer->named = FALSE;
}

/* Takes @text over. */
static void
scalar (LapJsonWriter *writer, char *text)
{
  g_autofree char *owned = text;

  g_return_if_fail (may_begin_value (writer));
  if (top (writer) != NULL && top (writer)->held != NULL)
    {
      g_ptr_array_add (top (writer)->held, g_steal_pointer (&owned));
      return;
    }
  begin_value (writer);
  g_string_append (writer->out, owned);
}

/* Only what RFC 8259 section 7 demands is escaped: the quote, the backslash and the controls below U+0020. */
static char *
quote (const char *text)
{
  static const char letters[] = "btnfr";
  static const char controls[] = "\b\t\n\f\r";
  g_autofree char *valid = g_utf8_make_valid (text, -1);
  GString *out = g_string_new ("\"");

  for (const char *at = valid; *at != '\0'; at++)
    {
      const char *control = strchr (controls, *at);

      if (*at == '"' || *at == '\\')
        g_string_append_printf (out, "\\%c", *at);
      else if (control != NULL)
        g_string_append_printf (out, "\\%c", letters[control - controls]);
      else if ((guchar) *at < 0x20)
        g_string_append_printf (out, "\\u%04x", *at);
      else
        g_string_append_c (out, *at);
    }
  g_string_append_c (out, '"');
  return g_string_free (out, FALSE);
}

LapJsonWriter *
lap_json_writer_new (void)
{
  LapJsonWriter *writer = g_new0 (LapJsonWriter, 1);

  writer->out = g_string_new (NULL);
  writer->frames = g_array_new (FALSE, TRUE, sizeof (Frame));
  g_array_set_clear_func (writer->frames, clear_frame);
  return writer;
}

void
lap_json_writer_free (LapJsonWriter *writer)
{
  g_string_free (writer->out, TRUE);
  g_array_unref (writer->frames);
  g_free (writer);
}

void
lap_json_writer_begin_object (LapJsonWriter *writer)
{
  Frame frame = { .is_object = TRUE };

  g_return_if_fail (may_begin_value (writer));
  begin_value (writer);
  g_string_append_c (writer->out, '{');
  g_array_append_val (writer->frames, frame);
}

void
lap_json_writer_end_object (LapJsonWriter *writer)
{
  gboolean empty;

  g_return_if_fail (top (writer) != NULL && top (writer)->is_object && !writer->named);
  empty = top (writer)->count == 0;
  g_array_set_size (writer->frames, writer->frames->len - 1);
  if (!empty)
    new_line (writer, writer->frames->len);
  g_string_append_c (writer->out, '}');
}

void
lap_json_writer_begin_array (LapJsonWriter *writer)
{
  Frame frame = { .held = NULL };

  g_return_if_fail (may_begin_value (writer));
  begin_value (writer);
  frame.held = g_ptr_array_new_with_free_func (g_free);
  g_array_append_val (writer->frames, frame);
}

/* The array that is held back as one line, or NULL when that line would be too long. Transfer full. */
static char *
one_line (LapJsonWriter *writer)
{
  GPtrArray *held = top (writer)->held;
  glong columns = g_utf8_strlen (writer->out->str + writer->line_start, -1) + strlen ("[],");
  g_autoptr(GString) line = g_string_new ("[");

  for (guint i = 0; i < held->len && columns <= COLUMNS; i++)
    {
      const char *text = g_ptr_array_index (held, i);

      if (i > 0)
        g_string_append (line, ", ");
      g_string_append (line, text);
      columns += g_utf8_strlen (text, -1) + (i > 0 ? 2 : 0);
    }
  g_string_append_c (line, ']');
  return columns <= COLUMNS || held->len == 0 ? g_string_free (g_steal_pointer (&line), FALSE) : NULL;
}

void
lap_json_writer_end_array (LapJsonWriter *writer)
{
  g_autofree char *line = NULL;

  g_return_if_fail (top (writer) != NULL && !top (writer)->is_object);
  if (top (writer)->held != NULL)
    {
      line = one_line (writer);
      if (line == NULL)
        spill (writer);
    }
  g_array_set_size (writer->frames, writer->frames->len - 1);
  if (line != NULL)
    {
      g_string_append (writer->out, line);
      return;
    }
  new_line (writer, writer->frames->len);
  g_string_append_c (writer->out, ']');
}

void
lap_json_writer_member (LapJsonWriter *writer, const char *name)
{
  g_autofree char *quoted = quote (name);

  g_return_if_fail (top (writer) != NULL && top (writer)->is_object && !writer->named);
  begin_line (writer);
  g_string_append_printf (writer->out, "%s: ", quoted);
  writer->named = TRUE;
}

void
lap_json_writer_string (LapJsonWriter *writer, const char *text)
{
  scalar (writer, text != NULL ? quote (text) : g_strdup ("null"));
}

void
lap_json_writer_int (LapJsonWriter *writer, gint64 value)
{
  scalar (writer, g_strdup_printf ("%" G_GINT64_FORMAT, value));
}

void
lap_json_writer_number (LapJsonWriter *writer, double value)
{
  char text[LAP_JSON_NUMBER_SIZE];

  g_return_if_fail (isfinite (value));
  lap_json_number (value, text);
  scalar (writer, g_strdup (text));
}

void
lap_json_writer_boolean (LapJsonWriter *writer, gboolean value)
{
  scalar (writer, g_strdup (value ? "true" : "false"));
}

void
lap_json_writer_null (LapJsonWriter *writer)
{
  scalar (writer, g_strdup ("null"));
}

static void
write_scalar_node (LapJsonWriter *writer, JsonNode *node)
{
  GType type = json_node_get_value_type (node);

  if (type == G_TYPE_STRING)
    lap_json_writer_string (writer, json_node_get_string (node));
  else if (type == G_TYPE_BOOLEAN)
    lap_json_writer_boolean (writer, json_node_get_boolean (node));
  else if (type == G_TYPE_DOUBLE)
    lap_json_writer_number (writer, json_node_get_double (node));
  else
    lap_json_writer_int (writer, json_node_get_int (node));
}

static void
write_object_node (LapJsonWriter *writer, JsonObject *object)
{
  JsonObjectIter iter;
  const char *name;
  JsonNode *child;

  lap_json_writer_begin_object (writer);
  json_object_iter_init_ordered (&iter, object);
  while (json_object_iter_next_ordered (&iter, &name, &child))
    {
      lap_json_writer_member (writer, name);
      lap_json_writer_node (writer, child);
    }
  lap_json_writer_end_object (writer);
}

static void
write_array_node (LapJsonWriter *writer, JsonArray *array)
{
  guint length = json_array_get_length (array);

  lap_json_writer_begin_array (writer);
  for (guint i = 0; i < length; i++)
    lap_json_writer_node (writer, json_array_get_element (array, i));
  lap_json_writer_end_array (writer);
}

void
lap_json_writer_node (LapJsonWriter *writer, JsonNode *node)
{
  switch (json_node_get_node_type (node))
    {
    case JSON_NODE_OBJECT:
      write_object_node (writer, json_node_get_object (node));
      break;
    case JSON_NODE_ARRAY:
      write_array_node (writer, json_node_get_array (node));
      break;
    case JSON_NODE_VALUE:
      write_scalar_node (writer, node);
      break;
    default:
      lap_json_writer_null (writer);
    }
}

GBytes *
lap_json_writer_finish (LapJsonWriter *writer)
{
  GBytes *bytes;

  g_return_val_if_fail (writer->frames->len == 0 && writer->out->len > 0, NULL);
  g_string_append_c (writer->out, '\n');
  bytes = g_string_free_to_bytes (writer->out);
  writer->out = g_string_new (NULL);
  writer->line_start = 0;
  return bytes;
}

void
lap_json_writer_member_string (LapJsonWriter *writer, const char *name, const char *text)
{
  lap_json_writer_member (writer, name);
  lap_json_writer_string (writer, text);
}

void
lap_json_writer_member_int (LapJsonWriter *writer, const char *name, gint64 value)
{
  lap_json_writer_member (writer, name);
  lap_json_writer_int (writer, value);
}

void
lap_json_writer_member_number (LapJsonWriter *writer, const char *name, double value)
{
  lap_json_writer_member (writer, name);
  lap_json_writer_number (writer, value);
}
