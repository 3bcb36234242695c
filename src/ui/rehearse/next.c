/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What comes next: its name, its figure, the posture it is done in and the seconds it takes to get there.
 */
#include "ui/figures.h"
#include "ui/palette.h"
#include "ui/picture.h"
#include "ui/rehearse/panel.h"
#include "ui/score/paint.h"

#include <glib/gi18n-lib.h>

#define TITLE   3.8
#define NAME    7.3
#define POSTURE 4.2
#define LEAST   2.2

static gint64
stamp (const LapScene *scene)
{
  return LAP_STAMP (scene->moment.next != NULL ? scene->moment.next->interval + 1 : 0, lap_scene_works (scene),
                    scene->moment.turn != NULL);
}

/* In work it is next; in a rest something else is, and it comes after that. */
static const char *
title (const LapScene *scene)
{
  return lap_scene_works (scene) ? _("Next") : _("Then");
}

/* "Lying on the back, 4 s to change". NULL where it isn't known. */
static char *
posture_text (const LapScene *scene)
{
  const LapTask *from = lap_scene_task (scene, scene->moment.turn), *to = lap_scene_task (scene, scene->moment.next);
  LapChangeRule rule = lap_session_rule (scene->timeline->session);
  const char *posture;
  gboolean stations;
  int seconds;

  if (to == NULL || to->shown == NULL || from == NULL || from->shown == NULL)
    return NULL;
  posture = lap_words_label (&lap_postures, to->shown->posture);
  stations = scene->moment.turn->part == scene->moment.next->part &&
             scene->timeline->parts[scene->moment.next->part].part->run == LAP_RUN_STATIONS;
  seconds = lap_change_seconds (&rule, from->shown, to->shown, stations);
  return seconds > 0 ? g_strdup_printf (_("%s, %d s to change"), posture, seconds) : g_strdup (posture);
}

static void
draw_figure (LapPanel *panel, GtkSnapshot *snapshot, const LapScene *scene, double x, double y, int width, int height)
{
  const LapTask *task = lap_scene_task (scene, scene->moment.next);
  GdkRGBA work = lap_colour (LAP_COLOUR_WORK);
  double ground = MAX (scene->unit * 0.8, 2);
  GskRenderNode *picture;

  if (task->shown == NULL || width < 8 || height - ground < 8)
    return;
  picture = lap_figure_picture (scene->timeline->catalogue, task->shown, width, height - ground,
                                gtk_widget_get_scale_factor (GTK_WIDGET (panel)), FALSE);
  if (picture == NULL)
    return;
  lap_picture_draw (picture, snapshot, x, y);
  lap_paint_rect (snapshot, &work, x, y + height - ground, width, ground);
}

static void
draw (LapPanel *panel, GtkSnapshot *snapshot, const LapScene *scene, int width, int height)
{
  double top = TITLE * 1.4 * scene->unit, foot = MIN (POSTURE * 1.5 * scene->unit, height / 4.0);
  double middle = height - top - foot, figure = MIN (width * 0.36, middle * 1.5);
  g_autofree char *name = NULL, *posture = posture_text (scene);

  if (scene->moment.next == NULL)
    return;
  name = lap_scene_name (scene, scene->moment.next);
  lap_panel_put (panel, snapshot, lap_panel_text (panel, title (scene), PANGO_WEIGHT_NORMAL, TITLE, LEAST, width, top),
                 LAP_COLOUR_INK2, 0, 0, width);
  lap_panel_put (panel, snapshot, lap_panel_text (panel, name, PANGO_WEIGHT_ULTRABOLD, NAME, LEAST,
                                                  width - figure - scene->unit, middle), LAP_COLOUR_INK, 0, top, width);
  draw_figure (panel, snapshot, scene, lap_panel_is_rtl (panel) ? 0 : width - figure, top * 0.4, figure,
               middle + top * 0.4);
  if (posture != NULL)
    lap_panel_put (panel, snapshot, lap_panel_text (panel, posture, PANGO_WEIGHT_BOLD, POSTURE, LEAST, width, foot),
                   LAP_COLOUR_INK, 0, height - foot, width);
}

static char *
tell (const LapScene *scene)
{
  g_autofree char *name = NULL, *posture = posture_text (scene);

  if (scene->moment.next == NULL)
    return NULL;
  name = lap_scene_name (scene, scene->moment.next);
  return posture != NULL ? g_strdup_printf ("%s: %s, %s", title (scene), name, posture)
                         : g_strdup_printf ("%s: %s", title (scene), name);
}

const LapPanelKind lap_panel_next = { stamp, draw, tell };
