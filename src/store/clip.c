/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "store/clip.h"

#include "base/error.h"
#include "store/documents.h"

#include <glib/gi18n-lib.h>

/* The session's own exercises that some of @blocks name, or NULL. */
static GPtrArray *
own_exercises (LapSession *session, GPtrArray *blocks)
{
  GPtrArray *own = NULL;

  for (guint e = 0; session->exercises != NULL && e < session->exercises->len; e++) {
    LapExercise *exercise = g_ptr_array_index (session->exercises, e);
    gboolean named = FALSE;

    for (guint i = 0; i < blocks->len && !named; i++)
      named = lap_block_does (g_ptr_array_index (blocks, i), exercise->id);
    if (!named)
      continue;
    if (own == NULL)
      own = g_ptr_array_new_with_free_func ((GDestroyNotify) lap_exercise_unref);
    g_ptr_array_add (own, lap_exercise_ref (exercise));
  }
  return own;
}

GBytes *
lap_clip_write (LapSession *session, GPtrArray *blocks, const char *title)
{
  g_autoptr (LapSession) clip = lap_session_new (title);
  g_autoptr (GPtrArray) own = own_exercises (session, blocks), parts = g_ptr_array_new ();
  g_autoptr (GPtrArray) copies = g_ptr_array_new_with_free_func (g_object_unref);
  g_autoptr (LapPart) part = NULL;
  int rounds = 1;

  for (guint i = 0; i < blocks->len; i++) {
    LapBlock *block = g_ptr_array_index (blocks, i);

    rounds = MAX (rounds, LAP_PART (LAP_OBJECT (block)->owner)->rounds);
    g_ptr_array_add (copies, lap_object_copy (block));
  }
  part = lap_part_new (blocks->len > 0 ? LAP_PART (LAP_OBJECT (g_ptr_array_index (blocks, 0))->owner)->kind
                                       : LAP_PART_MAIN);
  g_object_set (part, "rounds", rounds, NULL);
  lap_list_splice (part->blocks, 0, 0, copies);
  g_ptr_array_add (parts, part);
  lap_list_splice (clip->parts, 0, 0, parts);
  g_object_set (clip, "exercises", own, NULL);
  return lap_session_to_bytes (clip);
}

GPtrArray *
lap_clip_read (GBytes *bytes, GPtrArray **exercises, GError **error)
{
  g_autoptr (LapSession) session = lap_session_from_bytes (bytes, error);
  g_autoptr (GPtrArray) blocks = NULL;

  if (session == NULL)
    return NULL;
  blocks = g_ptr_array_new_with_free_func (g_object_unref);
  for (guint p = 0; p < lap_session_n (session); p++)
    for (guint i = 0; i < lap_part_n (lap_session_nth (session, p)); i++)
      g_ptr_array_add (blocks, lap_object_copy (lap_part_nth (lap_session_nth (session, p), i)));
  if (blocks->len == 0) {
    g_set_error_literal (error, LAP_ERROR, LAP_ERROR_INVALID, _("there is no block in it"));
    return NULL;
  }
  *exercises = session->exercises != NULL ? g_ptr_array_ref (session->exercises) : NULL;
  return g_steal_pointer (&blocks);
}
