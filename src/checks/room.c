/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Checks of kit, space and people.
 */
#include "base/customs.h"
#include "checks/ease.h"
#include "checks/remedies.h"
#include "checks/report.h"

#include <glib/gi18n-lib.h>

/* kit-missing */

static void
kit_missing (LapCheckup *cx, const LapCheck *check, guint turn)
{
  guint32 missing = LAP_TASK (cx, turn)->kit & ~lap_kit_mask (cx->session->kit);

  if (missing != 0)
    lap_report_turns (cx, check, turn, turn, turn)->mask = missing;
}

static void
find_kit_missing (LapCheckup *cx, const LapCheck *check)
{
  lap_each_task (cx, check, kit_missing);
}

static char *
tell_kit_missing (const LapCheckup *cx, const LapWarning *w)
{
  g_autofree char *kit = lap_words_join (&lap_kit_words, w->mask);

  return g_strdup_printf (_("%1$s needs what the session’s kit doesn’t list: %2$s."), lap_turn_name (cx, w->a), kit);
}

static void
remedy_kit_missing (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  LapKit *now = cx->session->kit;
  g_autoptr (LapKit) kit = now != NULL ? lap_kit_copy (now) : lap_kit_new ();
  g_autofree char *words = lap_words_join (&lap_kit_words, w->mask);
  LapEdits *edits = lap_edits_new (_("Add to the kit"));

  for (guint i = 0; i < LAP_N_KIT; i++)
    if (w->mask & LAP_BIT (i))
      lap_kit_set (kit, i, kit->counted ? cx->session->count : 1);
  lap_edits_set_boxed (edits, cx->session, "kit", LAP_TYPE_KIT, kit);
  lap_remedy_add (remedies, g_strdup_printf (_("Add to the kit: %s"), words), edits);
  lap_remedy_easier (cx, w->a, remedies);
}

/* kit-short */

/* How many of @word are in use at once: one each when all work together, what all its stations take when they
 * rotate, never more than there are people. */
static int
in_use (const LapCheckup *cx, const LapStretch *s, guint word, guint *turn)
{
  int most = 0, stations = 0;
  int per_round = 0;

  for (guint i = 0; i < lap_part_n (s->part); i++)
    per_round += lap_part_nth (s->part, i)->kind == LAP_BLOCK_EXERCISE;
  for (guint i = s->turn; i < s->turn + s->n_turns; i++) {
    if (!(LAP_TASK (cx, i)->kit & LAP_BIT (word)))
      continue;
    if (most == 0)
      *turn = i;
    most = cx->session->count;
    stations += (int) (i - s->turn) < per_round;
  }
  return s->part->run == LAP_RUN_STATIONS && most > 0 ? MIN (most, MAX (1, stations) * s->part->per_station) : most;
}

static void
find_kit_short (LapCheckup *cx, const LapCheck *check)
{
  const LapKit *kit = cx->session->kit;

  if (kit == NULL || !kit->counted)
    return;
  for (guint p = 0; p < cx->timeline->n_parts; p++)
    for (guint word = 0; word < LAP_N_KIT; word++) {
      guint turn = 0;
      int needs = in_use (cx, &cx->timeline->parts[p], word, &turn);
      LapWarning *w;

      if (!(lap_kit_mask (kit) & LAP_BIT (word)) || lap_kit_count (kit, word) >= needs)
        continue;
      w = lap_report_turns (cx, check, turn, turn, turn);
      w->mask = LAP_BIT (word);
      w->b = needs;
      w->c = lap_kit_count (kit, word);
    }
}

static char *
tell_kit_short (const LapCheckup *cx, const LapWarning *w)
{
  g_autofree char *kit = lap_words_join (&lap_kit_words, w->mask);

  return g_strdup_printf (_("%1$s: %2$u in use at once (%3$s), and %4$u there."), lap_turn_name (cx, w->a), w->b, kit,
                          w->c);
}

/* space-short and crowded */

static gboolean
has_space (const LapCheckup *cx)
{
  return cx->session->space_width > 0 && cx->session->space_length > 0;
}

