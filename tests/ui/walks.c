/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/walks.h"

#include "place/plans.h"

void
walks_take (const WalksStep *steps, gpointer walk)
{
  guint left = g_test_rand_int_range (0, 100);

  while (left >= steps->share)
    left -= (steps++)->share;
  g_test_message ("%s", steps->name);
  steps->go (walk);
}

void
walks_assert_boxes (LapWindow *window)
{
  const LapScore *score = lap_window_context (window)->score;
  LapDocument *document = lap_window_document (window);
  g_autoptr (GError) error = NULL;
  g_autoptr (LapTimeline) timeline = lap_timeline_new (lap_document_session (document),
                                                       lap_document_catalogue (document), &error);
  g_autoptr (LapScore) fresh = NULL;

  g_assert_no_error (error);
  fresh = lap_score_new (timeline);
  g_assert_cmpuint (score->n, ==, fresh->n);
  for (guint i = 0; i < score->n; i++) {
    const LapBox *a = &score->boxes[i], *b = &fresh->boxes[i];

    g_assert_cmpint (a->start, ==, b->start);
    g_assert_cmpint (a->body, ==, b->body);
    g_assert_cmpint (a->end, ==, b->end);
    g_assert_cmpint (a->kind, ==, b->kind);
    g_assert_true (a->part == b->part && a->block == b->block && a->round == b->round && a->changed == b->changed);
  }
}

void
walks_assert_placed (LapWindow *window, gboolean drawn)
{
  LapScoreContext *context = lap_window_context (window);
  guint first, end;

  lap_score_visible (context->score, context->axis, &first, &end);
  for (guint i = first; i < end; i++) {
    LapPlaced placed = lap_score_place (context->score, context->axis, i);
    GtkWidget *widget = lap_blocks_lane_find (windows_blocks (window), i);
    graphene_rect_t bounds;

    if (placed.width < LAP_MERGE_BELOW)
      continue;
    g_assert_nonnull (widget);
    if (!drawn)
      continue;
    g_assert_true (gtk_widget_compute_bounds (widget, GTK_WIDGET (windows_blocks (window)), &bounds));
    g_assert_cmpint (bounds.origin.x, ==, placed.x);
    g_assert_cmpint (bounds.size.width, ==, placed.width);
  }
  for (guint i = 0; i < context->marked->len; i++)
    g_assert_nonnull (lap_score_block (context, g_array_index (context->marked, guint, i)));
}

LapWindow *
walks_window (void)
{
  static const char *const ids[] = { "squat", "push-up", "glute-bridge" };
  g_autoptr (LapSession) session = lap_session_new ("Walked");
  LapPart *part = plan_part (session, LAP_PART_WARM_UP, 1);

  plan_add (part, lap_block_new_talk ("hello", 15));
  plan_add (part, lap_block_new_exercise ("march-on-the-spot", 45, 0));
  part = plan_part (session, LAP_PART_MAIN, 2);
  for (guint i = 0; i < G_N_ELEMENTS (ids); i++)
    plan_add (part, lap_block_new_exercise (ids[i], 40, 20));
  g_object_set (part, "round-rest", 30, NULL);
  part = plan_part (session, LAP_PART_MAIN, 1);
  g_object_set (part, "run", LAP_RUN_OWN_PACE, "cap", 240, NULL);
  plan_add (part, lap_block_new_exercise ("high-knees", 30, 10));
  return windows_show (session);
}

void
walks_back (LapWindow *window, const char *first)
{
  LapDocument *document = lap_window_document (window);
  g_autofree char *last = NULL;

  while (lap_history_undo_label (lap_document_history (document)) != NULL)
    lap_document_undo (document);
  last = windows_text (window);
  g_assert_cmpstr (last, ==, first);
  walks_assert_boxes (window);
  windows_settle (window);
  walks_assert_placed (window, TRUE);
}
