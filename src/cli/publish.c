/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * lapwing publish FILE --as FORMAT [--offset S] [--takes] [--spoken] [--at DATETIME] [--timezone TZ] [--from DATE]
 *         -o OUT
 */
#include "cli/cli.h"

#include "publish/cuts.h"
#include "publish/formats.h"
#include "store/documents.h"
#include "store/read-file.h"

#include <glib/gi18n-lib.h>
#include <math.h>
#include <signal.h>
#include <unistd.h>

typedef struct {
  char *format, *offset, *at, *timezone, *from, *out;
} Words;

static void
words_clear (Words *words)
{
  g_free (words->format);
  g_free (words->offset);
  g_free (words->at);
  g_free (words->timezone);
  g_free (words->from);
  g_free (words->out);
}
G_DEFINE_AUTO_CLEANUP_CLEAR_FUNC (Words, words_clear)

static char *
format_ids (void)
{
  GString *ids = g_string_new (NULL);

  for (guint i = 0; i < lap_formats_n (); i++)
    g_string_append_printf (ids, "%s%s", i > 0 ? ", " : "", lap_formats_nth (i)->id);
  return g_string_free (ids, FALSE);
}

/* FALSE after a line about what is wrong. */
static gboolean
understand (const Words *words, const LapFormat **format, LapPublication *what)
{
  char *end = NULL;

  if (words->format == NULL || words->out == NULL) {
    lap_cli_usage (&lap_command_publish);
    return FALSE;
  }
  *format = lap_formats_find (words->format);
  if (*format == NULL) {
    g_autofree char *ids = format_ids ();

    g_printerr ("lapwing publish: --as %s: expected one of %s\n", words->format, ids);
    return FALSE;
  }
  if (words->offset != NULL)
    what->offset = g_ascii_strtod (words->offset, &end);
  if (end != NULL && (end == words->offset || *end != '\0' || !(fabs (what->offset) <= LAP_MOST_SECONDS))) {
    g_printerr ("lapwing publish: --offset %s: expected seconds within %d of 0\n", words->offset,
                LAP_MOST_SECONDS);
    return FALSE;
  }
  what->at = words->at;
  what->timezone = words->timezone;
  what->from = words->from;
  return TRUE;
}

static volatile sig_atomic_t interrupted;

static void
interrupt (int number)
{
  interrupted = TRUE;
}

/* Who waits at a terminal sees how far it is. A signal is acted upon here, between two pieces of work, so that
 * nothing half done is left. */
static void
progress_cb (double done, gpointer data)
{
  static int shown = -1;
  int percent = (int) (done * 100);

  if (interrupted)
    g_cancellable_cancel (data);
  if (percent == shown || !isatty (STDERR_FILENO))
    return;
  shown = percent;
  g_printerr (percent < 100 ? "\r%3d %%" : "\r     \r", percent);
}

static gboolean
publish_watched (const LapFormat *format, const LapPublication *what, const char *out, GError **error)
{
  g_autoptr (GCancellable) cancellable = g_cancellable_new ();
  const LapProgress watch = { progress_cb, cancellable, cancellable };
  struct sigaction action = { .sa_handler = interrupt };
  gboolean good;

  sigaction (SIGINT, &action, NULL);
  sigaction (SIGTERM, &action, NULL);
  good = lap_publish (format, what, out, &watch, error);
  if (!good && g_error_matches (*error, G_IO_ERROR, G_IO_ERROR_CANCELLED)) {
    g_clear_error (error);
    g_set_error (error, LAP_ERROR, LAP_ERROR_UNWRITABLE, _("%s: interrupted; nothing was written"), out);
  }
  return good;
}

/* Whether @file can be read as a week. */
static gboolean
is_week (const char *file)
{
  g_autoptr (GBytes) bytes = lap_read_file (file, NULL, NULL);
  g_autoptr (LapObject) document = bytes != NULL ? lap_document_from_bytes (bytes, NULL) : NULL;

  return document != NULL && LAP_IS_WEEK (document);
}

static int
publish_week (const char *file, const LapFormat *format, LapPublication *what, const char *out)
{
  g_autoptr (LapWeek) week = lap_cli_week (file);
  GError *error = NULL;

  if (week == NULL)
    return LAP_ERROR_INVALID;
  what->week = LAP_OBJECT (week);
  return publish_watched (format, what, out, &error) ? 0 : lap_cli_fail (error);
}

static int
publish (const char *file, const LapFormat *format, LapPublication *what, const char *out)
{
  g_autoptr (LapTimeline) timeline = lap_cli_timeline (file);
  GError *error = NULL;

  if (timeline == NULL)
    return LAP_ERROR_INVALID;
  what->timeline = timeline;
  if ((what->takes || format->flags & LAP_FORMAT_OF_TAKES) && lap_cuts_are_old (timeline))
    g_printerr ("lapwing: %s: the plan was changed since its takes were filmed\n", file);
  return publish_watched (format, what, out, &error) ? 0 : lap_cli_fail (error);
}

static int
run (int argc, char **argv)
{
  g_auto (Words) words = { NULL };
  LapPublication what = { NULL };
  const LapFormat *format;
  const GOptionEntry entries[] = {
    { "as", 0, 0, G_OPTION_ARG_STRING, &words.format, N_("The format, see lapwing formats"), N_("FORMAT") },
    { "offset", 0, 0, G_OPTION_ARG_STRING, &words.offset, N_("Seconds to move it on the film’s clock"), "S" },
    { "takes", 0, 0, G_OPTION_ARG_NONE, &what.takes, N_("Put it on the takes that were kept"), NULL },
    { "spoken", 0, 0, G_OPTION_ARG_NONE, &what.spoken, N_("Say the names between the tones"), NULL },
    { "at", 0, 0, G_OPTION_ARG_STRING, &words.at, N_("When the session is held"), N_("DATETIME") },
    { "timezone", 0, 0, G_OPTION_ARG_STRING, &words.timezone, N_("Where it is held: Europe/Lisbon"), "TZ" },
    { "from", 0, 0, G_OPTION_ARG_STRING, &words.from, N_("The first day"), N_("DATE") },
    { "output", 'o', 0, G_OPTION_ARG_FILENAME, &words.out, N_("The file to write, - for standard output"),
      N_("OUT") },
    { NULL },
  };
  g_auto (GStrv) files = NULL;

  if (!lap_cli_options (argc, argv, &lap_command_publish, entries, 1, 1, &files) ||
      !understand (&words, &format, &what))
    return LAP_ERROR_USAGE;
  if (is_week (files[0]))
    return publish_week (files[0], format, &what, words.out);
  return publish (files[0], format, &what, words.out);
}

const LapCommand lap_command_publish = {
  "publish",
  "FILE --as FORMAT [--offset S] [--takes] [--spoken] [--at DATETIME] [--timezone TZ] [--from DATE] -o OUT",
  N_("Writes a file for a player, an editor or a spreadsheet."), run,
};
