/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * lapwing check FILE [--week DATE] [--json]: what may be wrong with a session or a week, as advice. Exit 1 when a stop
 * or a warning that isn't kept fine was found.
 */
#include "cli/cli.h"

#include "base/json-writer.h"
#include "checks/checks.h"
#include "store/documents.h"
#include "store/read-file.h"
#include "store/session-folder.h"

#include <glib/gi18n-lib.h>

static void
member_number (LapJsonWriter *out, const char *name, int number)
{
  lap_json_writer_member (out, name);
  if (number >= 0)
    lap_json_writer_int (out, number);
  else
    lap_json_writer_null (out);
}

static void
write_remedies (LapJsonWriter *out, const LapCheckup *checkup, const LapWarning *w)
{
  g_autoptr (GPtrArray) remedies = lap_warning_remedies (checkup, w);

  lap_json_writer_member (out, "remedies");
  lap_json_writer_begin_array (out);
  for (guint i = 0; i < remedies->len; i++) {
    lap_json_writer_begin_object (out);
    lap_json_writer_member_string (out, "label", ((LapRemedy *) g_ptr_array_index (remedies, i))->label);
    lap_json_writer_end_object (out);
  }
  lap_json_writer_end_array (out);
}

static void
write_warning (LapJsonWriter *out, const LapCheckup *checkup, const LapWarning *w)
{
  g_autofree char *message = lap_warning_message (checkup, w), *why = lap_warning_why (checkup, w);

  lap_json_writer_begin_object (out);
  lap_json_writer_member_string (out, "check", w->check->id);
  lap_json_writer_member_string (out, "severity", lap_words_id (&lap_severities, w->severity));
  member_number (out, "start", w->start);
  member_number (out, "end", w->end);
  member_number (out, "part", w->part);
  member_number (out, "round", w->round);
  member_number (out, "block", w->block);
  lap_json_writer_member (out, "classes");
  lap_json_writer_begin_array (out);
  for (guint i = 0; i < w->n_classes; i++)
    lap_json_writer_string (out, lap_warning_class (checkup, w, i)->id);
  lap_json_writer_end_array (out);
  lap_json_writer_member (out, "fine");
  lap_json_writer_boolean (out, w->fine);
  lap_json_writer_member_string (out, "message", message);
  lap_json_writer_member_string (out, "why", why);
  lap_json_writer_member_string (out, "source", lap_warning_source (w));
  write_remedies (out, checkup, w);
  lap_json_writer_end_object (out);
}

static int
print_json (const LapCheckup *checkup)
{
  g_autoptr (LapJsonWriter) out = lap_json_writer_new ();
  g_autoptr (GBytes) bytes = NULL;

  lap_json_writer_begin_object (out);
  lap_json_writer_member (out, "warnings");
  lap_json_writer_begin_array (out);
  for (guint i = 0; i < lap_checkup_n (checkup); i++)
    write_warning (out, checkup, lap_checkup_nth (checkup, i));
  lap_json_writer_end_array (out);
  lap_json_writer_end_object (out);
  bytes = lap_json_writer_finish (out);
  return lap_cli_print (bytes);
}

static void
print_warning (const LapCheckup *checkup, const LapWarning *w, guint number)
{
  g_autofree char *message = lap_warning_message (checkup, w), *why = lap_warning_why (checkup, w);
  g_autofree char *clock = lap_warning_clock (w);
  g_autoptr (GPtrArray) remedies = lap_warning_remedies (checkup, w);

  g_print ("%u. %s%s%s: %s\n", number, lap_words_label (&lap_severities, w->severity), *clock != '\0' ? ", " : "",
           clock, message);
  g_print ("   %s %s (%s)\n", _("Why:"), why, lap_warning_source (w));
  for (guint i = 0; i < remedies->len; i++)
    g_print ("   → %s\n", ((LapRemedy *) g_ptr_array_index (remedies, i))->label);
}

