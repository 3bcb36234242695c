/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/class-pane.h"

#include "edit/week-verbs.h"
#include "ui/class-date.h"
#include "ui/fields.h"
#include "ui/files.h"
#include "ui/week-choices.h"

#include <glib/gi18n-lib.h>

/* When a class starts that is given a day before a time. */
#define FIRST_START (9 * 60)

struct _LapClassPane {
  GtkWidget    parent_instance;
  LapDocument *document;
  LapFields   *fields;
  char       **ids;
  GPtrArray   *classes; /* LapClass, those of the ids that are there */
  GtkWidget   *box, *title, *hint, *date, *session, *choose, *see, *without;
};

static guint open_signal;

G_DEFINE_FINAL_TYPE (LapClassPane, lap_class_pane, GTK_TYPE_WIDGET)

/* What a plain setting would leave half said */

static void
set_day (LapEdits *edits, LapObject *object, const GValue *value)
{
  if (g_value_get_int (value) >= 0 && LAP_CLASS (object)->start < 0)
    lap_edits_set_int (edits, object, "start", FIRST_START);
  lap_edits_set (edits, object, "day", value);
}

static void
set_start (LapEdits *edits, LapObject *object, const GValue *value)
{
  LapClass *c = LAP_CLASS (object);
  LapPlace place = lap_class_place (c);

  place.start = g_value_get_int (value);
  lap_edits_append (edits, lap_verb_place (c, &place));
}

static void
set_minutes (LapEdits *edits, LapObject *object, const GValue *value)
{
  lap_edits_append (edits, lap_verb_set_minutes (LAP_CLASS (object), LAP_CLASS (object)->start, g_value_get_int (value)));
}

static const struct {
  const char  *group; /* NULL: the same as before */
  LapFieldSpec spec;
} rows[] = {
  { N_("Class"), { "title", N_("Title"), N_("Empty: as its kind") } },
  { NULL, { "kind", N_("Kind"), N_("What a coach must be trained for") } },
  { NULL, { "minutes", N_("Minutes"), NULL, 5, NULL, set_minutes } },
  { NULL, { "for", N_("For whom") } },
  { NULL, { "places", N_("People"), N_("0: not said") } },
  { N_("Every week"), { "day", N_("Day"), NULL, 0, NULL, set_day } },
  { NULL, { "start", N_("Start"), NULL, 0, NULL, set_start } },
  { NULL, { "room", N_("Room"), NULL, 0, lap_room_choices } },
  { NULL, { "coach", N_("Coach"), NULL, 0, lap_coach_choices } },
  { NULL, { "fixed", N_("Fixed"), N_("Nothing moves it") } },
  { N_("What it asks"), { "effort", N_("Effort") } },
  { NULL, { "regions", N_("Works"), N_("Regions of the body") } },
  { NULL, { "takes-part", N_("Coach trains along") } },
  { NULL, { "in-out", N_("To come and go"), N_("Minutes of its time") } },
  { N_("Wishes"), { "wish-days", N_("Days"), N_("None: any day") } },
  { NULL, { "wish-between", N_("Between") } },
};

/* The session */

static char *
session_state (LapClassPane *self, LapClass *c)
{
  g_autoptr (GError) error = NULL;
  const LapAttached *attached = lap_attachments_find (lap_document_attachments (self->document), c->session, &error);
  g_autofree char *length = attached != NULL ? lap_clock_text (attached->length) : NULL;

  if (attached == NULL)
    return g_strdup (error != NULL ? error->message : _("It can’t be read."));
  /* Translators: the length of a session, and its effort. */
  return g_strdup_printf (_("%1$s, %2$s: its length, effort and regions count"), length,
                          lap_words_label (&lap_strains, attached->strain));
}

/* The session of all classes, or NULL where they differ or have none. */
static const char *
shared_session (LapClassPane *self, gboolean *differ)
{
  LapClass *first = self->classes->pdata[0];

  *differ = FALSE;
  for (guint i = 1; i < self->classes->len; i++)
    *differ = *differ || g_strcmp0 (first->session, LAP_CLASS (self->classes->pdata[i])->session) != 0;
  return *differ || first->session == NULL || *first->session == '\0' ? NULL : first->session;
}

