/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Small plans for tests of places: made by the model alone.
 */
#pragma once

#include "timeline/timeline.h"

static inline LapPart *
plan_part (LapSession *session, LapPartKind kind, int rounds)
{
  g_autoptr (LapPart) part = lap_part_new (kind);
  g_autoptr (GPtrArray) added = g_ptr_array_new ();

  g_object_set (part, "rounds", rounds, NULL);
  g_ptr_array_add (added, part);
  lap_list_splice (session->parts, lap_list_n (session->parts), 0, added);
  return part;
}

static inline void
plan_add (LapPart *part, LapBlock *block)
{
  g_autoptr (GPtrArray) added = g_ptr_array_new_with_free_func (g_object_unref);

  g_ptr_array_add (added, block);
  lap_list_splice (part->blocks, lap_list_n (part->blocks), 0, added);
}

static inline LapTimeline *
plan_timeline (LapSession *session)
{
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (GError) error = NULL;
  LapTimeline *timeline = lap_timeline_new (session, builtin, &error);

  g_assert_no_error (error);
  return timeline;
}
