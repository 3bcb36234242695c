/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The dialog that takes classes from a spreadsheet, by what people see and press.
 */
#include "ui/windows.h"

#include "ui/week-import.h"
#include "ui/week-plan.h"

#include <glib/gstdio.h>
#include <string.h>

typedef struct {
  LapDocument *document;
  GtkWindow   *dialog;
  GtkWidget   *told, *more, *list, *import;
} Scene;

static GtkWidget *
field (GtkWindow *dialog, GType type, const char *id)
{
  GtkWidget *widget = windows_find (GTK_WIDGET (dialog), type, id);

  g_assert_nonnull (widget);
  return widget;
}

static Scene
begin (void)
{
  Scene s = { week_document () };

  s.dialog = lap_week_import_new (s.document, NULL);
  s.told = field (s.dialog, GTK_TYPE_LABEL, "told");
  s.more = field (s.dialog, GTK_TYPE_LABEL, "more");
  s.list = field (s.dialog, GTK_TYPE_LIST_VIEW, "list");
  s.import = field (s.dialog, GTK_TYPE_BUTTON, "import");
  gtk_window_present (s.dialog);
  return s;
}

static void
paste (Scene *s, const char *text)
{
  GtkWidget *view = field (s->dialog, GTK_TYPE_TEXT_VIEW, "pasted");

  gtk_text_buffer_set_text (gtk_text_view_get_buffer (GTK_TEXT_VIEW (view)), text, -1);
}

static const char *
line (Scene *s, guint n)
{
  g_autoptr (GtkStringObject) item = NULL;
  GListModel *model = G_LIST_MODEL (gtk_list_view_get_model (GTK_LIST_VIEW (s->list)));

  item = g_list_model_get_item (model, n);
  return item != NULL ? gtk_string_object_get_string (item) : NULL;
}

#define assert_says(label, wanted) g_assert_cmpstr (gtk_label_get_text (GTK_LABEL (label)), ==, wanted)

/* What can't be read is named, and nothing can be imported; then it is put right, imported and taken back. */
static void
test_paste (void)
{
  Scene s = begin ();
  LapWeek *week = lap_document_week (s.document);
  guint before = lap_list_n (week->classes), rooms = lap_list_n (week->rooms);

  g_assert_false (gtk_widget_get_sensitive (s.import));
  paste (&s, "Title\tDay\tStart\tMinutes\tRoom\tColour\nSpin\tMon\thalf six\t45\tCellar\tred\n");
  g_assert_false (gtk_widget_get_sensitive (s.import));
  assert_says (s.told, "1 thing can’t be read. Nothing is imported until it can.");
  assert_says (s.more, "Columns that mean nothing here: Colour");
  g_assert_cmpstr (line (&s, 0), ==, "Line 2: “half six” isn’t a time such as 18:30");
  paste (&s, "Title\tDay\tStart\tMinutes\tRoom\nSpin\tMon, Wed\t17:30\t45\tCellar\n");
  assert_says (s.told, "2 new classes");
  assert_says (s.more, "New rooms: Cellar");
  g_assert_cmpstr (line (&s, 1), ==, "Wednesday 17:30–18:15 · Spin · Cellar");
  g_assert_cmpuint (lap_list_n (week->classes), ==, before);
  g_assert_true (gtk_widget_get_sensitive (s.import));
  g_signal_emit_by_name (s.import, "clicked");
  g_assert_cmpuint (lap_list_n (week->classes), ==, before + 2);
  g_assert_cmpuint (lap_list_n (week->rooms), ==, rooms + 1);
  lap_document_undo (s.document);
  g_assert_cmpuint (lap_list_n (week->classes), ==, before);
  g_assert_cmpuint (lap_list_n (week->rooms), ==, rooms);
  g_object_unref (s.document);
}

/* A file, and one that isn't there; then pasting takes its place. */
static void
test_file (void)
{
  g_autofree char *folder = g_dir_make_tmp ("lapwing-XXXXXX", NULL), *path = g_build_filename (folder, "a & b.csv", NULL);
  Scene s = begin ();
  GtkWidget *from = field (s.dialog, ADW_TYPE_ACTION_ROW, "from");

  lap_week_import_open (LAP_WEEK_IMPORT (s.dialog), path);
  g_assert_nonnull (strstr (gtk_label_get_text (GTK_LABEL (s.told)), "a & b.csv"));
  g_assert_false (gtk_widget_get_sensitive (s.import));
  g_assert_true (g_file_set_contents (path, "kind;minutes\r\nSpin;45\r\n", -1, NULL));
  lap_week_import_open (LAP_WEEK_IMPORT (s.dialog), path);
  assert_says (s.told, "1 new class");
  g_assert_cmpstr (adw_preferences_row_get_title (ADW_PREFERENCES_ROW (from)), ==, "a & b.csv");
  g_assert_cmpstr (line (&s, 0), ==, "No day yet · 45 min · Spin");
  paste (&s, "colour\nred");
  assert_says (s.told, "line 1: no column is called “title” or “kind”");
  g_assert_null (line (&s, 0));
  g_assert_false (gtk_widget_get_sensitive (s.import));
  g_assert_true (windows_press (s.list, "Escape"));
  g_object_unref (s.document);
  g_assert_cmpint (g_remove (path), ==, 0);
  g_rmdir (folder);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/week-import/paste", test_paste);
  g_test_add_func ("/ui/week-import/file", test_file);
  return g_test_run ();
}
