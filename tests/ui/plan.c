/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/plan.h"

#include "store/documents.h"

#include <string.h>

static const char text[] =
  "{\"format\": \"lapwing-session\", \"version\": 1, \"id\": \"6f1c2a34-0000-4000-8000-000000000001\","
  " \"title\": \"Small\", \"parts\": [{\"kind\": \"main\", \"blocks\": ["
  " {\"exercise\": \"squat\", \"work\": 40, \"rest\": 20}, {\"exercise\": \"front-plank\", \"work\": 40, \"rest\": 20}]}]}";

LapDocument *
plan_document (void)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) bytes = g_bytes_new_static (text, strlen (text));
  g_autoptr (LapSession) session = lap_session_from_bytes (bytes, &error);
  LapDocument *document;

  g_assert_no_error (error);
  document = lap_document_new (session, &error);
  g_assert_no_error (error);
  return document;
}

void
plan_rename (LapDocument *document, const char *title)
{
  LapEdits *edits = lap_edits_new ("Title");

  lap_edits_set_text (edits, lap_document_session (document), "title", title);
  g_assert_true (lap_document_apply (document, edits));
}
