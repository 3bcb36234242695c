/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/week-properties.h"

#include "base/customs.h"
#include "edit/week-verbs.h"
#include "ui/date-button.h"
#include "ui/field-text.h"
#include "ui/fields.h"
#include "ui/tell.h"
#include "ui/zone-button.h"

#include <glib/gi18n-lib.h>

struct _LapWeekProperties {
  AdwPreferencesWindow parent_instance;
  LapDocument *document;
  LapFields   *fields;                /* of the week */
  GtkWidget   *groups[2];             /* rooms, coaches */
  GPtrArray   *rows[2], *objects[2];  /* the expanders in it, and what they are of */
  GPtrArray   *opened;                /* LapFields of those that were opened */
};

#define LAP_TYPE_WEEK_PROPERTIES (lap_week_properties_get_type ())
G_DECLARE_FINAL_TYPE (LapWeekProperties, lap_week_properties, LAP, WEEK_PROPERTIES, AdwPreferencesWindow)
G_DEFINE_FINAL_TYPE (LapWeekProperties, lap_week_properties, ADW_TYPE_PREFERENCES_WINDOW)

enum { ROOMS, COACHES };

typedef struct {
  const char  *group; /* NULL: the same as before */
  const char  *hint;
  LapFieldSpec spec;
} Row;

static const Row week_rows[] = {
  { N_("Week"), NULL, { "title", N_("Title") } },
  { NULL, NULL, { "timezone", N_("Timezone"), N_("As Europe/Lisbon"), .helper = lap_zone_button_new } },
  { NULL, NULL, { "from", N_("First day"), N_("As 2027-01-11; empty: no limit"), .helper = lap_date_button_new } },
  { NULL, NULL, { "until", N_("Last day"), N_("As 2027-03-28; empty: no limit"), .helper = lap_date_button_new } },
  { N_("Opening hours"), N_("%s. A day without is closed; with none at all, the house is always open."),
    { "open-mon", N_("Monday") } },
  { NULL, NULL, { "open-tue", N_("Tuesday") } },
  { NULL, NULL, { "open-wed", N_("Wednesday") } },
  { NULL, NULL, { "open-thu", N_("Thursday") } },
  { NULL, NULL, { "open-fri", N_("Friday") } },
  { NULL, NULL, { "open-sat", N_("Saturday") } },
  { NULL, NULL, { "open-sun", N_("Sunday") } },
  { N_("Closed"), N_("As 2027-02-09, 2027-02-16–2027-02-20."), { "closed", N_("Dates"), .helper = lap_date_button_new_list } },
};

static const LapFieldSpec room_rows[] = {
  { "name", N_("Name") },
  { "area", N_("Floor"), N_("Square metres; 0: not known"), .in_feet = N_("Square feet; 0: not known") },
  { "places", N_("Places"), N_("People; 0: no limit") },
  { "turnaround", N_("To clear it"), N_("Minutes from one class to the next"), 5 },
  { "quiet-hours", N_("Quiet hours") },
  { "kit", N_("Kit that is there") },
};

static const LapFieldSpec coach_rows[] = {
  { "name", N_("Name") },
  { "most-a-day", N_("Classes a day"), N_("At most; 0: no limit") },
  { "can", N_("Trained for"), N_("Kinds of class, with commas between; empty: all") },
  { "free-mon", N_("Free on Monday") },
  { "free-tue", N_("Free on Tuesday") },
  { "free-wed", N_("Free on Wednesday") },
  { "free-thu", N_("Free on Thursday") },
  { "free-fri", N_("Free on Friday") },
  { "free-sat", N_("Free on Saturday") },
  { "free-sun", N_("Free on Sunday") },
};

/* Where Monday is in the tables. */
#define OPEN_MONDAY 4
#define FREE_MONDAY 3

/* The row that comes at place @i where that of Monday is @monday: those of the days come in the order that days have
 * here. */
static guint
in_order (guint monday, guint i)
{
  return i < monday || i >= monday + LAP_N_DAYS ? i : monday + lap_day_nth (lap_customs ().first_day, i - monday);
}

static const struct {
  const char         *title, *hint, *add, *name; /* name of a new one */
  const LapFieldSpec *rows;
  guint               n;
} kinds[] = {
  [ROOMS] = { N_("Rooms"), NULL, N_("Add a room"), N_("New room"), room_rows, G_N_ELEMENTS (room_rows) },
  [COACHES] = { N_("Coaches"), N_("%s. A day without isn’t free; with none at all, a coach is always free."),
                N_("Add a coach"), N_("New coach"), coach_rows, G_N_ELEMENTS (coach_rows) },
};

static LapList *
list_of (LapWeekProperties *self, guint kind)
{
  LapWeek *week = lap_document_week (self->document);

  return kind == ROOMS ? week->rooms : week->coaches;
}

static const char *
title_of (gpointer object)
{
  return LAP_IS_ROOM (object) ? lap_room_title (object) : lap_coach_title (object);
}

