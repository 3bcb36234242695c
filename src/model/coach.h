/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A coach of a week: when free, what trained for. Read the fields; write by edits.
 */
#pragma once

#include "model/object.h"
#include "model/when.h"

G_BEGIN_DECLS

#define LAP_TYPE_COACH (lap_coach_get_type ())
#define LAP_COACH(o) (G_TYPE_CHECK_INSTANCE_CAST ((o), LAP_TYPE_COACH, LapCoach))
#define LAP_IS_COACH(o) (G_TYPE_CHECK_INSTANCE_TYPE ((o), LAP_TYPE_COACH))

typedef struct {
  LapObject parent_instance;
  char     *id;
  char     *title;                  /* the member `name`; NULL or "" = the id */
  LapHours *free_hours[LAP_N_DAYS]; /* all NULL = always free; else a NULL day isn't free */
  int       most_a_day;             /* classes; 0 = no limit */
  char    **can;                    /* kinds of class; NULL = all */
} LapCoach;

typedef struct {
  LapObjectClass parent_class;
} LapCoachClass;

GType       lap_coach_get_type (void);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapCoach, g_object_unref)

LapCoach   *lap_coach_new      (const char     *id,
                                const char     *title);
const char *lap_coach_title    (const LapCoach *coach);
/* Whether all of the minutes @start…@end of @day are free. */
gboolean    lap_coach_is_free  (const LapCoach *coach,
                                LapDay          day,
                                int             start,
                                int             end);
gboolean    lap_coach_can      (const LapCoach *coach,
                                const char     *kind);

G_END_DECLS
