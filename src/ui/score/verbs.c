/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/verbs.h"

#include "edit/add.h"
#include "edit/verbs.h"
#include "edit/verbs-time.h"
#include "ui/score/clipboard.h"

#include <glib/gi18n-lib.h>

/* A deed of the lane on what is selected; FALSE where there is nothing to do. */
typedef gboolean (*Deed) (LapBlocksLane *lane, LapScoreContext *context, int arg);

static LapCatalogue *
catalogue_of (LapScoreContext *context)
{
  return lap_document_catalogue (context->document);
}

static LapSession *
session_of (LapScoreContext *context)
{
  return lap_document_session (context->document);
}

static LapPart *
part_of (LapBlock *block)
{
  return LAP_PART (LAP_OBJECT (block)->owner);
}

static gboolean
move (LapBlocksLane *lane, LapScoreContext *context, int by)
{
  g_autoptr (GPtrArray) blocks = lap_score_chosen (context);
  LapSpot spot;
  int round = context->round;

  if (!lap_blocks_step (session_of (context), blocks, context->axis->mirrored ? -by : by, &spot) ||
      !lap_document_apply (context->document, lap_verb_move_blocks (session_of (context), blocks, &spot,
                                                                    catalogue_of (context))))
    return FALSE;
  lap_score_choose_blocks (context, blocks, round);
  return TRUE;
}

static gboolean
change_time (LapScoreContext *context, LapTimeWhat what, int by)
{
  g_autoptr (GPtrArray) blocks = lap_score_chosen (context);
  g_autoptr (GArray) sets = g_array_new (FALSE, FALSE, sizeof (LapTimeSet));
  g_autofree char *title = lap_blocks_title (blocks, catalogue_of (context)), *label = NULL;

  label = g_strdup_printf (what == LAP_TIME_WORK ? _("Change the work of %s") : _("Change the rest of %s"), title);
  for (guint i = 0; i < blocks->len; i++) {
    LapBlock *block = g_ptr_array_index (blocks, i);
    LapTimeSet set;

    if (!lap_time_source (block, lap_score_round_of (context, block), what, &set.source))
      continue;
    set.seconds = lap_time_next (&set.source, by);
    g_array_append_val (sets, set);
  }
  if (blocks->len == 1 && sets->len == 1)
    return lap_document_apply (context->document,
                               lap_verb_set_time (&g_array_index (sets, LapTimeSet, 0).source,
                                                  g_array_index (sets, LapTimeSet, 0).seconds, catalogue_of (context)));
  return lap_document_apply (context->document, lap_verb_set_times (sets, label, catalogue_of (context)));
}

static gboolean
change_work (LapBlocksLane *lane, LapScoreContext *context, int by)
{
  return change_time (context, LAP_TIME_WORK, by);
}

static gboolean
change_rest (LapBlocksLane *lane, LapScoreContext *context, int by)
{
  return change_time (context, LAP_TIME_REST, by);
}

/* What stands where blocks went takes their place in the selection, so that keys go on. */
static gboolean
remove_chosen (LapBlocksLane *lane, LapScoreContext *context, int arg)
{
  g_autoptr (GPtrArray) blocks = lap_score_chosen (context), next = g_ptr_array_new ();
  LapBlock *last = blocks->len > 0 ? g_ptr_array_index (blocks, blocks->len - 1) : NULL;
  LapPart *part = last != NULL ? part_of (last) : NULL;
  guint place = part != NULL ? lap_list_find (part->blocks, last) + 1 : 0;
  int round = context->round;

  for (guint i = 0; i < blocks->len; i++)
    place -= part_of (g_ptr_array_index (blocks, i)) == part;
  if (!lap_document_apply (context->document, lap_verb_remove_blocks (blocks, catalogue_of (context))))
    return FALSE;
  if (lap_part_n (part) > 0)
    g_ptr_array_add (next, lap_part_nth (part, MIN (place, lap_part_n (part) - 1)));
  lap_score_choose_blocks (context, next, round);
  return TRUE;
}

static gboolean
duplicate (LapBlocksLane *lane, LapScoreContext *context, int arg)
{
  g_autoptr (GPtrArray) blocks = lap_score_chosen (context), copies = lap_blocks_copy (blocks);
  LapBlock *last = blocks->len > 0 ? g_ptr_array_index (blocks, blocks->len - 1) : NULL;
  LapSpot spot;

  if (last == NULL)
    return FALSE;
  spot = (LapSpot) { part_of (last), lap_list_find (part_of (last)->blocks, last) + 1 };
  return lap_score_insert (context, &spot, copies, _("Duplicate %s"), NULL);
}

static gboolean
copy (LapBlocksLane *lane, LapScoreContext *context, int cut)
{
  g_autoptr (GPtrArray) blocks = lap_score_chosen (context);

  if (blocks->len == 0)
    return FALSE;
  lap_score_copy (context, gtk_widget_get_clipboard (GTK_WIDGET (lane)), blocks);
  return !cut || remove_chosen (lane, context, 0);
}

static gboolean
paste (LapBlocksLane *lane, LapScoreContext *context, int arg)
{
  lap_score_paste (context, gtk_widget_get_clipboard (GTK_WIDGET (lane)));
  return TRUE;
}

typedef enum { ADD_EXERCISE, ADD_TALK, ADD_PAUSE } Added;

