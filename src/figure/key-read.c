/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reads one key pose.
 *
 *   hip        [x, y] of the pelvis; or pin: [joint, x, gear], the planted joint that the chain hangs from
 *   trunk      mean direction of the spine; bend: how far it curls forward (front view: to the viewer's
 *              right); head: against the thorax; fst: foreshortening of trunk and neck
 *   twist      of the thorax about the spine; roll: of the pelvis; face: yaw of the head
 *   shrug      how far the shoulders are raised; slide: pushed forward
 *   legs, legR, legL   [thigh, shank, foot, [f, f]]; or on a surface {flat: x}, {ball: x, foot},
 *              {instep: x, foot}; or {ankle: [x, y], foot}
 *   arms, armR, armL   [upper, fore, hand, [f, f]]; or on a surface {palm: x, hand}, {forearm: x, dir};
 *              or {wall: y}, {grip: [x, y]}, {to: joint or [x, y], off: [dx, dy], hand}
 *   of a limb  on: the gear it stands on; z: how far towards the viewer; fs: [f, f] foreshortening;
 *              bend: 1 elbow out, -1 in (front view)
 *   turn       (also turnR, turnL; front view) toes out; point: length of the foot; footdir: from the ankle
 *              to the sole
 *   kb         direction of a bell from the hand; rope: phase of a turned one, direction of a swung one;
 *              ball: where a ball is
 *   high       {arms, head}: seen from above, how far off the floor
 *   front, rear, behind, order   as in the figure, from the middle between two keys on; deep: limbs whose
 *              far half goes away from the viewer; glayer: layer of held weights
 *   air        true: nothing touches the floor; moving: true: balance isn't asked for
 *
 * From the front directions and offsets are outward; points and contacts are not, unless "arms" or "legs"
 * says them for both. Joints: hip neck head, and with R or L: hp kn an heel ball toe sh el wr fist.
 */
#include <glib/gi18n-lib.h>

#include "base/error.h"
#include "figure/key.h"

typedef enum {
  TAKES_X,
  TAKES_Y,
  TAKES_POINT,
  TAKES_TARGET,
} Takes;

/* The member that says how a limb is held, and what it takes. */
static const struct {
  const char *name;
  gboolean leg;
  LapLimbKind kind;
  Takes takes;
} ways[] = {
  { "flat", TRUE, LAP_LIMB_FLAT, TAKES_X },         { "ball", TRUE, LAP_LIMB_BALL, TAKES_X },
  { "instep", TRUE, LAP_LIMB_INSTEP, TAKES_X },     { "ankle", TRUE, LAP_LIMB_ANKLE, TAKES_POINT },
  { "palm", FALSE, LAP_LIMB_PALM, TAKES_X },        { "forearm", FALSE, LAP_LIMB_FOREARM, TAKES_X },
  { "wall", FALSE, LAP_LIMB_WALL, TAKES_Y },        { "grip", FALSE, LAP_LIMB_GRIP, TAKES_POINT },
  { "to", FALSE, LAP_LIMB_TO, TAKES_TARGET },
};

static LapLimb
resting_limb (gboolean leg)
{
  return (LapLimb) { .kind = LAP_LIMB_ANGLES, .on = LAP_ON_FLOOR, .joint = LAP_FREE_POINT, .bend = 1,
                     .a = 180.0,
                     .b = leg ? 180.0 : 174.0, .fs = { 1.0, 1.0 } };
}

/* [upper, lower, end or null, [foreshortening, foreshortening]] */
static gboolean
read_angles (JsonArray *array, LapLimb *limb)
{
  guint n = json_array_get_length (array);
  double *into[] = { &limb->a, &limb->b, &limb->end };

  if (n < 2 || n > 4)
    return FALSE;
  for (guint i = 0; i < MIN (n, 3); i++)
    {
      JsonNode *node = json_array_get_element (array, i);

      if (i == 2 && JSON_NODE_HOLDS_NULL (node))
        continue;
      if (!JSON_NODE_HOLDS_VALUE (node) || json_node_get_value_type (node) == G_TYPE_STRING)
        return FALSE;
      *into[i] = json_node_get_double (node);
      limb->has_end = i == 2;
    }
  if (n < 4)
    return TRUE;
  {
    JsonNode *node = json_array_get_element (array, 3);

    if (!JSON_NODE_HOLDS_ARRAY (node) || json_array_get_length (json_node_get_array (node)) != 2)
      return FALSE;
    for (guint i = 0; i < 2; i++)
      limb->fs[i] = json_array_get_double_element (json_node_get_array (node), i);
  }
  return TRUE;
}

/* The number of the gear of that word, or -1. */
static int
find_gear (const LapFigure *figure, const char *word)
{
  for (guint i = 0; i < figure->n_gear; i++)
    if (g_strcmp0 (lap_gear_word (figure->gear[i].kind), word) == 0)
      return i;
  return -1;
}

