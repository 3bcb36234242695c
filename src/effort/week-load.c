/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "effort/week-load.h"

#include "model/occurrences.h"

static void
add_regions (LapWeekLoad *load, const LapClassFacts *facts, int day, int minutes)
{
  for (guint i = 0; i < LAP_N_REGIONS; i++) {
    int *sum = facts->strain == LAP_STRAIN_HARD ? &load->hard[i][day] : &load->some[i][day];

    if ((facts->regions & LAP_BIT (i)) == 0)
      continue;
    *sum += minutes;
    load->most = MAX (load->most, load->hard[i][day] + load->some[i][day]);
  }
}

static void
add_coach (LapWeekLoad *load, const LapWeek *week, const LapOccurrence *o, const LapClassFacts *facts)
{
  LapCoach *coach = lap_week_coach (week, o->coach);
  LapCoachLoad *its = coach != NULL ? &load->coaches[lap_list_find (week->coaches, coach)] : NULL;

  if (its == NULL)
    return;
  its->minutes += o->c->minutes;
  its->classes++;
  its->hard += facts->strain == LAP_STRAIN_HARD && o->c->takes_part;
}

LapWeekLoad *
lap_week_load_new (const LapWeek *week, int date, LapAttachments *attachments)
{
  LapWeekLoad *load = g_new0 (LapWeekLoad, 1);
  g_autoptr (GArray) all = lap_occurrences_new (week, date);

  load->n_coaches = lap_list_n (week->coaches);
  load->coaches = g_new0 (LapCoachLoad, load->n_coaches);
  for (guint day = 0; day < LAP_N_DAYS; day++)
    load->strain[day] = -1;
  for (guint i = 0; i < all->len; i++) {
    const LapOccurrence *o = lap_occurrence_nth (all, i);
    LapClassFacts facts;

    if (o->state != LAP_HELD)
      continue;
    lap_class_facts (o->c, attachments, &facts);
    load->strain[o->day] = MAX (load->strain[o->day], facts.strain);
    add_regions (load, &facts, o->day, o->c->minutes);
    add_coach (load, week, o, &facts);
  }
  return load;
}

void
lap_week_load_free (LapWeekLoad *load)
{
  g_free (load->coaches);
  g_free (load);
}
