/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Walking a record. An object of the file is a path ("", "film", "met/steady"); its children, in the order of the
 * rows, are the rows whose `in` is that path and the next longer paths. Reading goes through the members of the
 * file and looks each up; writing goes through the children and puts each extra after the child it followed.
 */
#include "base/record.h"

#include <string.h>

#define SLOT(self, field) ((gpointer) ((char *) (self) + (field)->offset))

static GPtrArray **
extras_slot (const LapRecord *record, gconstpointer self)
{
  return (GPtrArray **) ((char *) self + record->extras);
}

static guint64 *
present_slot (const LapRecord *record, gconstpointer self)
{
  return record->present != 0 ? (guint64 *) ((char *) self + record->present) : NULL;
}

static void
extra_free (gpointer data)
{
  LapExtra *extra = data;

  g_free (extra->in);
  g_free (extra->after);
  g_free (extra->name);
  json_node_unref (extra->node);
  g_free (extra);
}

void
lap_extras_add (GPtrArray **extras, const char *in, const char *after, const char *name, JsonNode *node)
{
  LapExtra *extra = g_new0 (LapExtra, 1);

  if (*extras == NULL)
    *extras = g_ptr_array_new_with_free_func (extra_free);
  extra->in = g_strdup (in);
  extra->after = g_strdup (after);
  extra->name = g_strdup (name);
  extra->node = json_node_ref (node);
  g_ptr_array_add (*extras, extra);
}

GPtrArray *
lap_extras_copy (GPtrArray *extras)
{
  GPtrArray *copy = NULL;

  for (guint i = 0; extras != NULL && i < extras->len; i++) {
    LapExtra *e = g_ptr_array_index (extras, i);

    lap_extras_add (&copy, e->in, e->after, e->name, e->node);
  }
  return copy;
}

/* Values */

void
lap_field_get (const LapField *field, gconstpointer self, GValue *value)
{
  gconstpointer slot = SLOT (self, field);
  GType type = field->kind->type ();

  g_value_init (value, type);
  switch (G_TYPE_FUNDAMENTAL (type)) {
  case G_TYPE_INT: g_value_set_int (value, *(const int *) slot); break;
  case G_TYPE_UINT: g_value_set_uint (value, *(const guint *) slot); break;
  case G_TYPE_DOUBLE: g_value_set_double (value, *(const double *) slot); break;
  case G_TYPE_BOOLEAN: g_value_set_boolean (value, *(const gboolean *) slot); break;
  case G_TYPE_STRING: g_value_set_string (value, *(char * const *) slot); break;
  case G_TYPE_BOXED: g_value_set_boxed (value, *(gpointer const *) slot); break;
  default: g_assert_not_reached ();
  }
}

/* What @slot holds, written as text: the same bytes mean the same value, whatever the kind. */
static GBytes *
written (const LapField *field, gconstpointer slot)
{
  g_autoptr (LapJsonWriter) writer = lap_json_writer_new ();

  field->kind->write (field, slot, writer);
  return lap_json_writer_finish (writer);
}

static gboolean
boxed_equal (const LapField *field, gconstpointer a, gconstpointer b)
{
  gpointer pa = *(gpointer const *) a, pb = *(gpointer const *) b;
  g_autoptr (GBytes) ta = NULL;
  g_autoptr (GBytes) tb = NULL;

  if (pa == pb || pa == NULL || pb == NULL)
    return pa == pb;
  ta = written (field, a);
  tb = written (field, b);
  return g_bytes_equal (ta, tb);
}

static gboolean
set_text (char **slot, const char *text)
{
  if (g_strcmp0 (*slot, text) == 0)
    return FALSE;
  g_free (*slot);
  *slot = g_strdup (text);
  return TRUE;
}

