/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/application.h"

#include "lapwing-ui.h"

#include "store/drafts.h"
#include "store/read-file.h"
#include "ui/demo.h"
#include "ui/files.h"
#include "ui/help.h"
#include "ui/library.h"
#include "ui/new.h"
#include "ui/notify.h"
#include "ui/number.h"
#include "ui/opening.h"
#include "ui/palette.h"
#include "ui/preferences.h"
#include "ui/recent.h"
#include "ui/session-window.h"
#include "ui/shortcuts.h"
#include "ui/tell.h"
#include "ui/week-import.h"
#include "ui/week-window.h"

#include <glib/gi18n-lib.h>

struct _LapApplication {
  AdwApplication parent_instance;
  LapDrafts     *drafts; /* NULL where none can be kept */
};

G_DEFINE_FINAL_TYPE (LapApplication, lap_application, ADW_TYPE_APPLICATION)

/* Files that can't be opened. */
#define MOST_TOLD 5
/* ms after which a window says that a file is being read: before it, somebody would only see it flash. */
#define PATIENCE  200

static GtkWindow *
library_of (LapApplication *self)
{
  for (GList *l = gtk_application_get_windows (GTK_APPLICATION (self)); l != NULL; l = l->next)
    if (LAP_IS_LIBRARY (l->data))
      return l->data;
  return NULL;
}

GtkWindow *
lap_application_show_library (LapApplication *self)
{
  GtkWindow *window = library_of (self);

  if (window == NULL)
    window = lap_library_new (self);
  gtk_window_present (window);
  return window;
}

/* The list has done what it is there for when a document is on show. */
static void
close_library (LapApplication *self)
{
  GtkWindow *library = library_of (self);

  if (library != NULL)
    gtk_window_close (library);
}

static GtkWindow *
show_document (LapApplication *self, LapDocument *document, const char *draft)
{
  GtkWidget *widget = lap_document_week (document) != NULL ? lap_week_window_new (GTK_APPLICATION (self), document)
                                                           : lap_session_window_new (GTK_APPLICATION (self), document);
  GtkWindow *window = GTK_WINDOW (widget);

  if (self->drafts != NULL) {
    g_autoptr (LapKeeper) keeper = lap_keeper_new (document, self->drafts, draft);

    lap_window_set_keeper (LAP_WINDOW (window), keeper);
  }
  if (lap_document_path (document) != NULL)
    lap_recent_note (lap_document_path (document), lap_document_week (document) != NULL);
  gtk_window_present (window);
  close_library (self);
  return window;
}

GtkWindow *
lap_application_show (LapApplication *self, LapDocument *document)
{
  return show_document (self, document, NULL);
}

static GtkWindow *
window_of (LapApplication *self, const char *path)
{
  g_autoptr (GFile) file = g_file_new_for_path (path);

  for (GList *l = gtk_application_get_windows (GTK_APPLICATION (self)); l != NULL; l = l->next) {
    const char *other = LAP_IS_WINDOW (l->data) ? lap_document_path (lap_window_document (l->data))
                      : LAP_IS_OPENING (l->data) ? lap_opening_path (l->data) : NULL;
    g_autoptr (GFile) held = other != NULL ? g_file_new_for_path (other) : NULL;

    if (held != NULL && g_file_equal (held, file))
      return l->data;
  }
  return NULL;
}

/* A window is there to say what went wrong, even when the file was the first thing asked for. */
static void
tell_error (LapApplication *self, const char *what, const char *why)
{
  GtkWindow *window = gtk_application_get_active_window (GTK_APPLICATION (self));

  lap_tell_error (window != NULL ? window : lap_application_show_library (self), what, why);
}

static GtkWindow *
show_read (LapApplication *self, LapReading *reading, GError **error)
{
  g_autofree char *etag = NULL;
  g_autoptr (GBytes) bytes = lap_reading_take (reading, &etag, error);
  g_autoptr (LapDocument) document = NULL;

  if (bytes != NULL)
    document = lap_document_from_file (bytes, lap_reading_path (reading), etag, error);
  return document != NULL ? lap_application_show (self, document) : NULL;
}

