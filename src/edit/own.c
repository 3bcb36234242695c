/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "edit/own.h"

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

/* A copy through what a file says of it, so that no member is forgotten. */
static LapExercise *
copy_as (const LapExercise *base, const char *id, const char *name, gboolean borrow)
{
  g_autoptr (LapJsonWriter) writer = lap_json_writer_new ();
  g_autoptr (GBytes) bytes = NULL;
  g_autoptr (JsonNode) node = NULL;
  LapPath top = { NULL, NULL, 0 };
  JsonObject *object;

  lap_exercise_write (base, writer);
  bytes = lap_json_writer_finish (writer);
  node = lap_json_parse (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes), NULL);
  object = json_node_get_object (node);
  json_object_set_string_member (object, "id", id);
  json_object_set_string_member (object, "name", name);
  if (borrow) {
    json_object_remove_member (object, "formerly");
    json_object_remove_member (object, "other-names");
  }
  if (borrow && json_object_has_member (object, "figure")) {
    JsonObject *figure = json_object_new ();

    json_object_set_string_member (figure, "like", base->id);
    json_object_set_object_member (object, "figure", figure);
  }
  return lap_exercise_read (node, &top, NULL);
}

/* The session's own exercises with @other in place of @own, or after them. */
static void
set_own (LapEdits *edits, LapSession *session, const LapExercise *own, LapExercise *other)
{
  g_autoptr (GPtrArray) all = g_ptr_array_new_with_free_func ((GDestroyNotify) lap_exercise_unref);

  for (guint i = 0; session->exercises != NULL && i < session->exercises->len; i++) {
    LapExercise *e = g_ptr_array_index (session->exercises, i);

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
  own = copy_as (base, *id, name, TRUE);
  g_return_val_if_fail (own != NULL, edits);
  set_own (edits, session, NULL, own);
  return edits;
}

LapEdits *
lap_verb_rename_own (LapSession *session, const LapExercise *own, const char *name)
{
  g_autofree char *label = g_strdup_printf (_("Call it %s"), name);
  LapEdits *edits = lap_edits_new (label);
  g_autoptr (LapExercise) other = copy_as (own, own->id, name, FALSE);

  g_return_val_if_fail (other != NULL, edits);
  set_own (edits, session, own, other);
  return edits;
}
