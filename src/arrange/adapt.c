/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "arrange/adapt.h"

#include "arrange/pool.h"
#include "edit/verbs.h"

#include <glib/gi18n-lib.h>

static const LapWord fors[] = {
  { "quiet", N_("for a quiet house") },
  { "wrists", N_("kind to the wrists") },
  { "knees", N_("kind to the knees") },
  { "lower-back", N_("kind to the lower back") },
  { "shoulders", N_("kind to the shoulders") },
  { "balance", N_("without standing on one leg") },
  { "after-birth", N_("after birth") },
  { "not-lying", N_("without lying down") },
  { "on-chair", N_("on a chair") },
  { "standing", N_("on one’s feet") },
  { "no-kit", N_("without kit") },
  { "new", N_("for people who are new") },
};
const LapWords lap_fors = { "whom to adapt for", fors, G_N_ELEMENTS (fors) };

#define LYING (LAP_BIT (LAP_POSTURE_PRONE) | LAP_BIT (LAP_POSTURE_SUPINE) | LAP_BIT (LAP_POSTURE_SIDE_LYING))
#define ALL_POSTURES ((1u << LAP_N_POSTURES) - 1)

/* What each asks for, on top of the session's own wishes. */
static const struct {
  int      care;      /* LapCareWord that mustn't be loaded, or -1 */
  guint32  postures;  /* allowed */
  gboolean quiet, no_jumps, no_kit;
  const char *reason;
} rules[LAP_N_FOR] = {
  [LAP_FOR_QUIET] = { -1, ALL_POSTURES, TRUE, TRUE, FALSE, N_("lands softly") },
  [LAP_FOR_WRISTS] = { LAP_CARE_WRISTS, ALL_POSTURES, FALSE, FALSE, FALSE, N_("takes the weight off the wrists") },
  [LAP_FOR_KNEES] = { LAP_CARE_KNEES, ALL_POSTURES, FALSE, FALSE, FALSE, N_("spares the knees") },
  [LAP_FOR_LOWER_BACK] = { LAP_CARE_LOWER_BACK, ALL_POSTURES, FALSE, FALSE, FALSE, N_("spares the lower back") },
  [LAP_FOR_SHOULDERS] = { LAP_CARE_SHOULDERS, ALL_POSTURES, FALSE, FALSE, FALSE, N_("spares the shoulders") },
  [LAP_FOR_BALANCE] = { LAP_CARE_BALANCE, ALL_POSTURES, FALSE, FALSE, FALSE, N_("stands safely") },
  [LAP_FOR_AFTER_BIRTH] = { LAP_CARE_PELVIC_FLOOR, ALL_POSTURES & ~LYING, FALSE, FALSE, FALSE,
                            N_("spares the pelvic floor, without lying down") },
  [LAP_FOR_NOT_LYING] = { -1, ALL_POSTURES & ~LYING, FALSE, FALSE, FALSE, N_("needs no lying down") },
  [LAP_FOR_ON_CHAIR] = { -1, LAP_BIT (LAP_POSTURE_ON_CHAIR), FALSE, FALSE, FALSE, N_("is done on a chair") },
  [LAP_FOR_STANDING] = { -1, LAP_BIT (LAP_POSTURE_STANDING), FALSE, FALSE, FALSE, N_("is done standing") },
  [LAP_FOR_NO_KIT] = { -1, ALL_POSTURES, FALSE, FALSE, TRUE, N_("needs no kit") },
  [LAP_FOR_NEW] = { -1, ALL_POSTURES, FALSE, TRUE, FALSE, N_("has no jumps") },
};

