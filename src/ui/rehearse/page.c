/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/rehearse/page.h"

#include "base/customs.h"
#include "place/safety.h"
#include "ui/rehearse/sound.h"
#include "ui/settings.h"

#include <glib/gi18n-lib.h>

struct _LapRehearsePage {
  AdwBin             parent_instance;
  LapScoreContext   *context;
  LapRehearseWindow *window;   /* that is open, or NULL */
  GPtrArray         *overruns; /* LapOverrun, of the last rehearsal */
  GtkWidget         *title, *first, *more, *here, *monitor, *fullscreen, *mirror, *screen, *takes, *list;
  GtkWidget         *sound;
};

G_DEFINE_FINAL_TYPE (LapRehearsePage, lap_rehearse_page, ADW_TYPE_BIN)

/* Sizes in units of the stage that people ask about: the seconds, a name and the words to say, the smaller
 * lines. */
#define UNITS_SECONDS 50
#define UNITS_WORDS   8.9
#define UNITS_SMALL   4.4

/* Screens */

static GListModel *
monitors (LapRehearsePage *self)
{
  return gdk_display_get_monitors (gtk_widget_get_display (GTK_WIDGET (self)));
}

/* The one that was chosen; NULL for the one this window is on. Transfer full. */
static GdkMonitor *
chosen_monitor (LapRehearsePage *self)
{
  guint i = adw_combo_row_get_selected (ADW_COMBO_ROW (self->monitor));

  return i > 0 && i != GTK_INVALID_LIST_POSITION ? g_list_model_get_item (monitors (self), i - 1) : NULL;
}

static GdkMonitor *
monitor_or_own (LapRehearsePage *self)
{
  GdkMonitor *monitor = chosen_monitor (self);
  GtkNative *native = gtk_widget_get_native (GTK_WIDGET (self));

  if (monitor == NULL && native != NULL && gtk_native_get_surface (native) != NULL)
    monitor = gdk_display_get_monitor_at_surface (gtk_widget_get_display (GTK_WIDGET (self)),
                                                  gtk_native_get_surface (native));
  else
    return monitor;
  return monitor != NULL ? g_object_ref (monitor) : NULL;
}

static void
show_reading (LapRehearsePage *self)
{
  g_autoptr (GdkMonitor) monitor = monitor_or_own (self);
  int height = monitor != NULL ? gdk_monitor_get_height_mm (monitor) : 0;
  g_autofree char *seconds = NULL, *words = NULL, *small = NULL, *text = NULL;
  GdkRectangle pixels;
  double share;

  if (height <= 0) {
    adw_preferences_group_set_description (ADW_PREFERENCES_GROUP (self->screen),
                                           _("This screen doesn’t say how large it is."));
    return;
  }
  gdk_monitor_get_geometry (monitor, &pixels);
  share = MIN (pixels.height / 100.0, pixels.width / 140.0) / MAX (pixels.height, 1);
  seconds = lap_distance_text (lap_stage_reads_from (UNITS_SECONDS, share, height));
  words = lap_distance_text (lap_stage_reads_from (UNITS_WORDS, share, height));
  small = lap_distance_text (lap_stage_reads_from (UNITS_SMALL, share, height));
  /* Translators: three distances, such as "4.5 m". */
  text = g_strdup_printf (_("Filling this screen, the seconds are read from %1$s, a name and the words to say from %2$s, "
                            "smaller lines from %3$s."), seconds, words, small);
  adw_preferences_group_set_description (ADW_PREFERENCES_GROUP (self->screen), text);
}

static void
list_monitors (LapRehearsePage *self)
{
  g_autoptr (GtkStringList) names = gtk_string_list_new (NULL);

  gtk_string_list_append (names, _("This one"));
  for (guint i = 0; i < g_list_model_get_n_items (monitors (self)); i++) {
    g_autoptr (GdkMonitor) monitor = g_list_model_get_item (monitors (self), i);
    const char *model = gdk_monitor_get_model (monitor), *connector = gdk_monitor_get_connector (monitor);
    g_autofree char *name = NULL;

    if (model != NULL && connector != NULL)
      name = g_strdup_printf ("%s (%s)", model, connector);
    else
      name = connector != NULL ? g_strdup (connector) : g_strdup_printf (_("Screen %u"), i + 1);
    gtk_string_list_append (names, name);
  }
  adw_combo_row_set_model (ADW_COMBO_ROW (self->monitor), G_LIST_MODEL (names));
  show_reading (self);
}

/* Afterwards */

static void show_overruns (LapRehearsePage *self);

static void
mend_cb (LapRehearsePage *self, GtkButton *button)
{
  LapOverrun *overrun = g_object_get_data (G_OBJECT (button), "overrun");

  if (!lap_document_apply (self->context->document, lap_rehearse_mend (overrun)))
    return;
  g_ptr_array_remove (self->overruns, overrun);
  show_overruns (self);
}

