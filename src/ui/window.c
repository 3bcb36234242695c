/* SPDX-License-Identifier: GPL-3.0-or-later */
#include "ui/window.h"

#include "ui/file-drop.h"
#include "ui/later.h"
#include "ui/notice.h"
#include "ui/publish-dialog.h"
#include "ui/remember.h"
#include "ui/saving.h"
#include "ui/sheets-view.h"
#include "ui/shortcuts-window.h"
#include "ui/tell.h"
#include "ui/warnings-text.h"
#include "ui/watch.h"
#include "ui/yield.h"

#include <glib/gi18n-lib.h>

typedef struct {
  LapDocument *document;
  LapKeeper   *keeper;  /* of its draft, or NULL */
  LapWatch    *watch;   /* of its file */
  AdwToast    *toast;   /* on show, or NULL */
  gboolean     closing; /* asked about, and decided */
  guint        showing_bar; /* idle source */
  LapLater    *title;   /* AdwViewSwitcherTitle */
  GtkWidget   *start, *header, *undo, *redo, *menu_button, *notice, *toasts, *bar, *views;
  GMenu       *menu;
  LapWindowParts parts;
} LapWindowPrivate;

static void lap_window_buildable_init (GtkBuildableIface *iface);
static GtkBuildableIface *parent_buildable;

G_DEFINE_ABSTRACT_TYPE_WITH_CODE (LapWindow, lap_window, ADW_TYPE_APPLICATION_WINDOW,
                                  G_ADD_PRIVATE (LapWindow)
                                  G_IMPLEMENT_INTERFACE (GTK_TYPE_BUILDABLE, lap_window_buildable_init))

#define PRIVATE(self) ((LapWindowPrivate *) lap_window_get_instance_private (self))

static void
set_views (LapWindowPrivate *p, GtkWidget *views)
{
  p->views = views;
  adw_toast_overlay_set_child (ADW_TOAST_OVERLAY (p->toasts), views);
}

/* The children in the template of a kind of window. */
static void
add_child (GtkBuildable *buildable, GtkBuilder *builder, GObject *child, const char *type)
{
  LapWindowPrivate *p = PRIVATE (LAP_WINDOW (buildable));

  if (g_strcmp0 (type, "start") == 0) {
    gtk_box_append (GTK_BOX (p->start), GTK_WIDGET (child));
    gtk_widget_set_visible (p->start, TRUE);
  } else if (g_strcmp0 (type, "end") == 0)
    adw_header_bar_pack_end (ADW_HEADER_BAR (p->header), GTK_WIDGET (child));
  else if (g_strcmp0 (type, "views") == 0)
    set_views (p, GTK_WIDGET (child));
  else
    parent_buildable->add_child (buildable, builder, child, type);
}

static void
lap_window_buildable_init (GtkBuildableIface *iface)
{
  parent_buildable = g_type_interface_peek_parent (iface);
  iface->add_child = add_child;
}

static void
dismissed_cb (LapWindow *self)
{
  g_clear_object (&PRIVATE (self)->toast);
}

/* One toast at a time: what is told takes the place of what was, so that ten quick edits don't queue up. */
void
lap_window_tell (LapWindow *self, const char *text, gboolean undoable)
{
  LapWindowPrivate *p = PRIVATE (self);
  AdwToast *toast = adw_toast_new ("");
  GtkWidget *label = gtk_label_new (text);

  /* A toast's own title is cut on a narrow window. Beside a button it would take the least width that its lines fit in. */
  gtk_label_set_wrap (GTK_LABEL (label), TRUE);
  gtk_label_set_wrap_mode (GTK_LABEL (label), PANGO_WRAP_WORD_CHAR);
  gtk_label_set_natural_wrap_mode (GTK_LABEL (label), GTK_NATURAL_WRAP_NONE);
  gtk_label_set_xalign (GTK_LABEL (label), 0);
  gtk_widget_add_css_class (label, "heading");
  adw_toast_set_custom_title (toast, label);
  if (p->toast != NULL)
    adw_toast_dismiss (p->toast);
  if (undoable) {
    adw_toast_set_button_label (toast, _("Undo"));
    adw_toast_set_action_name (toast, "win.undo");
  }
  g_set_object (&p->toast, toast);
  g_signal_connect_object (toast, "dismissed", G_CALLBACK (dismissed_cb), self, G_CONNECT_SWAPPED);
  adw_toast_overlay_add_toast (ADW_TOAST_OVERLAY (p->toasts), toast);
}

