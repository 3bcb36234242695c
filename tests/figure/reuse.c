/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Poses that start from others, and figures that can't be read.
 */
#include "base/error.h"
#include "figure/key.h"
#include "figures.h"

static const struct {
  const char *id, *figure;
} shelf[] = {
  { "base", "{'view': 'side', 'move': ['legs'], 'keys': [{'hip': [0, 50], 'trunk': 10, 'legs': {'flat': 0}},"
            " {'hip': [0, 40], 'trunk': 20, 'legs': {'flat': 0}}]}" },
  { "front",
    "{'view': 'front', 'keys': [{'hip': [-5, 50], 'trunk': 8, 'legR': {'flat': -9}, 'legL': {'flat': 9},"
             " 'armR': {'to': [-20, 90], 'bend': -1}, 'armL': [170, 170]}, {'as': 0, 'mirror': true}]}" },
  { "loop-a", "{'like': 'loop-b'}" },
  { "loop-b", "{'like': 'loop-a'}" },
};

static JsonObject *
find_on_shelf (const char *id, gpointer data)
{
  GHashTable *read = data;
  JsonObject *object = g_hash_table_lookup (read, id);

  for (guint i = 0; object == NULL && i < G_N_ELEMENTS (shelf); i++)
    if (g_str_equal (shelf[i].id, id))
      {
        object = object_of (shelf[i].figure);
        g_hash_table_insert (read, g_strdup (id), object);
      }
  return object;
}

static LapFigure *
read_figure (const char *text, GError **error)
{
  g_autoptr (GHashTable) read = g_hash_table_new_full (g_str_hash, g_str_equal, g_free,
                                                       (GDestroyNotify) json_object_unref);
  g_autoptr (JsonObject) object = object_of (text);

  return lap_figure_new ("mine", object, find_on_shelf, read, error);
}

static void
check_like (void)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (LapFigure) figure = read_figure ("{'like': 'base', 'keys': [{'key': 1, 'trunk': 30}]}", &error);
  LapFigurePose pose;

  g_assert_no_error (error);
  g_assert_cmpuint (figure->n_keys, ==, 1);
  lap_figure_pose (figure, 0.0, &pose);
  g_assert_cmpfloat_with_epsilon (pose.p[LAP_JOINT_PELVIS].y, 40.0, 1e-9);
  g_assert_cmpfloat_with_epsilon (pose.thorax, 30.0, 1e-9);
}

/* One limb may be given anew beside a word for both, and a pin takes the place of a hip. */
static void
check_rivals (void)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (LapFigure) figure = read_figure ("{'like': 'base', 'keys': [{'legR': [90, 180]},"
                                              " {'pin': ['ballR', 12], 'legs': [180, 180, 90]}]}", &error);
  LapFigurePose pose;

  g_assert_no_error (error);
  lap_figure_pose (figure, 0.0, &pose);
  g_assert_cmpfloat_with_epsilon (pose.p[LAP_JOINT_KNEE].y, 50.0, 1e-6);
  g_assert_cmpfloat_with_epsilon (pose.p[LAP_JOINT_ANKLE + LAP_SIDE_LEFT].y, LAP_ANKLE_HEIGHT, 1e-6);
  lap_figure_pose (figure, 0.5, &pose);
  g_assert_cmpfloat_with_epsilon (pose.p[LAP_JOINT_BALL].x, 12.0, 1e-6);
  g_assert_cmpfloat_with_epsilon (pose.p[LAP_JOINT_BALL].y, LAP_SKIN_BALL, 1e-6);
}

/* Every joint of one side is the mirror image of the other's. */
static void
check_mirror (void)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (LapFigure) figure = read_figure ("{'like': 'front'}", &error);
  LapFigurePose one, other;

  g_assert_no_error (error);
  lap_figure_pose (figure, 0.0, &one);
  lap_figure_pose (figure, 0.5, &other);
  for (guint j = LAP_JOINT_HIP; j < LAP_N_JOINTS; j += 2)
    for (guint side = 0; side < 2; side++)
      {
        g_assert_cmpfloat_with_epsilon (one.p[j + side].x, -other.p[j + 1 - side].x, 1e-6);
        g_assert_cmpfloat_with_epsilon (one.p[j + side].y, other.p[j + 1 - side].y, 1e-6);
      }
}

