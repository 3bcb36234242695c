/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The cache file is one GVariant: nothing has to be parsed to read it, and what is damaged in it is found by one pass
 * over the bytes. It never leaves the machine, so its byte order is the machine's; another one shows as another version.
 */
#include "store/index.h"

#include <string.h>

#include "base/error.h"
#include "store/index-scan.h"
#include "store/read-file.h"
#include "store/save.h"

#define VERSION 2
/* version, folder, entries */
#define FILE_TYPE "(uaya(ayyxsuusss))"
/* path, kind, written, etag, amount, warnings, title, shape, words */
#define ENTRY_TYPE "(ayyxsuusss)"

/* Characters of a title, a shape and the words that are kept: a list shows no more, and the file stays small. */
#define TITLE_MOST 200
#define SHAPE_MOST 64
#define WORDS_MOST 600

G_DEFINE_FINAL_TYPE (LapIndexEntry, lap_index_entry, G_TYPE_OBJECT)

struct _LapIndex {
  char      *folder;  /* NULL = none */
  GPtrArray *entries; /* LapIndexEntry */
  guint      n_there, n_looked;
  gatomicrefcount references;
};

static void
lap_index_entry_finalize (GObject *object)
{
  LapIndexEntry *self = LAP_INDEX_ENTRY (object);

  g_free (self->path);
  g_free (self->etag);
  g_free (self->facts.title);
  g_free (self->facts.shape);
  g_free (self->words);
  G_OBJECT_CLASS (lap_index_entry_parent_class)->finalize (object);
}

static void
lap_index_entry_class_init (LapIndexEntryClass *klass)
{
  G_OBJECT_CLASS (klass)->finalize = lap_index_entry_finalize;
}

static void
lap_index_entry_init (LapIndexEntry *self)
{
}

static LapIndex *
index_new (const char *folder)
{
  LapIndex *self = g_new0 (LapIndex, 1);

  self->folder = g_strdup (folder);
  self->entries = g_ptr_array_new_with_free_func (g_object_unref);
  g_atomic_ref_count_init (&self->references);
  return self;
}

/* The first @most characters of @text, freed; "" for NULL. */
static char *
cut (char *text, glong most)
{
  if (text == NULL)
    return g_strdup ("");
  if (g_utf8_strlen (text, -1) > most)
    *g_utf8_offset_to_pointer (text, most) = '\0';
  return text;
}

static void
add_words (GString *words, char **folded)
{
  for (guint i = 0; folded[i] != NULL; i++)
    g_string_append_printf (words, " %s", folded[i]);
}

static char *
fold_all (const char *path, const LapIndexFacts *facts)
{
  g_autofree char *name = g_filename_display_basename (path);
  const char *texts[] = { facts->title, name, facts->found_by };
  GString *words = g_string_new (NULL);

  for (guint i = 0; i < G_N_ELEMENTS (texts); i++) {
    g_auto (GStrv) plain = NULL, folded = g_str_tokenize_and_fold (texts[i] != NULL ? texts[i] : "", NULL, &plain);

    add_words (words, folded);
    add_words (words, plain);
  }
  return g_string_free (words, FALSE);
}

static LapIndexEntry *
look_at (const LapFoundFile *file, LapIndexLook look)
{
  LapIndexEntry *entry = g_object_new (LAP_TYPE_INDEX_ENTRY, NULL);
  g_autoptr (GBytes) bytes = lap_read_file (file->path, NULL, NULL);

  entry->path = g_strdup (file->path);
  /* What rights forbid to read is tried again each time: they may change without a trace in the file. */
  entry->etag = g_strdup (bytes != NULL ? file->etag : "");
  entry->written = file->written;
  entry->facts.kind = LAP_INDEX_UNREADABLE;
  if (bytes != NULL)
    look (file->path, bytes, &entry->facts);
  if (entry->facts.title == NULL || *entry->facts.title == '\0') {
    g_free (entry->facts.title);
    entry->facts.title = g_filename_display_basename (file->path);
  }
  entry->words = cut (fold_all (file->path, &entry->facts), WORDS_MOST);
  entry->facts.title = cut (entry->facts.title, TITLE_MOST);
  entry->facts.shape = cut (entry->facts.shape, SHAPE_MOST);
  g_clear_pointer (&entry->facts.found_by, g_free);
  return entry;
}

LapIndex *
lap_index_refresh (LapIndex *index, const char * const *also, LapIndexLook look, guint most,
                   GCancellable *cancellable)
{
  g_autoptr (GPtrArray) files = NULL;
  g_autoptr (GHashTable) known = g_hash_table_new (g_str_hash, g_str_equal);
  g_autoptr (LapIndex) self = index_new (index->folder);

  files = lap_index_scan (index->folder, also, LAP_INDEX_DEPTH, LAP_INDEX_MOST, cancellable);
  for (guint i = 0; i < index->entries->len; i++) {
    LapIndexEntry *entry = g_ptr_array_index (index->entries, i);

    g_hash_table_insert (known, entry->path, entry);
  }
  self->n_there = files->len;
  for (guint i = 0; i < files->len && !g_cancellable_is_cancelled (cancellable); i++) {
    const LapFoundFile *file = g_ptr_array_index (files, i);
    LapIndexEntry *entry = g_hash_table_lookup (known, file->path);

    if (entry != NULL && g_str_equal (entry->etag, file->etag))
      g_ptr_array_add (self->entries, g_object_ref (entry));
    else if (self->n_looked < most) {
      g_ptr_array_add (self->entries, look_at (file, look));
      self->n_looked++;
    }
  }
  return g_cancellable_is_cancelled (cancellable) ? NULL : g_steal_pointer (&self);
}

