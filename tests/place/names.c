/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "place/names.h"

/* Each letter is 10 wide, a space 5, the dots 8. */
static double
width (const char *text, int length, gpointer data)
{
  glong letters = g_utf8_strlen (text, length);

  if (length == 1 && *text == ' ')
    return 5;
  return g_str_has_prefix (text, "…") ? 8 : 10.0 * letters;
}

static const struct { const char *name; double width; guint lines; const char *set; } rows[] = {
  { "Squat", 50, 2, "Squat" },
  { "Squat", 49, 2, "" },                              /* whole or not at all */
  { "Squat jump", 95, 2, "Squat jump" },
  { "Squat jump", 94, 2, "Squat\njump" },
  { "Squat jump", 50, 2, "Squat\njump" },
  { "Squat jump", 60, 1, "Squat…" },
  { "Squat jump", 57, 1, "" },                         /* no room for the dots */
  { "Plank up-down", 80, 2, "Plank\nup-down" },        /* 50 + 5 + 30 are 85 */
  { "Plank up-down", 85, 2, "Plank up-\ndown" },
  { "Plank up-down", 50, 3, "Plank\nup-\ndown" },
  { "Plank up-down", 58, 2, "Plank\nup-…" },
  { "Push-up to shoulder tap", 80, 3, "Push-up\nto…" }, /* behind "shoulder" no dots have room */
  { "Push-up to shoulder tap", 95, 3, "Push-up to\nshoulder\ntap" },
  { "Step touch with arms", 108, 2, "Step touch\nwith arms" },
  { "Step touch with arms", 60, 2, "Step\ntouch…" },
  { "Step touch with arms", 60, 3, "Step\ntouch\nwith…" },
  { "Step touch with arms", 60, 4, "Step\ntouch\nwith\narms" },
  { "Kettlebell swing", 90, 2, "" },
  { "Knie-über-Zehen", 70, 3, "Knie-\nüber-\nZehen" },
  { "", 90, 2, "" },
};

static void
test_rows (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++) {
    g_autoptr (LapName) name = lap_name_new (rows[i].name, width, NULL);
    g_autofree char *set = lap_name_set (name, lap_name_fit (name, rows[i].width, rows[i].lines));

    g_assert_cmpstr (set, ==, rows[i].set);
  }
}

/* Whatever the width, no line is wider, there are no more lines than asked for, and what is shown begins the name. */
static void
test_never_wider (void)
{
  static const char text[] = "Side-lying leg lift with a very long tail of words that nobody reads to the end of it all";
  g_autoptr (LapName) name = lap_name_new (text, width, NULL);

  for (double wide = 1; wide < 1000; wide += 7)
    for (guint lines = 1; lines < 5; lines++) {
      g_autofree char *set = lap_name_set (name, lap_name_fit (name, wide, lines));
      g_auto (GStrv) set_lines = g_strsplit (set, "\n", -1);

      g_assert_cmpuint (g_strv_length (set_lines), <=, lines);
      for (guint i = 0; set_lines[i] != NULL; i++) {
        double sum = 0;

        for (const char *c = set_lines[i]; *c != '\0'; c = g_utf8_next_char (c))
          sum += width (c, g_utf8_next_char (c) - c, NULL);
        g_assert_cmpfloat (sum, <=, wide);
      }
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/place/names/rows", test_rows);
  g_test_add_func ("/place/names/never-wider", test_never_wider);
  return g_test_run ();
}
