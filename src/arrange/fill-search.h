/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The search behind a timetable: which classes stand when, in which room and with which coach, over plain structs, so
 * that it may run in a worker. Times are minutes after midnight, days count from Monday, the week is a circle.
 *
 * A class that is fixed stays. Every other one may start on any quarter of an hour, or where it stands. First each is
 * put where it costs least, those with the fewest places first; then classes are moved and others ejected for them,
 * with slow cooling, a set number of times from a set seed and in whole numbers only: the same timetable on every
 * machine. A lower bound that no timetable can pass tells how far from the best the one found can be.
 *
 * A class out of the timetable costs LAP_FILL_UNPLACED points; the other points are for wishes that aren't kept.
 */
#pragma once

#include <gio/gio.h>

G_BEGIN_DECLS

#define LAP_FILL_DAYS     7
#define LAP_FILL_DAY      1440 /* minutes */
#define LAP_FILL_UNPLACED 1000 /* points */
#define LAP_FILL_KIT_GAP  5    /* minutes more between two classes in a room that need different kit */
#define LAP_FILL_HARD     2    /* hard classes a coach takes part in on one day, at most */
#define LAP_FILL_REST     660  /* minutes a coach wants from the last class to the first of the next day */

/* What stands against a class at a place, as bits. */
typedef enum {
  LAP_FILL_MOST = 1 << 0,    /* the coach has as many classes that day as are wanted */
  LAP_FILL_TURN = 1 << 1,    /* too little time to turn the room around */
  LAP_FILL_FREE = 1 << 2,    /* the coach isn't free */
  LAP_FILL_QUIET = 1 << 3,   /* a loud class in quiet hours */
  LAP_FILL_HARDS = 1 << 4,   /* the coach takes part in enough hard classes that day */
  LAP_FILL_SHUT = 1 << 5,    /* outside the opening hours */
  LAP_FILL_NAMED = 1 << 6,   /* another room or coach is asked for */
  LAP_FILL_SKILL = 1 << 7,   /* the coach isn't trained for it */
  LAP_FILL_KIT = 1 << 8,     /* the room hasn't the kit */
  LAP_FILL_PLACES = 1 << 9,  /* the room has too few places */
  LAP_FILL_COACH = 1 << 10,  /* the coach has another class then */
  LAP_FILL_ROOM = 1 << 11,   /* the room has another class then */
} LapFillRule;

#define LAP_FILL_RULES 12

/* @start before @end, up to LAP_FILL_DAY. */
typedef struct {
  int day, start, end;
} LapFillSpan;

/* Where a class stands; @day -1 is nowhere. @room and @coach are -1 where the week has none. */
typedef struct {
  int day, start, room, coach;
} LapFillPlace;

/* Spans are arrays of LapFillSpan; NULL where there is no limit. */
typedef struct {
  int     turnaround;  /* minutes */
  GArray *quiet;       /* hours in which no loud class may be */
} LapFillRoom;

typedef struct {
  GArray *hours;       /* when the coach is free */
  guint   most;        /* classes a day; 0 is any number */
} LapFillCoach;

typedef struct {
  int          minutes;
  LapFillPlace was;      /* as the week stands */
  gboolean     fixed;    /* stays there, whatever that breaks */
  gboolean     hard, loud, takes_part;
  guint32      regions;
  guint        people;   /* whom it is for: hard classes of one number want days between them; 0 is nobody */
  guint        kit;      /* equal for classes that need the same kit */
  guint16     *rooms;    /* for each room 0, or the LapFillRules that bar it */
  guint16     *coaches;  /* the same for each coach */
  guint8      *crowded;  /* for each room whether it is small for the class; NULL: none is */
  guint        days;     /* wanted days as bits; 0 is any */
  int          from, until; /* wanted hours; @until 0 is any */
} LapFillClass;

typedef struct {
  guint         n_rooms, n_coaches, n_classes;
  LapFillRoom  *rooms;
  LapFillCoach *coaches;
  LapFillClass *classes;
  GArray       *hours;   /* when the house is open */
} LapFillProblem;

typedef struct {
  guint         n;
  LapFillPlace *places;      /* for each class */
  guint         unplaced;    /* not counting fixed ones */
  guint         points;      /* of what is placed */
  guint         first_unplaced, first_points; /* before the search improved it */
  guint         least_unplaced; /* no timetable leaves out fewer */
  guint64       least;       /* no timetable has a lower LAP_FILL_UNPLACED × unplaced + points */
  guint16      *barred;      /* for each class: 0, or the rules that bar even the nearest place before anything moves */
} LapFill;

/* NULL with G_IO_ERROR_CANCELLED only. @tries 0 stands for what the number of classes asks for. @progress (may
 * be NULL) is told shares from 0 to 1. */
LapFill *lap_fill_find   (const LapFillProblem *problem,
                          guint64               tries,
                          GCancellable         *cancellable,
                          void                (*progress) (double share, gpointer data),
                          gpointer              data,
                          GError              **error);
void     lap_fill_free   (LapFill              *fill);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapFill, lap_fill_free)

/* The rules to relax so that the class @i, which is out of the timetable, fits into it, and where it would stand:
 * those that are relaxed most easily. */
guint    lap_fill_nearest (const LapFillProblem *problem,
                           const LapFill        *fill,
                           guint                 i,
                           LapFillPlace         *place);

/* Points that the class @i costs at @place for its own wishes, and among all the others of @fill for rhythm. */
guint    lap_fill_wishes  (const LapFillProblem *problem,
                           guint                 i,
                           const LapFillPlace   *place);

G_END_DECLS
