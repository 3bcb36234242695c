/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Widgets are bound to boxes as soon as the scene changes, and placed when the strip is laid out: a child that comes
 * in the middle of a layout asks all above it for a new size.
 */
#include "ui/week/strip.h"

#include "ui/palette.h"
#include "ui/score/paint.h"
#include "ui/shortcuts.h"
#include "ui/week/ground.h"

#include <glib/gi18n-lib.h>

#define BEYOND 200 /* px above and below the view in which classes are widgets already */
#define MARGIN 12  /* px above and below a class that is scrolled to */

struct _LapWeekStrip {
  GtkWidget      parent_instance;
  LapWeekScene  *scene;
  GtkAdjustment *across;
  GHashTable    *live; /* key -> LapWeekCard that shows it */
  GPtrArray     *free; /* LapWeekCard that show nothing, transfer none: children */
  char          *tag;
  double         tag_x, tag_y;
};

G_DEFINE_FINAL_TYPE (LapWeekStrip, lap_week_strip, GTK_TYPE_WIDGET)

GtkWidget *
lap_week_strip_find (LapWeekStrip *self, const char *id)
{
  return id != NULL ? g_hash_table_lookup (self->live, id) : NULL;
}

guint
lap_week_strip_n_live (LapWeekStrip *self)
{
  return g_hash_table_size (self->live);
}

LapWeekScene *
lap_week_strip_scene (LapWeekStrip *self)
{
  return self->scene;
}

/* Which classes are widgets */

/* Of a class that is in the week twice, moved here from another one, the second has a widget of its own. */
static char *
key_of (const LapWeekBox *box)
{
  return box->nth == 0 ? g_strdup (box->c->id) : g_strdup_printf ("%s\n%u", box->c->id, box->nth);
}

static gboolean
is_wanted (LapWeekStrip *self, guint i)
{
  const LapWeekBox *box = &self->scene->score->boxes[i];
  double from = gtk_adjustment_get_value (self->across), to = from + gtk_adjustment_get_page_size (self->across);
  LapWeekPlaced placed;

  if (g_strcmp0 (box->c->id, self->scene->current) == 0)
    return TRUE;
  if (box->y + self->scene->score->cell < from - BEYOND || box->y > MAX (to, 1) + BEYOND)
    return FALSE;
  placed = lap_week_score_place (self->scene->score, self->scene->axis, i);
  return MAX (placed.x + placed.width, placed.words_x + placed.words_width) > 0 &&
         MIN (placed.x, placed.words_x) < self->scene->axis->view;
}

static LapWeekCard *
card_for (LapWeekStrip *self, const LapWeekBox *box)
{
  g_autofree char *key = key_of (box);
  GtkWidget *card = lap_week_strip_find (self, key);

  if (card != NULL)
    return LAP_WEEK_CARD (card);
  if (self->free->len > 0)
    card = g_ptr_array_steal_index (self->free, self->free->len - 1);
  else {
    card = lap_week_card_new (self->scene);
    gtk_widget_set_parent (card, GTK_WIDGET (self));
  }
  gtk_widget_set_child_visible (card, TRUE);
  g_hash_table_insert (self->live, g_steal_pointer (&key), card);
  return LAP_WEEK_CARD (card);
}

/* Lets go the widgets of classes that aren't in @wanted (ids). */
static void
release (LapWeekStrip *self, GHashTable *wanted)
{
  GHashTableIter iter;
  gpointer id, card;

  g_hash_table_iter_init (&iter, self->live);
  while (g_hash_table_iter_next (&iter, &id, &card)) {
    if (g_hash_table_contains (wanted, id))
      continue;
    lap_week_card_bind (card, LAP_NO_WEEK_BOX, 0, 0);
    gtk_widget_set_child_visible (card, FALSE);
    g_ptr_array_add (self->free, card);
    g_hash_table_iter_remove (&iter);
  }
}

