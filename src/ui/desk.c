/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/desk.h"

#include "ui/letters.h"

/* Lines of text that the plan is wide at least before a pane beside it is folded. */
#define ROOM 30
/* px beside a pane that lies over the plan, to press on. */
#define BESIDE 36

typedef struct {
  GtkWidget *pane;
  gboolean   folded;
  gboolean   beside; /* shown when it isn't folded */
  gboolean   over;   /* shown while it is */
} Side;

struct _LapDesk {
  GtkWidget  parent_instance;
  GtkWidget *content, *shade;
  Side       sides[LAP_DESK_SIDES];
  guint      telling; /* idle source */
};

enum { PROP_0, PROP_SHOW_START, PROP_SHOW_END, N_PROPS };
static GParamSpec *props[N_PROPS];
enum { FOLDED, N_SIGNALS };
static guint signals[N_SIGNALS];

static void lap_desk_buildable_init (GtkBuildableIface *iface);
static GtkBuildableIface *parent_buildable;

G_DEFINE_FINAL_TYPE_WITH_CODE (LapDesk, lap_desk, GTK_TYPE_WIDGET,
                               G_IMPLEMENT_INTERFACE (GTK_TYPE_BUILDABLE, lap_desk_buildable_init))

static void
add_child (GtkBuildable *buildable, GtkBuilder *builder, GObject *child, const char *type)
{
  LapDesk *self = LAP_DESK (buildable);
  GtkWidget *widget = GTK_IS_WIDGET (child) ? GTK_WIDGET (child) : NULL;

  if (widget == NULL) {
    parent_buildable->add_child (buildable, builder, child, type);
    return;
  }
  if (g_strcmp0 (type, "start") == 0) {
    self->sides[LAP_DESK_START].pane = widget;
    gtk_widget_add_css_class (widget, "desk-start");
  } else if (g_strcmp0 (type, "end") == 0) {
    self->sides[LAP_DESK_END].pane = widget;
    gtk_widget_add_css_class (widget, "desk-end");
  } else
    self->content = widget;
  gtk_widget_set_parent (widget, GTK_WIDGET (self));
  /* Above the plan lies the shade, above that the panes. */
  gtk_widget_insert_before (self->shade, GTK_WIDGET (self), NULL);
  for (guint i = 0; i < LAP_DESK_SIDES; i++)
    if (self->sides[i].pane != NULL)
      gtk_widget_insert_before (self->sides[i].pane, GTK_WIDGET (self), NULL);
}

static void
lap_desk_buildable_init (GtkBuildableIface *iface)
{
  parent_buildable = g_type_interface_peek_parent (iface);
  iface->add_child = add_child;
}

static int
natural_width (GtkWidget *pane)
{
  int natural = 0;

  if (pane != NULL)
    gtk_widget_measure (pane, GTK_ORIENTATION_HORIZONTAL, -1, NULL, &natural, NULL, NULL);
  return natural;
}

static gboolean
is_shown (const Side *side)
{
  return side->folded ? side->over : side->beside;
}

static gboolean
tell_folded (gpointer data)
{
  LapDesk *self = data;

  self->telling = 0;
  for (guint i = 0; i < LAP_DESK_SIDES; i++)
    g_object_notify_by_pspec (G_OBJECT (self), props[PROP_SHOW_START + i]);
  g_signal_emit (self, signals[FOLDED], 0);
  return G_SOURCE_REMOVE;
}

static void
settle_folds (LapDesk *self, int width)
{
  int start = natural_width (self->sides[LAP_DESK_START].pane), end = natural_width (self->sides[LAP_DESK_END].pane);
  int room = ROOM * lap_usual_line (GTK_WIDGET (self));
  gboolean folded[LAP_DESK_SIDES] = { width < start + room, width < start + room + end };

  for (guint i = 0; i < LAP_DESK_SIDES; i++)
    if (self->sides[i].folded != folded[i]) {
      self->sides[i].folded = folded[i];
      self->sides[i].over = FALSE;
      if (self->telling == 0)
        self->telling = g_idle_add_full (G_PRIORITY_HIGH_IDLE, tell_folded, self, NULL);
    }
}

