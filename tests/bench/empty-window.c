/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What the first frame of Lapwing is held against: a window of libadwaita with a header bar and nothing in it, as large
 * as Lapwing's.
 */
#include <adwaita.h>

static void
activate_cb (GtkApplication *application)
{
  GtkWidget *window = adw_application_window_new (application), *content = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);

  gtk_box_append (GTK_BOX (content), adw_header_bar_new ());
  adw_application_window_set_content (ADW_APPLICATION_WINDOW (window), content);
  gtk_window_set_default_size (GTK_WINDOW (window), 1200, 760);
  gtk_window_present (GTK_WINDOW (window));
}

int
main (int argc, char **argv)
{
  g_autoptr (AdwApplication) application = adw_application_new ("org.lapwing.Empty", G_APPLICATION_DEFAULT_FLAGS);

  g_signal_connect (application, "activate", G_CALLBACK (activate_cb), NULL);
  return g_application_run (G_APPLICATION (application), argc, argv);
}
