/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The nodes of json-glib for values in the order in which they stand in a text. Internal to base/json-scan.c, which
 * knows that the text is JSON.
 *
 * What always holds: a value goes into the innermost container that is open; the first of all is the root.
 *
 * Calling order: lap_json_tree_new(); for each value lap_json_tree_name() where it is a member of an object, then one of
 * the others; lap_json_tree_close() for each lap_json_tree_open(); lap_json_tree_free() for the root.
 */
#pragma once

#include <json-glib/json-glib.h>

#include "base/json-token.h"

G_BEGIN_DECLS

typedef struct _LapJsonTree LapJsonTree;

LapJsonTree *lap_json_tree_new     (void);
/* The root, immutable, transfer full; with FALSE it is let go, and NULL. */
JsonNode    *lap_json_tree_free    (LapJsonTree *tree, gboolean right);
void         lap_json_tree_name    (LapJsonTree *tree, const char *bytes, gsize length);
void         lap_json_tree_open    (LapJsonTree *tree, gboolean is_object);
void         lap_json_tree_close   (LapJsonTree *tree);
void         lap_json_tree_string  (LapJsonTree *tree, const LapJsonText *text);
void         lap_json_tree_number  (LapJsonTree *tree, const LapJsonNumber *number);
void         lap_json_tree_literal (LapJsonTree *tree, LapJsonLiteral literal);

G_END_DECLS
