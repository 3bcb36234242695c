/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A class of a week, once every week on its day; without a day it waits to be placed. Rooms and coaches are named
 * by their ids. Read the fields; write by edits.
 */
#pragma once

#include "catalogue/vocabulary.h"
#include "model/object.h"
#include "model/when.h"

G_BEGIN_DECLS

typedef enum { LAP_STRAIN_EASY, LAP_STRAIN_MODERATE, LAP_STRAIN_HARD } LapStrain;
extern const LapWords lap_strains;

#define LAP_TYPE_CLASS (lap_class_get_type ())
#define LAP_CLASS(o) (G_TYPE_CHECK_INSTANCE_CAST ((o), LAP_TYPE_CLASS, LapClass))
#define LAP_IS_CLASS(o) (G_TYPE_CHECK_INSTANCE_TYPE ((o), LAP_TYPE_CLASS))

typedef struct {
  LapObject parent_instance;
  char     *id;
  char     *title;      /* NULL or "" = its kind */
  char     *kind;       /* "circuit": what a coach must be trained for */
  int       minutes;
  char     *session;    /* path of its session, relative to the week's file; NULL or "" = none */
  char     *for_whom;   /* the member `for`: "early birds"; NULL or "" = not said */
  int       places;     /* people it is for; 0 = not said */
  int       strain;     /* the member `effort`, LapStrain; -1 = not said */
  char    **regions;
  int       in_out;     /* minutes of its time for coming and going */
  gboolean  takes_part; /* the coach trains with the class */
  int       day;        /* LapDay; -1 = not placed */
  int       start;      /* minutes from midnight; never -1 on a day */
  char     *room;       /* id, or NULL */
  char     *coach;      /* id, or NULL */
  gboolean  fixed;      /* nothing may move it */
  char    **wish_days;
  LapHours *wish_between;
  char    **fine;
} LapClass;

typedef struct {
  LapObjectClass parent_class;
} LapClassClass;

GType       lap_class_get_type  (void);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapClass, g_object_unref)

/* With an id of its own. */
LapClass   *lap_class_new       (const char     *kind,
                                 int             minutes);
const char *lap_class_title     (const LapClass *c);
gboolean    lap_class_is_placed (const LapClass *c);
/* The minute of its day it ends at; only for one with a start. */
int         lap_class_end       (const LapClass *c);

G_END_DECLS
