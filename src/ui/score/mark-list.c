/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/score/mark-list.h"

#include "ui/mark.h"

#include <glib/gi18n-lib.h>

#define TALLEST 320 /* px before the list scrolls */
#define BESIDE  60  /* px of a row that its words don't have */

static void
row_cb (GtkWidget *popover, GtkListBoxRow *row)
{
  LapScoreContext *context = g_object_get_data (G_OBJECT (popover), "context");
  guint warning = GPOINTER_TO_UINT (g_object_get_data (G_OBJECT (row), "warning"));

  gtk_popover_popdown (GTK_POPOVER (popover));
  lap_score_choose_warning (context, warning);
}

/* Letters of a label that has a row but for the mark. Without them the list would ask for the height of lines as long as
 * they come. */
static int
letters (GtkWidget *label, int width)
{
  PangoFontMetrics *metrics = pango_context_get_metrics (gtk_widget_get_pango_context (label), NULL, NULL);
  int letter = PANGO_PIXELS_CEIL (pango_font_metrics_get_approximate_char_width (metrics));

  pango_font_metrics_unref (metrics);
  return MAX (10, (width - BESIDE) / MAX (1, letter));
}

static GtkWidget *
row_new (const LapCheckup *checkup, guint n, int width, GtkSizeGroup *marks)
{
  const LapWarning *warning = lap_checkup_nth (checkup, n);
  g_autofree char *message = lap_warning_message (checkup, warning);
  GtkWidget *row = gtk_list_box_row_new (), *line = gtk_box_new (GTK_ORIENTATION_HORIZONTAL, 8);
  GtkWidget *mark = g_object_new (LAP_TYPE_MARK, "valign", GTK_ALIGN_CENTER, NULL), *label = gtk_label_new (message);
  g_autofree char *spoken = g_strdup_printf (_("%1$u: %2$s"), n + 1, message);

  lap_mark_set (LAP_MARK (mark), warning->severity, n + 1);
  gtk_size_group_add_widget (marks, mark);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_max_width_chars (GTK_LABEL (label), letters (label, width));
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_widget_set_hexpand (label, TRUE);
  gtk_box_append (GTK_BOX (line), mark);
  gtk_box_append (GTK_BOX (line), label);
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (row), line);
  g_object_set_data (G_OBJECT (row), "warning", GUINT_TO_POINTER (n));
  gtk_accessible_update_property (GTK_ACCESSIBLE (row), GTK_ACCESSIBLE_PROPERTY_LABEL, spoken, -1);
  return row;
}

GtkWidget *
lap_mark_list_new (LapScoreContext *context, const LapMarks *marks, guint mark, int width)
{
  LapCheckup *checkup = lap_document_checkup (context->document);
  g_autoptr (GtkSizeGroup) wide = gtk_size_group_new (GTK_SIZE_GROUP_HORIZONTAL);
  GtkWidget *popover = gtk_popover_new (), *scrolled = gtk_scrolled_window_new (), *list = gtk_list_box_new ();

  for (guint i = 0; i < marks->members->len; i++) {
    const LapMarkMember *member = &g_array_index (marks->members, LapMarkMember, i);

    if (member->mark == mark)
      gtk_list_box_append (GTK_LIST_BOX (list), row_new (checkup, member->warning, width, wide));
  }
  gtk_list_box_set_selection_mode (GTK_LIST_BOX (list), GTK_SELECTION_NONE);
  gtk_accessible_update_property (GTK_ACCESSIBLE (list), GTK_ACCESSIBLE_PROPERTY_LABEL, _("Warnings in this place"), -1);
  g_signal_connect_swapped (list, "row-activated", G_CALLBACK (row_cb), popover);
  gtk_scrolled_window_set_policy (GTK_SCROLLED_WINDOW (scrolled), GTK_POLICY_NEVER, GTK_POLICY_AUTOMATIC);
  gtk_scrolled_window_set_propagate_natural_height (GTK_SCROLLED_WINDOW (scrolled), TRUE);
  gtk_scrolled_window_set_max_content_height (GTK_SCROLLED_WINDOW (scrolled), TALLEST);
  gtk_scrolled_window_set_child (GTK_SCROLLED_WINDOW (scrolled), list);
  gtk_widget_set_size_request (scrolled, width, -1);
  gtk_popover_set_child (GTK_POPOVER (popover), scrolled);
  g_object_set_data_full (G_OBJECT (popover), "context", g_object_ref (context), g_object_unref);
  return popover;
}
