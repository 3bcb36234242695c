/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/part-properties.h"

#include "edit/verbs-part.h"
#include "edit/verbs.h"
#include "ui/fields.h"
#include "ui/help.h"
#include "ui/tell.h"

#include <glib/gi18n-lib.h>

typedef gboolean (*When) (const LapPart *part);

typedef struct {
  const char  *group; /* the group that begins here, marked for translation, or NULL */
  LapFieldSpec spec;
  When         when;  /* NULL: always */
} Row;

static gboolean
in_stations (const LapPart *part)
{
  return part->run == LAP_RUN_STATIONS;
}

static gboolean
at_own_pace (const LapPart *part)
{
  return part->run == LAP_RUN_OWN_PACE;
}

static gboolean
on_the_minute (const LapPart *part)
{
  return part->run == LAP_RUN_ON_THE_MINUTE;
}

static gboolean
by_the_clock (const LapPart *part)
{
  return part->run != LAP_RUN_OWN_PACE;
}

static gboolean
in_sets (const LapPart *part)
{
  return part->run <= LAP_RUN_STATIONS && part->sets > 1;
}

static gboolean
has_sets (const LapPart *part)
{
  return part->run <= LAP_RUN_STATIONS;
}

static gboolean
in_rounds (const LapPart *part)
{
  return by_the_clock (part) && part->rounds > 1;
}

/* What is light enough for a rest and needs nothing: standing, without kit or jumps. */
static void
rest_choices (LapDocument *document, GPtrArray *ids, GPtrArray *titles)
{
  LapCatalogue *catalogue = lap_document_catalogue (document);
  LapSession *session = lap_document_session (document);

  for (guint i = 0; i < lap_catalogue_n (catalogue); i++) {
    LapExercise *e = lap_catalogue_nth (catalogue, i);
    gboolean light = e->posture == LAP_POSTURE_STANDING && e->kit_mask == 0 && e->impact <= LAP_IMPACT_LOW &&
                     e->use_mask & LAP_BIT (LAP_USE_WARM_UP);

    for (guint p = 0; p < lap_session_n (session); p++)
      light = light || g_strcmp0 (lap_session_nth (session, p)->rest_as, e->id) == 0;
    if (!light)
      continue;
    g_ptr_array_add (ids, g_strdup (e->id));
    g_ptr_array_add (titles, (gpointer) lap_exercise_name (e));
  }
}

static void
set_run (LapEdits *edits, LapObject *part, const GValue *value)
{
  lap_verb_put_run (edits, LAP_PART (part), g_value_get_int (value));
}

static void
set_rounds (LapEdits *edits, LapObject *part, const GValue *value)
{
  lap_edits_append (edits, lap_verb_set_rounds (LAP_PART (part), g_value_get_int (value)));
}

static const Row rows[] = {
  { N_("Part"), { "kind", N_("Kind") } },
  { NULL, { "title", N_("Title"), N_("Empty: as its kind") } },
  { N_("How it is run"), { "run", N_("Way"), .set = set_run } },
  { NULL, { "per-station", N_("People at a station") }, in_stations },
  { NULL, { "cap", N_("Length"), N_("Seconds; as many rounds as each one manages"), 30 }, at_own_pace },
  { NULL, { "every", N_("From start to start"), N_("Seconds"), 5 }, on_the_minute },
  { NULL, { "rounds", N_("Rounds"), .set = set_rounds }, by_the_clock },
  { NULL, { "sets", N_("Sets"), N_("Of each exercise before the next one") }, has_sets },
  { NULL, { "steps", N_("Work and rest of each round"), N_("As 30/30, 40/20: for all exercises; empty: their own") },
    by_the_clock },
  { N_("Rests"), { "set-rest", N_("Between sets"), N_("Seconds"), 5 }, in_sets },
  { NULL, { "round-rest", N_("Between rounds"), N_("Seconds, added to the rest of the last block"), 5 }, in_rounds },
  { NULL, { "keep-last-rest", N_("Rest after the last exercise"), N_("Else the part ends with its work") },
    by_the_clock },
  { NULL, { "rest-after", N_("After the part"), N_("Seconds"), 5 } },
  { NULL, { "rest-as", N_("Done in rests"), N_("Instead of standing still"), .choices = rest_choices } },
  { N_("Meant so"), { "aim", N_("Neighbours tire the same muscles") } },
};

