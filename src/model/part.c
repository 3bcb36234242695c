/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "model/part.h"

#include <glib/gi18n-lib.h>

static const LapWord kinds[] = {
  { "opening", N_("Opening") },
  { "warm-up", N_("Warm-up") },
  { "main", N_("Main") },
  { "cool-down", N_("Cool-down") },
  { "closing", N_("Closing") },
};
const LapWords lap_part_kinds = { "a kind of part", kinds, G_N_ELEMENTS (kinds) };

static const LapWord runs[] = {
  { "together", N_("All together") },
  { "stations", N_("In stations") },
  { "own-pace", N_("At one’s own pace") },
  { "on-the-minute", N_("On the minute") },
};
const LapWords lap_runs = { "a way to run a part", runs, G_N_ELEMENTS (runs) };

static const LapWord aim_ids[] = { { "", N_("Not meant") }, { "tire", N_("On purpose") } };
static const LapWords aim_words = { "\"tire\" or nothing", aim_ids, G_N_ELEMENTS (aim_ids) };

static const LapField step_fields[] = {
  { "", "work", &lap_kind_int, G_STRUCT_OFFSET (LapStep, work), LAP_FIELD_REQUIRED, 1, 10800 },
  { "", "rest", &lap_kind_int, G_STRUCT_OFFSET (LapStep, rest), LAP_FIELD_REQUIRED, 0, 10800 },
};
static const LapRecord step_record = {
  "a step", step_fields, G_N_ELEMENTS (step_fields), .extras = G_STRUCT_OFFSET (LapStep, extras),
};
const LapRowsKind lap_kind_steps = { LAP_ROWS_KIND, &step_record, sizeof (LapStep), 100 };

static const LapListKind kind_blocks = { LAP_LIST_KIND, lap_block_get_type, 1000 };

#define AT(member) G_STRUCT_OFFSET (LapPart, member)

static const LapField fields[] = {
  { "", "kind", &lap_kind_word, AT (kind), LAP_FIELD_REQUIRED, .words = &lap_part_kinds },
  { "", "title", &lap_kind_text, AT (title) },
  { "", "run", &lap_kind_word, AT (run), .words = &lap_runs },
  { "", "rounds", &lap_kind_int, AT (rounds), 0, 1, 100, 1 },
  { "", "sets", &lap_kind_int, AT (sets), 0, 1, 100, 1 },
  { "", "set-rest", &lap_kind_int, AT (set_rest), 0, 0, 10800 },
  { "", "round-rest", &lap_kind_int, AT (round_rest), 0, 0, 10800 },
  { "", "keep-last-rest", &lap_kind_flag, AT (keep_last_rest) },
  { "", "rest-after", &lap_kind_int, AT (rest_after), 0, 0, 10800 },
  { "", "rest-as", &lap_kind_id, AT (rest_as) },
  { "", "steps", &lap_kind_steps.kind, AT (steps) },
  { "", "cap", &lap_kind_int, AT (cap), 0, 0, 10800 },
  { "", "every", &lap_kind_int, AT (every), 0, 1, 10800, 60 },
  { "", "per-station", &lap_kind_int, AT (per_station), 0, 1, 1000, 1 },
  { "", "aim", &lap_kind_word, AT (aim), .words = &aim_words },
  { "", "fine", &lap_kind_texts, AT (fine) },
  { "", "blocks", &kind_blocks.kind, AT (blocks), LAP_FIELD_REQUIRED | LAP_FIELD_FIXED },
};

/* in-round counts from 2 to the rounds of the part. */
static gboolean
check_changes (const LapPart *part, const LapPath *path, GError **error)
{
  const LapPath *blocks = LAP_PATH_MEMBER (path, "blocks");

  for (guint b = 0; b < lap_part_n (part); b++) {
    const LapBlock *block = lap_part_nth (part, b);
    const LapPath *here = LAP_PATH_MEMBER (LAP_PATH_ELEMENT (blocks, b), "in-round");

    for (guint i = 0; block->in_round != NULL && i < block->in_round->items->len; i++) {
      const LapChange *change = g_ptr_array_index (block->in_round->items, i);
      g_autofree char *name = g_strdup_printf ("%d", change->round);

      if (change->round <= part->rounds)
        continue;
      lap_path_error (error, LAP_PATH_MEMBER (here, name), part->rounds > 1
                      ? "expected a round from 2 to %d, the rounds of the part"
                      : "a part of %d round has no later rounds to differ", part->rounds);
      return FALSE;
    }
  }
  return TRUE;
}

static gboolean
check (gpointer self, guint64 seen, const LapPath *path, GError **error)
{
  const LapPart *part = self;

  if (part->run == LAP_RUN_OWN_PACE && part->cap < 1) {
    lap_path_error (error, path, "a part at one's own pace needs \"cap\", its seconds");
    return FALSE;
  }
  return check_changes (part, path, error);
}

static const LapRecord record = {
  "a part", fields, G_N_ELEMENTS (fields), .extras = G_STRUCT_OFFSET (LapObject, extras), .check = check,
};

G_DEFINE_TYPE (LapPart, lap_part, LAP_TYPE_OBJECT)

static void
lap_part_class_init (LapPartClass *klass)
{
  lap_object_class_install (LAP_OBJECT_CLASS (klass), &record);
}

static void
lap_part_init (LapPart *self)
{
  lap_object_setup (LAP_OBJECT (self));
}

LapPart *
lap_part_new (LapPartKind kind)
{
  LapPart *part = g_object_new (LAP_TYPE_PART, NULL);

  part->kind = kind;
  return part;
}

const char *
lap_part_title (const LapPart *part)
{
  if (part->title != NULL && *part->title != '\0')
    return part->title;
  return lap_words_label (&lap_part_kinds, part->kind);
}

guint
lap_part_n (const LapPart *part)
{
  return lap_list_n (part->blocks);
}

LapBlock *
lap_part_nth (const LapPart *part, guint n)
{
  return lap_list_nth (part->blocks, n);
}