/* The rows in an expander, when it is opened first. */
static void
expanded_cb (GtkWidget *row, GParamSpec *pspec, LapWeekProperties *self)
{
  LapObject *object = g_object_get_data (G_OBJECT (row), "object");
  guint kind = LAP_IS_ROOM (object) ? ROOMS : COACHES;
  g_autoptr (GPtrArray) one = NULL;
  LapFields *fields;

  if (g_object_get_data (G_OBJECT (row), "filled") != NULL)
    return;
  g_object_set_data (G_OBJECT (row), "filled", row);
  one = g_ptr_array_new ();
  g_ptr_array_add (one, object);
  fields = lap_fields_new (self->document, G_OBJECT_TYPE (object));
  g_ptr_array_add (self->opened, fields);
  for (guint i = 0; i < kinds[kind].n; i++) {
    guint at = kind == COACHES ? in_order (FREE_MONDAY, i) : i;

    adw_expander_row_add_row (ADW_EXPANDER_ROW (row), lap_fields_row (fields, &kinds[kind].rows[at]));
  }
  lap_fields_show (fields, one);
}

static void
remove_cb (GtkWidget *button, LapWeekProperties *self)
{
  LapWeek *week = lap_document_week (self->document);
  LapObject *object = g_object_get_data (G_OBJECT (button), "object");

  lap_document_apply (self->document, LAP_IS_ROOM (object) ? lap_verb_remove_room (week, LAP_ROOM (object))
                                                           : lap_verb_remove_coach (week, LAP_COACH (object)));
}

static GtkWidget *
expander_new (LapWeekProperties *self, LapObject *object)
{
  GtkWidget *row = adw_expander_row_new (), *button = gtk_button_new_from_icon_name ("user-trash-symbolic");
  g_autofree char *tip = g_strdup_printf (_("Remove %s"), title_of (object));

  g_object_set_data_full (G_OBJECT (row), "object", g_object_ref (object), g_object_unref);
  g_object_set_data_full (G_OBJECT (button), "object", g_object_ref (object), g_object_unref);
  gtk_widget_set_valign (button, GTK_ALIGN_CENTER);
  gtk_widget_add_css_class (button, "flat");
  gtk_widget_set_tooltip_text (button, tip);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, tip, -1);
  g_signal_connect_object (button, "clicked", G_CALLBACK (remove_cb), self, 0);
  adw_expander_row_add_action (ADW_EXPANDER_ROW (row), button);
  g_signal_connect_object (row, "notify::expanded", G_CALLBACK (expanded_cb), self, 0);
  return row;
}

/* One row for each, the same ones as long as they are the same things. */
static void
show_list (LapWeekProperties *self, guint kind)
{
  LapList *list = list_of (self, kind);
  guint n = lap_list_n (list);
  gboolean same = self->objects[kind]->len == n;

  for (guint i = 0; same && i < n; i++)
    same = self->objects[kind]->pdata[i] == lap_list_nth (list, i);
  for (guint i = 0; !same && i < self->rows[kind]->len; i++)
    adw_preferences_group_remove (ADW_PREFERENCES_GROUP (self->groups[kind]), self->rows[kind]->pdata[i]);
  if (!same) {
    g_ptr_array_set_size (self->rows[kind], 0);
    g_ptr_array_set_size (self->objects[kind], 0);
  }
  for (guint i = 0; i < n; i++) {
    if (!same) {
      g_ptr_array_add (self->objects[kind], lap_list_nth (list, i));
      g_ptr_array_add (self->rows[kind], expander_new (self, lap_list_nth (list, i)));
      adw_preferences_group_add (ADW_PREFERENCES_GROUP (self->groups[kind]), self->rows[kind]->pdata[i]);
    }
    adw_preferences_row_set_title (self->rows[kind]->pdata[i], title_of (lap_list_nth (list, i)));
  }
}

static void
show (LapWeekProperties *self)
{
  show_list (self, ROOMS);
  show_list (self, COACHES);
}

/* The new one is opened, to be named. */
static void
add_cb (GtkWidget *button, LapWeekProperties *self)
{
  guint kind = GPOINTER_TO_UINT (g_object_get_data (G_OBJECT (button), "kind"));
  LapWeek *week = lap_document_week (self->document);
  LapEdits *edits = kind == ROOMS ? lap_verb_add_room (week, _(kinds[kind].name))
                                  : lap_verb_add_coach (week, _(kinds[kind].name));

  if (lap_document_apply (self->document, edits) && self->rows[kind]->len > 0)
    adw_expander_row_set_expanded (self->rows[kind]->pdata[self->rows[kind]->len - 1], TRUE);
}

/* @hint, in which "%s" is how values of @kind are typed. */
static void
describe (AdwPreferencesGroup *group, const char *hint, const LapKind *kind)
{
  const LapField field = { .kind = kind };
  g_autofree char *text = hint != NULL ? g_strdup_printf (_(hint), lap_field_hint (&field)) : NULL;

  adw_preferences_group_set_description (group, text);
}

