/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/pack.h"

#include "base/error.h"
#include "sheets/sheets.h"

#include <glib/gi18n-lib.h>

typedef struct {
  const char *name;
  const char *format; /* or NULL: a sheet */
  const char *sheet;
  LapPaper    paper;
  gboolean    takes;  /* only when something was filmed */
  gboolean    at;     /* only when it was said when it is held */
} Item;

static const Item items[] = {
  { .name = "poster.pdf", .sheet = "poster", .paper = LAP_PAPER_A3 },
  { .name = "running-order.pdf", .sheet = "running-order", .paper = LAP_PAPER_A4 },
  { .name = "poster.png", .format = "page" },
  { .name = "running-order.csv", .format = "table" },
  { .name = "timeline.json", .format = "timeline" },
  { .name = "post.txt", .format = "post" },
  { .name = "chapters.txt", .format = "chapter-list" },
  { .name = "chapters.vtt", .format = "chapters" },
  { .name = "captions.vtt", .format = "captions" },
  { .name = "takes.csv", .format = "takes", .takes = TRUE },
  { .name = "cut-list.csv", .format = "cut-list", .takes = TRUE },
  { .name = "calendar.ics", .format = "calendar", .at = TRUE },
  { .name = "tones.flac", .format = "tones" },
  { .name = "overlay.mov", .format = "overlay" },
};

/* The share of the whole work that one item is. */
typedef struct {
  const LapProgress *watch;
  guint           item;
} Share;

static void
progress_cb (double done, gpointer data)
{
  Share *share = data;

  if (share->watch->progress != NULL)
    share->watch->progress ((share->item + done) / G_N_ELEMENTS (items), share->watch->data);
}

static gboolean
write_sheet (const Item *item, const LapPublication *what, const char *path, const LapProgress *watch,
             GError **error)
{
  LapSheetOptions options = { .paper = item->paper };
  g_autoptr (GBytes) pdf = lap_sheet_print (lap_sheets_find (item->sheet), what->timeline, &options, error);
  g_autoptr (LapOutput) output = pdf != NULL ? lap_output_open_file (path, watch, error) : NULL;

  return output != NULL && lap_output_write_bytes (output, pdf, error) && lap_output_finish (output, error);
}

/* What only some formats understand is left out for the others. */
static gboolean
write_format (const Item *item, const LapPublication *what, const char *path, const LapProgress *watch,
              GError **error)
{
  const LapFormat *format = lap_formats_find (item->format);
  LapPublication own = { .timeline = what->timeline };

  if (format->flags & LAP_FORMAT_OFFSET)
    own.offset = what->offset;
  if (format->flags & LAP_FORMAT_TAKES)
    own.takes = what->takes;
  if (format->flags & LAP_FORMAT_SPOKEN)
    own.spoken = what->spoken;
  if (format->flags & LAP_FORMAT_AT) {
    own.at = what->at;
    own.timezone = what->timezone;
  }
  return lap_publish (format, &own, path, watch, error);
}

/* Where a part of the system is missing that is noted in @missing, and all is well. */
static gboolean
write_item (const Item *item, const LapPublication *what, const char *folder, const LapProgress *watch,
            GString *missing, GError **error)
{
  g_autofree char *path = g_build_filename (folder, item->name, NULL);
  GError *mistake = NULL;

  if (item->format != NULL ? write_format (item, what, path, watch, &mistake)
                           : write_sheet (item, what, path, watch, &mistake))
    return TRUE;
  if (!g_error_matches (mistake, LAP_ERROR, LAP_ERROR_MISSING)) {
    g_propagate_error (error, mistake);
    return FALSE;
  }
  g_string_append_printf (missing, "%s: %s\n", item->name, mistake->message);
  g_error_free (mistake);
  return TRUE;
}

static gboolean
is_held (const LapPublication *what)
{
  return what->at != NULL || what->timezone != NULL;
}

gboolean
lap_pack_write (const LapPublication *what, const char *suffix, LapOutput *output, GError **error)
{
  const char *folder = lap_output_folder (output);
  g_autoptr (GString) missing = g_string_new (NULL);
  g_autofree char *note = g_build_filename (folder, "missing.txt", NULL);
  Share share = { lap_output_watch (output), 0 };
  LapProgress watch = { progress_cb, &share, share.watch->cancellable };

  for (guint i = 0; i < G_N_ELEMENTS (items); i++) {
    share.item = i;
    if ((items[i].takes && lap_rows_n (what->timeline->session->takes) == 0) || (items[i].at && !is_held (what)))
      continue;
    if (!write_item (&items[i], what, folder, &watch, missing, error))
      return FALSE;
  }
  return missing->len == 0 || g_file_set_contents (note, missing->str, missing->len, error);
}