gboolean
lap_field_set (const LapField *field, gpointer self, const GValue *value)
{
  gpointer slot = SLOT (self, field);
  GType type = field->kind->type ();
  gpointer boxed;

#define SET(T, get) do { T v = get (value); if (*(T *) slot == v) return FALSE; *(T *) slot = v; return TRUE; } while (0)
  switch (G_TYPE_FUNDAMENTAL (type)) {
  case G_TYPE_INT: SET (int, g_value_get_int);
  case G_TYPE_UINT: SET (guint, g_value_get_uint);
  case G_TYPE_DOUBLE: SET (double, g_value_get_double);
  case G_TYPE_BOOLEAN: SET (gboolean, g_value_get_boolean);
  case G_TYPE_STRING: return set_text (slot, g_value_get_string (value));
  case G_TYPE_BOXED:
    boxed = g_value_get_boxed (value);
    if (boxed_equal (field, slot, &boxed))
      return FALSE;
    if (*(gpointer *) slot != NULL)
      g_boxed_free (type, *(gpointer *) slot);
    *(gpointer *) slot = boxed != NULL ? g_boxed_copy (type, boxed) : NULL;
    return TRUE;
  default: g_assert_not_reached ();
  }
#undef SET
  return FALSE;
}

gboolean
lap_field_is_preset (const LapField *field, gconstpointer self)
{
  gconstpointer slot = SLOT (self, field);
  GType type = field->kind->type ();
  const char *text;

  switch (G_TYPE_FUNDAMENTAL (type)) {
  case G_TYPE_INT: return *(const int *) slot == (int) field->preset;
  case G_TYPE_UINT: return *(const guint *) slot == (guint) field->preset;
  case G_TYPE_DOUBLE: return *(const double *) slot == field->preset;
  case G_TYPE_BOOLEAN: return !*(const gboolean *) slot == !field->preset;
  case G_TYPE_STRING:
    text = *(char * const *) slot;
    return text == NULL || *text == '\0';
  default:
    if (type == G_TYPE_STRV)
      return *(char ** const *) slot == NULL || **(char ** const *) slot == NULL;
    return *(gpointer const *) slot == NULL;
  }
}

void
lap_record_init (const LapRecord *record, gpointer self)
{
  for (guint i = 0; i < record->n; i++) {
    const LapField *f = &record->fields[i];

    switch (G_TYPE_FUNDAMENTAL (f->kind->type ())) {
    case G_TYPE_INT:
    case G_TYPE_UINT:
    case G_TYPE_BOOLEAN: *(int *) SLOT (self, f) = (int) f->preset; break;
    case G_TYPE_DOUBLE: *(double *) SLOT (self, f) = f->preset; break;
    default: break; /* zero-filled */
    }
  }
}

static void
field_clear (const LapField *field, gpointer self)
{
  gpointer *slot = SLOT (self, field);
  GType type = field->kind->type ();

  if (G_TYPE_FUNDAMENTAL (type) == G_TYPE_STRING)
    g_clear_pointer ((char **) slot, g_free);
  else if (G_TYPE_FUNDAMENTAL (type) == G_TYPE_BOXED && *slot != NULL)
    g_boxed_free (type, g_steal_pointer (slot));
}

void
lap_record_clear (const LapRecord *record, gpointer self)
{
  for (guint i = 0; i < record->n; i++)
    field_clear (&record->fields[i], self);
  g_clear_pointer (extras_slot (record, self), g_ptr_array_unref);
}

void
lap_record_copy (const LapRecord *record, gconstpointer from, gpointer to)
{
  for (guint i = 0; i < record->n; i++) {
    g_auto (GValue) value = G_VALUE_INIT;

    if (G_TYPE_FUNDAMENTAL (record->fields[i].kind->type ()) == G_TYPE_OBJECT)
      continue; /* lists of objects are the model's to copy */
    lap_field_get (&record->fields[i], from, &value);
    lap_field_set (&record->fields[i], to, &value);
  }
  g_clear_pointer (extras_slot (record, to), g_ptr_array_unref);
  *extras_slot (record, to) = lap_extras_copy (*extras_slot (record, from));
  if (record->present != 0)
    *present_slot (record, to) = *present_slot (record, from);
}

void
lap_extras_visit (GPtrArray *extras, const LapRecord *record, const char *pointer, LapExtraFunc func, gpointer data)
{
  for (guint i = 0; extras != NULL && i < extras->len; i++) {
    LapExtra *e = g_ptr_array_index (extras, i);
    g_autofree char *holder = *e->in != '\0' ? g_strconcat (pointer, "/", e->in, NULL) : g_strdup (pointer);

    func (record, e, holder, data);
  }
}

