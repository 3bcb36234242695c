/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "store/class-table.h"

#include "base/error.h"
#include "edit/week-verbs.h"
#include "store/class-cells.h"
#include "store/csv-read.h"

#include <glib/gi18n-lib.h>
#include <stdarg.h>
#include <string.h>

#define MOST_CLASSES 2000
#define MOST_ROOMS   100
#define MOST_COACHES 500
#define MOST_TEXT    10000
#define MOST_ID      200
#define MOST_PLACES  1000000
#define HEADING_ROWS 20 /* in which the headings may stand, below a title */

typedef enum {
  CLASS, TITLE, KIND, DAY, DATE, START, END, MINUTES, FOR, ROOM, COACH, PLACES, EFFORT, SESSION, REGIONS, IN_OUT,
  TAKES_PART, FIXED, WISH_DAYS, WISH_BETWEEN, STATE, N_COLUMNS
} Column;

/* The heading that is written, and others that are known. Translations say the names of their language. */
static const struct { const char *id, *names; } columns[N_COLUMNS] = {
  [CLASS] = { "class", "class id|id" },
  /* Translators: headings of spreadsheets, as people write them, parted by |; as many as you like */
  [TITLE] = { "title", N_("title|name|class name") },
  [KIND] = { "kind", N_("kind|type|class type|category") },
  [DAY] = { "day", N_("day|days|weekday|day of the week") },
  [DATE] = { "date", N_("date") },
  [START] = { "start", N_("start|time|from|begins|start time") },
  [END] = { "end", N_("end|until|to|ends|end time|finish") },
  [MINUTES] = { "minutes", N_("minutes|length|duration|min|mins") },
  [FOR] = { "for", N_("for|for whom|group|audience") },
  [ROOM] = { "room", N_("room|studio|hall|location|where") },
  [COACH] = { "coach", N_("coach|instructor|teacher|trainer|with|who") },
  [PLACES] = { "places", N_("places|capacity|spaces|people") },
  [EFFORT] = { "effort", N_("effort|intensity") },
  [SESSION] = { "session", N_("session|plan|file") },
  [REGIONS] = { "regions", N_("regions|body regions") },
  [IN_OUT] = { "in-out", N_("in-out|coming and going") },
  [TAKES_PART] = { "takes-part", N_("takes part|coach takes part") },
  [FIXED] = { "fixed", N_("fixed") },
  [WISH_DAYS] = { "wish-days", N_("wish days|wanted days") },
  [WISH_BETWEEN] = { "wish-between", N_("wish between|wanted between|wanted hours") },
  [STATE] = { "state", N_("state") },
};

typedef struct {
  const LapCsv  *csv;
  LapClassTable *table;
  const char    *folder;        /* sessions are relative to it, or NULL */
  int            at[N_COLUMNS]; /* -1 = there is no such column */
  guint          row, line;
  GHashTable    *ids;           /* that rows have named */
  GHashTable    *things[2];     /* of coaches and of rooms: what cells call them -> id */
} Reading;

G_GNUC_PRINTF (2, 3) static void
fault (Reading *r, const char *format, ...)
{
  LapTableFault said = { r->line, NULL };
  va_list args;

  va_start (args, format);
  said.text = g_strdup_vprintf (format, args);
  va_end (args);
  g_array_append_val (r->table->faults, said);
}

/* The cell without blanks around it, "" where there is none. Transfer full. */
static char *
cell (const Reading *r, Column column)
{
  return g_strstrip (g_strdup (r->at[column] >= 0 ? lap_csv_cell (r->csv, r->row, r->at[column]) : ""));
}

/* Headings */

static gboolean
is_named (const char *heading, const char *names)
{
  g_auto (GStrv) all = g_strsplit (names, "|", -1);

  for (guint i = 0; all[i] != NULL; i++) {
    g_autofree char *name = lap_cell_fold (all[i]);

    if (g_str_equal (heading, name))
      return TRUE;
  }
  return FALSE;
}

static int
find_column (const char *text)
{
  g_autofree char *heading = lap_cell_fold (text);

  for (int i = 0; *heading != '\0' && i < N_COLUMNS; i++)
    if (is_named (heading, columns[i].id) || is_named (heading, columns[i].names) ||
        is_named (heading, _(columns[i].names)))
      return i;
  return -1;
}

