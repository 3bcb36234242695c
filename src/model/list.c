/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "model/list.h"

struct _LapList {
  GObject    parent_instance;
  LapObject *owner; /* not owned: it owns the list */
  GType      item_type;
  GPtrArray *items;
};

static GType
get_item_type (GListModel *model)
{
  return LAP_LIST (model)->item_type;
}

static guint
get_n_items (GListModel *model)
{
  return LAP_LIST (model)->items->len;
}

static gpointer
get_item (GListModel *model, guint position)
{
  LapList *self = LAP_LIST (model);

  return position < self->items->len ? g_object_ref (g_ptr_array_index (self->items, position)) : NULL;
}

static void
model_init (GListModelInterface *iface)
{
  iface->get_item_type = get_item_type;
  iface->get_n_items = get_n_items;
  iface->get_item = get_item;
}

G_DEFINE_FINAL_TYPE_WITH_CODE (LapList, lap_list, G_TYPE_OBJECT, G_IMPLEMENT_INTERFACE (G_TYPE_LIST_MODEL, model_init))

static void
lap_list_dispose (GObject *object)
{
  LapList *self = LAP_LIST (object);

  for (guint i = 0; i < self->items->len; i++)
    LAP_OBJECT (g_ptr_array_index (self->items, i))->owner = NULL;
  g_ptr_array_set_size (self->items, 0);
  self->owner = NULL;
  G_OBJECT_CLASS (lap_list_parent_class)->dispose (object);
}

static void
lap_list_finalize (GObject *object)
{
  g_ptr_array_unref (LAP_LIST (object)->items);
  G_OBJECT_CLASS (lap_list_parent_class)->finalize (object);
}

static void
lap_list_class_init (LapListClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = lap_list_dispose;
  G_OBJECT_CLASS (klass)->finalize = lap_list_finalize;
}

static void
lap_list_init (LapList *self)
{
  self->items = g_ptr_array_new_with_free_func (g_object_unref);
}

LapList *
lap_list_new (LapObject *owner, GType item_type)
{
  LapList *self = g_object_new (LAP_TYPE_LIST, NULL);

  self->owner = owner;
  self->item_type = item_type;
  return self;
}

guint
lap_list_n (LapList *list)
{
  return list->items->len;
}

gpointer
lap_list_nth (LapList *list, guint n)
{
  g_return_val_if_fail (n < list->items->len, NULL);
  return g_ptr_array_index (list->items, n);
}

guint
lap_list_find (LapList *list, gconstpointer item)
{
  guint i;

  return g_ptr_array_find (list->items, item, &i) ? i : G_MAXUINT;
}

void
lap_list_splice (LapList *list, guint position, guint n_removed, GPtrArray *added)
{
  guint n_added = added != NULL ? added->len : 0;

  g_return_if_fail (position + n_removed <= list->items->len);

  for (guint i = 0; i < n_removed; i++)
    LAP_OBJECT (g_ptr_array_index (list->items, position + i))->owner = NULL;
  if (n_removed > 0)
    g_ptr_array_remove_range (list->items, position, n_removed);
  for (guint i = 0; i < n_added; i++) {
    LapObject *item = g_ptr_array_index (added, i);

    g_assert (item->owner == NULL);
    item->owner = list->owner;
    g_ptr_array_insert (list->items, position + i, g_object_ref (item));
  }
  if (n_removed == 0 && n_added == 0)
    return;
  g_list_model_items_changed (G_LIST_MODEL (list), position, n_removed, n_added);
  if (list->owner != NULL)
    lap_object_changed (list->owner);
}

gboolean
lap_list_read (const LapField *field, JsonNode *node, const LapPath *path, gpointer slot, GError **error)
{
  const LapListKind *kind = (const LapListKind *) field->kind;
  LapList *list = *(LapList **) slot;
  g_autoptr (GPtrArray) items = g_ptr_array_new_with_free_func (g_object_unref);
  JsonArray *array;

  if (!JSON_NODE_HOLDS_ARRAY (node)) {
    lap_path_error (error, path, "expected a list");
    return FALSE;
  }
  array = json_node_get_array (node);
  if (json_array_get_length (array) > kind->most) {
    lap_path_error (error, path, "expected at most %u items", kind->most);
    return FALSE;
  }
  for (guint i = 0; i < json_array_get_length (array); i++) {
    LapObject *item = lap_object_read (kind->item (), json_array_get_element (array, i),
                                       LAP_PATH_ELEMENT (path, i), error);

    if (item == NULL)
      return FALSE;
    g_ptr_array_add (items, item);
  }
  lap_list_splice (list, 0, lap_list_n (list), items);
  return TRUE;
}

void
lap_list_write (const LapField *field, gconstpointer slot, LapJsonWriter *writer)
{
  LapList *list = *(LapList * const *) slot;

  lap_json_writer_begin_array (writer);
  for (guint i = 0; i < list->items->len; i++)
    lap_object_write (g_ptr_array_index (list->items, i), writer);
  lap_json_writer_end_array (writer);
}

void
lap_list_visit (const LapField *field, gconstpointer slot, const char *pointer, LapExtraFunc func, gpointer data)
{
  LapList *list = *(LapList * const *) slot;

  for (guint i = 0; i < list->items->len; i++) {
    gconstpointer item = g_ptr_array_index (list->items, i);
    g_autofree char *inner = g_strdup_printf ("%s/%u", pointer, i);

    lap_record_visit (lap_object_record (item), item, inner, func, data);
  }
}