void
lap_record_visit (const LapRecord *record, gconstpointer self, const char *pointer, LapExtraFunc func, gpointer data)
{
  lap_extras_visit (*extras_slot (record, self), record, pointer, func, data);
  for (guint i = 0; i < record->n; i++) {
    const LapField *f = &record->fields[i];
    g_autofree char *inner = NULL;

    if (f->kind->visit == NULL || *(gpointer *) SLOT (self, f) == NULL)
      continue;
    inner = g_strconcat (pointer, *f->in != '\0' ? "/" : "", f->in, "/", f->name, NULL);
    f->kind->visit (f, SLOT (self, f), inner, func, data);
  }
}

/* Properties */

char *
lap_field_property (const LapField *field)
{
  char *name;

  if (*field->in == '\0')
    return g_strdup (field->name);
  name = g_strdup_printf ("%s-%s", field->in, field->name);
  return g_strdelimit (name, "/", '-');
}

const LapField *
lap_record_field (const LapRecord *record, const char *property)
{
  for (guint i = 0; i < record->n; i++) {
    g_autofree char *name = lap_field_property (&record->fields[i]);

    if (g_str_equal (name, property))
      return &record->fields[i];
  }
  return NULL;
}

/* Reading */

/* Whether @in is the object @path + "/" + @name or lies inside it. */
static gboolean
lies_in (const char *in, const char *path, const char *name)
{
  gsize head = strlen (path), tail = strlen (name);

  if (head > 0) {
    if (strncmp (in, path, head) != 0 || in[head] != '/')
      return FALSE;
    in += head + 1;
  }
  return strncmp (in, name, tail) == 0 && (in[tail] == '\0' || in[tail] == '/');
}

static gboolean read_object (const LapRecord *record, gpointer self, JsonNode *node, const char *in,
                             const LapPath *path, guint64 *seen, GError **error);

static gboolean
read_member (const LapRecord *record, gpointer self, const char *name, JsonNode *node, const char *in,
             const char **last, const LapPath *path, guint64 *seen, GError **error)
{
  const LapPath *here = LAP_PATH_MEMBER (path, name);

  for (guint i = 0; i < record->n; i++) {
    const LapField *f = &record->fields[i];

    if (g_str_equal (f->in, in) && g_str_equal (f->name, name)) {
      *seen |= G_GUINT64_CONSTANT (1) << i;
      *last = f->name;
      field_clear (f, self);
      return f->kind->read (f, node, here, SLOT (self, f), error);
    }
    if (*f->in != '\0' && lies_in (f->in, in, name)) {
      g_autofree char *inner = *in == '\0' ? g_strdup (name) : g_strconcat (in, "/", name, NULL);

      *last = name;
      return read_object (record, self, node, inner, here, seen, error);
    }
  }
  lap_extras_add (extras_slot (record, self), in, *last, name, node);
  return TRUE;
}

static gboolean
read_object (const LapRecord *record, gpointer self, JsonNode *node, const char *in, const LapPath *path,
             guint64 *seen, GError **error)
{
  JsonObjectIter iter;
  const char *name, *last = NULL;
  JsonNode *member;

  if (!JSON_NODE_HOLDS_OBJECT (node)) {
    lap_path_error (error, path, "expected an object");
    return FALSE;
  }
  json_object_iter_init_ordered (&iter, json_node_get_object (node));
  while (json_object_iter_next_ordered (&iter, &name, &member))
    if (!read_member (record, self, name, member, in, &last, path, seen, error))
      return FALSE;
  return TRUE;
}