/* How many headings of a row are known. */
static guint
count_known (const LapCsv *csv, guint row)
{
  guint known = 0;

  for (guint i = 0; i < lap_csv_row (csv, row)->n; i++)
    known += find_column (lap_csv_cell (csv, row, i)) >= 0;
  return known;
}

static gboolean
is_blank (const LapCsv *csv, guint row)
{
  for (guint i = 0; i < lap_csv_row (csv, row)->n; i++)
    if (strspn (lap_csv_cell (csv, row, i), " \t\r\n") != strlen (lap_csv_cell (csv, row, i)))
      return FALSE;
  return TRUE;
}

/* The row with the headings: the first that has two which are known, else the first with anything. */
static guint
heading_row (const LapCsv *csv)
{
  guint first = csv->rows->len;

  for (guint i = 0; i < MIN (csv->rows->len, HEADING_ROWS); i++) {
    if (count_known (csv, i) >= 2)
      return i;
    if (first == csv->rows->len && !is_blank (csv, i))
      first = i;
  }
  return first;
}

static gboolean
read_headings (Reading *r, GError **error)
{
  g_autoptr (GStrvBuilder) unknown = g_strv_builder_new ();
  g_autofree char *headed = NULL;
  const char *missing = NULL;

  for (int i = 0; i < N_COLUMNS; i++)
    r->at[i] = -1;
  for (guint i = 0; i < lap_csv_row (r->csv, r->row)->n; i++) {
    g_autofree char *heading = g_strstrip (g_strdup (lap_csv_cell (r->csv, r->row, i)));
    int column = find_column (heading);

    if (column >= 0 && r->at[column] < 0)
      r->at[column] = i;
    else if (*heading != '\0')
      g_strv_builder_add (unknown, heading);
  }
  r->table->unknown = g_strv_builder_end (unknown);
  headed = lap_cell_fold (r->at[CLASS] >= 0 ? lap_csv_cell (r->csv, r->row, r->at[CLASS]) : "");
  /* "Class" without a title beside it is what people call their classes. */
  if (r->at[TITLE] < 0 && r->at[CLASS] >= 0 && is_named (headed, columns[CLASS].id)) {
    r->at[TITLE] = r->at[CLASS];
    r->at[CLASS] = -1;
  }
  if (r->at[TITLE] < 0 && r->at[KIND] < 0)
    missing = _("no column is called “title” or “kind”");
  else if (r->at[CLASS] < 0 && r->at[MINUTES] < 0 && r->at[END] < 0 && r->at[START] < 0)
    missing = _("no column says how long classes are, as “minutes” or “end”");
  if (missing != NULL)
    g_set_error (error, LAP_ERROR, LAP_ERROR_INVALID, _("line %1$u: %2$s"), r->line, missing);
  return missing == NULL;
}

/* Rooms and coaches */

static const char *
name_of (gpointer thing)
{
  return LAP_IS_ROOM (thing) ? lap_room_title (thing) : lap_coach_title (thing);
}

static const char *
id_of (gpointer thing)
{
  return LAP_IS_ROOM (thing) ? LAP_ROOM (thing)->id : LAP_COACH (thing)->id;
}

/* @folded is @text by lap_cell_fold(). */
static gboolean
is_called (gpointer thing, const char *text, const char *folded)
{
  g_autofree char *name = NULL;

  if (g_str_equal (id_of (thing), text) || g_str_equal (name_of (thing), text))
    return TRUE;
  name = lap_cell_fold (name_of (thing));
  return *folded != '\0' && g_str_equal (folded, name);
}

