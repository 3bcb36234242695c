/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/score-drop.h"

/* Beyond the last box: the first part after it that is still empty, else the end of the last one with time. */
static LapDropPlace
place_beyond (const LapScore *self)
{
  const LapTimeline *timeline = self->timeline;
  guint part = self->n > 0 ? self->boxes[self->n - 1].part : G_MAXUINT;

  if (self->n > 0 && part + 1 < timeline->n_parts)
    part++;
  else if (self->n == 0)
    for (guint i = 0; i < timeline->n_parts && part == G_MAXUINT; i++)
      if (timeline->parts[i].part->kind == LAP_PART_MAIN || i + 1 == timeline->n_parts)
        part = i;
  return (LapDropPlace) {
    part, part != G_MAXUINT ? lap_part_n (timeline->parts[part].part) : 0, 1, timeline->length, LAP_NO_BOX,
  };
}

LapDropPlace
lap_score_drop_place (const LapScore *self, const LapAxis *axis, double x, gboolean may_replace)
{
  LapHit hit = lap_score_hit (self, axis, x, 0);
  const LapBox *box = hit.box != LAP_NO_BOX ? &self->boxes[hit.box] : NULL;
  LapDropPlace place;
  double share;

  if (box == NULL && self->n > 0 && hit.second <= 0)
    return (LapDropPlace) { self->boxes[0].part, 0, 1, 0, LAP_NO_BOX };
  if (box == NULL)
    return place_beyond (self);
  place = (LapDropPlace) { box->part, box->block, MAX (box->round, 1), box->start, LAP_NO_BOX };
  if (!lap_box_is_block (box)) {
    place.position = lap_part_n (self->timeline->parts[box->part].part);
    return place;
  }
  share = (hit.second - box->start) / (box->end - box->start);
  if (may_replace && share >= 0.25 && share < 0.75)
    place.onto = hit.box;
  else if (share >= 0.5) {
    place.position++;
    place.second = box->end;
  }
  return place;
}
