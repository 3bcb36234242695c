/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/week/scene.h"

#include "base/customs.h"
#include "ui/letters.h"

#include <math.h>

/* px a minute and px of a line of text, below which hours aren't made narrower by themselves; of one day at a time. */
#define READABLE 0.05
#define READABLE_DAY 0.062
#define ZOOM_MOST 8.0  /* px a minute */
#define LABEL    3.6   /* px of an hour and its label, and px of a line */
#define MARGIN   24    /* px beside a class that is scrolled to */

G_DEFINE_FINAL_TYPE (LapWeekScene, lap_week_scene, G_TYPE_OBJECT)

static guint changed_signal;

static void
tell (LapWeekScene *self, LapWeekChange change)
{
  g_signal_emit (self, changed_signal, 0, change);
}

LapWeek *
lap_week_scene_week (LapWeekScene *self)
{
  return lap_document_week (self->document);
}

int
lap_week_scene_date (LapWeekScene *self)
{
  return lap_document_date (self->document);
}

/* Letters. Texts come back with each change of the week: their widths are kept. */

static double
width_cb (gpointer data, LapWeight weight, const char *text, gssize bytes)
{
  LapWeekScene *self = data;
  g_autofree char *key = g_strdup_printf ("%d%s", weight, text);
  gpointer known;
  int width = 0;

  if (self->pango == NULL)
    return 0.6 * g_utf8_strlen (text, bytes);
  if (!g_hash_table_lookup_extended (self->widths, key, NULL, &known)) {
    g_autoptr (PangoLayout) layout = pango_layout_new (self->pango);
    g_autoptr (PangoAttrList) attrs = pango_attr_list_new ();

    if (weight != LAP_WEIGHT_PLAIN)
      pango_attr_list_insert (attrs, pango_attr_weight_new (PANGO_WEIGHT_BOLD));
    pango_layout_set_attributes (layout, attrs);
    pango_layout_set_text (layout, text, bytes);
    pango_layout_get_pixel_size (layout, &width, NULL);
    known = GINT_TO_POINTER (width);
    g_hash_table_insert (self->widths, g_steal_pointer (&key), known);
  }
  return GPOINTER_TO_INT (known) / self->look.em;
}

/* The score */

static void
fit_axis (LapWeekScene *self)
{
  double least = (self->look.day >= 0 ? READABLE_DAY : READABLE) * self->look.line;

  if (self->fitted && self->axis->view > 1)
    lap_axis_zoom_at (self->axis, MAX (lap_axis_fit (self->axis), least), 0);
}

static void
update_adjustment (LapWeekScene *self)
{
  gtk_adjustment_configure (self->adjustment, self->axis->offset, 0, MAX (self->axis->width, self->axis->view),
                            self->axis->view / 10, self->axis->view * 0.9, self->axis->view);
}

/* When no class is in sight, but some are in hours that have no room, the first one comes into sight. */
static void
show_some (LapWeekScene *self)
{
  const LapWeekScore *score = self->score;
  guint first = LAP_NO_WEEK_BOX;

  for (guint i = 0; i < score->n; i++) {
    double a = lap_week_score_x (score, self->axis, score->boxes[i].start);
    double b = lap_week_score_x (score, self->axis, score->boxes[i].end);

    if (MIN (a, b) < self->axis->view && MAX (a, b) > 0)
      return;
    if (first == LAP_NO_WEEK_BOX || score->boxes[i].start < score->boxes[first].start)
      first = i;
  }
  if (first != LAP_NO_WEEK_BOX && self->axis->view > 1) {
    double x = lap_week_score_x (score, self->axis, score->boxes[first].start);

    lap_axis_scroll (self->axis, self->axis->offset + (self->axis->mirrored ? self->axis->view - x : x) - 2 * MARGIN);
    update_adjustment (self);
  }
}

static LapWeekScore *
make_score (LapWeekScene *self, const LapCheckup *checkup)
{
  LapWeekLook look = self->look;

  look.first = lap_customs ().first_day;
  look.rooms = g_hash_table_size (self->filters[LAP_SIEVE_ROOMS]) > 0 ? self->filters[LAP_SIEVE_ROOMS] : NULL;
  look.coaches = g_hash_table_size (self->filters[LAP_SIEVE_COACHES]) > 0 ? self->filters[LAP_SIEVE_COACHES] : NULL;
  look.kinds = g_hash_table_size (self->filters[LAP_SIEVE_KINDS]) > 0 ? self->filters[LAP_SIEVE_KINDS] : NULL;
  return lap_week_score_new (lap_week_scene_week (self), lap_week_scene_date (self), &look, checkup,
                             lap_document_attachments (self->document));
}

