/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Reuse of poses, resolved once when a figure is read. "like" starts from another figure; an entry of
 * "keys" starts from the base's key of the same place, from "key": n of the base, or from the finished key
 * "as": n of this figure, changed over left and right where "mirror" asks for it. null takes a member
 * away.
 */
#include <glib/gi18n-lib.h>

#include "base/error.h"
#include "figure/key.h"

#define MOST_LIKES 8

/* In a front view these carry an x or an angle about the midline, so a mirror turns their sign. */
static const char *const reflected[] = {
  "hip", "trunk", "bend", "head", "face", "kb", "rope", "footdirR", "footdirL",
  "flat", "ball", "palm", "forearm", "instep", "ankle", "to", "grip", NULL,
};

/* These are about the body's own long axis, and turn in every view. */
static const char *const turned[] = { "twist", "roll", NULL };

/* Setting the first takes the others away. */
static const char *const rivals[][3] = {
  { "legs", "legR", "legL" }, { "arms", "armR", "armL" }, { "hip", "pin", NULL }, { "pin", "hip", NULL },
};

static const char *const sided[] = {
  "leg", "arm", "hp", "kn", "an", "heel", "ball", "toe", "sh", "el", "wr", "fist", "turn", "point", "footdir",
    NULL,
};

/* "knR" for "knL" and the other way; other words as they are. */
static char *
swap_word (const char *word)
{
  gsize n = strlen (word);
  char *swapped = g_strdup (word);

  if (g_str_equal (word, "R") || g_str_equal (word, "L"))
    swapped[0] = word[0] == 'R' ? 'L' : 'R';
  for (guint i = 0; sided[i] != NULL; i++)
    if (n == strlen (sided[i]) + 1 && g_str_has_prefix (word, sided[i]) && strchr ("RL", word[n - 1]) != NULL)
      swapped[n - 1] = word[n - 1] == 'R' ? 'L' : 'R';
  return swapped;
}

static double
number_of (JsonNode *node)
{
  return JSON_NODE_HOLDS_VALUE (node) ? json_node_get_double (node) : 0.0;
}

static gboolean
holds_number (JsonNode *node)
{
  return JSON_NODE_HOLDS_VALUE (node) &&
         (json_node_get_value_type (node) == G_TYPE_INT64 ||
          json_node_get_value_type (node) == G_TYPE_DOUBLE);
}

static JsonNode *
double_node (double value)
{
  return json_node_init_double (json_node_alloc (), value);
}

static JsonObject *swap_object (JsonObject *object, gboolean front, gboolean limb);

static JsonNode *
swap_array (JsonArray *array, int negate_at, gboolean front)
{
  g_autoptr (JsonArray) swapped = json_array_new ();

  for (guint i = 0; i < json_array_get_length (array); i++)
    {
      JsonNode *node = json_array_get_element (array, i);

      if ((int) i == negate_at && holds_number (node))
        json_array_add_double_element (swapped, -number_of (node));
      else if (JSON_NODE_HOLDS_VALUE (node) && json_node_get_value_type (node) == G_TYPE_STRING)
        {
          g_autofree char *word = swap_word (json_node_get_string (node));

          json_array_add_string_element (swapped, word);
        }
      else if (JSON_NODE_HOLDS_OBJECT (node))
        json_array_add_object_element (swapped, swap_object (json_node_get_object (node), front, FALSE));
      else
        json_array_add_element (swapped, json_node_copy (node));
    }
  return json_node_init_array (json_node_alloc (), swapped);
}

