/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/new.h"

#include "edit/from-list.h"
#include "edit/reshape.h"
#include "edit/week-verbs.h"
#include "ui/demo.h"
#include "ui/preferences.h"

#include <glib/gi18n-lib.h>

struct _LapNew {
  AdwWindow       parent_instance;
  LapApplication *application; /* not held: it holds the window */
  GtkWidget      *name, *formula, *list, *told, *make;
};

G_DEFINE_FINAL_TYPE (LapNew, lap_new, ADW_TYPE_WINDOW)

#define MOST_TOLD 8 /* unknown lines */

static char *
listed (LapNew *self)
{
  GtkTextBuffer *buffer = gtk_text_view_get_buffer (GTK_TEXT_VIEW (self->list));
  GtkTextIter start, end;

  gtk_text_buffer_get_bounds (buffer, &start, &end);
  return gtk_text_buffer_get_text (buffer, &start, &end, FALSE);
}

/* FALSE with one line in @error where a formula is typed that can't be read. */
static gboolean
typed_shape (LapNew *self, LapShape *shape, gboolean *any, GError **error)
{
  g_autofree char *text = g_strstrip (g_strdup (gtk_editable_get_text (GTK_EDITABLE (self->formula))));

  *any = *text != '\0';
  return !*any || lap_shape_parse (text, shape, error);
}

/* The session as it is typed, or NULL with @error. */
static LapSession *
typed_session (LapNew *self, GArray **unknown, GError **error)
{
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();
  g_autofree char *list = listed (self);
  LapSession *session;
  LapShape shape;
  gboolean any;

  *unknown = NULL;
  if (!typed_shape (self, &shape, &any, error))
    return NULL;
  session = lap_session_from_list (gtk_editable_get_text (GTK_EDITABLE (self->name)), list, catalogue, unknown);
  lap_preferences_fill (session);
  if (any) {
    LapEdits *edits;

    if (*g_strstrip (list) != '\0')
      shape.blocks = 0; /* as many as are listed, none of which shall go */
    edits = lap_verb_reshape_session (session, &shape);

    lap_edits_swap (edits); /* a plan of its own that nobody has seen: nothing to undo */
    lap_edits_free (edits);
  }
  return session;
}

static void
changed_cb (LapNew *self)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GArray) unknown = NULL;
  g_autoptr (LapSession) session = typed_session (self, &unknown, &error);
  g_autoptr (GString) text = g_string_new (error != NULL ? error->message : NULL);

  for (guint i = 0; unknown != NULL && i < unknown->len && i < MOST_TOLD; i++) {
    g_autofree char *line = lap_unknown_line_told (&g_array_index (unknown, LapUnknownLine, i));

    g_string_append_printf (text, "%s%s", text->len > 0 ? "\n" : "", line);
  }
  if (unknown != NULL && unknown->len > MOST_TOLD)
    g_string_append_printf (text, ngettext ("\n%u more line isn’t known.", "\n%u more lines aren’t known.",
                                            unknown->len - MOST_TOLD), unknown->len - MOST_TOLD);
  gtk_label_set_text (GTK_LABEL (self->told), text->str);
  gtk_widget_set_sensitive (self->make, error == NULL);
}

static void
make_cb (LapNew *self)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (GArray) unknown = NULL;
  g_autoptr (LapSession) session = typed_session (self, &unknown, &error);
  g_autoptr (LapDocument) document = session != NULL ? lap_document_new (session, &error) : NULL;

  if (document == NULL) {
    gtk_label_set_text (GTK_LABEL (self->told), error->message);
    return;
  }
  lap_application_show (self->application, document);
  gtk_window_close (GTK_WINDOW (self));
}

static void
demo_cb (LapNew *self)
{
  lap_application_open_demo (self->application);
  gtk_window_close (GTK_WINDOW (self));
}

static void
show_week (LapNew *self, LapDocument *document)
{
  lap_application_show (self->application, document);
  gtk_window_close (GTK_WINDOW (self));
}

/* The one of this place, where it has a name. */
static const char *
timezone_here (GTimeZone *zone)
{
  const char *name = g_time_zone_get_identifier (zone);
  g_autoptr (GTimeZone) again = name != NULL ? g_time_zone_new_identifier (name) : NULL;

  return again != NULL ? name : "UTC";
}

LapWeek *
lap_new_week (const char *title)
{
  g_autoptr (GTimeZone) zone = g_time_zone_new_local ();

  return lap_week_new (title, timezone_here (zone));
}

/* One room to begin with: without any there would be no line to put a class on. */
static void
week_cb (LapNew *self)
{
  const char *typed = gtk_editable_get_text (GTK_EDITABLE (self->name));
  g_autoptr (LapWeek) week = lap_new_week (*typed != '\0' ? typed : _("Our week"));
  g_autoptr (LapDocument) document = NULL;
  LapEdits *edits = lap_verb_add_room (week, _("Room 1"));

  lap_edits_swap (edits); /* a week of its own that nobody has seen: nothing to undo */
  lap_edits_free (edits);
  document = lap_document_new (week, NULL);
  show_week (self, document);
}

static void
demo_week_cb (LapNew *self)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (LapDocument) document = lap_demo_week (&error);

  if (document != NULL)
    show_week (self, document);
  else
    gtk_label_set_text (GTK_LABEL (self->told), error->message);
}

static gboolean
escape_cb (GtkWidget *widget, GVariant *args, gpointer data)
{
  gtk_window_close (GTK_WINDOW (widget));
  return TRUE;
}

static void
lap_new_class_init (LapNewClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/new.ui");
  gtk_widget_class_bind_template_child (widget_class, LapNew, name);
  gtk_widget_class_bind_template_child (widget_class, LapNew, formula);
  gtk_widget_class_bind_template_child (widget_class, LapNew, list);
  gtk_widget_class_bind_template_child (widget_class, LapNew, told);
  gtk_widget_class_bind_template_child (widget_class, LapNew, make);
  gtk_widget_class_bind_template_callback (widget_class, changed_cb);
  gtk_widget_class_bind_template_callback (widget_class, make_cb);
  gtk_widget_class_bind_template_callback (widget_class, demo_cb);
  gtk_widget_class_bind_template_callback (widget_class, week_cb);
  gtk_widget_class_bind_template_callback (widget_class, demo_week_cb);
  gtk_widget_class_add_binding (widget_class, GDK_KEY_Escape, 0, escape_cb, NULL);
}

static void
lap_new_init (LapNew *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  g_signal_connect_object (gtk_text_view_get_buffer (GTK_TEXT_VIEW (self->list)), "changed", G_CALLBACK (changed_cb), self,
                           G_CONNECT_SWAPPED);
  gtk_widget_grab_focus (self->name); /* who asks for a new one goes on typing */
}

GtkWindow *
lap_new_dialog (LapApplication *application, GtkWindow *over)
{
  LapNew *self = g_object_new (LAP_TYPE_NEW, "transient-for", over, NULL);

  self->application = application;
  return GTK_WINDOW (self);
}
