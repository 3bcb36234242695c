/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/week/clipboard.h"

#include "store/week-clip.h"
#include "ui/clipboard.h"
#include "ui/week/moves.h"

#include <glib/gi18n-lib.h>

static const char *const types[] = {
  LAP_WEEK_CLIP_MIME, "application/json", "text/plain;charset=utf-8", "UTF8_STRING", "text/plain", NULL,
};

void
lap_week_copy (LapWeekScene *scene, GdkClipboard *clipboard, GPtrArray *classes)
{
  g_autoptr (GBytes) bytes = lap_week_clip_write (lap_week_scene_week (scene), classes);
  GdkContentProvider *both[] = {
    gdk_content_provider_new_for_bytes (LAP_WEEK_CLIP_MIME, bytes),
    gdk_content_provider_new_for_bytes ("text/plain;charset=utf-8", bytes),
  };
  g_autoptr (GdkContentProvider) content = gdk_content_provider_new_union (both, G_N_ELEMENTS (both));

  gdk_clipboard_set_content (clipboard, content);
}

static void
refuse (LapWeekScene *scene, const char *why)
{
  g_autofree char *text = g_strdup_printf (_("Nothing pasted: %s"), why);

  lap_document_tell (scene->document, text);
}

gboolean
lap_week_paste_bytes (LapWeekScene *scene, GBytes *bytes)
{
  LapWeek *week = lap_week_scene_week (scene);
  g_autoptr (GError) error = NULL;
  g_autoptr (GPtrArray) classes = lap_week_clip_read (week, bytes, &error);

  if (classes == NULL) {
    g_autofree char *why = g_strdup_printf (_("the clipboard doesn’t hold classes (%s)"), error->message);

    refuse (scene, why);
    return FALSE;
  }
  for (guint i = 0; i < classes->len; i++)
    lap_week_place_copy (week, g_ptr_array_index (classes, i));
  if (lap_document_apply (scene->document, lap_verb_add_classes (week, classes, _("Paste %s"))))
    lap_week_scene_pick_classes (scene, classes);
  return TRUE;
}

static void
read_cb (GObject *object, GBytes *bytes, const char *why)
{
  if (bytes != NULL)
    lap_week_paste_bytes ((LapWeekScene *) object, bytes);
  else
    refuse ((LapWeekScene *) object, why);
}

void
lap_week_paste (LapWeekScene *scene, GdkClipboard *clipboard)
{
  if (lap_document_is_editable (scene->document))
    lap_clipboard_read (clipboard, (const char **) types, read_cb, scene);
}