void
lap_window_tell_error (LapWindow *self, const char *what, const char *why)
{
  lap_tell_error (GTK_WINDOW (self), what, why);
}

static void
show_state (LapWindow *self)
{
  LapDocument *document = PRIVATE (self)->document;

  gtk_widget_action_set_enabled (GTK_WIDGET (self), "win.revert", lap_document_path (document) != NULL);
}

/* Where the bar shows the title it has seldom room for all of it. */
static void
show_tip (AdwViewSwitcherTitle *title)
{
  g_autofree char *whole = g_strconcat (adw_view_switcher_title_get_title (title), "\n",
                                        adw_view_switcher_title_get_subtitle (title), NULL);

  gtk_widget_set_tooltip_text (GTK_WIDGET (title), adw_view_switcher_title_get_title_visible (title) ? whole : NULL);
}

static void
show_names (LapWindow *self, AdwViewSwitcherTitle *title)
{
  g_autofree char *below = LAP_WINDOW_GET_CLASS (self)->subtitle (self), *read_only = NULL;

  if (!lap_document_is_editable (PRIVATE (self)->document))
    read_only = g_strdup_printf (_("%s, read-only"), below);
  adw_view_switcher_title_set_title (title, gtk_window_get_title (GTK_WINDOW (self)));
  adw_view_switcher_title_set_subtitle (title, read_only != NULL ? read_only : below);
  show_tip (title);
}

static void
show_title (LapWindow *self)
{
  LapWindowPrivate *p = PRIVATE (self);
  const char *title = lap_document_title (p->document);
  g_autofree char *marked = lap_document_is_modified (p->document) ? g_strconcat ("• ", title, NULL) : g_strdup (title);
  GtkWidget *switcher = lap_later_peek (p->title);

  gtk_window_set_title (GTK_WINDOW (self), marked);
  if (switcher != NULL)
    show_names (self, ADW_VIEW_SWITCHER_TITLE (switcher));
}

/* A narrow window shows the title, and below what it switches between; a wide one never needs that. */
static gboolean
show_bar (gpointer data)
{
  LapWindowPrivate *p = PRIVATE (LAP_WINDOW (data));
  AdwViewSwitcherTitle *title = ADW_VIEW_SWITCHER_TITLE (lap_later_peek (p->title));
  gboolean narrow = adw_view_switcher_title_get_title_visible (title);

  p->showing_bar = 0;
  show_tip (title);
  if (narrow)
    adw_view_switcher_bar_set_stack (ADW_VIEW_SWITCHER_BAR (p->bar), ADW_VIEW_STACK (p->views));
  adw_view_switcher_bar_set_reveal (ADW_VIEW_SWITCHER_BAR (p->bar), narrow);
  return G_SOURCE_REMOVE;
}

/* It is known in the middle of a layout, which has no room for the bar yet. */
static void
narrow_cb (LapWindow *self)
{
  LapWindowPrivate *p = PRIVATE (self);

  if (p->showing_bar == 0)
    p->showing_bar = g_idle_add_full (G_PRIORITY_HIGH_IDLE, show_bar, self, NULL);
}

static GtkWidget *
build_title (gpointer owner)
{
  LapWindowPrivate *p = PRIVATE (LAP_WINDOW (owner));
  GtkWidget *title = adw_view_switcher_title_new ();

  adw_view_switcher_title_set_stack (ADW_VIEW_SWITCHER_TITLE (title), ADW_VIEW_STACK (p->views));
  g_signal_connect_object (title, "notify::title-visible", G_CALLBACK (narrow_cb), owner, G_CONNECT_SWAPPED);
  show_names (owner, ADW_VIEW_SWITCHER_TITLE (title));
  return title;
}

