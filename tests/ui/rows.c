/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/rows.h"

#include <math.h>
#include <string.h>

/* Nobody clicks more often to change a number. */
#define MOST_CLICKS 12

typedef gboolean (*Suits) (GtkWidget *widget, const char *text);

static GtkWidget *
find (GtkWidget *widget, Suits suits, const char *text)
{
  if (gtk_widget_get_mapped (widget) && suits (widget, text))
    return widget;
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL;
       child = gtk_widget_get_next_sibling (child)) {
    GtkWidget *found = find (child, suits, text);

    if (found != NULL)
      return found;
  }
  return NULL;
}

static gboolean
is_label (GtkWidget *widget, const char *text)
{
  return GTK_IS_LABEL (widget) && g_str_equal (gtk_label_get_text (GTK_LABEL (widget)), text);
}

static gboolean
is_row (GtkWidget *widget, const char *title)
{
  return ADW_IS_PREFERENCES_ROW (widget) &&
         g_strcmp0 (adw_preferences_row_get_title (ADW_PREFERENCES_ROW (widget)), title) == 0;
}

static gboolean
is_button (GtkWidget *widget, const char *label)
{
  return (GTK_IS_BUTTON (widget) || GTK_IS_MENU_BUTTON (widget)) &&
         (g_strcmp0 (gtk_widget_get_tooltip_text (widget), label) == 0 || find (widget, is_label, label) != NULL);
}

static gboolean
is_popover (GtkWidget *widget, const char *text)
{
  return GTK_IS_POPOVER (widget);
}

static gboolean
is_text (GtkWidget *widget, const char *text)
{
  return GTK_IS_TEXT (widget);
}

gboolean
rows_is_mapped (gpointer widget)
{
  return gtk_widget_get_mapped (widget);
}

gboolean
rows_has_focus (gpointer widget)
{
  GtkWidget *focus = gtk_root_get_focus (gtk_widget_get_root (widget));

  return focus != NULL && (focus == widget || gtk_widget_is_ancestor (focus, widget));
}

GtkWidget *
rows_find_text (GtkWidget *widget, const char *text)
{
  return find (widget, is_label, text);
}

GtkWidget *
rows_find (GtkWidget *widget, const char *title)
{
  GtkWidget *row = find (widget, is_row, title);

  if (row == NULL)
    g_error ("no row is called “%s”", title);
  return row;
}

static GtkWidget *
find_button (GtkWidget *widget, const char *label)
{
  GtkWidget *button = find (widget, is_button, label);

  if (button == NULL)
    g_error ("no button says “%s”", label);
  return button;
}

void
rows_wheel_to (GtkWidget *widget)
{
  GtkWidget *scrolled = gtk_widget_get_ancestor (widget, GTK_TYPE_SCROLLED_WINDOW);
  graphene_rect_t bounds;

  for (guint i = 0; scrolled != NULL; i++) {
    g_assert_true (gtk_widget_compute_bounds (widget, scrolled, &bounds));
    if (bounds.origin.y >= 0 && bounds.origin.y + bounds.size.height <= gtk_widget_get_height (scrolled))
      return;
    g_assert_cmpuint (i, <, 100);
    if (i == 0)
      hands_point (scrolled);
    hands_wheel (bounds.origin.y < 0 ? -1 : 1);
  }
}

static void
click (GtkWidget *widget)
{
  rows_wheel_to (widget);
  hands_click_on (widget);
}

void
rows_click_text (GtkWidget *within, const char *text)
{
  GtkWidget *label = rows_find_text (within, text);

  if (label == NULL)
    g_error ("nothing says “%s”", text);
  click (label);
}

static double
number_of (GtkWidget *spin)
{
  return gtk_spin_button_get_value (GTK_SPIN_BUTTON (spin));
}

/* Hundredths are not typed anywhere. */
static gboolean
has_number (GtkWidget *spin, double number)
{
  return fabs (number_of (spin) - number) < 0.005;
}

static GtkWidget *
control_of (GtkWidget *row, GType type)
{
  GtkWidget *control = adw_action_row_get_activatable_widget (ADW_ACTION_ROW (row));

  g_assert_true (g_type_is_a (G_OBJECT_TYPE (control), type));
  return control;
}

