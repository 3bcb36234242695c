/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "catalogue/catalogue.h"

#include "base/error.h"
#include "base/json-scan.h"
#include "lapwing-exercises.h"

#include <string.h>

/* The built-in catalogue is a line of JSON an exercise, and a line is read when its exercise is asked for: a session
 * shows a few of them, and reading all takes as long as a third of opening a window. Whoever wants the first or the
 * next one gets them all. */
struct _LapCatalogue {
  gatomicrefcount references;
  LapCatalogue   *base;  /* below the own ones, or NULL */
  GHashTable     *lines; /* id -> its line, of the built-in one, else NULL */
  GMutex          lock;  /* of what follows */
  GHashTable     *by_id; /* id -> LapExercise, those read so far */
  GPtrArray      *own;   /* LapExercise, in their order; of the built-in one NULL until all are read */
  GPtrArray      *all;   /* LapExercise, own ones first; NULL until somebody wants them */
};

G_DEFINE_BOXED_TYPE (LapCatalogue, lap_catalogue, lap_catalogue_ref, lap_catalogue_unref)

static GPtrArray *
exercises_new (void)
{
  return g_ptr_array_new_with_free_func ((GDestroyNotify) lap_exercise_unref);
}

static LapCatalogue *
catalogue_new (LapCatalogue *base)
{
  LapCatalogue *catalogue = g_new0 (LapCatalogue, 1);

  g_atomic_ref_count_init (&catalogue->references);
  g_mutex_init (&catalogue->lock);
  catalogue->base = base != NULL ? lap_catalogue_ref (base) : NULL;
  catalogue->by_id = g_hash_table_new_full (g_str_hash, g_str_equal, NULL, (GDestroyNotify) lap_exercise_unref);
  return catalogue;
}

LapCatalogue *
lap_catalogue_new_over (LapCatalogue *base, GPtrArray *own)
{
  LapCatalogue *catalogue = catalogue_new (base);

  catalogue->own = exercises_new ();
  for (guint i = 0; own != NULL && i < own->len; i++) {
    LapExercise *e = g_ptr_array_index (own, i);

    if (!g_hash_table_contains (catalogue->by_id, e->id)) {
      g_hash_table_insert (catalogue->by_id, e->id, lap_exercise_ref (e));
      g_ptr_array_add (catalogue->own, lap_exercise_ref (e));
    }
  }
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
  g_clear_pointer (&catalogue->base, lap_catalogue_unref);
  g_clear_pointer (&catalogue->lines, g_hash_table_unref);
  g_clear_pointer (&catalogue->own, g_ptr_array_unref);
  g_clear_pointer (&catalogue->all, g_ptr_array_unref);
  g_hash_table_unref (catalogue->by_id);
  g_mutex_clear (&catalogue->lock);
  g_free (catalogue);
}

/* What the program carries was checked when it was built; a mistake in it can only end the program. */
static LapExercise *
read_line (const char *line)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (JsonNode) node = lap_json_parse (line, strcspn (line, "\n"), &error);
  LapPath top = { NULL, NULL, 0 };
  LapExercise *e = node != NULL ? lap_exercise_read (node, &top, &error) : NULL;

  if (e == NULL)
    g_error ("%.40s of the catalogue, %s: %s", line, lap_error_pointer (error), error->message);
  return e;
}

/* Under the lock. The exercise that has @id today, the catalogue's own. */
static LapExercise *
find_own (LapCatalogue *catalogue, const char *id)
{
  LapExercise *e = g_hash_table_lookup (catalogue->by_id, id);
  const char *line = e == NULL && catalogue->lines != NULL ? g_hash_table_lookup (catalogue->lines, id) : NULL;

  if (line != NULL) {
    e = read_line (line);
    g_hash_table_insert (catalogue->by_id, e->id, e);
  }
  return e;
}

static LapExercise *
find_today (LapCatalogue *catalogue, const char *id)
{
  LapExercise *e;

  g_mutex_lock (&catalogue->lock);
  e = find_own (catalogue, id);
  g_mutex_unlock (&catalogue->lock);
  return e == NULL && catalogue->base != NULL ? find_today (catalogue->base, id) : e;
}

