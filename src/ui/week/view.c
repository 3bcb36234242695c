/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * How much room there is decides whether one day is seen or all, and whether classes have a second line of words. Both
 * change what the view asks for, so they are decided after it has been laid out, never in the middle of that.
 */
#include "ui/week/view.h"

#include "base/customs.h"
#include "place/marks.h"
#include "ui/menus.h"
#include "ui/shortcuts.h"
#include "ui/week/drag.h"
#include "ui/week/filter.h"
#include "ui/week/labels.h"
#include "ui/week/menu.h"
#include "ui/week/moves.h"
#include "ui/week/verbs.h"
#include "ui/week/words.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#define NARROW 34.0 /* lines of text that it is wide where one day is seen at a time */

struct _LapWeekView {
  GtkWidget     parent_instance;
  LapWeekScene *scene;
  GtkWidget    *filter, *day_bar, *day_name, *corner, *scroll, *bar, *strip, *tray, *legend;
  GtkWidget    *menu;     /* the last that was opened, a child of the strip, or NULL */
  char         *pressed;  /* the class under a button that hasn't been released */
  LapPlace      spot;     /* its strings are the week's */
  gboolean      has_spot;
  guint         warning;  /* the last whose mark was clicked, or LAP_NO_WARNING */
  guint         settling; /* an idle source */
  double        x;        /* of the pointer over the strip */
};

G_DEFINE_FINAL_TYPE (LapWeekView, lap_week_view, GTK_TYPE_WIDGET)

enum { SELECTED, OPEN_SESSION, WARNING, N_SIGNALS };
static guint signals[N_SIGNALS];

/* The room there is */

static gboolean
settle_cb (gpointer data)
{
  LapWeekView *self = data;
  int width = gtk_widget_get_width (GTK_WIDGET (self)), height = gtk_widget_get_height (self->scroll);
  gboolean narrow = width < NARROW * self->scene->look.line;

  self->settling = 0;
  if (narrow && self->scene->look.day < 0) {
    LapClass *c = lap_week_scene_current (self->scene);

    lap_week_scene_set_day (self->scene, c != NULL && c->day >= 0 ? c->day : (int) lap_customs ().first_day);
  } else if (!narrow && self->scene->look.day >= 0)
    lap_week_scene_set_day (self->scene, -1);
  lap_week_scene_set_detailed (self->scene, narrow || lap_week_scene_tall (self->scene) <= height);
  gtk_widget_set_visible (self->legend, !narrow);
  gtk_widget_set_visible (self->bar, self->scene->axis->width > self->scene->axis->view + 1);
  return G_SOURCE_REMOVE;
}

static void
settle (LapWeekView *self)
{
  if (self->settling == 0)
    self->settling = g_idle_add_full (G_PRIORITY_HIGH_IDLE + 25, settle_cb, self, NULL);
}

static void
lap_week_view_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  LapWeekView *self = LAP_WEEK_VIEW (widget);
  GtkWidget *box = gtk_widget_get_first_child (widget);

  gtk_widget_size_allocate (box, &(GtkAllocation) { 0, 0, width, height }, baseline);
  settle (self);
}

static GtkSizeRequestMode
lap_week_view_get_request_mode (GtkWidget *widget)
{
  return GTK_SIZE_REQUEST_HEIGHT_FOR_WIDTH;
}

static void
lap_week_view_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *least, int *natural,
                       int *least_baseline, int *natural_baseline)
{
  gtk_widget_measure (gtk_widget_get_first_child (widget), orientation, for_size, least, natural, least_baseline,
                      natural_baseline);
}

/* One day at a time */

static void
show_day (LapWeekView *self)
{
  int day = self->scene->look.day;

  gtk_widget_set_visible (self->day_bar, day >= 0);
  if (day >= 0) {
    int date = self->scene->score->bands[0].date;
    g_autofree char *short_date = date != 0 ? lap_short_date_text (date) : NULL;
    /* Translators: a day of the week and its date. */
    g_autofree char *text = short_date != NULL ? g_strdup_printf (_("%1$s, %2$s"), lap_words_label (&lap_days, day), short_date)
                                               : g_strdup (lap_words_label (&lap_days, day));

    gtk_label_set_text (GTK_LABEL (self->day_name), text);
  }
}

