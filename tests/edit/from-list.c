/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "edit/from-list.h"

static LapCatalogue *builtin;

/* "main: squat 40/20, push-up 30/10; …" */
static char *
told (LapSession *session)
{
  GString *text = g_string_new (NULL);

  for (guint p = 0; p < lap_session_n (session); p++) {
    LapPart *part = lap_session_nth (session, p);

    g_string_append_printf (text, "%s%s:", p > 0 ? "; " : "", lap_words_id (&lap_part_kinds, part->kind));
    for (guint b = 0; b < lap_part_n (part); b++) {
      LapBlock *block = lap_part_nth (part, b);

      g_string_append_printf (text, " %s %d/%d", block->exercise != NULL ? block->exercise : "?", block->work, block->rest);
    }
  }
  return g_string_free (text, FALSE);
}

static void
test_lists (void)
{
  static const struct { const char *text, *wanted; guint unknown; } rows[] = {
    { "", "", 0 },
    { "\n \n", "", 0 },
    { "Squat\nPush-up", "main: squat 40/20 push-up 40/20", 0 },
    { "squat\r\nPUSH UP  \r\n", "main: squat 40/20 push-up 40/20", 0 },
    { "1. Squat 45/15\n2) Push-up\n- Plank 30/30\n• burpee", "main: squat 45/15 push-up 45/15 plank 30/30 burpee 30/30", 0 },
    { "Air squat", "main: squat 40/20", 0 }, /* another of its names */
    { "Warm-up:\nSquat 30/0\nMain:\nPlank 40/20", "warm-up: squat 30/0; main: plank 40/20", 0 },
    { "Sqat 50/10\nWibble wobble", "main: ? 50/10 ? 50/10", 2 },
    { "Squat 0/10", "main: ? 40/20", 1 }, /* nothing takes no time */
  };

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++) {
    g_autoptr (GArray) unknown = NULL;
    g_autoptr (LapSession) session = lap_session_from_list ("List", rows[i].text, builtin, &unknown);
    g_autofree char *text = told (session);

    g_assert_cmpstr (text, ==, rows[i].wanted);
    g_assert_cmpuint (unknown->len, ==, rows[i].unknown);
  }
}

static void
test_unknown (void)
{
  g_autoptr (GArray) unknown = NULL;
  g_autoptr (LapSession) session = lap_session_from_list ("List", "Squat\n\n3. Burpeez 40/20\nWibble wobble zzz", builtin,
                                                          &unknown);
  g_autofree char *first = lap_unknown_line_told (&g_array_index (unknown, LapUnknownLine, 0));
  g_autofree char *second = lap_unknown_line_told (&g_array_index (unknown, LapUnknownLine, 1));

  g_assert_cmpstr (first, ==, "Line 3, “Burpeez”, isn’t known; it may be Burpee.");
  g_assert_cmpstr (second, ==, "Line 4, “Wibble wobble zzz”, isn’t known.");
  g_assert_cmpstr (lap_part_nth (lap_session_nth (session, 0), 1)->note, ==, "Burpeez");
}

int
main (int argc, char **argv)
{
  int failed;

  g_test_init (&argc, &argv, NULL);
  builtin = lap_catalogue_builtin ();
  g_test_add_func ("/edit/from-list/lists", test_lists);
  g_test_add_func ("/edit/from-list/unknown", test_unknown);
  failed = g_test_run ();
  lap_catalogue_unref (builtin);
  return failed;
}
