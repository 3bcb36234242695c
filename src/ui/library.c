/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The list shows the last index of the cache before anything is read. A worker makes the next index, a piece at a time
 * where many files are new, until it is whole; what hasn't changed keeps its object and so its row.
 */
#include "ui/library.h"

#include "ui/file-drop.h"
#include "ui/files.h"
#include "ui/glance.h"
#include "ui/later.h"
#include "ui/library-row.h"
#include "ui/recent.h"
#include "ui/settings.h"
#include "ui/tell.h"

#include <glib/gi18n-lib.h>

#define FOLDER_KEY "library-folder"
/* Files looked at before the list is shown again, and the cache written. */
#define PIECE 500

struct _LapLibrary {
  AdwApplicationWindow parent_instance;
  LapIndex            *index;
  GHashTable          *opened; /* path -> when, from ui/recent.h */
  GListStore          *entries;
  GtkFilterListModel  *filtered;
  GtkCustomFilter     *filter;
  char               **wanted; /* folded words of the search */
  GCancellable        *reading; /* NULL while nobody reads */
  gboolean             again;   /* to be refreshed when that is done */
  char                *cache;
  GMenuModel          *menu;
  GtkWidget           *menu_button, *title, *search, *stack, *list, *status, *nothing;
};

G_DEFINE_FINAL_TYPE (LapLibrary, lap_library, ADW_TYPE_APPLICATION_WINDOW)

static void refresh (LapLibrary *self);

static gboolean
matches (gpointer item, gpointer data)
{
  LapLibrary *self = data;

  return lap_index_entry_matches (item, (const char * const *) self->wanted);
}

/* Where nothing is listed it says why, and what to do. */
static void
show_state (LapLibrary *self)
{
  guint n = lap_index_n (self->index), shown = g_list_model_get_n_items (G_LIST_MODEL (self->filtered));
  g_autofree char *all = g_strdup_printf (ngettext ("%u file", "%u files", n), n);
  /* Translators: how many of the files that are there have been looked at. */
  g_autofree char *part = g_strdup_printf (_("Reading %1$u of %2$u…"), n, lap_index_n_there (self->index));
  g_autofree char *nothing = g_strdup_printf (_("Nothing called “%s”"),
                                              gtk_editable_get_text (GTK_EDITABLE (self->search)));
  const char *page = shown > 0 ? "list" : n > 0 ? "nothing" : self->reading != NULL ? "reading" : "empty";

  gtk_stack_set_visible_child_name (GTK_STACK (self->stack), page);
  gtk_label_set_text (GTK_LABEL (self->status), lap_index_is_whole (self->index) ? all : part);
  gtk_widget_set_visible (self->status, n > 0);
  adw_status_page_set_title (ADW_STATUS_PAGE (self->nothing), nothing);
  if (g_str_equal (page, "nothing")) /* not before: a large icon is drawn when the window is, though nobody sees it */
    adw_status_page_set_icon_name (ADW_STATUS_PAGE (self->nothing), "edit-find-symbolic");
}

static void
search_cb (LapLibrary *self)
{
  g_strfreev (self->wanted);
  self->wanted = lap_index_fold (gtk_editable_get_text (GTK_EDITABLE (self->search)));
  gtk_filter_changed (GTK_FILTER (self->filter), GTK_FILTER_CHANGE_DIFFERENT);
  show_state (self);
}

static gint64
when (LapLibrary *self, const LapIndexEntry *entry)
{
  return MAX (entry->written, (gint64) GPOINTER_TO_SIZE (g_hash_table_lookup (self->opened, entry->path)));
}

static int
latest_first (gconstpointer a, gconstpointer b, gpointer data)
{
  gint64 one = when (data, *(LapIndexEntry * const *) a), other = when (data, *(LapIndexEntry * const *) b);

  return one == other ? 0 : one > other ? -1 : 1;
}

static gboolean
is_same (LapLibrary *self, guint at, gpointer entry)
{
  g_autoptr (GObject) item = g_list_model_get_item (G_LIST_MODEL (self->entries), at);

  return item == entry;
}

