/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/week-import.h"

#include "base/customs.h"
#include "store/class-table.h"
#include "store/read-file.h"
#include "ui/files.h"

#include <glib/gi18n-lib.h>
#include <string.h>

struct _LapWeekImport {
  AdwWindow      parent_instance;
  LapDocument   *document;
  GBytes        *bytes;    /* of the file, or NULL where cells are pasted */
  char          *path;     /* of the file */
  LapClassTable *table;    /* NULL where there is nothing that can be read */
  GtkStringList *lines;    /* what the list shows */
  GtkWidget     *from, *pasted, *told, *more, *card, *list, *import;
};

G_DEFINE_FINAL_TYPE (LapWeekImport, lap_week_import, ADW_TYPE_WINDOW)

/* What each row becomes */

static const char *
title_of (gpointer thing)
{
  return thing == NULL ? NULL : LAP_IS_ROOM (thing) ? lap_room_title (thing) : lap_coach_title (thing);
}

static void
append_part (GString *line, const char *text)
{
  if (text != NULL && *text != '\0')
    g_string_append_printf (line, "%s%s", line->len > 0 ? " · " : "", text);
}

/* "Monday 18:30–19:15 · Early forty · Loft · Ana Brook". */
static char *
row_line (const LapWeek *week, const LapTableRow *row)
{
  const LapClass *c = row->c;
  GString *line = g_string_new (NULL);
  g_autofree char *minutes = g_strdup_printf (_("%d min"), c->minutes);

  if (c->day >= 0) {
    g_autofree char *start = lap_time_of_day_text (c->start), *end = lap_time_of_day_text (lap_class_end (c));

    g_string_append_printf (line, _("%1$s %2$s–%3$s"), lap_words_label (&lap_days, c->day), start, end);
  } else {
    g_string_append (line, _("No day yet"));
    append_part (line, minutes);
  }
  append_part (line, lap_class_title (c));
  append_part (line, title_of (lap_week_room (week, c->room)));
  append_part (line, title_of (lap_week_coach (week, c->coach)));
  return g_string_free (line, FALSE);
}

static void
show_lines (LapWeekImport *self)
{
  g_autoptr (GPtrArray) lines = g_ptr_array_new_with_free_func (g_free);
  const LapClassTable *table = self->table;

  for (guint i = 0; table != NULL && i < table->faults->len; i++)
    g_ptr_array_add (lines, lap_table_fault_told (&g_array_index (table->faults, LapTableFault, i)));
  for (guint i = 0; table != NULL && table->faults->len == 0 && i < table->rows->len; i++)
    g_ptr_array_add (lines, row_line (table->week, &g_array_index (table->rows, LapTableRow, i)));
  gtk_widget_set_visible (self->card, lines->len > 0);
  g_ptr_array_add (lines, NULL);
  gtk_string_list_splice (self->lines, 0, g_list_model_get_n_items (G_LIST_MODEL (self->lines)),
                          (const char * const *) lines->pdata);
}

/* What it comes to */

/* "45 new, 3 changed". */
static char *
count_rows (const LapClassTable *table)
{
  guint added = 0, all = table->rows->len;
  g_autofree char *news = NULL, *rest = NULL;

  for (guint i = 0; i < all; i++)
    added += g_array_index (table->rows, LapTableRow, i).added;
  news = g_strdup_printf (ngettext ("%u new class", "%u new classes", added), added);
  if (added == all)
    return g_steal_pointer (&news);
  rest = g_strdup_printf (ngettext ("%u that is there already", "%u that are there already", all - added), all - added);
  return added > 0 ? g_strdup_printf (_("%1$s, and %2$s"), news, rest) : g_steal_pointer (&rest);
}

static char *
count_faults (const LapClassTable *table)
{
  guint n = table->faults->len;

  return g_strdup_printf (ngettext ("%u thing can’t be read. Nothing is imported until it can.",
                                    "%u things can’t be read. Nothing is imported until they can.", n), n);
}

static void
append_line (GString *text, const char *format, const char *what)
{
  if (text->len > 0)
    g_string_append_c (text, '\n');
  g_string_append_printf (text, format, what);
}

