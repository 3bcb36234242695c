/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Checks of filming and of what is published from it.
 */
#include "base/customs.h"
#include "catalogue/camera.h"
#include "checks/remedies.h"
#include "checks/report.h"

#include <glib/gi18n-lib.h>

static void
frame_cut (LapCheckup *cx, const LapCheck *check, guint turn)
{
  const LapSession *s = cx->session;
  const LapExercise *e = LAP_TASK (cx, turn)->shown;
  gboolean portrait = s->frame == LAP_FRAME_PORTRAIT;

  if (e != NULL && !lap_camera_fits (e, s->lens, portrait, s->room, s->camera_height))
    lap_report_turns (cx, check, turn, turn, turn)->x = lap_camera_distance (e, s->lens, portrait);
}

static void
find_frame_cut (LapCheckup *cx, const LapCheck *check)
{
  lap_each_task (cx, check, frame_cut);
}

static char *
tell_frame_cut (const LapCheckup *cx, const LapWarning *w)
{
  g_autofree char *away = lap_distance_up_text (w->x), *room = lap_distance_text (cx->session->room);

  return g_strdup_printf (_("%1$s leaves the frame: at %2$.0f mm the camera has to stand %3$s away, and the room gives "
                            "%4$s."), lap_turn_name (cx, w->a), cx->session->lens, away, room);
}

static void
remedy_frame_cut (const LapCheckup *cx, const LapWarning *w, GPtrArray *remedies)
{
  static const int lenses[] = { 24, 20, 18, 16, 14, 13 };
  const LapExercise *e = LAP_TASK (cx, w->a)->shown;
  gboolean portrait = cx->session->frame == LAP_FRAME_PORTRAIT;
  LapEdits *turned = lap_edits_new (_("Turn the camera"));

  for (guint i = 0; i < G_N_ELEMENTS (lenses); i++) {
    LapEdits *edits;

    if (lenses[i] >= cx->session->lens || lap_camera_distance (e, lenses[i], portrait) > cx->session->room)
      continue;
    edits = lap_edits_new (_("Change the lens"));
    lap_edits_set_double (edits, cx->session, "film-lens", lenses[i]);
    lap_remedy_add (remedies, g_strdup_printf (_("Film at %d mm"), lenses[i]), edits);
    break;
  }
  if (lap_camera_distance (e, cx->session->lens, !portrait) <= cx->session->room)
    lap_edits_set_int (turned, cx->session, "film-frame", portrait ? LAP_FRAME_LANDSCAPE : LAP_FRAME_PORTRAIT);
  lap_remedy_add (remedies, g_strdup (portrait ? _("Turn the camera to landscape") : _("Turn the camera upright")),
                  turned);
}

/* A chapter of the main part is a block in a round, to the start of the next one. */
static void
find_chapter_short (LapCheckup *cx, const LapCheck *check)
{
  const LapTimeline *t = cx->timeline;

  for (guint i = 0; i < t->n_turns; i++) {
    const LapTurn *turn = LAP_TURN (cx, i);
    gboolean followed = i + 1 < t->n_turns && LAP_TURN (cx, i + 1)->part == turn->part;
    int end = followed ? LAP_TURN (cx, i + 1)->start : t->parts[turn->part].end;

    if (turn->part_kind != LAP_PART_MAIN || turn->round != 1 || end - turn->start >= 10 ||
        t->parts[turn->part].part->run == LAP_RUN_OWN_PACE)
      continue;
    lap_report_turns (cx, check, i, i, i)->x = end - turn->start;
  }
}

static char *
tell_chapter_short (const LapCheckup *cx, const LapWarning *w)
{
  return g_strdup_printf (_("%1$s would be a chapter of %2$.0f s; it joins the one before."), lap_turn_name (cx, w->a),
                          w->x);
}

const LapCheck lap_checks_film[] = {
  { "frame-cut", LAP_SEVERITY_WARNING, LAP_NEEDS_TIMELINE, N_("Out of the frame"),
    N_("Hands or feet that leave the picture can’t be followed; a tenth of the frame stays clear all round."),
    N_("geometry of a 36 × 24 mm sensor at 16:9; the margin is common practice"),
    find_frame_cut, tell_frame_cut, NULL, remedy_frame_cut },
  { "chapter-short", LAP_SEVERITY_NOTE, LAP_NEEDS_TIMELINE, N_("A very short chapter"),
    N_("Chapters of less than ten seconds are dropped by most players."), N_("common practice"),
    find_chapter_short, tell_chapter_short, NULL, NULL },
  { NULL },
};