/* Only what is different between the list and the index is replaced, so that the list stays where it was scrolled. */
static void
show_entries (LapLibrary *self)
{
  guint n = lap_index_n (self->index), was = g_list_model_get_n_items (G_LIST_MODEL (self->entries)), start = 0, end = 0;
  g_autoptr (GPtrArray) sorted = g_ptr_array_sized_new (n);

  for (guint i = 0; i < n; i++)
    g_ptr_array_add (sorted, lap_index_nth (self->index, i));
  g_ptr_array_sort_with_data (sorted, latest_first, self);
  while (start < MIN (n, was) && is_same (self, start, sorted->pdata[start]))
    start++;
  while (end < MIN (n, was) - start && is_same (self, was - 1 - end, sorted->pdata[n - 1 - end]))
    end++;
  if (start + end < MAX (n, was))
    g_list_store_splice (self->entries, start, was - start - end, sorted->pdata + start, n - start - end);
  show_state (self);
}

typedef struct {
  LapIndex *index;
  char    **also;
  char     *cache;
} Reading;

static void
reading_free (gpointer data)
{
  Reading *reading = data;

  lap_index_unref (reading->index);
  g_strfreev (reading->also);
  g_free (reading->cache);
  g_free (reading);
}

static void
read_in_worker (GTask *task, gpointer source, gpointer data, GCancellable *cancellable)
{
  Reading *reading = data;
  LapIndex *next = lap_index_refresh (reading->index, (const char * const *) reading->also, lap_glance, PIECE,
                                      cancellable);
  g_autoptr (GError) error = NULL;

  /* A cache that can't be written is only missed at the next start. */
  if (next != NULL && (lap_index_n_looked (next) > 0 || lap_index_n (next) != lap_index_n (reading->index)) &&
      !lap_index_keep (next, reading->cache, &error))
    g_message ("The list of sessions isn't kept: %s", error->message);
  g_task_return_pointer (task, next, (GDestroyNotify) lap_index_unref);
}

static void
read_cb (GObject *source, GAsyncResult *result, gpointer data)
{
  LapLibrary *self = LAP_LIBRARY (source);
  LapIndex *next = g_task_propagate_pointer (G_TASK (result), NULL);
  gboolean again = self->again;

  /* Another reading has begun since, or the window is closed. */
  if (g_task_get_cancellable (G_TASK (result)) != self->reading) {
    g_clear_pointer (&next, lap_index_unref);
    return;
  }
  g_clear_object (&self->reading);
  self->again = FALSE;
  if (next == NULL)
    return;
  lap_index_unref (self->index);
  self->index = next;
  if (again || !lap_index_is_whole (next))
    refresh (self);
  show_entries (self);
}

static void
refresh (LapLibrary *self)
{
  g_autoptr (GTask) task = NULL;
  Reading *reading;

  if (self->reading != NULL) {
    self->again = TRUE;
    return;
  }
  self->reading = g_cancellable_new ();
  reading = g_new (Reading, 1);
  *reading = (Reading) { lap_index_ref (self->index), (char **) g_hash_table_get_keys_as_array (self->opened, NULL),
                         g_strdup (self->cache) };
  for (guint i = 0; reading->also[i] != NULL; i++)
    reading->also[i] = g_strdup (reading->also[i]);
  task = g_task_new (self, self->reading, read_cb, NULL);
  g_task_set_task_data (task, reading, reading_free);
  g_task_run_in_thread (task, read_in_worker);
}

static void
forget_reading (LapLibrary *self)
{
  if (self->reading != NULL)
    g_cancellable_cancel (self->reading);
  g_clear_object (&self->reading);
  self->again = FALSE;
}

/* Where nothing was ever chosen it is the folder of documents, if the desktop names one. */
static char *
remembered_folder (void)
{
  g_autoptr (GVariant) kept = lap_settings_value (FOLDER_KEY, g_variant_new_string (""));
  const char *path = g_variant_get_string (kept, NULL);

  return g_strdup (*path != '\0' ? path : g_get_user_special_dir (G_USER_DIRECTORY_DOCUMENTS));
}

