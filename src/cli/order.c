/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * lapwing order FILE [--costs] [--json] [-o OUT]: the best order of each main part's blocks.
 */
#include "cli/cli.h"

#include "arrange/order.h"
#include "edit/verbs.h"

#include <glib/gi18n-lib.h>

static void
member_quarters (LapJsonWriter *out, const char *name, int quarters)
{
  lap_json_writer_member (out, name);
  lap_json_writer_number (out, quarters / (double) LAP_QUARTERS);
}

static void
write_matrix (LapJsonWriter *out, const char *name, const int *matrix, guint n)
{
  lap_json_writer_member (out, name);
  lap_json_writer_begin_array (out);
  for (guint i = 0; i < n; i++) {
    lap_json_writer_begin_array (out);
    for (guint k = 0; k < n; k++) {
      if (matrix[i * n + k] == LAP_BARRED)
        lap_json_writer_null (out);
      else
        lap_json_writer_number (out, matrix[i * n + k] / (double) LAP_QUARTERS);
    }
    lap_json_writer_end_array (out);
  }
  lap_json_writer_end_array (out);
}

static void
write_part (LapJsonWriter *out, const LapTimeline *t, guint p, const LapCosts *costs, const LapOrder *order,
            gboolean with_costs)
{
  g_autofree char *words = lap_order_words (order, t, p);

  lap_json_writer_begin_object (out);
  lap_json_writer_member (out, "part");
  lap_json_writer_int (out, p);
  lap_json_writer_member (out, "rounds");
  lap_json_writer_int (out, costs->rounds);
  lap_json_writer_member (out, "order");
  lap_json_writer_begin_array (out);
  for (guint k = 0; k < order->n; k++)
    lap_json_writer_int (out, order->order[k]);
  lap_json_writer_end_array (out);
  member_quarters (out, "cost", order->cost);
  lap_json_writer_member (out, "runs");
  lap_json_writer_int (out, order->runs);
  member_quarters (out, "total", order->total);
  member_quarters (out, "was", order->was);
  if (order->bound >= 0) {
    member_quarters (out, "bound", order->bound);
  } else {
    lap_json_writer_member (out, "bound");
    lap_json_writer_null (out);
  }
  lap_json_writer_member (out, "proven");
  lap_json_writer_boolean (out, order->proven);
  lap_json_writer_member (out, "words");
  lap_json_writer_string (out, words);
  if (with_costs) {
    write_matrix (out, "pairs", costs->pairs, costs->n);
    write_matrix (out, "seam", costs->seam, costs->n);
    write_matrix (out, "places", costs->places, costs->n);
  }
  lap_json_writer_end_object (out);
}

static void
print_part (const LapTimeline *t, guint p, const LapOrder *order)
{
  g_autofree char *words = lap_order_words (order, t, p);
  LapPart *part = t->parts[p].part;

  g_print (_("%1$s: %2$s.\n"), lap_part_title (part), words);
  for (guint k = 0; k < order->n; k++) {
    g_autofree char *title = lap_block_title (lap_part_nth (part, order->order[k]), t->catalogue);

    g_print ("  %2u. %s%s\n", k + 1, title, order->order[k] != k ? " ←" : "");
  }
  g_print (_("  Cost %1$g, it was %2$g. "), order->total / (double) LAP_QUARTERS, order->was / (double) LAP_QUARTERS);
  if (order->proven)
    g_print ("%s\n", _("No order costs less."));
  else if (order->bound >= 0)
    g_print (_("No order costs less than %g.\n"), order->bound / (double) LAP_QUARTERS);
  else
    g_print ("%s\n", _("The best that was found."));
}

static int
run (int argc, char **argv)
{
  gboolean json = FALSE, with_costs = FALSE;
  g_autofree char *out = NULL;
  const GOptionEntry entries[] = {
    { "costs", 0, 0, G_OPTION_ARG_NONE, &with_costs, N_("Print the costs of all pairs and places, too"), NULL },
    { "json", 0, 0, G_OPTION_ARG_NONE, &json, N_("Print JSON"), NULL },
    { "output", 'o', 0, G_OPTION_ARG_FILENAME, &out, N_("Write the session in its new order"), "OUT" },
    { NULL },
  };
  g_auto (GStrv) files = NULL;
  g_autoptr (LapTimeline) t = NULL;
  g_autoptr (LapJsonWriter) writer = lap_json_writer_new ();
  g_autoptr (LapEdits) all = lap_edits_new ("");
  g_autoptr (GBytes) bytes = NULL;

  if (!lap_cli_options (argc, argv, &lap_command_order, entries, 1, 1, &files))
    return LAP_ERROR_USAGE;
  t = lap_cli_timeline (files[0]);
  if (t == NULL)
    return LAP_ERROR_INVALID;
  lap_json_writer_begin_object (writer);
  lap_json_writer_member (writer, "parts");
  lap_json_writer_begin_array (writer);
  for (guint p = 0; p < t->n_parts; p++) {
    g_autoptr (LapCosts) costs = NULL;
    g_autoptr (LapOrder) order = NULL;

    if (t->parts[p].part->kind != LAP_PART_MAIN || t->parts[p].n_turns < 2)
      continue;
    costs = lap_costs_new (t, p);
    order = lap_order_find (costs, NULL, NULL, NULL, NULL);
    write_part (writer, t, p, costs, order, with_costs);
    if (!json && (out == NULL || !g_str_equal (out, "-")))
      print_part (t, p, order);
    lap_edits_append (all, lap_order_edits (order, t->parts[p].part));
  }
  lap_json_writer_end_array (writer);
  lap_json_writer_end_object (writer);
  bytes = lap_json_writer_finish (writer);
  if (json && lap_cli_print (bytes) != 0)
    return LAP_ERROR_UNWRITABLE;
  lap_edits_swap (all);
  return out != NULL ? lap_cli_write_session (out, t->session) : 0;
}

const LapCommand lap_command_order = {
  "order", "FILE [--costs] [--json] [-o OUT]", N_("Finds the order of a part’s blocks that suits bodies best."), run,
};