static int
by_name (gconstpointer a, gconstpointer b)
{
  const LapExercise *ea = *(LapExercise * const *) a, *eb = *(LapExercise * const *) b;

  return g_strcmp0 (ea->name, eb->name);
}

static GPtrArray *
read_lines (LapCatalogue *catalogue)
{
  GPtrArray *own = exercises_new ();
  GHashTableIter iter;
  gpointer id;

  g_hash_table_iter_init (&iter, catalogue->lines);
  while (g_hash_table_iter_next (&iter, &id, NULL))
    g_ptr_array_add (own, lap_exercise_ref (find_own (catalogue, id)));
  g_ptr_array_sort (own, by_name);
  return own;
}

static GPtrArray *
all_of (LapCatalogue *catalogue)
{
  GPtrArray *below = catalogue->base != NULL ? all_of (catalogue->base) : NULL, *all;

  g_mutex_lock (&catalogue->lock);
  if (catalogue->all == NULL) {
    if (catalogue->own == NULL)
      catalogue->own = read_lines (catalogue);
    catalogue->all = exercises_new ();
    for (guint i = 0; i < catalogue->own->len; i++)
      g_ptr_array_add (catalogue->all, lap_exercise_ref (catalogue->own->pdata[i]));
    for (guint i = 0; below != NULL && i < below->len; i++)
      if (!g_hash_table_contains (catalogue->by_id, ((LapExercise *) below->pdata[i])->id))
        g_ptr_array_add (catalogue->all, lap_exercise_ref (below->pdata[i]));
  }
  all = catalogue->all;
  g_mutex_unlock (&catalogue->lock);
  return all;
}

static LapCatalogue *
index_builtin (void)
{
  LapCatalogue *catalogue = catalogue_new (NULL);
  g_autoptr (GBytes) bytes = NULL;
  g_autoptr (GError) error = NULL;
  const char *line, *end;
  gsize size;

  bytes = g_resource_lookup_data (lap_exercises_get_resource (), "/org/lapwing/Lapwing/catalogue.json",
                                  G_RESOURCE_LOOKUP_FLAGS_NONE, &error);
  g_assert_no_error (error);
  catalogue->lines = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  /* The program's own bytes: they stay where they are. */
  line = g_bytes_get_data (bytes, &size);
  end = line + size;
  for (; line < end; line = strchr (line, '\n') + 1) {
    const char *id = line + strlen ("{\"id\":\"");

    g_hash_table_insert (catalogue->lines, g_strndup (id, strcspn (id, "\"")), (gpointer) line);
  }
  return catalogue;
}

LapCatalogue *
lap_catalogue_builtin (void)
{
  static LapCatalogue *builtin;

  if (g_once_init_enter (&builtin))
    g_once_init_leave (&builtin, index_builtin ());
  return lap_catalogue_ref (builtin);
}

/* An exercise of today always wins over what had the id before. */
LapExercise *
lap_catalogue_find (LapCatalogue *catalogue, const char *id)
{
  LapExercise *e = find_today (catalogue, id);
  GPtrArray *all = e == NULL ? all_of (catalogue) : NULL;

  for (guint i = 0; all != NULL && i < all->len; i++) {
    LapExercise *other = g_ptr_array_index (all, i);

    if (other->formerly != NULL && g_strv_contains ((const char * const *) other->formerly, id))
      return other;
  }
  return e;
}

guint
lap_catalogue_n (LapCatalogue *catalogue)
{
  return all_of (catalogue)->len;
}

LapExercise *
lap_catalogue_nth (LapCatalogue *catalogue, guint n)
{
  return g_ptr_array_index (all_of (catalogue), n);
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

  for (guint i = 0; i < lap_catalogue_n (catalogue); i++)
    g_ptr_array_add (ids, lap_catalogue_nth (catalogue, i)->id);
  g_ptr_array_add (ids, NULL);
  return lap_nearest (id, (const char * const *) ids->pdata);
}
