/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/week/verbs.h"

#include "ui/week/clipboard.h"
#include "ui/week/moves.h"

#include <glib/gi18n-lib.h>

#define NEW_MINUTES 45
#define NEW_START   (9 * 60)

/* A deed on what is selected; FALSE where there is nothing to do. */
typedef gboolean (*Deed) (LapWeekView *view, LapWeekScene *scene, int arg);

static gboolean
is_editable (LapWeekScene *scene)
{
  return lap_document_is_editable (scene->document);
}

/* Only what is there every week can be done to it in a week with dates. */
static gboolean
refuse_dated (LapWeekScene *scene, const char *why)
{
  if (lap_week_scene_date (scene) == 0)
    return FALSE;
  lap_document_tell (scene->document, why);
  return TRUE;
}

/* To and fro */

static gboolean
go (LapWeekScene *scene, const char *id, LapPick how)
{
  if (id != NULL)
    lap_week_scene_pick (scene, id, how);
  return id != NULL;
}

static gboolean
go_box (LapWeekScene *scene, guint box, LapPick how)
{
  return box != LAP_NO_WEEK_BOX && go (scene, scene->score->boxes[box].c->id, how);
}

/* Along the line in time, then on to the next line. */
static gboolean
step (LapWeekView *view, LapWeekScene *scene, int by, LapPick how)
{
  guint box = lap_week_scene_box (scene), n = scene->score->n;

  if (box == LAP_NO_WEEK_BOX && lap_week_tray_focused (lap_week_view_tray (view)) != NULL)
    return go (scene, lap_week_tray_step (lap_week_view_tray (view), scene->current, by), how);
  if (n == 0)
    return FALSE;
  if (box == LAP_NO_WEEK_BOX)
    return go_box (scene, by > 0 ? 0 : n - 1, how);
  if ((by < 0 && box == 0) || (by > 0 && box + 1 == n))
    return FALSE;
  return go_box (scene, box + by, how);
}

static gboolean
go_side (LapWeekView *view, LapWeekScene *scene, int by)
{
  return step (view, scene, scene->axis->mirrored ? -by : by, LAP_PICK_ONLY);
}

static gboolean
extend (LapWeekView *view, LapWeekScene *scene, int by)
{
  return step (view, scene, scene->axis->mirrored ? -by : by, LAP_PICK_TO);
}

static gboolean
go_line (LapWeekView *view, LapWeekScene *scene, int by)
{
  guint box = lap_week_scene_box (scene);

  if (box == LAP_NO_WEEK_BOX)
    return step (view, scene, by, LAP_PICK_ONLY);
  return go_box (scene, lap_week_score_above (scene->score, box, by), LAP_PICK_ONLY);
}

static gboolean
go_end (LapWeekView *view, LapWeekScene *scene, int by)
{
  return scene->score->n > 0 && go_box (scene, by > 0 ? scene->score->n - 1 : 0, LAP_PICK_ONLY);
}

/* To the first class of the next day that has one; of one day at a time to the next day. */
static gboolean
go_day (LapWeekView *view, LapWeekScene *scene, int by)
{
  guint box = lap_week_scene_box (scene), band;

  if (scene->look.day >= 0) {
    LapPlace day = { .day = scene->look.day };

    if (!lap_week_shift_day (&day, by))
      return FALSE;
    lap_week_scene_set_day (scene, day.day);
    lap_week_scene_pick (scene, scene->score->n > 0 ? scene->score->boxes[0].c->id : NULL, LAP_PICK_ONLY);
    return TRUE;
  }
  if (box == LAP_NO_WEEK_BOX)
    return step (view, scene, by, LAP_PICK_ONLY);
  band = scene->score->rows[scene->score->boxes[box].row].band;
  while (box != LAP_NO_WEEK_BOX && scene->score->rows[scene->score->boxes[box].row].band == band)
    box = (by < 0 && box == 0) || (by > 0 && box + 1 == scene->score->n) ? LAP_NO_WEEK_BOX : box + by;
  return go_box (scene, box, LAP_PICK_ONLY);
}