/* The id of what is called @text in @list; one that is new is made by @add. NULL, and a fault, where two are. */
static const char *
look_for_thing (Reading *r, LapList *list, const char *text, guint most,
                LapEdits *(*add) (LapWeek *week, const char *title))
{
  g_autofree char *folded = lap_cell_fold (text);
  gpointer found = NULL;
  LapEdits *edits;

  for (guint i = 0; i < lap_list_n (list); i++) {
    gpointer thing = lap_list_nth (list, i);

    if (!is_called (thing, text, folded))
      continue;
    if (found != NULL) {
      fault (r, _("two are called “%s”"), text);
      return NULL;
    }
    found = thing;
  }
  if (found != NULL)
    return id_of (found);
  if (lap_list_n (list) >= most) {
    fault (r, _("there are too many rooms or coaches for “%s”"), text);
    return NULL;
  }
  edits = add (r->table->week, text);
  lap_edits_swap (edits);
  lap_edits_free (edits);
  return id_of (lap_list_nth (list, lap_list_n (list) - 1));
}

/* The same; most rows name what rows before them did. */
static const char *
find_thing (Reading *r, Column column, const char *text)
{
  LapWeek *week = r->table->week;
  const char *id = g_hash_table_lookup (r->things[column == ROOM], text);

  if (id != NULL)
    return id;
  id = column == ROOM ? look_for_thing (r, week->rooms, text, MOST_ROOMS, lap_verb_add_room)
                      : look_for_thing (r, week->coaches, text, MOST_COACHES, lap_verb_add_coach);
  if (id != NULL)
    g_hash_table_insert (r->things[column == ROOM], g_strdup (text), (gpointer) id);
  return id;
}

/* What the class has stays where its name is what the cell says: two rooms may be called the same. */
static void
take_thing (Reading *r, LapClass *c, Column column)
{
  gpointer now = column == ROOM ? (gpointer) lap_week_room (r->table->week, c->room)
                                : (gpointer) lap_week_coach (r->table->week, c->coach);
  g_autofree char *text = cell (r, column), *folded = lap_cell_fold (text);

  if (r->at[column] < 0 || (now != NULL && is_called (now, text, folded)))
    return;
  g_object_set (c, columns[column].id, *text != '\0' ? find_thing (r, column, text) : NULL, NULL);
}

/* Single cells */

static void
take_text (Reading *r, LapClass *c, Column column)
{
  g_autofree char *text = cell (r, column);

  if (r->at[column] < 0)
    return;
  if (g_utf8_strlen (text, -1) > MOST_TEXT)
    fault (r, _("a text is longer than %d characters"), MOST_TEXT);
  else
    g_object_set (c, columns[column].id, *text != '\0' ? text : NULL, NULL);
}

/* A class without a title is called by its kind, in tables too. */
static void
take_title (Reading *r, LapClass *c, Column column)
{
  g_autofree char *text = cell (r, column);

  if (c->kind == NULL || !g_str_equal (text, lap_class_title (c)))
    take_text (r, c, column);
}

static void
take_session (Reading *r, LapClass *c, Column column)
{
  take_text (r, c, column);
  if (r->at[column] >= 0 && r->folder != NULL && c->session != NULL) {
    g_autofree char *path = g_canonicalize_filename (c->session, r->folder);

    g_object_set (c, "session", path, NULL);
  }
}

static void
take_count (Reading *r, LapClass *c, Column column)
{
  g_autofree char *text = cell (r, column);
  guint64 number = 0, most = column == PLACES ? MOST_PLACES : LAP_DAY_MINUTES;

  if (r->at[column] < 0)
    return;
  if (*text != '\0' && !g_ascii_string_to_unsigned (text, 10, 0, most, &number, NULL))
    fault (r, _("“%s” isn’t a number such as 20"), text);
  g_object_set (c, columns[column].id, (int) number, NULL);
}

static void
take_flag (Reading *r, LapClass *c, Column column)
{
  g_autofree char *text = cell (r, column);
  int flag = lap_cell_flag (text);

  if (r->at[column] < 0 || (*text == '\0' && column == TAKES_PART))
    return;
  if (flag < 0)
    fault (r, _("“%s” is neither yes nor no"), text);
  else
    g_object_set (c, columns[column].id, flag, NULL);
}

static void
take_effort (Reading *r, LapClass *c, Column column)
{
  g_autofree char *text = cell (r, column);
  guint32 bits = lap_cell_words (text, &lap_strains);
  int strain = bits != 0 ? __builtin_ctz (bits) : -1;

  if (r->at[column] < 0)
    return;
  if ((*text != '\0' && bits == 0) || (bits & (bits - 1)) != 0)
    fault (r, _("“%s” isn’t an effort: easy, moderate or hard"), text);
  g_object_set (c, "effort", strain, NULL);
}

