/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "model/object.h"

#include "model/list.h"

enum { CHANGED, N_SIGNALS };
static guint signals[N_SIGNALS];

G_DEFINE_ABSTRACT_TYPE (LapObject, lap_object, G_TYPE_OBJECT)

static gboolean
is_list (const LapField *field)
{
  return G_TYPE_FUNDAMENTAL (field->kind->type ()) == G_TYPE_OBJECT;
}

LapList *
lap_object_list (gconstpointer object, const LapField *field)
{
  return is_list (field) ? *(LapList **) ((char *) object + field->offset) : NULL;
}

static void
lap_object_get_property (GObject *object, guint id, GValue *value, GParamSpec *pspec)
{
  g_auto (GValue) now = G_VALUE_INIT;

  lap_field_get (&lap_object_record (object)->fields[id - 1], object, &now);
  g_value_copy (&now, value);
}

static void
lap_object_set_property (GObject *object, guint id, const GValue *value, GParamSpec *pspec)
{
  if (!lap_field_set (&lap_object_record (object)->fields[id - 1], object, value))
    return;
  g_object_notify_by_pspec (object, pspec);
  lap_object_changed (LAP_OBJECT (object));
}

static void
lap_object_finalize (GObject *object)
{
  const LapRecord *record = lap_object_record (object);

  for (guint i = 0; i < record->n; i++)
    if (is_list (&record->fields[i]))
      g_object_unref (lap_object_list (object, &record->fields[i]));
  lap_record_clear (record, object);
  G_OBJECT_CLASS (lap_object_parent_class)->finalize (object);
}

static void
lap_object_class_init (LapObjectClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = lap_object_finalize;
  signals[CHANGED] = g_signal_new ("changed", LAP_TYPE_OBJECT, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                   G_TYPE_NONE, 0);
}

static void
lap_object_init (LapObject *self)
{
}

/* The limits of a row hold for files; a property can also hold the preset that means "absent". */
static GParamSpec *
field_spec (const LapField *field)
{
  const GParamFlags flags = G_PARAM_READWRITE | G_PARAM_EXPLICIT_NOTIFY | G_PARAM_STATIC_STRINGS;
  g_autofree char *property = lap_field_property (field);
  const char *name = g_intern_string (property);
  GType type = field->kind->type ();

  switch (G_TYPE_FUNDAMENTAL (type)) {
  case G_TYPE_INT: return g_param_spec_int (name, NULL, NULL, G_MININT, G_MAXINT, field->preset, flags);
  case G_TYPE_UINT: return g_param_spec_uint (name, NULL, NULL, 0, G_MAXUINT, field->preset, flags);
  case G_TYPE_DOUBLE: return g_param_spec_double (name, NULL, NULL, -G_MAXDOUBLE, G_MAXDOUBLE, field->preset, flags);
  case G_TYPE_BOOLEAN: return g_param_spec_boolean (name, NULL, NULL, field->preset != 0, flags);
  case G_TYPE_STRING: return g_param_spec_string (name, NULL, NULL, NULL, flags);
  default: return g_param_spec_boxed (name, NULL, NULL, type, flags);
  }
}

void
lap_object_class_install (LapObjectClass *klass, const LapRecord *record)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);

  klass->record = record;
  /* GObject doesn't let a class inherit these two. */
  object_class->get_property = lap_object_get_property;
  object_class->set_property = lap_object_set_property;
  for (guint i = 0; i < record->n; i++)
    if (!(record->fields[i].flags & LAP_FIELD_FIXED))
      g_object_class_install_property (object_class, i + 1, field_spec (&record->fields[i]));
}

void
lap_object_setup (LapObject *object)
{
  const LapRecord *record = lap_object_record (object);

  lap_record_init (record, object);
  for (guint i = 0; i < record->n; i++) {
    const LapField *f = &record->fields[i];

    if (is_list (f))
      *(LapList **) ((char *) object + f->offset) =
        lap_list_new (object, ((const LapListKind *) f->kind)->item ());
  }
}

const LapRecord *
lap_object_record (gconstpointer object)
{
  return LAP_OBJECT_GET_CLASS (object)->record;
}

gpointer
lap_object_copy (gconstpointer object)
{
  const LapRecord *record = lap_object_record (object);
  LapObject *copy = g_object_new (G_OBJECT_TYPE (object), NULL);

  lap_record_copy (record, object, copy);
  if (LAP_OBJECT_GET_CLASS (copy)->copy_rest != NULL)
    LAP_OBJECT_GET_CLASS (copy)->copy_rest (object, copy);
  for (guint i = 0; i < record->n; i++) {
    g_autoptr (GPtrArray) items = g_ptr_array_new_with_free_func (g_object_unref);
    LapList *list = lap_object_list (object, &record->fields[i]);

    if (list == NULL)
      continue;
    for (guint k = 0; k < lap_list_n (list); k++)
      g_ptr_array_add (items, lap_object_copy (lap_list_nth (list, k)));
    lap_list_splice (lap_object_list (copy, &record->fields[i]), 0, 0, items);
  }
  return copy;
}

gpointer
lap_object_read (GType type, JsonNode *node, const LapPath *path, GError **error)
{
  g_autoptr (LapObject) object = g_object_new (type, NULL);

  if (!lap_record_read (lap_object_record (object), object, node, path, error))
    return NULL;
  return g_steal_pointer (&object);
}

void
lap_object_write (gconstpointer object, LapJsonWriter *writer)
{
  lap_record_write (lap_object_record (object), object, writer);
}

GBytes *
lap_object_bytes (gconstpointer object)
{
  g_autoptr (LapJsonWriter) writer = lap_json_writer_new ();

  lap_object_write (object, writer);
  return lap_json_writer_finish (writer);
}

void
lap_object_changed (LapObject *object)
{
  for (; object != NULL; object = object->owner)
    g_signal_emit (object, signals[CHANGED], 0);
}
