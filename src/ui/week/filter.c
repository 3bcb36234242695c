/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/week/filter.h"

#include "ui/flow.h"
#include "ui/later.h"

#include <glib/gi18n-lib.h>

typedef struct {
  LapWeekFilter *owner;
  LapWeekSieve   sieve;
  GtkWidget     *button, *label; /* a menu button and its text */
  GtkWidget     *list;           /* the box of ticks in its popover; NULL until that is first opened */
  char         **ids;            /* what the ticks are for */
} Chip;

struct _LapWeekFilter {
  GtkWidget     parent_instance;
  LapWeekScene *scene;
  Chip          chips[LAP_N_SIEVES];
  GtkWidget    *by_room, *by_coach;
  gboolean      filling;
};

G_DEFINE_FINAL_TYPE (LapWeekFilter, lap_week_filter, GTK_TYPE_WIDGET)

static const struct { const char *all, *what; } titles[LAP_N_SIEVES] = {
  { N_("All rooms"), N_("Rooms") }, { N_("All coaches"), N_("Coaches") }, { N_("All kinds"), N_("Kinds") },
};

static int
by_text (gconstpointer a, gconstpointer b)
{
  return g_utf8_collate (*(const char *const *) a, *(const char *const *) b);
}

/* The kinds of the week's classes, each once, sorted. Transfer full. */
static char **
kinds_of (LapWeek *week)
{
  g_autoptr (GHashTable) seen = g_hash_table_new (g_str_hash, g_str_equal);
  GPtrArray *kinds = g_ptr_array_new ();

  for (guint i = 0; i < lap_list_n (week->classes); i++) {
    LapClass *c = lap_list_nth (week->classes, i);

    if (g_hash_table_add (seen, c->kind))
      g_ptr_array_add (kinds, g_strdup (c->kind));
  }
  g_ptr_array_sort (kinds, by_text);
  g_ptr_array_add (kinds, NULL);
  return (char **) g_ptr_array_free (kinds, FALSE);
}

static char **
ids_of (LapWeek *week, LapWeekSieve filter)
{
  LapList *list = filter == LAP_SIEVE_ROOMS ? week->rooms : week->coaches;
  GPtrArray *ids;

  if (filter == LAP_SIEVE_KINDS)
    return kinds_of (week);
  ids = g_ptr_array_new ();
  for (guint i = 0; i < lap_list_n (list); i++) {
    gpointer item = lap_list_nth (list, i);

    g_ptr_array_add (ids, g_strdup (filter == LAP_SIEVE_ROOMS ? LAP_ROOM (item)->id : LAP_COACH (item)->id));
  }
  g_ptr_array_add (ids, NULL);
  return (char **) g_ptr_array_free (ids, FALSE);
}

static const char *
title_of (LapWeek *week, LapWeekSieve filter, const char *id)
{
  if (filter == LAP_SIEVE_ROOMS)
    return lap_room_title (lap_week_room (week, id));
  if (filter == LAP_SIEVE_COACHES)
    return lap_coach_title (lap_week_coach (week, id));
  return id;
}

/* "All coaches", "Mira", "Mira +2". */
static void
name_chip (Chip *chip)
{
  LapWeekScene *scene = chip->owner->scene;
  GHashTable *set = scene->filters[chip->sieve];
  LapWeek *week = lap_week_scene_week (scene);
  guint n = g_hash_table_size (set);
  g_autofree char *text = g_strdup (_(titles[chip->sieve].all)), *spoken = NULL;

  for (guint i = 0; n > 0 && chip->ids[i] != NULL; i++)
    if (g_hash_table_contains (set, chip->ids[i])) {
      g_free (text);
      /* Translators: one that is chosen, and how many more are: "Mira +2". */
      text = n > 1 ? g_strdup_printf (_("%1$s +%2$u"), title_of (week, chip->sieve, chip->ids[i]), n - 1)
                   : g_strdup (title_of (week, chip->sieve, chip->ids[i]));
      break;
    }
  /* Translators: a filter and what is chosen in it: "Coaches: Mira". */
  spoken = g_strdup_printf (_("%1$s: %2$s"), _(titles[chip->sieve].what), text);
  gtk_label_set_text (GTK_LABEL (chip->label), text);
  if (n > 0)
    gtk_widget_add_css_class (chip->button, "chosen");
  else
    gtk_widget_remove_css_class (chip->button, "chosen");
  gtk_accessible_update_property (GTK_ACCESSIBLE (chip->button), GTK_ACCESSIBLE_PROPERTY_LABEL, spoken, -1);
}

