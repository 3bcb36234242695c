/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "model/session.h"

#include "model/when.h"

#include <glib/gi18n-lib.h>

static const LapWord sounds[] = {
  { "live", N_("Live in the room") },
  { "earpiece", N_("In an earpiece") },
  { "after", N_("Spoken afterwards") },
};
const LapWords lap_sounds = { "a way to record sound", sounds, G_N_ELEMENTS (sounds) };

static const LapWord frames[] = { { "landscape", N_("Landscape") }, { "portrait", N_("Portrait") } };
const LapWords lap_frames = { "a frame", frames, G_N_ELEMENTS (frames) };

static const LapWord marks[] = { { "again", N_("Again") }, { "good", N_("Good") } };
const LapWords lap_take_marks = { "a mark", marks, G_N_ELEMENTS (marks) };

#define TAKE(member) G_STRUCT_OFFSET (LapTake, member)
static const LapField take_fields[] = {
  { "", "at", &lap_kind_text, TAKE (at), LAP_FIELD_REQUIRED, 1 },
  { "", "clock", &lap_kind_number, TAKE (clock), LAP_FIELD_REQUIRED, 0, 43200 },
  { "", "exercise", &lap_kind_id, TAKE (exercise) },
  { "", "round", &lap_kind_int, TAKE (round), 0, 1, 100, 1 },
  { "", "mark", &lap_kind_word, TAKE (mark), LAP_FIELD_REQUIRED, .words = &lap_take_marks },
  { "", "over", &lap_kind_number, TAKE (over), 0, -43200, 43200 },
};
static const LapRecord take_record = {
  "a take", take_fields, G_N_ELEMENTS (take_fields), .extras = TAKE (extras),
};
const LapRowsKind lap_kind_takes = { LAP_ROWS_KIND, &take_record, sizeof (LapTake), 10000 };

static const LapListKind kind_parts = { LAP_LIST_KIND, lap_part_get_type, 100 };

#define AT(member) G_STRUCT_OFFSET (LapSession, member)
#define MUST LAP_FIELD_REQUIRED

static const LapField fields[] = {
  { "", "format", &lap_kind_text, AT (format), MUST | LAP_FIELD_FIXED },
  { "", "version", &lap_kind_int, AT (version), MUST | LAP_FIELD_FIXED, 1, 1000000, LAP_SESSION_VERSION },
  { "", "id", &lap_kind_text, AT (id), MUST, 1, 200 },
  { "", "title", &lap_kind_text, AT (title), MUST },
  { "", "coach", &lap_kind_text, AT (coach) },
  { "", "notes", &lap_kind_text, AT (notes) },
  { "", "music", &lap_kind_text, AT (music) },
  { "", "link", &lap_kind_text, AT (link) },
  { "", "screened", &lap_kind_date, AT (screened) },
  { "", "target", &lap_kind_int, AT (target), 0, 0, 43200 },
  { "", "focus", &lap_kind_words, AT (focus), .words = &lap_regions },
  { "", "kit", &lap_kind_kit, AT (kit) },
  { "space", "width", &lap_kind_number, AT (space_width), 0, 0, 1000 },
  { "space", "length", &lap_kind_number, AT (space_length), 0, 0, 1000 },
  { "", "quiet", &lap_kind_flag, AT (quiet) },
  { "", "also-for", &lap_kind_words, AT (also_for), .words = &lap_also_for_words },
  { "group", "level", &lap_kind_word, AT (level), .preset = LAP_LEVEL_MIXED, .words = &lap_levels },
  { "group", "count", &lap_kind_int, AT (count), 0, 1, 1000, 1 },
  { "group", "age", &lap_kind_int, AT (age), 0, 5, 120, 40 },
  { "group", "mass", &lap_kind_number, AT (mass), 0, 20, 300, 70 },
  { "group", "rest-pulse", &lap_kind_number, AT (rest_pulse), 0, 30, 120, 65 },
  { "group", "fitness", &lap_kind_number, AT (fitness), 0, 2, 30 },
  { "band", "low", &lap_kind_number, AT (band_low), 0, 0, 1, -1 },
  { "band", "high", &lap_kind_number, AT (band_high), 0, 0, 1, -1 },
  { "talk", "voice", &lap_kind_number, AT (voice), 0, 0.1, 10, 2.5 },
  { "talk", "rest", &lap_kind_number, AT (talk_rest), 0, 0.1, 10, 2.0 },
  { "talk", "moderate", &lap_kind_number, AT (talk_moderate), 0, 0.1, 10, 1.7 },
  { "talk", "vigorous", &lap_kind_number, AT (talk_vigorous), 0, 0.1, 10, 1.2 },
  { "", "change", &lap_kind_number, AT (change), 0, 0, 10, 1.0 },
  { "film", "lead", &lap_kind_number, AT (lead), 0, 0, 43200 },
  { "film", "lens", &lap_kind_number, AT (lens), 0, 5, 1000, 26 },
  { "film", "frame", &lap_kind_word, AT (frame), .words = &lap_frames },
  { "film", "room", &lap_kind_number, AT (room), 0, 0.1, 1000, 4.0 },
  { "film", "camera-height", &lap_kind_number, AT (camera_height), 0, 0, 100, 1.2 },
  { "film", "fps", &lap_kind_number, AT (fps), 0, 1, 1000, 25 },
  { "film", "sound", &lap_kind_word, AT (sound), .preset = LAP_SOUND_AFTER, .words = &lap_sounds },
  { "", "fine", &lap_kind_texts, AT (fine) },
  { "", "exercises", &lap_kind_exercises, AT (exercises) },
  { "", "takes", &lap_kind_takes.kind, AT (takes) },
  { "", "takes-of", &lap_kind_text, AT (takes_of) },
  { "", "parts", &kind_parts.kind, AT (parts), MUST | LAP_FIELD_FIXED },
};

