/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/week-room.h"

#include "store/folder.h"
#include "ui/windows.h"

void
room_make (Room *room)
{
  room->folder = folder_new ();
  room->path = g_build_filename (room->folder, "harbour.lapweek", NULL);
  put_text (room->path, week_text);
}

void
room_open (Room *room)
{
  room->window = windows_open (room->path);
  room->document = lap_window_document (room->window);
  room->view = lap_week_window_view (LAP_WEEK_WINDOW (room->window));
  room->scene = lap_week_view_scene (room->view);
}

void
room_close (Room *room)
{
  windows_settle (room->window);
  windows_close (room->window);
  folder_remove (room->folder);
  g_free (room->path);
}
