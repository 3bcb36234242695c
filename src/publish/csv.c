/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/csv.h"

#include <math.h>
#include <string.h>

void
lap_csv_text (GString *csv, const char *text, gboolean last)
{
  if (text != NULL && strpbrk (text, ",\"\r\n") != NULL) {
    g_string_append_c (csv, '"');
    for (; *text != '\0'; text++) {
      if (*text == '"')
        g_string_append_c (csv, '"');
      g_string_append_c (csv, *text);
    }
    g_string_append_c (csv, '"');
  } else if (text != NULL) {
    g_string_append (csv, text);
  }
  g_string_append (csv, last ? "\r\n" : ",");
}

void
lap_csv_whole (GString *csv, int number, gboolean there)
{
  if (there)
    g_string_append_printf (csv, "%d,", number);
  else
    g_string_append_c (csv, ',');
}

void
lap_csv_number (GString *csv, double number, gboolean last)
{
  char digits[G_ASCII_DTOSTR_BUF_SIZE];

  g_ascii_formatd (digits, sizeof digits, "%.10g", round (number * 1000) / 1000 + 0.0);
  lap_csv_text (csv, digits, last);
}
