/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/overlay.h"

#include "base/error.h"
#include "publish/csv.h"
#include "publish/film.h"
#include "publish/folder.h"
#include "sheets/overlay.h"

#include <glib/gi18n-lib.h>
#include <math.h>

/* Pictures in the making. */
typedef struct {
  const LapTimeline *timeline;
  LapOutput         *output;
  char              *folder;
  cairo_surface_t   *surface;
  cairo_t           *cr;
  int                width, height;
  GHashTable        *names; /* key of a state -> file name */
  GString           *csv, *concat;
  char              *last;  /* file name */
  double             until; /* seconds of the film that are listed */
  double             share; /* of the whole work that drawing is */
} Frames;

static gboolean
write_text (Frames *frames, const char *name, const GString *text, GError **error)
{
  g_autofree char *path = g_build_filename (frames->folder, name, NULL);

  return g_file_set_contents (path, text->str, text->len, error);
}

/* The name of the file that shows @state, which is drawn the first time. NULL on error. */
static const char *
picture_of (Frames *frames, const LapOverlayState *state, GError **error)
{
  g_autofree char *key = state != NULL ? lap_overlay_state_key (state) : g_strdup ("");
  const char *known = g_hash_table_lookup (frames->names, key);
  g_autofree char *path = NULL;
  cairo_status_t status;
  char *name;

  if (known != NULL)
    return known;
  name = g_strdup_printf ("%05u.png", g_hash_table_size (frames->names) + 1);
  path = g_build_filename (frames->folder, name, NULL);
  lap_overlay_draw (frames->cr, frames->width, frames->height, state);
  cairo_surface_flush (frames->surface);
  status = cairo_surface_write_to_png (frames->surface, path);
  g_hash_table_insert (frames->names, g_steal_pointer (&key), name);
  if (status == CAIRO_STATUS_SUCCESS)
    return name;
  g_set_error (error, LAP_ERROR, LAP_ERROR_UNWRITABLE, "%s: %s", path, cairo_status_to_string (status));
  return NULL;
}

static gboolean
list (Frames *frames, const LapOverlayState *state, double end, GError **error)
{
  char seconds[G_ASCII_DTOSTR_BUF_SIZE];
  const char *name;

  if (end - frames->until < 0.0005)
    return TRUE;
  name = picture_of (frames, state, error);
  if (name == NULL)
    return FALSE;
  lap_csv_number (frames->csv, frames->until, FALSE);
  lap_csv_number (frames->csv, end - frames->until, FALSE);
  lap_csv_text (frames->csv, name, TRUE);
  g_ascii_formatd (seconds, sizeof seconds, "%.3f", end - frames->until);
  g_string_append_printf (frames->concat, "file '%s'\nduration %s\n", name, seconds);
  g_free (frames->last);
  frames->last = g_strdup (name);
  frames->until = end;
  return TRUE;
}

static gboolean
add_piece (Frames *frames, const LapPiece *piece, GError **error)
{
  for (int second = floor (piece->from); second < piece->to; second++) {
    LapOverlayState state;
    double in, out;
    gboolean good;

    if (!lap_piece_of (piece, second, second + 1, &in, &out) || out <= frames->until)
      continue;
    state = lap_overlay_state (frames->timeline, second);
    good = list (frames, NULL, in, error) && list (frames, &state, out, error) &&
           lap_output_progress (frames->output, frames->share * second / frames->timeline->length, error);
    lap_overlay_state_clear (&state);
    if (!good)
      return FALSE;
  }
  return TRUE;
}

/* The last picture is named twice: the list of ffmpeg wouldn't know how long it lasts otherwise. */
static gboolean
draw_all (Frames *frames, const LapFilm *film, GError **error)
{
  for (guint i = 0; i < film->n; i++)
    if (!add_piece (frames, &film->pieces[i], error))
      return FALSE;
  /* A film has a picture, even when nothing is to be seen in it. */
  if (frames->last == NULL && !list (frames, NULL, 1, error))
    return FALSE;
  g_string_append_printf (frames->concat, "file '%s'\n", frames->last);
  return write_text (frames, "timing.csv", frames->csv, error) &&
         write_text (frames, "frames.ffconcat", frames->concat, error);
}

