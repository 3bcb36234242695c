/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/windows.h"

#include "edit/verbs.h"
#include "place/muscles.h"
#include "place/plans.h"
#include "ui/heading.h"
#include "ui/score/folds.h"
#include "ui/score/marks.h"
#include "ui/score/muscles.h"
#include "ui/score/preview.h"
#include "ui/score/ruler.h"
#include "ui/warning-row.h"

/* The lane of a kind, by the name of its type. */
static LapLane *
lane_of (LapWindow *window, const LapLaneKind *kind)
{
  return LAP_LANE (windows_find (GTK_WIDGET (lap_window_score (window)), kind->type (), NULL));
}

static const LapLaneKind *const painted[] = { &lap_lane_ruler, &lap_lane_posture, &lap_lane_effort, &lap_lane_talk };

/* A frame in which the view scrolls a little further paints nothing that was seen before. */
static void
test_scrolling_repaints_nothing (void)
{
  LapWindow *window = windows_demo ();
  LapScoreContext *context = lap_window_context (window);
  guint before[G_N_ELEMENTS (painted)], frames = 0;

  lap_score_zoom (context, 4, 0);
  windows_settle (window);
  lap_score_scroll_by (context, 3);
  windows_settle (window); /* pictures of all of the view, and what lies beside it, are there now */
  for (guint i = 0; i < G_N_ELEMENTS (painted); i++)
    before[i] = lap_lane_n_painted (lane_of (window, painted[i]));
  for (; frames < 10; frames++) {
    lap_score_scroll_by (context, 2);
    windows_settle (window);
  }
  for (guint i = 0; i < G_N_ELEMENTS (painted); i++)
    g_assert_cmpuint (lap_lane_n_painted (lane_of (window, painted[i])) - before[i], <=, 1);
  windows_close (window);
}

/* What is kept isn't shown after an edit or a change of zoom. */
static void
test_changes_repaint (void)
{
  LapWindow *window = windows_demo ();
  LapScoreContext *context = lap_window_context (window);
  LapLane *lane = lane_of (window, &lap_lane_effort);
  guint before;

  lap_score_scroll_by (context, 1);
  windows_settle (window);
  before = lap_lane_n_painted (lane);
  lap_score_zoom (context, context->axis->zoom * 1.5, 10);
  windows_settle (window);
  g_assert_cmpuint (lap_lane_n_painted (lane), >, before);
  before = lap_lane_n_painted (lane);
  lap_document_apply (lap_window_document (window),
                      lap_verb_set_rounds (lap_session_nth (lap_document_session (context->document), 2), 3));
  windows_settle (window);
  g_assert_cmpuint (lap_lane_n_painted (lane), >, before);
  windows_close (window);
}

/* Its title opens the lane of muscles from one row to a row for each region, and folds it up again. */
static void
test_muscles_open (void)
{
  LapWindow *window = windows_demo ();
  LapMusclesLane *lane = LAP_MUSCLES_LANE (lane_of (window, &lap_lane_muscles));
  GtkWidget *title = gtk_widget_get_first_child (gtk_widget_get_prev_sibling (GTK_WIDGET (lane)));
  int line = lap_text_line (GTK_WIDGET (lane)), folded;

  folded = gtk_widget_get_height (GTK_WIDGET (lane));
  g_assert_false (lap_muscles_lane_is_open (lane));
  g_assert_cmpint (folded, <, 3 * line);
  g_assert_true (gtk_widget_get_focusable (title));
  gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (title), !lap_muscles_lane_is_open (lane));
  windows_settle (window);
  g_assert_true (lap_muscles_lane_is_open (lane));
  g_assert_cmpint (gtk_widget_get_height (GTK_WIDGET (lane)), >=, LAP_N_ROWS * line);
  gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (title), !lap_muscles_lane_is_open (lane));
  windows_settle (window);
  g_assert_cmpint (gtk_widget_get_height (GTK_WIDGET (lane)), ==, folded);
  windows_close (window);
}

