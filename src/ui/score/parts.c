/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Brackets are drawn by the lane, since their titles keep to the view while it scrolls. Those that are seen have a
 * widget over them for the focus; one is bound to the same bracket as long as that is seen.
 */
#include "ui/score/parts.h"

#include "ui/palette.h"
#include "ui/score/bracket.h"
#include "ui/score/bracket-drag.h"
#include "ui/score/bracket-paint.h"
#include "ui/score/folds.h"
#include "ui/score/menu.h"
#include "ui/score/paint.h"
#include "ui/score/part-verbs.h"
#include "ui/shortcuts.h"

#include <glib/gi18n-lib.h>

struct _LapPartsLane {
  LapLane      parent_instance;
  LapBrackets *brackets;
  GHashTable  *live;  /* bracket -> LapBracketWidget that shows it */
  GPtrArray   *all;   /* LapBracketWidget, transfer none: children */
  guint        at;    /* the bracket that the keys are at */
  guint        under; /* the one whose end the pointer is on, or LAP_NO_BRACKET */
  guint        serial; /* of the axis the widgets were bound for */
  GtkWidget   *menu;  /* the last that was opened, a child, or NULL */
};

G_DEFINE_FINAL_TYPE (LapPartsLane, lap_parts_lane, LAP_TYPE_LANE)

static int
lap_parts_lane_height (LapLane *lane, int line)
{
  return 2 * lap_brackets_row (line) + 8;
}

static void
lap_parts_lane_draw (LapLane *lane, GtkSnapshot *snapshot, int width, int height)
{
  lap_brackets_draw (lane, LAP_PARTS_LANE (lane)->brackets, snapshot);
}

static LapBracketWidget *
free_widget (LapPartsLane *self, gboolean rest)
{
  LapBracketWidget *widget;

  for (guint i = 0; i < self->all->len; i++) {
    widget = g_ptr_array_index (self->all, i);
    if (lap_bracket_widget_bracket (widget) == NULL && lap_bracket_widget_is_rest (widget) == rest)
      return widget;
  }
  widget = LAP_BRACKET_WIDGET (lap_bracket_widget_new (lap_lane_context (LAP_LANE (self)), rest));
  gtk_widget_set_parent (GTK_WIDGET (widget), GTK_WIDGET (self));
  g_ptr_array_add (self->all, widget);
  return widget;
}

static void
let_go (LapBracketWidget *widget)
{
  lap_bracket_widget_bind (widget, NULL);
  gtk_widget_set_child_visible (GTK_WIDGET (widget), FALSE);
}

/* What has the focus is kept, wherever it is. */
static gboolean
is_wanted (LapPartsLane *self, guint index, guint first, guint end)
{
  GtkWidget *widget = lap_parts_lane_find (self, index);

  if (widget != NULL && gtk_widget_has_focus (widget))
    return TRUE;
  return index >= first && index < end &&
         lap_brackets_are_apart (self->brackets, lap_lane_context (LAP_LANE (self))->axis, index);
}

static void
release (LapPartsLane *self, guint first, guint end)
{
  GHashTableIter iter;
  gpointer index, widget;

  g_hash_table_iter_init (&iter, self->live);
  while (g_hash_table_iter_next (&iter, &index, &widget)) {
    if (is_wanted (self, GPOINTER_TO_UINT (index), first, end))
      continue;
    let_go (widget);
    g_hash_table_iter_remove (&iter);
  }
}

static void
bind (LapPartsLane *self, guint index, gboolean anew)
{
  LapBracketWidget *widget = g_hash_table_lookup (self->live, GUINT_TO_POINTER (index));

  if (widget != NULL && !anew)
    return;
  if (widget == NULL) {
    widget = free_widget (self, lap_bracket_is_rest (&self->brackets->all[index]));
    g_hash_table_insert (self->live, GUINT_TO_POINTER (index), widget);
    gtk_widget_set_child_visible (GTK_WIDGET (widget), TRUE);
  }
  lap_bracket_widget_bind (widget, &self->brackets->all[index]);
}

/* Binds what is to be shown, in the order of the brackets, for whoever reads the children one after another. */
static void
bind_all (LapPartsLane *self)
{
  const LapAxis *axis = lap_lane_context (LAP_LANE (self))->axis;
  GtkWidget *before = NULL;
  guint first, end;

  lap_brackets_visible (self->brackets, axis, &first, &end);
  release (self, first, end);
  for (guint i = first; i < end; i++) {
    GtkWidget *widget;

    if (!is_wanted (self, i, first, end))
      continue;
    bind (self, i, axis->serial != self->serial);
    widget = lap_parts_lane_find (self, i);
    if (before != NULL && gtk_widget_get_prev_sibling (widget) != before)
      gtk_widget_insert_after (widget, GTK_WIDGET (self), before);
    before = widget;
  }
  self->serial = axis->serial;
}

