/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What to say now and what next. The words to say now are as large as there is room for; lines to come follow
 * where they fit. A talk is read like from a roll: what has been said at the session's pace turns pale, and
 * the roll goes on when it is longer than the screen.
 */
#include "ui/palette.h"
#include "ui/rehearse/panel.h"
#include "ui/score/paint.h"

#include <glib/gi18n-lib.h>

#define NOW    8.9
#define COMING 4.9
#define LEAST  4.4
#define READ   7.5 /* of a talk, at most and at least */
#define READ_LEAST 5.2

static double
seconds_now (const LapScene *scene)
{
  return scene->clock / (double) LAP_SECOND;
}

/* Words of a talk that are said by now. */
static int
words_said (const LapScene *scene)
{
  const LapLine *line = scene->moment.lines[0];
  double share = (seconds_now (scene) - line->start) / MAX (line->seconds, 1);

  return CLAMP (share, 0, 1) * lap_count_words (line->text);
}

static gint64
stamp (const LapScene *scene)
{
  const LapMoment *moment = &scene->moment;
  gint64 first = moment->n_lines > 0 ? moment->lines[0] - scene->script->lines : -1;

  if (lap_scene_layout (scene) == LAP_LAYOUT_READ)
    return LAP_STAMP (first + 1, words_said (scene), 1);
  return LAP_STAMP (first + 1, scene->clock / LAP_SECOND, moment->saying * 2);
}

/* The byte where word @n begins. */
static int
word_at (const char *text, int n)
{
  const char *p = text;

  for (; *p != '\0' && n > 0; n--) {
    while (*p != '\0' && !g_ascii_isspace (*p))
      p++;
    while (g_ascii_isspace (*p))
      p++;
  }
  return p - text;
}

static void
draw_read (LapPanel *panel, GtkSnapshot *snapshot, const LapScene *scene, int width, int height)
{
  const LapLine *line = scene->moment.lines[0];
  PangoLayout *layout = lap_panel_text (panel, line->text, PANGO_WEIGHT_BOLD, READ, READ_LEAST, width, height);
  int said = word_at (line->text, words_said (scene)), h;
  GdkRGBA pale = lap_colour (LAP_COLOUR_INK2);
  g_autoptr (PangoAttrList) attributes = pango_attr_list_copy (pango_layout_get_attributes (layout));
  PangoAttribute *colour = pango_attr_foreground_new (pale.red * 65535, pale.green * 65535, pale.blue * 65535);
  PangoRectangle at;
  double y = 0;

  colour->end_index = said;
  pango_attr_list_insert (attributes, colour);
  pango_layout_set_height (layout, -1);
  pango_layout_set_ellipsize (layout, PANGO_ELLIPSIZE_NONE);
  pango_layout_set_attributes (layout, attributes);
  pango_layout_get_pixel_size (layout, NULL, &h);
  if (h > height) {
    pango_layout_index_to_pos (layout, said, &at);
    y = -CLAMP (at.y / (double) PANGO_SCALE - height / 4.0, 0, h - height);
  }
  lap_panel_put (panel, snapshot, layout, LAP_COLOUR_INK, 0, y, width);
}

/* "in 7 s", "in the rest": when a line will be said. */
static char *
when (const LapScene *scene, const LapLine *line)
{
  const LapInterval *now = scene->moment.interval, *then = lap_timeline_at (scene->timeline, line->start);

  if (now != NULL && then != now && now->kind == LAP_INTERVAL_WORK && then != NULL && then->kind != LAP_INTERVAL_WORK)
    return g_strdup (then->kind == LAP_INTERVAL_TALK ? _("in the talk") : _("in the rest"));
  return g_strdup_printf (_("in %d s"), MAX (1, (int) (line->start - seconds_now (scene) + 0.999)));
}

/* Returns the y below it. */
static double
draw_coming (LapPanel *panel, GtkSnapshot *snapshot, const LapScene *scene, const LapLine *line, double size, double y,
             double indent, int width, int height)
{
  g_autofree char *time = when (scene, line);
  PangoLayout *label = lap_panel_text (panel, time, PANGO_WEIGHT_BOLD, size, size, width, height), *text;
  int w, h, th;

  pango_layout_set_width (label, -1);
  pango_layout_get_pixel_size (label, &w, &h);
  pango_layout_set_width (label, w * PANGO_SCALE);
  text = lap_panel_text (panel, line->text, PANGO_WEIGHT_NORMAL, size, LEAST * 0.9,
                         width - indent - w - 1.5 * scene->unit, MAX (height - y, h));
  pango_layout_get_pixel_size (text, NULL, &th);
  if (y + th > height + 2) {
    g_object_unref (label);
    g_object_unref (text);
    return height;
  }
  lap_panel_put (panel, snapshot, label, LAP_COLOUR_TALK, indent, y, width);
  lap_panel_put (panel, snapshot, text, LAP_COLOUR_INK2, indent + w + 1.5 * scene->unit, y, width);
  return y + th + scene->unit * 0.6;
}

static void
draw (LapPanel *panel, GtkSnapshot *snapshot, const LapScene *scene, int width, int height)
{
  const LapMoment *moment = &scene->moment;
  double y = 0, indent = 2.4 * scene->unit;
  GdkRGBA talk = lap_colour (LAP_COLOUR_TALK);
  guint i = 0;

  if (lap_scene_layout (scene) == LAP_LAYOUT_READ) {
    draw_read (panel, snapshot, scene, width, height);
    return;
  }
  if (moment->saying && scene->state != LAP_REHEARSAL_DONE) {
    PangoLayout *layout = lap_panel_text (panel, moment->lines[i++]->text, PANGO_WEIGHT_ULTRABOLD, NOW, LEAST,
                                          width - indent, height);
    int h;

    pango_layout_get_pixel_size (layout, NULL, &h);
    lap_paint_rect (snapshot, &talk, lap_panel_is_rtl (panel) ? width - scene->unit : 0, 0, scene->unit, h);
    lap_panel_put (panel, snapshot, layout, LAP_COLOUR_INK, indent, 0, width);
    y = h + scene->unit * 0.6;
  }
  for (; i < moment->n_lines && y < height; i++)
    y = draw_coming (panel, snapshot, scene, moment->lines[i], COMING, y, indent, width, height);
}

static char *
tell (const LapScene *scene)
{
  const LapMoment *moment = &scene->moment;

  return g_strdup (moment->saying ? moment->lines[0]->text : "");
}

const LapPanelKind lap_panel_say = { stamp, draw, tell };