/* Every check that a lane shows is one, and a lane that shows some says so. */
static void
test_lanes_know_their_checks (void)
{
  guint known = 0;

  for (guint i = 0; i < lap_lanes_n (); i++)
    for (guint c = 0; c < lap_checks_n (); c++)
      known += lap_lanes_nth (i) != &lap_lane_ruler && lap_marks_shows (lap_lanes_nth (i)->id, lap_checks_nth (c)->id);
  g_assert_cmpuint (known, ==, 32); /* as many as the table has words */
}

/* Squats and lunges in turn: the same muscles over and over. */
static LapWindow *
clashing_window (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Marks");
  LapPart *part = plan_part (session, LAP_PART_MAIN, 1);

  for (guint i = 0; i < 6; i++)
    plan_add (part, lap_block_new_exercise (i % 2 == 0 ? "squat" : "forward-lunge", 40, 20));
  return windows_show (session);
}

/* The warning @n is chosen, and its row in the list has the focus. */
static void
assert_at_warning (LapWindow *window, guint n)
{
  windows_settle (window);
  g_assert_cmpuint (lap_window_context (window)->warning, ==, n);
  g_assert_true (gtk_window_get_focus (GTK_WINDOW (window)) == lap_warnings_row (lap_window_warnings (window), n));
}

/* Row @i of the list that is open at a mark of @lane, or NULL; there is one only while it is. */
static GtkListBoxRow *
listed (LapLane *lane, guint i)
{
  GtkWidget *list = windows_find (GTK_WIDGET (lane), GTK_TYPE_LIST_BOX, NULL);

  return list != NULL && gtk_widget_get_mapped (list) ? gtk_list_box_get_row_at_index (GTK_LIST_BOX (list), i) : NULL;
}

/* A click on a mark of the ruler selects the block of its warning and brings its row the focus; that of several opens
 * a list, from which each of them is reached. */
static void
test_mark_selects_warning (void)
{
  LapWindow *window = clashing_window ();
  LapScoreContext *context = lap_window_context (window);
  LapLane *ruler = lane_of (window, &lap_lane_ruler);
  g_autoptr (LapMarks) marks = NULL;
  guint several = 0;

  lap_score_fit (context);
  windows_settle (window);
  marks = lap_lane_marks (ruler);
  for (guint i = 0; i < marks->places->len; i++) {
    const LapMarkPlace *mark = &g_array_index (marks->places, LapMarkPlace, i);
    guint row = 0;

    for (guint m = 0; m < marks->members->len; m++) {
      const LapMarkMember *member = &g_array_index (marks->members, LapMarkMember, m);

      if (member->mark != i)
        continue;
      gtk_widget_grab_focus (GTK_WIDGET (ruler)); /* it scrolls into view */
      windows_settle (window);
      windows_click (GTK_WIDGET (ruler), mark->x, lap_text_line (GTK_WIDGET (ruler)) + 10);
      windows_settle (window);
      if (mark->n > 1)
        gtk_widget_activate (GTK_WIDGET (listed (ruler, row++)));
      assert_at_warning (window, member->warning);
    }
    g_assert_null (listed (ruler, 0));
    several += mark->n > 1;
    g_assert_cmpuint (row, ==, mark->n > 1 ? mark->n : 0);
  }
  g_assert_cmpuint (several, >, 0);
  windows_close (window);
}

