/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/balance.h"

#include "effort/balance.h"
#include "ui/palette.h"
#include "ui/score/paint.h"

#include <adwaita.h>
#include <glib/gi18n-lib.h>

/* px between columns, and in front of the two pairs below the regions. */
#define GAP 8
#define SPACE 10
/* The bar of hard work is so much of the height of a row, the one of help so much. */
#define BAR 0.55
#define HELP 0.35
/* A name may take so much of the width before it goes on in a second line. */
#define NAME_SHARE 0.45

#define N_PAIRS 4
#define N_ROWS (LAP_N_REGIONS + N_PAIRS)

static const char *const pair_names[N_PAIRS] = {
  N_("Push"), N_("Pull"), N_("Front of the legs"), N_("Back of the legs"),
};

struct _LapBalanceChart {
  GtkWidget  parent_instance;
  LapBalance balance;
  char      *words;
};

G_DEFINE_FINAL_TYPE (LapBalanceChart, lap_balance_chart, GTK_TYPE_WIDGET)

/* One row: its name and what it draws. */
typedef struct {
  const char *name;
  int hard, help;
} Row;

static Row
row_at (const LapBalanceChart *self, guint i)
{
  const LapBalance *b = &self->balance;
  const int pairs[N_PAIRS] = { b->push, b->pull, b->front, b->back };

  if (i < LAP_N_REGIONS)
    return (Row) { lap_words_label (&lap_regions, i), b->primary[i], b->secondary[i] };
  return (Row) { _(pair_names[i - LAP_N_REGIONS]), pairs[i - LAP_N_REGIONS], 0 };
}

static char *
row_number (const Row *row)
{
  return lap_clock_text (row->hard + row->help);
}

static PangoLayout *
new_layout (LapBalanceChart *self, const char *text)
{
  return gtk_widget_create_pango_layout (GTK_WIDGET (self), text);
}

static PangoLayout *
new_name (LapBalanceChart *self, const Row *row, int width)
{
  PangoLayout *layout = new_layout (self, row->name);

  pango_layout_set_width (layout, width * PANGO_SCALE);
  pango_layout_set_wrap (layout, PANGO_WRAP_WORD_CHAR);
  return layout;
}

/* px that one line is high and that names and numbers are wide. */
typedef struct {
  int height, name, number;
} Sizes;

static Sizes
measure_rows (LapBalanceChart *self)
{
  Sizes sizes = { 0 };

  for (guint i = 0; i < N_ROWS; i++) {
    Row row = row_at (self, i);
    g_autofree char *number = row_number (&row);
    g_autoptr (PangoLayout) name_layout = new_layout (self, row.name), number_layout = new_layout (self, number);
    int width, height;

    pango_layout_get_pixel_size (name_layout, &width, &height);
    sizes.name = MAX (sizes.name, width);
    sizes.height = MAX (sizes.height, height + 2);
    pango_layout_get_pixel_size (number_layout, &width, &height);
    sizes.number = MAX (sizes.number, width);
  }
  return sizes;
}

static int
most_seconds (LapBalanceChart *self)
{
  int most = 1;

  for (guint i = 0; i < N_ROWS; i++) {
    Row row = row_at (self, i);

    most = MAX (most, row.hard + row.help);
  }
  return most;
}

static int
name_width (const Sizes *sizes, int width)
{
  return MIN (sizes->name, (int) (width * NAME_SHARE));
}

static int
row_height (LapBalanceChart *self, const Row *row, int name)
{
  g_autoptr (PangoLayout) layout = new_name (self, row, name);
  int height;

  pango_layout_get_pixel_size (layout, NULL, &height);
  return height + 2;
}

/* Where something @size wide goes that would stand at @x if text ran from the left. */
static double
place (LapBalanceChart *self, double x, double size)
{
  gboolean mirrored = gtk_widget_get_direction (GTK_WIDGET (self)) == GTK_TEXT_DIR_RTL;

  return mirrored ? gtk_widget_get_width (GTK_WIDGET (self)) - x - size : x;
}

static void
draw_name (LapBalanceChart *self, GtkSnapshot *snapshot, const Row *row, int width, double y)
{
  g_autoptr (PangoLayout) layout = new_name (self, row, width);
  GdkRGBA ink = lap_colour (LAP_COLOUR_INK);

  lap_paint_text (snapshot, layout, &ink, place (self, 0, width), y);
}

static void
draw_number (LapBalanceChart *self, GtkSnapshot *snapshot, const Row *row, double y)
{
  g_autofree char *number = row_number (row);
  g_autoptr (PangoLayout) layout = new_layout (self, number);
  GdkRGBA ink2 = lap_colour (LAP_COLOUR_INK2);
  int own;

  pango_layout_get_pixel_size (layout, &own, NULL);
  lap_paint_text (snapshot, layout, &ink2, place (self, gtk_widget_get_width (GTK_WIDGET (self)) - own, own), y);
}

