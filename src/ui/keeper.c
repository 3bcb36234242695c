/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One thing is wanted at any time: a draft of the revision now, or none. settle() compares that with what the disk
 * has and does the next step; it runs again when the step is done.
 */
#include "ui/keeper.h"

#include "edit/history.h"

#include <glib/gi18n-lib.h>

struct _LapKeeper {
  GObject      parent_instance;
  LapDocument *document;
  LapDrafts   *drafts;
  char        *id;
  guint        waiting; /* source that will write, or 0 */
  guint64      kept;
  gboolean     busy, closed, failed;
};

G_DEFINE_FINAL_TYPE (LapKeeper, lap_keeper, G_TYPE_OBJECT)

typedef struct {
  LapDrafts *drafts;
  char      *id, *path, *etag;
  GBytes    *bytes;
  guint64    revision;
} Job;

static void
job_free (gpointer data)
{
  Job *job = data;

  g_free (job->id);
  g_free (job->path);
  g_free (job->etag);
  g_bytes_unref (job->bytes);
  g_free (job);
}

static void
work (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  Job *job = data;
  GError *error = NULL;

  if (lap_drafts_write (job->drafts, job->id, job->path, job->etag, job->bytes, &error))
    g_task_return_boolean (task, TRUE);
  else
    g_task_return_error (task, error);
}

static void settle (LapKeeper *self);

static void
tell_failure (LapKeeper *self, const char *why)
{
  g_autofree char *text = NULL;

  if (self->failed)
    return;
  self->failed = TRUE;
  text = g_strdup_printf (_("No draft can be kept: %s. Save often."), why);
  g_signal_emit_by_name (self->document, "told", text, FALSE);
}

static void
worked_cb (GObject *source, GAsyncResult *result, gpointer data)
{
  LapKeeper *self = LAP_KEEPER (source);
  Job *job = g_task_get_task_data (G_TASK (result));
  g_autoptr (GError) error = NULL;

  self->busy = FALSE;
  if (g_task_propagate_boolean (G_TASK (result), &error)) {
    self->kept = job->revision;
    self->failed = FALSE;
    settle (self);
  } else if (!self->closed)
    /* Tried again at the next change. */
    tell_failure (self, error->message);
  if (g_application_get_default () != NULL)
    g_application_release (g_application_get_default ());
}

/* The worker holds the keeper until it is done, and the program too: one that is to be discarded is not left. */
static void
start (LapKeeper *self)
{
  g_autoptr (GTask) task = g_task_new (self, NULL, worked_cb, NULL);
  Job *job = g_new0 (Job, 1);

  job->drafts = self->drafts;
  job->id = g_strdup (self->id);
  job->path = g_strdup (lap_document_path (self->document));
  job->etag = g_strdup (lap_document_etag (self->document));
  job->bytes = lap_document_bytes (self->document);
  job->revision = lap_history_revision (lap_document_history (self->document));
  g_task_set_task_data (task, job, job_free);
  self->busy = TRUE;
  if (g_application_get_default () != NULL)
    g_application_hold (g_application_get_default ());
  g_task_run_in_thread (task, work);
}

static gboolean
wait_cb (gpointer data)
{
  LapKeeper *self = data;

  self->waiting = 0;
  if (!self->busy && !self->closed && lap_document_is_modified (self->document))
    start (self);
  return G_SOURCE_REMOVE;
}

static void
settle (LapKeeper *self)
{
  gboolean wanted = !self->closed && lap_document_is_modified (self->document);

  if (!wanted)
    g_clear_handle_id (&self->waiting, g_source_remove);
  if (self->busy)
    return;
  if (!wanted && self->kept != LAP_HISTORY_NEVER) {
    lap_drafts_remove (self->drafts, self->id);
    self->kept = LAP_HISTORY_NEVER;
  } else if (wanted && self->kept != lap_history_revision (lap_document_history (self->document)) && self->waiting == 0) {
    /* Not put off by the next change: who never pauses has drafts, too. */
    self->waiting = g_timeout_add (LAP_KEEPER_WAIT, wait_cb, self);
  }
}

static void
lap_keeper_dispose (GObject *object)
{
  LapKeeper *self = LAP_KEEPER (object);

  g_clear_handle_id (&self->waiting, g_source_remove);
  G_OBJECT_CLASS (lap_keeper_parent_class)->dispose (object);
}

static void
lap_keeper_finalize (GObject *object)
{
  LapKeeper *self = LAP_KEEPER (object);

  g_object_unref (self->document);
  g_free (self->id);
  G_OBJECT_CLASS (lap_keeper_parent_class)->finalize (object);
}

static void
lap_keeper_class_init (LapKeeperClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = lap_keeper_dispose;
  G_OBJECT_CLASS (klass)->finalize = lap_keeper_finalize;
}

static void
lap_keeper_init (LapKeeper *self)
{
  self->kept = LAP_HISTORY_NEVER;
}

LapKeeper *
lap_keeper_new (LapDocument *document, LapDrafts *drafts, const char *id)
{
  LapKeeper *self = g_object_new (LAP_TYPE_KEEPER, NULL);

  self->document = g_object_ref (document);
  self->drafts = drafts;
  self->id = id != NULL ? g_strdup (id) : g_uuid_string_random ();
  if (id != NULL)
    self->kept = lap_history_revision (lap_document_history (document));
  g_signal_connect_object (document, "changed", G_CALLBACK (settle), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (document, "notify::state", G_CALLBACK (settle), self, G_CONNECT_SWAPPED);
  settle (self);
  return self;
}

void
lap_keeper_discard (LapKeeper *self)
{
  self->closed = TRUE;
  settle (self);
}

guint64
lap_keeper_kept (LapKeeper *self)
{
  return self->kept;
}
