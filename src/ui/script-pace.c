/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/script-pace.h"

#include "ui/field-row.h"

#include <glib/gi18n-lib.h>
#include <math.h>

static const struct {
  const char *property, *title, *subtitle, *label;
  double      least, most;
} rows[] = {
  { "talk-voice", N_("In talks"), N_("Words a second, standing still"), N_("Change the pace of talks"), 0.5, 6 },
  { "talk-rest", N_("In rests"), N_("Words a second, getting your breath back"), N_("Change the pace in rests"), 0.5, 6 },
  { "talk-moderate", N_("In moderate work"), N_("Words a second, working along"),
    N_("Change the pace in moderate work"), 0.5, 6 },
  { "talk-vigorous", N_("In vigorous work"), N_("Words a second, short of breath"),
    N_("Change the pace in vigorous work"), 0.5, 6 },
  { "change", N_("Changing position and kit"), N_("1 is as usual, 2 takes twice as long"),
    N_("Change how long changes take"), 0, 5 },
};

struct _LapScriptPace {
  AdwBin       parent_instance;
  LapDocument *document;
  gboolean     showing;
  GtkWidget   *group, *spins[G_N_ELEMENTS (rows)];
};

G_DEFINE_FINAL_TYPE (LapScriptPace, lap_script_pace, ADW_TYPE_BIN)

static double
held (LapScriptPace *self, guint row)
{
  double value;

  g_object_get (lap_document_session (self->document), rows[row].property, &value, NULL);
  return value;
}

/* An adjustment tells late of a value that was set while it told of another: by then it is what the session says. */
static void
value_cb (LapScriptPace *self, GtkSpinButton *spin)
{
  guint row = GPOINTER_TO_UINT (g_object_get_data (G_OBJECT (spin), "row"));
  double is = round (gtk_spin_button_get_value (spin) * 10) / 10;
  LapEdits *edits;

  if (self->showing || fabs (is - held (self, row)) < 0.05)
    return;
  edits = lap_edits_new (_(rows[row].label));
  lap_edits_set_double (edits, lap_document_session (self->document), rows[row].property, is);
  lap_document_apply (self->document, edits);
}

void
lap_script_pace_show (LapScriptPace *self)
{
  self->showing = TRUE;
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++) {
    /* A file may hold what hands don't reach. */
    gtk_spin_button_set_range (GTK_SPIN_BUTTON (self->spins[i]), MIN (rows[i].least, held (self, i)),
                               MAX (rows[i].most, held (self, i)));
    gtk_spin_button_set_value (GTK_SPIN_BUTTON (self->spins[i]), held (self, i));
  }
  gtk_widget_set_sensitive (self->group, lap_document_is_editable (self->document));
  self->showing = FALSE;
}

static void
lap_script_pace_dispose (GObject *object)
{
  LapScriptPace *self = LAP_SCRIPT_PACE (object);

  self->showing = TRUE;
  g_clear_object (&self->document);
  G_OBJECT_CLASS (lap_script_pace_parent_class)->dispose (object);
}

static void
lap_script_pace_class_init (LapScriptPaceClass *klass)
{
  G_OBJECT_CLASS (klass)->dispose = lap_script_pace_dispose;
}

static void
add_row (LapScriptPace *self, guint row)
{
  GtkWidget *spin = gtk_spin_button_new_with_range (rows[row].least, rows[row].most, 0.1);

  gtk_spin_button_set_digits (GTK_SPIN_BUTTON (spin), 1);
  g_object_set_data (G_OBJECT (spin), "row", GUINT_TO_POINTER (row));
  g_signal_connect_object (spin, "value-changed", G_CALLBACK (value_cb), self, G_CONNECT_SWAPPED);
  adw_preferences_group_add (ADW_PREFERENCES_GROUP (self->group),
                             lap_field_row (_(rows[row].title), _(rows[row].subtitle), spin));
  self->spins[row] = spin;
}

static void
lap_script_pace_init (LapScriptPace *self)
{
  self->showing = TRUE;
  self->group = adw_preferences_group_new ();
  adw_preferences_group_set_title (ADW_PREFERENCES_GROUP (self->group), _("Pace"));
  adw_preferences_group_set_description (ADW_PREFERENCES_GROUP (self->group),
                                         _("How fast you talk in this session. All seconds below are counted with it."));
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    add_row (self, i);
  adw_bin_set_child (ADW_BIN (self), self->group);
}

GtkWidget *
lap_script_pace_new (LapDocument *document)
{
  LapScriptPace *self = g_object_new (LAP_TYPE_SCRIPT_PACE, NULL);

  self->document = g_object_ref (document);
  lap_script_pace_show (self);
  return GTK_WIDGET (self);
}
