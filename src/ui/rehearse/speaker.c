/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/rehearse/speaker.h"

struct _LapSpeaker {
  LapSounding  *sounding;
  GPtrArray    *texts; /* each once */
  guint         next;
  GCancellable *cancellable;
};

static void next (LapSpeaker *self);

static void
work (GTask *task, gpointer source, gpointer text, GCancellable *cancellable)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (LapVoice) voice = lap_voice_new (LAP_SOUNDING_RATE, &error);
  LapSpoken *spoken = voice != NULL ? lap_voice_say (voice, text, cancellable, &error) : NULL;

  if (spoken != NULL)
    g_task_return_pointer (task, spoken, (GDestroyNotify) lap_spoken_free);
  else
    g_task_return_error (task, g_steal_pointer (&error));
}

static void
said_cb (GObject *source, GAsyncResult *result, gpointer data)
{
  g_autoptr (GError) error = NULL;
  LapSpoken *spoken = g_task_propagate_pointer (G_TASK (result), &error);
  LapSpeaker *self = data;

  /* Cancelled, it is gone. */
  if (g_cancellable_is_cancelled (g_task_get_cancellable (G_TASK (result)))) {
    g_clear_pointer (&spoken, lap_spoken_free);
    return;
  }
  if (spoken != NULL)
    lap_sounding_teach (self->sounding, g_task_get_task_data (G_TASK (result)), spoken);
  next (self);
}

static void
next (LapSpeaker *self)
{
  g_autoptr (GTask) task = NULL;

  if (self->next == self->texts->len)
    return;
  task = g_task_new (NULL, self->cancellable, said_cb, self);
  g_task_set_task_data (task, g_strdup (g_ptr_array_index (self->texts, self->next++)), g_free);
  g_task_run_in_thread (task, work);
}

LapSpeaker *
lap_speaker_new (LapSounding *sounding, const LapScript *script, GError **error)
{
  g_autoptr (LapVoice) voice = lap_voice_new (LAP_SOUNDING_RATE, error);
  g_autoptr (GHashTable) known = g_hash_table_new (g_str_hash, g_str_equal);
  const LapNames *names;
  LapSpeaker *self;

  if (voice == NULL)
    return NULL;
  self = g_new0 (LapSpeaker, 1);
  self->sounding = sounding;
  self->texts = g_ptr_array_new_with_free_func (g_free);
  self->cancellable = g_cancellable_new ();
  lap_sounding_speak (sounding, script);
  names = lap_sounding_names (sounding);
  for (guint i = 0; i < names->n; i++)
    if (g_hash_table_add (known, names->names[i].text))
      g_ptr_array_add (self->texts, g_strdup (names->names[i].text));
  next (self);
  return self;
}

void
lap_speaker_free (LapSpeaker *self)
{
  g_cancellable_cancel (self->cancellable);
  g_object_unref (self->cancellable);
  g_ptr_array_unref (self->texts);
  g_free (self);
}
