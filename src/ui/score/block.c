/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * From the top: number, figure, body and tail, the name in up to three lines. All but the strokes grows with the text.
 */
#include "ui/score/block.h"

#include "place/names.h"
#include "ui/figures.h"
#include "ui/palette.h"
#include "ui/picture.h"
#include "ui/score/ground.h"
#include "ui/score/lane.h"
#include "ui/score/paint.h"
#include "ui/score/words.h"

#include <glib/gi18n-lib.h>
#include <math.h>

struct _LapBlockWidget {
  GtkWidget        parent_instance;
  LapScoreContext *context;
  guint            box;
  LapBlock        *block; /* the box's, which outlives an edit; NULL of a gap */
  int              round;
  LapPlaced        placed;
  int              from, to; /* px of it that are in view */
  gboolean         selected;
  LapName         *words; /* of its name */
  guint32          fit;   /* how they are set, or CUT */
  PangoLayout     *name, *number, *seconds;
};

G_DEFINE_FINAL_TYPE (LapBlockWidget, lap_block_widget, GTK_TYPE_WIDGET)

#define TOP       5   /* px above the number and below the name */
#define GAP       3   /* px between rows */
#define PAD       4   /* px beside the name */
#define NAMED     40  /* px from which a name is shown */
#define NUMBERED  14
#define BEFORE    5   /* px before the number */
#define FIGURE    2  /* lines of text above the body; it may reach into the number's */
#define FIGURED   44 /* px from which a figure is shown */
#define BESIDE   52 /* px from which it has room beside the number */
#define CUT       (1u << 31) /* of how a name is set: the beginning of its first word, in so many px */

int
lap_block_widget_height (int line)
{
  return 2 * TOP + 2 * GAP + (5 + FIGURE) * line; /* a number, a body and three lines of a name */
}

void
lap_block_widget_ground (int line, int room, int *top, int *height)
{
  *top = TOP + line + GAP + FIGURE * line + MAX (0, room - lap_block_widget_height (line) - line);
  *height = line;
}

/* px above the body: the figure may reach into the line of the number, beside that, where there is the room. */
static int
figure_height (int line, int top, int width)
{
  return top - TOP - GAP - (width < BESIDE ? line : 0);
}

static const LapBox *
the_box (LapBlockWidget *self)
{
  return &self->context->score->boxes[self->box];
}

/* A later round shows the same blocks again, paler; one that was changed for its round stands out. */
static gboolean
is_pale (const LapBox *box)
{
  return box->round > 1 && !box->changed;
}

static const LapTask *
task_of (LapBlockWidget *self)
{
  const LapBox *box = the_box (self);

  return box->task != LAP_NO_TASK ? &self->context->score->timeline->tasks[box->task] : NULL;
}

/* Its exercise isn't chosen yet, or nobody knows it. */
static gboolean
is_hollow (LapBlockWidget *self)
{
  const LapTask *task = task_of (self);

  return the_box (self)->kind == LAP_BOX_EXERCISE && task != NULL && task->shown == NULL;
}

/* The middle of what is in view of the body, moved so that @wide px stand on the body. */
static int
middle_of_body (LapBlockWidget *self, int wide)
{
  int width = gtk_widget_get_width (GTK_WIDGET (self)), body = MIN (self->placed.body, width);
  int start = self->context->axis->mirrored ? width - body : 0, end = start + body;
  int middle = (MAX (start, self->from) + MIN (end, self->to)) / 2;

  return wide < body ? CLAMP (middle, start + wide / 2, end - wide / 2) : start + body / 2;
}

static void
draw_ground (LapBlockWidget *self, GtkSnapshot *snapshot, int top, int height)
{
  LapGround look = {
    .kind = the_box (self)->kind, .pale = is_pale (the_box (self)), .hollow = is_hollow (self),
    .mirrored = self->context->axis->mirrored,
    .width = gtk_widget_get_width (GTK_WIDGET (self)), .body = self->placed.body, .height = height,
    .scale = gtk_widget_get_scale_factor (GTK_WIDGET (self)),
  };

  lap_ground_draw (snapshot, &look, top);
}

