/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "store/week-clip.h"

#include "base/error.h"
#include "edit/week-many.h"
#include "store/documents.h"

#include <glib/gi18n-lib.h>

static void
add_copy (GPtrArray *copies, gpointer item)
{
  if (item != NULL)
    g_ptr_array_add (copies, lap_object_copy (item));
}

GBytes *
lap_week_clip_write (LapWeek *week, GPtrArray *classes)
{
  g_autoptr (LapWeek) clip = lap_week_new (week->title, week->timezone);
  g_autoptr (GPtrArray) copies = g_ptr_array_new_with_free_func (g_object_unref);
  g_autoptr (GPtrArray) rooms = g_ptr_array_new_with_free_func (g_object_unref);
  g_autoptr (GPtrArray) coaches = g_ptr_array_new_with_free_func (g_object_unref);
  g_autoptr (GHashTable) known = g_hash_table_new (NULL, NULL);

  for (guint i = 0; i < classes->len; i++) {
    LapClass *c = g_ptr_array_index (classes, i);
    LapRoom *room = lap_week_room (week, c->room);
    LapCoach *coach = lap_week_coach (week, c->coach);

    add_copy (copies, c);
    if (room != NULL && g_hash_table_add (known, room))
      add_copy (rooms, room);
    if (coach != NULL && g_hash_table_add (known, coach))
      add_copy (coaches, coach);
  }
  lap_list_splice (clip->rooms, 0, 0, rooms);
  lap_list_splice (clip->coaches, 0, 0, coaches);
  lap_list_splice (clip->classes, 0, 0, copies);
  return lap_week_to_bytes (clip);
}

GPtrArray *
lap_week_clip_read (LapWeek *week, GBytes *bytes, GError **error)
{
  g_autoptr (LapWeek) clip = lap_week_from_bytes (bytes, error);
  g_autoptr (GPtrArray) classes = g_ptr_array_new ();
  GPtrArray *copies;

  if (clip == NULL)
    return NULL;
  for (guint i = 0; i < lap_list_n (clip->classes); i++)
    g_ptr_array_add (classes, lap_list_nth (clip->classes, i));
  if (classes->len == 0) {
    g_set_error_literal (error, LAP_ERROR, LAP_ERROR_INVALID, _("there is no class in it"));
    return NULL;
  }
  copies = lap_classes_copy (classes);
  for (guint i = 0; i < copies->len; i++) {
    LapClass *c = g_ptr_array_index (copies, i);

    if (lap_week_room (week, c->room) == NULL)
      g_clear_pointer (&c->room, g_free);
    if (lap_week_coach (week, c->coach) == NULL)
      g_clear_pointer (&c->coach, g_free);
  }
  return copies;
}