static void
show_step (LapWindow *self, const char *action, GtkWidget *button, const char *label, const char *format,
           const char *without)
{
  g_autofree char *tip = label != NULL ? g_strdup_printf (format, label) : g_strdup (without);

  gtk_widget_action_set_enabled (GTK_WIDGET (self), action, label != NULL);
  if (g_strcmp0 (gtk_widget_get_tooltip_text (button), tip) == 0)
    return; /* a tooltip that is set is looked for anew */
  gtk_widget_set_tooltip_text (button, tip);
  gtk_accessible_update_property (GTK_ACCESSIBLE (button), GTK_ACCESSIBLE_PROPERTY_LABEL, tip, -1);
}

static void
document_cb (LapWindow *self)
{
  LapWindowPrivate *p = PRIVATE (self);
  LapHistory *history = lap_document_history (p->document);

  show_title (self);
  show_state (self);
  show_step (self, "win.undo", p->undo, lap_history_undo_label (history), _("Undo: %s"), _("Undo"));
  show_step (self, "win.redo", p->redo, lap_history_redo_label (history), _("Redo: %s"), _("Redo"));
}

static void
undo_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapWindow *self = LAP_WINDOW (widget);

  lap_window_commit (self);
  if (g_str_equal (name, "win.undo"))
    lap_document_undo (lap_window_document (self));
  else
    lap_document_redo (lap_window_document (self));
}

/* The view of that name, or of that number: kinds of window share the keys for them. */
static void
view_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapWindowPrivate *p = PRIVATE (LAP_WINDOW (widget));
  const char *view = g_variant_get_string (parameter, NULL);
  g_autoptr (GtkSelectionModel) pages = adw_view_stack_get_pages (ADW_VIEW_STACK (p->views));
  g_autoptr (AdwViewStackPage) page = NULL;

  if (g_ascii_isdigit (*view))
    page = g_list_model_get_item (G_LIST_MODEL (pages), *view - '1');
  if (page != NULL)
    view = adw_view_stack_page_get_name (page);
  if (adw_view_stack_get_child_by_name (ADW_VIEW_STACK (p->views), view) != NULL)
    lap_window_show_view (LAP_WINDOW (widget), view);
}

static void
copy_warnings_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapDocument *document = lap_window_document (LAP_WINDOW (widget));
  g_autofree char *text = lap_warnings_text (lap_document_checkup (document), lap_document_title (document));

  gdk_clipboard_set_text (gtk_widget_get_clipboard (widget), text);
  lap_window_tell (LAP_WINDOW (widget), _("Warnings copied"), FALSE);
}

static void
find_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  const LapWindowParts *parts = &PRIVATE (LAP_WINDOW (widget))->parts;
  LapFindBar *bar;

  lap_window_show_view (LAP_WINDOW (widget), parts->plan);
  gtk_widget_set_visible (GTK_WIDGET (parts->find), TRUE);
  bar = LAP_FIND_BAR (lap_later_get (parts->find));
  if (g_str_equal (name, "win.find"))
    lap_find_bar_begin (bar);
  else
    lap_find_bar_step (bar, g_str_equal (name, "win.find-next") ? 1 : -1);
}

static void
pane_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapDesk *desk = PRIVATE (LAP_WINDOW (widget))->parts.desk;

  lap_desk_set_shown (desk, LAP_DESK_END, !lap_desk_get_shown (desk, LAP_DESK_END));
}

static void
print_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  LapWindow *self = LAP_WINDOW (widget);

  lap_window_commit (self);
  lap_window_show_view (self, "sheets");
  lap_sheets_view_print (LAP_SHEETS_VIEW (lap_later_get (PRIVATE (self)->parts.sheets)));
}

static void
publish_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  lap_window_commit (LAP_WINDOW (widget));
  gtk_window_present (lap_publish_dialog_new (LAP_WINDOW (widget)));
}

static void
shortcuts_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  GtkWindow *window = lap_shortcuts_window ();

  gtk_window_set_transient_for (window, GTK_WINDOW (widget));
  gtk_window_present (window);
}

