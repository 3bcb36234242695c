/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A week of classes: the root of a document. It says once what happens every week from one date until another, and
 * what is different on some dates. Read the fields; write by edits.
 *
 * Always true of a file that was read: ids of rooms, coaches and classes are each there once; what a class, an
 * exception or an absence names is there; a class ends by 24:00; the timezone is known.
 */
#pragma once

#include "model/class.h"
#include "model/coach.h"
#include "model/exception.h"
#include "model/list.h"
#include "model/room.h"

G_BEGIN_DECLS

#define LAP_TYPE_WEEK (lap_week_get_type ())
#define LAP_WEEK(o) (G_TYPE_CHECK_INSTANCE_CAST ((o), LAP_TYPE_WEEK, LapWeek))
#define LAP_IS_WEEK(o) (G_TYPE_CHECK_INSTANCE_TYPE ((o), LAP_TYPE_WEEK))

#define LAP_WEEK_VERSION 1

typedef struct {
  LapObject parent_instance;
  char     *format;      /* "lapwing-week" */
  int       version;     /* above LAP_WEEK_VERSION: read-only */
  char     *id;
  char     *title;
  char     *timezone;    /* "Europe/Lisbon" */
  int       from, until; /* dates, both in it; 0 = no limit */
  LapHours *open[LAP_N_DAYS]; /* one span each; all NULL = always open; else a NULL day is closed */
  LapRows  *closed;      /* LapClosed */
  LapList  *rooms;       /* LapRoom */
  LapList  *coaches;     /* LapCoach */
  LapList  *classes;     /* LapClass */
  LapList  *exceptions;  /* LapException */
  LapList  *aways;       /* LapAway */
} LapWeek;

typedef struct {
  LapObjectClass parent_class;
} LapWeekClass;

GType     lap_week_get_type  (void);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapWeek, g_object_unref)

/* An empty week with an id of its own. */
LapWeek  *lap_week_new       (const char    *title,
                              const char    *timezone);

/* Whether all of it fits together, as it must where a file is read; an edit can break that. FALSE with @error. */
gboolean  lap_week_check     (const LapWeek *week,
                              GError       **error);

/* By id; NULL where there is none, or @id is NULL. Transfer none. */
LapRoom  *lap_week_room      (const LapWeek *week,
                              const char    *id);
LapCoach *lap_week_coach     (const LapWeek *week,
                              const char    *id);
LapClass *lap_week_class     (const LapWeek *week,
                              const char    *id);
/* What is different with the class @id on @date, or NULL. */
LapException *lap_week_exception (const LapWeek *week,
                                  const char    *id,
                                  int            date);
/* The opening hours of @day in @span; FALSE where it is closed all day. Without opening hours the whole day. */
gboolean  lap_week_open      (const LapWeek *week,
                              LapDay         day,
                              LapSpan       *span);
/* Whether @date is closed. */
gboolean  lap_week_is_closed (const LapWeek *week,
                              int            date);
/* Whether the coach @id is away on @date. */
gboolean  lap_week_is_away   (const LapWeek *week,
                              const char    *id,
                              int            date);

G_END_DECLS
