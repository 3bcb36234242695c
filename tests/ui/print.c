/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Printing a poster larger than the printer's paper, with a mouse: what is asked, GTK's print dialog, and what comes out of
 * its printer "Print to File". Outside: A3 is 842 by 1191 points and A4 595 by 842 (ISO 216); the file is read by
 * poppler's pdfinfo.
 */
#include "support/pdf.h"
#include "ui/rows.h"
#include "ui/windows.h"

#include <glib/gstdio.h>
#include <gtk/gtkunixprint.h>
#include <string.h>

/* What is done in the print dialog, which holds up whoever opened it. */
typedef struct {
  gboolean prints, done; /* or gives it up */
  char    *paper;        /* of the dialog: "iso_a4" */
} Person;

static GtkPrintUnixDialog *
print_dialog (void)
{
  GListModel *all = gtk_window_get_toplevels ();

  for (guint i = 0; i < g_list_model_get_n_items (all); i++) {
    g_autoptr (GtkWindow) window = g_list_model_get_item (all, i);

    if (GTK_IS_PRINT_UNIX_DIALOG (window) && gtk_widget_get_mapped (GTK_WIDGET (window)))
      return GTK_PRINT_UNIX_DIALOG (window);
  }
  return NULL;
}

/* Chooses the printer, when it is listed. */
static gboolean
has_printer (GtkPrintUnixDialog *dialog)
{
  GtkWidget *name = rows_find_text (GTK_WIDGET (dialog), "Print to File");

  if (gtk_print_unix_dialog_get_selected_printer (dialog) == NULL && name != NULL) {
    hands_on (GTK_WINDOW (dialog));
    hands_click_on (name);
  }
  return gtk_print_unix_dialog_get_selected_printer (dialog) != NULL;
}

static gboolean
act_cb (gpointer data)
{
  Person *person = data;
  GtkPrintUnixDialog *dialog = print_dialog ();
  GtkPageSetup *setup;

  if (dialog == NULL || !has_printer (dialog))
    return G_SOURCE_CONTINUE;
  setup = gtk_print_unix_dialog_get_page_setup (dialog);
  person->paper = g_strdup (gtk_paper_size_get_name (gtk_page_setup_get_paper_size (setup)));
  gtk_dialog_response (GTK_DIALOG (dialog), person->prints ? GTK_RESPONSE_OK : GTK_RESPONSE_CANCEL);
  person->done = TRUE;
  return G_SOURCE_REMOVE;
}

static gboolean
is_done (gpointer person)
{
  return ((Person *) person)->done;
}

/* The end of a PDF: ISO 32000-1, 7.5.5. */
static gboolean
is_whole (gpointer path)
{
  const char end[] = "%%EOF\n";
  g_autofree char *text = NULL;
  gsize length;

  return g_file_get_contents (path, &text, &length, NULL) && length > strlen (end) &&
         memcmp (text + length - strlen (end), end, strlen (end)) == 0;
}

static gboolean
look_again (gpointer data)
{
  return G_SOURCE_CONTINUE;
}

static const struct {
  const char *answer, *paper, *pages; /* NULL: the print dialog is given up */
} cases[] = {
  /* The poster has two pages, and what is printed of each goes on two of A4 on their side. */
  { "In pieces on A4", "iso_a4", "4 842 x 595" },
  { "In one piece", "iso_a3", "2 842 x 1191" },
  { "In one piece", "iso_a3", NULL },
};

static void
test_answer (gconstpointer data)
{
  guint i = GPOINTER_TO_UINT (data);
  g_autofree char *folder = g_dir_make_tmp ("lapwing-XXXXXX", NULL), *path = g_build_filename (folder, "output.pdf", NULL);
  g_autofree char *here = g_get_current_dir (), *pages = NULL;
  g_autoptr (GtkWindow) question = NULL;
  LapWindow *window = windows_demo ();
  Person person = { .prints = cases[i].pages != NULL };
  guint looks;

  g_assert_cmpint (g_chdir (folder), ==, 0); /* where the printer puts its file */
  hands_on (GTK_WINDOW (window));
  hands_press ("<Control>p");
  question = windows_dialog (window);
  hands_on (question);
  g_timeout_add (20, act_cb, &person);
  rows_by_mouse.press (GTK_WIDGET (question), cases[i].answer);
  hands_until (is_done, &person);
  g_assert_cmpstr (person.paper, ==, cases[i].paper);
  if (cases[i].pages != NULL) {
    looks = g_timeout_add (20, look_again, NULL);
    hands_until (is_whole, path);
    g_source_remove (looks);
    windows_settle (window);
    pages = pdf_pages (path);
    g_assert_cmpstr (pages, ==, cases[i].pages);
    g_unlink (path);
  }
  g_assert_cmpint (g_chdir (here), ==, 0);
  g_assert_cmpint (g_rmdir (folder), ==, 0);
  g_free (person.paper);
  g_clear_object (&question);
  windows_settle (window);
  windows_close (window);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_object_set (gtk_settings_get_default (), "gtk-print-backends", "file", NULL);
  for (guint i = 0; i < G_N_ELEMENTS (cases); i++) {
    g_autofree char *name = g_strdup_printf ("/print/answer/%u", i);

    g_test_add_data_func (name, GUINT_TO_POINTER (i), test_answer);
  }
  return g_test_run ();
}
