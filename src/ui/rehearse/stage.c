/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/rehearse/stage.h"

#include "ui/rehearse/bar.h"
#include "ui/shortcuts.h"

#include <math.h>

typedef enum {
  PANEL_HEAD, PANEL_FIGURE, PANEL_GROUND, PANEL_NAME, PANEL_COUNT, PANEL_SAY, PANEL_NEXT, PANEL_BAR, PANEL_TOP,
  PANEL_BOTTOM, PANEL_LEFT, PANEL_RIGHT, PANEL_SYNC, N_PANELS,
} Panel;

static const LapPanelKind *kinds[N_PANELS] = {
  [PANEL_HEAD] = &lap_panel_head, [PANEL_FIGURE] = &lap_panel_figure, [PANEL_GROUND] = &lap_panel_ground,
  [PANEL_NAME] = &lap_panel_name, [PANEL_COUNT] = &lap_panel_count, [PANEL_SAY] = &lap_panel_say,
  [PANEL_NEXT] = &lap_panel_next, [PANEL_BAR] = &lap_panel_bar, [PANEL_TOP] = &lap_panel_edge,
  [PANEL_BOTTOM] = &lap_panel_edge, [PANEL_LEFT] = &lap_panel_edge, [PANEL_RIGHT] = &lap_panel_edge,
  [PANEL_SYNC] = &lap_panel_sync,
};

/* Hundredths of width and height. A panel of no width isn't shown. */
typedef struct {
  double x, y, right, bottom;
} Place;

#define EDGE 1.4 /* units */
#define WIDE 1.15 /* of width to height; below, panels stand above each other */

static const Place places[2][3][N_PANELS] = {
  { /* wide */
    [LAP_LAYOUT_WORK] = {
      [PANEL_HEAD] = { 3, 2, 97, 9.5 }, [PANEL_FIGURE] = { 3, 11, 57, 49 }, [PANEL_GROUND] = { 3, 49, 57, 56 },
      [PANEL_NAME] = { 3, 57, 60, 68.5 }, [PANEL_COUNT] = { 61, 12, 97, 68.5 }, [PANEL_SAY] = { 3, 70.5, 64, 90 },
      [PANEL_NEXT] = { 67, 70.5, 97, 90 }, [PANEL_BAR] = { 3, 91, 97, 99.5 },
    },
    [LAP_LAYOUT_REST] = {
      [PANEL_HEAD] = { 3, 2, 97, 9.5 }, [PANEL_NAME] = { 3, 11, 66, 23 }, [PANEL_SAY] = { 3, 25, 66, 80 },
      [PANEL_GROUND] = { 3, 82, 66, 89 }, [PANEL_COUNT] = { 69, 12, 97, 44 }, [PANEL_FIGURE] = { 69, 45, 97, 70 },
      [PANEL_NEXT] = { 69, 73, 97, 90 }, [PANEL_BAR] = { 3, 91, 97, 99.5 },
    },
    [LAP_LAYOUT_READ] = {
      [PANEL_HEAD] = { 3, 2, 97, 9.5 }, [PANEL_SAY] = { 3, 12, 66, 89 }, [PANEL_COUNT] = { 69, 12, 97, 50 },
      [PANEL_FIGURE] = { 69, 52, 97, 74 }, [PANEL_NAME] = { 69, 76, 97, 89 }, [PANEL_BAR] = { 3, 91, 97, 99.5 },
    },
  },
  { /* high */
    [LAP_LAYOUT_WORK] = {
      [PANEL_HEAD] = { 4, 1.5, 96, 7 }, [PANEL_FIGURE] = { 4, 9, 52, 29 }, [PANEL_GROUND] = { 4, 29, 52, 33 },
      [PANEL_COUNT] = { 55, 9, 96, 33 }, [PANEL_NAME] = { 4, 35, 96, 42 }, [PANEL_SAY] = { 4, 44, 96, 70 },
      [PANEL_NEXT] = { 4, 72, 96, 88 }, [PANEL_BAR] = { 4, 90, 96, 99 },
    },
    [LAP_LAYOUT_REST] = {
      [PANEL_HEAD] = { 4, 1.5, 96, 7 }, [PANEL_FIGURE] = { 4, 9, 52, 29 }, [PANEL_GROUND] = { 4, 29, 52, 33 },
      [PANEL_COUNT] = { 55, 9, 96, 33 }, [PANEL_NAME] = { 4, 35, 96, 42 }, [PANEL_SAY] = { 4, 44, 96, 74 },
      [PANEL_NEXT] = { 4, 76, 96, 88 }, [PANEL_BAR] = { 4, 90, 96, 99 },
    },
    [LAP_LAYOUT_READ] = {
      [PANEL_HEAD] = { 4, 1.5, 96, 7 }, [PANEL_SAY] = { 4, 9, 96, 65 }, [PANEL_COUNT] = { 55, 67, 96, 88 },
      [PANEL_FIGURE] = { 4, 67, 52, 80 }, [PANEL_NAME] = { 4, 81, 52, 88 }, [PANEL_BAR] = { 4, 90, 96, 99 },
    },
  },
};

