/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/rehearse/sound.h"

#include "ui/rehearse/output-row.h"
#include "ui/rehearse/window.h"
#include "ui/settings.h"

#include <glib/gi18n-lib.h>

#define TRY_IN  3 /* seconds of the sound test before its long tone */
#define TRY_OUT 3 /* seconds after it */

/* Two outputs are remembered: for the room, and for an ear. */
enum { ROOM, EAR, N_CHOSEN };
static const char *const keys[N_CHOSEN] = { "rehearse-output", "rehearse-earpiece" };

struct _LapRehearseSound {
  AdwPreferencesGroup parent_instance;
  GtkWidget   *tones, *names, *output, *volume, *try, *trouble;
  LapDocument *document; /* or NULL */
  LapScene    *tried;    /* by the sound test, or NULL */
  LapPlayer   *trying;   /* what it plays through */
  guint        try_end;
};

G_DEFINE_FINAL_TYPE (LapRehearseSound, lap_rehearse_sound, ADW_TYPE_PREFERENCES_GROUP)

static LapSound
sound_of (LapRehearseSound *self)
{
  return self->document != NULL ? lap_document_session (self->document)->sound : LAP_SOUND_AFTER;
}

static int
which (LapRehearseSound *self)
{
  return sound_of (self) == LAP_SOUND_EARPIECE ? EAR : ROOM;
}

void
lap_rehearse_sound_trouble (LapRehearseSound *self, const char *text)
{
  gtk_widget_set_visible (self->trouble, text != NULL);
  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (self->trouble), text != NULL ? text : "");
}

/* Outputs */

static void
chosen_cb (LapRehearseSound *self)
{
  lap_rehearse_sound_trouble (self, NULL);
}

/* Where it is heard: floating, NULL with *@quiet where it must not be heard anywhere, NULL for the system's own. */
static GstElement *
sink_new (LapRehearseSound *self, gboolean *quiet)
{
  const char *chosen = lap_output_row_chosen (LAP_OUTPUT_ROW (self->output));
  GstElement *sink = lap_output_row_sink (LAP_OUTPUT_ROW (self->output));
  g_autofree char *text = NULL;

  *quiet = sink == NULL && which (self) == EAR;
  if (sink != NULL)
    return sink;
  if (*quiet && *chosen == '\0')
    text = g_strdup (_("Choose the earpiece: until then nothing is heard, for the room is filmed with its sound"));
  else if (*quiet)
    text = g_strdup_printf (_("%s isn’t connected: nothing is heard, for the room is filmed with its sound"), chosen);
  else if (*chosen != '\0')
    text = g_strdup_printf (_("%s isn’t connected: the default output is used"), chosen);
  lap_rehearse_sound_trouble (self, text);
  return NULL;
}

LapPlayer *
lap_rehearse_sound_open (LapRehearseSound *self, LapScene *scene)
{
  gboolean tones = gtk_switch_get_active (GTK_SWITCH (self->tones));
  gboolean names = gtk_switch_get_active (GTK_SWITCH (self->names)), quiet;
  g_autoptr (GError) error = NULL;
  LapSounding *sounding;
  LapPlayer *player;
  GstElement *sink;

  lap_rehearse_sound_trouble (self, NULL);
  if (!tones && !names)
    return NULL;
  sink = sink_new (self, &quiet);
  if (quiet)
    return NULL;
  sounding = lap_sounding_new (scene->rehearsal, scene->timeline, sound_of (self) == LAP_SOUND_LIVE);
  if (!tones)
    lap_sounding_mute (sounding);
  player = lap_player_new (sounding, sink, &error);
  if (player != NULL) {
    lap_player_set_volume (player, gtk_range_get_value (GTK_RANGE (self->volume)));
    if (names)
      lap_player_speak (player, scene->script, &error);
  }
  if (error != NULL)
    lap_rehearse_sound_trouble (self, error->message);
  return player;
}

/* Sound test */

static gboolean
stop_try (gpointer data)
{
  LapRehearseSound *self = data;

  self->try_end = 0;
  g_clear_pointer (&self->trying, lap_player_free);
  g_clear_pointer (&self->tried, lap_scene_free);
  gtk_widget_set_sensitive (self->try, TRUE);
  return G_SOURCE_REMOVE;
}

static void
trouble_cb (const char *why, gpointer data)
{
  lap_rehearse_sound_trouble (data, why);
}