static void
turn_day (LapWeekView *self, int by)
{
  LapPlace day = { .day = self->scene->look.day };

  if (!lap_week_shift_day (&day, by))
    gtk_widget_error_bell (GTK_WIDGET (self));
  else
    lap_week_scene_set_day (self->scene, day.day);
}

static void
previous_cb (LapWeekView *self)
{
  turn_day (self, -1);
}

static void
next_cb (LapWeekView *self)
{
  turn_day (self, 1);
}

static void
swipe_cb (LapWeekView *self, double dx, double dy)
{
  if (self->scene->look.day < 0 || ABS (dx) < 400 || ABS (dx) < 2 * ABS (dy))
    return;
  turn_day (self, (dx < 0) != (gtk_widget_get_direction (GTK_WIDGET (self)) == GTK_TEXT_DIR_RTL) ? 1 : -1);
}

static GtkWidget *
day_button (LapWeekView *self, const char *icon, const char *label, GCallback callback)
{
  GtkWidget *button = gtk_button_new_from_icon_name (icon);

  gtk_widget_set_tooltip_text (button, label);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, label, -1);
  g_signal_connect_swapped (button, "clicked", callback, self);
  return button;
}

static GtkWidget *
make_day_bar (LapWeekView *self)
{
  self->day_bar = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8);
  self->day_name = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (self->day_name), 0.5);
  gtk_widget_set_hexpand (self->day_name, TRUE);
  gtk_widget_add_css_class (self->day_name, "session-title");
  gtk_box_append (GTK_BOX (self->day_bar),
                  day_button (self, "go-previous-symbolic", _("The day before"), G_CALLBACK (previous_cb)));
  gtk_box_append (GTK_BOX (self->day_bar), self->day_name);
  gtk_box_append (GTK_BOX (self->day_bar),
                  day_button (self, "go-next-symbolic", _("The next day"), G_CALLBACK (next_cb)));
  gtk_widget_set_visible (self->day_bar, FALSE);
  return self->day_bar;
}

/* Clicks */

static GdkModifierType
state_of (GtkGesture *gesture)
{
  return gtk_event_controller_get_current_event_state (GTK_EVENT_CONTROLLER (gesture));
}

static void
remember_spot (LapWeekView *self, const LapWeekHit *hit)
{
  LapPlace spot = { self->scene->score->bands[hit->band].day, (int) hit->minute / LAP_SNAP_MINUTES * LAP_SNAP_MINUTES,
                    NULL, NULL };

  lap_week_set_line (self->scene, &spot, hit->row);
  lap_week_view_set_spot (self, &spot);
}

/* One of several that are selected may be the handle by which all are dragged: it is chosen alone, or taken out, only
 * when the button is released on it. */
static void
press (LapWeekView *self, const char *id, GtkGesture *click)
{
  g_clear_pointer (&self->pressed, g_free);
  if (state_of (click) & GDK_SHIFT_MASK)
    lap_week_scene_pick (self->scene, id, LAP_PICK_TO);
  else if (lap_week_scene_is_picked (self->scene, id) && g_hash_table_size (self->scene->chosen) > 1)
    self->pressed = g_strdup (id);
  else if (state_of (click) & GDK_CONTROL_MASK)
    self->pressed = g_strdup (id);
  else
    lap_week_scene_pick (self->scene, id, LAP_PICK_ONLY);
  lap_week_view_take_focus (self);
}

static void
release (LapWeekView *self, const char *id, GtkGesture *click)
{
  if (self->pressed != NULL && g_strcmp0 (self->pressed, id) == 0) {
    lap_week_scene_pick (self->scene, id, state_of (click) & GDK_CONTROL_MASK ? LAP_PICK_TOGGLE : LAP_PICK_ONLY);
    lap_week_view_take_focus (self);
  }
  g_clear_pointer (&self->pressed, g_free);
}

/* A mark is clicked when the button is released on it: before that it is a handle of its class, as all its words are. */
static gboolean
is_on_mark (const LapWeekHit *hit, GtkGesture *click)
{
  return hit->mark && (state_of (click) & (GDK_SHIFT_MASK | GDK_CONTROL_MASK)) == 0;
}