static gboolean
go_warning (LapWeekView *view, LapWeekScene *scene, int by)
{
  guint n = scene->score->n, box = lap_week_scene_box (scene);

  for (guint i = 0; i < n; i++) {
    box = box == LAP_NO_WEEK_BOX ? (by > 0 ? 0 : n - 1) : (box + n + by) % n;
    if (scene->score->boxes[box].warning > 0)
      return go_box (scene, box, LAP_PICK_ONLY);
  }
  return FALSE;
}

static gboolean
pick_all (LapWeekView *view, LapWeekScene *scene, int arg)
{
  g_autoptr (GPtrArray) all = g_ptr_array_new ();

  for (guint i = 0; i < scene->score->n; i++)
    g_ptr_array_add (all, scene->score->boxes[i].c);
  lap_week_scene_pick_classes (scene, all);
  return all->len > 0;
}

static gboolean
pick_none (LapWeekView *view, LapWeekScene *scene, int arg)
{
  lap_week_scene_pick (scene, NULL, LAP_PICK_ONLY);
  return TRUE;
}

/* Where and when */

typedef gboolean (*Shift) (LapWeekScene *scene, LapClass *c, LapPlace *place, int by);

/* All that are selected, or none: each must be able to. */
static gboolean
move (LapWeekScene *scene, Shift shift, int by)
{
  g_autoptr (GPtrArray) classes = lap_week_scene_picked (scene);
  g_autofree LapPlace *places = g_new (LapPlace, MAX (classes->len, 1));

  if (classes->len == 0)
    return FALSE;
  for (guint i = 0; i < classes->len; i++) {
    places[i] = lap_week_place_now (scene, g_ptr_array_index (classes, i));
    if (!shift (scene, g_ptr_array_index (classes, i), &places[i], by))
      return FALSE;
  }
  return lap_document_apply (scene->document, lap_week_move_edits (scene, classes, places));
}

static gboolean
shift_time (LapWeekScene *scene, LapClass *c, LapPlace *place, int by)
{
  return lap_week_shift_time (place, c->minutes, by);
}

static gboolean
shift_line (LapWeekScene *scene, LapClass *c, LapPlace *place, int by)
{
  return place->day >= 0 && lap_week_shift_line (scene, place, by);
}

static gboolean
shift_day (LapWeekScene *scene, LapClass *c, LapPlace *place, int by)
{
  return lap_week_shift_day (place, by);
}

static gboolean
take_off (LapWeekScene *scene, LapClass *c, LapPlace *place, int by)
{
  if (place->day < 0)
    return FALSE;
  place->day = place->start = -1;
  return TRUE;
}

static gboolean
move_time (LapWeekView *view, LapWeekScene *scene, int by)
{
  return move (scene, shift_time, scene->axis->mirrored ? -by : by);
}

static gboolean
move_line (LapWeekView *view, LapWeekScene *scene, int by)
{
  return move (scene, shift_line, by);
}

static gboolean
move_day (LapWeekView *view, LapWeekScene *scene, int by)
{
  return move (scene, shift_day, by);
}

static gboolean
unplace (LapWeekView *view, LapWeekScene *scene, int arg)
{
  return !refuse_dated (scene, _("On a date a class can only be cancelled")) && move (scene, take_off, 0);
}

static gboolean
lengthen (LapWeekView *view, LapWeekScene *scene, int by)
{
  g_autoptr (GPtrArray) classes = lap_week_scene_picked (scene);

  return classes->len > 0 && !refuse_dated (scene, _("A class is as long on one date as on all")) &&
         lap_document_apply (scene->document, lap_verb_lengthen (classes, by));
}

/* Coming and going */

/* On their dates alone. Exceptions that are there are replaced one for one, others come to the end: so the positions of
 * the groups hold one after the other. */
static gboolean
cancel_picked (LapWeekScene *scene)
{
  g_autoptr (GPtrArray) classes = lap_week_scene_picked (scene);
  g_autofree char *title = lap_classes_title (classes), *label = g_strdup_printf (_("Cancel %s on one date"), title);
  LapEdits *edits = lap_edits_new (label);

  for (guint i = 0; i < classes->len; i++) {
    LapClass *c = g_ptr_array_index (classes, i);
    guint box = lap_week_score_find (scene->score, c->id);

    if (box == LAP_NO_WEEK_BOX || scene->score->boxes[box].off)
      continue;
    lap_edits_append (edits, lap_verb_cancel_on (lap_week_scene_week (scene), c, lap_occurrence_nth (
                             scene->score->occurrences, scene->score->boxes[box].occurrence)->was));
  }
  if (lap_edits_n (edits) > 0)
    return lap_document_apply (scene->document, edits);
  lap_edits_free (edits);
  return FALSE;
}

