/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A sheet is laid out, painted and written by a worker.
 */
#include "ui/export.h"

#include "store/save.h"
#include "ui/errand.h"
#include "ui/field-row.h"
#include "ui/files.h"
#include "ui/sheet-job.h"

#include <glib/gi18n-lib.h>

struct _LapExport {
  AdwMessageDialog parent_instance;
  LapWindow *window;
  GtkWidget *sheet, *paper, *landscape;
};

G_DEFINE_FINAL_TYPE (LapExport, lap_export, ADW_TYPE_MESSAGE_DIALOG)

/* What the file chooser answers to. */
typedef struct {
  LapWindow      *window;
  const LapSheet *sheet;
  LapSheetOptions options;
} Question;

/* What the worker has. */
typedef struct {
  LapSheetJob *job;
  LapInk       ink;
  int          pieces;
  char        *path;
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
work (gpointer data, GCancellable *cancellable, LapWorkerTell tell, gpointer tell_data, GError **error)
{
  Problem *problem = data;
  const LapSheetWatch watch = { cancellable, tell, tell_data };
  g_autoptr (LapPages) pages = lap_sheet_job_pages (problem->job);
  g_autoptr (GBytes) pdf = problem->pieces >= 0 ? lap_pages_tile (pages, problem->ink, problem->pieces, &watch, error)
                                                : lap_pages_print (pages, problem->ink, &watch, error);

  return pdf != NULL && lap_save_bytes (problem->path, pdf, NULL, NULL, error) ? problem : NULL;
}

static void
done_cb (LapWindow *window, gpointer problem, gpointer answer, gint64 began)
{
  lap_errand_tell_wrote (window, ((Problem *) problem)->path, began);
}

static const LapErrandKind errand_kind = { work, done_cb, N_("The sheet couldn’t be made"), problem_free, NULL };

void
lap_export_to (LapWindow *window, const LapSheet *sheet, const LapSheetOptions *options, int pieces, const char *path)
{
  Problem *problem = g_new (Problem, 1);

  *problem = (Problem) { lap_sheet_job_new (lap_window_document (window), sheet, options), options->ink, pieces,
                         g_strdup (path) };
  lap_errand_run (window, &errand_kind, problem, _(sheet->title));
}

static void
where_cb (const char *path, gpointer data)
{
  Question *question = data;

  if (path != NULL)
    lap_export_to (question->window, question->sheet, &question->options, -1, path);
  g_object_unref (question->window);
  g_free (question);
}

static void
lap_export_response (AdwMessageDialog *dialog, const char *response)
{
  LapExport *self = LAP_EXPORT (dialog);
  const LapSheet *sheet = lap_sheets_nth (adw_combo_row_get_selected (ADW_COMBO_ROW (self->sheet)));
  g_autofree char *name = NULL;
  Question *question;
  LapSheetOptions options = {
    .paper = adw_combo_row_get_selected (ADW_COMBO_ROW (self->paper)),
    .landscape = gtk_switch_get_active (GTK_SWITCH (self->landscape)),
  };

  if (!g_str_equal (response, "export"))
    return;
  /* Translators: the offered name of a file: the session's title and the sheet's. */
  name = g_strdup_printf (_("%1$s - %2$s"), lap_document_title (lap_window_document (self->window)), _(sheet->title));
  question = g_new (Question, 1);
  *question = (Question) { g_object_ref (self->window), sheet, options };
  lap_files_save (GTK_WINDOW (self->window), _("Export PDF"), name, ".pdf", where_cb, question);
}

static void
lap_export_dispose (GObject *object)
{
  g_clear_object (&LAP_EXPORT (object)->window);
  G_OBJECT_CLASS (lap_export_parent_class)->dispose (object);
}

static void
lap_export_class_init (LapExportClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_export_dispose;
  ADW_MESSAGE_DIALOG_CLASS (klass)->response = lap_export_response;
  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/export.ui");
  gtk_widget_class_bind_template_child (widget_class, LapExport, sheet);
  gtk_widget_class_bind_template_child (widget_class, LapExport, paper);
  gtk_widget_class_bind_template_child (widget_class, LapExport, landscape);
}

static void
fill_rows (LapExport *self)
{
  g_autoptr (GtkStringList) sheets = gtk_string_list_new (NULL);
  g_autoptr (GtkStringList) papers = gtk_string_list_new (NULL);

  for (guint i = 0; i < lap_sheets_n (); i++)
    gtk_string_list_append (sheets, _(lap_sheets_nth (i)->title));
  for (guint i = 0; i < lap_papers.n; i++)
    gtk_string_list_append (papers, lap_words_label (&lap_papers, i));
  adw_combo_row_set_model (ADW_COMBO_ROW (self->sheet), G_LIST_MODEL (sheets));
  adw_combo_row_set_model (ADW_COMBO_ROW (self->paper), G_LIST_MODEL (papers));
}

static void
lap_export_init (LapExport *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  lap_field_choice_tip (self->sheet);
  fill_rows (self);
}

GtkWindow *
lap_export_new (LapWindow *window)
{
  LapExport *self = g_object_new (LAP_TYPE_EXPORT, "transient-for", window, NULL);

  self->window = g_object_ref (window);
  return GTK_WINDOW (self);
}