/* One that alternates plays its other side in the second half. */
static void
check_alternating (void)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (LapFigure) figure =
    read_figure ("{'like': 'base', 'alt': true, 'keys': [{}, {'legR': [90, 180]}]}", &error);
  LapFigurePose one, other;

  g_assert_no_error (error);
  lap_figure_pose (figure, 0.25, &one);
  lap_figure_pose (figure, 0.75, &other);
  g_assert_cmpfloat_with_epsilon (one.p[LAP_JOINT_KNEE].y, other.p[LAP_JOINT_KNEE + LAP_SIDE_LEFT].y, 1e-6);
  g_assert_cmpfloat (one.p[LAP_JOINT_KNEE].y, >, other.p[LAP_JOINT_KNEE].y + 3.0);
}

static const struct {
  const char *name, *figure, *pointer;
} unreadable[] = {
  { "like-unknown", "{'like': 'nothing'}", "/like" },
  { "like-itself", "{'like': 'mine'}", "/like" },
  { "like-in-a-ring", "{'like': 'loop-a'}", "/like" },
  { "no-keys", "{'view': 'side'}", "/keys" },
  { "too-many-keys", "{'keys': [{}, {}, {}, {}, {}, {}, {}, {}, {}, {}, {}, {}, {}]}", "/keys" },
  { "keys-not-a-list", "{'keys': 3}", "/keys" },
  { "key-not-an-object", "{'keys': [3]}", "/keys/0" },
  { "no-root", "{'keys': [{'trunk': 3}]}", "/keys/0/hip" },
  { "as-forward", "{'keys': [{'as': 1}]}", "/keys/0" },
  { "trunk-not-a-number", "{'keys': [{'hip': [0, 50], 'trunk': 'up'}]}", "/keys/0/trunk" },
  { "leg-unknown", "{'keys': [{'hip': [0, 50], 'legs': {'hover': 3}}]}", "/keys/0/legs" },
  { "leg-one-angle", "{'keys': [{'hip': [0, 50], 'legR': [180]}]}", "/keys/0/legR" },
  { "joint-unknown", "{'keys': [{'hip': [0, 50], 'arms': {'to': 'ear'}}]}", "/keys/0/to" },
  { "no-such-gear", "{'keys': [{'hip': [0, 50], 'legs': {'flat': 0, 'on': 'step'}}]}", "/keys/0/on" },
  { "kit-unknown", "{'gear': [{'kind': 'trampoline'}], 'keys': [{'hip': [0, 50]}]}", "/kind" },
  { "view-unknown", "{'view': 'behind', 'keys': [{'hip': [0, 50]}]}", "/view" },
  { "poster-too-far", "{'poster': 4, 'keys': [{'hip': [0, 50]}]}", "/poster" },
  { "pin-unknown", "{'keys': [{'pin': ['tail', 3]}]}", "/keys/0/pin" },
  { "part-unknown", "{'move': ['tail'], 'keys': [{'hip': [0, 50]}]}", "/move" },
  { "huge-number", "{'keys': [{'hip': [0, 1e300]}]}", "/keys/0/hip" },
};

static void
check_unreadable (gconstpointer data)
{
  guint i = GPOINTER_TO_UINT (data);
  g_autoptr (GError) error = NULL;
  g_autoptr (LapFigure) figure = read_figure (unreadable[i].figure, &error);

  g_assert_error (error, LAP_ERROR, LAP_ERROR_INVALID);
  g_assert_null (figure);
  g_assert_cmpstr (lap_error_pointer (error), ==, unreadable[i].pointer);
}

int
main (int argc, char **argv)
{
  g_test_init (&argc, &argv, NULL);
  g_test_add_func ("/figure/reuse/like", check_like);
  g_test_add_func ("/figure/reuse/rivals", check_rivals);
  g_test_add_func ("/figure/reuse/mirror", check_mirror);
  g_test_add_func ("/figure/reuse/alternating", check_alternating);
  for (guint i = 0; i < G_N_ELEMENTS (unreadable); i++)
    {
      g_autofree char *path = g_strconcat ("/figure/reuse/unreadable/", unreadable[i].name, NULL);

      g_test_add_data_func (path, GUINT_TO_POINTER (i), check_unreadable);
    }
  return g_test_run ();
}
