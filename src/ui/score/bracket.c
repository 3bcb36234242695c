/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/bracket.h"

#include "ui/palette.h"
#include "ui/score/paint.h"

#include <glib/gi18n-lib.h>

struct _LapBracketWidget {
  GtkWidget        parent_instance;
  LapScoreContext *context;
  gboolean         rest;
  LapBracket       bracket;
  LapPart         *part; /* the bracket's; NULL without */
};

G_DEFINE_FINAL_TYPE (LapBracketWidget, lap_bracket_widget, GTK_TYPE_WIDGET)

/* A ring in ink, as a block with the focus has it. */
static void
lap_bracket_widget_snapshot (GtkWidget *widget, GtkSnapshot *snapshot)
{
  int width = gtk_widget_get_width (widget), height = gtk_widget_get_height (widget);
  GdkRGBA ink = lap_colour (LAP_COLOUR_INK);
  cairo_t *cr;

  if (!gtk_widget_has_visible_focus (widget))
    return;
  cr = gtk_snapshot_append_cairo (snapshot, &GRAPHENE_RECT_INIT (0, 0, width, height));
  lap_paint_box (cr, NULL, &ink, 2, 4, 0, 0, width, height);
  cairo_destroy (cr);
}

static void
lap_bracket_widget_measure (GtkWidget *widget, GtkOrientation orientation, int for_size, int *least, int *natural,
                            int *least_baseline, int *natural_baseline)
{
  *least = *natural = 0;
}

static void
lap_bracket_widget_dispose (GObject *object)
{
  LapBracketWidget *self = LAP_BRACKET_WIDGET (object);

  g_clear_object (&self->part);
  g_clear_object (&self->context);
  G_OBJECT_CLASS (lap_bracket_widget_parent_class)->dispose (object);
}

static void
lap_bracket_widget_class_init (LapBracketWidgetClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_bracket_widget_dispose;
  widget_class->snapshot = lap_bracket_widget_snapshot;
  widget_class->measure = lap_bracket_widget_measure;
  gtk_widget_class_set_css_name (widget_class, "bracket");
}

static void
lap_bracket_widget_init (LapBracketWidget *self)
{
  gtk_widget_set_focusable (GTK_WIDGET (self), TRUE);
  g_signal_connect (self, "notify::has-focus", G_CALLBACK (gtk_widget_queue_draw), NULL);
}

GtkWidget *
lap_bracket_widget_new (LapScoreContext *context, gboolean rest)
{
  GtkAccessibleRole role = rest ? GTK_ACCESSIBLE_ROLE_SLIDER : GTK_ACCESSIBLE_ROLE_BUTTON;
  LapBracketWidget *self = g_object_new (LAP_TYPE_BRACKET_WIDGET, "accessible-role", role, NULL);

  self->context = g_object_ref (context);
  self->rest = rest;
  return GTK_WIDGET (self);
}

static char *
rest_words (const LapBracket *bracket, const char *title)
{
  int seconds = bracket->end - bracket->start;
  g_autofree char *length = g_strdup_printf (ngettext ("%d second", "%d seconds", seconds), seconds);

  if (bracket->kind == LAP_BRACKET_BETWEEN)
    /* Translators: the number of a round and of the next, the title of their part, a length. */
    return g_strdup_printf (_("Rest between rounds %1$d and %2$d of %3$s, %4$s"), bracket->round, bracket->round + 1,
                            title, length);
  /* Translators: the title of a part and a length. */
  return g_strdup_printf (_("Rest after %1$s, %2$s"), title, length);
}

char *
lap_bracket_words (LapScoreContext *context, const LapBracket *bracket)
{
  const LapTimeline *timeline = context->score->timeline;
  const LapPart *part = timeline->parts[bracket->part].part;
  const char *title = lap_part_title (part);
  g_autofree char *start = lap_clock_text (bracket->start), *length = lap_clock_text (bracket->end - bracket->start);
  g_autofree char *rounds = NULL;

  if (lap_bracket_is_rest (bracket))
    return rest_words (bracket, title);
  if (bracket->kind == LAP_BRACKET_ROUND)
    /* Translators: a part, the number of a round and of all, its length and where it starts. */
    return g_strdup_printf (_("%1$s, round %2$d of %3$d, %4$s, starts at %5$s"), title, bracket->round, part->rounds,
                            length, start);
  rounds = g_strdup_printf (ngettext ("%d round", "%d rounds", part->rounds), part->rounds);
  /* Translators: a part, its number and that of all, "2 rounds", its length and where it starts. */
  return g_strdup_printf (_("%1$s, part %2$u of %3$u, %4$s, %5$s, starts at %6$s"), title, bracket->part + 1,
                          timeline->n_parts, rounds, length, start);
}

char *
lap_bracket_hint (LapScoreContext *context, const LapBracket *bracket)
{
  g_autofree char *words = lap_bracket_words (context, bracket);
  const char *hint = _("Drag to change the rest");

  if (!lap_bracket_is_rest (bracket))
    hint = context->score->timeline->parts[bracket->part].part->run == LAP_RUN_OWN_PACE
           ? _("Drag to change the length") : _("Drag to change the rounds");
  return g_strdup_printf ("%s\n%s", words, hint);
}

static void
tell (LapBracketWidget *self)
{
  GtkAccessible *accessible = GTK_ACCESSIBLE (self);
  const LapAxis *axis = self->context->axis;
  g_autofree char *words = lap_bracket_words (self->context, &self->bracket);

  gtk_accessible_update_property (accessible, GTK_ACCESSIBLE_PROPERTY_LABEL, words, -1);
  if (self->rest)
    gtk_accessible_update_property (accessible, GTK_ACCESSIBLE_PROPERTY_VALUE_MIN, 0.0,
                                    GTK_ACCESSIBLE_PROPERTY_VALUE_NOW, (double) (self->bracket.end - self->bracket.start),
                                    -1);
  else
    gtk_accessible_update_state (accessible, GTK_ACCESSIBLE_STATE_EXPANDED,
                                 !axis->pieces[lap_axis_piece_at (axis, self->bracket.start)].folded, -1);
}

void
lap_bracket_widget_bind (LapBracketWidget *self, const LapBracket *bracket)
{
  LapPart *part = bracket != NULL ? self->context->score->timeline->parts[bracket->part].part : NULL;

  g_set_object (&self->part, part);
  if (bracket == NULL)
    return;
  self->bracket = *bracket;
  tell (self);
}

gboolean
lap_bracket_widget_is_rest (LapBracketWidget *self)
{
  return self->rest;
}

const LapBracket *
lap_bracket_widget_bracket (LapBracketWidget *self)
{
  return self->part != NULL ? &self->bracket : NULL;
}

LapPart *
lap_bracket_widget_part (LapBracketWidget *self)
{
  return self->part;
}
