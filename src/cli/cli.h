/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The commands. Each is one file with one LapCommand, named in the table of cli.c; none needs a display.
 *
 * A command parses its options with GOption, prints what was asked for to standard output, and returns its exit
 * status; an error is one line on standard error: lap_cli_fail().
 */
#pragma once

#include "base/error.h"
#include "model/week.h"
#include "timeline/timeline.h"

G_BEGIN_DECLS

typedef struct {
  const char *name;     /* "check" */
  const char *synopsis; /* "FILE [--json]" */
  const char *summary;  /* marked for translation */
  int       (*run)      (int argc, char **argv); /* argv[0] is the command's name */
} LapCommand;

extern const LapCommand lap_command_compose, lap_command_adapt, lap_command_fill, lap_command_mend, lap_command_order,
                        lap_command_check, lap_command_timeline, lap_command_effort, lap_command_script,
                        lap_command_print, lap_command_publish, lap_command_catalogue, lap_command_formats,
                        lap_command_sheets, lap_command_checks;

/* Runs the command that @argv names, --help or --version included. FALSE where it names none: the words are files
 * for the window. */
gboolean     lap_cli_run      (int            argc,
                               char         **argv,
                               int           *status);

/* Helpers for the commands. */

/* Parses @entries; at least @least and at most @most words must remain, returned in @rest (transfer full). On wrong
 * use it has printed the line and returns FALSE: exit with LAP_ERROR_USAGE. */
gboolean     lap_cli_options  (int                argc,
                               char             **argv,
                               const LapCommand  *command,
                               const GOptionEntry *entries,
                               guint              least,
                               guint              most,
                               char            ***rest);
/* Adds the comma-separated list @text of @words to @mask; FALSE after a line about a word that isn't one. */
gboolean     lap_cli_words    (const LapCommand  *command,
                               const LapWords    *words,
                               const char        *option,
                               const char        *text,
                               guint32           *mask);
/* The session of @file laid out, or NULL after the line was printed: exit with LAP_ERROR_INVALID. Warns in one line
 * about a newer version. */
LapTimeline *lap_cli_timeline (const char    *file);
/* Prints "lapwing: message" and returns the exit status of @error, which is freed. */
int          lap_cli_fail     (GError        *error);
/* Writes @bytes to the file @out, whole or not at all, or to standard output for "-". Returns the exit status. */
int          lap_cli_write    (const char    *out,
                               GBytes        *bytes);
/* Writes @session to @out as lap_cli_write() does; one of a newer version is refused. Returns the exit status. */
int          lap_cli_write_session (const char   *out,
                                    LapSession   *session);
/* The week of @file, or NULL after the line was printed: exit with LAP_ERROR_INVALID. Warns about a newer version. */
LapWeek     *lap_cli_week     (const char    *file);
/* The same as lap_cli_write_session() for a week. */
int          lap_cli_write_week (const char   *out,
                                 LapWeek      *week);
/* Prints how @command is used, and returns LAP_ERROR_USAGE. */
int          lap_cli_usage    (const LapCommand *command);
/* Prints a line for each stop and warning of @session that isn't kept fine. */
void         lap_cli_print_left (LapSession    *session);
/* Runs @command, which lists the @n things of its name: @tell prints a line about one; with --json it is
 * {"checks": [{"id", "title"}]}, the titles translated by @title. Returns the exit status. */
int          lap_cli_list     (int                argc,
                               char             **argv,
                               const LapCommand  *command,
                               guint              n,
                               const char      *(*id) (guint),
                               const char      *(*title) (guint),
                               void             (*tell) (guint));
/* Prints @bytes to standard output. Returns the exit status. */
int          lap_cli_print    (GBytes        *bytes);

G_END_DECLS