/* "New rooms: Loft and Yard": rooms or coaches that the week doesn't have. */
static void
append_new (GString *text, LapList *now, LapList *then)
{
  g_autoptr (GPtrArray) names = g_ptr_array_new ();
  g_autofree char *joined = NULL;

  for (guint i = lap_list_n (now); i < lap_list_n (then); i++)
    g_ptr_array_add (names, (gpointer) title_of (lap_list_nth (then, i)));
  if (names->len == 0)
    return;
  g_ptr_array_add (names, NULL);
  joined = lap_join ((const char * const *) names->pdata);
  append_line (text, LAP_IS_ROOM (lap_list_nth (then, 0)) ? _("New rooms: %s") : _("New coaches: %s"), joined);
}

static char *
tell_more (LapWeekImport *self)
{
  const LapClassTable *table = self->table;
  LapWeek *week = lap_document_week (self->document);
  GString *text = g_string_new (NULL);

  if (table->faults->len == 0) {
    append_new (text, week->rooms, table->week->rooms);
    append_new (text, week->coaches, table->week->coaches);
  }
  if (table->unknown[0] != NULL) {
    g_autofree char *joined = lap_join ((const char * const *) table->unknown);

    append_line (text, _("Columns that mean nothing here: %s"), joined);
  }
  if (table->guessed)
    append_line (text, "%s", _("The file isn’t in UTF-8: look whether letters with accents are right."));
  return g_string_free (text, FALSE);
}

static char *
pasted_text (LapWeekImport *self)
{
  GtkTextBuffer *buffer = gtk_text_view_get_buffer (GTK_TEXT_VIEW (self->pasted));
  GtkTextIter start, end;

  gtk_text_buffer_get_bounds (buffer, &start, &end);
  return gtk_text_buffer_get_text (buffer, &start, &end, FALSE);
}

static void
read_again (LapWeekImport *self)
{
  g_autoptr (GError) error = NULL;
  g_autofree char *text = pasted_text (self), *told = NULL, *more = NULL;
  gboolean empty = self->bytes == NULL && *g_strchug (text) == '\0';
  g_autoptr (GBytes) bytes = self->bytes != NULL ? g_bytes_ref (self->bytes) : NULL;
  const char *told_error = NULL;

  if (bytes == NULL && !empty)
    bytes = g_bytes_new (text, strlen (text));
  g_clear_pointer (&self->table, lap_class_table_free);
  if (bytes != NULL)
    self->table = lap_class_table_read (bytes, lap_document_week (self->document), self->path, &error);
  if (self->table != NULL) {
    told = self->table->faults->len > 0 ? count_faults (self->table) : count_rows (self->table);
    more = tell_more (self);
  }
  told_error = error != NULL ? error->message : "";
  gtk_label_set_text (GTK_LABEL (self->told), told != NULL ? told : told_error);
  gtk_label_set_text (GTK_LABEL (self->more), more != NULL ? more : "");
  gtk_widget_set_visible (self->told, !empty);
  gtk_widget_set_visible (self->more, more != NULL && *more != '\0');
  gtk_widget_set_sensitive (self->import, self->table != NULL && self->table->faults->len == 0 &&
                            self->table->rows->len > 0);
  show_lines (self);
}

/* Where it comes from */

static void
set_file (LapWeekImport *self, const char *path, GBytes *bytes)
{
  g_autofree char *name = path != NULL ? g_path_get_basename (path) : NULL;

  g_clear_pointer (&self->bytes, g_bytes_unref);
  g_free (self->path);
  self->path = g_strdup (path);
  self->bytes = bytes != NULL ? g_bytes_ref (bytes) : NULL;
  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (self->from), name != NULL ? name : _("A CSV file"));
}

static void
pasted_cb (LapWeekImport *self)
{
  set_file (self, NULL, NULL);
  read_again (self);
}

void
lap_week_import_open (LapWeekImport *self, const char *path)
{
  GtkTextBuffer *buffer = gtk_text_view_get_buffer (GTK_TEXT_VIEW (self->pasted));
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) bytes = lap_read_file (path, NULL, &error);

  gtk_text_buffer_set_text (buffer, "", -1);
  set_file (self, path, bytes);
  read_again (self);
  if (bytes == NULL) {
    gtk_label_set_text (GTK_LABEL (self->told), error->message);
    gtk_widget_set_visible (self->told, TRUE);
  }
}

static void
chosen_cb (const char *path, gpointer data)
{
  g_autoptr (LapWeekImport) self = data;

  if (path != NULL)
    lap_week_import_open (self, path);
}

