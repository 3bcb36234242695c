/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/timetable.h"

#include "weeks.h"

void
timetable_settle (Timetable *t)
{
  gtk_test_widget_wait_for_draw (t->window);
  while (g_main_context_iteration (NULL, FALSE))
    ;
}

Timetable
timetable_show (LapDocument *document, int width, int height)
{
  Timetable t = { .window = adw_window_new (), .view = lap_week_view_new (document), .document = document };

  t.scene = lap_week_view_scene (t.view);
  adw_window_set_content (ADW_WINDOW (t.window), GTK_WIDGET (t.view));
  gtk_window_set_default_size (GTK_WINDOW (t.window), width, height);
  gtk_window_present (GTK_WINDOW (t.window));
  timetable_settle (&t);
  timetable_settle (&t); /* how much is shown is decided after the first layout */
  return t;
}

void
timetable_close (Timetable *t)
{
  gpointer view = t->view, scene = t->scene, document = t->document;

  g_object_add_weak_pointer (view, &view);
  g_object_add_weak_pointer (scene, &scene);
  g_object_add_weak_pointer (document, &document);
  gtk_window_destroy (GTK_WINDOW (t->window));
  while (g_main_context_iteration (NULL, FALSE))
    ;
  g_assert_null (view);
  while (scene != NULL) /* a clipboard that is still being read keeps it */
    g_main_context_iteration (NULL, TRUE);
  g_object_unref (t->document);
  g_assert_null (document);
}

LapDocument *
timetable_read (const char *text)
{
  g_autoptr (GError) error = NULL;
  LapDocument *document = lap_document_new (test_week (text), &error);

  g_assert_no_error (error);
  return document;
}

LapClass *
timetable_class (Timetable *t, const char *id)
{
  return lap_week_class (lap_document_week (t->document), id);
}

void
timetable_assert_at (Timetable *t, const char *id, int day, int start, int minutes, const char *room)
{
  LapClass *c = timetable_class (t, id);

  g_assert_cmpint (c->day, ==, day);
  g_assert_cmpint (c->start, ==, start);
  g_assert_cmpint (c->minutes, ==, minutes);
  g_assert_cmpstr (c->room, ==, room);
}

graphene_point_t
timetable_point (Timetable *t, int day, const char *line, int minute)
{
  const LapWeekScore *score = t->scene->score;
  const LapWeekRow *row = &score->rows[lap_week_score_row (score, day, line)];

  return GRAPHENE_POINT_INIT (lap_week_score_x (score, t->scene->axis, minute), row->y + score->crest + score->bar / 2.0);
}

GtkWidget *
timetable_strip (Timetable *t)
{
  return GTK_WIDGET (lap_week_view_strip (t->view));
}

GtkGesture *
timetable_drag (Timetable *t, graphene_point_t from, graphene_point_t to)
{
  GtkGesture *gesture = windows_controller (timetable_strip (t), GTK_TYPE_GESTURE_DRAG);

  g_signal_emit_by_name (gesture, "drag-begin", from.x, from.y);
  for (int i = 1; i <= 4; i++)
    g_signal_emit_by_name (gesture, "drag-update", (to.x - from.x) * i / 4, (to.y - from.y) * i / 4);
  return gesture;
}

void
timetable_let_go (GtkGesture *gesture)
{
  g_signal_emit_by_name (gesture, "drag-end", 0.0, 0.0);
}

void
timetable_carry (Timetable *t, int day, const char *line, int minute, int to_day, const char *to_line, int to_minute)
{
  timetable_let_go (timetable_drag (t, timetable_point (t, day, line, minute),
                                    timetable_point (t, to_day, to_line, to_minute)));
}

void
timetable_press (Timetable *t, const char *keys)
{
  GtkWidget *ticket = lap_week_tray_find (lap_week_view_tray (t->view), t->scene->current);

  g_assert_true (windows_press (ticket != NULL ? ticket : timetable_strip (t), keys));
}
