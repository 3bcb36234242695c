/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A plan gone wrong can have thousands of warnings, so rows are made for the first of them until more are asked for,
 * and remedies, which each cost a try, one row at a time while the window is idle, for the rows that are near enough
 * to be seen soon.
 */
#include "ui/warnings.h"

#include "ui/warning-row.h"

#include <glib/gi18n-lib.h>

#define FIRST_ROWS 30
#define MOST_ROWS  500
/* px above and below what is seen in which remedies are made. */
#define NEAR       300
/* Warnings that are looked at for a new one: a plan with more has other troubles. */
#define MOST_KNOWN 100

struct _LapWarnings {
  GtkWidget        parent_instance;
  LapDocument     *document;
  guint            idle, asked; /* rows that may be made */
  GHashTable      *known; /* messages that were there before the last change, NULL at first */
  GtkWidget       *counts, *list, *all, *kept, *kept_list;
};

enum { CHOSEN, PREVIEW, N_SIGNALS };
static guint signals[N_SIGNALS];

G_DEFINE_FINAL_TYPE (LapWarnings, lap_warnings, GTK_TYPE_WIDGET)

static gboolean
is_near (LapWarnings *self, GtkWidget *row)
{
  GtkWidget *view = gtk_widget_get_ancestor (GTK_WIDGET (self), GTK_TYPE_SCROLLED_WINDOW);
  graphene_rect_t bounds;

  return view != NULL && gtk_widget_compute_bounds (row, view, &bounds) &&
         bounds.origin.y < gtk_widget_get_height (view) + NEAR && bounds.origin.y + bounds.size.height > -NEAR;
}

static gboolean
fill_cb (gpointer data)
{
  LapWarnings *self = data;

  for (GtkWidget *row = gtk_widget_get_first_child (self->list); row != NULL; row = gtk_widget_get_next_sibling (row))
    if (is_near (self, row) && lap_warning_row_fill (LAP_WARNING_ROW (row)))
      return G_SOURCE_CONTINUE;
  self->idle = 0;
  return G_SOURCE_REMOVE;
}

static void
fill_soon (LapWarnings *self)
{
  if (self->idle == 0 && lap_document_is_editable (self->document))
    self->idle = g_idle_add_full (G_PRIORITY_LOW, fill_cb, self, NULL);
}

/* Rows have their places when the frame that lays them out is through, which is when idle sources come to run. */
static gboolean
frame_cb (GtkWidget *widget, GdkFrameClock *clock, gpointer data)
{
  fill_soon (LAP_WARNINGS (widget));
  return G_SOURCE_REMOVE;
}

static void
empty (GtkWidget *list)
{
  GtkWidget *row;

  while ((row = gtk_widget_get_first_child (list)) != NULL)
    gtk_list_box_remove (GTK_LIST_BOX (list), row);
}

static void
show_counts (LapWarnings *self, guint n_kept)
{
  LapCheckup *checkup = lap_document_checkup (self->document);
  g_autoptr (GPtrArray) words = g_ptr_array_new_with_free_func (g_free);
  g_autofree char *text = NULL, *kept = NULL;
  guint stops = lap_checkup_count (checkup, LAP_SEVERITY_STOP), notes = lap_checkup_count (checkup, LAP_SEVERITY_NOTE);
  guint warnings = lap_checkup_count (checkup, LAP_SEVERITY_WARNING);

  if (stops > 0)
    g_ptr_array_add (words, g_strdup_printf (ngettext ("%u stop", "%u stops", stops), stops));
  if (warnings > 0)
    g_ptr_array_add (words, g_strdup_printf (ngettext ("%u warning", "%u warnings", warnings), warnings));
  if (notes > 0)
    g_ptr_array_add (words, g_strdup_printf (ngettext ("%u note", "%u notes", notes), notes));
  g_ptr_array_add (words, NULL);
  text = words->len > 1 ? lap_join ((const char * const *) words->pdata) : g_strdup (_("None."));
  kept = g_strdup_printf (ngettext ("%u kept as fine", "%u kept as fine", n_kept), n_kept);
  gtk_label_set_text (GTK_LABEL (self->counts), text);
  gtk_expander_set_label (GTK_EXPANDER (self->kept), kept);
  gtk_widget_set_visible (self->kept, n_kept > 0);
}