static void
clear_ghost (gpointer ghost)
{
  g_free (((LapWeekGhost *) ghost)->line);
  g_free (((LapWeekGhost *) ghost)->text);
}

static void
drop_ghosts (LapWeekScene *self)
{
  g_clear_pointer (&self->ghosts, g_array_unref);
  g_clear_pointer (&self->ghost_says, g_free);
}

/* What has gone isn't selected any more, nor is anything filtered by it. */
static gboolean
is_gone (gpointer id, gpointer value, gpointer week)
{
  return lap_week_class (week, id) == NULL;
}

static gboolean
is_gone_room (gpointer id, gpointer value, gpointer week)
{
  return lap_week_room (week, id) == NULL;
}

static gboolean
is_gone_coach (gpointer id, gpointer value, gpointer week)
{
  return lap_week_coach (week, id) == NULL;
}

static void
rebuild (LapWeekScene *self, LapWeekChange change)
{
  LapWeek *week = lap_week_scene_week (self);

  drop_ghosts (self);
  g_clear_pointer (&self->score, lap_week_score_free);
  g_hash_table_foreach_remove (self->filters[LAP_SIEVE_ROOMS], is_gone_room, week);
  g_hash_table_foreach_remove (self->filters[LAP_SIEVE_COACHES], is_gone_coach, week);
  if (g_hash_table_foreach_remove (self->chosen, is_gone, week) > 0)
    change |= LAP_WEEK_SELECTION;
  if (self->current != NULL && lap_week_class (week, self->current) == NULL)
    g_clear_pointer (&self->current, g_free);
  self->score = make_score (self, lap_document_checkup (self->document));
  lap_week_score_set_axis (self->score, self->axis);
  fit_axis (self);
  update_adjustment (self);
  tell (self, change | LAP_WEEK_PLAN);
}

static void
changed_cb (LapWeekScene *self)
{
  rebuild (self, LAP_WEEK_PLAN);
}

static void
scrolled_cb (LapWeekScene *self)
{
  double was = self->axis->offset;

  lap_axis_scroll (self->axis, gtk_adjustment_get_value (self->adjustment));
  if (self->axis->offset != was)
    tell (self, LAP_WEEK_AXIS);
}

static void
lap_week_scene_dispose (GObject *object)
{
  LapWeekScene *self = LAP_WEEK_SCENE (object);

  drop_ghosts (self);
  g_clear_pointer (&self->score, lap_week_score_free);
  g_clear_object (&self->document);
  g_clear_object (&self->adjustment);
  G_OBJECT_CLASS (lap_week_scene_parent_class)->dispose (object);
}

static void
lap_week_scene_finalize (GObject *object)
{
  LapWeekScene *self = LAP_WEEK_SCENE (object);

  for (guint i = 0; i < LAP_N_SIEVES; i++)
    g_hash_table_unref (self->filters[i]);
  g_hash_table_unref (self->chosen);
  g_hash_table_unref (self->widths);
  g_free (self->current);
  lap_axis_free (self->axis);
  G_OBJECT_CLASS (lap_week_scene_parent_class)->finalize (object);
}

static void
lap_week_scene_class_init (LapWeekSceneClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = lap_week_scene_dispose;
  G_OBJECT_CLASS (klass)->finalize = lap_week_scene_finalize;
  changed_signal = g_signal_new ("changed", LAP_TYPE_WEEK_SCENE, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 1,
                                 G_TYPE_UINT);
}

static void
lap_week_scene_init (LapWeekScene *self)
{
  self->axis = lap_axis_new ();
  self->adjustment = g_object_ref_sink (gtk_adjustment_new (0, 0, 1, 1, 1, 1));
  for (guint i = 0; i < LAP_N_SIEVES; i++)
    self->filters[i] = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  self->chosen = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  self->widths = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  self->fitted = TRUE;
  self->measure = (LapMeasure) { width_cb, NULL, NULL, self };
  self->look = (LapWeekLook) { .day = -1, .measure = &self->measure, .em = 12, .line = 16 };
  g_signal_connect_swapped (self->adjustment, "value-changed", G_CALLBACK (scrolled_cb), self);
}

LapWeekScene *
lap_week_scene_new (LapDocument *document)
{
  LapWeekScene *self = g_object_new (LAP_TYPE_WEEK_SCENE, NULL);

  self->document = g_object_ref (document);
  g_signal_connect_object (document, "changed", G_CALLBACK (changed_cb), self, G_CONNECT_SWAPPED);
  rebuild (self, LAP_WEEK_PLAN);
  return self;
}

