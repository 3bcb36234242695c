/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * All bars of one look are one path: solid for what works hard, with a wedge that fades after it, outlined for what
 * helps, and in the colour of warnings where two neighbours clash.
 */
#include "ui/score/muscles.h"

#include "place/muscles.h"
#include "ui/palette.h"
#include "ui/score/landing-paint.h"
#include "ui/score/paint.h"

#include <adwaita.h>
#include <glib/gi18n-lib.h>

struct _LapMusclesLane {
  LapLane  parent_instance;
  gboolean open;
};

G_DEFINE_FINAL_TYPE (LapMusclesLane, lap_muscles_lane, LAP_TYPE_LANE)

#define HARD   0.6  /* of the row, of what works hard */
#define HELPS  0.35 /* of what helps */
#define REACH  5    /* px that a clash reaches into its neighbours */
#define MOST_COMPARED 500 /* clashes in view, beyond which none is seen alone */
#define HEAD   8    /* px more than a line that the title takes */

typedef enum { LOOK_FADE, LOOK_LATER, LOOK_HARD, LOOK_OUTLINE, LOOK_HELPS, N_LOOKS } Look;

int
lap_muscles_lane_head (LapMusclesLane *self)
{
  return self->open ? lap_text_line (GTK_WIDGET (self)) + HEAD : 0;
}

static int
lap_muscles_lane_height (LapLane *lane, int line)
{
  LapMusclesLane *self = LAP_MUSCLES_LANE (lane);

  return lap_muscles_lane_head (self) + lap_load_rows_height (line, self->open);
}

/* A bar of @share of its row. */
static void
add_bar (cairo_t *cr, const LapLoad *load, int top, int height, double share, int inset)
{
  int thick = MAX (3, height * share), width = load->width - 2 * inset;

  if (width > 0)
    cairo_rectangle (cr, load->x + inset, top + (height - thick) / 2 + inset, width, thick - 2 * inset);
}

static void
add_fade (cairo_t *cr, const LapLoad *load, int top, int height, gboolean mirrored)
{
  double thick = height * HARD, y = top + (height - (int) thick) / 2;
  double from = mirrored ? load->x : load->x + load->width, to = mirrored ? from - load->fade : from + load->fade;

  cairo_move_to (cr, from, y);
  cairo_line_to (cr, to, y + thick / 2);
  cairo_line_to (cr, from, y + thick);
  cairo_close_path (cr);
}

static void
add_load (cairo_t *cr, Look look, const LapLoad *load, int top, int height, gboolean mirrored)
{
  if (look == LOOK_FADE && load->fade > 0)
    add_fade (cr, load, top, height, mirrored);
  else if (look == LOOK_LATER && !load->helps && load->later)
    add_bar (cr, load, top, height, HARD, 0);
  else if (look == LOOK_HARD && !load->helps && !load->later)
    add_bar (cr, load, top, height, HARD, 0);
  else if (look == LOOK_OUTLINE && load->helps)
    add_bar (cr, load, top, height, HELPS, 0);
  else if (look == LOOK_HELPS && load->helps)
    add_bar (cr, load, top, height, HELPS, 1);
}

static void
paint_loads (LapLane *lane, cairo_t *cr, const LapAxis *axis, int head)
{
  static const struct { LapColour colour; double alpha; } looks[N_LOOKS] = {
    [LOOK_FADE] = { LAP_COLOUR_WORK, 0.28 }, [LOOK_LATER] = { LAP_COLOUR_WORK, 0.55 },
    [LOOK_HARD] = { LAP_COLOUR_WORK, 1 }, [LOOK_OUTLINE] = { LAP_COLOUR_WORK, 1 }, [LOOK_HELPS] = { LAP_COLOUR_WORK2, 1 },
  };
  g_autoptr (GArray) loads = lap_score_loads (lap_lane_context (lane)->score, axis);
  gboolean plain = adw_style_manager_get_high_contrast (adw_style_manager_get_default ());
  int line = lap_text_line (GTK_WIDGET (lane)), top, height;

  for (Look look = 0; look < N_LOOKS; look++) {
    GdkRGBA colour = lap_colour (looks[look].colour);

    if (plain && look == LOOK_FADE)
      continue;
    for (guint i = 0; i < loads->len; i++) {
      const LapLoad *load = &g_array_index (loads, LapLoad, i);

      lap_load_rows_place (line, TRUE, load->row, &top, &height);
      add_load (cr, look, load, head + top, height, axis->mirrored);
    }
    colour.alpha = plain ? 1 : looks[look].alpha;
    gdk_cairo_set_source_rgba (cr, &colour);
    cairo_fill (cr);
  }
}

