/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * lapwing mend FILE -o OUT [--json]: mends what the checks have remedies for, and says what it did.
 */
#include "cli/cli.h"

#include "arrange/mend.h"
#include "store/documents.h"

#include <glib/gi18n-lib.h>

static int
print_json (GPtrArray *done)
{
  g_autoptr (LapJsonWriter) out = lap_json_writer_new ();
  g_autoptr (GBytes) bytes = NULL;

  lap_json_writer_begin_object (out);
  lap_json_writer_member (out, "mended");
  lap_json_writer_begin_array (out);
  for (guint i = 0; i < done->len; i++) {
    const LapMended *mended = g_ptr_array_index (done, i);

    lap_json_writer_begin_object (out);
    lap_json_writer_member_string (out, "check", mended->check);
    lap_json_writer_member_string (out, "message", mended->message);
    lap_json_writer_member_string (out, "remedy", mended->remedy);
    lap_json_writer_end_object (out);
  }
  lap_json_writer_end_array (out);
  lap_json_writer_end_object (out);
  bytes = lap_json_writer_finish (out);
  return lap_cli_print (bytes);
}

static void
print_lines (GPtrArray *done, LapSession *session)
{
  for (guint i = 0; i < done->len; i++) {
    const LapMended *mended = g_ptr_array_index (done, i);

    g_print ("%u. %s\n   → %s\n", i + 1, mended->message, mended->remedy);
  }
  if (done->len == 0)
    g_print ("%s\n", _("Nothing here could be mended by a remedy."));
  lap_cli_print_left (session);
}

static int
run (int argc, char **argv)
{
  gboolean json = FALSE;
  g_autofree char *out = NULL;
  const GOptionEntry entries[] = {
    { "json", 0, 0, G_OPTION_ARG_NONE, &json, N_("Print JSON"), NULL },
    { "output", 'o', 0, G_OPTION_ARG_FILENAME, &out, N_("Write the mended session"), "OUT" },
    { NULL },
  };
  g_auto (GStrv) files = NULL;
  g_autoptr (LapTimeline) timeline = NULL;
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (GPtrArray) done = NULL;
  int status;

  if (!lap_cli_options (argc, argv, &lap_command_mend, entries, 1, 1, &files))
    return LAP_ERROR_USAGE;
  if (out == NULL)
    return lap_cli_usage (&lap_command_mend);
  timeline = lap_cli_timeline (files[0]);
  if (timeline == NULL)
    return LAP_ERROR_INVALID;
  done = lap_mend (timeline->session, builtin, FALSE, NULL, NULL);
  status = lap_cli_write_session (out, timeline->session);
  if (status != 0 || g_str_equal (out, "-"))
    return status;
  if (json)
    return print_json (done);
  print_lines (done, timeline->session);
  return 0;
}

const LapCommand lap_command_mend = {
  "mend", "FILE -o OUT [--json]", N_("Mends what the checks have remedies for, and says what it did."), run,
};
