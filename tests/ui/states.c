/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/windows.h"

#include "place/plans.h"
#include "ui/exercise-drop.h"
#include "ui/formula-entry.h"
#include "ui/invitation.h"
#include "ui/score/strip.h"

static LapInvitation *
invitation_of (LapWindow *window)
{
  return LAP_INVITATION (windows_find (GTK_WIDGET (window), LAP_TYPE_INVITATION, NULL));
}

static LapWindow *
open_empty (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Empty");

  return windows_show (session);
}

static guint
n_buttons (GtkWidget *widget)
{
  guint n = GTK_IS_BUTTON (widget) && gtk_widget_get_mapped (widget) && gtk_widget_is_sensitive (widget);

  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL; child = gtk_widget_get_next_sibling (child))
    n += n_buttons (child);
  return n;
}

/* Without blocks there is how to begin, and of the lanes only the one that takes what is dropped; with the first block
 * the lanes are there, at a zoom that fits. Undo brings it back. */
static void
test_empty_invites (void)
{
  LapWindow *window = open_empty ();
  GtkWidget *invitation = GTK_WIDGET (invitation_of (window));
  GtkWidget *strip = windows_find (GTK_WIDGET (window), LAP_TYPE_STRIP, NULL);
  LapScoreContext *context = lap_window_context (window);
  LapDocument *document = lap_window_document (window);

  g_assert_true (gtk_widget_get_mapped (invitation));
  g_assert_false (gtk_widget_get_mapped (strip));
  g_assert_true (gtk_widget_get_mapped (GTK_WIDGET (windows_blocks (window))));
  g_assert_cmpuint (n_buttons (invitation), ==, 3);
  for (int again = 0; again < 2; again++) {
    g_autoptr (LapPart) part = lap_part_new (LAP_PART_MAIN);
    LapEdits *edits = lap_edits_new ("Begin");

    plan_add (part, lap_block_new_exercise ("squat", 300, 0));
    lap_edits_insert (edits, lap_document_session (document)->parts, 0, part);
    lap_document_apply (document, edits);
    windows_settle (window);
    g_assert_false (gtk_widget_get_mapped (invitation));
    g_assert_true (gtk_widget_get_mapped (strip));
    g_assert_cmpfloat (context->axis->width, <=, context->axis->view + 0.01);
    lap_document_undo (document);
    windows_settle (window);
    g_assert_true (gtk_widget_get_mapped (invitation));
    g_assert_false (gtk_widget_get_mapped (strip));
  }
  windows_close (window);
}

/* A part without blocks is as empty: its formula invites, too. */
static void
test_empty_part (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Empty part");
  LapWindow *window;
  GtkWidget *entry;

  plan_part (session, LAP_PART_MAIN, 2);
  window = windows_show (session);
  g_assert_true (gtk_widget_get_mapped (GTK_WIDGET (invitation_of (window))));
  entry = windows_find (GTK_WIDGET (window), LAP_TYPE_FORMULA_ENTRY, NULL);
  gtk_test_accessible_assert_property (gtk_widget_get_first_child (entry), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                       "Formula: Type a formula: 40/20 × 10 × 2");
  windows_close (window);
}

/* Composing fills the session in one step; what was asked to stop, or came too late, changes nothing. */
static void
test_composes (void)
{
  LapWindow *window = open_empty ();
  LapDocument *document = lap_window_document (window);
  LapInvitation *invitation = invitation_of (window);

  g_object_set (lap_document_session (document), "target", 600, NULL);
  gtk_widget_activate_action (GTK_WIDGET (invitation), "invitation.compose", NULL);
  g_assert_true (lap_invitation_is_composing (invitation));
  g_assert_cmpuint (n_buttons (GTK_WIDGET (invitation)), ==, 1);
  gtk_widget_activate_action (GTK_WIDGET (invitation), "invitation.stop", NULL);
  g_assert_false (lap_invitation_is_composing (invitation));
  gtk_widget_activate_action (GTK_WIDGET (invitation), "invitation.compose", NULL);
  while (lap_invitation_is_composing (invitation))
    g_main_context_iteration (NULL, TRUE);
  windows_settle (window);
  g_assert_cmpint (lap_document_timeline (document)->length, >, 400);
  g_assert_cmpint (lap_document_timeline (document)->length, <=, 615);
  g_assert_false (gtk_widget_get_mapped (GTK_WIDGET (invitation)));
  lap_document_undo (document);
  g_assert_cmpint (lap_document_timeline (document)->length, ==, 0);
  g_assert_cmpuint (lap_session_n (lap_document_session (document)), ==, 0);
  windows_close (window);
}

/* What nobody zoomed fits however it grows, but not in the middle of a drag; what somebody zoomed stays as it is. */
static void
test_growing_fits (void)
{
  g_autoptr (LapSession) session = lap_session_new ("Growing");
  LapPart *part = plan_part (session, LAP_PART_MAIN, 1);
  LapBlock *block = lap_block_new_exercise ("squat", 200, 0);
  LapWindow *window;
  LapScoreContext *context;
  LapDocument *document;
  double zoom;

  plan_add (part, block);
  window = windows_show (session);
  context = lap_window_context (window);
  document = lap_window_document (window);
  zoom = context->axis->zoom;
  for (int seconds = 250; seconds <= 300; seconds += 50) {
    LapEdits *edits = lap_edits_new ("Longer");

    lap_edits_set_int (edits, block, "work", seconds);
    lap_document_hold (document, edits);
    g_assert_cmpfloat (context->axis->zoom, ==, zoom);
  }
  lap_document_keep (document);
  g_assert_cmpfloat (context->axis->zoom, <, zoom);
  g_assert_cmpfloat (context->axis->width, <=, context->axis->view + 0.01);
  lap_document_undo (document);
  g_assert_cmpfloat_with_epsilon (context->axis->zoom, zoom, 1e-9);
  lap_score_zoom (context, zoom * 2, 0);
  lap_document_redo (document);
  g_assert_cmpfloat (context->axis->zoom, ==, zoom * 2);
  lap_score_fit (context);
  windows_close (window);
}

