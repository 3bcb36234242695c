/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What sessions, parts, blocks, weeks and classes have in common: fields told by a LapRecord, each a GObject
 * property; lists of objects below; unknown members kept; an owner above.
 *
 * Everybody reads the struct fields directly. Only the layers edit and store write, by g_object_set_property()
 * and lap_list_splice(), so that every change can be undone. After each, the object and then its owners up to
 * the root emit "changed", once and synchronously, when the state is whole.
 */
#pragma once

#include "base/record.h"

G_BEGIN_DECLS

#define LAP_TYPE_OBJECT (lap_object_get_type ())
#define LAP_OBJECT(o) (G_TYPE_CHECK_INSTANCE_CAST ((o), LAP_TYPE_OBJECT, LapObject))
#define LAP_IS_OBJECT(o) (G_TYPE_CHECK_INSTANCE_TYPE ((o), LAP_TYPE_OBJECT))
#define LAP_OBJECT_CLASS(k) (G_TYPE_CHECK_CLASS_CAST ((k), LAP_TYPE_OBJECT, LapObjectClass))
#define LAP_OBJECT_GET_CLASS(o) (G_TYPE_INSTANCE_GET_CLASS ((o), LAP_TYPE_OBJECT, LapObjectClass))

typedef struct _LapObject LapObject;
typedef struct _LapObjectClass LapObjectClass;

struct _LapObject {
  GObject    parent_instance;
  LapObject *owner;  /* not owned; NULL for a root or a part that stands alone */
  GPtrArray *extras; /* LapExtra, NULL without */
};

struct _LapObjectClass {
  GObjectClass     parent_class;
  const LapRecord *record;
  /* May be NULL: copies what no row of the record holds. */
  void           (*copy_rest) (gconstpointer from, gpointer to);
};

GType            lap_object_get_type      (void);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapObject, g_object_unref)

/* For a subclass: in class_init, and first in init. */
void             lap_object_class_install (LapObjectClass  *klass,
                                           const LapRecord *record);
void             lap_object_setup         (LapObject       *object);

const LapRecord *lap_object_record        (gconstpointer    object);

/* The list that @field of @object is, NULL where it is something else. Transfer none. */
struct _LapList *lap_object_list          (gconstpointer    object,
                                           const LapField  *field);

/* A deep copy without an owner. Transfer full. */
gpointer         lap_object_copy          (gconstpointer    object);

/* A new object of @type from @node, or NULL with @error. */
gpointer         lap_object_read          (GType            type,
                                           JsonNode        *node,
                                           const LapPath   *path,
                                           GError         **error);
void             lap_object_write         (gconstpointer    object,
                                           LapJsonWriter   *writer);
/* As one JSON text, as it stands in a file; two objects are equal when these are. */
GBytes          *lap_object_bytes         (gconstpointer    object);

/* Emits "changed" on @object and its owners. Only for the list and property setters of this layer. */
void             lap_object_changed       (LapObject       *object);

G_END_DECLS
