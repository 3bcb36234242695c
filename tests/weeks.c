/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "weeks.h"

#include "store/documents.h"

#include <string.h>

LapWeek *
test_week (const char *text)
{
  g_autofree char *json = g_strdelimit (g_strdup (text), "'", '"');
  g_autoptr (GBytes) bytes = g_bytes_new (json, strlen (json));
  g_autoptr (GError) error = NULL;
  LapWeek *week = lap_week_from_bytes (bytes, &error);

  g_assert_no_error (error);
  return week;
}