/* Sets a property that lists words of @words. */
static void
set_words (LapClass *c, const char *property, const LapWords *words, guint32 bits)
{
  g_autoptr (GStrvBuilder) builder = g_strv_builder_new ();
  g_auto (GStrv) ids = NULL;

  for (guint i = 0; i < words->n; i++)
    if (bits & LAP_BIT (i))
      g_strv_builder_add (builder, lap_words_id (words, i));
  ids = bits != 0 ? g_strv_builder_end (builder) : NULL;
  g_object_set (c, property, ids, NULL);
}

static void
take_regions (Reading *r, LapClass *c, Column column)
{
  g_autofree char *text = cell (r, column);
  guint32 bits = lap_cell_words (text, &lap_regions);

  if (r->at[column] < 0)
    return;
  if (*text != '\0' && bits == 0)
    fault (r, _("“%s” aren’t regions such as chest or thighs"), text);
  set_words (c, "regions", &lap_regions, bits);
}

static void
take_wish_days (Reading *r, LapClass *c, Column column)
{
  g_autofree char *text = cell (r, column);
  guint bits = lap_cell_days (text);

  if (r->at[column] < 0)
    return;
  if (*text != '\0' && bits == 0)
    fault (r, _("“%s” isn’t a day such as Monday or Mon"), text);
  set_words (c, "wish-days", &lap_days, bits);
}

static void
take_wish_between (Reading *r, LapClass *c, Column column)
{
  g_autofree char *text = cell (r, column);
  g_autoptr (LapHours) hours = NULL;
  LapSpan span = { 0, 0 };

  if (r->at[column] < 0)
    return;
  if (*text != '\0' && (!lap_cell_times (text, &span.start, &span.end) || span.end <= span.start))
    fault (r, _("“%s” aren’t hours such as 17:00–20:00"), text);
  else if (*text != '\0')
    hours = lap_hours_new (1, &span);
  g_object_set (c, "wish-between", hours, NULL);
}

/* A table of one dated week has rows that no week as it always is has. */
static void
take_state (Reading *r, LapClass *c, Column column)
{
  g_autofree char *text = cell (r, column);

  if (*text != '\0' && !g_str_equal (text, "held") && !g_str_equal (text, "unplaced"))
    fault (r, _("“%s” says what happens on one date; a table of the week as it always is has no such rows"),
           text);
}

static const struct { Column column; void (*take) (Reading *r, LapClass *c, Column column); } takers[] = {
  { TITLE, take_title }, { KIND, take_text }, { FOR, take_text }, { ROOM, take_thing }, { COACH, take_thing },
  { PLACES, take_count }, { EFFORT, take_effort }, { SESSION, take_session }, { REGIONS, take_regions },
  { IN_OUT, take_count }, { TAKES_PART, take_flag }, { FIXED, take_flag }, { WISH_DAYS, take_wish_days },
  { WISH_BETWEEN, take_wish_between }, { STATE, take_state },
};

/* When */

/* The days that the row names, in its column of days or by a date. */
static guint
read_days (Reading *r)
{
  g_autofree char *text = cell (r, DAY), *dated = cell (r, DATE);
  guint days = lap_cell_days (text);
  int date = lap_date_parse (dated);

  if (*text != '\0' && days == 0)
    fault (r, _("“%s” isn’t a day such as Monday or Mon"), text);
  if (*dated == '\0')
    return days;
  if (date == 0)
    fault (r, _("“%s” isn’t a date such as 2027-01-11"), dated);
  else if (days != 0 && days != LAP_BIT (lap_date_day (date)))
    fault (r, _("%1$s isn’t a %2$s"), dated, text);
  return date != 0 ? LAP_BIT (lap_date_day (date)) : days;
}

