/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "store/class-table.h"

#include "base/error.h"
#include "edit/week-verbs.h"
#include "store/class-cells.h"
#include "store/class-columns.h"
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

typedef struct {
  const LapCsv  *csv;
  LapClassTable *table;
  const char    *folder;        /* sessions are relative to it, or NULL */
  int            at[LAP_N_COLUMNS]; /* -1 = there is no such column */
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
cell (const Reading *r, LapClassColumn column)
{
  return g_strstrip (g_strdup (r->at[column] >= 0 ? lap_csv_cell (r->csv, r->row, r->at[column]) : ""));
}

static gboolean
read_headings (Reading *r, GError **error)
{
  const char *missing = NULL;

  r->table->unknown = lap_class_columns_read (r->csv, r->row, r->at);
  if (r->at[LAP_COLUMN_TITLE] < 0 && r->at[LAP_COLUMN_KIND] < 0)
    missing = _("no column is called “title” or “kind”");
  else if (r->at[LAP_COLUMN_CLASS] < 0 && r->at[LAP_COLUMN_MINUTES] < 0 && r->at[LAP_COLUMN_END] < 0 &&
           r->at[LAP_COLUMN_START] < 0)
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
find_thing (Reading *r, LapClassColumn column, const char *text)
{
  LapWeek *week = r->table->week;
  const char *id = g_hash_table_lookup (r->things[column == LAP_COLUMN_ROOM], text);

  if (id != NULL)
    return id;
  id = column == LAP_COLUMN_ROOM ? look_for_thing (r, week->rooms, text, MOST_ROOMS, lap_verb_add_room)
                      : look_for_thing (r, week->coaches, text, MOST_COACHES, lap_verb_add_coach);
  if (id != NULL)
    g_hash_table_insert (r->things[column == LAP_COLUMN_ROOM], g_strdup (text), (gpointer) id);
  return id;
}

/* What the class has stays where its name is what the cell says: two rooms may be called the same. */
static void
take_thing (Reading *r, LapClass *c, LapClassColumn column)
{
  gpointer now = column == LAP_COLUMN_ROOM ? (gpointer) lap_week_room (r->table->week, c->room)
                                : (gpointer) lap_week_coach (r->table->week, c->coach);
  g_autofree char *text = cell (r, column), *folded = lap_cell_fold (text);

  if (r->at[column] < 0 || (now != NULL && is_called (now, text, folded)))
    return;
  g_object_set (c, lap_class_column_property (column), *text != '\0' ? find_thing (r, column, text) : NULL, NULL);
}

/* Single cells */

static void
take_text (Reading *r, LapClass *c, LapClassColumn column)
{
  g_autofree char *text = cell (r, column);

  if (r->at[column] < 0)
    return;
  if (g_utf8_strlen (text, -1) > MOST_TEXT)
    fault (r, _("a text is longer than %d characters"), MOST_TEXT);
  else
    g_object_set (c, lap_class_column_property (column), *text != '\0' ? text : NULL, NULL);
}

/* A class without a title is called by its kind, in tables too. */
static void
take_title (Reading *r, LapClass *c, LapClassColumn column)
{
  g_autofree char *text = cell (r, column);

  if (c->kind == NULL || !g_str_equal (text, lap_class_title (c)))
    take_text (r, c, column);
}

static void
take_session (Reading *r, LapClass *c, LapClassColumn column)
{
  take_text (r, c, column);
  if (r->at[column] >= 0 && r->folder != NULL && c->session != NULL) {
    g_autofree char *path = g_canonicalize_filename (c->session, r->folder);

    g_object_set (c, "session", path, NULL);
  }
}

static void
take_count (Reading *r, LapClass *c, LapClassColumn column)
{
  g_autofree char *text = cell (r, column);
  guint64 number = 0, most = column == LAP_COLUMN_PLACES ? MOST_PLACES : LAP_DAY_MINUTES;

  if (r->at[column] < 0)
    return;
  if (*text != '\0' && !g_ascii_string_to_unsigned (text, 10, 0, most, &number, NULL))
    fault (r, _("“%s” isn’t a number such as 20"), text);
  g_object_set (c, lap_class_column_property (column), (int) number, NULL);
}

static void
take_flag (Reading *r, LapClass *c, LapClassColumn column)
{
  g_autofree char *text = cell (r, column);
  int flag = lap_cell_flag (text);

  if (r->at[column] < 0 || (*text == '\0' && column == LAP_COLUMN_TAKES_PART))
    return;
  if (flag < 0)
    fault (r, _("“%s” is neither yes nor no"), text);
  else
    g_object_set (c, lap_class_column_property (column), flag, NULL);
}

static void
take_effort (Reading *r, LapClass *c, LapClassColumn column)
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
take_regions (Reading *r, LapClass *c, LapClassColumn column)
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
take_wish_days (Reading *r, LapClass *c, LapClassColumn column)
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
take_wish_between (Reading *r, LapClass *c, LapClassColumn column)
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
take_state (Reading *r, LapClass *c, LapClassColumn column)
{
  g_autofree char *text = cell (r, column);

  if (*text != '\0' && !g_str_equal (text, "held") && !g_str_equal (text, "unplaced"))
    fault (r, _("“%s” says what happens on one date; a table of the week as it always is has no such rows"),
           text);
}

static const struct {
  LapClassColumn column;
  void         (*take) (Reading *r, LapClass *c, LapClassColumn column);
} takers[] = {
  { LAP_COLUMN_TITLE, take_title }, { LAP_COLUMN_KIND, take_text }, { LAP_COLUMN_FOR, take_text },
  { LAP_COLUMN_ROOM, take_thing }, { LAP_COLUMN_COACH, take_thing }, { LAP_COLUMN_PLACES, take_count },
  { LAP_COLUMN_EFFORT, take_effort }, { LAP_COLUMN_SESSION, take_session },
  { LAP_COLUMN_REGIONS, take_regions }, { LAP_COLUMN_IN_OUT, take_count },
  { LAP_COLUMN_TAKES_PART, take_flag }, { LAP_COLUMN_FIXED, take_flag },
  { LAP_COLUMN_WISH_DAYS, take_wish_days }, { LAP_COLUMN_WISH_BETWEEN, take_wish_between },
  { LAP_COLUMN_STATE, take_state },
};

/* When */

/* The days that the row names, in its column of days or by a date. */
static guint
read_days (Reading *r)
{
  g_autofree char *text = cell (r, LAP_COLUMN_DAY), *dated = cell (r, LAP_COLUMN_DATE);
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
  g_autofree char *from = cell (r, LAP_COLUMN_START), *until = cell (r, LAP_COLUMN_END);
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
  g_autofree char *text = cell (r, LAP_COLUMN_MINUTES);
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
  g_autofree char *from = cell (r, LAP_COLUMN_START);
  int start, end;

  read_times (r, &start, &end);
  take_length (r, c, start, end);
  if (r->at[LAP_COLUMN_START] >= 0)
    g_object_set (c, "start", start, NULL);
  if (r->at[LAP_COLUMN_DAY] >= 0 || r->at[LAP_COLUMN_DATE] >= 0)
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
  g_autofree char *id = cell (r, LAP_COLUMN_CLASS);
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
  g_autofree char *id = cell (r, LAP_COLUMN_CLASS);
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
  r.row = lap_class_columns_row (csv);
  if (r.row == csv->rows->len) {
    g_set_error_literal (error, LAP_ERROR, LAP_ERROR_INVALID, _("there is nothing in it"));
    return NULL;
  }
  r.line = lap_csv_row (csv, r.row)->line;
  if (!read_headings (&r, error))
    return NULL;
  for (r.row++; r.row < csv->rows->len; r.row++) {
    r.line = lap_csv_row (csv, r.row)->line;
    if (!lap_csv_is_blank (csv, r.row))
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
