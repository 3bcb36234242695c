/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The time is shared out first: warm-up and cool-down by the rules of the checks, the rest to the main part, as many
 * blocks as fill it. Each part is chosen block by block, the main part put in order, and what the checks still say is
 * mended. A few seeds are tried; the first session without a stop or warning that fills its time is it, else the
 * longest of those without. When there is none, what stood in the way of the best try is the conflict.
 */
#include "arrange/compose.h"

#include "arrange/choose.h"
#include "arrange/mend.h"
#include "arrange/order.h"
#include "base/error.h"

#include <glib/gi18n-lib.h>

#define TRIES 12
#define WARM_UPS 7    /* blocks of the warm-up */
#define COOL_DOWNS 4  /* and of the cool-down, */
#define COOL_REST 10  /* with seconds between them */
#define GETTING_THERE 20 /* seconds from the warm-up to the main part, and after it */

/* The lengths that a brief comes to. */
typedef struct {
  int warm_up, main, cool_down; /* seconds */
  int work, rest, rounds, blocks;
} Shape;

static gboolean
conflict (GError **error, const char *format, ...)
{
  va_list args;

  va_start (args, format);
  if (error != NULL)
    *error = g_error_new_valist (LAP_ERROR, LAP_ERROR_CONFLICT, format, args);
  va_end (args);
  return FALSE;
}

static int
up_to_five (int seconds)
{
  return (seconds + 4) / 5 * 5;
}

static gboolean
shape_of (const LapBrief *brief, Shape *s, GError **error)
{
  static const struct { int work, rest; } usual[] = {
    [LAP_LEVEL_NEW] = { 30, 30 }, [LAP_LEVEL_MIXED] = { 40, 20 }, [LAP_LEVEL_TRAINED] = { 45, 15 },
  };
  int length = brief->minutes * 60, each;

  s->work = brief->work > 0 ? brief->work : usual[brief->level].work;
  s->rest = brief->rest >= 0 ? brief->rest : usual[brief->level].rest;
  s->warm_up = CLAMP ((int) (0.15 * length), 180, 420) + (brief->level == LAP_LEVEL_NEW ? 120 : 0) + 10;
  s->cool_down = CLAMP ((int) (0.10 * length), 120, 300) + 10;
  /* Their blocks last whole fives of seconds. */
  s->warm_up = WARM_UPS * up_to_five (s->warm_up / WARM_UPS);
  s->cool_down = COOL_DOWNS * (up_to_five (s->cool_down / COOL_DOWNS - COOL_REST) + COOL_REST);
  s->main = length - s->warm_up - s->cool_down - 2 * GETTING_THERE;
  each = s->work + s->rest;
  s->rounds = brief->rounds > 0 ? brief->rounds : s->main >= 6 * 2 * each ? 2 : 1;
  s->blocks = (s->main + s->rest - (s->rounds - 1) * 30) / (s->rounds * each);
  if (s->blocks < 2)
    return conflict (error, _("%1$d minutes leave %2$d s for the main part after a warm-up of %3$d s and a cool-down of "
                              "%4$d s: too little for %5$d rounds of %6$d s work and %7$d s rest"),
                     brief->minutes, MAX (0, s->main), s->warm_up, s->cool_down, s->rounds, s->work, s->rest);
  s->blocks = MIN (s->blocks, 16);
  return TRUE;
}

static LapSession *
new_session (const LapBrief *brief)
{
  LapSession *s = lap_session_new (_("A composed session"));

  g_free (s->id);
  /* The same brief, the same bytes. */
  s->id = g_strdup_printf ("composed-%d-%d", brief->minutes, brief->seed);
  s->target = brief->minutes * 60;
  s->focus = g_strdupv (brief->focus);
  s->kit = brief->kit != NULL ? lap_kit_copy (brief->kit) : NULL;
  s->space_width = brief->space_width;
  s->space_length = brief->space_length;
  s->quiet = brief->quiet;
  s->also_for = g_strdupv (brief->without);
  s->level = brief->level;
  return s;
}

/* A part of @n blocks of @work and @rest, chosen one after the other; NULL where the wishes leave too few. */
static LapPart *
choose_part (LapSession *session, LapCatalogue *catalogue, LapPartKind kind, guint n, int work,
             int rest, guint32 seed)
{
  g_autoptr (LapPart) part = lap_part_new (kind);
  g_autoptr (GPtrArray) blocks = g_ptr_array_new_with_free_func (g_object_unref);
  const LapExercise *before = NULL;
  LapChoice choice;

  lap_choice_init (&choice, catalogue, session, kind, seed);
  /* What the warm-up had needn't come again. */
  for (guint p = 0; p < lap_session_n (session); p++)
    for (guint i = 0; i < lap_part_n (lap_session_nth (session, p)); i++)
      g_hash_table_add (choice.taken, g_strdup (lap_part_nth (lap_session_nth (session, p), i)->exercise));
  if (kind == LAP_PART_WARM_UP)
    choice.wishes.postures = LAP_BIT (LAP_POSTURE_STANDING);
  for (guint i = 0; i < n; i++) {
    LapExercise *e = lap_choice_next (&choice, before, NULL, work);
    LapBlock *block;

    if (e == NULL)
      break;
    block = lap_block_new_exercise (e->id, work, rest);
    block->switch_seconds = e->sides == LAP_SIDES_SPLIT && work >= 20 ? 4 : 0;
    g_ptr_array_add (blocks, block);
    before = e;
  }
  lap_choice_clear (&choice);
  if (blocks->len < n)
    return NULL;
  lap_list_splice (part->blocks, 0, 0, blocks);
  return g_steal_pointer (&part);
}

