/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Rows of controls for the members of a record: what a member may hold, its words and limits come from the record's
 * field, what it is called on screen from a table of rows. The form keeps no values: it reads what holds when it is
 * asked to show, and hands what is typed to whoever made it, which applies it or says why not.
 *
 * Order of calls: lap_form_new(), lap_form_fill() once for each page, lap_form_show() then and after each change.
 */
#pragma once

#include "base/record.h"

#include <adwaita.h>

G_BEGIN_DECLS

/* Metres in the file, on screen what the locale measures with; the hint says which. */
#define LAP_UNIT_DISTANCE (-1)

typedef struct {
  const char *property;     /* as of lap_record_field(); NULL begins a group called title */
  const char *title, *hint; /* marked for translation */
  double      unit;         /* what one of the shown is in the file: 60 for minutes; or LAP_UNIT_DISTANCE */
  int         digits;
  double      step;
  const char *between;      /* what stands between the texts of a list when they are typed; NULL for a comma */
  /* May be NULL: makes what helps to fill in a line, at its end. It writes into @row and emits "entry-activated". */
  GtkWidget *(*helper) (AdwEntryRow *row);
} LapFormRow;

typedef struct {
  const LapRecord *record;
  /* What the record's offsets are into, as it is now; NULL when it has gone. Transfer none. */
  gconstpointer  (*get)   (gpointer data);
  /* Takes @value for @field, called @title on screen, or says why not. */
  gboolean       (*set)   (gpointer data, const LapField *field, const char *title, const GValue *value, GError **error);
  /* May be NULL: what a number that isn't stated, and is below 0, counts as. */
  double         (*usual) (gpointer data, const LapField *field);
  /* May be NULL for one: how many pieces of a kit are put in at once. */
  guint          (*pieces) (gpointer data);
} LapFormTarget;

typedef struct _LapForm LapForm;

/* @data goes to the functions of @target. */
LapForm *lap_form_new  (const LapFormTarget *target,
                        gpointer             data);
void     lap_form_free (LapForm             *form);
/* A group of rows for each group of @rows, at the end of @page. Widgets and form live as long as each other. */
void     lap_form_fill (LapForm             *form,
                        AdwPreferencesPage  *page,
                        const LapFormRow    *rows,
                        guint                n);
/* The controls take what holds now. */
void     lap_form_show (LapForm             *form);

G_END_DECLS
