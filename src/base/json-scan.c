/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * One loop over the bytes with a stack of open containers that has a fixed height. A frame knows the child
 * the loop is in, which is all a JSON Pointer needs. The names of all open objects lie in one array; those of
 * the innermost object are at its end, and are sorted when the object closes: equal neighbours are a name
 * used twice. Sorting rather than hashing keeps the time within n log n for names chosen to be awkward.
 *
 * lap_json_line_of() is the same loop with a target: the parts of a pointer, compared as children are met.
 */
#include "base/json-scan.h"

#include <stdlib.h>
#include <string.h>

#include <glib/gi18n-lib.h>

#include "base/error.h"
#include "base/json-token.h"
#include "base/json-tree.h"

#define TOKEN_MOST 40

typedef struct {
  const char *bytes;
  gsize length;
  const char *at;        /* the opening quote in the text */
} Name;

typedef struct {
  gboolean is_object;
  gboolean in_child;     /* FALSE while a name is awaited */
  gsize index;           /* of the child, in an array */
  guint first_name;      /* where the names of this object begin */
} Frame;

typedef struct {
  LapJsonCursor cursor;
  Frame frames[LAP_JSON_DEPTH_MAX];
  guint depth;
  GArray *names;
  GStringChunk *unescaped;
  LapJsonTree *tree;     /* takes the values; NULL when nobody wants them */

  char **target;         /* not owned; NULL when nothing is looked for */
  guint matched;         /* open containers that lie on the way to the target */
  const char *nearest;   /* the start of the deepest value met on that way */
  gboolean reached;
} Scan;

static Frame *
top (Scan *scan)
{
  return scan->depth > 0 ? &scan->frames[scan->depth - 1] : NULL;
}

/* The name of the child of frame @i: the last one that belongs to it. */
static Name *
child_name (const Scan *scan, guint i)
{
  guint end = scan->names->len;

  for (guint j = i + 1; j < scan->depth; j++)
    if (scan->frames[j].is_object)
      {
        end = scan->frames[j].first_name;
        break;
      }
  return &g_array_index (scan->names, Name, end - 1);
}

/* RFC 6901 section 3: "~" is written ~0 and "/" ~1. */
static void
append_token (GString *out, const Name *name)
{
  g_autoptr(GString) token = g_string_new_len (name->bytes, name->length);

  g_string_replace (token, "~", "~0", 0);
  g_string_replace (token, "/", "~1", 0);
  g_string_append_c (out, '/');
  lap_append_printable (out, token->str, token->len, TOKEN_MOST);
}

static void
append_place (GString *out, const Scan *scan)
{
  for (guint i = 0; i < scan->depth && scan->frames[i].in_child; i++)
    if (scan->frames[i].is_object)
      append_token (out, child_name (scan, i));
    else
      g_string_append_printf (out, "/%" G_GSIZE_FORMAT, scan->frames[i].index);
}

static guint
line_at (const char *start, const char *at)
{
  guint line = 1;

  while ((start = memchr (start, '\n', at - start)) != NULL)
    {
      line++;
      start++;
    }
  return line;
}

static int
compare_names (gconstpointer a, gconstpointer b)
{
  const Name *first = a;
  const Name *second = b;
  int order = memcmp (first->bytes, second->bytes, MIN (first->length, second->length));

  if (order != 0)
    return order;
  if (first->length != second->length)
    return first->length < second->length ? -1 : 1;
  return first->at < second->at ? -1 : first->at > second->at;
}

static gboolean
same_name (const Name *a, const Name *b)
{
  return a->length == b->length && memcmp (a->bytes, b->bytes, a->length) == 0;
}

/* Looks for a name used twice among those of the innermost object, then forgets them. */
static gboolean
close_names (Scan *scan)
{
  Frame *frame = top (scan);
  guint count = scan->names->len - frame->first_name;
  Name *names = &g_array_index (scan->names, Name, frame->first_name);
  Name *twice = NULL;

  if (count > 1)
    qsort (names, count, sizeof (Name), compare_names);
  for (guint i = 1; i < count; i++)
    if (same_name (&names[i - 1], &names[i]) && (twice == NULL || names[i].at < twice->at))
      twice = &names[i];
  if (twice != NULL)
    {
      /* The place is that of the name, so it has to be the last one again. */
      Name name = *twice;

      g_array_index (scan->names, Name, scan->names->len - 1) = name;
      scan->cursor.at = name.at;
      return lap_json_fault (&scan->cursor, _("expected each name once in an object"));
    }
  g_array_set_size (scan->names, frame->first_name);
  return TRUE;
}

