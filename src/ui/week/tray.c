/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/week/tray.h"

#include "ui/flow.h"
#include "ui/palette.h"
#include "ui/score/paint.h"
#include "ui/shortcuts.h"
#include "ui/week/card.h"
#include "ui/week/words.h"

#include <glib/gi18n-lib.h>

#define GAP  4   /* px below the title */
#define MOST 132 /* px that it is high at most; more classes scroll */

/* One class. */
#define LAP_TYPE_WEEK_TICKET (lap_week_ticket_get_type ())
G_DECLARE_FINAL_TYPE (LapWeekTicket, lap_week_ticket, LAP, WEEK_TICKET, GtkWidget)

struct _LapWeekTicket {
  GtkWidget  parent_instance;
  GtkWidget *label;
  char      *id;
};

G_DEFINE_FINAL_TYPE (LapWeekTicket, lap_week_ticket, GTK_TYPE_WIDGET)

static void
lap_week_ticket_dispose (GObject *object)
{
  g_clear_pointer (&LAP_WEEK_TICKET (object)->label, gtk_widget_unparent);
  g_clear_pointer (&LAP_WEEK_TICKET (object)->id, g_free);
  G_OBJECT_CLASS (lap_week_ticket_parent_class)->dispose (object);
}

static void
lap_week_ticket_class_init (LapWeekTicketClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = lap_week_ticket_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (klass), GTK_TYPE_BIN_LAYOUT);
  gtk_widget_class_set_css_name (GTK_WIDGET_CLASS (klass), "ticket");
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass), GTK_ACCESSIBLE_ROLE_LIST_ITEM);
}

static void
lap_week_ticket_init (LapWeekTicket *self)
{
  self->label = gtk_label_new (NULL);
  gtk_label_set_ellipsize (GTK_LABEL (self->label), PANGO_ELLIPSIZE_END);
  gtk_widget_set_parent (self->label, GTK_WIDGET (self));
  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
}

struct _LapWeekTray {
  GtkWidget     parent_instance;
  LapWeekScene *scene;
  GtkWidget    *title, *scroll, *list;
};

G_DEFINE_FINAL_TYPE (LapWeekTray, lap_week_tray, GTK_TYPE_WIDGET)

static LapWeekTicket *
first (LapWeekTray *self)
{
  return (LapWeekTicket *) gtk_widget_get_first_child (self->list);
}

static LapWeekTicket *
after (LapWeekTicket *ticket)
{
  return (LapWeekTicket *) gtk_widget_get_next_sibling (GTK_WIDGET (ticket));
}

static LapWeekTicket *
find (LapWeekTray *self, const char *id)
{
  LapWeekTicket *ticket = first (self);

  while (ticket != NULL && g_strcmp0 (ticket->id, id) != 0)
    ticket = after (ticket);
  return ticket;
}

static void
show (LapWeekTray *self, LapWeekTicket *ticket, LapClass *c, guint position, guint of)
{
  g_autofree char *text = NULL, *spoken = lap_class_spoken (lap_week_scene_week (self->scene), c);
  gboolean picked = lap_week_scene_is_picked (self->scene, c->id);

  /* Translators: a class that has no day yet, and its minutes. */
  text = g_strdup_printf (_("%1$s, %2$d min"), lap_class_title (c), c->minutes);
  gtk_label_set_text (GTK_LABEL (ticket->label), text);
  gtk_widget_set_tooltip_text (GTK_WIDGET (ticket), spoken);
  if (picked)
    gtk_widget_add_css_class (GTK_WIDGET (ticket), "picked");
  else
    gtk_widget_remove_css_class (GTK_WIDGET (ticket), "picked");
  gtk_accessible_update_property (GTK_ACCESSIBLE (ticket), GTK_ACCESSIBLE_PROPERTY_LABEL, spoken,
                                  GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, "", -1);
  gtk_accessible_update_state (GTK_ACCESSIBLE (ticket), GTK_ACCESSIBLE_STATE_SELECTED, picked, -1);
  gtk_accessible_update_relation (GTK_ACCESSIBLE (ticket), GTK_ACCESSIBLE_RELATION_POS_IN_SET, (int) position,
                                  GTK_ACCESSIBLE_RELATION_SET_SIZE, (int) of, -1);
}

