/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The sound of a rehearsal: outputs that come and go, which one is used for which film, and what is told when
 * something is missing.
 */
#include "ui/windows.h"

#include "ui/false-output.h"
#include "ui/preferences.h"
#include "ui/rehearse/sound.h"
#include "ui/rehearse/window.h"

typedef struct {
  LapWindow        *window;
  LapRehearseSound *sound;
  LapScene         *scene;
  GtkWidget        *tones, *names, *output, *trouble;
} Room;

/* The row of that title. */
static GtkWidget *
row (GtkWidget *widget, const char *title)
{
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL; child = gtk_widget_get_next_sibling (child)) {
    GtkWidget *found = ADW_IS_PREFERENCES_ROW (child) &&
                       g_str_equal (adw_preferences_row_get_title (ADW_PREFERENCES_ROW (child)), title)
                           ? child : row (child, title);

    if (found != NULL)
      return found;
  }
  return NULL;
}

static Room
room_with (LapSound sound)
{
  Room room = { windows_demo () };
  LapDocument *document = lap_window_document (room.window);
  g_auto (GValue) value = G_VALUE_INIT;
  LapEdits *edits = lap_edits_new ("Sound");

  g_value_init (&value, G_TYPE_INT);
  g_value_set_int (&value, sound);
  lap_edits_set (edits, lap_document_session (document), "film-sound", &value);
  g_assert_true (lap_document_apply (document, edits));
  gtk_widget_activate_action (GTK_WIDGET (room.window), "win.view", "s", "rehearse");
  windows_settle (room.window);
  room.sound = LAP_REHEARSE_SOUND (windows_find (GTK_WIDGET (room.window), LAP_TYPE_REHEARSE_SOUND, NULL));
  room.scene = lap_scene_new (lap_document_timeline (document), lap_document_checkup (document), lap_rehearse_time, NULL);
  room.tones = windows_find (row (GTK_WIDGET (room.sound), "Tones"), GTK_TYPE_SWITCH, NULL);
  room.names = windows_find (row (GTK_WIDGET (room.sound), "Spoken names"), GTK_TYPE_SWITCH, NULL);
  room.output = row (GTK_WIDGET (room.sound), sound == LAP_SOUND_EARPIECE ? "Earpiece" : "Output");
  g_assert_nonnull (room.output);
  gtk_switch_set_active (GTK_SWITCH (room.tones), TRUE);
  gtk_switch_set_active (GTK_SWITCH (room.names), FALSE);
  return room;
}

static void
room_close (Room *room)
{
  lap_scene_free (room->scene);
  windows_close (room->window);
}

static guint
listed (Room *room)
{
  return g_list_model_get_n_items (adw_combo_row_get_model (ADW_COMBO_ROW (room->output)));
}

static void
choose (Room *room, const char *name)
{
  GListModel *model = adw_combo_row_get_model (ADW_COMBO_ROW (room->output));

  for (guint i = 0; i < listed (room); i++) {
    g_autoptr (GtkStringObject) item = g_list_model_get_item (model, i);

    if (g_str_equal (gtk_string_object_get_string (item), name)) {
      adw_combo_row_set_selected (ADW_COMBO_ROW (room->output), i);
      return;
    }
  }
  g_error ("%s is not listed", name);
}

static const char *
chosen (Room *room)
{
  return gtk_string_object_get_string (adw_combo_row_get_selected_item (ADW_COMBO_ROW (room->output)));
}

/* Until the messages of GStreamer have arrived. */
static void
wait_for (Room *room, guint n)
{
  while (listed (room) != n)
    g_main_context_iteration (NULL, TRUE);
}

/* Which line says what is missing; NULL for none. */
static const char *
trouble (Room *room)
{
  GtkWidget *found = NULL;

  for (GtkWidget *i = gtk_widget_get_last_child (gtk_widget_get_parent (room->output)); i != NULL && found == NULL;
       i = gtk_widget_get_prev_sibling (i))
    if (ADW_IS_ACTION_ROW (i) && adw_action_row_get_icon_name (ADW_ACTION_ROW (i)) != NULL)
      found = i;
  g_assert_nonnull (found);
  return gtk_widget_get_visible (found) ? adw_preferences_row_get_title (ADW_PREFERENCES_ROW (found)) : NULL;
}

/* Opens what is heard, and tells whether it was the output that is plugged in. */
static gboolean
is_heard_there (Room *room)
{
  guint before = false_output_opened ();
  LapPlayer *player = lap_rehearse_sound_open (room->sound, room->scene);
  gboolean there = player != NULL && false_output_opened () == before + 1;

  g_clear_pointer (&player, lap_player_free);
  return there;
}

/* The settings list the same outputs; what is chosen there is chosen in the rehearsal, and what isn't plugged in any
 * more is told. */