static void
space_short (LapCheckup *cx, const LapCheck *check, guint turn)
{
  const LapExercise *e = LAP_TASK (cx, turn)->shown;
  double width = cx->session->space_width, length = cx->session->space_length;

  if (e != NULL && !(e->width <= width && e->length <= length) && !(e->width <= length && e->length <= width))
    lap_report_turns (cx, check, turn, turn, turn);
}

static void
find_space_short (LapCheckup *cx, const LapCheck *check)
{
  if (has_space (cx))
    lap_each_task (cx, check, space_short);
}

static char *
tell_space_short (const LapCheckup *cx, const LapWarning *w)
{
  const LapExercise *e = LAP_TASK (cx, w->a)->shown;

  g_autofree char *wide = lap_distance_up_text (e->width), *deep = lap_distance_up_text (e->length);
  g_autofree char *width = lap_distance_text (cx->session->space_width);
  g_autofree char *length = lap_distance_text (cx->session->space_length);

  return g_strdup_printf (_("%1$s needs %2$s by %3$s; there are %4$s by %5$s."), lap_turn_name (cx, w->a), wide, deep,
                          width, length);
}

static void
remedy_space_short (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  lap_remedy_easier (cx, w->a, remedies);
  lap_remedy_choose (cx, w->a, remedies);
}

static double
floor_of (const LapExercise *e)
{
  return (e->width + 0.5) * (e->length + 0.5);
}

static void
find_crowded (LapCheckup *cx, const LapCheck *check)
{
  double space = cx->session->space_width * cx->session->space_length, needs = 0;
  guint widest = 0;
  LapWarning *w;

  /* One person alone has no leader beside them and nobody to keep clear of. */
  if (!has_space (cx) || cx->session->count < 2)
    return;
  for (guint i = 0; i < cx->timeline->n_turns; i++) {
    const LapExercise *e = LAP_TASK (cx, i)->shown;

    if (e == NULL || cx->session->count * floor_of (e) + 6 <= needs)
      continue;
    needs = cx->session->count * floor_of (e) + 6;
    widest = i;
  }
  if (needs <= space)
    return;
  w = lap_report_turns (cx, check, widest, widest, widest);
  w->x = needs;
  w->y = space;
}

static char *
tell_crowded (const LapCheckup *cx, const LapWarning *w)
{
  g_autofree char *apart = lap_distance_text (0.5), *leader = lap_area_text (6);
  g_autofree char *needs = lap_area_text (w->x), *space = lap_area_text (w->y);

  /* Translators: people, exercise, distance between them, and areas: of the leader, needed, there. */
  return g_strdup_printf (_("%1$d people at %2$s, %3$s apart and %4$s for the leader, need %5$s; there are %6$s."),
                          cx->session->count, lap_turn_name (cx, w->a), apart, leader, needs, space);
}

static void
remedy_crowded (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  int fit = (int) ((w->y - 6) / floor_of (LAP_TASK (cx, w->a)->shown));
  LapEdits *edits = lap_edits_new (_("Fewer people"));

  if (fit >= 1)
    lap_edits_set_int (edits, cx->session, "group-count", fit);
  lap_remedy_add (remedies, g_strdup_printf (_("Plan for %d people"), fit), edits);
}

/* stations-short, stations-gaps, partner-odd */

static int
stations_of (const LapPart *part)
{
  int n = 0;

  for (guint i = 0; i < lap_part_n (part); i++)
    n += lap_part_nth (part, i)->kind == LAP_BLOCK_EXERCISE;
  return n;
}

static void
find_stations (LapCheckup *cx, const LapCheck *check, gboolean gaps)
{
  for (guint p = 0; p < cx->timeline->n_parts; p++) {
    const LapPart *part = cx->timeline->parts[p].part;
    int n = stations_of (part), groups = (cx->session->count + part->per_station - 1) / part->per_station;
    LapWarning *w;

    if (part->run != LAP_RUN_STATIONS || n == 0 || (gaps ? groups >= n : n * part->per_station >= cx->session->count))
      continue;
    w = lap_report_part (cx, check, p);
    w->a = n;
    w->b = groups;
  }
}

static void
find_stations_short (LapCheckup *cx, const LapCheck *check)
{
  find_stations (cx, check, FALSE);
}

static void
find_stations_gaps (LapCheckup *cx, const LapCheck *check)
{
  find_stations (cx, check, TRUE);
}

