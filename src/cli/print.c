/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * lapwing print: a sheet of a session or of a week as PDF.
 */
#include "cli/cli.h"

#include "sheets/sheets.h"
#include "sheets/week-sheets.h"
#include "store/documents.h"
#include "store/read-file.h"
#include "store/session-folder.h"

#include <glib/gi18n-lib.h>
#include <stdio.h>
#include <string.h>

typedef struct {
  char *sheet, *paper, *tile, *ink, *leave_out, *date, *week, *out;
} Words;

static char *
sheet_ids (void)
{
  GString *ids = g_string_new (NULL);

  for (guint i = 0; i < lap_sheets_n (); i++)
    g_string_append_printf (ids, "%s%s", i > 0 ? ", " : "", lap_sheets_nth (i)->id);
  for (guint i = 0; i < lap_week_sheets_n (); i++)
    g_string_append_printf (ids, ", %s", lap_week_sheets_nth (i)->id);
  return g_string_free (ids, FALSE);
}

/* The index of @word in @words; -1 after a line about what was expected. */
static int
choose (const LapWords *words, const char *option, const char *word)
{
  int index = lap_words_find (words, word);
  g_autofree char *all = NULL;

  if (index < 0) {
    all = lap_words_all (words);
    g_printerr ("lapwing print: %s %s: expected one of %s\n", option, word, all);
  }
  return index;
}

/* What was asked for. */
typedef struct {
  const LapSheet *sheet;          /* NULL where it is one of a week */
  const LapWeekSheet *week_sheet; /* likewise of a session */
  LapSheetOptions options;
  int             date;      /* of the week asked for; 0 = as it always is */
  int             tile;      /* LapPaper; -1 = in one piece */
  gboolean        distances; /* told on standard output */
} Wish;

static gboolean
wrong (const char *option, const char *value, const char *expected)
{
  g_printerr ("lapwing print: %s %s: expected %s\n", option, value, expected);
  return FALSE;
}

/* The words and numbers about what stands on the sheet; FALSE after a line about what is wrong. */
static gboolean
understand_details (const Words *words, Wish *wish)
{
  LapSheetOptions *options = &wish->options;
  g_autofree char *cards = g_strdup_printf ("%d", (int) options->cards);
  g_autofree char *distance = g_strdup_printf ("%g", options->distance);
  guint32 hide = 0;
  int year, month, day;
  char rest;

  if (words->leave_out != NULL &&
      !lap_cli_words (&lap_command_print, &lap_sheet_things, "--leave-out", words->leave_out, &hide))
    return FALSE;
  options->hide = hide;
  options->date = words->date;
  if (options->cards > 4 || options->cards == 3)
    return wrong ("--cards", cards, "1, 2 or 4");
  if (!(options->distance >= 0 && options->distance <= 20))
    return wrong ("--reads-from", distance, "metres up to 20");
  if (words->date != NULL && (sscanf (words->date, "%4d-%2d-%2d%c", &year, &month, &day, &rest) != 3 ||
                              strlen (words->date) != 10 || !g_date_valid_dmy (day, month, year)))
    return wrong ("--date", words->date, "a day such as 2027-01-31");
  if (words->out != NULL && wish->distances && g_str_equal (words->out, "-"))
    return wrong ("--distances", "-o -", "a file for the PDF, as both go to standard output");
  return TRUE;
}

/* The sheet and, for one of a week, which week. */
static gboolean
understand_sheet (const Words *words, Wish *wish)
{
  g_autofree char *ids = sheet_ids ();

  wish->sheet = lap_sheets_find (words->sheet);
  wish->week_sheet = lap_week_sheets_find (words->sheet);
  if (wish->sheet == NULL && wish->week_sheet == NULL) {
    g_printerr ("lapwing print: --sheet %s: expected one of %s\n", words->sheet, ids);
    return FALSE;
  }
  wish->date = words->week != NULL ? lap_date_monday (lap_date_parse (words->week)) : 0;
  if (words->week != NULL && wish->date == 0)
    return wrong ("--week", words->week, "a date, as 2027-01-11");
  if (words->week != NULL && wish->week_sheet == NULL)
    return wrong ("--week", words->week, "a sheet of a week; one of a session has no dates");
  if (words->week == NULL && wish->week_sheet != NULL && wish->week_sheet->dated)
    return wrong ("--sheet", words->sheet, "--week DATE with it");
  return TRUE;
}

