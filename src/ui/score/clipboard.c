/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/clipboard.h"

#include "store/clip.h"
#include "store/read-file.h"
#include "ui/score/verbs.h"

#include <glib/gi18n-lib.h>

static const char *const types[] = {
  LAP_CLIP_MIME, "application/json", "text/plain;charset=utf-8", "UTF8_STRING", "text/plain", NULL,
};

void
lap_score_copy (LapScoreContext *context, GdkClipboard *clipboard, GPtrArray *blocks)
{
  LapSession *session = lap_document_session (context->document);
  g_autofree char *title = lap_blocks_title (blocks, lap_document_catalogue (context->document));
  g_autoptr (GBytes) bytes = lap_clip_write (session, blocks, title);
  GdkContentProvider *both[] = {
    gdk_content_provider_new_for_bytes (LAP_CLIP_MIME, bytes),
    gdk_content_provider_new_for_bytes ("text/plain;charset=utf-8", bytes),
  };
  g_autoptr (GdkContentProvider) content = gdk_content_provider_new_union (both, G_N_ELEMENTS (both));

  gdk_clipboard_set_content (clipboard, content);
}

static void
refuse (LapScoreContext *context, const char *why)
{
  g_autofree char *text = g_strdup_printf (_("Nothing pasted: %s"), why);

  lap_document_tell (context->document, text);
}

static void
take (LapScoreContext *context, GBytes *bytes)
{
  g_autoptr (GPtrArray) own = NULL, blocks = NULL;
  g_autoptr (GError) error = NULL;
  LapSpot spot;

  blocks = lap_clip_read (bytes, &own, &error);
  if (blocks == NULL) {
    g_autofree char *why = g_strdup_printf (_("the clipboard doesn't hold blocks (%s)"), error->message);

    refuse (context, why);
    return;
  }
  lap_score_spot (context, &spot);
  lap_score_insert (context, &spot, blocks, _("Paste %s"), own);
}

static void
spliced_cb (GObject *source, GAsyncResult *result, gpointer data)
{
  g_autoptr (LapScoreContext) context = data;
  GMemoryOutputStream *memory = G_MEMORY_OUTPUT_STREAM (source);
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) bytes = NULL;

  if (g_output_stream_splice_finish (G_OUTPUT_STREAM (memory), result, &error) < 0) {
    refuse (context, error->message);
    return;
  }
  bytes = g_memory_output_stream_steal_as_bytes (memory);
  if (g_bytes_get_size (bytes) > LAP_FILE_MOST)
    refuse (context, _("it is too large"));
  else
    take (context, bytes);
}

static void
read_cb (GObject *source, GAsyncResult *result, gpointer data)
{
  g_autoptr (LapScoreContext) context = data;
  g_autoptr (GError) error = NULL;
  g_autoptr (GInputStream) stream = gdk_clipboard_read_finish (GDK_CLIPBOARD (source), result, NULL, &error);
  g_autoptr (GOutputStream) memory = NULL;

  if (stream == NULL) {
    refuse (context, _("the clipboard holds no text"));
    return;
  }
  memory = g_memory_output_stream_new_resizable ();
  g_output_stream_splice_async (memory, stream, G_OUTPUT_STREAM_SPLICE_CLOSE_SOURCE | G_OUTPUT_STREAM_SPLICE_CLOSE_TARGET,
                                G_PRIORITY_DEFAULT, NULL, spliced_cb, g_steal_pointer (&context));
}

void
lap_score_paste (LapScoreContext *context, GdkClipboard *clipboard)
{
  if (!lap_document_is_editable (context->document))
    return;
  gdk_clipboard_read_async (clipboard, (const char **) types, G_PRIORITY_DEFAULT, NULL, read_cb,
                            g_object_ref (context));
}