static void
pressed_cb (LapWeekView *self, int n, double x, double y, GtkGesture *click)
{
  LapWeekHit hit = lap_week_score_hit (self->scene->score, self->scene->axis, x, y, 0);
  const char *id = hit.box != LAP_NO_WEEK_BOX ? self->scene->score->boxes[hit.box].c->id : NULL;

  remember_spot (self, &hit);
  if (gtk_gesture_single_get_current_button (GTK_GESTURE_SINGLE (click)) == GDK_BUTTON_SECONDARY) {
    if (id == NULL || !lap_week_scene_is_picked (self->scene, id))
      lap_week_scene_pick (self->scene, id, LAP_PICK_ONLY);
    lap_week_view_take_focus (self);
    return;
  }
  if (is_on_mark (&hit, click))
    return;
  if (id != NULL)
    press (self, id, click);
  else {
    lap_week_scene_pick (self->scene, NULL, LAP_PICK_ONLY);
    gtk_widget_set_focusable (self->strip, TRUE);
    gtk_widget_grab_focus (self->strip);
  }
  if (n == 2)
    gtk_widget_activate_action (GTK_WIDGET (self), id != NULL ? "week.enter" : "week.add-here", NULL);
}

/* A click on the mark of a class chooses the gravest warning about it; another one the next. */
static void
choose_warning (LapWeekView *self, const LapWeekBox *box)
{
  const LapCheckup *checkup = lap_document_checkup (self->scene->document);
  guint first = box->warning - 1, last = self->warning;

  lap_week_scene_pick (self->scene, box->c->id, LAP_PICK_ONLY);
  self->warning = first;
  if (last != LAP_NO_WARNING && lap_warning_is_about (checkup, lap_checkup_nth (checkup, last), box->c))
    for (guint n = last + 1; self->warning == first && n < lap_checkup_n (checkup); n++)
      if (!lap_checkup_nth (checkup, n)->fine && lap_warning_is_about (checkup, lap_checkup_nth (checkup, n), box->c))
        self->warning = n;
  g_signal_emit (self, signals[WARNING], 0, self->warning);
}

static void
released_cb (LapWeekView *self, int n, double x, double y, GtkGesture *click)
{
  LapWeekHit hit = lap_week_score_hit (self->scene->score, self->scene->axis, x, y, 0);

  if (gtk_gesture_single_get_current_button (GTK_GESTURE_SINGLE (click)) == GDK_BUTTON_SECONDARY) {
    lap_week_view_open_menu (self, x, y);
    return;
  }
  release (self, hit.box != LAP_NO_WEEK_BOX ? self->scene->score->boxes[hit.box].c->id : NULL, click);
  if (is_on_mark (&hit, click))
    choose_warning (self, &self->scene->score->boxes[hit.box]);
}

static void
tray_pressed_cb (LapWeekView *self, int n, double x, double y, GtkGesture *click)
{
  g_autofree char *id = g_strdup (lap_week_tray_at (LAP_WEEK_TRAY (self->tray), x, y));

  if (id == NULL)
    return;
  if (gtk_gesture_single_get_current_button (GTK_GESTURE_SINGLE (click)) == GDK_BUTTON_SECONDARY) {
    if (!lap_week_scene_is_picked (self->scene, id))
      lap_week_scene_pick (self->scene, id, LAP_PICK_ONLY);
    return;
  }
  press (self, id, click);
  if (n == 2)
    gtk_widget_activate_action (GTK_WIDGET (self), "week.enter", NULL);
}

static void
tray_released_cb (LapWeekView *self, int n, double x, double y, GtkGesture *click)
{
  const char *id = lap_week_tray_at (LAP_WEEK_TRAY (self->tray), x, y);

  if (gtk_gesture_single_get_current_button (GTK_GESTURE_SINGLE (click)) != GDK_BUTTON_SECONDARY)
    release (self, id, click);
  else if (id != NULL)
    gtk_widget_activate_action (GTK_WIDGET (self), "week.menu", NULL);
}

static void
add_click (LapWeekView *self, GtkWidget *widget, GCallback pressed, GCallback released)
{
  GtkGesture *click = gtk_gesture_click_new ();

  gtk_gesture_single_set_button (GTK_GESTURE_SINGLE (click), 0);
  g_signal_connect_swapped (click, "pressed", pressed, self);
  g_signal_connect_swapped (click, "released", released, self);
  gtk_widget_add_controller (widget, GTK_EVENT_CONTROLLER (click));
}