/* FALSE after a line about what is wrong. */
static gboolean
understand (const Words *words, Wish *wish)
{
  int paper, ink;

  if (words->sheet == NULL || words->out == NULL) {
    g_printerr ("lapwing print: expected: lapwing print %s\n", lap_command_print.synopsis);
    return FALSE;
  }
  if (!understand_sheet (words, wish))
    return FALSE;
  paper = words->paper != NULL ? choose (&lap_papers, "--paper", words->paper) : LAP_PAPER_A4;
  ink = words->ink != NULL ? choose (&lap_inks, "--ink", words->ink) : LAP_INK_COLOUR;
  wish->tile = words->tile != NULL ? choose (&lap_papers, "--tile", words->tile) : -1;
  wish->options.paper = paper;
  wish->options.ink = ink;
  return paper >= 0 && ink >= 0 && (words->tile == NULL || wish->tile >= 0) && understand_details (words, wish);
}

/* From how far away each kind of text reads, by the smallest letters drawn: a capital under 16 minutes of arc. */
static void
print_distances (const LapPages *pages)
{
  for (guint read = 0; read < LAP_N_READS; read++) {
    double cap = lap_pages_cap (pages, read);

    if (cap > 0 && lap_read_label (read) != NULL)
      g_print (_("%s: reads from %.1f m (capitals of %.1f mm)\n"), lap_read_label (read),
               lap_cap_distance (cap, LAP_ARC_READABLE), cap);
  }
}

/* What to print instead, so that names read from as far as they are to. */
static void
print_larger (const LapWeekSubject *subject, const Wish *wish)
{
  LapSheetOptions larger;

  if (lap_week_sheet_larger (wish->week_sheet, subject, &wish->options, &larger))
    g_print (_("Names would read from %.1f m with --paper %s%s\n"), wish->week_sheet->aim,
             lap_words_id (&lap_papers, larger.paper), larger.by_room ? " --by-room" : "");
}

/* Whether @file is what the sheet shows; FALSE after a line about what it is instead. One that can't be read passes: why
 * is said where it is read. */
static gboolean
suits (const char *file, const Wish *wish)
{
  g_autoptr (GBytes) bytes = lap_read_file (file, NULL, NULL);
  g_autoptr (LapObject) document = bytes != NULL ? lap_document_from_bytes (bytes, NULL) : NULL;

  if (document == NULL || LAP_IS_WEEK (document) == (wish->week_sheet != NULL))
    return TRUE;
  g_printerr (wish->week_sheet != NULL ? "lapwing print: --sheet %s: %s is a session; expected a week\n"
                                       : "lapwing print: --sheet %s: %s is a week; expected a session\n",
              wish->week_sheet != NULL ? wish->week_sheet->id : wish->sheet->id, file);
  return FALSE;
}

/* Writes @pages; FALSE after a line about why not, with the status to end with in @status. */
static gboolean
write_pages (LapPages *pages, const Wish *wish, const char *out, int *status)
{
  GError *error = NULL;
  g_autoptr (GBytes) bytes = wish->tile >= 0 ? lap_pages_tile (pages, wish->options.ink, wish->tile, NULL, &error)
                                             : lap_pages_print (pages, wish->options.ink, NULL, &error);

  if (bytes != NULL && wish->distances)
    print_distances (pages);
  *status = bytes != NULL ? lap_cli_write (out, bytes) : lap_cli_fail (error);
  return *status == 0;
}

static int
print_week (const char *file, const Wish *wish, const char *out)
{
  g_autoptr (LapWeek) week = lap_cli_week (file);
  g_autoptr (LapSessionFolder) folder = lap_session_folder_new (file);
  const LapSessionSource source = { lap_session_folder_load, lap_session_folder_seek, folder };
  g_autoptr (LapAttachments) attachments = lap_attachments_new (&source);
  const LapWeekSubject subject = { week, wish->date, attachments };
  g_autoptr (LapPages) pages = NULL;
  int status;

  if (week == NULL)
    return LAP_ERROR_INVALID;
  pages = lap_week_sheet_pages (wish->week_sheet, &subject, &wish->options);
  if (write_pages (pages, wish, out, &status) && wish->distances)
    print_larger (&subject, wish);
  return status;
}

