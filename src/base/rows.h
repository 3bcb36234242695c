/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A member that is a list of small records, each a plain struct with a LapRecord: the steps of a part, the takes
 * of a session. A LapRows is a value: never changed once it sits in a slot; an edit sets a changed copy.
 */
#pragma once

#include "base/record.h"

G_BEGIN_DECLS

typedef struct {
  LapKind          kind;
  const LapRecord *record;
  gsize            size; /* of one struct */
  guint            most;
} LapRowsKind;

typedef struct {
  const LapRowsKind *kind;
  GPtrArray         *items; /* structs of kind->size, zero-filled and initialised by the record */
} LapRows;

#define LAP_TYPE_ROWS (lap_rows_get_type ())
GType    lap_rows_get_type (void);
LapRows *lap_rows_new      (const LapRowsKind *kind);
/* A new last item, to be filled by the caller before the rows are shared. */
gpointer lap_rows_add      (LapRows           *rows);
LapRows *lap_rows_copy     (const LapRows     *rows);
void     lap_rows_free     (LapRows           *rows);
/* 0 for NULL. */
guint    lap_rows_n        (const LapRows     *rows);
#define  lap_rows_nth(rows, T, i) ((T *) g_ptr_array_index ((rows)->items, (i)))
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapRows, lap_rows_free)

gboolean lap_rows_read     (const LapField *field, JsonNode *node, const LapPath *path, gpointer slot,
                            GError **error);
void     lap_rows_write    (const LapField *field, gconstpointer slot, LapJsonWriter *writer);

void     lap_rows_visit    (const LapField *field, gconstpointer slot, const char *pointer, LapExtraFunc func,
                            gpointer data);

/* const LapRowsKind lap_kind_steps = { LAP_ROWS_KIND, &step_record, sizeof (LapStep), 100 }; */
#define LAP_ROWS_KIND { lap_rows_get_type, lap_rows_read, lap_rows_write, lap_rows_visit }

G_END_DECLS
