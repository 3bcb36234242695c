/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/windows.h"

#include "ui/new.h"

static GtkWidget *
field (GtkWindow *dialog, GType type, const char *id)
{
  GtkWidget *widget = windows_find (GTK_WIDGET (dialog), type, id);

  g_assert_nonnull (widget);
  return widget;
}

/* A pasted list becomes a session in a window of its own; what isn't known is named and stands in nobody's way. */
static void
test_list (void)
{
  LapWindow *demo = windows_demo (), *window;
  LapApplication *application = LAP_APPLICATION (gtk_window_get_application (GTK_WINDOW (demo)));
  GtkWindow *dialog = lap_new_dialog (application, GTK_WINDOW (demo));
  GtkWidget *told = field (dialog, GTK_TYPE_LABEL, "told"), *make = field (dialog, GTK_TYPE_BUTTON, "make");
  LapPart *part;

  gtk_window_present (dialog);
  windows_settle (demo);
  gtk_editable_set_text (GTK_EDITABLE (field (dialog, ADW_TYPE_ENTRY_ROW, "name")), "Pasted");
  gtk_text_buffer_set_text (gtk_text_view_get_buffer (GTK_TEXT_VIEW (field (dialog, GTK_TYPE_TEXT_VIEW, "list"))),
                            "Squat\nBurpeez 30/30\nPlank", -1);
  g_assert_cmpstr (gtk_label_get_text (GTK_LABEL (told)), ==, "Line 2, “Burpeez”, isn’t known; it may be Burpee.");
  gtk_editable_set_text (GTK_EDITABLE (field (dialog, ADW_TYPE_ENTRY_ROW, "formula")), "forty");
  g_assert_false (gtk_widget_get_sensitive (make));
  gtk_editable_set_text (GTK_EDITABLE (field (dialog, ADW_TYPE_ENTRY_ROW, "formula")), "45/15 x 9 x 2");
  g_assert_true (gtk_widget_get_sensitive (make));
  g_signal_emit_by_name (make, "clicked");
  window = LAP_WINDOW (gtk_application_get_active_window (GTK_APPLICATION (application)));
  for (GList *l = gtk_application_get_windows (GTK_APPLICATION (application)); l != NULL; l = l->next)
    if (LAP_IS_WINDOW (l->data) && l->data != (gpointer) demo)
      window = l->data;
  windows_settle (window);
  g_assert_cmpstr (lap_document_title (lap_window_document (window)), ==, "Pasted");
  part = lap_session_nth (lap_document_session (lap_window_document (window)), 0);
  g_assert_cmpuint (lap_part_n (part), ==, 3); /* as many as are listed */
  g_assert_cmpint (part->rounds, ==, 2);
  g_assert_cmpint (lap_part_nth (part, 1)->work, ==, 45);
  g_assert_cmpstr (lap_part_nth (part, 1)->note, ==, "Burpeez");
  windows_close (window);
  windows_close (demo);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/new/list", test_list);
  return g_test_run ();
}
