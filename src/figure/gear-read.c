/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reads the kit of a figure: a list of {kind, …}. Each may have a layer: back rear far mid0 mid near0 near
 * top. h is the height of a surface that poses may stand "on".
 *
 *   mat, tape{x}, wall{x, dir, top}, panel{x: [a, b], top}: a wall seen face on
 *   chair{x: front edge, dir, h} (front view: x is its middle), bench{x: [a, b], h}, step{x: [a, b], h}
 *   bar{at: [x, y]}, roller{x, r}, ball{r, hands or ends, off}
 *   dumbbell{hands, axis: degrees, across, fore or end, one, off}, kettlebell{hand}
 *   band, strap{ends: joints, [x, y], [joint, dx, dy]; r}
 *   loop{at: 0 … 2 from hip to ankle} round both legs, loop{on: [joint, joint], at} round one limb
 *   rope{top, bottom}, or a swung one: rope{swung, length}
 *   bike{x, h: saddle, ends: [crank, bar]}, rower{x: [a, b], h: seat, ends: [plate, reel]}
 */
#include <glib/gi18n-lib.h>

#include "base/error.h"
#include "figure/key.h"

#define CHAIR_SEAT 22.0 /* 37 cm deep */
#define SADDLE_HALF 7.0

/* Each word, the layer it is drawn in, and the height its surface has when none is given (chairs 45 cm,
 * steps 20 cm). */
static const struct {
  const char *word;
  LapLayer side, front;
  double h;
} kinds[LAP_N_GEAR] = {
  [LAP_GEAR_MAT] = { "mat", LAP_LAYER_BACK, LAP_LAYER_BACK, 0.0 },
  [LAP_GEAR_CHAIR] = { "chair", LAP_LAYER_BACK, LAP_LAYER_BACK, 26.5 },
  [LAP_GEAR_BENCH] = { "bench", LAP_LAYER_BACK, LAP_LAYER_BACK, 26.5 },
  [LAP_GEAR_STEP] = { "step", LAP_LAYER_BACK, LAP_LAYER_BACK, 12.0 },
  [LAP_GEAR_WALL] = { "wall", LAP_LAYER_BACK, LAP_LAYER_BACK, 0.0 },
  [LAP_GEAR_PANEL] = { "panel", LAP_LAYER_BACK, LAP_LAYER_BACK, 0.0 },
  [LAP_GEAR_TAPE] = { "tape", LAP_LAYER_BACK, LAP_LAYER_BACK, 0.0 },
  [LAP_GEAR_DUMBBELL] = { "dumbbell", LAP_LAYER_NEAR, LAP_LAYER_NEAR, 0.0 },
  [LAP_GEAR_KETTLEBELL] = { "kettlebell", LAP_LAYER_NEAR, LAP_LAYER_NEAR, 0.0 },
  [LAP_GEAR_BAND] = { "band", LAP_LAYER_NEAR0, LAP_LAYER_MID, 0.0 },
  [LAP_GEAR_LOOP] = { "loop", LAP_LAYER_NEAR, LAP_LAYER_MID0, 0.0 },
  [LAP_GEAR_STRAP] = { "strap", LAP_LAYER_NEAR0, LAP_LAYER_MID, 0.0 },
  [LAP_GEAR_BAR] = { "bar", LAP_LAYER_BACK, LAP_LAYER_BACK, 0.0 },
  [LAP_GEAR_ROPE] = { "rope", LAP_LAYER_REAR, LAP_LAYER_REAR, 0.0 },
  [LAP_GEAR_BALL] = { "ball", LAP_LAYER_NEAR, LAP_LAYER_NEAR, 0.0 },
  [LAP_GEAR_ROLLER] = { "roller", LAP_LAYER_BACK, LAP_LAYER_BACK, 0.0 },
  [LAP_GEAR_BIKE] = { "bike", LAP_LAYER_BACK, LAP_LAYER_BACK, 54.0 },
  [LAP_GEAR_ROWER] = { "rower", LAP_LAYER_BACK, LAP_LAYER_BACK, 16.0 },
};

static const char *const layer_words[LAP_N_LAYERS] = { "back", "rear", "far", "mid0", "mid", "near0", "near",
                                                       "top" };

const char *
lap_gear_word (LapGearKind kind)
{
  return kinds[kind].word;
}

