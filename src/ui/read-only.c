/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/read-only.h"

void
lap_read_only_show (GtkWidget *widget, LapDocument *document, gboolean possible)
{
  const char *why = lap_document_why_not (document);

  gtk_widget_set_sensitive (widget, possible && why == NULL);
  if (why != NULL)
    gtk_widget_set_tooltip_text (widget, why);
}
