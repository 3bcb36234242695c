/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The trade's words about an exercise, each list with its enum in the same order. Muscles make regions; a set of
 * muscles, regions, kit or care words is a bit mask over the enum.
 */
#pragma once

#include "base/words.h"

G_BEGIN_DECLS

typedef enum {
  LAP_MUSCLE_CHEST, LAP_MUSCLE_FRONT_SHOULDER, LAP_MUSCLE_SIDE_SHOULDER, LAP_MUSCLE_REAR_SHOULDER,
  LAP_MUSCLE_UPPER_BACK, LAP_MUSCLE_LATS, LAP_MUSCLE_BICEPS, LAP_MUSCLE_TRICEPS, LAP_MUSCLE_FOREARMS,
  LAP_MUSCLE_ABS, LAP_MUSCLE_OBLIQUES, LAP_MUSCLE_LOWER_BACK, LAP_MUSCLE_HIP_FLEXORS, LAP_MUSCLE_GLUTES,
  LAP_MUSCLE_OUTER_HIP, LAP_MUSCLE_INNER_THIGH, LAP_MUSCLE_QUADS, LAP_MUSCLE_HAMSTRINGS, LAP_MUSCLE_CALVES,
  LAP_MUSCLE_SHINS, LAP_MUSCLE_NECK,
  LAP_N_MUSCLES,
} LapMuscle;

typedef enum {
  LAP_REGION_THIGHS, LAP_REGION_GLUTES, LAP_REGION_CALVES, LAP_REGION_FRONT_CORE, LAP_REGION_SIDE_CORE,
  LAP_REGION_LOWER_BACK, LAP_REGION_CHEST, LAP_REGION_UPPER_BACK, LAP_REGION_SHOULDERS, LAP_REGION_ARMS,
  LAP_N_REGIONS,
} LapRegion;

typedef enum {
  LAP_POSTURE_STANDING, LAP_POSTURE_ON_CHAIR, LAP_POSTURE_KNEELING, LAP_POSTURE_SEATED, LAP_POSTURE_ALL_FOURS,
  LAP_POSTURE_HANDS_AND_FEET, LAP_POSTURE_PRONE, LAP_POSTURE_SUPINE, LAP_POSTURE_SIDE_LYING,
  LAP_N_POSTURES,
} LapPosture;

typedef enum {
  LAP_KIT_MAT, LAP_KIT_DUMBBELLS, LAP_KIT_DUMBBELL, LAP_KIT_KETTLEBELL, LAP_KIT_BAND, LAP_KIT_LOOP_BAND,
  LAP_KIT_CHAIR, LAP_KIT_BENCH, LAP_KIT_STEP, LAP_KIT_WALL, LAP_KIT_ROPE, LAP_KIT_BAR, LAP_KIT_STRAP,
  LAP_KIT_ANCHOR, LAP_KIT_ROLLER, LAP_KIT_BALL, LAP_KIT_MEDICINE_BALL, LAP_KIT_BIKE, LAP_KIT_ROWER,
  LAP_KIT_PARTNER,
  LAP_N_KIT,
} LapKitWord;

typedef enum {
  LAP_CARE_WRISTS, LAP_CARE_KNEES, LAP_CARE_LOWER_BACK, LAP_CARE_SHOULDERS, LAP_CARE_NECK, LAP_CARE_HIPS,
  LAP_CARE_ANKLES, LAP_CARE_GRIP, LAP_CARE_BALANCE, LAP_CARE_PELVIC_FLOOR, LAP_CARE_PRESSURE,
  LAP_N_CARE,
} LapCareWord;

