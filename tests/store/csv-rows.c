/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * csv-rows FILE…: prints a line for each file: its rows as a list of lists, or what is wrong with it as a text, both in
 * JSON. For csv.py, which compares them with another reader.
 */
#include "base/json-writer.h"
#include "store/csv-read.h"
#include "store/read-file.h"

#include <stdio.h>

static void
tell (const LapCsv *csv, LapJsonWriter *out)
{
  lap_json_writer_begin_array (out);
  for (guint i = 0; i < csv->rows->len; i++) {
    lap_json_writer_begin_array (out);
    for (guint k = 0; k < lap_csv_row (csv, i)->n; k++)
      lap_json_writer_string (out, lap_csv_cell (csv, i, k));
    lap_json_writer_end_array (out);
  }
  lap_json_writer_end_array (out);
}

int
main (int argc, char **argv)
{
  for (int i = 1; i < argc; i++) {
    g_autoptr (GError) error = NULL;
    g_autoptr (LapJsonWriter) out = lap_json_writer_new ();
    g_autoptr (GBytes) bytes = lap_read_file (argv[i], NULL, &error), told = NULL;
    g_autoptr (LapCsv) csv = bytes != NULL ? lap_csv_read (bytes, &error) : NULL;

    if (csv != NULL)
      tell (csv, out);
    else
      lap_json_writer_string (out, error->message);
    told = lap_json_writer_finish (out);
    fwrite (g_bytes_get_data (told, NULL), 1, g_bytes_get_size (told), stdout);
    fputc (0x1e, stdout);
  }
  return 0;
}