/* The same by keys: from mark to mark on the ruler in the order of time, and into the list of one. */
static void
test_marks_by_keys (gconstpointer mirrored)
{
  LapWindow *window;
  LapScoreContext *context;
  LapLane *ruler;
  g_autoptr (LapMarks) marks = NULL;
  const char *on = mirrored ? "Left" : "Right";
  guint reached = 0, n = 0;
  int last = -1;

  gtk_widget_set_default_direction (mirrored ? GTK_TEXT_DIR_RTL : GTK_TEXT_DIR_LTR);
  window = clashing_window ();
  context = lap_window_context (window);
  ruler = lane_of (window, &lap_lane_ruler);
  lap_score_fit (context);
  windows_settle (window);
  marks = lap_lane_marks (ruler);
  g_assert_true (gtk_widget_grab_focus (GTK_WIDGET (ruler)));
  g_assert_true (windows_press (GTK_WIDGET (ruler), "Home"));
  for (guint i = 0; i < marks->places->len; i++) {
    const LapWarning *warning = lap_checkup_nth (lap_document_checkup (context->document), context->warning);
    gboolean found = FALSE;

    g_assert_cmpint (warning->start, >=, last);
    last = warning->start;
    for (guint m = 0; m < marks->places->len; m++)
      if (g_array_index (marks->places, LapMarkPlace, m).first == context->warning) {
        reached += g_array_index (marks->places, LapMarkPlace, m).n;
        n = g_array_index (marks->places, LapMarkPlace, m).n;
        found = TRUE;
      }
    g_assert_true (found);
    if (i + 1 < marks->places->len)
      g_assert_true (windows_press (GTK_WIDGET (ruler), on));
  }
  g_assert_cmpuint (reached, ==, marks->members->len);
  g_assert_true (windows_press (GTK_WIDGET (ruler), "Return"));
  windows_settle (window);
  if (n > 1)
    gtk_widget_activate (GTK_WIDGET (listed (ruler, 0)));
  assert_at_warning (window, context->warning);
  windows_close (window);
  gtk_widget_set_default_direction (GTK_TEXT_DIR_LTR);
}

/* Lanes are hidden and moved, and the next window has them so. */
static void
test_choice_is_kept (void)
{
  LapWindow *window = windows_demo (), *other;
  LapScoreView *view = lap_window_score (window);
  int before = gtk_widget_get_height (GTK_WIDGET (view));

  g_assert_cmpstr (lap_score_view_nth (view, 0)->id, ==, "ruler");
  lap_score_view_show (view, "talk", FALSE);
  lap_score_view_show (view, "ruler", FALSE);
  lap_score_view_show (view, "blocks", FALSE);
  lap_score_view_move (view, "effort", -1);
  lap_score_view_move (view, "parts", -1); /* the clock stays above */
  windows_settle (window);
  g_assert_cmpint (gtk_widget_get_height (GTK_WIDGET (view)), <, before);
  other = windows_demo ();
  view = lap_window_score (other);
  g_assert_false (lap_score_view_is_shown (view, "talk"));
  g_assert_true (lap_score_view_is_shown (view, "ruler"));
  g_assert_true (lap_score_view_is_shown (view, "blocks"));
  g_assert_cmpstr (lap_score_view_nth (view, 0)->id, ==, "ruler");
  g_assert_cmpstr (lap_score_view_nth (view, 4)->id, ==, "effort");
  g_assert_cmpstr (lap_score_view_nth (view, 5)->id, ==, "posture");
  lap_score_view_show (view, "talk", TRUE);
  lap_score_view_move (view, "effort", 1);
  windows_settle (other);
  windows_close (window);
  windows_close (other);
}

static gboolean
is_folded (LapScoreContext *context, guint part, int round)
{
  for (guint i = 0; lap_folds_nth (context, i) != NULL; i++)
    if (lap_folds_nth (context, i)->part == part && lap_folds_nth (context, i)->round == round)
      return context->axis->pieces[i].folded;
  g_assert_not_reached ();
}

/* Talk; two rounds of three blocks; a cool-down. */
static LapSession *
three_parts (void)
{
  LapSession *session = lap_session_new ("Folds");
  LapPart *part = plan_part (session, LAP_PART_OPENING, 1);

  plan_add (part, lap_block_new_talk ("Hello", 60));
  part = plan_part (session, LAP_PART_MAIN, 2);
  plan_add (part, lap_block_new_exercise ("squat", 40, 20));
  plan_add (part, lap_block_new_exercise ("push-up", 40, 20));
  plan_add (part, lap_block_new_exercise ("dead-bug", 40, 20));
  part = plan_part (session, LAP_PART_COOL_DOWN, 1);
  plan_add (part, lap_block_new_exercise ("bridge", 60, 0));
  return session;
}