/* The second of the first name, or of the beginning. */
static int
first_heard (LapRehearseSound *self)
{
  const LapScript *script = self->tried->script;

  for (guint i = 0; gtk_switch_get_active (GTK_SWITCH (self->names)) && i < script->n; i++)
    if (script->lines[i].kind == LAP_LINE_NAME)
      return script->lines[i].start;
  return 0;
}

/* The count-in of a rehearsal and what comes then, through the same output; nothing is shown. */
static void
try_cb (LapRehearseSound *self)
{
  self->tried = lap_scene_new (lap_document_timeline (self->document), lap_document_checkup (self->document),
                               lap_rehearse_time, NULL);
  lap_rehearsal_jump (self->tried->rehearsal, first_heard (self));
  lap_rehearsal_start (self->tried->rehearsal, TRY_IN);
  self->trying = lap_rehearse_sound_open (self, self->tried);
  if (self->trying == NULL) {
    stop_try (self);
    return;
  }
  lap_player_watch (self->trying, trouble_cb, self);
  gtk_widget_set_sensitive (self->try, FALSE);
  self->try_end = g_timeout_add_seconds (TRY_IN + TRY_OUT, stop_try, self);
}

/* Making it */

static void
switched_cb (LapRehearseSound *self)
{
  gboolean heard = gtk_switch_get_active (GTK_SWITCH (self->tones)) || gtk_switch_get_active (GTK_SWITCH (self->names));

  gtk_widget_set_sensitive (self->try, heard && self->trying == NULL && self->document != NULL &&
                                       lap_document_timeline (self->document)->length > 0);
}

static const char *
told (LapSound sound)
{
  switch (sound) {
    case LAP_SOUND_LIVE:
      return _("The film has the sound of the room: while people work nothing is heard, and the edge of the screen "
               "flashes.");
    case LAP_SOUND_EARPIECE:
      return _("The film has the sound of the room, and you wear an earpiece: only the earpiece is used, never the "
               "loudspeaker.");
    default:
      return _("The film gets its sound afterwards: what is heard here doesn’t matter to it.");
  }
}

void
lap_rehearse_sound_show (LapRehearseSound *self, LapDocument *document)
{
  gboolean ear;

  g_set_object (&self->document, document);
  ear = which (self) == EAR;
  adw_preferences_group_set_description (ADW_PREFERENCES_GROUP (self), told (sound_of (self)));
  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (self->output), ear ? _("Earpiece") : _("Output"));
  lap_output_row_set (LAP_OUTPUT_ROW (self->output), keys[which (self)],
                      ear ? _("None chosen") : _("Default output"));
  switched_cb (self);
}

static void
lap_rehearse_sound_dispose (GObject *object)
{
  LapRehearseSound *self = LAP_REHEARSE_SOUND (object);

  g_clear_handle_id (&self->try_end, g_source_remove);
  g_clear_pointer (&self->trying, lap_player_free);
  g_clear_pointer (&self->tried, lap_scene_free);
  g_clear_object (&self->document);
  G_OBJECT_CLASS (lap_rehearse_sound_parent_class)->dispose (object);
}

static void
lap_rehearse_sound_class_init (LapRehearseSoundClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_rehearse_sound_dispose;
  g_type_ensure (LAP_TYPE_OUTPUT_ROW);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/rehearse/sound.ui");
  gtk_widget_class_bind_template_child (widget_class, LapRehearseSound, tones);
  gtk_widget_class_bind_template_child (widget_class, LapRehearseSound, names);
  gtk_widget_class_bind_template_child (widget_class, LapRehearseSound, output);
  gtk_widget_class_bind_template_child (widget_class, LapRehearseSound, volume);
  gtk_widget_class_bind_template_child (widget_class, LapRehearseSound, try);
  gtk_widget_class_bind_template_child (widget_class, LapRehearseSound, trouble);
  gtk_widget_class_bind_template_callback (widget_class, chosen_cb);
  gtk_widget_class_bind_template_callback (widget_class, switched_cb);
  gtk_widget_class_bind_template_callback (widget_class, try_cb);
}

static void
lap_rehearse_sound_init (LapRehearseSound *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  lap_settings_bind ("rehearse-tones", self->tones, "active");
  lap_settings_bind ("rehearse-names", self->names, "active");
  lap_settings_bind ("rehearse-volume", gtk_range_get_adjustment (GTK_RANGE (self->volume)), "value");
}
