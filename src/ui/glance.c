/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/glance.h"

#include "checks/checks.h"
#include "store/documents.h"
#include "store/session-folder.h"

static char
column (double height, gboolean of_main)
{
  return (of_main ? 'A' : 'a') + CLAMP ((int) (height * LAP_SHAPE_HEIGHTS), 0, LAP_SHAPE_HEIGHTS - 1);
}

static gboolean
is_main (const LapTimeline *timeline, double second)
{
  for (guint i = 0; i < timeline->n_parts; i++)
    if (timeline->parts[i].start <= second && second < timeline->parts[i].end)
      return timeline->parts[i].part->kind == LAP_PART_MAIN;
  return FALSE;
}

static char *
session_shape (const LapTimeline *timeline)
{
  g_autoptr (LapEffort) effort = NULL;
  char *shape;

  if (timeline->length == 0)
    return g_strdup ("");
  effort = lap_effort_new ((LapTimeline *) timeline);
  shape = g_new0 (char, LAP_SHAPE_COLUMNS + 1);
  for (guint i = 0; i < LAP_SHAPE_COLUMNS; i++) {
    double start = (double) timeline->length * i / LAP_SHAPE_COLUMNS;
    double end = (double) timeline->length * (i + 1) / LAP_SHAPE_COLUMNS;

    shape[i] = column (lap_effort_mean (effort, start, end), is_main (timeline, (start + end) / 2));
  }
  return shape;
}

/* What is done in it and who leads it. */
static char *
session_words (const LapTimeline *timeline)
{
  GString *words = g_string_new (timeline->session->coach);
  g_autoptr (GHashTable) known = g_hash_table_new (NULL, NULL);

  for (guint i = 0; i < timeline->n_tasks; i++) {
    LapExercise *shown = timeline->tasks[i].shown;

    if (shown != NULL && g_hash_table_add (known, shown))
      g_string_append_printf (words, " %s", lap_exercise_name (shown));
  }
  return g_string_free (words, FALSE);
}

static void
look_at_session (LapSession *session, LapIndexFacts *facts)
{
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (LapTimeline) timeline = lap_timeline_new (session, builtin, NULL);
  g_autoptr (LapCheckup) checkup = NULL;

  if (timeline == NULL)
    return;
  checkup = lap_checkup_new (timeline);
  facts->kind = LAP_INDEX_SESSION;
  facts->title = g_strdup (session->title);
  facts->amount = timeline->length;
  facts->warnings = lap_checkup_n_open (checkup);
  facts->shape = session_shape (timeline);
  facts->found_by = session_words (timeline);
}

/* How many of them nobody keeps as fine. */
static guint
week_warnings (LapWeek *week, const char *path)
{
  g_autoptr (LapSessionFolder) folder = lap_session_folder_new (path);
  const LapSessionSource source = { lap_session_folder_load, lap_session_folder_seek, folder };
  g_autoptr (LapAttachments) attachments = lap_attachments_new (&source);
  g_autoptr (LapCheckup) checkup = lap_checkup_new_week (week, 0, attachments);

  return lap_checkup_n_open (checkup);
}

static void
look_at_week (LapWeek *week, const char *path, LapIndexFacts *facts)
{
  guint days[LAP_N_DAYS] = { 0 }, most = 1;
  GString *words = g_string_new (NULL);

  facts->warnings = week_warnings (week, path);
  facts->kind = LAP_INDEX_WEEK;
  facts->title = g_strdup (week->title);
  facts->amount = lap_list_n (week->classes);
  for (guint i = 0; i < facts->amount; i++) {
    const LapClass *c = lap_list_nth (week->classes, i);

    if (c->day >= 0)
      most = MAX (most, ++days[c->day]);
  }
  for (guint i = 0; i < lap_list_n (week->coaches); i++) {
    const LapCoach *coach = lap_list_nth (week->coaches, i);

    g_string_append_printf (words, " %s", coach->title != NULL ? coach->title : coach->id);
  }
  facts->found_by = g_string_free (words, FALSE);
  facts->shape = g_new0 (char, LAP_N_DAYS + 1);
  for (guint day = 0; day < LAP_N_DAYS; day++)
    facts->shape[day] = column ((double) days[day] / most, days[day] > 0);
}

/* What can't be laid out can't be opened either. */
void
lap_glance (const char *path, GBytes *bytes, LapIndexFacts *facts)
{
  g_autoptr (LapObject) root = lap_document_from_bytes (bytes, NULL);

  facts->kind = LAP_INDEX_UNREADABLE;
  if (root != NULL && LAP_IS_WEEK (root))
    look_at_week (LAP_WEEK (root), path, facts);
  else if (root != NULL)
    look_at_session (LAP_SESSION (root), facts);
}