static void
checked_cb (Chip *chip, GtkCheckButton *check)
{
  const char *id = g_object_get_data (G_OBJECT (check), "id");

  if (!chip->owner->filling)
    lap_week_scene_filter (chip->owner->scene, chip->sieve, id, gtk_check_button_get_active (check));
}

static void
all_cb (Chip *chip)
{
  lap_week_scene_filter (chip->owner->scene, chip->sieve, NULL, FALSE);
}

static void
make_ticks (Chip *chip)
{
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (chip->list)) != NULL)
    gtk_box_remove (GTK_BOX (chip->list), child);
  for (char **id = chip->ids; *id != NULL; id++) {
    GtkWidget *check = gtk_check_button_new ();

    g_object_set_data_full (G_OBJECT (check), "id", g_strdup (*id), g_free);
    g_signal_connect_swapped (check, "toggled", G_CALLBACK (checked_cb), chip);
    gtk_box_append (GTK_BOX (chip->list), check);
  }
}

/* The ticks say what is chosen. */
static void
set_ticks (Chip *chip)
{
  LapWeekScene *scene = chip->owner->scene;
  GtkWidget *child = gtk_widget_get_first_child (chip->list);

  for (; child != NULL; child = gtk_widget_get_next_sibling (child)) {
    const char *id = g_object_get_data (G_OBJECT (child), "id");

    gtk_check_button_set_label (GTK_CHECK_BUTTON (child), title_of (lap_week_scene_week (scene), chip->sieve, id));
    gtk_check_button_set_active (GTK_CHECK_BUTTON (child), g_hash_table_contains (scene->filters[chip->sieve], id));
  }
}

/* There are other ticks only when there are other rooms, coaches or kinds. */
static void
fill_chip (Chip *chip)
{
  char **ids = ids_of (lap_week_scene_week (chip->owner->scene), chip->sieve);
  gboolean same = chip->ids != NULL && g_strv_equal ((const char *const *) ids, (const char *const *) chip->ids);

  g_strfreev (chip->ids);
  chip->ids = ids;
  if (chip->list != NULL && !same)
    make_ticks (chip);
  if (chip->list != NULL)
    set_ticks (chip);
  gtk_widget_set_visible (chip->button, *ids != NULL);
}

static void
changed_cb (LapWeekFilter *self, guint change)
{
  if (!(change & (LAP_WEEK_PLAN | LAP_WEEK_SHOWN)))
    return;
  self->filling = TRUE;
  for (guint i = 0; i < LAP_N_SIEVES; i++) {
    fill_chip (&self->chips[i]);
    name_chip (&self->chips[i]);
  }
  gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (self->by_coach), self->scene->look.by_coach);
  gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (self->by_room), !self->scene->look.by_coach);
  self->filling = FALSE;
}

static void
lines_cb (LapWeekFilter *self)
{
  if (!self->filling)
    lap_week_scene_set_by_coach (self->scene, gtk_toggle_button_get_active (GTK_TOGGLE_BUTTON (self->by_coach)));
}