static void
place (LapPartsLane *self, guint index)
{
  const LapBracket *bracket = &self->brackets->all[index];
  LapBracketPlace placed = lap_bracket_place (bracket, lap_lane_context (LAP_LANE (self))->axis);
  GtkWidget *widget = lap_parts_lane_find (self, index);
  int row = lap_brackets_row (lap_text_line (GTK_WIDGET (self)));

  gtk_widget_measure (widget, GTK_ORIENTATION_HORIZONTAL, -1, NULL, NULL, NULL, NULL);
  gtk_widget_size_allocate (widget, &(GtkAllocation) { placed.x, lap_bracket_is_upper (bracket) ? 1 : row + 2,
                                                       MAX (placed.width, 1), row + 1 }, -1);
}

static void
lap_parts_lane_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  LapPartsLane *self = LAP_PARTS_LANE (widget);
  GHashTableIter iter;
  gpointer index;

  bind_all (self);
  g_hash_table_iter_init (&iter, self->live);
  while (g_hash_table_iter_next (&iter, &index, NULL))
    place (self, GPOINTER_TO_UINT (index));
  if (self->menu != NULL)
    gtk_popover_present (GTK_POPOVER (self->menu));
}

/* Where @bracket of @part is now; when its round has gone the last one, when the part has gone nowhere. */
static guint
locate (LapPartsLane *self, const LapBracket *bracket, LapPart *part)
{
  LapSession *session = lap_document_session (lap_lane_context (LAP_LANE (self))->document);
  guint index = lap_list_find (session->parts, part), found = LAP_NO_BRACKET;

  if (index == G_MAXUINT)
    return LAP_NO_BRACKET;
  for (int round = bracket->round; round >= 0 && found == LAP_NO_BRACKET; round--)
    found = lap_brackets_find (self->brackets, bracket->kind, index, round);
  return found != LAP_NO_BRACKET ? found : lap_brackets_find (self->brackets, LAP_BRACKET_PART, index, 0);
}

/* After an edit a bracket may be another one than before; the widget with the focus goes along, the rest is bound
 * anew. */
static void
follow_plan (LapPartsLane *self)
{
  LapBracketWidget *focused = NULL;
  LapBracket was = { 0 };
  g_autoptr (LapPart) part = NULL;
  guint index;

  for (guint i = 0; i < self->all->len; i++) {
    LapBracketWidget *widget = g_ptr_array_index (self->all, i);

    if (gtk_widget_has_focus (GTK_WIDGET (widget)) && lap_bracket_widget_bracket (widget) != NULL) {
      focused = widget;
      was = *lap_bracket_widget_bracket (widget);
      part = g_object_ref (lap_bracket_widget_part (widget));
    } else
      let_go (widget);
  }
  g_hash_table_remove_all (self->live);
  self->under = LAP_NO_BRACKET;
  g_clear_pointer (&self->brackets, lap_brackets_free);
  self->brackets = lap_brackets_new (lap_lane_context (LAP_LANE (self))->score);
  self->at = self->brackets->n > 0 ? MIN (self->at, self->brackets->n - 1) : 0;
  if (focused == NULL)
    return;
  index = locate (self, &was, part);
  if (index != LAP_NO_BRACKET && lap_bracket_is_rest (&self->brackets->all[index]) == lap_bracket_widget_is_rest (focused)) {
    g_hash_table_insert (self->live, GUINT_TO_POINTER (index), focused);
    lap_bracket_widget_bind (focused, &self->brackets->all[index]);
    self->at = index;
  } else if (self->brackets->n > 0) {
    lap_parts_lane_go (self, index != LAP_NO_BRACKET ? index : self->at);
    let_go (focused);
  } else
    let_go (focused);
}

static void
lap_parts_lane_update (LapLane *lane, LapScoreChange change)
{
  LapPartsLane *self = LAP_PARTS_LANE (lane);

  if (change & LAP_SCORE_PLAN) {
    follow_plan (self);
    gtk_widget_queue_resize (GTK_WIDGET (lane));
  }
  if (change & (LAP_SCORE_PLAN | LAP_SCORE_AXIS)) {
    if (gtk_widget_get_mapped (GTK_WIDGET (lane)))
      bind_all (self);
    gtk_widget_queue_allocate (GTK_WIDGET (lane));
  }
  gtk_widget_queue_draw (GTK_WIDGET (lane));
}