static gboolean
remove_picked (LapWeekView *view, LapWeekScene *scene, int arg)
{
  g_autoptr (GPtrArray) classes = lap_week_scene_picked (scene), next = g_ptr_array_new ();
  guint box = lap_week_scene_box (scene);

  if (lap_week_scene_date (scene) != 0)
    return cancel_picked (scene);
  if (classes->len == 0 ||
      !lap_document_apply (scene->document, lap_verb_remove_classes (lap_week_scene_week (scene), classes)))
    return FALSE;
  /* What stands where they went has the cursor, so that keys go on. */
  if (scene->score->n > 0 && box != LAP_NO_WEEK_BOX)
    g_ptr_array_add (next, scene->score->boxes[MIN (box, scene->score->n - 1)].c);
  lap_week_scene_pick_classes (scene, next);
  return TRUE;
}

static gboolean
as_always (LapWeekView *view, LapWeekScene *scene, int arg)
{
  LapClass *c = lap_week_scene_current (scene);
  guint box = lap_week_scene_box (scene);

  if (c == NULL || box == LAP_NO_WEEK_BOX || lap_week_scene_date (scene) == 0)
    return FALSE;
  return lap_document_apply (scene->document, lap_verb_as_always (lap_week_scene_week (scene), c, lap_occurrence_nth (
                             scene->score->occurrences, scene->score->boxes[box].occurrence)->was));
}

/* The file has no classes that are there once. */
static gboolean
refuse_new (LapWeekScene *scene)
{
  return refuse_dated (scene, _("A class that is added is there every week: go to every week first"));
}

static gboolean
add_copies (LapWeekScene *scene, GPtrArray *copies, const char *format)
{
  LapWeek *week = lap_week_scene_week (scene);

  if (refuse_new (scene))
    return FALSE;
  for (guint i = 0; i < copies->len; i++)
    lap_week_place_copy (week, g_ptr_array_index (copies, i));
  if (copies->len == 0 || !lap_document_apply (scene->document, lap_verb_add_classes (week, copies, format)))
    return FALSE;
  lap_week_scene_pick_classes (scene, copies);
  return TRUE;
}

static gboolean
duplicate (LapWeekView *view, LapWeekScene *scene, int arg)
{
  g_autoptr (GPtrArray) classes = lap_week_scene_picked (scene), copies = lap_classes_copy (classes);

  return add_copies (scene, copies, _("Duplicate %s"));
}

static gboolean
copy (LapWeekView *view, LapWeekScene *scene, int cut)
{
  g_autoptr (GPtrArray) classes = lap_week_scene_picked (scene);

  if (classes->len == 0 || (cut && refuse_dated (scene, _("On a date a class can only be cancelled"))))
    return FALSE;
  lap_week_copy (scene, gtk_widget_get_clipboard (GTK_WIDGET (view)), classes);
  return !cut || remove_picked (view, scene, 0);
}

static gboolean
paste (LapWeekView *view, LapWeekScene *scene, int arg)
{
  if (refuse_new (scene))
    return FALSE;
  lap_week_paste (scene, gtk_widget_get_clipboard (GTK_WIDGET (view)));
  return TRUE;
}

static gboolean
add_at (LapWeekScene *scene, const LapPlace *place)
{
  LapClass *like = lap_week_scene_current (scene);
  g_autoptr (LapClass) c = lap_class_new (like != NULL ? like->kind : _("class"), like != NULL ? like->minutes : NEW_MINUTES);
  g_autoptr (GPtrArray) added = g_ptr_array_new ();

  if (refuse_new (scene))
    return FALSE;
  c->title = g_strdup (_("New class"));
  c->day = place->day;
  c->start = place->day >= 0 ? MIN (place->start, LAP_DAY_MINUTES - c->minutes) : -1;
  c->room = g_strdup (place->room);
  c->coach = g_strdup (place->coach);
  g_ptr_array_add (added, c);
  if (!lap_document_apply (scene->document, lap_verb_add_classes (lap_week_scene_week (scene), added, _("Add %s"))))
    return FALSE;
  lap_week_scene_pick_classes (scene, added);
  return TRUE;
}