struct _LapStage {
  GtkWidget  parent_instance;
  LapScene  *scene;
  GtkWidget *panels[N_PANELS];
  guint      pulse;
  gboolean   mirror;
  LapLayout  layout;   /* as it is laid out */
  int        interval; /* and was told of */
  LapRehearsalState state;
};

G_DEFINE_FINAL_TYPE (LapStage, lap_stage, GTK_TYPE_WIDGET)

enum { CHANGED, JUMP, PRESSED, N_SIGNALS };
static guint signals[N_SIGNALS];

#define PULSE 250 /* milliseconds: well below the gap that holds a rehearsal */

void
lap_stage_look (LapStage *self)
{
  int interval;

  lap_scene_tick (self->scene);
  for (guint i = 0; i < N_PANELS; i++)
    lap_panel_look (LAP_PANEL (self->panels[i]));
  if (lap_scene_layout (self->scene) != self->layout)
    gtk_widget_queue_allocate (GTK_WIDGET (self));
  interval = self->scene->moment.interval != NULL ? self->scene->moment.interval->start : -1;
  if (self->state == self->scene->state && self->interval == interval)
    return;
  self->state = self->scene->state;
  self->interval = interval;
  g_signal_emit (self, signals[CHANGED], 0);
}

static gboolean
tick_cb (GtkWidget *widget, GdkFrameClock *clock, gpointer data)
{
  lap_stage_look (LAP_STAGE (widget));
  return G_SOURCE_CONTINUE;
}

static gboolean
pulse_cb (gpointer data)
{
  lap_stage_look (data);
  return G_SOURCE_CONTINUE;
}

static void
place_panel (LapStage *self, Panel panel, double x, double y, double width, double height)
{
  GskTransform *transform = gsk_transform_translate (NULL, &GRAPHENE_POINT_INIT (floor (x), floor (y)));
  int w = width, h = height;

  gtk_widget_set_child_visible (self->panels[panel], w > 0 && h > 0);
  gtk_widget_allocate (self->panels[panel], MAX (w, 0), MAX (h, 0), -1, transform);
}

static void
lap_stage_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  LapStage *self = LAP_STAGE (widget);
  gboolean high = width < height * WIDE, rtl = gtk_widget_get_direction (widget) == GTK_TEXT_DIR_RTL;
  double edge;

  self->scene->unit = high ? MIN (height / 100.0, width / 62.0) : MIN (height / 100.0, width / 140.0);
  self->layout = lap_scene_layout (self->scene);
  for (guint i = 0; i < PANEL_TOP; i++) {
    const Place *p = &places[high][self->layout][i];

    place_panel (self, i, (rtl ? 100 - p->right : p->x) * width / 100, p->y * height / 100,
                 (p->right - p->x) * width / 100, (p->bottom - p->y) * height / 100);
  }
  edge = EDGE * self->scene->unit;
  place_panel (self, PANEL_TOP, 0, 0, width, edge);
  place_panel (self, PANEL_BOTTOM, 0, height - edge, width, edge);
  place_panel (self, PANEL_LEFT, 0, edge, edge, height - 2 * edge);
  place_panel (self, PANEL_RIGHT, width - edge, edge, edge, height - 2 * edge);
  place_panel (self, PANEL_SYNC, 0, 0, width, height);
}

static void
lap_stage_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *least, int *natural,
                   int *least_baseline, int *natural_baseline)
{
  *least = 200;
  *natural = orientation == GTK_ORIENTATION_HORIZONTAL ? 960 : 600;
}