/* What a press there would take hold of. */
static void
motion_cb (LapWeekView *self, double x, double y)
{
  LapWeekHit hit = lap_week_score_hit (self->scene->score, self->scene->axis, x, y, 5);
  gboolean end = hit.edge != LAP_WEEK_EDGE_NONE && lap_week_scene_date (self->scene) == 0 &&
                 lap_document_is_editable (self->scene->document);

  self->x = x;
  gtk_widget_set_cursor_from_name (self->strip, end ? "ew-resize" : hit.mark ? "pointer" :
                                                hit.box != LAP_NO_WEEK_BOX ? "grab" : NULL);
}

static gboolean
scroll_cb (LapWeekView *self, double dx, double dy, GtkEventController *controller)
{
  GdkModifierType state = gtk_event_controller_get_current_event_state (controller);

  if (state & GDK_CONTROL_MASK) {
    lap_week_scene_zoom (self->scene, self->scene->axis->zoom * pow (1.25, -dy), self->x);
    return TRUE;
  }
  if (state & GDK_SHIFT_MASK && dx == 0)
    dx = dy;
  else if (dx == 0)
    return FALSE; /* up and down belongs to the page */
  lap_week_scene_scroll_by (self->scene, (self->scene->axis->mirrored ? -1 : 1) * dx * 60);
  return TRUE;
}

static void
pinch_cb (LapWeekView *self, double scale, GtkGesture *gesture)
{
  double *start = g_object_get_data (G_OBJECT (gesture), "start"), x, y;

  if (start != NULL && gtk_gesture_get_bounding_box_center (gesture, &x, &y))
    lap_week_scene_zoom (self->scene, *start * scale, x);
}

static void
pinch_begin_cb (LapWeekView *self, GdkEventSequence *sequence, GtkGesture *gesture)
{
  double *start = g_new (double, 1);

  *start = self->scene->axis->zoom;
  g_object_set_data_full (G_OBJECT (gesture), "start", start, g_free);
}

static void
add_controllers (LapWeekView *self)
{
  GtkEventController *motion = gtk_event_controller_motion_new ();
  GtkEventController *scroll = gtk_event_controller_scroll_new (GTK_EVENT_CONTROLLER_SCROLL_BOTH_AXES);
  GtkGesture *swipe = gtk_gesture_swipe_new (), *pinch = gtk_gesture_zoom_new ();

  add_click (self, self->strip, G_CALLBACK (pressed_cb), G_CALLBACK (released_cb));
  add_click (self, self->tray, G_CALLBACK (tray_pressed_cb), G_CALLBACK (tray_released_cb));
  g_signal_connect_swapped (motion, "motion", G_CALLBACK (motion_cb), self);
  gtk_widget_add_controller (self->strip, motion);
  g_signal_connect_swapped (scroll, "scroll", G_CALLBACK (scroll_cb), self);
  gtk_widget_add_controller (self->strip, scroll);
  gtk_gesture_single_set_touch_only (GTK_GESTURE_SINGLE (swipe), TRUE);
  g_signal_connect_swapped (swipe, "swipe", G_CALLBACK (swipe_cb), self);
  gtk_widget_add_controller (self->strip, GTK_EVENT_CONTROLLER (swipe));
  g_signal_connect_swapped (pinch, "begin", G_CALLBACK (pinch_begin_cb), self);
  g_signal_connect_swapped (pinch, "scale-changed", G_CALLBACK (pinch_cb), self);
  gtk_widget_add_controller (self->strip, GTK_EVENT_CONTROLLER (pinch));
}

static void
changed_cb (LapWeekView *self, guint change)
{
  if (change & LAP_WEEK_PLAN) {
    self->has_spot = FALSE;
    self->warning = LAP_NO_WARNING;
  }
  if (change & (LAP_WEEK_PLAN | LAP_WEEK_AXIS))
    settle (self);
  if (change & (LAP_WEEK_PLAN | LAP_WEEK_SHOWN))
    show_day (self);
  if (change & LAP_WEEK_SELECTION)
    g_signal_emit (self, signals[SELECTED], 0);
}

/* Making and unmaking */

