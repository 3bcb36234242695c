/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/week/labels.h"

#include "base/customs.h"
#include "ui/palette.h"
#include "ui/score/paint.h"
#include "ui/week/card.h"
#include "ui/week/words.h"

#include <glib/gi18n-lib.h>
#include <math.h>

#define GAP   8  /* px between a day and its lines, and before the strip */
#define SMALL 0.85 /* of the usual size of letters: dates, lines, hours. As in cards: each size is found, hinted and
                    * drawn for itself, which the first frame waits for. */
#define MOST  96 /* px of the name of a room at the usual size of letters */

struct _LapWeekLabels {
  GtkWidget     parent_instance;
  LapWeekScene *scene;
};

struct _LapWeekHours {
  GtkWidget     parent_instance;
  LapWeekScene *scene;
};

G_DEFINE_FINAL_TYPE (LapWeekLabels, lap_week_labels, GTK_TYPE_WIDGET)
G_DEFINE_FINAL_TYPE (LapWeekHours, lap_week_hours, GTK_TYPE_WIDGET)

static PangoLayout *
layout_new (GtkWidget *widget, const char *text, double scale, gboolean bold)
{
  PangoLayout *layout = gtk_widget_create_pango_layout (widget, text);
  g_autoptr (PangoAttrList) attrs = pango_attr_list_new ();

  pango_attr_list_insert (attrs, pango_attr_scale_new (scale));
  if (bold)
    pango_attr_list_insert (attrs, pango_attr_weight_new (PANGO_WEIGHT_BOLD));
  pango_layout_set_attributes (layout, attrs);
  pango_layout_set_ellipsize (layout, PANGO_ELLIPSIZE_END);
  return layout;
}

static const char *
row_title (const LapWeekScore *score, const LapWeekRow *row)
{
  if (row->title != NULL)
    return row->title;
  return score->look.by_coach ? _("No coach") : _("No room");
}

static int
width_of (PangoLayout *layout)
{
  int width;

  pango_layout_get_pixel_size (layout, &width, NULL);
  return width;
}

/* px of the days, and of the names of the lines. */
static void
columns (LapWeekLabels *self, int *days, int *rows)
{
  const LapWeekScore *score = self->scene->score;
  int most = lround (MOST * self->scene->look.line / 16);

  *days = *rows = 0;
  for (guint b = 0; score->look.day < 0 && b < score->n_bands; b++) {
    g_autofree char *day = lap_short_day_text (score->bands[b].day);
    g_autofree char *date = score->bands[b].date != 0 ? lap_short_date_text (score->bands[b].date) : g_strdup ("");
    g_autoptr (PangoLayout) one = layout_new (GTK_WIDGET (self), day, 1, TRUE);
    g_autoptr (PangoLayout) other = layout_new (GTK_WIDGET (self), date, SMALL, FALSE);

    *days = MAX (*days, MAX (width_of (one), width_of (other)) + GAP);
  }
  for (guint r = 0; r < score->bands[0].n_rows; r++) {
    g_autoptr (PangoLayout) layout = layout_new (GTK_WIDGET (self), row_title (score, &score->rows[r]), SMALL, FALSE);

    *rows = MAX (*rows, MIN (width_of (layout), most));
  }
}

static void
lap_week_labels_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *least, int *natural,
                         int *least_baseline, int *natural_baseline)
{
  LapWeekLabels *self = LAP_WEEK_LABELS (widget);
  int days, rows;

  *least = *natural = self->scene->score->height;
  if (orientation == GTK_ORIENTATION_VERTICAL)
    return;
  columns (self, &days, &rows);
  *least = *natural = days + rows + GAP;
}

/* Hardest class of a day that is held, -1 without. */
static int
day_strain (const LapWeekScore *score, guint band)
{
  int strain = -1;

  for (guint i = 0; i < score->n; i++)
    if (score->rows[score->boxes[i].row].band == band && !score->boxes[i].off)
      strain = MAX (strain, score->boxes[i].strain);
  return strain;
}

static void
draw_day (LapWeekLabels *self, GtkSnapshot *snapshot, guint index, int width, int days)
{
  const LapWeekScore *score = self->scene->score;
  const LapWeekBand *band = &score->bands[index];
  gboolean mirrored = gtk_widget_get_direction (GTK_WIDGET (self)) == GTK_TEXT_DIR_RTL;
  GdkRGBA ink = lap_colour (LAP_COLOUR_INK), ink2 = lap_colour (LAP_COLOUR_INK2);
  g_autofree char *day = lap_short_day_text (band->day);
  g_autofree char *date = band->date != 0 ? lap_short_date_text (band->date) : NULL;
  g_autoptr (PangoLayout) name = layout_new (GTK_WIDGET (self), day, 1, TRUE);
  int y = band->y + 6, height, crest = lround (score->look.line * 0.8), strain = day_strain (score, index);

  lap_paint_text (snapshot, name, &ink, mirrored ? width - width_of (name) : 0, y);
  pango_layout_get_pixel_size (name, NULL, &height);
  y += height;
  if (date != NULL) {
    g_autoptr (PangoLayout) below = layout_new (GTK_WIDGET (self), date, SMALL, FALSE);

    lap_paint_text (snapshot, below, &ink2, mirrored ? width - width_of (below) : 0, y);
    pango_layout_get_pixel_size (below, NULL, &height);
    y += height;
  }
  if (strain >= 0 && y + crest + 6 < band->y + band->height) {
    cairo_t *cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, y, width, crest + 6));

    lap_week_crests_draw (cr, strain, mirrored ? width - 2 : 2, y + crest + 3, crest, mirrored);
    cairo_destroy (cr);
  }
}