typedef enum { LAP_IMPACT_NONE, LAP_IMPACT_LOW, LAP_IMPACT_HIGH } LapImpact;
typedef enum { LAP_NOISE_SILENT, LAP_NOISE_SOFT, LAP_NOISE_LOUD } LapNoise;
typedef enum { LAP_SIDES_BOTH, LAP_SIDES_ALTERNATE, LAP_SIDES_SPLIT, LAP_SIDES_LEFT, LAP_SIDES_RIGHT } LapSides;
typedef enum { LAP_USE_WORK, LAP_USE_WARM_UP, LAP_USE_COOL_DOWN } LapUseWord;
typedef enum { LAP_VIEW_FRONT, LAP_VIEW_SIDE, LAP_VIEW_THREE_QUARTER } LapView;
typedef enum { LAP_OPTION_AS_SHOWN, LAP_OPTION_EASIER, LAP_OPTION_HARDER } LapOption;
typedef enum { LAP_PACE_STEADY, LAP_PACE_HARD } LapPace;
typedef enum { LAP_LEVEL_NEW, LAP_LEVEL_MIXED, LAP_LEVEL_TRAINED } LapLevel;

typedef enum {
  LAP_MOVE_STRENGTH, LAP_MOVE_CORE, LAP_MOVE_DYNAMIC, LAP_MOVE_EXPLOSIVE, LAP_MOVE_HOLD, LAP_MOVE_MOBILISE,
  LAP_MOVE_STRETCH, LAP_MOVE_WEIGHTS, LAP_MOVE_SWING, LAP_MOVE_STEP, LAP_MOVE_ROPE, LAP_MOVE_CHAIR, LAP_MOVE_OWN,
  LAP_N_MOVES,
} LapMove;

typedef enum {
  LAP_PATTERN_SQUAT, LAP_PATTERN_LUNGE, LAP_PATTERN_HINGE, LAP_PATTERN_PUSH_HORIZONTAL, LAP_PATTERN_PUSH_VERTICAL,
  LAP_PATTERN_PULL_HORIZONTAL, LAP_PATTERN_PULL_VERTICAL, LAP_PATTERN_CARRY, LAP_PATTERN_CORE_FLEXION,
  LAP_PATTERN_CORE_EXTENSION, LAP_PATTERN_CORE_ROTATION, LAP_PATTERN_CORE_LATERAL, LAP_PATTERN_CORE_ANTI_EXTENSION,
  LAP_PATTERN_CORE_ANTI_ROTATION, LAP_PATTERN_HIP_ABDUCTION, LAP_PATTERN_HIP_ADDUCTION, LAP_PATTERN_HIP_EXTENSION,
  LAP_PATTERN_ISOLATION, LAP_PATTERN_JUMP, LAP_PATTERN_LOCOMOTION, LAP_PATTERN_CARDIO_STEP,
  LAP_PATTERN_CARDIO_FLOOR, LAP_PATTERN_FULL_BODY, LAP_PATTERN_MOBILISE, LAP_PATTERN_STRETCH,
  LAP_N_PATTERNS,
} LapPattern;

extern const LapWords lap_muscles, lap_regions, lap_postures, lap_kit_words, lap_care_words, lap_impacts, lap_noises,
                      lap_sides, lap_exercise_sides, lap_uses, lap_views, lap_options, lap_paces, lap_levels,
                      lap_moves, lap_patterns;

/* "quiet" or a care word: what a session is also for. */
extern const LapWords lap_also_for_words;

/* The muscles of a region. Together the regions are all muscles, none twice. */
guint32     lap_region_muscles (LapRegion region);
/* The regions that hold any of @muscle_mask. */
guint32     lap_muscle_regions (guint32 muscle_mask);

/* 0 lying … 3 standing: design "Heights". */
int         lap_posture_height (LapPosture posture);
/* Lying on front, back or side. */
gboolean    lap_posture_lies   (LapPosture posture);
/* @kit with the single pieces that are in its pairs: a pair of dumbbells holds one. */
guint32     lap_kit_with_singles (guint32   kit);
/* Whether a screen or a coach in front stays in sight: not lying, and not on the hands, where the face is down.
 * Common practice, no source. */
gboolean    lap_posture_sees   (LapPosture posture);

G_END_DECLS
