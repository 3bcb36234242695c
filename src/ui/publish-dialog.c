/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/publish-dialog.h"

#include "model/when.h"
#include "ui/field-row.h"
#include "ui/field-text.h"
#include "ui/files.h"
#include "ui/publish.h"

#include <glib/gi18n-lib.h>

/* What is offered: one line a format and suffix. */
typedef struct {
  const LapFormat *format;
  char            *suffix;
} Choice;

struct _LapPublishDialog {
  AdwMessageDialog parent_instance;
  LapWindow *window;
  GArray    *choices;
  GtkWidget *group, *format, *offset_row, *offset, *takes_row, *takes, *spoken_row, *spoken, *held_row, *held, *day_row, *day,
            *calendar, *time, *timezone;
};

G_DEFINE_FINAL_TYPE (LapPublishDialog, lap_publish_dialog, ADW_TYPE_MESSAGE_DIALOG)

/* When a session begins, as people type it: the kind alone counts. */
static const LapField time_field = { .kind = &lap_kind_time };
#define USUAL_TIME (18 * 60)

/* What the file chooser answers to: it outlives the dialog. */
typedef struct {
  LapWindow       *window;
  const LapFormat *format;
  LapPublication   how;
  char            *at, *timezone, *from;
} Question;

static const Choice *
chosen (LapPublishDialog *self)
{
  guint n = adw_combo_row_get_selected (ADW_COMBO_ROW (self->format));

  return n < self->choices->len ? &g_array_index (self->choices, Choice, n) : NULL;
}

static gboolean
is_week (LapPublishDialog *self)
{
  return lap_document_week (lap_window_document (self->window)) != NULL;
}

/* Whether a day is told: a session's when it is held, a week's when it begins. The pack can do without. */
static gboolean
has_day (LapPublishDialog *self)
{
  LapFormatFlags flags = chosen (self)->format->flags;

  if (is_week (self))
    return (flags & LAP_FORMAT_FROM) != 0;
  if (!(flags & LAP_FORMAT_AT))
    return FALSE;
  return !gtk_widget_get_visible (self->held_row) || gtk_switch_get_active (GTK_SWITCH (self->held));
}

/* In minutes from midnight; -1 where no time is typed. */
static int
time_of (LapPublishDialog *self)
{
  g_auto (GValue) value = G_VALUE_INIT;

  if (!lap_field_parse (&time_field, gtk_editable_get_text (GTK_EDITABLE (self->time)), &value))
    return -1;
  return g_value_get_int (&value);
}

/* Marks what can't be read in a line that is asked for. */
static gboolean
judge_line (GtkWidget *line, gboolean good)
{
  good |= !gtk_widget_get_visible (line);
  if (good)
    gtk_widget_remove_css_class (line, "error");
  else
    gtk_widget_add_css_class (line, "error");
  return good;
}

static void
judge (LapPublishDialog *self)
{
  g_autoptr (GTimeZone) zone = g_time_zone_new_identifier (gtk_editable_get_text (GTK_EDITABLE (self->timezone)));
  gboolean good = judge_line (self->timezone, zone != NULL);

  good &= judge_line (self->time, time_of (self) >= 0);
  adw_message_dialog_set_response_enabled (ADW_MESSAGE_DIALOG (self), "export", good);
}

static void
show_rows (LapPublishDialog *self)
{
  const Choice *choice = chosen (self);
  LapFormatFlags flags = choice != NULL ? choice->format->flags : 0;
  gboolean day;

  if (choice == NULL)
    return;
  adw_preferences_group_set_description (ADW_PREFERENCES_GROUP (self->group), _(choice->format->purpose));
  gtk_widget_set_visible (self->offset_row, (flags & LAP_FORMAT_OFFSET) != 0);
  gtk_widget_set_visible (self->takes_row, (flags & LAP_FORMAT_TAKES) != 0);
  gtk_widget_set_visible (self->spoken_row, (flags & LAP_FORMAT_SPOKEN) != 0);
  gtk_widget_set_visible (self->held_row, !is_week (self) && flags & LAP_FORMAT_AT && flags & LAP_FORMAT_OFFSET);
  day = has_day (self);
  gtk_widget_set_visible (self->day_row, day);
  gtk_widget_set_visible (self->time, day && !is_week (self));
  gtk_widget_set_visible (self->timezone, day && !is_week (self));
  judge (self);
}

