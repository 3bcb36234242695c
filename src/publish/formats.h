/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The formats this build can publish. A format is one file in this folder and one row here; the commands, the
 * window and the tests go through the rows.
 *
 * Calling order: find a row, fill in a LapPublication, lap_publish(). Same publication, same bytes on every
 * machine, except where a format says that it needs a part of the system.
 */
#pragma once

#include "publish/output.h"
#include "timeline/timeline.h"

G_BEGIN_DECLS

/* What is published, and how. */
typedef struct {
  LapTimeline *timeline; /* of a session, or NULL */
  LapObject   *week;     /* or NULL */
  double       offset;   /* seconds that the film clock is moved by, beyond the session's own lead */
  gboolean     takes;    /* put it on the takes that were kept */
  gboolean     spoken;   /* names are said between the tones */
  const char  *at;       /* RFC 3339 without a zone: when the session is held; NULL = not said */
  const char  *timezone; /* of the tz database, or NULL */
  const char  *from;     /* the first day, YYYY-MM-DD, or NULL */
} LapPublication;

typedef enum {
  LAP_FORMAT_SESSION = 1 << 0, /* of a session */
  LAP_FORMAT_WEEK = 1 << 1,    /* of a week */
  LAP_FORMAT_OFFSET = 1 << 2,  /* --offset moves it */
  LAP_FORMAT_TAKES = 1 << 3,   /* --takes puts it on the takes */
  LAP_FORMAT_AT = 1 << 4,      /* --at and --timezone say when */
  LAP_FORMAT_FROM = 1 << 5,    /* --from says from which day on */
  LAP_FORMAT_OF_TAKES = 1 << 6, /* it is made of the takes in any case */
  LAP_FORMAT_SPOKEN = 1 << 7,  /* --spoken adds names */
} LapFormatFlags;

typedef struct {
  const char *id;
  const char *title;    /* marked for translation, not yet translated */
  const char *purpose;  /* likewise: what it is for */
  const char *suffixes; /* "wav flac": how its files may end, the usual first; "/" is a folder */
  LapFormatFlags flags;
  /* Writes what is published. @suffix is one of the row's. FALSE with @error of any of LapError. */
  gboolean  (*write)    (const LapPublication *what,
                         const char           *suffix,
                         LapOutput            *output,
                         GError              **error);
} LapFormat;

guint            lap_formats_n      (void);
const LapFormat *lap_formats_nth    (guint n);
/* NULL where no format has that id. */
const LapFormat *lap_formats_find   (const char            *id);

/* Writes @what to @path ("-" is standard output), whole or not at all. @watch may be NULL. FALSE with
 * LAP_ERROR_USAGE where the format can't be made of what is published, LAP_ERROR_MISSING where a part of the
 * system isn't there, LAP_ERROR_UNWRITABLE, or G_IO_ERROR_CANCELLED. Needs no main loop: a worker may call it
 * with a timeline of its own. */
gboolean         lap_publish        (const LapFormat       *format,
                                     const LapPublication  *what,
                                     const char            *path,
                                     const LapProgress        *watch,
                                     GError               **error);

G_END_DECLS
