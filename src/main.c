/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "cli/cli.h"
#include "ui/application.h"

#include <glib/gi18n-lib.h>
#include <locale.h>

int
main (int argc, char **argv)
{
  g_autoptr (LapApplication) application = NULL;
  int status = 0;

  setlocale (LC_ALL, "");
  bindtextdomain (GETTEXT_PACKAGE, LAP_LOCALE_DIR);
  bind_textdomain_codeset (GETTEXT_PACKAGE, "UTF-8");
  textdomain (GETTEXT_PACKAGE);
  if (lap_cli_run (argc, argv, &status))
    return status;
  if (!lap_application_has_display ()) {
    g_printerr ("lapwing: %s\n", _("there is no display for the window; lapwing --help lists the commands that need "
                                  "none"));
    return LAP_ERROR_USAGE;
  }
  application = lap_application_new ();
  return g_application_run (G_APPLICATION (application), argc, argv);
}