static char *
tell_stations_short (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup_printf (_("%1$u stations of %2$d people hold %3$u; %4$d come."), w->a,
                          cx->timeline->parts[w->part].part->per_station,
                          w->a * cx->timeline->parts[w->part].part->per_station, cx->session->count);
}

static char *
tell_stations_gaps (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup_printf (_("%1$u of the %2$u stations stand empty at any time."), w->a - w->b, w->a);
}

static void
remedy_stations_short (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  int people = (cx->session->count + (int) w->a - 1) / (int) w->a;
  LapEdits *edits = lap_edits_new (_("Change the people at a station"));

  lap_edits_set_int (edits, lap_session_nth (cx->session, w->part), "per-station", people);
  lap_remedy_add (remedies, g_strdup_printf (_("%d people at each station"), people), edits);
}

static void
partner_odd (LapCheckup *cx, const LapCheck *check, guint turn)
{
  const LapTask *task = LAP_TASK (cx, turn);
  const LapPart *part = cx->timeline->parts[LAP_TURN (cx, turn)->part].part;
  int people = part->run == LAP_RUN_STATIONS ? part->per_station : cx->session->count;

  if ((task->block->with != 0 || (task->kit & LAP_BIT (LAP_KIT_PARTNER))) && people % 2 == 1)
    lap_report_turns (cx, check, turn, turn, turn)->b = people;
}

static void
find_partner_odd (LapCheckup *cx, const LapCheck *check)
{
  lap_each_task (cx, check, partner_odd);
}

static char *
tell_partner_odd (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup_printf (ngettext ("%1$s is done in pairs, and %2$u person is there.",
                                    "%1$s is done in pairs, and %2$u people are there.", w->b),
                          lap_turn_name (cx, w->a), w->b);
}

static void
remedy_partner_odd (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  LapBlock *block = LAP_TASK (cx, w->a)->block;
  LapEdits *edits = lap_edits_new (_("Work alone"));

  if (block->with != 0)
    lap_edits_set_int (edits, block, "with", 0);
  lap_remedy_add (remedies, g_strdup (_("Work alone")), edits);
}

const LapCheck lap_checks_room[] = {
  { "kit-missing", LAP_SEVERITY_WARNING, LAP_NEEDS_TIMELINE, N_("Kit that isn’t there"),
    N_("People read the kit list before they come."), N_("common practice"),
    find_kit_missing, tell_kit_missing, NULL, remedy_kit_missing },
  { "kit-short", LAP_SEVERITY_STOP, LAP_NEEDS_TIMELINE, N_("Not enough kit"),
    N_("Somebody would stand without."), N_("counted from the plan"),
    find_kit_short, tell_kit_short, NULL, NULL },
  { "space-short", LAP_SEVERITY_STOP, LAP_NEEDS_TIMELINE, N_("Not enough room for the move"),
    N_("A limb would meet a wall or the furniture."), N_("counted from the plan"),
    find_space_short, tell_space_short, NULL, remedy_space_short },
  { "crowded", LAP_SEVERITY_WARNING, LAP_NEEDS_TIMELINE, N_("Crowded"),
    N_("Everybody’s move, half a metre to the next person, and two by three metres for the leader."),
    N_("common practice; local building rules come first"),
    find_crowded, tell_crowded, NULL, remedy_crowded },
  { "stations-short", LAP_SEVERITY_STOP, LAP_NEEDS_TIMELINE, N_("Too few stations"),
    N_("Somebody would have nowhere to go."), N_("counted from the plan"),
    find_stations_short, tell_stations_short, NULL, remedy_stations_short },
  { "stations-gaps", LAP_SEVERITY_NOTE, LAP_NEEDS_TIMELINE, N_("Empty stations"),
    N_("It works; fewer stations and more rounds are livelier."), N_("counted from the plan"),
    find_stations_gaps, tell_stations_gaps, NULL, NULL },
  { "partner-odd", LAP_SEVERITY_WARNING, LAP_NEEDS_TIMELINE, N_("One without a partner"),
    N_("Plan a three, or a version to do alone."), N_("counted from the plan"),
    find_partner_odd, tell_partner_odd, NULL, remedy_partner_odd },
  { NULL },
};
