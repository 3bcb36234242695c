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

/* Told of each chapter that can be seen in the film. */
typedef void (*EachFunc) (GString *text, guint n, double start, double end, const char *title);

static void
each (GString *text, const LapPublication *what, EachFunc func)
{
  g_autoptr (GArray) chapters = lap_chapters_of (what->timeline);
  guint n = 0;

  for (guint i = 0; i < chapters->len; i++) {
    const LapChapter *chapter = &g_array_index (chapters, LapChapter, i);
    double end = lap_film_at (what, chapter->end);

    if (end <= 0)
      continue;
    func (text, n, n == 0 ? 0 : lap_film_at (what, chapter->start), end, chapter->title);
    n++;
  }
}

static void
add_cue (GString *text, guint n, double start, double end, const char *title)
{
  lap_webvtt_add (text, n + 1, start, end, title);
}

/* Whole seconds, never before the picture that belongs to it. */
static void
add_line (GString *text, guint n, double start, double end, const char *title)
{
  g_autofree char *clock = lap_clock_text (ceil (start));

  g_string_append_printf (text, "%s %s\n", clock, title);
}

gboolean
lap_chapters_write (const LapPublication *what, const char *suffix, LapOutput *output, GError **error)
{
  GString *vtt = lap_webvtt_new (NULL);

  each (vtt, what, add_cue);
  return lap_output_write_text (output, vtt, error);
}

void
lap_chapter_list_add (GString *text, const LapPublication *what)
{
  each (text, what, add_line);
}

gboolean
lap_chapter_list_write (const LapPublication *what, const char *suffix, LapOutput *output, GError **error)
{
  GString *text = g_string_new (NULL);

  lap_chapter_list_add (text, what);
  return lap_output_write_text (output, text, error);
}