static void
begin (LapLibrary *self, const char *folder)
{
  g_autofree char *name = folder != NULL ? g_filename_display_basename (folder) : g_strdup (_("No folder chosen"));

  forget_reading (self);
  g_clear_pointer (&self->opened, g_hash_table_unref);
  g_clear_pointer (&self->index, lap_index_unref);
  self->opened = lap_recent_times ();
  self->index = lap_index_load (folder, self->cache);
  adw_window_title_set_subtitle (ADW_WINDOW_TITLE (self->title), name);
  refresh (self);
  show_entries (self);
}

static void
open_path (LapLibrary *self, const char *path)
{
  LapApplication *application = LAP_APPLICATION (gtk_window_get_application (GTK_WINDOW (self)));
  g_autoptr (GError) error = NULL;

  if (lap_application_open_path (application, path, &error) != NULL)
    return;
  if (!g_file_test (path, G_FILE_TEST_EXISTS)) {
    lap_recent_forget (path);
    lap_tell_error (GTK_WINDOW (self), _("That file isn’t there any more"),
                    _("It was moved or removed since the list was read. If it was moved, choose its folder, or take "
                      "“Other file”."));
    refresh (self);
  } else
    lap_tell_error (GTK_WINDOW (self), _("That file can’t be opened"), error->message);
}

static void
activate_cb (LapLibrary *self, guint position)
{
  g_autoptr (LapIndexEntry) entry = g_list_model_get_item (G_LIST_MODEL (self->filtered), position);

  if (entry != NULL)
    open_path (self, entry->path);
}

/* What is typed goes to the search from everywhere in the window, and so does the Enter after it. */
static void
started_cb (LapLibrary *self)
{
  gtk_text_grab_focus_without_selecting (GTK_TEXT (gtk_editable_get_delegate (GTK_EDITABLE (self->search))));
}

/* Enter in the search opens the first that is found, by what is typed now: the search itself waits for a pause. */
static void
enter_cb (LapLibrary *self)
{
  search_cb (self);
  activate_cb (self, 0);
}

/* Escape takes the search back. */
static void
stop_cb (LapLibrary *self)
{
  gtk_editable_set_text (GTK_EDITABLE (self->search), "");
}

/* Down in the search goes to the list. */
static gboolean
down_cb (GtkWidget *widget, GVariant *args, gpointer data)
{
  return gtk_widget_child_focus (LAP_LIBRARY (widget)->list, GTK_DIR_TAB_FORWARD);
}

static void
folder_chosen_cb (const char *path, gpointer data)
{
  g_autoptr (LapLibrary) self = data;

  if (path != NULL)
    lap_library_set_folder (self, path);
}

static void
folder_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  lap_files_folder (GTK_WINDOW (widget), _("The folder of your sessions"), folder_chosen_cb, g_object_ref (widget));
}

static void
find_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  gtk_widget_grab_focus (LAP_LIBRARY (widget)->search);
}

static void
demo_cb (LapLibrary *self)
{
  lap_application_open_demo (LAP_APPLICATION (gtk_window_get_application (GTK_WINDOW (self))));
}

static void
active_cb (LapLibrary *self)
{
  if (gtk_window_is_active (GTK_WINDOW (self)) && self->index != NULL && self->reading == NULL)
    refresh (self);
}

static void
setup_cb (GtkSignalListItemFactory *factory, GtkListItem *item, gpointer data)
{
  gtk_list_item_set_child (item, lap_library_row_new ());
}

static void
bind_cb (GtkSignalListItemFactory *factory, GtkListItem *item, gpointer data)
{
  lap_library_row_show (LAP_LIBRARY_ROW (gtk_list_item_get_child (item)), gtk_list_item_get_item (item),
                        lap_library_folder (data));
}

static void
lap_library_dispose (GObject *object)
{
  LapLibrary *self = LAP_LIBRARY (object);

  forget_reading (self);
  if (self->filter != NULL)
    gtk_custom_filter_set_filter_func (self->filter, NULL, NULL, NULL);
  g_clear_object (&self->filter);
  g_clear_object (&self->filtered);
  g_clear_object (&self->entries);
  G_OBJECT_CLASS (lap_library_parent_class)->dispose (object);
}

