/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/drag.h"

#include "edit/add.h"
#include "edit/verbs.h"
#include "edit/verbs-blocks.h"
#include "edit/verbs-time.h"
#include "place/score-drop.h"
#include "ui/exercise-drop.h"
#include "ui/palette.h"
#include "ui/personal.h"
#include "ui/score/paint.h"
#include "ui/score/verbs.h"

#include <glib/gi18n-lib.h>

#define THRESHOLD  6  /* px before a press is a drag */
#define REACH      5  /* px of an end */
#define LEAST      24 /* px of a block whose ends can be held */
#define SCROLL_AT  40 /* px from the edge of the view where it begins to scroll */
#define SCROLL_BY  12 /* px at a time */
#define SCROLL_EVERY 16 /* ms */
#define GRID       5  /* seconds; 1 with Alt */

typedef enum { DRAG_NONE, DRAG_PRESSED, DRAG_MOVE, DRAG_END, DRAG_DROP } DragKind;

typedef struct {
  LapBlocksLane      *lane;
  LapScoreContext    *context;
  GtkGesture         *gesture;
  GtkEventController *keys; /* of the window, while something is dragged */
  GtkWidget          *root; /* that has them */
  guint               tick;
  DragKind            kind;
  double              began, x;
  gboolean            copy;
  GPtrArray          *blocks;   /* carried, each with a reference */
  LapDropPlace        place;
  gboolean            is_placed;
  gboolean            on_end;   /* pressed on the end of work or rest */
  LapTimeSource       source;   /* of that end */
  LapBlock           *block;    /* whose end it is */
  int                 factor;   /* seconds that the end moves for one of the source */
  int                 good;     /* the last seconds that were possible */
  char               *tag;
} Drag;

static GQuark
quark (void)
{
  return g_quark_from_static_string ("lap-score-drag");
}

static void
drag_clear (Drag *drag)
{
  drag->kind = DRAG_NONE;
  drag->is_placed = drag->on_end = FALSE;
  g_clear_pointer (&drag->blocks, g_ptr_array_unref);
  g_clear_object (&drag->block);
  g_clear_pointer (&drag->tag, g_free);
  g_clear_handle_id (&drag->tick, g_source_remove);
  if (drag->root != NULL) {
    gtk_widget_remove_controller (drag->root, drag->keys);
    g_object_remove_weak_pointer (G_OBJECT (drag->root), (gpointer *) &drag->root);
  }
  drag->root = NULL;
  gtk_widget_queue_draw (GTK_WIDGET (drag->lane));
}