/* After the one with the cursor, on its line; else on the first line when the house opens. */
static gboolean
add (LapWeekView *view, LapWeekScene *scene, int arg)
{
  LapClass *c = lap_week_scene_current (scene);
  LapPlace place = { MAX (scene->look.day, 0), NEW_START, NULL, NULL };
  LapSpan open;

  if (c != NULL && lap_class_is_placed (c)) {
    place = lap_week_place_now (scene, c);
    place.start = (place.start + c->minutes + LAP_SNAP_MINUTES - 1) / LAP_SNAP_MINUTES * LAP_SNAP_MINUTES;
    if (place.start + c->minutes > LAP_DAY_MINUTES)
      place.start = LAP_DAY_MINUTES - c->minutes;
  } else if (scene->score->n_rows > 0) {
    if (lap_week_scene_week (scene)->open[place.day] != NULL && lap_week_open (lap_week_scene_week (scene), place.day, &open))
      place.start = open.start;
    lap_week_set_line (scene, &place, 0);
  }
  return add_at (scene, &place);
}

static gboolean
add_here (LapWeekView *view, LapWeekScene *scene, int arg)
{
  const LapPlace *spot = lap_week_view_spot (view);

  return spot != NULL ? add_at (scene, spot) : add (view, scene, arg);
}

/* One that waits is placed where it can be; one with a session is opened. */
static gboolean
enter (LapWeekView *view, LapWeekScene *scene, int arg)
{
  LapClass *c = lap_week_scene_current (scene);
  LapPlace place;

  if (c == NULL)
    return FALSE;
  if (lap_class_is_placed (c)) {
    if (c->session == NULL || *c->session == '\0')
      return FALSE;
    g_signal_emit_by_name (view, "open-session", c->id);
    return TRUE;
  }
  if (refuse_dated (scene, _("A class that is placed is there every week: go to every week first")))
    return FALSE;
  if (!lap_week_free_place (lap_week_scene_week (scene), c, scene->look.day, &place)) {
    lap_document_tell (scene->document, _("There is no free place for it"));
    return FALSE;
  }
  return lap_document_apply (scene->document, lap_verb_place (c, &place));
}

/* The view */

static gboolean
open_menu (LapWeekView *view, LapWeekScene *scene, int arg)
{
  GtkWidget *card = lap_week_strip_find (lap_week_view_strip (view), scene->current);
  GtkWidget *ticket = lap_week_tray_find (lap_week_view_tray (view), scene->current);
  GtkWidget *from = ticket != NULL ? ticket : card != NULL ? card : GTK_WIDGET (lap_week_view_strip (view));
  graphene_point_t point;

  if (!gtk_widget_compute_point (from, GTK_WIDGET (lap_week_view_strip (view)), &GRAPHENE_POINT_INIT (10, 10), &point))
    return FALSE;
  lap_week_view_set_spot (view, NULL);
  lap_week_view_open_menu (view, point.x, point.y);
  return TRUE;
}

