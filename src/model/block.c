/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "model/block.h"

#include <stdlib.h>
#include <string.h>

static const LapWord with_ids[] = { { "", "" }, { "partner", "partner" } };
static const LapWords with_words = { "\"partner\" or nothing", with_ids, G_N_ELEMENTS (with_ids) };

#define AT(member) G_STRUCT_OFFSET (LapBlock, member)

enum { EXERCISE, TALK, PAUSE, SECONDS, WORK };

static const LapField fields[] = {
  [EXERCISE] = { "", "exercise", &lap_kind_id, AT (exercise), LAP_FIELD_KEEP },
  [TALK] = { "", "talk", &lap_kind_text, AT (talk), LAP_FIELD_KEEP },
  [PAUSE] = { "", "pause", &lap_kind_text, AT (pause), LAP_FIELD_KEEP },
  [SECONDS] = { "", "seconds", &lap_kind_int, AT (seconds), LAP_FIELD_KEEP, 1, 10800 },
  [WORK] = { "", "work", &lap_kind_int, AT (work), LAP_FIELD_KEEP, 1, 10800 },
  { "", "rest", &lap_kind_int, AT (rest), 0, 0, 10800 },
  { "", "reps", &lap_kind_reps, AT (reps) },
  { "", "tempo", &lap_kind_text, AT (tempo) },
  { "", "load", &lap_kind_text, AT (load) },
  { "", "pace", &lap_kind_word, AT (pace), .preset = -1, .words = &lap_paces },
  { "", "sides", &lap_kind_word, AT (sides), .preset = -1, .words = &lap_sides },
  { "", "switch", &lap_kind_int, AT (switch_seconds), 0, 0, 10800 },
  { "", "option", &lap_kind_word, AT (option), .words = &lap_options },
  { "", "fixed", &lap_kind_flag, AT (fixed) },
  { "", "with", &lap_kind_word, AT (with), .words = &with_words },
  { "", "say", &lap_kind_say, AT (say) },
  { "", "note", &lap_kind_text, AT (note) },
  { "", "fine", &lap_kind_texts, AT (fine) },
  { "", "in-round", &lap_kind_changes, AT (in_round) },
};

/* Rows that only an exercise block, or only the others, have. The rest belong to every block. */
static gboolean
belongs (LapBlockKind kind, const LapField *field)
{
  static const char *const every[] = { "fixed", "note", "fine", NULL };

  if (g_strv_contains (every, field->name))
    return TRUE;
  switch (kind) {
  case LAP_BLOCK_TALK: return field == &fields[TALK] || field == &fields[SECONDS];
  case LAP_BLOCK_PAUSE: return field == &fields[PAUSE] || field == &fields[SECONDS];
  default: return field != &fields[TALK] && field != &fields[PAUSE] && field != &fields[SECONDS];
  }
}

static gboolean
leaves_out (gconstpointer self, const LapField *field)
{
  return !belongs (((const LapBlock *) self)->kind, field);
}

static gboolean
check (gpointer self, guint64 seen, const LapPath *path, GError **error)
{
  static const char *const names[] = { "an exercise", "a talk", "a pause" };
  LapBlock *block = self;
  guint length;

  if (((seen >> EXERCISE) & 1) + ((seen >> TALK) & 1) + ((seen >> PAUSE) & 1) != 1) {
    lap_path_error (error, path, "expected exactly one of \"exercise\", \"talk\" and \"pause\" in a block");
    return FALSE;
  }
  block->kind = (seen >> TALK) & 1 ? LAP_BLOCK_TALK : (seen >> PAUSE) & 1 ? LAP_BLOCK_PAUSE : LAP_BLOCK_EXERCISE;
  length = block->kind == LAP_BLOCK_EXERCISE ? WORK : SECONDS;
  if (!((seen >> length) & 1)) {
    lap_path_error (error, path, "%s needs the member \"%s\"", names[block->kind], fields[length].name);
    return FALSE;
  }
  for (guint i = 0; i < G_N_ELEMENTS (fields); i++)
    if (((seen >> i) & 1) && !belongs (block->kind, &fields[i])) {
      lap_path_error (error, LAP_PATH_MEMBER (path, fields[i].name), "%s has no \"%s\"", names[block->kind],
                      fields[i].name);
      return FALSE;
    }
  if (block->tempo != NULL && *block->tempo != '\0' && lap_tempo_seconds (block->tempo) == 0) {
    lap_path_error (error, LAP_PATH_MEMBER (path, "tempo"), "expected seconds down, hold and up such as \"3-1-1\"");
    return FALSE;
  }
  return TRUE;
}