static void
read_axis (JsonObject *object, LapGear *gear)
{
  static const struct {
    const char *word;
    double axis;
  } words[] = { { "end", LAP_AXIS_NONE }, { "across", LAP_AXIS_ACROSS }, { "fore", LAP_AXIS_FORE } };
  JsonNode *node = json_object_get_member (object, "axis");

  if (node == NULL || !JSON_NODE_HOLDS_VALUE (node))
    return;
  if (json_node_get_string (node) == NULL)
    gear->axis = json_node_get_double (node);
  else
    for (guint i = 0; i < G_N_ELEMENTS (words); i++)
      if (g_str_equal (words[i].word, json_node_get_string (node)))
        gear->axis = words[i].axis;
}

/* "hands" or "hand": R, L, RL */
static void
read_hands (JsonObject *object, LapGear *gear)
{
  const char *hands = json_object_get_string_member_with_default (object, "hands", NULL);

  if (hands == NULL)
    hands = json_object_get_string_member_with_default (object, "hand", NULL);
  if (hands != NULL)
    gear->hands = (strchr (hands, 'R') != NULL ? 1 : 0) | (strchr (hands, 'L') != NULL ? 2 : 0);
}

/* An end is a joint, a point [x, y], or a joint with an offset [joint, dx, dy]. */
static gboolean
read_end (JsonNode *node, LapGearEnd *end)
{
  JsonArray *array = JSON_NODE_HOLDS_ARRAY (node) ? json_node_get_array (node) : NULL;
  guint n = array != NULL ? json_array_get_length (array) : 0;
  const char *word = array == NULL && JSON_NODE_HOLDS_VALUE (node) ? json_node_get_string (node) : NULL;

  *end = (LapGearEnd) { .joint = LAP_FREE_POINT };
  if (n == 3 && JSON_NODE_HOLDS_VALUE (json_array_get_element (array, 0)))
    word = json_array_get_string_element (array, 0);
  if (n >= 2)
    end->at = (LapFigPoint) { json_array_get_double_element (array, n - 2),
                              json_array_get_double_element (array, n - 1) };
  if (word != NULL)
    end->joint = lap_fig_joint (word);
  return word != NULL ? end->joint >= 0 : n == 2;
}

static gboolean
read_ends (JsonObject *object, LapGear *gear, GError **error)
{
  JsonNode *node = json_object_get_member (object, "ends");
  JsonArray *array = node != NULL && JSON_NODE_HOLDS_ARRAY (node) ? json_node_get_array (node) : NULL;
  guint n = array != NULL ? json_array_get_length (array) : 0;
  gboolean fits = n >= 1 && n <= LAP_MAX_ENDS;

  if (node == NULL)
    return TRUE;
  for (guint i = 0; fits && i < n; i++)
    fits = read_end (json_array_get_element (array, i), &gear->ends[i]);
  gear->n_ends = fits ? n : 0;
  if (!fits)
    lap_error_at (error, "/ends", _("expected joints and points between which it runs"));
  return fits;
}

static gboolean
read_on (JsonObject *object, LapGear *gear, GError **error)
{
  JsonNode *node = json_object_get_member (object, "on");
  JsonArray *array = node != NULL && JSON_NODE_HOLDS_ARRAY (node) ? json_node_get_array (node) : NULL;

  gear->on[0] = gear->on[1] = -1;
  if (node == NULL)
    return TRUE;
  if (array != NULL && json_array_get_length (array) == 2)
    for (guint i = 0; i < 2; i++)
      {
        const char *word = json_array_get_string_element (array, i);

        gear->on[i] = word != NULL ? lap_fig_joint (word) : -1;
      }
  if (gear->on[0] >= 0 && gear->on[1] >= 0)
    return TRUE;
  lap_error_at (error, "/on", _("expected the two joints it lies between"));
  return FALSE;
}

/* Where the surface begins and ends, from the one x of those that have a shape of their own. */
static void
spread (LapGear *gear, LapFigureView view)
{
  double x = gear->x[0];

  if (gear->kind == LAP_GEAR_CHAIR && view == LAP_FIGURE_FRONT)
    gear->x[0] = x - 13.0, gear->x[1] = x + 13.0;
  else if (gear->kind == LAP_GEAR_CHAIR)
    gear->x[0] = MIN (x, x - gear->dir * CHAIR_SEAT), gear->x[1] = MAX (x, x - gear->dir * CHAIR_SEAT);
  else if (gear->kind == LAP_GEAR_BIKE)
    gear->x[0] = x - SADDLE_HALF, gear->x[1] = x + SADDLE_HALF;
}

