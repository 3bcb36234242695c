/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Places are first kept in cells as wide as a mark: one that overlaps is in the same cell or in a neighbour, so that many
 * warnings cost no more than each its own look. Those that have become several may be wider, so that what lies beside
 * one joins it as well, until none overlaps another.
 */
#include "place/marks.h"

#include <math.h>

typedef struct {
  LapMarks   *marks;
  GHashTable *cells; /* number -> index of a place, plus one */
  int         size;
  int         later;  /* from a cell to the next in time: 1, or -1 from the right */
  double      offset; /* from the view to the content, whose px the cells count */
} Placer;

static int
cell_of (const Placer *p, int x)
{
  return (int) floor ((x + p->offset) / p->size);
}

static guint
near_mark (const Placer *p, int x)
{
  int cell = cell_of (p, x);

  for (int i = -1; i <= 1; i++) {
    guint found = GPOINTER_TO_UINT (g_hash_table_lookup (p->cells, GINT_TO_POINTER (cell + i * p->later)));

    if (found > 0 && ABS (g_array_index (p->marks->places, LapMarkPlace, found - 1).x - x) < p->size)
      return found - 1;
  }
  return LAP_NO_WARNING;
}

static void
add (Placer *p, int x, guint warning)
{
  guint mark = near_mark (p, x);

  if (mark != LAP_NO_WARNING)
    g_array_index (p->marks->places, LapMarkPlace, mark).n++;
  else {
    mark = p->marks->places->len;
    g_array_append_vals (p->marks->places, &(LapMarkPlace) { x, p->size, warning, 1 }, 1);
    g_hash_table_insert (p->cells, GINT_TO_POINTER (cell_of (p, x)), GUINT_TO_POINTER (mark + 1));
  }
  g_array_append_vals (p->marks->members, &(LapMarkMember) { warning, mark }, 1);
}

/* The middle of a mark at @x, moved inside the session where that has the room. Rounded alike on either side of 0, so
 * that nothing depends on where the view begins, and from the right as in a mirror. */
static int
middle_of (const LapAxis *axis, int size, double x)
{
  double a = lap_axis_x (axis, 0), b = lap_axis_x (axis, axis->length), half = size / 2.0;

  if (ABS (b - a) >= size)
    x = CLAMP (x, MIN (a, b) + half, MAX (a, b) - half);
  return axis->mirrored ? axis->view - floor (axis->view - x + 0.5) : floor (x + 0.5);
}

static LapMarkPlace *
nth (const LapMarks *self, guint i)
{
  return &g_array_index (self->places, LapMarkPlace, i);
}

static int
by_x (gconstpointer a, gconstpointer b, gpointer marks)
{
  const LapMarkPlace *x = nth (marks, *(const guint *) a), *y = nth (marks, *(const guint *) b);

  return x->x != y->x ? (x->x > y->x) - (x->x < y->x) : (x->first > y->first) - (x->first < y->first);
}

/* Takes @other into @mark, which is the more severe. */
static void
join (LapMarks *self, guint mark, guint other)
{
  nth (self, mark)->n += nth (self, other)->n;
  nth (self, other)->n = 0;
  for (guint i = 0; i < self->members->len; i++)
    if (g_array_index (self->members, LapMarkMember, i).mark == other)
      g_array_index (self->members, LapMarkMember, i).mark = mark;
}

/* Joins what overlaps, beginning where time does, so that it is the same from either side; whether anything did. */
static gboolean
join_near (LapMarks *self, const LapAxis *axis, int wide)
{
  g_autoptr (GArray) order = g_array_new (FALSE, FALSE, sizeof (guint));
  gboolean joined = FALSE;
  guint last = 0;

  for (guint i = 0; i < self->places->len; i++) {
    if (nth (self, i)->n == 0)
      continue;
    if (nth (self, i)->n > 1 && nth (self, i)->width < wide) {
      double beside = (wide - nth (self, i)->width) / 2.0; /* its count, which lies where time goes to */

      nth (self, i)->width = wide;
      nth (self, i)->x = middle_of (axis, wide, nth (self, i)->x + (axis->mirrored ? -beside : beside));
    }
    g_array_append_val (order, i);
  }
  g_array_sort_with_data (order, by_x, self);
  for (guint i = 0; i < order->len; i++) {
    guint at = g_array_index (order, guint, axis->mirrored ? order->len - 1 - i : i);

    if (i > 0 && 2 * ABS (nth (self, at)->x - nth (self, last)->x) < nth (self, at)->width + nth (self, last)->width) {
      join (self, MIN (at, last), MAX (at, last));
      at = MIN (at, last);
      joined = TRUE;
    }
    last = at;
  }
  return joined;
}

/* Leaves out the places that others took in; the order stays. */
static void
close_up (LapMarks *self)
{
  g_autofree guint *now = g_new0 (guint, self->places->len + 1);
  guint n = 0;

  for (guint i = 0; i < self->places->len; i++) {
    now[i] = n;
    if (nth (self, i)->n > 0)
      *nth (self, n++) = *nth (self, i);
  }
  g_array_set_size (self->places, n);
  for (guint i = 0; i < self->members->len; i++)
    g_array_index (self->members, LapMarkMember, i).mark = now[g_array_index (self->members, LapMarkMember, i).mark];
}

LapMarks *
lap_marks_new (const LapCheckup *checkup, const LapAxis *axis, int size, int wide, double at, LapMarkFilter filter,
               gconstpointer data)
{
  LapMarks *self = g_new (LapMarks, 1);
  g_autoptr (GHashTable) cells = g_hash_table_new (NULL, NULL);
  /* Time that comes from the right counts px from there, downward. */
  Placer p = { self, cells, size, axis->mirrored ? -1 : 1, axis->mirrored ? -axis->view - axis->offset : axis->offset };
  guint n = MIN (lap_checkup_n (checkup), LAP_MARKS_MOST);

  self->places = g_array_new (FALSE, FALSE, sizeof (LapMarkPlace));
  self->members = g_array_new (FALSE, FALSE, sizeof (LapMarkMember));
  for (guint i = 0; i < n; i++) {
    const LapWarning *w = lap_checkup_nth (checkup, i);

    if (w->fine || w->start < 0 || (filter != NULL && !filter (w, data)))
      continue;
    add (&p, middle_of (axis, size, lap_axis_x (axis, w->start + at * MAX (0, w->end - w->start))), i);
  }
  while (join_near (self, axis, wide))
    ;
  close_up (self);
  return self;
}

void
lap_marks_free (LapMarks *self)
{
  g_array_unref (self->places);
  g_array_unref (self->members);
  g_free (self);
}

guint
lap_marks_at (const LapMarks *self, double x)
{
  for (guint i = 0; i < self->places->len; i++)
    if (fabs (nth (self, i)->x - x) <= nth (self, i)->width / 2.0)
      return i;
  return LAP_NO_WARNING;
}
