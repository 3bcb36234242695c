/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A sheet is painted here and now, within a few frames; the file is written by a worker. A worker couldn't paint:
 * the timeline stands on the session, which may be edited meanwhile.
 */
#include "ui/export.h"

#include "store/save.h"
#include "ui/document-sheets.h"
#include "ui/files.h"
#include "ui/notify.h"

#include <glib/gi18n-lib.h>

struct _LapExport {
  AdwMessageDialog parent_instance;
  LapWindow *window;
  GtkWidget *sheet, *paper, *landscape;
};

G_DEFINE_FINAL_TYPE (LapExport, lap_export, ADW_TYPE_MESSAGE_DIALOG)

typedef struct {
  LapWindow      *window;
  const LapSheet *sheet;
  LapSheetOptions options;
  char           *path;
  gint64          began;
} Export;

static Export *
export_new (LapWindow *window, const LapSheet *sheet, const LapSheetOptions *options, const char *path)
{
  Export *export = g_new (Export, 1);

  *export = (Export) { g_object_ref (window), sheet, *options, g_strdup (path), g_get_monotonic_time () };
  return export;
}

static void
export_free (Export *export)
{
  g_object_unref (export->window);
  g_free (export->path);
  g_free (export);
}

static void
written_cb (GObject *source, GAsyncResult *result, gpointer data)
{
  Export *export = data;
  g_autoptr (GError) error = NULL;

  if (lap_save_bytes_finish (result, NULL, &error)) {
    g_autofree char *name = g_path_get_basename (export->path);
    g_autofree char *text = g_strdup_printf (_("Exported as %s"), name);

    lap_notify_ended (GTK_WINDOW (export->window), export->began, text,
                      lap_document_title (lap_window_document (export->window)), export->path);
    lap_window_tell (export->window, text, FALSE);
  } else
    lap_window_tell_error (export->window, _("The sheet couldn't be written"), error->message);
  export_free (export);
}

void
lap_export_to (LapWindow *window, const LapSheet *sheet, const LapSheetOptions *options, int pieces, const char *path)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (LapPages) pages = lap_document_pages (lap_window_document (window), sheet, options);
  g_autoptr (GBytes) pdf = pieces >= 0 ? lap_pages_tile (pages, options->ink, pieces, &error)
                                       : lap_pages_print (pages, options->ink, &error);

  if (pdf == NULL)
    lap_window_tell_error (window, _("The sheet couldn't be made"), error->message);
  else
    lap_save_bytes_async (path, pdf, NULL, written_cb, export_new (window, sheet, options, path));
}

static void
where_cb (const char *path, gpointer data)
{
  Export *export = data;

  if (path != NULL)
    lap_export_to (export->window, export->sheet, &export->options, -1, path);
  export_free (export);
}

static void
lap_export_response (AdwMessageDialog *dialog, const char *response)
{
  LapExport *self = LAP_EXPORT (dialog);
  const LapSheet *sheet = lap_sheets_nth (adw_combo_row_get_selected (ADW_COMBO_ROW (self->sheet)));
  g_autofree char *name = NULL;
  LapSheetOptions options = {
    .paper = adw_combo_row_get_selected (ADW_COMBO_ROW (self->paper)),
    .landscape = gtk_switch_get_active (GTK_SWITCH (self->landscape)),
  };

  if (!g_str_equal (response, "export"))
    return;
  /* Translators: the offered name of a file: the session's title and the sheet's. */
  name = g_strdup_printf (_("%1$s - %2$s"), lap_document_title (lap_window_document (self->window)), _(sheet->title));
  lap_files_save (GTK_WINDOW (self->window), _("Export PDF"), name, ".pdf", where_cb,
                  export_new (self->window, sheet, &options, NULL));
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
  fill_rows (self);
}

GtkWindow *
lap_export_new (LapWindow *window)
{
  LapExport *self = g_object_new (LAP_TYPE_EXPORT, "transient-for", window, NULL);

  self->window = g_object_ref (window);
  return GTK_WINDOW (self);
}
