/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/week/card.h"

#include "ui/mark.h"
#include "ui/palette.h"
#include "ui/score/paint.h"
#include "ui/week/words.h"

#include <glib/gi18n-lib.h>
#include <string.h>

struct _LapWeekCard {
  GtkWidget     parent_instance;
  LapWeekScene *scene;
  guint         box;
  char         *id;
  LapWeekPlaced placed;
  gboolean      picked;
  PangoLayout  *name, *detail, *number, *none;
};

G_DEFINE_FINAL_TYPE (LapWeekCard, lap_week_card, GTK_TYPE_WIDGET)

#define BESIDE 3 /* px of the frame on either side */
#define CREST  0.85 /* width of a crest of its height */

void
lap_week_crests_draw (cairo_t *cr, int strain, double x, double y, double height, gboolean mirrored)
{
  GdkRGBA stroke = lap_colour (LAP_COLOUR_EFFORT), fill = stroke;
  double width = height * CREST;

  fill.alpha = 0.18;
  cairo_set_line_width (cr, 1.3);
  cairo_set_line_join (cr, CAIRO_LINE_JOIN_MITER);
  for (int i = 0; i <= strain; i++) {
    double left = mirrored ? x - (i + 1) * width : x + i * width;

    cairo_move_to (cr, left, y);
    cairo_line_to (cr, left + width / 2, y - height + 1);
    cairo_line_to (cr, left + width, y);
    gdk_cairo_set_source_rgba (cr, &fill);
    cairo_fill_preserve (cr);
    gdk_cairo_set_source_rgba (cr, &stroke);
    cairo_stroke (cr);
  }
}

void
lap_week_bar_draw (cairo_t *cr, const LapBarLook *look, double x, double y, double width, double height)
{
  GdkRGBA work = lap_colour (LAP_COLOUR_WORK), pale = lap_colour (LAP_COLOUR_WORK2);
  GdkRGBA paper = lap_colour (LAP_COLOUR_PAPER), line = lap_colour (LAP_COLOUR_LINE2);
  gboolean solid = look->strain >= LAP_STRAIN_MODERATE;

  if (look->off) {
    cairo_save (cr);
    cairo_set_dash (cr, (double[]) { 3, 2 }, 2, 0);
    lap_paint_box (cr, &paper, &line, 1, 2.5, x, y, width, height);
    cairo_restore (cr);
    return;
  }
  lap_paint_box (cr, solid ? &work : &pale, &work, 1, 2.5, x, y, width, height);
  if (look->changed) { /* a notch: as every week it would be whole */
    gdk_cairo_set_source_rgba (cr, &paper);
    cairo_rectangle (cr, x + width / 2 - 1, y, 2, height);
    cairo_fill (cr);
  }
}

static const LapWeekBox *
the_box (LapWeekCard *self)
{
  return &self->scene->score->boxes[self->box];
}

/* The stretches in which it shares its room or its coach with another class, cross-hatched. */
static void
draw_clashes (LapWeekCard *self, cairo_t *cr, int left)
{
  const LapWeekScore *score = self->scene->score;
  GdkRGBA note = lap_colour (LAP_COLOUR_NOTE), ink = lap_colour (LAP_COLOUR_ON_NOTE), rim = lap_colour (LAP_COLOUR_INK);

  for (guint i = 0; i < score->clashes->len; i++) {
    const LapWeekClash *clash = &g_array_index (score->clashes, LapWeekClash, i);
    double a = lap_week_score_x (score, self->scene->axis, clash->start) - left;
    double b = lap_week_score_x (score, self->scene->axis, clash->end) - left;

    if (clash->a != self->box && clash->b != self->box)
      continue;
    lap_paint_box (cr, &note, &rim, 1, 1, MIN (a, b), score->crest, ABS (b - a), score->bar);
    cairo_save (cr);
    cairo_rectangle (cr, MIN (a, b) + 1, score->crest + 1, ABS (b - a) - 2, score->bar - 2);
    cairo_clip (cr);
    gdk_cairo_set_source_rgba (cr, &ink);
    cairo_set_line_width (cr, 1);
    for (double x = MIN (a, b) - score->bar; x < MAX (a, b) + score->bar; x += 4) {
      cairo_move_to (cr, x, score->crest + score->bar);
      cairo_rel_line_to (cr, score->bar, -score->bar);
      cairo_move_to (cr, x, score->crest);
      cairo_rel_line_to (cr, score->bar, score->bar);
    }
    cairo_stroke (cr);
    cairo_restore (cr);
  }
}

/* px of the text from the side that time comes from; @along of them are before it. */
static double
text_x (LapWeekCard *self, PangoLayout *layout, int left, int along)
{
  const LapWeekPlaced *p = &self->placed;
  int width;

  if (!self->scene->axis->mirrored)
    return p->words_x - left + along;
  pango_layout_get_pixel_size (layout, &width, NULL);
  if (pango_layout_get_width (layout) >= 0)
    width = MIN (width, pango_layout_get_width (layout) / PANGO_SCALE);
  return p->words_x + p->words_width - left - along - width;
}