static void
lap_stage_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  LapStage *self = LAP_STAGE (widget);

  if (self->mirror) {
    gtk_snapshot_translate (snapshot, &GRAPHENE_POINT_INIT (gtk_widget_get_width (widget), 0));
    gtk_snapshot_scale (snapshot, -1, 1);
  }
  GTK_WIDGET_CLASS (lap_stage_parent_class)->snapshot (widget, snapshot);
}

static void
pressed_cb (GtkGestureClick *click, int n, double x, double y, LapStage *self)
{
  GtkWidget *bar = self->panels[PANEL_BAR];
  graphene_rect_t box;

  if (self->mirror)
    x = gtk_widget_get_width (GTK_WIDGET (self)) - x;
  if (gtk_widget_compute_bounds (bar, GTK_WIDGET (self), &box) &&
      graphene_rect_contains_point (&box, &GRAPHENE_POINT_INIT (x, y)))
    g_signal_emit (self, signals[JUMP], 0, lap_bar_second (LAP_PANEL (bar), self->scene, x - box.origin.x,
                                                           box.size.width));
  else
    g_signal_emit (self, signals[PRESSED], 0);
}

static void
lap_stage_map (GtkWidget *widget)
{
  GTK_WIDGET_CLASS (lap_stage_parent_class)->map (widget);
  lap_stage_look (LAP_STAGE (widget));
}

static void
lap_stage_dispose (GObject *object)
{
  LapStage *self = LAP_STAGE (object);

  g_clear_handle_id (&self->pulse, g_source_remove);
  for (guint i = 0; i < N_PANELS; i++)
    g_clear_pointer (&self->panels[i], gtk_widget_unparent);
  G_OBJECT_CLASS (lap_stage_parent_class)->dispose (object);
}

static void
lap_stage_finalize (GObject *object)
{
  lap_scene_free (LAP_STAGE (object)->scene);
  G_OBJECT_CLASS (lap_stage_parent_class)->finalize (object);
}

static void
lap_stage_class_init (LapStageClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_stage_dispose;
  G_OBJECT_CLASS (klass)->finalize = lap_stage_finalize;
  widget_class->size_allocate = lap_stage_size_allocate;
  widget_class->measure = lap_stage_measure;
  widget_class->snapshot = lap_stage_snapshot;
  widget_class->map = lap_stage_map;
  gtk_widget_class_set_css_name (widget_class, "rehearse-stage");
  /* Here, for a window takes Space and the arrows for its own before its class is asked. */
  lap_shortcuts_bind_class (widget_class, LAP_SCOPE_REHEARSE);
  signals[CHANGED] = g_signal_new ("changed", LAP_TYPE_STAGE, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
  signals[JUMP] = g_signal_new ("jump", LAP_TYPE_STAGE, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 1,
                                G_TYPE_INT);
  signals[PRESSED] = g_signal_new ("pressed", LAP_TYPE_STAGE, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
lap_stage_init (LapStage *self)
{
  GtkGesture *click = gtk_gesture_click_new ();

  g_signal_connect (click, "pressed", G_CALLBACK (pressed_cb), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (click));
  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_HIDDEN);
  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
}

GtkWidget *
lap_stage_new (LapScene *scene)
{
  LapStage *self = g_object_new (LAP_TYPE_STAGE, NULL);

  self->scene = scene;
  self->state = scene->state;
  for (guint i = 0; i < N_PANELS; i++) {
    self->panels[i] = lap_panel_new (kinds[i], scene);
    gtk_widget_set_parent (self->panels[i], GTK_WIDGET (self));
  }
  gtk_widget_add_tick_callback (GTK_WIDGET (self), tick_cb, NULL, NULL);
  self->pulse = g_timeout_add (PULSE, pulse_cb, self);
  return GTK_WIDGET (self);
}

LapScene *
lap_stage_scene (LapStage *self)
{
  return self->scene;
}

void
lap_stage_set_mirror (LapStage *self, gboolean mirror)
{
  self->mirror = mirror;
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

gboolean
lap_stage_mirror (LapStage *self)
{
  return self->mirror;
}

double
lap_stage_reads_from (double units, double share, double height_mm)
{
  const double capital = 0.7, minutes = 16; /* of an em; of arc */

  return capital * units * share * height_mm / 1000 / (2 * tan (minutes / 60 * G_PI / 180 / 2));
}