/* Who reads the children one after another reads days, lines and times in their order. */
static void
bind_all (LapWeekStrip *self)
{
  g_autoptr (GHashTable) wanted = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  g_autoptr (GArray) boxes = g_array_new (FALSE, FALSE, sizeof (guint));
  const LapWeekScore *score = self->scene->score;
  GtkWidget *before = NULL;

  if (self->scene->pango == NULL)
    return;
  for (guint i = 0; i < score->n; i++)
    if (is_wanted (self, i)) {
      g_hash_table_add (wanted, key_of (&score->boxes[i]));
      g_array_append_val (boxes, i);
    }
  release (self, wanted);
  for (guint i = 0; i < boxes->len; i++) {
    guint box = g_array_index (boxes, guint, i);
    LapWeekCard *card = card_for (self, &score->boxes[box]);

    lap_week_card_bind (card, box, box + 1, score->n);
    if (gtk_widget_get_prev_sibling (GTK_WIDGET (card)) != before)
      gtk_widget_insert_after (GTK_WIDGET (card), GTK_WIDGET (self), before);
    before = GTK_WIDGET (card);
  }
}

static void
place_all (LapWeekStrip *self)
{
  GHashTableIter iter;
  gpointer card;

  g_hash_table_iter_init (&iter, self->live);
  while (g_hash_table_iter_next (&iter, NULL, &card)) {
    GdkRectangle area;

    lap_week_card_area (card, &area);
    gtk_widget_measure (card, GTK_ORIENTATION_HORIZONTAL, -1, NULL, NULL, NULL, NULL);
    gtk_widget_size_allocate (card, &area, -1);
  }
}

static void
lap_week_strip_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *least, int *natural,
                        int *least_baseline, int *natural_baseline)
{
  *least = orientation == GTK_ORIENTATION_HORIZONTAL ? 80 : LAP_WEEK_STRIP (widget)->scene->score->height;
  *natural = orientation == GTK_ORIENTATION_HORIZONTAL ? 600 : *least;
}

static void
lap_week_strip_size_allocate (GtkWidget *widget, int width, int height, int baseline)
{
  LapWeekStrip *self = LAP_WEEK_STRIP (widget);

  lap_week_scene_set_view (self->scene, width, gtk_widget_get_direction (widget) == GTK_TEXT_DIR_RTL);
  bind_all (self);
  place_all (self);
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL; child = gtk_widget_get_next_sibling (child))
    if (GTK_IS_POPOVER (child))
      gtk_popover_present (GTK_POPOVER (child));
}

/* The focus */

static LapWeekCard *
focused (LapWeekStrip *self)
{
  GtkWidget *focus = gtk_widget_get_focus_child (GTK_WIDGET (self));

  return focus != NULL && LAP_IS_WEEK_CARD (focus) ? LAP_WEEK_CARD (focus) : NULL;
}

static void
scroll_to (LapWeekStrip *self, guint box)
{
  double y = self->scene->score->boxes[box].y, page = gtk_adjustment_get_page_size (self->across);
  double value = gtk_adjustment_get_value (self->across);

  /* What the strip asks for may not have been given yet. */
  gtk_adjustment_set_upper (self->across, MAX (gtk_adjustment_get_upper (self->across), self->scene->score->height));
  if (y - MARGIN < value)
    gtk_adjustment_set_value (self->across, y - MARGIN);
  else if (y + self->scene->score->cell + MARGIN > value + page)
    gtk_adjustment_set_value (self->across, y + self->scene->score->cell + MARGIN - page);
}

void
lap_week_strip_reveal (LapWeekStrip *self)
{
  guint box = lap_week_scene_box (self->scene);

  if (box != LAP_NO_WEEK_BOX)
    scroll_to (self, box);
}

