/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "edit/verbs-part.h"

#include "edit/add.h"

#include <glib/gi18n-lib.h>

#define TALK_SECONDS 30 /* of a new opening or closing: common practice, no source */
#define CAP_LEAST    60
#define CAP_MOST     10800 /* design, limits of files */

static LapEdits *
named (const char *format, const LapPart *part)
{
  g_autofree char *label = g_strdup_printf (format, lap_part_title (part));

  return lap_edits_new (label);
}

LapEdits *
lap_verb_add_part (LapSession *session, guint position, LapPartKind kind, LapBlock **added)
{
  g_autoptr (LapPart) part = lap_part_new (kind);
  gboolean talks = kind == LAP_PART_OPENING || kind == LAP_PART_CLOSING;
  g_autoptr (LapBlock) block = talks ? lap_block_new_talk ("", TALK_SECONDS) : lap_block_for_place (part, 0, NULL);
  g_autoptr (GPtrArray) blocks = g_ptr_array_new ();
  LapEdits *edits = named (_("Add a part: %s"), part);

  g_ptr_array_add (blocks, block);
  lap_list_splice (part->blocks, 0, 0, blocks);
  lap_edits_insert (edits, session->parts, position, part);
  *added = block;
  return edits;
}

LapEdits *
lap_verb_remove_part (LapSession *session, LapPart *part)
{
  LapEdits *edits = named (_("Remove the part: %s"), part);

  lap_edits_splice (edits, session->parts, lap_list_find (session->parts, part), 1, NULL);
  return edits;
}

LapEdits *
lap_verb_move_part (LapSession *session, LapPart *part, int by)
{
  LapEdits *edits = named (_("Move the part: %s"), part);
  guint at = lap_list_find (session->parts, part);

  if ((by < 0 && at == 0) || (by > 0 && at + 1 >= lap_session_n (session)))
    return edits;
  lap_edits_splice (edits, session->parts, at, 1, NULL);
  lap_edits_insert (edits, session->parts, at + by, part);
  return edits;
}

/* Seconds of all rounds as they are written, without the rests between them. */
static int
written_length (const LapPart *part)
{
  int round = 0;

  for (guint i = 0; i < lap_part_n (part); i++) {
    const LapBlock *block = lap_part_nth (part, i);

    round += block->kind == LAP_BLOCK_EXERCISE ? block->work + block->rest : block->seconds;
  }
  return CLAMP (round * part->rounds, CAP_LEAST, CAP_MOST);
}

void
lap_verb_put_run (LapEdits *edits, LapPart *part, LapRun run)
{
  if (run == LAP_RUN_OWN_PACE && part->cap == 0)
    lap_edits_set_int (edits, part, "cap", written_length (part));
  lap_edits_set_int (edits, part, "run", run);
}
