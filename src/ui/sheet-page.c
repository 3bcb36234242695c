/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/sheet-page.h"

#include "sheets/paint.h"

#include <glib/gi18n-lib.h>

struct _LapSheetPage {
  GtkWidget       parent_instance;
  const LapPages *pages;
  guint           n;
  LapInk          ink;
  int             least;
};

G_DEFINE_FINAL_TYPE (LapSheetPage, lap_sheet_page, GTK_TYPE_WIDGET)

static const LapPage *
shown (LapSheetPage *self)
{
  return self->pages != NULL && self->n < lap_pages_n (self->pages) ? lap_pages_nth (self->pages, self->n) : NULL;
}

static void
lap_sheet_page_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *minimum, int *natural,
                        int *minimum_baseline, int *natural_baseline)
{
  LapSheetPage *self = LAP_SHEET_PAGE (widget);
  const LapPage *page = shown (self);
  double longer = page != NULL ? MAX (page->width, page->height) : 1;
  double length = page == NULL ? 1 : orientation == GTK_ORIENTATION_HORIZONTAL ? page->width : page->height;

  *minimum = *natural = (int) (self->least * length / longer + 0.5);
}

static void
lap_sheet_page_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  LapSheetPage *self = LAP_SHEET_PAGE (widget);
  const LapPage *page = shown (self);
  int width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);
  double scale;
  graphene_rect_t paper;
  GskRoundedRect outline;
  cairo_t *cr;

  if (page == NULL || width <= 0 || height <= 0)
    return;
  scale = MIN (width / page->width, height / page->height);
  graphene_rect_init (&paper, (width - page->width * scale) / 2, (height - page->height * scale) / 2,
                      page->width * scale, page->height * scale);
  gsk_rounded_rect_init_from_rect (&outline, &paper, 0);
  gtk_snapshot_append_outset_shadow (snapshot, &outline, &(GdkRGBA) { 0, 0, 0, 0.25 }, 0, 1, 0, 3);
  cr = gtk_snapshot_append_cairo (snapshot, &paper);
  cairo_set_source_rgb (cr, 1, 1, 1);
  cairo_paint (cr);
  cairo_translate (cr, paper.origin.x, paper.origin.y);
  cairo_scale (cr, scale, scale);
  {
    g_autoptr (LapPainter) painter = lap_painter_new (cr, self->ink, FALSE);

    lap_painter_page (painter, page);
  }
  cairo_destroy (cr);
}

static void
lap_sheet_page_class_init (LapSheetPageClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  widget_class->measure = lap_sheet_page_measure;
  widget_class->snapshot = lap_sheet_page_snapshot;
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_IMG);
}

static void
lap_sheet_page_init (LapSheetPage *self)
{
  gtk_widget_set_overflow (GTK_WIDGET (self), GTK_OVERFLOW_VISIBLE);
}

GtkWidget *
lap_sheet_page_new (int least)
{
  LapSheetPage *self = g_object_new (LAP_TYPE_SHEET_PAGE, NULL);

  self->least = least;
  return GTK_WIDGET (self);
}

void
lap_sheet_page_show (LapSheetPage *self, const LapPages *pages, guint n, LapInk ink)
{
  g_autofree char *name = pages != NULL ? g_strdup_printf (_("Page %u of %u"), n + 1, lap_pages_n (pages)) : NULL;

  self->pages = pages;
  self->n = n;
  self->ink = ink;
  if (name != NULL)
    gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, name, -1);
  gtk_widget_queue_resize (GTK_WIDGET (self));
}
