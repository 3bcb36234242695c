/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "timeline/fingerprint.h"

char *
lap_timeline_fingerprint (const LapTimeline *timeline)
{
  g_autoptr (GChecksum) sum = g_checksum_new (G_CHECKSUM_SHA256);
  g_autoptr (GString) line = g_string_new (NULL);

  for (guint i = 0; i < timeline->n; i++) {
    const LapInterval *v = &timeline->intervals[i];
    const LapTask *task = lap_timeline_task (timeline, v);
    const char *shown = task == NULL ? "" : task->shown != NULL ? task->shown->id : task->wanted;

    g_string_printf (line, "%d %d %s %d %d %d %d %s\n", v->start, v->seconds,
                     lap_words_id (&lap_interval_kinds, v->kind), v->part, v->round, v->block, v->side, shown != NULL ? shown : "");
    g_checksum_update (sum, (const guchar *) line->str, line->len);
  }
  return g_strdup (g_checksum_get_string (sum));
}
