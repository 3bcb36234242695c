/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/captions.h"

#include "publish/film.h"
#include "publish/webvtt.h"
#include "talk/script.h"

#define READ_WORD  (1 / 3.0) /* seconds a word takes to be read: 180 words a minute */
#define READ_LEAST 1.2       /* seconds that any caption stays (BBC: 0.3 s a word, 1.2 s for four) */
#define LAG        1.5       /* seconds that a caption may be late (BBC) */

/* A caption on the session clock. */
typedef struct {
  double start, end;
  char  *text;
} Caption;

static void
caption_clear (gpointer data)
{
  g_free (((Caption *) data)->text);
}

static double
reading (const char *text)
{
  return MAX (READ_LEAST, lap_count_words (text) * READ_WORD);
}

/* The pieces of one line, which may stay until @most: each for its share of the words, and as long as it is read
 * where there is the time. When the words are too many for their seconds all have the same share of what there
 * is. */
static void
add_line (GArray *captions, const LapLine *line, double most)
{
  g_autoptr (GPtrArray) pieces = lap_caption_break (line->text);
  int words = MAX (1, lap_count_words (line->text)), said = 0;
  double need = 0, end = line->start, scale;

  for (guint i = 0; i < pieces->len; i++)
    need += reading (g_ptr_array_index (pieces, i));
  scale = MIN (1, (most - line->start) / MAX (need, 1e-9));
  for (guint i = 0; i < pieces->len; i++) {
    const char *text = g_ptr_array_index (pieces, i);
    Caption caption = { .start = end, .text = g_strdup (text) };

    said += lap_count_words (text);
    /* Not before its turn to be said, and not so late that it can't be read. */
    end = MAX (line->start + line->seconds * said / words, caption.start + reading (text) * scale);
    caption.end = MIN (end, most);
    end = caption.end;
    g_array_append_val (captions, caption);
  }
}

static GArray *
captions_of (LapTimeline *timeline)
{
  g_autoptr (LapEffort) effort = lap_effort_new (timeline);
  g_autoptr (LapTalk) talk = lap_talk_new (timeline, effort);
  g_autoptr (LapScript) script = lap_script_new (talk);
  GArray *captions = g_array_new (FALSE, FALSE, sizeof (Caption));

  g_array_set_clear_func (captions, caption_clear);
  for (guint i = 0; i < script->n; i++)
    add_line (captions, &script->lines[i], i + 1 < script->n ? script->lines[i + 1].start : timeline->length);
  return captions;
}

gboolean
lap_captions_write (const LapPublication *what, const char *suffix, LapOutput *output, GError **error)
{
  g_autoptr (LapFilm) film = lap_film_new (what, error);
  g_autoptr (GArray) captions = NULL;
  GString *vtt;
  guint n = 0;

  if (film == NULL)
    return FALSE;
  captions = captions_of (what->timeline);
  vtt = lap_webvtt_new (NULL);
  for (guint p = 0; p < film->n; p++)
    for (guint i = 0; i < captions->len; i++) {
      const Caption *caption = &g_array_index (captions, Caption, i);
      double in, out;

      if (lap_piece_of (&film->pieces[p], caption->start, caption->end, &in, &out))
        lap_webvtt_add (vtt, ++n, in, out, caption->text);
    }
  return lap_output_write_text (output, vtt, error);
}