static void
draw_bars (LapBalanceChart *self, cairo_t *cr, const Row *row, double x, double scale, double y, int height)
{
  GdkRGBA work = lap_colour (LAP_COLOUR_WORK), work2 = lap_colour (LAP_COLOUR_WORK2);
  double hard = row->hard * scale, help = row->help * scale, bar = height * BAR, thin = height * HELP;

  lap_paint_box (cr, &work, NULL, 0, 2, place (self, x, hard), y + (height - bar) / 2, hard, bar);
  lap_paint_box (cr, &work2, &work, 1, 2, place (self, x + hard, help), y + (height - thin) / 2, help, thin);
}

static void
lap_balance_chart_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  LapBalanceChart *self = LAP_BALANCE_CHART (widget);
  Sizes sizes = measure_rows (self);
  int width = gtk_widget_get_width (widget), name = name_width (&sizes, width);
  double x = name + GAP, room = width - x - GAP - sizes.number, y = 0;
  double scale = MAX (0, room) / most_seconds (self);
  cairo_t *cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, width, gtk_widget_get_height (widget)));

  for (guint i = 0; i < N_ROWS; i++) {
    Row row = row_at (self, i);

    if (i >= LAP_N_REGIONS && (i - LAP_N_REGIONS) % 2 == 0)
      y += SPACE;
    draw_name (self, snapshot, &row, name, y);
    draw_bars (self, cr, &row, x, scale, y, sizes.height);
    draw_number (self, snapshot, &row, y);
    y += row_height (self, &row, name);
  }
  cairo_destroy (cr);
}

static void
lap_balance_chart_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *least, int *natural,
                           int *least_baseline, int *natural_baseline)
{
  LapBalanceChart *self = LAP_BALANCE_CHART (widget);
  Sizes sizes = measure_rows (self);
  int name = for_size >= 0 ? name_width (&sizes, for_size) : sizes.name;

  if (orientation == GTK_ORIENTATION_HORIZONTAL) {
    *least = 2 * GAP + 4 * sizes.number;
    *natural = sizes.name + 2 * GAP + 4 * sizes.number;
    return;
  }
  *natural = N_PAIRS / 2 * SPACE;
  for (guint i = 0; i < N_ROWS; i++) {
    Row row = row_at (self, i);

    *natural += row_height (self, &row, name);
  }
  *least = *natural;
}

static GtkSizeRequestMode
lap_balance_chart_get_request_mode (GtkWidget *widget)
{
  return GTK_SIZE_REQUEST_HEIGHT_FOR_WIDTH;
}

/* Text that got another size or face needs another room. */
static void
lap_balance_chart_css_changed (GtkWidget *widget, GtkCssStyleChange *change)
{
  GTK_WIDGET_CLASS (lap_balance_chart_parent_class)->css_changed (widget, change);
  gtk_widget_queue_resize (widget);
}

static void
lap_balance_chart_finalize (GObject *object)
{
  g_free (LAP_BALANCE_CHART (object)->words);
  G_OBJECT_CLASS (lap_balance_chart_parent_class)->finalize (object);
}

static void
lap_balance_chart_class_init (LapBalanceChartClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->finalize = lap_balance_chart_finalize;
  widget_class->snapshot = lap_balance_chart_snapshot;
  widget_class->measure = lap_balance_chart_measure;
  widget_class->get_request_mode = lap_balance_chart_get_request_mode;
  widget_class->css_changed = lap_balance_chart_css_changed;
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_IMG);
  gtk_widget_class_set_css_name (widget_class, "balance");
}

static void
lap_balance_chart_init (LapBalanceChart *self)
{
  AdwStyleManager *manager = adw_style_manager_get_default ();

  self->words = g_strdup ("");
  g_signal_connect_object (manager, "notify::dark", G_CALLBACK (gtk_widget_queue_draw), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (manager, "notify::high-contrast", G_CALLBACK (gtk_widget_queue_draw), self,
                           G_CONNECT_SWAPPED);
}

static char *
words_of (LapBalanceChart *self)
{
  g_autoptr (GPtrArray) words = g_ptr_array_new_with_free_func (g_free);

  for (guint i = 0; i < N_ROWS; i++) {
    Row row = row_at (self, i);
    g_autofree char *hard = lap_duration_text (row.hard), *help = lap_duration_text (row.help);

    /* Translators: a region of the body, how long it works hard, how long it helps. */
    g_ptr_array_add (words, row.help > 0 ? g_strdup_printf (_("%1$s %2$s, helps %3$s"), row.name, hard, help)
                                         : g_strdup_printf (_("%1$s %2$s"), row.name, hard));
  }
  g_ptr_array_add (words, NULL);
  return g_strjoinv ("; ", (char **) words->pdata);
}

void
lap_balance_chart_show (LapBalanceChart *self, const LapTimeline *timeline)
{
  lap_balance_of (timeline, LAP_BIT (LAP_PART_MAIN), &self->balance);
  g_free (self->words);
  self->words = self->balance.work > 0 ? words_of (self) : g_strdup ("");
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, self->words, -1);
  gtk_widget_queue_resize (GTK_WIDGET (self));
}

const char *
lap_balance_chart_words (LapBalanceChart *self)
{
  return self->words;
}