static void
add_clash (cairo_t *cr, const LapClash *clash, int line, gboolean open, int head)
{
  int top, height;

  for (guint row = 0; row < LAP_N_ROWS; row++) {
    int thick;

    if (!(clash->rows & LAP_BIT (row)))
      continue;
    lap_load_rows_place (line, open, row, &top, &height);
    thick = MIN (height - 2, line - 4);
    cairo_rectangle (cr, clash->x - REACH + 0.5, head + top + (height - thick) / 2 + 0.5, clash->width + 2 * REACH - 1,
                     thick - 1);
    if (!open)
      return;
  }
}

static void
paint_clashes (LapLane *lane, cairo_t *cr, const LapAxis *axis, gboolean open, int head)
{
  g_autoptr (GArray) clashes = lap_score_clashes (lap_lane_context (lane)->score, axis);
  GdkRGBA fill = lap_colour (LAP_COLOUR_NOTE), ink = lap_colour (LAP_COLOUR_INK);

  for (guint i = 0; i < clashes->len; i++)
    add_clash (cr, &g_array_index (clashes, LapClash, i), lap_text_line (GTK_WIDGET (lane)), open, head);
  gdk_cairo_set_source_rgba (cr, &fill);
  cairo_fill_preserve (cr);
  gdk_cairo_set_source_rgba (cr, &ink);
  cairo_set_line_width (cr, 1);
  cairo_stroke (cr);
}

static void
paint_rules (LapLane *lane, cairo_t *cr, const LapAxis *axis, gboolean open, int head)
{
  GdkRGBA rule = lap_colour (LAP_COLOUR_LINE);
  int top, height;

  for (guint row = 0; row < (open ? LAP_N_ROWS : 1); row++) {
    lap_load_rows_place (lap_text_line (GTK_WIDGET (lane)), open, row, &top, &height);
    cairo_rectangle (cr, 0, head + top + height / 2, axis->view, 1);
  }
  gdk_cairo_set_source_rgba (cr, &rule);
  cairo_fill (cr);
}

static void
lap_muscles_lane_paint (LapLane *lane, cairo_t *cr, const LapAxis *axis, int height)
{
  LapMusclesLane *self = LAP_MUSCLES_LANE (lane);
  int head = lap_muscles_lane_head (self);

  paint_rules (lane, cr, axis, self->open, head);
  if (self->open)
    paint_loads (lane, cr, axis, head);
  paint_clashes (lane, cr, axis, self->open, head);
}

static gboolean
is_among (const GArray *clashes, const LapClash *clash)
{
  for (guint i = 0; i < clashes->len; i++) {
    const LapClash *other = &g_array_index (clashes, LapClash, i);

    if (other->x == clash->x && other->width == clash->width && other->rows == clash->rows)
      return TRUE;
  }
  return FALSE;
}

/* Those of @some that aren't among @others. */
static void
add_others (cairo_t *cr, const GArray *some, const GArray *others, int line, gboolean open, int head)
{
  for (guint i = 0; i < some->len; i++)
    if (!is_among (others, &g_array_index (some, LapClash, i)))
      add_clash (cr, &g_array_index (some, LapClash, i), line, open, head);
}