typedef struct {
  LapPart   *part;
  LapFields *fields;
  GtkWidget *rows[G_N_ELEMENTS (rows)];
} Dialog;

static void
dialog_free (gpointer data)
{
  Dialog *dialog = data;

  g_object_unref (dialog->fields);
  g_object_unref (dialog->part);
  g_free (dialog);
}

static Dialog *
dialog_of (GtkWidget *window)
{
  return g_object_get_data (G_OBJECT (window), "dialog");
}

static void
show (GtkWidget *window)
{
  Dialog *dialog = dialog_of (window);

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    gtk_widget_set_visible (dialog->rows[i], rows[i].when == NULL || rows[i].when (dialog->part));
}

/* What is typed counts. */
static gboolean
close_cb (GtkWidget *window)
{
  lap_fields_commit (dialog_of (window)->fields);
  return FALSE;
}

static void
fill (Dialog *dialog, AdwPreferencesPage *page)
{
  g_autoptr (GPtrArray) parts = g_ptr_array_new ();
  AdwPreferencesGroup *group = NULL;

  for (guint i = 0; i < G_N_ELEMENTS (rows); i++) {
    if (rows[i].group != NULL) {
      group = ADW_PREFERENCES_GROUP (adw_preferences_group_new ());
      adw_preferences_group_set_title (group, _(rows[i].group));
      adw_preferences_page_add (page, group);
    }
    dialog->rows[i] = lap_fields_row (dialog->fields, &rows[i].spec);
    adw_preferences_group_add (group, dialog->rows[i]);
  }
  g_ptr_array_add (parts, dialog->part);
  lap_fields_show (dialog->fields, parts);
}

GtkWidget *
lap_part_properties_open (GtkWindow *parent, LapDocument *document, LapPart *part)
{
  GtkWidget *window = adw_preferences_window_new (), *page = adw_preferences_page_new ();
  Dialog *dialog = g_new0 (Dialog, 1);

  dialog->part = g_object_ref (part);
  dialog->fields = lap_fields_new (document, LAP_TYPE_PART);
  g_object_set_data_full (G_OBJECT (window), "dialog", dialog, dialog_free);
  fill (dialog, ADW_PREFERENCES_PAGE (page));
  gtk_widget_set_sensitive (page, lap_document_is_editable (document));
  adw_preferences_page_set_title (ADW_PREFERENCES_PAGE (page), _("Part"));
  adw_preferences_window_add (ADW_PREFERENCES_WINDOW (window), ADW_PREFERENCES_PAGE (page));
  adw_preferences_window_set_search_enabled (ADW_PREFERENCES_WINDOW (window), FALSE);
  gtk_window_set_title (GTK_WINDOW (window), _("Properties of the part"));
  gtk_widget_set_name (window, LAP_HELP_PART);
  gtk_window_set_transient_for (GTK_WINDOW (window), parent);
  gtk_window_set_modal (GTK_WINDOW (window), TRUE);
  gtk_window_set_default_size (GTK_WINDOW (window), 520, 660);
  g_signal_connect (window, "close-request", G_CALLBACK (close_cb), NULL);
  g_signal_connect_object (document, "changed", G_CALLBACK (show), window, G_CONNECT_SWAPPED);
  g_signal_connect_object (document, "told", G_CALLBACK (lap_tell_refused), window, G_CONNECT_SWAPPED);
  show (window);
  gtk_window_present (GTK_WINDOW (window));
  return window;
}