static void
read_cb (LapReading *reading, gpointer application)
{
  g_autoptr (GError) error = NULL;

  if (show_read (application, reading, &error) == NULL)
    tell_error (application, _("That file can’t be opened"), error->message);
}

/* A table of classes becomes a new week of that name, by way of the dialog that shows what each row will be. */
static GtkWindow *
open_table (LapApplication *self, const char *path, GError **error)
{
  g_autofree char *title = g_path_get_basename (path);
  g_autoptr (LapWeek) week = NULL;
  g_autoptr (LapDocument) document = NULL;
  GtkWindow *window, *import;

  *strrchr (title, '.') = '\0';
  week = lap_new_week (title);
  document = lap_document_new (week, error);
  if (document == NULL)
    return NULL;
  window = lap_application_show (self, document);
  import = lap_week_import_new (document, window);
  gtk_window_present (import);
  lap_week_import_open (LAP_WEEK_IMPORT (import), path);
  return window;
}

GtkWindow *
lap_application_open_path (LapApplication *self, const char *path, GError **error)
{
  GtkWindow *window = window_of (self, path);
  g_autoptr (LapReading) reading = NULL;

  if (lap_files_is_table (path))
    return open_table (self, path, error);
  if (window != NULL) {
    gtk_window_present (window);
    close_library (self);
    return window;
  }
  reading = lap_reading_new (path, lap_read_file);
  if (lap_reading_wait (reading, PATIENCE))
    return show_read (self, reading, error);
  window = lap_opening_new (GTK_APPLICATION (self), reading, read_cb, self);
  gtk_window_present (window);
  return window;
}

GtkWindow *
lap_application_open_demo (LapApplication *self)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (LapDocument) document = lap_demo_session (&error);

  if (document == NULL)
    g_error ("The demo can't be opened: %s", error->message);
  return lap_application_show (self, document);
}

static void
open_or_tell (LapApplication *self, const char *path)
{
  g_autoptr (GError) error = NULL;

  if (lap_application_open_path (self, path, &error) == NULL)
    tell_error (self, _("That file can’t be opened"), error->message);
}

static void
lap_application_activate (GApplication *application)
{
  GtkWindow *window = gtk_application_get_active_window (GTK_APPLICATION (application));

  if (window != NULL)
    gtk_window_present (window);
  else
    lap_application_show_library (LAP_APPLICATION (application));
}

/* Several files that can't be opened are said in one dialog. */
static void
lap_application_open (GApplication *application, GFile **files, int n, const char *hint)
{
  LapApplication *self = LAP_APPLICATION (application);
  g_autoptr (GString) why = g_string_new (NULL);
  guint bad = 0;

  for (int i = 0; i < n; i++) {
    g_autofree char *path = g_file_get_path (files[i]), *uri = g_file_get_uri (files[i]);
    g_autoptr (GError) error = NULL;

    if (lap_application_open_path (self, path != NULL ? path : uri, &error) == NULL && bad++ < MOST_TOLD)
      g_string_append_printf (why, "%s%s", why->len > 0 ? "\n" : "", error->message);
  }
  if (bad > MOST_TOLD)
    g_string_append_printf (why, ngettext ("\n%u more.", "\n%u more.", bad - MOST_TOLD), bad - MOST_TOLD);
  if (bad > 0)
    tell_error (self, ngettext ("That file can’t be opened", "Some files can’t be opened", bad), why->str);
}

static void
chosen_cb (const char *path, gpointer data)
{
  LapApplication *self = data;

  if (path != NULL)
    open_or_tell (self, path);
  g_application_release (G_APPLICATION (self));
  g_object_unref (self);
}

static void
open_action (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  lap_application_show_library (data);
}

static void
open_file_action (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  g_application_hold (data);
  lap_files_open (gtk_application_get_active_window (data), chosen_cb, g_object_ref (data));
}

static void
new_action (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  gtk_window_present (lap_new_dialog (data, gtk_application_get_active_window (data)));
}

static void
preferences_action (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  lap_preferences_open (gtk_application_get_active_window (data));
}

static void
help_action (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  lap_help_show (gtk_application_get_active_window (data));
}

