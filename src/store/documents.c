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

static LapSession *
read_session (GBytes *bytes, GError **error)
{
  g_autoptr (JsonNode) root = lap_json_parse (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes), error);
  LapPath top = { NULL, NULL, 0 };

  return root != NULL ? lap_object_read (LAP_TYPE_SESSION, root, &top, error) : NULL;
}

LapSession *
lap_session_from_bytes (GBytes *bytes, GError **error)
{
  GError *mistake = NULL;
  LapSession *session = read_session (bytes, &mistake);

  if (session == NULL) {
    lap_error_add_line (mistake, bytes);
    g_propagate_error (error, mistake);
  }
  return session;
}

GBytes *
lap_session_to_bytes (LapSession *session)
{
  return lap_object_bytes (session);
}