static void
told_cb (LapDocument *document, const char *text, gboolean undoable, guint *told)
{
  *told += g_strcmp0 (text, lap_document_why_not (document)) == 0;
}

/* Items of menus that can be used, by their names. */
static void
add_usable (GtkWidget *widget, GString *names)
{
  if (g_str_equal (G_OBJECT_TYPE_NAME (widget), "GtkModelButton") && gtk_widget_is_sensitive (widget)) {
    g_autofree char *text = NULL;

    g_object_get (widget, "text", &text, NULL);
    g_string_append_printf (names, "%s,", text);
  }
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL; child = gtk_widget_get_next_sibling (child))
    add_usable (child, names);
}

/* An exercise that is dropped on the blocks; TRUE when it was taken. A landing is shown for it only where it could be. */
static gboolean
drop (LapWindow *window, gboolean *shown)
{
  GtkEventController *target = windows_controller (GTK_WIDGET (windows_blocks (window)), GTK_TYPE_DROP_TARGET);
  g_autoptr (LapExerciseDrop) exercise = lap_exercise_drop_new ("burpee");
  g_auto (GValue) value = G_VALUE_INIT;
  GdkDragAction action = 0;
  gboolean taken = FALSE;

  g_value_init (&value, LAP_TYPE_EXERCISE_DROP);
  g_value_set_boxed (&value, exercise);
  g_signal_emit_by_name (target, "motion", 100.0, 40.0, &action);
  *shown = lap_window_context (window)->landing != NULL;
  g_signal_emit_by_name (target, "drop", &value, 100.0, 40.0, &taken);
  return taken;
}

/* What a newer version wrote can be read: whoever tries to change it is told why not, and nothing changes. */
static void
test_read_only (void)
{
  static const char *const keys[] = { "plus", "minus", "period", "Delete", "Insert", "<Control>d", "<Control>x", "<Alt>Right",
                                      "<Control>Up", "<Alt>Up", "<Control>l" };
  static const char *const actions[] = { "win.save", "win.save-as" };
  g_autoptr (LapSession) session = lap_session_new ("Newer");
  LapPart *part = plan_part (session, LAP_PART_MAIN, 2);
  g_autoptr (GString) names = g_string_new (NULL);
  g_autofree char *before = NULL, *after = NULL;
  LapWindow *window;
  LapDocument *document;
  GtkWidget *work, *button;
  guint told = 0;
  gboolean shown;

  session->version = LAP_SESSION_VERSION + 1;
  for (guint i = 0; i < 3; i++)
    plan_add (part, lap_block_new_exercise ("squat", 40, 20));
  window = windows_show (session);
  document = lap_window_document (window);
  before = windows_text (window);
  g_signal_connect (document, "told", G_CALLBACK (told_cb), &told);
  for (guint i = 0; i < G_N_ELEMENTS (keys); i++) {
    lap_blocks_lane_go (windows_blocks (window), lap_score_find (lap_window_context (window)->score, 0, 1, 2));
    g_assert_true (windows_press (gtk_window_get_focus (GTK_WINDOW (window)), keys[i]));
    g_assert_cmpuint (told, ==, i + 1);
  }
  told = 0;
  for (guint i = 0; i < G_N_ELEMENTS (actions); i++) {
    gtk_widget_activate_action (GTK_WIDGET (window), actions[i], NULL);
    g_assert_cmpuint (told, ==, i + 1);
  }
  told = 0;
  g_assert_false (drop (window, &shown));
  g_assert_false (shown);
  g_assert_cmpuint (told, ==, 1);
  after = windows_text (window);
  g_assert_cmpstr (before, ==, after);
  work = windows_find (GTK_WIDGET (lap_window_pane (window)), GTK_TYPE_SPIN_BUTTON, "work");
  g_assert_false (gtk_widget_is_sensitive (work));
  g_assert_cmpstr (gtk_widget_get_tooltip_text (work), ==, lap_document_why_not (document));
  button = gtk_widget_get_first_child (windows_find (GTK_WIDGET (window), LAP_TYPE_FORMULA_ENTRY, NULL));
  g_assert_false (gtk_widget_is_sensitive (button));
  g_assert_cmpstr (gtk_widget_get_tooltip_text (button), ==, lap_document_why_not (document));
  gtk_widget_activate_action (GTK_WIDGET (windows_blocks (window)), "score.menu", NULL);
  windows_settle (window);
  add_usable (GTK_WIDGET (windows_blocks (window)), names);
  g_assert_cmpstr (names->str, ==, "Copy,Part,Part,Properties of the part,Open the part alone,All to one scale,");
  windows_close (window);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_func ("/ui/states/empty-invites", test_empty_invites);
  g_test_add_func ("/ui/states/empty-part", test_empty_part);
  g_test_add_func ("/ui/states/composes", test_composes);
  g_test_add_func ("/ui/states/growing-fits", test_growing_fits);
  g_test_add_func ("/ui/states/read-only", test_read_only);
  return g_test_run ();
}