static LapIndexEntry *
entry_from_variant (GVariant *variant)
{
  LapIndexEntry *entry = g_object_new (LAP_TYPE_INDEX_ENTRY, NULL);
  guint8 kind;

  g_variant_get (variant, "(^ayyxsuusss)", &entry->path, &kind, &entry->written, &entry->etag, &entry->facts.amount,
                 &entry->facts.warnings, &entry->facts.title, &entry->facts.shape, &entry->words);
  entry->facts.kind = MIN (kind, LAP_INDEX_UNREADABLE);
  return entry;
}

LapIndex *
lap_index_load (const char *folder, const char *cache)
{
  LapIndex *self = index_new (folder);
  g_autoptr (GBytes) bytes = lap_read_file (cache, NULL, NULL);
  g_autoptr (GVariant) file = NULL, entries = NULL;
  g_autofree char *whose = NULL;
  guint32 version;

  if (bytes == NULL)
    return self;
  file = g_variant_ref_sink (g_variant_new_from_bytes (G_VARIANT_TYPE (FILE_TYPE), bytes, FALSE));
  g_variant_get (file, "(u^ay@a" ENTRY_TYPE ")", &version, &whose, &entries);
  if (version != VERSION || !g_str_equal (whose, folder != NULL ? folder : "") || !g_variant_is_normal_form (file))
    return self;
  for (gsize i = 0; i < MIN (g_variant_n_children (entries), LAP_INDEX_MOST); i++) {
    g_autoptr (GVariant) entry = g_variant_get_child_value (entries, i);

    g_ptr_array_add (self->entries, entry_from_variant (entry));
  }
  self->n_there = self->entries->len;
  return self;
}

gboolean
lap_index_keep (LapIndex *self, const char *cache, GError **error)
{
  g_autofree char *folder = g_path_get_dirname (cache);
  g_autoptr (GVariant) file = NULL;
  g_autoptr (GBytes) bytes = NULL;
  GVariantBuilder entries;

  g_variant_builder_init (&entries, G_VARIANT_TYPE ("a" ENTRY_TYPE));
  for (guint i = 0; i < self->entries->len; i++) {
    const LapIndexEntry *entry = g_ptr_array_index (self->entries, i);

    g_variant_builder_add (&entries, "(^ayyxsuusss)", entry->path, (guint8) entry->facts.kind, entry->written,
                           entry->etag, entry->facts.amount, entry->facts.warnings, entry->facts.title,
                           entry->facts.shape, entry->words);
  }
  file = g_variant_ref_sink (g_variant_new ("(u^aya" ENTRY_TYPE ")", VERSION, self->folder != NULL ? self->folder : "",
                                            &entries));
  bytes = g_variant_get_data_as_bytes (file);
  g_mkdir_with_parents (folder, 0700); /* where that fails, saving says so */
  return lap_save_bytes (cache, bytes, NULL, NULL, error);
}

LapIndex *
lap_index_ref (LapIndex *self)
{
  g_atomic_ref_count_inc (&self->references);
  return self;
}

void
lap_index_unref (LapIndex *self)
{
  if (!g_atomic_ref_count_dec (&self->references))
    return;
  g_free (self->folder);
  g_ptr_array_unref (self->entries);
  g_free (self);
}

const char *
lap_index_folder (LapIndex *self)
{
  return self->folder;
}

guint
lap_index_n (LapIndex *self)
{
  return self->entries->len;
}

LapIndexEntry *
lap_index_nth (LapIndex *self, guint n)
{
  return g_ptr_array_index (self->entries, n);
}

guint
lap_index_n_there (LapIndex *self)
{
  return self->n_there;
}

guint
lap_index_n_looked (LapIndex *self)
{
  return self->n_looked;
}

gboolean
lap_index_is_whole (LapIndex *self)
{
  return self->entries->len == self->n_there;
}

/* A word typed with an accent is looked for without it: somebody who types one means the same. */
char **
lap_index_fold (const char *text)
{
  g_auto (GStrv) folded = g_str_tokenize_and_fold (text, NULL, NULL);
  GStrvBuilder *wanted = g_strv_builder_new ();
  char **all;

  for (guint i = 0; folded[i] != NULL; i++) {
    g_auto (GStrv) plain = NULL, again = g_str_tokenize_and_fold (folded[i], NULL, &plain);
    g_autofree char *word = g_strconcat (" ", plain[0] != NULL ? plain[0] : folded[i], NULL);

    g_strv_builder_add (wanted, word);
  }
  all = g_strv_builder_end (wanted);
  g_strv_builder_unref (wanted);
  return all;
}

gboolean
lap_index_entry_matches (LapIndexEntry *entry, const char * const *wanted)
{
  for (guint i = 0; wanted[i] != NULL; i++)
    if (strstr (entry->words, wanted[i]) == NULL)
      return FALSE;
  return TRUE;
}
