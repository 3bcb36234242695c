/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A document and its file: read, recovered, saved, and made again what the file holds.
 */
#include "ui/document-private.h"

#include "base/error.h"
#include "edit/become.h"
#include "store/documents.h"
#include "store/read-file.h"
#include "store/save.h"
#include "store/week-paths.h"

#include <glib/gi18n-lib.h>

/* The session or week in @bytes of the file @path, which may be NULL. */
static LapObject *
root_from_bytes (GBytes *bytes, const char *path, GError **error)
{
  LapObject *root = lap_document_from_bytes (bytes, error);

  if (root != NULL && LAP_IS_WEEK (root) && path != NULL)
    lap_week_paths_whole (LAP_WEEK (root), path);
  return root;
}

LapDocument *
lap_document_read (const char *path, GError **error)
{
  g_autofree char *etag = NULL;
  g_autoptr (GBytes) bytes = lap_read_file (path, &etag, error);
  LapDocument *self = bytes != NULL ? lap_document_from_file (bytes, path, etag, error) : NULL;

  if (self != NULL)
    lap_document_read_sessions (self);
  return self;
}

LapDocument *
lap_document_from_file (GBytes *bytes, const char *path, const char *etag, GError **error)
{
  g_autoptr (LapObject) root = NULL;
  g_autoptr (GError) mistake = NULL;
  LapDocument *self = NULL;

  root = root_from_bytes (bytes, path, &mistake);
  if (root != NULL)
    self = lap_document_make (root, path, etag, TRUE, &mistake);
  if (self == NULL) {
    if (root != NULL)
      lap_error_add_line (mistake, bytes);
    g_propagate_prefixed_error (error, g_steal_pointer (&mistake), "%s: ", path);
  }
  return self;
}

LapDocument *
lap_document_recover (GBytes *bytes, const char *path, const char *etag, GError **error)
{
  g_autoptr (LapObject) root = root_from_bytes (bytes, path, error);
  LapDocument *self = root != NULL ? lap_document_make (root, path, etag, FALSE, error) : NULL;

  if (self == NULL)
    return NULL;
  self->recovered = TRUE;
  lap_document_note_saved (self, LAP_HISTORY_NEVER);
  return self;
}

LapDocument *
lap_document_duplicate (LapDocument *self)
{
  g_autoptr (LapObject) root = lap_object_copy (self->root);
  g_autofree char *id = g_uuid_string_random ();
  /* Translators: the title of a copy of a session or a week. */
  g_autofree char *title = g_strdup_printf (_("%s, copy"), lap_document_title (self));
  LapDocument *copy;

  g_object_set (root, "id", id, "title", title, NULL);
  copy = lap_document_new (root, NULL);
  lap_document_note_saved (copy, LAP_HISTORY_NEVER);
  return copy;
}

/* What a save to @path writes. */
static GBytes *
bytes_at (LapDocument *self, const char *path)
{
  return self->week != NULL ? lap_week_paths_bytes (self->week, path) : lap_session_to_bytes (self->session);
}

GBytes *
lap_document_bytes (LapDocument *self)
{
  return bytes_at (self, self->path);
}

gboolean
lap_document_reload (LapDocument *self, GError **error)
{
  g_autofree char *etag = NULL;
  g_autoptr (GBytes) bytes = lap_read_file (self->path, &etag, error);
  g_autoptr (LapObject) root = bytes != NULL ? root_from_bytes (bytes, self->path, error) : NULL;
  LapEdits *edits;

  if (root == NULL)
    return FALSE;
  if (G_OBJECT_TYPE (root) != G_OBJECT_TYPE (self->root)) {
    g_set_error (error, LAP_ERROR, LAP_ERROR_INVALID,
                 self->week != NULL ? _("%s: it is no week any more") : _("%s: it is no session any more"), self->path);
    return FALSE;
  }
  g_free (self->etag);
  self->etag = g_steal_pointer (&etag);
  self->outside = self->recovered = FALSE;
  edits = lap_edits_become (_("Go back to the file"), self->root, root);
  if (lap_edits_n (edits) == 0)
    lap_edits_free (edits);
  else
    lap_document_apply (self, edits);
  lap_document_note_saved (self, lap_history_revision (self->history));
  return TRUE;
}

void
lap_document_look_outside (LapDocument *self)
{
  g_autofree char *etag = NULL;
  g_autoptr (GBytes) bytes = NULL;

  if (self->path == NULL || self->saving)
    return;
  bytes = lap_read_file (self->path, &etag, NULL);
  /* Gone is not changed: a save writes it again. */
  self->outside = bytes != NULL && g_strcmp0 (etag, self->etag) != 0;
  lap_document_update_state (self);
}

typedef struct {
  char   *path;
  guint64 revision;
} Save;

static void
save_free (gpointer data)
{
  Save *save = data;

  g_free (save->path);
  g_free (save);
}

static void
saved_cb (GObject *source, GAsyncResult *result, gpointer data)
{
  g_autoptr (GTask) task = G_TASK (data);
  LapDocument *self = g_task_get_source_object (task);
  Save *save = g_task_get_task_data (task);
  g_autofree char *etag = NULL;
  GError *error = NULL;

  self->saving = FALSE;
  if (!lap_save_bytes_finish (result, &etag, &error)) {
    self->outside = g_error_matches (error, LAP_ERROR, LAP_ERROR_CHANGED);
    lap_document_update_state (self);
    g_task_return_error (task, error);
    return;
  }
  self->outside = FALSE;
  self->recovered = FALSE;
  lap_document_set_file (self, save->path, etag);
  lap_document_note_saved (self, save->revision);
  g_task_return_boolean (task, TRUE);
}

void
lap_document_save (LapDocument *self, const char *path, gboolean whatever, GAsyncReadyCallback callback, gpointer data)
{
  GTask *task = g_task_new (self, NULL, callback, data);
  const char *target = path != NULL ? path : self->path;
  g_autoptr (GBytes) bytes = NULL;
  Save *save;

  g_task_set_source_tag (task, lap_document_save);
  if (target == NULL || self->saving || !lap_document_is_editable (self)) {
    g_task_return_new_error (task, LAP_ERROR, LAP_ERROR_UNWRITABLE, "%s",
                             self->saving ? _("It is being saved already.") :
                             _("It can’t be saved: it was written by a newer version."));
    g_object_unref (task);
    return;
  }
  lap_document_keep (self); /* what is being dragged is kept as it is */
  save = g_new (Save, 1);
  save->path = g_strdup (target);
  save->revision = lap_history_revision (self->history);
  g_task_set_task_data (task, save, save_free);
  bytes = bytes_at (self, target);
  self->saving = TRUE;
  lap_document_update_state (self);
  /* Another file than its own has been confirmed by the dialog that named it. */
  lap_save_bytes_async (target, bytes, whatever || g_strcmp0 (target, self->path) != 0 ? NULL : self->etag,
                        saved_cb, task);
}

gboolean
lap_document_save_finish (LapDocument *self, GAsyncResult *result, GError **error)
{
  return g_task_propagate_boolean (G_TASK (result), error);
}