/* In a later round as pale as its body. It comes in steps of 8 px of width, so that zooming asks for few pictures. */
static GskRenderNode *
figure_of (LapBlockWidget *self, int width, int height, int *wide)
{
  const LapTask *task = task_of (self);

  *wide = MIN (width - 8, 2 * height) / 8 * 8;
  return lap_figure_picture (self->context->score->timeline->catalogue, task->shown, *wide, height,
                             gtk_widget_get_scale_factor (GTK_WIDGET (self)), is_pale (the_box (self)));
}

/* px that the figure goes where time goes to, so that the number can be read; -1 where there is no room for that. Found
 * for the whole block, so that the figure stays as it is while the view moves. */
static int
evade_number (LapBlockWidget *self, GskRenderNode *picture, int width, int wide, int y, int line)
{
  gboolean mirrored = self->context->axis->mirrored;
  int body = MIN (self->placed.body, width), middle = mirrored ? width - body / 2 : body / 2, text, over;
  double left = MAX (MIN (middle - wide / 2, width - wide), 2), before, behind; /* px free on either side of it */
  graphene_rect_t ink;

  gsk_render_node_get_bounds (picture, &ink);
  if (y + ink.origin.y >= TOP + line - 2)
    return 0;
  pango_layout_get_pixel_size (self->number, &text, NULL);
  before = mirrored ? width - left - ink.origin.x - ink.size.width : left + ink.origin.x;
  behind = width - ink.size.width - before;
  over = ceil (BEFORE + text + 2 - before);
  if (over <= 0)
    return 0;
  return over < behind ? over : -1;
}

/* The figure stands on the body. */
static void
draw_figure (LapBlockWidget *self, GtkSnapshot *snapshot, int width, int line, int top)
{
  const LapTask *task = task_of (self);
  int height = figure_height (line, top, width), wide, x, aside;
  GskRenderNode *picture;

  if (task == NULL || task->shown == NULL || width < FIGURED)
    return;
  picture = figure_of (self, width, height, &wide);
  if (picture == NULL)
    return;
  aside = evade_number (self, picture, width, wide, top - height, line);
  if (aside < 0) {
    height -= line;
    picture = figure_of (self, width, height, &wide);
    aside = 0;
  }
  x = MAX (MIN (middle_of_body (self, wide) - wide / 2, width - wide), 2);
  lap_picture_draw (picture, snapshot, x + (self->context->axis->mirrored ? -aside : aside), top - height);
}

/* Somebody in outline, with a question where there is an id that nobody knows. */
static void
draw_hollow_figure (LapBlockWidget *self, GtkSnapshot *snapshot, int width, int line, int top)
{
  int height = figure_height (line, top, width), head = height / 8, wide = height / 3, text, middle = middle_of_body (self, wide);
  GdkRGBA outline = lap_colour (LAP_COLOUR_LINE2), ink = lap_colour (LAP_COLOUR_INK);
  g_autoptr (PangoLayout) question = NULL;
  cairo_t *cr;

  if (!is_hollow (self) || width < FIGURED)
    return;
  cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, top - height, width, height));
  cairo_set_dash (cr, (double[]) { 3, 2 }, 2, 0);
  lap_paint_box (cr, NULL, &outline, 1.5, head, middle - head, top - height + head, 2 * head, 2 * head);
  lap_paint_box (cr, NULL, &outline, 1.5, head, middle - wide / 2, top - height + 3 * head + 2, wide,
                 height - 3 * head - 2);
  cairo_destroy (cr);
  if (task_of (self)->wanted == NULL)
    return;
  question = gtk_widget_create_pango_layout (GTK_WIDGET (self), "?");
  pango_layout_get_pixel_size (question, &text, NULL);
  lap_paint_text (snapshot, question, &ink, middle - text / 2, top - line - 3);
}