static LapWishes
wishes_for (const LapSession *s, LapPartKind kind, LapFor whom)
{
  const guint32 none = LAP_BIT (LAP_KIT_MAT) | LAP_BIT (LAP_KIT_WALL);
  LapWishes w = lap_wishes_of (s, kind);

  w.postures = rules[whom].postures;
  w.quiet |= rules[whom].quiet;
  w.no_jumps |= rules[whom].no_jumps;
  if (rules[whom].care >= 0)
    w.without |= LAP_BIT (rules[whom].care);
  if (rules[whom].no_kit)
    w.kit &= none;
  /* A wall is everywhere, and a chair is what a session on a chair is about: adapt_kit() lists what was used. */
  w.kit |= LAP_BIT (LAP_KIT_WALL) | (whom == LAP_FOR_ON_CHAIR ? LAP_BIT (LAP_KIT_CHAIR) : 0);
  return w;
}

/* Whether the shown exercise does what mustn't be done; the session's other wishes are none of its business. */
static gboolean
offends (const LapExercise *e, LapFor whom)
{
  const guint32 none = LAP_BIT (LAP_KIT_MAT) | LAP_BIT (LAP_KIT_WALL);

  return (rules[whom].care >= 0 && (e->load_mask & LAP_BIT (rules[whom].care))) ||
         !(LAP_BIT (e->posture) & rules[whom].postures) || (rules[whom].quiet && e->noise == LAP_NOISE_LOUD) ||
         (rules[whom].no_jumps && e->impact == LAP_IMPACT_HIGH) || (rules[whom].no_kit && (e->kit_mask & ~none));
}

/* The exercise that its care entry names, when it suits. */
static LapExercise *
named_instead (LapCatalogue *catalogue, const LapWishes *wishes, const LapExercise *e, LapFor whom)
{
  const LapCare *care = rules[whom].care >= 0 ? lap_exercise_care (e, rules[whom].care) : NULL;
  LapExercise *instead = care != NULL && care->instead != NULL && *care->instead != '\0'
                       ? lap_catalogue_find (catalogue, care->instead) : NULL;

  return instead != NULL && lap_wishes_allow (wishes, instead) ? instead : NULL;
}

/* The words that spare the joint while the exercise is kept; only where nothing else about it offends. */
static const char *
sparing_words (const LapExercise *e, LapFor whom)
{
  const LapCare *care = rules[whom].care >= 0 ? lap_exercise_care (e, rules[whom].care) : NULL;

  if (care == NULL || care->load < 2 || care->say == NULL || *care->say == '\0' ||
      !(LAP_BIT (e->posture) & rules[whom].postures))
    return NULL;
  return g_dgettext (GETTEXT_PACKAGE, care->say);
}

typedef struct {
  const LapTimeline *timeline;
  LapFor      whom;
  LapEdits   *edits;
  GPtrArray  *swaps;
  GHashTable *taken;  /* ids in the part, borrowed */
  GHashTable *changes; /* blocks whose rounds differ -> LapChanges as they are to be */
  guint32     kit;    /* of all exercises that came in */
} Adapt;

static void
add_swap (Adapt *a, guint part, guint block, int round, const LapTask *task, const char *now, const char *reason)
{
  LapSwap *swap = g_new0 (LapSwap, 1);

  swap->part = part;
  swap->block = block;
  swap->round = round;
  swap->was = g_strdup (lap_task_name (task));
  swap->now = g_strdup (now);
  swap->reason = g_strdup (reason);
  swap->solved = now != NULL;
  g_ptr_array_add (a->swaps, swap);
}

/* What is different in the rounds of @block, with all that has been adapted there so far. */
static LapChanges *
changes_of (Adapt *a, LapBlock *block)
{
  LapChanges *changes = g_hash_table_lookup (a->changes, block);

  if (changes == NULL) {
    changes = lap_changes_copy (block->in_round);
    g_hash_table_insert (a->changes, block, changes);
  }
  return changes;
}

