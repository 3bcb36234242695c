/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * What a session is, each field of it: filled in through the dialog by somebody with a keyboard and by somebody with a
 * mouse, saved, read again from the file, and taken back one after the other.
 */
#include "ui/stories.h"

#include "base/record.h"
#include "store/documents.h"
#include "store/folder.h"

#include <string.h>

/* How a field is filled in: as Rows say. */
typedef enum { LINE, NUMBER, CHOICE, FLAG, IN_SET } How;

typedef struct {
  const char *property, *title; /* property: as of lap_record_field() */
  How         how;
  const char *text;             /* LINE, CHOICE, and the member of a set */
  double      number;           /* as it is shown */
} Field;

static const Field fields[] = {
  { "title", "Title", LINE, "Harbour circuit" },
  { "coach", "Coach", LINE, "Ines Varrow" },
  { "link", "Link", LINE, "https://example.org/harbour" },
  { "music", "Music", LINE, "Slow drums" },
  { "target", "Length wanted", NUMBER, .number = 40 },
  { "focus", "Works on purpose", IN_SET, "Chest" },
  { "group-level", "Level", CHOICE, "New" },
  { "group-count", "People", NUMBER, .number = 4 },
  { "group-age", "Age", NUMBER, .number = 55 },
  { "screened", "Screened on", LINE, "2027-01-05" },
  { "also-for", "Also for", IN_SET, "knees" },
  { "kit", "Kit that is there", IN_SET, "band" },
  { "space-width", "Width", NUMBER, .number = 3.5 },
  { "space-length", "Length", NUMBER, .number = 4 },
  { "quiet", "Quiet", FLAG },
  { "band-low", "At least", NUMBER, .number = 45 },
  { "band-high", "At most", NUMBER, .number = 79 },
  { "film-sound", "Sound", CHOICE, "Live in the room" },
  { "film-frame", "Frame", CHOICE, "Portrait" },
  { "film-lens", "Lens", NUMBER, .number = 30 },
  { "film-room", "Farthest camera", NUMBER, .number = 5.5 },
  { "film-camera-height", "Height of the camera", NUMBER, .number = 1.5 },
  { "film-lead", "Lead", NUMBER, .number = 3 },
};

static void
fill_in (const Rows *rows, GtkWidget *dialog, const Field *field)
{
  switch (field->how) {
  case LINE:
    rows->line (dialog, field->title, field->text);
    hands_press ("Return");
    break;
  case NUMBER:
    rows->number (dialog, field->title, field->number);
    break;
  case CHOICE:
    rows->choose (dialog, field->title, field->text);
    break;
  case FLAG:
    rows->flag (dialog, field->title, TRUE);
    break;
  case IN_SET:
    rows->expand (dialog, field->title);
    rows->flag (rows_find (dialog, field->title), field->text, TRUE);
    break;
  }
}

/* What @session has there, to compare. */
static char *
value_of (const LapSession *session, const Field *field)
{
  g_auto (GValue) value = G_VALUE_INIT;

  lap_field_get (lap_record_field (lap_object_record ((LapSession *) session), field->property), session, &value);
  if (G_VALUE_HOLDS (&value, G_TYPE_STRV))
    return g_value_get_boxed (&value) != NULL ? g_strjoinv (", ", g_value_get_boxed (&value)) : g_strdup ("");
  if (G_VALUE_HOLDS_BOXED (&value))
    return g_strdup (g_value_get_boxed (&value) != NULL ? "something" : "nothing");
  return g_strdup_value_contents (&value);
}

static void
assert_step (LapDocument *document, const Field *field)
{
  g_autofree char *label = g_strdup_printf ("Change: %s", field->title);

  g_assert_cmpstr (lap_history_undo_label (lap_document_history (document)), ==, label);
}

/* All of them are in the file that was saved. */
static void
assert_saved (const char *path, const LapSession *session)
{
  g_autoptr (GError) error = NULL;
  g_autoptr (LapDocument) saved = lap_document_read (path, &error);

  g_assert_no_error (error);
  for (guint i = 0; i < G_N_ELEMENTS (fields); i++) {
    g_autofree char *mine = value_of (session, &fields[i]);
    g_autofree char *theirs = value_of (lap_document_session (saved), &fields[i]);

    g_assert_cmpstr (theirs, ==, mine);
  }
}

