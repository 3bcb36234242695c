/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * An edit that isn't applied holds what will be (value, or the objects to come in); one that is holds what was.
 * A group goes forwards to apply and backwards to take back, so that positions always mean what they meant.
 */
#include "edit/edit.h"

#include "model/part.h"

typedef struct {
  gatomicrefcount references;
  LapList   *list;      /* of a splice, else NULL */
  guint      position;
  guint      n_out;     /* items to take out at the next swap */
  GPtrArray *in;        /* items to put in at the next swap */
  LapObject *object;    /* of a setting */
  char      *property;
  GValue     value;
} LapEdit;

struct _LapEdits {
  char      *label;
  GPtrArray *edits;
  gboolean   applied;
};

G_DEFINE_BOXED_TYPE (LapEdits, lap_edits, lap_edits_copy, lap_edits_free)

static LapEdit *
edit_ref (LapEdit *edit)
{
  g_atomic_ref_count_inc (&edit->references);
  return edit;
}

static void
edit_unref (gpointer data)
{
  LapEdit *edit = data;

  if (!g_atomic_ref_count_dec (&edit->references))
    return;
  g_clear_object (&edit->list);
  g_clear_object (&edit->object);
  g_clear_pointer (&edit->in, g_ptr_array_unref);
  g_free (edit->property);
  if (G_IS_VALUE (&edit->value))
    g_value_unset (&edit->value);
  g_free (edit);
}

static LapEdit *
edit_new (LapEdits *edits)
{
  LapEdit *edit = g_new0 (LapEdit, 1);

  g_assert (!edits->applied);
  g_atomic_ref_count_init (&edit->references);
  g_ptr_array_add (edits->edits, edit);
  return edit;
}

static void
swap_splice (LapEdit *edit)
{
  g_autoptr (GPtrArray) out = g_ptr_array_new_with_free_func (g_object_unref);

  for (guint i = 0; i < edit->n_out; i++)
    g_ptr_array_add (out, g_object_ref (lap_list_nth (edit->list, edit->position + i)));
  lap_list_splice (edit->list, edit->position, edit->n_out, edit->in);
  edit->n_out = edit->in->len;
  g_ptr_array_unref (edit->in);
  edit->in = g_steal_pointer (&out);
}

/* Texts and values that are kept by pointer change places as they are, without a copy: what is applied and taken
 * back leaves the very same pointers, and a timeline from before still holds. */
static void
swap_pointers (LapEdit *edit, gpointer *slot)
{
  const gboolean is_text = G_VALUE_HOLDS_STRING (&edit->value);
  GValue was = G_VALUE_INIT;
  gpointer now = is_text ? (gpointer) g_value_get_string (&edit->value) : g_value_get_boxed (&edit->value);

  if (*slot == now)
    return;
  g_value_init (&was, G_VALUE_TYPE (&edit->value));
  if (is_text)
    g_value_take_string (&was, *slot);
  else
    g_value_take_boxed (&was, *slot);
  *slot = now;
  edit->value = was; /* its pointer has moved: nothing to free */
  g_object_notify (G_OBJECT (edit->object), edit->property);
  lap_object_changed (edit->object);
}

static gpointer *
pointer_slot (LapEdit *edit)
{
  const LapRecord *record = lap_object_record (edit->object);

  if (!G_VALUE_HOLDS_STRING (&edit->value) && !G_VALUE_HOLDS_BOXED (&edit->value))
    return NULL;
  for (guint i = 0; i < record->n; i++) {
    g_autofree char *property = lap_field_property (&record->fields[i]);

    if (g_str_equal (property, edit->property))
      return (gpointer *) ((char *) edit->object + record->fields[i].offset);
  }
  return NULL;
}

static void
swap_set (LapEdit *edit)
{
  gpointer *slot = pointer_slot (edit);
  GValue was = G_VALUE_INIT;

  if (slot != NULL) {
    swap_pointers (edit, slot);
    return;
  }
  g_value_init (&was, G_VALUE_TYPE (&edit->value));
  g_object_get_property (G_OBJECT (edit->object), edit->property, &was);
  g_object_set_property (G_OBJECT (edit->object), edit->property, &edit->value);
  g_value_unset (&edit->value);
  edit->value = was;
}

static void
edit_swap (LapEdit *edit)
{
  if (edit->list != NULL)
    swap_splice (edit);
  else
    swap_set (edit);
}

