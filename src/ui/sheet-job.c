/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/sheet-job.h"

struct _LapSheetJob {
  const LapSheet *sheet;
  LapSheetOptions options;
  char           *date;  /* of the options */
  LapSession     *twin;  /* of a session */
  LapPages       *pages; /* of a week */
};

LapSheetJob *
lap_sheet_job_new (LapDocument *document, const LapSheet *sheet, const LapSheetOptions *options)
{
  LapSheetJob *job = g_new0 (LapSheetJob, 1);

  job->sheet = sheet;
  job->options = *options;
  job->options.date = job->date = g_strdup (options->date);
  if (lap_document_week (document) != NULL)
    job->pages = lap_document_pages (document, sheet, options);
  else
    job->twin = lap_object_copy (lap_document_session (document));
  return job;
}

void
lap_sheet_job_free (LapSheetJob *job)
{
  g_free (job->date);
  g_clear_object (&job->twin);
  g_clear_pointer (&job->pages, lap_pages_free);
  g_free (job);
}

LapPages *
lap_sheet_job_pages (LapSheetJob *job)
{
  g_autoptr (LapCatalogue) builtin = NULL;
  g_autoptr (LapTimeline) timeline = NULL;

  if (job->pages != NULL)
    return g_steal_pointer (&job->pages);
  builtin = lap_catalogue_builtin ();
  timeline = lap_timeline_new (job->twin, builtin, NULL);
  return lap_sheet_build (job->sheet, timeline, &job->options);
}