static void
test_settings (void)
{
  GtkWindow *settings = lap_preferences_open (NULL);
  Room there = { .output = row (GTK_WIDGET (settings), "Sound output") }, room;
  guint n;

  gtk_test_widget_wait_for_draw (GTK_WIDGET (settings));
  n = listed (&there);
  false_output_plug ("Hall");
  wait_for (&there, n + 1);
  choose (&there, "Hall");
  gtk_window_destroy (settings);
  room = room_with (LAP_SOUND_AFTER);
  wait_for (&room, n + 1);
  g_assert_cmpstr (chosen (&room), ==, "Hall");
  g_assert_true (is_heard_there (&room));
  false_output_pull ();
  wait_for (&room, n);
  room_close (&room);
  settings = lap_preferences_open (NULL);
  there.output = row (GTK_WIDGET (settings), "Sound output");
  g_assert_cmpstr (chosen (&there), ==, "Default output");
  g_assert_nonnull (strstr (adw_action_row_get_subtitle (ADW_ACTION_ROW (there.output)), "Hall isn’t connected"));
  lap_preferences_reset ();
  g_assert_null (strstr (adw_action_row_get_subtitle (ADW_ACTION_ROW (there.output)), "Hall"));
  gtk_window_destroy (settings);
}

static void
test_outputs (void)
{
  Room room = room_with (LAP_SOUND_AFTER);
  guint n = listed (&room);

  g_assert_cmpstr (chosen (&room), ==, "Default output");
  false_output_plug ("Hall");
  wait_for (&room, n + 1);
  g_assert_cmpstr (chosen (&room), ==, "Default output");
  choose (&room, "Hall");
  g_assert_true (is_heard_there (&room));
  g_assert_null (trouble (&room));
  /* Pulled out, the default is used and that is told; back again, it is chosen as before. */
  false_output_pull ();
  wait_for (&room, n);
  g_assert_cmpstr (chosen (&room), ==, "Default output");
  g_assert_false (is_heard_there (&room));
  g_assert_nonnull (strstr (trouble (&room), "Hall isn’t connected"));
  false_output_plug ("Hall");
  wait_for (&room, n + 1);
  g_assert_cmpstr (chosen (&room), ==, "Hall");
  g_assert_true (is_heard_there (&room));
  g_assert_null (trouble (&room));
  choose (&room, "Default output");
  room_close (&room);
  false_output_pull ();
}

/* An earpiece is an output of its own: until one is chosen, or when it isn't there, nothing at all is heard. */
static void
test_earpiece (void)
{
  Room room;
  guint n;

  false_output_plug ("Ear");
  room = room_with (LAP_SOUND_EARPIECE);
  n = listed (&room);
  g_assert_cmpstr (chosen (&room), ==, "None chosen");
  g_assert_null (lap_rehearse_sound_open (room.sound, room.scene));
  g_assert_nonnull (strstr (trouble (&room), "Choose the earpiece"));
  choose (&room, "Ear");
  g_assert_null (trouble (&room));
  g_assert_true (is_heard_there (&room));
  false_output_pull ();
  wait_for (&room, n - 1);
  g_assert_null (lap_rehearse_sound_open (room.sound, room.scene));
  g_assert_nonnull (strstr (trouble (&room), "nothing is heard"));
  room_close (&room);
}

/* Without a voice the tones are heard all the same, and one line says what is missing. */
static void
test_no_voice (void)
{
  g_autofree char *path = g_strdup (g_getenv ("PATH"));
  Room room;

  false_output_plug ("Hall");
  room = room_with (LAP_SOUND_AFTER);
  choose (&room, "Hall");
  gtk_switch_set_active (GTK_SWITCH (room.names), TRUE);
  g_assert_true (is_heard_there (&room));
  g_assert_null (trouble (&room));
  g_setenv ("PATH", "/nowhere", TRUE);
  g_assert_true (is_heard_there (&room));
  g_setenv ("PATH", path, TRUE);
  g_assert_nonnull (strstr (trouble (&room), "espeak-ng"));
  /* Nothing to be heard opens nothing. */
  gtk_switch_set_active (GTK_SWITCH (room.names), FALSE);
  gtk_switch_set_active (GTK_SWITCH (room.tones), FALSE);
  g_assert_null (lap_rehearse_sound_open (room.sound, room.scene));
  g_assert_null (trouble (&room));
  room_close (&room);
  false_output_pull ();
}

static void
test_try (void)
{
  Room room;
  GtkWidget *play;

  false_output_plug ("Hall");
  room = room_with (LAP_SOUND_AFTER);
  choose (&room, "Hall");
  play = windows_find (row (GTK_WIDGET (room.sound), "Sound test"), GTK_TYPE_BUTTON, NULL);
  g_assert_true (gtk_widget_get_sensitive (play));
  g_signal_emit_by_name (play, "clicked");
  g_assert_false (gtk_widget_get_sensitive (play));
  g_assert_null (trouble (&room));
  /* It ends by itself. */
  while (!gtk_widget_get_sensitive (play))
    g_main_context_iteration (NULL, TRUE);
  gtk_switch_set_active (GTK_SWITCH (room.tones), FALSE);
  g_assert_false (gtk_widget_get_sensitive (play));
  room_close (&room);
  false_output_pull ();
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  false_output_register ();
  g_test_add_func ("/sound/settings", test_settings);
  g_test_add_func ("/ui/sound/outputs", test_outputs);
  g_test_add_func ("/ui/sound/earpiece", test_earpiece);
  g_test_add_func ("/ui/sound/no-voice", test_no_voice);
  g_test_add_func ("/ui/sound/try", test_try);
  return g_test_run ();
}