/* A click on the bracket of a round opens it and folds the rest, and once more opens all; what is folded stays so over
 * an edit; the whole session is in view meanwhile. */
static void
test_bracket_folds (void)
{
  g_autoptr (LapSession) session = three_parts ();
  LapWindow *window = windows_show (session);
  LapScoreContext *context = lap_window_context (window);
  LapLane *parts = lane_of (window, &lap_lane_parts);
  double x = lap_axis_x (context->axis, 70);

  windows_click (GTK_WIDGET (parts), x, 2 * lap_text_line (GTK_WIDGET (parts)));
  windows_settle (window);
  g_assert_true (is_folded (context, 0, 0));
  g_assert_false (is_folded (context, 1, 1));
  g_assert_true (is_folded (context, 1, 2));
  g_assert_true (is_folded (context, 2, 0));
  g_assert_cmpfloat (context->axis->width, <=, context->axis->view + 0.5);
  lap_document_apply (lap_window_document (window), lap_verb_set_rounds (lap_session_nth (session, 1), 3));
  g_assert_true (is_folded (context, 1, 2));
  g_assert_false (is_folded (context, 1, 3)); /* a new round is open */
  windows_click (GTK_WIDGET (parts), lap_axis_x (context->axis, 70), 4);
  g_assert_false (is_folded (context, 1, 2)); /* the part: all its rounds */
  g_assert_true (is_folded (context, 2, 0));
  windows_click (GTK_WIDGET (parts), lap_axis_x (context->axis, 70), 4);
  g_assert_false (lap_folds_any (context));
  windows_close (window);
}

static void
test_keys_fold (void)
{
  g_autoptr (LapSession) session = three_parts ();
  LapWindow *window = windows_show (session);
  LapScoreContext *context = lap_window_context (window);

  lap_folds_open (context, 1, 2, FALSE);
  g_assert_true (is_folded (context, 1, 1));
  lap_folds_open (context, 1, 1, TRUE); /* keeps the second open */
  g_assert_false (is_folded (context, 1, 1));
  g_assert_false (is_folded (context, 1, 2));
  lap_folds_open (context, 1, 0, TRUE);
  g_assert_false (is_folded (context, 1, 1)); /* something stays open */
  g_assert_true (windows_press (GTK_WIDGET (window), "<Control>7"));
  g_assert_false (lap_folds_any (context));
  windows_close (window);
}

/* The round, or the block, that is selected fills the view. */
static void
test_fit (void)
{
  g_autoptr (LapSession) session = three_parts ();
  LapWindow *window = windows_show (session);
  LapScoreContext *context = lap_window_context (window);
  double view = context->axis->view;

  g_assert_false (lap_folds_fit (context, TRUE)); /* nothing is selected */
  lap_score_select (context, lap_score_find (context->score, 1, 1, 1));
  g_assert_true (windows_press (GTK_WIDGET (window), "<Control>9"));
  g_assert_cmpfloat_with_epsilon (lap_axis_x (context->axis, 60), 12, 1);
  g_assert_cmpfloat_with_epsilon (lap_axis_x (context->axis, 240), view - 12, 1);
  g_assert_true (windows_press (GTK_WIDGET (window), "<Control>8"));
  g_assert_cmpfloat_with_epsilon (lap_axis_x (context->axis, 120), 12, 1);
  g_assert_cmpfloat_with_epsilon (lap_axis_x (context->axis, 180), view - 12, 1);
  windows_close (window);
}

static void
test_folded_words (void)
{
  g_autoptr (LapSession) session = three_parts ();
  LapWindow *window = windows_show (session);
  LapScoreContext *context = lap_window_context (window);
  g_autofree char *main_one = lap_folds_words (context, 1), *main_two = lap_folds_words (context, 2);

  g_assert_cmpstr (main_one, ==, "3 blocks, 3:00");
  g_assert_cmpstr (main_two, ==, "Same as round 1");
  windows_close (window);
}

