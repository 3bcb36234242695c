/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/rehearse/window.h"

#include "ui/flow.h"
#include "ui/settings.h"

#include <glib/gi18n-lib.h>
#include <math.h>
#include <time.h>

struct _LapRehearseWindow {
  AdwWindow        parent_instance;
  LapStage        *stage;
  GtkWidget       *toasts;
  GtkWidget       *row;     /* what can be done */
  GtkWidget       *hold;    /* its label says what it does now */
  guint            hiding;  /* source that hides the pointer */
  double           x, y;    /* of the pointer */
  guint            cookie;  /* that keeps the screen awake, or 0 */
  GCancellable    *cancellable; /* of looking for the system bus */
  GDBusConnection *bus;
  guint            sleep;
};

G_DEFINE_FINAL_TYPE (LapRehearseWindow, lap_rehearse_window, ADW_TYPE_WINDOW)

enum { MARKED, LEFT, N_SIGNALS };
static guint signals[N_SIGNALS];

#define HIDE_AFTER 2 /* seconds without a move of the pointer */
#define TOUCH      44 /* px: WCAG 2.2, 2.5.5, the size of what a finger hits */

gint64
lap_rehearse_time (gpointer unused)
{
  struct timespec now;

  clock_gettime (CLOCK_BOOTTIME, &now);
  return now.tv_sec * LAP_SECOND + now.tv_nsec / 1000;
}

static LapScene *
scene (LapRehearseWindow *self)
{
  return lap_stage_scene (self->stage);
}

/* From the beginning the count-in takes as long as the camera runs before clock 0. */
static int
count_in (LapRehearseWindow *self)
{
  double lead = scene (self)->timeline->session->lead;

  return scene (self)->clock == 0 ? CLAMP ((int) ceil (lead), LAP_COUNT_IN, LAP_MOST_IN) : LAP_COUNT_IN;
}

static gboolean
is_going (LapRehearseWindow *self)
{
  return scene (self)->state == LAP_REHEARSAL_RUNNING || scene (self)->state == LAP_REHEARSAL_COUNT_IN;
}

/* Awake and asleep */

static void
keep_awake (LapRehearseWindow *self, gboolean awake)
{
  GtkApplication *application = gtk_window_get_application (GTK_WINDOW (self));

  if (application == NULL || awake == (self->cookie != 0))
    return;
  if (awake)
    self->cookie = gtk_application_inhibit (application, GTK_WINDOW (self), GTK_APPLICATION_INHIBIT_IDLE,
                                            _("A rehearsal is running"));
  else {
    gtk_application_uninhibit (application, self->cookie);
    self->cookie = 0;
  }
}

static void
sleep_cb (GDBusConnection *bus, const char *sender, const char *path, const char *interface, const char *name,
          GVariant *parameters, gpointer data)
{
  LapRehearseWindow *self = data;
  gboolean begins;

  g_variant_get (parameters, "(b)", &begins);
  if (begins) {
    lap_rehearsal_sleep (scene (self)->rehearsal);
    lap_stage_look (self->stage);
  }
}

static void
bus_cb (GObject *source, GAsyncResult *result, gpointer data)
{
  g_autoptr (GError) error = NULL;
  GDBusConnection *bus = g_bus_get_finish (result, &error);
  LapRehearseWindow *self = data;

  /* Without a system bus the gap in time still tells that the computer was asleep. */
  if (bus == NULL)
    return;
  self->bus = bus;
  self->sleep = g_dbus_connection_signal_subscribe (bus, "org.freedesktop.login1", "org.freedesktop.login1.Manager",
                                                    "PrepareForSleep", "/org/freedesktop/login1", NULL,
                                                    G_DBUS_SIGNAL_FLAGS_NONE, sleep_cb, self, NULL);
}

/* The pointer */

static void
show_controls (LapRehearseWindow *self, gboolean show)
{
  gtk_widget_set_opacity (self->row, show ? 1 : 0);
  gtk_widget_set_can_target (self->row, show);
  gtk_widget_set_cursor_from_name (GTK_WIDGET (self), show ? NULL : "none");
}

static gboolean
hide_cb (gpointer data)
{
  LapRehearseWindow *self = data;

  self->hiding = 0;
  show_controls (self, !is_going (self));
  return G_SOURCE_REMOVE;
}

static void
wake_controls (LapRehearseWindow *self)
{
  g_clear_handle_id (&self->hiding, g_source_remove);
  show_controls (self, TRUE);
  self->hiding = g_timeout_add_seconds (HIDE_AFTER, hide_cb, self);
}