static const LapRecord record = {
  "a block", fields, G_N_ELEMENTS (fields), .extras = G_STRUCT_OFFSET (LapObject, extras),
  .leaves_out = leaves_out, .check = check,
};

G_DEFINE_TYPE (LapBlock, lap_block, LAP_TYPE_OBJECT)

static void
copy_kind (gconstpointer from, gpointer to)
{
  ((LapBlock *) to)->kind = ((const LapBlock *) from)->kind;
}

static void
lap_block_class_init (LapBlockClass *klass)
{
  LAP_OBJECT_CLASS (klass)->copy_rest = copy_kind;
  lap_object_class_install (LAP_OBJECT_CLASS (klass), &record);
}

static void
lap_block_init (LapBlock *self)
{
  lap_object_setup (LAP_OBJECT (self));
}

LapBlock *
lap_block_new_exercise (const char *exercise, int work, int rest)
{
  LapBlock *block = g_object_new (LAP_TYPE_BLOCK, NULL);

  block->exercise = g_strdup (exercise);
  block->work = work;
  block->rest = rest;
  return block;
}

LapBlock *
lap_block_new_talk (const char *words, int seconds)
{
  LapBlock *block = g_object_new (LAP_TYPE_BLOCK, NULL);

  block->kind = LAP_BLOCK_TALK;
  block->talk = g_strdup (words);
  block->seconds = seconds;
  return block;
}

LapBlock *
lap_block_new_pause (const char *what, int seconds)
{
  LapBlock *block = g_object_new (LAP_TYPE_BLOCK, NULL);

  block->kind = LAP_BLOCK_PAUSE;
  block->pause = g_strdup (what);
  block->seconds = seconds;
  return block;
}

gboolean
lap_block_does (LapBlock *block, const char *exercise)
{
  gboolean does = g_strcmp0 (block->exercise, exercise) == 0;

  for (guint i = 0; block->in_round != NULL && i < block->in_round->items->len; i++)
    does |= g_strcmp0 (((LapChange *) g_ptr_array_index (block->in_round->items, i))->exercise, exercise) == 0;
  return does;
}

int
lap_tempo_seconds (const char *tempo)
{
  int sum = 0, numbers = 0;

  if (tempo == NULL)
    return 0;
  for (;;) {
    int digits = strspn (tempo, "0123456789");

    if (digits < 1 || digits > 2)
      return 0;
    sum += atoi (tempo);
    numbers++;
    tempo += digits;
    if (*tempo == '\0')
      return numbers == 3 ? sum : 0;
    if (*tempo++ != '-')
      return 0;
  }
}

/* Repetitions: a whole number or [low, high]. */

static GType
reps_type (void)
{
  return G_TYPE_UINT;
}

static gboolean
read_reps (const LapField *f, JsonNode *node, const LapPath *path, gpointer slot, GError **error)
{
  gint64 low = -1, high = -1;

  if (JSON_NODE_HOLDS_ARRAY (node)) {
    JsonArray *pair = json_node_get_array (node);

    if (json_array_get_length (pair) != 2 || !lap_read_whole (json_array_get_element (pair, 0), &low) ||
        !lap_read_whole (json_array_get_element (pair, 1), &high))
      low = -1;
  } else if (lap_read_whole (node, &low)) {
    high = low;
  }
  if (low < 0 || high < low || high > 1000 || (low == 0 && high > 0)) {
    lap_path_error (error, path, "expected repetitions: a whole number up to 1000, or [low, high]");
    return FALSE;
  }
  *(guint *) slot = LAP_REPS (low, high);
  return TRUE;
}

static void
write_reps (const LapField *f, gconstpointer slot, LapJsonWriter *writer)
{
  guint reps = *(const guint *) slot;

  if (LAP_REPS_LOW (reps) == LAP_REPS_HIGH (reps)) {
    lap_json_writer_int (writer, LAP_REPS_LOW (reps));
    return;
  }
  lap_json_writer_begin_array (writer);
  lap_json_writer_int (writer, LAP_REPS_LOW (reps));
  lap_json_writer_int (writer, LAP_REPS_HIGH (reps));
  lap_json_writer_end_array (writer);
}

const LapKind lap_kind_reps = { reps_type, read_reps, write_reps };
