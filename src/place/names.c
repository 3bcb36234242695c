/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A setting is a number: the lowest bits say after which words a line ends, those above how many words are shown.
 */
#include "place/names.h"

#include <string.h>

#define DOTS        "…"
#define SHOWN_SHIFT LAP_NAME_WORDS

static void
add_word (LapName *self, int start, int end, LapNameWidth width, gpointer data)
{
  self->starts[self->n] = start;
  self->ends[self->n] = end;
  self->widths[self->n] = width (self->text + start, end - start, data);
  self->n++;
}

LapName *
lap_name_new (const char *text, LapNameWidth width, gpointer data)
{
  LapName *self = g_new0 (LapName, 1);
  int start = 0, i = 0;

  self->text = g_strdup (text);
  self->space = width (" ", 1, data);
  self->dots = width (DOTS, strlen (DOTS), data);
  for (; text[i] != '\0' && self->n + 1 < LAP_NAME_WORDS; i++) {
    if (text[i] == ' ') {
      if (i > start)
        add_word (self, start, i, width, data);
      start = i + 1;
    } else if (text[i] == '-' && i > start) {
      add_word (self, start, i + 1, width, data);
      start = i + 1;
    }
  }
  i = strlen (text);
  if (i > start)
    add_word (self, start, i, width, data);
  return self;
}

void
lap_name_free (LapName *self)
{
  g_free (self->text);
  g_free (self);
}

/* px between a word and the one before it in a line. */
static double
before (const LapName *self, guint word)
{
  return self->starts[word] > self->ends[word - 1] ? self->space : 0;
}

static gboolean
ends_line (guint32 fit, guint word)
{
  return (fit >> word) & 1;
}

/* px of the line that ends with @last. */
static double
line_width (const LapName *self, guint32 fit, guint last)
{
  double width = self->widths[last];

  for (guint i = last; i > 0 && !ends_line (fit, i - 1); i--)
    width += before (self, i) + self->widths[i - 1];
  return width;
}

guint32
lap_name_fit (const LapName *self, double width, guint lines)
{
  guint32 fit = 0;
  guint shown = 0;
  double x = 0;

  for (; shown < self->n && self->widths[shown] <= width; shown++) {
    double further = shown > 0 ? x + before (self, shown) + self->widths[shown] : self->widths[shown];

    if (shown > 0 && further > width) {
      if (--lines == 0)
        break;
      fit |= 1u << (shown - 1);
      further = self->widths[shown];
    }
    x = further;
  }
  /* Dots stand where words are left out. */
  while (shown > 0 && shown < self->n && line_width (self, fit, shown - 1) + self->dots > width) {
    shown--;
    if (shown > 0)
      fit &= ~(1u << (shown - 1));
  }
  return shown > 0 ? fit | shown << SHOWN_SHIFT : 0;
}

char *
lap_name_set (const LapName *self, guint32 fit)
{
  GString *set = g_string_new (NULL);
  guint shown = fit >> SHOWN_SHIFT;

  for (guint i = 0; i < shown; i++) {
    if (i > 0 && ends_line (fit, i - 1))
      g_string_append_c (set, '\n');
    else if (i > 0 && self->starts[i] > self->ends[i - 1])
      g_string_append_c (set, ' ');
    g_string_append_len (set, self->text + self->starts[i], self->ends[i] - self->starts[i]);
  }
  if (shown < self->n && shown > 0)
    g_string_append (set, DOTS);
  return g_string_free (set, FALSE);
}
