/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "support/pdf.h"

#include <gio/gio.h>
#include <stdio.h>

char *
pdf_pages (const char *path)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GSubprocess) process = g_subprocess_new (G_SUBPROCESS_FLAGS_STDOUT_PIPE, &error, "pdfinfo", path, NULL);
  g_autofree char *said = NULL;
  g_auto (GStrv) lines = NULL;
  double width = 0, height = 0;
  int n = 0;

  g_assert_no_error (error);
  g_subprocess_communicate_utf8 (process, NULL, NULL, &said, NULL, &error);
  g_assert_no_error (error);
  lines = g_strsplit (said, "\n", -1);
  for (guint i = 0; lines[i] != NULL; i++) {
    sscanf (lines[i], "Pages: %d", &n);
    sscanf (lines[i], "Page size: %lf x %lf", &width, &height);
  }
  return g_strdup_printf ("%d %.0f x %.0f", n, width, height);
}