/* A window that changes below a still pointer sends a motion as well. */
static void
motion_cb (GtkEventControllerMotion *motion, double x, double y, LapRehearseWindow *self)
{
  if (ABS (x - self->x) + ABS (y - self->y) < 1)
    return;
  self->x = x;
  self->y = y;
  wake_controls (self);
}

static void
changed_cb (LapRehearseWindow *self)
{
  gtk_button_set_label (GTK_BUTTON (self->hold), is_going (self) ? _("Hold") : _("Go on"));
  keep_awake (self, is_going (self));
  if (!is_going (self))
    show_controls (self, TRUE);
  else if (self->hiding == 0)
    wake_controls (self);
}

/* Deeds */

static void
hold_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapRehearseWindow *self = LAP_REHEARSE_WINDOW (widget);

  if (is_going (self))
    lap_rehearsal_hold (scene (self)->rehearsal);
  else
    lap_rehearsal_start (scene (self)->rehearsal, count_in (self));
  lap_stage_look (self->stage);
}

static void
move_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapRehearseWindow *self = LAP_REHEARSE_WINDOW (widget);

  if (g_str_equal (name, "rehearse.on"))
    lap_rehearsal_skip (scene (self)->rehearsal);
  else if (g_str_equal (name, "rehearse.back"))
    lap_rehearsal_back (scene (self)->rehearsal);
  else
    lap_rehearsal_jump (scene (self)->rehearsal, 0);
  lap_stage_look (self->stage);
}

/* To the start of the part before or after. */
static void
part_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapRehearseWindow *self = LAP_REHEARSE_WINDOW (widget);
  const LapTimeline *timeline = scene (self)->timeline;
  int now = scene (self)->clock / LAP_SECOND, to = -1;

  for (guint i = 0; i < timeline->n_parts; i++) {
    if (g_str_equal (name, "rehearse.next-part")) {
      if (timeline->parts[i].start > now && to < 0)
        to = timeline->parts[i].start;
    } else if (timeline->parts[i].start < now)
      to = timeline->parts[i].start;
  }
  if (to >= 0)
    lap_rehearsal_jump (scene (self)->rehearsal, to);
  lap_stage_look (self->stage);
}

static void
mark (LapRehearseWindow *self, guint shot, gboolean good)
{
  g_autoptr (GDateTime) now = g_date_time_new_now_local ();
  g_autofree char *at = g_date_time_format (now, "%FT%T%:z");

  lap_takes_mark (scene (self)->takes, shot, good, at);
  g_signal_emit (self, signals[MARKED], 0, lap_takes_n (scene (self)->takes) - 1);
}

static void
retake_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapRehearseWindow *self = LAP_REHEARSE_WINDOW (widget);
  guint shot = lap_rehearsal_retakes (scene (self)->rehearsal);

  if (scene (self)->state == LAP_REHEARSAL_READY || scene (self)->timeline->length == 0)
    return;
  mark (self, shot, FALSE);
  lap_takes_again (scene (self)->takes, shot);
  lap_rehearsal_retake (scene (self)->rehearsal, LAP_COUNT_IN);
  lap_stage_look (self->stage);
}

/* In a rest it is the block that has just been done which was good. */
static guint
done_shot (LapRehearseWindow *self)
{
  const LapShots *shots = lap_rehearsal_shots (scene (self)->rehearsal);
  guint shot = lap_rehearsal_shot (scene (self)->rehearsal);

  return shot > 0 && scene (self)->clock < shots->shots[shot].work * LAP_SECOND ? shot - 1 : shot;
}

static void
good_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapRehearseWindow *self = LAP_REHEARSE_WINDOW (widget);

  if (scene (self)->state == LAP_REHEARSAL_READY || scene (self)->timeline->length == 0)
    return;
  mark (self, done_shot (self), TRUE);
  lap_stage_look (self->stage);
}

static void
said_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapRehearseWindow *self = LAP_REHEARSE_WINDOW (widget);

  if (is_going (self))
    lap_takes_said (scene (self)->takes);
}

static void
switch_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapRehearseWindow *self = LAP_REHEARSE_WINDOW (widget);
  LapRehearsal *rehearsal = scene (self)->rehearsal;

  if (g_str_equal (name, "rehearse.repeat"))
    lap_rehearsal_set_repeat (rehearsal, !lap_rehearsal_repeat (rehearsal));
  else if (g_str_equal (name, "rehearse.clock"))
    scene (self)->film = !scene (self)->film;
  else if (g_str_equal (name, "rehearse.mirror"))
    lap_stage_set_mirror (self->stage, !lap_stage_mirror (self->stage));
  else if (gtk_window_is_fullscreen (GTK_WINDOW (self)))
    gtk_window_unfullscreen (GTK_WINDOW (self));
  else
    gtk_window_fullscreen (GTK_WINDOW (self));
  lap_stage_look (self->stage);
}

