/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/tile.h"

#include "ui/letters.h"
#include "ui/figures.h"
#include "ui/palette.h"
#include "ui/picture.h"
#include "ui/score/paint.h"

#include <adwaita.h>
#include <glib/gi18n-lib.h>

struct _LapTile {
  GtkWidget     parent_instance;
  LapCatalogue *catalogue;
  LapExercise  *exercise;
  PangoLayout  *name;
};

G_DEFINE_FINAL_TYPE (LapTile, lap_tile, GTK_TYPE_WIDGET)

#define EDGE   5   /* px inside the tile */
#define GAP    3   /* px between the line and the name */
#define FIGURE 2.9 /* lines of text that a figure is high */
#define WIDE   4.7 /* lines of text that a tile is wide at least */

static int
figure_height (int line)
{
  return FIGURE * line;
}

int
lap_tile_height (int line)
{
  return 2 * EDGE + figure_height (line) + GAP + 2 * line;
}

int
lap_tile_width (int line)
{
  return WIDE * line;
}

static void
draw_figure (LapTile *self, GtkSnapshot *snapshot, int width, int ground)
{
  GdkRGBA line = lap_colour (LAP_COLOUR_LINE2);
  int height = ground - EDGE, wide = MIN (width - 2 * EDGE, 2 * height) / 8 * 8;
  GskRenderNode *picture;

  lap_paint_rect (snapshot, &line, EDGE + 3, ground, width - 2 * (EDGE + 3), 1);
  if (wide <= 0 || height <= 0)
    return;
  picture = lap_figure_picture (self->catalogue, self->exercise, wide, height,
                                gtk_widget_get_scale_factor (GTK_WIDGET (self)), FALSE);
  if (picture != NULL)
    lap_picture_draw (picture, snapshot, (width - wide) / 2, EDGE);
}

static void
lap_tile_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  LapTile *self = LAP_TILE (widget);
  int line = lap_text_line (widget), width = gtk_widget_get_width (widget), ground = EDGE + figure_height (line);
  int room = gtk_widget_get_height (widget) - ground - GAP - EDGE, height;
  GdkRGBA ink = lap_colour (LAP_COLOUR_INK);

  if (self->exercise == NULL)
    return;
  draw_figure (self, snapshot, width, ground);
  pango_layout_set_width (self->name, (width - 2 * EDGE) * PANGO_SCALE);
  pango_layout_get_pixel_size (self->name, NULL, &height);
  lap_paint_text (snapshot, self->name, &ink, EDGE, ground + GAP + MAX (0, room - height) / 2);
}

static void
lap_tile_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *least, int *natural,
                  int *least_baseline, int *natural_baseline)
{
  int line = lap_text_line (widget);

  *least = *natural = orientation == GTK_ORIENTATION_VERTICAL ? lap_tile_height (line) : lap_tile_width (line);
}

/* A new font or direction. */
static void
make_name (LapTile *self)
{
  g_clear_object (&self->name);
  self->name = gtk_widget_create_pango_layout (GTK_WIDGET (self), "");
  pango_layout_set_alignment (self->name, PANGO_ALIGN_CENTER);
  pango_layout_set_wrap (self->name, PANGO_WRAP_WORD_CHAR);
  pango_layout_set_ellipsize (self->name, PANGO_ELLIPSIZE_END);
  pango_layout_set_height (self->name, -2);
  if (self->exercise != NULL)
    pango_layout_set_text (self->name, lap_exercise_name (self->exercise), -1);
}

static void
lap_tile_css_changed (GtkWidget *widget, GtkCssStyleChange *change)
{
  GTK_WIDGET_CLASS (lap_tile_parent_class)->css_changed (widget, change);
  make_name (LAP_TILE (widget));
}

static void
lap_tile_dispose (GObject *object)
{
  LapTile *self = LAP_TILE (object);

  g_clear_object (&self->name);
  g_clear_pointer (&self->exercise, lap_exercise_unref);
  g_clear_pointer (&self->catalogue, lap_catalogue_unref);
  G_OBJECT_CLASS (lap_tile_parent_class)->dispose (object);
}

static void
lap_tile_class_init (LapTileClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_tile_dispose;
  widget_class->snapshot = lap_tile_snapshot;
  widget_class->measure = lap_tile_measure;
  widget_class->css_changed = lap_tile_css_changed;
  gtk_widget_class_set_css_name (widget_class, "tile");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_LIST_ITEM);
}

static void
lap_tile_init (LapTile *self)
{
  AdwStyleManager *manager = adw_style_manager_get_default ();

  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_HIDDEN);
  g_signal_connect_object (manager, "notify::dark", G_CALLBACK (gtk_widget_queue_draw), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (manager, "notify::high-contrast", G_CALLBACK (gtk_widget_queue_draw), self,
                           G_CONNECT_SWAPPED);
}

GtkWidget *
lap_tile_new (void)
{
  return g_object_new (LAP_TYPE_TILE, NULL);
}

char *
lap_exercise_told (const LapExercise *exercise)
{
  g_autofree char *muscles = lap_words_join (&lap_muscles, exercise->primary_mask);
  g_autofree char *kit = lap_words_join (&lap_kit_words, exercise->kit_mask);
  g_autoptr (GString) text = g_string_new (NULL);

  g_string_append_printf (text, _("%s."), lap_words_label (&lap_postures, exercise->posture));
  if (*muscles != '\0') {
    g_string_append_c (text, ' ');
    /* Translators: the muscles an exercise works hard. */
    g_string_append_printf (text, _("Works: %s."), muscles);
  }
  if (*kit != '\0') {
    g_string_append_c (text, ' ');
    /* Translators: the kit an exercise needs. */
    g_string_append_printf (text, _("Needs: %s."), kit);
  }
  return g_string_free (g_steal_pointer (&text), FALSE);
}

void
lap_tile_show (LapTile *self, LapCatalogue *catalogue, LapExercise *exercise)
{
  g_autofree char *told = exercise != NULL ? lap_exercise_told (exercise) : NULL;
  g_autofree char *tip = exercise != NULL ? g_strdup_printf ("%s\n%s", lap_exercise_name (exercise), told) : NULL;

  g_clear_pointer (&self->exercise, lap_exercise_unref);
  g_clear_pointer (&self->catalogue, lap_catalogue_unref);
  if (exercise != NULL) {
    self->exercise = lap_exercise_ref (exercise);
    self->catalogue = lap_catalogue_ref (catalogue);
    gtk_widget_set_tooltip_text (GTK_WIDGET (self), tip);
    gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, lap_exercise_name (exercise),
                                    GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, told, -1);
  }
  if (self->name != NULL)
    pango_layout_set_text (self->name, exercise != NULL ? lap_exercise_name (exercise) : "", -1);
  else
    make_name (self);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

LapExercise *
lap_tile_exercise (LapTile *self)
{
  return self->exercise;
}

void
lap_tile_number (LapTile *self, int position, int of)
{
  gtk_accessible_update_relation (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_RELATION_POS_IN_SET, position,
                                  GTK_ACCESSIBLE_RELATION_SET_SIZE, of, -1);
}
