/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * Places are kept in cells as wide as a mark: one that overlaps is in the same cell or in a neighbour, so that many
 * warnings cost no more than each its own look.
 */
#include "place/marks.h"

#include <math.h>

typedef struct {
  LapMarks   *marks;
  GHashTable *cells; /* number -> index of a place, plus one */
  int         size;
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

  for (int i = cell - 1; i <= cell + 1; i++) {
    guint found = GPOINTER_TO_UINT (g_hash_table_lookup (p->cells, GINT_TO_POINTER (i)));

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
    g_array_append_vals (p->marks->places, &(LapMarkPlace) { x, warning, 1 }, 1);
    g_hash_table_insert (p->cells, GINT_TO_POINTER (cell_of (p, x)), GUINT_TO_POINTER (mark + 1));
  }
  g_array_append_vals (p->marks->members, &(LapMarkMember) { warning, mark }, 1);
}

/* The middle of a mark at @x, moved inside the session where that has the room. Rounded alike on either side of 0, so
 * that nothing depends on where the view begins. */
static int
middle_of (const LapAxis *axis, int size, double x)
{
  double a = lap_axis_x (axis, 0), b = lap_axis_x (axis, axis->length), half = size / 2.0;

  if (ABS (b - a) >= size)
    x = CLAMP (x, MIN (a, b) + half, MAX (a, b) - half);
  return floor (x + 0.5);
}

LapMarks *
lap_marks_new (const LapCheckup *checkup, const LapAxis *axis, int size, double at, LapMarkFilter filter,
               gconstpointer data)
{
  LapMarks *self = g_new (LapMarks, 1);
  g_autoptr (GHashTable) cells = g_hash_table_new (NULL, NULL);
  /* Time that comes from the right counts px from there, downward. */
  Placer p = { self, cells, size, axis->mirrored ? -axis->view - axis->offset : axis->offset };
  guint n = MIN (lap_checkup_n (checkup), LAP_MARKS_MOST);

  self->places = g_array_new (FALSE, FALSE, sizeof (LapMarkPlace));
  self->members = g_array_new (FALSE, FALSE, sizeof (LapMarkMember));
  for (guint i = 0; i < n; i++) {
    const LapWarning *w = lap_checkup_nth (checkup, i);

    if (w->fine || w->start < 0 || (filter != NULL && !filter (w, data)))
      continue;
    add (&p, middle_of (axis, size, lap_axis_x (axis, w->start + at * MAX (0, w->end - w->start))), i);
  }
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
lap_marks_at (const LapMarks *self, double x, int size)
{
  for (guint i = 0; i < self->places->len; i++)
    if (fabs (g_array_index (self->places, LapMarkPlace, i).x - x) <= size / 2.0)
      return i;
  return LAP_NO_WARNING;
}

guint
lap_marks_next (const LapMarks *self, guint mark, guint warning)
{
  guint first = g_array_index (self->places, LapMarkPlace, mark).first;
  gboolean found = FALSE;

  for (guint i = 0; i < self->members->len; i++) {
    const LapMarkMember *member = &g_array_index (self->members, LapMarkMember, i);

    if (member->mark != mark)
      continue;
    if (found)
      return member->warning;
    found = member->warning == warning;
  }
  return first;
}
