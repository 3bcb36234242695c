/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/sheet-print.h"

#include "sheets/tile.h"
#include "ui/errand.h"
#include "ui/sheet-job.h"

#include <glib/gi18n-lib.h>

typedef struct {
  LapPages       *pages;
  LapPieces      *pieces; /* NULL: in one */
  LapSheetOptions options;
  guint           n;
} Job;

LapPaper
lap_printer_paper (void)
{
  return g_str_equal (gtk_paper_size_get_default (), GTK_PAPER_NAME_LETTER) ? LAP_PAPER_LETTER : LAP_PAPER_A4;
}

gboolean
lap_sheet_is_large (const LapSheetChoice *choice)
{
  LapSheetOptions printer = { .paper = LAP_PAPER_A4, .landscape = choice->options.landscape };
  double width, height, most_width, most_height;

  lap_paper_size (&choice->options, &width, &height);
  lap_paper_size (&printer, &most_width, &most_height);
  return width * height > most_width * most_height * 1.05;
}

static void
job_free (gpointer data, GClosure *closure)
{
  Job *job = data;

  g_clear_pointer (&job->pieces, lap_pieces_free);
  lap_pages_free (job->pages);
  g_free (job);
}

static void
draw_cb (GtkPrintOperation *operation, GtkPrintContext *context, int n, Job *job)
{
  cairo_t *cr = gtk_print_context_get_cairo_context (context);
  g_autoptr (LapPainter) painter = lap_painter_new (cr, job->options.ink, FALSE);
  double width, height, scale;

  if (job->pieces != NULL) {
    lap_pieces_size (job->pieces, n, &width, &height);
  } else {
    width = lap_pages_nth (job->pages, n)->width;
    height = lap_pages_nth (job->pages, n)->height;
  }
  /* In its own size; where the dialog chose smaller paper, as large as that has room for. */
  scale = MIN (1, MIN (gtk_print_context_get_width (context) / width, gtk_print_context_get_height (context) / height));
  cairo_scale (cr, scale, scale);
  if (job->pieces != NULL)
    lap_pieces_paint (job->pieces, n, painter, cr);
  else
    lap_painter_page (painter, lap_pages_nth (job->pages, n));
}

/* The paper of each page, turned as it needs. */
static void
setup_cb (GtkPrintOperation *operation, GtkPrintContext *context, int n, GtkPageSetup *setup, Job *job)
{
  double width = lap_pages_nth (job->pages, 0)->width, height = lap_pages_nth (job->pages, 0)->height;

  if (job->pieces != NULL)
    lap_pieces_size (job->pieces, n, &width, &height);
  gtk_page_setup_set_orientation (setup, width > height ? GTK_PAGE_ORIENTATION_LANDSCAPE
                                                        : GTK_PAGE_ORIENTATION_PORTRAIT);
}

static GtkPageSetup *
page_setup (LapPaper paper)
{
  static const char *const names[] = {
    [LAP_PAPER_A4] = GTK_PAPER_NAME_A4, [LAP_PAPER_A3] = GTK_PAPER_NAME_A3, [LAP_PAPER_A2] = "iso_a2",
    [LAP_PAPER_A5] = GTK_PAPER_NAME_A5, [LAP_PAPER_LETTER] = GTK_PAPER_NAME_LETTER,
    [LAP_PAPER_TABLOID] = "na_ledger",
  };
  GtkPageSetup *setup = gtk_page_setup_new ();
  GtkPaperSize *size = gtk_paper_size_new (names[paper]);

  gtk_page_setup_set_paper_size_and_default_margins (setup, size);
  gtk_paper_size_free (size);
  return setup;
}

/* What the worker has, and what its pages are for. */
typedef struct {
  LapSheetJob    *job;
  LapSheetChoice  choice;
  char           *path;
} Problem;

static void
problem_free (gpointer data)
{
  Problem *problem = data;

  lap_sheet_job_free (problem->job);
  g_free (problem->path);
  g_free (problem);
}

static gpointer
work (gpointer problem, GCancellable *cancellable, LapWorkerTell tell, gpointer data, GError **error)
{
  return lap_sheet_job_pages (((Problem *) problem)->job);
}

static GtkPrintOperation *
operation_new (LapWindow *window, const LapSheetChoice *choice, LapPages *pages)
{
  GtkPrintOperation *operation = gtk_print_operation_new ();
  g_autoptr (GtkPageSetup) setup = page_setup (choice->pieces >= 0 ? (LapPaper) choice->pieces : choice->options.paper);
  Job *job = g_new0 (Job, 1);

  job->options = choice->options;
  job->pages = pages;
  job->pieces = choice->pieces >= 0 ? lap_pieces_new (job->pages, choice->pieces) : NULL;
  job->n = job->pieces != NULL ? lap_pieces_n (job->pieces) : lap_pages_n (job->pages);
  gtk_print_operation_set_n_pages (operation, job->n);
  gtk_print_operation_set_unit (operation, GTK_UNIT_MM);
  gtk_print_operation_set_use_full_page (operation, TRUE);
  gtk_print_operation_set_default_page_setup (operation, setup);
  gtk_print_operation_set_job_name (operation, lap_document_title (lap_window_document (window)));
  gtk_print_operation_set_embed_page_setup (operation, TRUE);
  gtk_print_operation_set_show_progress (operation, TRUE);
  g_signal_connect_data (operation, "draw-page", G_CALLBACK (draw_cb), job, job_free, 0);
  g_signal_connect (operation, "request-page-setup", G_CALLBACK (setup_cb), job);
  return operation;
}

/* GTK paints a page at a time, between other sources, and shows that itself. */
static void
done_cb (LapWindow *window, gpointer data, gpointer pages, gint64 began)
{
  Problem *problem = data;
  g_autoptr (GtkPrintOperation) operation = operation_new (window, &problem->choice, pages);
  g_autoptr (GError) error = NULL;

  if (problem->path != NULL)
    gtk_print_operation_set_export_filename (operation, problem->path);
  if (gtk_print_operation_run (operation, problem->path != NULL ? GTK_PRINT_OPERATION_ACTION_EXPORT
                                                                : GTK_PRINT_OPERATION_ACTION_PRINT_DIALOG,
                               GTK_WINDOW (window), &error) == GTK_PRINT_OPERATION_RESULT_ERROR)
    lap_window_tell_error (window, _("The sheet couldn’t be printed"), error->message);
}

static const LapErrandKind errand_kind = {
  work, done_cb, N_("The sheet couldn’t be printed"), problem_free, (GDestroyNotify) lap_pages_free,
};

void
lap_sheet_print_dialog (LapWindow *window, const LapSheet *sheet, const LapSheetChoice *choice, const char *path)
{
  g_autofree char *date = NULL;
  LapSheetOptions options = lap_sheet_choice_options (choice, &date);
  Problem *problem = g_new (Problem, 1);

  *problem = (Problem) { lap_sheet_job_new (lap_window_document (window), sheet, &options), *choice, g_strdup (path) };
  lap_errand_run (window, &errand_kind, problem, _(sheet->title));
}