/* Gives the pane its place, at the left or the right edge; returns the px it takes from the plan. */
static int
place_pane (Side *side, gboolean left, int width, int height)
{
  int least, wide;

  if (side->pane == NULL)
    return 0;
  gtk_widget_set_child_visible (side->pane, is_shown (side));
  if (!is_shown (side))
    return 0;
  gtk_widget_measure (side->pane, GTK_ORIENTATION_HORIZONTAL, -1, &least, &wide, NULL, NULL);
  if (side->folded)
    wide = MAX (least, MIN (wide, width - BESIDE));
  gtk_widget_size_allocate (side->pane, &(GtkAllocation) { left ? 0 : width - wide, 0, wide, height }, -1);
  return side->folded ? 0 : wide;
}

static void
lap_desk_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  LapDesk *self = LAP_DESK (widget);
  Side *start = &self->sides[LAP_DESK_START], *end = &self->sides[LAP_DESK_END];
  gboolean mirrored = gtk_widget_get_direction (widget) == GTK_TEXT_DIR_RTL, shaded;
  int at_start, at_end;

  settle_folds (self, width);
  shaded = (start->folded && start->over) || (end->folded && end->over);
  at_start = place_pane (start, !mirrored, width, height);
  at_end = place_pane (end, mirrored, width, height);
  gtk_widget_set_child_visible (self->shade, shaded);
  if (shaded) {
    gtk_widget_measure (self->shade, GTK_ORIENTATION_HORIZONTAL, -1, NULL, NULL, NULL, NULL);
    gtk_widget_size_allocate (self->shade, &(GtkAllocation) { 0, 0, width, height }, -1);
  }
  if (self->content != NULL)
    gtk_widget_size_allocate (self->content, &(GtkAllocation) { mirrored ? at_end : at_start, 0,
                                                               width - at_start - at_end, height }, -1);
}

/* A hidden pane asks for no place, and measuring its lists is most of a frame. */
static GtkWidget *
shown_pane (const Side *side)
{
  return is_shown (side) ? side->pane : NULL;
}

static void
lap_desk_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *least, int *natural,
                  int *least_baseline, int *natural_baseline)
{
  LapDesk *self = LAP_DESK (widget);
  GtkWidget *children[] = { self->content, shown_pane (&self->sides[LAP_DESK_START]),
                            shown_pane (&self->sides[LAP_DESK_END]) };

  for (guint i = 0; i < G_N_ELEMENTS (children); i++) {
    int one = 0, wanted = 0;

    if (children[i] == NULL)
      continue;
    gtk_widget_measure (children[i], orientation, -1, &one, &wanted, NULL, NULL);
    *least = MAX (*least, one);
    *natural = orientation == GTK_ORIENTATION_HORIZONTAL ? *natural + wanted : MAX (*natural, wanted);
  }
}

static void
hide_over (LapDesk *self)
{
  for (LapDeskSide side = 0; side < LAP_DESK_SIDES; side++)
    if (self->sides[side].folded)
      lap_desk_set_shown (self, side, FALSE);
}

static gboolean
escape_cb (GtkWidget *widget, GVariant *args, gpointer data)
{
  LapDesk *self = LAP_DESK (widget);
  gboolean any = FALSE;

  for (LapDeskSide side = 0; side < LAP_DESK_SIDES; side++)
    any = any || (self->sides[side].folded && self->sides[side].over);
  hide_over (self);
  return any;
}

static void
lap_desk_set_property (GObject *object, guint id, const GValue *value, GParamSpec *pspec)
{
  if (id == PROP_SHOW_START || id == PROP_SHOW_END)
    lap_desk_set_shown (LAP_DESK (object), id - PROP_SHOW_START, g_value_get_boolean (value));
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
}

