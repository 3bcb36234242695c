/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/formats.h"

#include "base/error.h"
#include "publish/calendar.h"
#include "publish/captions.h"
#include "publish/chapters.h"
#include "publish/overlay.h"
#include "publish/pack.h"
#include "publish/page.h"
#include "publish/post.h"
#include "publish/takes.h"
#include "publish/timeline.h"
#include "publish/tones.h"
#include "publish/week-table.h"

#include <glib/gi18n-lib.h>
#include <string.h>

#define FILM (LAP_FORMAT_SESSION | LAP_FORMAT_OFFSET | LAP_FORMAT_TAKES)

/* The running order of a session, or the classes of a week. */
static gboolean
write_table (const LapPublication *what, const char *suffix, LapOutput *output, GError **error)
{
  return (what->week != NULL ? lap_week_table_write : lap_table_write) (what, suffix, output, error);
}

static const LapFormat formats[] = {
  { "chapters", N_("Chapters"), N_("for a player, as WebVTT"), "vtt", FILM, lap_chapters_write },
  { "captions", N_("Captions"), N_("what is said, as WebVTT"), "vtt", FILM, lap_captions_write },
  { "chapter-list", N_("List of chapters"), N_("to paste below a film"), "txt", FILM, lap_chapter_list_write },
  { "post", N_("Words for a post"), N_("what the session is, as plain text"), "txt", FILM, lap_post_write },
  { "takes", N_("Takes"), N_("what was marked while filming, as WebVTT or CSV"), "vtt csv",
    LAP_FORMAT_SESSION | LAP_FORMAT_OFFSET | LAP_FORMAT_OF_TAKES, lap_takes_write },
  { "cut-list", N_("List to cut by"), N_("in, out and what to keep, as CSV"), "csv",
    LAP_FORMAT_SESSION | LAP_FORMAT_OFFSET | LAP_FORMAT_OF_TAKES, lap_cut_list_write },
  { "table", N_("Table"), N_("for a spreadsheet, as CSV"), "csv",
    LAP_FORMAT_SESSION | LAP_FORMAT_WEEK | LAP_FORMAT_FROM, write_table },
  { "hours", N_("Hours of coaches"), N_("what each coach gives in a week, as CSV"), "csv",
    LAP_FORMAT_WEEK | LAP_FORMAT_FROM, lap_hours_write },
  { "calendar", N_("Calendar"), N_("when it is held, as iCalendar"), "ics",
    LAP_FORMAT_SESSION | LAP_FORMAT_WEEK | LAP_FORMAT_AT | LAP_FORMAT_FROM, lap_calendar_write },
  { "tones", N_("Tones"), N_("what counts people in and out, as WAV or FLAC"), "wav flac",
    LAP_FORMAT_SESSION | LAP_FORMAT_OFFSET | LAP_FORMAT_SPOKEN, lap_tones_write },
  { "overlay", N_("Overlay"), N_("time, name and what is next: a folder of PNGs, or a film (.mov, .webm)"),
    "/ mov webm", FILM, lap_overlay_write },
  { "page", N_("Poster as a picture"), N_("its first page, as PNG or SVG"), "png svg", LAP_FORMAT_SESSION,
    lap_page_write },
  { "timeline", N_("Timeline"), N_("every interval, for programs, as JSON"), "json", LAP_FORMAT_SESSION,
    lap_timeline_write },
  { "pack", N_("Film day pack"), N_("all of it in one folder"), "/", FILM | LAP_FORMAT_AT | LAP_FORMAT_SPOKEN, lap_pack_write },
};

guint
lap_formats_n (void)
{
  return G_N_ELEMENTS (formats);
}

const LapFormat *
lap_formats_nth (guint n)
{
  return &formats[n];
}

const LapFormat *
lap_formats_find (const char *id)
{
  for (guint i = 0; i < G_N_ELEMENTS (formats); i++)
    if (g_str_equal (formats[i].id, id))
      return &formats[i];
  return NULL;
}

/* One word of a list parted by blanks, interned. */
static const char *
word_of (const char *list, guint n)
{
  g_auto (GStrv) words = g_strsplit (list, " ", -1);

  return n < g_strv_length (words) ? g_intern_string (words[n]) : NULL;
}

/* The suffix of @format that the file name @path has, or its only or usual one; NULL with LAP_ERROR_USAGE where
 * the name leaves open which of several is meant. */
static const char *
suffix_of (const LapFormat *format, const char *path, GError **error)
{
  const char *usual = word_of (format->suffixes, 0), *word;
  g_autofree char *lower = g_utf8_strdown (path, -1);

  for (guint i = 0; (word = word_of (format->suffixes, i)) != NULL; i++) {
    g_autofree char *ending = g_strconcat (".", word, NULL);

    if (g_str_has_suffix (lower, ending))
      return word;
  }
  /* A folder may be called anything, and so may the only kind of file there is. */
  if (g_str_equal (usual, "/") || g_str_equal (path, "-") || word_of (format->suffixes, 1) == NULL)
    return usual;
  g_set_error (error, LAP_ERROR, LAP_ERROR_USAGE, _("%1$s: expected a name that ends with one of: %2$s"), path,
               format->suffixes);
  return NULL;
}

static gboolean
refuse (GError **error, const LapFormat *format, const char *why)
{
  g_set_error (error, LAP_ERROR, LAP_ERROR_USAGE, why, format->id);
  return FALSE;
}

/* Whether everything that was asked for means something to @format. */
static gboolean
is_meant (const LapFormat *format, const LapPublication *what, GError **error)
{
  if (what->timeline != NULL && !(format->flags & LAP_FORMAT_SESSION))
    return refuse (error, format, _("%s is made of a week, and this is a session"));
  if (what->week != NULL && !(format->flags & LAP_FORMAT_WEEK))
    return refuse (error, format, _("%s is made of a session, and this is a week"));
  if (what->offset != 0 && !(format->flags & LAP_FORMAT_OFFSET))
    return refuse (error, format, _("%s isn’t on the clock of a film: --offset doesn’t move it"));
  if (what->takes && !(format->flags & LAP_FORMAT_TAKES))
    return refuse (error, format, _("%s isn’t on the clock of a film: --takes doesn’t change it"));
  if ((what->at != NULL || what->timezone != NULL) && !(format->flags & LAP_FORMAT_AT))
    return refuse (error, format, _("%s says no day: --at and --timezone don’t change it"));
  if (what->spoken && !(format->flags & LAP_FORMAT_SPOKEN))
    return refuse (error, format, _("%s has no sound: --spoken doesn’t change it"));
  if (what->from != NULL && (what->week == NULL || !(format->flags & LAP_FORMAT_FROM)))
    return refuse (error, format, _("%s says no day: --from doesn’t change it"));
  return TRUE;
}

gboolean
lap_publish (const LapFormat *format, const LapPublication *what, const char *path, const LapProgress *watch,
             GError **error)
{
  const char *suffix = suffix_of (format, path, error);
  g_autoptr (LapOutput) output = NULL;

  if (suffix == NULL || !is_meant (format, what, error))
    return FALSE;
  output = g_str_equal (suffix, "/") ? lap_output_open_folder (path, watch, error)
                                     : lap_output_open_file (path, watch, error);
  return output != NULL && format->write (what, suffix, output, error) && lap_output_finish (output, error);
}