static gboolean
add (LapBlocksLane *lane, LapScoreContext *context, int what)
{
  g_autoptr (GPtrArray) blocks = g_ptr_array_new_with_free_func (g_object_unref);
  g_autoptr (LapPart) none = lap_part_new (LAP_PART_MAIN);
  LapSpot spot;

  lap_score_spot (context, &spot);
  if (what == ADD_TALK)
    g_ptr_array_add (blocks, lap_block_new_talk ("", 30));
  else if (what == ADD_PAUSE)
    g_ptr_array_add (blocks, lap_block_new_pause ("", 30));
  else
    g_ptr_array_add (blocks, lap_block_for_place (spot.part != NULL ? spot.part : none, spot.position, NULL));
  return lap_score_insert (context, &spot, blocks, _("Add %s"), NULL);
}

static gboolean
only_here (LapBlocksLane *lane, LapScoreContext *context, int arg)
{
  LapBlock *block = context->block;

  if (block == NULL || context->round < 2)
    return FALSE;
  if (lap_changes_find (block->in_round, context->round) != NULL)
    return lap_document_apply (context->document, lap_verb_same_again (block, context->round, catalogue_of (context)));
  return lap_document_apply (context->document, lap_verb_only_here (block, context->round, catalogue_of (context)));
}

static gboolean
go (LapScoreContext *context, guint box)
{
  if (box != LAP_NO_BOX)
    lap_score_select (context, box);
  return box != LAP_NO_BOX;
}

/* To the same block in the next round, or the one before. */
static gboolean
go_round (LapBlocksLane *lane, LapScoreContext *context, int by)
{
  return context->block != NULL && go (context, lap_score_locate (context, context->block, context->round + by));
}

/* To the first block of the next part that has one, or of the one before. */
static gboolean
go_part (LapBlocksLane *lane, LapScoreContext *context, int by)
{
  guint box = lap_score_selected (context), part;

  if (box == LAP_NO_BOX)
    return go (context, lap_score_step (context->score, LAP_NO_BOX, by));
  part = context->score->boxes[box].part;
  do
    box = lap_score_step (context->score, box, by);
  while (box != LAP_NO_BOX && context->score->boxes[box].part == part);
  return go (context, box != LAP_NO_BOX ? lap_score_find (context->score, context->score->boxes[box].part, 0, 1)
                                        : LAP_NO_BOX);
}

/* To the next block with a warning, in time. */
static gboolean
go_warning (LapBlocksLane *lane, LapScoreContext *context, int by)
{
  guint box = lap_score_selected (context);

  do
    box = lap_score_step (context->score, box, by);
  while (box != LAP_NO_BOX && lap_score_warning (context, box) == 0);
  return go (context, box);
}

static const struct { const char *action; Deed deed; int arg; } deeds[] = {
  { "score.move-left", move, -1 },
  { "score.move-right", move, 1 },
  { "score.work-more", change_work, 5 },
  { "score.work-less", change_work, -5 },
  { "score.work-second-more", change_work, 1 },
  { "score.work-second-less", change_work, -1 },
  { "score.rest-more", change_rest, 5 },
  { "score.rest-less", change_rest, -5 },
  { "score.rest-second-more", change_rest, 1 },
  { "score.rest-second-less", change_rest, -1 },
  { "score.remove", remove_chosen, 0 },
  { "score.duplicate", duplicate, 0 },
  { "score.copy", copy, FALSE },
  { "score.cut", copy, TRUE },
  { "score.paste", paste, 0 },
  { "score.add", add, ADD_EXERCISE },
  { "score.add-talk", add, ADD_TALK },
  { "score.add-pause", add, ADD_PAUSE },
  { "score.only-here", only_here, 0 },
  { "score.next-round", go_round, 1 },
  { "score.previous-round", go_round, -1 },
  { "score.next-part", go_part, 1 },
  { "score.previous-part", go_part, -1 },
  { "score.next-warning", go_warning, 1 },
  { "score.previous-warning", go_warning, -1 },
};

static void
deed_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapBlocksLane *lane = LAP_BLOCKS_LANE (widget);
  guint i = 0;

  while (!g_str_equal (deeds[i].action, name))
    i++;
  if (!deeds[i].deed (lane, lap_lane_context (LAP_LANE (lane)), deeds[i].arg))
    gtk_widget_error_bell (widget);
  lap_blocks_lane_take_focus (lane);
}

void
lap_score_verbs_install (GtkWidgetClass *klass)
{
  for (guint i = 0; i < G_N_ELEMENTS (deeds); i++)
    gtk_widget_class_install_action (klass, deeds[i].action, NULL, deed_action);
}

static LapPart *
last_part (LapSession *session)
{
  for (guint i = lap_session_n (session); i-- > 0;)
    if (lap_session_nth (session, i)->kind == LAP_PART_MAIN)
      return lap_session_nth (session, i);
  return lap_session_n (session) > 0 ? lap_session_nth (session, lap_session_n (session) - 1) : NULL;
}

void
lap_score_spot (LapScoreContext *context, LapSpot *spot)
{
  spot->part = context->block != NULL ? part_of (context->block) : last_part (session_of (context));
  if (context->block != NULL)
    spot->position = lap_list_find (spot->part->blocks, context->block) + 1;
  else
    spot->position = spot->part != NULL ? lap_part_n (spot->part) : 0;
}

gboolean
lap_score_insert (LapScoreContext *context, const LapSpot *spot, GPtrArray *blocks, const char *format, GPtrArray *own)
{
  LapEdits *edits = lap_verb_insert_blocks (session_of (context), spot, blocks, format, catalogue_of (context));
  int round = context->round;

  lap_verb_take_own (edits, session_of (context), own, catalogue_of (context));
  if (!lap_document_apply (context->document, edits))
    return FALSE;
  lap_score_choose_blocks (context, blocks, MAX (round, 1));
  return TRUE;
}
