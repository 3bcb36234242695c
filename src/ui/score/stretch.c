/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/stretch.h"

void
lap_stretching_begin (LapStretching *self, const LapTimeSource *source, int factor)
{
  *self = (LapStretching) { *source, MAX (factor, 1), source->seconds, G_MAXINT };
}

gboolean
lap_stretching_to (LapStretching *self, LapDocument *document, double by, int grid)
{
  LapCatalogue *catalogue = lap_document_catalogue (document);
  int seconds = lap_time_snap (&self->source, self->source.seconds + by / self->factor, grid);

  if (seconds == self->now || seconds >= self->refused)
    return FALSE;
  if (lap_document_hold (document, lap_verb_set_time (&self->source, seconds, catalogue)))
    self->now = seconds;
  else {
    if (seconds > self->now)
      self->refused = seconds;
    lap_document_hold (document, lap_verb_set_time (&self->source, self->now, catalogue));
  }
  return TRUE;
}