static void
show_session (LapClassPane *self)
{
  gboolean differ;
  const char *path = shared_session (self, &differ);
  g_autofree char *name = path != NULL ? g_path_get_basename (path) : NULL;
  g_autofree char *state = path != NULL ? session_state (self, self->classes->pdata[0]) : NULL;

  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (self->session), name != NULL ? name :
                                 differ ? _("Different sessions") : _("No session"));
  adw_action_row_set_subtitle (ADW_ACTION_ROW (self->session), state != NULL ? state : "");
  gtk_widget_set_tooltip_text (self->session, path);
  gtk_widget_set_visible (self->see, path != NULL);
  gtk_widget_set_visible (self->without, path != NULL || differ);
}

void
lap_class_pane_set_session (LapClassPane *self, const char *path)
{
  LapEdits *edits = lap_edits_new (_("Change the session"));

  for (guint i = 0; i < self->classes->len; i++)
    lap_edits_set_text (edits, self->classes->pdata[i], "session", path);
  lap_document_apply (self->document, edits);
}

static void
chosen_cb (const char *path, gpointer data)
{
  g_autoptr (LapClassPane) self = data;

  if (path != NULL && self->classes->len > 0)
    lap_class_pane_set_session (self, path);
}

static void
choose_cb (LapClassPane *self)
{
  static const char *const sessions[] = { "*.lapwing", NULL };

  lap_files_choose (GTK_WINDOW (gtk_widget_get_root (GTK_WIDGET (self))), _("Choose a session"), _("Sessions"), sessions,
                    lap_document_path (self->document), chosen_cb, g_object_ref (self));
}

static void
see_cb (LapClassPane *self)
{
  g_signal_emit (self, open_signal, 0, LAP_CLASS (self->classes->pdata[0])->id);
}

static void
without_cb (LapClassPane *self)
{
  lap_class_pane_set_session (self, NULL);
}

/* Showing */

static void
show_title (LapClassPane *self)
{
  guint n = self->classes->len;
  g_autofree char *many = g_strdup_printf (ngettext ("%u class", "%u classes", n), n);

  gtk_label_set_text (GTK_LABEL (self->title), n == 1 ? lap_class_title (self->classes->pdata[0]) : many);
  gtk_widget_set_visible (self->title, n > 0);
  gtk_widget_set_visible (self->hint, n == 0);
  gtk_widget_set_visible (self->box, n > 0);
  gtk_widget_set_sensitive (self->box, lap_document_is_editable (self->document));
}

/* The classes are found anew: an edit may have taken one away or brought it back. */
static void
show (LapClassPane *self)
{
  LapWeek *week = lap_document_week (self->document);

  g_ptr_array_set_size (self->classes, 0);
  for (guint i = 0; self->ids != NULL && self->ids[i] != NULL; i++) {
    LapClass *c = lap_week_class (week, self->ids[i]);

    if (c != NULL)
      g_ptr_array_add (self->classes, g_object_ref (c));
  }
  lap_fields_show (self->fields, self->classes);
  lap_class_date_show (LAP_CLASS_DATE (self->date), self->classes->len == 1 ? self->classes->pdata[0] : NULL);
  show_title (self);
  if (self->classes->len > 0)
    show_session (self);
}

static GtkWidget *
new_button (const char *icon, const char *tip, GCallback callback, gpointer data)
{
  GtkWidget *button = gtk_button_new_from_icon_name (icon);

  gtk_widget_set_valign (button, GTK_ALIGN_CENTER);
  gtk_widget_add_css_class (button, "flat");
  gtk_widget_set_tooltip_text (button, tip);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, tip, -1);
  g_signal_connect_swapped (button, "clicked", callback, data);
  return button;
}

