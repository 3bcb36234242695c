/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/webvtt.h"

#include <math.h>

static void
append_text (GString *vtt, const char *text)
{
  for (; *text != '\0'; text++) {
    switch (*text) {
      case '&': g_string_append (vtt, "&amp;"); break;
      case '<': g_string_append (vtt, "&lt;"); break;
      case '>': g_string_append (vtt, "&gt;"); break;
      case '\r': break;
      case '\n':
        if (text[1] != '\n' && text[1] != '\r' && vtt->str[vtt->len - 1] != '\n')
          g_string_append_c (vtt, '\n');
        break;
      default: g_string_append_c (vtt, *text);
    }
  }
}

static void
append_stamp (GString *vtt, double seconds)
{
  gint64 ms = llround (MAX (seconds, 0) * 1000);

  g_string_append_printf (vtt, "%02d:%02d:%02d.%03d", (int) (ms / 3600000), (int) (ms / 60000 % 60),
                          (int) (ms / 1000 % 60), (int) (ms % 1000));
}

GString *
lap_webvtt_new (const char *note)
{
  GString *vtt = g_string_new ("WEBVTT\n");

  if (note != NULL) {
    g_string_append (vtt, "\nNOTE ");
    append_text (vtt, note);
    g_string_append_c (vtt, '\n');
  }
  return vtt;
}

void
lap_webvtt_add (GString *vtt, guint id, double start, double end, const char *text)
{
  g_string_append_printf (vtt, "\n%u\n", id);
  append_stamp (vtt, start);
  g_string_append (vtt, " --> ");
  append_stamp (vtt, end);
  g_string_append_c (vtt, '\n');
  append_text (vtt, text);
  g_string_append_c (vtt, '\n');
}
