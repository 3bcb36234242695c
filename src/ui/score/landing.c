/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/landing.h"

#include "edit/verbs.h"
#include "place/muscles.h"
#include "ui/score/words.h"

#include <glib/gi18n-lib.h>

/* Warnings that are looked at for a new one: a plan with more has other troubles. */
#define MOST_KNOWN 200

static void
ghost_clear (gpointer data)
{
  LapGhost *ghost = data;

  g_free (ghost->name);
  g_clear_pointer (&ghost->shown, lap_exercise_unref);
}

void
lap_landing_free (LapLanding *self)
{
  if (self == NULL)
    return;
  g_array_unref (self->ghosts);
  g_array_unref (self->fresh);
  g_clear_pointer (&self->checkup, lap_checkup_unref);
  g_clear_pointer (&self->now, lap_checkup_unref);
  g_clear_pointer (&self->known, g_hash_table_unref);
  g_free (self->words);
  g_free (self);
}

int
lap_landing_seconds (const LapLanding *self)
{
  int seconds = 0;

  for (guint i = 0; i < self->ghosts->len; i++)
    seconds += g_array_index (self->ghosts, LapGhost, i).seconds;
  return seconds;
}

static LapGhost
ghost_of (const LapScore *score, guint index)
{
  const LapBox *box = &score->boxes[index];
  const LapTask *task = box->task != LAP_NO_TASK ? &score->timeline->tasks[box->task] : NULL;
  LapGhost ghost = { box->body - box->start, box->end - box->start, lap_box_name (score, index) };

  if (task == NULL || task->shown == NULL)
    return ghost;
  ghost.shown = lap_exercise_ref (task->shown);
  lap_task_rows (task, &ghost.hard, &ghost.helps);
  return ghost;
}

/* While the edits are tried: what @blocks are there. */
static void
add_ghosts (LapLanding *self, LapSession *session, const LapScore *score, GPtrArray *blocks)
{
  for (guint i = 0; i < blocks->len; i++) {
    LapBlock *block = g_ptr_array_index (blocks, i);
    LapPart *part = LAP_PART (LAP_OBJECT (block)->owner);
    guint index = lap_list_find (session->parts, part), box;
    LapGhost ghost;

    box = lap_score_find (score, index, lap_list_find (part->blocks, block), CLAMP ((int) self->place.round, 1, part->rounds));
    if (box == LAP_NO_BOX)
      continue;
    ghost = ghost_of (score, box);
    g_array_append_val (self->ghosts, ghost);
  }
}

/* What tells a warning from another one: its words, but for those about a whole, whose numbers are always others. */
static char *
key_of (const LapCheckup *checkup, const LapWarning *warning)
{
  g_autofree char *message = warning->block >= 0 ? lap_warning_message (checkup, warning) : NULL;

  return g_strdup_printf ("%s %s", warning->check->id, message != NULL ? message : "");
}

static GHashTable *
known_of (const LapCheckup *checkup)
{
  GHashTable *known = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);

  for (guint i = 0; i < MIN (lap_checkup_n (checkup), MOST_KNOWN); i++)
    g_hash_table_add (known, key_of (checkup, lap_checkup_nth (checkup, i)));
  return known;
}

static void
find_fresh (LapLanding *self)
{
  for (guint i = 0; i < MIN (lap_checkup_n (self->checkup), MOST_KNOWN); i++) {
    const LapWarning *warning = lap_checkup_nth (self->checkup, i);
    g_autofree char *key = key_of (self->checkup, warning);

    if (!warning->fine && !g_hash_table_contains (self->known, key))
      g_array_append_val (self->fresh, i);
  }
}

