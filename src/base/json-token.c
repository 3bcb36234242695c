/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "base/json-token.h"

#include <errno.h>
#include <math.h>
#include <stdarg.h>
#include <string.h>

#include <glib/gi18n-lib.h>

#include "base/error.h"

#define FOUND_MOST 20

gboolean
lap_json_fault (LapJsonCursor *cursor, const char *format, ...)
{
  va_list args;

  if (cursor->fault != NULL)
    return FALSE;
  va_start (args, format);
  cursor->fault = g_strdup_vprintf (format, args);
  va_end (args);
  return FALSE;
}

char *
lap_json_found (const LapJsonCursor *cursor)
{
  g_autoptr(GString) out = NULL;
  const char *end = cursor->at;

  if (cursor->at >= cursor->end)
    return g_strdup (_("the end of the text"));
  while (end < cursor->end && *end != '\n' && *end != '\r')
    end++;
  if (end == cursor->at)
    return g_strdup (_("the end of the line"));
  out = g_string_new ("'");
  lap_append_printable (out, cursor->at, end - cursor->at, FOUND_MOST);
  g_string_append_c (out, '\'');
  return g_string_free (g_steal_pointer (&out), FALSE);
}

void
lap_json_skip_space (LapJsonCursor *cursor)
{
  while (cursor->at < cursor->end
         && (*cursor->at == ' ' || *cursor->at == '\n' || *cursor->at == '\r' || *cursor->at == '\t'))
    cursor->at++;
}

/* Four hexadecimal digits at @at; -1 when they are not there. */
static int
hex4 (const LapJsonCursor *cursor, const char *at)
{
  int value = 0;

  if (cursor->end - at < 4)
    return -1;
  for (int i = 0; i < 4; i++)
    {
      if (!g_ascii_isxdigit (at[i]))
        return -1;
      value = value * 16 + g_ascii_xdigit_value (at[i]);
    }
  return value;
}

/* The cursor is on the backslash of \u. A pair of surrogates is one character; half of one is none. */
static gboolean
read_unicode_escape (LapJsonCursor *cursor)
{
  int first = hex4 (cursor, cursor->at + 2);
  int second = -1;

  if (first < 0)
    return lap_json_fault (cursor, _("expected four hexadecimal digits after \\u"));
  if (first == 0)
    return lap_json_fault (cursor, _("\\u0000 can't be part of a text"));
  if (first < 0xd800 || first > 0xdfff)
    {
      cursor->at += 6;
      return TRUE;
    }
  if (cursor->end - cursor->at >= 12 && cursor->at[6] == '\\' && cursor->at[7] == 'u')
    second = hex4 (cursor, cursor->at + 8);
  if (first >= 0xdc00 || second < 0xdc00 || second > 0xdfff)
    return lap_json_fault (cursor, _("\\u%04x is half of a pair; expected \\ud800 to \\udbff, then "
                                     "\\udc00 to \\udfff"), first);
  cursor->at += 12;
  return TRUE;
}

static gboolean
read_escape (LapJsonCursor *cursor)
{
  g_autofree char *found = NULL;

  if (cursor->end - cursor->at >= 2)
    {
      if (cursor->at[1] == 'u')
        return read_unicode_escape (cursor);
      if (cursor->at[1] != '\0' && strchr ("\"\\/bfnrt", cursor->at[1]) != NULL)
        {
          cursor->at += 2;
          return TRUE;
        }
    }
  found = lap_json_found (cursor);
  return lap_json_fault (cursor, _("expected one of \\\" \\\\ \\/ \\b \\f \\n \\r \\t \\u, found %s"), found);
}

gboolean
lap_json_read_string (LapJsonCursor *cursor, LapJsonText *text)
{
  const char *bad = NULL;

  text->bytes = ++cursor->at;
  text->escaped = FALSE;
  while (cursor->at < cursor->end && *cursor->at != '"')
    {
      guchar c = *cursor->at;

      if (c == '\n' || c == '\r')
        return lap_json_fault (cursor, _("expected a closing quote before the end of the line"));
      if (c < 0x20)
        return lap_json_fault (cursor, _("a bare control character in a text; expected it as \\u%04x"), c);
      if (c == '\\')
        {
          text->escaped = TRUE;
          if (!read_escape (cursor))
            return FALSE;
        }
      else
        cursor->at++;
    }
  text->length = cursor->at - text->bytes;
  if (!g_utf8_validate_len (text->bytes, text->length, &bad))
    {
      cursor->at = bad;
      return lap_json_fault (cursor, _("expected UTF-8, found the byte 0x%02x"), (guchar) *bad);
    }
  if (cursor->at >= cursor->end)
    return lap_json_fault (cursor, _("expected a closing quote, found the end of the text"));
  cursor->at++;
  return TRUE;
}

