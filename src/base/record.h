/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A record says once, as a table, what the members of a JSON object are called, hold and default to; reading,
 * writing, copying, comparing and the properties of the model all follow from that one table. A new member is
 * one struct field and one row.
 *
 * Always true: rows stand in the order files are written in; a value equal to its preset is left out unless the
 * row says KEEP; members that no row names are kept as extras, after the known member they followed, at every
 * depth that has rows.
 *
 * A row's `in` is the path of objects around the member ("" or "film" or "met/steady"); rows of one path stand
 * together. A slot has the layout of its GType's C type: int, double, gboolean, guint, char *, char **, boxed.
 */
#pragma once

#include "base/json-writer.h"
#include "base/path.h"
#include "base/words.h"

#include <glib-object.h>
#include <json-glib/json-glib.h>

G_BEGIN_DECLS

typedef struct _LapField LapField;
typedef struct _LapKind LapKind;
typedef struct _LapRecord LapRecord;

/* An unknown member, kept for the writer. */
typedef struct {
  char     *in;    /* the objects around it, as in LapField */
  char     *after; /* the known member it followed, or NULL */
  char     *name;
  JsonNode *node;
} LapExtra;

/* Told of one unknown member: the record that doesn't know it (NULL for an object of words), and the JSON Pointer
 * of the object that holds it. */
typedef void (*LapExtraFunc) (const LapRecord *record, const LapExtra *extra, const char *pointer, gpointer data);

struct _LapKind {
  GType    (*type)  (void);
  gboolean (*read)  (const LapField *field, JsonNode *node, const LapPath *path, gpointer slot, GError **error);
  void     (*write) (const LapField *field, gconstpointer slot, LapJsonWriter *writer);
  /* For a kind that holds records: visits their extras. NULL for the rest. */
  void     (*visit) (const LapField *field, gconstpointer slot, const char *pointer, LapExtraFunc func, gpointer data);
};

typedef enum {
  LAP_FIELD_REQUIRED = 1 << 0, /* reading fails without it; implies KEEP */
  LAP_FIELD_KEEP = 1 << 1,     /* written even when it equals its preset */
  LAP_FIELD_FIXED = 1 << 2,    /* no property of the model: it never changes by an edit */
} LapFieldFlags;

struct _LapField {
  const char      *in;
  const char      *name;
  const LapKind   *kind;
  gsize            offset;
  LapFieldFlags    flags;
  double           low, high; /* limits of a number, of a text's characters or a list's length; 0, 0 = the kind's own */
  double           preset;    /* of a number, flag or word */
  const LapWords  *words;     /* of a word or of words */
};

struct _LapRecord {
  const char     *what; /* "a part", for messages */
  const LapField *fields;
  guint           n;    /* at most 64 */
  gsize           extras;   /* offset of a GPtrArray *, NULL when there are none */
  gsize           present;  /* offset of a guint64 with a bit for each row that was given; 0 = not tracked */
  /* May be NULL: whether a row doesn't apply to @self now and must not be written. */
  gboolean      (*leaves_out) (gconstpointer self, const LapField *field);
  /* May be NULL: what rows can't say. @seen has a bit for each row that was in the file. */
  gboolean      (*check)      (gpointer self, guint64 seen, const LapPath *path, GError **error);
};

extern const LapKind lap_kind_int;    /* int, whole number within low…high */
extern const LapKind lap_kind_number; /* double within low…high */
extern const LapKind lap_kind_flag;   /* gboolean */
extern const LapKind lap_kind_text;   /* char *, at most 10,000 characters; NULL = "" */
extern const LapKind lap_kind_id;     /* char *, as text; NULL is written as null when kept */
extern const LapKind lap_kind_word;   /* int, index into words; -1 = absent */
extern const LapKind lap_kind_words;  /* char **, each one of words, none twice */
extern const LapKind lap_kind_texts;  /* char **, any texts */

extern const LapKind lap_kind_json;   /* JsonNode *, anything at all */

void            lap_record_init   (const LapRecord *record,
                                   gpointer         self);
void            lap_record_clear  (const LapRecord *record,
                                   gpointer         self);
/* @to is initialised. Extras and presence go along. */
void            lap_record_copy   (const LapRecord *record,
                                   gconstpointer    from,
                                   gpointer         to);
/* Fills the initialised @self from @node; on error @self is valid but unspecified. */
gboolean        lap_record_read   (const LapRecord *record,
                                   gpointer         self,
                                   JsonNode        *node,
                                   const LapPath   *path,
                                   GError         **error);
/* Writes one whole object. */
void            lap_record_write  (const LapRecord *record,
                                   gconstpointer    self,
                                   LapJsonWriter   *writer);

/* Visits every unknown member of @self, which lies at @pointer, and of the records in it. */
void            lap_record_visit  (const LapRecord *record,
                                   gconstpointer    self,
                                   const char      *pointer,
                                   LapExtraFunc     func,
                                   gpointer         data);

/* Field by name: its member name, or "film-lens" for `lens` in `film`. NULL where there is none. */
const LapField *lap_record_field  (const LapRecord *record,
                                   const char      *property);
char           *lap_field_property (const LapField *field);

void            lap_field_get     (const LapField *field,
                                   gconstpointer   self,
                                   GValue         *value); /* zero-filled; initialised here */
/* TRUE when that changed something. */
gboolean        lap_field_set     (const LapField *field,
                                   gpointer        self,
                                   const GValue   *value);
gboolean        lap_field_is_preset (const LapField *field,
                                     gconstpointer   self);

/* For the kinds of other folders. */
gboolean        lap_read_whole    (JsonNode      *node,
                                   gint64        *number); /* 40, 40.0 and 4e1 are whole */
gboolean        lap_read_number   (JsonNode      *node,
                                   double        *number);
gboolean        lap_read_text     (JsonNode      *node,
                                   const LapPath *path,
                                   gsize          most,
                                   char         **text,
                                   GError       **error);
void            lap_extras_add    (GPtrArray    **extras,
                                   const char    *in,
                                   const char    *after,
                                   const char    *name,
                                   JsonNode      *node);
GPtrArray      *lap_extras_copy   (GPtrArray     *extras);
void            lap_extras_visit  (GPtrArray       *extras,
                                   const LapRecord *record,
                                   const char      *pointer,
                                   LapExtraFunc     func,
                                   gpointer         data);
/* Writes the extras of the object @in that followed @after. */
void            lap_extras_write  (GPtrArray       *extras,
                                   const char      *in,
                                   const char      *after,
                                   LapJsonWriter   *writer);

G_END_DECLS
