/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The history tells of every change, also of those in the middle of a try; `trying` keeps the document from
 * computing for those. An edit is tried inside an open group of the history, so that an impossible one can be
 * cancelled and leaves no trace, neither to undo nor to redo.
 */
#include "ui/document-private.h"

#include "base/customs.h"

#include <glib/gi18n-lib.h>
#include <stdlib.h>

/* Within so many seconds of the target a session is on time: design, check length-over. */
#define ON_TIME 15

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

void
lap_document_update_state (LapDocument *self)
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
  lap_document_update_state (self);
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

void
lap_document_set_file (LapDocument *self, const char *path, const char *etag)
{
  g_free (self->path);
  self->path = g_strdup (path);
  g_free (self->etag);
  self->etag = g_strdup (etag);
  if (self->sessions != NULL)
    lap_week_sessions_set_file (self->sessions, path);
}

LapDocument *
lap_document_make (gpointer root, const char *path, const char *etag, gboolean waiting, GError **error)
{
  g_autoptr (LapDocument) self = g_object_new (LAP_TYPE_DOCUMENT, NULL);

  self->root = g_object_ref (root);
  if (LAP_IS_WEEK (root)) {
    self->week = root;
    self->sessions = lap_week_sessions_new ();
    lap_attachments_set_waiting (lap_document_attachments (self), waiting);
    g_signal_connect_object (self->sessions, "changed", G_CALLBACK (compute_again), self, G_CONNECT_SWAPPED);
  } else
    self->session = root;
  lap_document_set_file (self, path, etag);
  if (!compute (self, error))
    return NULL;
  self->state = state_now (self);
  return g_steal_pointer (&self);
}

LapDocument *
lap_document_new (gpointer root, GError **error)
{
  return lap_document_make (root, NULL, NULL, FALSE, error);
}

void
lap_document_read_sessions (LapDocument *self)
{
  LapAttachments *attachments = lap_document_attachments (self);

  if (attachments == NULL || !lap_attachments_are_waiting (attachments))
    return;
  lap_attachments_set_waiting (attachments, FALSE);
  compute_again (self);
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

void
lap_document_note_saved (LapDocument *self, guint64 revision)
{
  self->trying = TRUE; /* nothing of the session changes */
  lap_history_saved (self->history, revision);
  self->trying = FALSE;
  lap_document_update_state (self);
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