static gboolean
read_name (Scan *scan)
{
  Frame *frame = top (scan);
  LapJsonCursor *cursor = &scan->cursor;
  g_autofree char *found = NULL;
  LapJsonText text;
  Name name;

  frame->in_child = FALSE;
  lap_json_skip_space (cursor);
  name.at = cursor->at;
  if (cursor->at >= cursor->end || *cursor->at != '"')
    {
      found = lap_json_found (cursor);
      return lap_json_fault (cursor, _("expected a name in double quotes, found %s"), found);
    }
  if (!lap_json_read_string (cursor, &text))
    return FALSE;
  name.bytes = text.bytes;
  name.length = text.length;
  if (text.escaped)
    {
      g_autofree char *plain = lap_json_unescape (&text);

      name.length = strlen (plain);
      name.bytes = g_string_chunk_insert_len (scan->unescaped, plain, name.length);
    }
  g_array_append_val (scan->names, name);
  if (scan->tree != NULL)
    lap_json_tree_name (scan->tree, name.bytes, name.length);
  frame->in_child = TRUE;
  lap_json_skip_space (cursor);
  if (cursor->at < cursor->end && *cursor->at == ':')
    {
      cursor->at++;
      return TRUE;
    }
  found = lap_json_found (cursor);
  return lap_json_fault (cursor, _("expected a colon after the name, found %s"), found);
}

static gboolean
open_container (Scan *scan, gboolean is_object)
{
  Frame *frame;

  if (scan->depth == LAP_JSON_DEPTH_MAX)
    return lap_json_fault (&scan->cursor, _("expected at most %d objects and arrays inside each other"),
                           LAP_JSON_DEPTH_MAX);
  scan->cursor.at++;
  scan->depth++;
  frame = top (scan);
  *frame = (Frame) { .is_object = is_object, .first_name = scan->names->len };
  if (scan->tree != NULL)
    lap_json_tree_open (scan->tree, is_object);
  return TRUE;
}

static gboolean
close_container (Scan *scan)
{
  Frame *frame = top (scan);

  scan->cursor.at++;
  if (frame->is_object && !close_names (scan))
    return FALSE;
  if (scan->tree != NULL)
    lap_json_tree_close (scan->tree);
  scan->depth--;
  return TRUE;
}

/* Whether the child the innermost container is in is the one the target asks for. */
static gboolean
child_is (Scan *scan, const char *token)
{
  g_autofree char *index = NULL;
  Name wanted = { token, strlen (token), NULL };

  if (top (scan)->is_object)
    return same_name (child_name (scan, scan->depth - 1), &wanted);
  index = g_strdup_printf ("%" G_GSIZE_FORMAT, top (scan)->index);
  return g_str_equal (index, token);
}

/* A value begins at the cursor. The loop can stop once it is the target. */
static void
look_for_target (Scan *scan)
{
  if (scan->depth > 0)
    {
      scan->matched = MIN (scan->matched, scan->depth - 1);
      if (scan->matched != scan->depth - 1 || !child_is (scan, scan->target[scan->depth - 1]))
        return;
      scan->matched = scan->depth;
    }
  scan->nearest = scan->cursor.at;
  scan->reached = scan->target[scan->depth] == NULL;
}

static gboolean
read_scalar (Scan *scan)
{
  LapJsonCursor *cursor = &scan->cursor;
  LapJsonText text;
  LapJsonNumber number;
  LapJsonLiteral literal;

  if (cursor->at < cursor->end && *cursor->at == '"')
    {
      if (!lap_json_read_string (cursor, &text))
        return FALSE;
      if (scan->tree != NULL)
        lap_json_tree_string (scan->tree, &text);
      return TRUE;
    }
  if (cursor->at < cursor->end && (*cursor->at == '-' || g_ascii_isdigit (*cursor->at)))
    {
      if (!lap_json_read_number (cursor, &number))
        return FALSE;
      if (scan->tree != NULL)
        lap_json_tree_number (scan->tree, &number);
      return TRUE;
    }
  if (!lap_json_read_literal (cursor, &literal))
    return FALSE;
  if (scan->tree != NULL)
    lap_json_tree_literal (scan->tree, literal);
  return TRUE;
}

/* Reads a scalar, or opens a container and tells so in @opened. */
static gboolean
read_value (Scan *scan, gboolean *opened)
{
  LapJsonCursor *cursor = &scan->cursor;

  lap_json_skip_space (cursor);
  if (scan->target != NULL && cursor->at < cursor->end)
    look_for_target (scan);
  *opened = cursor->at < cursor->end && (*cursor->at == '{' || *cursor->at == '[');
  return *opened ? open_container (scan, *cursor->at == '{') : read_scalar (scan);
}

