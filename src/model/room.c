/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "model/room.h"

#define AT(member) G_STRUCT_OFFSET (LapRoom, member)

static const LapField fields[] = {
  { "", "id", &lap_kind_text, AT (id), LAP_FIELD_REQUIRED, 1, 200 },
  { "", "name", &lap_kind_text, AT (title) },
  { "", "area", &lap_kind_number, AT (area), 0, 0, 1000000 },
  { "", "places", &lap_kind_int, AT (places), 0, 0, 1000000 },
  { "", "kit", &lap_kind_kit, AT (kit) },
  { "", "turnaround", &lap_kind_int, AT (turnaround), 0, 0, LAP_DAY_MINUTES },
  { "", "quiet-hours", &lap_kind_hours, AT (quiet_hours) },
};

static const LapRecord record = {
  "a room", fields, G_N_ELEMENTS (fields), .extras = G_STRUCT_OFFSET (LapObject, extras),
};

G_DEFINE_TYPE (LapRoom, lap_room, LAP_TYPE_OBJECT)

static void
lap_room_class_init (LapRoomClass *klass)
{
  lap_object_class_install (LAP_OBJECT_CLASS (klass), &record);
}

static void
lap_room_init (LapRoom *self)
{
  lap_object_setup (LAP_OBJECT (self));
}

LapRoom *
lap_room_new (const char *id, const char *title)
{
  LapRoom *room = g_object_new (LAP_TYPE_ROOM, NULL);

  room->id = g_strdup (id);
  room->title = g_strdup (title);
  return room;
}

const char *
lap_room_title (const LapRoom *room)
{
  return room->title != NULL && *room->title != '\0' ? room->title : room->id;
}
