/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/effort.h"

#include "base/json-writer.h"

#include <math.h>

static void
write_model (LapJsonWriter *out, const LapEffort *effort)
{
  const LapSession *session = effort->timeline->session;

  lap_json_writer_member (out, "model");
  lap_json_writer_begin_object (out);
  lap_json_writer_member_number (out, "fitness", effort->fitness);
  lap_json_writer_member_int (out, "age", session->age);
  lap_json_writer_member_number (out, "mass", session->mass);
  lap_json_writer_member_number (out, "rest-pulse", effort->rest_pulse);
  lap_json_writer_member_number (out, "maximum-pulse", effort->maximum);
  lap_json_writer_member_number (out, "start", LAP_EFFORT_START);
  lap_json_writer_member_number (out, "rising", lap_kinetics.rising);
  lap_json_writer_member_number (out, "falling-still", lap_kinetics.still);
  lap_json_writer_member_number (out, "falling-active", lap_kinetics.active);
  lap_json_writer_member_number (out, "low", effort->low);
  lap_json_writer_member_number (out, "high", effort->high);
  lap_json_writer_member_int (out, "starts", lap_effort_starts (effort->timeline));
  lap_json_writer_end_object (out);
}

static void
write_segment (LapJsonWriter *out, const LapEffortSegment *segment)
{
  lap_json_writer_begin_object (out);
  lap_json_writer_member_int (out, "start", segment->start);
  lap_json_writer_member_int (out, "seconds", segment->seconds);
  lap_json_writer_member_string (out, "kind", lap_words_id (&lap_interval_kinds, segment->kind));
  lap_json_writer_member_number (out, "met", segment->met);
  lap_json_writer_member_number (out, "demand", segment->demand);
  lap_json_writer_member_number (out, "target", segment->curve.target);
  lap_json_writer_member_number (out, "from", segment->curve.from);
  lap_json_writer_member_number (out, "to", segment->to);
  lap_json_writer_end_object (out);
}

GBytes *
lap_publish_effort (const LapEffort *effort)
{
  g_autoptr (LapJsonWriter) out = lap_json_writer_new ();

  lap_json_writer_begin_object (out);
  write_model (out, effort);
  lap_json_writer_member (out, "segments");
  lap_json_writer_begin_array (out);
  for (guint i = 0; i < effort->n; i++)
    write_segment (out, &effort->segments[i]);
  lap_json_writer_end_array (out);
  lap_json_writer_member_number (out, "mean", effort->mean);
  lap_json_writer_member_number (out, "peak", effort->peak);
  lap_json_writer_member_number (out, "time-in-band", effort->in_band);
  lap_json_writer_member_int (out, "kcal-low", effort->kcal_low);
  lap_json_writer_member_int (out, "kcal-high", effort->kcal_high);
  lap_json_writer_member_number (out, "met-minutes", effort->met_minutes);
  lap_json_writer_end_object (out);
  return lap_json_writer_finish (out);
}

static void
write_line (LapJsonWriter *out, const LapLine *line)
{
  lap_json_writer_begin_object (out);
  lap_json_writer_member_int (out, "start", line->start);
  lap_json_writer_member_number (out, "seconds", ceil (line->seconds * 10) / 10);
  lap_json_writer_member_string (out, "kind", lap_words_id (&lap_line_kinds, line->kind));
  lap_json_writer_member_int (out, "part", line->part);
  lap_json_writer_member_int (out, "round", line->round);
  lap_json_writer_member_int (out, "block", line->block);
  lap_json_writer_member_string (out, "text", line->text);
  lap_json_writer_end_object (out);
}

GBytes *
lap_publish_script (const LapScript *script)
{
  g_autoptr (LapJsonWriter) out = lap_json_writer_new ();

  lap_json_writer_begin_object (out);
  lap_json_writer_member (out, "lines");
  lap_json_writer_begin_array (out);
  for (guint i = 0; i < script->n; i++)
    write_line (out, &script->lines[i]);
  lap_json_writer_end_array (out);
  lap_json_writer_end_object (out);
  return lap_json_writer_finish (out);
}