LapEdits *
lap_edits_new (const char *label)
{
  LapEdits *edits = g_new0 (LapEdits, 1);

  edits->label = g_strdup (label);
  edits->edits = g_ptr_array_new_with_free_func (edit_unref);
  return edits;
}

LapEdits *
lap_edits_new_applied (const char *label)
{
  LapEdits *edits = lap_edits_new (label);

  edits->applied = TRUE;
  return edits;
}

void
lap_edits_free (LapEdits *edits)
{
  g_free (edits->label);
  g_ptr_array_unref (edits->edits);
  g_free (edits);
}

/* The edits themselves are shared: of two copies only one may ever be applied at a time. */
LapEdits *
lap_edits_copy (const LapEdits *edits)
{
  LapEdits *copy = lap_edits_new (edits->label);

  for (guint i = 0; i < edits->edits->len; i++)
    g_ptr_array_add (copy->edits, edit_ref (g_ptr_array_index (edits->edits, i)));
  copy->applied = edits->applied;
  return copy;
}

const char *
lap_edits_label (const LapEdits *edits)
{
  return edits->label;
}

guint
lap_edits_n (const LapEdits *edits)
{
  return edits->edits->len;
}

void
lap_edits_set (LapEdits *edits, gpointer object, const char *property, const GValue *value)
{
  LapEdit *edit = edit_new (edits);

  edit->object = g_object_ref (object);
  edit->property = g_strdup (property);
  g_value_init (&edit->value, G_VALUE_TYPE (value));
  g_value_copy (value, &edit->value);
}

void
lap_edits_set_int (LapEdits *edits, gpointer object, const char *property, int value)
{
  g_auto (GValue) v = G_VALUE_INIT;

  g_value_init (&v, G_TYPE_INT);
  g_value_set_int (&v, value);
  lap_edits_set (edits, object, property, &v);
}

void
lap_edits_set_uint (LapEdits *edits, gpointer object, const char *property, guint value)
{
  g_auto (GValue) v = G_VALUE_INIT;

  g_value_init (&v, G_TYPE_UINT);
  g_value_set_uint (&v, value);
  lap_edits_set (edits, object, property, &v);
}

void
lap_edits_set_double (LapEdits *edits, gpointer object, const char *property, double value)
{
  g_auto (GValue) v = G_VALUE_INIT;

  g_value_init (&v, G_TYPE_DOUBLE);
  g_value_set_double (&v, value);
  lap_edits_set (edits, object, property, &v);
}

void
lap_edits_set_flag (LapEdits *edits, gpointer object, const char *property, gboolean value)
{
  g_auto (GValue) v = G_VALUE_INIT;

  g_value_init (&v, G_TYPE_BOOLEAN);
  g_value_set_boolean (&v, value);
  lap_edits_set (edits, object, property, &v);
}

void
lap_edits_set_text (LapEdits *edits, gpointer object, const char *property, const char *value)
{
  g_auto (GValue) v = G_VALUE_INIT;

  g_value_init (&v, G_TYPE_STRING);
  g_value_set_string (&v, value);
  lap_edits_set (edits, object, property, &v);
}

void
lap_edits_set_boxed (LapEdits *edits, gpointer object, const char *property, GType type, gconstpointer value)
{
  g_auto (GValue) v = G_VALUE_INIT;

  g_value_init (&v, type);
  g_value_set_boxed (&v, value);
  lap_edits_set (edits, object, property, &v);
}

void
lap_edits_splice (LapEdits *edits, LapList *list, guint position, guint n_removed, GPtrArray *added)
{
  LapEdit *edit = edit_new (edits);

  edit->list = g_object_ref (list);
  edit->position = position;
  edit->n_out = n_removed;
  edit->in = g_ptr_array_new_with_free_func (g_object_unref);
  for (guint i = 0; added != NULL && i < added->len; i++)
    g_ptr_array_add (edit->in, g_object_ref (g_ptr_array_index (added, i)));
}

void
lap_edits_insert (LapEdits *edits, LapList *list, guint position, gpointer item)
{
  g_autoptr (GPtrArray) added = g_ptr_array_new ();

  g_ptr_array_add (added, item);
  lap_edits_splice (edits, list, position, 0, added);
}

void
lap_edits_append (LapEdits *edits, LapEdits *more)
{
  g_assert (edits->applied == more->applied);
  for (guint i = 0; i < more->edits->len; i++)
    g_ptr_array_add (edits->edits, edit_ref (g_ptr_array_index (more->edits, i)));
  lap_edits_free (more);
}