static gboolean
lap_window_close_request (GtkWindow *window)
{
  LapWindow *self = LAP_WINDOW (window);
  LapWindowPrivate *p = PRIVATE (self);

  if (!p->closing) {
    lap_window_commit (self);
    if (lap_document_is_modified (p->document)) {
      lap_saving_ask_before_closing (self);
      return TRUE;
    }
  }
  if (p->keeper != NULL)
    lap_keeper_discard (p->keeper);
  lap_remember_keep (self);
  return GTK_WINDOW_CLASS (lap_window_parent_class)->close_request (window);
}

static void
lap_window_dispose (GObject *object)
{
  LapWindowPrivate *p = PRIVATE (LAP_WINDOW (object));

  g_clear_handle_id (&p->showing_bar, g_source_remove);
  g_clear_object (&p->toast);
  g_clear_object (&p->keeper);
  g_clear_object (&p->watch);
  G_OBJECT_CLASS (lap_window_parent_class)->dispose (object);
}

static void
lap_window_finalize (GObject *object)
{
  g_clear_object (&PRIVATE (LAP_WINDOW (object))->document);
  G_OBJECT_CLASS (lap_window_parent_class)->finalize (object);
}

static void
nothing_typed (LapWindow *self)
{
}

/* In the menu of all windows, which asks while one is made: a kind of window comes too late with an action of its own. */
static void
properties_action (GtkWidget *widget, const char *name, GVariant *parameter)
{
  lap_window_commit (LAP_WINDOW (widget));
  LAP_WINDOW_GET_CLASS (widget)->properties (LAP_WINDOW (widget));
}

static void
lap_window_class_init (LapWindowClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_window_dispose;
  G_OBJECT_CLASS (klass)->finalize = lap_window_finalize;
  GTK_WINDOW_CLASS (klass)->close_request = lap_window_close_request;
  klass->commit = nothing_typed;
  g_type_ensure (LAP_TYPE_DESK);
  g_type_ensure (LAP_TYPE_LATER);
  g_type_ensure (LAP_TYPE_NOTICE);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/window.ui");
  gtk_widget_class_bind_template_child_private (widget_class, LapWindow, title);
  gtk_widget_class_bind_template_child_private (widget_class, LapWindow, start);
  gtk_widget_class_bind_template_child_private (widget_class, LapWindow, header);
  gtk_widget_class_bind_template_child_private (widget_class, LapWindow, undo);
  gtk_widget_class_bind_template_child_private (widget_class, LapWindow, redo);
  gtk_widget_class_bind_template_child_private (widget_class, LapWindow, menu_button);
  gtk_widget_class_bind_template_child_private (widget_class, LapWindow, notice);
  gtk_widget_class_bind_template_child_private (widget_class, LapWindow, toasts);
  gtk_widget_class_bind_template_child_private (widget_class, LapWindow, bar);
  gtk_widget_class_bind_template_child_private (widget_class, LapWindow, menu);
  gtk_widget_class_install_action (widget_class, "win.undo", NULL, undo_action);
  gtk_widget_class_install_action (widget_class, "win.redo", NULL, undo_action);
  gtk_widget_class_install_action (widget_class, "win.view", "s", view_action);
  gtk_widget_class_install_action (widget_class, "win.copy-warnings", NULL, copy_warnings_action);
  gtk_widget_class_install_action (widget_class, "win.shortcuts", NULL, shortcuts_action);
  gtk_widget_class_install_action (widget_class, "win.pane", NULL, pane_action);
  gtk_widget_class_install_action (widget_class, "win.print", NULL, print_action);
  gtk_widget_class_install_action (widget_class, "win.publish", NULL, publish_action);
  gtk_widget_class_install_action (widget_class, "win.properties", NULL, properties_action);
  gtk_widget_class_install_action (widget_class, "win.find", NULL, find_action);
  gtk_widget_class_install_action (widget_class, "win.find-next", NULL, find_action);
  gtk_widget_class_install_action (widget_class, "win.find-previous", NULL, find_action);
  lap_saving_install (widget_class);
}

static void
lap_window_init (LapWindow *self)
{
  gtk_widget_init_template (GTK_WIDGET (self));
  /* Where the buttons need all of a narrow window, the plan has its title as well. */
  gtk_widget_set_layout_manager (GTK_WIDGET (PRIVATE (self)->title), lap_yield_new ());
  lap_later_menu (GTK_MENU_BUTTON (PRIVATE (self)->menu_button), G_MENU_MODEL (PRIVATE (self)->menu));
  lap_file_drop_install (GTK_WINDOW (self));
}