/* A remedy that has the focus shows what it would do, changes nothing, and no more when the focus leaves. */
static void
test_remedy_previews (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Preview");
  LapPart *part = plan_part (session, LAP_PART_MAIN, 1);
  g_autofree char *before = NULL, *after = NULL;
  GtkWidget *button = NULL;
  LapScoreContext *context;
  LapWindow *window;
  guint differ = 0;

  plan_add (part, lap_block_new_exercise ("squat", 40, 20));
  plan_add (part, lap_block_new_exercise ("forward-lunge", 40, 20));
  plan_add (part, lap_block_new_exercise ("push-up", 40, 20));
  plan_add (part, lap_block_new_exercise ("dead-bug", 40, 20));
  window = windows_show (session);
  context = lap_window_context (window);
  before = windows_text (window);
  for (guint i = 0; i < lap_checkup_n (lap_document_checkup (context->document)) && button == NULL; i++)
    if (g_str_equal (lap_checkup_nth (lap_document_checkup (context->document), i)->check->id, "same-muscle")) {
      GtkWidget *row = lap_warnings_row (lap_window_warnings (window), i);

      lap_warning_row_fill (LAP_WARNING_ROW (row));
      button = windows_find (windows_find (row, GTK_TYPE_BOX, "remedies"), GTK_TYPE_BUTTON, NULL);
    }
  g_assert_nonnull (button);
  gtk_widget_grab_focus (button);
  g_assert_nonnull (context->preview);
  for (guint i = 0; i < context->preview->n; i++)
    differ += !lap_preview_is_same (context->preview, i, context->score);
  g_assert_cmpuint (differ, ==, 2); /* a swap */
  after = windows_text (window);
  g_assert_cmpstr (after, ==, before);
  g_assert_null (lap_history_undo_label (lap_document_history (context->document)));
  windows_settle (window);
  gtk_widget_grab_focus (GTK_WIDGET (lane_of (window, &lap_lane_parts)));
  g_assert_null (context->preview);
  windows_close (window);
}

/* With animations the axis glides to where it is at once without; what moves it meanwhile begins from there. */
static void
test_glides (void)
{
  for (int interrupted = 0; interrupted < 2; interrupted++) {
    LapWindow *window = windows_demo ();
    LapScoreContext *context = lap_window_context (window);
    g_autoptr (LapAxisLook) open = lap_axis_look (context->axis), to = NULL;

    lap_folds_open (context, 2, 1, FALSE);
    to = lap_axis_look (context->axis);
    g_assert_cmpfloat (to->zoom, !=, open->zoom);
    lap_folds_unfold (context);
    windows_settle (window);
    g_object_set (gtk_settings_get_default (), "gtk-enable-animations", TRUE, NULL);
    lap_folds_open (context, 2, 1, FALSE);
    g_assert_nonnull (context->glide_to);
    g_assert_cmpfloat (context->axis->zoom, ==, open->zoom);
    if (interrupted)
      lap_score_scroll_by (context, 0);
    while (context->glide_to != NULL)
      g_main_context_iteration (NULL, TRUE);
    g_assert_cmpfloat_with_epsilon (context->axis->zoom, to->zoom, 1e-9);
    g_assert_cmpfloat_with_epsilon (context->axis->offset, to->offset, 1e-9);
    for (guint i = 0; i < to->n; i++)
      g_assert_cmpfloat (context->axis->pieces[i].share, ==, to->shares[i]);
    g_object_set (gtk_settings_get_default (), "gtk-enable-animations", FALSE, NULL);
    windows_close (window);
  }
}

static const char *
length_told (LapWindow *window)
{
  GtkWidget *heading = windows_find (GTK_WIDGET (window), LAP_TYPE_HEADING, NULL);

  for (GtkWidget *child = gtk_widget_get_first_child (heading); child != NULL; child = gtk_widget_get_next_sibling (child))
    if (gtk_widget_has_css_class (child, "length"))
      return gtk_label_get_text (GTK_LABEL (child));
  g_assert_not_reached ();
}

