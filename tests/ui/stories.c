/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/stories.h"

#include "store/documents.h"

static GtkWindow *
find_window (GType type)
{
  GListModel *windows = gtk_window_get_toplevels ();

  for (guint i = g_list_model_get_n_items (windows); i-- > 0;) {
    g_autoptr (GtkWindow) window = g_list_model_get_item (windows, i);

    if (g_type_is_a (G_OBJECT_TYPE (window), type) && gtk_widget_get_mapped (GTK_WIDGET (window)))
      return window;
  }
  return NULL;
}

static gboolean
is_there (gpointer type)
{
  return find_window (GPOINTER_TO_SIZE (type)) != NULL;
}

static gboolean
is_not_there (gpointer type)
{
  return !is_there (type);
}

GtkWindow *
stories_dialog (GType type)
{
  GtkWindow *dialog;

  hands_until (is_there, GSIZE_TO_POINTER (type));
  dialog = find_window (type);
  hands_on (dialog);
  return dialog;
}

void
stories_away (LapWindow *window, GType type)
{
  hands_until (is_not_there, GSIZE_TO_POINTER (type));
  if (window != NULL)
    hands_on (GTK_WINDOW (window));
}

static LapWindow *
find_other (LapWindow *first)
{
  GList *all = gtk_application_get_windows (GTK_APPLICATION (g_application_get_default ()));

  for (GList *l = all; l != NULL; l = l->next)
    if (LAP_IS_WINDOW (l->data) && l->data != (gpointer) first)
      return l->data;
  return NULL;
}

static gboolean
has_other (gpointer first)
{
  LapWindow *other = find_other (first);

  return other != NULL && gtk_widget_get_mapped (GTK_WIDGET (other));
}

LapWindow *
stories_other (LapWindow *first)
{
  LapWindow *other;

  hands_until (has_other, first);
  other = find_other (first);
  windows_settle (other);
  hands_on (GTK_WINDOW (other));
  return other;
}

guint
stories_n_windows (void)
{
  guint n = 0;

  for (GList *l = gtk_application_get_windows (GTK_APPLICATION (g_application_get_default ())); l != NULL; l = l->next)
    n += LAP_IS_WINDOW (l->data);
  return n;
}

const char *
stories_title (LapWindow *window)
{
  return lap_document_title (lap_window_document (window));
}

void
stories_choose (LapWindow *window, const char *label)
{
  GtkWidget *button = windows_find (GTK_WIDGET (window), GTK_TYPE_MENU_BUTTON, "menu_button"), *popover;

  hands_click_on (button);
  popover = GTK_WIDGET (gtk_menu_button_get_popover (GTK_MENU_BUTTON (button)));
  hands_until (rows_is_mapped, popover);
  rows_click_text (popover, label);
}

void
stories_tab_to (GtkWidget *widget)
{
  hands_press_until ("Tab", rows_has_focus, widget);
}

void
stories_type_into (GtkWindow *dialog, GType type, const char *id, const char *text)
{
  stories_tab_to (windows_find (GTK_WIDGET (dialog), type, id));
  hands_type (text);
}

void
stories_type_path (const char *path)
{
  hands_press ("<Control>a");
  hands_type (path);
  hands_press ("Return");
}

void
stories_put_plan (const char *path, const char *title)
{
  g_autoptr (LapDocument) plan = plan_document ();
  g_autoptr (GBytes) bytes = NULL;

  if (!g_str_equal (lap_document_title (plan), title))
    plan_rename (plan, title);
  bytes = lap_document_bytes (plan);
  g_assert_true (g_file_set_contents (path, g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes), NULL));
}

LapWindow *
stories_changed_plan (const char *path)
{
  LapWindow *window;

  stories_put_plan (path, "Small");
  window = windows_open (path);
  hands_on (GTK_WINDOW (window));
  stories_tab_to (GTK_WIDGET (windows_blocks (window)));
  hands_press ("Home");
  hands_press ("plus");
  g_assert_true (lap_document_is_modified (lap_window_document (window)));
  return window;
}

typedef struct {
  LapDocument     *document;
  LapDocumentState state;
} Wanted;

static gboolean
is_in_state (gpointer data)
{
  const Wanted *wanted = data;

  return lap_document_state (wanted->document) == wanted->state;
}

void
stories_until_state (LapWindow *window, LapDocumentState state)
{
  Wanted wanted = { lap_window_document (window), state };

  hands_until (is_in_state, &wanted);
}

char *
stories_saved_title (const char *path)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (LapDocument) saved = lap_document_read (path, &error);

  g_assert_no_error (error);
  return g_strdup (lap_document_title (saved));
}
