/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/bracket-drag.h"

#include "edit/verbs.h"
#include "ui/score/grip.h"
#include "ui/score/stretch.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#define THRESHOLD   6   /* px before a press is a drag */
#define MOST_ROUNDS 100 /* design, limits of files */

typedef enum { HOLD_NOTHING, HOLD_ROUNDS, HOLD_TIME } Hold;

typedef struct {
  LapPartsLane  *lane;
  GtkGesture    *gesture;
  LapGrip        grip;
  Hold           pressed, hold; /* what could be drawn, and what is */
  double         began;
  LapPart       *part;
  int            rounds, now;   /* before, and as it is held */
  int            most;          /* that are possible, as far as was tried */
  double         each;          /* seconds of a round */
  LapStretching  stretching;
  char          *tag;
} Drag;

static GQuark
quark (void)
{
  return g_quark_from_static_string ("lap-bracket-drag");
}

static LapDocument *
document_of (Drag *drag)
{
  return lap_lane_context (LAP_LANE (drag->lane))->document;
}

static void
drag_clear (Drag *drag)
{
  lap_grip_let_go (&drag->grip);
  drag->pressed = drag->hold = HOLD_NOTHING;
  g_clear_object (&drag->part);
  g_clear_pointer (&drag->tag, g_free);
  gtk_widget_queue_draw (GTK_WIDGET (drag->lane));
}

static void
drag_free (gpointer data)
{
  Drag *drag = data;

  lap_grip_let_go (&drag->grip);
  g_clear_object (&drag->part);
  g_free (drag->tag);
  g_free (drag);
}

/* "3 rounds, 42:10 in all". */
static void
tag_rounds (Drag *drag)
{
  g_autofree char *length = lap_clock_text (lap_document_timeline (document_of (drag))->length);

  g_free (drag->tag);
  /* Translators: a number of rounds, and the length of the session. */
  drag->tag = g_strdup_printf (ngettext ("%1$d round, %2$s in all", "%1$d rounds, %2$s in all", drag->now), drag->now,
                               length);
}

static void
tag_time (Drag *drag)
{
  g_autofree char *length = lap_clock_text (lap_document_timeline (document_of (drag))->length);

  g_free (drag->tag);
  if (drag->stretching.source.what == LAP_TIME_WORK)
    drag->tag = g_strdup_printf (_("%1$d → %2$d s, session %3$s"), drag->stretching.source.seconds, drag->stretching.now,
                                 length);
  else
    /* Translators: seconds of a rest before and now, and the length of the session. */
    drag->tag = g_strdup_printf (_("Rest %1$d → %2$d s, %3$s in all"), drag->stretching.source.seconds,
                                 drag->stretching.now, length);
}

static LapEdits *
edits_for (Drag *drag, int rounds)
{
  return rounds != drag->rounds ? lap_verb_set_rounds (drag->part, rounds) : lap_edits_new ("");
}

/* A session that would be too long is never shown; as many rounds as are possible are. */
static void
draw_rounds (Drag *drag)
{
  int rounds = CLAMP (drag->rounds + (int) lround (lap_grip_seconds (&drag->grip) / drag->each), 1, drag->most);

  if (rounds == drag->now && drag->tag != NULL)
    return;
  while (!lap_document_hold (document_of (drag), edits_for (drag, rounds)) && rounds > drag->now) {
    drag->most = rounds - 1;
    rounds = (drag->now + rounds) / 2;
  }
  drag->now = rounds;
  tag_rounds (drag);
}

static void
moved (gpointer data)
{
  Drag *drag = data;

  if (drag->hold == HOLD_ROUNDS)
    draw_rounds (drag);
  else if (lap_stretching_to (&drag->stretching, document_of (drag), lap_grip_seconds (&drag->grip),
                              lap_grip_grid (&drag->grip)) || drag->tag == NULL)
    tag_time (drag);
  gtk_widget_queue_draw (GTK_WIDGET (drag->lane));
}

static void
call_off (gpointer data)
{
  Drag *drag = data;

  if (drag->hold != HOLD_NOTHING)
    lap_document_let_go (document_of (drag));
  drag_clear (drag);
}

static void
escaped (gpointer data)
{
  Drag *drag = data;

  call_off (drag);
  gtk_gesture_set_state (drag->gesture, GTK_EVENT_SEQUENCE_DENIED);
}

/* A rest between rounds comes after each but the last: with every one before it that is drawn to scale, what ends it
 * moves a second more. */
