/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The one list type, as GTK's own list models are tested: a view that hears only items-changed must come to
 * the same contents as the list, and each change is told once, when it has happened.
 */
#include "model/part.h"

#define CHANGES 2000

typedef struct {
  LapPart *part;
  GString *view;    /* contents as heard: a letter for each block, its note */
  GString *changes; /* "2-1+3 " for one, two and three items at 2 */
  guint told;       /* how often the part said "changed" */
} Watch;

static LapBlock *
new_block (char letter)
{
  LapBlock *block = lap_block_new_exercise ("squat", 40, 20);

  block->note = g_strdup_printf ("%c", letter);
  return block;
}

static char
letter_at (GListModel *model, guint position)
{
  g_autoptr(LapBlock) block = g_list_model_get_item (model, position);

  g_assert_true (LAP_IS_BLOCK (block));
  return block->note[0];
}

static void
on_items_changed (GListModel *model, guint position, guint removed, guint added, Watch *watch)
{
  g_string_erase (watch->view, position, removed);
  for (guint i = 0; i < added; i++)
    g_string_insert_c (watch->view, position + i, letter_at (model, position + i));
  g_string_append_printf (watch->changes, "%u-%u+%u ", position, removed, added);
}

static void
on_changed (Watch *watch)
{
  /* By then who watches the list has heard. */
  g_assert_cmpuint (watch->view->len, ==, lap_list_n (watch->part->blocks));
  watch->told++;
}

static void
watch_init (Watch *watch)
{
  watch->part = lap_part_new (LAP_PART_MAIN);
  watch->view = g_string_new (NULL);
  watch->changes = g_string_new (NULL);
  watch->told = 0;
  g_signal_connect (watch->part->blocks, "items-changed", G_CALLBACK (on_items_changed), watch);
  g_signal_connect_swapped (watch->part, "changed", G_CALLBACK (on_changed), watch);
}

static void
watch_clear (Watch *watch)
{
  g_object_unref (watch->part);
  g_string_free (watch->view, TRUE);
  g_string_free (watch->changes, TRUE);
}

static void
splice (Watch *watch, guint position, guint removed, const char *added)
{
  g_autoptr(GPtrArray) items = g_ptr_array_new_with_free_func (g_object_unref);

  for (; *added != '\0'; added++)
    g_ptr_array_add (items, new_block (*added));
  lap_list_splice (watch->part->blocks, position, removed, items);
}

static void
assert_contents (Watch *watch, const char *contents, const char *changes)
{
  GListModel *model = G_LIST_MODEL (watch->part->blocks);
  g_autoptr(GString) found = g_string_new (NULL);

  for (guint i = 0; i < g_list_model_get_n_items (model); i++)
    g_string_append_c (found, letter_at (model, i));
  g_assert_cmpstr (found->str, ==, contents);
  g_assert_cmpstr (watch->view->str, ==, contents);
  g_assert_cmpstr (watch->changes->str, ==, changes);
  g_string_truncate (watch->changes, 0);
}

static void
test_story (void)
{
  static const struct { guint position, removed; const char *added, *contents, *changes; } rows[] = {
    { 0, 0, "", "", "" },
    { 0, 0, "abc", "abc", "0-0+3 " },
    { 3, 0, "d", "abcd", "3-0+1 " },
    { 1, 2, "", "ad", "1-2+0 " },
    { 0, 1, "xyz", "xyzd", "0-1+3 " },
    { 4, 0, "", "xyzd", "" },
    { 2, 2, "m", "xym", "2-2+1 " },
    { 0, 3, "", "", "0-3+0 " },
  };
  Watch watch;
  guint told = 0;

  watch_init (&watch);
  for (guint i = 0; i < G_N_ELEMENTS (rows); i++)
    {
      splice (&watch, rows[i].position, rows[i].removed, rows[i].added);
      assert_contents (&watch, rows[i].contents, rows[i].changes);
      told += *rows[i].changes != '\0';
      g_assert_cmpuint (watch.told, ==, told);
    }
  watch_clear (&watch);
}

static void
test_random (void)
{
  g_autoptr(GRand) rand = g_rand_new_with_seed (1);
  g_autoptr(GString) mirror = g_string_new (NULL);
  Watch watch;

  watch_init (&watch);
  for (guint i = 0; i < CHANGES; i++)
    {
      guint position = g_rand_int_range (rand, 0, mirror->len + 1);
      guint removed = g_rand_int_range (rand, 0, MIN (mirror->len - position, 4u) + 1);
      char added[4] = { 0 };

      for (int k = g_rand_int_range (rand, 0, mirror->len > 30 ? 1 : 4); k-- > 0;)
        added[k] = 'a' + g_rand_int_range (rand, 0, 26);
      g_string_erase (mirror, position, removed);
      g_string_insert (mirror, position, added);
      splice (&watch, position, removed, added);
      g_string_truncate (watch.changes, 0);
      assert_contents (&watch, mirror->str, "");
    }
  watch_clear (&watch);
}

static void
test_items (void)
{
  g_autoptr(LapPart) part = lap_part_new (LAP_PART_MAIN);
  g_autoptr(LapBlock) block = new_block ('a');
  g_autoptr(GPtrArray) items = g_ptr_array_new ();
  GListModel *model = G_LIST_MODEL (part->blocks);

  g_assert_true (g_list_model_get_item_type (model) == LAP_TYPE_BLOCK);
  g_assert_null (g_list_model_get_item (model, 0));
  g_assert_cmpuint (lap_list_find (part->blocks, block), ==, G_MAXUINT);
  g_ptr_array_add (items, block);
  lap_list_splice (part->blocks, 0, 0, items);
  g_assert_true (lap_list_nth (part->blocks, 0) == block);
  g_assert_cmpuint (lap_list_find (part->blocks, block), ==, 0);
  g_assert_null (g_list_model_get_item (model, 1));
  g_assert_true (LAP_OBJECT (block)->owner == LAP_OBJECT (part));
  /* The same one out and in again. */
  lap_list_splice (part->blocks, 0, 1, items);
  g_assert_true (lap_list_nth (part->blocks, 0) == block);
  g_assert_true (LAP_OBJECT (block)->owner == LAP_OBJECT (part));
  lap_list_splice (part->blocks, 0, 1, NULL);
  g_assert_null (LAP_OBJECT (block)->owner);
  g_assert_cmpstr (block->note, ==, "a");
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/model-list/story", test_story);
  g_test_add_func ("/model-list/random", test_random);
  g_test_add_func ("/model-list/items", test_items);
  return g_test_run ();
}