static void
draw_words (LapWeekCard *self, cairo_t *cr, int left)
{
  const LapWeekScore *score = self->scene->score;
  const LapWeekPlaced *p = &self->placed;
  GdkRGBA ink = lap_colour (the_box (self)->off ? LAP_COLOUR_INK2 : LAP_COLOUR_INK), ink2 = lap_colour (LAP_COLOUR_INK2);
  double top = score->crest + score->bar, line = score->look.line;
  int along = 0, width;

  if (p->mark > 0) {
    guint n = the_box (self)->warning;
    const LapWarning *warning = lap_checkup_nth (lap_document_checkup (self->scene->document), n - 1);
    double x = self->scene->axis->mirrored ? p->words_x + p->words_width - left - line : p->words_x - left;

    /* A number that has no room in its mark stands beside it, and not as if it belonged to the name. */
    lap_mark_paint (cr, warning->check->severity, n < 10 ? self->number : self->none, x, top, line);
    if (n >= 10)
      lap_paint_layout (cr, self->number, &ink2, text_x (self, self->number, left, line), top);
    along = p->mark;
  }
  if (p->named == LAP_NAMED_NOT)
    return;
  lap_paint_layout (cr, self->name, &ink, text_x (self, self->name, left, along), top);
  if (!p->detailed)
    return;
  pango_layout_get_pixel_size (self->name, &width, NULL);
  if (score->look.detailed)
    lap_paint_layout (cr, self->detail, &ink2, text_x (self, self->detail, left, 0), top + line);
  else
    lap_paint_layout (cr, self->detail, &ink2, text_x (self, self->detail, left, along + width + 6), top);
}

static void
draw_frame (LapWeekCard *self, cairo_t *cr, int width, int height)
{
  gboolean focused = gtk_widget_has_focus (GTK_WIDGET (self)) && gtk_widget_has_visible_focus (GTK_WIDGET (self));
  GdkRGBA colour = lap_colour (focused ? LAP_COLOUR_INK : LAP_COLOUR_WORK), fill = lap_colour (LAP_COLOUR_WORK);

  if (!focused && !self->picked)
    return;
  fill.alpha = 0.1;
  lap_paint_box (cr, self->picked ? &fill : NULL, &colour, focused ? 3 : 1.5, 5, 0, 0, width, height);
}

/* Above a short class they reach over where its words are, too: nothing else of the lane is there. */
static gboolean
crests_have_room (LapWeekCard *self, int strain)
{
  return MAX (self->placed.width, self->placed.words_width) >= (strain + 1) * self->scene->score->crest * CREST - 2;
}

static void
lap_week_card_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  LapWeekCard *self = LAP_WEEK_CARD (widget);
  const LapWeekScore *score = self->scene->score;
  int width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget), left;
  LapBarLook look;
  GdkRectangle area;
  cairo_t *cr;

  if (self->box == LAP_NO_WEEK_BOX || self->box >= score->n)
    return;
  lap_week_card_area (self, &area);
  left = area.x;
  look = (LapBarLook) { the_box (self)->strain, the_box (self)->off, the_box (self)->changed };
  cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, width, height));
  draw_frame (self, cr, width, height);
  lap_week_bar_draw (cr, &look, self->placed.x - left, score->crest, self->placed.width, score->bar);
  draw_clashes (self, cr, left);
  if (!look.off && look.strain >= 0 && crests_have_room (self, look.strain))
    lap_week_crests_draw (cr, look.strain, self->placed.x - left + (self->scene->axis->mirrored ? self->placed.width : 0),
                          score->crest - 1, score->crest - 2, self->scene->axis->mirrored);
  draw_words (self, cr, left);
  cairo_destroy (cr);
}

/* Over the mark, what it warns of; else what the class says of itself. */
static gboolean
tooltip_cb (LapWeekCard *self, int x, int y, gboolean by_keyboard, GtkTooltip *tooltip)
{
  g_autofree char *text = NULL;
  GdkRectangle area;

  if (by_keyboard || self->box >= self->scene->score->n)
    return FALSE;
  lap_week_card_area (self, &area);
  if (!lap_week_score_hit (self->scene->score, self->scene->axis, area.x + x, area.y + y, 0).mark)
    return FALSE;
  text = lap_week_warnings_text (lap_document_checkup (self->scene->document), the_box (self)->c);
  gtk_tooltip_set_text (tooltip, text);
  return TRUE;
}

static void
lap_week_card_dispose (GObject *object)
{
  LapWeekCard *self = LAP_WEEK_CARD (object);

  g_clear_object (&self->name);
  g_clear_object (&self->detail);
  g_clear_object (&self->number);
  g_clear_object (&self->none);
  g_clear_object (&self->scene);
  g_clear_pointer (&self->id, g_free);
  G_OBJECT_CLASS (lap_week_card_parent_class)->dispose (object);
}