/* A class keeps its widget as long as it waits, and so the focus. */
static void
fill (LapWeekTray *self)
{
  g_autoptr (GPtrArray) waiting = lap_week_scene_waiting (self->scene);
  g_autofree char *title = NULL;
  GtkWidget *before = NULL;

  for (LapWeekTicket *ticket = first (self), *next; ticket != NULL; ticket = next) {
    LapClass *c = lap_week_class (lap_week_scene_week (self->scene), ticket->id);

    next = after (ticket);
    if (c == NULL || lap_class_is_placed (c))
      gtk_widget_unparent (GTK_WIDGET (ticket));
  }
  for (guint i = 0; i < waiting->len; i++) {
    LapClass *c = g_ptr_array_index (waiting, i);
    LapWeekTicket *ticket = find (self, c->id);

    if (ticket == NULL) {
      ticket = g_object_new (LAP_TYPE_WEEK_TICKET, NULL);
      ticket->id = g_strdup (c->id);
    }
    if (gtk_widget_get_parent (GTK_WIDGET (ticket)) == NULL ||
        gtk_widget_get_prev_sibling (GTK_WIDGET (ticket)) != before)
      gtk_widget_insert_after (GTK_WIDGET (ticket), self->list, before);
    show (self, ticket, c, i + 1, waiting->len);
    before = GTK_WIDGET (ticket);
  }
  title = g_strdup_printf (ngettext ("%u class has no day yet", "%u classes have no day yet", waiting->len), waiting->len);
  gtk_label_set_text (GTK_LABEL (self->title), title);
  gtk_widget_set_visible (GTK_WIDGET (self), waiting->len > 0);
}

static void
changed_cb (LapWeekTray *self, guint change)
{
  if (change & (LAP_WEEK_PLAN | LAP_WEEK_SELECTION))
    fill (self);
}

/* One stop of Tab for all; the arrows go on from there. */
static gboolean
lap_week_tray_focus (GtkWidget *widget, GtkDirectionType direction)
{
  LapWeekTray *self = LAP_WEEK_TRAY (widget);
  LapWeekTicket *ticket = find (self, self->scene->current);

  if (gtk_widget_get_focus_child (widget) != NULL || first (self) == NULL)
    return FALSE;
  /* Who passes by on the way to the pane keeps what is selected on the lines. */
  return gtk_widget_grab_focus (GTK_WIDGET (ticket != NULL ? ticket : first (self)));
}

static GtkSizeRequestMode
lap_week_tray_get_request_mode (GtkWidget *widget)
{
  return GTK_SIZE_REQUEST_HEIGHT_FOR_WIDTH;
}

/* px of the title, and of as many lines of classes as are seen at once. */
static void
heights (LapWeekTray *self, int width, int *title, int *list)
{
  gtk_widget_measure (self->title, GTK_ORIENTATION_VERTICAL, width, title, NULL, NULL, NULL);
  gtk_widget_measure (self->list, GTK_ORIENTATION_VERTICAL, width, list, NULL, NULL, NULL);
  *list = MIN (*list, MOST);
}

static void
lap_week_tray_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *least, int *natural,
                       int *least_baseline, int *natural_baseline)
{
  int title, list;

  *least = 80;
  *natural = 400;
  if (orientation == GTK_ORIENTATION_HORIZONTAL)
    return;
  heights (LAP_WEEK_TRAY (widget), for_size, &title, &list);
  *least = *natural = title + GAP + list;
}

static void
lap_week_tray_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  LapWeekTray *self = LAP_WEEK_TRAY (widget);
  int title, list;

  heights (self, width, &title, &list);
  gtk_widget_size_allocate (self->title, &(GtkAllocation) { 0, 0, width, title }, -1);
  gtk_widget_measure (self->scroll, GTK_ORIENTATION_HORIZONTAL, -1, NULL, NULL, NULL, NULL);
  gtk_widget_size_allocate (self->scroll, &(GtkAllocation) { 0, title + GAP, width, MAX (1, height - title - GAP) }, -1);
}

