/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "catalogue/exercise.h"

#include "catalogue/care.h"

static const LapWord confidences[] = { { "high", "high" }, { "medium", "medium" }, { "low", "low" } };
static const LapWords confidence_words = { "a confidence", confidences, G_N_ELEMENTS (confidences) };

#define AT(member) G_STRUCT_OFFSET (LapExercise, member)
#define MUST LAP_FIELD_REQUIRED

static const LapField fields[] = {
  { "", "id", &lap_kind_text, AT (id), MUST, 1, 100 },
  { "", "name", &lap_kind_text, AT (name), MUST, 1, 200 },
  { "", "other-names", &lap_kind_texts, AT (other_names) },
  { "", "formerly", &lap_kind_texts, AT (formerly) },
  { "", "for", &lap_kind_words, AT (uses), MUST, 1, 3, .words = &lap_uses },
  { "", "pattern", &lap_kind_word, AT (pattern), MUST, .words = &lap_patterns },
  { "", "move", &lap_kind_word, AT (move), MUST, .words = &lap_moves },
  { "", "posture", &lap_kind_word, AT (posture), MUST, .words = &lap_postures },
  { "", "primary", &lap_kind_words, AT (primary), MUST, .words = &lap_muscles },
  { "", "secondary", &lap_kind_words, AT (secondary), .words = &lap_muscles },
  { "", "sides", &lap_kind_word, AT (sides), MUST, .words = &lap_exercise_sides },
  { "", "impact", &lap_kind_word, AT (impact), MUST, .words = &lap_impacts },
  { "", "noise", &lap_kind_word, AT (noise), MUST, .words = &lap_noises },
  { "", "kit", &lap_kind_words, AT (kit), .words = &lap_kit_words },
  { "met/steady", "value", &lap_kind_number, AT (met_steady), MUST, 0.9, 25 },
  { "met/steady", "code", &lap_kind_text, AT (met_steady_code), MUST },
  { "met/hard", "value", &lap_kind_number, AT (met_hard), MUST, 0.9, 25 },
  { "met/hard", "code", &lap_kind_text, AT (met_hard_code), MUST },
  { "met", "edition", &lap_kind_int, AT (met_edition), LAP_FIELD_KEEP, 1993, 2100, 2024 },
  { "met", "confidence", &lap_kind_word, AT (met_confidence), LAP_FIELD_KEEP, .preset = 1, .words = &confidence_words },
  { "", "width", &lap_kind_number, AT (width), MUST, 0.1, 50 },
  { "", "length", &lap_kind_number, AT (length), MUST, 0.1, 50 },
  { "", "height", &lap_kind_number, AT (height), 0, 0.1, 10 },
  { "", "easier", &lap_kind_id, AT (easier) },
  { "", "harder", &lap_kind_id, AT (harder) },
  { "", "care", &lap_kind_cares, AT (care) },
  { "", "view", &lap_kind_word, AT (view), MUST, .words = &lap_views },
  { "", "seconds-per-rep", &lap_kind_number, AT (seconds_per_rep), MUST, 0, 600 },
  { "", "say", &lap_kind_say, AT (say), MUST },
  { "", "figure", &lap_kind_json, AT (figure) },
};

static gboolean
check (gpointer self, guint64 seen, const LapPath *path, GError **error)
{
  LapExercise *e = self;

  if ((e->easier != NULL && g_str_equal (e->easier, e->id)) ||
      (e->harder != NULL && g_str_equal (e->harder, e->id))) {
    lap_path_error (error, path, "an exercise can't be its own easier or harder option");
    return FALSE;
  }
  e->use_mask = lap_words_mask (&lap_uses, (const char * const *) e->uses);
  e->primary_mask = lap_words_mask (&lap_muscles, (const char * const *) e->primary);
  e->secondary_mask = lap_words_mask (&lap_muscles, (const char * const *) e->secondary);
  e->kit_mask = lap_words_mask (&lap_kit_words, (const char * const *) e->kit);
  for (guint i = 0; e->care != NULL && i < e->care->items->len; i++) {
    const LapCare *care = &g_array_index (e->care->items, LapCare, i);

    if (care->load > 0)
      e->care_mask |= LAP_BIT (care->word);
    if (care->load > 1)
      e->load_mask |= LAP_BIT (care->word);
  }
  return TRUE;
}

const LapRecord lap_exercise_record = {
  "an exercise", fields, G_N_ELEMENTS (fields), .extras = AT (extras), .check = check,
};

G_DEFINE_BOXED_TYPE (LapExercise, lap_exercise, lap_exercise_ref, lap_exercise_unref)

LapExercise *
lap_exercise_read (JsonNode *node, const LapPath *path, GError **error)
{
  g_autoptr (LapExercise) exercise = g_new0 (LapExercise, 1);

  exercise->references = 1;
  lap_record_init (&lap_exercise_record, exercise);
  if (!lap_record_read (&lap_exercise_record, exercise, node, path, error))
    return NULL;
  return g_steal_pointer (&exercise);
}

void
lap_exercise_write (const LapExercise *exercise, LapJsonWriter *writer)
{
  lap_record_write (&lap_exercise_record, exercise, writer);
}

LapExercise *
lap_exercise_ref (LapExercise *exercise)
{
  g_atomic_int_inc (&exercise->references);
  return exercise;
}

void
lap_exercise_unref (LapExercise *exercise)
{
  if (!g_atomic_int_dec_and_test (&exercise->references))
    return;
  lap_record_clear (&lap_exercise_record, exercise);
  g_free (exercise);
}

const char *
lap_exercise_name (const LapExercise *exercise)
{
  return g_dgettext (GETTEXT_PACKAGE, exercise->name);
}

double
lap_exercise_height (const LapExercise *exercise)
{
  static const double heights[LAP_N_POSTURES] = {
    [LAP_POSTURE_STANDING] = 1.9, [LAP_POSTURE_ON_CHAIR] = 1.4, [LAP_POSTURE_KNEELING] = 1.4,
    [LAP_POSTURE_SEATED] = 1.4, [LAP_POSTURE_ALL_FOURS] = 0.9, [LAP_POSTURE_HANDS_AND_FEET] = 0.9,
    [LAP_POSTURE_PRONE] = 0.5, [LAP_POSTURE_SUPINE] = 0.5, [LAP_POSTURE_SIDE_LYING] = 0.5,
  };

  if (exercise->height > 0)
    return exercise->height;
  return heights[exercise->posture] + (exercise->impact == LAP_IMPACT_HIGH ? 0.4 : 0);
}

const LapCare *
lap_exercise_care (const LapExercise *exercise, LapCareWord word)
{
  for (guint i = 0; exercise->care != NULL && i < exercise->care->items->len; i++) {
    const LapCare *care = &g_array_index (exercise->care->items, LapCare, i);

    if (care->word == (int) word)
      return care;
  }
  return NULL;
}

gboolean
lap_exercise_is_hold (const LapExercise *exercise)
{
  return exercise->seconds_per_rep <= 0;
}