static gboolean
read_target (JsonObject *object, const char *name, LapLimb *limb, GError **error)
{
  JsonNode *node = json_object_get_member (object, name);
  double v[2] = { 0 };
  int joint = 0;

  if (!JSON_NODE_HOLDS_VALUE (node))
    {
      if (!lap_fig_read_numbers (object, name, 2, 2, v, error))
        return FALSE;
      limb->at = (LapFigPoint) { v[0], v[1] };
      return TRUE;
    }
  joint = json_node_get_string (node) != NULL ? lap_fig_joint (json_node_get_string (node)) : -1;
  if (joint < 0)
    {
      lap_error_at (error, "/to", _("expected a joint, such as neck, knR or fistL, or a point"));
      return FALSE;
    }
  limb->joint = joint;
  return lap_fig_read_numbers (object, "off", 2, 2, &limb->at.x, error);
}

static gboolean
read_way (JsonObject *object, guint way, LapLimb *limb, GError **error)
{
  const char *name = ways[way].name;
  double v[2] = { 0 };
  gboolean fits = FALSE;

  limb->kind = ways[way].kind;
  switch (ways[way].takes)
    {
    case TAKES_X:
      return lap_fig_read_number (object, name, &limb->at.x, error);
    case TAKES_Y:
      return lap_fig_read_number (object, name, &limb->at.y, error);
    case TAKES_POINT:
      fits = lap_fig_read_numbers (object, name, 2, 2, v, error);
      limb->at = (LapFigPoint) { v[0], v[1] };
      return fits;
    case TAKES_TARGET:
      return read_target (object, name, limb, error);
    }
  return FALSE;
}

static gboolean
read_options (const LapFigure *figure, JsonObject *object, gboolean leg, LapLimb *limb, GError **error)
{
  const char *on = json_object_get_string_member_with_default (object, "on", NULL);
  const char *end = leg ? "foot" : "hand";
  double bend = limb->bend;

  limb->has_end = json_object_has_member (object, end);
  limb->has_z = json_object_has_member (object, "z");
  if (on != NULL)
    {
      limb->on = find_gear (figure, on);
      if (limb->on < 0)
        {
          lap_error_at (error, "/on", _("expected a piece of the figure's own gear, not \"%s\""), on);
          return FALSE;
        }
    }
  if (!lap_fig_read_number (object, end, &limb->end, error) ||
      !lap_fig_read_number (object, "z", &limb->z, error) ||
      !lap_fig_read_number (object, "dir", &limb->a, error) ||
        !lap_fig_read_number (object, "bend", &bend, error) ||
      !lap_fig_read_numbers (object, "fs", 2, 2, limb->fs, error))
    return FALSE;
  limb->bend = bend < 0.0 ? -1 : 1;
  return TRUE;
}

/* Reads the limb called @name. @both: it speaks for both sides, so in a front view the right one is the
 * mirror image. */
static gboolean
read_limb (const LapFigure *figure, JsonObject *key, const char *name, gboolean leg, gboolean flip,
           LapLimb *limb,
           GError **error)
{
  JsonNode *node = json_object_get_member (key, name);
  JsonObject *object = NULL;
  g_autofree char *pointer = g_strconcat ("/", name, NULL);

  if (node == NULL)
    return TRUE;
  *limb = resting_limb (leg);
  if (JSON_NODE_HOLDS_ARRAY (node) && read_angles (json_node_get_array (node), limb))
    return TRUE;
  object = JSON_NODE_HOLDS_OBJECT (node) ? json_node_get_object (node) : NULL;
  for (guint i = 0; object != NULL && i < G_N_ELEMENTS (ways); i++)
    {
      if (ways[i].leg != leg || !json_object_has_member (object, ways[i].name))
        continue;
      if (!read_way (object, i, limb, error) || !read_options (figure, object, leg, limb, error))
        return FALSE;
      if (flip && limb->joint == LAP_FREE_POINT)
        limb->at.x = -limb->at.x;
      return TRUE;
    }
  lap_error_at (error, pointer, leg ? _("expected two directions, or one of flat, ball, instep, ankle")
                                    : _("expected two directions, or one of palm, forearm, wall, grip, to"));
  return FALSE;
}

static gboolean
read_limbs (const LapFigure *figure, JsonObject *key, LapKey *to, GError **error)
{
  static const char *const names[][3] = { { "legs", "legR", "legL" }, { "arms", "armR", "armL" } };
  gboolean front = figure->view == LAP_FIGURE_FRONT;

  for (guint arm = 0; arm < 2; arm++)
    for (guint side = 0; side < 2; side++)
      {
        LapLimb *limb = arm ? &to->arm[side] : &to->leg[side];

        *limb = resting_limb (!arm);
        if (!read_limb (figure, key, names[arm][0], !arm, front && side == LAP_SIDE_RIGHT, limb, error) ||
            !read_limb (figure, key, names[arm][1 + side], !arm, FALSE, limb, error))
          return FALSE;
      }
  return TRUE;
}

