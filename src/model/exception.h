/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What is different on a date: one class cancelled, moved or given to somebody else (LapException, the member
 * `except`), a coach away (LapAway), the house closed (LapClosed, a row). Read the fields; write by edits.
 */
#pragma once

#include "base/rows.h"
#include "model/object.h"
#include "model/when.h"

G_BEGIN_DECLS

#define LAP_TYPE_EXCEPTION (lap_exception_get_type ())
#define LAP_EXCEPTION(o) (G_TYPE_CHECK_INSTANCE_CAST ((o), LAP_TYPE_EXCEPTION, LapException))
#define LAP_IS_EXCEPTION(o) (G_TYPE_CHECK_INSTANCE_TYPE ((o), LAP_TYPE_EXCEPTION))

typedef struct {
  LapObject parent_instance;
  char     *class_id;  /* the member `class` */
  int       date;      /* the day it would have been on */
  gboolean  cancelled;
  int       to;        /* the date it is moved to; 0 = stays */
  int       start;     /* minutes; -1 = stays */
  char     *room;      /* NULL = stays */
  char     *coach;     /* NULL = stays */
  char     *note;
} LapException;

typedef struct {
  LapObjectClass parent_class;
} LapExceptionClass;

GType         lap_exception_get_type (void);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapException, g_object_unref)

LapException *lap_exception_new      (const char *class_id,
                                      int         date);

#define LAP_TYPE_AWAY (lap_away_get_type ())
#define LAP_AWAY(o) (G_TYPE_CHECK_INSTANCE_CAST ((o), LAP_TYPE_AWAY, LapAway))
#define LAP_IS_AWAY(o) (G_TYPE_CHECK_INSTANCE_TYPE ((o), LAP_TYPE_AWAY))

typedef struct {
  LapObject parent_instance;
  char     *coach;
  int       from, until; /* dates, both away */
} LapAway;

typedef struct {
  LapObjectClass parent_class;
} LapAwayClass;

GType    lap_away_get_type (void);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapAway, g_object_unref)

LapAway *lap_away_new      (const char *coach,
                            int         from,
                            int         until);

/* Dates on which the house is closed. */
typedef struct {
  int        from, until; /* both closed */
  guint64    present;     /* 0 = written as one date */
  GPtrArray *extras;
} LapClosed;

extern const LapRowsKind lap_kind_closed;

G_END_DECLS
