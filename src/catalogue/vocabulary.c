/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "catalogue/vocabulary.h"

#include <glib/gi18n-lib.h>

static const LapWord muscles[] = {
  { "chest", N_("Chest") },
  { "front-shoulder", N_("Front of the shoulder") },
  { "side-shoulder", N_("Side of the shoulder") },
  { "rear-shoulder", N_("Back of the shoulder") },
  { "upper-back", N_("Upper back") },
  { "lats", N_("Sides of the back") },
  { "biceps", N_("Front of the upper arm") },
  { "triceps", N_("Back of the upper arm") },
  { "forearms", N_("Forearms") },
  { "abs", N_("Abdominals") },
  { "obliques", N_("Obliques") },
  { "lower-back", N_("Lower back") },
  { "hip-flexors", N_("Hip flexors") },
  { "glutes", N_("Buttocks") },
  { "outer-hip", N_("Outer hip") },
  { "inner-thigh", N_("Inner thigh") },
  { "quads", N_("Front of the thigh") },
  { "hamstrings", N_("Back of the thigh") },
  { "calves", N_("Calves") },
  { "shins", N_("Shins") },
  { "neck", N_("Neck") },
};

static const LapWord regions[] = {
  { "thighs", N_("Thighs") },
  { "glutes", N_("Glutes and hamstrings") },
  { "calves", N_("Calves") },
  { "front-core", N_("Front core") },
  { "side-core", N_("Side core") },
  { "lower-back", N_("Lower back") },
  { "chest", N_("Chest") },
  { "upper-back", N_("Upper back") },
  { "shoulders", N_("Shoulders") },
  { "arms", N_("Arms") },
};

static const LapWord postures[] = {
  { "standing", N_("Standing") },
  { "on-chair", N_("On a chair") },
  { "kneeling", N_("Kneeling") },
  { "seated", N_("Sitting on the floor") },
  { "all-fours", N_("On all fours") },
  { "hands-and-feet", N_("Plank position") },
  { "prone", N_("Lying on the front") },
  { "supine", N_("Lying on the back") },
  { "side-lying", N_("Lying on the side") },
};

static const LapWord kit_words[] = {
  { "mat", N_("mat") },
  { "dumbbells", N_("dumbbells") },
  { "dumbbell", N_("dumbbell") },
  { "kettlebell", N_("kettlebell") },
  { "band", N_("band") },
  { "loop-band", N_("loop band") },
  { "chair", N_("chair") },
  { "bench", N_("bench") },
  { "step", N_("step") },
  { "wall", N_("wall") },
  { "rope", N_("rope") },
  { "bar", N_("bar") },
  { "strap", N_("strap") },
  { "anchor", N_("anchor") },
  { "roller", N_("roller") },
  { "ball", N_("ball") },
  { "medicine-ball", N_("medicine ball") },
  { "bike", N_("bike") },
  { "rower", N_("rowing machine") },
  { "partner", N_("partner") },
};

static const LapWord impacts[] = {
  { "none", N_("No impact") },
  { "low", N_("Low impact") },
  { "high", N_("High impact") },
};

static const LapWord noises[] = {
  { "silent", N_("Silent") },
  { "soft", N_("Soft") },
  { "loud", N_("Loud") },
};

static const LapWord sides[] = {
  { "both", N_("Both together") },
  { "alternate", N_("Alternating") },
  { "split", N_("Left, then right") },
  { "left", N_("Left only") },
  { "right", N_("Right only") },
};

static const LapWord uses[] = {
  { "work", N_("Work") },
  { "warm-up", N_("Warm-up") },
  { "cool-down", N_("Cool-down") },
};

static const LapWord views[] = {
  { "front", N_("From the front") },
  { "side", N_("From the side") },
  { "three-quarter", N_("Three-quarter") },
};

static const LapWord options[] = {
  { "as-shown", N_("As shown") },
  { "easier", N_("Easier") },
  { "harder", N_("Harder") },
};

static const LapWord paces[] = {
  { "steady", N_("Steady") },
  { "hard", N_("Hard") },
};

static const LapWord levels[] = {
  { "new", N_("New") },
  { "mixed", N_("Mixed") },
  { "trained", N_("Trained") },
};

static const LapWord moves[] = {
  { "strength", N_("Strength") },
  { "core", N_("Core") },
  { "dynamic", N_("Dynamic") },
  { "explosive", N_("Explosive") },
  { "hold", N_("Hold") },
  { "mobilise", N_("Mobilising") },
  { "stretch", N_("Stretch") },
  { "weights", N_("With weights") },
  { "swing", N_("Swing") },
  { "step", N_("Step") },
  { "rope", N_("Rope") },
  { "chair", N_("Chair") },
  { "own", N_("Its own") },
};

static const LapWord patterns[] = {
  { "squat", N_("Squat") },
  { "lunge", N_("Lunge") },
  { "hinge", N_("Hinge") },
  { "push-horizontal", N_("Push forward") },
  { "push-vertical", N_("Push overhead") },
  { "pull-horizontal", N_("Pull towards the body") },
  { "pull-vertical", N_("Pull down") },
  { "carry", N_("Carry") },
  { "core-flexion", N_("Trunk bending forward") },
  { "core-extension", N_("Trunk straightening") },
  { "core-rotation", N_("Trunk turning") },
  { "core-lateral", N_("Trunk to the side") },
  { "core-anti-extension", N_("Trunk held straight") },
  { "core-anti-rotation", N_("Trunk kept from turning") },
  { "hip-abduction", N_("Leg out to the side") },
  { "hip-adduction", N_("Legs together") },
  { "hip-extension", N_("Hip straightening") },
  { "isolation", N_("One joint") },
  { "jump", N_("Jump") },
  { "locomotion", N_("Travelling") },
  { "cardio-step", N_("Quick steps") },
  { "cardio-floor", N_("Quick floor work") },
  { "full-body", N_("Whole body") },
  { "mobilise", N_("Mobilising") },
  { "stretch", N_("Stretch") },
};

