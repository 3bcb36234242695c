/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The history tells of every change, also of those in the middle of a try; `trying` keeps the document from
 * computing for those. An edit is tried inside an open group of the history, so that an impossible one can be
 * cancelled and leaves no trace, neither to undo nor to redo.
 */
#include "ui/document.h"

#include "base/error.h"
#include "edit/become.h"
#include "store/documents.h"
#include "store/read-file.h"
#include "store/save.h"

#include <glib/gi18n-lib.h>
#include <stdlib.h>

/* Within so many seconds of the target a session is on time: design, check length-over. */
#define ON_TIME 15

struct _LapDocument {
  GObject       parent_instance;
  LapSession   *session;
  LapHistory   *history;
  LapCatalogue *builtin;
  LapTimeline  *timeline;
  LapCheckup   *checkup;
  char         *path, *etag;
  gboolean      trying, saving, outside, recovered;
  LapDocumentState state;
};

enum { PROP_0, PROP_STATE, PROP_TITLE, N_PROPS };
static GParamSpec *props[N_PROPS];
enum { CHANGED, TOLD, N_SIGNALS };
static guint signals[N_SIGNALS];

G_DEFINE_FINAL_TYPE (LapDocument, lap_document, G_TYPE_OBJECT)

static LapDocumentState
state_now (LapDocument *self)
{
  if (self->session->version > LAP_SESSION_VERSION)
    return LAP_DOCUMENT_READ_ONLY;
  if (self->saving)
    return LAP_DOCUMENT_SAVING;
  if (self->outside)
    return LAP_DOCUMENT_CHANGED_OUTSIDE;
  if (self->recovered)
    return LAP_DOCUMENT_RECOVERED;
  return lap_history_modified (self->history) ? LAP_DOCUMENT_DIRTY : LAP_DOCUMENT_CLEAN;
}

static void
update_state (LapDocument *self)
{
  LapDocumentState state = state_now (self);

  if (state == self->state)
    return;
  self->state = state;
  g_object_notify_by_pspec (G_OBJECT (self), props[PROP_STATE]);
}

static gboolean
compute (LapDocument *self, GError **error)
{
  LapTimeline *timeline = lap_timeline_new (self->session, self->builtin, error);

  if (timeline == NULL)
    return FALSE;
  g_clear_pointer (&self->checkup, lap_checkup_unref);
  g_clear_pointer (&self->timeline, lap_timeline_unref);
  self->timeline = timeline;
  self->checkup = lap_checkup_new (timeline);
  return TRUE;
}

static void
tell_changed (LapDocument *self)
{
  update_state (self);
  g_object_notify_by_pspec (G_OBJECT (self), props[PROP_TITLE]);
  g_signal_emit (self, signals[CHANGED], 0);
}

static void
history_changed_cb (LapDocument *self)
{
  g_autoptr (GError) error = NULL;

  if (self->trying)
    return;
  /* Undo and redo only lead to states that have been laid out before. */
  if (!compute (self, &error))
    g_critical ("The session can't be laid out: %s", error->message);
  tell_changed (self);
}

static void
lap_document_get_property (GObject *object, guint id, GValue *value, GParamSpec *pspec)
{
  LapDocument *self = LAP_DOCUMENT (object);

  switch (id) {
  case PROP_STATE:
    g_value_set_int (value, self->state);
    break;
  case PROP_TITLE:
    g_value_set_string (value, lap_document_title (self));
    break;
  default:
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
  }
}

static void
lap_document_finalize (GObject *object)
{
  LapDocument *self = LAP_DOCUMENT (object);

  g_clear_pointer (&self->checkup, lap_checkup_unref);
  g_clear_pointer (&self->timeline, lap_timeline_unref);
  g_clear_object (&self->history);
  g_clear_object (&self->session);
  g_clear_pointer (&self->builtin, lap_catalogue_unref);
  g_free (self->path);
  g_free (self->etag);
  G_OBJECT_CLASS (lap_document_parent_class)->finalize (object);
}

static void
lap_document_class_init (LapDocumentClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);
  const GParamFlags flags = G_PARAM_READABLE | G_PARAM_STATIC_STRINGS | G_PARAM_EXPLICIT_NOTIFY;

  object_class->finalize = lap_document_finalize;
  object_class->get_property = lap_document_get_property;
  props[PROP_STATE] = g_param_spec_int ("state", NULL, NULL, 0, LAP_DOCUMENT_RECOVERED, 0, flags);
  props[PROP_TITLE] = g_param_spec_string ("title", NULL, NULL, NULL, flags);
  g_object_class_install_properties (object_class, N_PROPS, props);
  signals[CHANGED] = g_signal_new ("changed", LAP_TYPE_DOCUMENT, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                   G_TYPE_NONE, 0);
  signals[TOLD] = g_signal_new ("told", LAP_TYPE_DOCUMENT, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                G_TYPE_NONE, 2, G_TYPE_STRING, G_TYPE_BOOLEAN);
}

