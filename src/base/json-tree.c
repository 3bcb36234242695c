/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "base/json-tree.h"

struct _LapJsonTree {
  JsonNode  *root;
  GPtrArray *open; /* JsonNode of each container around the next value */
  GString   *name; /* of that value, in an object */
  GString   *text; /* room for one string with its NUL */
};

LapJsonTree *
lap_json_tree_new (void)
{
  LapJsonTree *tree = g_new0 (LapJsonTree, 1);

  tree->open = g_ptr_array_new ();
  tree->name = g_string_new (NULL);
  tree->text = g_string_new (NULL);
  return tree;
}

JsonNode *
lap_json_tree_free (LapJsonTree *tree, gboolean right)
{
  JsonNode *root = g_steal_pointer (&tree->root);

  if (right)
    json_node_seal (root);
  else
    g_clear_pointer (&root, json_node_unref);
  g_ptr_array_unref (tree->open);
  g_string_free (tree->name, TRUE);
  g_string_free (tree->text, TRUE);
  g_free (tree);
  return root;
}

void
lap_json_tree_name (LapJsonTree *tree, const char *bytes, gsize length)
{
  g_string_truncate (tree->name, 0);
  g_string_append_len (tree->name, bytes, length);
}

static void
add (LapJsonTree *tree, JsonNode *node)
{
  JsonNode *parent = tree->open->len > 0 ? tree->open->pdata[tree->open->len - 1] : NULL;

  if (parent == NULL)
    tree->root = node;
  else if (JSON_NODE_HOLDS_OBJECT (parent))
    json_object_set_member (json_node_get_object (parent), tree->name->str, node);
  else
    json_array_add_element (json_node_get_array (parent), node);
}

void
lap_json_tree_open (LapJsonTree *tree, gboolean is_object)
{
  JsonNode *node = json_node_alloc ();

  if (is_object)
    json_node_take_object (json_node_init (node, JSON_NODE_OBJECT), json_object_new ());
  else
    json_node_take_array (json_node_init (node, JSON_NODE_ARRAY), json_array_new ());
  add (tree, node);
  g_ptr_array_add (tree->open, node);
}

void
lap_json_tree_close (LapJsonTree *tree)
{
  g_ptr_array_set_size (tree->open, tree->open->len - 1);
}

void
lap_json_tree_string (LapJsonTree *tree, const LapJsonText *text)
{
  g_autofree char *plain = text->escaped ? lap_json_unescape (text) : NULL;

  g_string_truncate (tree->text, 0);
  if (plain == NULL)
    g_string_append_len (tree->text, text->bytes, text->length);
  add (tree, json_node_init_string (json_node_alloc (), plain != NULL ? plain : tree->text->str));
}

void
lap_json_tree_number (LapJsonTree *tree, const LapJsonNumber *number)
{
  JsonNode *node = json_node_alloc ();

  add (tree, number->whole ? json_node_init_int (node, number->integer) : json_node_init_double (node, number->fraction));
}

void
lap_json_tree_literal (LapJsonTree *tree, LapJsonLiteral literal)
{
  JsonNode *node = json_node_alloc ();

  add (tree, literal == LAP_JSON_NULL ? json_node_init_null (node)
                                      : json_node_init_boolean (node, literal == LAP_JSON_TRUE));
}