static void
about_action (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  /* The icon of a program that isn't installed. Not before, since the whole folder is searched. */
  gtk_icon_theme_add_resource_path (gtk_icon_theme_get_for_display (gdk_display_get_default ()),
                                    "/org/lapwing/Lapwing/about");
  adw_show_about_window (gtk_application_get_active_window (data),
                         "application-name", _("Lapwing"),
                         "application-icon", "org.lapwing.Lapwing",
                         "version", LAP_VERSION,
                         "comments", _("Lays out timed exercise sessions to the second."),
                         "license-type", GTK_LICENSE_GPL_3_0,
                         NULL);
}

static void
quit_action (GSimpleAction *action, GVariant *parameter, gpointer data)
{
  g_autoptr (GList) windows = g_list_copy (gtk_application_get_windows (data));

  /* Each window asks about what isn't saved; the program ends with the last of them. */
  for (GList *l = windows; l != NULL; l = l->next)
    gtk_window_close (l->data);
}

static const GActionEntry actions[] = {
  { "new", new_action }, { "open", open_action }, { "open-file", open_file_action },
  { "preferences", preferences_action }, { "help", help_action }, { "about", about_action }, { "quit", quit_action },
};

/* A draft that can't be read is kept for whoever can, and said. */
static void
recover (LapApplication *self, const LapDraft *draft)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (LapDocument) document = lap_document_recover (draft->bytes, draft->path, draft->etag, &error);

  if (document != NULL)
    show_document (self, document, draft->id);
  else
    tell_error (self, _("What was not saved can’t be read"), error->message);
}

/* What the last program left unsaved is offered before anything else is opened. */
static void
recover_all (LapApplication *self)
{
  g_autofree char *folder = g_build_filename (g_get_user_data_dir (), "lapwing", "drafts", NULL);
  g_autoptr (GPtrArray) left = NULL;
  g_autoptr (GError) error = NULL;

  self->drafts = lap_drafts_new (folder, &error);
  if (self->drafts == NULL) {
    g_message ("No drafts are kept: %s", error->message);
    return;
  }
  left = lap_drafts_left (self->drafts);
  for (guint i = 0; i < left->len; i++)
    recover (self, left->pdata[i]);
}

static void
lap_application_finalize (GObject *object)
{
  g_clear_pointer (&LAP_APPLICATION (object)->drafts, lap_drafts_free);
  G_OBJECT_CLASS (lap_application_parent_class)->finalize (object);
}

static void
lap_application_startup (GApplication *application)
{
  G_APPLICATION_CLASS (lap_application_parent_class)->startup (application);
  lap_palette_install (gdk_display_get_default ());
  g_action_map_add_action_entries (G_ACTION_MAP (application), actions, G_N_ELEMENTS (actions), application);
  lap_notify_install (application);
  lap_shortcuts_bind (GTK_APPLICATION (application));
  lap_help_serve_dialogs ();
  lap_numbers_let_scroll ();
  gtk_window_set_default_icon_name ("org.lapwing.Lapwing");
  recover_all (LAP_APPLICATION (application));
}

static void
lap_application_class_init (LapApplicationClass *klass)
{
  GApplicationClass *application_class = G_APPLICATION_CLASS (klass);

  G_OBJECT_CLASS (klass)->finalize = lap_application_finalize;
  application_class->startup = lap_application_startup;
  application_class->activate = lap_application_activate;
  application_class->open = lap_application_open;
}

static void
lap_application_init (LapApplication *self)
{
}

gboolean
lap_application_has_display (void)
{
  return gtk_init_check ();
}

LapApplication *
lap_application_new (void)
{
  LapApplication *self;

  /* They register themselves, but the linker drops what nobody calls. */
  lap_ui_get_resource ();
  self = g_object_new (LAP_TYPE_APPLICATION, "application-id", "org.lapwing.Lapwing", "flags", G_APPLICATION_HANDLES_OPEN,
                       NULL);
  /* With a folder of its own, in which there may be icons, all of the theme's are looked through a second time. */
  g_application_set_resource_base_path (G_APPLICATION (self), NULL);
  return self;
}
