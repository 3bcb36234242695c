/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A file at a glance says what its window would: title, length, open warnings. The shape is compared with the effort of
 * the window's own document.
 */
#include "ui/glance.h"

#include "store/read-file.h"
#include "ui/document.h"

#include <string.h>

static void
glance (const char *path, LapIndexFacts *facts)
{
  g_autoptr (GBytes) bytes = lap_read_file (path, NULL, NULL);

  memset (facts, 0, sizeof *facts);
  lap_glance (path, bytes, facts);
}

static void
clear (LapIndexFacts *facts)
{
  g_free (facts->title);
  g_free (facts->shape);
  g_free (facts->found_by);
}

static void
compare_session (const char *name)
{
  g_autofree char *path = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", name, NULL);
  g_autoptr (GError) error = NULL;
  g_autoptr (LapDocument) document = lap_document_read (path, &error);
  const LapEffort *effort;
  LapTimeline *timeline;
  LapIndexFacts facts;

  g_assert_no_error (error);
  timeline = lap_document_timeline (document);
  effort = lap_checkup_effort (lap_document_checkup (document));
  glance (path, &facts);
  g_assert_cmpint (facts.kind, ==, LAP_INDEX_SESSION);
  g_assert_cmpstr (facts.title, ==, lap_document_title (document));
  g_assert_cmpuint (facts.amount, ==, timeline->length);
  g_assert_cmpuint (facts.warnings, ==, lap_checkup_n_open (lap_document_checkup (document)));
  g_assert_cmpuint (strlen (facts.shape), ==, LAP_SHAPE_COLUMNS);
  for (guint i = 0; i < LAP_SHAPE_COLUMNS; i++) {
    double step = (double) timeline->length / LAP_SHAPE_COLUMNS, mean = lap_effort_mean (effort, i * step, (i + 1) * step);
    const LapInterval *middle = lap_timeline_at (timeline, (i + 0.5) * step);
    int kind = lap_session_nth (timeline->session, middle->part)->kind;

    g_assert_cmpint (g_ascii_isupper (facts.shape[i]), ==, kind == LAP_PART_MAIN);
    g_assert_cmpint (g_ascii_tolower (facts.shape[i]) - 'a', ==, MIN (9, (int) (mean * 10)));
  }
  clear (&facts);
}

static void
test_sessions (void)
{
  compare_session ("thirty-on-the-mat.lapwing");
  compare_session ("too-much-at-once.lapwing");
  compare_session ("twelve-at-twelve.lapwing");
}

static void
test_week (void)
{
  g_autofree char *path = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", "kelpline-week.lapweek", NULL);
  g_autoptr (LapDocument) document = lap_document_read (path, NULL);
  LapIndexFacts facts;

  glance (path, &facts);
  g_assert_cmpint (facts.kind, ==, LAP_INDEX_WEEK);
  g_assert_cmpuint (facts.amount, ==, lap_list_n (lap_document_week (document)->classes));
  g_assert_cmpuint (facts.warnings, ==, lap_checkup_n_open (lap_document_checkup (document)));
  g_assert_cmpuint (facts.warnings, >, 0);
  g_assert_cmpuint (strlen (facts.shape), ==, LAP_N_DAYS);
  g_assert_nonnull (strchr (facts.shape, 'J')); /* the fullest day */
  clear (&facts);
}

static void
test_unreadable (void)
{
  static const char * const texts[] = { "", "{", "{\"format\": \"other\"}", "[]" };

  for (guint i = 0; i < G_N_ELEMENTS (texts); i++) {
    g_autoptr (GBytes) bytes = g_bytes_new_static (texts[i], strlen (texts[i]));
    LapIndexFacts facts = { 0 };

    lap_glance ("none", bytes, &facts);
    g_assert_cmpint (facts.kind, ==, LAP_INDEX_UNREADABLE);
    clear (&facts);
  }
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/glance/sessions", test_sessions);
  g_test_add_func ("/glance/week", test_week);
  g_test_add_func ("/glance/unreadable", test_unreadable);
  return g_test_run ();
}
