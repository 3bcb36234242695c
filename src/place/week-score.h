/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The score of a week: a band for each day, in it a line for each room (or each coach), hours across, a class to scale
 * on its line with its name below. Lines and their heights are made once for each change of the week; where a class
 * lies across follows from the axis when somebody asks. Drawing, hover, click and drag ask here and nowhere else.
 *
 * Always true: bands and lines touch and go down the page; a line has as many lanes as classes lie over each other at
 * once, so that no class covers another; the words of a class end before the next class of its lane begins. An axis
 * that serves it has one piece, counts minutes from `first` on, and is made by lap_week_score_set_axis().
 *
 * Names are shortened in this order: whole; its end cut off; the first letters of its words; nothing but the class.
 */
#pragma once

#include "checks/checks.h"
#include "model/occurrences.h"
#include "place/axis.h"
#include "place/measure.h"

G_BEGIN_DECLS

/* Which classes are there, and in what letters. A set of ids that is NULL holds all. */
typedef struct {
  gboolean          by_coach; /* lines are coaches, not rooms */
  LapDay            first;    /* day of the week; of one with dates that of its first date */
  int               day;      /* the only one; -1 = all */
  GHashTable       *rooms, *coaches, *kinds;
  const LapMeasure *measure;
  double            em, line; /* px of the letters, of a line of them */
  gboolean          detailed; /* time, coach and minutes in a line of their own */
} LapWeekLook;

typedef struct {
  LapDay day;
  int    date; /* 0 = in every week */
  int    y, height;
  guint  first_row, n_rows;
} LapWeekBand;

typedef struct {
  guint       band;
  const char *id;    /* of the room or the coach; NULL = classes without one */
  const char *title; /* NULL for those */
  int         y, height;
  guint       first, n; /* boxes */
} LapWeekRow;

typedef struct {
  guint     occurrence;
  LapClass *c;
  guint     nth;        /* of the occurrences of its class: 0 but where one is moved here from another week */
  guint     row;
  guint     lane;       /* of its row, from the top */
  guint     next;       /* the box after it in its lane, or LAP_NO_WEEK_BOX */
  int       start, end; /* minutes of its day */
  int       y;          /* of the lane's top */
  int       strain;     /* LapStrain; -1 = not known */
  guint     warning;    /* the number of the gravest about it, as in the list; 0 = none */
  gboolean  off;        /* isn't held */
  gboolean  changed;    /* by an exception, and held */
  char     *initials;
  char     *detail;     /* "6:45, Mira, 60 min", or what of it goes behind the name */
  double    title_width, initials_width, detail_width; /* px */
  double    number_width; /* of the warning's number where that stands beside its mark, from 10 on; else 0 */
} LapWeekBox;

/* Two that share a room or a coach at the same time. */
typedef struct {
  guint a, b; /* boxes, a before b */
  int   start, end;
} LapWeekClash;

typedef struct {
  LapWeek    *week;
  GArray     *occurrences; /* LapOccurrence */
  LapWeekLook look;        /* its sets are not read any more */
  int         first, last; /* minutes, on whole hours */
  int         height;
  int         cell, crest, bar; /* px of a lane; of what is above the bar; of the bar */
  guint       n_bands, n_rows, n;
  LapWeekBand bands[LAP_N_DAYS];
  LapWeekRow *rows;
  LapWeekBox *boxes;       /* by row, then by start */
  GArray     *clashes;     /* LapWeekClash */
} LapWeekScore;

#define LAP_NO_WEEK_BOX G_MAXUINT

/* Of the seven days from @date on, or the week as it always is for 0. @checkup and @attachments may be NULL. It points
 * into @week, whose next edit outdates it. */
LapWeekScore *lap_week_score_new      (LapWeek           *week,
                                       int                date,
                                       const LapWeekLook *look,
                                       const LapCheckup  *checkup,
                                       LapAttachments    *attachments);
void          lap_week_score_free     (LapWeekScore      *score);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapWeekScore, lap_week_score_free)

/* Gives @axis the hours of @score; zoom and offset stay what they can. */
void          lap_week_score_set_axis (const LapWeekScore *score,
                                       LapAxis            *axis);
/* px in the view of a minute of the day. */
double        lap_week_score_x        (const LapWeekScore *score,
                                       const LapAxis      *axis,
                                       double              minute);

typedef enum { LAP_NAMED_WHOLE, LAP_NAMED_CUT, LAP_NAMED_INITIALS, LAP_NAMED_NOT } LapNamed;

/* Where a class lies in the view, whole px. Words go from the side that time comes from; the mark of its warning stands
 * before them. */
typedef struct {
  int      x, width;             /* of the bar */
  int      y;                    /* of the lane; the bar is `crest` px below */
  int      words_x, words_width; /* mark and words together */
  int      mark;                 /* px of the mark, its number and the gap behind it; 0 = there is none, or no room */
  LapNamed named;
  gboolean detailed;             /* the detail has room behind the name */
} LapWeekPlaced;

LapWeekPlaced lap_week_score_place    (const LapWeekScore *score,
                                       const LapAxis      *axis,
                                       guint               box);

typedef enum { LAP_WEEK_EDGE_NONE, LAP_WEEK_EDGE_START, LAP_WEEK_EDGE_END } LapWeekEdge;

typedef struct {
  guint       band, row; /* the nearest ones */
  double      minute;    /* held to the day that is shown */
  guint       box;       /* LAP_NO_WEEK_BOX beside all classes and their words */
  LapWeekEdge edge;      /* whether the start or the end of its bar is within reach */
  gboolean    mark;      /* on the mark of its warning */
} LapWeekHit;

LapWeekHit    lap_week_score_hit      (const LapWeekScore *score,
                                       const LapAxis      *axis,
                                       double              x,
                                       double              y,
                                       double              reach);

/* The box of the class @id, or LAP_NO_WEEK_BOX. */
guint         lap_week_score_find     (const LapWeekScore *score,
                                       const char         *id);
/* The nearest box of the rows above (@by = -1) or below (1) that has one, or LAP_NO_WEEK_BOX. */
guint         lap_week_score_above    (const LapWeekScore *score,
                                       guint               box,
                                       int                 by);
/* The row of @id on @day (NULL: those without), or G_MAXUINT. */
guint         lap_week_score_row      (const LapWeekScore *score,
                                       int                 day,
                                       const char         *id);

/* Minutes between the hours that have a label, where one needs @label px: 60, 120, 180, 240 or 360; below an hour 30
 * and 15. */
int           lap_week_score_step     (const LapAxis      *axis,
                                       double              label);

G_END_DECLS
