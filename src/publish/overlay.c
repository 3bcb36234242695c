/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/overlay.h"

#include "base/error.h"
#include "publish/csv.h"
#include "publish/encode.h"
#include "publish/film.h"
#include "publish/folder.h"
#include "sheets/overlay.h"
#include "sheets/png.h"

#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

#define LIST "frames.ffconcat"

/* Pictures in the making. */
typedef struct {
  const LapTimeline *timeline;
  LapOutput         *output;
  const char        *folder;
  cairo_surface_t   *surface;
  cairo_t           *cr;
  int                width, height;
  GHashTable        *numbers;      /* LapOverlayState -> number of the file */
  GOutputStream     *csv, *concat; /* lists that grow with the film */
  guint              n;            /* entries of the list for ffmpeg */
  double             since, until; /* seconds of the film: when the last begins, and when it ends */
  double             share;        /* of the whole work that drawing is */
} Frames;

/* A list in the folder, written as it grows. */
static GOutputStream *
list_new (Frames *frames, const char *name, const char *first, GError **error)
{
  g_autoptr (GFile) file = g_file_new_build_filename (frames->folder, name, NULL);
  g_autoptr (GFileOutputStream) stream = g_file_create (file, G_FILE_CREATE_NONE, NULL, error);
  g_autoptr (GOutputStream) list = stream != NULL ? g_buffered_output_stream_new (G_OUTPUT_STREAM (stream)) : NULL;

  return list != NULL && g_output_stream_write_all (list, first, strlen (first), NULL, NULL, error)
             ? g_steal_pointer (&list) : NULL;
}

/* Frees @text. */
static gboolean
list_add (GOutputStream *list, GString *text, GError **error)
{
  gboolean good = g_output_stream_write_all (list, text->str, text->len, NULL, NULL, error);

  g_string_free (text, TRUE);
  return good;
}

/* The number of the file that shows @state, which is drawn the first time. 0 on error. */
static guint
picture_of (Frames *frames, const LapOverlayState *state, GError **error)
{
  guint number = GPOINTER_TO_UINT (g_hash_table_lookup (frames->numbers, state));
  g_autofree char *name = NULL, *path = NULL;

  if (number > 0)
    return number;
  number = g_hash_table_size (frames->numbers) + 1;
  name = g_strdup_printf ("%05u.png", number);
  path = g_build_filename (frames->folder, name, NULL);
  lap_overlay_draw (frames->cr, frames->width, frames->height, state);
  if (!lap_png_write (frames->surface, path, error))
    return 0;
  g_hash_table_insert (frames->numbers, g_memdup2 (state, sizeof *state), GUINT_TO_POINTER (number));
  return number;
}

static gboolean
list_in_csv (Frames *frames, const char *name, double end, GError **error)
{
  GString *row = g_string_new (NULL);

  lap_csv_number (row, frames->until, FALSE);
  lap_csv_number (row, end - frames->until, FALSE);
  lap_csv_text (row, name, TRUE);
  return list_add (frames->csv, row, error);
}

static gboolean
list_in_concat (Frames *frames, const char *name, double end, GError **error)
{
  char seconds[G_ASCII_DTOSTR_BUF_SIZE];
  GString *row = g_string_new (NULL);

  g_ascii_formatd (seconds, sizeof seconds, "%.3f", end - frames->until);
  /* Milliseconds; without that ffmpeg puts pictures on 25 frames a second. */
  g_string_printf (row, "file '%s'\noption framerate 1000\nduration %s\n", name, seconds);
  frames->n++;
  frames->since = frames->until;
  frames->until = end;
  return list_add (frames->concat, row, error);
}

/* Shows @state until @end of the film. In the list for ffmpeg the first picture stands as two halves, so that the last
 * never begins at 0. */