/* Puts into @pairs which object or list of @to stands where each of @from does. */
static void
pair_up (GHashTable *pairs, gpointer from, gpointer to)
{
  const LapRecord *record = lap_object_record (from);

  g_hash_table_insert (pairs, from, to);
  for (guint i = 0; i < record->n; i++) {
    LapList *list = lap_object_list (from, &record->fields[i]), *other = lap_object_list (to, &record->fields[i]);

    if (list == NULL)
      continue;
    g_hash_table_insert (pairs, list, other);
    for (guint k = 0; k < lap_list_n (list); k++)
      pair_up (pairs, lap_list_nth (list, k), lap_list_nth (other, k));
  }
}

/* What comes in by the edits stands nowhere yet: it is its own pair. */
static gpointer
pair_of (GHashTable *pairs, gpointer object)
{
  gpointer pair = g_hash_table_lookup (pairs, object);

  return pair != NULL ? pair : object;
}

LapEdits *
lap_edits_onto (const LapEdits *edits, gpointer from, gpointer to)
{
  LapEdits *onto = lap_edits_new (edits->label);
  g_autoptr (GHashTable) pairs = g_hash_table_new (NULL, NULL);

  g_assert (!edits->applied);
  pair_up (pairs, from, to);
  for (guint i = 0; i < edits->edits->len; i++) {
    const LapEdit *edit = g_ptr_array_index (edits->edits, i);

    if (edit->list == NULL) {
      lap_edits_set (onto, pair_of (pairs, edit->object), edit->property, &edit->value);
    } else {
      g_autoptr (GPtrArray) added = g_ptr_array_new ();

      for (guint k = 0; k < edit->in->len; k++)
        g_ptr_array_add (added, pair_of (pairs, g_ptr_array_index (edit->in, k)));
      lap_edits_splice (onto, pair_of (pairs, edit->list), edit->position, edit->n_out, added);
    }
  }
  return onto;
}

/* Seconds of a block or of a part's blocks. */
static int
seconds_of (LapObject *object)
{
  int seconds = 0;

  if (LAP_IS_BLOCK (object))
    return LAP_BLOCK (object)->work + LAP_BLOCK (object)->rest + LAP_BLOCK (object)->seconds;
  if (LAP_IS_PART (object))
    for (guint i = 0; i < lap_part_n (LAP_PART (object)); i++)
      seconds += seconds_of (LAP_OBJECT (lap_part_nth (LAP_PART (object), i)));
  return seconds;
}

static int
change_of_set (const LapEdit *edit)
{
  static const char *const lengths[] = { "work", "rest", "seconds", "switch", "set-rest", "round-rest", "rest-after",
                                         "cap", "every", "target", NULL };
  int now;

  if (g_str_equal (edit->property, "exercise") || g_str_equal (edit->property, "option"))
    return 60;
  if (!g_strv_contains (lengths, edit->property) && !g_str_equal (edit->property, "rounds"))
    return 1;
  g_object_get (edit->object, edit->property, &now, NULL);
  return ABS (g_value_get_int (&edit->value) - now) * (g_str_equal (edit->property, "rounds") ? 60 : 1);
}

int
lap_edits_change (const LapEdits *edits)
{
  int change = 0, out = 0;

  g_assert (!edits->applied);
  for (guint i = 0; i < edits->edits->len; i++) {
    const LapEdit *edit = g_ptr_array_index (edits->edits, i);

    if (edit->list == NULL) {
      change += change_of_set (edit);
      continue;
    }
    out += edit->n_out;
    for (guint k = 0; k < edit->in->len; k++) {
      LapObject *object = g_ptr_array_index (edit->in, k);

      if (object->owner == NULL) {
        change += seconds_of (object);
      } else {
        change += 10;
        out--;
      }
    }
  }
  return change + 60 * MAX (0, out);
}

gboolean
lap_edits_sets (const LapEdits *edits, const char *property)
{
  for (guint i = 0; i < edits->edits->len; i++)
    if (g_strcmp0 (((LapEdit *) g_ptr_array_index (edits->edits, i))->property, property) == 0)
      return TRUE;
  return FALSE;
}

void
lap_edits_swap (LapEdits *edits)
{
  guint n = edits->edits->len;

  for (guint i = 0; i < n; i++)
    edit_swap (g_ptr_array_index (edits->edits, edits->applied ? n - 1 - i : i));
  edits->applied = !edits->applied;
}

gboolean
lap_edits_applied (const LapEdits *edits)
{
  return edits->applied;
}