static void
lap_week_view_dispose (GObject *object)
{
  LapWeekView *self = LAP_WEEK_VIEW (object);
  GtkWidget *child;

  g_clear_handle_id (&self->settling, g_source_remove);
  if (self->strip != NULL) {
    g_object_set_data (G_OBJECT (self->strip), "lap-week-drag", NULL);
    g_object_set_data (G_OBJECT (self->tray), "lap-week-drag", NULL);
  }
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  self->strip = self->tray = self->menu = NULL;
  g_clear_object (&self->scene);
  g_clear_pointer (&self->pressed, g_free);
  G_OBJECT_CLASS (lap_week_view_parent_class)->dispose (object);
}

static void
lap_week_view_class_init (LapWeekViewClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_week_view_dispose;
  widget_class->size_allocate = lap_week_view_size_allocate;
  widget_class->measure = lap_week_view_measure;
  widget_class->get_request_mode = lap_week_view_get_request_mode;
  signals[SELECTED] = g_signal_new ("selected", LAP_TYPE_WEEK_VIEW, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE,
                                    0);
  signals[OPEN_SESSION] = g_signal_new ("open-session", LAP_TYPE_WEEK_VIEW, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                        G_TYPE_NONE, 1, G_TYPE_STRING);
  signals[WARNING] = g_signal_new ("warning", LAP_TYPE_WEEK_VIEW, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 1,
                                   G_TYPE_UINT);
  lap_week_verbs_install (widget_class);
  gtk_widget_class_set_css_name (widget_class, "week");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
}

static void
lap_week_view_init (LapWeekView *self)
{
  self->warning = LAP_NO_WARNING;
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Week"), -1);
}

/* What the signs mean, and how to begin. */
static GtkWidget *
make_legend (void)
{
  GtkWidget *legend = gtk_label_new (_("Crests: one easy, two moderate, three hard. Double-click an empty place or press N "
                                       "for a new class."));

  gtk_label_set_wrap (GTK_LABEL (legend), TRUE);
  gtk_label_set_xalign (GTK_LABEL (legend), 0);
  gtk_widget_add_css_class (legend, "lane-hint");
  return legend;
}

static GtkWidget *
make_board (LapWeekView *self)
{
  GtkWidget *board = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0), *head = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0);
  GtkWidget *body = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0), *hours = lap_week_hours_new (self->scene);
  GtkWidget *labels = lap_week_labels_new (self->scene);
  g_autoptr (GtkSizeGroup) same = gtk_size_group_new (GTK_SIZE_GROUP_HORIZONTAL);

  self->corner = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0);
  gtk_size_group_add_widget (same, self->corner);
  gtk_size_group_add_widget (same, labels);
  gtk_widget_set_hexpand (hours, TRUE);
  gtk_box_append (GTK_BOX (head), self->corner);
  gtk_box_append (GTK_BOX (head), hours);
  self->scroll = gtk_scrolled_window_new ();
  self->strip = lap_week_strip_new (self->scene, gtk_scrolled_window_get_vadjustment (GTK_SCROLLED_WINDOW (self->scroll)));
  gtk_widget_set_hexpand (self->strip, TRUE);
  gtk_widget_set_valign (self->strip, GTK_ALIGN_START);
  gtk_widget_set_valign (labels, GTK_ALIGN_START);
  gtk_box_append (GTK_BOX (body), labels);
  gtk_box_append (GTK_BOX (body), self->strip);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (self->scroll), body);
  /* The strip is one child that has the focus; what of it is to be seen it knows better. */
  gtk_viewport_set_scroll_to_focus (GTK_VIEWPORT (gtk_scrolled_window_get_child (GTK_SCROLLED_WINDOW (self->scroll))), FALSE);
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (self->scroll), GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_widget_set_vexpand (self->scroll, TRUE);
  self->bar = gtk_scrollbar_new (GTK_ORIENTATION_HORIZONTAL, self->scene->adjustment);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->bar), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Scroll in time"), -1);
  gtk_box_append (GTK_BOX (board), head);
  gtk_box_append (GTK_BOX (board), self->scroll);
  gtk_box_append (GTK_BOX (board), self->bar);
  gtk_widget_add_css_class (board, "score-card");
  gtk_widget_add_css_class (board, "card");
  return board;
}

