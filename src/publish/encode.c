/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "publish/encode.h"

#include "base/error.h"

#include <glib/gi18n-lib.h>
#include <string.h>

static const char *const mov[] = { "-c:v", "copy", "-f", "mov", NULL };
static const char *const webm[] = { "-c:v", "libvpx-vp9", "-pix_fmt", "yuva420p", "-deadline", "realtime", "-cpu-used",
                                    "8", "-row-mt", "1", "-crf", "28", "-b:v", "0", "-auto-alt-ref", "0", "-lag-in-frames", "0",
                                    "-f", "webm", NULL };

gboolean
lap_encode_can (LapOutput *output, GError **error)
{
  g_autofree char *ffmpeg = g_find_program_in_path ("ffmpeg");

  if (ffmpeg == NULL) {
    g_set_error (error, LAP_ERROR, LAP_ERROR_MISSING,
                 _("a film needs the program ffmpeg, which isn’t installed; a folder of pictures doesn’t"));
    return FALSE;
  }
  if (lap_output_saving (output) == NULL) {
    g_set_error (error, LAP_ERROR, LAP_ERROR_USAGE, _("a film can’t go to standard output: expected a file"));
    return FALSE;
  }
  return TRUE;
}

static void
add (GPtrArray *words, const char *const *more)
{
  for (; *more != NULL; more++)
    g_ptr_array_add (words, (gpointer) *more);
}

/* ffmpeg takes the last picture to be shown for one unit of its time, whatever the list says. What is said here
 * holds in any unit of time: how long it is shown as a multiple of when it begins. */
static char *
last_lasts (const LapReel *reel)
{
  char share[G_ASCII_DTOSTR_BUF_SIZE];

  g_ascii_formatd (share, sizeof share, "%.12f", (reel->length - reel->last) / reel->last);
  return g_strdup_printf ("setts=duration=if(eq(N\\,%u)\\,round(PTS*%s)\\,DURATION)", reel->n - 1, share);
}

/* "out_time_us=1500000" and its like tell how far it is; every line of them has a name and a value. */
static double
line_cb (const char *line, gpointer data)
{
  const LapReel *reel = data;
  gsize name = strspn (line, "abcdefghijklmnopqrstuvwxyz_0123456789");

  if (name == 0 || line[name] != '=')
    return -1;
  if (!g_str_has_prefix (line, "out_time_us="))
    return 0;
  return CLAMP (g_ascii_strtod (line + name + 1, NULL) / 1e6 / reel->length, 0, 1);
}

gboolean
lap_encode (LapOutput *output, const char *suffix, const LapReel *reel, double done, GError **error)
{
  g_autofree char *lasts = last_lasts (reel);
  const char *const first[] = { "ffmpeg", "-nostdin", "-nostats", "-v", "error", "-progress", "pipe:1", "-y", "-f", "concat",
                                "-safe", "0", "-i", reel->list, "-fps_mode", "passthrough", "-bsf:v", lasts, NULL };
  const char *const last[] = { lap_saving_beside (lap_output_saving (output)), NULL };
  g_autoptr (GPtrArray) words = g_ptr_array_new ();

  add (words, first);
  add (words, g_str_equal (suffix, "mov") ? mov : webm);
  add (words, last);
  g_ptr_array_add (words, NULL);
  return lap_output_run (output, (const char *const *) words->pdata, done, line_cb, (gpointer) reel, error);
}