static void
lap_parts_lane_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  LapPartsLane *self = LAP_PARTS_LANE (widget);
  const LapAxis *axis = lap_lane_context (LAP_LANE (self))->axis;
  int row = lap_brackets_row (lap_text_line (GTK_WIDGET (self)));

  GTK_WIDGET_CLASS (lap_parts_lane_parent_class)->snapshot (widget, snapshot);
  if (self->under < self->brackets->n && !lap_bracket_drag_is_held (self)) {
    const LapBracket *bracket = &self->brackets->all[self->under];
    LapBracketPlace placed = lap_bracket_place (bracket, axis);
    double end = axis->mirrored ? placed.x + 3 : placed.x + placed.width - 3;

    lap_paint_handle (snapshot, end, lap_bracket_is_upper (bracket) ? 4 : row + 5, row - 5);
  }
  lap_bracket_drag_draw (self, snapshot);
}

guint
lap_parts_lane_hit (LapPartsLane *self, double x, double y, gboolean *at_end)
{
  gboolean upper = y < lap_brackets_row (lap_text_line (GTK_WIDGET (self))) + 4;

  return lap_brackets_hit (self->brackets, lap_lane_context (LAP_LANE (self))->axis, x, upper, at_end);
}

static void
open_at (LapPartsLane *self, guint index, gboolean keep)
{
  const LapBracket *bracket;

  if (index >= self->brackets->n)
    return;
  bracket = &self->brackets->all[index];
  lap_folds_open (lap_lane_context (LAP_LANE (self)), bracket->part, bracket->round, keep);
}

static void
open_menu (LapPartsLane *self, const GdkRectangle *at)
{
  static const LapMenuItem own[] = {
    { N_("Open it, _fold the others"), "bracket.open", TRUE }, { N_("Fol_d it"), "bracket.fold", TRUE }, { NULL, NULL },
  };
  LapDocument *document = lap_lane_context (LAP_LANE (self))->document;
  g_autoptr (GMenu) menu = g_menu_new ();
  guint index;

  if (self->at >= self->brackets->n)
    return;
  lap_menu_add_section (menu, own, document);
  lap_part_verbs_menu (menu, LAP_LANE_GET_CLASS (self)->part (LAP_LANE (self), &index), document);
  lap_menu_open (menu, GTK_WIDGET (self), at, &self->menu);
}

static void
pressed_cb (LapPartsLane *self, int n, double x, double y, GtkGesture *click)
{
  gboolean at_end;
  guint index = lap_parts_lane_hit (self, x, y, &at_end);

  if (index != LAP_NO_BRACKET)
    lap_parts_lane_go (self, index);
}

/* An end that can be drawn only takes the focus. */
static void
released_cb (LapPartsLane *self, int n, double x, double y, GtkGesture *click)
{
  GdkModifierType state = gtk_event_controller_get_current_event_state (GTK_EVENT_CONTROLLER (click));
  gboolean at_end;
  guint index = lap_parts_lane_hit (self, x, y, &at_end);

  if (index == LAP_NO_BRACKET || index != self->at)
    return;
  if (gtk_gesture_single_get_current_button (GTK_GESTURE_SINGLE (click)) == GDK_BUTTON_SECONDARY)
    open_menu (self, &(GdkRectangle) { x, y, 1, 1 });
  else if (!at_end)
    open_at (self, index, (state & GDK_SHIFT_MASK) != 0);
}

