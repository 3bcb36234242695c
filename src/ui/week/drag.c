/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/week/drag.h"

#include "base/customs.h"
#include "ui/week/moves.h"
#include "ui/week/words.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#define THRESHOLD 6  /* px before a press is a drag */
#define REACH     5  /* px of an end */
#define SCROLL_AT 36 /* px from the edge of what is seen where it begins to scroll */
#define SCROLL_BY 12 /* px at a time */
#define SCROLL_EVERY 16 /* ms */

typedef enum { DRAG_NONE, DRAG_PRESSED, DRAG_MOVE, DRAG_START, DRAG_END } DragKind;

typedef struct {
  LapWeekView   *view;
  LapWeekScene  *scene;
  GtkWidget     *from;    /* strip or tray: what the gesture is on */
  GtkGesture    *gesture;
  GtkAdjustment *across;
  GtkEventController *keys; /* of the window, while something is dragged */
  GtkWidget     *root;    /* that has them */
  guint          tick;
  DragKind       kind;
  LapWeekEdge    edge;
  char          *id;      /* of the class that was pressed */
  double         began_x, began_y, dx, dy; /* px of `from` */
  double         grab;    /* minutes from its start to the pointer */
  gboolean       copy, off;
  LapPlace       place;   /* of that class; its strings are the week's */
  int            minutes;
  LapEdits      *edits;   /* what a release would do, or NULL */
} Drag;

static void
forget (Drag *drag)
{
  drag->kind = DRAG_NONE;
  g_clear_pointer (&drag->id, g_free);
  g_clear_pointer (&drag->edits, lap_edits_free);
  g_clear_handle_id (&drag->tick, g_source_remove);
  if (drag->root != NULL) {
    gtk_widget_remove_controller (drag->root, drag->keys);
    g_object_remove_weak_pointer (G_OBJECT (drag->root), (gpointer *) &drag->root);
  }
  drag->root = NULL;
}

static void
drag_free (gpointer data)
{
  forget (data);
  g_free (data);
}

static void
end_drag (Drag *drag)
{
  forget (drag);
  lap_week_strip_set_tag (lap_week_view_strip (drag->view), NULL, 0, 0);
  lap_week_scene_preview (drag->scene, NULL);
}

static GdkModifierType
state_of (Drag *drag)
{
  return gtk_event_controller_get_current_event_state (GTK_EVENT_CONTROLLER (drag->gesture));
}

/* The pointer in px of the strip, wherever the drag began. */
static gboolean
in_strip (Drag *drag, graphene_point_t *point)
{
  return gtk_widget_compute_point (drag->from, GTK_WIDGET (lap_week_view_strip (drag->view)),
                                   &GRAPHENE_POINT_INIT (drag->began_x + drag->dx, drag->began_y + drag->dy), point);
}

static gboolean
is_over_tray (Drag *drag)
{
  GtkWidget *tray = GTK_WIDGET (lap_week_view_tray (drag->view));
  graphene_point_t point;

  return gtk_widget_get_visible (tray) &&
         gtk_widget_compute_point (drag->from, tray,
                                   &GRAPHENE_POINT_INIT (drag->began_x + drag->dx, drag->began_y + drag->dy), &point) &&
         gtk_widget_contains (tray, point.x, point.y);
}

static LapClass *
pressed_class (Drag *drag)
{
  return lap_week_class (lap_week_scene_week (drag->scene), drag->id);
}

static int
snap (Drag *drag, double minute)
{
  int grid = state_of (drag) & GDK_ALT_MASK ? LAP_SNAP_FINE : LAP_SNAP_MINUTES;

  return lround (minute / grid) * grid;
}

/* Where the pointer would bring the class. */
static void
find_place (Drag *drag, double x, double y)
{
  const LapWeekScore *score = drag->scene->score;
  LapWeekHit hit = lap_week_score_hit (score, drag->scene->axis, x, y, 0);
  LapClass *c = pressed_class (drag);
  LapPlace now = lap_week_place_now (drag->scene, c);

  drag->place = now;
  drag->minutes = c->minutes;
  drag->off = FALSE;
  if (drag->kind == DRAG_END) {
    drag->minutes = CLAMP (snap (drag, hit.minute) - now.start, LAP_SNAP_FINE, LAP_DAY_MINUTES - now.start);
  } else if (drag->kind == DRAG_START) {
    drag->place.start = CLAMP (snap (drag, hit.minute), 0, now.start + c->minutes - LAP_SNAP_FINE);
    drag->minutes = now.start + c->minutes - drag->place.start;
  } else if (is_over_tray (drag)) {
    drag->off = TRUE;
    drag->place.day = drag->place.start = -1;
  } else {
    drag->place.day = score->bands[hit.band].day;
    drag->place.start = CLAMP (snap (drag, hit.minute - drag->grab), 0, LAP_DAY_MINUTES - c->minutes);
    lap_week_set_line (drag->scene, &drag->place, hit.row);
  }
}

