/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "base/error.h"

typedef struct {
  char *pointer;
} LapErrorPrivate;

static void
lap_error_private_init (LapErrorPrivate *priv)
{
}

static void
lap_error_private_copy (const LapErrorPrivate *from, LapErrorPrivate *to)
{
  to->pointer = g_strdup (from->pointer);
}

static void
lap_error_private_clear (LapErrorPrivate *priv)
{
  g_free (priv->pointer);
}

G_DEFINE_EXTENDED_ERROR (LapError, lap_error)

int
lap_error_exit_code (const GError *error)
{
  if (error == NULL)
    return 0;
  if (error->domain != LAP_ERROR)
    return LAP_ERROR_INVALID;
  return error->code == LAP_ERROR_CHANGED ? LAP_ERROR_UNWRITABLE : error->code;
}

void
lap_error_at (GError **error, const char *pointer, const char *format, ...)
{
  va_list args;
  g_autoptr (GError) made = NULL;

  va_start (args, format);
  made = g_error_new_valist (LAP_ERROR, LAP_ERROR_INVALID, format, args);
  va_end (args);
  lap_error_get_private (made)->pointer = g_strdup (pointer);
  g_propagate_error (error, g_steal_pointer (&made));
}

const char *
lap_error_pointer (const GError *error)
{
  return error->domain == LAP_ERROR ? lap_error_get_private (error)->pointer : NULL;
}

void
lap_append_printable (GString *out, const char *bytes, gsize length, guint most)
{
  const char *end = bytes + length;

  for (guint count = 0; bytes < end; count++)
    {
      gunichar c = g_utf8_get_char_validated (bytes, end - bytes);

      if (count == most)
        {
          g_string_append (out, "…");
          return;
        }
      if (c == (gunichar) -1 || c == (gunichar) -2)
        {
          g_string_append_printf (out, "\\x%02x", (guchar) *bytes++);
          continue;
        }
      if (g_unichar_isprint (c))
        g_string_append_unichar (out, c);
      else
        g_string_append_printf (out, "\\u%04x", c);
      bytes = g_utf8_next_char (bytes);
    }
}
