/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/drop.h"

#include "edit/add.h"
#include "edit/verbs.h"
#include "ui/exercise-drop.h"
#include "ui/personal.h"
#include "ui/score/grip.h"
#include "ui/score/verbs.h"

#include <glib/gi18n-lib.h>

typedef struct {
  LapBlocksLane   *lane;
  LapScoreContext *context;
  GtkDropTarget   *target;
  LapGrip          grip;
  LapDropPlace     place; /* as it is shown */
} Drop;

static GQuark
quark (void)
{
  return g_quark_from_static_string ("lap-score-drop");
}

static void
drop_free (gpointer data)
{
  lap_grip_let_go (&((Drop *) data)->grip);
  g_free (data);
}

static void
leave_cb (Drop *drop)
{
  lap_grip_let_go (&drop->grip);
  lap_score_show_landing (drop->context, NULL);
  gtk_widget_queue_draw (GTK_WIDGET (drop->lane));
}

/* The session's, and what is one's own besides. Transfer full. */
static LapCatalogue *
catalogue_of (Drop *drop)
{
  return lap_personal_under (lap_personal (), lap_document_catalogue (drop->context->document));
}

/* The edits of dropping @id at @place; what comes in *@blocks, which is where the score goes on. An exercise of one's
 * own comes along. */
static LapEdits *
edits_for (Drop *drop, const LapDropPlace *place, const char *id, GPtrArray *blocks)
{
  LapSession *session = lap_document_session (drop->context->document);
  g_autoptr (LapCatalogue) all = catalogue_of (drop);
  g_autoptr (GPtrArray) brought = g_ptr_array_new ();
  LapExercise *exercise = id != NULL ? lap_catalogue_find (all, id) : NULL;
  LapSpot spot = { place->part != G_MAXUINT ? lap_session_nth (session, place->part) : NULL, place->position };
  LapBlock *added = NULL;
  LapEdits *edits;

  if (exercise != NULL)
    g_ptr_array_add (brought, exercise);
  if (place->onto != LAP_NO_BOX) {
    added = lap_score_block (drop->context, place->onto);
    edits = lap_verb_set_exercise_in (added, place->round, id, all);
  } else if (spot.part == NULL)
    edits = lap_verb_add_exercise (session, NULL, id, all, &added);
  else {
    g_ptr_array_add (blocks, lap_block_for_place (spot.part, spot.position, id));
    edits = lap_verb_insert_blocks (session, &spot, blocks, _("Add %s"), all);
  }
  if (added != NULL)
    g_ptr_array_add (blocks, g_object_ref (added));
  lap_verb_take_own (edits, session, brought, lap_document_catalogue (drop->context->document));
  return edits;
}

/* What is held is known once the source has told, which within the program is at once. */
static const char *
held_id (Drop *drop)
{
  const GValue *value = gtk_drop_target_get_value (drop->target);
  const LapExerciseDrop *exercise = value != NULL ? g_value_get_boxed (value) : NULL;

  return exercise != NULL ? exercise->id : NULL;
}

static gboolean
is_same (const LapDropPlace *a, const LapDropPlace *b)
{
  return a->part == b->part && a->position == b->position && a->round == b->round && a->onto == b->onto &&
         a->second == b->second;
}

static void
moved (gpointer data)
{
  Drop *drop = data;
  LapDropPlace place = lap_score_drop_place (drop->context->score, drop->context->axis, drop->grip.x, TRUE);
  g_autoptr (LapCatalogue) all = catalogue_of (drop);
  g_autoptr (GPtrArray) blocks = g_ptr_array_new_with_free_func (g_object_unref);
  g_autoptr (LapEdits) edits = NULL;
  const char *id = held_id (drop);
  LapExercise *exercise = id != NULL ? lap_catalogue_find (all, id) : NULL;

  gtk_widget_queue_draw (GTK_WIDGET (drop->lane));
  if (!lap_document_is_editable (drop->context->document))
    return; /* the tag says so */
  if (drop->context->landing != NULL && is_same (&place, &drop->place))
    return;
  drop->place = place;
  edits = edits_for (drop, &place, id, blocks);
  lap_score_show_landing (drop->context,
                          lap_landing_new (drop->context->document, drop->context->landing, edits, blocks, &place,
                                           exercise != NULL ? lap_exercise_name (exercise) : _("Not chosen yet")));
}

static GdkDragAction
over_cb (Drop *drop, double x, double y)
{
  if (!drop->grip.held)
    lap_grip_take (&drop->grip, drop->context->axis->view / 2, FALSE);
  lap_grip_move (&drop->grip, x, 0);
  return GDK_ACTION_COPY;
}

static gboolean
drop_cb (Drop *drop, const GValue *value, double x, double y)
{
  const LapExerciseDrop *exercise = g_value_get_boxed (value);
  LapDropPlace place = lap_score_drop_place (drop->context->score, drop->context->axis, x, TRUE);
  g_autoptr (GPtrArray) blocks = g_ptr_array_new_with_free_func (g_object_unref);
  LapEdits *edits = edits_for (drop, &place, exercise->id, blocks);

  leave_cb (drop);
  if (!lap_document_apply (drop->context->document, edits))
    return FALSE;
  lap_score_choose_blocks (drop->context, blocks, MAX (place.round, 1));
  return TRUE;
}

void
lap_score_drop_install (LapBlocksLane *lane)
{
  static const LapGripFuncs funcs = { moved, NULL };
  Drop *drop = g_new0 (Drop, 1);

  drop->lane = lane;
  drop->context = lap_lane_context (LAP_LANE (lane));
  drop->target = gtk_drop_target_new (LAP_TYPE_EXERCISE_DROP, GDK_ACTION_COPY);
  lap_grip_init (&drop->grip, LAP_LANE (lane), &funcs, drop);
  gtk_drop_target_set_preload (drop->target, TRUE);
  g_signal_connect_swapped (drop->target, "enter", G_CALLBACK (over_cb), drop);
  g_signal_connect_swapped (drop->target, "motion", G_CALLBACK (over_cb), drop);
  g_signal_connect_swapped (drop->target, "leave", G_CALLBACK (leave_cb), drop);
  g_signal_connect_swapped (drop->target, "drop", G_CALLBACK (drop_cb), drop);
  gtk_widget_add_controller (GTK_WIDGET (lane), GTK_EVENT_CONTROLLER (drop->target));
  g_object_set_qdata_full (G_OBJECT (lane), quark (), drop, drop_free);
}

void
lap_score_drop_draw (LapBlocksLane *lane, GtkSnapshot *snapshot)
{
  Drop *drop = g_object_get_qdata (G_OBJECT (lane), quark ());

  const char *why_not = drop != NULL ? lap_document_why_not (drop->context->document) : NULL;

  if (drop != NULL && drop->grip.held && (why_not != NULL || drop->context->landing != NULL))
    lap_grip_draw_tag (&drop->grip, snapshot, why_not != NULL ? why_not : drop->context->landing->words);
}