LapWeekView *
lap_week_view_new (LapDocument *document)
{
  LapWeekView *self = g_object_new (LAP_TYPE_WEEK_VIEW, NULL);
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 8);

  self->scene = lap_week_scene_new (document);
  self->filter = lap_week_filter_new (self->scene);
  gtk_box_append (GTK_BOX (box), self->filter);
  gtk_box_append (GTK_BOX (box), make_day_bar (self));
  gtk_box_append (GTK_BOX (box), make_board (self));
  self->legend = make_legend ();
  gtk_box_append (GTK_BOX (box), self->legend);
  self->tray = lap_week_tray_new (self->scene);
  gtk_box_append (GTK_BOX (box), self->tray);
  gtk_widget_set_parent (box, GTK_WIDGET (self));
  add_controllers (self);
  lap_week_drag_install (self);
  g_signal_connect_object (self->scene, "changed", G_CALLBACK (changed_cb), self, G_CONNECT_SWAPPED);
  return self;
}

char **
lap_week_view_selected (LapWeekView *self)
{
  g_autoptr (GPtrArray) classes = lap_week_scene_picked (self->scene);
  GPtrArray *ids = g_ptr_array_new ();

  for (guint i = 0; i < classes->len; i++)
    g_ptr_array_add (ids, g_strdup (LAP_CLASS (g_ptr_array_index (classes, i))->id));
  g_ptr_array_add (ids, NULL);
  return (char **) g_ptr_array_free (ids, FALSE);
}

void
lap_week_view_reveal (LapWeekView *self, const char *id)
{
  for (LapWeekSieve i = 0; i < LAP_N_SIEVES; i++)
    if (g_hash_table_size (self->scene->filters[i]) > 0 &&
        lap_week_score_find (self->scene->score, id) == LAP_NO_WEEK_BOX)
      lap_week_scene_filter (self->scene, i, NULL, FALSE);
  lap_week_scene_pick (self->scene, id, LAP_PICK_ONLY);
  lap_week_strip_reveal (LAP_WEEK_STRIP (self->strip));
}

void
lap_week_view_show (LapWeekView *self, const char *id)
{
  lap_week_view_reveal (self, id);
  lap_week_view_take_focus (self);
}

void
lap_week_view_preview (LapWeekView *self, LapEdits *edits)
{
  lap_week_scene_preview (self->scene, edits);
}

void
lap_week_view_zoom (LapWeekView *self, double factor)
{
  LapWeekScene *scene = self->scene;
  guint box = lap_week_scene_box (scene);
  double x = scene->axis->view / 2;

  if (factor <= 0) {
    lap_week_scene_fit (scene);
    return;
  }
  if (box != LAP_NO_WEEK_BOX)
    x = CLAMP (lap_week_score_x (scene->score, scene->axis, scene->score->boxes[box].start), 0, scene->axis->view);
  lap_week_scene_zoom (scene, scene->axis->zoom * factor, x);
}

LapWeekScene *
lap_week_view_scene (LapWeekView *self)
{
  return self->scene;
}

LapWeekStrip *
lap_week_view_strip (LapWeekView *self)
{
  return LAP_WEEK_STRIP (self->strip);
}

LapWeekTray *
lap_week_view_tray (LapWeekView *self)
{
  return LAP_WEEK_TRAY (self->tray);
}

GtkAdjustment *
lap_week_view_across (LapWeekView *self)
{
  return gtk_scrolled_window_get_vadjustment (GTK_SCROLLED_WINDOW (self->scroll));
}

void
lap_week_view_take_focus (LapWeekView *self)
{
  GtkWidget *ticket = lap_week_tray_find (LAP_WEEK_TRAY (self->tray), self->scene->current);

  if (self->scene->current != NULL && ticket != NULL)
    gtk_widget_grab_focus (ticket);
  else
    lap_week_strip_take_focus (LAP_WEEK_STRIP (self->strip));
}

void
lap_week_view_open_menu (LapWeekView *self, double x, double y)
{
  LapClass *c = lap_week_scene_current (self->scene);
  int day = c != NULL ? c->day : self->has_spot ? self->spot.day : self->scene->look.day;
  g_autoptr (GMenu) menu = lap_week_menu_new (self->scene, day);

  lap_menu_open (menu, self->strip, &(GdkRectangle) { x, y, 1, 1 }, &self->menu);
}

void
lap_week_view_set_spot (LapWeekView *self, const LapPlace *spot)
{
  self->has_spot = spot != NULL;
  if (spot != NULL)
    self->spot = *spot;
}

const LapPlace *
lap_week_view_spot (LapWeekView *self)
{
  return self->has_spot ? &self->spot : NULL;
}
