/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/words-row.h"

struct _LapWordsRow {
  AdwPreferencesRow parent_instance;
  GtkWidget        *title, *view;
};

enum { APPLY, CHANGED, N_SIGNALS };
static guint signals[N_SIGNALS];

G_DEFINE_FINAL_TYPE (LapWordsRow, lap_words_row, ADW_TYPE_PREFERENCES_ROW)

static GtkTextBuffer *
buffer_of (LapWordsRow *self)
{
  return gtk_text_view_get_buffer (GTK_TEXT_VIEW (self->view));
}

static void
changed_cb (LapWordsRow *self)
{
  g_signal_emit (self, signals[CHANGED], 0);
}

static void
leave_cb (LapWordsRow *self)
{
  g_signal_emit (self, signals[APPLY], 0);
}

/* The words are one paragraph: Enter is no part of them. */
static gboolean
key_cb (LapWordsRow *self, guint key)
{
  if (key != GDK_KEY_Return && key != GDK_KEY_KP_Enter && key != GDK_KEY_ISO_Enter)
    return FALSE;
  g_signal_emit (self, signals[APPLY], 0);
  return TRUE;
}

static void
title_cb (LapWordsRow *self)
{
  const char *title = adw_preferences_row_get_title (ADW_PREFERENCES_ROW (self));

  gtk_label_set_text (GTK_LABEL (self->title), title);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->view), GTK_ACCESSIBLE_PROPERTY_LABEL, title, -1);
}

/* A press anywhere in the row is meant for the words. */
static void
pressed_cb (LapWordsRow *self)
{
  gtk_widget_grab_focus (self->view);
}

static void
lap_words_row_class_init (LapWordsRowClass *klass)
{
  signals[APPLY] = g_signal_new ("apply", LAP_TYPE_WORDS_ROW, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
  signals[CHANGED] = g_signal_new ("changed", LAP_TYPE_WORDS_ROW, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 0);
}

static void
make_view (LapWordsRow *self)
{
  GtkEventController *keys = gtk_event_controller_key_new (), *focus = gtk_event_controller_focus_new ();

  self->view = gtk_text_view_new ();
  gtk_text_view_set_wrap_mode (GTK_TEXT_VIEW (self->view), GTK_WRAP_WORD_CHAR);
  gtk_text_view_set_accepts_tab (GTK_TEXT_VIEW (self->view), FALSE);
  gtk_event_controller_set_propagation_phase (keys, GTK_PHASE_CAPTURE);
  g_signal_connect_swapped (keys, "key-pressed", G_CALLBACK (key_cb), self);
  g_signal_connect_swapped (focus, "leave", G_CALLBACK (leave_cb), self);
  g_signal_connect_object (buffer_of (self), "changed", G_CALLBACK (changed_cb), self, G_CONNECT_SWAPPED);
  gtk_widget_add_controller (self->view, keys);
  gtk_widget_add_controller (self->view, focus);
}

static void
lap_words_row_init (LapWordsRow *self)
{
  GtkWidget *box = gtk_box_new (GTK_ORIENTATION_VERTICAL, 2);
  GtkGesture *click = gtk_gesture_click_new ();

  make_view (self);
  self->title = gtk_label_new (NULL);
  gtk_label_set_xalign (GTK_LABEL (self->title), 0);
  gtk_label_set_wrap (GTK_LABEL (self->title), TRUE);
  gtk_widget_add_css_class (self->title, "words-title");
  gtk_widget_add_css_class (GTK_WIDGET (self), "words-row");
  gtk_box_append (GTK_BOX (box), self->title);
  gtk_box_append (GTK_BOX (box), self->view);
  gtk_list_box_row_set_child (GTK_LIST_BOX_ROW (self), box);
  gtk_list_box_row_set_activatable (GTK_LIST_BOX_ROW (self), FALSE);
  gtk_widget_set_focusable (GTK_WIDGET (self), FALSE);
  g_signal_connect_swapped (click, "pressed", G_CALLBACK (pressed_cb), self);
  gtk_widget_add_controller (GTK_WIDGET (self), GTK_EVENT_CONTROLLER (click));
  g_signal_connect (self, "notify::title", G_CALLBACK (title_cb), NULL);
}

char *
lap_words_row_get_text (LapWordsRow *self)
{
  GtkTextIter start, end;

  gtk_text_buffer_get_bounds (buffer_of (self), &start, &end);
  return gtk_text_buffer_get_text (buffer_of (self), &start, &end, FALSE);
}

void
lap_words_row_set_text (LapWordsRow *self, const char *text)
{
  g_autofree char *is = lap_words_row_get_text (self);

  if (!g_str_equal (is, text))
    gtk_text_buffer_set_text (buffer_of (self), text, -1);
}
