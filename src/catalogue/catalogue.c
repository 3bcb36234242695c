/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "catalogue/catalogue.h"

#include "base/error.h"
#include "base/json-scan.h"
#include "lapwing-exercises.h"

struct _LapCatalogue {
  gatomicrefcount references;
  GPtrArray      *exercises; /* LapExercise, in the order of lap_catalogue_nth() */
  GHashTable     *by_id;     /* id, also former ones -> LapExercise in exercises */
};

G_DEFINE_BOXED_TYPE (LapCatalogue, lap_catalogue, lap_catalogue_ref, lap_catalogue_unref)

static void
add (LapCatalogue *catalogue, LapExercise *exercise)
{
  if (g_hash_table_contains (catalogue->by_id, exercise->id))
    return;
  g_ptr_array_add (catalogue->exercises, lap_exercise_ref (exercise));
  g_hash_table_insert (catalogue->by_id, exercise->id, exercise);
}

/* Former ids come last, so that an exercise of today always wins. */
static void
add_former_ids (LapCatalogue *catalogue)
{
  for (guint i = 0; i < catalogue->exercises->len; i++) {
    LapExercise *e = g_ptr_array_index (catalogue->exercises, i);

    for (guint k = 0; e->formerly != NULL && e->formerly[k] != NULL; k++)
      if (!g_hash_table_contains (catalogue->by_id, e->formerly[k]))
        g_hash_table_insert (catalogue->by_id, e->formerly[k], e);
  }
}

LapCatalogue *
lap_catalogue_new_over (LapCatalogue *base, GPtrArray *own)
{
  LapCatalogue *catalogue = g_new0 (LapCatalogue, 1);

  g_atomic_ref_count_init (&catalogue->references);
  catalogue->exercises = g_ptr_array_new_with_free_func ((GDestroyNotify) lap_exercise_unref);
  catalogue->by_id = g_hash_table_new (g_str_hash, g_str_equal);
  for (guint i = 0; own != NULL && i < own->len; i++)
    add (catalogue, g_ptr_array_index (own, i));
  for (guint i = 0; base != NULL && i < base->exercises->len; i++)
    add (catalogue, g_ptr_array_index (base->exercises, i));
  add_former_ids (catalogue);
  return catalogue;
}

LapCatalogue *
lap_catalogue_ref (LapCatalogue *catalogue)
{
  g_atomic_ref_count_inc (&catalogue->references);
  return catalogue;
}

void
lap_catalogue_unref (LapCatalogue *catalogue)
{
  if (!g_atomic_ref_count_dec (&catalogue->references))
    return;
  g_hash_table_unref (catalogue->by_id);
  g_ptr_array_unref (catalogue->exercises);
  g_free (catalogue);
}

static int
by_name (gconstpointer a, gconstpointer b)
{
  const LapExercise *ea = *(LapExercise * const *) a, *eb = *(LapExercise * const *) b;

  return g_strcmp0 (ea->name, eb->name);
}

/* What the program carries was checked when it was built; a mistake in it can only end the program. */
static LapCatalogue *
read_builtin (void)
{
  g_autoptr (GBytes) bytes = NULL;
  g_autoptr (JsonNode) root = NULL;
  g_autoptr (GPtrArray) own = g_ptr_array_new_with_free_func ((GDestroyNotify) lap_exercise_unref);
  g_autoptr (GError) error = NULL;
  JsonArray *array;

  bytes = g_resource_lookup_data (lap_exercises_get_resource (), "/org/lapwing/Lapwing/catalogue.json",
                                  G_RESOURCE_LOOKUP_FLAGS_NONE, &error);
  g_assert_no_error (error);
  root = lap_json_parse (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes), &error);
  g_assert_no_error (error);
  array = json_object_get_array_member (json_node_get_object (root), "exercises");
  for (guint i = 0; i < json_array_get_length (array); i++) {
    LapPath top = { NULL, NULL, 0 };
    LapExercise *e = lap_exercise_read (json_array_get_element (array, i), LAP_PATH_ELEMENT (&top, i), &error);

    if (e == NULL)
      g_error ("exercise %u of the catalogue, %s: %s", i, lap_error_pointer (error), error->message);
    g_ptr_array_add (own, e);
  }
  g_ptr_array_sort (own, by_name);
  return lap_catalogue_new_over (NULL, own);
}

LapCatalogue *
lap_catalogue_builtin (void)
{
  static LapCatalogue *builtin;

  if (g_once_init_enter (&builtin))
    g_once_init_leave (&builtin, read_builtin ());
  return lap_catalogue_ref (builtin);
}

LapExercise *
lap_catalogue_find (LapCatalogue *catalogue, const char *id)
{
  return g_hash_table_lookup (catalogue->by_id, id);
}

guint
lap_catalogue_n (LapCatalogue *catalogue)
{
  return catalogue->exercises->len;
}

LapExercise *
lap_catalogue_nth (LapCatalogue *catalogue, guint n)
{
  return g_ptr_array_index (catalogue->exercises, n);
}

gboolean
lap_catalogue_is_same (LapCatalogue *a, LapCatalogue *b)
{
  if (a == b)
    return TRUE;
  if (lap_catalogue_n (a) != lap_catalogue_n (b))
    return FALSE;
  for (guint i = 0; i < lap_catalogue_n (a); i++)
    if (lap_catalogue_nth (a, i) != lap_catalogue_nth (b, i))
      return FALSE;
  return TRUE;
}

LapExercise *
lap_catalogue_shown (LapCatalogue *catalogue, LapExercise *exercise, LapOption option, double *factor)
{
  const char *next = option == LAP_OPTION_EASIER ? exercise->easier
                   : option == LAP_OPTION_HARDER ? exercise->harder : NULL;
  LapExercise *shown = next != NULL ? lap_catalogue_find (catalogue, next) : NULL;

  *factor = 1;
  if (shown != NULL)
    return shown;
  if (option == LAP_OPTION_EASIER)
    *factor = 0.85;
  else if (option == LAP_OPTION_HARDER)
    *factor = 1.15;
  return exercise;
}

gboolean
lap_filter_matches (const LapFilter *f, const LapExercise *e)
{
  return (f->regions == 0 || (lap_muscle_regions (e->primary_mask) & f->regions)) &&
         (f->postures == 0 || (LAP_BIT (e->posture) & f->postures)) &&
         (f->uses == 0 || (e->use_mask & f->uses)) &&
         (!f->has_kit || !(e->kit_mask & ~f->kit)) &&
         (f->impact < 0 || e->impact <= f->impact) &&
         (!f->quiet || e->noise != LAP_NOISE_LOUD) &&
         !(e->load_mask & f->without);
}

const char *
lap_catalogue_nearest (LapCatalogue *catalogue, const char *id)
{
  g_autoptr (GPtrArray) ids = g_ptr_array_new ();

  for (guint i = 0; i < catalogue->exercises->len; i++)
    g_ptr_array_add (ids, lap_catalogue_nth (catalogue, i)->id);
  g_ptr_array_add (ids, NULL);
  return lap_nearest (id, (const char * const *) ids->pdata);
}
