/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/publish.h"

#include "publish/cuts.h"
#include "store/documents.h"
#include "ui/errand.h"

#include <glib/gi18n-lib.h>

/* What the worker has. */
typedef struct {
  const LapFormat *format;
  LapPublication   how;
  char            *at, *timezone, *from; /* what @how points to */
  char            *path;
  GBytes          *bytes;
} Problem;

static void
problem_free (gpointer data)
{
  Problem *problem = data;

  g_bytes_unref (problem->bytes);
  g_free (problem->at);
  g_free (problem->timezone);
  g_free (problem->from);
  g_free (problem->path);
  g_free (problem);
}

static gpointer
work (gpointer data, GCancellable *cancellable, LapWorkerTell tell, gpointer tell_data, GError **error)
{
  Problem *problem = data;
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (LapObject) root = lap_document_from_bytes (problem->bytes, error);
  g_autoptr (LapTimeline) timeline = NULL;
  LapProgress watch = { tell, tell_data, cancellable };
  LapPublication what = problem->how;

  if (root == NULL)
    return NULL;
  if (LAP_IS_WEEK (root))
    what.week = root;
  else if ((timeline = lap_timeline_new (LAP_SESSION (root), builtin, error)) == NULL)
    return NULL;
  what.timeline = timeline;
  return lap_publish (problem->format, &what, problem->path, &watch, error) ? problem : NULL;
}

static void
done_cb (LapWindow *window, gpointer problem, gpointer answer, gint64 began)
{
  lap_errand_tell_wrote (window, ((Problem *) problem)->path, began);
}

static const LapErrandKind errand_kind = { work, done_cb, N_("It couldn’t be exported"), problem_free, NULL };

void
lap_publish_to (LapWindow *window, const LapFormat *format, const LapPublication *how, const char *path)
{
  LapTimeline *timeline = lap_document_timeline (lap_window_document (window));
  Problem *problem = g_new0 (Problem, 1);

  problem->format = format;
  if (how != NULL)
    problem->how = *how;
  problem->how.at = problem->at = g_strdup (problem->how.at);
  problem->how.timezone = problem->timezone = g_strdup (problem->how.timezone);
  problem->how.from = problem->from = g_strdup (problem->how.from);
  problem->path = g_strdup (path);
  problem->bytes = lap_document_bytes (lap_window_document (window));
  if (timeline != NULL && (problem->how.takes || format->flags & LAP_FORMAT_OF_TAKES) && lap_cuts_are_old (timeline))
    lap_window_tell (window, _("The plan was changed since its takes were filmed"), FALSE);
  lap_errand_run (window, &errand_kind, problem, _(format->title));
}
