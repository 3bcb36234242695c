/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/stations.h"

#include <glib/gi18n-lib.h>
#include <string.h>

/* From here on it is hard to talk: "vigorous" begins at 6 MET, breathless is a step above (common practice). */
#define BREATHLESS_MET 7.0

static void
station_free (gpointer data)
{
  LapStation *station = data;

  g_free (station->name);
  g_free (station->detail);
  g_free (station->easier);
  g_free (station->harder);
  g_free (station->later);
  g_free (station);
}

/* The words of an option up to its first stop: they are written to stand alone there. Transfer full; NULL for none. */
static char *
short_words (const char *words)
{
  const char *end = words;

  if (words == NULL || *words == '\0')
    return NULL;
  for (; *end != '\0'; end = g_utf8_next_char (end)) {
    gunichar next = g_utf8_get_char (g_utf8_next_char (end));

    if (strchr (",.;:", *end) != NULL && (next == 0 || g_unichar_isspace (next)))
      break;
  }
  return g_strndup (words, end - words);
}

char *
lap_reps_text (guint reps)
{
  int low = LAP_REPS_LOW (reps), high = LAP_REPS_HIGH (reps);

  if (low == high)
    return g_strdup_printf (g_dngettext (GETTEXT_PACKAGE, "%d rep", "%d reps", low), low);
  /* Translators: a range of repetitions, "8–12 reps". */
  return g_strdup_printf (_("%d–%d reps"), low, high);
}

static gboolean
has_main (const LapTimeline *timeline)
{
  for (guint p = 0; p < timeline->n_parts; p++)
    if (timeline->parts[p].part->kind == LAP_PART_MAIN && timeline->parts[p].n_turns > 0)
      return TRUE;
  return FALSE;
}

gboolean
lap_part_is_shown (const LapTimeline *timeline, guint part)
{
  const LapStretch *stretch = &timeline->parts[part];

  return stretch->n_turns > 0 && (stretch->part->kind == LAP_PART_MAIN || !has_main (timeline));
}

/* More letters than this are too many for a poster where a shorter name says the same. */
#define LONG_OPTION 18

/* The block's own words, else the exercise's; where those are long, the name of the exercise one step along. */
static char *
option_words (const LapTimeline *timeline, const LapTask *task, LapOption option)
{
  const LapSay *own = task->say, *base = task->shown != NULL ? task->shown->say : NULL;
  const char *mine = own == NULL ? NULL : option == LAP_OPTION_EASIER ? own->easier : own->harder;
  g_autofree char *words = NULL;
  LapExercise *other;
  double factor = 1;

  if (mine != NULL || base == NULL)
    return short_words (mine);
  words = short_words (option == LAP_OPTION_EASIER ? base->easier : base->harder);
  other = lap_catalogue_shown (timeline->catalogue, task->shown, option, &factor);
  if (other != task->shown && (words == NULL || g_utf8_strlen (words, -1) > LONG_OPTION) &&
      (words == NULL || strlen (lap_exercise_name (other)) < strlen (words)))
    return g_strdup (lap_exercise_name (other));
  return g_steal_pointer (&words);
}

static void
add_piece (GString *line, const char *piece)
{
  if (piece == NULL || *piece == '\0')
    return;
  if (line->len > 0)
    g_string_append (line, "\xc2\xa0· "); /* the dot stays with what it follows */
  g_string_append (line, piece);
}

/* A mat and a wall are no kit to fetch: the line under the title names them once. */
static void
add_kit (GString *line, const LapTask *task)
{
  guint32 mask = task->kit & ~(LAP_BIT (LAP_KIT_MAT) | LAP_BIT (LAP_KIT_WALL) | LAP_BIT (LAP_KIT_PARTNER));
  g_autofree char *kit = lap_words_join (&lap_kit_words, mask);

  add_piece (line, kit);
}

