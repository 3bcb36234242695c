/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The seconds, as large as there is room for, what they are seconds of, and the easier option while people work.
 */
#include "ui/palette.h"
#include "ui/rehearse/panel.h"
#include "ui/score/paint.h"

#include <glib/gi18n-lib.h>

#define CAPTION 5.2
#define EASIER  4.2
#define LEAST   1.7
#define FOOT    14 /* units below the number */

/* What is counted: the seconds left, of the count-in or of the interval; −1 for nothing. */
static int
count (const LapScene *scene)
{
  if (scene->state == LAP_REHEARSAL_COUNT_IN)
    return (scene->count_in + LAP_SECOND - 1) / LAP_SECOND;
  return scene->moment.interval != NULL ? scene->moment.left : -1;
}

static gint64
stamp (const LapScene *scene)
{
  return LAP_STAMP (count (scene) + 1, scene->state, scene->moment.interval != NULL ? scene->moment.interval->start : -1);
}

static char *
count_text (const LapScene *scene)
{
  int seconds = count (scene);

  if (seconds < 0)
    return g_strdup ("0");
  return seconds > 99 ? lap_clock_text (seconds) : g_strdup_printf ("%d", seconds);
}

static const char *
interval_text (LapIntervalKind kind, int n)
{
  switch (kind) {
    case LAP_INTERVAL_WORK:
      return ngettext ("second of work left", "seconds of work left", n);
    case LAP_INTERVAL_SWITCH:
      return ngettext ("second to change sides", "seconds to change sides", n);
    case LAP_INTERVAL_TALK:
      return ngettext ("second of talk left", "seconds of talk left", n);
    case LAP_INTERVAL_PAUSE:
      return ngettext ("second of pause left", "seconds of pause left", n);
    default:
      return ngettext ("second of rest left", "seconds of rest left", n);
  }
}

static const char *
caption (const LapScene *scene)
{
  switch (scene->state) {
    case LAP_REHEARSAL_READY:
      return _("ready: Space begins");
    case LAP_REHEARSAL_COUNT_IN:
      return _("and it begins");
    case LAP_REHEARSAL_HELD:
      return lap_rehearsal_was_away (scene->rehearsal) ? _("held while nobody looked: Space goes on")
                                                       : _("held: Space goes on");
    case LAP_REHEARSAL_DONE:
      return _("done");
    default:
      return interval_text (scene->moment.interval->kind, scene->moment.left);
  }
}

static LapColour
caption_colour (const LapScene *scene)
{
  if (scene->state != LAP_REHEARSAL_RUNNING)
    return LAP_COLOUR_EFFORT;
  return scene->moment.interval->kind == LAP_INTERVAL_TALK ? LAP_COLOUR_TALK : LAP_COLOUR_WORK;
}

/* The number is set by what is inked of a whole number of its length, so that it never wobbles. */
static void
draw_number (LapPanel *panel, GtkSnapshot *snapshot, const LapScene *scene, int width, double height)
{
  g_autofree char *text = count_text (scene);
  GdkRGBA ink = lap_colour (scene->state == LAP_REHEARSAL_HELD || scene->state == LAP_REHEARSAL_READY
                            ? LAP_COLOUR_INK2 : LAP_COLOUR_INK);
  PangoLayout *layout = gtk_widget_create_pango_layout (GTK_WIDGET (panel), strlen (text) > 2 ? "0:00" : "00");
  PangoFontDescription *font = pango_font_description_copy (
    pango_context_get_font_description (pango_layout_get_context (layout)));
  g_autoptr (PangoAttrList) attributes = pango_attr_list_new ();
  PangoRectangle whole, inked;
  double size = 100, scale;

  pango_attr_list_insert (attributes, pango_attr_font_features_new ("tnum"));
  pango_layout_set_attributes (layout, attributes);
  pango_font_description_set_weight (font, PANGO_WEIGHT_ULTRABOLD);
  pango_font_description_set_absolute_size (font, size * PANGO_SCALE);
  pango_layout_set_font_description (layout, font);
  pango_layout_get_pixel_extents (layout, &whole, NULL);
  scale = MIN (width * 0.94 / MAX (whole.width, 1), height / MAX (whole.height, 1));
  pango_font_description_set_absolute_size (font, size * MIN (scale, scene->unit / 2) * PANGO_SCALE);
  pango_layout_set_font_description (layout, font);
  pango_layout_get_pixel_extents (layout, &whole, NULL);
  pango_layout_set_text (layout, text, -1);
  pango_layout_get_pixel_extents (layout, &inked, NULL);
  lap_paint_text (snapshot, layout, &ink, (width - inked.width) / 2.0 - inked.x, (height - whole.height) / 2.0 - whole.y);
  pango_font_description_free (font);
  g_object_unref (layout);
}

static char *
easier_text (const LapScene *scene)
{
  const LapTask *task = lap_scene_task (scene, scene->moment.turn);
  LapWording words;

  if (!lap_scene_works (scene) || task == NULL || scene->moment.interval->task == LAP_NO_TASK)
    return NULL;
  words = lap_task_wording (task);
  return words.easier != NULL && *words.easier != '\0'
    ? g_strdup_printf (_("easier: %s"), g_dgettext (GETTEXT_PACKAGE, words.easier)) : NULL;
}

static void
draw (LapPanel *panel, GtkSnapshot *snapshot, const LapScene *scene, int width, int height)
{
  double foot = MIN (FOOT * scene->unit, height * 0.4), top = height - foot;
  g_autofree char *easier = easier_text (scene);
  PangoLayout *layout = lap_panel_text (panel, caption (scene), PANGO_WEIGHT_BOLD, CAPTION, LEAST, width, foot * 0.46);

  draw_number (panel, snapshot, scene, width, top - scene->unit);
  pango_layout_set_alignment (layout, PANGO_ALIGN_CENTER);
  lap_panel_put (panel, snapshot, layout, caption_colour (scene), 0, top, width);
  if (easier == NULL)
    return;
  layout = lap_panel_text (panel, easier, PANGO_WEIGHT_NORMAL, EASIER, LEAST, width, foot * 0.5);
  pango_layout_set_alignment (layout, PANGO_ALIGN_CENTER);
  lap_panel_put (panel, snapshot, layout, LAP_COLOUR_INK2, 0, top + foot * 0.5, width);
}

static char *
tell (const LapScene *scene)
{
  g_autofree char *text = count_text (scene);

  return g_strdup_printf ("%s %s", text, caption (scene));
}

const LapPanelKind lap_panel_count = { stamp, draw, tell };
