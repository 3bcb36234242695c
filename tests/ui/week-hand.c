/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/week-hand.h"

#include "store/documents.h"
#include "store/folder.h"
#include "ui/field-text.h"

#include <string.h>

LapWeek *
week_hand_week (WeekHand *hand)
{
  return lap_document_week (lap_window_document (hand->window));
}

static const LapRecord *
record_of (gpointer object)
{
  return ((LapObjectClass *) G_OBJECT_GET_CLASS (object))->record;
}

/* Rows, each as its kind asks for */

char *
week_hand_written (gpointer object, const char *property)
{
  const LapField *field = lap_record_field (record_of (object), property);
  g_auto (GValue) value = G_VALUE_INIT;

  lap_field_get (field, object, &value);
  if (lap_field_is_typed (field))
    return lap_field_text (field, &value);
  if (field->kind == &lap_kind_kit)
    return g_strdup_printf ("%x", lap_kit_mask (g_value_get_boxed (&value)));
  if (field->kind == &lap_kind_words)
    return g_strdup_printf ("%x", lap_words_mask (field->words, g_value_get_boxed (&value)));
  return g_strdup_value_contents (&value);
}

static void
set_flags (WeekHand *hand, GtkWidget *within, const char *title, const LapWords *words, guint32 wanted, guint32 now)
{
  GtkWidget *row = rows_find (within, title);

  hand->rows->expand (within, title);
  for (guint i = 0; i < words->n; i++)
    if ((wanted ^ now) & LAP_BIT (i))
      hand->rows->flag (row, lap_words_label (words, i), (wanted & LAP_BIT (i)) != 0);
}

static void
set_kit (WeekHand *hand, GtkWidget *within, const char *title, const LapKit *kit)
{
  GtkWidget *row = rows_find (within, title);

  hand->rows->expand (within, title);
  for (guint i = 0; i < kit->n; i++)
    hand->rows->flag (row, lap_words_label (&lap_kit_words, kit->order[i]), TRUE);
}

void
week_hand_set (WeekHand *hand, GtkWidget *within, const WeekLine *line, gpointer object, gpointer model)
{
  const LapField *field = lap_record_field (record_of (model), line->property);
  g_autofree char *wanted = week_hand_written (model, line->property), *now = week_hand_written (object, line->property);
  g_auto (GValue) value = G_VALUE_INIT, was = G_VALUE_INIT;

  if (g_str_equal (wanted, now))
    return;
  lap_field_get (field, model, &value);
  lap_field_get (field, object, &was);
  if (lap_field_is_typed (field))
    hand->rows->line (within, line->title, wanted);
  else if (field->kind == &lap_kind_kit)
    set_kit (hand, within, line->title, g_value_get_boxed (&value));
  else if (field->kind == &lap_kind_words)
    set_flags (hand, within, line->title, field->words, lap_words_mask (field->words, g_value_get_boxed (&value)),
               lap_words_mask (field->words, g_value_get_boxed (&was)));
  else if (field->kind == &lap_kind_flag)
    hand->rows->flag (within, line->title, g_value_get_boolean (&value));
  else if (field->kind == &lap_kind_word)
    hand->rows->choose (within, line->title, lap_words_label (field->words, g_value_get_int (&value)));
  else
    hand->rows->number (within, line->title, G_VALUE_HOLDS_INT (&value) ? g_value_get_int (&value)
                                                                        : (int) g_value_get_double (&value));
}

void
week_hand_set_all (WeekHand *hand, GtkWidget *within, const WeekLine *lines, guint n, gpointer object, gpointer model)
{
  for (guint i = 0; i < n; i++)
    week_hand_set (hand, within, &lines[i], object, model);
}

/* Windows */

static gboolean
has_dialog (gpointer window)
{
  return g_list_model_get_n_items (gtk_window_get_toplevels ()) > 1;
}

static gboolean
has_none (gpointer window)
{
  return g_list_model_get_n_items (gtk_window_get_toplevels ()) == 1;
}

GtkWidget *
week_hand_go_in (WeekHand *hand)
{
  g_autoptr (GtkWindow) dialog = NULL;

  hands_until (has_dialog, NULL);
  dialog = windows_dialog (hand->window);
  hands_until (rows_is_mapped, dialog);
  hands_on (dialog);
  return GTK_WIDGET (dialog);
}

static GtkWidget *
find_close (GtkWidget *widget)
{
  if (GTK_IS_BUTTON (widget) && gtk_widget_has_css_class (widget, "close") && gtk_widget_get_mapped (widget))
    return widget;
  for (GtkWidget *child = gtk_widget_get_first_child (widget); child != NULL;
       child = gtk_widget_get_next_sibling (child)) {
    GtkWidget *found = find_close (child);

    if (found != NULL)
      return found;
  }
  return NULL;
}

void
week_hand_go_out (WeekHand *hand, GtkWidget *dialog)
{
  if (dialog != NULL && hand->mouse)
    hands_click_on (find_close (dialog));
  else if (dialog != NULL)
    hands_press ("Escape");
  hands_until (has_none, NULL);
  hands_on (GTK_WINDOW (hand->window));
}

void
week_hand_command (WeekHand *hand, const char *label, const char *keys)
{
  GtkWidget *button, *popover;

  if (!hand->mouse) {
    hands_press (keys);
    return;
  }
  button = windows_find (GTK_WIDGET (hand->window), GTK_TYPE_MENU_BUTTON, "menu_button");
  hands_click_on (button);
  popover = GTK_WIDGET (gtk_menu_button_get_popover (GTK_MENU_BUTTON (button)));
  hands_until (rows_is_mapped, popover);
  rows_click_text (popover, label);
}

