/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A chip is a button with a tick in front of its words while it is on. One that offers words has a menu of them, and
 * says the first of those chosen and how many more there are.
 */
#include "ui/shelf-filter.h"

#include "ui/flow.h"

#include <glib/gi18n-lib.h>

/* Needed by nobody who has a floor and a room. */
#define ALWAYS_THERE (LAP_BIT (LAP_KIT_MAT) | LAP_BIT (LAP_KIT_WALL))

typedef enum { MENU_POSTURE, MENU_REGION, MENU_CARE, MENU_USE, N_MENUS } Menu;

static const struct {
  const LapWords *words;
  const char     *title;  /* of the chip while it is off */
  const char     *format; /* of the chip with one word on */
} menus[N_MENUS] = {
  [MENU_POSTURE] = { &lap_postures, N_("Posture"), N_("%s") },
  [MENU_REGION] = { &lap_regions, N_("Region"), N_("%s") },
  /* Translators: what an exercise spares: "Kind to knees". */
  [MENU_CARE] = { &lap_care_words, N_("Kind to"), N_("Kind to %s") },
  [MENU_USE] = { &lap_uses, N_("For"), N_("%s") },
};

typedef enum { TOGGLE_KIT, TOGGLE_QUIET, N_TOGGLES } Toggle;

typedef struct {
  GtkWidget *button, *tick, *label;
} Chip;

struct _LapShelfFilter {
  GtkWidget parent_instance;
  Chip      toggles[N_TOGGLES], menus[N_MENUS];
  GtkWidget *clear;
  GPtrArray *checks[N_MENUS]; /* GtkCheckButton of each word */
  guint32   masks[N_MENUS], kit;
  gboolean  clearing;
};

enum { CHANGED, N_SIGNALS };
static guint signals[N_SIGNALS];

G_DEFINE_FINAL_TYPE (LapShelfFilter, lap_shelf_filter, GTK_TYPE_WIDGET)

static gboolean
toggled (LapShelfFilter *self, Toggle toggle)
{
  return gtk_toggle_button_get_active (GTK_TOGGLE_BUTTON (self->toggles[toggle].button));
}

static void
show_menu_chip (LapShelfFilter *self, Menu menu)
{
  Chip *chip = &self->menus[menu];
  guint32 mask = self->masks[menu];
  int first = g_bit_nth_lsf (mask, -1);
  guint more = 0;
  g_autofree char *one = NULL, *text = NULL, *said = NULL, *all = lap_words_join (menus[menu].words, mask);

  for (int bit = first; bit >= 0 && (bit = g_bit_nth_lsf (mask, bit)) >= 0;)
    more++;
  if (mask == 0)
    text = g_strdup (_(menus[menu].title));
  else {
    one = g_strdup_printf (_(menus[menu].format), lap_words_label (menus[menu].words, first));
    /* Translators: a word that is chosen, and how many more are: "Standing +2". */
    text = more > 0 ? g_strdup_printf (_("%1$s +%2$u"), one, more) : g_strdup (one);
  }
  /* Translators: a filter and what is chosen in it: "Posture: Standing and Kneeling". */
  said = mask != 0 ? g_strdup_printf (_("%1$s: %2$s"), _(menus[menu].title), all) : g_strdup (text);
  gtk_label_set_text (GTK_LABEL (chip->label), text);
  gtk_widget_set_visible (chip->tick, mask != 0);
  if (mask != 0)
    gtk_widget_add_css_class (chip->button, "chosen");
  else
    gtk_widget_remove_css_class (chip->button, "chosen");
  gtk_accessible_update_property (GTK_ACCESSIBLE (chip->button), GTK_ACCESSIBLE_PROPERTY_LABEL, said, -1);
}

static void
tell (LapShelfFilter *self)
{
  gtk_widget_set_visible (self->clear, lap_shelf_filter_is_on (self));
  g_signal_emit (self, signals[CHANGED], 0);
}

static void
toggled_cb (LapShelfFilter *self, GtkWidget *button)
{
  for (guint i = 0; i < N_TOGGLES; i++)
    if (self->toggles[i].button == button)
      gtk_widget_set_visible (self->toggles[i].tick, toggled (self, i));
  if (!self->clearing)
    tell (self);
}

static void
checked_cb (LapShelfFilter *self, GtkWidget *check)
{
  for (Menu menu = 0; menu < N_MENUS; menu++)
    for (guint i = 0; i < self->checks[menu]->len; i++)
      if (g_ptr_array_index (self->checks[menu], i) == check) {
        if (gtk_check_button_get_active (GTK_CHECK_BUTTON (check)))
          self->masks[menu] |= LAP_BIT (i);
        else
          self->masks[menu] &= ~LAP_BIT (i);
        show_menu_chip (self, menu);
      }
  if (!self->clearing)
    tell (self);
}

static void
dress (LapShelfFilter *self, Chip *chip, const char *text, GtkWidget **content)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 4);

  chip->tick = gtk_image_new_from_icon_name ("object-select-symbolic");
  chip->label = gtk_label_new (text);
  gtk_label_set_ellipsize (GTK_LABEL (chip->label), PANGO_ELLIPSIZE_END);
  gtk_widget_set_visible (chip->tick, FALSE);
  gtk_box_append (GTK_BOX (box), chip->tick);
  gtk_box_append (GTK_BOX (box), chip->label);
  gtk_widget_add_css_class (chip->button, "chip");
  gtk_widget_set_parent (chip->button, GTK_WIDGET (self));
  *content = box;
}

