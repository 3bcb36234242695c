/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The benchmark of the score: processor time a frame while it scrolls and zooms and while a block or the end of its
 * work is dragged, from the event to the picture, against a flat fill of the same place in the same run, with 400 and
 * with 20,000 intervals; how many widgets that takes; and how much memory a shown session takes beside the document.
 * The strip of blocks alone and the score with all its lanes are held to the floor. Needs a display; the bars are ratios
 * and counts, never times.
 */
#include "bench/flat.h"
#include "bench/measure.h"
#include "ui/palette.h"
#include "ui/score/view.h"

#include <adwaita.h>
#include <math.h>
#include <unistd.h>

#define WIDTH  1600
#define HEIGHT 900
#define FRAMES 120
#define ZOOMED 14.0 /* px a second: blocks of 40 px on average */

typedef enum { FLAT, SCROLL, ZOOM, CARRY, STRETCH, N_MOVES } Move;

/* What is at most so many times a flat fill, and with 20,000 intervals so many times what it is with 400; 0: no bar. */
static const struct { const char *name; double flat, size; } moves[N_MOVES] = {
  [SCROLL] = { "scroll", 4, 1.5 },
  [ZOOM] = { "zoom", 8, 2.5 },
  [CARRY] = { "drag a block", 0, 1.5 },
  [STRETCH] = { "drag the end of work", 0, 1.5 },
};

typedef struct {
  GtkWidget       *window, *widget; /* the score or its strip, or the fill */
  LapBlocksLane   *blocks;          /* NULL for the fill */
  LapScoreContext *context;         /* NULL for the fill */
  double           began, cpu[FRAMES];
  guint            n, most_live, most_seen;
  gboolean         counting;
} Run;

static void
after_cb (Run *run)
{
  if (run->counting && run->n < FRAMES)
    run->cpu[run->n++] = measure_cpu () - run->began;
}

static LapSession *
make (guint blocks, int rounds)
{
  static const char *const circle[] = { "squat", "push-up", "step-jack", "dead-bug", "reverse-lunge" };
  LapSession *session = lap_session_new ("Benchmark");
  g_autoptr (LapPart) part = lap_part_new (LAP_PART_MAIN);
  g_autoptr (GPtrArray) parts = g_ptr_array_new (), items = g_ptr_array_new_with_free_func (g_object_unref);

  for (guint i = 0; i < blocks; i++)
    g_ptr_array_add (items, lap_block_new_exercise (circle[i % G_N_ELEMENTS (circle)], 1 + i % 3, 1));
  g_object_set (part, "rounds", rounds, NULL);
  lap_list_splice (part->blocks, 0, 0, items);
  g_ptr_array_add (parts, part);
  lap_list_splice (session->parts, 0, 0, parts);
  return session;
}

static GtkGesture *
drag_of (Run *run)
{
  g_autoptr (GListModel) controllers = gtk_widget_observe_controllers (GTK_WIDGET (run->blocks));

  for (guint i = 0;; i++) {
    g_autoptr (GtkEventController) controller = g_list_model_get_item (controllers, i);

    if (GTK_IS_GESTURE_DRAG (controller))
      return GTK_GESTURE (controller);
  }
}

/* Takes a block by its body or by the end of its work. */
static void
begin (Run *run, Move move)
{
  LapScoreContext *context = run->context;
  LapPlaced placed;
  guint box, end;

  if (move == FLAT || move == ZOOM)
    return;
  lap_score_zoom (context, ZOOMED, 0);
  if (move == SCROLL)
    return;
  lap_score_scroll_by (context, -context->axis->width); /* to the first round, whose ends follow the pointer */
  gtk_test_widget_wait_for_draw (run->window);
  lap_score_visible (context->score, context->axis, &box, &end);
  do {
    box = lap_score_step (context->score, box, 1);
    placed = lap_score_place (context->score, context->axis, box);
  } while (placed.body < 2 * ZOOMED); /* ends that are too near can't be held */
  g_signal_emit_by_name (drag_of (run), "drag-begin", placed.x + (move == CARRY ? placed.body / 2.0 : placed.body),
                         HEIGHT / 2.0);
}

static void
step (Run *run, Move move, guint i)
{
  double from;

  run->began = measure_cpu ();
  if (move == FLAT)
    gtk_widget_queue_draw (run->widget);
  else if (move == SCROLL)
    lap_score_scroll_by (run->context, 11);
  else if (move == ZOOM) {
    from = lap_axis_fit (run->context->axis);
    lap_score_zoom (run->context, from * pow (ZOOMED / from, i / (double) FRAMES), WIDTH / 2);
  } else /* there and back, as fast as it scrolls */
    g_signal_emit_by_name (drag_of (run), "drag-update", 210 + 11.0 * ABS (FRAMES / 2 - (int) i), 0.0);
}

/* The session is as it was. */
static void
end (Run *run, Move move)
{
  if (move == CARRY || move == STRETCH)
    g_signal_emit_by_name (drag_of (run), "cancel", NULL);
}

