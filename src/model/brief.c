/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "model/brief.h"

#define AT(member) G_STRUCT_OFFSET (LapBrief, member)

static const LapField fields[] = {
  { "", "format", &lap_kind_text, AT (format), LAP_FIELD_REQUIRED },
  { "", "version", &lap_kind_int, AT (version), LAP_FIELD_REQUIRED, 1, 1000000, LAP_BRIEF_VERSION },
  { "", "minutes", &lap_kind_int, AT (minutes), 0, 3, 720, 30 },
  { "", "work", &lap_kind_int, AT (work), 0, 1, 10800 },
  { "", "rest", &lap_kind_int, AT (rest), 0, 0, 10800, -1 },
  { "", "rounds", &lap_kind_int, AT (rounds), 0, 1, 100 },
  { "", "level", &lap_kind_word, AT (level), 0, .preset = LAP_LEVEL_MIXED, .words = &lap_levels },
  { "", "focus", &lap_kind_words, AT (focus), .words = &lap_regions },
  { "", "kit", &lap_kind_kit, AT (kit) },
  { "space", "width", &lap_kind_number, AT (space_width), 0, 0, 1000 },
  { "space", "length", &lap_kind_number, AT (space_length), 0, 0, 1000 },
  { "", "quiet", &lap_kind_flag, AT (quiet) },
  { "", "without", &lap_kind_words, AT (without), .words = &lap_care_words },
  { "", "not", &lap_kind_texts, AT (barred) },
  { "", "seed", &lap_kind_int, AT (seed), 0, 0, G_MAXINT },
};

static gboolean
check (gpointer self, guint64 seen, const LapPath *path, GError **error)
{
  const LapBrief *brief = self;

  if (g_str_equal (brief->format, "lapwing-brief"))
    return TRUE;
  lap_path_error (error, LAP_PATH_MEMBER (path, "format"), "expected \"lapwing-brief\"");
  return FALSE;
}

static const LapRecord record = {
  "a brief", fields, G_N_ELEMENTS (fields), .extras = AT (extras), .check = check,
};

LapBrief *
lap_brief_new (void)
{
  LapBrief *brief = g_new0 (LapBrief, 1);

  lap_record_init (&record, brief);
  return brief;
}

void
lap_brief_free (LapBrief *brief)
{
  lap_record_clear (&record, brief);
  g_free (brief);
}

LapBrief *
lap_brief_read (JsonNode *node, GError **error)
{
  g_autoptr (LapBrief) brief = lap_brief_new ();
  LapPath top = { NULL, NULL, 0 };

  if (!lap_record_read (&record, brief, node, &top, error))
    return NULL;
  return g_steal_pointer (&brief);
}