/* "pin": [joint, x, gear?] */
static gboolean
read_pin (const LapFigure *figure, JsonObject *object, LapKey *key, GError **error)
{
  JsonNode *node = json_object_get_member (object, "pin");
  JsonArray *array = node != NULL && JSON_NODE_HOLDS_ARRAY (node) ? json_node_get_array (node) : NULL;
  guint n = array != NULL ? json_array_get_length (array) : 0;
  const char *joint = n >= 2 ? json_array_get_string_element (array, 0) : NULL;

  if (node == NULL)
    return TRUE;
  key->pin = joint != NULL ? lap_fig_joint (joint) : -1;
  if (n == 3)
    key->pin_on = find_gear (figure, json_array_get_string_element (array, 2));
  if (key->pin < 0 || (n == 3 && key->pin_on < 0))
    {
      lap_error_at (error, "/pin", _("expected a joint, where it is planted, and the gear it is planted on"));
      return FALSE;
    }
  key->pin_x = json_array_get_double_element (array, 1);
  return TRUE;
}

static gboolean
read_sides (JsonObject *object, const char *name, double values[2], GError **error)
{
  double both = values[0];
  const char *sides = "RL";

  if (!lap_fig_read_number (object, name, &both, error))
    return FALSE;
  for (guint i = 0; i < 2; i++)
    {
      char one[16];

      values[i] = both;
      g_snprintf (one, sizeof one, "%s%c", name, sides[i]);
      if (!lap_fig_read_number (object, one, &values[i], error))
        return FALSE;
    }
  return TRUE;
}

static gboolean
read_flags (JsonObject *object, LapKeyFlags *flags, GError **error)
{
  static const char *const layers[] = { "back", "rear", "far", "mid0", "mid", "near0", "near", "top", NULL };
  const char *layer = json_object_get_string_member_with_default (object, "glayer", NULL);

  flags->layer = -1;
  for (int i = 0; layer != NULL && layers[i] != NULL; i++)
    if (g_str_equal (layer, layers[i]))
      flags->layer = i;
  return lap_fig_read_parts (object, "front", &flags->front, NULL, error) &&
         lap_fig_read_parts (object, "rear", &flags->rear, NULL, error) &&
         lap_fig_read_parts (object, "behind", &flags->behind, NULL, error) &&
         lap_fig_read_parts (object, "deep", &flags->deep, NULL, error) &&
         lap_fig_read_parts (object, "order", NULL, &flags->order, error) &&
         lap_fig_read_switch (object, "air", &flags->air, error) &&
         lap_fig_read_switch (object, "moving", &flags->moving, error);
}

static gboolean
read_scalars (JsonObject *object, LapKey *key, GError **error)
{
  struct {
    const char *name;
    double *value;
  } all[] = {
    { "trunk", &key->trunk }, { "bend", &key->bend },   { "head", &key->head },   { "twist", &key->twist },
    { "roll", &key->roll },   { "face", &key->face },   { "shrug", &key->shrug }, { "slide", &key->slide },
    { "kb", &key->bell },     { "rope", &key->rope },
  };

  for (guint i = 0; i < G_N_ELEMENTS (all); i++)
    if (!lap_fig_read_number (object, all[i].name, all[i].value, error))
      return FALSE;
  return read_sides (object, "turn", key->turn, error) && read_sides (object, "point", key->point, error) &&
         read_sides (object, "footdir", key->footdir, error) &&
         lap_fig_read_numbers (object, "fst", 2, 2, key->fst, error) &&
         lap_fig_read_numbers (object, "hip", 2, 2, &key->hip.x, error) &&
         lap_fig_read_numbers (object, "ball", 2, 2, &key->ball.x, error);
}

gboolean
lap_key_read (const LapFigure *figure, JsonObject *object, LapKey *key, GError **error)
{
  JsonNode *high = json_object_get_member (object, "high");

  *key = (LapKey) { .pin = -1, .pin_on = LAP_ON_FLOOR, .fst = { 1.0, 1.0 }, .turn = { 0.2, 0.2 },
                    .footdir = { NAN, NAN }, .bell = NAN, .rope = NAN, .ball = { NAN, NAN } };
  if (!read_limbs (figure, object, key, error) || !read_pin (figure, object, key, error) ||
      !read_scalars (object, key, error) || !read_flags (object, &key->flags, error))
    return FALSE;
  if (!json_object_has_member (object, "hip") && key->pin < 0)
    {
      lap_error_at (error, "/hip", _("expected \"hip\" or \"pin\": a pose hangs from one of them"));
      return FALSE;
    }
  if (high == NULL || !JSON_NODE_HOLDS_OBJECT (high))
    return TRUE;
  return lap_fig_read_number (json_node_get_object (high), "arms", &key->high_arms, error) &&
         lap_fig_read_number (json_node_get_object (high), "head", &key->high_head, error);
}
