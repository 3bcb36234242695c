/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "bench/flat.h"

#include "ui/palette.h"

struct _BenchFlat {
  GtkWidget parent_instance;
  int       n;
};
G_DEFINE_FINAL_TYPE (BenchFlat, bench_flat, GTK_TYPE_WIDGET)

static void
bench_flat_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  GdkRGBA colour = lap_colour (BENCH_FLAT (widget)->n++ % 2 == 0 ? LAP_COLOUR_WORK : LAP_COLOUR_WORK2);

  gtk_snapshot_append_color (snapshot, &colour, &GRAPHENE_RECT_INIT (0, 0, gtk_widget_get_width (widget),
                                                                     gtk_widget_get_height (widget)));
}

static void
bench_flat_class_init (BenchFlatClass *klass)
{
  GTK_WIDGET_CLASS (klass)->snapshot = bench_flat_snapshot;
}

static void
bench_flat_init (BenchFlat *self)
{
}