static void
count (Run *run)
{
  guint first, end;

  lap_score_visible (run->context->score, run->context->axis, &first, &end);
  run->most_seen = MAX (run->most_seen, end - first);
  run->most_live = MAX (run->most_live, lap_blocks_lane_n_live (run->blocks));
}

/* The median; of a drag, which tries a plan only where it comes to another place or length, the mean. */
static double
typical (Run *run, Move move)
{
  double sum = 0;

  measure_sort (run->cpu, FRAMES);
  for (guint i = 0; i < FRAMES; i++)
    sum += run->cpu[i];
  return move == CARRY || move == STRETCH ? sum / FRAMES : run->cpu[FRAMES / 2];
}

/* Processor time of a frame, ms. */
static double
measure (Run *run, Move move)
{
  int length = run->context != NULL ? lap_document_timeline (run->context->document)->length : 0;
  gboolean tried = FALSE;

  begin (run, move);
  for (guint warm = 0; warm < 10; warm++) {
    step (run, move, 0);
    gtk_test_widget_wait_for_draw (run->window);
  }
  run->n = 0;
  for (guint i = 0; run->n < FRAMES; i++) {
    run->counting = TRUE;
    step (run, move, i % FRAMES);
    gtk_test_widget_wait_for_draw (run->window);
    run->counting = FALSE;
    if (move == SCROLL)
      count (run);
    tried |= (move == CARRY && run->context->landing != NULL) ||
             (move == STRETCH && lap_document_timeline (run->context->document)->length != length);
  }
  g_assert_true (tried || (move != CARRY && move != STRETCH)); /* the drag has hold of something */
  end (run, move);
  return typical (run, move);
}

static GtkWidget *
make_strip (Run *run)
{
  run->blocks = g_object_new (LAP_TYPE_BLOCKS_LANE, "context", run->context, NULL);
  lap_score_set_view (run->context, WIDTH, FALSE, 1);
  return GTK_WIDGET (run->blocks);
}

static GtkWidget *
make_score (Run *run)
{
  LapScoreView *view = g_object_new (LAP_TYPE_SCORE_VIEW, NULL);

  lap_score_view_set_context (view, run->context);
  run->blocks = lap_score_view_blocks (view);
  return GTK_WIDGET (view);
}

typedef GtkWidget *(*Make) (Run *run);

/* Without a session: the fill, @height px high. */
static void
run_start (Run *run, LapSession *session, Make make_widget, int height)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (LapDocument) document = session != NULL ? lap_document_new (session, &error) : NULL;
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 0);
  GdkFrameClock *clock;

  g_assert_no_error (error);
  run->window = gtk_window_new ();
  gtk_window_set_default_size (GTK_WINDOW (run->window), WIDTH, HEIGHT);
  if (document != NULL) {
    run->context = lap_score_context_new (document);
    run->widget = make_widget (run);
  } else {
    run->widget = g_object_new (BENCH_TYPE_FLAT, NULL);
    gtk_widget_set_size_request (run->widget, -1, height);
  }
  gtk_box_append (GTK_BOX (box), run->widget);
  gtk_window_set_child (GTK_WINDOW (run->window), box);
  gtk_window_present (GTK_WINDOW (run->window));
  gtk_test_widget_wait_for_draw (run->window);
  clock = gtk_widget_get_frame_clock (run->window);
  g_signal_connect_swapped (clock, "after-paint", G_CALLBACK (after_cb), run);
}

static void
run_end (Run *run)
{
  GdkFrameClock *clock = gtk_widget_get_frame_clock (run->window);

  g_signal_handlers_disconnect_by_data (clock, run);
  gtk_window_destroy (GTK_WINDOW (run->window));
  g_clear_object (&run->context);
}

/* @bar 0: only tells. */
static gboolean
hold (const char *what, double is, double bar)
{
  if (bar <= 0) {
    g_print ("  %-28s %6.2f\n", what, is);
    return TRUE;
  }
  g_print ("  %-28s %6.2f  (at most %.2f)%s\n", what, is, bar, is <= bar ? "" : "  TOO MUCH");
  return is <= bar;
}

static double
measure_flat (int height)
{
  Run run = { NULL };
  double ms;

  run_start (&run, NULL, NULL, height);
  ms = measure (&run, FLAT);
  run_end (&run);
  g_print ("  %-28s %6.2f ms, %d px high\n", "flat fill", ms, height);
  return ms;
}

