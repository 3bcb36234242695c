/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The index of a folder: what it holds is what the files say, a file is looked at again when it was written and never
 * else, and a cache that is damaged in any byte is as good as none.
 */
#include "store/index.h"

#include <glib/gstdio.h>
#include <string.h>
#include <utime.h>

#include "store/folder.h"

static guint looked;

/* Files of this test are a title alone; an empty one can't be read. */
static void
look (const char *path, GBytes *bytes, LapIndexFacts *facts)
{
  gsize size;
  const char *text = g_bytes_get_data (bytes, &size);

  looked++;
  facts->kind = size > 0 ? LAP_INDEX_SESSION : LAP_INDEX_UNREADABLE;
  facts->title = g_strndup (text, size);
  facts->amount = size;
  facts->warnings = 2;
  facts->shape = g_strdup ("aBc");
  facts->found_by = g_strdup ("Inês");
}

static char *
put (const char *folder, const char *name, const char *text, time_t written)
{
  char *path = g_build_filename (folder, name, NULL);
  g_autofree char *in = g_path_get_dirname (path);
  struct utimbuf times = { written, written };

  g_assert_cmpint (g_mkdir_with_parents (in, 0755), ==, 0);
  put_text (path, text);
  g_assert_cmpint (g_utime (path, &times), ==, 0);
  return path;
}

static LapIndex *
refresh (LapIndex *index, guint most)
{
  LapIndex *next;

  looked = 0;
  next = lap_index_refresh (index, NULL, look, most, NULL);
  g_assert_nonnull (next);
  g_assert_cmpuint (lap_index_n_looked (next), ==, looked);
  return next;
}

static void
assert_entry (LapIndex *index, guint n, const char *title, LapIndexKind kind)
{
  LapIndexEntry *entry = lap_index_nth (index, n);

  g_assert_cmpstr (entry->facts.title, ==, title);
  g_assert_cmpint (entry->facts.kind, ==, kind);
}

static void
test_refresh (void)
{
  char *folder = folder_new ();
  g_autofree char *cache = g_build_filename (folder, "cache", "index", NULL);
  g_autofree char *a = put (folder, "a.lapwing", "Older", 1000), *b = put (folder, "deep/b.lapweek", "Newer", 2000);
  g_autofree char *c = put (folder, "c.lapwing", "", 1500), *d = put (folder, "d.txt", "Other", 3000);
  g_autofree char *e = put (folder, ".hidden/e.lapwing", "Hidden", 3000);
  g_autoptr (LapIndex) none = lap_index_load (folder, cache), first = refresh (none, 100);
  g_autoptr (LapIndex) second = NULL, third = NULL, fourth = NULL, back = NULL;
  g_autoptr (GError) error = NULL;

  g_assert_cmpuint (lap_index_n (none), ==, 0);
  g_assert_cmpuint (lap_index_n (first), ==, 3);
  g_assert_cmpuint (looked, ==, 3);
  g_assert_true (lap_index_is_whole (first));
  assert_entry (first, 0, "Newer", LAP_INDEX_SESSION);
  assert_entry (first, 1, "c.lapwing", LAP_INDEX_UNREADABLE);
  assert_entry (first, 2, "Older", LAP_INDEX_SESSION);

  second = refresh (first, 100);
  g_assert_cmpuint (looked, ==, 0);
  g_assert_true (lap_index_nth (second, 0) == lap_index_nth (first, 0));

  g_free (put (folder, "a.lapwing", "Written again", 4000));
  g_assert_cmpint (g_unlink (b), ==, 0);
  third = refresh (second, 100);
  g_assert_cmpuint (looked, ==, 1);
  g_assert_cmpuint (lap_index_n (third), ==, 2);
  assert_entry (third, 0, "Written again", LAP_INDEX_SESSION);

  g_assert_true (lap_index_keep (third, cache, &error));
  g_assert_no_error (error);
  back = lap_index_load (folder, cache);
  g_assert_cmpuint (lap_index_n (back), ==, 2);
  assert_entry (back, 0, "Written again", LAP_INDEX_SESSION);
  g_assert_cmpstr (lap_index_nth (back, 0)->facts.shape, ==, "aBc");
  g_assert_cmpuint (lap_index_nth (back, 0)->facts.warnings, ==, 2);
  g_assert_cmpint (lap_index_nth (back, 0)->written, ==, 4000);
  fourth = refresh (back, 100);
  g_assert_cmpuint (looked, ==, 0);
  folder_remove (folder);
}

/* A first look at many files comes in pieces, the newest first. */
static void
test_pieces (void)
{
  char *folder = folder_new ();
  g_autoptr (LapIndex) index = lap_index_load (folder, "/nowhere");
  g_autoptr (GCancellable) cancelled = g_cancellable_new ();

  for (guint i = 0; i < 25; i++) {
    g_autofree char *name = g_strdup_printf ("%02u.lapwing", i), *title = g_strdup_printf ("Number %u", i);

    g_free (put (folder, name, title, 1000 + i));
  }
  for (guint n = 10; n <= 30; n += 10) {
    LapIndex *next = refresh (index, 10);

    g_assert_cmpuint (lap_index_n (next), ==, MIN (n, 25));
    g_assert_cmpuint (lap_index_n_there (next), ==, 25);
    g_assert_cmpint (lap_index_is_whole (next), ==, n >= 25);
    assert_entry (next, 0, "Number 24", LAP_INDEX_SESSION);
    lap_index_unref (index);
    index = next;
  }
  g_cancellable_cancel (cancelled);
  g_assert_null (lap_index_refresh (index, NULL, look, 10, cancelled));
  folder_remove (folder);
}

