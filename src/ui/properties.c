/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/properties.h"

#include "model/session.h"
#include "store/documents.h"
#include "ui/date-button.h"
#include "ui/form.h"
#include "ui/help.h"

#include <adwaita.h>
#include <glib/gi18n-lib.h>

static const LapFormRow rows[] = {
  { NULL, N_("Session") },
  { "title", N_("Title") },
  { "coach", N_("Coach") },
  { "link", N_("Link"), N_("Printed on sheets as a square code") },
  { "music", N_("Music"), N_("Named in the post") },
  { "target", N_("Length wanted"), N_("Minutes; 0 for none") , 60, 0, 5 },
  { "focus", N_("Works on purpose"), N_("Regions; none for the whole body") },
  { NULL, N_("Group") },
  { "group-level", N_("Level") },
  { "group-count", N_("People"), NULL, 1, 0, 1 },
  { "group-age", N_("Age"), N_("Years, about"), 1, 0, 5 },
  { "screened", N_("Screened on"),
    N_("When people last answered the questions about their health; an answer is usually good for 12 months"),
    .helper = lap_date_button_new },
  { "also-for", N_("Also for"), N_("Whom the plan spares: a line on sheets and in the script") },
  { NULL, N_("Place") },
  { "kit", N_("Kit that is there") },
  { "space-width", N_("Width"), N_("for all people together; 0 when it doesn’t matter"), LAP_UNIT_DISTANCE, 1, 0.5 },
  { "space-length", N_("Length"), N_("for all people together; 0 when it doesn’t matter"), LAP_UNIT_DISTANCE, 1, 0.5 },
  { "quiet", N_("Quiet"), N_("Somebody lives below") },
  { NULL, N_("Effort wanted in main parts") },
  { "band-low", N_("At least"), N_("Percent of heart-rate reserve"), 0.01, 0, 5 },
  { "band-high", N_("At most"), N_("Percent of heart-rate reserve"), 0.01, 0, 5 },
  { NULL, N_("Filming") },
  { "film-sound", N_("Sound") },
  { "film-frame", N_("Frame") },
  { "film-lens", N_("Lens"), N_("Millimetres, as on full frame"), 1, 0, 1 },
  { "film-room", N_("Farthest camera"), N_("as far as the room allows"), LAP_UNIT_DISTANCE, 1, 0.5 },
  { "film-camera-height", N_("Height of the camera"), NULL, LAP_UNIT_DISTANCE, 1, 0.1 },
  { "film-lead", N_("Lead"), N_("Seconds the camera runs before the clock starts"), 1, 0, 1 },
};

static gconstpointer
get_session (gpointer document)
{
  return lap_document_session (document);
}

static gboolean
set_value (gpointer document, const LapField *field, const char *title, const GValue *value, GError **error)
{
  g_autofree char *property = lap_field_property (field);
  g_autofree char *label = g_strdup_printf (_("Change: %s"), title);
  LapEdits *edits;

  if (!lap_session_allows (lap_document_session (document), property, value, error))
    return FALSE;
  edits = lap_edits_new (label);
  lap_edits_set (edits, lap_document_session (document), property, value);
  lap_document_apply (document, edits);
  return TRUE;
}

/* A band that isn't stated is the usual one. */
static double
usual_band (gpointer document, const LapField *field)
{
  double low, high;

  lap_session_band (lap_document_session (document), &low, &high);
  return g_str_equal (field->name, "low") ? low : high;
}

static guint
one_each (gpointer document)
{
  return MAX (lap_document_session (document)->count, 1);
}

static void
show_cb (GtkWidget *properties)
{
  lap_form_show (g_object_get_data (G_OBJECT (properties), "form"));
}

GtkWidget *
lap_properties_open (LapWindow *window)
{
  LapDocument *document = lap_window_document (window);
  GtkWidget *properties = adw_preferences_window_new (), *page = adw_preferences_page_new ();
  const LapFormTarget target = { lap_object_record (lap_document_session (document)), get_session, set_value,
                                 usual_band, one_each };
  LapForm *form = lap_form_new (&target, document);

  g_object_set_data_full (G_OBJECT (properties), "document", g_object_ref (document), g_object_unref);
  g_object_set_data_full (G_OBJECT (properties), "form", form, (GDestroyNotify) lap_form_free);
  lap_form_fill (form, ADW_PREFERENCES_PAGE (page), rows, G_N_ELEMENTS (rows));
  adw_preferences_page_set_title (ADW_PREFERENCES_PAGE (page), _("Session"));
  adw_preferences_window_add (ADW_PREFERENCES_WINDOW (properties), ADW_PREFERENCES_PAGE (page));
  adw_preferences_window_set_search_enabled (ADW_PREFERENCES_WINDOW (properties), FALSE);
  gtk_widget_set_sensitive (page, lap_document_is_editable (document));
  gtk_window_set_title (GTK_WINDOW (properties), _("Properties of the session"));
  gtk_widget_set_name (properties, LAP_HELP_PROPERTIES);
  gtk_window_set_transient_for (GTK_WINDOW (properties), GTK_WINDOW (window));
  gtk_window_set_modal (GTK_WINDOW (properties), TRUE);
  gtk_window_set_default_size (GTK_WINDOW (properties), 560, 640);
  g_signal_connect_object (document, "changed", G_CALLBACK (show_cb), properties, G_CONNECT_SWAPPED);
  lap_form_show (form);
  gtk_window_present (GTK_WINDOW (properties));
  return properties;
}
