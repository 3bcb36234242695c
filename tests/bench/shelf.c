/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * The benchmark of the catalogue: it is scrolled from top to bottom, a step a frame, first while every figure is painted
 * for the first time, then again. Told are frames that came late by the frame clock, and processor time a frame; held is
 * how many tiles that takes, and that the second time no frame costs more than a frame may last. Then somebody types in
 * the search, a letter at a time: what a letter costs until it is painted is held to a frame, too. There are 1,000
 * exercises, as a coach has who has made many of them. Needs a display.
 */
#include "bench/measure.h"
#include "edit/own.h"
#include "ui/application.h"
#include "ui/palette.h"
#include "ui/shelf.h"

#include <adwaita.h>

#define WIDTH   240
#define HEIGHT  900
#define STEP    36   /* px a frame: more than a quick flick of a wheel */
#define FRAME   (1000.0 / 60) /* ms */
#define MOST    4000
#define EXERCISES 1000

typedef struct {
  GtkWidget     *window;
  LapShelfGrid  *grid;
  GtkAdjustment *down;
  double         began, cpu[MOST];
  gint64         times[MOST];
  guint          n, most_seen;
  gboolean       counting, ended;
} Run;

static void
before_cb (Run *run)
{
  run->began = measure_cpu ();
}

static void
after_cb (Run *run, GdkFrameClock *clock)
{
  if (!run->counting || run->n >= MOST)
    return;
  run->times[run->n] = gdk_frame_clock_get_frame_time (clock);
  run->cpu[run->n++] = measure_cpu () - run->began;
  run->most_seen = MAX (run->most_seen, lap_shelf_grid_n_live (run->grid));
}

static gboolean
tick_cb (GtkWidget *widget, GdkFrameClock *clock, gpointer data)
{
  Run *run = data;
  double last = gtk_adjustment_get_upper (run->down) - gtk_adjustment_get_page_size (run->down);

  run->ended = gtk_adjustment_get_value (run->down) >= last;
  gtk_adjustment_set_value (run->down, gtk_adjustment_get_value (run->down) + STEP);
  return run->ended ? G_SOURCE_REMOVE : G_SOURCE_CONTINUE;
}

/* Returns the processor time of the dearest frame, ms. */
static double
scroll (Run *run, const char *what)
{
  guint late = 0;

  gtk_adjustment_set_value (run->down, 0);
  gtk_test_widget_wait_for_draw (run->window);
  run->n = 0;
  run->ended = FALSE;
  run->counting = TRUE;
  gtk_widget_add_tick_callback (run->window, tick_cb, run, NULL);
  while (!run->ended)
    g_main_context_iteration (NULL, TRUE);
  run->counting = FALSE;
  for (guint i = 1; i < run->n; i++)
    late += (run->times[i] - run->times[i - 1]) / 1e3 > 1.5 * FRAME;
  measure_sort (run->cpu, run->n);
  g_print ("%s: %u frames, %u late; processor time a frame: median %.2f, 95 in 100 %.2f, most %.2f ms\n", what, run->n,
           late, run->cpu[run->n / 2], run->cpu[run->n * 95 / 100], run->cpu[run->n - 1]);
  return run->cpu[run->n - 1];
}

/* The session's own, each like one of the built-in ones. */
static void
make_own (LapDocument *document)
{
  g_autoptr (LapCatalogue) builtin = lap_catalogue_builtin ();
  guint n = lap_catalogue_n (builtin);

  for (guint i = n; i < EXERCISES; i++) {
    const LapExercise *like = lap_catalogue_nth (builtin, i % n);
    g_autofree char *name = g_strdup_printf ("%s %u", like->name, i), *id = NULL;

    if (!lap_document_apply (document, lap_verb_make_own (lap_document_session (document), like, name,
                                                          lap_document_catalogue (document), &id)))
      g_error ("%s can't be made", name);
  }
}

/* Returns the processor time of the dearest letter, ms: from the key to the end of its frame. */
static double
type (Run *run, GtkWidget *shelf)
{
  static const char word[] = "squat with reach";
  GtkWidget *search = NULL, *child = shelf;
  double most = 0, sum = 0;

  /* The first entry of the shelf. */
  while (search == NULL) {
    child = gtk_widget_get_first_child (child);
    search = GTK_IS_SEARCH_ENTRY (child) ? child : NULL;
  }
  for (gsize n = 1; n < sizeof word; n++) {
    g_autofree char *typed = g_strndup (word, n);
    double began = measure_cpu ();

    gtk_editable_set_text (GTK_EDITABLE (search), typed);
    gtk_test_widget_wait_for_draw (run->window);
    most = MAX (most, measure_cpu () - began);
    sum += measure_cpu () - began;
  }
  g_print ("typing \"%s\": processor time a letter: mean %.2f, most %.2f ms; %u found\n", word,
           sum / (sizeof word - 1), most, lap_shelf_grid_n (run->grid));
  return most;
}

int
main (int argc, char **argv)
{
  g_autoptr (LapApplication) application = NULL; /* brings the resources along */
  g_autoptr (LapSession) session = lap_session_new ("Benchmark");
  g_autoptr (LapDocument) document = NULL;
  g_autoptr (LapScoreContext) context = NULL;
  GtkWidget *shelf;
  GdkFrameClock *clock;
  Run run = { NULL };
  double most, letter;
  gboolean good;

  gtk_init ();
  adw_init ();
  application = lap_application_new ();
  lap_palette_install (gdk_display_get_default ());
  document = lap_document_new (session, NULL);
  make_own (document);
  context = lap_score_context_new (document);
  shelf = g_object_new (LAP_TYPE_SHELF, NULL);
  lap_shelf_set_context (LAP_SHELF (shelf), context);
  run.grid = lap_shelf_grid (LAP_SHELF (shelf));
  run.window = gtk_window_new ();
  gtk_window_set_default_size (GTK_WINDOW (run.window), WIDTH, HEIGHT);
  gtk_window_set_child (GTK_WINDOW (run.window), shelf);
  gtk_window_present (GTK_WINDOW (run.window));
  gtk_test_widget_wait_for_draw (run.window);
  run.down = gtk_scrollable_get_vadjustment (GTK_SCROLLABLE (run.grid));
  clock = gtk_widget_get_frame_clock (run.window);
  g_signal_connect_swapped (clock, "before-paint", G_CALLBACK (before_cb), &run);
  g_signal_connect_data (clock, "after-paint", G_CALLBACK (after_cb), &run, NULL, G_CONNECT_SWAPPED);
  scroll (&run, "first time");
  most = scroll (&run, "again");
  g_print ("tiles made %u, seen at once %u, exercises %u\n", lap_shelf_grid_n_all (run.grid), run.most_seen,
           lap_shelf_grid_n (run.grid));
  gtk_adjustment_set_value (run.down, 0);
  letter = type (&run, shelf);
  good = letter < FRAME && lap_shelf_grid_n_all (run.grid) <= run.most_seen * 1.25 && most < FRAME;
  g_print ("%s\n", good ? "as held" : "TOO MUCH");
  g_signal_handlers_disconnect_by_data (clock, &run);
  gtk_window_destroy (GTK_WINDOW (run.window));
  return good ? 0 : 1;
}