void
lap_week_scene_set_letters (LapWeekScene *self, PangoContext *pango)
{
  if (self->pango == pango && self->serial == pango_context_get_serial (pango))
    return;
  self->pango = pango;
  self->serial = pango_context_get_serial (pango);
  self->look.em = MAX (lap_letters_size (pango), 4);
  self->look.line = lap_pango_line (pango);
  g_hash_table_remove_all (self->widths);
  rebuild (self, LAP_WEEK_PLAN);
}

void
lap_week_scene_set_view (LapWeekScene *self, int width, gboolean mirrored)
{
  if (self->axis->view == width && self->axis->mirrored == mirrored)
    return;
  lap_axis_set_view (self->axis, width, mirrored);
  fit_axis (self);
  update_adjustment (self);
  show_some (self);
}

void
lap_week_scene_set_day (LapWeekScene *self, int day)
{
  if (self->look.day == day)
    return;
  self->look.day = day;
  rebuild (self, LAP_WEEK_SHOWN);
  show_some (self);
  tell (self, LAP_WEEK_AXIS);
}

void
lap_week_scene_set_by_coach (LapWeekScene *self, gboolean by_coach)
{
  if (self->look.by_coach == by_coach)
    return;
  self->look.by_coach = by_coach;
  rebuild (self, LAP_WEEK_SHOWN);
}

void
lap_week_scene_set_detailed (LapWeekScene *self, gboolean detailed)
{
  if (self->look.detailed == detailed)
    return;
  self->look.detailed = detailed;
  rebuild (self, LAP_WEEK_PLAN);
}

void
lap_week_scene_filter (LapWeekScene *self, LapWeekSieve filter, const char *id, gboolean on)
{
  GHashTable *set = self->filters[filter];

  if (id == NULL)
    g_hash_table_remove_all (set);
  else if (on)
    g_hash_table_add (set, g_strdup (id));
  else
    g_hash_table_remove (set, id);
  rebuild (self, LAP_WEEK_SHOWN);
}

int
lap_week_scene_tall (LapWeekScene *self)
{
  const LapWeekScore *score = self->score;
  int lanes = 0;

  if (self->look.detailed)
    return score->height;
  for (guint i = 0; i < score->n_rows; i++)
    lanes += score->rows[i].height / score->cell;
  return score->height + lanes * lround (self->look.line);
}

int
lap_week_scene_step (LapWeekScene *self)
{
  return lap_week_score_step (self->axis, LABEL * self->look.line);
}

void
lap_week_scene_zoom (LapWeekScene *self, double zoom, double x)
{
  self->fitted = FALSE;
  lap_axis_zoom_at (self->axis, CLAMP (zoom, MIN (lap_axis_fit (self->axis), ZOOM_MOST), ZOOM_MOST), x);
  update_adjustment (self);
  tell (self, LAP_WEEK_AXIS);
}

void
lap_week_scene_fit (LapWeekScene *self)
{
  self->fitted = TRUE;
  fit_axis (self);
  update_adjustment (self);
  tell (self, LAP_WEEK_AXIS);
}

void
lap_week_scene_scroll_by (LapWeekScene *self, double px)
{
  gtk_adjustment_set_value (self->adjustment, gtk_adjustment_get_value (self->adjustment) + px);
}

/* Whether the box is where @now has the class, for as long and with as many words. */
static gboolean
is_as_now (const LapWeekScore *now, const LapWeekScore *then, const LapWeekBox *box)
{
  guint i = lap_week_score_find (now, box->c->id);
  const LapWeekBox *was = i != LAP_NO_WEEK_BOX ? &now->boxes[i] : NULL;

  return was != NULL && was->row == box->row && was->start == box->start && was->end == box->end &&
         was->off == box->off && g_str_equal (was->detail, box->detail);
}

static void
add_ghosts (LapWeekScene *self, const LapWeekScore *then, const LapCheckup *checkup)
{
  guint gravest = G_MAXUINT;

  for (guint i = 0; i < then->n; i++) {
    const LapWeekBox *box = &then->boxes[i];
    const LapWeekRow *row = &then->rows[box->row];
    LapWeekGhost ghost = { then->bands[row->band].day, box->start, box->end };

    if (is_as_now (self->score, then, box))
      continue;
    ghost.line = g_strdup (row->id);
    ghost.text = g_strdup (box->detail);
    ghost.lane = box->lane;
    g_array_append_val (self->ghosts, ghost);
    if (box->warning > 0)
      gravest = MIN (gravest, box->warning);
  }
  if (gravest != G_MAXUINT && lap_checkup_nth (checkup, gravest - 1)->check->severity != LAP_SEVERITY_NOTE)
    self->ghost_says = lap_warning_message (checkup, lap_checkup_nth (checkup, gravest - 1));
}