static GtkWidget *
build_find (gpointer owner)
{
  GtkWidget *bar = g_object_new (LAP_TYPE_FIND_BAR, NULL);

  lap_find_bar_set_target (LAP_FIND_BAR (bar), &PRIVATE (LAP_WINDOW (owner))->parts.target, owner);
  return bar;
}

static GtkWidget *
build_sheets (gpointer owner)
{
  GtkWidget *view = g_object_new (LAP_TYPE_SHEETS_VIEW, NULL);

  lap_sheets_view_set_document (LAP_SHEETS_VIEW (view), lap_window_document (owner));
  return view;
}

/* The pane belongs to the plan: elsewhere its button would do nothing that can be seen. */
static void
show_pane_toggle (LapWindow *self)
{
  const LapWindowParts *parts = &PRIVATE (self)->parts;
  gboolean plan = g_strcmp0 (lap_window_view (self), parts->plan) == 0;

  gtk_widget_set_visible (parts->pane_toggle, plan);
  gtk_widget_action_set_enabled (GTK_WIDGET (self), "win.pane", plan);
}

void
lap_window_set_parts (LapWindow *self, const LapWindowParts *parts)
{
  PRIVATE (self)->parts = *parts;
  lap_later_set (parts->find, build_find, self);
  lap_later_set (parts->sheets, build_sheets, self);
  g_signal_connect_object (PRIVATE (self)->views, "notify::visible-child-name", G_CALLBACK (show_pane_toggle), self,
                           G_CONNECT_SWAPPED);
}

void
lap_window_set_document (LapWindow *self, LapDocument *document)
{
  LapWindowPrivate *p = PRIVATE (self);

  p->document = g_object_ref (document);
  p->watch = lap_watch_new (document);
  lap_later_set (p->title, build_title, self);
  lap_notice_set_document (LAP_NOTICE (p->notice), document);
  g_signal_connect_object (document, "changed", G_CALLBACK (document_cb), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (document, "notify::state", G_CALLBACK (show_title), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (document, "notify::state", G_CALLBACK (show_state), self, G_CONNECT_SWAPPED);
  g_signal_connect_object (document, "told", G_CALLBACK (lap_window_tell), self, G_CONNECT_SWAPPED);
  document_cb (self);
  lap_remember_panes (p->parts.desk, document);
  lap_remember_restore (self);
  show_pane_toggle (self);
}

/* Before the last section, which is about the program. */
void
lap_window_add_menu (LapWindow *self, GMenuModel *sections)
{
  GMenu *menu = PRIVATE (self)->menu;

  for (int i = 0; i < g_menu_model_get_n_items (sections); i++) {
    g_autoptr (GMenuItem) item = g_menu_item_new_from_model (sections, i);

    g_menu_insert_item (menu, g_menu_model_get_n_items (G_MENU_MODEL (menu)) - 1, item);
  }
}

void
lap_window_find_again (LapWindow *self)
{
  GtkWidget *bar = lap_later_peek (PRIVATE (self)->parts.find);

  if (bar != NULL)
    lap_find_bar_again (LAP_FIND_BAR (bar));
}

LapDocument *
lap_window_document (LapWindow *self)
{
  return PRIVATE (self)->document;
}

void
lap_window_commit (LapWindow *self)
{
  LAP_WINDOW_GET_CLASS (self)->commit (self);
}

const char *
lap_window_view (LapWindow *self)
{
  return adw_view_stack_get_visible_child_name (ADW_VIEW_STACK (PRIVATE (self)->views));
}

void
lap_window_show_view (LapWindow *self, const char *view)
{
  adw_view_stack_set_visible_child_name (ADW_VIEW_STACK (PRIVATE (self)->views), view);
}

void
lap_window_set_keeper (LapWindow *self, LapKeeper *keeper)
{
  g_set_object (&PRIVATE (self)->keeper, keeper);
}

void
lap_window_close_anyway (LapWindow *self)
{
  PRIVATE (self)->closing = TRUE;
  gtk_window_close (GTK_WINDOW (self));
}
