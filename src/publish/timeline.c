/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/timeline.h"

#include "publish/csv.h"

static const char *const sides[] = { NULL, "left", "right" };

static void
member_number (LapJsonWriter *out, const char *name, int number, gboolean there)
{
  lap_json_writer_member (out, name);
  if (there)
    lap_json_writer_int (out, number);
  else
    lap_json_writer_null (out);
}

static const char *
shown_id (const LapTask *task)
{
  return task != NULL && task->shown != NULL ? task->shown->id : NULL;
}

static void
write_interval (LapJsonWriter *out, const LapTimeline *timeline, const LapInterval *v)
{
  const LapTask *task = lap_timeline_task (timeline, v);

  lap_json_writer_begin_object (out);
  lap_json_writer_member_int (out, "start", v->start);
  lap_json_writer_member_int (out, "seconds", v->seconds);
  lap_json_writer_member_string (out, "kind", lap_words_id (&lap_interval_kinds, v->kind));
  lap_json_writer_member_int (out, "part", v->part);
  member_number (out, "round", v->round, v->round > 0);
  member_number (out, "block", v->block, v->block != LAP_NO_BLOCK);
  lap_json_writer_member_string (out, "exercise", task != NULL ? task->wanted : NULL);
  lap_json_writer_member_string (out, "shown", shown_id (task));
  lap_json_writer_member_string (out, "side", sides[v->side]);
  lap_json_writer_end_object (out);
}

GBytes *
lap_publish_timeline (const LapTimeline *timeline)
{
  g_autoptr (LapJsonWriter) out = lap_json_writer_new ();

  lap_json_writer_begin_object (out);
  lap_json_writer_member_int (out, "length", timeline->length);
  lap_json_writer_member (out, "intervals");
  lap_json_writer_begin_array (out);
  for (guint i = 0; i < timeline->n; i++)
    write_interval (out, timeline, &timeline->intervals[i]);
  lap_json_writer_end_array (out);
  lap_json_writer_end_object (out);
  return lap_json_writer_finish (out);
}

GBytes *
lap_publish_table (const LapTimeline *timeline)
{
  GString *csv = g_string_new ("start,seconds,kind,part,round,block,exercise,shown,side\r\n");

  for (guint i = 0; i < timeline->n; i++) {
    const LapInterval *v = &timeline->intervals[i];
    const LapTask *task = lap_timeline_task (timeline, v);

    lap_csv_whole (csv, v->start, TRUE);
    lap_csv_whole (csv, v->seconds, TRUE);
    lap_csv_text (csv, lap_words_id (&lap_interval_kinds, v->kind), FALSE);
    lap_csv_whole (csv, v->part, TRUE);
    lap_csv_whole (csv, v->round, v->round > 0);
    lap_csv_whole (csv, v->block, v->block != LAP_NO_BLOCK);
    lap_csv_text (csv, task != NULL ? task->wanted : NULL, FALSE);
    lap_csv_text (csv, shown_id (task), FALSE);
    lap_csv_text (csv, sides[v->side], TRUE);
  }
  return g_string_free_to_bytes (csv);
}

gboolean
lap_timeline_write (const LapPublication *what, const char *suffix, LapOutput *output, GError **error)
{
  g_autoptr (GBytes) bytes = lap_publish_timeline (what->timeline);

  return lap_output_write_bytes (output, bytes, error);
}

gboolean
lap_table_write (const LapPublication *what, const char *suffix, LapOutput *output, GError **error)
{
  g_autoptr (GBytes) bytes = lap_publish_table (what->timeline);

  return lap_output_write_bytes (output, bytes, error);
}