static void
lap_library_finalize (GObject *object)
{
  LapLibrary *self = LAP_LIBRARY (object);

  g_clear_pointer (&self->index, lap_index_unref);
  g_clear_pointer (&self->opened, g_hash_table_unref);
  g_strfreev (self->wanted);
  g_free (self->cache);
  G_OBJECT_CLASS (lap_library_parent_class)->finalize (object);
}

static void
lap_library_class_init (LapLibraryClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_library_dispose;
  G_OBJECT_CLASS (klass)->finalize = lap_library_finalize;
  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/library.ui");
  gtk_widget_class_bind_template_child (widget_class, LapLibrary, menu);
  gtk_widget_class_bind_template_child (widget_class, LapLibrary, menu_button);
  gtk_widget_class_bind_template_child (widget_class, LapLibrary, title);
  gtk_widget_class_bind_template_child (widget_class, LapLibrary, search);
  gtk_widget_class_bind_template_child (widget_class, LapLibrary, stack);
  gtk_widget_class_bind_template_child (widget_class, LapLibrary, list);
  gtk_widget_class_bind_template_child (widget_class, LapLibrary, status);
  gtk_widget_class_bind_template_child (widget_class, LapLibrary, nothing);
  gtk_widget_class_bind_template_callback (widget_class, search_cb);
  gtk_widget_class_bind_template_callback (widget_class, started_cb);
  gtk_widget_class_bind_template_callback (widget_class, enter_cb);
  gtk_widget_class_bind_template_callback (widget_class, stop_cb);
  gtk_widget_class_bind_template_callback (widget_class, activate_cb);
  gtk_widget_class_bind_template_callback (widget_class, demo_cb);
  gtk_widget_class_bind_template_callback (widget_class, active_cb);
  gtk_widget_class_install_action (widget_class, "library.folder", NULL, folder_action);
  gtk_widget_class_install_action (widget_class, "win.find", NULL, find_action);
  gtk_widget_class_add_binding (widget_class, GDK_KEY_Down, 0, down_cb, NULL);
}

static void
lap_library_init (LapLibrary *self)
{
  g_autoptr (GtkListItemFactory) factory = gtk_signal_list_item_factory_new ();
  g_autoptr (GtkSelectionModel) selection = NULL;
  g_autofree char *folder = remembered_folder ();

  gtk_widget_init_template (GTK_WIDGET (self));
  lap_later_menu (GTK_MENU_BUTTON (self->menu_button), self->menu);
  self->cache = g_build_filename (g_get_user_cache_dir (), "lapwing", "sessions.index", NULL);
  self->wanted = g_new0 (char *, 1);
  self->entries = g_list_store_new (LAP_TYPE_INDEX_ENTRY);
  self->filter = gtk_custom_filter_new (matches, self, NULL);
  self->filtered = gtk_filter_list_model_new (G_LIST_MODEL (g_object_ref (self->entries)),
                                              GTK_FILTER (g_object_ref (self->filter)));
  g_signal_connect (factory, "setup", G_CALLBACK (setup_cb), self);
  g_signal_connect (factory, "bind", G_CALLBACK (bind_cb), self);
  selection = GTK_SELECTION_MODEL (gtk_no_selection_new (G_LIST_MODEL (g_object_ref (self->filtered))));
  gtk_list_view_set_factory (GTK_LIST_VIEW (self->list), factory);
  gtk_list_view_set_model (GTK_LIST_VIEW (self->list), selection);
  gtk_search_entry_set_key_capture_widget (GTK_SEARCH_ENTRY (self->search), GTK_WIDGET (self));
  gtk_widget_grab_focus (self->search);
  lap_file_drop_install (GTK_WINDOW (self));
  begin (self, folder);
}

GtkWindow *
lap_library_new (LapApplication *application)
{
  return g_object_new (LAP_TYPE_LIBRARY, "application", application, NULL);
}

const char *
lap_library_folder (LapLibrary *self)
{
  return lap_index_folder (self->index);
}

void
lap_library_set_folder (LapLibrary *self, const char *path)
{
  lap_settings_keep (FOLDER_KEY, g_variant_new_string (path));
  begin (self, path);
}

GListModel *
lap_library_list (LapLibrary *self)
{
  return G_LIST_MODEL (self->filtered);
}

gboolean
lap_library_is_busy (LapLibrary *self)
{
  return self->reading != NULL;
}
