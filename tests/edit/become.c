/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Each demo made into each other one and taken back, compared by the bytes of their files.
 */
#include "edit/become.h"
#include "store/documents.h"
#include "store/read-file.h"

static const char * const demos[] = { "thirty-on-the-mat", "too-much-at-once", "twelve-at-twelve" };

static LapSession *
read_demo (const char *name)
{
  g_autofree char *file = g_strconcat (name, ".lapwing", NULL);
  g_autofree char *path = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", file, NULL);
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) bytes = lap_read_file (path, NULL, &error);
  LapSession *session = bytes != NULL ? lap_session_from_bytes (bytes, &error) : NULL;

  g_assert_no_error (error);
  return session;
}

static void
assert_equal (LapSession *session, GBytes *wanted)
{
  g_autoptr (GBytes) bytes = lap_session_to_bytes (session);

  g_assert_cmpmem (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes), g_bytes_get_data (wanted, NULL),
                   g_bytes_get_size (wanted));
}

static void
test_become (void)
{
  for (guint i = 0; i < G_N_ELEMENTS (demos); i++)
    for (guint j = 0; j < G_N_ELEMENTS (demos); j++) {
      g_autoptr (LapSession) session = read_demo (demos[i]), other = read_demo (demos[j]);
      g_autoptr (GBytes) before = lap_session_to_bytes (session), after = lap_session_to_bytes (other);
      g_autoptr (LapEdits) edits = lap_edits_become ("Go back", session, other);

      assert_equal (session, before);
      g_assert_true ((lap_edits_n (edits) == 0) == (i == j));
      lap_edits_swap (edits);
      assert_equal (session, after);
      lap_edits_swap (edits);
      assert_equal (session, before);
      assert_equal (other, after);
    }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/become/demos", test_become);
  return g_test_run ();
}
