/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "model/week.h"

#include <string.h>

#define MOST_EXCEPTIONS 100000
#define MOST_YEARS 5

static const LapListKind kind_rooms = { LAP_LIST_KIND, lap_room_get_type, 100 };
static const LapListKind kind_coaches = { LAP_LIST_KIND, lap_coach_get_type, 500 };
static const LapListKind kind_classes = { LAP_LIST_KIND, lap_class_get_type, 2000 };
static const LapListKind kind_exceptions = { LAP_LIST_KIND, lap_exception_get_type, MOST_EXCEPTIONS };
static const LapListKind kind_aways = { LAP_LIST_KIND, lap_away_get_type, MOST_EXCEPTIONS };

#define AT(member) G_STRUCT_OFFSET (LapWeek, member)
#define MUST LAP_FIELD_REQUIRED
#define OPEN(day, index) { "open", day, &lap_kind_pair, AT (open[index]) }

enum { FORMAT, VERSION, ID, TITLE, TIMEZONE };

static const LapField fields[] = {
  [FORMAT] = { "", "format", &lap_kind_text, AT (format), MUST | LAP_FIELD_FIXED },
  [VERSION] = { "", "version", &lap_kind_int, AT (version), MUST | LAP_FIELD_FIXED, 1, 1000000, LAP_WEEK_VERSION },
  [ID] = { "", "id", &lap_kind_text, AT (id), MUST, 1, 200 },
  [TITLE] = { "", "title", &lap_kind_text, AT (title), MUST },
  [TIMEZONE] = { "", "timezone", &lap_kind_text, AT (timezone), MUST, 1, 200 },
  { "", "from", &lap_kind_date, AT (from) },
  { "", "until", &lap_kind_date, AT (until) },
  OPEN ("mon", LAP_DAY_MON),
  OPEN ("tue", LAP_DAY_TUE),
  OPEN ("wed", LAP_DAY_WED),
  OPEN ("thu", LAP_DAY_THU),
  OPEN ("fri", LAP_DAY_FRI),
  OPEN ("sat", LAP_DAY_SAT),
  OPEN ("sun", LAP_DAY_SUN),
  { "", "closed", &lap_kind_closed.kind, AT (closed) },
  { "", "rooms", &kind_rooms.kind, AT (rooms), LAP_FIELD_FIXED },
  { "", "coaches", &kind_coaches.kind, AT (coaches), LAP_FIELD_FIXED },
  { "", "classes", &kind_classes.kind, AT (classes), LAP_FIELD_FIXED },
  { "", "except", &kind_exceptions.kind, AT (exceptions), LAP_FIELD_FIXED },
  { "", "away", &kind_aways.kind, AT (aways), LAP_FIELD_FIXED },
};

/* What a file says must fit together */

/* The id of any of the three: each has it first. */
static const char *
id_of (gpointer object)
{
  return LAP_IS_ROOM (object) ? LAP_ROOM (object)->id
         : LAP_IS_COACH (object) ? LAP_COACH (object)->id : LAP_CLASS (object)->id;
}

/* The objects of @list by their ids, or NULL where one is there twice. */
static GHashTable *
by_id (LapList *list, const LapPath *path, GError **error)
{
  g_autoptr (GHashTable) found = g_hash_table_new (g_str_hash, g_str_equal);

  for (guint i = 0; i < lap_list_n (list); i++) {
    gpointer object = lap_list_nth (list, i);

    if (!g_hash_table_insert (found, (gpointer) id_of (object), object)) {
      lap_path_error (error, LAP_PATH_MEMBER (LAP_PATH_ELEMENT (path, i), "id"), "%s \"%s\" is there twice",
                      lap_object_record (object)->what, id_of (object));
      return NULL;
    }
  }
  return g_steal_pointer (&found);
}

/* What the three kinds of thing are found by while a file is read. */
typedef struct {
  GHashTable *rooms, *coaches, *classes;
} Index;

static gboolean
names (GHashTable *known, const char *id, const char *what, const char *member, const LapPath *path, GError **error)
{
  if (id == NULL || g_hash_table_contains (known, id))
    return TRUE;
  lap_path_error (error, LAP_PATH_MEMBER (path, member), "there is no %s \"%s\"", what, id);
  return FALSE;
}

