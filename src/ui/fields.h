/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Rows that edit properties of one object of a document's model, or of several together. What a row looks like follows
 * from the kind of the field: a line to type in, a number, a switch, a choice, a set of switches. Each change is one step
 * of the history for all objects; what can't be is taken back and told. Where the objects differ a row says so, and
 * they stay as they are until it is changed.
 *
 * Order of calls: lap_fields_new(), lap_fields_row() for each row, lap_fields_show() whenever other objects are meant.
 * The rows follow the document by themselves. The fields outlive their rows.
 */
#pragma once

#include "ui/document.h"

#include <adwaita.h>

G_BEGIN_DECLS

/* What may be chosen for a field that names something: appends ids and what people call them. */
typedef void (*LapChoices) (LapDocument *document, GPtrArray *ids, GPtrArray *titles);

typedef struct {
  const char *property;
  const char *title, *hint; /* marked for translation; hint may be NULL */
  int         step;         /* of a number; 0 = 1 */
  LapChoices  choices;      /* of a text that names something */
  /* May be NULL: adds to @edits what makes @property of @object @value; else it is set. */
  void      (*set) (LapEdits *edits, LapObject *object, const GValue *value);
  /* May be NULL: makes what helps to fill in a line, at its end. It writes into @row and emits "entry-activated". */
  GtkWidget *(*helper) (AdwEntryRow *row);
  /* Of square metres: the hint where they are shown as square feet. */
  const char *in_feet;
} LapFieldSpec;

#define LAP_TYPE_FIELDS (lap_fields_get_type ())
G_DECLARE_FINAL_TYPE (LapFields, lap_fields, LAP, FIELDS, GObject)

LapFields *lap_fields_new    (LapDocument        *document,
                              GType               type);
/* A row for @spec (kept). Transfer none, as of any new widget. */
GtkWidget *lap_fields_row    (LapFields          *fields,
                              const LapFieldSpec *spec);
/* Edits @objects from now on, of the type; NULL or an empty array: none. */
void       lap_fields_show   (LapFields          *fields,
                              GPtrArray          *objects);
/* Applies what is typed and isn't an edit yet. */
void       lap_fields_commit (LapFields          *fields);

G_END_DECLS