static void
print_summary (const LapCheckup *checkup, guint fine)
{
  const LapTimeline *timeline = lap_checkup_timeline (checkup);
  g_autofree char *length = timeline != NULL ? lap_clock_text (timeline->length) : NULL;
  guint stops = lap_checkup_count (checkup, LAP_SEVERITY_STOP);
  guint warnings = lap_checkup_count (checkup, LAP_SEVERITY_WARNING);
  guint notes = lap_checkup_count (checkup, LAP_SEVERITY_NOTE);
  g_autofree char *s = g_strdup_printf (ngettext ("%u stop", "%u stops", stops), stops);
  g_autofree char *w = g_strdup_printf (ngettext ("%u warning", "%u warnings", warnings), warnings);
  g_autofree char *n = g_strdup_printf (ngettext ("%u note", "%u notes", notes), notes);

  if (lap_checkup_n (checkup) > fine)
    g_print ("\n");
  if (timeline != NULL)
    /* Translators: a title, a length, and the three counts. */
    g_print (_("%1$s, %2$s: %3$s, %4$s, %5$s."), timeline->session->title, length, s, w, n);
  else
    /* Translators: the title of a week, and the three counts. */
    g_print (_("%1$s: %2$s, %3$s, %4$s."), lap_checkup_week (checkup)->title, s, w, n);
  if (fine > 0)
    g_print (ngettext (" %u kept as fine.", " %u kept as fine.", fine), fine);
  g_print ("\n");
}

static int
print_checkup (const LapCheckup *checkup, gboolean json)
{
  guint fine = 0;

  if (json) {
    int status = print_json (checkup);

    return status != 0 ? status : lap_checkup_n_open (checkup) > 0;
  }
  for (guint i = 0; i < lap_checkup_n (checkup); i++) {
    if (lap_checkup_nth (checkup, i)->fine)
      fine++;
    else
      print_warning (checkup, lap_checkup_nth (checkup, i), i + 1);
  }
  print_summary (checkup, fine);
  return lap_checkup_n_open (checkup) > 0;
}

static int
check_session (const char *file, gboolean json)
{
  g_autoptr (LapTimeline) timeline = lap_cli_timeline (file);
  g_autoptr (LapCheckup) checkup = NULL;

  if (timeline == NULL)
    return LAP_ERROR_INVALID;
  checkup = lap_checkup_new (timeline);
  return print_checkup (checkup, json);
}

static int
check_week (const char *file, LapWeek *week, int date, gboolean json)
{
  g_autoptr (LapSessionFolder) folder = lap_session_folder_new (file);
  const LapSessionSource source = { lap_session_folder_load, lap_session_folder_seek, folder };
  g_autoptr (LapAttachments) attachments = lap_attachments_new (&source);
  g_autoptr (LapCheckup) checkup = lap_checkup_new_week (week, date, attachments);

  if (week->version > LAP_WEEK_VERSION)
    g_printerr ("lapwing: %s: written by a newer version (%d); what this one doesn't know is passed over\n", file,
                week->version);
  return print_checkup (checkup, json);
}

static int
run (int argc, char **argv)
{
  gboolean json = FALSE;
  g_autofree char *day = NULL;
  const GOptionEntry entries[] = {
    { "week", 0, 0, G_OPTION_ARG_STRING, &day, N_("The week that this date lies in, not the week as it always is"),
      N_("DATE") },
    { "json", 0, 0, G_OPTION_ARG_NONE, &json, N_("Print JSON"), NULL },
    { NULL },
  };
  g_auto (GStrv) files = NULL;
  g_autoptr (GBytes) bytes = NULL;
  g_autoptr (LapObject) document = NULL;
  GError *error = NULL;
  int date;

  if (!lap_cli_options (argc, argv, &lap_command_check, entries, 1, 1, &files))
    return LAP_ERROR_USAGE;
  date = day != NULL ? lap_date_monday (lap_date_parse (day)) : 0;
  if (day != NULL && date == 0) {
    g_printerr ("lapwing check: --week: expected a date, as 2027-01-11\n");
    return LAP_ERROR_USAGE;
  }
  bytes = lap_read_file (files[0], NULL, &error);
  if (bytes == NULL)
    return lap_cli_fail (error);
  document = lap_document_from_bytes (bytes, &error);
  if (document == NULL) {
    g_prefix_error (&error, "%s: ", files[0]);
    return lap_cli_fail (error);
  }
  if (LAP_IS_WEEK (document))
    return check_week (files[0], LAP_WEEK (document), date, json);
  if (day != NULL) {
    g_printerr ("lapwing check: --week: %s is a session, which has no dates\n", files[0]);
    return LAP_ERROR_USAGE;
  }
  return check_session (files[0], json);
}

const LapCommand lap_command_check = {
  "check", "FILE [--week DATE] [--json]", N_("Says what may go wrong with a plan, why, and what would help."), run,
};