void
lap_week_strip_take_focus (LapWeekStrip *self)
{
  guint box = lap_week_scene_box (self->scene);
  GtkWidget *card;

  gtk_widget_set_focusable (GTK_WIDGET (self), box == LAP_NO_WEEK_BOX);
  if (box == LAP_NO_WEEK_BOX) {
    gtk_widget_grab_focus (GTK_WIDGET (self));
    return;
  }
  scroll_to (self, box);
  bind_all (self);
  card = lap_week_strip_find (self, self->scene->current);
  if (card == NULL)
    return;
  if (gtk_widget_get_width (card) == 0)
    place_all (self);
  gtk_widget_grab_focus (card);
}

/* One stop of Tab for all classes; the arrows go on from there. */
static gboolean
lap_week_strip_focus (GtkWidget *widget, GtkDirectionType direction)
{
  LapWeekStrip *self = LAP_WEEK_STRIP (widget);
  LapWeekCard *focus = focused (self);

  if (gtk_widget_has_focus (widget) || (focus != NULL && gtk_widget_has_focus (GTK_WIDGET (focus))))
    return FALSE;
  if (gtk_widget_get_width (widget) == 0) /* a window that comes up looks for a focus before it is laid out */
    return FALSE;
  /* What is selected elsewhere, among those without a day, stays so. */
  if (self->scene->current == NULL && self->scene->score->n > 0)
    lap_week_scene_pick (self->scene, self->scene->score->boxes[0].c->id, LAP_PICK_ONLY);
  lap_week_strip_take_focus (self);
  return TRUE;
}

static void
changed_cb (LapWeekStrip *self, guint change)
{
  LapWeekCard *focus = focused (self);
  gboolean had = gtk_widget_has_focus (GTK_WIDGET (self)) || focus != NULL;

  gtk_widget_queue_draw (GTK_WIDGET (self));
  if (self->scene->pango == NULL || change == LAP_WEEK_GHOSTS)
    return;
  bind_all (self);
  if (change & LAP_WEEK_PLAN)
    gtk_widget_queue_resize (GTK_WIDGET (self));
  if (had && (change & LAP_WEEK_SELECTION || focused (self) == NULL))
    lap_week_strip_take_focus (self);
  gtk_widget_queue_allocate (GTK_WIDGET (self));
}

static void
scrolled_cb (LapWeekStrip *self)
{
  bind_all (self);
  gtk_widget_queue_allocate (GTK_WIDGET (self));
}

/* Drawing */

static void
draw_tag (LapWeekStrip *self, GtkSnapshot *snapshot)
{
  g_autoptr (PangoLayout) layout = gtk_widget_create_pango_layout (GTK_WIDGET (self), self->tag);
  GdkRGBA ink = lap_colour (LAP_COLOUR_INK), paper = lap_colour (LAP_COLOUR_PAPER);
  int width, height, x, y;

  pango_layout_get_pixel_size (layout, &width, &height);
  x = CLAMP (self->tag_x - width / 2.0, 8, MAX (8, gtk_widget_get_width (GTK_WIDGET (self)) - width - 8));
  y = self->tag_y - height - 22;
  if (y < gtk_adjustment_get_value (self->across) + 4)
    y = self->tag_y + 28;
  lap_paint_rect (snapshot, &ink, x - 7, y - 4, width + 14, height + 8);
  lap_paint_text (snapshot, layout, &paper, x, y);
}

static void
lap_week_strip_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  LapWeekStrip *self = LAP_WEEK_STRIP (widget);

  if (self->scene->pango == NULL)
    return;
  lap_week_ground_draw (self->scene, snapshot, gtk_widget_get_width (widget));
  GTK_WIDGET_CLASS (lap_week_strip_parent_class)->snapshot (widget, snapshot);
  lap_week_ghosts_draw (self->scene, snapshot);
  if (gtk_widget_has_focus (widget) && gtk_widget_has_visible_focus (widget)) {
    GdkRGBA ink = lap_colour (LAP_COLOUR_INK);
    cairo_t *cr = gtk_snapshot_append_cairo (
      snapshot, &GRAPHENE_RECT_INIT (0, 0, gtk_widget_get_width (widget), gtk_widget_get_height (widget)));

    lap_paint_box (cr, NULL, &ink, 2, 6, 1, 1, gtk_widget_get_width (widget) - 2, gtk_widget_get_height (widget) - 2);
    cairo_destroy (cr);
  }
  if (self->tag != NULL)
    draw_tag (self, snapshot);
}

