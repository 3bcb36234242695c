/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/week-load.h"

#include "base/customs.h"
#include "ui/letters.h"
#include "ui/palette.h"
#include "ui/score/paint.h"
#include "ui/week/card.h"
#include "ui/week/words.h"

#include <adwaita.h>
#include <glib/gi18n-lib.h>

/* Of a line of text: how high a row is, how wide a day. */
#define ROW  1.15
#define DAY  1.15
/* px between names and days. */
#define GAP 8
/* Rows above the regions: names of the days, crests. */
#define HEADS 2

struct _LapLoadChart {
  GtkWidget   parent_instance;
  LapWeekLoad load; /* without its coaches */
  char       *words;
};

G_DEFINE_FINAL_TYPE (LapLoadChart, lap_load_chart, GTK_TYPE_WIDGET)

typedef struct {
  int row, day, names, width;
  gboolean mirrored;
} Sizes;

static PangoLayout *
new_layout (LapLoadChart *self, const char *text, int width)
{
  PangoLayout *layout = gtk_widget_create_pango_layout (GTK_WIDGET (self), text);

  if (width > 0) {
    pango_layout_set_width (layout, width * PANGO_SCALE);
    pango_layout_set_ellipsize (layout, PANGO_ELLIPSIZE_END);
  }
  return layout;
}

static Sizes
sizes_of (LapLoadChart *self)
{
  GtkWidget *widget = GTK_WIDGET (self);
  int line = lap_text_line (widget), day = line * DAY, width = gtk_widget_get_width (widget);

  return (Sizes) { line * ROW, day, MAX (0, width - LAP_N_DAYS * day - GAP), width,
                   gtk_widget_get_direction (widget) == GTK_TEXT_DIR_RTL };
}

/* The left edge of @width px that begin @x px after where text begins. */
static int
at (const Sizes *sizes, int x, int width)
{
  return sizes->mirrored ? sizes->width - x - width : x;
}

static void
draw_text (LapLoadChart *self, GtkSnapshot *snapshot, const Sizes *sizes, const char *text, LapColour colour, int x, int y,
           int room, gboolean middle)
{
  g_autoptr (PangoLayout) layout = new_layout (self, text, room);
  GdkRGBA rgba = lap_colour (colour);
  int width, height;

  pango_layout_get_pixel_size (layout, &width, &height);
  x += middle ? (room - width) / 2 : 0;
  pango_layout_set_width (layout, -1);
  if (!middle && width >= room)
    pango_layout_set_width (layout, room * PANGO_SCALE);
  lap_paint_text (snapshot, layout, &rgba, at (sizes, x, middle ? width : MIN (width, room)), y + (sizes->row - height) / 2.0);
}

static void
draw_heads (LapLoadChart *self, GtkSnapshot *snapshot, cairo_t *cr, const Sizes *sizes)
{
  draw_text (self, snapshot, sizes, _("Hardest class"), LAP_COLOUR_INK2, 0, sizes->row, sizes->names, FALSE);
  for (guint i = 0; i < LAP_N_DAYS; i++) {
    LapDay day = lap_day_nth (lap_customs ().first_day, i);
    g_autofree char *name = lap_short_day_text (day);
    g_autofree char *letter = g_utf8_substring (name, 0, 1);
    int x = sizes->names + GAP + i * sizes->day;

    draw_text (self, snapshot, sizes, letter, LAP_COLOUR_INK2, x, 0, sizes->day, TRUE);
    lap_week_crests_draw (cr, self->load.strain[day], at (sizes, x + 2, 0), sizes->row * 1.8,
                          sizes->row * 0.5, sizes->mirrored);
  }
}

static void
draw_bar (cairo_t *cr, const Sizes *sizes, int x, int y, int hard, int some, int most)
{
  GdkRGBA work = lap_colour (LAP_COLOUR_WORK), helps = lap_colour (LAP_COLOUR_WORK2), line = lap_colour (LAP_COLOUR_LINE);
  int room = sizes->row - 4, width = sizes->day - 4, left = at (sizes, x + 2, width), foot = y + sizes->row - 2;
  int solid = hard > 0 ? MAX (2, room * hard / most) : 0, light = some > 0 ? MAX (3, room * some / most) : 0;

  if (solid + light == 0)
    lap_paint_box (cr, &line, NULL, 0, 0, left, foot - 1, width, 1);
  if (light > 0)
    lap_paint_box (cr, &helps, &work, 1, 1, left, foot - solid - light, width, light);
  if (solid > 0)
    lap_paint_box (cr, &work, NULL, 0, 1, left, foot - solid, width, solid);
}

