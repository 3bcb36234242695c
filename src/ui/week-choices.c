/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/week-choices.h"

void
lap_room_choices (LapDocument *document, GPtrArray *ids, GPtrArray *titles)
{
  LapList *rooms = lap_document_week (document)->rooms;

  for (guint i = 0; i < lap_list_n (rooms); i++) {
    const LapRoom *room = lap_list_nth (rooms, i);

    g_ptr_array_add (ids, g_strdup (room->id));
    g_ptr_array_add (titles, (gpointer) lap_room_title (room));
  }
}

void
lap_coach_choices (LapDocument *document, GPtrArray *ids, GPtrArray *titles)
{
  LapList *coaches = lap_document_week (document)->coaches;

  for (guint i = 0; i < lap_list_n (coaches); i++) {
    const LapCoach *coach = lap_list_nth (coaches, i);

    g_ptr_array_add (ids, g_strdup (coach->id));
    g_ptr_array_add (titles, (gpointer) lap_coach_title (coach));
  }
}

void
lap_combo_set_titles (AdwComboRow *row, GPtrArray *titles)
{
  GListModel *now = adw_combo_row_get_model (row);
  gboolean same = now != NULL && g_list_model_get_n_items (now) == titles->len;
  g_autoptr (GtkStringList) list = gtk_string_list_new (NULL);

  for (guint i = 0; i < titles->len; i++) {
    same = same && g_str_equal (gtk_string_list_get_string (GTK_STRING_LIST (now), i), titles->pdata[i]);
    gtk_string_list_append (list, titles->pdata[i]);
  }
  if (!same)
    adw_combo_row_set_model (row, G_LIST_MODEL (list));
}