/* A file elsewhere that was opened lately is there, too, and none twice. */
static void
test_also (void)
{
  char *folder = folder_new (), *other = folder_new ();
  g_autofree char *a = put (folder, "a.lapwing", "Here", 1000), *b = put (other, "b.lapwing", "There", 2000);
  const char *also[] = { b, a, "/nowhere/c.lapwing", NULL };
  g_autoptr (LapIndex) none = lap_index_load (folder, "/nowhere"), bare = lap_index_load (NULL, "/nowhere");
  g_autoptr (LapIndex) index = lap_index_refresh (none, also, look, 10, NULL);
  g_autoptr (LapIndex) lone = lap_index_refresh (bare, also, look, 10, NULL);

  g_assert_cmpuint (lap_index_n (index), ==, 2);
  assert_entry (index, 0, "There", LAP_INDEX_SESSION);
  assert_entry (index, 1, "Here", LAP_INDEX_SESSION);
  g_assert_cmpuint (lap_index_n (lone), ==, 2);
  folder_remove (folder);
  folder_remove (other);
}

static gboolean
is_found (LapIndex *index, const char *text)
{
  g_auto (GStrv) wanted = lap_index_fold (text);

  return lap_index_entry_matches (lap_index_nth (index, 0), (const char * const *) wanted);
}

static void
test_search (void)
{
  char *folder = folder_new ();
  g_autofree char *a = put (folder, "plan.lapwing", "Thirty, élan and Straße", 1000);
  g_autoptr (LapIndex) none = lap_index_load (folder, "/nowhere"), index = refresh (none, 10);

  g_assert_true (is_found (index, ""));
  g_assert_true (is_found (index, "ELAN thi"));
  g_assert_true (is_found (index, "élan"));
  g_assert_true (is_found (index, "ines"));
  g_assert_true (is_found (index, "strasse"));
  g_assert_true (is_found (index, "plan"));
  g_assert_false (is_found (index, "lan"));
  g_assert_false (is_found (index, "thirty forty"));
  folder_remove (folder);
}

/* Without a sync: a thousand of them would take long. */
static void
put_bytes (const char *path, const char *data, gsize size)
{
  FILE *file = g_fopen (path, "w");

  g_assert_nonnull (file);
  g_assert_cmpuint (fwrite (data, 1, size, file), ==, size);
  g_assert_cmpint (fclose (file), ==, 0);
}

/* Every byte of the cache changed, and cut off before every byte: each is read as something or as nothing, and what the
 * next refresh finds is right. */
static void
test_damaged (void)
{
  char *folder = folder_new ();
  g_autofree char *cache = g_build_filename (folder, "index", NULL), *data = NULL, *other = NULL;
  g_autofree char *a = put (folder, "a.lapwing", "First", 1000), *b = put (folder, "b.lapwing", "Second", 2000);
  g_autoptr (LapIndex) none = lap_index_load (folder, cache), index = refresh (none, 10), elsewhere = NULL;
  gsize size;

  g_assert_true (lap_index_keep (index, cache, NULL));
  g_assert_true (g_file_get_contents (cache, &data, &size, NULL));
  for (gsize i = 0; i < size; i++) {
    g_autoptr (LapIndex) whole = NULL, cut = NULL;

    data[i] ^= 0x55;
    put_bytes (cache, data, size);
    whole = lap_index_load (folder, cache);
    g_assert_cmpuint (lap_index_n (whole), <=, LAP_INDEX_MOST);
    data[i] ^= 0x55;
    put_bytes (cache, data, i);
    cut = lap_index_load (folder, cache);
    g_assert_cmpuint (lap_index_n (cut), ==, 0);
  }
  put_bytes (cache, data, size);
  other = g_build_filename (folder, "other", NULL);
  elsewhere = lap_index_load (other, cache);
  g_assert_cmpuint (lap_index_n (elsewhere), ==, 0);
  folder_remove (folder);
}

/* What nobody may write is said; what was kept before stays. */
static void
test_unwritable (void)
{
  g_autoptr (LapIndex) index = lap_index_load ("/", "/nowhere");
  g_autoptr (GError) error = NULL;

  g_assert_false (lap_index_keep (index, "/proc/lapwing/index", &error));
  g_assert_nonnull (error);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/index/refresh", test_refresh);
  g_test_add_func ("/index/pieces", test_pieces);
  g_test_add_func ("/index/also", test_also);
  g_test_add_func ("/index/search", test_search);
  g_test_add_func ("/index/damaged", test_damaged);
  g_test_add_func ("/index/unwritable", test_unwritable);
  return g_test_run ();
}
