/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/ruler-walk.h"

#include "ui/palette.h"
#include "ui/score/marks.h"
#include "ui/score/paint.h"
#include "ui/shortcuts.h"

#include <glib/gi18n-lib.h>

/* The marks in the order of time. */
typedef struct {
  LapMarks *marks;
  GArray   *order; /* guint, indices into the places of marks */
  guint     at;    /* where the keys are in it; 0 where they are nowhere */
} Walk;

static int
by_time (gconstpointer a, gconstpointer b, gpointer places)
{
  const LapMarkPlace *x = &g_array_index ((GArray *) places, LapMarkPlace, *(const guint *) a);
  const LapMarkPlace *y = &g_array_index ((GArray *) places, LapMarkPlace, *(const guint *) b);

  return (x->x > y->x) - (x->x < y->x);
}

/* The mark that stands for @warning, or LAP_NO_WARNING. */
static guint
mark_of (const LapMarks *marks, guint warning)
{
  for (guint i = 0; i < marks->members->len; i++)
    if (g_array_index (marks->members, LapMarkMember, i).warning == warning)
      return g_array_index (marks->members, LapMarkMember, i).mark;
  return LAP_NO_WARNING;
}

static Walk
walk_begin (LapLane *ruler)
{
  LapScoreContext *context = lap_lane_context (ruler);
  Walk walk = { lap_lane_marks (ruler), g_array_new (FALSE, FALSE, sizeof (guint)), 0 };
  guint now = mark_of (walk.marks, context->warning);

  for (guint i = 0; i < walk.marks->places->len; i++)
    g_array_append_val (walk.order, i);
  g_array_sort_with_data (walk.order, by_time, walk.marks->places);
  for (guint i = 0; context->axis->mirrored && i < walk.order->len / 2; i++) {
    guint *first = &g_array_index (walk.order, guint, i), *last = &g_array_index (walk.order, guint, walk.order->len - 1 - i);
    guint kept = *first;

    *first = *last;
    *last = kept;
  }
  for (guint i = 0; i < walk.order->len; i++)
    if (g_array_index (walk.order, guint, i) == now)
      walk.at = i;
  return walk;
}

static void
walk_end (Walk *walk)
{
  lap_marks_free (walk->marks);
  g_array_unref (walk->order);
}

static const LapMarkPlace *
place_of (const Walk *walk)
{
  return &g_array_index (walk->marks->places, LapMarkPlace, g_array_index (walk->order, guint, walk->at));
}

void
lap_ruler_walk_update (LapLane *ruler)
{
  Walk walk = walk_begin (ruler);
  gboolean any = walk.order->len > 0, focused = gtk_widget_has_focus (GTK_WIDGET (ruler));
  g_autofree char *words = NULL, *label = NULL;

  if (any && focused) {
    words = lap_marks_words (lap_document_checkup (lap_lane_context (ruler)->document), walk.marks,
                             g_array_index (walk.order, guint, walk.at));
    /* Translators: the number of a mark of all marks, and the warnings that it stands for. */
    label = g_strdup_printf (_("Mark %1$u of %2$u on the clock. %3$s"), walk.at + 1, walk.order->len, words);
  }
  gtk_accessible_update_property (GTK_ACCESSIBLE (ruler), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  label != NULL ? label : _("Marks of warnings on the clock"), -1);
  /* Whoever is there stays until they go on. */
  gtk_widget_set_focusable (GTK_WIDGET (ruler), any || focused);
  walk_end (&walk);
}

static void
go_to (LapLane *ruler, Walk *walk, guint to)
{
  LapScoreContext *context = lap_lane_context (ruler);
  const LapWarning *warning;

  walk->at = to;
  context->warning = place_of (walk)->first;
  warning = lap_checkup_nth (lap_document_checkup (context->document), context->warning);
  lap_score_reveal (context, warning->start, MAX (warning->start, warning->end));
  lap_ruler_walk_update (ruler);
  gtk_widget_queue_draw (GTK_WIDGET (ruler));
}

static void
walk_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  static const struct { const char *name; int by; } ways[] = { { "marks.left", -1 }, { "marks.right", 1 } };
  gboolean mirrored = lap_lane_context (LAP_LANE (widget))->axis->mirrored;
  Walk walk = walk_begin (LAP_LANE (widget));
  int to = (int) walk.at;

  for (guint i = 0; i < G_N_ELEMENTS (ways); i++)
    if (g_str_equal (name, ways[i].name))
      to += mirrored ? -ways[i].by : ways[i].by;
  if (g_str_equal (name, "marks.first"))
    to = 0;
  else if (g_str_equal (name, "marks.last"))
    to = (int) walk.order->len - 1;
  if (to >= 0 && to < (int) walk.order->len)
    go_to (LAP_LANE (widget), &walk, to);
  else
    gtk_widget_error_bell (widget);
  walk_end (&walk);
}

static void
open_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  Walk walk = walk_begin (LAP_LANE (widget));

  if (walk.order->len > 0)
    lap_lane_open_mark (LAP_LANE (widget), walk.marks, g_array_index (walk.order, guint, walk.at));
  walk_end (&walk);
}

void
lap_ruler_walk_install (GtkWidgetClass *klass)
{
  gtk_widget_class_install_action (klass, "marks.left", NULL, walk_action);
  gtk_widget_class_install_action (klass, "marks.right", NULL, walk_action);
  gtk_widget_class_install_action (klass, "marks.first", NULL, walk_action);
  gtk_widget_class_install_action (klass, "marks.last", NULL, walk_action);
  gtk_widget_class_install_action (klass, "marks.open", NULL, open_action);
  lap_shortcuts_bind_class (klass, LAP_SCOPE_MARKS);
}

void
lap_ruler_walk_draw (LapLane *ruler, GtkSnapshot *snapshot)
{
  GtkWidget *widget = GTK_WIDGET (ruler);
  int height = gtk_widget_get_height (widget), size = lap_marks_size (lap_text_line (GTK_WIDGET (ruler))), y;
  GdkRGBA ink = lap_colour (LAP_COLOUR_INK);
  const LapMarkPlace *mark;
  cairo_t *cr;
  Walk walk;

  if (!gtk_widget_has_focus (widget) || !gtk_widget_has_visible_focus (widget))
    return;
  walk = walk_begin (ruler);
  if (walk.order->len > 0) {
    mark = place_of (&walk);
    y = lap_lane_mark_y (ruler, mark->first);
    cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, gtk_widget_get_width (widget), height));
    lap_paint_box (cr, NULL, &ink, 3, 4, mark->x - mark->width / 2 - 2, y - size / 2, mark->width + 4,
                   MIN (size, height - y + size / 2));
    cairo_destroy (cr);
  }
  walk_end (&walk);
}
