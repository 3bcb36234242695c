/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A double is tried with 1, 2, … 17 digits until it reads back the same; 17 always do (IEEE 754: 53 bits of
 * mantissa). The nearest number of n digits is enough but for powers of two, below which doubles lie twice as
 * close as above: there the next n digits away from zero may read back when the nearest don't.
 */
#include "base/json-number.h"

#include <math.h>
#include <string.h>

#define DIGITS_MOST 17
/* Every whole number up to here is a double of its own. */
#define WHOLE_MOST 9007199254740992.0
#define PLAIN_LEAST_EXPONENT (-4)
#define PLAIN_MOST_EXPONENT 15

/* d.ddd × 10^exponent, as the digits without their point. */
typedef struct {
  char digits[DIGITS_MOST + 2];
  int count;
  int exponent;
} Decimal;

static double
decimal_value (const Decimal *decimal)
{
  char text[2 * LAP_JSON_NUMBER_SIZE];

  g_snprintf (text, sizeof text, "%se%d", decimal->digits, decimal->exponent - decimal->count + 1);
  return g_ascii_strtod (text, NULL);
}

static void
decimal_nearest (Decimal *decimal, double value, int count)
{
  char format[8], text[LAP_JSON_NUMBER_SIZE];
  char *mark;

  g_snprintf (format, sizeof format, "%%.%de", count - 1);
  g_ascii_formatd (text, sizeof text, format, value);
  mark = strchr (text, 'e');
  decimal->count = count;
  decimal->exponent = (int) g_ascii_strtoll (mark + 1, NULL, 10);
  decimal->digits[0] = text[0];
  /* Behind the first digit and the point come the others. */
  if (count > 1)
    memcpy (decimal->digits + 1, text + 2, count - 1);
  decimal->digits[count] = '\0';
}

/* Adds one to the last digit. */
static void
decimal_step (Decimal *decimal)
{
  int i = decimal->count - 1;

  while (i >= 0 && decimal->digits[i] == '9')
    decimal->digits[i--] = '0';
  if (i >= 0)
    {
      decimal->digits[i]++;
      return;
    }
  decimal->digits[0] = '1';
  decimal->exponent++;
}

static void
decimal_shortest (Decimal *decimal, double value)
{
  for (int count = 1; count < DIGITS_MOST; count++)
    {
      decimal_nearest (decimal, value, count);
      if (decimal_value (decimal) == value)
        return;
      decimal_step (decimal);
      if (decimal_value (decimal) == value)
        return;
    }
  decimal_nearest (decimal, value, DIGITS_MOST);
}

static void
append_plain (GString *out, const Decimal *decimal)
{
  int whole = decimal->exponent + 1;

  if (whole <= 0)
    {
      g_string_append (out, "0.");
      for (; whole < 0; whole++)
        g_string_append_c (out, '0');
      g_string_append (out, decimal->digits);
      return;
    }
  for (int i = 0; i < MAX (whole, decimal->count); i++)
    {
      if (i == whole)
        g_string_append_c (out, '.');
      g_string_append_c (out, i < decimal->count ? decimal->digits[i] : '0');
    }
}

static void
append_exponent (GString *out, const Decimal *decimal)
{
  g_string_append_c (out, decimal->digits[0]);
  if (decimal->count > 1)
    g_string_append_printf (out, ".%s", decimal->digits + 1);
  g_string_append_printf (out, "e%d", decimal->exponent);
}

void
lap_json_number (double value, char out[LAP_JSON_NUMBER_SIZE])
{
  g_autoptr(GString) text = NULL;
  Decimal decimal;

  if (fabs (value) <= WHOLE_MOST && value == trunc (value))
    {
      g_snprintf (out, LAP_JSON_NUMBER_SIZE, "%" G_GINT64_FORMAT, (gint64) value);
      return;
    }
  text = g_string_new (value < 0 ? "-" : "");
  decimal_shortest (&decimal, fabs (value));
  if (decimal.exponent >= PLAIN_LEAST_EXPONENT && decimal.exponent <= PLAIN_MOST_EXPONENT)
    append_plain (text, &decimal);
  else
    append_exponent (text, &decimal);
  g_strlcpy (out, text->str, LAP_JSON_NUMBER_SIZE);
}
