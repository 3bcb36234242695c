/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/wrap.h"

#include <string.h>

/* What is never parted: a word, or a piece of one up to its hyphen. */
typedef struct {
  guint  start, length; /* bytes */
  double width;         /* ems */
  guint  spaced;        /* white space stands before it */
} Token;

struct _LapWrap {
  const LapMeasure *measure;
  LapWeight         weight;
  char             *text;
  GArray           *tokens;
  double            space;
  gboolean          rtl, descends;
};

typedef struct {
  guint token;
  guint offset; /* bytes of the token that earlier lines took */
} Cursor;

typedef struct {
  guint    start, length; /* bytes */
  gboolean broken, hyphen;
  double   width;         /* ems */
} Line;

static double
width_of (const LapWrap *wrap, const char *text, gssize bytes)
{
  return wrap->measure->width (wrap->measure->data, wrap->weight, text, bytes);
}

static void
add_token (LapWrap *wrap, const char *from, const char *to, guint spaced)
{
  Token token = { from - wrap->text, to - from, width_of (wrap, from, to - from), spaced };

  if (to > from)
    g_array_append_val (wrap->tokens, token);
}

/* A no-break space (U+00A0, U+202F) is a letter here. */
static gboolean
is_space (gunichar c)
{
  return g_unichar_isspace (c) && c != 0xa0 && c != 0x202f;
}

/* White space of any kind and length becomes one blank, none at the ends. */
static char *
collapse (const char *text)
{
  GString *out = g_string_new (NULL);

  for (; *text != '\0'; text = g_utf8_next_char (text)) {
    gunichar c = g_utf8_get_char (text);

    if (!is_space (c))
      g_string_append_unichar (out, c);
    else if (out->len > 0 && out->str[out->len - 1] != ' ')
      g_string_append_c (out, ' ');
  }
  if (out->len > 0 && out->str[out->len - 1] == ' ')
    g_string_truncate (out, out->len - 1);
  return g_string_free (out, FALSE);
}

/* Figures stand on the line: below them is room. */
static gboolean
descends (const char *text)
{
  for (; *text != '\0'; text = g_utf8_next_char (text)) {
    gunichar c = g_utf8_get_char (text);

    if (!g_unichar_isdigit (c) && c != 0x2013 && c != ':' && c != '.')
      return TRUE;
  }
  return FALSE;
}

static gboolean
ends_token (gunichar c)
{
  return c == '-' || c == '/' || c == 0x2010 || c == 0x2013 || c == 0x2014;
}

static void
cut_tokens (LapWrap *wrap)
{
  const char *from = wrap->text, *p = wrap->text;
  guint spaced = 0;

  for (; *p != '\0'; p = g_utf8_next_char (p)) {
    gunichar c = g_utf8_get_char (p);
    const char *next = g_utf8_next_char (p);

    if (is_space (c)) {
      add_token (wrap, from, p, spaced);
      from = next;
      spaced = 1;
    } else if (ends_token (c) && p > from && g_unichar_isalpha (g_utf8_get_char (next))) {
      add_token (wrap, from, next, spaced);
      from = next;
      spaced = 0;
    }
  }
  add_token (wrap, from, p, spaced);
}

LapWrap *
lap_wrap_new (const LapMeasure *measure, LapWeight weight, const char *text)
{
  LapWrap *wrap = g_new0 (LapWrap, 1);

  wrap->measure = measure;
  wrap->weight = weight;
  wrap->text = collapse (text != NULL ? text : "");
  wrap->descends = descends (wrap->text);
  wrap->tokens = g_array_new (FALSE, FALSE, sizeof (Token));
  wrap->space = width_of (wrap, " ", 1);
  wrap->rtl = measure->rtl (measure->data, wrap->text);
  cut_tokens (wrap);
  return wrap;
}

void
lap_wrap_free (LapWrap *wrap)
{
  g_free (wrap->text);
  g_array_unref (wrap->tokens);
  g_free (wrap);
}

double
lap_wrap_longest (const LapWrap *wrap)
{
  const LapFont *font = wrap->measure->font (wrap->measure->data, wrap->weight);
  double longest = 0;

  for (guint i = 0; i < wrap->tokens->len; i++)
    longest = MAX (longest, g_array_index (wrap->tokens, Token, i).width);
  return longest / font->cap;
}

