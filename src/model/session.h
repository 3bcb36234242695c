/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A session: the root of a document. Its fields stand in the order of the file; a property's name is the member's,
 * with the object around it in front ("film-lens"). Read the fields; write by edits.
 */
#pragma once

#include "catalogue/catalogue.h"
#include "catalogue/change.h"
#include "model/kit.h"
#include "model/part.h"

G_BEGIN_DECLS

typedef enum { LAP_SOUND_LIVE, LAP_SOUND_EARPIECE, LAP_SOUND_AFTER } LapSound;
typedef enum { LAP_FRAME_LANDSCAPE, LAP_FRAME_PORTRAIT } LapFrame;

typedef enum { LAP_TAKE_AGAIN, LAP_TAKE_GOOD } LapTakeMarks;

extern const LapWords lap_sounds, lap_frames, lap_take_marks;

/* One take of the film day. */
typedef struct {
  char      *at;       /* RFC 3339 */
  double     clock;    /* seconds on the session clock */
  char      *exercise;
  int        round;
  int        mark;     /* LapTakeMarks */
  double     over;     /* seconds that talk ran late */
  GPtrArray *extras;
} LapTake;

#define LAP_TYPE_SESSION (lap_session_get_type ())
#define LAP_SESSION(o) (G_TYPE_CHECK_INSTANCE_CAST ((o), LAP_TYPE_SESSION, LapSession))
#define LAP_IS_SESSION(o) (G_TYPE_CHECK_INSTANCE_TYPE ((o), LAP_TYPE_SESSION))

#define LAP_SESSION_VERSION 1

typedef struct {
  LapObject  parent_instance;
  char      *format;  /* "lapwing-session" */
  int        version; /* above LAP_SESSION_VERSION: read-only */
  char      *id, *title, *coach, *notes, *music, *link;
  int        screened; /* day people were last screened on, of lap_date_parse (); 0 = not said */
  int        target;  /* seconds, 0 = none */
  char     **focus;   /* regions; NULL = whole body */
  LapKit    *kit;
  double     space_width, space_length; /* metres, all people together; 0 = not said */
  gboolean   quiet;
  char     **also_for; /* of lap_also_for_words */
  int        level, count, age; /* the group: LapLevel, people, years */
  double     mass, rest_pulse;  /* kg, beats a minute */
  double     fitness;           /* METs, 0 = absent: lap_session_fitness() */
  double     band_low, band_high; /* shares of heart-rate reserve, -1 = not stated: lap_session_band() */
  double     voice, talk_rest, talk_moderate, talk_vigorous; /* words a second */
  double     change;            /* factor on change seconds */
  double     lead, lens, room, camera_height, fps; /* s, mm, m, m, 1/s */
  int        frame, sound;      /* LapFrame, LapSound */
  char     **fine;
  GPtrArray *exercises;         /* LapExercise, or NULL; a value */
  LapRows   *takes;             /* LapTake, or NULL */
  char      *takes_of;          /* fingerprint of the timeline they were shot on */
  LapList   *parts;             /* LapPart */
} LapSession;

typedef struct {
  LapObjectClass parent_class;
} LapSessionClass;

GType         lap_session_get_type   (void);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapSession, g_object_unref)

/* An empty session with an id of its own. */
LapSession   *lap_session_new        (const char       *title);
guint         lap_session_n          (const LapSession *session);
LapPart      *lap_session_nth        (const LapSession *session,
                                      guint             n);

/* The built-in exercises with the session's own over them. Transfer full. */
LapCatalogue *lap_session_catalogue  (const LapSession *session,
                                      LapCatalogue     *builtin);

/* METs the group can reach: as stated, else 7 new, 9 mixed, 12 trained, 1 less from age 60 (common practice). */
double        lap_session_fitness    (const LapSession *session);
LapChangeRule lap_session_rule       (const LapSession *session);
/* The wanted band of heart-rate reserve in main parts; TRUE when the file states one. */
gboolean      lap_session_band       (const LapSession *session,
                                      double           *low,
                                      double           *high);

extern const LapRowsKind lap_kind_takes;
/* A slot that holds own exercises, a GPtrArray of LapExercise. */
extern const LapKind lap_kind_exercises;

G_END_DECLS
