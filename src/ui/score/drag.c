/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/drag.h"

#include "edit/verbs.h"
#include "edit/verbs-time.h"
#include "place/score-drop.h"
#include "ui/palette.h"
#include "ui/score/block.h"
#include "ui/score/grip.h"
#include "ui/score/landing-paint.h"
#include "ui/score/marks.h"
#include "ui/score/paint.h"
#include "ui/score/stretch.h"
#include "ui/score/verbs.h"

#include <glib/gi18n-lib.h>

#define THRESHOLD 6  /* px before a press is a drag */
#define REACH     5  /* px of an end */
#define LEAST     24 /* px of a block whose ends can be held */

typedef enum { DRAG_NONE, DRAG_PRESSED, DRAG_MOVE, DRAG_END } DragKind;

/* The end of the work or the rest of a box. */
typedef struct {
  guint   box; /* LAP_NO_BOX: none */
  LapEdge edge;
} End;

typedef struct {
  LapBlocksLane   *lane;
  LapScoreContext *context;
  GtkGesture      *gesture;
  LapGrip          grip;
  DragKind         kind;
  double           began;
  gboolean         copy;
  GPtrArray       *blocks;     /* carried, each with a reference */
  LapDropPlace     place;      /* where they are shown */
  gboolean         is_placed;  /* they would go there */
  gboolean         is_tried;   /* what is shown is that of `place` and `copy` */
  gboolean         on_end;     /* pressed on the end of work or rest */
  LapStretching    stretching; /* of that end */
  char            *tag;        /* while it is drawn */
  guint            under;      /* the box the pointer is in, or LAP_NO_BOX */
} Drag;

static GQuark
quark (void)
{
  return g_quark_from_static_string ("lap-score-drag");
}

static Drag *
drag_of (LapBlocksLane *lane)
{
  return g_object_get_qdata (G_OBJECT (lane), quark ());
}

static void
drag_clear (Drag *drag)
{
  lap_grip_let_go (&drag->grip);
  drag->kind = DRAG_NONE;
  drag->is_placed = drag->is_tried = drag->on_end = FALSE;
  g_clear_pointer (&drag->blocks, g_ptr_array_unref);
  g_clear_pointer (&drag->tag, g_free);
  lap_score_show_landing (drag->context, NULL);
  gtk_widget_queue_draw (GTK_WIDGET (drag->lane));
}

static void
drag_free (gpointer data)
{
  Drag *drag = data;

  lap_grip_let_go (&drag->grip);
  g_clear_pointer (&drag->blocks, g_ptr_array_unref);
  g_free (drag->tag);
  g_free (drag);
}

static LapSession *
session_of (Drag *drag)
{
  return lap_document_session (drag->context->document);
}

static LapCatalogue *
catalogue_of (Drag *drag)
{
  return lap_document_catalogue (drag->context->document);
}

/* The edits of letting go of what is carried here; what lands in *@landing. */
static LapEdits *
carried_edits (Drag *drag, GPtrArray **landing)
{
  LapPart *part = drag->place.part != G_MAXUINT ? lap_session_nth (session_of (drag), drag->place.part) : NULL;
  LapSpot spot = { part, drag->place.position };

  if (!drag->copy) {
    *landing = g_ptr_array_ref (drag->blocks);
    return lap_verb_move_blocks (session_of (drag), drag->blocks, &spot, catalogue_of (drag));
  }
  *landing = lap_blocks_copy (drag->blocks);
  return lap_verb_insert_blocks (session_of (drag), &spot, *landing, _("Copy %s"), catalogue_of (drag));
}

static gboolean
is_same (const LapDropPlace *a, const LapDropPlace *b)
{
  return a->part == b->part && a->position == b->position && a->round == b->round && a->second == b->second;
}