static GtkWidget *
session_group (LapClassPane *self)
{
  GtkWidget *group = adw_preferences_group_new ();

  self->session = adw_action_row_new ();
  adw_preferences_row_set_use_markup (ADW_PREFERENCES_ROW (self->session), FALSE);
  adw_action_row_set_title_lines (ADW_ACTION_ROW (self->session), 2);
  adw_action_row_set_subtitle_lines (ADW_ACTION_ROW (self->session), 4);
  self->see = new_button ("go-next-symbolic", _("Open the session"), G_CALLBACK (see_cb), self);
  self->without = new_button ("edit-clear-symbolic", _("Do without a session"), G_CALLBACK (without_cb), self);
  self->choose = new_button ("folder-open-symbolic", _("Choose a session"), G_CALLBACK (choose_cb), self);
  adw_action_row_add_suffix (ADW_ACTION_ROW (self->session), self->without);
  adw_action_row_add_suffix (ADW_ACTION_ROW (self->session), self->choose);
  adw_action_row_add_suffix (ADW_ACTION_ROW (self->session), self->see);
  adw_action_row_set_activatable_widget (ADW_ACTION_ROW (self->session), self->choose);
  adw_preferences_group_set_title (ADW_PREFERENCES_GROUP (group), _("Session"));
  adw_preferences_group_add (ADW_PREFERENCES_GROUP (group), self->session);
  return group;
}

static void
fill (LapClassPane *self)
{
  GtkWidget *group = NULL;

  gtk_box_append (GTK_BOX (self->box), self->date);
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++) {
    if (rows[i].group != NULL) {
      group = adw_preferences_group_new ();
      adw_preferences_group_set_title (ADW_PREFERENCES_GROUP (group), _(rows[i].group));
      gtk_box_append (GTK_BOX (self->box), group);
      if (i == 0)
        gtk_box_append (GTK_BOX (self->box), session_group (self));
    }
    adw_preferences_group_add (ADW_PREFERENCES_GROUP (group), lap_fields_row (self->fields, &rows[i].spec));
  }
}

static void
lap_class_pane_dispose (GObject *object)
{
  LapClassPane *self = LAP_CLASS_PANE (object);
  GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (self));

  g_clear_pointer (&child, gtk_widget_unparent);
  g_clear_object (&self->fields);
  g_clear_object (&self->document);
  g_clear_pointer (&self->classes, g_ptr_array_unref);
  g_clear_pointer (&self->ids, g_strfreev);
  G_OBJECT_CLASS (lap_class_pane_parent_class)->dispose (object);
}

static void
lap_class_pane_class_init (LapClassPaneClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = lap_class_pane_dispose;
  open_signal = g_signal_new ("open-session", LAP_TYPE_CLASS_PANE, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 1,
                              G_TYPE_STRING);
  gtk_widget_class_set_layout_manager_type (GTK_WIDGET_CLASS (klass), GTK_TYPE_BIN_LAYOUT);
}

static GtkWidget *
new_label (const char *text, const char *class)
{
  GtkWidget *label = gtk_label_new (text);

  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_widget_add_css_class (label, class);
  return label;
}

static void
lap_class_pane_init (LapClassPane *self)
{
  GtkWidget *outer = gtk_box_new (GTK_ORIENTATION_VERTICAL, 12);

  self->classes = g_ptr_array_new_with_free_func (g_object_unref);
  self->title = new_label ("", "title-3");
  self->hint = new_label (_("Select a class to change it, or add one with N."), "dim-label");
  self->box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 18);
  self->date = g_object_new (LAP_TYPE_CLASS_DATE, NULL);
  gtk_box_append (GTK_BOX (outer), self->title);
  gtk_box_append (GTK_BOX (outer), self->hint);
  gtk_box_append (GTK_BOX (outer), self->box);
  gtk_widget_set_parent (outer, GTK_WIDGET (self));
}

void
lap_class_pane_set_document (LapClassPane *self, LapDocument *document)
{
  self->document = g_object_ref (document);
  self->fields = lap_fields_new (document, LAP_TYPE_CLASS);
  lap_class_date_set_document (LAP_CLASS_DATE (self->date), document);
  fill (self);
  g_signal_connect_object (document, "changed", G_CALLBACK (show), self, G_CONNECT_SWAPPED);
  show (self);
}

void
lap_class_pane_select (LapClassPane *self, const char * const *ids)
{
  lap_class_pane_commit (self);
  g_strfreev (self->ids);
  self->ids = g_strdupv ((char **) ids);
  show (self);
}

void
lap_class_pane_commit (LapClassPane *self)
{
  lap_fields_commit (self->fields);
  lap_class_date_commit (LAP_CLASS_DATE (self->date));
}