static char *
detail_of (const LapTask *task, const char *load)
{
  GString *line = g_string_new (NULL);
  g_autofree char *reps = task->reps != 0 ? lap_reps_text (task->reps) : NULL;

  add_piece (line, reps);
  add_piece (line, load);
  add_kit (line, task);
  if (task->block->with != 0)
    add_piece (line, _("with a partner"));
  if (task->sides == LAP_SIDES_LEFT)
    add_piece (line, _("left side"));
  if (task->sides == LAP_SIDES_RIGHT)
    add_piece (line, _("right side"));
  if (task->shown != NULL && task->shown == task->exercise && task->option != LAP_OPTION_AS_SHOWN)
    add_piece (line, task->option == LAP_OPTION_EASIER ? _("easier way") : _("harder way"));
  return g_string_free (line, line->len == 0);
}

void
lap_station_without_load (LapStation *station)
{
  g_free (station->detail);
  station->detail = detail_of (station->task, NULL);
}

/* What a later round does differently, in as few words as tell it. */
static char *
change_text (const LapTask *first, const LapTask *task, int round)
{
  GString *line = g_string_new (NULL);
  g_autofree char *reps = task->reps != first->reps && task->reps != 0 ? lap_reps_text (task->reps) : NULL;
  char *text = NULL;

  if (task->shown != first->shown || g_strcmp0 (task->wanted, first->wanted) != 0)
    add_piece (line, lap_task_name (task));
  add_piece (line, reps);
  if (g_strcmp0 (task->load, first->load) != 0)
    add_piece (line, task->load);
  if (line->len > 0)
    text = g_strdup_printf ("%d: %s", round, line->str);
  g_string_free (line, TRUE);
  return text;
}

static char *
later_of (const LapTimeline *timeline, const LapStretch *stretch, const LapTurn *turn)
{
  GString *line = g_string_new (NULL);
  const LapTask *before = &timeline->tasks[turn->task];

  for (guint i = 0; i < stretch->n_turns; i++) {
    const LapTurn *other = &timeline->turns[stretch->turn + i];
    g_autofree char *text = NULL;

    if (other->block != turn->block || other->round <= turn->round || other->task == before - timeline->tasks)
      continue;
    text = change_text (before, &timeline->tasks[other->task], other->round);
    add_piece (line, text);
    before = &timeline->tasks[other->task];
  }
  return g_string_free (line, line->len == 0);
}

static LapStation *
station_new (const LapTimeline *timeline, const LapStretch *stretch, const LapTurn *turn, guint number)
{
  LapStation *station = g_new0 (LapStation, 1);
  const LapTask *task = &timeline->tasks[turn->task];
  int sets = stretch->part->run == LAP_RUN_ON_THE_MINUTE ? 1 : stretch->part->sets;

  station->number = number;
  station->turn = turn;
  station->task = task;
  station->name = g_strdup (lap_task_name (task));
  station->detail = detail_of (task, task->load);
  station->swaps = task->sides == LAP_SIDES_SPLIT;
  station->easier = option_words (timeline, task, LAP_OPTION_EASIER);
  station->harder = option_words (timeline, task, LAP_OPTION_HARDER);
  station->breathless = task->met >= BREATHLESS_MET ||
                        (task->shown != NULL && task->shown->impact == LAP_IMPACT_HIGH);
  station->work = turn->work / sets;
  station->rest = turn->rest;
  return station;
}

GPtrArray *
lap_stations_in (const LapTimeline *timeline, guint part, guint round)
{
  GPtrArray *stations = g_ptr_array_new_with_free_func (station_free);
  const LapStretch *stretch = &timeline->parts[part];

  for (guint i = 0; i < stretch->n_turns; i++) {
    const LapTurn *turn = &timeline->turns[stretch->turn + i];

    if (turn->round == round)
      g_ptr_array_add (stations, station_new (timeline, stretch, turn, stations->len + 1));
  }
  return stations;
}

GPtrArray *
lap_stations_of (const LapTimeline *timeline, guint part)
{
  GPtrArray *stations = lap_stations_in (timeline, part, 1);

  for (guint i = 0; i < stations->len; i++) {
    LapStation *station = g_ptr_array_index (stations, i);

    station->later = later_of (timeline, &timeline->parts[part], station->turn);
  }
  return stations;
}