static JsonNode *
swap_node (const char *name, JsonNode *node, gboolean front)
{
  gboolean negate = (front && g_strv_contains (reflected, name)) || g_strv_contains (turned, name);

  if (JSON_NODE_HOLDS_OBJECT (node))
    {
      gboolean limb = g_str_has_prefix (name, "arm") || g_str_has_prefix (name, "leg");
      g_autoptr (JsonObject) swapped = swap_object (json_node_get_object (node), front, limb);

      return json_node_init_object (json_node_alloc (), swapped);
    }
  if (JSON_NODE_HOLDS_ARRAY (node))
    return swap_array (json_node_get_array (node), negate ? 0 : front && g_str_equal (name, "pin") ? 1 : -1,
                       front);
  if (negate && holds_number (node))
    return double_node (-number_of (node));
  if (JSON_NODE_HOLDS_VALUE (node) && json_node_get_value_type (node) == G_TYPE_STRING)
    {
      g_autofree char *word = swap_word (json_node_get_string (node));

      return json_node_init_string (json_node_alloc (), word);
    }
  return json_node_copy (node);
}

/* The bend of an arm is outward already, unlike that of the trunk; so is what is said of both sides at once. */
static JsonObject *
swap_object (JsonObject *object, gboolean front, gboolean limb)
{
  JsonObject *swapped = json_object_new ();
  g_autoptr (GList) names = json_object_get_members (object);

  for (GList *l = names; l != NULL; l = l->next)
    {
      g_autofree char *name = swap_word (l->data);
      gboolean outward = g_str_equal (name, "arms") || g_str_equal (name, "legs") ||
                         (limb && g_str_equal (name, "bend"));

      json_object_set_member (swapped, name, swap_node (l->data, json_object_get_member (object, l->data),
                                                        front && !outward));
    }
  return swapped;
}

static gboolean
is_front (JsonObject *figure)
{
  return g_strcmp0 (json_object_get_string_member_with_default (figure, "view", ""), "front") == 0;
}

JsonObject *
lap_figure_swap (JsonObject *object)
{
  static const char *const listed[] = { "keys", "move", "behind", "solid", "front", "rear", "far", "order",
                                        "gear",
                                        NULL };
  gboolean front = is_front (object);
  JsonObject *swapped = json_object_new ();
  g_autoptr (GList) names = json_object_get_members (object);

  for (GList *l = names; l != NULL; l = l->next)
    {
      JsonNode *node = json_object_get_member (object, l->data);
      gboolean changes = g_strv_contains (listed, l->data);

      /* What stands on the floor stays where it is: only the hands that hold something change over. */
      json_object_set_member (swapped, l->data, !changes ? json_node_copy (node)
                              : swap_node (l->data, node, front && !g_str_equal (l->data, "gear")));
    }
  return swapped;
}

static JsonObject *
copy_object (JsonObject *object)
{
  JsonObject *copy = json_object_new ();
  g_autoptr (GList) names = json_object_get_members (object);

  for (GList *l = names; l != NULL; l = l->next)
    json_object_set_member (copy, l->data, json_node_copy (json_object_get_member (object, l->data)));
  return copy;
}

/* Lays the members of @from over @onto, those named in @skip left out. */
static void
lay_over (JsonObject *onto, JsonObject *from, const char *const *skip)
{
  g_autoptr (GList) names = json_object_get_members (from);

  for (GList *l = names; l != NULL; l = l->next)
    {
      JsonNode *node = json_object_get_member (from, l->data);

      if (g_strv_contains (skip, l->data))
        continue;
      if (JSON_NODE_HOLDS_NULL (node))
        {
          json_object_remove_member (onto, l->data);
          continue;
        }
      for (guint i = 0; i < G_N_ELEMENTS (rivals); i++)
        if (g_str_equal (rivals[i][0], l->data))
          for (guint j = 1; j < 3 && rivals[i][j] != NULL; j++)
            json_object_remove_member (onto, rivals[i][j]);
      json_object_set_member (onto, l->data, json_node_copy (node));
    }
}

static JsonObject *
nth_key (JsonArray *keys, gint64 n)
{
  if (keys == NULL || n < 0 || n >= (gint64) json_array_get_length (keys))
    return NULL;
  return json_array_get_object_element (keys, n);
}

