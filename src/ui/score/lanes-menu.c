/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The rows are made anew whenever the menu comes up and after each move, which then keeps the focus.
 */
#include "ui/score/lanes-menu.h"

#include "ui/help.h"

#include <glib/gi18n-lib.h>

typedef struct {
  LapScoreView *view; /* holds the menu, so outlives it */
  GtkWidget    *list;
} Menu;

static void fill (Menu *menu);

static const char *
id_of (GtkWidget *widget)
{
  return g_object_get_data (G_OBJECT (widget), "lane");
}

static void
toggled_cb (GtkCheckButton *check, Menu *menu)
{
  lap_score_view_show (menu->view, id_of (GTK_WIDGET (check)), gtk_check_button_get_active (check));
}

/* The button of the same lane that moves the same way, in the rows made anew. */
static GtkWidget *
button_of (Menu *menu, const char *id, gboolean down)
{
  for (GtkWidget *row = gtk_widget_get_first_child (menu->list); row != NULL; row = gtk_widget_get_next_sibling (row)) {
    GtkWidget *last = gtk_widget_get_last_child (row);

    if (g_str_equal (id_of (last), id))
      return down ? last : gtk_widget_get_prev_sibling (last);
  }
  return NULL;
}

static void
moved_cb (GtkButton *button, Menu *menu)
{
  const char *id = id_of (GTK_WIDGET (button));
  gboolean down = g_object_get_data (G_OBJECT (button), "down") != NULL;
  GtkWidget *anew;

  lap_score_view_move (menu->view, id, down ? 1 : -1);
  fill (menu);
  anew = button_of (menu, id, down);
  if (anew != NULL && !gtk_widget_get_sensitive (anew))
    anew = button_of (menu, id, !down);
  if (anew != NULL)
    gtk_widget_grab_focus (anew);
}

static GtkWidget *
mover_new (Menu *menu, const LapLaneKind *kind, gboolean down, gboolean can)
{
  GtkWidget *button = gtk_button_new_from_icon_name (down ? "go-down-symbolic" : "go-up-symbolic");
  g_autofree char *label = g_strdup_printf (down ? _("Move %s down") : _("Move %s up"), _(kind->title));

  gtk_widget_add_css_class (button, "flat");
  gtk_widget_set_tooltip_text (button, label);
  gtk_widget_set_sensitive (button, can);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, label, -1);
  g_object_set_data (G_OBJECT (button), "lane", (gpointer) kind->id);
  g_object_set_data (G_OBJECT (button), "down", GINT_TO_POINTER (down));
  g_signal_connect (button, "clicked", G_CALLBACK (moved_cb), menu);
  return button;
}

static GtkWidget *
row_new (Menu *menu, guint i)
{
  const LapLaneKind *kind = lap_score_view_nth (menu->view, i);
  GtkWidget *row = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 2), *check = gtk_check_button_new_with_label (_(kind->title));

  gtk_check_button_set_active (GTK_CHECK_BUTTON (check), lap_score_view_is_shown (menu->view, kind->id));
  gtk_widget_set_sensitive (check, kind != &lap_lane_blocks);
  gtk_widget_set_hexpand (check, TRUE);
  g_object_set_data (G_OBJECT (check), "lane", (gpointer) kind->id);
  g_signal_connect (check, "toggled", G_CALLBACK (toggled_cb), menu);
  gtk_box_append (GTK_BOX (row), check);
  gtk_box_append (GTK_BOX (row), mover_new (menu, kind, FALSE, i > 1));
  gtk_box_append (GTK_BOX (row), mover_new (menu, kind, TRUE, lap_score_view_nth (menu->view, i + 1) != NULL));
  return row;
}

/* The clock is always there and above all. */
static void
fill (Menu *menu)
{
  GtkWidget *row;

  while ((row = gtk_widget_get_first_child (menu->list)) != NULL)
    gtk_box_remove (GTK_BOX (menu->list), row);
  for (guint i = 1; lap_score_view_nth (menu->view, i) != NULL; i++)
    gtk_box_append (GTK_BOX (menu->list), row_new (menu, i));
}

static void
map_cb (GtkWidget *popover, Menu *menu)
{
  fill (menu);
}

GtkWidget *
lap_lanes_menu_new (LapScoreView *view)
{
  GtkWidget *button = gtk_menu_button_new (), *popover = gtk_popover_new ();
  Menu *menu = g_new (Menu, 1);

  menu->view = view;
  menu->list = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  gtk_popover_set_child (GTK_POPOVER (popover), menu->list);
  gtk_widget_set_name (button, LAP_HELP_LANES);
  g_signal_connect_data (popover, "map", G_CALLBACK (map_cb), menu, (GClosureNotify) (void (*) (void)) g_free, 0);
  gtk_menu_button_set_popover (GTK_MENU_BUTTON (button), popover);
  gtk_menu_button_set_label (GTK_MENU_BUTTON (button), _("Lanes"));
  gtk_widget_add_css_class (button, "flat");
  gtk_widget_add_css_class (button, "lanes-menu");
  gtk_widget_set_halign (button, GTK_ALIGN_START);
  gtk_widget_set_tooltip_text (button, _("Which lanes are shown, and in which order"));
  return button;
}