static void
leave_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  gtk_window_close (GTK_WINDOW (widget));
}

static void
jump_cb (LapRehearseWindow *self, int second)
{
  lap_rehearsal_jump (scene (self)->rehearsal, second);
  lap_stage_look (self->stage);
  wake_controls (self);
}

/* Making it */

static const struct {
  const char *action;
  const char *label; /* marked for translation */
  const char *key;   /* as people call it, marked for translation */
} deeds[] = {
  { "rehearse.retake", N_("Take again"), N_("R") }, { "rehearse.good", N_("Good"), N_("G") },
  { "rehearse.said", N_("All is said"), N_("S") }, { "rehearse.back", N_("Back"), N_("←") },
  { "rehearse.hold", N_("Hold"), N_("Space") }, { "rehearse.on", N_("On"), N_("→") },
  { "rehearse.repeat", N_("Repeat"), N_("L") }, { "rehearse.mirror", N_("Mirror"), N_("M") },
  { "rehearse.leave", N_("Leave"), N_("Esc") },
};

/* A key of the keyboard must never press what was pressed last by hand, so that they take no focus. */
static GtkWidget *
deed_new (LapRehearseWindow *self, guint i)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0);
  GtkWidget *key = gtk_label_new (_(deeds[i].key)), *button = gtk_button_new_with_label (_(deeds[i].label));

  gtk_widget_add_css_class (key, "rehearse-key");
  gtk_widget_set_valign (key, GTK_ALIGN_CENTER);
  gtk_widget_add_css_class (button, "flat");
  gtk_widget_set_focusable (button, FALSE);
  gtk_widget_set_size_request (button, TOUCH, TOUCH);
  gtk_actionable_set_action_name (GTK_ACTIONABLE (button), deeds[i].action);
  gtk_box_append (GTK_BOX (box), key);
  gtk_box_append (GTK_BOX (box), button);
  if (g_str_equal (deeds[i].action, "rehearse.hold"))
    self->hold = button;
  return box;
}

static GtkWidget *
row_new (LapRehearseWindow *self)
{
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0);

  gtk_widget_set_layout_manager (row, g_object_new (LAP_TYPE_FLOW, NULL));
  gtk_widget_set_halign (row, GTK_ALIGN_CENTER);
  gtk_widget_set_margin_bottom (row, 4);
  gtk_widget_set_margin_start (row, 8);
  gtk_widget_set_margin_end (row, 8);
  for (guint i = 0; i < G_N_ELEMENTS (deeds); i++)
    gtk_box_append (GTK_BOX (row), deed_new (self, i));
  return row;
}

static gboolean
lap_rehearse_window_close_request (GtkWindow *window)
{
  LapRehearseWindow *self = LAP_REHEARSE_WINDOW (window);

  lap_rehearsal_hold (scene (self)->rehearsal);
  keep_awake (self, FALSE);
  g_signal_emit (self, signals[LEFT], 0);
  return GTK_WINDOW_CLASS (lap_rehearse_window_parent_class)->close_request (window);
}

static void
lap_rehearse_window_dispose (GObject *object)
{
  LapRehearseWindow *self = LAP_REHEARSE_WINDOW (object);

  keep_awake (self, FALSE);
  g_clear_handle_id (&self->hiding, g_source_remove);
  if (self->sleep != 0)
    g_dbus_connection_signal_unsubscribe (self->bus, self->sleep);
  self->sleep = 0;
  if (self->cancellable != NULL)
    g_cancellable_cancel (self->cancellable);
  g_clear_object (&self->cancellable);
  g_clear_object (&self->bus);
  G_OBJECT_CLASS (lap_rehearse_window_parent_class)->dispose (object);
}