static void
add_week_page (LapWeekProperties *self)
{
  AdwPreferencesPage *page = ADW_PREFERENCES_PAGE (adw_preferences_page_new ());
  g_autoptr (GPtrArray) week = g_ptr_array_new ();
  AdwPreferencesGroup *group = NULL;

  adw_preferences_page_set_title (page, _("Week"));
  adw_preferences_page_set_icon_name (page, "x-office-calendar-symbolic");
  for (guint i = 0; i < G_N_ELEMENTS (week_rows); i++) {
    if (week_rows[i].group != NULL) {
      group = ADW_PREFERENCES_GROUP (adw_preferences_group_new ());
      adw_preferences_group_set_title (group, _(week_rows[i].group));
      describe (group, week_rows[i].hint, &lap_kind_pair);
      adw_preferences_page_add (page, group);
    }
    adw_preferences_group_add (group, lap_fields_row (self->fields, &week_rows[in_order (OPEN_MONDAY, i)].spec));
  }
  g_ptr_array_add (week, lap_document_week (self->document));
  lap_fields_show (self->fields, week);
  gtk_widget_set_sensitive (GTK_WIDGET (page), lap_document_is_editable (self->document));
  adw_preferences_window_add (ADW_PREFERENCES_WINDOW (self), page);
}

static void
add_list_page (LapWeekProperties *self, guint kind, const char *icon)
{
  AdwPreferencesPage *page = ADW_PREFERENCES_PAGE (adw_preferences_page_new ());
  GtkWidget *button = gtk_button_new_with_label (_(kinds[kind].add));
  AdwPreferencesGroup *group;

  self->groups[kind] = adw_preferences_group_new ();
  group = ADW_PREFERENCES_GROUP (self->groups[kind]);
  adw_preferences_page_set_title (page, _(kinds[kind].title));
  adw_preferences_page_set_icon_name (page, icon);
  adw_preferences_group_set_title (group, _(kinds[kind].title));
  describe (group, kinds[kind].hint, &lap_kind_hours);
  gtk_widget_set_valign (button, GTK_ALIGN_START);
  g_object_set_data (G_OBJECT (button), "kind", GUINT_TO_POINTER (kind));
  g_signal_connect_object (button, "clicked", G_CALLBACK (add_cb), self, 0);
  adw_preferences_group_set_header_suffix (group, button);
  adw_preferences_page_add (page, group);
  gtk_widget_set_sensitive (GTK_WIDGET (page), lap_document_is_editable (self->document));
  adw_preferences_window_add (ADW_PREFERENCES_WINDOW (self), page);
}

/* What is typed counts. */
static gboolean
lap_week_properties_close_request (GtkWindow *window)
{
  LapWeekProperties *self = LAP_WEEK_PROPERTIES (window);

  lap_fields_commit (self->fields);
  for (guint i = 0; i < self->opened->len; i++)
    lap_fields_commit (self->opened->pdata[i]);
  return GTK_WINDOW_CLASS (lap_week_properties_parent_class)->close_request (window);
}

static void
lap_week_properties_dispose (GObject *object)
{
  LapWeekProperties *self = LAP_WEEK_PROPERTIES (object);

  g_clear_object (&self->fields);
  g_clear_pointer (&self->opened, g_ptr_array_unref);
  for (guint i = 0; i < 2; i++) {
    g_clear_pointer (&self->rows[i], g_ptr_array_unref);
    g_clear_pointer (&self->objects[i], g_ptr_array_unref);
  }
  g_clear_object (&self->document);
  G_OBJECT_CLASS (lap_week_properties_parent_class)->dispose (object);
}

static void
lap_week_properties_class_init (LapWeekPropertiesClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = lap_week_properties_dispose;
  GTK_WINDOW_CLASS (klass)->close_request = lap_week_properties_close_request;
}

static void
lap_week_properties_init (LapWeekProperties *self)
{
  self->opened = g_ptr_array_new_with_free_func (g_object_unref);
  for (guint i = 0; i < 2; i++) {
    self->rows[i] = g_ptr_array_new ();
    self->objects[i] = g_ptr_array_new ();
  }
}

GtkWidget *
lap_week_properties_open (LapWindow *window)
{
  LapDocument *document = lap_window_document (window);
  LapWeekProperties *self = g_object_new (LAP_TYPE_WEEK_PROPERTIES, "transient-for", window, "modal", TRUE,
                                          "title", _("Properties of the week"), "default-width", 600,
                                          "default-height", 680, "search-enabled", FALSE, NULL);

  self->document = g_object_ref (document);
  self->fields = lap_fields_new (document, LAP_TYPE_WEEK);
  add_week_page (self);
  add_list_page (self, ROOMS, "go-home-symbolic");
  add_list_page (self, COACHES, "system-users-symbolic");
  g_signal_connect_object (document, "changed", G_CALLBACK (show), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (document, "told", G_CALLBACK (lap_tell_refused), self, G_CONNECT_SWAPPED);
  show (self);
  gtk_window_present (GTK_WINDOW (self));
  return GTK_WIDGET (self);
}
