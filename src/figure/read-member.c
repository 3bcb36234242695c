/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Readers of single members, shared by poses and kit.
 */
#include <glib/gi18n-lib.h>

#include "base/error.h"
#include "figure/key.h"

static const struct {
  const char *name;
  LapJoint joint;
  gboolean paired;
} joint_words[] = {
  { "hip", LAP_JOINT_PELVIS, FALSE },  { "neck", LAP_JOINT_NECK, FALSE },  { "head", LAP_JOINT_HEAD, FALSE },
  { "hp", LAP_JOINT_HIP, TRUE },       { "kn", LAP_JOINT_KNEE, TRUE },     { "an", LAP_JOINT_ANKLE, TRUE },
  { "heel", LAP_JOINT_HEEL, TRUE },    { "ball", LAP_JOINT_BALL, TRUE },   { "toe", LAP_JOINT_TOE, TRUE },
  { "sh", LAP_JOINT_SHOULDER, TRUE },  { "el", LAP_JOINT_ELBOW, TRUE },    { "wr", LAP_JOINT_WRIST, TRUE },
  { "fist", LAP_JOINT_HAND, TRUE },
};

int
lap_fig_joint (const char *name)
{
  gsize n = strlen (name);

  for (guint i = 0; i < G_N_ELEMENTS (joint_words); i++)
    {
      gsize m = strlen (joint_words[i].name);

      if (!g_str_has_prefix (name, joint_words[i].name))
        continue;
      if (!joint_words[i].paired && n == m)
        return joint_words[i].joint;
      if (joint_words[i].paired && n == m + 1 && (name[m] == 'R' || name[m] == 'L'))
        return joint_words[i].joint + (name[m] == 'L');
    }
  return -1;
}

static gboolean
node_number (JsonNode *node, double *value)
{
  GType type = JSON_NODE_HOLDS_VALUE (node) ? json_node_get_value_type (node) : G_TYPE_INVALID;

  if (type != G_TYPE_INT64 && type != G_TYPE_DOUBLE)
    return FALSE;
  *value = json_node_get_double (node);
  return isfinite (*value) && fabs (*value) <= 10000.0;
}

gboolean
lap_fig_read_number (JsonObject *object, const char *name, double *value, GError **error)
{
  g_autofree char *pointer = NULL;

  if (!json_object_has_member (object, name) || node_number (json_object_get_member (object, name), value))
    return TRUE;
  pointer = g_strconcat ("/", name, NULL);
  lap_error_at (error, pointer, _("expected a number"));
  return FALSE;
}

gboolean
lap_fig_read_numbers (JsonObject *object, const char *name, guint min, guint max, double *values,
                      GError **error)
{
  JsonNode *node = json_object_get_member (object, name);
  JsonArray *array = node != NULL && JSON_NODE_HOLDS_ARRAY (node) ? json_node_get_array (node) : NULL;
  guint n = array != NULL ? json_array_get_length (array) : 0;
  gboolean fits = n >= min && n <= max;
  g_autofree char *pointer = NULL;

  if (node == NULL)
    return TRUE;
  for (guint i = 0; fits && i < n; i++)
    fits = node_number (json_array_get_element (array, i), &values[i]);
  if (fits)
    return TRUE;
  pointer = g_strconcat ("/", name, NULL);
  lap_error_at (error, pointer,
                ngettext ("expected a list of %u number", "expected a list of %u numbers", min), min);
  return FALSE;
}

gboolean
lap_fig_read_switch (JsonObject *object, const char *name, gboolean *value, GError **error)
{
  JsonNode *node = json_object_get_member (object, name);
  g_autofree char *pointer = NULL;

  if (node == NULL)
    return TRUE;
  if (JSON_NODE_HOLDS_VALUE (node) && json_node_get_value_type (node) == G_TYPE_BOOLEAN)
    {
      *value = json_node_get_boolean (node);
      return TRUE;
    }
  pointer = g_strconcat ("/", name, NULL);
  lap_error_at (error, pointer, _("expected true or false"));
  return FALSE;
}

/* The words that stand for one part or two; the last two aren't parts of their own. */
static const struct {
  const char *name;
  guint mask;
} part_words[] = {
  { "legR", 1 << LAP_PART_LEG_R },
  { "legL", 1 << LAP_PART_LEG_L },
  { "armR", 1 << LAP_PART_ARM_R },
  { "armL", 1 << LAP_PART_ARM_L },
  { "trunk", 1 << LAP_PART_TRUNK },
  { "head", 1 << LAP_PART_HEAD },
  { "legs", 1 << LAP_PART_LEG_R | 1 << LAP_PART_LEG_L },
  { "arms", 1 << LAP_PART_ARM_R | 1 << LAP_PART_ARM_L },
  { "shanks", LAP_MOVES_SHANKS },
  { "forearms", LAP_MOVES_FOREARMS },
};

static guint
part_mask (JsonNode *node)
{
  const char *word = JSON_NODE_HOLDS_VALUE (node) ? json_node_get_string (node) : NULL;

  for (guint i = 0; word != NULL && i < G_N_ELEMENTS (part_words); i++)
    if (g_str_equal (word, part_words[i].name))
      return part_words[i].mask;
  return 0;
}

gboolean
lap_fig_read_parts (JsonObject *object, const char *name, guint *mask, LapPartOrder *order, GError **error)
{
  JsonNode *node = json_object_get_member (object, name);
  JsonArray *array = node != NULL && JSON_NODE_HOLDS_ARRAY (node) ? json_node_get_array (node) : NULL;
  gboolean fits = array != NULL && (order == NULL || json_array_get_length (array) <= LAP_N_PARTS);
  g_autofree char *pointer = NULL;

  if (node == NULL)
    return TRUE;
  for (guint i = 0; fits && i < json_array_get_length (array); i++)
    {
      guint one = part_mask (json_array_get_element (array, i));

      fits = one != 0;
      if (mask != NULL)
        *mask |= one;
      if (order != NULL && fits)
        order->parts[order->n++] = g_bit_nth_lsf (one, -1);
    }
  if (fits)
    return TRUE;
  pointer = g_strconcat ("/", name, NULL);
  lap_error_at (error, pointer, _("expected a list of parts: legR, legL, armR, armL, trunk, head"));
  return FALSE;
}