/* A frame in the accent for what is selected, a stronger one in ink for what has the focus. */
static void
draw_frame (LapBlockWidget *self, GtkSnapshot *snapshot, int width, int height)
{
  gboolean focused = gtk_widget_has_focus (GTK_WIDGET (self)) && gtk_widget_has_visible_focus (GTK_WIDGET (self));
  GdkRGBA colour = lap_colour (focused ? LAP_COLOUR_INK : LAP_COLOUR_WORK);
  cairo_t *cr;

  if (!focused && !self->selected)
    return;
  cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, width, height));
  lap_paint_box (cr, NULL, &colour, focused ? 3 : 2, 4, 0, 0, width, height);
  cairo_destroy (cr);
}

/* Words stand in what is in view of the block, whole or not at all. */
static void
draw_seconds (LapBlockWidget *self, GtkSnapshot *snapshot, int width, int top, int height)
{
  const LapBox *box = the_box (self);
  GdkRGBA ink = lap_colour (is_pale (box) || is_hollow (self) ? LAP_COLOUR_INK : LAP_COLOUR_ON_WORK);
  int start = self->context->axis->mirrored ? width - self->placed.body : 0, text, text_height;
  int from = MAX (start, self->from), to = MIN (start + self->placed.body, self->to);

  pango_layout_get_pixel_size (self->seconds, &text, &text_height);
  if (text + 6 <= to - from)
    lap_paint_text (snapshot, self->seconds, &ink, from + (to - from - text) / 2, top + (height - text_height) / 2);
}

/* Sets the name in as many lines as there is room for below the ground, or the beginning of its first word where not
 * even that fits. It is shaped anew only when other words fit. FALSE where nothing does. */
static gboolean
set_name (LapBlockWidget *self, int room, guint lines, int line)
{
  guint32 fit = lap_name_fit (self->words, room, lines);
  g_autofree char *set = NULL;

  if (fit == 0 && room < self->words->dots + line)
    return FALSE;
  if (fit == 0)
    fit = CUT | room;
  if (fit == self->fit)
    return TRUE;
  self->fit = fit;
  /* With dots of its own, where there is more of the name: the first word alone may fit, and would be another name. */
  set = fit & CUT ? g_strdup_printf ("%.*s%s", self->words->ends[0], self->words->text, self->words->n > 1 ? "…" : "")
                  : lap_name_set (self->words, fit);
  pango_layout_set_width (self->name, fit & CUT ? room * PANGO_SCALE : -1);
  pango_layout_set_ellipsize (self->name, fit & CUT ? PANGO_ELLIPSIZE_END : PANGO_ELLIPSIZE_NONE);
  pango_layout_set_text (self->name, set, -1);
  /* Lines keep to the side where time comes from: Pango turns the side of letters that run against the widget's. */
  pango_layout_set_alignment (self->name, pango_layout_get_direction (self->name, 0) == PANGO_DIRECTION_RTL
                                            ? PANGO_ALIGN_RIGHT : PANGO_ALIGN_LEFT);
  return TRUE;
}

static gboolean
draw_name (LapBlockWidget *self, GtkSnapshot *snapshot, int top, int line)
{
  guint lines = MAX (1, (gtk_widget_get_height (GTK_WIDGET (self)) - top) / line);
  int room = self->to - self->from - 2 * PAD, text;
  GdkRGBA ink = lap_colour (LAP_COLOUR_INK);
  gboolean mirrored = self->context->axis->mirrored;

  if (the_box (self)->kind == LAP_BOX_GAP || room < NAMED - 2 * PAD || !set_name (self, room, lines, line))
    return FALSE;
  pango_layout_get_pixel_size (self->name, &text, NULL);
  if (self->fit & CUT) /* laid out over all of the room already */
    text = room;
  lap_paint_text (snapshot, self->name, &ink, mirrored ? self->to - PAD - text : self->from + PAD, top);
  return TRUE;
}