static void
point (LapPartsLane *self, guint under)
{
  if (under == self->under)
    return;
  self->under = under;
  gtk_widget_set_cursor_from_name (GTK_WIDGET (self), under != LAP_NO_BRACKET ? "col-resize" : NULL);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

static void
motion_cb (LapPartsLane *self, double x, double y)
{
  gboolean at_end;
  guint index = lap_parts_lane_hit (self, x, y, &at_end);

  point (self, at_end && lap_document_is_editable (lap_lane_context (LAP_LANE (self))->document) ? index
                                                                                                 : LAP_NO_BRACKET);
}

static void
leave_cb (LapPartsLane *self)
{
  point (self, LAP_NO_BRACKET);
}

static gboolean
step (LapPartsLane *self, guint to)
{
  if (to != LAP_NO_BRACKET)
    lap_parts_lane_go (self, to);
  return to != LAP_NO_BRACKET;
}

static gboolean
walk (LapPartsLane *self, int by)
{
  int forward = lap_lane_context (LAP_LANE (self))->axis->mirrored ? -1 : 1;

  return step (self, lap_brackets_step (self->brackets, self->at, by * forward));
}

/* Down to the first round, or back up to the part. */
static gboolean
change_row (LapPartsLane *self, int down)
{
  const LapBracket *bracket = &self->brackets->all[self->at];

  if (lap_bracket_is_upper (bracket) == !down)
    return FALSE;
  return step (self, lap_brackets_find (self->brackets, down ? LAP_BRACKET_ROUND : LAP_BRACKET_PART, bracket->part,
                                        down ? 1 : 0));
}

static gboolean
fold (LapPartsLane *self, int keep)
{
  open_at (self, self->at, keep);
  return TRUE;
}

/* More or less of what the bracket is: rounds, or seconds of a rest or of a part at one's own pace. */
static gboolean
change (LapPartsLane *self, int by)
{
  const LapBracket *bracket = &self->brackets->all[self->at];
  LapScoreContext *context = lap_lane_context (LAP_LANE (self));
  LapPart *part = context->score->timeline->parts[bracket->part].part;
  LapTimeSource source;

  if (!lap_bracket_is_rest (bracket) && part->run != LAP_RUN_OWN_PACE)
    return ABS (by) > 1 && lap_part_add_rounds (context, part, by > 0 ? 1 : -1);
  if (bracket->kind == LAP_BRACKET_BETWEEN)
    lap_time_source_round_rest (part, &source);
  else if (bracket->kind == LAP_BRACKET_AFTER)
    lap_time_source_rest_after (part, &source);
  else
    lap_time_source_cap (part, &source);
  return lap_part_change_time (context, &source, by);
}

static gboolean
show_menu (LapPartsLane *self, int arg)
{
  LapBracketPlace placed = lap_bracket_place (&self->brackets->all[self->at], lap_lane_context (LAP_LANE (self))->axis);

  open_menu (self, &(GdkRectangle) { MAX (placed.x, 0), 0, 1, gtk_widget_get_height (GTK_WIDGET (self)) });
  return TRUE;
}

static const struct { const char *action; gboolean (*deed) (LapPartsLane *, int); int arg; } deeds[] = {
  { "bracket.left", walk, -1 },         { "bracket.right", walk, 1 },
  { "bracket.up", change_row, FALSE },  { "bracket.down", change_row, TRUE },
  { "bracket.open", fold, FALSE },      { "bracket.fold", fold, TRUE },
  { "bracket.more", change, 5 },        { "bracket.less", change, -5 },
  { "bracket.second-more", change, 1 }, { "bracket.second-less", change, -1 },
  { "bracket.menu", show_menu, 0 },
};

static void
deed_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapPartsLane *self = LAP_PARTS_LANE (widget);
  guint i = 0;

  while (!g_str_equal (deeds[i].action, name))
    i++;
  if (self->at >= self->brackets->n || !deeds[i].deed (self, deeds[i].arg))
    gtk_widget_error_bell (widget);
}

static LapPart *
lap_parts_lane_part (LapLane *lane, guint *index)
{
  LapPartsLane *self = LAP_PARTS_LANE (lane);

  if (self->at >= self->brackets->n)
    return NULL;
  *index = self->brackets->all[self->at].part;
  return lap_lane_context (lane)->score->timeline->parts[*index].part;
}

/* One stop of Tab for all brackets; the arrows go on from there. */
static gboolean
lap_parts_lane_focus (GtkWidget *widget, GtkDirectionType direction)
{
  LapPartsLane *self = LAP_PARTS_LANE (widget);

  if (gtk_widget_get_focus_child (widget) != NULL || self->brackets->n == 0)
    return FALSE;
  lap_parts_lane_go (self, self->at);
  return TRUE;
}

static gboolean
lap_parts_lane_grab_focus (GtkWidget *widget)
{
  return gtk_widget_get_focus_child (widget) != NULL || lap_parts_lane_focus (widget, GTK_DIR_TAB_FORWARD);
}

static gboolean
tooltip_cb (LapPartsLane *self, int x, int y, gboolean by_keyboard, GtkTooltip *tooltip)
{
  LapScoreContext *context = lap_lane_context (LAP_LANE (self));
  guint piece = context->axis->n > 0 ? lap_axis_piece_at (context->axis, lap_axis_second (context->axis, x)) : 0, index;
  g_autofree char *words = NULL;
  gboolean at_end;

  if (by_keyboard || context->axis->n == 0)
    return FALSE;
  index = lap_parts_lane_hit (self, x, y, &at_end);
  if (at_end)
    words = lap_bracket_hint (context, &self->brackets->all[index]);
  else if (context->axis->pieces[piece].folded)
    words = lap_folds_words (context, piece);
  gtk_tooltip_set_text (tooltip, words != NULL ? words : _("Click to open it and fold the others, with Shift to fold it"));
  return TRUE;
}