/* The number of the row in @list that has the focus or holds what has it, -1 without. */
static int
focused_row (GtkWidget *list)
{
  GtkWidget *row = gtk_widget_get_focus_child (list);

  return row != NULL ? gtk_list_box_row_get_index (GTK_LIST_BOX_ROW (row)) : -1;
}

/* Whoever took a remedy by the keys stays in the list: on the row that stands there now, or the last. */
static void
focus_row (GtkWidget *list, int index)
{
  GtkListBoxRow *row = NULL;

  for (; index >= 0 && row == NULL; index--)
    row = gtk_list_box_get_row_at_index (GTK_LIST_BOX (list), index);
  if (row != NULL)
    gtk_widget_grab_focus (GTK_WIDGET (row));
}

/* Says the first warning that wasn't there before through the status, which has the role of an alert: its label
 * changes, which is what assistive technology reads out. */
static void
announce (LapWarnings *self)
{
  LapCheckup *checkup = lap_document_checkup (self->document);
  g_autoptr (GHashTable) known = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  g_autofree char *said = NULL;

  for (guint i = 0; i < MIN (lap_checkup_n (checkup), MOST_KNOWN); i++) {
    const LapWarning *warning = lap_checkup_nth (checkup, i);
    char *message = warning->fine ? NULL : lap_warning_message (checkup, warning);

    if (message == NULL)
      continue;
    if (said == NULL && self->known != NULL && !g_hash_table_contains (self->known, message))
      /* Translators: the rank of a warning, its number in the list, and what it says. */
      said = g_strdup_printf (_("New: %1$s %2$u. %3$s"), lap_words_label (&lap_severities, warning->severity), i + 1,
                              message);
    g_hash_table_add (known, message);
  }
  g_clear_pointer (&self->known, g_hash_table_unref);
  self->known = g_steal_pointer (&known);
  gtk_accessible_update_property (GTK_ACCESSIBLE (self->counts), GTK_ACCESSIBLE_PROPERTY_LABEL,
                                  said != NULL ? said : gtk_label_get_text (GTK_LABEL (self->counts)), -1);
}

static void
preview_cb (LapWarnings *self, gpointer edits)
{
  g_signal_emit (self, signals[PREVIEW], 0, edits);
}

static void
show_warnings (LapWarnings *self)
{
  LapCheckup *checkup = lap_document_checkup (self->document);
  guint n = lap_checkup_n (checkup), n_kept = 0, n_rows = 0;
  int focused = focused_row (self->list);
  g_autofree char *all = NULL;

  empty (self->list);
  empty (self->kept_list);
  for (guint i = 0; i < n; i++) {
    gboolean fine = lap_checkup_nth (checkup, i)->fine;

    n_kept += fine;
    if (n_rows < self->asked) {
      GtkWidget *row = lap_warning_row_new (self->document, i);

      g_signal_connect_object (row, "preview", G_CALLBACK (preview_cb), self, G_CONNECT_SWAPPED);
      gtk_list_box_append (GTK_LIST_BOX (fine ? self->kept_list : self->list), row);
      n_rows++;
    }
  }
  all = g_strdup_printf (ngettext ("Show %u more", "Show %u more", n - n_rows), n - n_rows);
  gtk_button_set_label (GTK_BUTTON (self->all), all);
  gtk_widget_set_visible (self->all, n_rows < n && self->asked < MOST_ROWS);
  gtk_widget_set_visible (self->list, n > n_kept);
  show_counts (self, n_kept);
  announce (self);
  focus_row (self->list, focused);
  gtk_widget_add_tick_callback (GTK_WIDGET (self), frame_cb, NULL, NULL);
}

static void
all_cb (LapWarnings *self)
{
  self->asked = MOST_ROWS;
  show_warnings (self);
}

static void
row_cb (LapWarnings *self, GtkListBoxRow *row)
{
  const LapWarning *wanted = lap_warning_row_warning (LAP_WARNING_ROW (row));
  LapCheckup *checkup = lap_document_checkup (self->document);

  for (guint i = 0; i < lap_checkup_n (checkup); i++)
    if (lap_checkup_nth (checkup, i) == wanted)
      g_signal_emit (self, signals[CHOSEN], 0, i);
}