static GtkWidget *
overrun_row_new (LapRehearsePage *self, LapOverrun *overrun)
{
  GtkWidget *row = adw_action_row_new (), *button;

  adw_preferences_row_set_title (ADW_PREFERENCES_ROW (row), overrun->text);
  adw_action_row_set_title_lines (ADW_ACTION_ROW (row), 0);
  if (overrun->remedy == NULL)
    return row;
  button = gtk_button_new_with_label (overrun->remedy);
  gtk_widget_set_valign (button, GTK_ALIGN_CENTER);
  gtk_widget_add_css_class (button, "remedy");
  g_object_set_data (G_OBJECT (button), "overrun", overrun);
  g_signal_connect_object (button, "clicked", G_CALLBACK (mend_cb), self, G_CONNECT_SWAPPED);
  adw_action_row_add_suffix (ADW_ACTION_ROW (row), button);
  return row;
}

static void
show_overruns (LapRehearsePage *self)
{
  guint n = self->overruns != NULL ? self->overruns->len : 0;
  GtkWidget *child;

  while ((child = gtk_widget_get_first_child (self->list)) != NULL)
    gtk_list_box_remove (GTK_LIST_BOX (self->list), child);
  for (guint i = 0; i < n; i++)
    gtk_list_box_append (GTK_LIST_BOX (self->list), overrun_row_new (self, g_ptr_array_index (self->overruns, i)));
  gtk_widget_set_visible (self->list, n > 0);
}

static void
show_takes (LapRehearsePage *self)
{
  const LapSession *session = lap_document_session (self->context->document);
  guint n = lap_rows_n (session->takes), good = 0;
  g_autofree char *again_text = NULL, *good_text = NULL, *text = NULL;

  for (guint i = 0; i < n; i++)
    good += lap_rows_nth (session->takes, LapTake, i)->mark;
  good_text = g_strdup_printf (ngettext ("%u good take", "%u good takes", good), good);
  again_text = g_strdup_printf (ngettext ("%u to take again", "%u to take again", n - good), n - good);
  text = n > 0 ? g_strdup_printf ("%s, %s", good_text, again_text)
               : g_strdup (_("None yet. G marks a good take, R one to take again."));
  adw_preferences_group_set_description (ADW_PREFERENCES_GROUP (self->takes), text);
}

static void
left_cb (LapRehearsePage *self)
{
  g_clear_pointer (&self->overruns, g_ptr_array_unref);
  self->overruns = lap_rehearse_overruns (lap_stage_scene (lap_rehearse_window_stage (self->window)));
  self->window = NULL;
  show_overruns (self);
  show_takes (self);
}

static void
marked_cb (LapRehearsePage *self, guint n)
{
  lap_rehearse_keep_take (self->context->document, lap_stage_scene (lap_rehearse_window_stage (self->window)), n);
}

/* Beginning */

static void
trouble_cb (const char *why, gpointer data)
{
  LapRehearsePage *self = data;

  lap_rehearse_sound_trouble (LAP_REHEARSE_SOUND (self->sound), why);
  if (self->window == NULL)
    return;
  lap_stage_scene (lap_rehearse_window_stage (self->window))->pulses = TRUE;
  lap_rehearse_window_tell (self->window, why);
}

/* Without sound the rehearsal goes on, and the edge tells of the last seconds instead. */
static void
open_sound (LapRehearsePage *self, LapScene *scene)
{
  LapPlayer *player = lap_rehearse_sound_open (LAP_REHEARSE_SOUND (self->sound), scene);

  scene->pulses = player == NULL || scene->timeline->session->sound != LAP_SOUND_AFTER;
  if (player == NULL)
    return;
  lap_player_watch (player, trouble_cb, self);
  g_object_set_data_full (G_OBJECT (self->window), "player", player, (GDestroyNotify) lap_player_free);
}

