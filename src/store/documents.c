/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "store/documents.h"

#include "base/error.h"
#include "base/json-scan.h"

#include <string.h>

/* Room for every place there is in a plan; names in it may be of any length. */
#define POINTER_MOST 200

void
lap_error_add_line (GError *error, GBytes *bytes)
{
  const char *pointer = lap_error_pointer (error);
  GString *message;

  if (pointer == NULL)
    return;
  message = g_string_new (NULL);
  g_string_printf (message, "line %u%s",
                   lap_json_line_of (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes), pointer),
                   *pointer != '\0' ? ", " : "");
  lap_append_printable (message, pointer, strlen (pointer), POINTER_MOST);
  g_string_append_printf (message, ": %s", error->message);
  g_free (error->message);
  error->message = g_string_free (message, FALSE);
}

static JsonNode *
parse (GBytes *bytes, GError **error)
{
  return lap_json_parse (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes), error);
}

/* The object in @bytes, of the type that @type_of finds. */
static gpointer
from_bytes (GType (*type_of) (JsonNode *root, GError **error), GBytes *bytes, GError **error)
{
  GError *mistake = NULL;
  g_autoptr (JsonNode) root = parse (bytes, &mistake);
  LapPath top = { NULL, NULL, 0 };
  GType type = root != NULL ? type_of (root, &mistake) : G_TYPE_INVALID;
  gpointer object = type != G_TYPE_INVALID ? lap_object_read (type, root, &top, &mistake) : NULL;

  if (object == NULL) {
    lap_error_add_line (mistake, bytes);
    g_propagate_error (error, mistake);
  }
  return object;
}

static GType
session_type (JsonNode *root, GError **error)
{
  return LAP_TYPE_SESSION;
}

static GType
week_type (JsonNode *root, GError **error)
{
  return LAP_TYPE_WEEK;
}

/* What says neither is read as a session, but for a format that is none. */
static GType
document_type (JsonNode *root, GError **error)
{
  LapPath top = { NULL, NULL, 0 };
  JsonNode *member = JSON_NODE_HOLDS_OBJECT (root) ? json_object_get_member (json_node_get_object (root), "format") : NULL;
  const char *format = member != NULL && JSON_NODE_HOLDS_VALUE (member) ? json_node_get_string (member) : NULL;

  if (format == NULL || g_str_equal (format, "lapwing-session"))
    return LAP_TYPE_SESSION;
  if (g_str_equal (format, "lapwing-week"))
    return LAP_TYPE_WEEK;
  lap_path_error (error, LAP_PATH_MEMBER (&top, "format"), "expected \"lapwing-session\" or \"lapwing-week\"");
  return G_TYPE_INVALID;
}

LapSession *
lap_session_from_bytes (GBytes *bytes, GError **error)
{
  return from_bytes (session_type, bytes, error);
}

gboolean
lap_session_allows (LapSession *session, const char *property, const GValue *value, GError **error)
{
  g_autoptr (LapSession) copy = lap_object_copy (session), back = NULL;
  g_autoptr (GBytes) bytes = NULL;

  g_object_set_property (G_OBJECT (copy), property, value);
  bytes = lap_session_to_bytes (copy);
  back = lap_session_from_bytes (bytes, error);
  return back != NULL;
}

LapWeek *
lap_week_from_bytes (GBytes *bytes, GError **error)
{
  return from_bytes (week_type, bytes, error);
}

LapObject *
lap_document_from_bytes (GBytes *bytes, GError **error)
{
  return from_bytes (document_type, bytes, error);
}

GBytes *
lap_session_to_bytes (LapSession *session)
{
  return lap_object_bytes (session);
}

GBytes *
lap_week_to_bytes (LapWeek *week)
{
  return lap_object_bytes (week);
}
