/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "store/class-columns.h"

#include "store/class-cells.h"

#include <glib/gi18n-lib.h>

#define HEADING_ROWS 20 /* in which the headings may stand, below a title */

/* The heading that is written, and others that are known. Translations say the names of their language. */
static const struct { const char *id, *names; } columns[LAP_N_COLUMNS] = {
  [LAP_COLUMN_CLASS] = { "class", "class id|id" },
  /* Translators: headings of spreadsheets, as people write them, parted by |; as many as you like */
  [LAP_COLUMN_TITLE] = { "title", N_("title|name|class name") },
  [LAP_COLUMN_KIND] = { "kind", N_("kind|type|class type|category") },
  [LAP_COLUMN_DAY] = { "day", N_("day|days|weekday|day of the week") },
  [LAP_COLUMN_DATE] = { "date", N_("date") },
  [LAP_COLUMN_START] = { "start", N_("start|time|from|begins|start time") },
  [LAP_COLUMN_END] = { "end", N_("end|until|to|ends|end time|finish") },
  [LAP_COLUMN_MINUTES] = { "minutes", N_("minutes|length|duration|min|mins") },
  [LAP_COLUMN_FOR] = { "for", N_("for|for whom|group|audience") },
  [LAP_COLUMN_ROOM] = { "room", N_("room|studio|hall|location|where") },
  [LAP_COLUMN_COACH] = { "coach", N_("coach|instructor|teacher|trainer|with|who") },
  [LAP_COLUMN_PLACES] = { "places", N_("places|capacity|spaces|people") },
  [LAP_COLUMN_EFFORT] = { "effort", N_("effort|intensity") },
  [LAP_COLUMN_SESSION] = { "session", N_("session|plan|file") },
  [LAP_COLUMN_REGIONS] = { "regions", N_("regions|body regions") },
  [LAP_COLUMN_IN_OUT] = { "in-out", N_("in-out|coming and going") },
  [LAP_COLUMN_TAKES_PART] = { "takes-part", N_("takes part|coach takes part") },
  [LAP_COLUMN_FIXED] = { "fixed", N_("fixed") },
  [LAP_COLUMN_WISH_DAYS] = { "wish-days", N_("wish days|wanted days") },
  [LAP_COLUMN_WISH_BETWEEN] = { "wish-between", N_("wish between|wanted between|wanted hours") },
  [LAP_COLUMN_STATE] = { "state", N_("state") },
};

static gboolean
is_named (const char *heading, const char *names)
{
  g_auto (GStrv) all = g_strsplit (names, "|", -1);

  for (guint i = 0; all[i] != NULL; i++) {
    g_autofree char *name = lap_cell_fold (all[i]);

    if (g_str_equal (heading, name))
      return TRUE;
  }
  return FALSE;
}

static int
find_column (const char *text)
{
  g_autofree char *heading = lap_cell_fold (text);

  for (int i = 0; *heading != '\0' && i < LAP_N_COLUMNS; i++)
    if (is_named (heading, columns[i].id) || is_named (heading, columns[i].names) ||
        is_named (heading, _(columns[i].names)))
      return i;
  return -1;
}

/* How many headings of a row are known. */
static guint
count_known (const LapCsv *csv, guint row)
{
  guint known = 0;

  for (guint i = 0; i < lap_csv_row (csv, row)->n; i++)
    known += find_column (lap_csv_cell (csv, row, i)) >= 0;
  return known;
}

guint
lap_class_columns_row (const LapCsv *csv)
{
  guint first = csv->rows->len;

  for (guint i = 0; i < MIN (csv->rows->len, HEADING_ROWS); i++) {
    if (count_known (csv, i) >= 2)
      return i;
    if (first == csv->rows->len && !lap_csv_is_blank (csv, i))
      first = i;
  }
  return first;
}

char **
lap_class_columns_read (const LapCsv *csv, guint row, int at[LAP_N_COLUMNS])
{
  g_autoptr (GStrvBuilder) unknown = g_strv_builder_new ();
  g_autofree char *headed = NULL;

  for (int i = 0; i < LAP_N_COLUMNS; i++)
    at[i] = -1;
  for (guint i = 0; i < lap_csv_row (csv, row)->n; i++) {
    g_autofree char *heading = g_strstrip (g_strdup (lap_csv_cell (csv, row, i)));
    int column = find_column (heading);

    if (column >= 0 && at[column] < 0)
      at[column] = i;
    else if (*heading != '\0')
      g_strv_builder_add (unknown, heading);
  }
  headed = lap_cell_fold (at[LAP_COLUMN_CLASS] >= 0 ? lap_csv_cell (csv, row, at[LAP_COLUMN_CLASS]) : "");
  /* "Class" without a title beside it is what people call their classes. */
  if (at[LAP_COLUMN_TITLE] < 0 && at[LAP_COLUMN_CLASS] >= 0 && is_named (headed, columns[LAP_COLUMN_CLASS].id)) {
    at[LAP_COLUMN_TITLE] = at[LAP_COLUMN_CLASS];
    at[LAP_COLUMN_CLASS] = -1;
  }
  return g_strv_builder_end (unknown);
}

const char *
lap_class_column_property (LapClassColumn column)
{
  return columns[column].id;
}