static gboolean
check (gpointer self, guint64 seen, const LapPath *path, GError **error)
{
  const LapSession *session = self;
  double low, high;

  if (!g_str_equal (session->format, "lapwing-session")) {
    lap_path_error (error, LAP_PATH_MEMBER (path, "format"), "expected \"lapwing-session\"");
    return FALSE;
  }
  lap_session_band (session, &low, &high);
  if (low >= high) {
    lap_path_error (error, LAP_PATH_MEMBER (path, "band"), "expected \"low\" below \"high\"");
    return FALSE;
  }
  return TRUE;
}

static const LapRecord record = {
  "a session", fields, G_N_ELEMENTS (fields), .extras = G_STRUCT_OFFSET (LapObject, extras), .check = check,
};

G_DEFINE_TYPE (LapSession, lap_session, LAP_TYPE_OBJECT)

static void
lap_session_class_init (LapSessionClass *klass)
{
  lap_object_class_install (LAP_OBJECT_CLASS (klass), &record);
}

static void
lap_session_init (LapSession *self)
{
  lap_object_setup (LAP_OBJECT (self));
  self->format = g_strdup ("lapwing-session");
}

LapSession *
lap_session_new (const char *title)
{
  LapSession *session = g_object_new (LAP_TYPE_SESSION, NULL);

  session->id = g_uuid_string_random ();
  session->title = g_strdup (title);
  return session;
}

guint
lap_session_n (const LapSession *session)
{
  return lap_list_n (session->parts);
}

LapPart *
lap_session_nth (const LapSession *session, guint n)
{
  return lap_list_nth (session->parts, n);
}

LapCatalogue *
lap_session_catalogue (const LapSession *session, LapCatalogue *builtin)
{
  return session->exercises != NULL ? lap_catalogue_new_over (builtin, session->exercises)
                                    : lap_catalogue_ref (builtin);
}

double
lap_session_fitness (const LapSession *session)
{
  static const double mets[] = { [LAP_LEVEL_NEW] = 7, [LAP_LEVEL_MIXED] = 9, [LAP_LEVEL_TRAINED] = 12 };

  if (session->fitness > 0)
    return session->fitness;
  return mets[session->level] - (session->age >= 60 ? 1 : 0);
}

LapChangeRule
lap_session_rule (const LapSession *session)
{
  return (LapChangeRule) { session->level, session->age, session->change };
}

gboolean
lap_session_band (const LapSession *session, double *low, double *high)
{
  *low = session->band_low >= 0 ? session->band_low : 0.40;
  *high = session->band_high >= 0 ? session->band_high : 0.89;
  return session->band_low >= 0 || session->band_high >= 0;
}

/* Own exercises */

static gboolean
read_exercises (const LapField *f, JsonNode *node, const LapPath *path, gpointer slot, GError **error)
{
  g_autoptr (GPtrArray) own = g_ptr_array_new_with_free_func ((GDestroyNotify) lap_exercise_unref);
  JsonArray *array;

  if (!JSON_NODE_HOLDS_ARRAY (node) || json_array_get_length (json_node_get_array (node)) > 1000) {
    lap_path_error (error, path, "expected a list of at most 1000 exercises");
    return FALSE;
  }
  array = json_node_get_array (node);
  for (guint i = 0; i < json_array_get_length (array); i++) {
    const LapPath *here = LAP_PATH_ELEMENT (path, i);
    LapExercise *e = lap_exercise_read (json_array_get_element (array, i), here, error);

    if (e == NULL)
      return FALSE;
    g_ptr_array_add (own, e);
    for (guint k = 0; k < i; k++)
      if (g_str_equal (((LapExercise *) g_ptr_array_index (own, k))->id, e->id)) {
        lap_path_error (error, LAP_PATH_MEMBER (here, "id"), "an exercise \"%s\" is there twice", e->id);
        return FALSE;
      }
  }
  if (own->len > 0)
    *(GPtrArray **) slot = g_steal_pointer (&own);
  return TRUE;
}

static void
write_exercises (const LapField *f, gconstpointer slot, LapJsonWriter *writer)
{
  GPtrArray *own = *(GPtrArray * const *) slot;

  lap_json_writer_begin_array (writer);
  for (guint i = 0; own != NULL && i < own->len; i++)
    lap_exercise_write (g_ptr_array_index (own, i), writer);
  lap_json_writer_end_array (writer);
}

static void
visit_exercises (const LapField *f, gconstpointer slot, const char *pointer, LapExtraFunc func, gpointer data)
{
  GPtrArray *own = *(GPtrArray * const *) slot;

  for (guint i = 0; i < own->len; i++) {
    g_autofree char *inner = g_strdup_printf ("%s/%u", pointer, i);

    lap_record_visit (&lap_exercise_record, g_ptr_array_index (own, i), inner, func, data);
  }
}

const LapKind lap_kind_exercises = { g_ptr_array_get_type, read_exercises, write_exercises, visit_exercises };