static const char *
line_of (Drag *drag, const LapPlace *place)
{
  return drag->scene->look.by_coach ? place->coach : place->room;
}

/* The others that are selected go as far as the one that is held. FALSE where one can't. */
static gboolean
places_of (Drag *drag, GPtrArray *classes, LapPlace *places)
{
  LapPlace now = lap_week_place_now (drag->scene, pressed_class (drag));
  const LapDay first = lap_customs ().first_day;
  gboolean one_line = TRUE;

  for (guint i = 0; i < classes->len; i++) {
    places[i] = lap_week_place_now (drag->scene, g_ptr_array_index (classes, i));
    one_line = one_line && g_strcmp0 (line_of (drag, &places[i]), line_of (drag, &now)) == 0;
  }
  for (guint i = 0; i < classes->len; i++) {
    LapClass *c = g_ptr_array_index (classes, i);

    if (c == pressed_class (drag) || drag->off || now.day < 0 || places[i].day < 0) {
      places[i] = c == pressed_class (drag) || drag->off ? drag->place : places[i];
      if (drag->off) {
        places[i].room = c->room;
        places[i].coach = c->coach;
      }
      continue;
    }
    if (!lap_week_shift_day (&places[i], lap_day_place (first, drag->place.day) - lap_day_place (first, now.day)))
      return FALSE;
    places[i].start = CLAMP (places[i].start + drag->place.start - now.start, 0, LAP_DAY_MINUTES - c->minutes);
    if (one_line && drag->scene->look.by_coach)
      places[i].coach = drag->place.coach;
    else if (one_line)
      places[i].room = drag->place.room;
  }
  return TRUE;
}

/* What is selected; in a week with dates what of it is held there. */
static GPtrArray *
carried (Drag *drag)
{
  GPtrArray *classes = lap_week_scene_picked (drag->scene);
  const LapWeekScore *score = drag->scene->score;

  for (guint i = classes->len; lap_week_scene_date (drag->scene) != 0 && i-- > 0;) {
    guint box = lap_week_score_find (score, LAP_CLASS (classes->pdata[i])->id);

    if (box == LAP_NO_WEEK_BOX || score->boxes[box].off)
      g_ptr_array_remove_index (classes, i);
  }
  return classes;
}

static LapEdits *
copy_edits (GPtrArray *classes, const LapPlace *places, LapWeek *week)
{
  g_autoptr (GPtrArray) copies = lap_classes_copy (classes);

  for (guint i = 0; i < copies->len; i++) {
    LapClass *c = g_ptr_array_index (copies, i);
    char *room = g_strdup (places[i].room), *coach = g_strdup (places[i].coach);

    g_free (c->room);
    g_free (c->coach);
    c->day = places[i].day;
    c->start = places[i].start;
    c->room = room;
    c->coach = coach;
  }
  return lap_verb_add_classes (week, copies, _("Copy %s"));
}

static LapEdits *
make_edits (Drag *drag)
{
  g_autoptr (GPtrArray) classes = NULL;
  g_autofree LapPlace *places = NULL;
  gboolean dated = lap_week_scene_date (drag->scene) != 0;

  if (drag->kind != DRAG_MOVE)
    return lap_verb_set_minutes (pressed_class (drag), drag->place.start, drag->minutes);
  if (dated && drag->off)
    return NULL;
  classes = carried (drag);
  places = g_new (LapPlace, classes->len);
  if (!places_of (drag, classes, places))
    return NULL;
  if (drag->copy && !dated && !drag->off)
    return copy_edits (classes, places, lap_week_scene_week (drag->scene));
  return lap_week_move_edits (drag->scene, classes, places);
}

