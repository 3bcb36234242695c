/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/cli.h"

#include "checks/checks.h"
#include "store/documents.h"
#include "store/read-file.h"
#include "store/save.h"

#include <glib/gi18n-lib.h>
#include <stdio.h>
#include <string.h>

static const LapCommand *const commands[] = {
  &lap_command_check, &lap_command_timeline, &lap_command_order, &lap_command_mend,
  &lap_command_adapt, &lap_command_compose, &lap_command_fill,
  &lap_command_effort, &lap_command_script, &lap_command_print, &lap_command_publish,
  &lap_command_catalogue, &lap_command_formats, &lap_command_sheets, &lap_command_checks,
};

static void
print_help (void)
{
  g_print ("%s\n\n  lapwing [%s…]  %s\n", _("Lapwing lays out timed exercise sessions to the second."), _("FILE"),
           _("opens the window"));
  for (guint i = 0; i < G_N_ELEMENTS (commands); i++)
    g_print ("  lapwing %s %s\n      %s\n", commands[i]->name, commands[i]->synopsis, _(commands[i]->summary));
  g_print ("\n%s\n", _("lapwing COMMAND --help tells more."));
}

gboolean
lap_cli_run (int argc, char **argv, int *status)
{
  if (argc < 2)
    return FALSE;
  *status = 0;
  if (g_str_equal (argv[1], "--version")) {
    g_print ("lapwing %s\n", LAP_VERSION);
    return TRUE;
  }
  if (g_str_equal (argv[1], "--help") || g_str_equal (argv[1], "-h")) {
    print_help ();
    return TRUE;
  }
  for (guint i = 0; i < G_N_ELEMENTS (commands); i++)
    if (g_str_equal (argv[1], commands[i]->name)) {
      *status = commands[i]->run (argc - 1, argv + 1);
      return TRUE;
    }
  return FALSE;
}

int
lap_cli_usage (const LapCommand *command)
{
  g_printerr ("lapwing %1$s: expected: lapwing %1$s %2$s\n", command->name, command->synopsis);
  return LAP_ERROR_USAGE;
}

gboolean
lap_cli_options (int argc, char **argv, const LapCommand *command, const GOptionEntry *entries, guint least,
                 guint most, char ***rest)
{
  g_autofree char *synopsis = g_strconcat (command->name, " ", command->synopsis, NULL);
  g_autoptr (GOptionContext) context = g_option_context_new (NULL);
  g_auto (GStrv) words = g_new0 (char *, argc + 1);
  g_autoptr (GError) error = NULL;
  guint n;

  for (int i = 0; i < argc; i++)
    words[i] = i == 0 ? g_strconcat ("lapwing ", argv[0], NULL) : g_strdup (argv[i]);
  g_option_context_set_summary (context, synopsis);
  g_option_context_set_description (context, _(command->summary));
  g_option_context_set_translation_domain (context, GETTEXT_PACKAGE);
  g_option_context_add_main_entries (context, entries, GETTEXT_PACKAGE);
  if (!g_option_context_parse_strv (context, &words, &error)) {
    g_printerr ("lapwing %s: %s\n", command->name, error->message);
    return FALSE;
  }
  n = g_strv_length (words);
  n -= n > 0;
  if (n < least || n > most) {
    lap_cli_usage (command);
    return FALSE;
  }
  *rest = g_strdupv (n > 0 ? words + 1 : &(char *) { NULL });
  return TRUE;
}

/* One line, whatever is in the message. */
int
lap_cli_fail (GError *error)
{
  int status = lap_error_exit_code (error);
  g_autoptr (GString) line = g_string_new (NULL);

  lap_append_printable (line, error->message, strlen (error->message), G_MAXUINT);
  g_printerr ("lapwing: %s\n", line->str);
  g_error_free (error);
  return status;
}

gboolean
lap_cli_words (const LapCommand *command, const LapWords *words, const char *option, const char *text, guint32 *mask)
{
  g_auto (GStrv) parts = g_strsplit (text, ",", -1);

  for (guint i = 0; parts[i] != NULL; i++) {
    int word = lap_words_find (words, parts[i]);
    g_autofree char *all = NULL;

    if (*parts[i] == '\0')
      continue;
    if (word < 0) {
      all = lap_words_all (words);
      g_printerr ("lapwing %s: %s: “%s” isn't %s; expected one of: %s\n", command->name, option, parts[i], words->what,
                  all);
      return FALSE;
    }
    *mask |= LAP_BIT (word);
  }
  return TRUE;
}