/* Puts @exercise (NULL: keeps it and adds @note) into the block, or into its change for @round. */
static void
put (Adapt *a, LapBlock *block, int round, const LapExercise *exercise, const char *note)
{
  LapChange *change;

  if (round == 0) {
    if (exercise != NULL) {
      lap_edits_set_text (a->edits, block, "exercise", exercise->id);
      lap_edits_set_int (a->edits, block, "option", LAP_OPTION_AS_SHOWN);
    } else {
      lap_edits_set_text (a->edits, block, "note", note);
    }
    return;
  }
  change = lap_changes_ensure (changes_of (a, block), round);
  if (exercise != NULL) {
    g_free (change->exercise);
    change->exercise = g_strdup (exercise->id);
    change->option = LAP_OPTION_AS_SHOWN;
    change->present |= LAP_BIT (LAP_CHANGE_EXERCISE) | LAP_BIT (LAP_CHANGE_OPTION);
  } else {
    g_free (change->note);
    change->note = g_strdup (note);
    change->present |= LAP_BIT (LAP_CHANGE_NOTE);
  }
}

static void
write_changes (Adapt *a)
{
  GHashTableIter iter;
  gpointer block, changes;

  g_hash_table_iter_init (&iter, a->changes);
  while (g_hash_table_iter_next (&iter, &block, &changes))
    lap_edits_set_boxed (a->edits, block, "in-round", LAP_TYPE_CHANGES, changes);
}

/* People who are new work steadily, also at what took the place of a jump, and in a round that says otherwise. */
static void
steady (Adapt *a, const LapTurn *turn)
{
  LapBlock *block = a->timeline->tasks[turn->task].block;
  const LapChange *change = lap_changes_find (block->in_round, turn->round);

  if (change == NULL)
    lap_edits_set_int (a->edits, block, "pace", LAP_PACE_STEADY);
  else if (LAP_CHANGE_HAS (change, LAP_CHANGE_PACE) && change->pace != LAP_PACE_STEADY)
    lap_changes_ensure (changes_of (a, block), turn->round)->pace = LAP_PACE_STEADY;
}

static void
adapt_task (Adapt *a, const LapTurn *turn, int round)
{
  const LapTask *task = &a->timeline->tasks[turn->task];
  LapWishes wishes = wishes_for (a->timeline->session, turn->part_kind, a->whom);
  LapExercise *now = named_instead (a->timeline->catalogue, &wishes, task->shown, a->whom);
  const char *words = now == NULL ? sparing_words (task->shown, a->whom) : NULL;

  if (now == NULL && words == NULL)
    now = lap_pool_nearest (a->timeline->catalogue, &wishes, task->shown, a->taken);
  if (now != NULL) {
    put (a, task->block, round, now, NULL);
    g_hash_table_add (a->taken, now->id);
    a->kit |= now->kit_mask;
    add_swap (a, turn->part, turn->block, round, task, lap_exercise_name (now), _(rules[a->whom].reason));
  } else if (words != NULL) {
    put (a, task->block, round, NULL, words);
    add_swap (a, turn->part, turn->block, round, task, lap_task_name (task), words);
  } else {
    add_swap (a, turn->part, turn->block, round, task, NULL, _("nothing in the catalogue does its work that way"));
  }
}

/* People who are new are shown the easier option. */
static void
ease (Adapt *a, const LapTurn *turn)
{
  const LapTask *task = &a->timeline->tasks[turn->task];
  LapExercise *easier = task->shown->easier != NULL
                      ? lap_catalogue_find (a->timeline->catalogue, task->shown->easier) : NULL;
  LapWishes wishes = wishes_for (a->timeline->session, turn->part_kind, a->whom);

  if (easier == NULL || task->option != LAP_OPTION_AS_SHOWN || !lap_wishes_allow (&wishes, easier))
    return;
  lap_edits_set_int (a->edits, task->block, "option", LAP_OPTION_EASIER);
  add_swap (a, turn->part, turn->block, 0, task, lap_exercise_name (easier), _("is the easier option"));
}

