/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Halving finds what counting from the first on finds, wherever the border lies.
 */
#include "base/halve.h"

static void
test_border (void)
{
  for (guint n = 0; n < 20; n++)
    for (guint border = 0; border <= n; border++) {
      guint behind = LAP_HALVE (n, i, i < border);

      g_assert_cmpuint (behind, ==, border);
      g_assert_cmpuint (lap_last_of (behind), ==, border > 0 ? border - 1 : 0);
    }
}

/* Of equal ones all or none are behind. */
static void
test_equal (void)
{
  static const int starts[] = { 0, 5, 5, 5, 9 };

  g_assert_cmpuint (LAP_HALVE (G_N_ELEMENTS (starts), i, starts[i] < 5), ==, 1);
  g_assert_cmpuint (LAP_HALVE (G_N_ELEMENTS (starts), i, starts[i] <= 5), ==, 4);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/halve/border", test_border);
  g_test_add_func ("/halve/equal", test_equal);
  return g_test_run ();
}