LapTimeline *
lap_cli_timeline (const char *file)
{
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (LapSession) session = NULL;
  g_autoptr (GBytes) bytes = NULL;
  LapTimeline *timeline = NULL;
  GError *error = NULL;

  bytes = lap_read_file (file, NULL, &error);
  if (bytes != NULL)
    session = lap_session_from_bytes (bytes, &error);
  if (session != NULL)
    timeline = lap_timeline_new (session, builtin, &error);
  if (timeline == NULL) {
    if (session != NULL)
      lap_error_add_line (error, bytes);
    if (bytes != NULL)
      g_prefix_error (&error, "%s: ", file);
    lap_cli_fail (error);
    return NULL;
  }
  if (session->version > LAP_SESSION_VERSION)
    g_printerr ("lapwing: %s: written by a newer version (%d); what this one doesn't know is passed over\n", file,
                session->version);
  return timeline;
}

int
lap_cli_print (GBytes *bytes)
{
  gsize size;
  const char *data = g_bytes_get_data (bytes, &size);

  if (fwrite (data, 1, size, stdout) != size || fflush (stdout) != 0) {
    g_printerr ("lapwing: standard output can't be written\n");
    return LAP_ERROR_UNWRITABLE;
  }
  return 0;
}

int
lap_cli_write (const char *out, GBytes *bytes)
{
  GError *error = NULL;

  if (g_str_equal (out, "-"))
    return lap_cli_print (bytes);
  if (!lap_save_bytes (out, bytes, NULL, NULL, &error))
    return lap_cli_fail (error);
  return 0;
}

int
lap_cli_write_session (const char *out, LapSession *session)
{
  g_autoptr (GBytes) bytes = lap_session_to_bytes (session);

  if (session->version > LAP_SESSION_VERSION) {
    g_printerr ("lapwing: the file is of a newer version (%d); this one can't write it\n", session->version);
    return LAP_ERROR_INVALID;
  }
  return lap_cli_write (out, bytes);
}

void
lap_cli_print_left (LapSession *session)
{
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (LapTimeline) timeline = lap_timeline_new (session, builtin, NULL);
  g_autoptr (LapCheckup) checkup = timeline != NULL ? lap_checkup_new (timeline) : NULL;

  for (guint i = 0; checkup != NULL && i < lap_checkup_n (checkup); i++) {
    const LapWarning *w = lap_checkup_nth (checkup, i);
    g_autofree char *message = lap_warning_message (checkup, w);

    if (!w->fine && w->severity != LAP_SEVERITY_NOTE)
      g_print (_("Left: %s\n"), message);
  }
}

static int
print_known (const char *what, guint n, const char *(*id) (guint), const char *(*title) (guint))
{
  g_autoptr (LapJsonWriter) out = lap_json_writer_new ();
  g_autoptr (GBytes) bytes = NULL;

  lap_json_writer_begin_object (out);
  lap_json_writer_member (out, what);
  lap_json_writer_begin_array (out);
  for (guint i = 0; i < n; i++) {
    lap_json_writer_begin_object (out);
    lap_json_writer_member_string (out, "id", id (i));
    lap_json_writer_member_string (out, "title", title (i));
    lap_json_writer_end_object (out);
  }
  lap_json_writer_end_array (out);
  lap_json_writer_end_object (out);
  bytes = lap_json_writer_finish (out);
  return lap_cli_print (bytes);
}

int
lap_cli_list (int argc, char **argv, const LapCommand *command, guint n, const char *(*id) (guint),
              const char *(*title) (guint), void (*tell) (guint))
{
  gboolean json = FALSE;
  const GOptionEntry entries[] = {
    { "json", 0, 0, G_OPTION_ARG_NONE, &json, N_("Print JSON"), NULL },
    { NULL },
  };
  g_auto (GStrv) rest = NULL;

  if (!lap_cli_options (argc, argv, command, entries, 0, 0, &rest))
    return LAP_ERROR_USAGE;
  if (json)
    return print_known (command->name, n, id, title);
  for (guint i = 0; i < n; i++)
    tell (i);
  return 0;
}