static gboolean
takes_hyphen (gunichar c)
{
  GUnicodeScript script = g_unichar_get_script (c);

  return g_unichar_isalpha (c) && (script == G_UNICODE_SCRIPT_LATIN || script == G_UNICODE_SCRIPT_GREEK ||
                                   script == G_UNICODE_SCRIPT_CYRILLIC);
}

/* Whether a syllable may begin at @p, three letters or more into a word of Latin script and before its last two: a
 * consonant before a vowel, not inside a sound that two or three letters write. Without a dictionary of each language
 * it is a guess that reads better than a break anywhere. */
static gboolean
begins_syllable (const char *from, const char *p, const char *end)
{
  static const char *const inside[] = { "ch", "ck", "ph", "qu", "sh", "th", "bl", "cl", "fl", "gl", "kl", "pl", "br",
                                        "cr", "dr", "fr", "gr", "kr", "pr", "tr" };
  static const char vowels[] = "aeiouyäöüáéíóúàèìòùâêîôûåæøœ";
  const char *next = g_utf8_next_char (p);

  if (g_utf8_pointer_to_offset (from, p) < 3 || next >= end || g_utf8_next_char (next) >= end ||
      !takes_hyphen (g_utf8_get_char (p)) || g_utf8_strchr (vowels, -1, g_utf8_get_char (p)) != NULL ||
      g_utf8_strchr (vowels, -1, g_unichar_tolower (g_utf8_get_char (next))) == NULL)
    return FALSE;
  for (guint i = 0; i < G_N_ELEMENTS (inside); i++)
    if (g_ascii_strncasecmp (p - 1, inside[i], 2) == 0)
      return FALSE;
  return TRUE;
}

/* As much of a word as is no wider than @avail, up to a syllable where there is one, at least one letter with its
 * marks. */
static void
break_token (LapWrap *wrap, const Token *token, guint offset, double avail, Line *line)
{
  const char *from = wrap->text + token->start + offset, *end = wrap->text + token->start + token->length;
  const char *p = from;
  const char *syllable = NULL;
  double hyphen = width_of (wrap, "-", 1), width = 0, syllable_width = 0;
  gunichar last = 0;

  while (p < end) {
    const char *next = g_utf8_next_char (p);
    double more;

    while (next < end && g_unichar_ismark (g_utf8_get_char (next)))
      next = g_utf8_next_char (next);
    more = width_of (wrap, p, next - p);
    if (begins_syllable (from, p, end)) {
      syllable = p;
      syllable_width = width;
    }
    if (p > from && width + more + (next < end && takes_hyphen (g_utf8_get_char (p)) ? hyphen : 0) > avail)
      break;
    width += more;
    last = g_utf8_get_char (p);
    p = next;
  }
  if (p < end && syllable != NULL) {
    p = syllable;
    width = syllable_width;
    last = g_utf8_get_char (g_utf8_prev_char (p));
  }
  line->start = from - wrap->text;
  line->length = p - from;
  line->broken = p < end;
  line->hyphen = line->broken && takes_hyphen (last);
  line->width = width + (line->hyphen ? hyphen : 0);
}

/* The next line no wider than @avail ems; FALSE at the end. */
static gboolean
next_line (LapWrap *wrap, Cursor *cursor, double avail, Line *line)
{
  *line = (Line) { 0 };
  if (cursor->token < wrap->tokens->len && (cursor->offset > 0 ||
      g_array_index (wrap->tokens, Token, cursor->token).width > avail)) {
    const Token *token = &g_array_index (wrap->tokens, Token, cursor->token);

    break_token (wrap, token, cursor->offset, avail, line);
    cursor->offset += line->length;
    if (line->broken)
      return TRUE;
    cursor->offset = 0;
    cursor->token++;
  }
  for (; cursor->token < wrap->tokens->len; cursor->token++) {
    const Token *token = &g_array_index (wrap->tokens, Token, cursor->token);
    double more = token->width + (line->length > 0 && token->spaced ? wrap->space : 0);

    if (line->length > 0 && line->width + more > avail)
      break;
    if (line->length == 0 && token->width > avail)
      break;
    if (line->length == 0)
      line->start = token->start;
    line->width += more;
    line->length = token->start + token->length - line->start;
  }
  return line->length > 0;
}

