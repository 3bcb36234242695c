/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/cli.h"

#include <glib/gi18n-lib.h>
#include <locale.h>

int
main (int argc, char **argv)
{
  int status = 0;

  setlocale (LC_ALL, "");
  bindtextdomain (GETTEXT_PACKAGE, LAP_LOCALE_DIR);
  bind_textdomain_codeset (GETTEXT_PACKAGE, "UTF-8");
  textdomain (GETTEXT_PACKAGE);
  lap_cli_run (argc, argv, &status);
  return status;
}