static void
lap_desk_get_property (GObject *object, guint id, GValue *value, GParamSpec *pspec)
{
  if (id == PROP_SHOW_START || id == PROP_SHOW_END)
    g_value_set_boolean (value, lap_desk_get_shown (LAP_DESK (object), id - PROP_SHOW_START));
  else
    G_OBJECT_WARN_INVALID_PROPERTY_ID (object, id, pspec);
}

static void
lap_desk_dispose (GObject *object)
{
  LapDesk *self = LAP_DESK (object);

  g_clear_handle_id (&self->telling, g_source_remove);
  g_clear_pointer (&self->content, gtk_widget_unparent);
  g_clear_pointer (&self->shade, gtk_widget_unparent);
  for (guint i = 0; i < LAP_DESK_SIDES; i++)
    g_clear_pointer (&self->sides[i].pane, gtk_widget_unparent);
  G_OBJECT_CLASS (lap_desk_parent_class)->dispose (object);
}

static void
lap_desk_class_init (LapDeskClass *klass)
{
  GObjectClass *object_class = G_OBJECT_CLASS (klass);
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);
  const GParamFlags flags = G_PARAM_READWRITE | G_PARAM_STATIC_STRINGS | G_PARAM_EXPLICIT_NOTIFY;

  object_class->dispose = lap_desk_dispose;
  object_class->set_property = lap_desk_set_property;
  object_class->get_property = lap_desk_get_property;
  widget_class->measure = lap_desk_measure;
  widget_class->size_allocate = lap_desk_size_allocate;
  props[PROP_SHOW_START] = g_param_spec_boolean ("show-start", NULL, NULL, TRUE, flags);
  props[PROP_SHOW_END] = g_param_spec_boolean ("show-end", NULL, NULL, TRUE, flags);
  g_object_class_install_properties (object_class, N_PROPS, props);
  signals[FOLDED] = g_signal_new ("folded", LAP_TYPE_DESK, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
  gtk_widget_class_add_binding (widget_class, GDK_KEY_Escape, 0, escape_cb, NULL);
  gtk_widget_class_set_css_name (widget_class, "desk");
}

static void
lap_desk_init (LapDesk *self)
{
  GtkGesture *click = gtk_gesture_click_new ();

  self->shade = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0);
  gtk_widget_add_css_class (self->shade, "desk-shade");
  gtk_widget_set_parent (self->shade, GTK_WIDGET (self));
  g_signal_connect_swapped (click, "pressed", G_CALLBACK (hide_over), self);
  gtk_widget_add_controller (self->shade, GTK_EVENT_CONTROLLER (click));
  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_HIDDEN);
  for (guint i = 0; i < LAP_DESK_SIDES; i++)
    self->sides[i].beside = TRUE;
}

gboolean
lap_desk_get_shown (LapDesk *self, LapDeskSide side)
{
  return is_shown (&self->sides[side]);
}

void
lap_desk_set_shown (LapDesk *self, LapDeskSide side, gboolean shown)
{
  Side *it = &self->sides[side];

  if (is_shown (it) == shown)
    return;
  if (it->folded)
    it->over = shown;
  else
    it->beside = shown;
  if (shown && it->folded)
    for (LapDeskSide other = 0; other < LAP_DESK_SIDES; other++)
      if (other != side && self->sides[other].folded)
        lap_desk_set_shown (self, other, FALSE);
  /* Now, so that it can take the focus. */
  if (it->pane != NULL)
    gtk_widget_set_child_visible (it->pane, shown);
  gtk_widget_queue_allocate (GTK_WIDGET (self));
  g_object_notify_by_pspec (G_OBJECT (self), props[PROP_SHOW_START + side]);
}

gboolean
lap_desk_is_folded (LapDesk *self, LapDeskSide side)
{
  return self->sides[side].folded;
}
