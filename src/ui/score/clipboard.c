/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/clipboard.h"

#include "store/clip.h"
#include "ui/clipboard.h"
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
    g_autofree char *why = g_strdup_printf (_("the clipboard doesn’t hold blocks (%s)"), error->message);

    refuse (context, why);
    return;
  }
  lap_score_spot (context, &spot);
  lap_score_insert (context, &spot, blocks, _("Paste %s"), own);
}

static void
read_cb (GObject *object, GBytes *bytes, const char *why)
{
  if (bytes != NULL)
    take ((LapScoreContext *) object, bytes);
  else
    refuse ((LapScoreContext *) object, why);
}

void
lap_score_paste (LapScoreContext *context, GdkClipboard *clipboard)
{
  lap_clipboard_read (clipboard, (const char **) types, read_cb, context);
}