static void
tag (Drag *drag, double x, double y)
{
  LapWeek *week = lap_week_scene_week (drag->scene);
  g_autofree char *place = lap_place_text (week, &drag->place, drag->minutes), *text = NULL;

  if (drag->edits == NULL)
    text = g_strdup (_("not there"));
  else if (drag->kind != DRAG_MOVE)
    /* Translators: where a class is, and its minutes. */
    text = g_strdup_printf (_("%1$s, %2$d min"), place, drag->minutes);
  else if (drag->copy)
    text = g_strdup_printf (_("copy to %s"), place);
  else
    text = g_strdup (place);
  if (drag->scene->ghost_says != NULL) {
    g_autofree char *both = g_strdup_printf ("%s\n%s", text, drag->scene->ghost_says);

    lap_week_strip_set_tag (lap_week_view_strip (drag->view), both, x, y);
  } else
    lap_week_strip_set_tag (lap_week_view_strip (drag->view), text, x, y);
}

/* Only another place, snapped, is tried anew. */
static void
follow (Drag *drag)
{
  LapPlace was = drag->place;
  int minutes = drag->minutes;
  gboolean copy = drag->copy, first = drag->edits == NULL;
  graphene_point_t point;

  if (!in_strip (drag, &point) || pressed_class (drag) == NULL)
    return;
  drag->copy = (state_of (drag) & GDK_CONTROL_MASK) != 0;
  find_place (drag, point.x, point.y);
  if (first || was.day != drag->place.day || was.start != drag->place.start || minutes != drag->minutes ||
      copy != drag->copy || g_strcmp0 (was.room, drag->place.room) != 0 || g_strcmp0 (was.coach, drag->place.coach) != 0) {
    g_clear_pointer (&drag->edits, lap_edits_free);
    drag->edits = make_edits (drag);
    lap_week_scene_preview (drag->scene, drag->edits);
  }
  tag (drag, point.x, point.y);
}

static gboolean
key_cb (Drag *drag, guint key, guint code, GdkModifierType state, GtkEventController *keys)
{
  if (key == GDK_KEY_Escape) {
    end_drag (drag);
    gtk_gesture_set_state (drag->gesture, GTK_EVENT_SEQUENCE_DENIED);
  }
  return TRUE;
}

static gboolean
scroll_cb (gpointer data)
{
  Drag *drag = data;
  graphene_point_t point;
  double value = gtk_adjustment_get_value (drag->across), page = gtk_adjustment_get_page_size (drag->across);
  double sign = drag->scene->axis->mirrored ? -1 : 1, by_x = 0, by_y = 0;

  if (!in_strip (drag, &point) || is_over_tray (drag))
    return G_SOURCE_CONTINUE;
  by_y = point.y < value + SCROLL_AT ? -SCROLL_BY : point.y > value + page - SCROLL_AT ? SCROLL_BY : 0;
  by_x = point.x < SCROLL_AT ? -SCROLL_BY : point.x > drag->scene->axis->view - SCROLL_AT ? SCROLL_BY : 0;
  if (by_y != 0) {
    gtk_adjustment_set_value (drag->across, value + by_y);
    if (drag->from == GTK_WIDGET (lap_week_view_strip (drag->view)))
      drag->dy += gtk_adjustment_get_value (drag->across) - value;
  }
  if (by_x != 0)
    lap_week_scene_scroll_by (drag->scene, sign * by_x);
  if (by_x != 0 || by_y != 0)
    follow (drag);
  return G_SOURCE_CONTINUE;
}

static void
watch (Drag *drag)
{
  drag->root = GTK_WIDGET (gtk_widget_get_root (drag->from));
  if (drag->root == NULL)
    return;
  g_object_add_weak_pointer (G_OBJECT (drag->root), (gpointer *) &drag->root);
  drag->keys = gtk_event_controller_key_new ();
  gtk_event_controller_set_propagation_phase (drag->keys, GTK_PHASE_CAPTURE);
  g_signal_connect_swapped (drag->keys, "key-pressed", G_CALLBACK (key_cb), drag);
  gtk_widget_add_controller (drag->root, drag->keys);
}

