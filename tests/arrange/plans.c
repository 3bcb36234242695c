/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "arrange/plans.h"

#include "store/documents.h"
#include "store/read-file.h"

LapSession *
plan_demo (const char *name)
{
  g_autofree char *file = g_strconcat (name, ".lapwing", NULL);
  g_autofree char *path = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", file, NULL);
  g_autoptr (GError) error = NULL;
  g_autoptr (GBytes) bytes = lap_read_file (path, NULL, &error);
  LapSession *session;

  g_assert_no_error (error);
  session = lap_session_from_bytes (bytes, &error);
  g_assert_no_error (error);
  return session;
}

static const char *
any_exercise (GRand *rand, LapCatalogue *catalogue, LapPartKind kind)
{
  static const guint32 uses[] = {
    [LAP_PART_WARM_UP] = LAP_BIT (LAP_USE_WARM_UP), [LAP_PART_MAIN] = LAP_BIT (LAP_USE_WORK),
  };

  for (;;) {
    LapExercise *e = lap_catalogue_nth (catalogue, g_rand_int_range (rand, 0, lap_catalogue_n (catalogue)));

    if (e->use_mask & uses[kind])
      return e->id;
  }
}

static void
add_part (GRand *rand, LapCatalogue *catalogue, LapSession *session, LapPartKind kind, guint n)
{
  static const int works[] = { 20, 30, 40, 60 }, rests[] = { 0, 5, 15, 30 };
  g_autoptr (LapPart) part = lap_part_new (kind);
  g_autoptr (GPtrArray) blocks = g_ptr_array_new_with_free_func (g_object_unref);
  g_autoptr (GPtrArray) one = g_ptr_array_new ();

  for (guint i = 0; i < n; i++) {
    int work = works[g_rand_int_range (rand, 0, G_N_ELEMENTS (works))];
    int rest = rests[g_rand_int_range (rand, 0, G_N_ELEMENTS (rests))];

    if (g_rand_int_range (rand, 0, 10) == 0)
      g_ptr_array_add (blocks, lap_block_new_pause ("water", 30));
    else
      g_ptr_array_add (blocks, lap_block_new_exercise (any_exercise (rand, catalogue, kind), work, rest));
  }
  if (kind == LAP_PART_MAIN)
    part->rounds = g_rand_int_range (rand, 1, 4);
  lap_list_splice (part->blocks, 0, 0, blocks);
  g_ptr_array_add (one, part);
  lap_list_splice (session->parts, lap_session_n (session), 0, one);
}

LapSession *
plan_random (GRand *rand)
{
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();
  LapSession *session = lap_session_new ("By chance");
  gboolean is_long = g_rand_boolean (rand);

  session->level = g_rand_int_range (rand, LAP_LEVEL_NEW, LAP_LEVEL_TRAINED + 1);
  session->quiet = g_rand_int_range (rand, 0, 3) == 0;
  session->target = g_rand_boolean (rand) ? 900 : 0;
  session->kit = lap_kit_new ();
  lap_kit_set (session->kit, LAP_KIT_MAT, 1);
  if (is_long && g_rand_boolean (rand))
    add_part (rand, catalogue, session, LAP_PART_WARM_UP, 3);
  else if (is_long)
    add_part (rand, catalogue, session, LAP_PART_MAIN, 3);
  add_part (rand, catalogue, session, LAP_PART_MAIN, g_rand_int_range (rand, 3, 7));
  return session;
}

LapTimeline *
plan_lay_out (LapSession *session)
{
  g_autoptr (LapCatalogue) catalogue = lap_catalogue_builtin ();
  g_autoptr (GError) error = NULL;
  LapTimeline *timeline = lap_timeline_new (session, catalogue, &error);

  g_assert_no_error (error);
  return timeline;
}

LapCheckup *
plan_check (LapSession *session)
{
  g_autoptr (LapTimeline) timeline = plan_lay_out (session);

  return lap_checkup_new (timeline);
}

char *
plan_text (LapSession *session)
{
  g_autoptr (GBytes) bytes = lap_session_to_bytes (session);

  return g_strndup (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes));
}
