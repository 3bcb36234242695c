/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/letters.h"

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
lap_text_line (GtkWidget *widget)
{
  PangoContext *pango = gtk_widget_get_pango_context (widget);
  Known *known = known_of (pango);
  guint serial = pango_context_get_serial (pango);

  if (known->serial != serial) {
    PangoFontMetrics *metrics = pango_context_get_metrics (pango, NULL, NULL);

    *known = (Known) { serial, PANGO_PIXELS_CEIL (pango_font_metrics_get_height (metrics)) };
    pango_font_metrics_unref (metrics);
  }
  return known->line;
}
