/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a pose file says, as plain structs: the key poses of a figure, its kit and how it is played.
 * Private to figure/. Reading goes in two steps: lap_figure_expand() resolves the reuse of other poses on
 * the JSON objects, and lap_figure_read() then reads a figure whose keys stand for themselves.
 */
#pragma once

#include <json-glib/json-glib.h>

#include "figure/figure.h"

G_BEGIN_DECLS

#define LAP_MAX_KEYS 12
#define LAP_MAX_GEAR 6
#define LAP_MAX_ARROWS 4
#define LAP_MAX_ENDS 5

/* Where a piece of kit is drawn. Those at the back are never cut by the body. */
typedef enum {
  LAP_LAYER_BACK,
  LAP_LAYER_REAR,
  LAP_LAYER_FAR,
  LAP_LAYER_MID0,
  LAP_LAYER_MID,
  LAP_LAYER_NEAR0,
  LAP_LAYER_NEAR,
  LAP_LAYER_TOP,
  LAP_N_LAYERS,
} LapLayer;

typedef enum {
  LAP_GEAR_MAT,
  LAP_GEAR_CHAIR,
  LAP_GEAR_BENCH,
  LAP_GEAR_STEP,
  LAP_GEAR_WALL,
  LAP_GEAR_PANEL,
  LAP_GEAR_TAPE,
  LAP_GEAR_DUMBBELL,
  LAP_GEAR_KETTLEBELL,
  LAP_GEAR_BAND,
  LAP_GEAR_LOOP,
  LAP_GEAR_STRAP,
  LAP_GEAR_BAR,
  LAP_GEAR_ROPE,
  LAP_GEAR_BALL,
  LAP_GEAR_ROLLER,
  LAP_GEAR_BIKE,
  LAP_GEAR_ROWER,
  LAP_N_GEAR,
} LapGearKind;

#define LAP_AXIS_NONE 1000.0   /* seen end-on, as a disc */
#define LAP_AXIS_ACROSS 1001.0 /* at right angles to the forearm */
#define LAP_AXIS_FORE 1002.0   /* along the forearm */
#define LAP_AXIS_BAR 1003.0    /* level, as it is held in a front view */

typedef struct {
  gint8 joint; /* or LAP_FREE_POINT */
  LapFigPoint at;
} LapGearEnd;

typedef struct {
  LapGearKind kind;
  LapLayer layer;
  double x[2];          /* where it stands: from, to; walls and chairs use x[0] */
  double h;             /* height of its surface, 0 = none */
  int dir;
  double top, bottom;
  guint hands;          /* bit 0 right, bit 1 left */
  gboolean one, swung;  /* one weight in both hands; a rope swung folded */
  double axis, r, along;
  gint8 on[2];          /* loop: the limb it goes round, or -1 for both legs */
  LapFigPoint off;
  guint n_ends;
  LapGearEnd ends[LAP_MAX_ENDS];
} LapGear;

typedef enum {
  LAP_ARROW_LINE,
  LAP_ARROW_ARC,
  LAP_ARROW_OF,
} LapArrowKind;

typedef struct {
  LapArrowKind kind;
  gboolean both;
  double v[6]; /* line: x0 y0 x1 y1; arc: cx cy rx ry a0 a1; of: dx dy from to */
  gint8 joint;
} LapArrow;

struct _LapFigure {
  char *id;
  LapFigureView view;
  LapFigureCycle cycle;
  gboolean above, tq, alternates;
  LapFigPoint depth;        /* drawn shift for one unit towards the viewer */
  double wide, step, handstep, pike, crop, top;
  LapFigPoint arc, pause;   /* pause.x NAN: none */
  gboolean anchor_neck;
  guint moving;             /* mask of parts, LAP_MOVES_SHANKS, LAP_MOVES_FOREARMS */
  guint behind, solid, far_parts, front, rear;
  LapPartOrder order;
  int poster, ghost;        /* ghost -1: none */
  guint n_keys, n_gear, n_arrows;
  LapKey keys[LAP_MAX_KEYS];
  LapFigurePose poses[LAP_MAX_KEYS];
  LapGear gear[LAP_MAX_GEAR];
  LapArrow arrows[LAP_MAX_ARROWS];
  gboolean partner;
  double partner_about;     /* x of the mirror between the two */
  LapFigure *swapped;       /* the same with left and right changed over, when it alternates */
  LapFigureBox box, still, marked; /* all frames; those of one side; with the arrows */
};

/* Writes @object (reuse resolved) into @figure; pointers in errors are relative to the figure. */
gboolean lap_figure_read (LapFigure *figure, JsonObject *object, GError **error);

/* Reads a key on its own; @figure tells the view and the gear it may stand on. */
gboolean lap_key_read (const LapFigure *figure, JsonObject *object, LapKey *key, GError **error);
gboolean lap_figure_read_gear (LapFigure *figure, JsonObject *object, GError **error);

/* What "move" may name beyond whole parts. */
#define LAP_MOVES_SHANKS (1u << LAP_N_PARTS)
#define LAP_MOVES_FOREARMS (1u << (LAP_N_PARTS + 1))

/* Small readers shared by the two. Each leaves the value alone when the member is absent. */
gboolean lap_fig_read_number (JsonObject *object, const char *name, double *value, GError **error);
gboolean lap_fig_read_numbers (JsonObject *object, const char *name, guint min, guint max, double *values,
                               GError **error);
gboolean lap_fig_read_switch (JsonObject *object, const char *name, gboolean *value, GError **error);
int lap_fig_joint (const char *name);
gboolean lap_fig_read_parts (JsonObject *object, const char *name, guint *mask, LapPartOrder *order,
                             GError **error);

/* The gear word of an error or a file, and the other way; -1 when unknown. */
const char *lap_gear_word (LapGearKind kind);

/* Resolves "like", "key", "as", "mirror": a figure object that only holds plain keys. Never changes
 * @object. */
JsonObject *lap_figure_expand (const char *id, JsonObject *object, LapFigureLookup lookup, gpointer data,
                               GError **error);

/* @object (expanded) with left and right changed over. */
JsonObject *lap_figure_swap (JsonObject *object);

G_END_DECLS