/* Start and end as far as they are said, else -1. */
static void
read_times (Reading *r, int *start, int *end)
{
  g_autofree char *from = cell (r, START), *until = cell (r, END);
  int other;

  *start = *end = -1;
  if (*from != '\0' && !lap_cell_times (from, start, end))
    fault (r, _("“%s” isn’t a time such as 18:30"), from);
  if (*until == '\0')
    return;
  other = lap_cell_time (until, LAP_DAY_MINUTES);
  if (other < 0)
    fault (r, _("“%s” isn’t a time such as 18:30"), until);
  else
    *end = other;
}

/* Sets how long the class is, which it may know from before. */
static void
take_length (Reading *r, LapClass *c, int start, int end)
{
  g_autofree char *text = cell (r, MINUTES);
  int minutes = *text != '\0' ? lap_cell_minutes (text) : -1, between = start >= 0 && end >= 0 ? end - start : -1;

  if (*text != '\0' && (minutes < 1 || minutes > LAP_DAY_MINUTES)) {
    fault (r, _("“%s” isn’t a length in minutes such as 45"), text);
    return;
  }
  if (start >= 0 && end >= 0 && end <= start)
    fault (r, _("it ends before it begins"));
  else if (minutes > 0 && between > 0 && minutes != between)
    fault (r, _("from start to end it is %1$d minutes, and not %2$d"), between, minutes);
  else if (minutes > 0 || between > 0)
    g_object_set (c, "minutes", MAX (minutes, between), NULL);
  else if (c->minutes == 0)
    fault (r, _("its length isn’t said"));
}

static void
take_when (Reading *r, LapClass *c, guint days)
{
  g_autofree char *from = cell (r, START);
  int start, end;

  read_times (r, &start, &end);
  take_length (r, c, start, end);
  if (r->at[START] >= 0)
    g_object_set (c, "start", start, NULL);
  if (r->at[DAY] >= 0 || r->at[DATE] >= 0)
    g_object_set (c, "day", days != 0 ? __builtin_ctz (days) : -1, NULL);
  if (c->day >= 0 && c->start < 0 && *from == '\0')
    fault (r, _("it has a day, and no start"));
  else if (c->start >= 0 && lap_class_end (c) > LAP_DAY_MINUTES)
    fault (r, _("it doesn’t end by 24:00"));
}

/* Rows */

/* The class that the row is about: one of the week, or a new one that isn't in it yet. Transfer full. */
static LapClass *
find_class (Reading *r, gboolean *added)
{
  g_autofree char *id = cell (r, CLASS);
  LapClass *c = *id != '\0' ? lap_week_class (r->table->week, id) : NULL;

  if (*id != '\0' && !g_hash_table_add (r->ids, g_strdup (id)))
    fault (r, _("the class “%s” is there twice"), id);
  if (g_utf8_strlen (id, -1) > MOST_ID)
    fault (r, _("a class’s id is longer than %d characters"), MOST_ID);
  *added = c == NULL;
  if (c != NULL)
    return g_object_ref (c);
  c = lap_class_new (NULL, 0);
  if (*id != '\0') {
    g_free (c->id);
    c->id = g_strdup (id);
  }
  return c;
}

static void
add_row (Reading *r, LapClass *c, gboolean added)
{
  LapTableRow row = { r->line, c, added };
  LapList *list = r->table->week->classes;

  if (added && lap_list_n (list) >= MOST_CLASSES) {
    fault (r, _("a week has at most %d classes"), MOST_CLASSES);
    return;
  }
  if (added) {
    g_autoptr (GPtrArray) one = g_ptr_array_new ();

    g_ptr_array_add (one, c);
    lap_list_splice (list, lap_list_n (list), 0, one);
  }
  g_array_append_val (r->table->rows, row);
}

static void
read_row (Reading *r)
{
  gboolean added;
  g_autoptr (LapClass) c = find_class (r, &added);
  g_autofree char *id = cell (r, CLASS);
  guint days = read_days (r);

  for (guint i = 0; i < G_N_ELEMENTS (takers); i++)
    takers[i].take (r, c, takers[i].column);
  if (c->kind == NULL && c->title != NULL)
    g_object_set (c, "kind", c->title, NULL);
  if (added && g_strcmp0 (c->title, c->kind) == 0)
    g_object_set (c, "title", NULL, NULL);
  if (c->kind == NULL)
    fault (r, _("it has neither a title nor a kind"));
  take_when (r, c, days);
  if (*id != '\0' && (days & (days - 1)) != 0)
    fault (r, _("one class has one day"));
  add_row (r, c, added);
  for (days &= days - 1; days != 0; days &= days - 1) {
    g_autoptr (LapClass) copy = lap_object_copy (c);

    g_free (copy->id);
    copy->id = g_uuid_string_random ();
    copy->day = __builtin_ctz (days);
    add_row (r, copy, TRUE);
  }
}

