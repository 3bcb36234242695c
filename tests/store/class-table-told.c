/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * class-table-told TABLE [WEEK]: what a spreadsheet makes of a week, an empty one without WEEK. Prints a JSON object:
 * `error`, or `faults`, `unknown` and, without faults, `week` after the edits. For class-table.py.
 */
#include "base/json-writer.h"
#include "store/class-table.h"
#include "store/documents.h"
#include "store/read-file.h"

#include <stdio.h>

static void
tell (const LapClassTable *table, LapWeek *week, LapJsonWriter *out)
{
  LapEdits *edits = lap_class_table_edits (table, week);
  g_autoptr (GBytes) before = lap_week_to_bytes (week);

  lap_json_writer_member (out, "faults");
  lap_json_writer_begin_array (out);
  for (guint i = 0; i < table->faults->len; i++) {
    g_autofree char *text = lap_table_fault_told (&g_array_index (table->faults, LapTableFault, i));

    lap_json_writer_string (out, text);
  }
  lap_json_writer_end_array (out);
  lap_json_writer_member (out, "unknown");
  lap_json_writer_begin_array (out);
  for (guint i = 0; table->unknown[i] != NULL; i++)
    lap_json_writer_string (out, table->unknown[i]);
  lap_json_writer_end_array (out);
  lap_json_writer_member (out, "rows");
  lap_json_writer_int (out, table->rows->len);
  if (edits == NULL)
    return;
  lap_edits_swap (edits);
  lap_json_writer_member (out, "week");
  lap_object_write (week, out);
  lap_edits_swap (edits);
  lap_edits_free (edits);
  {
    g_autoptr (GBytes) after = lap_week_to_bytes (week);

    g_assert_true (g_bytes_equal (before, after));
  }
}

int
main (int argc, char **argv)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (LapJsonWriter) out = lap_json_writer_new ();
  g_autoptr (GBytes) bytes = lap_read_file (argv[1], NULL, NULL), file = NULL, told = NULL;
  g_autoptr (LapClassTable) table = NULL;
  g_autoptr (LapWeek) week = NULL;

  if (argc > 2) {
    file = lap_read_file (argv[2], NULL, NULL);
    week = lap_week_from_bytes (file, NULL);
  } else {
    week = lap_week_new ("A week", "Europe/Lisbon");
  }
  table = lap_class_table_read (bytes, week, NULL, &error);
  lap_json_writer_begin_object (out);
  if (table != NULL)
    tell (table, week, out);
  else
    lap_json_writer_member_string (out, "error", error->message);
  lap_json_writer_end_object (out);
  told = lap_json_writer_finish (out);
  fwrite (g_bytes_get_data (told, NULL), 1, g_bytes_get_size (told), stdout);
  return 0;
}