static guint
place_of (GtkWidget *row, const char *label)
{
  GListModel *model = adw_combo_row_get_model (ADW_COMBO_ROW (row));

  for (guint i = 0; i < g_list_model_get_n_items (model); i++)
    if (g_str_equal (gtk_string_list_get_string (GTK_STRING_LIST (model), i), label))
      return i;
  g_error ("“%s” has no “%s”", adw_preferences_row_get_title (ADW_PREFERENCES_ROW (row)), label);
}

/* With the mouse */

static gboolean
has_popover (gpointer widget)
{
  return find (widget, is_popover, NULL) != NULL;
}

static gboolean
has_no_popover (gpointer widget)
{
  return !has_popover (widget);
}

static void
choose_from_menu (GtkWidget *inner, const char *label)
{
  /* To the side, so that the menu doesn't lie on what comes next. */
  hands_click_at (inner, 4, gtk_widget_get_height (inner) / 2.0, GDK_BUTTON_SECONDARY, 1);
  hands_until (has_popover, inner);
  rows_click_text (find (inner, is_popover, NULL), label);
  hands_until (has_no_popover, inner);
}

/* What was copied elsewhere takes the place of all that is there, which three clicks select; in an empty line what was
 * selected elsewhere, by the button in the middle. */
static void
mouse_paste (GtkWidget *editable, const char *text)
{
  GtkWidget *inner = find (editable, is_text, NULL);
  double width = gtk_widget_get_width (inner), middle = gtk_widget_get_height (inner) / 2.0;

  rows_wheel_to (editable);
  if (*gtk_editable_get_text (GTK_EDITABLE (inner)) == '\0') {
    gdk_clipboard_set_text (gtk_widget_get_primary_clipboard (inner), text);
    hands_click_at (inner, width / 2, middle, GDK_BUTTON_MIDDLE, 1);
    return;
  }
  gdk_clipboard_set_text (gtk_widget_get_clipboard (inner), text);
  hands_click_at (inner, 4, middle, GDK_BUTTON_PRIMARY, 3);
  choose_from_menu (inner, "Paste");
}

static void
mouse_line (GtkWidget *within, const char *title, const char *text)
{
  GtkWidget *row = rows_find (within, title);

  if (g_str_equal (gtk_editable_get_text (GTK_EDITABLE (row)), text))
    return;
  click (row);
  mouse_paste (row, text);
  g_assert_cmpstr (gtk_editable_get_text (GTK_EDITABLE (row)), ==, text);
}

/* By its buttons, less and more. Where that is far, the number before is pasted: a button takes in what stands there. */
static void
mouse_number (GtkWidget *within, const char *title, double number)
{
  GtkWidget *spin = control_of (rows_find (within, title), GTK_TYPE_SPIN_BUTTON);
  GtkWidget *more = gtk_widget_get_last_child (spin), *less = gtk_widget_get_prev_sibling (more);
  double step;
  int steps;

  gtk_spin_button_get_increments (GTK_SPIN_BUTTON (spin), &step, NULL);
  if (has_number (spin, number))
    return;
  steps = lround ((number - number_of (spin)) / step);
  if (ABS (steps) > MOST_CLICKS) {
    int digits = gtk_spin_button_get_digits (GTK_SPIN_BUTTON (spin));
    g_autofree char *before = g_strdup_printf ("%.*f", digits, number - step);

    mouse_paste (spin, before);
    steps = 1;
  }
  rows_wheel_to (spin);
  hands_point (steps > 0 ? more : less);
  hands_click (GDK_BUTTON_PRIMARY, ABS (steps));
  g_assert_cmpfloat_with_epsilon (number_of (spin), number, 0.005);
}

static void
mouse_choose (GtkWidget *within, const char *title, const char *label)
{
  GtkWidget *row = rows_find (within, title);

  if (adw_combo_row_get_selected (ADW_COMBO_ROW (row)) == place_of (row, label))
    return;
  click (row);
  hands_until (has_popover, row);
  rows_click_text (find (row, is_popover, NULL), label);
  hands_until (has_no_popover, row);
  g_assert_cmpuint (adw_combo_row_get_selected (ADW_COMBO_ROW (row)), ==, place_of (row, label));
}

static void
mouse_flag (GtkWidget *within, const char *title, gboolean on)
{
  GtkWidget *toggle = control_of (rows_find (within, title), GTK_TYPE_SWITCH);

  if (gtk_switch_get_active (GTK_SWITCH (toggle)) != on)
    click (toggle);
  g_assert_true (gtk_switch_get_active (GTK_SWITCH (toggle)) == on);
}