/* Letters come with the style; and again with another style, or larger text. */
static void
lap_week_strip_css_changed (GtkWidget *widget, GtkCssStyleChange *change)
{
  GTK_WIDGET_CLASS (lap_week_strip_parent_class)->css_changed (widget, change);
  lap_week_scene_set_letters (LAP_WEEK_STRIP (widget)->scene, gtk_widget_get_pango_context (widget));
}

static void
lap_week_strip_system_setting_changed (GtkWidget *widget, GtkSystemSetting setting)
{
  GTK_WIDGET_CLASS (lap_week_strip_parent_class)->system_setting_changed (widget, setting);
  if (setting != GTK_SYSTEM_SETTING_DISPLAY)
    lap_week_scene_set_letters (LAP_WEEK_STRIP (widget)->scene, gtk_widget_get_pango_context (widget));
}

static void
lap_week_strip_dispose (GObject *object)
{
  LapWeekStrip *self = LAP_WEEK_STRIP (object);
  GtkWidget *child;

  g_hash_table_remove_all (self->live);
  g_ptr_array_set_size (self->free, 0);
  while ((child = gtk_widget_get_first_child (GTK_WIDGET (self))) != NULL)
    gtk_widget_unparent (child);
  if (self->scene != NULL)
    self->scene->pango = NULL;
  g_clear_object (&self->across);
  g_clear_object (&self->scene);
  g_clear_pointer (&self->tag, g_free);
  G_OBJECT_CLASS (lap_week_strip_parent_class)->dispose (object);
}

static void
lap_week_strip_finalize (GObject *object)
{
  LapWeekStrip *self = LAP_WEEK_STRIP (object);

  g_hash_table_unref (self->live);
  g_ptr_array_unref (self->free);
  G_OBJECT_CLASS (lap_week_strip_parent_class)->finalize (object);
}

static void
lap_week_strip_class_init (LapWeekStripClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_week_strip_dispose;
  G_OBJECT_CLASS (klass)->finalize = lap_week_strip_finalize;
  widget_class->measure = lap_week_strip_measure;
  widget_class->size_allocate = lap_week_strip_size_allocate;
  widget_class->focus = lap_week_strip_focus;
  widget_class->snapshot = lap_week_strip_snapshot;
  widget_class->css_changed = lap_week_strip_css_changed;
  widget_class->system_setting_changed = lap_week_strip_system_setting_changed;
  lap_shortcuts_bind_class (widget_class, LAP_SCOPE_WEEK);
  gtk_widget_class_set_css_name (widget_class, "week-strip");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_LIST);
}

static void
lap_week_strip_init (LapWeekStrip *self)
{
  self->live = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  self->free = g_ptr_array_new ();
  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_HIDDEN);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Classes of the week"), -1);
}

GtkWidget *
lap_week_strip_new (LapWeekScene *scene, GtkAdjustment *across)
{
  LapWeekStrip *self = g_object_new (LAP_TYPE_WEEK_STRIP, NULL);

  self->scene = g_object_ref (scene);
  self->across = g_object_ref (across);
  g_signal_connect_object (scene, "changed", G_CALLBACK (changed_cb), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (across, "value-changed", G_CALLBACK (scrolled_cb), self, G_CONNECT_SWAPPED);
  return GTK_WIDGET (self);
}

void
lap_week_strip_set_tag (LapWeekStrip *self, const char *tag, double x, double y)
{
  if (tag != self->tag) {
    g_free (self->tag);
    self->tag = g_strdup (tag);
  }
  self->tag_x = x;
  self->tag_y = y;
  gtk_widget_queue_draw (GTK_WIDGET (self));
}