static void
lap_document_init (LapDocument *self)
{
  self->builtin = lap_catalogue_builtin ();
  self->history = lap_history_new ();
  g_signal_connect_swapped (self->history, "changed", G_CALLBACK (history_changed_cb), self);
}

LapDocument *
lap_document_new (LapSession *session, GError **error)
{
  g_autoptr (LapDocument) self = g_object_new (LAP_TYPE_DOCUMENT, NULL);

  self->session = g_object_ref (session);
  if (!compute (self, error))
    return NULL;
  self->state = state_now (self);
  return g_steal_pointer (&self);
}

LapDocument *
lap_document_read (const char *path, GError **error)
{
  g_autofree char *etag = NULL;
  g_autoptr (GBytes) bytes = lap_read_file (path, &etag, error);
  g_autoptr (LapSession) session = NULL;
  g_autoptr (GError) mistake = NULL;
  LapDocument *self = NULL;

  if (bytes == NULL)
    return NULL;
  session = lap_session_from_bytes (bytes, &mistake);
  if (session != NULL)
    self = lap_document_new (session, &mistake);
  if (self == NULL) {
    if (session != NULL)
      lap_error_add_line (mistake, bytes);
    g_propagate_prefixed_error (error, g_steal_pointer (&mistake), "%s: ", path);
    return NULL;
  }
  self->path = g_strdup (path);
  self->etag = g_steal_pointer (&etag);
  return self;
}

LapDocument *
lap_document_recover (GBytes *bytes, const char *path, const char *etag, GError **error)
{
  g_autoptr (LapSession) session = lap_session_from_bytes (bytes, error);
  LapDocument *self = session != NULL ? lap_document_new (session, error) : NULL;

  if (self == NULL)
    return NULL;
  self->path = g_strdup (path);
  self->etag = g_strdup (etag);
  self->recovered = TRUE;
  lap_history_saved (self->history, LAP_HISTORY_NEVER);
  self->state = state_now (self);
  return self;
}

LapDocument *
lap_document_duplicate (LapDocument *self)
{
  g_autoptr (LapSession) session = lap_object_copy (self->session);
  g_autofree char *id = g_uuid_string_random ();
  /* Translators: the title of a copy of a session. */
  g_autofree char *title = g_strdup_printf (_("%s, copy"), lap_document_title (self));
  LapDocument *copy;

  g_object_set (session, "id", id, "title", title, NULL);
  copy = lap_document_new (session, NULL);
  lap_history_saved (copy->history, LAP_HISTORY_NEVER);
  copy->state = state_now (copy);
  return copy;
}

LapSession *
lap_document_session (LapDocument *self)
{
  return self->session;
}

LapHistory *
lap_document_history (LapDocument *self)
{
  return self->history;
}

LapTimeline *
lap_document_timeline (LapDocument *self)
{
  return self->timeline;
}

LapCheckup *
lap_document_checkup (LapDocument *self)
{
  return self->checkup;
}

LapCatalogue *
lap_document_catalogue (LapDocument *self)
{
  return self->timeline->catalogue;
}

const char *
lap_document_path (LapDocument *self)
{
  return self->path;
}

const char *
lap_document_etag (LapDocument *self)
{
  return self->etag;
}

GBytes *
lap_document_bytes (LapDocument *self)
{
  return lap_session_to_bytes (self->session);
}

LapDocumentState
lap_document_state (LapDocument *self)
{
  return self->state;
}

const char *
lap_document_title (LapDocument *self)
{
  const char *title = self->session != NULL ? self->session->title : NULL;

  return title != NULL && *title != '\0' ? title : _("Untitled");
}

gboolean
lap_document_is_modified (LapDocument *self)
{
  return lap_history_modified (self->history);
}

gboolean
lap_document_is_editable (LapDocument *self)
{
  return self->state != LAP_DOCUMENT_READ_ONLY;
}

char *
lap_document_length_text (LapDocument *self)
{
  int length = self->timeline->length, target = self->session->target;
  g_autofree char *is = lap_clock_text (length), *wanted = lap_clock_text (target);
  g_autofree char *apart = lap_clock_text (abs (length - target));

  if (target == 0)
    return g_steal_pointer (&is);
  if (abs (length - target) <= ON_TIME)
    /* Translators: the length of a session and the length wanted. */
    return g_strdup_printf (_("%1$s of %2$s, on time"), is, wanted);
  if (length > target)
    /* Translators: the length of a session, the length wanted, and by how much it is longer. */
    return g_strdup_printf (_("%1$s of %2$s, %3$s over"), is, wanted, apart);
  /* Translators: the length of a session, the length wanted, and how much of it is free. */
  return g_strdup_printf (_("%1$s of %2$s, %3$s left"), is, wanted, apart);
}

/* The file holds the state of @revision. */
static void
note_saved (LapDocument *self, guint64 revision)
{
  self->trying = TRUE; /* nothing of the session changes */
  lap_history_saved (self->history, revision);
  self->trying = FALSE;
  update_state (self);
  g_object_notify_by_pspec (G_OBJECT (self), props[PROP_TITLE]);
}