LapRehearseWindow *
lap_rehearse_page_open (LapRehearsePage *self, int second)
{
  LapDocument *document = self->context->document;
  LapScene *scene = lap_scene_new (lap_document_timeline (document), lap_document_checkup (document), lap_rehearse_time,
                                   NULL);
  g_autoptr (GdkMonitor) monitor = chosen_monitor (self);

  lap_rehearsal_jump (scene->rehearsal, second);
  self->window = LAP_REHEARSE_WINDOW (lap_rehearse_window_new (GTK_WINDOW (gtk_widget_get_root (GTK_WIDGET (self))),
                                                               scene));
  lap_stage_set_mirror (lap_rehearse_window_stage (self->window), gtk_switch_get_active (GTK_SWITCH (self->mirror)));
  g_signal_connect_object (self->window, "marked", G_CALLBACK (marked_cb), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (self->window, "left", G_CALLBACK (left_cb), self, G_CONNECT_SWAPPED);
  open_sound (self, scene);
  gtk_window_present (GTK_WINDOW (self->window));
  if (gtk_switch_get_active (GTK_SWITCH (self->fullscreen))) {
    if (monitor != NULL)
      gtk_window_fullscreen_on_monitor (GTK_WINDOW (self->window), monitor);
    else
      gtk_window_fullscreen (GTK_WINDOW (self->window));
  }
  return self->window;
}

/* The rest before the selected block, or −1. */
static int
selected_second (LapRehearsePage *self)
{
  guint box = lap_score_selected (self->context);
  g_autoptr (LapShots) shots = lap_shots_new (lap_document_timeline (self->context->document));

  if (box == LAP_NO_BOX || shots->n == 0)
    return -1;
  return shots->shots[lap_shots_find (shots, self->context->score->boxes[box].start)].start;
}

static void
first_cb (LapRehearsePage *self)
{
  lap_rehearse_page_open (self, 0);
}

static void
here_cb (LapRehearsePage *self)
{
  lap_rehearse_page_open (self, MAX (selected_second (self), 0));
}

static void
update (LapRehearsePage *self)
{
  g_autofree char *length = lap_document_length_text (self->context->document);

  gtk_widget_set_sensitive (self->here, selected_second (self) >= 0);
  lap_rehearse_sound_show (LAP_REHEARSE_SOUND (self->sound), self->context->document);
  gtk_widget_set_sensitive (self->first, lap_document_timeline (self->context->document)->length > 0);
  adw_preferences_group_set_title (ADW_PREFERENCES_GROUP (self->title), lap_document_title (self->context->document));
  adw_preferences_group_set_description (ADW_PREFERENCES_GROUP (self->title), length);
  show_takes (self);
}

/* Behind another view it has time: an edit or a scroll of the plan has not. */
static void
context_cb (LapRehearsePage *self)
{
  if (gtk_widget_get_mapped (GTK_WIDGET (self)))
    update (self);
}

static void
lap_rehearse_page_map (GtkWidget *widget)
{
  LapRehearsePage *self = LAP_REHEARSE_PAGE (widget);

  GTK_WIDGET_CLASS (lap_rehearse_page_parent_class)->map (widget);
  show_reading (self);
  if (self->context != NULL)
    update (self);
}

static void
lap_rehearse_page_dispose (GObject *object)
{
  LapRehearsePage *self = LAP_REHEARSE_PAGE (object);

  g_clear_pointer (&self->overruns, g_ptr_array_unref);
  g_clear_object (&self->context);
  G_OBJECT_CLASS (lap_rehearse_page_parent_class)->dispose (object);
}

static void
lap_rehearse_page_class_init (LapRehearsePageClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_rehearse_page_dispose;
  widget_class->map = lap_rehearse_page_map;
  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/rehearse/page.ui");
  gtk_widget_class_bind_template_child (widget_class, LapRehearsePage, title);
  gtk_widget_class_bind_template_child (widget_class, LapRehearsePage, first);
  gtk_widget_class_bind_template_child (widget_class, LapRehearsePage, here);
  gtk_widget_class_bind_template_child (widget_class, LapRehearsePage, more);
  gtk_widget_class_bind_template_child (widget_class, LapRehearsePage, screen);
  gtk_widget_class_bind_template_child (widget_class, LapRehearsePage, monitor);
  gtk_widget_class_bind_template_child (widget_class, LapRehearsePage, fullscreen);
  gtk_widget_class_bind_template_child (widget_class, LapRehearsePage, mirror);
  gtk_widget_class_bind_template_child (widget_class, LapRehearsePage, sound);
  gtk_widget_class_bind_template_child (widget_class, LapRehearsePage, takes);
  gtk_widget_class_bind_template_child (widget_class, LapRehearsePage, list);
  gtk_widget_class_bind_template_callback (widget_class, first_cb);
  gtk_widget_class_bind_template_callback (widget_class, here_cb);
  gtk_widget_class_bind_template_callback (widget_class, show_reading);
}

static void
lap_rehearse_page_init (LapRehearsePage *self)
{
  g_autofree char *safety = g_strconcat (lap_safety_first (), " ", lap_safety_more (), NULL);

  g_type_ensure (LAP_TYPE_REHEARSE_SOUND);
  gtk_widget_init_template (GTK_WIDGET (self));
  gtk_label_set_text (GTK_LABEL (self->more), safety);
  lap_settings_bind ("rehearse-fullscreen", self->fullscreen, "active");
  lap_settings_bind ("rehearse-mirrored", self->mirror, "active");
  g_signal_connect_object (monitors (self), "items-changed", G_CALLBACK (list_monitors), self, G_CONNECT_SWAPPED);
  list_monitors (self);
  show_overruns (self);
}

void
lap_rehearse_page_set_context (LapRehearsePage *self, LapScoreContext *context)
{
  self->context = g_object_ref (context);
  g_signal_connect_object (context, "changed", G_CALLBACK (context_cb), self, G_CONNECT_SWAPPED);
  update (self);
}
