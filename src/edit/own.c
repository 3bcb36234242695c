/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "edit/own.h"

#include "base/error.h"
#include "base/json-scan.h"

#include <glib/gi18n-lib.h>

/* "own-deep-squat", with a number behind it where that is taken. */
static char *
new_id (const char *name, LapCatalogue *catalogue)
{
  g_autofree char *plain = g_str_to_ascii (name, NULL);
  g_autoptr (GString) id = g_string_new ("own-");
  char *found;

  for (const char *c = plain; *c != '\0'; c++)
    if (g_ascii_isalnum (*c))
      g_string_append_c (id, g_ascii_tolower (*c));
    else if (id->str[id->len - 1] != '-')
      g_string_append_c (id, '-');
  if (g_str_equal (id->str, "own-"))
    g_string_append (id, "1"); /* no letter of it is one of ours */
  else if (id->str[id->len - 1] == '-')
    g_string_truncate (id, id->len - 1);
  found = g_strdup (id->str);
  for (guint n = 2; lap_catalogue_find (catalogue, found) != NULL; n++) {
    g_free (found);
    found = g_strdup_printf ("%s-%u", id->str, n);
  }
  return found;
}

/* What a file says of @exercise. */
static JsonNode *
written (const LapExercise *exercise)
{
  g_autoptr (LapJsonWriter) writer = lap_json_writer_new ();
  g_autoptr (GBytes) bytes = NULL;

  lap_exercise_write (exercise, writer);
  bytes = lap_json_writer_finish (writer);
  return lap_json_parse (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes), NULL);
}

static LapExercise *
read_back (JsonNode *node, GError **error)
{
  LapPath top = { NULL, NULL, 0 };

  return lap_exercise_read (node, &top, error);
}

static void
lend_figure (JsonObject *object, const LapExercise *from)
{
  JsonObject *figure = json_object_new ();

  json_object_set_string_member (figure, "like", from->id);
  json_object_set_object_member (object, "figure", figure);
}

/* Copies go through what a file says of them, so that no member is forgotten. */
static LapExercise *
copy_as (const LapExercise *base, const char *id, const char *name)
{
  g_autoptr (JsonNode) node = written (base);
  JsonObject *object = json_node_get_object (node);

  json_object_set_string_member (object, "id", id);
  json_object_set_string_member (object, "name", name);
  json_object_remove_member (object, "formerly");
  json_object_remove_member (object, "other-names");
  if (json_object_has_member (object, "figure"))
    lend_figure (object, base);
  return read_back (node, NULL);
}

/* The session's own exercises with @other in place of @own; after them where @own is NULL, without @own where @other
 * is. */
static void
set_own (LapEdits *edits, LapSession *session, const LapExercise *own, LapExercise *other)
{
  g_autoptr (GPtrArray) all = g_ptr_array_new_with_free_func ((GDestroyNotify) lap_exercise_unref);

  for (guint i = 0; session->exercises != NULL && i < session->exercises->len; i++) {
    LapExercise *e = g_ptr_array_index (session->exercises, i);

    if (e != own || other != NULL)
      g_ptr_array_add (all, lap_exercise_ref (e == own ? other : e));
  }
  if (own == NULL)
    g_ptr_array_add (all, lap_exercise_ref (other));
  lap_edits_set_boxed (edits, session, "exercises", G_TYPE_PTR_ARRAY, all);
}

LapEdits *
lap_verb_make_own (LapSession *session, const LapExercise *base, const char *name, LapCatalogue *catalogue, char **id)
{
  g_autofree char *label = g_strdup_printf (_("Make %s"), name);
  LapEdits *edits = lap_edits_new (label);
  g_autoptr (LapExercise) own = NULL;

  *id = new_id (name, catalogue);
  own = copy_as (base, *id, name);
  g_return_val_if_fail (own != NULL, edits);
  set_own (edits, session, NULL, own);
  return edits;
}

