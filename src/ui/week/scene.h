/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the parts of a week's view share: the document, its score, the axis of hours, what is shown of it and what is
 * selected. "changed" (LapWeekChange) says what isn't as it was; nobody keeps a box over a change of the plan.
 *
 * Always true: classes are selected by id and exist; the one with the cursor, `current`, is selected too.
 */
#pragma once

#include "place/week-score.h"
#include "ui/document.h"

#include <gtk/gtk.h>

G_BEGIN_DECLS

typedef enum {
  LAP_WEEK_PLAN = 1 << 0,      /* the score is another one */
  LAP_WEEK_AXIS = 1 << 1,      /* zoom, scroll or width */
  LAP_WEEK_SELECTION = 1 << 2,
  LAP_WEEK_SHOWN = 1 << 3,     /* what is chosen to be shown; the plan changes with it */
  LAP_WEEK_GHOSTS = 1 << 4,    /* what a remedy or a drag would do */
} LapWeekChange;

typedef enum { LAP_SIEVE_ROOMS, LAP_SIEVE_COACHES, LAP_SIEVE_KINDS, LAP_N_SIEVES } LapWeekSieve;

typedef enum {
  LAP_PICK_ONLY,   /* it alone */
  LAP_PICK_TOGGLE, /* it in or out */
  LAP_PICK_TO,     /* all from the cursor to it, too */
} LapPick;

/* Where a class would be. */
typedef struct {
  int   day, start, end;
  char *line; /* id of its room or coach, or NULL */
  char *text; /* who would have it, or where */
  guint lane;
} LapWeekGhost;

#define LAP_TYPE_WEEK_SCENE (lap_week_scene_get_type ())
G_DECLARE_FINAL_TYPE (LapWeekScene, lap_week_scene, LAP, WEEK_SCENE, GObject)

struct _LapWeekScene {
  GObject        parent_instance;
  LapDocument   *document;
  LapWeekScore  *score;
  GArray        *ghosts;     /* LapWeekGhost: what a remedy or a drag would make different; NULL without one */
  char          *ghost_says; /* the gravest warning there would be about them, or NULL */
  LapAxis       *axis;
  GtkAdjustment *adjustment; /* of hours, px */
  LapWeekLook    look;
  LapMeasure     measure;
  GHashTable    *filters[LAP_N_SIEVES]; /* ids; an empty one holds all */
  GHashTable    *chosen;     /* ids */
  char          *current;    /* an id, or NULL */
  gboolean       fitted;     /* the hours fill the view, whatever its width */
  GHashTable    *widths;     /* of texts in the letters of `pango` */
  PangoContext  *pango;      /* transfer none; NULL until the view has one */
  guint          serial;     /* of its letters, when they were set */
};

LapWeekScene *lap_week_scene_new         (LapDocument    *document);

LapWeek      *lap_week_scene_week        (LapWeekScene   *scene);
/* The Monday that is looked at, 0 for every week. */
int           lap_week_scene_date        (LapWeekScene   *scene);

/* The letters of the classes; again when they have changed. */
void          lap_week_scene_set_letters (LapWeekScene   *scene,
                                          PangoContext   *pango);
void          lap_week_scene_set_view    (LapWeekScene   *scene,
                                          int             width,
                                          gboolean        mirrored);
void          lap_week_scene_set_day     (LapWeekScene   *scene,
                                          int             day); /* -1 = all */
void          lap_week_scene_set_by_coach (LapWeekScene  *scene,
                                          gboolean        by_coach);
void          lap_week_scene_set_detailed (LapWeekScene  *scene,
                                          gboolean        detailed);
void          lap_week_scene_filter      (LapWeekScene   *scene,
                                          LapWeekSieve       filter,
                                          const char     *id, /* NULL: all again */
                                          gboolean        on);
/* px that the score would be high with details. */
int           lap_week_scene_tall        (LapWeekScene   *scene);

/* Minutes from one hour that has a label and a line to the next. */
int           lap_week_scene_step        (LapWeekScene   *scene);
void          lap_week_scene_zoom        (LapWeekScene   *scene,
                                          double          zoom,
                                          double          x);
void          lap_week_scene_fit         (LapWeekScene   *scene);
void          lap_week_scene_scroll_by   (LapWeekScene   *scene,
                                          double          px);
/* Shows what @edits would do, beside what is; NULL: no more. */
void          lap_week_scene_preview     (LapWeekScene   *scene,
                                          LapEdits       *edits);

/* Selects the class @id (NULL: none) and scrolls the hours to it. */
void          lap_week_scene_pick        (LapWeekScene   *scene,
                                          const char     *id,
                                          LapPick         how);
/* These and no others; the last one has the cursor. */
void          lap_week_scene_pick_classes (LapWeekScene  *scene,
                                          GPtrArray      *classes);
gboolean      lap_week_scene_is_picked   (LapWeekScene   *scene,
                                          const char     *id);
/* What is selected, LapClass in the order of the file. Transfer container. */
GPtrArray    *lap_week_scene_picked      (LapWeekScene   *scene);
/* The class with the cursor, or NULL; its box, or LAP_NO_WEEK_BOX where it isn't shown. */
LapClass     *lap_week_scene_current     (LapWeekScene   *scene);
guint         lap_week_scene_box         (LapWeekScene   *scene);
/* Those without a place, in the order of the file. Transfer container. */
GPtrArray    *lap_week_scene_waiting     (LapWeekScene   *scene);

G_END_DECLS