static gboolean
check_classes (const LapWeek *week, const Index *index, const LapPath *path, GError **error)
{
  for (guint i = 0; i < lap_list_n (week->classes); i++) {
    const LapClass *c = lap_list_nth (week->classes, i);
    const LapPath *here = LAP_PATH_ELEMENT (path, i);

    if (!names (index->rooms, c->room, "room", "room", here, error) ||
        !names (index->coaches, c->coach, "coach", "coach", here, error))
      return FALSE;
  }
  return TRUE;
}

static gboolean
check_exceptions (const LapWeek *week, const Index *index, const LapPath *path, GError **error)
{
  g_autoptr (GHashTable) told = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);

  for (guint i = 0; i < lap_list_n (week->exceptions); i++) {
    const LapException *e = lap_list_nth (week->exceptions, i);
    const LapPath *here = LAP_PATH_ELEMENT (path, i);
    const LapClass *c;

    if (!names (index->classes, e->class_id, "class", "class", here, error) ||
        !names (index->rooms, e->room, "room", "room", here, error) ||
        !names (index->coaches, e->coach, "coach", "coach", here, error))
      return FALSE;
    if (!g_hash_table_add (told, g_strdup_printf ("%d %s", e->date, e->class_id))) {
      lap_path_error (error, LAP_PATH_MEMBER (here, "date"), "an exception of this class is there twice on that date");
      return FALSE;
    }
    c = g_hash_table_lookup (index->classes, e->class_id);
    if (e->start >= 0 && e->start + c->minutes > LAP_DAY_MINUTES) {
      lap_path_error (error, LAP_PATH_MEMBER (here, "start"), "expected a class of %d minutes to end by 24:00",
                      c->minutes);
      return FALSE;
    }
  }
  return TRUE;
}

static gboolean
check_aways (const LapWeek *week, const Index *index, const LapPath *path, GError **error)
{
  for (guint i = 0; i < lap_list_n (week->aways); i++) {
    const LapAway *away = lap_list_nth (week->aways, i);

    if (!names (index->coaches, away->coach, "coach", "coach", LAP_PATH_ELEMENT (path, i), error))
      return FALSE;
  }
  return TRUE;
}

static gboolean
check_lists (const LapWeek *week, const LapPath *path, GError **error)
{
  g_autoptr (GHashTable) rooms = by_id (week->rooms, LAP_PATH_MEMBER (path, "rooms"), error);
  g_autoptr (GHashTable) coaches = rooms != NULL ? by_id (week->coaches, LAP_PATH_MEMBER (path, "coaches"), error) : NULL;
  g_autoptr (GHashTable) classes = coaches != NULL ? by_id (week->classes, LAP_PATH_MEMBER (path, "classes"), error) : NULL;
  const Index index = { rooms, coaches, classes };

  return classes != NULL && check_classes (week, &index, LAP_PATH_MEMBER (path, "classes"), error) &&
         check_exceptions (week, &index, LAP_PATH_MEMBER (path, "except"), error) &&
         check_aways (week, &index, LAP_PATH_MEMBER (path, "away"), error);
}

static gboolean
check_dates (const LapWeek *week, const LapPath *path, GError **error)
{
  GDate last;

  if (week->from == 0 || week->until == 0)
    return TRUE;
  g_date_clear (&last, 1);
  g_date_set_julian (&last, week->from);
  g_date_add_years (&last, MOST_YEARS);
  if (week->until >= week->from && week->until <= (int) g_date_get_julian (&last))
    return TRUE;
  lap_path_error (error, LAP_PATH_MEMBER (path, "until"), "expected a date at most %d years from \"from\" on", MOST_YEARS);
  return FALSE;
}

static gboolean
check (gpointer self, guint64 seen, const LapPath *path, GError **error)
{
  const LapWeek *week = self;
  g_autoptr (GTimeZone) zone = NULL;

  if (!g_str_equal (week->format, "lapwing-week")) {
    lap_path_error (error, LAP_PATH_MEMBER (path, "format"), "expected \"lapwing-week\"");
    return FALSE;
  }
  zone = g_time_zone_new_identifier (week->timezone);
  if (zone == NULL) {
    lap_path_error (error, LAP_PATH_MEMBER (path, "timezone"), "expected a timezone, as \"Europe/Lisbon\"");
    return FALSE;
  }
  return check_dates (week, path, error) && check_lists (week, path, error);
}

/* Empty lists are left out: a file needs none. */
static gboolean
leaves_out (gconstpointer self, const LapField *field)
{
  return G_TYPE_FUNDAMENTAL (field->kind->type ()) == G_TYPE_OBJECT &&
         lap_list_n (*(LapList * const *) ((const char *) self + field->offset)) == 0;
}

