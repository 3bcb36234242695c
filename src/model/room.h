/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A room of a week. Read the fields; write by edits.
 */
#pragma once

#include "model/kit.h"
#include "model/object.h"
#include "model/when.h"

G_BEGIN_DECLS

#define LAP_TYPE_ROOM (lap_room_get_type ())
#define LAP_ROOM(o) (G_TYPE_CHECK_INSTANCE_CAST ((o), LAP_TYPE_ROOM, LapRoom))
#define LAP_IS_ROOM(o) (G_TYPE_CHECK_INSTANCE_TYPE ((o), LAP_TYPE_ROOM))

typedef struct {
  LapObject parent_instance;
  char     *id;
  char     *title;      /* the member `name`; NULL or "" = its id */
  double    area;       /* square metres; 0 = not known */
  int       places;     /* people; 0 = no limit */
  LapKit   *kit;
  int       turnaround; /* minutes from one class to the next */
  LapHours *quiet_hours;
} LapRoom;

typedef struct {
  LapObjectClass parent_class;
} LapRoomClass;

GType       lap_room_get_type (void);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (LapRoom, g_object_unref)

LapRoom    *lap_room_new      (const char    *id,
                               const char    *title);
/* What people call it. Transfer none. */
const char *lap_room_title    (const LapRoom *room);

G_END_DECLS