static void
append (LapSession *session, LapPart *part)
{
  g_autoptr (GPtrArray) one = g_ptr_array_new ();

  g_ptr_array_add (one, part);
  lap_list_splice (session->parts, lap_session_n (session), 0, one);
}

static void
put_in_order (LapSession *session, LapCatalogue *catalogue, guint part)
{
  g_autoptr (LapTimeline) timeline = lap_timeline_new (session, catalogue, NULL);
  g_autoptr (LapCosts) costs = NULL;
  g_autoptr (LapOrder) order = NULL;
  g_autoptr (LapEdits) edits = NULL;

  if (timeline == NULL)
    return;
  costs = lap_costs_new (timeline, part);
  order = lap_order_find (costs, NULL, NULL, NULL, NULL);
  edits = lap_order_edits (order, lap_session_nth (session, part));
  lap_edits_swap (edits);
}

/* Wishes so narrow that a part can't be filled are named by what remains of the catalogue. */
static gboolean
too_few (LapSession *session, LapCatalogue *catalogue, LapPartKind kind, GError **error)
{
  LapChoice choice;
  guint n = 0;

  lap_choice_init (&choice, catalogue, session, kind, 0);
  for (guint i = 0; i < lap_catalogue_n (catalogue); i++)
    n += lap_wishes_allow (&choice.wishes, lap_catalogue_nth (catalogue, i));
  lap_choice_clear (&choice);
  return conflict (error, _("kit, space, quiet, care and the exercises that are barred leave %1$u of the catalogue for "
                            "the part “%2$s”"), n, lap_words_label (&lap_part_kinds, kind));
}

static LapSession *
try_once (const LapBrief *brief, const Shape *s, LapCatalogue *catalogue, guint32 seed, GError **error)
{
  static const LapPartKind kinds[] = { LAP_PART_WARM_UP, LAP_PART_MAIN, LAP_PART_COOL_DOWN };
  const guint n[] = { WARM_UPS, s->blocks, COOL_DOWNS };
  const int work[] = { s->warm_up / WARM_UPS, s->work, s->cool_down / COOL_DOWNS - COOL_REST };
  const int rest[] = { 0, s->rest, COOL_REST };
  g_autoptr (LapSession) session = new_session (brief);

  for (guint i = 0; i < G_N_ELEMENTS (kinds); i++) {
    g_autoptr (LapPart) part = choose_part (session, catalogue, kinds[i], n[i], work[i], rest[i], seed);

    if (part == NULL) {
      too_few (session, catalogue, kinds[i], error);
      return NULL;
    }
    if (kinds[i] != LAP_PART_COOL_DOWN)
      part->rest_after = GETTING_THERE;
    if (kinds[i] == LAP_PART_MAIN) {
      part->rounds = s->rounds;
      part->round_rest = s->rounds > 1 ? 30 : 0;
    }
    append (session, part);
  }
  put_in_order (session, catalogue, 1);
  return g_steal_pointer (&session);
}

/* The open warnings of a session; what the first one says in *@message, and how long it is. */
static guint
open_warnings (LapSession *session, LapCatalogue *catalogue, char **message, int *length)
{
  g_autoptr (LapTimeline) timeline = lap_timeline_new (session, catalogue, NULL);
  g_autoptr (LapCheckup) checkup = timeline != NULL ? lap_checkup_new (timeline) : NULL;

  if (checkup == NULL)
    return G_MAXUINT;
  *length = timeline->length;
  if (lap_checkup_n_open (checkup) > 0)
    *message = lap_warning_message (checkup, lap_checkup_nth (checkup, 0));
  return lap_checkup_n_open (checkup);
}

/* What is barred isn't there at all: mending must not bring it back. */
static LapCatalogue *
allowed (LapCatalogue *builtin, const LapBrief *brief)
{
  g_autoptr (GPtrArray) exercises = g_ptr_array_new ();

  if (brief->barred == NULL)
    return lap_catalogue_ref (builtin);
  for (guint i = 0; i < lap_catalogue_n (builtin); i++) {
    LapExercise *e = lap_catalogue_nth (builtin, i);

    if (!g_strv_contains ((const char * const *) brief->barred, e->id))
      g_ptr_array_add (exercises, e);
  }
  return lap_catalogue_new_over (NULL, exercises);
}

LapSession *
lap_compose (const LapBrief *brief, LapCatalogue *builtin, GError **error)
{
  g_autoptr (LapCatalogue) catalogue = allowed (builtin, brief);
  g_autoptr (LapSession) longest = NULL;
  g_autofree char *in_the_way = NULL;
  guint least = G_MAXUINT;
  int most = 0;
  Shape shape;

  if (!shape_of (brief, &shape, error))
    return NULL;
  for (guint32 k = 0; k < TRIES; k++) {
    g_autoptr (LapSession) session = try_once (brief, &shape, catalogue, (guint32) brief->seed * 1000 + k, error);
    g_autoptr (GPtrArray) mended = NULL;
    g_autofree char *message = NULL;
    int length = 0;
    guint left;

    if (session == NULL)
      return NULL;
    mended = lap_mend (session, catalogue, FALSE, NULL, NULL);
    left = open_warnings (session, catalogue, &message, &length);
    if (left == 0 && length * 10 >= session->target * 9)
      return g_steal_pointer (&session);
    if (left == 0 && length > most) {
      g_set_object (&longest, session);
      most = length;
    }
    if (left < least) {
      g_free (in_the_way);
      in_the_way = g_steal_pointer (&message);
      least = left;
    }
  }
  if (longest != NULL)
    return g_steal_pointer (&longest);
  conflict (error, _("no session meets all these wishes; in the way is: %s"), in_the_way);
  return NULL;
}