/* A container was just opened: is it closed at once? If not, its first child is entered. */
static gboolean
enter_container (Scan *scan, gboolean *empty)
{
  LapJsonCursor *cursor = &scan->cursor;
  Frame *frame = top (scan);

  lap_json_skip_space (cursor);
  *empty = cursor->at < cursor->end && *cursor->at == (frame->is_object ? '}' : ']');
  if (*empty)
    return close_container (scan);
  frame->in_child = TRUE;
  return frame->is_object ? read_name (scan) : TRUE;
}

/* A value just ended: closes what ends with it, up to the comma before the next value or the end of the
 * root. */
static gboolean
leave_value (Scan *scan)
{
  LapJsonCursor *cursor = &scan->cursor;
  g_autofree char *found = NULL;
  Frame *frame;

  while ((frame = top (scan)) != NULL)
    {
      char closing = frame->is_object ? '}' : ']';

      lap_json_skip_space (cursor);
      if (cursor->at < cursor->end && *cursor->at == ',')
        {
          cursor->at++;
          frame->index++;
          return frame->is_object ? read_name (scan) : TRUE;
        }
      if (cursor->at >= cursor->end || *cursor->at != closing)
        {
          found = lap_json_found (cursor);
          return lap_json_fault (cursor, _("expected a comma or %c after the value, found %s"),
                                 closing, found);
        }
      if (!close_container (scan))
        return FALSE;
    }
  lap_json_skip_space (cursor);
  if (cursor->at == cursor->end)
    return TRUE;
  found = lap_json_found (cursor);
  return lap_json_fault (cursor, _("expected nothing after the value, found %s"), found);
}

static gboolean
run (Scan *scan)
{
  LapJsonCursor *cursor = &scan->cursor;
  gboolean opened, empty;

  if (cursor->end - cursor->at >= 3 && memcmp (cursor->at, "\xef\xbb\xbf", 3) == 0)
    return lap_json_fault (cursor, _("expected a text without a byte order mark"));
  do
    {
      do
        {
          empty = FALSE;
          if (!read_value (scan, &opened) || scan->reached)
            return scan->reached;
          if (opened && !enter_container (scan, &empty))
            return FALSE;
        }
      while (opened && !empty);
      if (!leave_value (scan))
        return FALSE;
    }
  while (scan->depth > 0);
  return TRUE;
}

static void
scan_init (Scan *scan, const char *bytes, gsize length)
{
  memset (scan, 0, sizeof *scan);
  /* No bytes at all may come without an address. */
  if (length == 0)
    bytes = "";
  scan->cursor = (LapJsonCursor) { bytes, bytes, bytes + length, NULL };
  scan->names = g_array_new (FALSE, FALSE, sizeof (Name));
  scan->unescaped = g_string_chunk_new (256);
}

static void
scan_clear (Scan *scan)
{
  g_free (scan->cursor.fault);
  g_array_unref (scan->names);
  g_string_chunk_free (scan->unescaped);
}

static gboolean
scan_all (Scan *scan, GError **error)
{
  g_autoptr(GString) place = NULL;

  if (run (scan))
    return TRUE;
  place = g_string_new (NULL);
  append_place (place, scan);
  g_set_error (error, LAP_ERROR, LAP_ERROR_INVALID, place->len > 0 ? _("line %u, %s: %s") : _("line %u%s: %s"),
               line_at (scan->cursor.start, scan->cursor.at), place->str, scan->cursor.fault);
  return FALSE;
}

gboolean
lap_json_scan (const char *bytes, gsize length, GError **error)
{
  Scan scan;
  gboolean right;

  scan_init (&scan, bytes, length);
  right = scan_all (&scan, error);
  scan_clear (&scan);
  return right;
}

JsonNode *
lap_json_parse (const char *bytes, gsize length, GError **error)
{
  Scan scan;
  JsonNode *root;

  scan_init (&scan, bytes, length);
  scan.tree = lap_json_tree_new ();
  root = lap_json_tree_free (scan.tree, scan_all (&scan, error));
  scan_clear (&scan);
  return root;
}

guint
lap_json_line_of (const char *bytes, gsize length, const char *pointer)
{
  g_auto(GStrv) tokens = NULL;
  Scan scan;
  guint line;

  if (*pointer != '\0' && *pointer != '/')
    return 0;
  tokens = *pointer == '\0' ? g_new0 (char *, 1) : g_strsplit (pointer + 1, "/", -1);
  for (char **token = tokens; *token != NULL; token++)
    {
      g_autoptr(GString) plain = g_string_new (*token);

      g_string_replace (plain, "~1", "/", 0);
      g_string_replace (plain, "~0", "~", 0);
      g_free (*token);
      *token = g_string_free (g_steal_pointer (&plain), FALSE);
    }
  scan_init (&scan, bytes, length);
  scan.target = tokens;
  run (&scan);
  line = scan.nearest != NULL ? line_at (scan.cursor.start, scan.nearest) : 0;
  scan_clear (&scan);
  return line;
}