/* The key that entry @i of a list of keys starts from; NULL with an error when it points nowhere. */
static JsonObject *
start_of_key (JsonObject *entry, guint i, JsonArray *base, JsonArray *done, gboolean front, GError **error)
{
  JsonObject *from = NULL;

  if (json_object_has_member (entry, "as"))
    from = nth_key (done, json_object_get_int_member_with_default (entry, "as", -1));
  else if (json_object_has_member (entry, "key"))
    from = nth_key (base, json_object_get_int_member_with_default (entry, "key", -1));
  else if (base == NULL || json_array_get_length (base) == 0)
    return json_object_new ();
  else
    from = nth_key (base, MIN (i, json_array_get_length (base) - 1));
  if (from == NULL)
    {
      g_autofree char *pointer = g_strdup_printf ("/keys/%u", i);

      lap_error_at (error, pointer,
                    _("expected \"as\" to name an earlier key, and \"key\" one of the figure it is like"));
      return NULL;
    }
  return json_object_get_boolean_member_with_default (entry, "mirror", FALSE) ? swap_object (from, front, FALSE)
                                                                              : copy_object (from);
}

static JsonArray *
expand_keys (JsonArray *keys, JsonArray *base, gboolean front, GError **error)
{
  static const char *const handled[] = { "as", "key", "mirror", NULL };
  g_autoptr (JsonArray) done = json_array_new ();

  for (guint i = 0; i < json_array_get_length (keys); i++)
    {
      JsonNode *node = json_array_get_element (keys, i);
      JsonObject *key = NULL;

      if (!JSON_NODE_HOLDS_OBJECT (node))
        {
          g_autofree char *pointer = g_strdup_printf ("/keys/%u", i);

          lap_error_at (error, pointer, _("expected an object for a key pose"));
          return NULL;
        }
      key = start_of_key (json_node_get_object (node), i, base, done, front, error);
      if (key == NULL)
        return NULL;
      lay_over (key, json_node_get_object (node), handled);
      json_array_add_object_element (done, key);
    }
  return g_steal_pointer (&done);
}

static JsonObject *expand_within (const char *id, JsonObject *object, LapFigureLookup lookup, gpointer data,
                                  guint depth,
                                  GError **error);

static JsonObject *
expand_base (const char *id, JsonObject *object, LapFigureLookup lookup, gpointer data, guint depth,
             GError **error)
{
  const char *like = json_object_get_string_member_with_default (object, "like", NULL);
  JsonObject *base = NULL;

  if (like == NULL)
    return json_object_new ();
  base = depth < MOST_LIKES && lookup != NULL && !g_str_equal (like, id) ? lookup (like, data) : NULL;
  if (base == NULL)
    {
      lap_error_at (error, "/like",
                    _("expected the id of an exercise with a figure that does not come back to "
                                      "this one, not \"%s\""), like);
      return NULL;
    }
  return expand_within (like, base, lookup, data, depth + 1, error);
}

static JsonObject *
expand_within (const char *id, JsonObject *object, LapFigureLookup lookup, gpointer data, guint depth,
               GError **error)
{
  static const char *const handled[] = { "like", "keys", NULL };
  JsonNode *node = json_object_get_member (object, "keys");
  JsonArray *base_keys = NULL, *keys = NULL;
  g_autoptr (JsonObject) full = expand_base (id, object, lookup, data, depth, error);

  if (full == NULL)
    return NULL;
  if (json_object_has_member (full, "keys"))
    base_keys = json_object_get_array_member (full, "keys");
  lay_over (full, object, handled);
  if (node == NULL)
    return g_steal_pointer (&full);
  if (!JSON_NODE_HOLDS_ARRAY (node))
    {
      lap_error_at (error, "/keys", _("expected a list of key poses"));
      return NULL;
    }
  keys = expand_keys (json_node_get_array (node), base_keys, is_front (full), error);
  if (keys == NULL)
    return NULL;
  json_object_set_array_member (full, "keys", keys);
  return g_steal_pointer (&full);
}

JsonObject *
lap_figure_expand (const char *id, JsonObject *object, LapFigureLookup lookup, gpointer data, GError **error)
{
  return expand_within (id, object, lookup, data, 0, error);
}
