/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a week wants to know of the sessions that its classes hold: length, effort, regions, kit, noise. Files are
 * somebody else's: a source gives a session for a path, and gives the same object for as long as its file stays as
 * it is; what was computed from it is kept just as long.
 *
 * Effort: the mean over the main parts, as a share of the heart-rate reserve, in the classes of the American College
 * of Sports Medicine (Garber 2011): below 40 % easy, below 60 % moderate, from there on hard. A region counts where
 * at least a tenth of the main work has one of its muscles working hard.
 */
#pragma once

#include "model/class.h"
#include "model/session.h"

G_BEGIN_DECLS

typedef struct {
  LapSession *session; /* held */
  int         length;  /* seconds */
  LapStrain   strain;
  guint32     regions;
  guint32     kit;     /* what is laid out for it; no wall, no partner */
  gboolean    loud;    /* something in it is */
} LapAttached;

/* Where sessions come from. Both functions may be NULL: then there are none. */
typedef struct {
  /* The session at @path, or NULL with @error. Transfer none. */
  LapSession *(*load) (const char *path, gpointer data, GError **error);
  /* Another path at which a file of that name lies, or NULL. Transfer full. */
  char       *(*seek) (const char *path, gpointer data);
  gpointer     data;
} LapSessionSource;

typedef struct _LapAttachments LapAttachments;

/* What counts of a class: its session's where that can be read, else what the class says itself. */
typedef struct {
  gboolean named;   /* it names a session */
  gboolean found;   /* which can be read */
  int      length;  /* of the session, seconds; 0 without */
  int      strain;  /* LapStrain; -1 = not known */
  guint32  regions, kit;
  gboolean loud;
} LapClassFacts;

LapAttachments    *lap_attachments_new   (const LapSessionSource *source);
LapAttachments    *lap_attachments_ref   (LapAttachments         *attachments);
void               lap_attachments_unref (LapAttachments         *attachments);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapAttachments, lap_attachments_unref)

/* While they wait no session is read: what a class says itself counts, as if it named none. */
void               lap_attachments_set_waiting (LapAttachments   *attachments,
                                          gboolean                waiting);
gboolean           lap_attachments_are_waiting (LapAttachments   *attachments);
/* What is at @path, or NULL with @error (may be NULL) where it can't be read or laid out. Holds until the next call
 * for the same path. */
const LapAttached *lap_attachments_find  (LapAttachments         *attachments,
                                          const char             *path,
                                          GError                **error);
/* @attachments may be NULL: then no session can be read. */
void               lap_class_facts       (const LapClass         *c,
                                          LapAttachments         *attachments,
                                          LapClassFacts          *facts);
char              *lap_attachments_seek  (LapAttachments         *attachments,
                                          const char             *path);

G_END_DECLS
