/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/chapters.h"

#include "publish/film.h"
#include "publish/webvtt.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#define SHORTEST 10 /* seconds; less joins the chapter before (common practice) */

static void
chapter_clear (gpointer data)
{
  g_free (((LapChapter *) data)->title);
}

static void
add (GArray *chapters, int start, char *title)
{
  LapChapter chapter = { .start = start, .title = title };

  g_array_append_val (chapters, chapter);
}

/* What people see: a title on two lines would be two lines of a list. */
static char *
one_line (const char *title)
{
  return g_strdelimit (g_strdup (title), "\r\n", ' ');
}

static void
add_turn (GArray *chapters, const LapTimeline *timeline, const LapTurn *turn)
{
  g_autofree char *name = one_line (lap_task_name (&timeline->tasks[turn->task]));

  if (timeline->parts[turn->part].part->rounds < 2)
    add (chapters, turn->start, g_steal_pointer (&name));
  else
    /* Translators: a chapter: "Round 2: Squat". */
    add (chapters, turn->start, g_strdup_printf (_("Round %1$d: %2$s"), turn->round, name));
}

/* A main part without exercises is talk and pause: it joins what is before, unless nothing is. */
static void
add_part (GArray *chapters, const LapTimeline *timeline, guint part)
{
  const LapStretch *stretch = &timeline->parts[part];
  gboolean by_turn = stretch->part->kind == LAP_PART_MAIN && stretch->part->run != LAP_RUN_OWN_PACE;

  if (stretch->end == stretch->start)
    return;
  if (!by_turn || (stretch->n_turns == 0 && chapters->len == 0))
    add (chapters, stretch->start, one_line (lap_part_title (stretch->part)));
  else
    for (guint i = 0; i < stretch->n_turns; i++)
      add_turn (chapters, timeline, &timeline->turns[stretch->turn + i]);
}

/* Ends each where the next one begins. How short one is counts before any of them has joined another. */
static GArray *
join (GArray *loose, int length)
{
  GArray *chapters = g_array_new (FALSE, FALSE, sizeof (LapChapter));

  g_array_set_clear_func (chapters, chapter_clear);
  for (guint i = 0; i < loose->len; i++) {
    LapChapter chapter = g_array_index (loose, LapChapter, i);
    gboolean first = chapters->len == 0;

    chapter.end = i + 1 < loose->len ? g_array_index (loose, LapChapter, i + 1).start : length;
    if (first)
      chapter.start = 0;
    if (first || chapter.end - chapter.start >= SHORTEST) {
      g_array_append_val (chapters, chapter);
    } else {
      g_array_index (chapters, LapChapter, chapters->len - 1).end = chapter.end;
      g_free (chapter.title);
    }
  }
  return chapters;
}

GArray *
lap_chapters_of (const LapTimeline *timeline)
{
  g_autoptr (GArray) loose = g_array_new (FALSE, FALSE, sizeof (LapChapter));

  for (guint i = 0; i < timeline->n_parts; i++)
    add_part (loose, timeline, i);
  return join (loose, timeline->length);
}

/* A chapter as the film has it. */
typedef struct {
  double      start, end;
  const char *title;
} Seen;

/* Those of @chapters that can be seen, in the order of the film, each to the start of the next. */
static GArray *
seen_of (GArray *chapters, const LapFilm *film)
{
  GArray *list = g_array_new (FALSE, FALSE, sizeof (Seen));
  double end = 0;

  for (guint p = 0; p < film->n; p++)
    for (guint i = 0; i < chapters->len; i++) {
      const LapChapter *chapter = &g_array_index (chapters, LapChapter, i);
      Seen seen = { 0, 0, chapter->title };

      if (!lap_piece_of (&film->pieces[p], chapter->start, chapter->end, &seen.start, &seen.end))
        continue;
      end = seen.end;
      if (list->len == 0)
        seen.start = 0;
      if (list->len > 0 && g_array_index (list, Seen, list->len - 1).title == chapter->title)
        continue;
      g_array_append_val (list, seen);
    }
  for (guint i = 0; i < list->len; i++)
    g_array_index (list, Seen, i).end = i + 1 < list->len ? g_array_index (list, Seen, i + 1).start : end;
  return list;
}

typedef void (*EachFunc) (GString *text, guint n, const Seen *seen);

static gboolean
each (GString *text, const LapPublication *what, EachFunc func, GError **error)
{
  g_autoptr (GArray) chapters = lap_chapters_of (what->timeline);
  g_autoptr (LapFilm) film = lap_film_new (what, error);
  g_autoptr (GArray) list = film != NULL ? seen_of (chapters, film) : NULL;

  for (guint i = 0; list != NULL && i < list->len; i++)
    func (text, i + 1, &g_array_index (list, Seen, i));
  return film != NULL;
}

static void
add_cue (GString *text, guint n, const Seen *seen)
{
  lap_webvtt_add (text, n, seen->start, seen->end, seen->title);
}

/* Whole seconds, never before the picture that belongs to it. */
static void
add_line (GString *text, guint n, const Seen *seen)
{
  g_autofree char *clock = lap_clock_text (ceil (seen->start));

  g_string_append_printf (text, "%s %s\n", clock, seen->title);
}

gboolean
lap_chapter_list_add (GString *text, const LapPublication *what, GError **error)
{
  return each (text, what, add_line, error);
}

/* Writes @text, which is freed, unless making it failed. */
static gboolean
write_made (LapOutput *output, GString *text, gboolean made, GError **error)
{
  if (made)
    return lap_output_write_text (output, text, error);
  g_string_free (text, TRUE);
  return FALSE;
}

gboolean
lap_chapters_write (const LapPublication *what, const char *suffix, LapOutput *output, GError **error)
{
  GString *vtt = lap_webvtt_new (NULL);

  return write_made (output, vtt, each (vtt, what, add_cue, error), error);
}

gboolean
lap_chapter_list_write (const LapPublication *what, const char *suffix, LapOutput *output, GError **error)
{
  GString *text = g_string_new (NULL);

  return write_made (output, text, each (text, what, add_line, error), error);
}