static gboolean
read_places (JsonObject *object, LapGear *gear, GError **error)
{
  JsonNode *x = json_object_get_member (object, "x");
  double dir = 1.0;
  struct {
    const char *name;
    double *value;
  } all[] = {
    { "h", &gear->h }, { "dir", &dir }, { "top", &gear->top }, { "bottom", &gear->bottom }, { "r", &gear->r },
    { "length", &gear->along },
  };

  if (x != NULL && JSON_NODE_HOLDS_ARRAY (x) && !lap_fig_read_numbers (object, "x", 2, 2, gear->x, error))
    return FALSE;
  if (x != NULL && !JSON_NODE_HOLDS_ARRAY (x) && !lap_fig_read_number (object, "x", &gear->x[0], error))
    return FALSE;
  for (guint i = 0; i < G_N_ELEMENTS (all); i++)
    if (!lap_fig_read_number (object, all[i].name, all[i].value, error))
      return FALSE;
  gear->dir = dir < 0.0 ? -1 : 1;
  return TRUE;
}

/* "at" is a share of the way along a limb (loop) or a point (bar). */
static gboolean
read_at (JsonObject *object, LapGear *gear, GError **error)
{
  JsonNode *at = json_object_get_member (object, "at");
  JsonNode *off = json_object_get_member (object, "off");

  if (at != NULL && JSON_NODE_HOLDS_ARRAY (at) && !lap_fig_read_numbers (object, "at", 2, 2, gear->x, error))
    return FALSE;
  if (at != NULL && !JSON_NODE_HOLDS_ARRAY (at) && !lap_fig_read_number (object, "at", &gear->along, error))
    return FALSE;
  if (off != NULL && !lap_fig_read_numbers (object, "off", 2, 2, &gear->off.x, error))
    return FALSE;
  return lap_fig_read_switch (object, "one", &gear->one, error) &&
         lap_fig_read_switch (object, "swung", &gear->swung, error);
}

static gboolean
read_one (const LapFigure *figure, JsonObject *object, LapGear *gear, GError **error)
{
  const char *word = json_object_get_string_member_with_default (object, "kind", "");
  const char *layer = json_object_get_string_member_with_default (object, "layer", NULL);
  guint kind = 0;

  while (kind < LAP_N_GEAR && !g_str_equal (kinds[kind].word, word))
    kind++;
  if (kind == LAP_N_GEAR)
    {
      lap_error_at (error, "/kind", _("no kit is called \"%s\""), word);
      return FALSE;
    }
  *gear = (LapGear) { .kind = kind, .h = kinds[kind].h, .dir = 1, .hands = 3, .axis = LAP_AXIS_NONE };
  gear->layer = figure->view == LAP_FIGURE_FRONT ? kinds[kind].front : kinds[kind].side;
  if (figure->view == LAP_FIGURE_FRONT)
    gear->axis = LAP_AXIS_BAR;
  for (guint i = 0; layer != NULL && i < LAP_N_LAYERS; i++)
    if (g_str_equal (layer_words[i], layer))
      gear->layer = i;
  read_axis (object, gear);
  read_hands (object, gear);
  if (!read_places (object, gear, error) || !read_at (object, gear, error) ||
      !read_ends (object, gear, error) ||
      !read_on (object, gear, error))
    return FALSE;
  spread (gear, figure->view);
  return TRUE;
}

gboolean
lap_figure_read_gear (LapFigure *figure, JsonObject *object, GError **error)
{
  JsonNode *node = json_object_get_member (object, "gear");
  JsonArray *array = node != NULL && JSON_NODE_HOLDS_ARRAY (node) ? json_node_get_array (node) : NULL;
  guint n = array != NULL ? json_array_get_length (array) : 0;

  if (node == NULL)
    return TRUE;
  if (array == NULL || n > LAP_MAX_GEAR)
    {
      lap_error_at (error, "/gear", _("expected a list of at most %d pieces of kit"), LAP_MAX_GEAR);
      return FALSE;
    }
  for (guint i = 0; i < n; i++)
    {
      JsonNode *one = json_array_get_element (array, i);

      if (!JSON_NODE_HOLDS_OBJECT (one))
        {
          lap_error_at (error, "/gear", _("expected an object for each piece of kit"));
          return FALSE;
        }
      if (!read_one (figure, json_node_get_object (one), &figure->gear[i], error))
        return FALSE;
      figure->n_gear = i + 1;
    }
  return TRUE;
}
