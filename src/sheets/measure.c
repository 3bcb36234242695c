/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "sheets/measure.h"

/* Measured large and divided, so that rounding to Pango's units doesn't show. */
#define EM 256.0

struct _LapPangoMeasure {
  LapMeasure   table;
  PangoLayout *layout;
  PangoFontDescription *fonts[LAP_N_WEIGHTS];
  LapFont      sizes[LAP_N_WEIGHTS];
  GHashTable  *widths[LAP_N_WEIGHTS]; /* text -> double */
};

PangoFontDescription *
lap_sheet_font (LapWeight weight)
{
  static const PangoWeight weights[] = {
    [LAP_WEIGHT_PLAIN] = PANGO_WEIGHT_NORMAL, [LAP_WEIGHT_STRONG] = PANGO_WEIGHT_SEMIBOLD,
    [LAP_WEIGHT_HEAVY] = PANGO_WEIGHT_ULTRABOLD,
  };
  PangoFontDescription *font = pango_font_description_new ();

  pango_font_description_set_family_static (font, "Cantarell,Noto Sans,DejaVu Sans,Sans");
  pango_font_description_set_weight (font, weights[weight]);
  return font;
}

PangoLayout *
lap_sheet_layout (PangoContext *context)
{
  cairo_font_options_t *options = cairo_font_options_create ();
  PangoAttrList *attributes = pango_attr_list_new ();
  PangoLayout *layout;

  cairo_font_options_set_hint_style (options, CAIRO_HINT_STYLE_NONE);
  cairo_font_options_set_hint_metrics (options, CAIRO_HINT_METRICS_OFF);
  pango_cairo_context_set_font_options (context, options);
  cairo_font_options_destroy (options);
  pango_cairo_context_set_resolution (context, 72);
  pango_context_set_round_glyph_positions (context, FALSE);
  layout = pango_layout_new (context);
  pango_attr_list_insert (attributes, pango_attr_font_features_new ("liga=0, clig=0"));
  pango_layout_set_attributes (layout, attributes);
  pango_attr_list_unref (attributes);
  pango_layout_set_single_paragraph_mode (layout, TRUE);
  return layout;
}

static void
set_text (LapPangoMeasure *measure, LapWeight weight, const char *text, gssize bytes)
{
  pango_layout_set_font_description (measure->layout, measure->fonts[weight]);
  pango_layout_set_text (measure->layout, text, bytes);
}

static double
width (gpointer data, LapWeight weight, const char *text, gssize bytes)
{
  LapPangoMeasure *measure = data;
  g_autofree char *key = bytes < 0 ? g_strdup (text) : g_strndup (text, bytes);
  double *known = g_hash_table_lookup (measure->widths[weight], key);
  int units;

  if (known != NULL)
    return *known;
  set_text (measure, weight, key, -1);
  pango_layout_get_size (measure->layout, &units, NULL);
  known = g_new (double, 1);
  *known = units / (EM * PANGO_SCALE);
  g_hash_table_insert (measure->widths[weight], g_steal_pointer (&key), known);
  return *known;
}

/* How far the ink of @text reaches above and below its baseline, in ems. */
static void
ink (LapPangoMeasure *measure, LapWeight weight, const char *text, double *above, double *below)
{
  PangoRectangle rectangle;
  double baseline;

  set_text (measure, weight, text, -1);
  baseline = pango_layout_get_baseline (measure->layout);
  pango_layout_get_extents (measure->layout, &rectangle, NULL);
  *above = (baseline - rectangle.y) / (EM * PANGO_SCALE);
  *below = (rectangle.y + rectangle.height - baseline) / (EM * PANGO_SCALE);
}

static const LapFont *
font (gpointer data, LapWeight weight)
{
  LapPangoMeasure *measure = data;
  LapFont *sizes = &measure->sizes[weight];
  double unused;

  if (sizes->cap == 0) {
    ink (measure, weight, "H", &sizes->cap, &unused);
    ink (measure, weight, "bdfhklgjpqy0", &sizes->ascent, &sizes->descent);
  }
  return sizes;
}

static gboolean
rtl (gpointer data, const char *text)
{
  LapPangoMeasure *measure = data;

  set_text (measure, LAP_WEIGHT_PLAIN, text != NULL ? text : "", -1);
  return pango_layout_get_direction (measure->layout, 0) == PANGO_DIRECTION_RTL;
}

LapPangoMeasure *
lap_pango_measure_new (void)
{
  LapPangoMeasure *measure = g_new0 (LapPangoMeasure, 1);
  PangoContext *context = pango_font_map_create_context (pango_cairo_font_map_get_default ());

  measure->layout = lap_sheet_layout (context);
  g_object_unref (context);
  for (guint i = 0; i < LAP_N_WEIGHTS; i++) {
    measure->fonts[i] = lap_sheet_font (i);
    pango_font_description_set_absolute_size (measure->fonts[i], EM * PANGO_SCALE);
    measure->widths[i] = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, g_free);
  }
  measure->table = (LapMeasure) { width, font, rtl, measure };
  return measure;
}

void
lap_pango_measure_free (LapPangoMeasure *measure)
{
  g_object_unref (measure->layout);
  for (guint i = 0; i < LAP_N_WEIGHTS; i++) {
    pango_font_description_free (measure->fonts[i]);
    g_hash_table_unref (measure->widths[i]);
  }
  g_free (measure);
}

const LapMeasure *
lap_pango_measure_table (LapPangoMeasure *measure)
{
  return &measure->table;
}