static void
lap_parts_lane_constructed (GObject *object)
{
  LapPartsLane *self = LAP_PARTS_LANE (object);

  G_OBJECT_CLASS (lap_parts_lane_parent_class)->constructed (object);
  self->brackets = lap_brackets_new (lap_lane_context (LAP_LANE (self))->score);
  lap_bracket_drag_install (self);
}

static void
lap_parts_lane_dispose (GObject *object)
{
  LapPartsLane *self = LAP_PARTS_LANE (object);

  g_hash_table_remove_all (self->live);
  g_clear_pointer (&self->menu, gtk_widget_unparent);
  while (self->all->len > 0)
    gtk_widget_unparent (g_ptr_array_steal_index (self->all, self->all->len - 1));
  G_OBJECT_CLASS (lap_parts_lane_parent_class)->dispose (object);
}

static void
lap_parts_lane_finalize (GObject *object)
{
  LapPartsLane *self = LAP_PARTS_LANE (object);

  g_hash_table_unref (self->live);
  g_ptr_array_unref (self->all);
  lap_brackets_free (self->brackets);
  G_OBJECT_CLASS (lap_parts_lane_parent_class)->finalize (object);
}

static void
lap_parts_lane_class_init (LapPartsLaneClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);
  LapLaneClass *lane_class = LAP_LANE_CLASS (klass);

  G_OBJECT_CLASS (klass)->constructed = lap_parts_lane_constructed;
  G_OBJECT_CLASS (klass)->dispose = lap_parts_lane_dispose;
  G_OBJECT_CLASS (klass)->finalize = lap_parts_lane_finalize;
  widget_class->size_allocate = lap_parts_lane_size_allocate;
  widget_class->focus = lap_parts_lane_focus;
  widget_class->grab_focus = lap_parts_lane_grab_focus;
  widget_class->snapshot = lap_parts_lane_snapshot;
  lane_class->height = lap_parts_lane_height;
  lane_class->draw = lap_parts_lane_draw;
  lane_class->update = lap_parts_lane_update;
  lane_class->part = lap_parts_lane_part;
  for (guint i = 0; i < G_N_ELEMENTS (deeds); i++)
    gtk_widget_class_install_action (widget_class, deeds[i].action, NULL, deed_action);
  lap_part_verbs_install (widget_class);
  lap_shortcuts_bind_class (widget_class, LAP_SCOPE_BRACKET);
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
}

static void
lap_parts_lane_init (LapPartsLane *self)
{
  GtkGesture *click = gtk_gesture_click_new ();
  GtkEventController *motion = gtk_event_controller_motion_new ();

  self->live = g_hash_table_new (NULL, NULL);
  self->all = g_ptr_array_new ();
  self->under = LAP_NO_BRACKET;
  gtk_gesture_single_set_button (GTK_GESTURE_SINGLE (click), 0);
  g_signal_connect_swapped (click, "pressed", G_CALLBACK (pressed_cb), self);
  g_signal_connect_swapped (click, "released", G_CALLBACK (released_cb), self);
  g_signal_connect_swapped (motion, "motion", G_CALLBACK (motion_cb), self);
  g_signal_connect_swapped (motion, "leave", G_CALLBACK (leave_cb), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (click));
  gtk_widget_add_controller (GTK_WIDGET (self), motion);
  gtk_widget_set_has_tooltip (GTK_WIDGET (self), TRUE);
  g_signal_connect (self, "query-tooltip", G_CALLBACK (tooltip_cb), NULL);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Parts"), -1);
}

const LapBrackets *
lap_parts_lane_brackets (LapPartsLane *self)
{
  return self->brackets;
}

GtkWidget *
lap_parts_lane_find (LapPartsLane *self, guint index)
{
  return g_hash_table_lookup (self->live, GUINT_TO_POINTER (index));
}

void
lap_parts_lane_go (LapPartsLane *self, guint index)
{
  const LapBracket *bracket = &self->brackets->all[index];

  self->at = index;
  lap_score_reveal (lap_lane_context (LAP_LANE (self)), bracket->start, MIN (bracket->end, bracket->start + 1));
  /* It must exist to take the focus; the allocation that follows keeps what has it. */
  bind (self, index, FALSE);
  place (self, index);
  gtk_widget_grab_focus (lap_parts_lane_find (self, index));
}

const LapLaneKind lap_lane_parts = { "parts", N_("Parts"), N_("and their rounds"), lap_parts_lane_get_type };