static void
drag_free (gpointer data)
{
  Drag *drag = data;

  g_clear_handle_id (&drag->tick, g_source_remove);
  if (drag->root != NULL) {
    gtk_widget_remove_controller (drag->root, drag->keys);
    g_object_remove_weak_pointer (G_OBJECT (drag->root), (gpointer *) &drag->root);
  }
  g_clear_pointer (&drag->blocks, g_ptr_array_unref);
  g_clear_object (&drag->block);
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

static LapSpot
spot_of (Drag *drag)
{
  return (LapSpot) {
    drag->place.part != G_MAXUINT ? lap_session_nth (session_of (drag), drag->place.part) : NULL, drag->place.position,
  };
}

/* The edits of letting go of what is carried here. */
static LapEdits *
carried_edits (Drag *drag)
{
  LapSpot spot = spot_of (drag);
  g_autoptr (GPtrArray) copies = NULL;

  if (!drag->copy)
    return lap_verb_move_blocks (session_of (drag), drag->blocks, &spot, catalogue_of (drag));
  copies = lap_blocks_copy (drag->blocks);
  return lap_verb_insert_blocks (session_of (drag), &spot, copies, _("Copy %s"), catalogue_of (drag));
}

/* How many seconds longer the session would be; the edits are tried and taken back. */
static int
longer_by (Drag *drag, LapEdits *edits)
{
  g_autoptr (LapTimeline) tried = NULL;
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();

  lap_edits_swap (edits);
  tried = lap_timeline_new (session_of (drag), builtin, NULL);
  lap_edits_swap (edits);
  return tried != NULL ? tried->length - lap_document_timeline (drag->context->document)->length : 0;
}

/* "Main: after 3, 2 rounds". */
static char *
where_text (Drag *drag)
{
  LapSpot spot = spot_of (drag);
  g_autofree char *place = NULL;

  if (spot.part == NULL)
    return g_strdup (_("a new part"));
  if (spot.position == 0)
    place = g_strdup_printf (_("%s: first"), lap_part_title (spot.part));
  else
    /* Translators: a part, and the number of the block after which something would come. */
    place = g_strdup_printf (_("%1$s: after %2$u"), lap_part_title (spot.part), spot.position);
  if (spot.part->rounds < 2)
    return g_steal_pointer (&place);
  /* Translators: where something would come, and in how many rounds. */
  return g_strdup_printf (ngettext ("%1$s, in %2$d round", "%1$s, in %2$d rounds", spot.part->rounds), place,
                          spot.part->rounds);
}

static void
tag_place (Drag *drag, LapEdits *edits)
{
  g_autofree char *where = where_text (drag), *clock = NULL;
  int by = longer_by (drag, edits);

  clock = lap_clock_text (ABS (by));
  g_free (drag->tag);
  drag->tag = by == 0 ? g_strdup (where) : g_strdup_printf ("%s, %s%s", where, by > 0 ? "+" : "−", clock);
}

static void
place_carried (Drag *drag)
{
  g_autoptr (LapEdits) edits = NULL;

  drag->place = lap_score_drop_place (drag->context->score, drag->context->axis, drag->x, FALSE);
  edits = carried_edits (drag);
  drag->is_placed = lap_edits_n (edits) > 0;
  g_clear_pointer (&drag->tag, g_free);
  if (drag->is_placed)
    tag_place (drag, edits);
  gtk_widget_queue_draw (GTK_WIDGET (drag->lane));
}

static GdkModifierType
state_of (Drag *drag)
{
  return gtk_event_controller_get_current_event_state (GTK_EVENT_CONTROLLER (drag->gesture));
}

static void
move_end (Drag *drag)
{
  const LapAxis *axis = drag->context->axis;
  double by = lap_axis_second (axis, drag->x) - lap_axis_second (axis, drag->began);
  int grid = state_of (drag) & GDK_ALT_MASK ? 1 : GRID;
  int seconds = lap_time_snap (&drag->source, drag->source.seconds + by / drag->factor, grid);
  g_autofree char *length = NULL;

  if (seconds == drag->good && drag->tag != NULL)
    return;
  if (lap_document_hold (drag->context->document, lap_verb_set_time (&drag->source, seconds, catalogue_of (drag))))
    drag->good = seconds;
  else
    lap_document_hold (drag->context->document, lap_verb_set_time (&drag->source, drag->good, catalogue_of (drag)));
  length = lap_clock_text (lap_document_timeline (drag->context->document)->length);
  g_free (drag->tag);
  /* Translators: seconds before and now, and the length of the session. */
  drag->tag = g_strdup_printf (_("%1$d → %2$d s, session %3$s"), drag->source.seconds, drag->good, length);
  gtk_widget_queue_draw (GTK_WIDGET (drag->lane));
}

static void
cancel (Drag *drag)
{
  if (drag->kind == DRAG_END)
    lap_document_let_go (drag->context->document);
  drag_clear (drag);
}

/* Escape takes the drag back, and Ctrl turns a move into a copy, whoever has the focus. */
static gboolean
key_cb (Drag *drag, guint key, guint code, GdkModifierType state, GtkEventController *keys)
{
  if (key == GDK_KEY_Escape) {
    cancel (drag);
    gtk_gesture_set_state (drag->gesture, GTK_EVENT_SEQUENCE_DENIED);
  }
  return TRUE;
}

/* Between frames, as when somebody scrolls: blocks that come into view need a new layout. */
static gboolean
scroll_cb (gpointer data)
{
  Drag *drag = data;
  const LapAxis *axis = drag->context->axis;
  double was = axis->offset, sign = axis->mirrored ? -1 : 1;

  if (drag->x < SCROLL_AT)
    lap_score_scroll_by (drag->context, -sign * SCROLL_BY);
  else if (drag->x > axis->view - SCROLL_AT)
    lap_score_scroll_by (drag->context, sign * SCROLL_BY);
  if (axis->offset != was)
    place_carried (drag);
  return G_SOURCE_CONTINUE;
}

static void
watch (Drag *drag)
{
  drag->root = GTK_WIDGET (gtk_widget_get_root (GTK_WIDGET (drag->lane)));
  if (drag->root == NULL)
    return;
  g_object_add_weak_pointer (G_OBJECT (drag->root), (gpointer *) &drag->root);
  drag->keys = gtk_event_controller_key_new ();
  gtk_event_controller_set_propagation_phase (drag->keys, GTK_PHASE_CAPTURE);
  g_signal_connect_swapped (drag->keys, "key-pressed", G_CALLBACK (key_cb), drag);
  gtk_widget_add_controller (drag->root, drag->keys);
}

/* How far the end moves for a second: it comes once in each set, and its source may hold for boxes before it, too. */
static int
factor_of (Drag *drag, guint index, LapPart *part)
{
  const LapScore *score = drag->context->score;
  int n = 0;

  if (part->run == LAP_RUN_ON_THE_MINUTE && drag->source.what == LAP_TIME_WORK)
    return 1;
  for (guint i = index + 1; i-- > 0 && score->boxes[i].part == score->boxes[index].part;) {
    LapBlock *block = lap_score_block (drag->context, i);
    LapTimeSource other;

    n += block != NULL && lap_time_source (block, score->boxes[i].round, drag->source.what, &other) &&
         lap_time_same (&drag->source, &other);
  }
  if (drag->source.what == LAP_TIME_WORK && score->boxes[index].kind == LAP_BOX_EXERCISE)
    n *= part->sets;
  return MAX (n, 1);
}

/* Whether the press is on the end of a block's work or rest that can be set. */
static gboolean
take_end (Drag *drag)
{
  const LapScore *score = drag->context->score;
  LapHit hit = lap_score_hit (score, drag->context->axis, drag->began, REACH);
  LapBlock *block = hit.box != LAP_NO_BOX ? lap_score_block (drag->context, hit.box) : NULL;

  if (block == NULL || hit.edge == LAP_EDGE_NONE || score->boxes[hit.box].kind == LAP_BOX_OWN_PACE ||
      lap_score_place (score, drag->context->axis, hit.box).width < LEAST ||
      !lap_time_source (block, score->boxes[hit.box].round, hit.edge == LAP_EDGE_BODY ? LAP_TIME_WORK : LAP_TIME_REST,
                        &drag->source))
    return FALSE;
  g_set_object (&drag->block, block);
  drag->factor = factor_of (drag, hit.box, score->timeline->parts[score->boxes[hit.box].part].part);
  drag->good = drag->source.seconds;
  return TRUE;
}

static void
begin_cb (Drag *drag, double x, double y)
{
  drag_clear (drag);
  if (!lap_document_is_editable (drag->context->document))
    return;
  drag->began = drag->x = x;
  drag->on_end = take_end (drag);
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
  if (!drag->on_end) {
    drag->blocks = pressed_blocks (drag);
    if (drag->blocks->len == 0) {
      drag_clear (drag);
      return FALSE;
    }
  }
  drag->kind = drag->on_end ? DRAG_END : DRAG_MOVE;
  gtk_gesture_set_state (drag->gesture, GTK_EVENT_SEQUENCE_CLAIMED);
  watch (drag);
  return TRUE;
}

static void
update_cb (Drag *drag, double dx, double dy)
{
  drag->x = drag->began + dx;
  if (drag->kind == DRAG_PRESSED && (ABS (dx) < THRESHOLD || !start (drag)))
    return;
  if (drag->kind == DRAG_END)
    move_end (drag);
  else if (drag->kind == DRAG_MOVE) {
    drag->copy = (state_of (drag) & GDK_CONTROL_MASK) != 0;
    place_carried (drag);
    if (drag->tick == 0 && (drag->x < SCROLL_AT || drag->x > drag->context->axis->view - SCROLL_AT))
      drag->tick = g_timeout_add (SCROLL_EVERY, scroll_cb, drag);
  }
}

static void
let_fall (Drag *drag)
{
  g_autoptr (GPtrArray) blocks = g_ptr_array_ref (drag->blocks);
  int round = drag->place.round;
  gboolean copy = drag->copy;
  LapEdits *edits = carried_edits (drag);

  drag_clear (drag);
  if (lap_document_apply (drag->context->document, edits) && !copy)
    lap_score_choose_blocks (drag->context, blocks, round);
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

static GdkDragAction
over_cb (Drag *drag, double x, double y, GtkDropTarget *target)
{
  if (!lap_document_is_editable (drag->context->document))
    return 0;
  drag->kind = DRAG_DROP;
  drag->x = x;
  drag->place = lap_score_drop_place (drag->context->score, drag->context->axis, x, TRUE);
  drag->is_placed = TRUE;
  g_free (drag->tag);
  if (drag->place.onto != LAP_NO_BOX) {
    LapBlock *block = lap_score_block (drag->context, drag->place.onto);
    g_autofree char *title = lap_block_title (block, catalogue_of (drag));

    drag->tag = g_strdup_printf (_("instead of %s"), title);
  } else
    drag->tag = where_text (drag);
  gtk_widget_queue_draw (GTK_WIDGET (drag->lane));
  return GDK_ACTION_COPY;
}

static gboolean
drop_cb (Drag *drag, const GValue *value, double x, double y, GtkDropTarget *target)
{
  const LapExerciseDrop *drop = g_value_get_boxed (value);
  LapDropPlace place = lap_score_drop_place (drag->context->score, drag->context->axis, x, TRUE);
  g_autoptr (GPtrArray) blocks = g_ptr_array_new_with_free_func (g_object_unref);
  g_autoptr (LapCatalogue) all = lap_personal_under (lap_personal (), catalogue_of (drag));
  g_autoptr (GPtrArray) brought = g_ptr_array_new ();
  LapEdits *edits;
  LapBlock *added = NULL;
  LapSpot spot;

  g_ptr_array_add (brought, lap_catalogue_find (all, drop->id));
  drag->place = place;
  spot = spot_of (drag);
  drag_clear (drag);
  if (place.onto == LAP_NO_BOX && spot.part != NULL) {
    g_ptr_array_add (blocks, lap_block_for_place (spot.part, spot.position, drop->id));
    return lap_score_insert (drag->context, &spot, blocks, _("Add %s"), brought);
  }
  edits = place.onto != LAP_NO_BOX
        ? lap_verb_set_exercise_in (lap_score_block (drag->context, place.onto), place.round, drop->id, all)
        : lap_verb_add_exercise (session_of (drag), NULL, drop->id, all, &added);
  lap_verb_take_own (edits, session_of (drag), brought, catalogue_of (drag));
  return lap_document_apply (drag->context->document, edits);
}

void
lap_score_drag_install (LapBlocksLane *lane)
{
  Drag *drag = g_new0 (Drag, 1);
  GtkDropTarget *target = gtk_drop_target_new (LAP_TYPE_EXERCISE_DROP, GDK_ACTION_COPY);

  drag->lane = lane;
  drag->context = lap_lane_context (LAP_LANE (lane));
  drag->gesture = gtk_gesture_drag_new ();
  g_signal_connect_swapped (drag->gesture, "drag-begin", G_CALLBACK (begin_cb), drag);
  g_signal_connect_swapped (drag->gesture, "drag-update", G_CALLBACK (update_cb), drag);
  g_signal_connect_swapped (drag->gesture, "drag-end", G_CALLBACK (end_cb), drag);
  g_signal_connect_swapped (drag->gesture, "cancel", G_CALLBACK (cancel), drag);
  g_signal_connect_swapped (target, "motion", G_CALLBACK (over_cb), drag);
  g_signal_connect_swapped (target, "leave", G_CALLBACK (drag_clear), drag);
  g_signal_connect_swapped (target, "drop", G_CALLBACK (drop_cb), drag);
  gtk_widget_add_controller (GTK_WIDGET (lane), GTK_EVENT_CONTROLLER (drag->gesture));
  gtk_widget_add_controller (GTK_WIDGET (lane), GTK_EVENT_CONTROLLER (target));
  g_object_set_qdata_full (G_OBJECT (lane), quark (), drag, drag_free);
}

static void
draw_tag (Drag *drag, GtkSnapshot *snapshot, double x)
{
  g_autoptr (PangoLayout) layout = lap_lane_layout (LAP_LANE (drag->lane), drag->tag, -1);
  GdkRGBA ink = lap_colour (LAP_COLOUR_INK), paper = lap_colour (LAP_COLOUR_PAPER);
  int width, height, left;

  pango_layout_get_pixel_size (layout, &width, &height);
  left = CLAMP (x - width / 2.0, 8, MAX (8, drag->context->axis->view - width - 8));
  lap_paint_rect (snapshot, &ink, left - 6, 2, width + 12, height + 6);
  lap_paint_text (snapshot, layout, &paper, left, 5);
}

void
lap_score_drag_draw (LapBlocksLane *lane, GtkSnapshot *snapshot)
{
  Drag *drag = g_object_get_qdata (G_OBJECT (lane), quark ());
  int height = gtk_widget_get_height (GTK_WIDGET (lane));
  GdkRGBA accent = lap_colour (LAP_COLOUR_WORK);

  if (drag == NULL || drag->tag == NULL)
    return;
  if (drag->is_placed && drag->place.onto != LAP_NO_BOX) {
    LapPlaced placed = lap_score_place (drag->context->score, drag->context->axis, drag->place.onto);
    cairo_t *cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (placed.x, 0, placed.width, height));

    lap_paint_box (cr, NULL, &accent, 3, 4, placed.x, 0, placed.width, height);
    cairo_destroy (cr);
  } else if (drag->is_placed)
    lap_paint_rect (snapshot, &accent, lap_axis_x (drag->context->axis, drag->place.second) - 1.5, 0, 3, height);
  draw_tag (drag, snapshot, drag->x);
}