static void
show_day (LapPublishDialog *self)
{
  g_autoptr (GDateTime) day = gtk_calendar_get_date (GTK_CALENDAR (self->calendar));
  g_autofree char *text = g_date_time_format (day, "%x");

  gtk_menu_button_set_label (GTK_MENU_BUTTON (self->day), text);
}

static void
where_cb (const char *path, gpointer data)
{
  Question *question = data;

  if (path != NULL)
    lap_publish_to (question->window, question->format, &question->how, path);
  g_object_unref (question->window);
  g_free (question->at);
  g_free (question->timezone);
  g_free (question->from);
  g_free (question);
}

/* Only what means something to the format is told. */
static Question *
question_new (LapPublishDialog *self)
{
  Question *question = g_new0 (Question, 1);
  LapFormatFlags flags = chosen (self)->format->flags;
  g_autoptr (GDateTime) day = gtk_calendar_get_date (GTK_CALENDAR (self->calendar));
  g_autofree char *date = g_date_time_format (day, "%F");

  question->window = g_object_ref (self->window);
  question->format = chosen (self)->format;
  if (has_day (self) && is_week (self))
    question->from = g_steal_pointer (&date);
  else if (has_day (self)) {
    question->at = g_strdup_printf ("%sT%02d:%02d", date, time_of (self) / 60, time_of (self) % 60);
    question->timezone = g_strdup (gtk_editable_get_text (GTK_EDITABLE (self->timezone)));
  }
  question->how = (LapPublication) { .at = question->at, .timezone = question->timezone, .from = question->from };
  if (flags & LAP_FORMAT_OFFSET)
    question->how.offset = gtk_spin_button_get_value (GTK_SPIN_BUTTON (self->offset));
  question->how.takes = flags & LAP_FORMAT_TAKES && gtk_switch_get_active (GTK_SWITCH (self->takes));
  question->how.spoken = flags & LAP_FORMAT_SPOKEN && gtk_switch_get_active (GTK_SWITCH (self->spoken));
  return question;
}

static void
lap_publish_dialog_response (AdwMessageDialog *dialog, const char *response)
{
  LapPublishDialog *self = LAP_PUBLISH_DIALOG (dialog);
  const Choice *choice = chosen (self);
  gboolean folder = g_str_equal (choice->suffix, "/");
  g_autofree char *ending = folder ? g_strdup ("") : g_strconcat (".", choice->suffix, NULL);
  g_autofree char *name = NULL;

  if (!g_str_equal (response, "export"))
    return;
  name = g_strdup_printf (_("%1$s - %2$s"), lap_document_title (lap_window_document (self->window)),
                          _(choice->format->title));
  lap_files_save (GTK_WINDOW (self->window), _("Export"), name, ending, where_cb, question_new (self));
}

static void
choice_clear (gpointer data)
{
  g_free (((Choice *) data)->suffix);
}

/* What can be made of the document. */
static void
fill_choices (LapPublishDialog *self)
{
  g_autoptr (GtkStringList) titles = gtk_string_list_new (NULL);
  LapFormatFlags made_of = is_week (self) ? LAP_FORMAT_WEEK : LAP_FORMAT_SESSION;

  for (guint i = 0; i < lap_formats_n (); i++) {
    const LapFormat *format = lap_formats_nth (i);
    g_auto (GStrv) suffixes = g_strsplit (format->suffixes, " ", -1);

    for (guint k = 0; format->flags & made_of && suffixes[k] != NULL; k++) {
      Choice choice = { format, g_strdup (suffixes[k]) };
      gboolean folder = g_str_equal (suffixes[k], "/");
      g_autofree char *title = g_strdup_printf (folder ? _("%s (folder)") : "%s (.%s)", _(format->title), suffixes[k]);

      g_array_append_val (self->choices, choice);
      gtk_string_list_append (titles, title);
    }
  }
  adw_combo_row_set_model (ADW_COMBO_ROW (self->format), G_LIST_MODEL (titles));
}

static void
lap_publish_dialog_dispose (GObject *object)
{
  g_clear_object (&LAP_PUBLISH_DIALOG (object)->window);
  G_OBJECT_CLASS (lap_publish_dialog_parent_class)->dispose (object);
}