static void
lap_rehearse_window_class_init (LapRehearseWindowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_rehearse_window_dispose;
  GTK_WINDOW_CLASS (klass)->close_request = lap_rehearse_window_close_request;
  gtk_widget_class_install_action (widget_class, "rehearse.hold", NULL, hold_action);
  gtk_widget_class_install_action (widget_class, "rehearse.on", NULL, move_action);
  gtk_widget_class_install_action (widget_class, "rehearse.back", NULL, move_action);
  gtk_widget_class_install_action (widget_class, "rehearse.first", NULL, move_action);
  gtk_widget_class_install_action (widget_class, "rehearse.next-part", NULL, part_action);
  gtk_widget_class_install_action (widget_class, "rehearse.previous-part", NULL, part_action);
  gtk_widget_class_install_action (widget_class, "rehearse.retake", NULL, retake_action);
  gtk_widget_class_install_action (widget_class, "rehearse.good", NULL, good_action);
  gtk_widget_class_install_action (widget_class, "rehearse.said", NULL, said_action);
  gtk_widget_class_install_action (widget_class, "rehearse.repeat", NULL, switch_action);
  gtk_widget_class_install_action (widget_class, "rehearse.clock", NULL, switch_action);
  gtk_widget_class_install_action (widget_class, "rehearse.mirror", NULL, switch_action);
  gtk_widget_class_install_action (widget_class, "rehearse.fullscreen", NULL, switch_action);
  gtk_widget_class_install_action (widget_class, "rehearse.leave", NULL, leave_action);
  signals[MARKED] = g_signal_new ("marked", LAP_TYPE_REHEARSE_WINDOW, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                  G_TYPE_NONE, 1, G_TYPE_UINT);
  signals[LEFT] = g_signal_new ("left", LAP_TYPE_REHEARSE_WINDOW, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                G_TYPE_NONE, 0);
}

static void
lap_rehearse_window_init (LapRehearseWindow *self)
{
  GtkEventController *motion = gtk_event_controller_motion_new ();

  g_signal_connect (motion, "motion", G_CALLBACK (motion_cb), self);
  gtk_widget_add_controller (GTK_WIDGET (self), motion);
  self->cancellable = g_cancellable_new ();
  gtk_window_set_default_size (GTK_WINDOW (self), 1120, 700);
  gtk_widget_add_css_class (GTK_WIDGET (self), "rehearse");
}

static void
follow_animations (LapRehearseWindow *self)
{
  gboolean moves;

  g_object_get (gtk_settings_get_default (), "gtk-enable-animations", &moves, NULL);
  scene (self)->still = !moves;
}

static void
follow_calm (LapRehearseWindow *self)
{
  g_autoptr (GVariant) calm = lap_settings_value ("rehearse-calm", g_variant_new_boolean (FALSE));

  scene (self)->calm = g_variant_get_boolean (calm);
}

GtkWidget *
lap_rehearse_window_new (GtkWindow *parent, LapScene *scene_taken)
{
  LapRehearseWindow *self = g_object_new (LAP_TYPE_REHEARSE_WINDOW, "transient-for", parent, "modal", TRUE,
                                          "destroy-with-parent", TRUE,
                                          "application", gtk_window_get_application (parent), NULL);
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  g_autofree char *title = g_strdup_printf (_("Rehearsal: %s"), gtk_window_get_title (parent));

  gtk_window_set_title (GTK_WINDOW (self), title);
  self->stage = LAP_STAGE (lap_stage_new (scene_taken));
  gtk_widget_set_vexpand (GTK_WIDGET (self->stage), TRUE);
  self->row = row_new (self);
  gtk_box_append (GTK_BOX (box), GTK_WIDGET (self->stage));
  gtk_box_append (GTK_BOX (box), self->row);
  self->toasts = adw_toast_overlay_new ();
  adw_toast_overlay_set_child (ADW_TOAST_OVERLAY (self->toasts), box);
  adw_window_set_content (ADW_WINDOW (self), self->toasts);
  gtk_window_set_focus (GTK_WINDOW (self), GTK_WIDGET (self->stage));
  follow_animations (self);
  follow_calm (self);
  g_signal_connect_object (gtk_settings_get_default (), "notify::gtk-enable-animations",
                           G_CALLBACK (follow_animations), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (self->stage, "changed", G_CALLBACK (changed_cb), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (self->stage, "jump", G_CALLBACK (jump_cb), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (self->stage, "pressed", G_CALLBACK (wake_controls), self, G_CONNECT_SWAPPED);
  g_bus_get (G_BUS_TYPE_SYSTEM, self->cancellable, bus_cb, self);
  changed_cb (self);
  return GTK_WIDGET (self);
}

LapStage *
lap_rehearse_window_stage (LapRehearseWindow *self)
{
  return self->stage;
}

void
lap_rehearse_window_tell (LapRehearseWindow *self, const char *text)
{
  adw_toast_overlay_add_toast (ADW_TOAST_OVERLAY (self->toasts), adw_toast_new (text));
}