static gboolean
draw (const LapPublication *what, LapOutput *output, const char *folder, double share, GError **error)
{
  g_autoptr (LapFilm) film = lap_film_new (what, error);
  Frames frames = { .timeline = what->timeline, .output = output, .folder = (char *) folder, .share = share };
  gboolean good;

  if (film == NULL)
    return FALSE;
  lap_overlay_size (what->timeline, &frames.width, &frames.height);
  frames.surface = cairo_image_surface_create (CAIRO_FORMAT_ARGB32, frames.width, frames.height);
  frames.cr = cairo_create (frames.surface);
  frames.names = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, g_free);
  frames.csv = g_string_new ("start,seconds,file\r\n");
  frames.concat = g_string_new ("ffconcat version 1.0\n");
  good = draw_all (&frames, film, error);
  g_string_free (frames.csv, TRUE);
  g_string_free (frames.concat, TRUE);
  g_hash_table_unref (frames.names);
  g_free (frames.last);
  cairo_destroy (frames.cr);
  cairo_surface_destroy (frames.surface);
  return good;
}

static gboolean
encode (LapOutput *output, const char *folder, const char *suffix, GError **error)
{
  static const char *const mov[] = { "-c:v", "copy", "-f", "mov", NULL };
  static const char *const webm[] = { "-c:v", "libvpx-vp9", "-pix_fmt", "yuva420p", "-deadline", "realtime",
                                      "-cpu-used", "8", "-row-mt", "1", "-crf", "28", "-b:v", "0", "-auto-alt-ref",
                                      "0", "-f", "webm", NULL };
  const char *const *how = g_str_equal (suffix, "mov") ? mov : webm;
  g_autofree char *frames = g_build_filename (folder, "frames.ffconcat", NULL);
  g_autoptr (GPtrArray) words = g_ptr_array_new ();
  const char *first[] = { "ffmpeg", "-nostdin", "-v", "error", "-y", "-f", "concat", "-i", frames, "-fps_mode",
                          "passthrough" };

  for (guint i = 0; i < G_N_ELEMENTS (first); i++)
    g_ptr_array_add (words, (gpointer) first[i]);
  for (guint i = 0; how[i] != NULL; i++)
    g_ptr_array_add (words, (gpointer) how[i]);
  g_ptr_array_add (words, (gpointer) lap_saving_beside (lap_output_saving (output)));
  g_ptr_array_add (words, NULL);
  return lap_output_run (output, (const char *const *) words->pdata, error);
}

static gboolean
write_film (const LapPublication *what, const char *suffix, LapOutput *output, GError **error)
{
  g_autofree char *ffmpeg = g_find_program_in_path ("ffmpeg");
  g_autofree char *folder = NULL;
  gboolean good;

  if (ffmpeg == NULL) {
    g_set_error (error, LAP_ERROR, LAP_ERROR_MISSING,
                 _("a film needs the program ffmpeg, which isn’t installed; a folder of pictures doesn’t"));
    return FALSE;
  }
  if (lap_output_saving (output) == NULL) {
    g_set_error (error, LAP_ERROR, LAP_ERROR_USAGE, _("a film can’t go to standard output: expected a file"));
    return FALSE;
  }
  folder = lap_folder_beside (lap_saving_beside (lap_output_saving (output)), error);
  if (folder == NULL)
    return FALSE;
  good = draw (what, output, folder, g_str_equal (suffix, "mov") ? 0.9 : 0.3, error) &&
         encode (output, folder, suffix, error);
  lap_folder_remove (folder);
  return good;
}

gboolean
lap_overlay_write (const LapPublication *what, const char *suffix, LapOutput *output, GError **error)
{
  if (g_str_equal (suffix, "/"))
    return draw (what, output, lap_output_folder (output), 1, error);
  return write_film (what, suffix, output, error);
}
