/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The head of the screen: the part and the round, a box for each block of the round, and the clocks.
 */
#include "ui/palette.h"
#include "ui/rehearse/panel.h"
#include "ui/score/paint.h"

#include <glib/gi18n-lib.h>

#define TEXT    4.4 /* units */
#define CLOCK   5.2
#define BOX     3.2
#define MOST    16  /* boxes; with more the count is enough */

static gint64
stamp (const LapScene *scene)
{
  return LAP_STAMP (scene->clock / LAP_SECOND, scene->moment.turn != NULL ? scene->moment.turn->interval : 0,
                    lap_scene_works (scene) + 2 * scene->film);
}

static const LapStretch *
part_now (const LapScene *scene)
{
  guint n = scene->timeline->n_parts;

  if (scene->moment.interval != NULL)
    return &scene->timeline->parts[scene->moment.interval->part];
  return n > 0 ? &scene->timeline->parts[n - 1] : NULL;
}

/* "Main, round 1 of 2". */
static char *
part_text (const LapScene *scene)
{
  const LapStretch *stretch = part_now (scene);
  const LapTurn *turn = scene->moment.turn;

  if (stretch == NULL)
    return g_strdup ("");
  if (stretch->part->rounds < 2 || stretch->part->run == LAP_RUN_OWN_PACE || turn == NULL ||
      &scene->timeline->parts[turn->part] != stretch)
    return g_strdup (lap_part_title (stretch->part));
  return g_strdup_printf (_("%s, round %d of %d"), lap_part_title (stretch->part), turn->round, stretch->part->rounds);
}

static char *
block_text (const LapScene *scene, guint *place, guint *n)
{
  const LapTurn *turn = scene->moment.turn;

  *place = *n = 0;
  if (turn == NULL || &scene->timeline->parts[turn->part] != part_now (scene))
    return NULL;
  *place = lap_scene_block (scene, turn, n);
  return *n > 1 ? g_strdup_printf (_("%u of %u"), *place, *n) : NULL;
}

static char *
clock_text (const LapScene *scene, gboolean film)
{
  int second = scene->clock / LAP_SECOND + (film ? scene->timeline->session->lead : 0);
  g_autofree char *clock = lap_clock_text (second);

  return g_strdup_printf (film ? _("film %s") : _("session %s"), clock);
}

static void
draw_boxes (LapPanel *panel, GtkSnapshot *snapshot, const LapScene *scene, guint place, guint n, double x, double room,
            int width, int height)
{
  double pitch = MIN (room / n, BOX * 1.25 * scene->unit), box = pitch * 0.72, tall = box * 0.42;
  GdkRGBA work = lap_colour (LAP_COLOUR_WORK), line = lap_colour (LAP_COLOUR_LINE2), ink = lap_colour (LAP_COLOUR_INK);
  cairo_t *cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, width, height));

  for (guint i = 0; i < n; i++) {
    double left = x + i * pitch, top = (height - tall) / 2;

    if (lap_panel_is_rtl (panel))
      left = width - left - box;
    if (i + 1 < place)
      lap_paint_box (cr, &work, NULL, 0, 2, left, top, box, tall);
    else
      lap_paint_box (cr, NULL, &line, 1.5, 2, left, top, box, tall);
    if (i + 1 == place) {
      if (lap_scene_works (scene))
        lap_paint_box (cr, &work, NULL, 0, 2, left + 2, top + 2, (box - 4) * scene->moment.gone, tall - 4);
      lap_paint_box (cr, NULL, &ink, 2.5, 4, left - 4, top - 5, box + 8, tall + 10);
    }
  }
  cairo_destroy (cr);
}

static double
put (LapPanel *panel, GtkSnapshot *snapshot, PangoLayout *layout, LapColour colour, double x, int width, int height)
{
  int w, h;

  pango_layout_set_width (layout, -1);
  pango_layout_get_pixel_size (layout, &w, &h);
  pango_layout_set_width (layout, w * PANGO_SCALE);
  lap_panel_put (panel, snapshot, layout, colour, x, (height - h) / 2.0, width);
  return w;
}

/* The clocks stand at the far end; returns where they begin. */
static double
draw_clocks (LapPanel *panel, GtkSnapshot *snapshot, const LapScene *scene, int width, int height)
{
  double x = width;

  for (int i = 0; i < (scene->timeline->session->lead > 0 ? 2 : 1); i++) {
    gboolean film = (i == 0) == scene->film && scene->timeline->session->lead > 0;
    g_autofree char *text = clock_text (scene, film);
    PangoLayout *layout = lap_panel_text (panel, text, i == 0 ? PANGO_WEIGHT_ULTRABOLD : PANGO_WEIGHT_NORMAL,
                                          i == 0 ? CLOCK : TEXT, 2, width / 3.0, height);
    int w;

    if (i > 0 && width < 100 * scene->unit) {
      g_object_unref (layout);
      break;
    }
    pango_layout_get_pixel_size (layout, &w, NULL);
    x -= w;
    put (panel, snapshot, layout, i == 0 ? LAP_COLOUR_INK : LAP_COLOUR_INK2, x, width, height);
    x -= 3 * scene->unit;
  }
  return x;
}

static void
draw (LapPanel *panel, GtkSnapshot *snapshot, const LapScene *scene, int width, int height)
{
  g_autofree char *part = part_text (scene), *block = NULL;
  GdkRGBA line = lap_colour (LAP_COLOUR_LINE);
  double end = draw_clocks (panel, snapshot, scene, width, height), x;
  guint place, n;

  x = put (panel, snapshot, lap_panel_text (panel, part, PANGO_WEIGHT_BOLD, TEXT, 2, end * 0.6, height),
           LAP_COLOUR_INK, 0, width, height) + 3 * scene->unit;
  block = block_text (scene, &place, &n);
  if (block != NULL) {
    PangoLayout *layout = lap_panel_text (panel, block, PANGO_WEIGHT_ULTRABOLD, TEXT, 2, MAX (end - x, 1), height);
    double room;
    int w;

    pango_layout_get_pixel_size (layout, &w, NULL);
    room = MIN (end - x - w - 2 * scene->unit, n * BOX * 1.25 * scene->unit);
    if (n <= MOST && room > n * 1.6 * scene->unit) {
      draw_boxes (panel, snapshot, scene, place, n, x, room, width, height);
      x += room + 1.5 * scene->unit;
    }
    if (x + w <= end)
      put (panel, snapshot, layout, LAP_COLOUR_INK, x, width, height);
    else
      g_object_unref (layout);
  }
  lap_paint_rect (snapshot, &line, 0, height - 1.5, width, 1.5);
}

static char *
tell (const LapScene *scene)
{
  g_autofree char *part = part_text (scene), *clock = clock_text (scene, FALSE), *block = NULL;
  guint place, n;

  block = block_text (scene, &place, &n);
  return block != NULL ? g_strdup_printf ("%s, %s, %s", part, block, clock) : g_strdup_printf ("%s, %s", part, clock);
}

const LapPanelKind lap_panel_head = { stamp, draw, tell };