void
lap_week_scene_preview (LapWeekScene *self, LapEdits *edits)
{
  if (edits == NULL && self->ghosts == NULL)
    return;
  drop_ghosts (self);
  if (edits != NULL) {
    g_autoptr (LapCheckup) checkup = NULL;
    g_autoptr (LapWeekScore) then = NULL;

    lap_edits_swap (edits);
    checkup = lap_checkup_new_week (lap_week_scene_week (self), lap_week_scene_date (self),
                                    lap_document_attachments (self->document));
    then = make_score (self, checkup);
    self->ghosts = g_array_new (FALSE, FALSE, sizeof (LapWeekGhost));
    g_array_set_clear_func (self->ghosts, clear_ghost);
    add_ghosts (self, then, checkup);
    lap_edits_swap (edits);
  }
  tell (self, LAP_WEEK_GHOSTS);
}

/* What is selected */

/* Where one day is seen at a time, that of the class with the cursor comes. */
static void
follow_day (LapWeekScene *self)
{
  for (guint i = 0; self->look.day >= 0 && i < self->score->occurrences->len; i++) {
    const LapOccurrence *o = lap_occurrence_nth (self->score->occurrences, i);

    if (g_strcmp0 (o->c->id, self->current) == 0 && o->day != self->look.day) {
      lap_week_scene_set_day (self, o->day);
      return;
    }
  }
}

static void
reveal (LapWeekScene *self)
{
  guint box;

  follow_day (self);
  box = lap_week_scene_box (self);
  if (box == LAP_NO_WEEK_BOX ||
      !lap_axis_reveal (self->axis, self->score->boxes[box].start - self->score->first,
                        self->score->boxes[box].end - self->score->first, MARGIN))
    return;
  update_adjustment (self);
  tell (self, LAP_WEEK_AXIS);
}

void
lap_week_scene_pick (LapWeekScene *self, const char *id, LapPick how)
{
  guint from = lap_week_scene_box (self), to = lap_week_score_find (self->score, id);
  g_autofree char *own = g_strdup (id); /* it may be one that goes */

  if (how == LAP_PICK_ONLY || own == NULL)
    g_hash_table_remove_all (self->chosen);
  if (how == LAP_PICK_TOGGLE && own != NULL && g_hash_table_contains (self->chosen, own)) {
    g_hash_table_remove (self->chosen, own);
    if (g_strcmp0 (self->current, own) == 0)
      g_clear_pointer (&self->current, g_free);
    tell (self, LAP_WEEK_SELECTION);
    return;
  }
  if (how == LAP_PICK_TO && from != LAP_NO_WEEK_BOX && to != LAP_NO_WEEK_BOX)
    for (guint i = MIN (from, to); i <= MAX (from, to); i++)
      g_hash_table_add (self->chosen, g_strdup (self->score->boxes[i].c->id));
  g_free (self->current);
  self->current = g_steal_pointer (&own);
  if (self->current != NULL)
    g_hash_table_add (self->chosen, g_strdup (self->current));
  reveal (self);
  tell (self, LAP_WEEK_SELECTION);
}

void
lap_week_scene_pick_classes (LapWeekScene *self, GPtrArray *classes)
{
  g_hash_table_remove_all (self->chosen);
  g_clear_pointer (&self->current, g_free);
  for (guint i = 0; i < classes->len; i++) {
    LapClass *c = g_ptr_array_index (classes, i);

    g_hash_table_add (self->chosen, g_strdup (c->id));
    g_free (self->current);
    self->current = g_strdup (c->id);
  }
  reveal (self);
  tell (self, LAP_WEEK_SELECTION);
}

gboolean
lap_week_scene_is_picked (LapWeekScene *self, const char *id)
{
  return id != NULL && g_hash_table_contains (self->chosen, id);
}

static GPtrArray *
classes_where (LapWeekScene *self, gboolean picked)
{
  LapWeek *week = lap_week_scene_week (self);
  GPtrArray *classes = g_ptr_array_new ();

  for (guint i = 0; i < lap_list_n (week->classes); i++) {
    LapClass *c = lap_list_nth (week->classes, i);

    if (picked ? lap_week_scene_is_picked (self, c->id) : !lap_class_is_placed (c))
      g_ptr_array_add (classes, c);
  }
  return classes;
}

GPtrArray *
lap_week_scene_picked (LapWeekScene *self)
{
  return classes_where (self, TRUE);
}

GPtrArray *
lap_week_scene_waiting (LapWeekScene *self)
{
  return classes_where (self, FALSE);
}

LapClass *
lap_week_scene_current (LapWeekScene *self)
{
  return lap_week_class (lap_week_scene_week (self), self->current);
}

guint
lap_week_scene_box (LapWeekScene *self)
{
  return self->score != NULL ? lap_week_score_find (self->score, self->current) : LAP_NO_WEEK_BOX;
}