/* A clash that would be gone is emptied, one that would come is filled as those that are. */
static void
lap_muscles_lane_preview (LapLane *lane, cairo_t *cr, const LapScore *score, const LapCheckup *checkup, int height)
{
  LapScoreContext *context = lap_lane_context (lane);
  gboolean open = LAP_MUSCLES_LANE (lane)->open;
  int line = lap_text_line (GTK_WIDGET (lane)), head = lap_muscles_lane_head (LAP_MUSCLES_LANE (lane));
  g_autoptr (GArray) now = lap_score_clashes (context->score, context->axis);
  g_autoptr (GArray) then = lap_score_clashes (score, context->axis);
  GdkRGBA paper = lap_colour (LAP_COLOUR_PAPER), note = lap_colour (LAP_COLOUR_NOTE), accent = lap_colour (LAP_COLOUR_WORK);

  if (MAX (now->len, then->len) > MOST_COMPARED)
    return;
  add_others (cr, now, then, line, open, head);
  gdk_cairo_set_source_rgba (cr, &paper);
  cairo_fill_preserve (cr);
  gdk_cairo_set_source_rgba (cr, &accent);
  cairo_stroke (cr);
  add_others (cr, then, now, line, open, head);
  gdk_cairo_set_source_rgba (cr, &note);
  cairo_fill_preserve (cr);
  gdk_cairo_set_source_rgba (cr, &accent);
  cairo_stroke (cr);
}

/* What a block would work, in dashes, where its row can be seen. */
static void
lap_muscles_lane_landing (LapLane *lane, cairo_t *cr, const LapGhost *ghost, double x, int height)
{
  const LapAxis *axis = lap_lane_context (lane)->axis;
  double wide = ghost->body * axis->zoom, left = axis->mirrored ? x - wide : x;
  int line = lap_text_line (GTK_WIDGET (lane)), head = lap_muscles_lane_head (LAP_MUSCLES_LANE (lane)), top, high;

  if (!LAP_MUSCLES_LANE (lane)->open)
    return;
  for (guint row = 0; row < LAP_N_ROWS; row++) {
    double thick = line * (ghost->hard & LAP_BIT (row) ? HARD : HELPS);

    if (!((ghost->hard | ghost->helps) & LAP_BIT (row)))
      continue;
    lap_load_rows_place (line, TRUE, row, &top, &high);
    cairo_rectangle (cr, left, head + top + (high - thick) / 2, wide, thick);
  }
  lap_landing_dashes (cr, LAP_COLOUR_WORK2);
}

/* On the join in the first region they share; what isn't about one region stands above the rows. */
static int
lap_muscles_lane_mark_y (LapLane *lane, const LapWarning *warning, int height)
{
  LapMusclesLane *self = LAP_MUSCLES_LANE (lane);
  guint32 rows = g_str_equal (warning->check->id, "same-muscle") ? lap_muscle_regions (warning->mask) : 0;
  guint row = rows != 0 ? (guint) g_bit_nth_lsf (rows, -1) : 0;
  int top, high;

  if (rows == 0 && self->open)
    return lap_muscles_lane_head (self) / 2;
  lap_load_rows_place (lap_text_line (GTK_WIDGET (lane)), self->open, row, &top, &high);
  return lap_muscles_lane_head (self) + top + high / 2;
}

static void
lap_muscles_lane_class_init (LapMusclesLaneClass *klass)
{
  LapLaneClass *lane_class = LAP_LANE_CLASS (klass);

  lane_class->height = lap_muscles_lane_height;
  lane_class->paint = lap_muscles_lane_paint;
  lane_class->preview = lap_muscles_lane_preview;
  lane_class->landing = lap_muscles_lane_landing;
  lane_class->marks = &lap_lane_muscles;
  lane_class->mark_y = lap_muscles_lane_mark_y;
}

static void
lap_muscles_lane_init (LapMusclesLane *self)
{
}

gboolean
lap_muscles_lane_is_open (LapMusclesLane *self)
{
  return self->open;
}

void
lap_muscles_lane_set_open (LapMusclesLane *self, gboolean open)
{
  if (self->open == open)
    return;
  self->open = open;
  lap_lane_refresh (LAP_LANE (self));
}

const LapLaneKind lap_lane_muscles = {
  "muscles", N_("Muscles"), NULL, lap_muscles_lane_get_type, lap_muscles_label_new,
};
