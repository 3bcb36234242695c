/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * lapwing fill WEEK -o OUT [--json]: places the classes that have no day.
 */
#include "cli/cli.h"

#include "arrange/fill.h"
#include "store/session-folder.h"

#include <glib/gi18n-lib.h>

typedef struct {
  LapWeek        *week;
  LapFillProblem *problem;
  LapFill        *fill;
} Filled;

static void
write_place (LapJsonWriter *out, const Filled *f, const LapFillPlace *at)
{
  g_autofree char *start = lap_time_text (at->start);
  const char *room = at->room < 0 ? NULL : ((LapRoom *) lap_list_nth (f->week->rooms, at->room))->id;
  const char *coach = at->coach < 0 ? NULL : ((LapCoach *) lap_list_nth (f->week->coaches, at->coach))->id;

  lap_json_writer_member_string (out, "day", lap_words_id (&lap_days, at->day));
  lap_json_writer_member_string (out, "start", start);
  lap_json_writer_member_string (out, "room", room);
  lap_json_writer_member_string (out, "coach", coach);
}

static void
write_placed (LapJsonWriter *out, const Filled *f)
{
  lap_json_writer_member (out, "placed");
  lap_json_writer_begin_array (out);
  for (guint i = 0; i < f->fill->n; i++) {
    const LapClass *c = lap_list_nth (f->week->classes, i);

    if (f->fill->places[i].day < 0)
      continue;
    lap_json_writer_begin_object (out);
    lap_json_writer_member_string (out, "class", c->id);
    write_place (out, f, &f->fill->places[i]);
    lap_json_writer_end_object (out);
  }
  lap_json_writer_end_array (out);
}

static void
write_out (LapJsonWriter *out, const Filled *f, guint i)
{
  const LapClass *c = lap_list_nth (f->week->classes, i);
  g_autofree char *words = lap_fill_tell_out (f->problem, f->fill, f->week, i);
  LapFillPlace at = { -1, 0, -1, -1 };
  guint relax = lap_fill_nearest (f->problem, f->fill, i, &at);

  lap_json_writer_begin_object (out);
  lap_json_writer_member_string (out, "class", c->id);
  lap_json_writer_member (out, "impossible");
  lap_json_writer_boolean (out, f->fill->barred[i] != 0);
  lap_json_writer_member (out, "nearest");
  if (at.day < 0) {
    lap_json_writer_null (out);
  } else {
    lap_json_writer_begin_object (out);
    write_place (out, f, &at);
    lap_json_writer_end_object (out);
  }
  lap_json_writer_member (out, "relax");
  lap_json_writer_begin_array (out);
  for (guint k = 0; k < LAP_FILL_RULES; k++)
    if (relax & LAP_BIT (k))
      lap_json_writer_string (out, lap_fill_rule_id (LAP_BIT (k)));
  lap_json_writer_end_array (out);
  lap_json_writer_member_string (out, "words", words);
  lap_json_writer_end_object (out);
}

static void
write_missed (LapJsonWriter *out, const Filled *f, guint i)
{
  const LapClass *c = lap_list_nth (f->week->classes, i);
  g_autofree char *words = lap_fill_tell_missed (f->fill, f->week, i);
  guint missed = lap_fill_missed (f->fill, f->week, i);

  lap_json_writer_begin_object (out);
  lap_json_writer_member_string (out, "class", c->id);
  lap_json_writer_member (out, "wishes");
  lap_json_writer_begin_array (out);
  if (missed & LAP_FILL_WISH_DAYS)
    lap_json_writer_string (out, "days");
  if (missed & LAP_FILL_WISH_BETWEEN)
    lap_json_writer_string (out, "between");
  lap_json_writer_end_array (out);
  lap_json_writer_member_string (out, "words", words);
  lap_json_writer_end_object (out);
}

static int
print_json (const Filled *f)
{
  g_autoptr (LapJsonWriter) out = lap_json_writer_new ();
  g_autoptr (GBytes) bytes = NULL;
  g_autofree char *words = lap_fill_tell_sum (f->fill);
  const LapFill *fill = f->fill;

  lap_json_writer_begin_object (out);
  write_placed (out, f);
  lap_json_writer_member (out, "unplaced");
  lap_json_writer_begin_array (out);
  for (guint i = 0; i < fill->n; i++)
    if (fill->places[i].day < 0)
      write_out (out, f, i);
  lap_json_writer_end_array (out);
  lap_json_writer_member (out, "missed");
  lap_json_writer_begin_array (out);
  for (guint i = 0; i < fill->n; i++)
    if (lap_fill_missed (fill, f->week, i))
      write_missed (out, f, i);
  lap_json_writer_end_array (out);
  lap_json_writer_member_int (out, "points", fill->points);
  lap_json_writer_member_int (out, "first-unplaced", fill->first_unplaced);
  lap_json_writer_member_int (out, "first-points", fill->first_points);
  lap_json_writer_member_int (out, "least-unplaced", fill->least_unplaced);
  lap_json_writer_member_int (out, "least", fill->least);
  lap_json_writer_member_string (out, "words", words);
  lap_json_writer_end_object (out);
  bytes = lap_json_writer_finish (out);
  return lap_cli_print (bytes);
}