static void
add_toggle (LapShelfFilter *self, Toggle toggle, const char *text)
{
  Chip *chip = &self->toggles[toggle];
  GtkWidget *content;

  chip->button = gtk_toggle_button_new ();
  dress (self, chip, text, &content);
  gtk_button_set_child (GTK_BUTTON (chip->button), content);
  gtk_accessible_update_property (GTK_ACCESSIBLE (chip->button), GTK_ACCESSIBLE_PROPERTY_LABEL, text, -1);
  g_signal_connect_swapped (chip->button, "toggled", G_CALLBACK (toggled_cb), self);
}

static GtkWidget *
make_popover (LapShelfFilter *self, Menu menu)
{
  GtkWidget *popover = gtk_popover_new (), *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 2);

  self->checks[menu] = g_ptr_array_new ();
  for (guint i = 0; i < menus[menu].words->n; i++) {
    const char *label = lap_words_label (menus[menu].words, i);
    GtkWidget *check = gtk_check_button_new_with_label (label);

    gtk_accessible_update_property (GTK_ACCESSIBLE (check), GTK_ACCESSIBLE_PROPERTY_LABEL, label, -1);
    g_signal_connect_swapped (check, "toggled", G_CALLBACK (checked_cb), self);
    g_ptr_array_add (self->checks[menu], check);
    gtk_box_append (GTK_BOX (box), check);
  }
  gtk_popover_set_child (GTK_POPOVER (popover), box);
  return popover;
}

static void
add_menu (LapShelfFilter *self, Menu menu)
{
  Chip *chip = &self->menus[menu];
  GtkWidget *content;

  chip->button = gtk_menu_button_new ();
  dress (self, chip, NULL, &content);
  gtk_menu_button_set_child (GTK_MENU_BUTTON (chip->button), content);
  gtk_menu_button_set_always_show_arrow (GTK_MENU_BUTTON (chip->button), TRUE);
  gtk_menu_button_set_popover (GTK_MENU_BUTTON (chip->button), make_popover (self, menu));
  show_menu_chip (self, menu);
}

static void
lap_shelf_filter_dispose (GObject *object)
{
  LapShelfFilter *self = LAP_SHELF_FILTER (object);
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  for (Menu menu = 0; menu < N_MENUS; menu++)
    g_clear_pointer (&self->checks[menu], g_ptr_array_unref);
  G_OBJECT_CLASS (lap_shelf_filter_parent_class)->dispose (object);
}

static void
lap_shelf_filter_class_init (LapShelfFilterClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_shelf_filter_dispose;
  signals[CHANGED] = g_signal_new ("changed", LAP_TYPE_SHELF_FILTER, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL,
                                   G_TYPE_NONE, 0);
  gtk_widget_class_set_layout_manager_type (widget_class, LAP_TYPE_FLOW);
  gtk_widget_class_set_css_name (widget_class, "shelffilter");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_GROUP);
}

static void
lap_shelf_filter_init (LapShelfFilter *self)
{
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Filters"), -1);
  add_toggle (self, TOGGLE_KIT, _("Kit at hand"));
  add_toggle (self, TOGGLE_QUIET, _("Quiet"));
  for (Menu menu = 0; menu < N_MENUS; menu++)
    add_menu (self, menu);
  self->clear = gtk_button_new_from_icon_name ("edit-clear-all-symbolic");
  gtk_widget_add_css_class (self->clear, "chip");
  gtk_widget_set_tooltip_text (self->clear, _("Clear filters"));
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->clear), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Clear filters"), -1);
  gtk_widget_set_visible (self->clear, FALSE);
  gtk_widget_set_parent (self->clear, GTK_WIDGET (self));
  g_signal_connect_swapped (self->clear, "clicked", G_CALLBACK (lap_shelf_filter_clear), self);
}

LapFilter
lap_shelf_filter_get (LapShelfFilter *self)
{
  LapFilter filter = LAP_FILTER_ANY;

  filter.postures = self->masks[MENU_POSTURE];
  filter.regions = self->masks[MENU_REGION];
  filter.without = self->masks[MENU_CARE];
  filter.uses = self->masks[MENU_USE];
  filter.has_kit = toggled (self, TOGGLE_KIT);
  filter.kit = self->kit | ALWAYS_THERE;
  filter.quiet = toggled (self, TOGGLE_QUIET);
  return filter;
}

gboolean
lap_shelf_filter_is_on (LapShelfFilter *self)
{
  gboolean on = FALSE;

  for (Menu menu = 0; menu < N_MENUS; menu++)
    on = on || self->masks[menu] != 0;
  return on || toggled (self, TOGGLE_KIT) || toggled (self, TOGGLE_QUIET);
}

void
lap_shelf_filter_clear (LapShelfFilter *self)
{
  self->clearing = TRUE;
  for (guint i = 0; i < N_TOGGLES; i++)
    gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (self->toggles[i].button), FALSE);
  for (Menu menu = 0; menu < N_MENUS; menu++)
    for (guint i = 0; i < self->checks[menu]->len; i++)
      gtk_check_button_set_active (g_ptr_array_index (self->checks[menu], i), FALSE);
  self->clearing = FALSE;
  tell (self);
}

void
lap_shelf_filter_set_kit (LapShelfFilter *self, guint32 kit)
{
  const char *text = kit & ~ALWAYS_THERE ? _("Kit at hand") : _("No kit");

  if (kit == self->kit && g_str_equal (text, gtk_label_get_text (GTK_LABEL (self->toggles[TOGGLE_KIT].label))))
    return;
  self->kit = kit;
  gtk_label_set_text (GTK_LABEL (self->toggles[TOGGLE_KIT].label), text);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->toggles[TOGGLE_KIT].button), GTK_ACCESSIBLE_PROPERTY_LABEL, text,
                                  -1);
  if (toggled (self, TOGGLE_KIT))
    tell (self);
}