static int
print_sheet (const char *file, const Wish *wish, const char *out)
{
  g_autoptr (LapTimeline) timeline = NULL;
  g_autoptr (LapPages) pages = NULL;
  int status;

  if (!suits (file, wish))
    return LAP_ERROR_INVALID;
  if (wish->week_sheet != NULL)
    return print_week (file, wish, out);
  timeline = lap_cli_timeline (file);
  if (timeline == NULL)
    return LAP_ERROR_INVALID;
  pages = lap_sheet_build (wish->sheet, timeline, &wish->options);
  write_pages (pages, wish, out, &status);
  return status;
}

static int
run (int argc, char **argv)
{
  Words words = { NULL };
  Wish wish = { NULL };
  const GOptionEntry entries[] = {
    { "sheet", 0, 0, G_OPTION_ARG_STRING, &words.sheet, N_("The sheet: see lapwing sheets"), N_("SHEET") },
    { "paper", 0, 0, G_OPTION_ARG_STRING, &words.paper, N_("A4, A3, A2, A5, Letter or Tabloid"), N_("PAPER") },
    { "landscape", 0, 0, G_OPTION_ARG_NONE, &wish.options.landscape, N_("On its side"), NULL },
    { "tile", 0, 0, G_OPTION_ARG_STRING, &words.tile, N_("In pieces on this paper"), N_("PAPER") },
    { "ink", 0, 0, G_OPTION_ARG_STRING, &words.ink, N_("colour, one or outline"), N_("INK") },
    { "leave-out", 0, 0, G_OPTION_ARG_STRING, &words.leave_out,
      N_("Without figures, options, details, link, camera or balance"), N_("WHAT,…") },
    { "body-marks", 0, 0, G_OPTION_ARG_NONE, &wish.options.body, N_("Poster: with the regions worked on a body"), NULL },
    { "reads-from", 0, 0, G_OPTION_ARG_DOUBLE, &wish.options.distance,
      N_("Poster: names read from this far, metres"), N_("METRES") },
    { "date", 0, 0, G_OPTION_ARG_STRING, &words.date, N_("Poster: the day of this version"), N_("DATE") },
    { "week", 0, 0, G_OPTION_ARG_STRING, &words.week,
      N_("Sheets of a week: the one that this date lies in, not the week as it always is"), N_("DATE") },
    { "cards", 0, 0, G_OPTION_ARG_INT, &wish.options.cards, N_("Stations: 1, 2 or 4 cards on a sheet"), N_("N") },
    { "unfold", 0, 0, G_OPTION_ARG_NONE, &wish.options.unfolded, N_("Running order: every round in order of time"), NULL },
    { "by-room", 0, 0, G_OPTION_ARG_NONE, &wish.options.by_room, N_("Week: a page for each room"), NULL },
    { "distances", 0, 0, G_OPTION_ARG_NONE, &wish.distances, N_("Say from where each text reads"), NULL },
    { "output", 'o', 0, G_OPTION_ARG_FILENAME, &words.out, N_("The file to write, - for standard output"), N_("OUT") },
    { NULL },
  };
  g_auto (GStrv) files = NULL;
  int status = LAP_ERROR_USAGE;

  if (lap_cli_options (argc, argv, &lap_command_print, entries, 1, 1, &files) &&
      understand (&words, &wish))
    status = print_sheet (files[0], &wish, words.out);
  g_free (words.sheet);
  g_free (words.paper);
  g_free (words.tile);
  g_free (words.ink);
  g_free (words.leave_out);
  g_free (words.date);
  g_free (words.week);
  g_free (words.out);
  return status;
}

const LapCommand lap_command_print = {
  "print", "FILE --sheet SHEET [--paper PAPER] [--landscape] [--tile PAPER] [--ink INK] [--week DATE] [OPTION…] -o OUT.pdf",
  N_("Prints a sheet as PDF."), run,
};
