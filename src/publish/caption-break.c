/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Where a long text is broken into captions: of all ways the one with the least cost, found from the end. A
 * caption costs something, and so does breaking within a sentence, more within what commas hold together, and so
 * do lines that are of different lengths.
 */
#include "publish/captions.h"

#include <math.h>

#define COST_CAPTION 10.0
#define COST_INSIDE  8.0 /* ends within a sentence */
#define COST_TORN    8.0 /* and not even at a comma */
#define COST_LONE    40.0 /* the first word of a sentence stays behind alone */
#define COST_UNEVEN  0.1 /* for each character that one line is longer than the other */
#define COST_SHORT   0.003 /* for the square of the characters there would be room for */

#define MOST (2 * LAP_CAPTION_LINE + 1) /* characters of two lines and the blank between them */

typedef struct {
  GPtrArray *words;
  guint     *lengths; /* characters */
  double    *costs;   /* of all from a word on */
  guint     *next;    /* the word that the next caption begins with */
  guint     *line;    /* the word that the second line begins with, or `next` */
} Breaking;

/* Words that no line has room for are cut, but not before a mark that belongs to the letter in front. */
static void
add_word (GPtrArray *words, const char *word)
{
  const char *at = word;

  for (guint n = 0; *at != '\0'; at = g_utf8_next_char (at), n++)
    if (n >= LAP_CAPTION_LINE && !g_unichar_ismark (g_utf8_get_char (at))) {
      g_ptr_array_add (words, g_strndup (word, at - word));
      word = at;
      n = 0;
    }
  if (*word != '\0')
    g_ptr_array_add (words, g_strdup (word));
}

static GPtrArray *
words_of (const char *text)
{
  GPtrArray *words = g_ptr_array_new_with_free_func (g_free);
  g_autofree char *clean = g_strdelimit (g_strdup (text), "\t\r\n\v\f", ' ');
  g_auto (GStrv) parts = g_strsplit (clean, " ", -1);

  for (guint i = 0; parts[i] != NULL; i++)
    add_word (words, parts[i]);
  return words;
}

static gboolean
ends_with_any (const Breaking *b, guint word, const char *const *marks)
{
  for (guint i = 0; marks[i] != NULL; i++)
    if (g_str_has_suffix (g_ptr_array_index (b->words, word), marks[i]))
      return TRUE;
  return FALSE;
}

/* What it costs to break in front of word @next. */
static double
cost_of_end (const Breaking *b, guint next)
{
  static const char *const stops[] = { ".", "!", "?", "…", ":", "。", "！", "？", "؟", NULL };
  static const char *const commas[] = { ",", ";", "–", "—", "，", "、", "،", ")", NULL };
  double cost = COST_INSIDE;

  if (next == b->words->len || ends_with_any (b, next - 1, stops))
    return 0;
  if (!ends_with_any (b, next - 1, commas))
    cost += COST_TORN;
  if (next > 1 && ends_with_any (b, next - 2, stops))
    cost += COST_LONE;
  return cost;
}

/* Characters of words @from until @to with blanks between. */
static guint
width (const Breaking *b, guint from, guint to)
{
  guint sum = to - from - 1;

  for (guint i = from; i < to; i++)
    sum += b->lengths[i];
  return sum;
}

/* The best place for the second line of words @from until @to; @to where one line has room. HUGE_VAL for none. */
static double
cost_of_lines (const Breaking *b, guint from, guint to, guint *line)
{
  double best = HUGE_VAL;

  *line = to;
  if (width (b, from, to) <= LAP_CAPTION_LINE)
    return 0;
  for (guint i = from + 1; i < to; i++) {
    guint above = width (b, from, i), below = width (b, i, to);
    double cost = COST_UNEVEN * fabs ((double) above - below) + cost_of_end (b, i) / 2;

    if (above <= LAP_CAPTION_LINE && below <= LAP_CAPTION_LINE && cost < best) {
      best = cost;
      *line = i;
    }
  }
  return best;
}

static void
solve (Breaking *b)
{
  guint n = b->words->len;

  b->costs[n] = 0;
  for (guint from = n; from-- > 0;) {
    b->costs[from] = HUGE_VAL;
    for (guint to = from + 1; to <= n && width (b, from, to) <= MOST; to++) {
      guint line, room = MOST - width (b, from, to);
      double cost = COST_CAPTION + COST_SHORT * room * room + cost_of_lines (b, from, to, &line) +
                    cost_of_end (b, to) + b->costs[to];

      if (cost < b->costs[from]) {
        b->costs[from] = cost;
        b->next[from] = to;
        b->line[from] = line;
      }
    }
  }
}

static char *
caption (const Breaking *b, guint from)
{
  GString *text = g_string_new (NULL);

  for (guint i = from; i < b->next[from]; i++) {
    if (i > from)
      g_string_append_c (text, i == b->line[from] ? '\n' : ' ');
    g_string_append (text, g_ptr_array_index (b->words, i));
  }
  return g_string_free (text, FALSE);
}

GPtrArray *
lap_caption_break (const char *text)
{
  GPtrArray *captions = g_ptr_array_new_with_free_func (g_free);
  g_autoptr (GPtrArray) words = words_of (text);
  guint n = words->len;
  g_autofree guint *lengths = g_new (guint, n + 1), *next = g_new (guint, n + 1), *line = g_new (guint, n + 1);
  g_autofree double *costs = g_new (double, n + 1);
  Breaking b = { words, lengths, costs, next, line };

  for (guint i = 0; i < n; i++)
    lengths[i] = g_utf8_strlen (g_ptr_array_index (words, i), -1);
  solve (&b);
  for (guint from = 0; from < n; from = next[from])
    g_ptr_array_add (captions, caption (&b, from));
  return captions;
}
