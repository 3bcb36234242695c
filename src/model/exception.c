/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "model/exception.h"

#define MOST_CLOSED 10000

/* One class on one date */

#define AT(member) G_STRUCT_OFFSET (LapException, member)

static const LapField exception_fields[] = {
  { "", "class", &lap_kind_text, AT (class_id), LAP_FIELD_REQUIRED, 1, 200 },
  { "", "date", &lap_kind_date, AT (date), LAP_FIELD_REQUIRED },
  { "", "cancelled", &lap_kind_flag, AT (cancelled) },
  { "", "to", &lap_kind_date, AT (to) },
  { "", "start", &lap_kind_time, AT (start), 0, .preset = -1 },
  { "", "room", &lap_kind_text, AT (room), 0, 1, 200 },
  { "", "coach", &lap_kind_text, AT (coach), 0, 1, 200 },
  { "", "note", &lap_kind_text, AT (note) },
};

static gboolean
check_exception (gpointer self, guint64 seen, const LapPath *path, GError **error)
{
  const LapException *e = self;
  gboolean moved = e->to != 0 || e->start >= 0 || e->room != NULL || e->coach != NULL;

  if (e->cancelled && moved) {
    lap_path_error (error, path, "a class that is cancelled can't also be moved or given to somebody");
    return FALSE;
  }
  if (!e->cancelled && !moved && e->note == NULL) {
    lap_path_error (error, path, "expected \"cancelled\", \"to\", \"start\", \"room\", \"coach\" or \"note\"");
    return FALSE;
  }
  return TRUE;
}

static const LapRecord exception_record = {
  "an exception", exception_fields, G_N_ELEMENTS (exception_fields), .extras = G_STRUCT_OFFSET (LapObject, extras),
  .check = check_exception,
};

G_DEFINE_TYPE (LapException, lap_exception, LAP_TYPE_OBJECT)

static void
lap_exception_class_init (LapExceptionClass *klass)
{
  lap_object_class_install (LAP_OBJECT_CLASS (klass), &exception_record);
}

static void
lap_exception_init (LapException *self)
{
  lap_object_setup (LAP_OBJECT (self));
}

LapException *
lap_exception_new (const char *class_id, int date)
{
  LapException *exception = g_object_new (LAP_TYPE_EXCEPTION, NULL);

  exception->class_id = g_strdup (class_id);
  exception->date = date;
  return exception;
}

/* Spans of dates */

static gboolean
check_dates (int from, int until, const LapPath *path, GError **error)
{
  if (from <= until)
    return TRUE;
  lap_path_error (error, LAP_PATH_MEMBER (path, "until"), "expected a date that isn't before \"from\"");
  return FALSE;
}

static const LapField away_fields[] = {
  { "", "coach", &lap_kind_text, G_STRUCT_OFFSET (LapAway, coach), LAP_FIELD_REQUIRED, 1, 200 },
  { "", "from", &lap_kind_date, G_STRUCT_OFFSET (LapAway, from), LAP_FIELD_REQUIRED },
  { "", "until", &lap_kind_date, G_STRUCT_OFFSET (LapAway, until), LAP_FIELD_REQUIRED },
};

static gboolean
check_away (gpointer self, guint64 seen, const LapPath *path, GError **error)
{
  return check_dates (((LapAway *) self)->from, ((LapAway *) self)->until, path, error);
}

static const LapRecord away_record = {
  "a coach's absence", away_fields, G_N_ELEMENTS (away_fields), .extras = G_STRUCT_OFFSET (LapObject, extras),
  .check = check_away,
};

G_DEFINE_TYPE (LapAway, lap_away, LAP_TYPE_OBJECT)

static void
lap_away_class_init (LapAwayClass *klass)
{
  lap_object_class_install (LAP_OBJECT_CLASS (klass), &away_record);
}

static void
lap_away_init (LapAway *self)
{
  lap_object_setup (LAP_OBJECT (self));
}

LapAway *
lap_away_new (const char *coach, int from, int until)
{
  LapAway *away = g_object_new (LAP_TYPE_AWAY, NULL);

  away->coach = g_strdup (coach);
  away->from = from;
  away->until = until;
  return away;
}

static const LapField closed_fields[] = {
  { "", "from", &lap_kind_date, G_STRUCT_OFFSET (LapClosed, from), LAP_FIELD_REQUIRED },
  { "", "until", &lap_kind_date, G_STRUCT_OFFSET (LapClosed, until), LAP_FIELD_REQUIRED },
};

static gboolean
check_closed (gpointer self, guint64 seen, const LapPath *path, GError **error)
{
  return check_dates (((LapClosed *) self)->from, ((LapClosed *) self)->until, path, error);
}

static const LapRecord closed_record = {
  "a span of closed dates", closed_fields, G_N_ELEMENTS (closed_fields), .extras = G_STRUCT_OFFSET (LapClosed, extras),
  .present = G_STRUCT_OFFSET (LapClosed, present), .check = check_closed,
};

static gboolean
read_closed (const LapField *f, JsonNode *node, const LapPath *path, gpointer slot, GError **error)
{
  g_autoptr (LapRows) rows = lap_rows_new (&lap_kind_closed);
  JsonArray *array = JSON_NODE_HOLDS_ARRAY (node) ? json_node_get_array (node) : NULL;

  if (array == NULL || json_array_get_length (array) > MOST_CLOSED) {
    lap_path_error (error, path, "expected a list of at most %d dates", MOST_CLOSED);
    return FALSE;
  }
  for (guint i = 0; i < json_array_get_length (array); i++) {
    JsonNode *item = json_array_get_element (array, i);
    LapClosed *closed = lap_rows_add (rows);

    if (JSON_NODE_HOLDS_OBJECT (item)) {
      if (!lap_record_read (&closed_record, closed, item, LAP_PATH_ELEMENT (path, i), error))
        return FALSE;
    } else if (lap_kind_date.read (f, item, LAP_PATH_ELEMENT (path, i), &closed->from, error)) {
      closed->until = closed->from;
    } else {
      return FALSE;
    }
  }
  if (lap_rows_n (rows) > 0)
    *(LapRows **) slot = g_steal_pointer (&rows);
  return TRUE;
}

static void
write_closed (const LapField *f, gconstpointer slot, LapJsonWriter *writer)
{
  const LapRows *rows = *(LapRows * const *) slot;

  lap_json_writer_begin_array (writer);
  for (guint i = 0; i < lap_rows_n (rows); i++) {
    const LapClosed *closed = lap_rows_nth (rows, LapClosed, i);

    if (closed->present != 0)
      lap_record_write (&closed_record, closed, writer);
    else
      lap_kind_date.write (f, &closed->from, writer);
  }
  lap_json_writer_end_array (writer);
}

const LapRowsKind lap_kind_closed = {
  { lap_rows_get_type, read_closed, write_closed, lap_rows_visit }, &closed_record, sizeof (LapClosed), MOST_CLOSED,
};