static gboolean
bench (const char *what, Make make_widget)
{
  static const struct { guint blocks; int rounds; } sizes[] = { { 20, 10 }, { 100, 100 } };
  double ms[G_N_ELEMENTS (sizes)][N_MOVES] = { 0 };
  guint live[G_N_ELEMENTS (sizes)];
  gboolean good = TRUE;

  g_print ("%s\n", what);
  for (guint i = 0; i < G_N_ELEMENTS (sizes); i++) {
    g_autoptr (LapSession) session = make (sizes[i].blocks, sizes[i].rounds);
    Run run = { NULL };
    double flat;
    guint seen;
    int height;

    run_start (&run, session, make_widget, 0);
    height = gtk_widget_get_height (run.widget);
    g_print ("  %u intervals\n", lap_document_timeline (run.context->document)->n);
    for (Move move = SCROLL; move < N_MOVES; move++)
      ms[i][move] = measure (&run, move);
    live[i] = run.most_live;
    seen = run.most_seen;
    run_end (&run);
    flat = measure_flat (height);
    for (Move move = SCROLL; move < N_MOVES; move++)
      good &= hold (moves[move].name, ms[i][move] / flat, moves[move].flat);
    good &= hold ("live widgets / seen", live[i] / (double) seen, 1.25);
  }
  g_print ("  20,000 / 400\n");
  for (Move move = SCROLL; move < N_MOVES; move++)
    good &= hold (moves[move].name, ms[1][move] / ms[0][move], moves[move].size);
  good &= hold ("live widgets", live[1] / (double) live[0], 1.05);
  return good;
}

/* kB of this process that are in memory, from what the kernel says. */
static int
resident (void)
{
  g_autofree char *text = NULL;
  int all, pages;

  g_assert_true (g_file_get_contents ("/proc/self/statm", &text, NULL, NULL));
  g_assert_cmpint (sscanf (text, "%d %d", &all, &pages), ==, 2);
  return pages * (sysconf (_SC_PAGESIZE) / 1024);
}

/* A fill behind all of the window, so that a score without blocks, where nothing scrolls, draws as much in a frame as
 * any other. */
static GtkWidget *
draw_behind (Run *run)
{
  GtkWidget *overlay = gtk_overlay_new (), *fill = g_object_new (BENCH_TYPE_FLAT, NULL);
  GtkWidget *child = g_object_ref (gtk_window_get_child (GTK_WINDOW (run->window)));

  gtk_window_set_child (GTK_WINDOW (run->window), overlay);
  gtk_overlay_set_child (GTK_OVERLAY (overlay), fill);
  gtk_overlay_add_overlay (GTK_OVERLAY (overlay), child);
  g_object_unref (child);
  return fill;
}

/* In a process of its own: with the document alone, or shown and scrolled. */
static void
hold_in_memory (guint blocks, int rounds, gboolean shown)
{
  g_autoptr (LapSession) session = make (blocks, rounds);
  g_autoptr (LapDocument) document = NULL;
  Run run = { NULL };
  GtkWidget *fill;

  if (shown) {
    run_start (&run, session, make_score, 0);
    fill = draw_behind (&run);
    for (guint i = 0; i < FRAMES; i++) {
      lap_score_scroll_by (run.context, 11);
      gtk_widget_queue_draw (fill);
      gtk_test_widget_wait_for_draw (run.window);
    }
  } else
    document = lap_document_new (session, NULL);
  g_print ("%d\n", resident ());
}

/* The pictures of a frame come and go; the C library is told to give back at once what is freed, so that only what is
 * held counts. */
static int
ask_memory (const char *self, guint blocks, int rounds, gboolean shown)
{
  g_autofree char *b = g_strdup_printf ("%u", blocks), *r = g_strdup_printf ("%d", rounds), *out = NULL;
  char *argv[] = { (char *) self, b, r, shown ? "shown" : "alone", NULL };
  g_auto (GStrv) env = g_get_environ ();

  env = g_environ_setenv (env, "MALLOC_MMAP_THRESHOLD_", "65536", TRUE);
  env = g_environ_setenv (env, "MALLOC_TRIM_THRESHOLD_", "65536", TRUE);
  g_assert_true (g_spawn_sync (NULL, argv, env, 0, NULL, NULL, &out, NULL, NULL, NULL));
  return atoi (out);
}

static gboolean
bench_memory (const char *self)
{
  static const struct { const char *than; guint blocks; int rounds; } less[] = { { "none", 0, 1 }, { "400", 20, 10 } };
  int alone = ask_memory (self, 100, 100, FALSE), all = ask_memory (self, 100, 100, TRUE);
  gboolean good = TRUE;

  g_print ("Memory of 20,000 intervals, MB\n");
  for (guint i = 0; i < G_N_ELEMENTS (less); i++) {
    double model = (alone - ask_memory (self, less[i].blocks, less[i].rounds, FALSE)) / 1024.0;
    double shown = (all - ask_memory (self, less[i].blocks, less[i].rounds, TRUE)) / 1024.0;

    g_print ("  more than of %s: the document alone %.1f, shown %.1f\n", less[i].than, model, shown);
    good &= hold ("more by being shown", shown - model, 5);
  }
  return good;
}

/* Without arguments the benchmark; BLOCKS ROUNDS shown|alone: what bench_memory() asks a process of its own. */
int
main (int argc, char **argv)
{
  gboolean good;

  gtk_init ();
  adw_init ();
  lap_palette_install (gdk_display_get_default ());
  if (argc == 4) {
    hold_in_memory (atoi (argv[1]), atoi (argv[2]), g_str_equal (argv[3], "shown"));
    return 0;
  }
  good = bench ("The strip of blocks", make_strip);
  good &= bench ("The score with all its lanes", make_score);
  good &= bench_memory (argv[0]);
  return good ? 0 : 1;
}