static void
lap_load_chart_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  LapLoadChart *self = LAP_LOAD_CHART (widget);
  Sizes sizes = sizes_of (self);
  cairo_t *cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, sizes.width,
                                                                          gtk_widget_get_height (widget)));

  draw_heads (self, snapshot, cr, &sizes);
  for (guint i = 0; i < LAP_N_REGIONS; i++) {
    int y = (HEADS + i) * sizes.row;

    draw_text (self, snapshot, &sizes, lap_words_label (&lap_regions, i), LAP_COLOUR_INK, 0, y, sizes.names, FALSE);
    for (guint nth = 0; nth < LAP_N_DAYS; nth++) {
      LapDay day = lap_day_nth (lap_customs ().first_day, nth);

      draw_bar (cr, &sizes, sizes.names + GAP + nth * sizes.day, y, self->load.hard[i][day], self->load.some[i][day],
                MAX (self->load.most, 1));
    }
  }
  cairo_destroy (cr);
}

static void
lap_load_chart_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *least, int *natural,
                        int *least_baseline, int *natural_baseline)
{
  int line = lap_text_line (widget);

  if (orientation == GTK_ORIENTATION_VERTICAL)
    *least = *natural = (LAP_N_REGIONS + HEADS) * (int) (line * ROW);
  else {
    *least = LAP_N_DAYS * (int) (line * DAY) + GAP + 3 * line;
    *natural = LAP_N_DAYS * (int) (line * DAY) + GAP + 7 * line;
  }
}

static void
lap_load_chart_finalize (GObject *object)
{
  g_free (LAP_LOAD_CHART (object)->words);
  G_OBJECT_CLASS (lap_load_chart_parent_class)->finalize (object);
}

static void
lap_load_chart_class_init (LapLoadChartClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = lap_load_chart_finalize;
  GTK_WIDGET_CLASS (klass)->snapshot = lap_load_chart_snapshot;
  GTK_WIDGET_CLASS (klass)->measure = lap_load_chart_measure;
  gtk_widget_class_set_accessible_role (GTK_WIDGET_CLASS (klass), GTK_ACCESSIBLE_ROLE_IMG);
  gtk_widget_class_set_css_name (GTK_WIDGET_CLASS (klass), "load");
}

static void
lap_load_chart_init (LapLoadChart *self)
{
  g_signal_connect_object (adw_style_manager_get_default (), "notify::dark", G_CALLBACK (gtk_widget_queue_draw), self,
                           G_CONNECT_SWAPPED);
}

/* "Thighs: Monday 90 minutes, 45 of them hard; …": a sentence for each region that is worked. */
static char *
words_of (const LapWeekLoad *load)
{
  g_autoptr (GString) words = g_string_new (NULL);

  for (guint i = 0; i < LAP_N_REGIONS; i++) {
    gboolean any = FALSE;

    for (guint nth = 0; nth < LAP_N_DAYS; nth++) {
      LapDay day = lap_day_nth (lap_customs ().first_day, nth);
      int hard = load->hard[i][day], all = hard + load->some[i][day];

      if (all == 0)
        continue;
      if (any)
        g_string_append (words, ", ");
      else
        g_string_append_printf (words, "%s%s: ", words->len > 0 ? ". " : "", lap_words_label (&lap_regions, i));
      /* Translators: a day, minutes of class on it, and how many of those are hard. */
      g_string_append_printf (words, _("%1$s %2$d minutes, %3$d hard"), lap_words_label (&lap_days, day), all, hard);
      any = TRUE;
    }
  }
  return g_string_free (g_steal_pointer (&words), FALSE);
}

void
lap_load_chart_show (LapLoadChart *self, const LapWeekLoad *load)
{
  self->load = *load;
  self->load.coaches = NULL;
  g_free (self->words);
  self->words = words_of (load);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  *self->words != '\0' ? self->words : _("No class works a region that is known."), -1);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}
