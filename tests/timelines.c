/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "timelines.h"

#include "store/documents.h"

LapTimeline *
test_timeline (const char *members)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();
  g_autofree char *text = g_strdup_printf ("{ 'format': 'lapwing-session', 'version': 1, 'id': 'a', 'title': 'T', %s }",
                                           members);
  g_autoptr (GBytes) bytes = NULL;
  g_autoptr (LapSession) session = NULL;
  LapTimeline *timeline;

  g_strdelimit (text, "'", '"');
  bytes = g_bytes_new (text, strlen (text));
  session = lap_session_from_bytes (bytes, &error);
  g_assert_no_error (error);
  timeline = lap_timeline_new (session, catalogue, &error);
  g_assert_no_error (error);
  return timeline;
}

LapTimeline *
test_part (const char *kind, int rounds, const char *blocks)
{
  g_autofree char *members = g_strdup_printf ("'parts': [ { 'kind': '%s', 'rounds': %d, 'blocks': [ %s ] } ]", kind,
                                              rounds, blocks);

  return test_timeline (members);
}
