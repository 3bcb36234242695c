/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "model/coach.h"

#define AT(member) G_STRUCT_OFFSET (LapCoach, member)
#define FREE(day, index) { "free", day, &lap_kind_hours, AT (free_hours[index]) }

static const LapField fields[] = {
  { "", "id", &lap_kind_text, AT (id), LAP_FIELD_REQUIRED, 1, 200 },
  { "", "name", &lap_kind_text, AT (title) },
  FREE ("mon", LAP_DAY_MON),
  FREE ("tue", LAP_DAY_TUE),
  FREE ("wed", LAP_DAY_WED),
  FREE ("thu", LAP_DAY_THU),
  FREE ("fri", LAP_DAY_FRI),
  FREE ("sat", LAP_DAY_SAT),
  FREE ("sun", LAP_DAY_SUN),
  { "", "most-a-day", &lap_kind_int, AT (most_a_day), 0, 0, 1000 },
  { "", "can", &lap_kind_texts, AT (can) },
};

static const LapRecord record = {
  "a coach", fields, G_N_ELEMENTS (fields), .extras = G_STRUCT_OFFSET (LapObject, extras),
};

G_DEFINE_TYPE (LapCoach, lap_coach, LAP_TYPE_OBJECT)

static void
lap_coach_class_init (LapCoachClass *klass)
{
  lap_object_class_install (LAP_OBJECT_CLASS (klass), &record);
}

static void
lap_coach_init (LapCoach *self)
{
  lap_object_setup (LAP_OBJECT (self));
}

LapCoach *
lap_coach_new (const char *id, const char *title)
{
  LapCoach *coach = g_object_new (LAP_TYPE_COACH, NULL);

  coach->id = g_strdup (id);
  coach->title = g_strdup (title);
  return coach;
}

const char *
lap_coach_title (const LapCoach *coach)
{
  return coach->title != NULL && *coach->title != '\0' ? coach->title : coach->id;
}

gboolean
lap_coach_is_free (const LapCoach *coach, LapDay day, int start, int end)
{
  for (guint d = 0; d < LAP_N_DAYS; d++)
    if (coach->free_hours[d] != NULL)
      return lap_hours_hold (coach->free_hours[day], start, end);
  return TRUE;
}

gboolean
lap_coach_can (const LapCoach *coach, const char *kind)
{
  return coach->can == NULL || g_strv_contains ((const char * const *) coach->can, kind);
}