static void
fault_clear (gpointer data)
{
  g_free (((LapTableFault *) data)->text);
}

LapClassTable *
lap_class_table_read (GBytes *bytes, LapWeek *week, const char *beside, GError **error)
{
  g_autoptr (LapClassTable) table = g_new0 (LapClassTable, 1);
  g_autoptr (LapCsv) csv = lap_csv_read (bytes, error);
  g_autofree char *folder = beside != NULL ? g_path_get_dirname (beside) : NULL;
  g_autoptr (GHashTable) ids = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  g_autoptr (GHashTable) coaches = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  g_autoptr (GHashTable) rooms = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  Reading r = { csv, table, folder, .ids = ids, .things = { coaches, rooms } };

  table->week = lap_object_copy (week);
  table->rows = g_array_new (FALSE, FALSE, sizeof (LapTableRow));
  table->faults = g_array_new (FALSE, FALSE, sizeof (LapTableFault));
  g_array_set_clear_func (table->faults, fault_clear);
  if (csv == NULL)
    return NULL;
  table->guessed = csv->guessed;
  r.row = heading_row (csv);
  if (r.row == csv->rows->len) {
    g_set_error_literal (error, LAP_ERROR, LAP_ERROR_INVALID, _("there is nothing in it"));
    return NULL;
  }
  r.line = lap_csv_row (csv, r.row)->line;
  if (!read_headings (&r, error))
    return NULL;
  for (r.row++; r.row < csv->rows->len; r.row++) {
    r.line = lap_csv_row (csv, r.row)->line;
    if (!is_blank (csv, r.row))
      read_row (&r);
  }
  return g_steal_pointer (&table);
}

void
lap_class_table_free (LapClassTable *table)
{
  g_clear_object (&table->week);
  g_array_unref (table->rows);
  g_array_unref (table->faults);
  g_strfreev (table->unknown);
  g_free (table);
}

char *
lap_table_fault_told (const LapTableFault *fault)
{
  return g_strdup_printf (_("Line %1$u: %2$s"), fault->line, fault->text);
}

/* Edits */

/* Puts copies of what @then has more than @now at the end of @now. */
static void
insert_new (LapEdits *edits, LapList *now, LapList *then)
{
  g_autoptr (GPtrArray) added = g_ptr_array_new_with_free_func (g_object_unref);

  for (guint i = lap_list_n (now); i < lap_list_n (then); i++)
    g_ptr_array_add (added, lap_object_copy (lap_list_nth (then, i)));
  if (added->len > 0)
    lap_edits_splice (edits, now, lap_list_n (now), 0, added);
}

LapEdits *
lap_class_table_edits (const LapClassTable *table, LapWeek *week)
{
  LapEdits *edits;

  if (table->faults->len > 0)
    return NULL;
  edits = lap_edits_new (_("Classes from a spreadsheet"));
  insert_new (edits, week->rooms, table->week->rooms);
  insert_new (edits, week->coaches, table->week->coaches);
  for (guint i = 0; i < lap_list_n (week->classes); i++) {
    g_autoptr (GBytes) now = lap_object_bytes (lap_list_nth (week->classes, i));
    g_autoptr (GBytes) then = lap_object_bytes (lap_list_nth (table->week->classes, i));
    g_autoptr (GPtrArray) added = g_ptr_array_new_with_free_func (g_object_unref);

    g_ptr_array_add (added, lap_object_copy (lap_list_nth (table->week->classes, i)));
    if (!g_bytes_equal (now, then))
      lap_edits_splice (edits, week->classes, i, 1, added);
  }
  insert_new (edits, week->classes, table->week->classes);
  return edits;
}
