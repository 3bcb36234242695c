/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/clipboard.h"

#include "store/read-file.h"

#include <glib/gi18n-lib.h>

typedef struct {
  LapClipboardFunc func;
  GObject         *object;
} Reading;

/* The last thing that is done with it. */
static void
tell (Reading *reading, GBytes *bytes, const char *why)
{
  reading->func (reading->object, bytes, why);
  g_object_unref (reading->object);
  g_free (reading);
}

static void
spliced_cb (GObject *memory, GAsyncResult *result, gpointer data)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) bytes = NULL;

  if (g_output_stream_splice_finish (G_OUTPUT_STREAM (memory), result, &error) < 0) {
    tell (data, NULL, error->message);
    return;
  }
  bytes = g_memory_output_stream_steal_as_bytes (G_MEMORY_OUTPUT_STREAM (memory));
  if (g_bytes_get_size (bytes) > LAP_FILE_MOST)
    tell (data, NULL, _("it is too large"));
  else
    tell (data, bytes, NULL);
}

static void
read_cb (GObject *clipboard, GAsyncResult *result, gpointer data)
{
  g_autoptr (GInputStream) stream = gdk_clipboard_read_finish (GDK_CLIPBOARD (clipboard), result, NULL, NULL);
  g_autoptr (GOutputStream) memory = NULL;

  if (stream == NULL) {
    tell (data, NULL, _("the clipboard holds no text"));
    return;
  }
  memory = g_memory_output_stream_new_resizable ();
  g_output_stream_splice_async (memory, stream, G_OUTPUT_STREAM_SPLICE_CLOSE_SOURCE | G_OUTPUT_STREAM_SPLICE_CLOSE_TARGET,
                                G_PRIORITY_DEFAULT, NULL, spliced_cb, data);
}

void
lap_clipboard_read (GdkClipboard *clipboard, const char **types, LapClipboardFunc func, gpointer object)
{
  Reading *reading = g_new (Reading, 1);

  reading->func = func;
  reading->object = g_object_ref (object);
  gdk_clipboard_read_async (clipboard, types, G_PRIORITY_DEFAULT, NULL, read_cb, reading);
}