/* A remedy that changes how long it lasts says so over the score while it is pointed at. */
static void
test_length_previews (void)
{
  LapWindow *window = windows_demo ();
  LapScoreContext *context = lap_window_context (window);
  LapDocument *document = lap_window_document (window);
  g_autofree char *was = g_strdup (length_told (window)), *then = NULL, *both = NULL, *now = NULL;
  g_autoptr (LapEdits) edits = NULL;
  int length = lap_document_timeline (document)->length;
  LapBlock *block = lap_part_nth (lap_session_nth (lap_document_session (document), 0), 0);

  edits = lap_verb_set_seconds (block, block->seconds + 30, lap_document_catalogue (document));
  now = lap_clock_text (length);
  then = lap_clock_text (length + 30);
  both = g_strdup_printf ("%s → %s", now, then);
  lap_score_preview (context, edits);
  windows_settle (window);
  g_assert_cmpstr (length_told (window), ==, both);
  lap_score_preview (context, NULL);
  g_assert_cmpstr (length_told (window), ==, was);
  windows_close (window);
}

/* The film clock begins with the camera, before the first block. */
static void
test_film_clock (void)
{
  g_autoptr (LapSession) session = three_parts ();
  GtkWidget *button;
  LapWindow *window;
  LapLane *ruler;
  guint before;

  g_object_set (session, "film-lead", 95.0, NULL);
  window = windows_show (session);
  ruler = lane_of (window, &lap_lane_ruler);
  button = windows_find (GTK_WIDGET (lap_window_score (window)), GTK_TYPE_TOGGLE_BUTTON, NULL);
  g_assert_cmpint (lap_ruler_lane_lead (LAP_RULER_LANE (ruler)), ==, 0);
  before = lap_lane_n_painted (ruler);
  gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (button), TRUE);
  windows_settle (window);
  g_assert_cmpint (lap_ruler_lane_lead (LAP_RULER_LANE (ruler)), ==, 95);
  g_assert_cmpuint (lap_lane_n_painted (ruler), >, before);
  gtk_toggle_button_set_active (GTK_TOGGLE_BUTTON (button), FALSE);
  windows_close (window);
}

/* Where the texts of a drawing lie, as what is drawn says: from the least px to the most, and how many there are. */
typedef struct {
  double from, to;
  double ends[32]; /* of each on the right, as they are drawn */
  guint  n, pictures;
  graphene_rect_t picture, last; /* the first picture, of a figure where there is one, and the last text, a number */
} Texts;

static void
find_texts (GskRenderNode *node, double dx, double dy, Texts *texts)
{
  GskRenderNodeType type = gsk_render_node_get_node_type (node);
  graphene_rect_t bounds;
  float x = 0, y = 0;

  if (type == GSK_CONTAINER_NODE)
    for (guint i = 0; i < gsk_container_node_get_n_children (node); i++)
      find_texts (gsk_container_node_get_child (node, i), dx, dy, texts);
  else if (type == GSK_CLIP_NODE)
    find_texts (gsk_clip_node_get_child (node), dx, dy, texts);
  else if (type == GSK_DEBUG_NODE)
    find_texts (gsk_debug_node_get_child (node), dx, dy, texts);
  else if (type == GSK_TRANSFORM_NODE) {
    gsk_transform_to_translate (gsk_transform_node_get_transform (node), &x, &y);
    find_texts (gsk_transform_node_get_child (node), dx + x, dy + y, texts);
  }
  gsk_render_node_get_bounds (node, &bounds);
  graphene_rect_offset (&bounds, dx, dy);
  if (type == GSK_CAIRO_NODE && texts->pictures++ == 0)
    texts->picture = bounds;
  if (type == GSK_TEXT_NODE) {
    texts->last = bounds;
    texts->from = MIN (texts->from, bounds.origin.x);
    texts->to = MAX (texts->to, bounds.origin.x + bounds.size.width);
    texts->ends[texts->n++ % G_N_ELEMENTS (texts->ends)] = bounds.origin.x + bounds.size.width;
  }
}