/* The plan as it would be is tried once for each place, however often the pointer moves there. */
static void
place_carried (Drag *drag)
{
  LapDropPlace place = lap_score_drop_place (drag->context->score, drag->context->axis, drag->grip.x, FALSE);
  gboolean copy = (drag->grip.state & GDK_CONTROL_MASK) != 0;
  g_autofree char *title = lap_blocks_title (drag->blocks, catalogue_of (drag));
  g_autoptr (GPtrArray) landing = NULL;
  g_autoptr (LapEdits) edits = NULL;

  if (drag->is_tried && copy == drag->copy && is_same (&place, &drag->place))
    return;
  drag->place = place;
  drag->copy = copy;
  drag->is_tried = TRUE;
  edits = carried_edits (drag, &landing);
  drag->is_placed = lap_edits_n (edits) > 0;
  lap_score_show_landing (drag->context,
                          drag->is_placed ? lap_landing_new (drag->context->document, drag->context->landing, edits,
                                                             landing, &place, title) : NULL);
}

static void
draw_end (Drag *drag)
{
  g_autofree char *length = NULL;

  if (!lap_stretching_to (&drag->stretching, drag->context->document, lap_grip_seconds (&drag->grip),
                          lap_grip_grid (&drag->grip)) && drag->tag != NULL)
    return;
  length = lap_clock_text (lap_document_timeline (drag->context->document)->length);
  g_free (drag->tag);
  /* Translators: seconds before and now, and the length of the session. */
  drag->tag = g_strdup_printf (_("%1$d → %2$d s, session %3$s"), drag->stretching.source.seconds, drag->stretching.now,
                               length);
}

static void
moved (gpointer data)
{
  Drag *drag = data;

  if (drag->kind == DRAG_END)
    draw_end (drag);
  else
    place_carried (drag);
  gtk_widget_queue_draw (GTK_WIDGET (drag->lane));
}

static void
call_off (gpointer data)
{
  Drag *drag = data;

  if (drag->kind == DRAG_END)
    lap_document_let_go (drag->context->document);
  drag_clear (drag);
}

static void
escaped (gpointer data)
{
  Drag *drag = data;

  call_off (drag);
  gtk_gesture_set_state (drag->gesture, GTK_EVENT_SEQUENCE_DENIED);
}

/* How far the end moves for a second: it comes once in each set, and its source may hold for boxes before it, too. */
static int
factor_of (Drag *drag, guint index, const LapTimeSource *source)
{
  const LapScore *score = drag->context->score;
  LapPart *part = score->timeline->parts[score->boxes[index].part].part;
  int n = 0;

  if (part->run == LAP_RUN_ON_THE_MINUTE && source->what == LAP_TIME_WORK)
    return 1;
  for (guint i = index + 1; i-- > 0 && score->boxes[i].part == score->boxes[index].part;) {
    LapBlock *block = lap_score_block (drag->context, i);
    LapTimeSource other;

    n += block != NULL && lap_time_source (block, score->boxes[i].round, source->what, &other) &&
         lap_time_same (source, &other);
  }
  if (source->what == LAP_TIME_WORK && score->boxes[index].kind == LAP_BOX_EXERCISE)
    n *= part->sets;
  return MAX (n, 1);
}

/* The end at @x of the view whose seconds can be set, and what says them. */
static End
end_at (Drag *drag, double x, LapTimeSource *source)
{
  const LapScore *score = drag->context->score;
  LapHit hit = lap_score_hit (score, drag->context->axis, x, REACH);
  LapBlock *block = hit.box != LAP_NO_BOX ? lap_score_block (drag->context, hit.box) : NULL;
  End none = { LAP_NO_BOX, LAP_EDGE_NONE };

  if (block == NULL || hit.edge == LAP_EDGE_NONE || score->boxes[hit.box].kind == LAP_BOX_OWN_PACE ||
      lap_score_place (score, drag->context->axis, hit.box).width < LEAST ||
      !lap_document_is_editable (drag->context->document) ||
      !lap_time_source (block, score->boxes[hit.box].round, hit.edge == LAP_EDGE_BODY ? LAP_TIME_WORK : LAP_TIME_REST,
                        source))
    return none;
  return (End) { hit.box, hit.edge };
}

static void
begin_cb (Drag *drag, double x, double y)
{
  LapTimeSource source;
  End end;

  drag_clear (drag);
  drag->began = x;
  end = end_at (drag, x, &source);
  drag->on_end = end.box != LAP_NO_BOX;
  if (drag->on_end)
    lap_stretching_begin (&drag->stretching, &source, factor_of (drag, end.box, &source));
  drag->kind = DRAG_PRESSED;
}

