/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "store/csv-read.h"

#include "base/error.h"
#include "store/read-file.h"

#include <glib/gi18n-lib.h>
#include <string.h>

static const char separators[] = ",;\t";

/* What is read, and where what was read is written: never ahead of it. */
typedef struct {
  LapCsv *csv;
  char   *at, *end, *out;
  char    separator;
  guint   line;
} Reading;

static gboolean
refuse (GError **error, guint line, const char *message)
{
  g_set_error (error, LAP_ERROR, LAP_ERROR_INVALID, _("line %1$u: %2$s"), line, message);
  return FALSE;
}

/* The text of @bytes as UTF-8 without a mark before it. */
static char *
decode (const char *data, gsize size, gsize *length, gboolean *guessed, GError **error)
{
  const char *from = NULL;

  if (size >= 3 && memcmp (data, "\xef\xbb\xbf", 3) == 0) {
    data += 3;
    size -= 3;
  } else if (size >= 2 && (memcmp (data, "\xff\xfe", 2) == 0 || memcmp (data, "\xfe\xff", 2) == 0)) {
    from = data[0] == '\xff' ? "UTF-16LE" : "UTF-16BE";
    data += 2;
    size -= 2;
  }
  if (from == NULL && !g_utf8_validate_len (data, size, NULL) && memchr (data, '\0', size) == NULL) {
    from = "WINDOWS-1252";
    *guessed = TRUE;
  }
  *length = size;
  return from != NULL ? g_convert (data, size, "UTF-8", from, NULL, length, error)
                      : g_strndup (data, size);
}

/* "sep=;" on a line of its own, which spreadsheets put there. Moves past it. */
static char
told_separator (Reading *reading)
{
  const char *at = reading->at;

  if (reading->end - at < 5 || g_ascii_strncasecmp (at, "sep=", 4) != 0 || strchr (separators, at[4]) == NULL)
    return '\0';
  if (at[5] != '\r' && at[5] != '\n' && at[5] != '\0')
    return '\0';
  reading->at += 5;
  if (*reading->at == '\r')
    reading->at++;
  if (*reading->at == '\n')
    reading->at++;
  reading->line++;
  return at[4];
}

/* The one that the first row that isn't empty has most of, outside quotation marks. */
static char
usual_separator (const Reading *reading)
{
  guint counts[G_N_ELEMENTS (separators)] = { 0 }, best = 0;
  const char *at = reading->at;
  gboolean quoted = FALSE;

  while (*at == '\r' || *at == '\n')
    at++;
  for (; at < reading->end && (quoted || (*at != '\r' && *at != '\n')); at++) {
    const char *found = *at != '\0' ? strchr (separators, *at) : NULL;

    quoted ^= *at == '"';
    if (!quoted && found != NULL)
      counts[found - separators]++;
  }
  for (guint i = 1; i < G_N_ELEMENTS (separators); i++)
    if (counts[i] > counts[best])
      best = i;
  return separators[best];
}

/* Moves past the end of a line, which is LF, CR or both. */
static void
end_line (Reading *reading)
{
  if (*reading->at == '\r' && reading->at[1] == '\n')
    reading->at++;
  reading->at++;
  reading->line++;
}

static gboolean
at_line_end (const Reading *reading)
{
  return reading->at >= reading->end || *reading->at == '\n' || *reading->at == '\r';
}

static gboolean
read_quoted (Reading *reading, GError **error)
{
  guint opened = reading->line;

  for (reading->at++; reading->at < reading->end; reading->at++) {
    if (*reading->at == '"' && *++reading->at != '"') {
      if (at_line_end (reading) || *reading->at == reading->separator)
        return TRUE;
      return refuse (error, reading->line, _("expected a separator behind the closing quotation mark"));
    }
    if (*reading->at == '\n' || (*reading->at == '\r' && reading->at[1] != '\n'))
      reading->line++;
    *reading->out++ = *reading->at;
  }
  return refuse (error, opened, _("a quotation mark is never closed"));
}

/* One cell, without what stands behind it. */
static gboolean
read_cell (Reading *reading, GError **error)
{
  char *start = reading->out;

  if (*reading->at == '"') {
    if (!read_quoted (reading, error))
      return FALSE;
  } else {
    while (!at_line_end (reading) && *reading->at != reading->separator)
      *reading->out++ = *reading->at++;
  }
  g_array_append_val (reading->csv->cells, start);
  return TRUE;
}

static gboolean
read_row (Reading *reading, GError **error)
{
  LapCsvRow row = { reading->line, reading->csv->cells->len, 0 };
  gboolean more = !at_line_end (reading);

  while (more) {
    if (!read_cell (reading, error))
      return FALSE;
    if (++row.n > LAP_CSV_CELLS_MOST)
      return refuse (error, row.line, _("too many columns"));
    more = reading->at < reading->end && *reading->at == reading->separator;
    if (more)
      reading->at++;
    else if (reading->at < reading->end)
      end_line (reading);
    *reading->out++ = '\0';
  }
  if (row.n == 0)
    end_line (reading);
  g_array_append_val (reading->csv->rows, row);
  return reading->csv->rows->len <= LAP_CSV_ROWS_MOST || refuse (error, row.line, _("too many rows"));
}

LapCsv *
lap_csv_read (GBytes *bytes, GError **error)
{
  g_autoptr (LapCsv) csv = g_new0 (LapCsv, 1);
  Reading reading = { .csv = csv, .line = 1 };
  const char *data = g_bytes_get_data (bytes, NULL);
  gsize length;

  csv->cells = g_array_new (FALSE, FALSE, sizeof (char *));
  csv->rows = g_array_new (FALSE, FALSE, sizeof (LapCsvRow));
  if (g_bytes_get_size (bytes) > LAP_FILE_MOST) {
    g_set_error_literal (error, LAP_ERROR, LAP_ERROR_INVALID, _("it is too large for a table"));
    return NULL;
  }
  csv->text = decode (data != NULL ? data : "", g_bytes_get_size (bytes), &length, &csv->guessed, NULL);
  if (csv->text == NULL || memchr (csv->text, '\0', length) != NULL) {
    g_set_error_literal (error, LAP_ERROR, LAP_ERROR_INVALID, _("it is no text; save it as CSV in UTF-8"));
    return NULL;
  }
  reading.at = reading.out = csv->text;
  reading.end = csv->text + length;
  reading.separator = told_separator (&reading);
  if (reading.separator == '\0')
    reading.separator = usual_separator (&reading);
  while (reading.at < reading.end)
    if (!read_row (&reading, error))
      return NULL;
  return g_steal_pointer (&csv);
}

void
lap_csv_free (LapCsv *csv)
{
  g_array_unref (csv->cells);
  g_array_unref (csv->rows);
  g_free (csv->text);
  g_free (csv);
}

const char *
lap_csv_cell (const LapCsv *csv, guint row, guint column)
{
  const LapCsvRow *r = lap_csv_row (csv, row);

  return column < r->n ? g_array_index (csv->cells, char *, r->first + column) : "";
}

gboolean
lap_csv_is_blank (const LapCsv *csv, guint row)
{
  for (guint i = 0; i < lap_csv_row (csv, row)->n; i++)
    if (strspn (lap_csv_cell (csv, row, i), " \t\r\n") != strlen (lap_csv_cell (csv, row, i)))
      return FALSE;
  return TRUE;
}