static void
lap_week_tray_dispose (GObject *object)
{
  LapWeekTray *self = LAP_WEEK_TRAY (object);
  GtkWidget *child;

  if (self->list != NULL)
    while ((child = gtk_widget_get_first_child (self->list)) != NULL)
      gtk_widget_unparent (child);
  self->list = NULL;
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  g_clear_object (&self->scene);
  G_OBJECT_CLASS (lap_week_tray_parent_class)->dispose (object);
}

static void
lap_week_tray_class_init (LapWeekTrayClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_week_tray_dispose;
  widget_class->focus = lap_week_tray_focus;
  widget_class->measure = lap_week_tray_measure;
  widget_class->size_allocate = lap_week_tray_size_allocate;
  widget_class->get_request_mode = lap_week_tray_get_request_mode;
  lap_shortcuts_bind_class (widget_class, LAP_SCOPE_WEEK);
  gtk_widget_class_set_css_name (widget_class, "week-tray");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
}

static void
lap_week_tray_init (LapWeekTray *self)
{
  self->title = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (self->title), 0);
  gtk_label_set_wrap (GTK_LABEL (self->title), TRUE);
  gtk_widget_add_css_class (self->title, "lane-title");
  gtk_widget_set_parent (self->title, GTK_WIDGET (self));
  self->list = g_object_new (GTK_TYPE_BOX, "layout-manager", g_object_new (LAP_TYPE_FLOW, NULL), "accessible-role",
                             GTK_ACCESSIBLE_ROLE_LIST, NULL);
  self->scroll = gtk_scrolled_window_new ();
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (self->scroll), self->list);
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (self->scroll), GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_widget_set_parent (self->scroll, GTK_WIDGET (self));
}

GtkWidget *
lap_week_tray_new (LapWeekScene *scene)
{
  LapWeekTray *self = g_object_new (LAP_TYPE_WEEK_TRAY, NULL);

  self->scene = g_object_ref (scene);
  g_signal_connect_object (scene, "changed", G_CALLBACK (changed_cb), self, G_CONNECT_SWAPPED);
  fill (self);
  return GTK_WIDGET (self);
}

GtkWidget *
lap_week_tray_find (LapWeekTray *self, const char *id)
{
  return (GtkWidget *) find (self, id);
}

const char *
lap_week_tray_at (LapWeekTray *self, double x, double y)
{
  GtkWidget *widget = gtk_widget_pick (GTK_WIDGET (self), x, y, GTK_PICK_DEFAULT);

  while (widget != NULL && !LAP_IS_WEEK_TICKET (widget))
    widget = gtk_widget_get_parent (widget);
  return widget != NULL ? LAP_WEEK_TICKET (widget)->id : NULL;
}

const char *
lap_week_tray_step (LapWeekTray *self, const char *id, int by)
{
  LapWeekTicket *ticket = find (self, id);
  GtkWidget *next = NULL;

  if (ticket != NULL)
    next = by > 0 ? gtk_widget_get_next_sibling (GTK_WIDGET (ticket)) : gtk_widget_get_prev_sibling (GTK_WIDGET (ticket));
  return next != NULL ? LAP_WEEK_TICKET (next)->id : NULL;
}

const char *
lap_week_tray_focused (LapWeekTray *self)
{
  GtkWidget *focus = GTK_WIDGET (gtk_widget_get_root (GTK_WIDGET (self))) != NULL
                       ? gtk_root_get_focus (gtk_widget_get_root (GTK_WIDGET (self))) : NULL;

  return focus != NULL && LAP_IS_WEEK_TICKET (focus) && gtk_widget_is_ancestor (focus, GTK_WIDGET (self))
           ? LAP_WEEK_TICKET (focus)->id : NULL;
}