/* What is said of a class: nothing where all its wishes are met. */
typedef enum { SAID_IMPOSSIBLE, SAID_OUT, SAID_MISSED, SAID_NOTHING } Said;

static Said
what_is_said (const Filled *f, guint i)
{
  if (f->fill->places[i].day < 0)
    return f->fill->barred[i] != 0 ? SAID_IMPOSSIBLE : SAID_OUT;
  return lap_fill_missed (f->fill, f->week, i) ? SAID_MISSED : SAID_NOTHING;
}

static char *
tell (const Filled *f, guint i)
{
  return f->fill->places[i].day < 0 ? lap_fill_tell_out (f->problem, f->fill, f->week, i)
                                    : lap_fill_tell_missed (f->fill, f->week, i);
}

/* First those that no search could place, since they need somebody to change something. */
static void
print_lines (const Filled *f)
{
  g_autofree char *sum = lap_fill_tell_sum (f->fill);

  g_print ("%s.\n", sum);
  for (Said said = SAID_IMPOSSIBLE; said < SAID_NOTHING; said++)
    for (guint i = 0; i < f->fill->n; i++)
      if (what_is_said (f, i) == said) {
        g_autofree char *words = tell (f, i);

        g_print ("  %s.\n", words);
      }
}

/* The first conflict on one line; 0 where all wishes are met. */
static int
tell_conflict (const Filled *f)
{
  guint counts[SAID_NOTHING + 1] = { 0 }, first = f->fill->n;
  g_autofree char *words = NULL;

  for (guint i = 0; i < f->fill->n; i++) {
    Said said = what_is_said (f, i);

    counts[said]++;
    if (said != SAID_NOTHING && (first == f->fill->n || said < what_is_said (f, first)))
      first = i;
  }
  if (first == f->fill->n)
    return 0;
  words = tell (f, first);
  g_printerr ("lapwing: without a place: %u, with a wish not kept: %u: %s\n", counts[SAID_IMPOSSIBLE] + counts[SAID_OUT],
              counts[SAID_MISSED], words);
  return LAP_ERROR_CONFLICT;
}

static int
write_all (const Filled *f, const char *out, gboolean json)
{
  g_autoptr (LapEdits) edits = lap_fill_edits (f->fill, f->week);
  int status;

  lap_edits_swap (edits);
  status = lap_cli_write_week (out, f->week);
  lap_edits_swap (edits);
  if (status == 0 && json && !g_str_equal (out, "-"))
    status = print_json (f);
  else if (status == 0 && !g_str_equal (out, "-"))
    print_lines (f);
  return status != 0 ? status : tell_conflict (f);
}

static int
run (int argc, char **argv)
{
  gboolean json = FALSE;
  g_autofree char *out = NULL;
  const GOptionEntry entries[] = {
    { "json", 0, 0, G_OPTION_ARG_NONE, &json, N_("Print JSON"), NULL },
    { "output", 'o', 0, G_OPTION_ARG_FILENAME, &out, N_("Write the filled week"), "OUT" },
    { NULL },
  };
  g_auto (GStrv) files = NULL;
  g_autoptr (LapWeek) week = NULL;
  LapSessionSource source = { lap_session_folder_load, lap_session_folder_seek, NULL };
  g_autoptr (LapSessionFolder) folder = NULL;
  g_autoptr (LapAttachments) attachments = NULL;
  g_autoptr (LapFillProblem) problem = NULL;
  g_autoptr (LapFill) fill = NULL;

  if (!lap_cli_options (argc, argv, &lap_command_fill, entries, 1, 1, &files))
    return LAP_ERROR_USAGE;
  if (out == NULL)
    return lap_cli_usage (&lap_command_fill);
  week = lap_cli_week (files[0]);
  if (week == NULL)
    return LAP_ERROR_INVALID;
  folder = lap_session_folder_new (files[0]);
  source.data = folder;
  attachments = lap_attachments_new (&source);
  problem = lap_fill_problem_new (week, attachments);
  fill = lap_fill_find (problem, 0, NULL, NULL, NULL, NULL);
  return write_all (&(Filled) { week, problem, fill }, out, json);
}

const LapCommand lap_command_fill = {
  "fill", "WEEK -o OUT [--json]", N_("Places a week’s classes so that nothing clashes and wishes are kept."), run,
};
