/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One exercise, as a file of data/exercises/ or as a session's own. Immutable once read: shared by reference.
 * The masks follow from the members and are there for whoever goes through many exercises.
 */
#pragma once

#include "catalogue/say.h"
#include "catalogue/vocabulary.h"

G_BEGIN_DECLS

/* What an exercise asks of one joint or state. */
typedef struct {
  int        word;    /* LapCareWord */
  int        load;    /* 0 none, 1 worth a mention, 2 really loaded */
  char      *say;     /* how to keep the exercise with that joint spared, or NULL */
  char      *instead; /* id of another exercise without that load, or NULL */
  GPtrArray *extras;
} LapCare;

typedef struct {
  GArray    *items; /* LapCare, in file order */
  GPtrArray *extras;
} LapCares;

typedef struct {
  char      *id;
  char      *name;        /* English, the key of its translation: see lap_exercise_name() */
  char     **other_names;
  char     **formerly;    /* ids it had before */
  char     **uses;        /* of lap_uses */
  int        pattern;
  int        move;
  int        posture;
  char     **primary;
  char     **secondary;
  int        sides;
  int        impact;
  int        noise;
  char     **kit;
  double     met_steady, met_hard; /* metabolic equivalents: 2024 Compendium, the row named by its code */
  char      *met_steady_code, *met_hard_code;
  int        met_edition;
  int        met_confidence;
  double     width, length; /* floor it needs, metres */
  double     height;        /* metres, 0 = the posture's: lap_exercise_height() */
  char      *easier, *harder; /* ids or NULL */
  LapCares  *care;          /* or NULL */
  int        view;
  double     seconds_per_rep; /* 0 = a hold */
  LapSay    *say;
  JsonNode  *figure;        /* for the layer figure; NULL where there is none */
  GPtrArray *extras;

  /* Follow from the above. */
  guint32    use_mask, primary_mask, secondary_mask, kit_mask;
  guint32    care_mask;     /* care words with any load */
  guint32    load_mask;     /* care words with load 2 */
  gint       references;
} LapExercise;

#define LAP_TYPE_EXERCISE (lap_exercise_get_type ())
GType          lap_exercise_get_type (void);

/* A new exercise, or NULL with @error (LAP_ERROR_INVALID about a pointer below @path). */
LapExercise   *lap_exercise_read     (JsonNode       *node,
                                      const LapPath  *path,
                                      GError        **error);
void           lap_exercise_write    (const LapExercise *exercise,
                                      LapJsonWriter     *writer);
LapExercise   *lap_exercise_ref      (LapExercise    *exercise);
void           lap_exercise_unref    (LapExercise    *exercise);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapExercise, lap_exercise_unref)

/* Translated. */
const char    *lap_exercise_name     (const LapExercise *exercise);

/* How tall the movement is, metres. Common practice, no source. */
double         lap_exercise_height   (const LapExercise *exercise);

/* Its care entry for @word, or NULL. */
const LapCare *lap_exercise_care     (const LapExercise *exercise,
                                      LapCareWord        word);

/* A still position held for time. */
gboolean       lap_exercise_is_hold  (const LapExercise *exercise);

extern const LapRecord lap_exercise_record;

G_END_DECLS