void
lap_warnings_choose (LapWarnings *self, guint n)
{
  GtkWidget *row = lap_warnings_row (self, n);

  if (row == NULL) {
    self->asked = MOST_ROWS;
    show_warnings (self);
    row = lap_warnings_row (self, n);
  }
  if (row == NULL)
    return;
  row_cb (self, GTK_LIST_BOX_ROW (row));
  gtk_widget_grab_focus (row);
}

/* The page scrolls, and the list with it. */
static void
lap_warnings_root (GtkWidget *widget)
{
  GtkWidget *view = gtk_widget_get_ancestor (widget, GTK_TYPE_SCROLLED_WINDOW);

  GTK_WIDGET_CLASS (lap_warnings_parent_class)->root (widget);
  if (view != NULL)
    g_signal_connect_object (gtk_scrolled_window_get_vadjustment (GTK_SCROLLED_WINDOW (view)), "value-changed",
                             G_CALLBACK (fill_soon), widget, G_CONNECT_SWAPPED);
}

static void
lap_warnings_dispose (GObject *object)
{
  LapWarnings *self = LAP_WARNINGS (object);
  GtkWidget *child = gtk_widget_get_first_child (GTK_WIDGET (self));

  g_clear_handle_id (&self->idle, g_source_remove);
  g_clear_pointer (&child, gtk_widget_unparent);
  g_clear_pointer (&self->known, g_hash_table_unref);
  g_clear_object (&self->document);
  G_OBJECT_CLASS (lap_warnings_parent_class)->dispose (object);
}

static void
lap_warnings_class_init (LapWarningsClass *klass)
{
  GtkWidgetClass *widget_class = GTK_WIDGET_CLASS (klass);

  G_OBJECT_CLASS (klass)->dispose = lap_warnings_dispose;
  widget_class->root = lap_warnings_root;
  signals[CHOSEN] = g_signal_new ("chosen", LAP_TYPE_WARNINGS, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 1,
                                  G_TYPE_UINT);
  signals[PREVIEW] = g_signal_new ("preview", LAP_TYPE_WARNINGS, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 1,
                                   G_TYPE_POINTER);
  gtk_widget_class_set_template_from_resource (widget_class, "/org/lapwing/Lapwing/ui/warnings.ui");
  gtk_widget_class_bind_template_child (widget_class, LapWarnings, counts);
  gtk_widget_class_bind_template_child (widget_class, LapWarnings, list);
  gtk_widget_class_bind_template_child (widget_class, LapWarnings, all);
  gtk_widget_class_bind_template_child (widget_class, LapWarnings, kept);
  gtk_widget_class_bind_template_child (widget_class, LapWarnings, kept_list);
  gtk_widget_class_bind_template_callback (widget_class, row_cb);
  gtk_widget_class_bind_template_callback (widget_class, all_cb);
  gtk_widget_class_set_layout_manager_type (widget_class, GTK_TYPE_BIN_LAYOUT);
}

static void
lap_warnings_init (LapWarnings *self)
{
  self->asked = FIRST_ROWS;
  gtk_widget_init_template (GTK_WIDGET (self));
}

void
lap_warnings_set_document (LapWarnings *self, LapDocument *document)
{
  g_return_if_fail (self->document == NULL);
  self->document = g_object_ref (document);
  g_signal_connect_object (document, "changed", G_CALLBACK (show_warnings), self, G_CONNECT_SWAPPED);
  show_warnings (self);
}

GtkWidget *
lap_warnings_row (LapWarnings *self, guint n)
{
  const LapWarning *wanted = lap_checkup_nth (lap_document_checkup (self->document), n);
  GtkWidget *lists[] = { self->list, self->kept_list };

  for (guint i = 0; i < G_N_ELEMENTS (lists); i++)
    for (GtkWidget *row = gtk_widget_get_first_child (lists[i]); row != NULL; row = gtk_widget_get_next_sibling (row))
      if (lap_warning_row_warning (LAP_WARNING_ROW (row)) == wanted)
        return row;
  return NULL;
}
