/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The timetable that the search works on, private to it: who stands where, what stands against one more, and the
 * points of it all, kept up as classes are put and lifted.
 *
 * For each room and day, and each coach and day, there is a chain of the classes there, with exact minutes, and a row
 * of quarters that are taken. Between classes that start on quarters the rows are exact but for the gap for other kit.
 */
#pragma once

#include "arrange/fill-search.h"

G_BEGIN_DECLS

#define LAP_FILL_QUARTERS 96

/* The 96 quarters of a day. */
typedef struct {
  guint64 early, late; /* 48 each */
} LapFillRow;

#define LAP_FILL_HALF 48

typedef struct {
  const LapFillProblem *problem;
  LapFillPlace *at;
  int          *next_in_room, *next_of_coach;   /* chains; -1 ends one */
  int          *room_first, *coach_first;       /* of a room or coach on a day, as in lap_fill_slot() */
  LapFillRow   *room_row, *coach_row;
  guint        *count, *hards;                  /* of a coach on a day */
  guint        *kin, *kin_from;                 /* the hard classes for the same people: kin[kin_from[i]] … */
  guint        *shape;                          /* classes of equal length, kit and loudness have equal rows */
  guint         n_shapes;
  LapFillRow   *open_rows, *room_rows, *coach_rows; /* quarters at which a class of a shape may start */
  guint         unplaced;
  int           points;
} LapFillTable;

LapFillTable *lap_fill_table_new     (const LapFillProblem *problem);
void          lap_fill_table_free    (LapFillTable         *table);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapFillTable, lap_fill_table_free)

/* Puts a class that stands nowhere; lifts one that stands somewhere. The points follow. */
void          lap_fill_put           (LapFillTable         *table,
                                      guint                 i,
                                      const LapFillPlace   *place);
void          lap_fill_lift          (LapFillTable         *table,
                                      guint                 i);

/* The rules that are broken by the class @i, which stands nowhere, at a time whatever the room and coach; in a room
 * then; with a coach then. */
guint         lap_fill_time_rules    (const LapFillTable   *table,
                                      guint                 i,
                                      int                   day,
                                      int                   start);
guint         lap_fill_room_rules    (const LapFillTable   *table,
                                      guint                 i,
                                      int                   day,
                                      int                   start,
                                      int                   room);
guint         lap_fill_coach_rules   (const LapFillTable   *table,
                                      guint                 i,
                                      int                   day,
                                      int                   start,
                                      int                   coach);

/* Whether two classes stand too close to each other in one room. */
gboolean      lap_fill_collide       (const LapFillTable   *table,
                                      guint                 i,
                                      const LapFillPlace   *place,
                                      guint                 j);

/* The quarters at which the class may start without anyone else going, but for kit and the counts of a day. */
LapFillRow    lap_fill_starts        (const LapFillTable   *table,
                                      guint                 i,
                                      int                   day,
                                      int                   room,
                                      int                   coach,
                                      gboolean              among_others);

/* The points for a class's own wishes at a time, in a room, with a coach; their sum is lap_fill_wishes(). */
guint         lap_fill_time_points   (const LapFillClass   *c,
                                      int                   day,
                                      int                   start);
guint         lap_fill_room_points   (const LapFillClass   *c,
                                      int                   room);
guint         lap_fill_coach_points  (const LapFillClass   *c,
                                      int                   coach);

/* The quarters taken in a room by a class: its own and those to turn the room around. */
guint         lap_fill_room_quarters (const LapFillProblem *problem,
                                      guint                 i,
                                      int                   room);
guint         lap_fill_quarters      (int                   minutes);

/* Whether a place has a day, and a room and a coach where the week has any. */
gboolean      lap_fill_is_whole      (const LapFillProblem *problem,
                                      const LapFillPlace   *place);

/* The rooms or coaches without a rule against them; the first number is how many. */
int          *lap_fill_suitable      (const guint16        *rules,
                                      guint                 count);

/* Improves @table; what was best is left in it. FALSE when cancelled. */
gboolean      lap_fill_cool          (LapFillTable         *table,
                                      guint64               tries,
                                      GCancellable         *cancellable,
                                      void                (*progress) (double share, gpointer data),
                                      gpointer              data);

/* A bound for all timetables of the problem, from the classes that stand fixed in @table and a timetable of
 * @found points that is known. FALSE when cancelled. */
gboolean      lap_fill_bound         (const LapFillTable   *table,
                                      guint64               found,
                                      guint64              *least,
                                      guint                *least_unplaced,
                                      GCancellable         *cancellable,
                                      void                (*progress) (double share, gpointer data),
                                      gpointer              data);

#define lap_fill_slot(who, day) ((who) * LAP_FILL_DAYS + (day))

static inline gboolean
lap_fill_row_has (LapFillRow row, guint quarter)
{
  return quarter < LAP_FILL_HALF ? row.early >> quarter & 1 : row.late >> (quarter - LAP_FILL_HALF) & 1;
}

static inline void
lap_fill_row_set (LapFillRow *row, guint quarter)
{
  if (quarter < LAP_FILL_HALF)
    row->early |= G_GUINT64_CONSTANT (1) << quarter;
  else
    row->late |= G_GUINT64_CONSTANT (1) << (quarter - LAP_FILL_HALF);
}

G_END_DECLS