static void
mouse_expand (GtkWidget *within, const char *title)
{
  GtkWidget *row = rows_find (within, title);

  if (!adw_expander_row_get_expanded (ADW_EXPANDER_ROW (row)))
    click (rows_find_text (row, title));
  g_assert_true (adw_expander_row_get_expanded (ADW_EXPANDER_ROW (row)));
}

static void
mouse_press (GtkWidget *within, const char *label)
{
  click (find_button (within, label));
}

const Rows rows_by_mouse = { mouse_line, mouse_number, mouse_choose, mouse_flag, mouse_expand, mouse_press };

/* With the keyboard */

static double
top_of (GtkWidget *widget)
{
  graphene_rect_t bounds;

  g_assert_true (gtk_widget_compute_bounds (widget, GTK_WIDGET (gtk_widget_get_root (widget)), &bounds));
  return bounds.origin.y;
}

/* Back to what stands above in the same list of rows, else on. */
static void
tab_to (GtkWidget *widget)
{
  GtkWidget *focus = gtk_root_get_focus (gtk_widget_get_root (widget));
  GtkWidget *list = gtk_widget_get_ancestor (widget, GTK_TYPE_SCROLLED_WINDOW);
  gboolean back = focus != NULL && list != NULL && gtk_widget_is_ancestor (focus, list) &&
                  top_of (widget) < top_of (focus);

  hands_press_until (back ? "<Shift>Tab" : "Tab", rows_has_focus, widget);
}

/* No key has the long stroke between two times. */
static void
type_over (GtkWidget *widget, const char *text)
{
  g_auto (GStrv) pieces = g_strsplit (text, "–", -1);
  g_autofree char *typed = g_strjoinv ("-", pieces);

  tab_to (widget);
  hands_press ("<Control>a");
  if (*text != '\0')
    hands_type (typed);
  else
    hands_press ("Delete");
  hands_press ("Return");
}

static void
keys_line (GtkWidget *within, const char *title, const char *text)
{
  GtkWidget *row = rows_find (within, title);

  if (g_str_equal (gtk_editable_get_text (GTK_EDITABLE (row)), text))
    return;
  type_over (row, text);
  g_assert_cmpstr (gtk_editable_get_text (GTK_EDITABLE (row)), ==, text);
}

static void
keys_number (GtkWidget *within, const char *title, double number)
{
  GtkWidget *spin = control_of (rows_find (within, title), GTK_TYPE_SPIN_BUTTON);
  g_autofree char *text = g_strdup_printf ("%.*f", gtk_spin_button_get_digits (GTK_SPIN_BUTTON (spin)), number);

  if (!has_number (spin, number))
    type_over (spin, text);
  g_assert_cmpfloat_with_epsilon (number_of (spin), number, 0.005);
}

static void
keys_choose (GtkWidget *within, const char *title, const char *label)
{
  GtkWidget *row = rows_find (within, title);
  int from = (int) adw_combo_row_get_selected (ADW_COMBO_ROW (row)), to = (int) place_of (row, label);

  if (from == to)
    return;
  tab_to (row);
  hands_press ("Return");
  hands_until (has_popover, row);
  hands_press ("Home");
  for (int i = 0; i < to; i++)
    hands_press ("Down");
  hands_press ("Return");
  g_assert_cmpuint (adw_combo_row_get_selected (ADW_COMBO_ROW (row)), ==, to);
}

static void
keys_flag (GtkWidget *within, const char *title, gboolean on)
{
  GtkWidget *row = rows_find (within, title), *toggle = control_of (row, GTK_TYPE_SWITCH);

  if (gtk_switch_get_active (GTK_SWITCH (toggle)) != on) {
    tab_to (row);
    hands_press ("space");
  }
  g_assert_true (gtk_switch_get_active (GTK_SWITCH (toggle)) == on);
}

static void
keys_expand (GtkWidget *within, const char *title)
{
  GtkWidget *row = rows_find (within, title);

  if (!adw_expander_row_get_expanded (ADW_EXPANDER_ROW (row))) {
    tab_to (row);
    hands_press ("space");
  }
  g_assert_true (adw_expander_row_get_expanded (ADW_EXPANDER_ROW (row)));
}

static void
keys_press (GtkWidget *within, const char *label)
{
  tab_to (find_button (within, label));
  hands_press ("space");
}

const Rows rows_by_keys = { keys_line, keys_number, keys_choose, keys_flag, keys_expand, keys_press };