/* Skips digits; how many there were. */
static gsize
skip_digits (LapJsonCursor *cursor)
{
  const char *from = cursor->at;

  while (cursor->at < cursor->end && g_ascii_isdigit (*cursor->at))
    cursor->at++;
  return cursor->at - from;
}

static gboolean
need_digits (LapJsonCursor *cursor)
{
  g_autofree char *found = NULL;

  if (skip_digits (cursor) > 0)
    return TRUE;
  found = lap_json_found (cursor);
  return lap_json_fault (cursor, _("expected a digit, found %s"), found);
}

/* The grammar held from @from to the cursor; now the value has to fit. */
static gboolean
check_range (LapJsonCursor *cursor, const char *from, LapJsonNumber *number)
{
  g_autofree char *digits = g_strndup (from, cursor->at - from);
  gboolean fits;

  if (number->whole)
    {
      errno = 0;
      number->integer = g_ascii_strtoll (digits, NULL, 10);
      fits = errno == 0;
    }
  else
    {
      number->fraction = g_ascii_strtod (digits, NULL);
      fits = isfinite (number->fraction);
    }
  if (fits)
    return TRUE;
  cursor->at = from;
  return number->whole ? lap_json_fault (cursor, _("a whole number out of range; expected one from "
                                                   "-9223372036854775808 to 9223372036854775807"))
                       : lap_json_fault (cursor, _("a number out of range; expected one below 1.8e308"));
}

gboolean
lap_json_read_number (LapJsonCursor *cursor, LapJsonNumber *number)
{
  const char *from = cursor->at;

  number->whole = TRUE;
  if (*cursor->at == '-')
    cursor->at++;
  if (cursor->end - cursor->at >= 2 && cursor->at[0] == '0' && g_ascii_isdigit (cursor->at[1]))
    return lap_json_fault (cursor, _("expected a number without a zero in front"));
  if (!need_digits (cursor))
    return FALSE;
  if (cursor->at < cursor->end && *cursor->at == '.')
    {
      number->whole = FALSE;
      cursor->at++;
      if (!need_digits (cursor))
        return FALSE;
    }
  if (cursor->at < cursor->end && (*cursor->at == 'e' || *cursor->at == 'E'))
    {
      number->whole = FALSE;
      cursor->at++;
      if (cursor->at < cursor->end && (*cursor->at == '+' || *cursor->at == '-'))
        cursor->at++;
      if (!need_digits (cursor))
        return FALSE;
    }
  return check_range (cursor, from, number);
}

gboolean
lap_json_read_literal (LapJsonCursor *cursor, LapJsonLiteral *literal)
{
  static const char *const literals[] = { [LAP_JSON_TRUE] = "true", [LAP_JSON_FALSE] = "false", [LAP_JSON_NULL] = "null" };
  g_autofree char *found = NULL;

  for (gsize i = 0; i < G_N_ELEMENTS (literals); i++)
    {
      gsize length = strlen (literals[i]);

      if ((gsize) (cursor->end - cursor->at) >= length && memcmp (cursor->at, literals[i], length) == 0)
        {
          cursor->at += length;
          *literal = i;
          return TRUE;
        }
    }
  found = lap_json_found (cursor);
  if (cursor->at < cursor->end && *cursor->at == '/')
    return lap_json_fault (cursor, _("expected a value, found %s; JSON has no comments"), found);
  return lap_json_fault (cursor, _("expected a value, found %s"), found);
}

char *
lap_json_unescape (const LapJsonText *text)
{
  static const char letters[] = "bfnrt";
  static const char controls[] = "\b\f\n\r\t";
  LapJsonCursor whole = { text->bytes, text->bytes, text->bytes + text->length, NULL };
  GString *out = g_string_sized_new (text->length + 1);
  const char *at = text->bytes;

  while (at < whole.end)
    {
      const char *letter;
      gunichar c;

      if (*at != '\\')
        {
          g_string_append_c (out, *at++);
          continue;
        }
      if (at[1] != 'u')
        {
          letter = strchr (letters, at[1]);
          g_string_append_c (out, letter != NULL ? controls[letter - letters] : at[1]);
          at += 2;
          continue;
        }
      c = hex4 (&whole, at + 2);
      at += 6;
      if (c >= 0xd800 && c <= 0xdfff)
        {
          c = 0x10000 + ((c - 0xd800) << 10) + (hex4 (&whole, at + 2) - 0xdc00);
          at += 6;
        }
      g_string_append_unichar (out, c);
    }
  return g_string_free (out, FALSE);
}