/* A kind of move has its energy in the Compendium: that of an exercise of the kind, which is checked against it. */
static void
take_energy (JsonObject *object, LapCatalogue *builtin, int move)
{
  for (guint i = 0; i < lap_catalogue_n (builtin); i++) {
    const LapExercise *like = lap_catalogue_nth (builtin, i);
    g_autoptr (JsonNode) node = like->move == move ? written (like) : NULL;

    if (node != NULL) {
      json_object_set_member (object, "met",
                              json_node_copy (json_object_get_member (json_node_get_object (node), "met")));
      return;
    }
  }
}

LapEdits *
lap_verb_change_own (LapSession *session, const LapExercise *own, const LapField *field, const GValue *value,
                     const char *label, GError **error)
{
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (JsonNode) node = written (own), changed = NULL;
  g_autoptr (LapExercise) draft = read_back (node, NULL), other = NULL;
  gboolean words = field >= lap_say_record.fields && field < lap_say_record.fields + lap_say_record.n;
  LapEdits *edits;

  lap_field_set (field, words ? (gpointer) draft->say : draft, value);
  if (words)
    draft->say->present |= G_GUINT64_CONSTANT (1) << (field - lap_say_record.fields);
  changed = written (draft);
  if (g_str_equal (field->name, "move"))
    take_energy (json_node_get_object (changed), builtin, draft->move);
  other = read_back (changed, error);
  if (other == NULL)
    return NULL;
  edits = lap_edits_new (label);
  set_own (edits, session, own, other);
  return edits;
}

/* @own as @node says it now; what is in @node is known to be right. */
static LapEdits *
set_written (LapSession *session, const LapExercise *own, JsonNode *node, const char *label)
{
  g_autoptr (LapExercise) changed = read_back (node, NULL);
  LapEdits *edits = lap_edits_new (label);

  g_return_val_if_fail (changed != NULL, edits);
  set_own (edits, session, own, changed);
  return edits;
}

LapEdits *
lap_verb_set_own_care (LapSession *session, const LapExercise *own, LapCareWord word, int load, const char *label)
{
  const char *id = lap_words_id (&lap_care_words, word);
  g_autoptr (JsonNode) node = written (own);
  JsonObject *object = json_node_get_object (node), *all, *one;

  if (!json_object_has_member (object, "care"))
    json_object_set_object_member (object, "care", json_object_new ());
  all = json_object_get_object_member (object, "care");
  if (!json_object_has_member (all, id))
    json_object_set_object_member (all, id, json_object_new ());
  one = json_object_get_object_member (all, id);
  json_object_set_int_member (one, "load", load);
  if (load == 0)
    json_object_remove_member (all, id);
  if (json_object_get_size (all) == 0)
    json_object_remove_member (object, "care");
  return set_written (session, own, node, label);
}

LapEdits *
lap_verb_borrow_figure (LapSession *session, const LapExercise *own, const LapExercise *other)
{
  g_autofree char *label = g_strdup_printf (_("The figure of %s"), lap_exercise_name (other));
  g_autoptr (JsonNode) node = written (own);

  lend_figure (json_node_get_object (node), other);
  return set_written (session, own, node, label);
}

static gboolean
is_used (LapSession *session, const char *id)
{
  for (guint i = 0; i < lap_session_n (session); i++) {
    LapPart *part = lap_session_nth (session, i);

    for (guint k = 0; k < lap_part_n (part); k++)
      if (lap_block_does (lap_part_nth (part, k), id))
        return TRUE;
  }
  return FALSE;
}

LapEdits *
lap_verb_remove_own (LapSession *session, const LapExercise *own, GError **error)
{
  g_autofree char *label = g_strdup_printf (_("Remove %s"), own->name);
  LapEdits *edits;

  if (is_used (session, own->id)) {
    g_set_error (error, LAP_ERROR, LAP_ERROR_INVALID,
                 _("A block still uses %s: choose another exercise for it first."), own->name);
    return NULL;
  }
  edits = lap_edits_new (label);
  set_own (edits, session, own, NULL);
  return edits;
}
