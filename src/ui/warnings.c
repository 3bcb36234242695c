/* SPDX-License-Identifier: GPL-3.0-or-later
 *
 * A plan gone wrong can have thousands of warnings, so rows are made for the first of them until more are asked for,
 * and remedies, which each cost a try, one row at a time while the window is idle, for the rows that are near enough
 * to be seen soon.
 *
 * However many edits there are, the list follows them once a frame, before it is laid out, and only while it can be
 * seen. Rows stay and are told what to show: making them and laying out their words would be most of an edit.
 */
#include "ui/warnings.h"

#include "ui/flow.h"
#include "ui/warning-row.h"
#include "ui/warnings-text.h"

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
  guint            tick;        /* the callback of the next frame, or 0 */
  gboolean         stale;       /* the document has changed since */
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

/* Not while something is dragged: what is held now is another plan in the next frame. */
static void
fill_soon (LapWarnings *self)
{
  if (self->idle == 0 && lap_document_is_editable (self->document) &&
      !lap_history_is_open (lap_document_history (self->document)))
    self->idle = g_idle_add_full (G_PRIORITY_LOW, fill_cb, self, NULL);
}

static void
show_counts (LapWarnings *self, guint n_kept)
{
  g_autofree char *text = lap_warnings_counts (lap_document_checkup (self->document)), *kept = NULL;

  kept = g_strdup_printf (ngettext ("%u kept as fine", "%u kept as fine", n_kept), n_kept);
  gtk_label_set_text (GTK_LABEL (self->counts), *text != '\0' ? text : _("None."));
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

/* The first of the rows from @row on that is about @warning, though maybe by another number and at another time. */
static GtkWidget *
find_row (GtkWidget *row, const LapWarning *warning)
{
  while (row != NULL && !lap_warning_row_is (LAP_WARNING_ROW (row), warning))
    row = gtk_widget_get_next_sibling (row);
  return row;
}

/* @row is about one of the warnings from @first to before @end. */
static gboolean
is_wanted (LapWarnings *self, GtkWidget *row, guint first, guint end)
{
  for (guint i = first; i < end; i++)
    if (lap_warning_row_is (LAP_WARNING_ROW (row), lap_checkup_nth (lap_document_checkup (self->document), i)))
      return TRUE;
  return FALSE;
}

static GtkWidget *
remove_row (GtkWidget *row)
{
  GtkWidget *next = gtk_widget_get_next_sibling (row);

  gtk_list_box_remove (GTK_LIST_BOX (gtk_widget_get_parent (row)), row);
  return next;
}

/* Puts @row, of @list, in another place of it; NULL: a new row, about warning @n. */
static GtkWidget *
put_row (LapWarnings *self, GtkWidget *list, GtkWidget *row, guint at, guint n)
{
  g_autoptr (GtkWidget) held = row != NULL ? g_object_ref (row) : NULL;

  if (row != NULL)
    gtk_list_box_remove (GTK_LIST_BOX (list), row);
  else {
    row = lap_warning_row_new (self->document, n);
    g_signal_connect_object (row, "preview", G_CALLBACK (preview_cb), self, G_CONNECT_SWAPPED);
  }
  gtk_list_box_insert (GTK_LIST_BOX (list), row, at);
  return row;
}

/* Makes @list show the warnings from @first to before @end. What still warns keeps its row, what is new takes that of
 * what has gone. */
static void
show_list (LapWarnings *self, GtkWidget *list, guint first, guint end)
{
  GtkWidget *row = gtk_widget_get_first_child (list);

  for (guint i = first; i < end; i++) {
    GtkWidget *found = find_row (row, lap_checkup_nth (lap_document_checkup (self->document), i));

    while (found != NULL && found != row && !is_wanted (self, row, i, end))
      row = remove_row (row);
    if (row == NULL || (found != row && is_wanted (self, row, i, end)))
      row = put_row (self, list, found, i - first, i);
    lap_warning_row_show (LAP_WARNING_ROW (row), i);
    row = gtk_widget_get_next_sibling (row);
  }
  while (row != NULL)
    row = remove_row (row);
}

static void
show_warnings (LapWarnings *self)
{
  LapCheckup *checkup = lap_document_checkup (self->document);
  guint n = lap_checkup_n (checkup), n_open = 0, n_rows = MIN (n, self->asked);
  int focused = focused_row (self->list);
  g_autofree char *all = NULL;

  self->stale = FALSE;
  while (n_open < n && !lap_checkup_nth (checkup, n_open)->fine)
    n_open++;
  show_list (self, self->list, 0, MIN (n_open, n_rows));
  show_list (self, self->kept_list, n_open, MAX (n_open, n_rows));
  all = g_strdup_printf (ngettext ("Show %u more", "Show %u more", n - n_rows), n - n_rows);
  gtk_button_set_label (GTK_BUTTON (self->all), all);
  gtk_widget_set_visible (self->all, n_rows < n && self->asked < MOST_ROWS);
  gtk_widget_set_visible (self->list, n_open > 0);
  show_counts (self, n - n_open);
  announce (self);
  if (focused >= 0 && gtk_widget_get_focus_child (self->list) == NULL)
    focus_row (self->list, focused);
}

static void
follow (LapWarnings *self)
{
  if (self->stale)
    show_warnings (self);
}

/* Rows have their places when the frame that lays them out is through, which is when idle sources come to run. */
static gboolean
frame_cb (GtkWidget *widget, GdkFrameClock *clock, gpointer data)
{
  LapWarnings *self = LAP_WARNINGS (widget);

  self->tick = 0;
  follow (self);
  fill_soon (self);
  return G_SOURCE_REMOVE;
}

static void
follow_in_frame (LapWarnings *self)
{
  if (self->tick == 0)
    self->tick = gtk_widget_add_tick_callback (GTK_WIDGET (self), frame_cb, NULL, NULL);
}

static void
changed_cb (LapWarnings *self)
{
  self->stale = TRUE;
  if (gtk_widget_get_mapped (GTK_WIDGET (self)))
    follow_in_frame (self);
}

static void
lap_warnings_map (GtkWidget *widget)
{
  follow (LAP_WARNINGS (widget));
  GTK_WIDGET_CLASS (lap_warnings_parent_class)->map (widget);
  follow_in_frame (LAP_WARNINGS (widget));
}

static void
all_cb (LapWarnings *self)
{
  self->asked = MOST_ROWS;
  show_warnings (self);
  follow_in_frame (self);
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

/* Whether all that fits of @row can be seen; scrolls there where it can't. */
static gboolean
see (GtkWidget *row)
{
  GtkWidget *view = gtk_widget_get_ancestor (row, GTK_TYPE_SCROLLED_WINDOW);
  GtkAdjustment *down = view != NULL ? gtk_scrolled_window_get_vadjustment (GTK_SCROLLED_WINDOW (view)) : NULL;
  graphene_rect_t bounds;
  double value, top;

  if (down == NULL || !gtk_widget_compute_bounds (row, view, &bounds))
    return TRUE;
  value = gtk_adjustment_get_value (down);
  top = value + bounds.origin.y;
  gtk_adjustment_clamp_page (down, top, MIN (top + bounds.size.height, top + gtk_adjustment_get_page_size (down)));
  return gtk_adjustment_get_value (down) == value;
}

/* A list that comes up only now is laid out first, and rows before this one grow when they come near: it is done when
 * the row stays where it is, or when somebody has gone elsewhere. */
static gboolean
point_out_tick (GtkWidget *widget, GdkFrameClock *clock, gpointer n)
{
  LapWarnings *self = LAP_WARNINGS (widget);
  gboolean exists = GPOINTER_TO_UINT (n) < lap_checkup_n (lap_document_checkup (self->document));
  GtkWidget *row = exists ? lap_warnings_row (self, GPOINTER_TO_UINT (n)) : NULL;

  if (row == NULL || !gtk_widget_has_focus (row))
    return G_SOURCE_REMOVE;
  return gtk_widget_get_height (row) == 0 || self->idle != 0 || !see (row) ? G_SOURCE_CONTINUE : G_SOURCE_REMOVE;
}

void
lap_warnings_choose (LapWarnings *self, guint n)
{
  GtkWidget *row = lap_warnings_row (self, n);

  if (row == NULL) {
    all_cb (self);
    row = lap_warnings_row (self, n);
  }
  if (row == NULL)
    return;
  row_cb (self, GTK_LIST_BOX_ROW (row));
  gtk_widget_grab_focus (row);
  /* It was a click, after which GTK shows no focus: but here somebody looks for it. */
  gtk_window_set_focus_visible (GTK_WINDOW (gtk_widget_get_root (row)), TRUE);
  gtk_widget_add_tick_callback (GTK_WIDGET (self), point_out_tick, GUINT_TO_POINTER (n), NULL);
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
  widget_class->map = lap_warnings_map;
  signals[CHOSEN] = g_signal_new ("chosen", LAP_TYPE_WARNINGS, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 1,
                                  G_TYPE_UINT);
  signals[PREVIEW] = g_signal_new ("preview", LAP_TYPE_WARNINGS, G_SIGNAL_RUN_LAST, 0, NULL, NULL, NULL, G_TYPE_NONE, 1,
                                   G_TYPE_POINTER);
  g_type_ensure (LAP_TYPE_FLOW);
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
  g_signal_connect_object (document, "changed", G_CALLBACK (changed_cb), self, G_CONNECT_SWAPPED);
  changed_cb (self);
}

GtkWidget *
lap_warnings_row (LapWarnings *self, guint n)
{
  const LapWarning *wanted = lap_checkup_nth (lap_document_checkup (self->document), n);
  GtkWidget *lists[] = { self->list, self->kept_list };

  follow (self);
  for (guint i = 0; i < G_N_ELEMENTS (lists); i++)
    for (GtkWidget *row = gtk_widget_get_first_child (lists[i]); row != NULL; row = gtk_widget_get_next_sibling (row))
      if (lap_warning_row_warning (LAP_WARNING_ROW (row)) == wanted)
        return row;
  return NULL;
}