/* "Main: after 3, in 2 rounds", or "instead of Squat". */
static char *
where_text (LapDocument *document, const LapDropPlace *place)
{
  LapSession *session = lap_document_session (document);
  LapPart *part = place->part != G_MAXUINT ? lap_session_nth (session, place->part) : NULL;
  g_autofree char *where = NULL;

  if (part == NULL)
    return g_strdup (_("A new part"));
  if (place->onto != LAP_NO_BOX) {
    g_autofree char *title = lap_block_title (lap_part_nth (part, place->position), lap_document_catalogue (document));

    return g_strdup_printf (_("Instead of %s"), title);
  }
  if (place->position == 0)
    where = g_strdup_printf (_("%s: first"), lap_part_title (part));
  else
    /* Translators: a part, and the number of the block after which something would come. */
    where = g_strdup_printf (_("%1$s: after %2$u"), lap_part_title (part), place->position);
  if (part->rounds < 2)
    return g_steal_pointer (&where);
  /* Translators: where something would come, and in how many rounds. */
  return g_strdup_printf (ngettext ("%1$s, in %2$d round", "%1$s, in %2$d rounds", part->rounds), where, part->rounds);
}

static char *
signed_clock (int seconds)
{
  g_autofree char *clock = lap_clock_text (ABS (seconds));

  return g_strdup_printf ("%s%s", seconds < 0 ? "−" : seconds > 0 ? "+" : "±", clock);
}

/* What, how long, where, and the session then; in a second line the first warning that is new. */
static char *
words_of (const LapLanding *self, LapDocument *document, const char *title, const char *where, const LapTimeline *tried)
{
  g_autofree char *by = signed_clock (tried->length - lap_document_timeline (document)->length);
  g_autofree char *all = lap_clock_text (tried->length), *long_ = lap_clock_text (lap_landing_seconds (self));
  GString *words = g_string_new (NULL);
  guint n = self->fresh->len;

  /* Translators: what is carried and how long it is; where it would come; by how much the session would be longer, and
   * how long it would be. */
  g_string_printf (words, _("%1$s, %2$s. %3$s: %4$s, %5$s in all"), title, long_, where, by, all);
  if (n == 0)
    return g_string_free (words, FALSE);
  g_string_append_c (words, '\n');
  /* Translators: the title of a warning that would come. */
  g_string_append_printf (words, _("New: %s"),
                          _(lap_checkup_nth (self->checkup, g_array_index (self->fresh, guint, 0))->check->title));
  if (n > 1) {
    g_string_append (words, ", ");
    g_string_append_printf (words, ngettext ("and %u more", "and %u more", n - 1), n - 1);
  }
  return g_string_free (words, FALSE);
}

LapLanding *
lap_landing_new (LapDocument *document, const LapLanding *before, LapEdits *edits, GPtrArray *blocks,
                 const LapDropPlace *place, const char *title)
{
  LapLanding *self = g_new0 (LapLanding, 1);
  LapTimeline *now = lap_document_timeline (document);
  g_autofree char *where = where_text (document, place);
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (LapTimeline) tried = NULL;
  g_autoptr (LapScore) score = NULL;
  g_autoptr (GError) error = NULL;

  self->place = *place;
  self->now = lap_checkup_ref (lap_document_checkup (document));
  self->known = before != NULL && before->now == self->now ? g_hash_table_ref (before->known) : known_of (self->now);
  self->ghosts = g_array_new (FALSE, FALSE, sizeof (LapGhost));
  g_array_set_clear_func (self->ghosts, ghost_clear);
  self->fresh = g_array_new (FALSE, FALSE, sizeof (guint));
  lap_edits_swap (edits);
  tried = lap_timeline_new (now->session, builtin, &error);
  if (tried != NULL) {
    score = lap_score_new (tried);
    add_ghosts (self, now->session, score, blocks);
    self->checkup = lap_checkup_new (tried);
    find_fresh (self);
    self->words = words_of (self, document, title, where, tried);
  } else
    /* Translators: why something can't be put there. */
    self->words = g_strdup_printf (_("Not here: %s"), error->message);
  lap_edits_swap (edits);
  return self;
}