static const LapRecord record = {
  "a week", fields, G_N_ELEMENTS (fields), .extras = G_STRUCT_OFFSET (LapObject, extras), .leaves_out = leaves_out,
  .check = check,
};

G_DEFINE_TYPE (LapWeek, lap_week, LAP_TYPE_OBJECT)

static void
lap_week_class_init (LapWeekClass *klass)
{
  lap_object_class_install (LAP_OBJECT_CLASS (klass), &record);
}

static void
lap_week_init (LapWeek *self)
{
  lap_object_setup (LAP_OBJECT (self));
  self->format = g_strdup ("lapwing-week");
}

LapWeek *
lap_week_new (const char *title, const char *timezone)
{
  LapWeek *week = g_object_new (LAP_TYPE_WEEK, NULL);

  week->id = g_uuid_string_random ();
  week->title = g_strdup (title);
  week->timezone = g_strdup (timezone);
  return week;
}

/* Each thing of the list at @field by itself. */
static gboolean
check_items (const LapWeek *week, const LapField *field, const LapPath *path, GError **error)
{
  LapList *list = *(LapList * const *) ((const char *) week + field->offset);
  const LapListKind *kind = (const LapListKind *) field->kind;

  if (lap_list_n (list) > kind->most) {
    lap_path_error (error, path, "expected a list of at most %u", kind->most);
    return FALSE;
  }
  for (guint i = 0; i < lap_list_n (list); i++) {
    gpointer item = lap_list_nth (list, i);
    const LapRecord *its = lap_object_record (item);

    if (its->check != NULL && !its->check (item, G_MAXUINT64, LAP_PATH_ELEMENT (path, i), error))
      return FALSE;
  }
  return TRUE;
}

gboolean
lap_week_check (const LapWeek *week, GError **error)
{
  LapPath top = { NULL, NULL, 0 };

  for (guint i = 0; i < G_N_ELEMENTS (fields); i++)
    if (g_type_is_a (fields[i].kind->type (), LAP_TYPE_LIST) &&
        !check_items (week, &fields[i], LAP_PATH_MEMBER (&top, fields[i].name), error))
      return FALSE;
  return check ((gpointer) week, G_MAXUINT64, &top, error);
}

/* Asking */

static gpointer
find (LapList *list, const char *id)
{
  for (guint i = 0; id != NULL && i < lap_list_n (list); i++)
    if (g_strcmp0 (id_of (lap_list_nth (list, i)), id) == 0)
      return lap_list_nth (list, i);
  return NULL;
}

LapRoom *
lap_week_room (const LapWeek *week, const char *id)
{
  return find (week->rooms, id);
}

LapCoach *
lap_week_coach (const LapWeek *week, const char *id)
{
  return find (week->coaches, id);
}

LapClass *
lap_week_class (const LapWeek *week, const char *id)
{
  return find (week->classes, id);
}

LapException *
lap_week_exception (const LapWeek *week, const char *id, int date)
{
  for (guint i = 0; i < lap_list_n (week->exceptions); i++) {
    LapException *e = lap_list_nth (week->exceptions, i);

    if (e->date == date && g_strcmp0 (e->class_id, id) == 0)
      return e;
  }
  return NULL;
}

gboolean
lap_week_open (const LapWeek *week, LapDay day, LapSpan *span)
{
  gboolean always = TRUE;

  for (guint d = 0; d < LAP_N_DAYS; d++)
    always = always && week->open[d] == NULL;
  *span = (LapSpan) { 0, LAP_DAY_MINUTES };
  if (week->open[day] != NULL)
    *span = week->open[day]->spans[0];
  return always || week->open[day] != NULL;
}

gboolean
lap_week_is_closed (const LapWeek *week, int date)
{
  for (guint i = 0; i < lap_rows_n (week->closed); i++) {
    const LapClosed *closed = lap_rows_nth (week->closed, LapClosed, i);

    if (closed->from <= date && date <= closed->until)
      return TRUE;
  }
  return FALSE;
}

gboolean
lap_week_is_away (const LapWeek *week, const char *id, int date)
{
  for (guint i = 0; i < lap_list_n (week->aways); i++) {
    const LapAway *away = lap_list_nth (week->aways, i);

    if (away->from <= date && date <= away->until && g_strcmp0 (away->coach, id) == 0)
      return TRUE;
  }
  return FALSE;
}