/* The next line, the first one from the indent on: empty where its word has no room there. */
static gboolean
next_within (LapWrap *wrap, const LapType *type, double width, double em, guint n, Cursor *cursor, Line *line)
{
  double indent = n == 0 ? type->indent : 0, avail = (width - indent) / em + 1e-6;

  if (indent > 0 && wrap->tokens->len > 0 && g_array_index (wrap->tokens, Token, 0).width > avail) {
    *line = (Line) { 0 };
    return TRUE;
  }
  return next_line (wrap, cursor, avail, line);
}

static double
height_of (const LapWrap *wrap, const LapType *type, guint lines)
{
  const LapFont *font = wrap->measure->font (wrap->measure->data, wrap->weight);
  double em = type->cap / font->cap;

  if (lines == 0)
    return 0;
  return type->cap + (lines - 1) * type->leading * em + (wrap->descends ? font->descent * em : 0);
}

LapFit
lap_wrap_fit (LapWrap *wrap, const LapType *type, double width)
{
  const LapFont *font = wrap->measure->font (wrap->measure->data, wrap->weight);
  double em = type->cap / font->cap;
  Cursor cursor = { 0 };
  LapFit fit = { 0 };
  Line line;

  while (next_within (wrap, type, width, em, fit.lines, &cursor, &line)) {
    fit.last = line.width * em + (fit.lines == 0 ? type->indent : 0);
    fit.width = MAX (fit.width, fit.last);
    fit.lines++;
    fit.broken += line.broken;
  }
  fit.height = height_of (wrap, type, fit.lines);
  return fit;
}

static void
put_line (LapWrap *wrap, const Line *line, const LapMark *style, LapPage *page, double width, double align)
{
  g_autofree char *text = g_strdup_printf ("%.*s%s", (int) line->length, wrap->text + line->start,
                                           line->hyphen ? "-" : "");
  LapMark *mark = lap_page_text (page, style, text, -1);

  mark->width = width_of (wrap, text, -1) * mark->em;
  mark->x += (width - mark->width) * align;
}

double
lap_wrap_put (LapWrap *wrap, const LapType *type, LapPage *page, double x, double y, double width, double align)
{
  const LapFont *font = wrap->measure->font (wrap->measure->data, wrap->weight);
  double em = type->cap / font->cap;
  LapMark style = { .x = x, .height = (font->ascent + (wrap->descends ? font->descent : 0)) * em,
                    .fill = type->role, .em = em,
                    .cap = type->cap, .weight = wrap->weight, .rtl = wrap->rtl, .read = type->read };
  Cursor cursor = { 0 };
  Line line;
  guint n = 0;

  for (; next_within (wrap, type, width, em, n, &cursor, &line); n++) {
    double indent = n == 0 ? type->indent : 0;

    style.x = x + indent;
    style.baseline = y + type->cap + n * type->leading * em;
    style.y = style.baseline - font->ascent * em;
    if (line.length > 0)
      put_line (wrap, &line, &style, page, width - indent, align);
  }
  return height_of (wrap, type, n);
}

double
lap_wrap_pitch (const LapWrap *wrap, const LapType *type)
{
  return type->cap / wrap->measure->font (wrap->measure->data, wrap->weight)->cap * type->leading;
}

LapType
lap_wrap_largest (LapWrap *wrap, LapType type, double width, double height, double least)
{
  double low = least, high = type.cap;

  for (int i = 0; i < 12; i++) {
    LapFit fit;

    type.cap = i == 0 ? high : (low + high) / 2;
    fit = lap_wrap_fit (wrap, &type, width);
    if (fit.height <= height && fit.broken == 0) {
      if (i == 0)
        return type;
      low = type.cap;
    } else {
      high = type.cap;
    }
  }
  type.cap = low;
  return type;
}

double
lap_text_put (const LapMeasure *measure, LapWeight weight, const char *text, const LapType *type, LapPage *page,
              double x, double y, double width, double align)
{
  g_autoptr (LapWrap) wrap = lap_wrap_new (measure, weight, text);

  return lap_wrap_put (wrap, type, page, x, y, width, align);
}