static void
tell (LapDocument *self, const char *text, gboolean undoable)
{
  g_signal_emit (self, signals[TOLD], 0, text, undoable);
}

gboolean
lap_document_apply (LapDocument *self, LapEdits *edits)
{
  g_autofree char *label = g_strdup (lap_edits_label (edits));
  g_autoptr (GError) error = NULL;
  gboolean possible;

  /* While something is dragged nothing else happens. */
  if (!lap_document_is_editable (self) || lap_edits_n (edits) == 0 || lap_history_is_open (self->history)) {
    lap_edits_free (edits);
    return FALSE;
  }
  self->trying = TRUE;
  lap_history_begin (self->history);
  lap_history_apply (self->history, edits);
  possible = compute (self, &error);
  if (possible)
    lap_history_end (self->history);
  else
    lap_history_cancel (self->history);
  self->trying = FALSE;
  if (!possible) {
    g_autofree char *text = g_strdup_printf (_("Taken back: %s"), error->message);

    /* What shows the refused value goes back to the one that holds. */
    g_signal_emit (self, signals[CHANGED], 0);
    tell (self, text, FALSE);
    return FALSE;
  }
  tell_changed (self);
  tell (self, label, TRUE);
  return TRUE;
}

gboolean
lap_document_hold (LapDocument *self, LapEdits *edits)
{
  g_autoptr (GError) error = NULL;
  gboolean possible;

  if (!lap_document_is_editable (self)) {
    lap_edits_free (edits);
    return FALSE;
  }
  self->trying = TRUE;
  if (!lap_history_is_open (self->history))
    lap_history_begin (self->history);
  lap_history_apply (self->history, edits);
  possible = compute (self, &error);
  if (!possible) {
    lap_history_apply (self->history, lap_edits_new (""));
    compute (self, NULL); /* as it was before the group */
  }
  self->trying = FALSE;
  tell_changed (self);
  return possible;
}

void
lap_document_keep (LapDocument *self)
{
  guint64 revision = lap_history_revision (self->history);

  if (!lap_history_is_open (self->history))
    return;
  self->trying = TRUE;
  lap_history_end (self->history);
  self->trying = FALSE;
  tell_changed (self);
  if (lap_history_revision (self->history) != revision) {
    g_autofree char *label = g_strdup (lap_history_undo_label (self->history));

    tell (self, label, TRUE);
  }
}

void
lap_document_let_go (LapDocument *self)
{
  if (lap_history_is_open (self->history))
    lap_history_cancel (self->history);
}

void
lap_document_tell (LapDocument *self, const char *text)
{
  tell (self, text, FALSE);
}

void
lap_document_undo (LapDocument *self)
{
  g_autofree char *label = g_strdup (lap_history_undo_label (self->history));
  g_autofree char *text = label != NULL ? g_strdup_printf (_("Undone: %s"), label) : NULL;

  if (lap_history_undo (self->history))
    tell (self, text, FALSE);
}

void
lap_document_redo (LapDocument *self)
{
  g_autofree char *label = g_strdup (lap_history_redo_label (self->history));

  if (lap_history_redo (self->history))
    tell (self, label, TRUE);
}

gboolean
lap_document_reload (LapDocument *self, GError **error)
{
  g_autofree char *etag = NULL;
  g_autoptr (GBytes) bytes = lap_read_file (self->path, &etag, error);
  g_autoptr (LapSession) session = bytes != NULL ? lap_session_from_bytes (bytes, error) : NULL;
  LapEdits *edits;

  if (session == NULL)
    return FALSE;
  g_free (self->etag);
  self->etag = g_steal_pointer (&etag);
  self->outside = self->recovered = FALSE;
  edits = lap_edits_become (_("Go back to the file"), self->session, session);
  if (lap_edits_n (edits) == 0)
    lap_edits_free (edits);
  else
    lap_document_apply (self, edits);
  note_saved (self, lap_history_revision (self->history));
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
  update_state (self);
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
    update_state (self);
    g_task_return_error (task, error);
    return;
  }
  self->outside = FALSE;
  self->recovered = FALSE;
  g_free (self->path);
  self->path = g_strdup (save->path);
  g_free (self->etag);
  self->etag = g_steal_pointer (&etag);
  note_saved (self, save->revision);
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
                             _("It can't be saved: it was written by a newer version."));
    g_object_unref (task);
    return;
  }
  lap_document_keep (self); /* what is being dragged is kept as it is */
  save = g_new (Save, 1);
  save->path = g_strdup (target);
  save->revision = lap_history_revision (self->history);
  g_task_set_task_data (task, save, save_free);
  bytes = lap_document_bytes (self);
  self->saving = TRUE;
  update_state (self);
  /* Another file than its own has been confirmed by the dialog that named it. */
  lap_save_bytes_async (target, bytes, whatever || g_strcmp0 (target, self->path) != 0 ? NULL : self->etag,
                        saved_cb, task);
}

gboolean
lap_document_save_finish (LapDocument *self, GAsyncResult *result, GError **error)
{
  return g_task_propagate_boolean (G_TASK (result), error);
}