static gboolean
list (Frames *frames, const LapOverlayState *state, double end, GError **error)
{
  char name[16];
  guint number;

  if (end - frames->until < 0.0005)
    return TRUE;
  number = picture_of (frames, state, error);
  g_snprintf (name, sizeof name, "%05u.png", number);
  return number > 0 && list_in_csv (frames, name, end, error) &&
         (frames->n > 0 || list_in_concat (frames, name, end / 2, error)) &&
         list_in_concat (frames, name, end, error);
}

static gboolean
add_piece (Frames *frames, const LapPiece *piece, GError **error)
{
  const LapOverlayState nothing = { NULL };

  for (int second = floor (piece->from); second < piece->to; second++) {
    LapOverlayState state;
    double in, out;

    if (!lap_piece_of (piece, second, second + 1, &in, &out) || out <= frames->until)
      continue;
    state = lap_overlay_state (frames->timeline, second);
    if (!list (frames, &nothing, in, error) || !list (frames, &state, out, error) ||
        !lap_output_progress (frames->output, frames->share * second / frames->timeline->length, error))
      return FALSE;
  }
  return TRUE;
}

static gboolean
draw_all (Frames *frames, const LapFilm *film, GError **error)
{
  const LapOverlayState nothing = { NULL };

  for (guint i = 0; i < film->n; i++)
    if (!add_piece (frames, &film->pieces[i], error))
      return FALSE;
  /* A film has a picture, even when nothing is to be seen in it. */
  if (frames->n == 0 && !list (frames, &nothing, 1, error))
    return FALSE;
  return g_output_stream_close (frames->csv, NULL, error) && g_output_stream_close (frames->concat, NULL, error);
}

/* Draws into @folder; tells when the last picture begins and ends. */
static gboolean
draw (const LapPublication *what, LapOutput *output, const char *folder, double share, LapReel *reel, GError **error)
{
  g_autoptr (LapFilm) film = lap_film_new (what, error);
  Frames frames = { .timeline = what->timeline, .output = output, .folder = folder, .share = share };
  gboolean good = FALSE;

  if (film == NULL)
    return FALSE;
  lap_overlay_size (what->timeline, &frames.width, &frames.height);
  frames.surface = cairo_image_surface_create (CAIRO_FORMAT_ARGB32, frames.width, frames.height);
  frames.cr = cairo_create (frames.surface);
  frames.numbers = g_hash_table_new_full (lap_overlay_state_hash, lap_overlay_state_equal, g_free, NULL);
  frames.csv = list_new (&frames, "timing.csv", "start,seconds,file\r\n", error);
  if (frames.csv != NULL)
    frames.concat = list_new (&frames, LIST, "ffconcat version 1.0\n", error);
  if (frames.concat != NULL)
    good = draw_all (&frames, film, error);
  reel->n = frames.n;
  reel->last = frames.since;
  reel->length = frames.until;
  g_clear_object (&frames.csv);
  g_clear_object (&frames.concat);
  g_hash_table_unref (frames.numbers);
  cairo_destroy (frames.cr);
  cairo_surface_destroy (frames.surface);
  return good;
}

static gboolean
write_film (const LapPublication *what, const char *suffix, LapOutput *output, GError **error)
{
  double share = g_str_equal (suffix, "mov") ? 0.9 : 0.3;
  g_autoptr (LapFolder) folder = NULL;
  g_autofree char *list = NULL;
  LapReel reel;

  if (!lap_encode_can (output, error))
    return FALSE;
  folder = lap_folder_beside (lap_saving_beside (lap_output_saving (output)), error);
  if (folder == NULL)
    return FALSE;
  list = g_build_filename (lap_folder_path (folder), LIST, NULL);
  reel.list = list;
  return draw (what, output, lap_folder_path (folder), share, &reel, error) &&
         lap_encode (output, suffix, &reel, share, error);
}

gboolean
lap_overlay_write (const LapPublication *what, const char *suffix, LapOutput *output, GError **error)
{
  LapReel reel;

  if (g_str_equal (suffix, "/"))
    return draw (what, output, lap_output_folder (output), 1, &reel, error);
  return write_film (what, suffix, output, error);
}