gboolean
lap_record_read (const LapRecord *record, gpointer self, JsonNode *node, const LapPath *path, GError **error)
{
  guint64 seen = 0;

  g_assert (record->n <= 64);
  if (!JSON_NODE_HOLDS_OBJECT (node)) {
    lap_path_error (error, path, "expected an object: %s", record->what);
    return FALSE;
  }
  if (!read_object (record, self, node, "", path, &seen, error))
    return FALSE;
  for (guint i = 0; i < record->n; i++) {
    const LapField *f = &record->fields[i];

    if ((f->flags & LAP_FIELD_REQUIRED) && !(seen & (G_GUINT64_CONSTANT (1) << i))) {
      lap_path_error (error, path, "%s needs the member \"%s%s%s\"", record->what, f->in,
                      *f->in != '\0' ? "/" : "", f->name);
      return FALSE;
    }
  }
  if (record->present != 0)
    *present_slot (record, self) = seen;
  return record->check == NULL || record->check (self, seen, path, error);
}

/* Writing */

static gboolean
is_written (const LapRecord *record, gconstpointer self, guint i)
{
  const LapField *f = &record->fields[i];

  if (record->leaves_out != NULL && record->leaves_out (self, f))
    return FALSE;
  if (record->present != 0)
    return (*present_slot (record, self) >> i) & 1;
  return (f->flags & (LAP_FIELD_REQUIRED | LAP_FIELD_KEEP)) || !lap_field_is_preset (f, self);
}

void
lap_extras_write (GPtrArray *extras, const char *in, const char *after, LapJsonWriter *writer)
{
  for (guint i = 0; extras != NULL && i < extras->len; i++) {
    LapExtra *e = g_ptr_array_index (extras, i);

    if (g_str_equal (e->in, in) && g_strcmp0 (e->after, after) == 0) {
      lap_json_writer_member (writer, e->name);
      lap_json_writer_node (writer, e->node);
    }
  }
}

/* Whether the object at @path/@name has anything to say. */
static gboolean
has_content (const LapRecord *record, gconstpointer self, const char *path, const char *name)
{
  GPtrArray *extras = *extras_slot (record, self);

  for (guint i = 0; i < record->n; i++)
    if (*record->fields[i].in != '\0' && lies_in (record->fields[i].in, path, name) && is_written (record, self, i))
      return TRUE;
  for (guint i = 0; extras != NULL && i < extras->len; i++)
    if (lies_in (((LapExtra *) g_ptr_array_index (extras, i))->in, path, name))
      return TRUE;
  return FALSE;
}

/* The name of the object that lies in @path and holds @in, or NULL where @in isn't inside @path. */
static char *
child_name (const char *in, const char *path)
{
  gsize head = strlen (path);
  const char *rest;

  if (*in == '\0' || g_str_equal (in, path))
    return NULL;
  if (head > 0 && (strncmp (in, path, head) != 0 || in[head] != '/'))
    return NULL;
  rest = head > 0 ? in + head + 1 : in;
  return g_strndup (rest, strcspn (rest, "/"));
}

static void
write_object (const LapRecord *record, gconstpointer self, const char *in, LapJsonWriter *writer)
{
  g_autofree char *last_child = NULL;

  lap_json_writer_begin_object (writer);
  lap_extras_write (*extras_slot (record, self), in, NULL, writer);
  for (guint i = 0; i < record->n; i++) {
    const LapField *f = &record->fields[i];
    g_autofree char *child = NULL;

    if (g_str_equal (f->in, in)) {
      if (is_written (record, self, i)) {
        lap_json_writer_member (writer, f->name);
        f->kind->write (f, SLOT (self, f), writer);
      }
      lap_extras_write (*extras_slot (record, self), in, f->name, writer);
      continue;
    }
    child = child_name (f->in, in);
    if (child == NULL || g_strcmp0 (child, last_child) == 0)
      continue;
    if (has_content (record, self, in, child)) {
      g_autofree char *inner = *in == '\0' ? g_strdup (child) : g_strconcat (in, "/", child, NULL);

      lap_json_writer_member (writer, child);
      write_object (record, self, inner, writer);
    }
    lap_extras_write (*extras_slot (record, self), in, child, writer);
    g_free (last_child);
    last_child = g_steal_pointer (&child);
  }
  lap_json_writer_end_object (writer);
}

void
lap_record_write (const LapRecord *record, gconstpointer self, LapJsonWriter *writer)
{
  write_object (record, self, "", writer);
}