static const struct { const char *action; Deed deed; int arg; gboolean edits; } deeds[] = {
  { "week.left", go_side, -1, FALSE },
  { "week.right", go_side, 1, FALSE },
  { "week.up", go_line, -1, FALSE },
  { "week.down", go_line, 1, FALSE },
  { "week.first", go_end, -1, FALSE },
  { "week.last", go_end, 1, FALSE },
  { "week.next-day", go_day, 1, FALSE },
  { "week.previous-day", go_day, -1, FALSE },
  { "week.next-warning", go_warning, 1, FALSE },
  { "week.previous-warning", go_warning, -1, FALSE },
  { "week.extend-left", extend, -1, FALSE },
  { "week.extend-right", extend, 1, FALSE },
  { "week.all", pick_all, 0, FALSE },
  { "week.clear", pick_none, 0, FALSE },
  { "week.earlier", move_time, -LAP_SNAP_MINUTES, TRUE },
  { "week.later", move_time, LAP_SNAP_MINUTES, TRUE },
  { "week.little-earlier", move_time, -LAP_SNAP_FINE, TRUE },
  { "week.little-later", move_time, LAP_SNAP_FINE, TRUE },
  { "week.line-above", move_line, -1, TRUE },
  { "week.line-below", move_line, 1, TRUE },
  { "week.day-before", move_day, -1, TRUE },
  { "week.day-after", move_day, 1, TRUE },
  { "week.longer", lengthen, LAP_SNAP_MINUTES, TRUE },
  { "week.shorter", lengthen, -LAP_SNAP_MINUTES, TRUE },
  { "week.little-longer", lengthen, LAP_SNAP_FINE, TRUE },
  { "week.little-shorter", lengthen, -LAP_SNAP_FINE, TRUE },
  { "week.add", add, 0, TRUE },
  { "week.add-here", add_here, 0, TRUE },
  { "week.remove", remove_picked, 0, TRUE },
  { "week.unplace", unplace, 0, TRUE },
  { "week.as-always", as_always, 0, TRUE },
  { "week.duplicate", duplicate, 0, TRUE },
  { "week.copy", copy, FALSE, FALSE },
  { "week.cut", copy, TRUE, TRUE },
  { "week.paste", paste, 0, TRUE },
  { "week.enter", enter, 0, FALSE },
  { "week.menu", open_menu, 0, FALSE },
};

static void
deed_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapWeekView *view = LAP_WEEK_VIEW (widget);
  LapWeekScene *scene = lap_week_view_scene (view);
  const char *focused = lap_week_tray_focused (lap_week_view_tray (view));
  guint i = 0;

  if (focused != NULL && !lap_week_scene_is_picked (scene, focused))
    lap_week_scene_pick (scene, focused, LAP_PICK_ONLY);
  while (!g_str_equal (deeds[i].action, name))
    i++;
  if (deeds[i].edits && !is_editable (scene))
    lap_document_tell (scene->document, lap_document_why_not (scene->document));
  else if (!deeds[i].deed (view, scene, deeds[i].arg))
    gtk_widget_error_bell (widget);
  if (deeds[i].deed != open_menu)
    lap_week_view_take_focus (view);
}

/* Those that say to what: a day, a coach, a room, each by its id. */

static void
copy_day_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapWeekScene *scene = lap_week_view_scene (LAP_WEEK_VIEW (widget));
  LapClass *c = lap_week_scene_current (scene);
  const LapPlace *spot = lap_week_view_spot (LAP_WEEK_VIEW (widget));
  int from = c != NULL ? c->day : spot != NULL ? spot->day : scene->look.day;
  int to = lap_words_find (&lap_days, g_variant_get_string (parameter, NULL));

  if (from < 0 || to < 0 || from == to || !is_editable (scene) || refuse_new (scene) ||
      !lap_document_apply (scene->document, lap_verb_copy_day (lap_week_scene_week (scene), from, to)))
    gtk_widget_error_bell (widget);
  lap_week_view_take_focus (LAP_WEEK_VIEW (widget));
}

static void
give_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapWeekScene *scene = lap_week_view_scene (LAP_WEEK_VIEW (widget));
  g_autoptr (GPtrArray) classes = lap_week_scene_picked (scene);
  g_autofree LapPlace *places = g_new (LapPlace, MAX (classes->len, 1));
  const char *id = g_variant_get_string (parameter, NULL);

  for (guint i = 0; i < classes->len; i++) {
    places[i] = lap_week_place_now (scene, g_ptr_array_index (classes, i));
    if (g_str_equal (name, "week.give"))
      places[i].coach = id;
    else
      places[i].room = id;
  }
  if (classes->len == 0 || !is_editable (scene) ||
      !lap_document_apply (scene->document, lap_week_move_edits (scene, classes, places)))
    gtk_widget_error_bell (widget);
  lap_week_view_take_focus (LAP_WEEK_VIEW (widget));
}

void
lap_week_verbs_install (GtkWidgetClass *klass)
{
  for (guint i = 0; i < G_N_ELEMENTS (deeds); i++)
    gtk_widget_class_install_action (klass, deeds[i].action, NULL, deed_action);
  gtk_widget_class_install_action (klass, "week.copy-day", "s", copy_day_action);
  gtk_widget_class_install_action (klass, "week.give", "s", give_action);
  gtk_widget_class_install_action (klass, "week.put", "s", give_action);
}
