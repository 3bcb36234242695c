/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "checks/ease.h"

#include "catalogue/camera.h"
#include "checks/remedies.h"

#include <glib/gi18n-lib.h>

/* What suits this session for warm-up or cool-down, kit, noise and care words included. */
static LapFilter
suits (const LapCheckup *cx, LapPartKind kind)
{
  LapFilter filter = LAP_FILTER_ANY;

  filter.uses = LAP_BIT (kind == LAP_PART_WARM_UP ? LAP_USE_WARM_UP : LAP_USE_COOL_DOWN);
  filter.has_kit = TRUE;
  filter.kit = lap_kit_mask (cx->session->kit);
  filter.quiet = cx->session->quiet;
  filter.without = lap_words_mask (&lap_care_words, (const char * const *) cx->session->also_for);
  /* People warm up on their feet; they may lie down to cool down, one posture after the other. */
  if (kind == LAP_PART_WARM_UP)
    filter.postures = LAP_BIT (LAP_POSTURE_STANDING);
  return filter;
}

/* Whether the room and the camera have space for it. */
static gboolean
has_room (const LapCheckup *cx, const LapExercise *e)
{
  const LapSession *s = cx->session;
  double width = s->space_width, length = s->space_length;

  if (lap_camera_distance (e, s->lens, s->frame == LAP_FRAME_PORTRAIT) > s->room)
    return FALSE;
  return width <= 0 || length <= 0 || (e->width <= width && e->length <= length) ||
         (e->width <= length && e->length <= width);
}

/* Up to @most exercises that suit, each for a region that none before it works, standing ones first. */
static GPtrArray *
gather (const LapCheckup *cx, LapPartKind kind, guint most)
{
  LapFilter filter = suits (cx, kind);
  GPtrArray *found = g_ptr_array_new ();
  guint32 done = 0;

  for (int height = 3; height >= 0; height--)
    for (guint i = 0; i < lap_catalogue_n (cx->timeline->catalogue) && found->len < most; i++) {
      LapExercise *e = lap_catalogue_nth (cx->timeline->catalogue, i);

      if (lap_posture_height (e->posture) != height || e->posture == LAP_POSTURE_ON_CHAIR ||
          !has_room (cx, e) || !lap_filter_matches (&filter, e) || !(lap_muscle_regions (e->primary_mask) & ~done))
        continue;
      done |= lap_muscle_regions (e->primary_mask);
      g_ptr_array_add (found, e);
    }
  return found;
}

void
lap_remedy_ease (const LapCheckup *cx, LapPartKind kind, int seconds, GPtrArray *remedies)
{
  g_autoptr (GPtrArray) moves = gather (cx, kind, 6);
  g_autoptr (LapPart) part = lap_part_new (kind);
  g_autoptr (GPtrArray) blocks = g_ptr_array_new_with_free_func (g_object_unref);
  LapEdits *edits;
  guint at = 0;
  int each;

  if (moves->len == 0)
    return;
  /* What it has to last is a share of the session, which grows with it. */
  each = (seconds * 6 / 5 / (int) moves->len + 4) / 5 * 5;
  for (guint i = 0; i < moves->len; i++)
    g_ptr_array_add (blocks, lap_block_new_exercise (((LapExercise *) g_ptr_array_index (moves, i))->id, each, 0));
  lap_list_splice (part->blocks, 0, 0, blocks);
  part->rest_after = kind == LAP_PART_WARM_UP ? 20 : 0;
  for (guint p = 0; p < cx->timeline->n_parts; p++)
    if (cx->timeline->parts[p].part->kind == LAP_PART_MAIN) {
      if (kind == LAP_PART_WARM_UP) {
        at = p;
        break;
      }
      at = p + 1;
    }
  edits = lap_edits_new (kind == LAP_PART_WARM_UP ? _("Add a warm-up") : _("Add a cool-down"));
  if (kind == LAP_PART_COOL_DOWN)
    lap_edits_set_int (edits, lap_session_nth (cx->session, at - 1), "rest-after", 20);
  lap_edits_insert (edits, cx->session->parts, at, part);
  lap_remedy_add (remedies, g_strdup (lap_edits_label (edits)), edits);
}