/* Whatever has no room for its name has its number. */
static void
draw_number (LapBlockWidget *self, GtkSnapshot *snapshot, gboolean named)
{
  LapBoxKind kind = the_box (self)->kind;
  GdkRGBA work = lap_colour (LAP_COLOUR_WORK);
  int room = self->to - self->from, text, beside;

  pango_layout_get_pixel_size (self->number, &text, NULL);
  if (kind == LAP_BOX_GAP || (named && kind != LAP_BOX_EXERCISE && kind != LAP_BOX_OWN_PACE) ||
      room < MAX (NUMBERED, text + 4))
    return;
  beside = MIN (BEFORE, (room - text) / 2);
  lap_paint_text (snapshot, self->number, &work,
                  self->context->axis->mirrored ? self->to - text - beside : self->from + beside, TOP);
}

static void
draw_words (LapBlockWidget *self, GtkSnapshot *snapshot, int width, int top, int height)
{
  const LapBox *box = the_box (self);

  if (box->kind == LAP_BOX_EXERCISE || box->kind == LAP_BOX_OWN_PACE)
    draw_seconds (self, snapshot, width, top, height);
  draw_number (self, snapshot, draw_name (self, snapshot, top + height + GAP, height));
}

static void
lap_block_widget_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  LapBlockWidget *self = LAP_BLOCK_WIDGET (widget);
  int width = gtk_widget_get_width (widget), line, top, height;

  if (self->box == LAP_NO_BOX || self->name == NULL)
    return;
  line = lap_text_line (widget);
  lap_block_widget_ground (line, gtk_widget_get_height (GTK_WIDGET (self)), &top, &height);
  draw_figure (self, snapshot, width, line, top);
  draw_hollow_figure (self, snapshot, width, line, top);
  draw_ground (self, snapshot, top, height);
  draw_words (self, snapshot, width, top, height);
  draw_frame (self, snapshot, width, gtk_widget_get_height (widget));
}

static void
lap_block_widget_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *least, int *natural,
                          int *least_baseline, int *natural_baseline)
{
  *least = *natural = 0;
}

static void
lap_block_widget_dispose (GObject *object)
{
  LapBlockWidget *self = LAP_BLOCK_WIDGET (object);

  g_clear_pointer (&self->words, lap_name_free);
  g_clear_object (&self->name);
  g_clear_object (&self->number);
  g_clear_object (&self->seconds);
  g_clear_object (&self->block);
  g_clear_object (&self->context);
  G_OBJECT_CLASS (lap_block_widget_parent_class)->dispose (object);
}

static void
lap_block_widget_class_init (LapBlockWidgetClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_block_widget_dispose;
  widget_class->snapshot = lap_block_widget_snapshot;
  widget_class->measure = lap_block_widget_measure;
  gtk_widget_class_set_css_name (widget_class, "block");
  gtk_widget_class_set_accessible_role (widget_class, GTK_ACCESSIBLE_ROLE_LIST_ITEM);
}

static void
lap_block_widget_init (LapBlockWidget *self)
{
  self->box = LAP_NO_BOX;
  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
  gtk_accessible_update_state (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_STATE_SELECTED, FALSE, -1);
  g_signal_connect (self, "notify::has-focus", G_CALLBACK (gtk_widget_queue_draw), NULL);
}

GtkWidget *
lap_block_widget_new (LapScoreContext *context)
{
  LapBlockWidget *self = g_object_new (LAP_TYPE_BLOCK_WIDGET, NULL);

  self->context = g_object_ref (context);
  return GTK_WIDGET (self);
}

static PangoLayout *
layout_of (LapBlockWidget *self, PangoLayout *layout, const char *text, gboolean bold)
{
  g_autoptr (PangoAttrList) attrs = NULL;

  if (layout == NULL) {
    layout = gtk_widget_create_pango_layout (GTK_WIDGET (self), NULL);
    attrs = pango_attr_list_new ();
    if (bold)
      pango_attr_list_insert (attrs, pango_attr_weight_new (PANGO_WEIGHT_BOLD));
    pango_layout_set_attributes (layout, attrs);
  } else
    pango_layout_context_changed (layout);
  pango_layout_set_text (layout, text, -1);
  return layout;
}

