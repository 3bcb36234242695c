/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/letters.h"

#include <math.h>

#define USUAL 1.2 /* of a line, of the size of its letters */

/* What a line was when the letters of a context were last asked for: Pango shapes a sentence for each answer. */
typedef struct {
  guint serial; /* of the context */
  int   line;
} Known;

static Known *
known_of (PangoContext *pango)
{
  static GQuark quark;
  Known *known;

  if (quark == 0)
    quark = g_quark_from_static_string ("lap-text-line");
  known = g_object_get_qdata (G_OBJECT (pango), quark);
  if (known == NULL) {
    known = g_new0 (Known, 1);
    g_object_set_qdata_full (G_OBJECT (pango), quark, known, g_free);
  }
  return known;
}

int
lap_pango_line (PangoContext *pango)
{
  Known *known = known_of (pango);
  guint serial = pango_context_get_serial (pango);

  if (known->serial != serial) {
    PangoFontMetrics *metrics = pango_context_get_metrics (pango, NULL, NULL);

    *known = (Known) { serial, PANGO_PIXELS_CEIL (pango_font_metrics_get_height (metrics)) };
    pango_font_metrics_unref (metrics);
  }
  return known->line;
}

int
lap_text_line (GtkWidget *widget)
{
  return lap_pango_line (gtk_widget_get_pango_context (widget));
}

double
lap_letters_size (PangoContext *pango)
{
  const PangoFontDescription *font = pango_context_get_font_description (pango);
  double size = pango_font_description_get_size (font) / (double) PANGO_SCALE;

  /* Points of 1/72 inch, in CSS's 96 px of one. */
  return pango_font_description_get_size_is_absolute (font) ? size : size * 96 / 72;
}

int
lap_usual_line (GtkWidget *widget)
{
  return lround (lap_letters_size (gtk_widget_get_pango_context (widget)) * USUAL);
}