void
lap_remedy_longer (const LapCheckup *cx, LapPartKind kind, int seconds, GPtrArray *remedies)
{
  LapEdits *edits = lap_edits_new (kind == LAP_PART_WARM_UP ? _("Lengthen the warm-up") : _("Lengthen the cool-down"));
  int turns = 0, more;

  for (guint i = 0; i < cx->timeline->n_turns; i++)
    turns += LAP_TURN (cx, i)->part_kind == (int) kind;
  more = turns > 0 ? (seconds + turns - 1) / turns : 0;
  more = (more + 4) / 5 * 5;
  for (guint p = 0; p < cx->timeline->n_parts; p++) {
    LapPart *part = lap_session_nth (cx->session, p);

    for (guint b = 0; part->kind == (int) kind && b < lap_part_n (part); b++)
      if (lap_part_nth (part, b)->kind == LAP_BLOCK_EXERCISE)
        lap_edits_set_int (edits, lap_part_nth (part, b), "work", MIN (10800, lap_part_nth (part, b)->work + more));
  }
  lap_remedy_add (remedies, g_strdup_printf (_("%d s longer on each"), more), edits);
}

void
lap_remedy_ease_for (const LapCheckup *cx, guint p, guint32 regions, LapImpact impact, GPtrArray *remedies)
{
  LapPart *part = lap_session_nth (cx->session, p);
  LapFilter filter = suits (cx, part->kind);
  int work = lap_part_n (part) > 0 && lap_part_nth (part, 0)->work > 0 ? lap_part_nth (part, 0)->work : 40;

  filter.regions = regions;
  for (guint i = 0; i < lap_catalogue_n (cx->timeline->catalogue); i++) {
    LapExercise *e = lap_catalogue_nth (cx->timeline->catalogue, i);
    g_autoptr (LapBlock) block = NULL;

    if (!lap_filter_matches (&filter, e) || e->impact < (int) impact)
      continue;
    block = lap_block_new_exercise (e->id, work, 0);
    lap_remedy_add (remedies, g_strdup_printf (_("Add %s"), lap_exercise_name (e)),
                    lap_verb_add_block (part, lap_part_n (part), block, cx->timeline->catalogue));
    if (remedies->len >= 3)
      return;
  }
}

/* Seconds of main work that the least worked of the muscles of @e has had. */
static int
had (const LapCheckup *cx, const LapExercise *e)
{
  int seconds = 0;

  for (guint i = 0; i < cx->timeline->n_turns; i++)
    if (LAP_TURN (cx, i)->part_kind == LAP_PART_MAIN && (LAP_TASK (cx, i)->primary & e->primary_mask))
      seconds += LAP_TURN (cx, i)->work;
  return seconds;
}

void
lap_remedy_choose (const LapCheckup *cx, guint turn, GPtrArray *remedies)
{
  LapFilter filter = suits (cx, LAP_TURN (cx, turn)->part_kind);
  g_autoptr (GHashTable) done = g_hash_table_new (NULL, NULL);

  filter.uses = LAP_TURN (cx, turn)->part_kind == LAP_PART_MAIN ? LAP_BIT (LAP_USE_WORK) : filter.uses;
  filter.impact = LAP_IMPACT_LOW;
  for (guint k = 0; k < 12; k++) {
    LapExercise *best = NULL;
    int least = G_MAXINT;

    for (guint i = 0; i < lap_catalogue_n (cx->timeline->catalogue); i++) {
      LapExercise *e = lap_catalogue_nth (cx->timeline->catalogue, i);

      if (g_hash_table_contains (done, e) || !lap_filter_matches (&filter, e) || !has_room (cx, e) ||
          had (cx, e) >= least)
        continue;
      least = had (cx, e);
      best = e;
    }
    if (best == NULL)
      return;
    g_hash_table_add (done, best);
    lap_remedy_add (remedies, g_strdup_printf (LAP_TASK (cx, turn)->wanted == NULL ? _("Take %s") : _("Take %s instead"),
                                               lap_exercise_name (best)),
                    lap_verb_set_exercise (LAP_TASK (cx, turn)->block, best->id, cx->timeline->catalogue));
  }
}
