/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A user's own exercises, in programs that run at once: what one keeps the others offer without being asked, and however
 * they write at the same time, none takes away what another has kept. Which exercises they are doesn't matter here: the
 * first ones of the catalogue.
 */
#include "ui/personal.h"

#include "store/folder.h"

#include <stdlib.h>

#define AT_ONCE 3
#define EACH    12

/* What another program is: it keeps EACH exercises, the first of them at @first, and goes. */
static int
keep_some (guint first)
{
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();

  for (guint i = first; i < first + EACH; i++) {
    g_autoptr (GError) error = NULL;

    if (!lap_personal_keep (lap_personal (), lap_catalogue_nth (builtin, i), &error))
      g_error ("%s", error->message);
  }
  return 0;
}

static GSubprocess *
start (guint first)
{
  g_autofree char *program = g_file_read_link ("/proc/self/exe", NULL), *number = g_strdup_printf ("%u", first);
  g_autoptr (GError) error = NULL;
  GSubprocess *other = g_subprocess_new (G_SUBPROCESS_FLAGS_NONE, &error, program, "--keep", number, NULL);

  g_assert_no_error (error);
  return other;
}

static void
finish (GSubprocess *other)
{
  g_autoptr (GError) error = NULL;

  g_subprocess_wait_check (other, NULL, &error);
  g_assert_no_error (error);
  g_object_unref (other);
}

static guint
n_of (LapPersonal *personal)
{
  g_autoptr (LapCatalogue) none = lap_catalogue_new_over (NULL, NULL), all = lap_personal_under (personal, none);

  return lap_catalogue_n (all);
}

static void
test_at_once (void)
{
  g_autoptr (LapPersonal) after = NULL;
  GSubprocess *others[AT_ONCE];

  for (guint i = 0; i < AT_ONCE; i++)
    others[i] = start (i * EACH);
  for (guint i = 0; i < AT_ONCE; i++)
    finish (others[i]);
  after = g_object_new (LAP_TYPE_PERSONAL, NULL);
  g_assert_cmpuint (n_of (after), ==, AT_ONCE * EACH);
}

/* This program has read the file before; it hears of what the other one keeps and of what it forgets. */
static void
test_heard (void)
{
  g_autoptr (LapPersonal) here = g_object_new (LAP_TYPE_PERSONAL, NULL);
  guint before = n_of (here);
  g_autoptr (LapPersonal) there = NULL;
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  g_autoptr (GError) error = NULL;

  finish (start (AT_ONCE * EACH));
  while (n_of (here) < before + EACH)
    g_main_context_iteration (NULL, TRUE);
  g_assert_cmpuint (n_of (here), ==, before + EACH);
  there = g_object_new (LAP_TYPE_PERSONAL, NULL);
  g_assert_true (lap_personal_forget (there, lap_catalogue_nth (builtin, AT_ONCE * EACH)->id, &error));
  g_assert_no_error (error);
  while (n_of (here) == before + EACH)
    g_main_context_iteration (NULL, TRUE);
  g_assert_cmpuint (n_of (here), ==, before + EACH - 1);
}

int
main (int argc, char **argv)
{
  char *folder;
  int result;

  if (argc == 3 && g_str_equal (argv[1], "--keep"))
    return keep_some (atoi (argv[2]));
  folder = folder_new ();
  g_setenv ("XDG_DATA_HOME", folder, TRUE);
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/personal/at-once", test_at_once);
  g_test_add_func ("/personal/heard", test_heard);
  result = g_test_run ();
  folder_remove (folder);
  return result;
}