static void
adapt_part (Adapt *a, guint p)
{
  const LapStretch *s = &a->timeline->parts[p];
  g_autofree guint8 *told = g_malloc0 (a->timeline->n_tasks + 1);

  g_hash_table_remove_all (a->taken);
  for (guint i = s->turn; i < s->turn + s->n_turns; i++)
    if (a->timeline->tasks[a->timeline->turns[i].task].shown != NULL)
      g_hash_table_add (a->taken, a->timeline->tasks[a->timeline->turns[i].task].shown->id);
  for (guint i = s->turn; i < s->turn + s->n_turns; i++) {
    const LapTurn *turn = &a->timeline->turns[i];
    const LapTask *task = &a->timeline->tasks[turn->task];
    gboolean changed = lap_changes_find (task->block->in_round, turn->round) != NULL;

    if (told[turn->task] || task->shown == NULL)
      continue;
    told[turn->task] = TRUE;
    if (a->whom == LAP_FOR_NEW && turn->part_kind == LAP_PART_MAIN)
      steady (a, turn);
    if (offends (task->shown, a->whom))
      adapt_task (a, turn, changed ? turn->round : 0);
    else if (a->whom == LAP_FOR_NEW && turn->part_kind == LAP_PART_MAIN && !changed)
      ease (a, turn);
  }
}

/* What the adapted session says of itself. */
static void
adapt_session (Adapt *a)
{
  LapSession *s = a->timeline->session;
  g_autofree char *title = g_strdup_printf (_("%1$s, %2$s"), s->title, lap_words_label (&lap_fors, a->whom));

  lap_edits_set_text (a->edits, s, "title", title);
  if (a->whom == LAP_FOR_QUIET)
    lap_edits_set_flag (a->edits, s, "quiet", TRUE);
  if (a->whom == LAP_FOR_NEW)
    lap_edits_set_int (a->edits, s, "group-level", LAP_LEVEL_NEW);
}

static void
adapt_kit (Adapt *a)
{
  LapSession *s = a->timeline->session;
  g_autoptr (LapKit) kit = s->kit != NULL ? lap_kit_copy (s->kit) : lap_kit_new ();
  guint32 missing = a->kit & ~lap_kit_mask (s->kit);

  for (guint i = 0; i < LAP_N_KIT; i++)
    if (missing & LAP_BIT (i))
      lap_kit_set (kit, i, kit->counted ? s->count : 1);
  if (missing != 0)
    lap_edits_set_boxed (a->edits, s, "kit", LAP_TYPE_KIT, kit);
}

LapEdits *
lap_adapt (const LapTimeline *timeline, LapFor whom, GPtrArray **swaps)
{
  g_autoptr (GHashTable) taken = g_hash_table_new (g_str_hash, g_str_equal);
  g_autoptr (GHashTable) changes = g_hash_table_new_full (NULL, NULL, NULL, (GDestroyNotify) lap_changes_free);
  Adapt a = { .timeline = timeline, .whom = whom, .taken = taken, .changes = changes };

  a.edits = lap_edits_new (_("Adapt the session"));
  a.swaps = g_ptr_array_new_with_free_func ((GDestroyNotify) lap_swap_free);
  adapt_session (&a);
  for (guint p = 0; p < timeline->n_parts; p++)
    adapt_part (&a, p);
  write_changes (&a);
  adapt_kit (&a);
  *swaps = a.swaps;
  return a.edits;
}

void
lap_swap_free (LapSwap *swap)
{
  g_free (swap->was);
  g_free (swap->now);
  g_free (swap->reason);
  g_free (swap);
}

static gboolean
has_exercise (const LapSession *session, const char *id)
{
  for (guint p = 0; p < lap_session_n (session); p++)
    for (guint i = 0; i < lap_part_n (lap_session_nth (session, p)); i++)
      if (lap_block_does (lap_part_nth (lap_session_nth (session, p), i), id))
        return TRUE;
  return FALSE;
}

LapCatalogue *
lap_adapt_catalogue (LapCatalogue *builtin, const LapSession *session, LapFor whom)
{
  g_autoptr (GPtrArray) kept = g_ptr_array_new ();

  for (guint i = 0; i < lap_catalogue_n (builtin); i++) {
    LapExercise *e = lap_catalogue_nth (builtin, i);

    if (!offends (e, whom) || has_exercise (session, e->id))
      g_ptr_array_add (kept, e);
  }
  return lap_catalogue_new_over (NULL, kept);
}