guint
week_hand_room_at (LapWeek *week, const char *id)
{
  return id != NULL ? lap_list_find (week->rooms, lap_week_room (week, id)) : G_MAXUINT;
}

guint
week_hand_coach_at (LapWeek *week, const char *id)
{
  return id != NULL ? lap_list_find (week->coaches, lap_week_coach (week, id)) : G_MAXUINT;
}

void
week_hand_start (WeekHand *hand, gboolean mouse)
{
  static const char empty[] =
    "{\"format\": \"lapwing-week\", \"version\": 1, \"id\": \"%s\", \"title\": \"\", \"timezone\": \"UTC\"}";
  static const char *const files[] = { "kelpline-week.lapweek", "thirty-on-the-mat.lapwing", "twelve-at-twelve.lapwing" };
  g_autofree char *demo = NULL, *text = NULL;
  g_autoptr (GError) error = NULL;

  hand->rows = mouse ? &rows_by_mouse : &rows_by_keys;
  hand->mouse = mouse;
  hand->folder = folder_new ();
  for (guint i = 0; i < G_N_ELEMENTS (files); i++) {
    g_autofree char *from = g_build_filename (g_getenv ("LAP_SOURCE"), "data", "demo", files[i], NULL);
    g_autofree char *to = g_build_filename (hand->folder, files[i], NULL), *bytes = NULL;

    g_assert_true (g_file_get_contents (from, &bytes, NULL, NULL));
    put_text (to, bytes);
  }
  demo = g_build_filename (hand->folder, files[0], NULL);
  hand->demo = lap_document_read (demo, &error);
  g_assert_no_error (error);
  hand->model = lap_document_week (hand->demo);
  hand->path = g_build_filename (hand->folder, "made.lapweek", NULL);
  text = g_strdup_printf (empty, hand->model->id);
  put_text (hand->path, text);
  hand->window = windows_open (hand->path);
  hand->view = lap_week_window_view (LAP_WEEK_WINDOW (hand->window));
  hand->pane = GTK_WIDGET (lap_week_window_pane (LAP_WEEK_WINDOW (hand->window)));
  gtk_window_set_default_size (GTK_WINDOW (hand->window), 1580, 980);
  windows_settle (hand->window);
  hands_on (GTK_WINDOW (hand->window));
}

static void
number (char **id, const char *stem, guint i)
{
  g_free (*id);
  *id = i != G_MAXUINT ? g_strdup_printf ("%s-%u", stem, i) : NULL;
}

/* The text of the week with all ids by what they are of and where that is in its list. */
static char *
text_of (LapDocument *document)
{
  LapWeek *week = lap_document_week (document);
  g_autoptr (LapWeek) copy = lap_object_copy (week);
  g_autoptr (GBytes) bytes = NULL;

  for (guint i = 0; i < lap_list_n (copy->rooms); i++)
    number (&LAP_ROOM (lap_list_nth (copy->rooms, i))->id, "room", i);
  for (guint i = 0; i < lap_list_n (copy->coaches); i++)
    number (&LAP_COACH (lap_list_nth (copy->coaches, i))->id, "coach", i);
  for (guint i = 0; i < lap_list_n (copy->classes); i++) {
    LapClass *c = lap_list_nth (copy->classes, i);

    number (&c->id, "class", i);
    number (&c->room, "room", week_hand_room_at (week, c->room));
    number (&c->coach, "coach", week_hand_coach_at (week, c->coach));
  }
  for (guint i = 0; i < lap_list_n (copy->exceptions); i++) {
    LapException *e = lap_list_nth (copy->exceptions, i);

    number (&e->class_id, "class", lap_list_find (week->classes, lap_week_class (week, e->class_id)));
    number (&e->room, "room", week_hand_room_at (week, e->room));
    number (&e->coach, "coach", week_hand_coach_at (week, e->coach));
  }
  for (guint i = 0; i < lap_list_n (copy->aways); i++) {
    LapAway *away = lap_list_nth (copy->aways, i);

    number (&away->coach, "coach", week_hand_coach_at (week, away->coach));
  }
  bytes = lap_week_to_bytes (copy);
  return g_strndup (g_bytes_get_data (bytes, NULL), g_bytes_get_size (bytes));
}

static gboolean
is_clean (gpointer document)
{
  return lap_document_state (document) == LAP_DOCUMENT_CLEAN;
}

/* WeekLine by line: one that differs says more than two files that do. */
static void
compare (const char *made, const char *wanted)
{
  g_auto (GStrv) a = g_strsplit (made, "\n", -1), b = g_strsplit (wanted, "\n", -1);

  for (guint i = 0; a[i] != NULL && b[i] != NULL; i++) {
    if (g_strcmp0 (a[i], b[i]) != 0)
      g_test_message ("line %u", i + 1);
    g_assert_cmpstr (a[i], ==, b[i]);
  }
  g_assert_cmpuint (g_strv_length (a), ==, g_strv_length (b));
}

static void
clear (WeekHand *hand)
{
  g_clear_object (&hand->demo);
  g_free (hand->path);
  folder_remove (hand->folder);
}

void
week_hand_end (WeekHand *hand)
{
  g_autofree char *wanted = text_of (hand->demo), *made = NULL;
  g_autoptr (LapDocument) saved = NULL;
  g_autoptr (GError) error = NULL;

  week_hand_command (hand, "Save", "<Control>s");
  hands_until (is_clean, lap_window_document (hand->window));
  windows_close (hand->window);
  saved = lap_document_read (hand->path, &error);
  g_assert_no_error (error);
  made = text_of (saved);
  compare (made, wanted);
  clear (hand);
}

void
week_hand_drop (WeekHand *hand)
{
  windows_close (hand->window);
  clear (hand);
}