typedef struct {
  LapSession  *session;
  const Field *field;
  const char  *before;
} Back;

static gboolean
is_back (gpointer data)
{
  const Back *back = data;
  g_autofree char *now = value_of (back->session, back->field);

  return g_str_equal (now, back->before);
}

static void
test_fields (gconstpointer mouse)
{
  const Rows *rows = mouse != NULL ? &rows_by_mouse : &rows_by_keys;
  char *folder = folder_new ();
  g_autofree char *path = g_build_filename (folder, "plan.lapwing", NULL), *first = NULL, *last = NULL;
  char *before[G_N_ELEMENTS (fields)];
  LapWindow *window;
  LapDocument *document;
  LapSession *session;
  GtkWidget *dialog;

  stories_put_plan (path, "Small");
  window = windows_open (path);
  document = lap_window_document (window);
  session = lap_document_session (document);
  first = windows_text (window);
  hands_on (GTK_WINDOW (window));
  if (mouse != NULL)
    stories_choose (window, "Properties");
  else
    hands_press ("<Alt>Return");
  dialog = GTK_WIDGET (stories_dialog (ADW_TYPE_PREFERENCES_WINDOW));
  for (guint i = 0; i < G_N_ELEMENTS (fields); i++) {
    g_autofree char *after = NULL;

    before[i] = value_of (session, &fields[i]);
    fill_in (rows, dialog, &fields[i]);
    after = value_of (session, &fields[i]);
    g_assert_cmpstr (after, !=, before[i]);
    assert_step (document, &fields[i]);
  }
  hands_press ("Escape");
  stories_away (window, ADW_TYPE_PREFERENCES_WINDOW);
  hands_press ("<Control>s");
  stories_until_state (window, LAP_DOCUMENT_CLEAN);
  assert_saved (path, session);
  for (guint i = G_N_ELEMENTS (fields); i-- > 0;) {
    const Back back = { session, &fields[i], before[i] };

    assert_step (document, &fields[i]);
    hands_press ("<Control>z");
    /* Each press of + was a step. */
    hands_press_until ("<Control>z", is_back, (gpointer) &back);
    g_free (before[i]);
  }
  last = windows_text (window);
  g_assert_cmpstr (last, ==, first);
  windows_close (window);
  folder_remove (folder);
}

/* Nobody has to know of Enter: what is typed holds when the line is left, and when the dialog is. */
static void
test_left (void)
{
  LapWindow *window = windows_demo ();
  LapSession *session = lap_document_session (lap_window_document (window));
  GtkWidget *dialog;

  hands_on (GTK_WINDOW (window));
  hands_press ("<Alt>Return");
  dialog = GTK_WIDGET (stories_dialog (ADW_TYPE_PREFERENCES_WINDOW));
  stories_tab_to (rows_find (dialog, "Title"));
  hands_press ("<Control>a");
  hands_type ("Left by Tab");
  stories_tab_to (rows_find (dialog, "Coach"));
  g_assert_cmpstr (session->title, ==, "Left by Tab");
  hands_press ("<Control>a");
  hands_type ("Left by Escape");
  hands_press ("Escape");
  stories_away (window, ADW_TYPE_PREFERENCES_WINDOW);
  g_assert_cmpstr (session->coach, ==, "Left by Escape");
  g_assert_cmpstr (session->title, ==, "Left by Tab");
  hands_press ("<Alt>Return");
  dialog = GTK_WIDGET (stories_dialog (ADW_TYPE_PREFERENCES_WINDOW));
  stories_tab_to (adw_action_row_get_activatable_widget (ADW_ACTION_ROW (rows_find (dialog, "Length wanted"))));
  hands_press ("<Control>a");
  hands_type ("35");
  hands_press ("Escape");
  stories_away (window, ADW_TYPE_PREFERENCES_WINDOW);
  g_assert_cmpint (session->target, ==, 35 * 60);
  windows_close (window);
}

int
main (int argc, char **argv)
{
  windows_init (&argc, &argv);
  g_test_add_data_func ("/ui/property-stories/keyboard", NULL, test_fields);
  g_test_add_data_func ("/ui/property-stories/mouse", "mouse", test_fields);
  g_test_add_func ("/ui/property-stories/left", test_left);
  return g_test_run ();
}