static Texts
texts_of (GtkWidget *widget)
{
  g_autoptr (GdkPaintable) paintable = gtk_widget_paintable_new (widget);
  GtkSnapshot *snapshot = gtk_snapshot_new ();
  g_autoptr (GskRenderNode) node = NULL;
  Texts texts = { .from = G_MAXDOUBLE, .to = -G_MAXDOUBLE };

  gdk_paintable_snapshot (paintable, snapshot, gtk_widget_get_width (widget), gtk_widget_get_height (widget));
  node = gtk_snapshot_free_to_node (snapshot);
  if (node != NULL)
    find_texts (node, 0, 0, &texts);
  return texts;
}

/* Nothing that a block says is cut by the edge of the view, none that is wide enough for a number says nothing, and no
 * figure stands on the number of a block that is wholly in view. */
static void
check_words (LapWindow *window)
{
  LapScoreContext *context = lap_window_context (window);
  guint first, end, said = 0;

  lap_score_visible (context->score, context->axis, &first, &end);
  for (guint i = first; i < end; i++) {
    GtkWidget *widget = lap_blocks_lane_find (windows_blocks (window), i);
    LapPlaced placed = lap_score_place (context->score, context->axis, i);
    int seen = MIN (placed.x + placed.width, context->axis->view) - MAX (placed.x, 0);
    Texts texts;

    if (widget == NULL || context->score->boxes[i].kind == LAP_BOX_GAP)
      continue;
    texts = texts_of (widget);
    said += texts.n;
    /* Two figures of its number at the most. */
    g_assert_true (texts.n > 0 || seen < 2 * lap_text_line (GTK_WIDGET (windows_blocks (window))));
    if (texts.n > 0) {
      g_assert_cmpfloat (placed.x + texts.from, >=, -1);
      g_assert_cmpfloat (placed.x + texts.to, <=, context->axis->view + 1);
    }
    if (context->score->boxes[i].kind == LAP_BOX_EXERCISE && seen == placed.width && texts.n > 1)
      g_assert_false (graphene_rect_intersection (&texts.picture, &texts.last, NULL));
  }
  g_assert_cmpuint (said, >, 0);
}

static void
test_words_are_whole (void)
{
  static const double zooms[] = { 0.4, 0.8, 1.3, 2.5, 9 };
  LapWindow *window;

  for (int mirrored = 0; mirrored < 2; mirrored++) {
    gtk_widget_set_default_direction (mirrored ? GTK_TEXT_DIR_RTL : GTK_TEXT_DIR_LTR);
    window = windows_demo ();
    for (guint z = 0; z < G_N_ELEMENTS (zooms); z++) {
      lap_score_zoom (lap_window_context (window), zooms[z], 0);
      for (guint step = 0; step < 12; step++) {
        windows_settle (window);
        check_words (window);
        lap_score_scroll_by (lap_window_context (window), 37);
      }
    }
    windows_close (window);
  }
  gtk_widget_set_default_direction (GTK_TEXT_DIR_LTR);
}

/* Of a block with a name of three words, each on a line of its own: its seconds, these lines, its number. */
static Texts
march (LapWindow *window)
{
  LapScoreContext *context = lap_window_context (window);
  guint march = lap_score_step (context->score, lap_score_step (context->score, LAP_NO_BOX, 1), 1);
  GtkWidget *widget;

  lap_score_zoom (context, 54.0 / 45, 0);
  windows_settle (window);
  widget = lap_blocks_lane_find (windows_blocks (window), march);
  g_assert_nonnull (widget);
  g_assert_cmpstr (lap_exercise_name (context->score->timeline->tasks[context->score->boxes[march].task].shown), ==,
                   "March with arm swing");
  return texts_of (widget);
}

/* The label of the lane is higher than a block needs: nothing of three lines is cut. From right to left they end where
 * time comes from, on the right, however the letters run. */
