/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What may be wrong with a plan. A check is one row of a theme file's table and its functions: `find` goes over the
 * timeline, `find_week` over the classes of a week, and reports warnings as plain structs; words, reasons and remedies
 * are made only when somebody asks.
 *
 * Calling order: lap_checkup_new() or lap_checkup_new_week() after every edit; lap_checkup_nth(); then
 * lap_warning_message() and the like. A checkup is immutable and keeps its timeline or its week. Remedies are edits
 * for the history, never applied here.
 *
 * A new check: one function and one row in the theme file it belongs to, and two fixtures, tests/data/checks/
 * <id>.good.lapwing and <id>.bad.lapwing (.lapweek for one of weeks alone); tests, commands and help walk the registry.
 */
#pragma once

#include "edit/edit.h"
#include "effort/attached.h"
#include "model/week.h"
#include "talk/talk.h"
#include "timeline/timeline.h"

G_BEGIN_DECLS

typedef enum { LAP_SEVERITY_STOP, LAP_SEVERITY_WARNING, LAP_SEVERITY_NOTE } LapSeverity;
extern const LapWords lap_severities;

typedef struct _LapCheck LapCheck;
typedef struct _LapCheckup LapCheckup;

typedef struct {
  const LapCheck *check;
  LapSeverity     severity;
  int             start, end;         /* seconds on the session clock; -1 = no place in time */
  int             part, block, round; /* part, block from 0, round from 1; -1 = doesn't apply */
  gboolean        fine;               /* kept quiet by the session, the part, the block or a class */
  int             when;               /* of a week: minutes from midnight before its Monday; -1 = no time */
  guint           first_class, n_classes; /* of a week: see lap_warning_class() */
  guint           order, serial;      /* of its check in the registry; among the reports */
  /* What find() knew and tell(), why() and remedies() need; each check says what they are to it. */
  guint           a, b, c;
  guint32         mask;
  double          x, y;
  const char     *text;               /* not owned: lives as long as the checkup */
} LapWarning;

/* A remedy: what a button says, and the edits behind it. */
typedef struct {
  char     *label;
  LapEdits *edits;
  gboolean  resort; /* the last one: it is offered however many better ones there are */
} LapRemedy;

typedef enum { LAP_NEEDS_TIMELINE, LAP_NEEDS_EFFORT, LAP_NEEDS_TALK } LapNeeds;

struct _LapCheck {
  const char *id;
  LapSeverity severity; /* the usual one */
  LapNeeds    needs;
  const char *title;    /* marked for translation: "The same muscles twice running" */
  const char *reason;   /* marked for translation: why it matters, one sentence */
  const char *source;   /* who says so, or "common practice"; marked for translation */
  /* NULL for a check of weeks alone. */
  void      (*find)     (LapCheckup *checkup, const LapCheck *check);
  /* What and where, one or two plain sentences without the clock. Transfer full. */
  char     *(*tell)     (const LapCheckup *checkup, const LapWarning *warning);
  /* May be NULL: the numbers behind it, instead of the reason alone. Transfer full. */
  char     *(*why)      (const LapCheckup *checkup, const LapWarning *warning);
  /* May be NULL: adds LapRemedy to @remedies with lap_remedy_add(), the best first. */
  void      (*remedies) (const LapCheckup *checkup, const LapWarning *warning, GPtrArray *remedies);
  /* NULL for a check of sessions alone. */
  void      (*find_week) (LapCheckup *checkup, const LapCheck *check);
};

/* All checks, of sessions and then of weeks. */
guint             lap_checks_n           (void);
const LapCheck   *lap_checks_nth         (guint n);
const LapCheck   *lap_checks_find        (const char *id);

#define LAP_TYPE_CHECKUP (lap_checkup_get_type ())
GType             lap_checkup_get_type   (void);
LapCheckup       *lap_checkup_new        (LapTimeline *timeline);
/* Only the checks that need no more than @needs; for the benchmark. */
LapCheckup       *lap_checkup_new_up_to  (LapTimeline *timeline,
                                          LapNeeds     needs);
/* Of the week that @date lies in, or of the week as it always is for 0. @attachments (may be NULL) reads the sessions
 * that classes name. */
LapCheckup       *lap_checkup_new_week   (LapWeek        *week,
                                          int             date,
                                          LapAttachments *attachments);
LapCheckup       *lap_checkup_ref        (LapCheckup  *checkup);
void              lap_checkup_unref      (LapCheckup  *checkup);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapCheckup, lap_checkup_unref)

/* NULL for one of a week. */
LapTimeline      *lap_checkup_timeline   (const LapCheckup *checkup);
/* NULL for one of a session. */
LapWeek          *lap_checkup_week       (const LapCheckup *checkup);
/* What it was computed from, to be shown: NULL where the checkup needed less. Transfer none. */
const LapEffort  *lap_checkup_effort     (const LapCheckup *checkup);
const LapTalk    *lap_checkup_talk       (const LapCheckup *checkup);
/* Sorted: not fine first, then by severity, time, check. */
guint             lap_checkup_n          (const LapCheckup *checkup);
const LapWarning *lap_checkup_nth        (const LapCheckup *checkup,
                                          guint             n);
/* Stops and warnings that aren't kept fine: not 0 means `check` exits with 1. */
guint             lap_checkup_n_open     (const LapCheckup *checkup);
guint             lap_checkup_count      (const LapCheckup *checkup,
                                          LapSeverity       severity); /* not fine */

/* Of a week: one of the classes it is about, the one to be changed first. Transfer none. */
LapClass         *lap_warning_class      (const LapCheckup *checkup,
                                          const LapWarning *warning,
                                          guint             i);
gboolean          lap_warning_is_about   (const LapCheckup *checkup,
                                          const LapWarning *warning,
                                          const LapClass   *c);
char             *lap_warning_message    (const LapCheckup *checkup,
                                          const LapWarning *warning);
/* "5:00–6:40", or "" without a place in time. */
char             *lap_warning_clock      (const LapWarning *warning);
char             *lap_warning_why        (const LapCheckup *checkup,
                                          const LapWarning *warning);
const char       *lap_warning_source     (const LapWarning *warning);
/* Of LapRemedy, at most three, each tried: it helps. Transfer full. */
GPtrArray        *lap_warning_remedies   (const LapCheckup *checkup,
                                          const LapWarning *warning);
/* The same before they are tried, all of them; for whoever tries them in another way. */
GPtrArray        *lap_warning_ideas      (const LapCheckup *checkup,
                                          const LapWarning *warning);
/* The edits that keep it quiet: at its block, else its part, else the session; in a week at its first class,
 * or none where it is about no class. */
LapEdits         *lap_warning_fine       (const LapCheckup *checkup,
                                          const LapWarning *warning);

void              lap_remedy_free        (LapRemedy *remedy);

G_END_DECLS