/* What is selected goes along when the press was on a part of it, else the block that was pressed alone. */
static GPtrArray *
pressed_blocks (Drag *drag)
{
  GPtrArray *blocks = g_ptr_array_new_with_free_func (g_object_unref);
  LapHit hit = lap_score_hit (drag->context->score, drag->context->axis, drag->began, 0);
  LapBlock *block = hit.box != LAP_NO_BOX ? lap_score_block (drag->context, hit.box) : NULL;
  g_autoptr (GPtrArray) chosen = lap_score_chosen (drag->context);

  if (block == NULL)
    return blocks;
  if (lap_score_round_of (drag->context, block) == 0)
    g_ptr_array_add (blocks, g_object_ref (block));
  else
    for (guint i = 0; i < chosen->len; i++)
      g_ptr_array_add (blocks, g_object_ref (g_ptr_array_index (chosen, i)));
  return blocks;
}

static gboolean
start (Drag *drag)
{
  if (!lap_document_is_editable (drag->context->document)) {
    lap_document_tell (drag->context->document, lap_document_why_not (drag->context->document));
    drag_clear (drag);
    return FALSE;
  }
  if (!drag->on_end) {
    drag->blocks = pressed_blocks (drag);
    if (drag->blocks->len == 0) {
      drag_clear (drag);
      return FALSE;
    }
  }
  drag->kind = drag->on_end ? DRAG_END : DRAG_MOVE;
  gtk_gesture_set_state (drag->gesture, GTK_EVENT_SEQUENCE_CLAIMED);
  lap_grip_take (&drag->grip, drag->began, drag->on_end);
  return TRUE;
}

static void
update_cb (Drag *drag, double dx, double dy)
{
  if (drag->kind == DRAG_NONE || (drag->kind == DRAG_PRESSED && (ABS (dx) < THRESHOLD || !start (drag))))
    return;
  lap_grip_move (&drag->grip, drag->began + dx,
                 gtk_event_controller_get_current_event_state (GTK_EVENT_CONTROLLER (drag->gesture)));
}

static void
let_fall (Drag *drag)
{
  g_autoptr (GPtrArray) landing = NULL;
  int round = drag->place.round;
  LapEdits *edits = carried_edits (drag, &landing);

  drag_clear (drag);
  if (lap_document_apply (drag->context->document, edits))
    lap_score_choose_blocks (drag->context, landing, round);
}

static void
end_cb (Drag *drag, double dx, double dy)
{
  if (drag->kind == DRAG_END) {
    lap_document_keep (drag->context->document);
    drag_clear (drag);
  } else if (drag->kind == DRAG_MOVE && drag->is_placed)
    let_fall (drag);
  else
    drag_clear (drag);
}

static void
hover_cb (Drag *drag, double x, double y)
{
  LapTimeSource source;
  LapHit hit = lap_score_hit (drag->context->score, drag->context->axis, x, REACH);
  End end = end_at (drag, x, &source);

  gtk_widget_set_cursor_from_name (GTK_WIDGET (drag->lane), end.box != LAP_NO_BOX ? "col-resize" : NULL);
  if (hit.box == drag->under)
    return;
  drag->under = hit.box;
  gtk_widget_queue_draw (GTK_WIDGET (drag->lane));
}

static void
leave_cb (Drag *drag)
{
  drag->under = LAP_NO_BOX;
  gtk_widget_queue_draw (GTK_WIDGET (drag->lane));
}

void
lap_score_drag_install (LapBlocksLane *lane)
{
  static const LapGripFuncs funcs = { moved, escaped };
  Drag *drag = g_new0 (Drag, 1);
  GtkEventController *motion = gtk_event_controller_motion_new ();

  drag->lane = lane;
  drag->context = lap_lane_context (LAP_LANE (lane));
  drag->under = LAP_NO_BOX;
  lap_grip_init (&drag->grip, LAP_LANE (lane), &funcs, drag);
  drag->gesture = gtk_gesture_drag_new ();
  g_signal_connect_swapped (drag->gesture, "drag-begin", G_CALLBACK (begin_cb), drag);
  g_signal_connect_swapped (drag->gesture, "drag-update", G_CALLBACK (update_cb), drag);
  g_signal_connect_swapped (drag->gesture, "drag-end", G_CALLBACK (end_cb), drag);
  g_signal_connect_swapped (drag->gesture, "cancel", G_CALLBACK (call_off), drag);
  g_signal_connect_swapped (motion, "motion", G_CALLBACK (hover_cb), drag);
  g_signal_connect_swapped (motion, "leave", G_CALLBACK (leave_cb), drag);
  gtk_widget_add_controller (GTK_WIDGET (lane), GTK_EVENT_CONTROLLER (drag->gesture));
  gtk_widget_add_controller (GTK_WIDGET (lane), motion);
  g_object_set_qdata_full (G_OBJECT (lane), quark (), drag, drag_free);
}