/* The care words, and after them one more. */
static const LapWord also_for[] = {
  { "wrists", N_("wrists") },
  { "knees", N_("knees") },
  { "lower-back", N_("lower back") },
  { "shoulders", N_("shoulders") },
  { "neck", N_("neck") },
  { "hips", N_("hips") },
  { "ankles", N_("ankles") },
  { "grip", N_("grip") },
  { "balance", N_("balance") },
  { "pelvic-floor", N_("pelvic floor") },
  { "pressure", N_("blood pressure") },
  { "quiet", N_("quiet") },
};

const LapWords lap_muscles = { "a muscle", muscles, G_N_ELEMENTS (muscles) };
const LapWords lap_regions = { "a region", regions, G_N_ELEMENTS (regions) };
const LapWords lap_postures = { "a posture", postures, G_N_ELEMENTS (postures) };
const LapWords lap_kit_words = { "a piece of kit", kit_words, G_N_ELEMENTS (kit_words) };
const LapWords lap_care_words = { "a care word", also_for, LAP_N_CARE };
const LapWords lap_impacts = { "an impact", impacts, G_N_ELEMENTS (impacts) };
const LapWords lap_noises = { "a noise", noises, G_N_ELEMENTS (noises) };
const LapWords lap_sides = { "a word for sides", sides, G_N_ELEMENTS (sides) };
const LapWords lap_exercise_sides = { "both, alternate or split", sides, 3 };
const LapWords lap_uses = { "a use", uses, G_N_ELEMENTS (uses) };
const LapWords lap_views = { "a view", views, G_N_ELEMENTS (views) };
const LapWords lap_options = { "an option", options, G_N_ELEMENTS (options) };
const LapWords lap_paces = { "a pace", paces, G_N_ELEMENTS (paces) };
const LapWords lap_levels = { "a level", levels, G_N_ELEMENTS (levels) };
const LapWords lap_moves = { "a kind of move", moves, G_N_ELEMENTS (moves) };
const LapWords lap_patterns = { "a pattern", patterns, G_N_ELEMENTS (patterns) };
const LapWords lap_also_for_words = { "a care word or quiet", also_for, G_N_ELEMENTS (also_for) };

#define M(muscle) LAP_BIT (LAP_MUSCLE_##muscle)

/* Common practice, no source: the trade's ten regions over the muscles of anatomy books. */
static const guint32 region_muscles[LAP_N_REGIONS] = {
  [LAP_REGION_THIGHS] = M (QUADS) | M (INNER_THIGH) | M (OUTER_HIP),
  [LAP_REGION_GLUTES] = M (GLUTES) | M (HAMSTRINGS),
  [LAP_REGION_CALVES] = M (CALVES) | M (SHINS),
  [LAP_REGION_FRONT_CORE] = M (ABS) | M (HIP_FLEXORS),
  [LAP_REGION_SIDE_CORE] = M (OBLIQUES),
  [LAP_REGION_LOWER_BACK] = M (LOWER_BACK),
  [LAP_REGION_CHEST] = M (CHEST),
  [LAP_REGION_UPPER_BACK] = M (UPPER_BACK) | M (LATS),
  [LAP_REGION_SHOULDERS] = M (FRONT_SHOULDER) | M (SIDE_SHOULDER) | M (REAR_SHOULDER) | M (NECK),
  [LAP_REGION_ARMS] = M (BICEPS) | M (TRICEPS) | M (FOREARMS),
};

static const int posture_height[LAP_N_POSTURES] = {
  [LAP_POSTURE_STANDING] = 3, [LAP_POSTURE_ON_CHAIR] = 3, [LAP_POSTURE_KNEELING] = 2, [LAP_POSTURE_SEATED] = 1,
  [LAP_POSTURE_ALL_FOURS] = 1, [LAP_POSTURE_HANDS_AND_FEET] = 1, [LAP_POSTURE_PRONE] = 0,
  [LAP_POSTURE_SUPINE] = 0, [LAP_POSTURE_SIDE_LYING] = 0,
};

guint32
lap_region_muscles (LapRegion region)
{
  return region_muscles[region];
}

guint32
lap_muscle_regions (guint32 muscle_mask)
{
  guint32 found = 0;

  for (guint r = 0; r < LAP_N_REGIONS; r++)
    if (region_muscles[r] & muscle_mask)
      found |= LAP_BIT (r);
  return found;
}

int
lap_posture_height (LapPosture posture)
{
  return posture_height[posture];
}

gboolean
lap_posture_lies (LapPosture posture)
{
  return posture_height[posture] == 0;
}

gboolean
lap_posture_sees (LapPosture posture)
{
  return !lap_posture_lies (posture) && posture != LAP_POSTURE_ALL_FOURS && posture != LAP_POSTURE_HANDS_AND_FEET;
}

guint32
lap_kit_with_singles (guint32 kit)
{
  return kit & LAP_BIT (LAP_KIT_DUMBBELLS) ? kit | LAP_BIT (LAP_KIT_DUMBBELL) : kit;
}