static void
lap_publish_dialog_finalize (GObject *object)
{
  g_array_unref (LAP_PUBLISH_DIALOG (object)->choices);
  G_OBJECT_CLASS (lap_publish_dialog_parent_class)->finalize (object);
}

static void
lap_publish_dialog_class_init (LapPublishDialogClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_publish_dialog_dispose;
  G_OBJECT_CLASS (klass)->finalize = lap_publish_dialog_finalize;
  ADW_MESSAGE_DIALOG_CLASS (klass)->response = lap_publish_dialog_response;
  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/publish-dialog.ui");
  gtk_widget_class_bind_template_child (widget_class, LapPublishDialog, group);
  gtk_widget_class_bind_template_child (widget_class, LapPublishDialog, format);
  gtk_widget_class_bind_template_child (widget_class, LapPublishDialog, offset_row);
  gtk_widget_class_bind_template_child (widget_class, LapPublishDialog, offset);
  gtk_widget_class_bind_template_child (widget_class, LapPublishDialog, takes_row);
  gtk_widget_class_bind_template_child (widget_class, LapPublishDialog, takes);
  gtk_widget_class_bind_template_child (widget_class, LapPublishDialog, spoken_row);
  gtk_widget_class_bind_template_child (widget_class, LapPublishDialog, spoken);
  gtk_widget_class_bind_template_child (widget_class, LapPublishDialog, held_row);
  gtk_widget_class_bind_template_child (widget_class, LapPublishDialog, held);
  gtk_widget_class_bind_template_child (widget_class, LapPublishDialog, day_row);
  gtk_widget_class_bind_template_child (widget_class, LapPublishDialog, day);
  gtk_widget_class_bind_template_child (widget_class, LapPublishDialog, calendar);
  gtk_widget_class_bind_template_child (widget_class, LapPublishDialog, time);
  gtk_widget_class_bind_template_child (widget_class, LapPublishDialog, timezone);
  gtk_widget_class_bind_template_callback (widget_class, show_rows);
  gtk_widget_class_bind_template_callback (widget_class, show_day);
  gtk_widget_class_bind_template_callback (widget_class, judge);
}

static void
lap_publish_dialog_init (LapPublishDialog *self)
{
  self->choices = g_array_new (FALSE, FALSE, sizeof (Choice));
  g_array_set_clear_func (self->choices, choice_clear);
}

/* The computer's own timezone, where it has a name. */
static void
fill_timezone (LapPublishDialog *self)
{
  g_autoptr (GTimeZone) local = g_time_zone_new_local ();
  const char *name = g_time_zone_get_identifier (local);
  g_autoptr (GTimeZone) known = g_time_zone_new_identifier (name);

  gtk_editable_set_text (GTK_EDITABLE (self->timezone), known != NULL ? name : "UTC");
}

static void
fill_time (LapPublishDialog *self)
{
  g_auto (GValue) value = G_VALUE_INIT;
  g_autofree char *text = NULL;

  g_value_init (&value, G_TYPE_INT);
  g_value_set_int (&value, USUAL_TIME);
  text = lap_field_text (&time_field, &value);
  gtk_editable_set_text (GTK_EDITABLE (self->time), text);
  gtk_widget_set_tooltip_text (self->time, lap_field_hint (&time_field));
}

GtkWindow *
lap_publish_dialog_new (LapWindow *window)
{
  LapPublishDialog *self = g_object_new (LAP_TYPE_PUBLISH_DIALOG, "transient-for", window, NULL);
  LapTimeline *timeline = lap_document_timeline (lap_window_document (window));

  self->window = g_object_ref (window);
  gtk_widget_init_template (GTK_WIDGET (self));
  lap_field_choice_tip (self->format);
  if (is_week (self))
    adw_preferences_row_set_title (ADW_PREFERENCES_ROW (self->day_row), _("First day"));
  gtk_widget_set_sensitive (self->takes_row, timeline != NULL && lap_rows_n (timeline->session->takes) > 0);
  fill_time (self);
  fill_timezone (self);
  show_day (self);
  fill_choices (self);
  show_rows (self);
  return GTK_WINDOW (self);
}
