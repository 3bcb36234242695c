/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/finding.h"

#include "store/index.h"

/* Warnings whose words are made: a plan with more has other troubles than being searched. */
#define MOST_WARNINGS 300

static void
add (GString *words, const char *text)
{
  if (text != NULL)
    g_string_append_printf (words, " %s", text);
}

static void
add_say (GString *words, const LapSay *say)
{
  if (say == NULL)
    return;
  add (words, say->setup);
  for (guint i = 0; say->cues != NULL && say->cues[i] != NULL; i++)
    add (words, say->cues[i]);
  add (words, say->fault);
  add (words, say->easier);
  add (words, say->harder);
}

static gpointer
place_of (guint part, guint block)
{
  return GUINT_TO_POINTER ((part << 16) | (block + 1));
}

/* What the warnings at each block say. */
static GHashTable *
words_of_warnings (const LapCheckup *checkup)
{
  GHashTable *places = g_hash_table_new_full (NULL, NULL, NULL, g_free);

  for (guint i = 0; i < MIN (lap_checkup_n (checkup), MOST_WARNINGS); i++) {
    const LapWarning *warning = lap_checkup_nth (checkup, i);
    gpointer place = place_of (warning->part, warning->block);
    g_autofree char *message = NULL;
    const char *others;

    if (warning->part < 0 || warning->block < 0 || warning->fine)
      continue;
    message = lap_warning_message (checkup, warning);
    others = g_hash_table_lookup (places, place);
    g_hash_table_insert (places, place, g_strconcat (others != NULL ? others : "", " ", message, NULL));
  }
  return places;
}

static char *
words_of_task (const LapTask *task, const char *warnings)
{
  GString *words = g_string_new (NULL);

  if (task->shown != NULL)
    add (words, lap_exercise_name (task->shown));
  else
    add (words, task->wanted);
  add_say (words, task->say != NULL ? task->say : task->shown != NULL ? task->shown->say : NULL);
  add (words, task->note);
  add (words, task->block->talk);
  add (words, task->block->pause);
  add (words, warnings);
  return g_string_free (words, FALSE);
}

GArray *
lap_find_in_score (const LapScore *score, const LapCheckup *checkup, const char *text)
{
  const LapTimeline *timeline = score->timeline;
  GArray *found = g_array_new (FALSE, FALSE, sizeof (guint));
  g_autoptr (GHashTable) warnings = words_of_warnings (checkup), blocks = g_hash_table_new (NULL, NULL);
  g_autofree guint8 *seen = g_new0 (guint8, timeline->n_tasks + 1);
  g_auto (GStrv) folded = lap_index_fold (text);
  g_autofree char *wanted = g_strjoinv (NULL, folded);

  for (guint i = 0; folded[0] != NULL && i < score->n; i++) {
    const LapBox *box = &score->boxes[i];
    gpointer place = place_of (box->part, box->block);
    g_autofree char *words = NULL;

    /* A task is a block as it is in some of its rounds: looked at once. */
    if (box->task == LAP_NO_TASK || seen[box->task])
      continue;
    seen[box->task] = 1;
    words = words_of_task (&timeline->tasks[box->task], g_hash_table_lookup (warnings, place));
    if (!g_hash_table_contains (blocks, place) && g_str_match_string (wanted, words, TRUE)) {
      g_hash_table_add (blocks, place);
      g_array_append_val (found, i);
    }
  }
  return found;
}

/* What the warnings about each class say, by the class. */
static GHashTable *
words_of_classes (const LapCheckup *checkup)
{
  GHashTable *classes = g_hash_table_new_full (NULL, NULL, NULL, g_free);

  for (guint i = 0; i < MIN (lap_checkup_n (checkup), MOST_WARNINGS); i++) {
    const LapWarning *warning = lap_checkup_nth (checkup, i);
    g_autofree char *message = warning->fine ? NULL : lap_warning_message (checkup, warning);

    for (guint k = 0; message != NULL && k < warning->n_classes; k++) {
      LapClass *c = lap_warning_class (checkup, warning, k);
      const char *others = g_hash_table_lookup (classes, c);

      g_hash_table_insert (classes, c, g_strconcat (others != NULL ? others : "", " ", message, NULL));
    }
  }
  return classes;
}

static gboolean
class_has (LapWeek *week, const LapClass *c, const char *warnings, const char *wanted)
{
  g_autoptr (GString) words = g_string_new (lap_class_title (c));
  LapRoom *room = lap_week_room (week, c->room);
  LapCoach *coach = lap_week_coach (week, c->coach);
  g_autofree char *session = c->session != NULL ? g_path_get_basename (c->session) : NULL;

  add (words, c->kind);
  add (words, c->for_whom);
  add (words, room != NULL ? lap_room_title (room) : NULL);
  add (words, coach != NULL ? lap_coach_title (coach) : NULL);
  add (words, session);
  add (words, warnings);
  return g_str_match_string (wanted, words->str, TRUE);
}

static int
by_time (gconstpointer a, gconstpointer b, gpointer week)
{
  const guint x = *(const guint *) a, y = *(const guint *) b;
  const LapClass *first = lap_list_nth (((LapWeek *) week)->classes, x);
  const LapClass *second = lap_list_nth (((LapWeek *) week)->classes, y);
  guint day = first->day, other = second->day; /* -1 comes last */

  if (day != other)
    return day < other ? -1 : 1;
  if (first->start != second->start)
    return first->start < second->start ? -1 : 1;
  return x < y ? -1 : 1;
}

GArray *
lap_find_in_week (LapWeek *week, const LapCheckup *checkup, const char *text)
{
  GArray *found = g_array_new (FALSE, FALSE, sizeof (guint));
  g_autoptr (GHashTable) warnings = words_of_classes (checkup);
  g_auto (GStrv) folded = lap_index_fold (text);
  g_autofree char *wanted = g_strjoinv (NULL, folded);

  for (guint i = 0; folded[0] != NULL && i < lap_list_n (week->classes); i++) {
    LapClass *c = lap_list_nth (week->classes, i);

    if (class_has (week, c, g_hash_table_lookup (warnings, c), wanted))
      g_array_append_val (found, i);
  }
  g_array_sort_with_data (found, by_time, week);
  return found;
}