static void
choose_cb (LapWeekImport *self)
{
  static const char *const patterns[] = { "*.csv", "*.tsv", "*.txt", NULL };

  lap_files_choose (GTK_WINDOW (self), _("Open a spreadsheet"), _("Tables (CSV)"), patterns,
                    lap_document_path (self->document), chosen_cb, g_object_ref (self));
}

static void
import_cb (LapWeekImport *self)
{
  g_autofree char *told = count_rows (self->table);
  LapEdits *edits = lap_class_table_edits (self->table, lap_document_week (self->document));

  if (lap_edits_n (edits) == 0) {
    lap_edits_free (edits);
    lap_document_tell (self->document, _("All of it is there already"));
  } else if (lap_document_apply (self->document, edits)) {
    lap_document_tell (self->document, told);
  }
  gtk_window_close (GTK_WINDOW (self));
}

static gboolean
escape_cb (GtkWidget *widget, GVariant *args, gpointer data)
{
  gtk_window_close (GTK_WINDOW (widget));
  return TRUE;
}

/* Making */

static void
setup_cb (GtkSignalListItemFactory *factory, GtkListItem *item)
{
  GtkWidget *label = gtk_label_new (NULL);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_wrap_mode (GTK_LABEL (label), PANGO_WRAP_WORD_CHAR);
  gtk_widget_add_css_class (label, "table-line");
  gtk_list_item_set_child (item, label);
  gtk_list_item_set_activatable (item, FALSE);
}

static void
bind_cb (GtkSignalListItemFactory *factory, GtkListItem *item)
{
  GtkStringObject *line = gtk_list_item_get_item (item);

  gtk_label_set_text (GTK_LABEL (gtk_list_item_get_child (item)), gtk_string_object_get_string (line));
}

static void
lap_week_import_dispose (GObject *object)
{
  LapWeekImport *self = LAP_WEEK_IMPORT (object);

  g_clear_object (&self->document);
  g_clear_pointer (&self->bytes, g_bytes_unref);
  g_clear_pointer (&self->path, g_free);
  g_clear_pointer (&self->table, lap_class_table_free);
  G_OBJECT_CLASS (lap_week_import_parent_class)->dispose (object);
}

static void
lap_week_import_class_init (LapWeekImportClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_week_import_dispose;
  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/week-import.ui");
  gtk_widget_class_bind_template_child (widget_class, LapWeekImport, from);
  gtk_widget_class_bind_template_child (widget_class, LapWeekImport, pasted);
  gtk_widget_class_bind_template_child (widget_class, LapWeekImport, told);
  gtk_widget_class_bind_template_child (widget_class, LapWeekImport, more);
  gtk_widget_class_bind_template_child (widget_class, LapWeekImport, card);
  gtk_widget_class_bind_template_child (widget_class, LapWeekImport, list);
  gtk_widget_class_bind_template_child (widget_class, LapWeekImport, import);
  gtk_widget_class_bind_template_callback (widget_class, choose_cb);
  gtk_widget_class_bind_template_callback (widget_class, import_cb);
  gtk_widget_class_add_binding (widget_class, GDK_KEY_Escape, 0, escape_cb, NULL);
}

static void
lap_week_import_init (LapWeekImport *self)
{
  GtkListItemFactory *factory = gtk_signal_list_item_factory_new ();

  gtk_widget_init_template (GTK_WIDGET (self));
  self->lines = gtk_string_list_new (NULL);
  g_signal_connect (factory, "setup", G_CALLBACK (setup_cb), NULL);
  g_signal_connect (factory, "bind", G_CALLBACK (bind_cb), NULL);
  gtk_list_view_set_factory (GTK_LIST_VIEW (self->list), factory);
  g_object_unref (factory);
  gtk_list_view_set_model (GTK_LIST_VIEW (self->list),
                           GTK_SELECTION_MODEL (gtk_no_selection_new (G_LIST_MODEL (self->lines))));
  g_object_unref (gtk_list_view_get_model (GTK_LIST_VIEW (self->list)));
  g_signal_connect_object (gtk_text_view_get_buffer (GTK_TEXT_VIEW (self->pasted)), "changed", G_CALLBACK (pasted_cb),
                           self, G_CONNECT_SWAPPED);
}

GtkWindow *
lap_week_import_new (LapDocument *document, GtkWindow *over)
{
  LapWeekImport *self = g_object_new (LAP_TYPE_WEEK_IMPORT, "transient-for", over, NULL);

  self->document = g_object_ref (document);
  read_again (self);
  return GTK_WINDOW (self);
}
