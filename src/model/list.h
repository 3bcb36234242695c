/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The one list type: the parts of a session, the blocks of a part. A GListModel whose array changes in one
 * function only, which emits items-changed once, when the state is whole. An object is in at most one list.
 */
#pragma once

#include "model/object.h"

#include <gio/gio.h>

G_BEGIN_DECLS

#define LAP_TYPE_LIST (lap_list_get_type ())
G_DECLARE_FINAL_TYPE (LapList, lap_list, LAP, LIST, GObject)

LapList   *lap_list_new    (LapObject      *owner,
                            GType           item_type);
guint      lap_list_n      (LapList        *list);
/* Transfer none; the caller casts. */
gpointer   lap_list_nth    (LapList        *list,
                            guint           n);
/* G_MAXUINT where @item isn't in it. */
guint      lap_list_find   (LapList        *list,
                            gconstpointer   item);
/* Takes @n_removed out at @position and puts @added (of LapObject without an owner, may be NULL) in. */
void       lap_list_splice (LapList        *list,
                            guint           position,
                            guint           n_removed,
                            GPtrArray      *added);

/* The kind of a field that is such a list; `item` names the type of what is in it. */
typedef struct {
  LapKind kind;
  GType (*item) (void);
  guint   most;
} LapListKind;

gboolean   lap_list_read   (const LapField *field, JsonNode *node, const LapPath *path, gpointer slot,
                            GError **error);
void       lap_list_write  (const LapField *field, gconstpointer slot, LapJsonWriter *writer);

void       lap_list_visit  (const LapField *field, gconstpointer slot, const char *pointer, LapExtraFunc func,
                            gpointer data);

#define LAP_LIST_KIND { lap_list_get_type, lap_list_read, lap_list_write, lap_list_visit }

G_END_DECLS
