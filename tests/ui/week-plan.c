/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/week-plan.h"

#include "store/documents.h"

#include <glib/gstdio.h>
#include <string.h>

const char week_text[] =
  "{\n  \"format\": \"lapwing-week\",\n  \"version\": 1,\n  \"id\": \"0c5b1b62-0000-4000-8000-000000000001\",\n"
  "  \"title\": \"Harbour\",\n  \"timezone\": \"Europe/Lisbon\",\n  \"from\": \"2027-01-11\",\n"
  "  \"until\": \"2027-03-28\",\n"
  "  \"rooms\": [\n    {\n      \"id\": \"loft\",\n      \"name\": \"Loft\"\n    },\n"
  "    {\n      \"id\": \"yard\",\n      \"name\": \"Yard\"\n    }\n  ],\n"
  "  \"coaches\": [\n    {\n      \"id\": \"mira\",\n      \"name\": \"Mira\"\n    },\n"
  "    {\n      \"id\": \"teo\",\n      \"name\": \"Teo\"\n    }\n  ],\n"
  "  \"classes\": [\n    {\n      \"id\": \"dawn\",\n      \"title\": \"Dawn\",\n      \"kind\": \"circuit\",\n"
  "      \"minutes\": 45,\n      \"session\": \"plans/squats.lapwing\",\n      \"day\": \"mon\",\n"
  "      \"start\": \"07:00\",\n      \"room\": \"loft\",\n      \"coach\": \"mira\"\n    },\n"
  "    {\n      \"id\": \"noon\",\n      \"title\": \"Noon\",\n      \"kind\": \"strength\",\n"
  "      \"minutes\": 30,\n      \"day\": \"wed\",\n      \"start\": \"12:15\",\n      \"room\": \"yard\",\n"
  "      \"coach\": \"teo\"\n    },\n"
  "    {\n      \"id\": \"late\",\n      \"title\": \"Late\",\n      \"kind\": \"stretch\",\n"
  "      \"minutes\": 60\n    }\n  ]\n}\n";

LapDocument *
week_document (void)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) bytes = g_bytes_new_static (week_text, strlen (week_text));
  g_autoptr (LapWeek) week = lap_week_from_bytes (bytes, &error);
  LapDocument *document;

  g_assert_no_error (error);
  document = lap_document_new (week, &error);
  g_assert_no_error (error);
  return document;
}

void
week_put_session (const char *week, int seconds)
{
  g_autofree char *folder = g_path_get_dirname (week), *plans = g_build_filename (folder, "plans", NULL);
  g_autofree char *path = g_build_filename (plans, "squats.lapwing", NULL), *text = NULL;

  text = g_strdup_printf ("{\"format\": \"lapwing-session\", \"version\": 1, \"id\": \"s-%d\", \"title\": \"Squats\","
                          " \"parts\": [{\"kind\": \"main\", \"blocks\": ["
                          "{\"exercise\": \"squat\", \"work\": %d}]}]}", seconds, seconds);
  g_assert_cmpint (g_mkdir_with_parents (plans, 0755), ==, 0);
  g_assert_true (g_file_set_contents (path, text, -1, NULL));
}

LapClass *
week_class (LapDocument *document, const char *id)
{
  LapClass *c = lap_week_class (lap_document_week (document), id);

  g_assert_nonnull (c);
  return c;
}

gboolean
week_says (LapDocument *document, const char *check)
{
  LapCheckup *checkup = lap_document_checkup (document);

  for (guint i = 0; i < lap_checkup_n (checkup); i++)
    if (g_str_equal (lap_checkup_nth (checkup, i)->check->id, check))
      return TRUE;
  return FALSE;
}