static void
lap_week_card_class_init (LapWeekCardClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_week_card_dispose;
  widget_class->snapshot = lap_week_card_snapshot;
  gtk_widget_class_set_css_name (widget_class, "class");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_LIST_ITEM);
}

static void
lap_week_card_init (LapWeekCard *self)
{
  self->box = LAP_NO_WEEK_BOX;
  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
  gtk_accessible_update_state (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_STATE_SELECTED, FALSE, -1);
  g_signal_connect (self, "notify::has-focus", G_CALLBACK (gtk_widget_queue_draw), NULL);
  g_signal_connect (self, "query-tooltip", G_CALLBACK (tooltip_cb), NULL);
}

GtkWidget *
lap_week_card_new (LapWeekScene *scene)
{
  LapWeekCard *self = g_object_new (LAP_TYPE_WEEK_CARD, NULL);

  self->scene = g_object_ref (scene);
  return GTK_WIDGET (self);
}

static void
set_layout (LapWeekCard *self, PangoLayout **layout, const char *text, gboolean bold, gboolean struck)
{
  g_autoptr (PangoAttrList) attrs = pango_attr_list_new ();

  if (*layout == NULL) {
    *layout = pango_layout_new (self->scene->pango);
    pango_layout_set_single_paragraph_mode (*layout, TRUE);
    pango_layout_set_ellipsize (*layout, PANGO_ELLIPSIZE_END);
  }
  if (bold)
    pango_attr_list_insert (attrs, pango_attr_weight_new (PANGO_WEIGHT_BOLD));
  if (struck)
    pango_attr_list_insert (attrs, pango_attr_strikethrough_new (TRUE));
  pango_layout_context_changed (*layout);
  pango_layout_set_attributes (*layout, attrs);
  if (g_strcmp0 (pango_layout_get_text (*layout), text) != 0)
    pango_layout_set_text (*layout, text, -1);
}

static void
make_words (LapWeekCard *self)
{
  const LapWeekBox *box = the_box (self);
  const LapWeekPlaced *p = &self->placed;
  g_autofree char *number = g_strdup_printf ("%u", box->warning);

  set_layout (self, &self->name, p->named == LAP_NAMED_INITIALS ? box->initials : lap_class_title (box->c), TRUE, box->off);
  pango_layout_set_width (self->name, p->named == LAP_NAMED_CUT ? (p->words_width - p->mark) * PANGO_SCALE : -1);
  set_layout (self, &self->detail, box->detail, FALSE, FALSE);
  pango_layout_set_width (self->detail, self->scene->score->look.detailed ? p->words_width * PANGO_SCALE : -1);
  set_layout (self, &self->number, number, box->warning < 10, FALSE);
  set_layout (self, &self->none, "", FALSE, FALSE);
}

static void
speak (LapWeekCard *self, guint position, guint of)
{
  g_autofree char *label = lap_week_box_spoken (self->scene->score, self->box);

  if (g_strcmp0 (gtk_widget_get_tooltip_text (GTK_WIDGET (self)), label) != 0) {
    gtk_widget_set_tooltip_text (GTK_WIDGET (self), label);
    gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, label,
                                    GTK_ACCESSIBLE_PROPERTY_DESCRIPTION, "", -1);
  }
  gtk_accessible_update_relation (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_RELATION_POS_IN_SET, (int) position,
                                  GTK_ACCESSIBLE_RELATION_SET_SIZE, (int) of, -1);
}

void
lap_week_card_bind (LapWeekCard *self, guint box, guint position, guint of)
{
  gboolean picked;

  self->box = box;
  if (box == LAP_NO_WEEK_BOX) {
    g_clear_pointer (&self->id, g_free);
    return;
  }
  if (g_strcmp0 (self->id, the_box (self)->c->id) != 0) {
    g_free (self->id);
    self->id = g_strdup (the_box (self)->c->id);
  }
  self->placed = lap_week_score_place (self->scene->score, self->scene->axis, box);
  make_words (self);
  speak (self, position, of);
  picked = lap_week_scene_is_picked (self->scene, self->id);
  if (picked != self->picked)
    gtk_accessible_update_state (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_STATE_SELECTED, picked, -1);
  self->picked = picked;
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

void
lap_week_card_area (LapWeekCard *self, GdkRectangle *area)
{
  const LapWeekPlaced *p = &self->placed;
  int left = MIN (p->x, p->words_x) - BESIDE;
  int right = MAX (p->x + p->width, p->words_x + p->words_width) + BESIDE, view = self->scene->axis->view;

  /* Where the hours begin the frame is inside: beyond it would not be seen. */
  if (left < 0 && left >= -BESIDE)
    left = 0;
  if (right > view && right <= view + BESIDE)
    right = view;
  *area = (GdkRectangle) { left, p->y, right - left, self->scene->score->cell };
}