/* As it is spoken: with its warning, where it has one. */
static char *
spoken (LapBlockWidget *self)
{
  g_autofree char *label = lap_box_label (self->context->score, self->box);
  guint warning = lap_box_is_block (the_box (self)) ? lap_score_warning (self->context, self->box) : 0;

  if (warning == 0)
    return g_steal_pointer (&label);
  /* Translators: a block as it is spoken, and the number of its warning. */
  return g_strdup_printf (_("%1$s, warning %2$u"), label, warning);
}

static double
word_width (const char *text, int length, gpointer layout)
{
  int width;

  pango_layout_set_text (layout, text, length);
  pango_layout_get_size (layout, &width, NULL);
  return width / (double) PANGO_SCALE;
}

static void
make_words (LapBlockWidget *self)
{
  const LapScore *score = self->context->score;
  const LapBox *box = the_box (self);
  g_autofree char *name = lap_box_name (score, self->box), *label = spoken (self);
  g_autofree char *number = g_strdup_printf ("%d", box->block + 1), *seconds = g_strdup_printf ("%d", box->work);
  LapPart *part = score->timeline->parts[box->part].part;

  self->name = layout_of (self, self->name, "", FALSE);
  pango_layout_set_width (self->name, -1); /* words are measured as they are, not as the last name was cut */
  pango_layout_set_ellipsize (self->name, PANGO_ELLIPSIZE_NONE);
  g_clear_pointer (&self->words, lap_name_free);
  self->words = lap_name_new (name, word_width, self->name);
  pango_layout_set_text (self->name, "", -1);
  self->fit = 0;
  self->number = layout_of (self, self->number, number, TRUE);
  self->seconds = layout_of (self, self->seconds, seconds, TRUE);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_PROPERTY_LABEL, label, -1);
  gtk_accessible_update_relation (GTK_ACCESSIBLE (self),
                                  GTK_ACCESSIBLE_RELATION_POS_IN_SET, lap_box_is_block (box) ? box->block + 1 : 1,
                                  GTK_ACCESSIBLE_RELATION_SET_SIZE, MAX (1, (int) lap_part_n (part)), -1);
}

/* What lies beside the view, such as the block with the focus, is as it would be in it. */
static gboolean
see (LapBlockWidget *self, const LapPlaced *placed)
{
  int view = self->context->axis->view, from = CLAMP (-placed->x, 0, placed->width);
  int to = CLAMP (view - placed->x, 0, placed->width);
  gboolean same;

  if (from >= to) {
    from = 0;
    to = placed->width;
  }
  same = from == self->from && to == self->to && placed->body == self->placed.body;
  self->placed = *placed;
  self->from = from;
  self->to = to;
  return !same;
}

void
lap_block_widget_bind (LapBlockWidget *self, guint box, const LapPlaced *placed, gboolean anew)
{
  gboolean moved = placed != NULL && see (self, placed);
  LapBlock *block;

  if (box == self->box && !moved && !anew)
    return;
  anew |= box != self->box;
  self->box = box;
  block = box != LAP_NO_BOX ? lap_score_block (self->context, box) : NULL;
  g_set_object (&self->block, block);
  if (anew && box != LAP_NO_BOX) {
    self->round = the_box (self)->round;
    make_words (self);
    gtk_widget_set_focusable (GTK_WIDGET (self), lap_box_is_block (the_box (self)));
  }
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

guint
lap_block_widget_box (LapBlockWidget *self)
{
  return self->box;
}

void
lap_block_widget_select (LapBlockWidget *self, gboolean selected)
{
  if (self->selected == selected)
    return;
  self->selected = selected;
  gtk_accessible_update_state (GTK_ACCESSIBLE (self), GTK_ACCESSIBLE_STATE_SELECTED, selected, -1);
  gtk_widget_queue_draw (GTK_WIDGET (self));
}

guint
lap_block_widget_locate (LapBlockWidget *self)
{
  return self->block != NULL ? lap_score_locate (self->context, self->block, self->round) : LAP_NO_BOX;
}