static void
lap_week_labels_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  LapWeekLabels *self = LAP_WEEK_LABELS (widget);
  const LapWeekScore *score = self->scene->score;
  gboolean mirrored = gtk_widget_get_direction (widget) == GTK_TEXT_DIR_RTL;
  int width = gtk_widget_get_width (widget), days, rows;
  GdkRGBA ink2 = lap_colour (LAP_COLOUR_INK2), line = lap_colour (LAP_COLOUR_LINE);

  columns (self, &days, &rows);
  for (guint b = 0; b < score->n_bands; b++) {
    if (b > 0)
      lap_paint_rect (snapshot, &line, 0, score->bands[b].y, width, 1);
    if (days > 0)
      draw_day (self, snapshot, b, width, days);
  }
  for (guint r = 0; r < score->n_rows; r++) {
    g_autoptr (PangoLayout) layout = layout_new (widget, row_title (score, &score->rows[r]), SMALL, FALSE);
    int height;

    pango_layout_set_width (layout, rows * PANGO_SCALE);
    pango_layout_set_alignment (layout, mirrored ? PANGO_ALIGN_LEFT : PANGO_ALIGN_RIGHT);
    pango_layout_set_auto_dir (layout, FALSE);
    pango_layout_get_pixel_size (layout, NULL, &height);
    /* Its line goes on where the name ends. */
    lap_paint_text (snapshot, layout, &ink2, mirrored ? GAP : width - GAP - rows,
                    score->rows[r].y + score->crest + score->bar - height / 2.0 - 1);
  }
}

static void
redraw_cb (GtkWidget *widget, guint change)
{
  if (change & (LAP_WEEK_PLAN | LAP_WEEK_SHOWN))
    gtk_widget_queue_resize (widget);
  gtk_widget_queue_draw (widget);
}

static void
lap_week_labels_dispose (GObject *object)
{
  g_clear_object (&LAP_WEEK_LABELS (object)->scene);
  G_OBJECT_CLASS (lap_week_labels_parent_class)->dispose (object);
}

static void
lap_week_labels_class_init (LapWeekLabelsClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_week_labels_dispose;
  widget_class->measure = lap_week_labels_measure;
  widget_class->snapshot = lap_week_labels_snapshot;
  gtk_widget_class_set_css_name (widget_class, "week-labels");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_PRESENTATION);
}

static void
lap_week_labels_init (LapWeekLabels *self)
{
}

GtkWidget *
lap_week_labels_new (LapWeekScene *scene)
{
  LapWeekLabels *self = g_object_new (LAP_TYPE_WEEK_LABELS, NULL);

  self->scene = g_object_ref (scene);
  g_signal_connect_object (scene, "changed", G_CALLBACK (redraw_cb), self, G_CONNECT_SWAPPED);
  return GTK_WIDGET (self);
}

/* Hours */

static int
line_height (GtkWidget *widget)
{
  g_autoptr (PangoLayout) layout = layout_new (widget, "0", SMALL, FALSE);
  int height;

  pango_layout_get_pixel_size (layout, NULL, &height);
  return height;
}

static void
lap_week_hours_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *least, int *natural,
                        int *least_baseline, int *natural_baseline)
{
  *least = *natural = orientation == GTK_ORIENTATION_HORIZONTAL ? 1 : line_height (widget) + 8;
}

static void
lap_week_hours_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  LapWeekHours *self = LAP_WEEK_HOURS (widget);
  const LapWeekScore *score = self->scene->score;
  const LapAxis *axis = self->scene->axis;
  int width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);
  int step = lap_week_scene_step (self->scene);
  GdkRGBA ink2 = lap_colour (LAP_COLOUR_INK2), ink = lap_colour (LAP_COLOUR_INK);
  double left = axis->mirrored ? width - axis->view : 0, before = -1, after = -1; /* ends of the label before */

  lap_paint_rect (snapshot, &ink, 0, height - 2, width, 1);
  for (int minute = (score->first + step - 1) / step * step; minute <= score->last; minute += step) {
    g_autofree char *text = lap_time_of_day_text (minute);
    g_autoptr (PangoLayout) layout = layout_new (widget, text, SMALL, FALSE);
    double x = round (left + lap_week_score_x (score, axis, minute)), wide = width_of (layout);
    double at = CLAMP (x - wide / 2, 0, MAX (0, width - wide));

    if (x < 0 || x > width)
      continue;
    lap_paint_rect (snapshot, &ink, MIN (x, width - 1), height - 6, 1, 4);
    if (before >= 0 && at < after + 4 && before < at + wide + 4)
      continue;
    lap_paint_text (snapshot, layout, &ink2, at, 0);
    before = at;
    after = at + wide;
  }
}

static void
lap_week_hours_dispose (GObject *object)
{
  g_clear_object (&LAP_WEEK_HOURS (object)->scene);
  G_OBJECT_CLASS (lap_week_hours_parent_class)->dispose (object);
}

static void
lap_week_hours_class_init (LapWeekHoursClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_week_hours_dispose;
  widget_class->measure = lap_week_hours_measure;
  widget_class->snapshot = lap_week_hours_snapshot;
  gtk_widget_class_set_css_name (widget_class, "week-hours");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_PRESENTATION);
}

static void
lap_week_hours_init (LapWeekHours *self)
{
  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_HIDDEN);
}

GtkWidget *
lap_week_hours_new (LapWeekScene *scene)
{
  LapWeekHours *self = g_object_new (LAP_TYPE_WEEK_HOURS, NULL);

  self->scene = g_object_ref (scene);
  g_signal_connect_object (scene, "changed", G_CALLBACK (gtk_widget_queue_draw), self, G_CONNECT_SWAPPED);
  return GTK_WIDGET (self);
}