static void
begin_cb (Drag *drag, double x, double y)
{
  LapWeekScene *scene = drag->scene;

  end_drag (drag);
  drag->began_x = x;
  drag->began_y = y;
  drag->dx = drag->dy = drag->grab = 0;
  drag->edge = LAP_WEEK_EDGE_NONE;
  if (!lap_document_is_editable (scene->document))
    return;
  /* From the tray a class goes to every week: not where a date is looked at. */
  if (drag->from == GTK_WIDGET (lap_week_view_tray (drag->view)) && lap_week_scene_date (scene) != 0)
    return;
  if (drag->from == GTK_WIDGET (lap_week_view_tray (drag->view)))
    drag->id = g_strdup (lap_week_tray_at (LAP_WEEK_TRAY (drag->from), x, y));
  else {
    LapWeekHit hit = lap_week_score_hit (scene->score, scene->axis, x, y, REACH);

    /* What isn't held can't be carried, nor what another week has sent here. */
    if (hit.box == LAP_NO_WEEK_BOX || scene->score->boxes[hit.box].off || scene->score->boxes[hit.box].nth > 0)
      return;
    drag->id = g_strdup (scene->score->boxes[hit.box].c->id);
    drag->grab = hit.minute - scene->score->boxes[hit.box].start;
    if (lap_week_scene_date (scene) == 0)
      drag->edge = hit.edge;
  }
  if (drag->id != NULL)
    drag->kind = DRAG_PRESSED;
}

static void
start (Drag *drag)
{
  static const DragKind kinds[] = {
    [LAP_WEEK_EDGE_NONE] = DRAG_MOVE, [LAP_WEEK_EDGE_START] = DRAG_START, [LAP_WEEK_EDGE_END] = DRAG_END,
  };

  drag->kind = kinds[drag->edge];
  if (!lap_week_scene_is_picked (drag->scene, drag->id) || drag->kind != DRAG_MOVE)
    lap_week_scene_pick (drag->scene, drag->id, LAP_PICK_ONLY);
  gtk_gesture_set_state (drag->gesture, GTK_EVENT_SEQUENCE_CLAIMED);
  watch (drag);
  drag->tick = g_timeout_add (SCROLL_EVERY, scroll_cb, drag);
}

static void
update_cb (Drag *drag, double dx, double dy)
{
  drag->dx = dx;
  drag->dy = dy;
  if (drag->kind == DRAG_NONE || (drag->kind == DRAG_PRESSED && hypot (dx, dy) < THRESHOLD))
    return;
  if (drag->kind == DRAG_PRESSED)
    start (drag);
  follow (drag);
}

static void
end_cb (Drag *drag, double dx, double dy)
{
  LapWeekScene *scene = drag->scene;
  LapEdits *edits = g_steal_pointer (&drag->edits);
  gboolean dragged = drag->kind > DRAG_PRESSED, copy = drag->copy;
  guint before = lap_list_n (lap_week_scene_week (scene)->classes);

  end_drag (drag);
  if (!dragged || edits == NULL) {
    g_clear_pointer (&edits, lap_edits_free);
    return;
  }
  if (lap_document_apply (scene->document, edits) && copy) {
    LapList *classes = lap_week_scene_week (scene)->classes;
    g_autoptr (GPtrArray) added = g_ptr_array_new ();

    for (guint i = before; i < lap_list_n (classes); i++)
      g_ptr_array_add (added, lap_list_nth (classes, i));
    lap_week_scene_pick_classes (scene, added);
  }
  lap_week_view_take_focus (drag->view);
}

static void
install (LapWeekView *view, GtkWidget *from, GtkAdjustment *across)
{
  Drag *drag = g_new0 (Drag, 1);

  drag->view = view;
  drag->scene = lap_week_view_scene (view);
  drag->from = from;
  drag->across = across;
  drag->gesture = gtk_gesture_drag_new ();
  g_signal_connect_swapped (drag->gesture, "drag-begin", G_CALLBACK (begin_cb), drag);
  g_signal_connect_swapped (drag->gesture, "drag-update", G_CALLBACK (update_cb), drag);
  g_signal_connect_swapped (drag->gesture, "drag-end", G_CALLBACK (end_cb), drag);
  g_signal_connect_swapped (drag->gesture, "cancel", G_CALLBACK (end_drag), drag);
  gtk_widget_add_controller (from, GTK_EVENT_CONTROLLER (drag->gesture));
  g_object_set_data_full (G_OBJECT (from), "lap-week-drag", drag, drag_free);
}

void
lap_week_drag_install (LapWeekView *view)
{
  GtkAdjustment *across = lap_week_view_across (view);

  install (view, GTK_WIDGET (lap_week_view_strip (view)), across);
  install (view, GTK_WIDGET (lap_week_view_tray (view)), across);
}