static void
test_three_lines (void)
{
  LapWindow *window = windows_demo ();
  Texts texts;

  g_assert_cmpuint (march (window).n, ==, 2 + 3);
  windows_close (window);
  gtk_widget_set_default_direction (GTK_TEXT_DIR_RTL);
  window = windows_demo ();
  texts = march (window);
  g_assert_cmpuint (texts.n, ==, 2 + 3);
  /* Letters may reach a px or two beside where they stand. */
  g_assert_cmpfloat_with_epsilon (texts.ends[1], texts.ends[2], 4);
  g_assert_cmpfloat_with_epsilon (texts.ends[3], texts.ends[2], 4);
  windows_close (window);
  gtk_widget_set_default_direction (GTK_TEXT_DIR_LTR);
}

/* In a high window the lanes are higher, and the blocks' words still whole; back in a usual one they are as before. What
 * an edit brings of warnings has no part in it. */
static void
test_high_window (void)
{
  LapWindow *window = windows_demo ();
  GtkWidget *view = GTK_WIDGET (lap_window_score (window)), *blocks = GTK_WIDGET (windows_blocks (window));
  int width = gtk_widget_get_width (GTK_WIDGET (window)), height = gtk_widget_get_height (GTK_WIDGET (window));
  int before = gtk_widget_get_height (view), low = gtk_widget_get_height (blocks), high;

  /* As high as the screen is, at the most. */
  gtk_window_set_default_size (GTK_WINDOW (window), width, 2100);
  while (gtk_widget_get_height (view) == before)
    g_main_context_iteration (NULL, TRUE);
  windows_settle (window);
  high = gtk_widget_get_height (blocks);
  g_assert_cmpint (high, >, low);
  check_words (window);
  lap_blocks_lane_go (windows_blocks (window), lap_score_step (lap_window_context (window)->score, LAP_NO_BOX, 1));
  g_assert_true (windows_press (gtk_window_get_focus (GTK_WINDOW (window)), "plus"));
  windows_settle (window);
  g_assert_cmpint (gtk_widget_get_height (blocks), ==, high);
  gtk_window_set_default_size (GTK_WINDOW (window), width, height);
  while (gtk_widget_get_height (blocks) == high)
    g_main_context_iteration (NULL, TRUE);
  windows_settle (window);
  g_assert_cmpint (gtk_widget_get_height (blocks), ==, low);
  windows_close (window);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/lanes/scrolling-repaints-nothing", test_scrolling_repaints_nothing);
  g_test_add_func ("/ui/lanes/changes-repaint", test_changes_repaint);
  g_test_add_func ("/ui/lanes/muscles-open", test_muscles_open);
  g_test_add_func ("/ui/lanes/know-their-checks", test_lanes_know_their_checks);
  g_test_add_func ("/ui/lanes/mark-selects-warning", test_mark_selects_warning);
  g_test_add_data_func ("/ui/lanes/marks-by-keys", NULL, test_marks_by_keys);
  g_test_add_data_func ("/ui/lanes/marks-by-keys-mirrored", "mirrored", test_marks_by_keys);
  g_test_add_func ("/ui/lanes/choice-is-kept", test_choice_is_kept);
  g_test_add_func ("/ui/lanes/bracket-folds", test_bracket_folds);
  g_test_add_func ("/ui/lanes/keys-fold", test_keys_fold);
  g_test_add_func ("/ui/lanes/fit", test_fit);
  g_test_add_func ("/ui/lanes/folded-words", test_folded_words);
  g_test_add_func ("/ui/lanes/remedy-previews", test_remedy_previews);
  g_test_add_func ("/ui/lanes/glides", test_glides);
  g_test_add_func ("/ui/lanes/length-previews", test_length_previews);
  g_test_add_func ("/ui/lanes/film-clock", test_film_clock);
  g_test_add_func ("/ui/lanes/words-are-whole", test_words_are_whole);
  g_test_add_func ("/ui/lanes/three-lines", test_three_lines);
  g_test_add_func ("/ui/lanes/high-window", test_high_window);
  return g_test_run ();
}