/* What is carried is half gone from where it stands. */
static void
fade_carried (Drag *drag, GtkSnapshot *snapshot, int height)
{
  LapScoreContext *context = drag->context;
  GdkRGBA paper = lap_colour (LAP_COLOUR_PAPER);
  guint first, end;

  paper.alpha = 0.5;
  lap_score_visible (context->score, context->axis, &first, &end);
  for (guint i = first; i < end; i++) {
    LapBlock *block = lap_score_block (context, i);
    LapPlaced placed = lap_score_place (context->score, context->axis, i);

    if (block != NULL && g_ptr_array_find (drag->blocks, block, NULL))
      gtk_snapshot_append_color (snapshot, &paper, &GRAPHENE_RECT_INIT (placed.x, 0, placed.width, height));
  }
}

/* px above the ground where the handle at @x stands: over the mark of a warning, where there is one, so that its number
 * can be read. */
static int
handle_above (Drag *drag, double x, int top, int height)
{
  LapLane *lane = LAP_LANE (drag->lane);
  int size = lap_marks_size (lap_text_line (GTK_WIDGET (lane))), middle = top + height - size / 2;

  return lap_lane_is_on_mark (lane, x, middle) ? height + 4 + top - 2 - (middle - size / 2) : 0;
}

/* The ends of @box that can be drawn. */
static void
draw_handles (Drag *drag, GtkSnapshot *snapshot, guint box)
{
  const LapAxis *axis = drag->context->axis;
  LapBlock *block = box < drag->context->score->n ? lap_score_block (drag->context, box) : NULL;
  LapPlaced placed;
  int top, height;

  if (block == NULL || drag->context->score->boxes[box].kind == LAP_BOX_OWN_PACE)
    return;
  placed = lap_score_place (drag->context->score, axis, box);
  if (placed.width < LEAST)
    return;
  lap_block_widget_ground (lap_text_line (GTK_WIDGET (drag->lane)), gtk_widget_get_height (GTK_WIDGET (drag->lane)), &top,
                           &height);
  for (int rest = 0; rest < 2; rest++) {
    int at = rest ? placed.width : placed.body;
    double x = axis->mirrored ? placed.x + placed.width - at : placed.x + at;
    LapTimeSource source;

    if ((!rest || placed.body < placed.width) &&
        lap_time_source (block, drag->context->score->boxes[box].round, rest ? LAP_TIME_REST : LAP_TIME_WORK, &source))
      lap_paint_handle (snapshot, x, top - 2 - handle_above (drag, x, top, height), height + 4);
  }
}

void
lap_score_drag_draw (LapBlocksLane *lane, GtkSnapshot *snapshot)
{
  Drag *drag = drag_of (lane);
  guint selected = lap_score_selected (drag->context);
  int height = gtk_widget_get_height (GTK_WIDGET (lane));

  if (drag->kind == DRAG_MOVE && !drag->copy)
    fade_carried (drag, snapshot, height);
  if (drag->context->landing != NULL) {
    lap_landing_draw_ghosts (LAP_LANE (lane), snapshot, height);
    lap_landing_draw (LAP_LANE (lane), snapshot, height);
  } else if (lap_document_is_editable (drag->context->document)) {
    draw_handles (drag, snapshot, drag->under);
    if (selected != drag->under)
      draw_handles (drag, snapshot, selected);
  }
  if (drag->kind == DRAG_MOVE && drag->context->landing != NULL)
    lap_grip_draw_tag (&drag->grip, snapshot, drag->context->landing->words);
  else if (drag->tag != NULL)
    lap_grip_draw_tag (&drag->grip, snapshot, drag->tag);
}
