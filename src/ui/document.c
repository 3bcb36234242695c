/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The history tells of every change, also of those in the middle of a try; `trying` keeps the document from
 * computing for those. An edit is tried inside an open group of the history, so that an impossible one can be
 * cancelled and leaves no trace, neither to undo nor to redo.
 */
#include "ui/document.h"

#include "base/customs.h"
#include "base/error.h"
#include "edit/become.h"
#include "store/documents.h"
#include "store/read-file.h"
#include "store/save.h"
#include "store/week-paths.h"
#include "ui/week-sessions.h"

#include <glib/gi18n-lib.h>
#include <stdlib.h>

/* Within so many seconds of the target a session is on time: design, check length-over. */
#define ON_TIME 15

struct _LapDocument {
  GObject       parent_instance;
  LapObject    *root;
  LapSession   *session; /* the root, or NULL */
  LapWeek      *week;    /* the root, or NULL */
  LapHistory   *history;
  LapCatalogue *builtin;
  LapTimeline  *timeline; /* of a session */
  LapWeekSessions *sessions; /* of a week */
  int           date;        /* of a week: the Monday that is looked at, 0 = as always */
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

/* Written by a newer version, so that this one can't write it. */
static gboolean
is_newer (LapDocument *self)
{
  return self->week != NULL ? self->week->version > LAP_WEEK_VERSION : self->session->version > LAP_SESSION_VERSION;
}

static LapDocumentState
state_now (LapDocument *self)
{
  if (is_newer (self))
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
compute_session (LapDocument *self, GError **error)
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

static gboolean
compute_week (LapDocument *self, GError **error)
{
  if (!lap_week_check (self->week, error))
    return FALSE;
  lap_week_sessions_watch (self->sessions, self->week);
  g_clear_pointer (&self->checkup, lap_checkup_unref);
  self->checkup = lap_checkup_new_week (self->week, self->date, lap_week_sessions_attachments (self->sessions));
  return TRUE;
}

static gboolean
compute (LapDocument *self, GError **error)
{
  return self->week != NULL ? compute_week (self, error) : compute_session (self, error);
}

static void
tell_changed (LapDocument *self)
{
  update_state (self);
  g_object_notify_by_pspec (G_OBJECT (self), props[PROP_TITLE]);
  g_signal_emit (self, signals[CHANGED], 0);
}

static void
compute_again (LapDocument *self)
{
  g_autoptr (GError) error = NULL;

  /* Undo and redo only lead to states that have been computed before. */
  if (!compute (self, &error))
    g_critical ("The document has become impossible: %s", error->message);
  tell_changed (self);
}

static void
history_changed_cb (LapDocument *self)
{
  if (!self->trying)
    compute_again (self);
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
  g_clear_object (&self->sessions);
  g_clear_object (&self->history);
  g_clear_object (&self->root);
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

/* Its file is @path from now on, as it was when it had @etag. Both may be NULL. */
static void
set_file (LapDocument *self, const char *path, const char *etag)
{
  g_free (self->path);
  self->path = g_strdup (path);
  g_free (self->etag);
  self->etag = g_strdup (etag);
  if (self->sessions != NULL)
    lap_week_sessions_set_file (self->sessions, path);
}

static LapDocument *
document_new (gpointer root, const char *path, const char *etag, GError **error)
{
  g_autoptr (LapDocument) self = g_object_new (LAP_TYPE_DOCUMENT, NULL);

  self->root = g_object_ref (root);
  if (LAP_IS_WEEK (root)) {
    self->week = root;
    self->sessions = lap_week_sessions_new ();
    g_signal_connect_object (self->sessions, "changed", G_CALLBACK (compute_again), self, G_CONNECT_SWAPPED);
  } else
    self->session = root;
  set_file (self, path, etag);
  if (!compute (self, error))
    return NULL;
  self->state = state_now (self);
  return g_steal_pointer (&self);
}

LapDocument *
lap_document_new (gpointer root, GError **error)
{
  return document_new (root, NULL, NULL, error);
}

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

  return bytes != NULL ? lap_document_from_file (bytes, path, etag, error) : NULL;
}

LapDocument *
lap_document_from_file (GBytes *bytes, const char *path, const char *etag, GError **error)
{
  g_autoptr (LapObject) root = NULL;
  g_autoptr (GError) mistake = NULL;
  LapDocument *self = NULL;

  root = root_from_bytes (bytes, path, &mistake);
  if (root != NULL)
    self = document_new (root, path, etag, &mistake);
  if (self == NULL) {
    if (root != NULL)
      lap_error_add_line (mistake, bytes);
    g_propagate_prefixed_error (error, g_steal_pointer (&mistake), "%s: ", path);
  }
  return self;
}

/* No file holds it as it is. */
static void
note_unsaved (LapDocument *self)
{
  lap_history_saved (self->history, LAP_HISTORY_NEVER);
  self->state = state_now (self);
}

LapDocument *
lap_document_recover (GBytes *bytes, const char *path, const char *etag, GError **error)
{
  g_autoptr (LapObject) root = root_from_bytes (bytes, path, error);
  LapDocument *self = root != NULL ? document_new (root, path, etag, error) : NULL;

  if (self == NULL)
    return NULL;
  self->recovered = TRUE;
  note_unsaved (self);
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
  note_unsaved (copy);
  return copy;
}

LapSession *
lap_document_session (LapDocument *self)
{
  return self->session;
}

LapWeek *
lap_document_week (LapDocument *self)
{
  return self->week;
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
  return self->timeline != NULL ? self->timeline->catalogue : self->builtin;
}

LapAttachments *
lap_document_attachments (LapDocument *self)
{
  return self->sessions != NULL ? lap_week_sessions_attachments (self->sessions) : NULL;
}

int
lap_document_date (LapDocument *self)
{
  return self->date;
}

void
lap_document_set_date (LapDocument *self, int date)
{
  int first = date != 0 ? lap_date_week (date, lap_customs ().first_day) : 0;

  if (first == self->date)
    return;
  self->date = first;
  compute_again (self);
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

LapDocumentState
lap_document_state (LapDocument *self)
{
  return self->state;
}

const char *
lap_document_title (LapDocument *self)
{
  const char *title = self->week != NULL ? self->week->title : self->session != NULL ? self->session->title : NULL;

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

const char *
lap_document_why_not (LapDocument *self)
{
  return lap_document_is_editable (self) ? NULL
         : _("A newer version of Lapwing wrote this. It can be read and printed; to change it, update Lapwing.");
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

  if (!lap_document_is_editable (self) && lap_edits_n (edits) > 0)
    lap_document_tell (self, lap_document_why_not (self));
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
  set_file (self, save->path, etag);
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
  bytes = bytes_at (self, target);
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