static GtkWidget *
build_ticks (gpointer owner)
{
  Chip *chip = owner;
  GtkWidget *popover = gtk_popover_new (), *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 6);
  GtkWidget *all = gtk_button_new_with_label (_("All")), *scroll = gtk_scrolled_window_new ();

  chip->list = gtk_box_new (GTK_ORIENTATION_VERTICAL, 2);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scroll), chip->list);
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scroll), GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_propagate_natural_height (GTK_SCROLLED_WINDOW (scroll), TRUE);
  gtk_scrolled_window_set_max_content_height (GTK_SCROLLED_WINDOW (scroll), 400);
  g_signal_connect_swapped (all, "clicked", G_CALLBACK (all_cb), chip);
  gtk_box_append (GTK_BOX (box), all);
  gtk_box_append (GTK_BOX (box), scroll);
  gtk_popover_set_child (GTK_POPOVER (popover), box);
  make_ticks (chip);
  chip->owner->filling = TRUE;
  set_ticks (chip);
  chip->owner->filling = FALSE;
  return popover;
}

static void
make_chip (LapWeekFilter *self, LapWeekSieve sieve)
{
  Chip *chip = &self->chips[sieve];
  GtkWidget *content = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 4);

  chip->owner = self;
  chip->sieve = sieve;
  chip->label = gtk_label_new (NULL);
  gtk_label_set_ellipsize (GTK_LABEL (chip->label), PANGO_ELLIPSIZE_END);
  gtk_box_append (GTK_BOX (content), chip->label);
  gtk_box_append (GTK_BOX (content), gtk_image_new_from_icon_name ("pan-down-symbolic"));
  chip->button = gtk_menu_button_new ();
  gtk_menu_button_set_child (GTK_MENU_BUTTON (chip->button), content);
  lap_later_popover (GTK_MENU_BUTTON (chip->button), build_ticks, chip);
  gtk_widget_add_css_class (chip->button, "chip");
  gtk_widget_set_parent (chip->button, GTK_WIDGET (self));
}

static void
make_lines (LapWeekFilter *self)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 0);

  self->by_room = gtk_toggle_button_new_with_label (_("By room"));
  self->by_coach = gtk_toggle_button_new_with_label (_("By coach"));
  gtk_toggle_button_set_group (GTK_TOGGLE_BUTTON (self->by_coach), GTK_TOGGLE_BUTTON (self->by_room));
  gtk_widget_add_css_class (box, "linked");
  gtk_widget_add_css_class (self->by_room, "chip");
  gtk_widget_add_css_class (self->by_coach, "chip");
  gtk_box_append (GTK_BOX (box), self->by_room);
  gtk_box_append (GTK_BOX (box), self->by_coach);
  g_signal_connect_swapped (self->by_coach, "toggled", G_CALLBACK (lines_cb), self);
  gtk_widget_set_parent (box, GTK_WIDGET (self));
}

static void
lap_week_filter_dispose (GObject *object)
{
  LapWeekFilter *self = LAP_WEEK_FILTER (object);
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  for (guint i = 0; i < LAP_N_SIEVES; i++)
    g_clear_pointer (&self->chips[i].ids, g_strfreev);
  g_clear_object (&self->scene);
  G_OBJECT_CLASS (lap_week_filter_parent_class)->dispose (object);
}

static void
lap_week_filter_class_init (LapWeekFilterClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = lap_week_filter_dispose;
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (klass), LAP_TYPE_FLOW);
  gtk_widget_class_set_css_name (GTK_WIDGET_CLASS (klass), "week-filter");
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass), GTK_ACCESSIBLE_ROLE_GROUP);
}

static void
lap_week_filter_init (LapWeekFilter *self)
{
  make_lines (self);
  for (LapWeekSieve i = 0; i < LAP_N_SIEVES; i++)
    make_chip (self, i);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, _("What is shown"), -1);
}

GtkWidget *
lap_week_filter_new (LapWeekScene *scene)
{
  LapWeekFilter *self = g_object_new (LAP_TYPE_WEEK_FILTER, NULL);

  self->scene = g_object_ref (scene);
  g_signal_connect_object (scene, "changed", G_CALLBACK (changed_cb), self, G_CONNECT_SWAPPED);
  changed_cb (self, LAP_WEEK_PLAN);
  return GTK_WIDGET (self);
}

GtkWidget *
lap_week_filter_chip (LapWeekFilter *self, LapWeekSieve which)
{
  return self->chips[which].button;
}