static int
factor_of (Drag *drag, guint index)
{
  const LapBrackets *brackets = lap_parts_lane_brackets (drag->lane);
  const LapAxis *axis = lap_lane_context (LAP_LANE (drag->lane))->axis;
  int n = 0;

  for (guint i = index; i != LAP_NO_BRACKET && brackets->all[i].part == brackets->all[index].part;
       i = lap_brackets_step (brackets, i, -1))
    n += brackets->all[i].kind == brackets->all[index].kind && lap_bracket_is_open (&brackets->all[i], axis);
  return n;
}

/* What of @bracket can be drawn. */
static Hold
take (Drag *drag, const LapBracket *bracket, guint index)
{
  LapTimeSource source;

  if (!lap_bracket_is_rest (bracket) && drag->part->run != LAP_RUN_OWN_PACE)
    return HOLD_ROUNDS;
  if (bracket->kind == LAP_BRACKET_BETWEEN)
    lap_time_source_round_rest (drag->part, &source);
  else if (bracket->kind == LAP_BRACKET_AFTER)
    lap_time_source_rest_after (drag->part, &source);
  else
    lap_time_source_cap (drag->part, &source);
  lap_stretching_begin (&drag->stretching, &source, factor_of (drag, index));
  return HOLD_TIME;
}

static void
begin_cb (Drag *drag, double x, double y)
{
  const LapScore *score = lap_lane_context (LAP_LANE (drag->lane))->score;
  gboolean at_end;
  guint index = lap_parts_lane_hit (drag->lane, x, y, &at_end);

  drag_clear (drag);
  if (!at_end)
    return;
  drag->began = x;
  drag->part = g_object_ref (score->timeline->parts[lap_parts_lane_brackets (drag->lane)->all[index].part].part);
  drag->rounds = drag->now = drag->part->rounds;
  drag->most = MOST_ROUNDS;
  drag->each = MAX (lap_brackets_round_seconds (score, lap_parts_lane_brackets (drag->lane)->all[index].part), 1);
  drag->pressed = take (drag, &lap_parts_lane_brackets (drag->lane)->all[index], index);
}

static void
update_cb (Drag *drag, double dx, double dy)
{
  if (drag->pressed == HOLD_NOTHING || (drag->hold == HOLD_NOTHING && ABS (dx) < THRESHOLD))
    return;
  if (!lap_document_is_editable (document_of (drag))) {
    lap_document_tell (document_of (drag), lap_document_why_not (document_of (drag)));
    drag_clear (drag);
    return;
  }
  if (drag->hold == HOLD_NOTHING) {
    drag->hold = drag->pressed;
    gtk_gesture_set_state (drag->gesture, GTK_EVENT_SEQUENCE_CLAIMED);
    lap_grip_take (&drag->grip, drag->began, TRUE);
  }
  lap_grip_move (&drag->grip, drag->began + dx,
                 gtk_event_controller_get_current_event_state (GTK_EVENT_CONTROLLER (drag->gesture)));
}

static void
end_cb (Drag *drag, double dx, double dy)
{
  if (drag->hold != HOLD_NOTHING)
    lap_document_keep (document_of (drag));
  drag_clear (drag);
}

void
lap_bracket_drag_install (LapPartsLane *lane)
{
  static const LapGripFuncs funcs = { moved, escaped };
  Drag *drag = g_new0 (Drag, 1);

  drag->lane = lane;
  lap_grip_init (&drag->grip, LAP_LANE (lane), &funcs, drag);
  drag->gesture = gtk_gesture_drag_new ();
  g_signal_connect_swapped (drag->gesture, "drag-begin", G_CALLBACK (begin_cb), drag);
  g_signal_connect_swapped (drag->gesture, "drag-update", G_CALLBACK (update_cb), drag);
  g_signal_connect_swapped (drag->gesture, "drag-end", G_CALLBACK (end_cb), drag);
  g_signal_connect_swapped (drag->gesture, "cancel", G_CALLBACK (call_off), drag);
  gtk_widget_add_controller (GTK_WIDGET (lane), GTK_EVENT_CONTROLLER (drag->gesture));
  g_object_set_qdata_full (G_OBJECT (lane), quark (), drag, drag_free);
}

static Drag *
drag_of (LapPartsLane *lane)
{
  return g_object_get_qdata (G_OBJECT (lane), quark ());
}

void
lap_bracket_drag_draw (LapPartsLane *lane, GtkSnapshot *snapshot)
{
  if (drag_of (lane)->tag != NULL)
    lap_grip_draw_tag (&drag_of (lane)->grip, snapshot, drag_of (lane)->tag);
}

gboolean
lap_bracket_drag_is_held (LapPartsLane *lane)
{
  return drag_of (lane)->hold != HOLD_NOTHING;
}
